"""Strips to bind a quilt's edge, straight or on the bias."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Derivation, Fact, Follows, Input, Rule, Step
from ..engine.kinds import AREA, COUNT, LENGTH
from ..engine.rounding import BIAS_SQUARE, BUY_CLOTH, COUNT_UP, CUT
from .words import CLOTH_ASKED, LENGTH_OF_QUILT, SQUARE, SQUARE_QUILT, USABLE_WIDTH, WIDTH_OF_QUILT

EDGE = Input("edge", "edge to bind", LENGTH, says=("all the way around", "all round", "perimeter", "edge",
             "round the edge", "curvy edge", "scalloped edge", "edge measure", "curved edge", "circumference", "edge of", "edges of",
             "scalloped edge of", "curved edge of", "about the edge", "about its edge", "round edge", "longest edge",
             "how long an edge", "how far round", "wavy edge", "go round", "go around"),
             axis="girth", default=Default("=2 * (width + length)", "Add the four sides", derived=True),
             sane="40 cm..60 m")  # fmt: skip
JOINS = Input("joins", "extra for joins and corners", LENGTH, says=("joins and corners", "joins", "corners", "extra",
              "spare", "for joining", "for the joins", "over", "over for joins", "for corners", "in by", "inches by"),
                default="10 in | 25 cm",
              because="the usual allowance for joining strips and turning corners (published: 0 to 24 in)",
              sane="0 cm..2 m", practice="8 in..16 in by 1 in", spoken=True)  # fmt: skip


BINDING_STRIPS = Rule(
    topic="binding strips",
    family="quilting",
    says=("binding", "bind", "my binding", "cut my binding", "cut binding", "quilt binding", "bind a quilt", "binding strip",
             "double-fold binding strips", "strips for binding", "strips for the binding", "strips for my binding"),
    about="How many strips to cut across the cloth to bind a quilt, and the cloth for them.",
    inputs=(
        WIDTH_OF_QUILT,
        LENGTH_OF_QUILT,
        SQUARE,
        EDGE,
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "binding strips", "wide strips", "cut strips",
              "wide", "strips wide"), default="2 1/2 in | 6.5 cm", because="the usual double binding",
              sane="1 cm..30 cm", practice="2 in..3 in by 1/4 in", usual="3 cm..12 cm"),
        USABLE_WIDTH,
        JOINS,
    ),
    steps=(
        Step("need", "Add the extra for joins and corners", "edge + joins", label="length of binding", rounding=CUT,
             says=("end to end", "laid end to end", "joined end to end", "total inches", "inches in all", "how long a piece",
             "total cm", "one long strip", "length altogether", "length in all",
             "length of binding", "binding length", "how long a binding", "how long a strip",
             "how long should the binding", "how long is the binding", "inches of binding", "metres of binding",
             "yards of binding", "feet of binding", "how many inches", "cm of binding", "how long does the binding",
             "total length", "long a strip of binding", "how much binding goes", "binding goes round", "binding goes around",
             "binding to go round", "binding to go around", "how much binding to go", "length of strip",
             "length of the binding"), stated=("binding is", "binding measures", "binding came to", "my binding",
             "of binding",
             "inches of binding")),
        Step("strips", "Divide by what one strip gives, and take whole strips", "need / usable", COUNT,
             rounding=COUNT_UP, noun="strip", says=("how many strips", "number of strips", "how many",
             "binding strips", "how many binding strips", "strips of binding"), stated=("have", "found", "left",
             "cut", "binding strips", "took", "used")),
        Step("cloth", "Each strip takes its width of cloth", "rounded(strips) * strip", rounding=BUY_CLOTH,
             label="cloth for the binding", says=CLOTH_ASKED),
        Step("round", "Round the quilt, before the extra", "edge", label="all round the quilt", rounding=CUT,
             says=("how far is it round a quilt", "how far is it round the quilt", "how far round the quilt",
             "how far round is the quilt", "how far round is a", "how far round a", "how far is it round a",
             "perimeter of the quilt", "distance round the quilt", "how far around the quilt")),
        Step("left", "The strips end to end, less what is needed", "rounded(strips) * usable - need", label="binding left over",
             rounding=CUT, says=("left of the last strip", "left of last strip", "left from the last strip", "left on the last strip",
               "leftover at the end", "leftover", "left over at end", "spare at the end",
             "binding left over", "binding will be left", "left over at the end", "leftover binding",
             "binding is left", "how much is left over", "how much will be left", "binding to spare", "spare binding",
             "binding be left", "how much left over")),
    ),
    answers=("strips", "cloth", "need"),
    headline=("Cut {strips} for the binding, from {cloth} of cloth.",
        "Buy {cloth} of cloth for the binding: {strips}."),
    sizes=(("width", "length"), ("strip", "usable")),
    home="in",
    source=COMMON_PRACTICE,
    cautions=(
        Caution("The loss in joining is not counted: each diagonal join uses up a strip's width, so here it may "
                "take one strip more",
                when="(need + (ceil(need / usable) - 1) * strip) / usable > ceil(need / usable)"),
    ),
    examples=(
        "how many 2 1/2 in binding strips for a 60 x 72 in quilt, 40 in usable width -> 7 strips; 1/2 yd",
        "binding for a quilt edge of 300 in, strips 2 1/2 in, 40 in usable, how much fabric -> 5/8 yd; 8 strips",
        "I have 7 strips 2 1/2 in wide of 40 in usable cloth, how big a square quilt will they bind -> 67 1/2 in",
    ),
)

BIAS_BINDING = Rule(
    topic="bias binding for a quilt",
    family="quilting",
    says=("bias", "bias binding", "bias binding for a quilt", "continuous bias", "bias strips", "bias square",
          "scalloped edge", "scalloped", "curved edge", "square of fabric for bias", "bias tape",
          "continuous bias binding", "curvy edge", "scallop", "round quilt", "curved quilt"),
    about="The square of cloth that gives bias binding for an edge, or the length of cloth when the square would "
          "be wider than it.",
    inputs=(
        WIDTH_OF_QUILT,
        LENGTH_OF_QUILT,
        SQUARE_QUILT,
        EDGE,
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "wide strips", "cut strips", "wide",
              "strips wide", "binding", "bias"), default="2 1/2 in | 6.5 cm", because="the usual double binding",
              sane="1 cm..30 cm", practice="2 in..3 in by 1/4 in", usual="2 cm..12 cm"),
        USABLE_WIDTH,
        JOINS,
    ),
    steps=(
        Step("need", "Add the extra for joins and corners", "edge + joins", label="length of binding", rounding=CUT,
             says=("length of bias", "binding length", "bias length", "how much bias"), stated=("of bias", "bias", "to make", "make",
             "get")),
        Step("area", "Its area is that of the cloth it is cut from", "need * strip", AREA, label="area",
             says=("area of cloth", "area it use", "area of fabric", "what area",
             "area", )),
        Step("square", "The square of that area, up to a whole inch", "sqrt(area)", rounding=BIAS_SQUARE,
             label="side of the square", says=("square", "square of fabric", "how big a square", "what size square",
             "size of square", "square side", "square of cloth", "how big must a square", "how big a piece",
             "how large a square", "size"), stated=("square", "square of",
             "square of fabric")),
        Step("cloth", "Buy the square's side, or where it is wider than the cloth a length of the same area",
             "if(rounded(square) > usable, area / usable, rounded(square))", rounding=BUY_CLOTH,
             label="cloth for the bias", says=CLOTH_ASKED),
        Step("strips", "Strips cut on the true bias across the cloth are √2 times its width long",
             "need / (usable * sqrt(2) - strip)", COUNT, rounding=COUNT_UP, noun="strip",
             label="bias strips from a length instead", says=("how many strips", "bias strips", "number of strips")),
    ),
    answers=("square", "cloth", "need", "area", "strips"),
    headline=("Cut the bias from a square of {square}: {cloth} of cloth.",
        "Buy {cloth} of cloth for the bias, cut from a square of {square}.",
              "It takes {need} of bias."),
    sizes=(("width", "length"),),
    home="in",
    defers=("bias binding",),
    source="continuous bias: side of the square = square root of (length × strip width), published by guilds and "
        "shops; geometry",
    cautions=(
        Caution("Bias is needed only where an edge curves; straight edges take strips cut across the cloth"),
        Caution("The square would be wider than the cloth: cut the strips from a length of it, and join them",
                when="rounded(square) > usable"),
    ),
    notes=("This is the most a square can give: joins take a little, and some add 2 or 3 in to the root for seams.",
           ),
    examples=(
        "bias binding for a scalloped edge of 200 in, strips 2 1/4 in, how big a square -> 22 in; 5/8 yd",
        "continuous bias for a quilt 60 x 80 in, 2 1/2 in strips -> 27 in",
        "how much fabric for bias binding, a curved edge of 360 in, strips 4 1/2 in -> 1 1/4 yd; 41 in",
    ),
    related=("binding strips", "bias yield"),
    derivation=(
        Derivation(
            "square",
            (
                Fact("A square of cloth is as large as its side times its side", "of_square = square ^ 2"),
                Fact("Cutting loses no cloth: it must be as large as the binding, its length times its width",
                "of_square = area"),
                Follows("Put one into the other", "square ^ 2 = area"),
                Follows("Take the square root of both", "square = sqrt(area)"),
            ),
            names={"of_square": "the area of the square"},
        ),
    ),
)
