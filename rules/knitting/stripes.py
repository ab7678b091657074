"""Stripes: the rows and the yarn each colour takes, where the repeat ends, and whether the yarn can be carried up."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from ..engine.declare import ARITHMETIC, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH, MASS, ROWS, STRIPES, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import YARN_LENGTH, YARN_WEIGHT
from ..engine.run import Impossible, Run
from ..engine.text import amount
from .words import ROW_TENSION

MOST_COLOURS = 8


@dataclass(frozen=True, slots=True)
class Stripe:
    """So many rows of a colour."""

    colour: str
    rows: Fraction


@dataclass(frozen=True, slots=True)
class Stripes:
    """A repeat of stripes, in order, and the colour that is asked about first ("" when none is)."""

    stripes: tuple[Stripe, ...]
    asked: str = ""

    @property
    def repeat(self) -> Fraction:
        """Rows in one repeat."""
        return sum((one.rows for one in self.stripes), Fraction(0))

    @property
    def colours(self) -> tuple[str, ...]:
        """Each colour once, the one asked about first, then in the order of the stripes."""
        met = dict.fromkeys(one.colour for one in self.stripes)
        return tuple(sorted(met, key=lambda colour: colour != self.asked))


def rows_by_colour(sequence: Stripes, rows: Fraction) -> tuple[dict[str, Fraction], Stripe, Fraction]:
    """Rows of each colour when the repeat is worked over so many rows; the stripe it ends in, and its rows worked."""
    counts = dict.fromkeys(sequence.colours, Fraction(0))
    left, last = rows, (sequence.stripes[-1], Fraction(0))
    while left > 0:
        for stripe in sequence.stripes:
            worked = min(left, stripe.rows)
            if worked <= 0:
                break
            counts[stripe.colour] += worked
            left -= worked
            last = (stripe, worked)
    return counts, last[0], last[1]


# Results that cannot be had without the rows in all: asked for by name, the rows are asked back.
_BY_ROWS = ("rows_", "yarn_", "weight_", "repeats", "ends")


def _stripe(run: Run) -> Outcome:
    sequence: Stripes = run.get("sequence")
    if any(one.rows <= 0 or one.rows.denominator != 1 for one in sequence.stripes):
        raise Impossible("a stripe must have a whole number of rows, such as: 4 rows navy, 2 rows white")
    if len(sequence.colours) > MOST_COLOURS:
        raise Impossible(f"I keep count of {MOST_COLOURS} colours at most; leave some out, such as: 4 rows navy, 2 "
                         f"rows white")
    repeat = sequence.repeat
    run.say("Add the stripes for the rows of one repeat", "", " + ".join(f"{one.rows} {one.colour}"
                                                                         for one in sequence.stripes), f"{repeat} rows")
    values: dict[str, object] = {"repeat": repeat}
    labels = {}
    even = all(one.rows % 2 == 0 for one in sequence.stripes)
    values["carry"] = (
        "carry the yarns up the side: every stripe is of even rows" if even
        else "a stripe of odd rows ends at the other edge: cut the yarn, or work on a circular needle and slide the "
             "stitches back"
    )  # fmt: skip
    by_rows = any(name.startswith(_BY_ROWS) for name in run.request.asked[:1])
    rows = run.get("rows") if by_rows else run.maybe("rows")
    if rows is None:
        return Outcome(values)
    told = run.request.given.get("rows")
    bare = told is not None and told.text.replace(".", "").isdigit()
    if rows < repeat or (bare and rows < 3 * repeat):  # "work it 12 times" may mean repeats
        raise Impossible(f"{amount(Fraction(rows), 'row')} in all are few for a repeat of {repeat} rows. Say how many rows there "
                         f"are in all, such as: over {12 * repeat} rows")
    counts, last, worked = rows_by_colour(sequence, rows)
    run.say("Divide the rows by the repeat", "rows ÷ rows of a repeat", f"{rows} ÷ {repeat}",
            f"{rows // repeat} whole repeats, {rows % repeat} rows over")
    for number, colour in enumerate(sequence.colours, start=1):
        values[f"rows_{number}"] = counts[colour]
        labels[f"rows_{number}"] = f"rows of {colour}"
        run.say(f"Count the rows of {colour} in all the repeats", "", "", f"{counts[colour]} of {rows} rows")
        for kind in ("yarn", "weight"):
            total = run.maybe(kind)
            if total is not None:
                values[f"{kind}_{number}"] = total * counts[colour] / rows
                labels[f"{kind}_{number}"] = f"yarn in {colour}"
    values["repeats"] = rows / repeat
    values["rows_total"] = rows
    part = "the whole of" if worked == last.rows else f"{amount(Fraction(worked), 'row')} into"
    values["ends"] = f"ends with {part} the {last.colour} stripe of {amount(Fraction(last.rows), 'row')}"
    return Outcome(values, labels=labels)


# Rows of a colour ("3 rows of yellow") are stripes, said or not.
_COLOURS = ("red", "blue", "white", "black", "green", "yellow", "grey", "gray", "navy", "cream", "ivory", "pink", "purple",
            "orange", "brown", "teal", "gold", "rust", "plum", "mauve", "lilac", "beige", "rose", "mustard", "turquoise",
            "silver", "burgundy",
            "maroon", "olive", "coral", "mint", "peach", "charcoal", "violet", "khaki", "lemon", "aqua", "magenta", "tan",
            "ochre")


_COLOUR_ROWS = tuple(said for colour in _COLOURS for said in (f"{colour} rows", f"rows of {colour}", f"rows are {colour}",
                                                           f"rows {colour}"))
_OF_IT = ("how much of it", "how much of that", "how much of the yarn", "how much of the wool", "how much of this")


def _each_colour() -> tuple[Step, ...]:
    steps: list[Step] = []
    for number in range(1, MOST_COLOURS + 1):
        says = ("how many rows", "rows", *_COLOUR_ROWS) if number == 1 else ()
        steps += [
            Step(f"rows_{number}", "Rows of the colour", kind=ROWS, label=f"rows of colour {number}", says=says),
            Step(f"yarn_{number}", "Yarn of the colour", kind=LENGTH, rounding=YARN_LENGTH, unit=("yd", "m"),
                 label=f"yarn in colour {number}",
                 says=("how much yarn", "yarn", *_OF_IT, "how many metres", "how many yards", "metres of", "yards of",
                       *(f"{much} {colour}" for colour in _COLOURS for much in ("how much", "metres of", "yards of")))
                 if number == 1 else ()),
            Step(f"weight_{number}", "Yarn of the colour", kind=MASS, rounding=YARN_WEIGHT,
                 label=f"weight of colour {number}",
                 says=("how much wool", *_OF_IT, "how many grams", "grams", "weight of", "how many ounces", "what weight",
                       "what weight is",
                       *(f"grams of {colour}" for colour in _COLOURS)) if number == 1 else ()),
        ]
    return tuple(steps)


_NAMES = tuple(f"{kind}_{number}" for kind in ("rows", "yarn", "weight") for number in range(1, MOST_COLOURS + 1))
STRIPES_RULE = Rule(
    topic="stripes",
    family="knitting",
    says=("stripes", "stripe", "striped", "stripe sequence", "stripe repeat", "stripey", "stripy", "striping", "stripes of",
          "colour sequence", "colour repeat", "rows of each colour", "rows of each", "rows in each colour", "each colour",
          "bands of colour", "two colours", "three colours", "rows of one colour", "change colour", "whole repeats of",
          "rows repeated", "over and over", "again and again", "repeated over", "rows repeating", "rows", "row", "how many rows",
          "rows in a repeat", "rows in one repeat", "in one repeat", "how many repeats", "carry the yarn", "carry up", "colour last",
          "till i have", "until i have",
          "keep repeating", "repeating", "alternate", "alternating", "alternates", "alternately", "which colour", "what colour",
          *_COLOUR_ROWS, *(f"how much {colour}" for colour in _COLOURS)),
    about="The rows and the yarn each colour of a stripe sequence takes, and where the repeat ends.",
    inputs=(
        Input("sequence", "stripe sequence", STRIPES, says=("stripes", "sequence"), ask="What is the stripe sequence?",
              example="4 rows navy, 2 rows white"),
        Input("rows", "rows in all", ROWS, says=("over", "rows", "in all", "total", "altogether", "for"),
              default=Default("=length * row_tension", "The length at the row tension", derived=True,
                              given=("length",)),
              ask="How many rows are there in all?", example="132 rows", sane="1 row..20000 row",
              practice="60 row..240 row by 12 row"),
        Input("length", "length", LENGTH, says=("long", "length", "tall"), axis="length", extra=True,
              sane="1 cm..20 m"),
        replace(ROW_TENSION, spoken=True, says=(*ROW_TENSION.says, "at", "length at", "cm at", "with")),
        Input("colours", "colours", COUNT, noun="colour", says=("colours", "colour"), extra=True, sane="1..50",
              spoken=True),
        Input("yarn", "yarn in all", LENGTH, says=("yarn", "wool", "takes", "uses", "of yarn"), extra=True,
              sane="1 m..100 km", usual="20 m..20 km"),
        Input("weight", "yarn weight in all", MASS, says=("yarn", "wool", "takes", "uses", "of yarn", "of wool",
                                                          "weight"), extra=True, sane="1 g..50 kg"),
    ),
    steps=(
        Step("repeat", "Rows in one repeat", kind=ROWS, label="rows in a repeat",
             says=("repeat", "rows in a repeat", "one repeat", "rows in one repeat", "rows in the repeat", "rows has one repeat",
                   "how long is the repeat", "how many rows is one repeat", "how many rows in one repeat")),
        *_each_colour(),
        Step("repeats", "Repeats worked", kind=COUNT, label="repeats", noun="repeat",
             says=("how many repeats", "repeats", "complete repeats", "whole repeats", "full repeats", "how many complete repeats",
                   "how many whole repeats", "how many full repeats", "how often is the repeat", "how many times is the repeat",
                   *(f"how many times do {who} {do} the repeat" for who in ("i", "we", "you") for do in ("work", "knit", "do", "make")),
                   "how many times do i repeat", "how many times does the repeat")),
        Step("rows_total", "Rows in all", kind=ROWS, label="rows in all",
             says=("rows altogether", "rows in all", "total rows", "rows in total", "rows so far", "how many rows altogether",
                   "how many rows in all", "how many rows so far", "rows have i worked", "rows will i have", "how many rows in total",
                   "rows have i knitted", "rows have i done")),
        Step("ends", "Where it ends", kind=TEXT, label="end of the work",
             says=("where does it end", "where it ends", "which colour last", "end", "where do i end", "what colour last",
                   "colour do i end", "colour does it end", "which colour does it end", "ends in", "finish on", "end on",
                   *(f"{which} colour {am}" for which in ("what", "which") for am in ("am i on", "am i in", "will i be on", "is row",
                                                                      "is the last")))),
        Step("carry", "Carrying the yarn", kind=TEXT, label="carrying the yarn",
             says=("carry", "carry up", "cut the yarn", "can i carry", "carry the yarn", "carry the yarns")),
    ),
    answers=(*_NAMES, "repeat", "repeats", "ends", "carry"),
    algorithm=_stripe,
    no_unknown=("rows", "length", "row_tension", "yarn", "weight", "colours"),
    source=ARITHMETIC,
    notes=("Yarn is shared by rows, all rows being of one width.",),
    examples=(
        "Stripes of 4 rows navy, 2 rows white and 6 rows grey over 132 rows. How many rows are grey? -> 66 rows; 44 "
        "rows; 22 rows",
        "stripes 2 rows A, 2 rows B, 1 row C over 100 rows, 900 m of yarn -> 40 rows; 20 rows; 360 m; 180 m",
        "striped scarf: red 6 rows, cream 4 rows, 200 rows in all -> 120 rows; 80 rows",
    ),
    defers=("rows for a length", "scarf, blanket"),
    related=("yarn needed", "rows for a length"),
)
