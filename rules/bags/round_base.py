"""Round bases, what a bag holds, and linings."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, GEOMETRY, Default, Input, Rule, Step
from ..engine.kinds import LENGTH, VOLUME
from ..engine.rounding import CUT, RADIUS
from .tote import LINING_TAKEN
from .words import SEAM_OF_BAG

ROUND_BASE = Rule(
    topic="round base",
    family="bags",
    says=("round base", "circular base", "round bottom", "base circle", "bucket bag", "duffel bag", "barrel bag",
        "cylinder bag", "circle base", "duffle bag", "round bag", "drum bag", "bolster", "circular bottom",
        "base of the bag"),
    about="The circle to cut for a round base, and the side panel that goes round it.",
    inputs=(
        Input("diameter", "finished diameter", LENGTH,
            says=("diameter", "across", "wide", "round base"), axis="diameter",
            default=Default("=girth / pi", "The girth over π", derived=True), sane="1 cm..3 m",
            practice="6 in..14 in by 1/2 in"),
        Input("girth", "finished girth", LENGTH,
            says=("girth", "round", "around", "circumference", "all round", "bag"), axis="girth",
            ask="How wide, or how far round, is the finished bag?", example="66 cm girth",
            default=Default("=pi * diameter", "π times the diameter", derived=True), sane="3 cm..10 m",
            practice="40 cm..120 cm by 5 cm"),
        Input("height", "finished height", LENGTH,
            says=("high", "tall", "height", "long", "deep"), axis="height", extra=True, sane="1 cm..5 m",
            practice="8 in..18 in by 1 in"),
        SEAM_OF_BAG,
    ),
    steps=(
        Step("radius", "Half the diameter and a seam", "girth / (2 * pi) + seam", rounding=RADIUS,
            label="radius to cut",
            says=("radius", "base circle", "how big", "base", "cut the circle", "radius to cut", "compass")),
        Step("circle", "Twice that radius across", "2 * radius", rounding=RADIUS, label="circle to cut, across",
            says=("circle across", "diameter to cut")),
        Step("panel", "The side goes once round, with a seam at each end", "girth + 2 * seam", rounding=CUT,
            label="side panel, long",
            says=("side panel", "side", "panel", "side piece", "strip", "how long is the side", "body panel",
                "rectangle", "panel width", "side panel width"), axis="length"),
        Step("panel_height", "The height and a seam at the top and the base", "height + 2 * seam", rounding=CUT,
            label="side panel, high",
            says=("panel height", "side panel height")),
    ),
    answers=("radius", "circle", "panel", "panel_height"),
    headline=("Cut the base with a radius of {radius}; the side panel is {panel} long.",
        "The side panel is {panel} long.", "Cut a circle {circle} across."),
    source=GEOMETRY,
    no_unknown=("seam", "height"),
    examples=(
        "round base for a bag 66 cm girth, 1.2 cm seam, radius of the base circle to cut -> 11.7 cm; 23.4 cm; 68.4 cm",
        "bucket bag 8 in diameter, 1/2 in seams, how long is the side panel -> 26 1/8 in; 4 1/2 in",
        "circular base 20 cm across with 1 cm seams -> 11 cm; 64.8 cm",
    ),
    related=("capacity",),
)

CAPACITY = Rule(
    topic="capacity",
    family="bags",
    says=("capacity", "litre", "litres", "volume", "how much does it hold", "holds", "backpack", "rucksack", "liters",
        "how many litres", "hold", "litre bag", "rucksack capacity"),
    about="How many litres a bag holds, or the side that gives so many.",
    inputs=(
        Input("width", "width", LENGTH,
            says=("wide", "width", "across", "w"), axis="width", ask="How wide is the bag?", example="30 cm",
            sane="1 cm..3 m", practice="20 cm..40 cm by 2 cm"),
        Input("height", "height", LENGTH,
            says=("high", "tall", "height", "h"), axis="height", ask="How high is the bag?", example="40 cm",
            sane="1 cm..3 m", practice="30 cm..50 cm by 2 cm"),
        Input("depth", "depth", LENGTH,
            says=("deep", "depth", "d"), axis="depth", ask="How deep is the bag?", example="15 cm", sane="5 mm..3 m",
            practice="10 cm..20 cm by 2 cm"),
    ),
    steps=(
        Step("volume", "Width by height by depth", "width * height * depth", VOLUME, label="capacity", unit=("l",
                "l"),
            says=("capacity", "litres", "how many litres", "volume", "how much does it hold", "hold", "litre"),
            stated=("litre", "litres", "want", "hold", "capacity of", "holds", "backpack", "rucksack")),
    ),
    answers=("volume",),
    headline=("It holds {volume}, filled to the brim.",),
    sizes=(("width", "height", "depth"),),
    source=GEOMETRY,
    examples=(
        "I want a 20 litre backpack, 30 cm wide and 40 cm high, how deep must it be -> 16.7 cm",
        "how many litres does a bag 30 x 40 x 15 cm hold -> 18 l",
        "capacity of a rucksack 12 in wide, 18 in high, 6 in deep -> 21.238 l",
    ),
    related=("tote",),
)

LINING = Rule(
    topic="lining",
    family="bags",
    says=("lining for a tote panel", "lining for a panel", "lining for panels", "panel cut", "panels cut",
        "lining for a tote", "lining", "bag lining", "line a bag", "lining size", "lining pieces", "lining panels",
        "lining for a bag", "cut the lining", "line it", "lining panel"),
    about="The lining's cut size from the outer panel's.",
    inputs=(
        Input("width", "outer panel width as cut", LENGTH,
            says=("panel", "panels", "wide", "outer", "cut", "width", "outer panel", "across", "outside"),
            axis="width", ask="How wide is the outer panel as cut?", example="19 in", sane="2 cm..5 m",
            practice="10 in..24 in by 1/2 in"),
        Input("height", "outer panel height as cut", LENGTH,
            says=("high", "tall", "height", "long"), axis="height", ask="How high is the outer panel as cut?",
            example="18 1/2 in", sane="2 cm..5 m", practice="10 in..24 in by 1/2 in"),
        Input("deeper", "lining narrower by", LENGTH,
            says=("narrower", "smaller", "less"),
            default=LINING_TAKEN,
            because="each side seam of the lining is taken 1/8 in (3 mm) deeper, so that it lies smooth",
            sane="0 mm..5 cm"),
        Input("top", "taken off at the top", LENGTH,
            says=("facing", "off the top", "shorter", "top", "hem", "taken off at the top"),
            default=Default("0 in", "none said", derived=True), sane="0 mm..50 cm"),
    ),
    steps=(
        Step("lining_width", "The lining is narrower, so that it lies smooth inside", "width - deeper", rounding=CUT,
            label="lining width",
            says=("lining width", "how wide", "lining", "lining size", "cut size", "what size", "size", "cut",
                "how big"), axis="width"),
        Step("lining_height", "As high as the outer, less what a facing takes", "height - top", rounding=CUT,
            label="lining height",
            says=("lining height", "how high", "how tall", "how long"), axis="height"),
    ),
    answers=("lining_width", "lining_height"),
    headline=("Cut the lining {lining_width} wide by {lining_height} high.", "Cut the lining {lining_width} wide."),
    sizes=(("width", "height"),),
    source=COMMON_PRACTICE,
    no_unknown=("deeper", "top"),
    notes=("Or cut it as the outer and sew its side seams 1/8 in (3 mm) deeper: it comes to the same.",),
    examples=(
        "lining for a bag with outer panels cut 19 x 18 1/2 in -> 18 3/4 in; 18 1/2 in",
        "lining size for outer panels 47 x 49 cm -> 46.4 cm; 49 cm",
        "outer panel cut 40 cm wide, how wide is the lining -> 39.4 cm",
    ),
    related=("tote",),
)

