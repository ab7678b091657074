"""Diagonals, areas and edges of plain shapes."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Default, Input, Rule, Step, choice
from ..engine.kinds import AREA, LENGTH
from ..engine.rounding import SMALL
from .words import HEIGHT, WIDTH

DIAGONAL = Rule(
    topic="diagonal",
    family="measures",
    says=("diagonal", "corner to corner", "square up", "is it square", "diagonals", "squared up", "true square", "squaring up", "square-up check"),
    about="The diagonal of a rectangle: a true one has both diagonals of this length.",
    inputs=(WIDTH, HEIGHT),
    steps=(
        Step("diagonal", "Square both sides, add them and take the root", "sqrt(width ^ 2 + height ^ 2)", LENGTH, rounding=SMALL, unit=("in", "cm"),
             says=("diagonal", "corner to corner", "across corners", "how long"), axis="length", stated=("diagonal", "corner to corner")),
    ),
    answers=("diagonal",),
    headline=("It should measure {diagonal} from corner to corner, both ways.",),
    sizes=(("width", "height"),),
    source=GEOMETRY,
    examples=(
        "diagonal of 30 x 40 cm -> 50 cm",
        "what should a 60 by 72 in quilt measure corner to corner -> 93 3/4 in",
        "square-up check for a panel 12 in wide and 5 in high -> 13 in",
    ),
)  # fmt: skip

AREA_PERIMETER = Rule(
    topic="area, perimeter, circle",
    family="measures",
    says=("area", "perimeter", "square inches", "square centimetres", "square metres", "square yards", "surface", "area of", "circumference", "all round",
          "how much area", "distance round", "outside edge", "area perimeter circle", "square feet", "how far round"),
    about="The area and the edge of a rectangle, square, circle, half circle, oval or triangle.",
    inputs=(
        choice("shape", "shape", {
            "rectangle": ("rectangle", "rectangular", "oblong"),
            "square": ("square", "sided square"),
            "circle": ("circle", "round", "circular", "disc", "disk", "radius", "diameter"),
            "half circle": ("half circle", "semicircle", "semi-circle", "half-circle"),
            "oval": ("oval", "ellipse", "elliptical"),
            "triangle": ("triangle", "triangular", "bunting"),
        }, default="rectangle", because="the plain shape with a width and a length"),
        WIDTH,
        Input("height", "height", LENGTH, says=HEIGHT.says, axis="length", default=Default("=width", "A square is as high as wide", derived=True, when={"shape": "square"}),
              ask=HEIGHT.ask, example=HEIGHT.example, sane="0.1 mm..1 km"),
        Input("diameter", "diameter", LENGTH, says=("diameter", "across", "round"), axis="diameter",
              default=Default("=2 * radius", "Twice the radius", derived=True), sane="0.1 mm..1 km"),
        Input("radius", "radius", LENGTH, says=("radius",), ask="What is the diameter (or the radius)?", example="60 cm across", sane="0.1 mm..1 km",
              practice="4 in..30 in by 1 in"),
    ),
    steps=(
        Step("area", "Multiply the width by the height", "width * height", AREA, says=("area", "how much area", "surface"),
             when={"shape": ("rectangle", "square")}, stated=("area",)),
        Step("circle_area", "Multiply pi by the radius twice", "pi * (diameter / 2) ^ 2", AREA, label="area of the circle", says=("area",),
             when={"shape": "circle"}, stated=("area",)),
        Step("half_area", "Take half of the whole circle", "pi * (diameter / 2) ^ 2 / 2", AREA, label="area of the half circle", says=("area",),
             when={"shape": "half circle"}),
        Step("oval_area", "Multiply pi by half of each width", "pi * width * height / 4", AREA, label="area of the oval", says=("area",),
             when={"shape": "oval"}),
        Step("triangle_area", "Take half of the rectangle round it", "width * height / 2", AREA, label="area of the triangle", says=("area",),
             when={"shape": "triangle"}),
        Step("perimeter", "Add the four sides", "2 * (width + height)", LENGTH, rounding=SMALL, unit=("in", "cm"),
             says=("perimeter", "all round", "edge", "distance round", "how far round", "outside edge"), when={"shape": ("rectangle", "square")},
             stated=("perimeter", "all round")),
        Step("round_edge", "Multiply the diameter by pi", "pi * diameter", LENGTH, rounding=SMALL, unit=("in", "cm"), label="circumference",
             says=("perimeter", "circumference", "edge", "all round", "distance round", "how far round"), when={"shape": "circle"},
             stated=("circumference", "all round")),
        Step("half_edge", "Half of the circle's edge and the straight side", "pi * diameter / 2 + diameter", LENGTH, rounding=SMALL, unit=("in", "cm"),
             label="edge of the half circle", says=("perimeter", "edge", "all round"), when={"shape": "half circle"}),
    ),
    answers=("area", "circle_area", "half_area", "oval_area", "triangle_area", "perimeter", "round_edge", "half_edge"),
    headline=("The area is {area}, the edge {perimeter}.", "The area is {circle_area}, the edge {round_edge}.", "The area is {half_area}, the edge {half_edge}."),
    sizes=(("width", "height"),),
    source=GEOMETRY,
    examples=(
        "area of a round placemat 60cm across -> 2827.433 cm^2; 188.5 cm",
        "perimeter of a rectangle 12 by 18 in -> 60 in; 216 in^2",
        "area of a square 9 in wide -> 81 in^2; 36 in",
        "area of a triangle 20 cm wide and 30 cm high -> 300 cm^2",
    ),
)  # fmt: skip
