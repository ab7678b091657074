"""Along an edge: stitches to pick up, and buttonholes spaced along a band of rows or of stitches."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import (
    ARITHMETIC,
    Caution,
    Default,
    Input,
    Refusal,
    Rule,
    Step,
)
from ..engine.kinds import COUNT, LENGTH, ROW_RATE, ROWS, STITCH_RATE, STITCHES, TEXT, Kind
from ..engine.outcome import Outcome
from ..engine.rounding import STITCH, Rounding
from ..engine.rounding import Step as RoundTo
from ..engine.run import Run
from ..engine.text import amount
from .words import ROW_TENSION, STITCH_TENSION

PICK_UP_LARGEST = 5  # a ratio is kept simple enough to count on the needles: at most so many rows


def simple_ratio(rate: Fraction, largest: int = PICK_UP_LARGEST) -> Fraction:
    """The fraction nearest a rate whose lower number is small enough to count by.

    >>> simple_ratio(Fraction(21, 28)), simple_ratio(Fraction(20, 28))
    (Fraction(3, 4), Fraction(3, 4))
    """
    return rate.limit_denominator(largest)


def _pick_up(run: Run) -> Outcome:
    exact = Fraction(run.get("tension") / run.get("row_tension"))
    ratio = simple_ratio(exact)
    stitches, rows = amount(Fraction(ratio.numerator), "st"), amount(Fraction(ratio.denominator), "row")
    words = f"{stitches} for every {rows}"
    run.say("The ratio is the stitch tension to the row tension; the nearest that is easy to count",
            "stitch tension ÷ row tension",
            f"{run.show(run.get('tension'), STITCH_RATE)} ÷ {run.show(run.get('row_tension'), ROW_RATE)}",
            f"{exact.numerator} to {exact.denominator}: {words}")
    notes = () if ratio == exact else (f"The exact ratio is {exact.numerator} to {exact.denominator}; the total is "
                                       f"from the exact tensions.",)
    return Outcome({"ratio": words}, notes=notes)


PICK_UP = Rule(
    topic="pick up",
    family="knitting",
    says=("pick up", "picking up", "pick up stitches", "picked up", "pick up and knit", "pick-up", "row ends",
          "button band", "neckband", "along the edge", "front edge",
          "how many to pick up", "knit up"),
    about="How many stitches to pick up along an edge of rows, and a simple ratio to pick up by.",
    inputs=(
        Input("rows", "edge rows", ROWS, says=("row ends", "rows", "edge", "along", "rows along", "edge rows", "ends"),
              default=Default("=edge * row_tension", "The edge's length at the row tension", derived=True,
                              given=("edge",)),
              ask="How many rows has the edge?", example="120 rows", sane="1 row..5000 row",
              practice="80 row..200 row by 10 row"),
        Input("edge", "length of the edge", LENGTH, says=("edge", "long", "front", "edge is", "along", "opening",
                                                          "neck"), axis="length", extra=True, sane="1 cm..5 m"),
        STITCH_TENSION,
        ROW_TENSION,
    ),
    steps=(
        Step("stitches", "Multiply the rows by the stitch tension and divide by the row tension",
             "rows * tension / row_tension", STITCHES, rounding=STITCH,
             label="stitches to pick up", says=("stitches", "how many", "pick up", "how many stitches", "sts")),
        Step("ratio", "Put it as a ratio", kind=TEXT, label="pick up", says=("ratio", "how often", "rate", "every", "ratio and total")),
    ),
    answers=("stitches", "ratio"),
    headline=("Pick up {stitches}: {ratio}.", "Pick up {ratio}.", "Pick up {stitches}."),
    algorithm=_pick_up,
    no_unknown=("tension", "row_tension", "edge"),
    backwards={"rows": "stitches * row_tension / tension"},
    source=ARITHMETIC,
    cautions=(Caution("A band in rib or garter stitch has a tension of its own: take the stitch tension from a swatch "
                      "of the band"),),
    examples=(
        "I'm picking up along 120 row ends; tension is 21 stitches and 28 rows to 10 cm. How many stitches? -> 90 "
        "stitches; 3 stitches for every 4 rows",
        "pick up along 96 rows at 22 sts and 30 rows to 10 cm -> 70 stitches",
        "what ratio do I pick up at 20 sts and 28 rows to 10 cm along 140 rows -> 3 stitches for every 4 rows; 100 "
        "stitches",
    ),
    related=("buttonhole rows", "stitches for a width"),
)


def _spread(run: Run) -> Outcome:
    """What is left over when the plain rows are shared equally, and where it goes."""
    left = run.get("plain") - (run.get("holes") - 1) * run.rounded("between")
    if not left:
        return Outcome({"left_over": Fraction(0)})
    first, last = left // 2, left - left // 2
    run.say("The rest goes to the two ends, the larger share to the last", "plain rows − spaces × rows between", "",
            f"{left} over: {first} and {last}")
    return Outcome({"left_over": Fraction(left), "first_end": run.get("before") + first,
                    "last_end": run.get("after") + last})


def _buttonholes(topic: str, kind_word: str, unit: str, kind: Kind, default_hole: str, hole_reason: str,
                 rounding: Rounding, says: tuple[str, ...],
                 examples: tuple[str, ...]) -> Rule:
    """Buttonholes along a band worked in rows, or in stitches: the same sum in two units."""
    return Rule(
        topic=topic,
        family="knitting",
        says=says,
        about=f"How many plain {kind_word} lie between buttonholes spaced evenly along a band.",
        inputs=(
            Input("band", f"band {kind_word}", kind, says=("band", "button band", "buttonhole band", "band has",
                                                           kind_word, "border", "picked up",
                                                           "in all"),
                  ask=f"How many {kind_word} has the band?", example=f"120 {kind_word}", sane=f"9 {unit}..2000 {unit}",
                  practice=f"80 {unit}..160 {unit} by 4 {unit}"),
            Input("holes", "buttonholes", COUNT, noun="buttonhole", says=("buttonholes", "buttons", "holes",
                                                                          "button holes", "button"),
                  ask="How many buttonholes?",
                  example="6", sane="1..60", practice="5..8 by 1"),
            Input("hole", f"{kind_word} a buttonhole", kind, says=("each", "a buttonhole", "per buttonhole",
                                                                   f"{kind_word} each", "wide",
                                                                   "per hole"),
                  default=default_hole, because=hole_reason, sane=f"1 {unit}..40 {unit}",
                  practice=f"2 {unit}..4 {unit} by 1 {unit}", usual=f"1 {unit}..12 {unit}"),
            Input("before", f"plain {kind_word} before the first", kind,
                  says=("before the first", "at the start", "before", "bottom", "at the bottom", "first",
                        "below the first", "at each end", "each end", "both ends", "at both ends", "ends", "either end", "at either end",
                        "plain at"),
                  default=f"4 {unit}", because="close to the end of the band (common practice)",
                  sane=f"0 {unit}..400 {unit}", practice=f"3 {unit}..6 {unit} by 1 {unit}",
                  usual=f"0 {unit}..40 {unit}"),
            Input("after", f"plain {kind_word} after the last", kind,
                  says=("after the last", "at the end", "on the end", "the end", "after", "top", "at the top", "last",
                        "above the last"),
                  default=Default("=before", "the same at both ends"), sane=f"0 {unit}..400 {unit}",
                  practice=f"3 {unit}..6 {unit} by 1 {unit}", usual=f"0 {unit}..40 {unit}", spoken=True),
        ),
        steps=(
            Step("plain", "Take the ends and the buttonholes off the band", "band - before - after - holes * hole",
                 kind, label=f"plain {kind_word} between the end buttonholes"),
            Step("exact", "Share them among the spaces, one fewer than the buttonholes", "plain / (holes - 1)", kind,
                 label="share of a space"),
            Step("between", f"Whole {kind_word} only, the rest left for the ends", "exact", kind, rounding=rounding,
                 label=f"plain {kind_word} between buttonholes",
                 says=("between", "apart", "between buttonholes", f"plain {kind_word}", "spacing", "space",
                       "how far apart", f"how many {kind_word}")),
            Step("centres", "Add one buttonhole's own", "rounded(between) + hole", kind, label="centre to centre",
                 says=("centre to centre", "from centre", "middle to middle", "start to start",
                       *(f"{lead}{end} of one" for end in ("middle", "centre", "start", "beginning", "top", "bottom")
                         for lead in ("", "from the ", f"{kind_word} from the ", f"how many {kind_word} from the ")),
                       f"how many {kind_word} centre to centre", f"how many {kind_word} from middle to middle",
                       f"how many {kind_word} from centre to centre", f"{kind_word} from centre to centre")),
            Step("left_over", "What does not share out", kind=kind,
                 label="left over for the ends",
                 says=("left over", "leftover", f"{kind_word} left over", f"{kind_word} are left over", f"left over {kind_word}",
                       "remainder", f"{kind_word} over", f"spare {kind_word}", "do not share out", "left for the ends",
                       f"how many {kind_word} are left", f"how many {kind_word} left")),
            Step("first_end", "The start's, with its share", kind=kind,
                 label=f"{kind_word} before the first, with its share"),
            Step("last_end", "The end's, with its share", kind=kind,
                 label=f"{kind_word} after the last, with its share"),
        ),
        answers=("between", "centres", "left_over", "first_end", "last_end"),
        headline=("Work {between} plain between two buttonholes, {centres} from centre to centre.",),
        algorithm=_spread,
        no_unknown=("band", "holes", "hole", "before", "after"),
        refusals=(
            # Heard so that the one is taken for nothing else.
            Refusal("holes < 2", f"one buttonhole has no other to be apart from. Give two or more, such as: band of 120 "
                    f"{kind_word}, 6 buttonholes of 2 {kind_word}"),
            Refusal("plain < holes - 1", f"there is no room for so many buttonholes on this band: the {kind_word} would run "
                    f"out. Give fewer buttonholes, smaller ones or a longer band, such as: band of 120 {kind_word}, 6 "
                    f"buttonholes of 2 {kind_word}"),
        ),
        source=ARITHMETIC,
        notes=("Published sums share the remainder among the spaces, one to each, instead of the ends.",),
        examples=examples,
        related=("pick up",),
    )


def _down(unit: str) -> Rounding:
    """Down to a whole one: what does not share out goes to the ends."""
    step = RoundTo("down", Fraction(1), unit)
    return Rounding("whole ones that fit", step, step)


BUTTONHOLE_ROWS = _buttonholes(
    "buttonhole rows", "rows", "row", ROWS, "2 row", "cast off on one row and cast on again on the next", _down("row"),
    ("buttonhole rows", "buttonholes", "button band", "buttonhole band", "knitted buttonholes", "space the buttonholes",
     "buttonhole", "row holes", "row buttonholes"),
    (
        "The button band has 120 rows. Six buttonholes of 2 rows each, 4 plain rows before the first and 4 after the "
        "last. "
        "How many plain rows between two buttonholes? -> 20 rows; 22 rows",
        "button band 110 rows, 7 buttonholes of 2 rows, 3 rows at each end, rows between -> 15 rows",
        "knitted band of 96 rows, 5 buttonholes, 4 rows before the first, how many rows between -> 19 rows",
    ),
)
BUTTONHOLE_STITCHES = _buttonholes(
    "buttonhole stitches", "stitches", "st", STITCHES, "2 st",
    "two or three stitches are cast off for a buttonhole (published handbook)", _down("st"),
    ("buttonhole stitches", "buttonholes", "button band", "buttonhole band", "knitted buttonholes",
     "space the buttonholes", "buttonhole", "picked up for the band"),
    (
        "band of 100 stitches, 7 buttonholes of 4 stitches, 3 stitches at each end, how many stitches between -> 11 "
        "stitches",
        "I picked up 96 sts for the button band, 6 buttonholes of 2 sts, 4 sts at each end. Stitches between the "
        "buttonholes? -> 15 stitches",
        "button band 140 sts, 8 buttonholes 3 sts each, 5 sts before the first and 5 after the last -> 15 stitches",
    ),
)
