"""Hexagons and equilateral triangles: their measures, the strip to cut, and how many cover a quilt."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Default, Derivation, Fact, Follows, Input, Rule, Step
from ..engine.kinds import ANGLE, AREA, COUNT, LENGTH
from ..engine.rounding import COUNT_UP, CUT, PATCH_CUT
from .words import SEAM

COVER_WIDTH = Input("cover_width", "width to cover", LENGTH, says=("quilt", "cover", "wide", "top", "quilt top"),
                    extra=True, ask="How wide is the quilt to be covered?", example="60 in", sane="15 cm..6 m",
                    practice="36 in..90 in by 2 in")  # fmt: skip
COVER_LENGTH = Input("cover_length", "length to cover", LENGTH, says=("quilt", "cover", "long"), extra=True,
                     ask="How long is the quilt to be covered?", example="72 in", sane="15 cm..6 m",
                     practice="48 in..108 in by 2 in")  # fmt: skip

HEXAGONS = Rule(
    topic="hexagons",
    family="quilting",
    says=("hexagon", "hexagons", "hexie", "hexies", "paper pieces", "epp", "english paper piecing", "hexagon quilt",
          "grandmother s garden"),
    about="The measures of a hexagon from its side, the strip to cut it from, and how many cover a quilt, edges "
          "and all.",
    inputs=(
        Input("side", "side of the hexagon", LENGTH, says=("side", "each side", "hexagon", "sides", "finished side",
              "hexagons", "edge", "paper", "papers"), ask="How long is a side of the hexagon?", example="1 in",
              sane="2 mm..1 m", practice="1/2 in..3 in by 1/4 in"),
        COVER_WIDTH,
        COVER_LENGTH,
        SEAM,
    ),
    steps=(
        Step("flat", "From flat side to flat side is √3 times the side", "sqrt(3) * side", rounding=CUT,
             label="flat to flat", says=("flat side to flat side", "flat to flat", "across the flats", "how wide",
             "wide", "width", "from flat side", "how tall", "height", "flats"), axis="width", stated=("flat to flat",
             "across the flats", "wide", "flat side to flat side", "from flat to flat")),
        Step("point", "From point to point is twice the side", "2 * side", rounding=CUT, label="point to point",
             says=("point to point", "across the points", "corner to corner", "tip to tip", "points"),
             stated=("point to point", "across the points", "corner to corner")),
        Step("area", "Its area is 3√3/2 times the side squared", "3 * sqrt(3) / 2 * side * side", AREA, label="area",
             says=(
             "how much area", "what area",
             "area", "square inches")),
        Step("strip", "Cut it from a strip as high as it is from flat to flat, and a seam on both",
             "flat + 2 * seam", rounding=PATCH_CUT, label="strip to cut", says=("strip to cut", "strip to cut it from",
             "strip to cut them from", "width of strip",
             "strip", "cut", "how wide a strip",
             "strip width", "cut the fabric", "fabric hexagon", "cut size", "fabric"),
             stated=("strip", "strips", "have a strip", "a strip", "in strip", "in strips", "cut from",)),
        Step("columns", "Points up, a row holds as many as it is flats wide", "cover_width / flat", COUNT,
             rounding=COUNT_UP, label="in a row", says=("in each row", "in a row", "how many across")),
        Step("rows",
             "Rows lie one and a half sides apart, and the first and last must reach the edges with their full width",
             "max(1, 1 + (cover_length - side) / (3 / 2 * side))", COUNT, rounding=COUNT_UP, label="rows", noun="row",
             says=("how many rows", "rows")),
        Step("shifted", "Every other row lies half a hexagon over, and must still reach both edges",
             "cover_width / flat + 1 / 2", COUNT, rounding=COUNT_UP, label="in a shifted row"),
        Step("by_area", "By area alone, edges ignored, as some tables do", "cover_width * cover_length / area",
             COUNT, rounding=COUNT_UP, label="by area alone", says=("by area", "by area alone")),
        Step("count", "Half the rows of each sort, the odd one unshifted",
             "ceil(rounded(rows) / 2) * rounded(columns) + floor(rounded(rows) / 2) * rounded(shifted)", COUNT,
             rounding=COUNT_UP, noun="hexagon", label="hexagons", says=("how many hexagons", "how many",
             "how many hexies", "hexagons", "cover")),
    ),
    answers=("count", "flat", "point", "area", "strip", "rows", "columns", "by_area"),
    headline=("It takes {count}, in {rows}.", "The hexagon is {flat} from flat to flat and {point} from point to "
         "point.", "Cut a strip {strip} wide for them."),
    sizes=(("cover_width", "cover_length"),),
    home="in",
    source=GEOMETRY,
    notes=("Tables that divide the areas give fewer hexagons, since what hangs over the edges is left out of them.",
           ),
    examples=(
        "How wide is a hexagon from flat side to flat side when each side is 1 inch -> 1 3/4 in; 2 in",
        "hexies 2 in a side, point to point -> 4 in",
        "hexagon 2 3/4 in from flat to flat, how long is a side -> 1 9/16 in",
        "how many 1 in hexagons cover a quilt 60 x 72 in -> 1739 hexagons",
    ),
    related=("equilateral triangles",),
    derivation=(
        Derivation(
            "flat",
            (
                Fact("A hexagon is six equal triangles; half a side, the height of one and a side make a right "
                "angle, by Pythagoras",
                     "side ^ 2 = (side / 2) ^ 2 + tall ^ 2"),
                Fact("From flat to flat are two of these heights", "flat = 2 * tall"),
                Follows("Take a quarter of the square from both", "tall ^ 2 = 3 / 4 * side ^ 2"),
                Follows("Double the height: its square is four times as much", "flat ^ 2 = 3 * side ^ 2"),
                Follows("Take the square root of both", "flat = sqrt(3) * side"),
            ),
            names={"tall": "the height of one triangle"},
            try_with={"side": "1 in | 2.5 cm"},
        ),
    ),
)

EQUILATERAL_TRIANGLES = Rule(
    topic="equilateral triangles",
    family="quilting",
    says=("equilateral triangle", "equilateral triangles", "equilateral", "pyramid", "triangle", "triangles",
          "degree triangle", "sixty degree triangle"),
    about="The measures of an equilateral triangle from its side or height, the strip to cut, and how many cover a "
          "quilt, edges and all.",
    inputs=(
        Input("side", "finished side", LENGTH, says=("side", "finished side", "sides", "each side", "base"),
              default=Default("=2 * height / sqrt(3)", "The side is twice the height over √3", derived=True),
              sane="2 mm..2 m", practice="2 in..8 in by 1/2 in"),
        Input("height", "finished height", LENGTH, says=("high", "height", "tall", "finished height", "finish"),
              axis="height", ask="How high do the triangles finish (or how long is a side)?", example="4 in",
              sane="2 mm..2 m", practice="2 in..8 in by 1/2 in"),
        Input("angle", "angle", ANGLE, says=("degree", "angle", "triangles"), default=Default("60 degree",
              derived=True), sane="60 degree..60 degree"),
        COVER_WIDTH,
        COVER_LENGTH,
        SEAM,
    ),
    steps=(
        Step("finished_side", "The side", "side", rounding=CUT, label="finished side", says=("side",
             "how long is the side", "how long is a side", "each side", "length of a side", "length of each side", "sides")),
        Step("tall", "The height is √3/2 of the side", "side * sqrt(3) / 2", rounding=CUT, label="finished height",
             says=("how high", "how tall", "height")),
        Step("area", "Half the side times the height", "side * tall / 2", AREA, label="area", says=("square inches", "what area",
             "area", )),
        Step("strip", "Cut it from a strip as high as it finishes and three seams: one at the base, two at the tip",
             "tall + 3 * seam", rounding=PATCH_CUT, label="strip to cut", says=("strip", "cut", "how wide a strip",
             "strip width", "cut size", "cut height", "how wide to cut"), stated=("cut", "cut from", "strips")),
        Step("cut_side", "The side as cut", "2 * (tall + 3 * seam) / sqrt(3)", rounding=PATCH_CUT,
             label="side as cut", says=("cut side", "side as cut")),
        Step("rows", "Rows down the quilt", "cover_length / tall", COUNT, rounding=COUNT_UP, noun="row",
             label="rows", says=("how many rows", "rows")),
        Step("in_row",
             "Triangles in a row, tips up and down in turn, two for each side and one more to square the ends",
             "2 * ceil(cover_width / side) + 1", COUNT, noun="triangle", label="in a row", says=("in a row",
             "in each row", "how many across")),
        Step("count", "Rows times those in a row", "rounded(rows) * in_row", COUNT, rounding=COUNT_UP,
             noun="triangle", label="triangles", says=("how many triangles", "how many", "triangles")),
    ),
    answers=("count", "strip", "finished_side", "tall", "cut_side", "area", "rows", "in_row"),
    headline=("It takes {count}, in {rows}, cut from strips {strip} wide.",
        "Cut the triangles from strips {strip} wide: they finish {tall} high, {finished_side} a side."),
    sizes=(("cover_width", "cover_length"),),
    home="in",
    source=GEOMETRY,
    examples=(
        "equilateral triangles 4 1/4 in high finished, how wide a strip -> 5 in; 4 7/8 in",
        "60 degree triangles with a side of 6 in, how high -> 5 1/4 in",
        "how many equilateral triangles 4 in high cover a quilt 40 x 48 in -> 228 triangles; 12 rows",
    ),
    related=("hexagons",),
    derivation=(
        Derivation(
            "tall",
            (
                Fact("The height halves the base and stands square on it, by Pythagoras",
                "side ^ 2 = (side / 2) ^ 2 + tall ^ 2"),
                Follows("Take a quarter of the square from both", "tall ^ 2 = 3 / 4 * side ^ 2"),
                Follows("Take the square root of both", "tall = side * sqrt(3) / 2"),
            ),
            try_with={"side": "4 in | 10 cm"},
        ),
    ),
)
