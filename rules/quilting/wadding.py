"""Wadding (batting) for a quilt: its size, and the smallest pack that covers it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_UP, SHEET
from ..engine.run import Run
from ..engine.units import factor
from .backing import OVER
from .words import LENGTH_OF_QUILT, QUILT_ASKED, SQUARE, WIDTH_OF_QUILT


@dataclass(frozen=True, slots=True)
class Pack:
    """A size that wadding is packed in, in inches."""

    name: str
    width: int
    length: int

    def covers(self, width: Fraction, length: Fraction) -> bool:
        """Whether it covers a size (in mm) one way round or the other."""
        small, large = sorted((width, length))
        inch = factor("in")
        return small <= min(self.width, self.length) * inch and large <= max(self.width, self.length) * inch


# Packs on which five published charts agree widely (makers differ by some inches); craft is the smallest of them.
PACKS = (Pack("craft", 36, 45), Pack("crib", 45, 60), Pack("twin", 72, 90), Pack("full", 81, 96), Pack("queen", 90,
    108), Pack("king", 120, 120))


def smallest_pack(width: Fraction, length: Fraction) -> Pack | None:
    """The smallest pack that covers a size either way round, or None when none does."""
    return next((pack for pack in PACKS if pack.covers(width, length)), None)


def _pack(run: Run) -> Outcome:
    width, length = run.get("wide"), run.get("long")
    pack = smallest_pack(width, length)
    largest = PACKS[-1]
    run.say("The smallest pack that covers it, either way round", "",
    ", ".join(f"{one.width} x {one.length}" for one in PACKS) + " in",
            f"{pack.name}, {pack.width} x {pack.length} in" if pack else "none")  # fmt: skip
    if pack is None:
        size = f"{largest.width} x {largest.length} in"
        return Outcome({"pack": f"none: larger than the largest, {size}; join two, or buy from a roll"})
    metric = f" ({pack.width * 254 // 100} x {pack.length * 254 // 100} cm)" if run.system == "cm" else ""
    return Outcome({"pack": f"{pack.name}, {pack.width} x {pack.length} in{metric}"})


WADDING = Rule(
    topic="wadding (batting)",
    family="quilting",
    says=("wadding", "batting", "batting size", "batt", "quilt batting", "wadding for a quilt", "bag of batting",
          "packaged batting", "which pack", "what pack", "smallest pack", "batting for", "wadding for", "standard bag", "fleece wadding"),
    about="The size of wadding for a quilt, and the smallest standard pack that covers it either way round.",
    inputs=(
        replace(WIDTH_OF_QUILT, says=(*WIDTH_OF_QUILT.says, *QUILT_ASKED)),
        LENGTH_OF_QUILT,
        SQUARE,
        OVER,
        Input("roll", "width of the roll", LENGTH, says=("roll", "on the roll", "off the roll", "wide batting",
              "wide wadding", "wadding width", "by the metre", "batting on the roll", "wide roll"), extra=True,
              ask="How wide is the roll?", example="96 in", sane="20 cm..4 m",
              practice="90 in..120 in by 6 in"),
    ),
    steps=(
        Step("wide", "Add the extra on both sides", "width + 2 * over", rounding=SHEET, label="wadding width",
             says=("size", "which size", "how big", "how large", "how much", "what size", "how much batting", "how much wadding",
             "wadding size"), stated=("wide", "wadding came to", "batting came to", "wadding is", "batting is", "came to",
             "came out at", "wadding measures", "batting measures")),
        Step("long", "Add the extra at both ends", "length + 2 * over", rounding=SHEET, label="wadding length",
             says=("how long must it be", "how long will it be", "how long should it be", "how long does it need to be",
             "wadding length", "batting length", "how long the wadding", "how long must the wadding",
             "how long is the wadding", "how long must the batting", "how long is the batting", "how long a piece",
             "how long will the wadding", "how long should the wadding", "how long should the batting",)),
        Step("pack", "", kind=TEXT, label="pack", says=("pack", "which size bag", "which bag", "which bag of batting", "which size pack",
                                                        "which size packet", "which pack", "wadding pack",
             "pack of wadding", "bag", "which size bag", "what size pack", "package", "packet", "which standard",
             "smallest", "what size bag", "ready cut", "that covers", "that will cover", "which one covers", "covers a", "smallest pack",
             "smallest one that covers", "packaged size", "standard size", "which standard size", "what size package")),
        Step("need", "From a roll, lying whichever way takes less, in as many widths as it takes",
             "min(ceil(wide / roll) * long, ceil(long / roll) * wide)", label="length from the roll, before rounding",
             unit=("in", "cm")),
        Step("cloth", "As it is bought", "need", rounding=BUY_CLOTH, label="length from the roll",
             says=("from the roll", "off the roll", "how many metres", "how many yards", "how much from", "yardage",
             "yds", "how many yds", "length to buy", "how much off", "how much length")),
        Step("widths", "Widths side by side",
             "if(ceil(wide / roll) * long <= ceil(long / roll) * wide, ceil(wide / roll), ceil(long / roll))", COUNT,
             rounding=COUNT_UP, noun="width", label="widths of the roll",
             says=("how many widths", "widths of the roll", "widths side by side", "number of widths",)),
    ),
    answers=("cloth", "wide", "long", "pack", "widths"),
    headline=("Buy {cloth} from the roll ({widths}) for wadding {wide} by {long}.",
        "The wadding is {wide} by {long}; smallest pack: {pack}."),
    sizes=(("width", "length"),),
    told_sizes=(("wide", "long"),),
    home="in",
    source=COMMON_PRACTICE + "; packs: published charts of wadding sizes, which agree widely",
    algorithm=_pack,
    notes=("Packs of some makers differ by a few inches (twin 72 x 92, full 84 x 96, queen 92 x 108): read the "
           "label.", ),
    examples=(
        "which size bag of batting for a quilt 60 by 75 in, 4 in to spare all round -> twin, 72 x 90 in; 68 in; 83 "
        "in",
        "how big a wadding for a quilt 60 x 80 in with 3 in over each side -> 66 in; 86 in",
        "wadding for a 100 x 130 cm cot quilt -> 120 cm; 150 cm; twin, 72 x 90 in (182 x 228 cm)",
        "how many yards of batting from a 96 in wide roll for a 70 x 90 quilt -> 2 3/4 yd; 1 width",
    ),
    related=("backing",),
)
