"""Scarves and blankets: stitches and rows for a size, with a border inside it or added."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import (
    ARITHMETIC,
    Caution,
    Default,
    Input,
    Refusal,
    Rule,
    Step,
    choice,
)
from ..engine.kinds import COUNT, LENGTH, ROWS, STITCHES
from ..engine.rounding import BODY, COUNT_NEAR, ROW, STITCH
from .width import NO_ROOM_FOR_EDGES
from .words import (
    BALANCE,
    BALANCED,
    EDGE_STITCHES,
    GROUPS,
    HOW_MANY_REPEATS,
    MULTIPLE,
    REALLY_WIDE,
    ROW_TENSION,
    STITCH_TENSION,
    SWATCH_CAUTION,
)


def _bordered(wide: str) -> tuple[str, ...]:
    """How a side of the whole is asked for: "how long will it be with the border"."""
    return tuple(f"{wide} {be} {end}" for be in ("is it", "will it be", "will that be", "does it come out", "will it come out", "is that")
                 for end in ("with the border", "with its border", "with the borders", "border included", "including the border",
                             "with the edging", "finished", "when finished"))


SCARF_OR_BLANKET = Rule(
    topic="scarf, blanket",
    family="knitting",
    says=("scarf", "blanket", "afghan", "throw", "shawl", "baby blanket", "stole", "cowl", "knitted blanket", "wrap",
          "muffler", "lap rug", "knitted scarf",
          "dishcloth", "washcloth", "blankie"),
    about="Stitches to cast on and rows to work for a scarf or blanket of a size, its border included unless it is to "
          "be added.",
    inputs=(
        Input("width", "width", LENGTH, says=("wide", "width", "across", "by"), axis="width",
              ask="How wide is it to be?", example="30 cm",
              sane="2 cm..6 m", practice="20 cm..120 cm by 5 cm"),
        Input("length", "length", LENGTH, says=("long", "length", "by"), axis="length",
              ask="How long is it to be?",
              example="1.5 m", sane="2 cm..10 m",
              practice="100 cm..200 cm by 10 cm"),
        STITCH_TENSION,
        ROW_TENSION,
        GROUPS,
        MULTIPLE,
        BALANCE,
        replace(EDGE_STITCHES, default=(*BALANCED, *EDGE_STITCHES.defaults)),
        Input("border", "border", LENGTH, says=("border", "edging", "garter border", "frame", "borders"),
              default=Default("0 cm", "no border was named", derived=True),
              sane="0 cm..60 cm", practice="2 cm..8 cm by 1 cm"),
        choice("outside", "where the border lies", {
            "within": ("including the border", "border included", "including border", "inclusive",
                       "border inside"),
            "added": ("plus a border", "plus border", "plus a", "and add a border", "border on top", "added border",
                      "border added", "border outside",
                      "and then a border", "before the border",
                      "plus borders", "plus the border", "not including the border", "excluding the border",
                      "without the border", "plus an edging"),
        }, default=Default("within", "a size is the finished size, its border in it", derived=True)),
    ),
    steps=(
        Step("product", "Multiply the width by the tension", "width * tension", STITCHES,
             label="stitches before rounding"),
        Step("repeats", "Take the edge stitches off and divide by the multiple, to the nearest whole one (a tie goes "
             "up)", "(product - edge) / multiple",
             COUNT, rounding=COUNT_NEAR, label="multiples", noun="repeat", says=HOW_MANY_REPEATS),
        Step("stitches", "Take that many multiples, and the edge stitches",
             "max(1, rounded(repeats)) * multiple + edge", STITCHES, rounding=STITCH,
             label="stitches to cast on", says=("cast on", "stitches", "how many", "how many stitches", "sts", "chain"),
             stated=("have", "stitches", "got")),
        Step("rows", "Multiply the length by the row tension", "length * row_tension", ROWS, rounding=ROW, label="rows",
             says=("rows", "how many rows", "rounds")),
        Step("real", "Divide the stitches by the tension", "stitches / tension", rounding=BODY,
             label="width they give", says=REALLY_WIDE),
        Step("border_stitches", "The border at the tension", "border * tension", STITCHES, rounding=STITCH,
             label="border stitches at each side",
             says=("border stitches", "for the border", "stitches for the border", "stitches in the border", "stitches of border",
                   "stitches is the border", "stitches wide is the border", "stitches each side", "stitches at each side",
                   "border at each side", "stitches are the border", "stitches does the border take")),
        Step("border_rows", "The border at the row tension", "border * row_tension", ROWS, rounding=ROW,
             label="border rows at each end",
             says=("border rows", "rows for the border", "rows of border", "rows is the border", "rows in the border",
                   "rows at each end", "rows are the border", "rows does the border take", "rows of the border")),
        Step("middle_stitches", "Take the border off both sides", "stitches - 2 * rounded(border_stitches)", STITCHES, rounding=STITCH,
             label="stitches between the borders",
             says=("stitches between the borders", "stitches in the middle", "middle stitches", "stitches inside the border",
                   "stitches within the border", "stitches in the centre", "stitches left in the middle", "centre stitches",
                   "stitches for the middle", "stitches for the centre", "middle in stitches", "centre in stitches",
                   "stitches wide is the middle", "stitches wide is the centre", "stitches left between the borders"),
                   when={"outside": "within"}),
        Step("middle_rows", "Take the border off both ends", "rows - 2 * rounded(border_rows)", ROWS, rounding=ROW,
             label="rows between the borders",
             says=("rows between the borders", "rows in the middle", "middle rows", "rows inside the border", "rows within the border",
                   "rows in the centre", "rows for the middle"), when={"outside": "within"}),
        Step("inside_left", "What the borders leave of the smaller side", "min(width, length) - 2 * border",
             label="left within the borders", when={"outside": "within"}),
        Step("whole_width", "Add the border to both sides", "width + 2 * border", rounding=BODY,
             label="width with the border", says=("wide altogether", "wide is it altogether", "wide will it be altogether",
                                                  "wide is it in all", "wide in all", "whole width", "overall width", "total width",
                                                  "wide with the border", "finished width",
                                                  "wide with border", *_bordered("wide")), when={"outside": "added"}),
        Step("whole_length", "Add the border to both ends", "length + 2 * border", rounding=BODY,
             label="length with the border", says=("long altogether", "long is it altogether", "long will it be altogether",
                                                   "long is it in all", "long in all", "whole length", "overall length",
                                                   "total length",
                                                   "long with the border", "long altogether with the border", "finished length",
                                                   "long with border", *_bordered("long")), when={"outside": "added"}),
    ),
    answers=("stitches", "rows", "real", "border_stitches", "border_rows", "whole_width", "whole_length"),
    insists=True,
    headline=("Cast on {stitches} and work {rows}.", "Cast on {stitches}."),
    backwards={"width": "stitches / tension", "tension": "stitches / width"},
    sizes=(("width", "length"),),
    refusals=(
        NO_ROOM_FOR_EDGES,
        # A border within the size lies on both sides of it.
        Refusal("inside_left <= 0", "the borders of the two sides would leave nothing between them. Give a narrower border, a "
                "larger piece, or say that the border is added, such as: 100 x 150 cm plus a 5 cm border"),
    ),
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
