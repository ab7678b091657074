"""Diagonals, areas and edges of plain shapes."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import GEOMETRY, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import AREA, LENGTH
from ..engine.rounding import FINE
from .words import HEIGHT, WIDTH

DIAGONAL = Rule(
    topic="diagonal",
    family="measures",
    says=(
        "diagonal", "corner to corner", "square up", "is it square", "diagonals", "squared up", "true square", "squaring up",
        "square-up check", "across the corners", "from corner to corner", "opposite corners", "top is square",
        "quilt is square", "panel is square", "squareness", "squareness check", "required diagonal", "diagonal for",
        "diagonal of", "diagonal check",
        *("diag", "how long are the diagonals", "what must the diagonals be"),
    ),
    about="The diagonal of a rectangle: a true one has both diagonals of this length.",
    inputs=(
        flag("square", "a square", ("square", "block")),
        replace(WIDTH, says=(*WIDTH.says, "block", "sides", "how big are its sides", "how long are its sides", "how big is the square")),
        replace(HEIGHT, default=Default("=width", "A square is as high as wide", derived=True, when={"square": "yes"})),
    ),
    steps=(
        Step(
            "diagonal", "Square both sides, add them and take the root", "sqrt(width ^ 2 + height ^ 2)",
            LENGTH,
            rounding=FINE,
            says=("diagonal", "how long is the diagonal", "how long should the diagonal"),
            axis="length",
            stated=("diagonal", "corner to corner", "diagonal is", "diagonals are", "diagonal of", "diagonal of a square is",
                "corner to corner is", "quilt corner to corner",
                "measures corner to corner", "from corner to corner",
                "across the corners"),
        ),
    ),
    answers=("diagonal",),
    headline=("It should measure {diagonal} from corner to corner, both ways.",),
    sizes=(("width", "height"),),
    source=GEOMETRY,
    examples=(
        "diagonal of 30 x 40 cm -> 50 cm", "what should a 60 by 72 in quilt measure corner to corner -> 93 3/4 in",
        "square-up check for a panel 12 in wide and 5 in high -> 13 in",
    ),
)

HALF_AREAS = ("area of half a circle", "area of a half circle", "area of a semicircle")
HALF_MATS = tuple(f"{half} {mat}" for half in ("half circle", "half round", "semicircular") for mat in ("mat", "rug", "doormat"))
INPUTS = (
    choice(
        "shape",
        "shape",
        {
            "rectangle": ("rectangle", "rectangular", "oblong"),
            "square": ("square", "sided square"),
            "circle": (
                "circle", "round", "circular", "disc", "disk", "radius", "diameter", "circumference",
                "circumference of a circle",
            ),
            "half circle": ("half circle", "semicircle", "semi-circle", "half-circle", "half a circle", *HALF_MATS, *HALF_AREAS),
            "oval": ("oval", "ellipse", "elliptical"),
            "triangle": ("triangle", "triangular", "bunting"),
        },
        default=(
            Default("circle", derived=True, given=("diameter",)),
            Default("circle", derived=True, given=("radius",)),
            Default("rectangle", "the plain shape with a width and a length"),
        ),
    ),
    Input(
        "width",
        "width",
        LENGTH,
        says=(
            "wide", "width", "base", "side", "sides", "square", "breadth", "width is", "base is", "side is",
            "breadth is",
        ),
        ask=WIDTH.ask,
        example=WIDTH.example,
        sane=WIDTH.sane,
        practice=WIDTH.practice,
    ),
    Input(
        "height",
        "height",
        LENGTH,
        says=HEIGHT.says,
        axis="length",
        ask=HEIGHT.ask,
        example=HEIGHT.example,
        sane=HEIGHT.sane,
        default=Default("=width", "A square is as high as wide", derived=True, when={"shape": "square"}),
    ),
    Input(
        "diameter",
        "diameter",
        LENGTH,
        says=("diameter", "across", "circle", "round", "circular"),
        spoken=True,
        axis="diameter",
        sane="0.1 mm..1 km",
        default=Default("=2 * radius", "Twice the radius", derived=True),
    ),
    Input(
        "radius",
        "radius",
        LENGTH,
        says=("radius",),
        ask="What is the diameter (or the radius)?",
        example="60 cm across",
        sane="0.1 mm..1 km",
        practice="4 in..30 in by 1 in",
    ),
)
AREAS = (
    Step(
        "area", "Multiply the width by the height", "width * height",
        AREA,
        says=("area", "how much area", "surface"),
        when={"shape": ("rectangle", "square")},
        stated=("area",),
    ),
    Step(
        "circle_area", "Multiply pi by the radius twice", "pi * (diameter / 2) ^ 2",
        AREA,
        label="area of the circle",
        says=("area",),
        when={"shape": "circle"},
        stated=("area",),
    ),
    Step(
        "half_area", "Take half of the whole circle", "pi * (diameter / 2) ^ 2 / 2",
        AREA,
        label="area of the half circle",
        says=("area",),
        when={"shape": "half circle"},
    ),
    Step(
        "oval_area", "Multiply pi by half of each width", "pi * width * height / 4",
        AREA,
        label="area of the oval",
        says=("area",),
        when={"shape": "oval"},
    ),
    Step(
        "triangle_area", "Take half of the rectangle round it", "width * height / 2",
        AREA,
        label="area of the triangle",
        says=("area",),
        when={"shape": "triangle"},
    ),
)
EDGES = (
    Step(
        "perimeter", "Add the four sides", "2 * (width + height)",
        LENGTH,
        rounding=FINE,
        says=("perimeter", "all round", "edge", "distance round", "how far round", "outside edge"),
        when={"shape": ("rectangle", "square")},
        stated=("perimeter", "all round", "round the edge", "perimeter of", "edge is", "edge of", "edge measures"),
    ),
    Step(
        "round_edge", "Multiply the diameter by pi", "pi * diameter",
        LENGTH,
        rounding=FINE,
        label="circumference",
        says=("perimeter", "circumference", "edge", "all round", "distance round", "how far round"),
        when={"shape": "circle"},
        stated=("circumference", "all round", "circumference of", "edge is", "edge of", "edge measures"),
    ),
    Step(
        "half_edge", "Half of the circle's edge and the straight side", "pi * diameter / 2 + diameter",
        LENGTH,
        rounding=FINE,
        label="edge of the half circle",
        says=("perimeter", "edge", "all round"),
        when={"shape": "half circle"},
    ),
)
AREA_NAMES = tuple(step.name for step in AREAS)
EDGE_NAMES = tuple(step.name for step in EDGES)

AREA_OF_SHAPE = Rule(
    topic="area",
    family="measures",
    says=(
        "area", "square inches", "square centimetres", "square metres", "square yards", "surface", "area of", "how much area",
        "square feet", "surface area", "area and the perimeter", "area and perimeter",
        *HALF_AREAS,
        *(f"how many square {unit}" for unit in ("inches", "centimetres", "cm", "metres", "yards", "feet")),
    ),
    about="The area of a rectangle, square, circle, half circle, oval or triangle.",
    inputs=INPUTS,
    steps=(*AREAS, *EDGES),
    answers=(*AREA_NAMES, *EDGE_NAMES),
    headline=(
        "The area is {area}.", "The area is {circle_area}.", "The area is {half_area}.", "The area is {oval_area}.",
        "The area is {triangle_area}.",
    ),
    sizes=(("width", "height"),),
    source=GEOMETRY,
    examples=(
        "area of a round placemat 60cm across -> 2827.433 cm^2; 188.5 cm", "area of a square 9 in wide -> 81 in^2; 36 in",
        "area of a triangle 20 cm wide and 30 cm high -> 300 cm^2",
    ),
    related=("perimeter",),
)

PERIMETER = Rule(
    topic="perimeter",
    family="measures",
    says=(
        "perimeter", "perim", "perimeter of", "perimeter of a", "circumference", "circumference of a circle", "distance round",
        "outside edge", "how far round", "how far round for", "is a circle of", "end is a circle of", "total edge",
        "edge all round", "how much edge", "distance around", "how far around", "all the way around",
        *HALF_MATS,
        "once round", "edge is", "edge measures", "edge has a round", "edge of a round",
    ),
    about="The edge of a rectangle, square, circle or half circle, all the way round.",
    inputs=INPUTS,
    steps=(*EDGES, *AREAS),
    answers=(*EDGE_NAMES, *AREA_NAMES),
    headline=("It is {perimeter} all round.", "It is {round_edge} all round.", "It is {half_edge} all round."),
    sizes=(("width", "height"),),
    source=GEOMETRY,
    examples=(
        "perimeter of a rectangle 12 by 18 in -> 60 in; 216 in^2",
        "circumference of a circle with a radius of 10 cm -> 62.8 cm", "perimeter of a square 9 in wide -> 36 in; 81 in^2",
    ),
    related=("area",),
)
