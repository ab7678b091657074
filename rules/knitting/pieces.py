"""Scarves and blankets, toys to another yarn, picking up, buttonholes, the rounds of a crown, and fit."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import (
    ARITHMETIC,
    GEOMETRY,
    Caution,
    Default,
    Derivation,
    Fact,
    Follows,
    Input,
    Rule,
    Step,
    choice,
)
from ..engine.kinds import COUNT, LENGTH, MASS, PERCENT, RATIO, ROWS, STITCH_RATE, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, COUNT_NEAR, COUNT_UP, PERCENT_TENTH, ROW, STITCH, YARN_LENGTH, YARN_WEIGHT
from ..engine.run import Impossible, Run
from .words import EDGE_STITCHES, MULTIPLE, ROW_TENSION, SANE_STITCHES, STITCH_TENSION, SWATCH_CAUTION

SCARF_OR_BLANKET = Rule(
    topic="scarf, blanket",
    family="knitting",
    says=("scarf", "blanket", "afghan", "throw", "shawl", "baby blanket", "stole", "cowl", "knitted blanket", "wrap", "muffler", "lap rug", "knitted scarf",
          "dishcloth", "washcloth", "blankie"),
    about="Stitches to cast on and rows to work for a scarf or blanket of a size, its border included unless it is to be added.",
    inputs=(
        Input("width", "width", LENGTH, says=("wide", "width", "across", "by"), axis="width", ask="How wide is it to be?", example="30 cm",
              sane="2 cm..6 m", practice="20 cm..120 cm by 5 cm"),
        Input("length", "length", LENGTH, says=("long", "length", "by"), axis="length", ask="How long is it to be?", example="1.5 m", sane="2 cm..10 m",
              practice="100 cm..200 cm by 10 cm"),
        STITCH_TENSION,
        ROW_TENSION,
        MULTIPLE,
        EDGE_STITCHES,
        Input("border", "border", LENGTH, says=("border", "edging", "garter border", "frame", "borders"), default=Default("0 cm", "no border was named", derived=True),
              sane="0 cm..60 cm", practice="2 cm..8 cm by 1 cm"),
        choice("outside", "where the border lies", {
            "within": ("including the border", "border included", "with the border", "including border", "inclusive", "border inside"),
            "added": ("plus a border", "plus border", "added border", "border added", "border outside", "and then a border", "before the border",
                      "plus borders", "plus the border", "not including the border", "excluding the border", "without the border", "plus an edging"),
        }, default=Default("within", "a size is the finished size, its border in it", derived=True)),
    ),
    steps=(
        Step("product", "Multiply the width by the tension", "width * tension", STITCHES, label="stitches before rounding"),
        Step("repeats", "Take the edge stitches off and divide by the multiple, to the nearest whole one (a tie goes up)", "(product - edge) / multiple",
             COUNT, rounding=COUNT_NEAR, label="multiples"),
        Step("stitches", "Take that many multiples, and the edge stitches", "max(1, rounded(repeats)) * multiple + edge", STITCHES, rounding=STITCH,
             label="stitches to cast on", says=("cast on", "stitches", "how many", "how many stitches", "sts", "chain"), stated=("have", "stitches", "got")),
        Step("rows", "Multiply the length by the row tension", "length * row_tension", ROWS, rounding=ROW, label="rows", says=("rows", "how many rows", "rounds")),
        Step("real", "Divide the stitches by the tension", "stitches / tension", rounding=BODY, label="width they give"),
        Step("border_stitches", "The border at the tension", "border * tension", STITCHES, rounding=STITCH, label="border stitches at each side",
             says=("border stitches", "for the border")),
        Step("border_rows", "The border at the row tension", "border * row_tension", ROWS, rounding=ROW, label="border rows at each end"),
        Step("whole_width", "Add the border to both sides", "width + 2 * border", rounding=BODY, label="width with the border", when={"outside": "added"}),
        Step("whole_length", "Add the border to both ends", "length + 2 * border", rounding=BODY, label="length with the border", when={"outside": "added"}),
    ),
    answers=("stitches", "rows", "real", "border_stitches", "border_rows", "whole_width", "whole_length"),
    insists=True,
    headline=("Cast on {stitches} and work {rows}.", "Cast on {stitches}."),
    backwards={"width": "stitches / tension", "tension": "stitches / width"},
    sizes=(("width", "length"),),
    source=ARITHMETIC,
    cautions=(Caution(SWATCH_CAUTION),),
    notes=("The yarn it takes comes from the swatch's weight: ask for yarn by swatch.",),
    examples=(
        "cast on for a scarf 30 cm wide and 1.5 m long, 20 sts and 28 rows to 10 cm -> 60 stitches; 420 rows",
        "blanket 100 x 150 cm, 18 sts and 26 rows to 10 cm, how many stitches and rows -> 180 stitches; 390 rows",
        "blanket 36 x 48 in at 4 sts per inch, multiple of 12 plus 3 edge stitches -> 147 stitches",
    ),
    related=("yarn by swatch", "stripes"),
)

TOY_TO_ANOTHER_YARN = Rule(
    topic="toy to another yarn",
    family="knitting",
    says=("toy", "rabbit", "teddy", "bear", "doll", "bunny", "amigurumi", "soft toy", "stuffed", "toy pattern", "another yarn", "thicker yarn", "thinner yarn",
          "elephant", "cuddly", "stuffing", "toys", "creature", "figure", "dinosaur", "octopus", "finer yarn", "chunky yarn", "mouse", "lamb"),
    about="The size, yarn and stuffing of a toy worked stitch for stitch in another yarn, by the factor of the two tensions.",
    inputs=(
        Input("old", "pattern's tension", STITCH_RATE,
              says=("pattern", "original", "old", "pattern is", "from", "pattern tension", "written for", "was", "original tension", "old tension", "designed"),
              ask="What is the pattern's tension?", example="22 sts to 10 cm", sane=SANE_STITCHES, practice="18 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("new", "new tension", STITCH_RATE,
              says=("new", "i shall knit", "mine", "shall", "i will", "i'll knit", "instead", "new tension", "tension", "what tension", "will knit", "i knit", "thicker", "now", "mine is"),
              ask="What is the tension of the new yarn?", example="16.5 sts to 10 cm", sane=SANE_STITCHES, practice="10 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("height", "height in the pattern", LENGTH,
              says=("tall", "stands", "high", "height", "long", "size", "big", "original height", "pattern height"), axis="height",
              ask="How tall is the toy in the pattern?", example="30 cm", sane="1 cm..3 m", practice="15 cm..40 cm by 1 cm", usual="3 cm..1.5 m"),
        Input("yarn", "yarn in the pattern", LENGTH, says=("yarn", "wool", "takes", "uses", "of yarn", "of wool"), extra=True, sane="1 m..10 km", practice="40 m..300 m by 10 m",
              usual="5 m..3 km"),
        Input("new_weight", "weight of a new ball", MASS, says=("ball", "balls", "per ball", "new yarn", "new ball", "a ball", "skein"), extra=True, sane="1 g..5 kg", spoken=True),
        Input("new_length", "length of a new ball", LENGTH, says=("ball", "balls", "per ball", "new yarn", "new ball", "a ball", "skein", "to the ball"), extra=True, sane="1 m..10 km", spoken=True),
        Input("old_weight", "yarn weight in the pattern", MASS, says=("yarn", "wool", "weighs", "of yarn", "of wool", "weight"), extra=True, sane="1 g..20 kg", practice="20 g..200 g by 10 g", spoken=True),
        Input("filling", "stuffing in the pattern", MASS, says=("stuffing", "filling", "stuffed with", "of stuffing", "toy stuffing", "fibrefill", "of filling"), extra=True, sane="1 g..50 kg",
              practice="30 g..200 g by 10 g"),
    ),
    steps=(
        Step("factor", "Divide the pattern's tension by the new one: each stitch is so many times as large", "old / new", RATIO, label="size factor",
             says=("factor", "times", "how much bigger", "scale", "size factor", "how many times")),
        Step("tall", "Every height and width grows by the factor", "height * factor", rounding=BODY, label="new height",
             says=("tall", "how tall", "high", "big", "how big", "new height", "size", "height", "come out", "long"), axis="height",
             stated=("want", "wanted", "to be", "should be", "must be", "finished", "come out", "stand")),
        Step("length", "Each stitch uses the factor times as much yarn", "yarn * factor", rounding=YARN_LENGTH, unit=("yd", "m"), label="new yarn length",
             says=("how much yarn", "yarn", "wool", "metres", "yards", "how much wool", "how many metres")),
        Step("weight", "The new length at the new yarn's weight a metre", "length / new_length * new_weight", MASS, rounding=YARN_WEIGHT, label="new yarn weight",
             says=("grams of yarn", "how many grams", "yarn weight", "grams")),
        Step("about_weight", "In a yarn as much thicker as the stitches are larger, the weight goes by the cube of the factor", "old_weight * factor ^ 3", MASS,
             rounding=YARN_WEIGHT, label="new yarn weight, about", says=("weight of yarn", "grams of yarn", "how much yarn by weight", "yarn weight")),
        Step("stuffing", "Stuffing fills a space, which goes by the cube of the factor", "filling * factor ^ 3", MASS, rounding=YARN_WEIGHT, label="new stuffing",
             says=("stuffing", "filling", "how much stuffing", "fibrefill", "how much filling")),
        Step("area", "The knitted surface goes by the square of the factor", "factor ^ 2", RATIO, label="surface factor", says=("surface", "area")),
        Step("volume", "The space inside goes by the cube of the factor", "factor ^ 3", RATIO, label="stuffing factor", says=("volume", "stuffing factor")),
    ),
    answers=("tall", "length", "weight", "about_weight", "stuffing", "factor", "area", "volume"),
    headline=("It will stand {tall}.", "Everything grows {factor} times."),
    backwards={"new": "old * height / tall"},
    no_unknown=("old", "height", "yarn", "new_weight", "new_length", "old_weight", "filling"),
    source=GEOMETRY,
    cautions=(
        Caution("Eyes, buttons and other small parts do not belong on a toy for a child under three: they can come off and choke", "16 CFR 1501; EN 71-1"),
        Caution("Thicker needles with the same yarn open the stitches and the stuffing shows: change the yarn too"),
    ),
    notes=("A published list of toy scales differs from the ratio of hook sizes: go by tension, not by the hook.",),
    examples=(
        "Toy rabbit pattern is knitted at 22 stitches to 10 cm and stands 30 cm tall. I shall knit it at 16.5 to 10 cm. How tall will it be? -> 40 cm",
        "toy pattern 24 sts to 10 cm, mine 18 sts to 10 cm, 60 g of stuffing in the pattern, how much stuffing -> 143 g",
        "amigurumi doll 20 cm tall at 24 sts to 10 cm, I knit at 18 sts to 10 cm and it takes 60 m of yarn: how much yarn -> 80 m; 26.5 cm",
    ),
    related=("size at my tension", "yarn needed"),
    derivation=(
        Derivation(
            "length",
            (
                Fact("The pattern's yarn goes into its stitches", "yarn = stitches * old_each"),
                Fact("There are as many stitches in the new toy", "length = stitches * new_each"),
                Fact("Each stitch is the size factor times as large, and takes that much more yarn", "new_each = factor * old_each"),
                Follows("Put the third into the second", "length = stitches * factor * old_each"),
                Follows("The first stands in it", "length = yarn * factor"),
            ),
            names={"stitches": "the number of stitches", "old_each": "the yarn in a stitch of the pattern", "new_each": "the yarn in a new stitch"},
        ),
        Derivation(
            "volume",
            (
                Fact("The inside of a toy is like many small boxes, each long, wide and high", "old_box = long * wide * high"),
                Fact("In the new toy every length is the size factor times as long", "new_box = (factor * long) * (factor * wide) * (factor * high)"),
                Fact("The stuffing factor says how many times as much goes in", "volume = new_box / old_box"),
                Follows("Gather the factors", "new_box = factor ^ 3 * (long * wide * high)"),
                Follows("The old box stands in it, and cancels", "volume = factor ^ 3"),
            ),
            names={"old_box": "a box of the pattern's toy", "new_box": "the box in the new toy", "long": "its length", "wide": "its width",
                   "high": "its height"},
            try_with={"factor": "1.5"},
        ),
    ),
)

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
    words = f"{ratio.numerator} {'stitch' if ratio.numerator == 1 else 'stitches'} for every {ratio.denominator} {'row' if ratio.denominator == 1 else 'rows'}"
    run.say("The ratio is the stitch tension to the row tension; the nearest that is easy to count", "stitch tension ÷ row tension",
            f"{run.show(run.get('tension'), STITCH_RATE)} ÷ {run._number('row_tension')}", f"{exact.numerator} to {exact.denominator}: {words}")
    notes = () if ratio == exact else (f"The exact ratio is {exact.numerator} to {exact.denominator}; the total is from the exact tensions.",)
    return Outcome({"ratio": words}, notes=notes)


PICK_UP = Rule(
    topic="pick up",
    family="knitting",
    says=("pick up", "picking up", "pick up stitches", "picked up", "pick up and knit", "pick-up", "row ends", "button band", "neckband", "along the edge", "front edge",
          "how many to pick up", "knit up"),
    about="How many stitches to pick up along an edge of rows, and a simple ratio to pick up by.",
    inputs=(
        Input("rows", "edge rows", ROWS, says=("row ends", "rows", "edge", "along", "rows along", "edge rows", "ends"),
              default=Default("=edge * row_tension", "The edge's length at the row tension", derived=True, given=("edge",)),
              ask="How many rows has the edge?", example="120 rows", sane="1 row..5000 row", practice="80 row..200 row by 10 row"),
        Input("edge", "length of the edge", LENGTH, says=("edge", "long", "front", "edge is", "along", "opening", "neck"), axis="length", extra=True, sane="1 cm..5 m"),
        STITCH_TENSION,
        ROW_TENSION,
    ),
    steps=(
        Step("stitches", "Multiply the rows by the stitch tension and divide by the row tension", "rows * tension / row_tension", STITCHES, rounding=STITCH,
             label="stitches to pick up", says=("stitches", "how many", "pick up", "how many stitches", "sts")),
        Step("ratio", "Put it as a ratio", kind=TEXT, label="pick up", says=("ratio", "how often", "rate", "every")),
    ),
    answers=("stitches", "ratio"),
    headline=("Pick up {stitches}: {ratio}.", "Pick up {ratio}.", "Pick up {stitches}."),
    algorithm=_pick_up,
    no_unknown=("tension", "row_tension", "edge"),
    backwards={"rows": "stitches * row_tension / tension"},
    source=ARITHMETIC,
    cautions=(Caution("A band in rib or garter stitch has a tension of its own: take the stitch tension from a swatch of the band"),),
    examples=(
        "I'm picking up along 120 row ends; tension is 21 stitches and 28 rows to 10 cm. How many stitches? -> 90 stitches; 3 stitches for every 4 rows",
        "pick up along 96 rows at 22 sts and 30 rows to 10 cm -> 70 stitches",
        "what ratio do I pick up at 20 sts and 28 rows to 10 cm along 140 rows -> 3 stitches for every 4 rows; 100 stitches",
    ),
    related=("buttonhole rows", "stitches for a width"),
)


def _spread(run: Run) -> Outcome:
    """What is left over when the plain rows are shared equally, and where it goes. Raises Impossible with no room."""
    if run.get("plain") < run.get("holes") - 1:
        fit = max(1, int((run.get("band") - run.get("before") - run.get("after") + 1) // (run.get("hole") + 1)))
        raise Impossible(f"there is no room for {int(run.get('holes'))} buttonholes on this band; {fit} would fit, such as: buttonholes {fit}")
    left = run.get("plain") - (run.get("holes") - 1) * run.rounded("between")
    if not left:
        return Outcome({"left_over": Fraction(0)})
    first, last = left // 2, left - left // 2
    run.say("The rest goes to the two ends, the larger share to the last", "plain rows − spaces × rows between", "", f"{left} over: {first} and {last}")
    return Outcome({"left_over": Fraction(left), "first_end": run.get("before") + first, "last_end": run.get("after") + last})


def _buttonholes(topic: str, kind_word: str, unit: str, kind: object, default_hole: str, hole_reason: str, rounding: object, says: tuple[str, ...],
                 examples: tuple[str, ...]) -> Rule:
    """Buttonholes along a band worked in rows, or in stitches: the same sum in two units."""
    return Rule(
        topic=topic,
        family="knitting",
        says=says,
        about=f"How many plain {kind_word} lie between buttonholes spaced evenly along a band.",
        inputs=(
            Input("band", f"band {kind_word}", kind, says=("band", "button band", "buttonhole band", "band has", "has", kind_word, "border", "picked up", "in all"),  # type: ignore[arg-type]
                  ask=f"How many {kind_word} has the band?", example=f"120 {kind_word}", sane=f"4 {unit}..2000 {unit}", practice=f"80 {unit}..160 {unit} by 4 {unit}"),
            Input("holes", "buttonholes", COUNT, noun="buttonhole", says=("buttonholes", "buttons", "holes", "button holes", "button"), ask="How many buttonholes?",
                  example="6", sane="2..60", practice="5..8 by 1"),
            Input("hole", f"{kind_word} a buttonhole", kind, says=("each", "a buttonhole", "per buttonhole", f"{kind_word} each", "wide", "per hole"),  # type: ignore[arg-type]
                  default=default_hole, because=hole_reason, sane=f"1 {unit}..40 {unit}", practice=f"2 {unit}..4 {unit} by 1 {unit}", usual=f"1 {unit}..12 {unit}"),
            Input("before", f"plain {kind_word} before the first", kind,  # type: ignore[arg-type]
                  says=("before the first", "at the start", "before", "bottom", "at the bottom", "first", "below the first", "at each end", "each end", "both ends", "at both ends", "ends"),
                  default=f"4 {unit}", because="close to the end of the band (common practice)", sane=f"0 {unit}..400 {unit}", practice=f"3 {unit}..6 {unit} by 1 {unit}", usual=f"0 {unit}..40 {unit}"),
            Input("after", f"plain {kind_word} after the last", kind,  # type: ignore[arg-type]
                  says=("after the last", "at the end", "after", "top", "at the top", "last", "above the last"),
                  default=Default("=before", "the same at both ends"), sane=f"0 {unit}..400 {unit}", practice=f"3 {unit}..6 {unit} by 1 {unit}", usual=f"0 {unit}..40 {unit}"),
        ),
        steps=(
            Step("plain", "Take the ends and the buttonholes off the band", "band - before - after - holes * hole", kind, label=f"plain {kind_word} between the end buttonholes"),  # type: ignore[arg-type]
            Step("exact", "Share them among the spaces, one fewer than the buttonholes", "plain / (holes - 1)", kind, label="share of a space"),  # type: ignore[arg-type]
            Step("between", f"Whole {kind_word} only, the rest left for the ends", "exact", kind, rounding=rounding, label=f"plain {kind_word} between buttonholes",  # type: ignore[arg-type]
                 says=("between", "apart", "between buttonholes", f"plain {kind_word}", "spacing", "space", "how far apart", f"how many {kind_word}")),
            Step("centres", "Add one buttonhole's own", "rounded(between) + hole", kind, label="centre to centre", says=("centre to centre", "from centre")),  # type: ignore[arg-type]
            Step("left_over", "What does not share out", kind=kind, label="left over for the ends"),  # type: ignore[arg-type]
            Step("first_end", "The start's, with its share", kind=kind, label=f"{kind_word} before the first, with its share"),  # type: ignore[arg-type]
            Step("last_end", "The end's, with its share", kind=kind, label=f"{kind_word} after the last, with its share"),  # type: ignore[arg-type]
        ),
        answers=("between", "centres", "left_over", "first_end", "last_end"),
        headline=("Work {between} plain between two buttonholes, {centres} from centre to centre.",),
        algorithm=_spread,
        no_unknown=("band", "holes", "hole", "before", "after"),
        source=ARITHMETIC,
        notes=("Published sums share the remainder among the spaces, one to each, instead of the ends.",),
        examples=examples,
        related=("pick up",),
    )


def _down(unit: str) -> object:
    from ..engine.rounding import _line

    return _line("whole ones that fit", f"down 1 {unit}", f"down 1 {unit}")


BUTTONHOLE_ROWS = _buttonholes(
    "buttonhole rows", "rows", "row", ROWS, "2 row", "cast off on one row and cast on again on the next", _down("row"),
    ("buttonhole rows", "buttonholes", "button band", "buttonhole band", "knitted buttonholes", "space the buttonholes", "buttonhole"),
    (
        "The button band has 120 rows. Six buttonholes of 2 rows each, 4 plain rows before the first and 4 after the last. "
        "How many plain rows between two buttonholes? -> 20 rows; 22 rows",
        "button band 110 rows, 7 buttonholes of 2 rows, 3 rows at each end, rows between -> 15 rows",
        "knitted band of 96 rows, 5 buttonholes, 4 rows before the first, how many rows between -> 19 rows",
    ),
)
BUTTONHOLE_STITCHES = _buttonholes(
    "buttonhole stitches", "stitches", "st", STITCHES, "2 st", "two or three stitches are cast off for a buttonhole (published handbook)", _down("st"),
    ("buttonhole stitches", "buttonholes", "button band", "buttonhole band", "knitted buttonholes", "space the buttonholes", "buttonhole", "picked up for the band"),
    (
        "band of 100 stitches, 7 buttonholes of 4 stitches, 3 stitches at each end, how many stitches between -> 11 stitches",
        "I picked up 96 sts for the button band, 6 buttonholes of 2 sts, 4 sts at each end. Stitches between the buttonholes? -> 15 stitches",
        "button band 140 sts, 8 buttonholes 3 sts each, 5 sts before the first and 5 after the last -> 15 stitches",
    ),
)

ROUNDS_OF_A_CIRCLE = Rule(
    topic="decrease rounds of a circle",
    family="knitting",
    says=("crown", "decrease rounds", "decrease round", "how many decrease rounds", "decrease rounds of a circle", "circle", "rounds of decreasing", "taking out", "flat circle",
          "top of the hat", "crochet circle", "increase rounds", "close the top", "yoke decreases", "each decrease round", "every decrease round", "every round", "each round"),
    about="How many decrease rounds bring a circle of stitches down to a few, so many in each round; the same for increase rounds.",
    inputs=(
        Input("start", "stitches at the start", STITCHES, says=("crown of", "from", "start", "have", "stitches", "sts", "on the needles", "there are", "crown", "begin with", "of", "got"),
              ask="How many stitches are there to start with?", example="112 stitches", sane="1 st..5000 st", practice="64 st..128 st by 8 st"),
        Input("left", "stitches left", STITCHES, says=("left", "are left", "until", "down to", "to", "remain", "remaining", "end with", "reach"),
              ask="How many stitches are to be left?", example="8 stitches", sane="0 st..5000 st", practice="6 st..12 st by 2 st", usual="1 st..400 st"),
        Input("each", "stitches in each round", STITCHES,
              says=("taking out", "each round", "every round", "decrease round", "a round", "per round", "in every decrease round", "each decrease round", "at a time", "losing", "lose",
                    "decrease", "in every round", "every decrease round", "times a round", "sections", "decreasing"),
              default="8 st", because="eight sections are the usual crown (common practice)", sane="1 st..200 st", practice="6 st..10 st by 1 st", usual="2 st..24 st"),
    ),
    steps=(
        Step("change", "Take the smaller number of stitches from the larger", "abs(start - left)", STITCHES, label="stitches to change"),
        Step("rounds", "Divide by the stitches of each round", "change / each", COUNT, rounding=COUNT_UP, noun="round", label="decrease rounds",
             says=("rounds", "how many rounds", "decrease rounds", "how many", "how many times"), stated=("rounds",)),
        Step("over", "What the last round has too many", "rounded(rounds) * each - change", STITCHES, label="fewer in the last round"),
    ),
    answers=("rounds", "over"),
    headline=("Work {rounds}.",),
    spans=(("start", "left"),),
    source=ARITHMETIC,
    examples=(
        "A crown of 112 stitches, taking out 8 in every decrease round until 8 are left: how many decrease rounds? -> 13 rounds",
        "crown from 96 stitches down to 6, decreasing 6 each round, how many decrease rounds -> 15 rounds",
        "how many decrease rounds for a crown of 80 stitches down to 8 -> 9 rounds",
    ),
    related=("hat", "evenly spaced decreases"),
)

# Fit by ease over the body: the council's current list as its article readers print it, with the older list beside it.
FITS_NOW = ((Fraction(0), "very close (negative ease)"), (Fraction(1), "close"), (Fraction(4), "classic"), (Fraction(6), "loose"))
FITS_OLD = ((Fraction(1), "very close"), (Fraction(2), "close"), (Fraction(4), "standard"), (Fraction(6), "loose"))
INCH = Fraction(254, 10)


def _named(ease: Fraction, fits: tuple[tuple[Fraction, str], ...]) -> str:
    """The name of the first fit whose upper end, in inches, the ease does not pass."""
    for end, name in fits:
        if ease < 0 or ease / INCH < end or (ease / INCH == end and end > 2):
            return name
    return "oversized"


def _fit(run: Run) -> Outcome:
    ease = run.get("ease")
    if ease < 0:
        now, old = FITS_NOW[0][1], "very close"
    elif ease == 0:
        now, old = "close", "very close"
    else:
        now, old = _named(ease, FITS_NOW[1:]), _named(ease, FITS_OLD)
    words = now if now == old else f"{now} in the current list, {old} in the older list"
    run.say("Look the ease up in the lists of fits", "", run.show(ease, LENGTH), words)
    return Outcome({"fit": words}, notes=("Names of fits shift between lists, so both are given.",) if now != old else ())


FIT = Rule(
    topic="fit and ease in knitting",
    family="knitting",
    says=("sweater ease", "ease in knitting", "knitting ease", "fit of a sweater", "knitted ease", "sweater fit", "cardigan ease", "knitted sweater",
          "jumper ease", "knitted cardigan", "cardigan knitted", "sweater knitted", "knitted pullover", "knitted garment"),
    about="The ease between a body and a finished knitted garment, and what the lists of fits call it.",
    inputs=(
        Input("body", "body measure", LENGTH, says=("body", "bust", "chest", "my bust", "my chest", "actual", "i am", "my", "his chest", "her bust", "measures", "i measure"),
              ask="What does the body measure?", example="92 cm", sane="10 cm..3 m", practice="80 cm..120 cm by 2 cm"),
        Input("finished", "finished measure", LENGTH, says=("finished", "finished sweater", "finished chest", "finished bust", "pattern", "comes out", "jumper is", "sweater is",
                                                            "jumper of", "sweater of", "cardigan of"),
              ask="What does the finished garment measure?", example="102 cm", sane="10 cm..4 m", practice="84 cm..130 cm by 2 cm"),
    ),
    steps=(
        Step("ease", "Take the body measure from the finished one", "finished - body", rounding=BODY, label="ease", says=("ease", "how much ease", "much ease", "difference"),
             stated=("ease", "positive ease", "of ease")),
        Step("fit", "Name it", kind=TEXT, label="fit", says=("fit", "what fit", "how will it fit", "kind of fit", "category", "classic", "tight", "loose")),
        Step("share", "As a share of the body", "ease / body", PERCENT, rounding=PERCENT_TENTH, label="ease as a share of the body", says=("percent", "percentage", "share")),
    ),
    answers=("ease", "fit", "share"),
    headline=("The ease is {ease}: {fit}.",),
    algorithm=_fit,
    backwards={"finished": "body + ease", "body": "finished - ease"},
    source="lists of fits: a current council list (very close, close, classic, loose, oversized) and an older one; names shift between them",
    examples=(
        "knitting ease: bust 92 cm, finished sweater 102 cm, what fit is that -> classic in the current list, standard in the older list; 10 cm",
        "what fit is a cardigan knitted 44 in round on a 40 in chest -> classic in the current list, standard in the older list; 4 in",
        "how will a knitted jumper of 86 cm fit on a 92 cm bust -> -6 cm; very close (negative ease) in the current list, very close in the older list",
    ),
    related=("size at my tension",),
)
