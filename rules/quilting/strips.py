"""Strips across the cloth for a number of patches."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_DOWN, COUNT_UP
from .words import SEAM, USABLE_WIDTH

STRIPS_AND_PATCHES = Rule(
    topic="strips and patches",
    family="quilting",
    says=("squares cut", "squares from strips", "strips for squares", "patches from strips", "squares", "rectangles",
          "pieces cut", "strips", "cut squares", "cut rectangles", "yardage for squares", "fabric for squares",
          "strips across", "strips of squares", "width of fabric strips", "wof strips", "squares per strip",
          "charm squares"),
    about="How many strips to cut across the cloth for a number of patches, the thriftier way round, and the cloth.",
    inputs=(
        Input("count", "number of patches", COUNT, says=("squares", "patches", "pieces", "rectangles", "square",
              "patch", "rectangle", "of them"), noun="patch", ask="How many patches do you need?", example="60",
              sane="1..50000", practice="20..200 by 10"),
        Input("finished", "finished size of a patch", LENGTH, says=("finished", "finish", "finish at",
              "finished size"), ask="What size are the patches cut?", example="3 1/2 in", sane="3 mm..3 m"),
        Input("cut", "cut size of a patch", LENGTH, says=("cut", "cut at", "squares", "patches", "rectangles",
              "square", "patch", "pieces", "cut size", "unfinished", "each"), default=Default("=finished + 2 * seam",
              "The cut size is the finished size and two seams", derived=True), sane="5 mm..3 m",
              practice="1 1/2 in..8 in by 1/2 in"),
        Input("other", "other side of a patch, cut", LENGTH, says=("other side", "long", "by"),
              default=Default("=cut", "A square", derived=True), sane="5 mm..3 m", practice="2 in..10 in by 1/2 in"),
        USABLE_WIDTH,
        SEAM,
    ),
    steps=(
        Step("per_one", "Whole patches from a strip as high as one side, the other lying across the cloth",
             "usable / other", COUNT, rounding=COUNT_DOWN, noun="patch", label="from one strip, first way"),
        Step("strips_one", "Strips of that height", "ceil(count / rounded(per_one))", COUNT, noun="strip",
             label="strips, first way"),
        Step("per_turned", "Whole patches from a strip as high as the other side", "usable / cut", COUNT,
             rounding=COUNT_DOWN, noun="patch", label="from one strip, turned"),
        Step("strips_turned", "Strips of that height", "ceil(count / max(1, rounded(per_turned)))", COUNT,
             noun="strip", label="strips, turned"),
        Step("height", "The way that takes less cloth gives the height of a strip",
             "if(rounded(per_turned) >= 1, if(strips_turned * other < strips_one * cut, other, cut), cut)",
             label="strip height", says=("strip height", "strip width", "how big", "what size", "how large",
             "how wide the strips", "height of the strips")),
        Step("per_strip", "From one strip, that way",
             "if(other = cut, rounded(per_one), if(height = cut, rounded(per_one), rounded(per_turned)))", COUNT,
             rounding=COUNT_DOWN, noun="patch", label="from one strip", says=("per strip", "from each strip",
             "from one strip", "in a strip", "how many per strip", "squares per strip", "from a strip")),
        Step("strips", "Whole strips of that height", "if(height = cut, strips_one, strips_turned)", COUNT,
             rounding=COUNT_UP, noun="strip", label="strips", says=("how many strips", "strips", "number of strips",
             "strips needed", "strips of fabric"), stated=("have", "strips", "found", "left")),
        Step("cloth", "Each strip takes its height of cloth", "rounded(strips) * height", rounding=BUY_CLOTH,
             label="cloth", says=("fabric", "cloth", "yardage", "how much fabric", "how many yards",
             "how many metres", "how much", "material"), stated=("have", )),
    ),
    answers=("strips", "cloth", "height", "per_strip"),
    headline=("Cut {strips} {height} high across the cloth, from {cloth} of cloth.",
        "Buy {cloth} of cloth: {strips} {height} high."),
    sizes=(("cut", "other"),),
    home="in",
    source=ARITHMETIC,
    refusals=(Refusal("other > usable",
                      "the patch is wider than the cloth. Type a smaller patch or a wider cloth, such as: 20 "
                      "squares cut 8 in from 42 in cloth."),),
    cautions=(Caution("The last strip's last patch needs every bit of the width, so a crooked edge would cost one; "
                      "some charts leave such a strip's last patch out",
                      when="per_strip * (other + cut - height) = usable"),),
    examples=(
        "eighty squares cut four and a half inches, how many strips -> 10 strips; 1 1/4 yd",
        "150 squares cut 8 cm, fabric 110 cm usable, strips needed -> 12 strips; 1 m",
        "60 squares cut 3 1/2 in from 40 in usable fabric, how many strips -> 6 strips; 5/8 yd",
        "48 rectangles cut 2 1/2 x 4 1/2 in, how much fabric -> 3/8 yd; 3 strips",
    ),
    related=("from a fat quarter", "patch"),
)

STRIPS_FROM_A_LENGTH = Rule(
    topic="strips from a length",
    family="quilting",
    says=("strips from", "how many strips from", "strips can i cut", "strips out of", "strips from a yard",
          "strips in a yard", "strips will i get", "strips can i get", "strips does", "strips are in",
          "strips come out of", "strips from a length", "strips i can cut"),
    about="How many strips, cut across the cloth, a length of it gives.",
    inputs=(
        Input("length", "length of cloth", LENGTH, says=("from", "cloth", "fabric", "length", "out of",
              "yard of fabric", "have", "piece"), ask="How long is the cloth?", example="1/2 yd", sane="1 cm..100 m",
              practice="18 in..72 in by 9 in"),
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "wide strips", "wide", "cut"),
              ask="How wide are the strips cut?", example="2 1/2 in", sane="2 mm..3 m",
              practice="1 1/2 in..6 in by 1/2 in"),
        Input("trim", "lost to straightening", LENGTH, says=("straightening", "trimming", "straighten",
              "squaring up", "trimmed off"), default=Default("0 in | 0 cm", derived=True), sane="0 cm..20 cm",
              practice="1/2 in..2 in by 1/2 in", spoken=True),
    ),
    steps=(
        Step("strips", "Whole strips along the length", "(length - trim) / strip", COUNT, rounding=COUNT_DOWN,
             noun="strip", label="strips", says=("how many strips", "strips", "number of strips", "how many")),
        Step("left", "What is left", "length - trim - rounded(strips) * strip", label="left over", says=("left over",
             "left", "how much is left")),
    ),
    answers=("strips", "left"),
    headline=("You get {strips}, {left} left over.",),
    home="in",
    source=ARITHMETIC,
    refusals=(Refusal("strip > length - trim",
                      "the cloth is shorter than one strip. Type a longer cloth or a narrower strip."),),
    examples=(
        "How many 2.5 inch strips can I cut from 3/4 yard -> 10 strips; 2 in",
        "strips from a yard of fabric, 4 1/2 in wide, 1/2 in lost to straightening -> 7 strips",
        "how many 6 cm strips from 0.5 m of cloth -> 8 strips; 2 cm",
    ),
    related=("strips and patches",),
)
