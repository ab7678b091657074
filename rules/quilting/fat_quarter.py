"""How many pieces a fat quarter, a fat eighth or another small cut of cloth gives."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_DOWN, COUNT_UP

CUTS = {
    "fat_quarter": ("fat quarter", "fq", "fqs", "fat 1/4", "fat quarters", "fat qtr", "fat qtrs", "fat qrtr"),
    "fat_eighth": ("fat eighth", "fat eighths", "f8", "fat 1/8"),
    "quarter_yard": ("quarter yard", "long quarter", "quarter of a yard", "skinny quarter", "1/4 yard"),
    "half_yard": ("half yard", "half a yard", "1/2 yard", "half metre", "half a metre"),
    "yard": ("from a yard", "in a yard", "one yard", "whole yard", "yard of fabric", "yard of cloth", "from one yard",
    "a yard"),
    "scrap": ("scrap", "remnant", "offcut", "left over piece", "leftover piece", "oddment"),
}
# Between the selvedges a fat quarter is half of 42 in; a metric one is cut from 110 cm cloth.
LONG = (
    Default("40 in | 102 cm", "a length is cut across the whole width of the cloth", given=("short",)),
    Default("21 in | 55 cm", "half of the cloth's width", when={"piece_of_cloth": ("fat_quarter", "fat_eighth")}),
    Default("40 in | 102 cm", "what 42 to 44 in cloth gives between the selvedges",
    when={"piece_of_cloth": ("quarter_yard", "half_yard", "yard")}),
)
SHORT = (
    Default("18 in | 50 cm", "half a yard, or half a metre, is cut in half", when={"piece_of_cloth": ("fat_quarter",
    "half_yard")}),
    Default("9 in | 25 cm", "a quarter of a yard, or of a metre", when={"piece_of_cloth": ("fat_eighth",
    "quarter_yard")}),
    Default("36 in | 91.44 cm", "a yard", when={"piece_of_cloth": "yard"}),
)

FROM_A_FAT_QUARTER = Rule(
    topic="from a fat quarter",
    family="quilting",
    says=("fat quarter", "fat eighth", "fq", "fat quarters", "quarter yard", "long quarter", "from a fat quarter",
          "fat eighths", "out of a fat quarter", "in a fat quarter", "squares in a yard", "squares from a yard",
          "half yard", "half metre", "half a metre", "fat", "can i cut", "can i get", "squares in", "squares out of", "charm squares in",
          "charm squares from", "yard gives", "yard give", "pieces in",
          "rectangles in", "squares from", "come out of", "get out of", "can be cut",
          "rectangles from", "pieces from", "squares can i cut", "squares can i get", "fat qtr", "fat qtrs", "obtainable from",
          "obtained from", "i can cut"),
    about="How many pieces a small cut of cloth gives, all lying one way, the better way round; and how many cuts "
          "of cloth for a number of pieces.",
    inputs=(
        Input("width", "piece width, cut", LENGTH, says=("biggest square", "largest square", "biggest piece", "largest piece",
             "how big a square",
             "how large a square", "what size squares", "how big can the squares be", "how big may the squares be",
             "squares", "square", "pieces", "rectangles", "patches",
              "cut", "piece", "wide", "rectangle", "squares from", "rectangles from", "pieces from"),
              ask="What size are the pieces cut?", example="2 1/2 in", sane="5 mm..1 m",
              practice="1 1/2 in..8 in by 1/2 in"),
        Input("length", "piece length, cut", LENGTH, says=("long", "length", "rectangles", "by"),
              default=Default("=width", "A square", derived=True), sane="5 mm..2 m",
              practice="1 1/2 in..9 in by 1/2 in"),
        Input("count", "number of pieces", COUNT, says=("squares", "pieces", "rectangles", "patches", "square",
              "rectangle", "of them", "of those", "of these", "you need", "i need"), noun="piece", extra=True,
              ask="How many pieces do you need?", example="60",
              sane="1..20000", practice="20..200 by 10"),
        choice("piece_of_cloth", "cut of cloth", CUTS, default=(Default("fat_quarter", "no other was named"),)),
        Input("short", "cloth, one side", LENGTH, says=("a fat quarter", "a fat eighth", "scrap", "remnant", "from",
          "from a", "in a", "from a piece",
             "out of a", "out of a piece",
              "piece of fabric", "piece of cloth", "offcut"), default=SHORT, ask="How big is the piece of cloth?", example="18 in",
              sane="2 cm..10 m", practice="16 in..20 in by 1 in"),
        Input("long", "cloth, other side", LENGTH, says=("fabric", "cloth", "usable",
              "wide fabric", "wide cloth"), default=LONG, ask="How long is its other side?", example="21 in", sane="2 cm..10 m",
              practice="20 in..22 in by 1 in"),
        Input("had", "cuts of cloth in hand", COUNT, says=("fat quarters", "fat quarter", "fat eighths", "fat eighth", "fqs",
              "fq"), noun="fat quarter", default=Default("1", derived=True), spoken=True, sane="1..24",
              usual="1..24"),  # seldom so many as the pieces that are wanted
        choice("wanted", "worked out", {"pieces": ("the pieces it gives",), "cuts": ("the cuts of cloth it takes",)}, default=(
            Default("pieces", derived=True, given=("had",)), Default("cuts", derived=True, given=("count",)),
            Default("pieces", derived=True))),
        Input("straightened", "taken off to straighten it", LENGTH, spoken=True, default=Default("1/2 in | 1 cm",
              derived=True), sane="0 cm..10 cm"),
        Input("trim", "lost to straightening", LENGTH, says=("straightening", "trimming", "straighten",
              "trimmed off", "squaring up"), default=Default("0 in | 0 cm", derived=True), sane="0 cm..10 cm",
              practice="1/4 in..1 in by 1/4 in", spoken=True),
    ),
    steps=(
        Step("one_way", "Whole pieces along each side, the width of a piece along the first",
             "floor((short - trim) / width) * floor((long - trim) / length)", COUNT, noun="piece",
             label="one way round"),
        Step("other_way", "And with the pieces the other way round",
             "floor((short - trim) / length) * floor((long - trim) / width)", COUNT, noun="piece",
             label="the other way round"),
        Step("each", "The better of the two", "max(one_way, other_way)", COUNT, rounding=COUNT_DOWN,
             label="pieces from each", says=("from each", "from one", "out of each")),
        Step("pieces", "From every cut of cloth in hand", "rounded(each) * had", COUNT, rounding=COUNT_DOWN,
             when={"wanted": "pieces"},
             noun="piece", label="pieces", says=("how many", "how many pieces", "how many squares", "squares",
             "rectangles", "pieces", "how many rectangles", "best way round", "how many can i cut",
             "how many come out", "patches", "altogether", "in all", "in total"),
             stated=("want", "get", "i want", "pieces out of",)),
        Step("cuts", "Share the pieces wanted out among them", "count / rounded(each)", COUNT, rounding=COUNT_UP,
             noun="fat quarter", label="cuts of cloth", says=("how many fat quarters", "how many fat eighths",
             "fat quarters needed", "how many quarters", "how many fq", "how many yards", "number of fat quarters",
             "how many fat qtrs", "many to buy",
             "to buy", "do i buy", "should i buy", "must i buy"),
             stated=("fat quarters", "have")),
        Step("long_left", "Left along the long side, when the better way is cut",
             "long - trim - if(one_way >= other_way, floor((long - trim) / length) * length, floor((long - trim) / width) * width)",
             label="left along the long side", says=("is wasted", "wasted", "on the long side",
             "is left", "strip is left", "over along the long side", "left down the long side", "left on the long side",
             "left over", "what is left", "what s left", "how much is left", "waste",
             "along the long side", "left along the long side", "off the long side", "how much is wasted", "leftover")),
        Step("short_left", "And along the short side",
             "short - trim - if(one_way >= other_way, floor((short - trim) / width) * width, floor((short - trim) / length) * length)",
             label="left along the short side", says=("is wasted", "wasted", "on the short side",
             "is left", "over along the short side", "left down the short side", "left on the short side",
             "along the short side", "left along the short side", "off the short side",
             "left over", "what is left", "what s left", "how much is left", "waste", "how much is wasted", "leftover")),
    ),
    answers=("pieces", "cuts", "each", "one_way", "other_way"),
    headline=("It takes {cuts}: {each} from each.", "You get {pieces}: {one_way} one way round, {other_way} the "
         "other."),
    sizes=(("width", "length"), ("short", "long")),
    pairs=(("short", "long"),),
    home="in",
    no_unknown=("short", "long", "trim", "straightened", "had"),
    source=ARITHMETIC,
    refusals=(Refusal("max(one_way, other_way) < 1",
                      "a piece of that size does not fit the cloth. Type a smaller piece, or a larger cut of cloth."),),
    cautions=(
        Caution("Straightening the edges would cost you pieces here: by 1/2 in (1 cm) each way there is room for "
                "fewer",
                when="max(floor((short - trim - straightened) / width) * floor((long - trim - straightened) / "
                "length), floor((short - trim - straightened) / length) * floor((long - trim - straightened) / "
                "width)) < max(one_way, other_way)"),
    ),
    notes=("Some lists take a fat quarter as 18 x 22 in, which the selvedge seldom allows.", ),
    examples=(
        "2 1/2 x 4 1/2 rectangles from an 18 x 21 in fat quarter, best way round -> 32 pieces",
        "In Australia a fat quarter is 50 cm by 55 cm. How many 12 cm squares come out of it -> 16 pieces",
        "how many fat quarters for 100 squares of 5 in -> 9 fat quarters; 12 pieces",
        "how many 4 in squares from a fat eighth -> 10 pieces",
        "how many 5 in squares from six fat quarters -> 72 pieces",
    ),
    related=("strips and patches",),
    defers=("strips from a length", "divide", "strips and patches"),
)
