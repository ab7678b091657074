"""Bias strips: how wide, how long, out of how large a square; and piping."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Derivation, Fact, Follows, Input, Rule, Step, choice
from ..engine.kinds import AREA, COUNT, LENGTH, PERCENT
from ..engine.rounding import BIAS_SQUARE, COUNT_UP, CUT, CUT_TAPE
from .words import how_many, seam

EDGE_WORDS = ("edge", "edges", "round", "hem", "neckline", "armhole", "armholes", "all round", "around", "to bind", "bind", "perimeter", "edge of", "seam",
              "circumference", "curve", "neck", "edge to bind", "edging", "placemat", "blanket", "cushion", "apron", "edges of", "long edge")  # fmt: skip

KINDS = {
    "double-fold": ("double fold", "double-fold", "wraps", "wrapped", "wraps an edge", "double", "folded double"),
    "single-fold": ("single fold", "single-fold", "single", "facing", "single fold tape", "bias facing"),
    "french": ("french", "french binding", "doubled cloth", "doubled", "french bias", "rouleau binding"),
    "band": ("banding", "bias band", "bias banding"),
}

BIAS_BINDING = Rule(
    topic="bias binding",
    family="notions",
    says=("bias binding", "bias tape", "bias strip", "bias strips", "binding strip width", "bias edging", "bias",
          "bias cut strips", "continuous bias"),
    about="How wide and how long a bias strip an edge takes, and the square to cut it from.",
    inputs=(
        Input("side_a", "first side", LENGTH, says=("side",), extra=True, sane="1 cm..20 m"),
        Input("side_b", "second side", LENGTH, says=("side",), extra=True, sane="1 cm..20 m"),
        Input("edge", "edge to bind", LENGTH, says=EDGE_WORDS, axis="girth",
              default=Default("=2 * (side_a + side_b)", "Add the four sides", derived=True), ask="How long is the edge to bind?", example="90 in",
              sane="1 cm..200 m", practice="30 in..120 in by 5 in"),
        choice("kind", "kind of binding", KINDS, default="double-fold", because="the usual binding that wraps an edge"),
        Input("finished", "finished width", LENGTH, says=("finished", "finishes", "finish", "finished width", "wide finished", "seen", "shows", "finishing", "to finish",
                                                           "wide when finished", "width seen", "showing", "deep", "finished depth"), axis="width",
              default=Default("1/2 in | 1.2 cm", "the usual binding"), sane="2 mm..15 cm", practice="1/4 in..1 in by 1/8 in"),
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "wide strips", "wide bias", "strip width", "bias", "wide strip", "cut strips", "cut wide",
                                                    "bias strips", "bias strip", "wide", "wide binding"),
              default=(
                  Default("=2 * finished", "Single-fold tape is cut twice its finished width", when={"kind": "single-fold"}, derived=True),
                  Default("=6 * finished", "French binding, of doubled cloth, is cut six times its finished width", when={"kind": "french"}, derived=True),
                  Default("=2 * finished + banding", "Banding is cut twice its depth and a little over for turning in", when={"kind": "band"}, derived=True),
                  Default("=4 * finished", "Binding that wraps an edge is cut four times the width seen", derived=True),
              ),
              sane="5 mm..60 cm", practice="1 in..3 in by 1/4 in"),
        Input("banding", "turnings of a band", LENGTH, says=("turnings of a band",), default="1/2 in | 1.2 cm", because="1/4 in each edge (L. Baldt, 1916)",
              sane="0 mm..5 cm"),
        Input("allowance", "join and turn allowance", LENGTH, says=("join", "joins", "allowance", "overlap", "extra", "for joining", "to turn", "join and turn", "to join",
                                                                  "for joins", "spare", "overlap each", "for the join", "turning"),
              default=Default("10 in | 25 cm", "the usual allowance for joins and turned ends"), sane="0 mm..3 m", practice="2 in..12 in by 1 in"),
        how_many("number", "number of pieces", "piece", says=("placemats", "pieces", "napkins", "armholes", "of them", "cushions", "mats", "coasters", "aprons", "bibs",
                                                              "pot holders")),
        Input("length", "length of binding", LENGTH, says=("length of binding", "of binding", "binding", "of bias", "long", "of strip", "of bias binding", "bias tape",
                                                           "of tape", "continuous", "total"), axis="length",
              default=Default("=number * (edge + allowance)", "Add the allowance to the edge", derived=True), sane="1 cm..500 m",
              practice="60 in..300 in by 10 in"),
        Input("cloth", "cloth width", LENGTH, says=("cloth", "fabric", "wide cloth", "wide fabric", "cloth width", "fabric width", "across"), extra=True, sane="10 cm..4 m",
              practice="40 in..60 in by 2 in"),
    ),
    steps=(
        Step("strip_width", "The strip as cut", "strip", rounding=CUT, label="cut strip width", axis="width",
             says=("how wide", "strip width", "cut width", "width to cut", "wide do i cut", "width of the strips", "width of strip", "cut the strips", "strip how wide",
                   "how wide do i cut the strips", "cut strips", "strips how wide", "what width")),
        Step("need", "The length of strip to make", "length", rounding=CUT_TAPE, label="length of strip", axis="length",
             says=("how long a strip", "how much binding", "how long", "length of binding", "length of strip", "how much bias", "length of bias", "binding length", "how much")),
        Step("square", "A strip has the area of the square it is cut from: the root of length times width", "sqrt(length * strip)", rounding=BIAS_SQUARE,
             label="square to cut it from", says=("square", "size of square", "what square", "square side", "size square", "how big a square", "square do i need")),
        Step("step", "Along the selvedge each strip takes its width times the root of two", "strip * sqrt(2)", rounding=CUT, label="step along the selvedge",
             says=("along the selvedge", "along the selvage", "step", "selvedge", "selvage", "mark along")),
        Step("run", "A strip cut across the cloth at 45 degrees is as long as the cloth is wide, times the root of two", "cloth * sqrt(2)", rounding=CUT,
             label="length of one strip", says=("one strip", "each strip", "length of each strip")),
        Step("strips", "Divide by what one strip gives", "length / run", COUNT, rounding=COUNT_UP, noun="strip", says=("how many strips", "number of strips", "strips")),
    ),
    answers=("strip_width", "need", "square", "step", "strips", "run"),
    headline=("Cut the strips {strip_width} wide, {need} long in all; they come out of a square of {square}.", "Cut the strips {strip_width} wide.",
              "Make {need} of strip.", "Cut it from a square of {square}.", "Cut {strips} across the cloth."),
    sizes=(("side_a", "side_b"),),
    source=COMMON_PRACTICE,
    no_unknown=("strip", "finished", "length", "allowance", "number", "cloth", "side_a", "side_b"),
    cautions=(Caution("Curves need bias; for straight edges straight strips will do", COMMON_PRACTICE),),
    notes=("The square is the least there can be: nothing is taken off for joins.", "Banding of twice its depth and 1/2 in: L. Baldt, 1916."),
    examples=(
        "for double-fold bias binding that finishes half an inch, how wide do I cut the strips -> 2 in",
        "what square do I need for 250 in of 2 in bias binding -> 23 in",
        "bias binding 1/2 in finished round a 90 in edge, how much -> 100 in; 2 in; 15 in",
        "single-fold bias tape finished 12 mm, cut width -> 2.4 cm",
    ),
    related=("bias yield", "piping"),
    derivation=(
        Derivation(
            "square",
            (
                Fact("A square of cloth is as large as its side times its side", "area = square ^ 2"),
                Fact("The strip cut from it is as large as its length times its width", "strip_area = length * strip"),
                Fact("Cutting loses no cloth", "strip_area = area"),
                Follows("Put both areas in", "square ^ 2 = length * strip"),
                Follows("Take the square root of both", "square = sqrt(length * strip)"),
            ),
            names={"area": "the area of the square", "strip_area": "the area of the strip"},
            try_with={"length": "250 in | 6 m", "strip": "2 in | 5 cm"},
        ),
        Derivation(
            "step",
            (
                Fact("A strip on the bias leaves the selvedge at half a right angle: its width is one side of a triangle of two equal sides and a "
                     "right angle, the step along the selvedge its long side, by Pythagoras", "step ^ 2 = strip ^ 2 + strip ^ 2"),
                Follows("Both sides are alike", "step ^ 2 = 2 * strip ^ 2"),
                Follows("Take the square root of both", "step = strip * sqrt(2)"),
            ),
            try_with={"strip": "2 in | 5 cm"},
        ),
    ),
)

BIAS_YIELD = Rule(
    topic="bias yield",
    family="notions",
    says=("bias yield", "bias from a square", "out of a square", "length of bias", "bias comes out", "how much bias", "square of fabric", "continuous bias from", "bias out of",
          "bias binding from a square", "from a square", "fat quarter bias", "square yields", "bias strip from", "bias from", "bias will", "bias can", "bias yards"),
    about="How much bias strip a piece of cloth gives.",
    inputs=(
        Input("width", "cloth width", LENGTH, says=("square", "cloth", "fabric", "wide", "remnant", "piece", "rectangle", "piece of cloth", "fat quarter", "scrap", "out of"),
              ask="How large is the cloth?", example="24 in square", sane="1 cm..10 m", practice="12 in..36 in by 2 in"),
        Input("length", "cloth length", LENGTH, says=("long", "by"), default=Default("=width", "A square is as long as it is wide", derived=True),
              sane="1 cm..50 m", practice="12 in..36 in by 2 in"),
        Input("strip", "strip width", LENGTH, says=("strips", "bias", "wide strips", "strip", "wide bias", "bias strips", "bias strip", "binding", "strip width", "wide strip",
                                                    "bias binding", "bias tape", "cut", "wide"),
              ask="How wide are the strips?", example="2 in", sane="5 mm..60 cm", practice="1 in..3 in by 1/4 in"),
        Input("loss", "taken by each join", LENGTH, says=("each join", "a join", "per join", "for each join"), default="1/2 in | 1.2 cm",
              because="the usual at a join", sane="0 mm..5 cm"),
    ),
    steps=(
        Step("area", "The area of the cloth", "width * length", AREA, label="area of the cloth"),
        Step("bias", "Divide the area by the width of the strip; joins are not counted", "area / strip", label="bias strip",
             says=("how much", "length", "bias", "how long", "length of bias", "how much bias", "yield", "how many yards", "how many metres", "how much binding"), axis="length",
             stated=("need", "of bias", "want", "of binding", "bias")),
        Step("joins", "One join fewer than there are strips across the diagonal", "max(0, floor((width + length) / (sqrt(2) * strip)) - 1)", COUNT, label="joins, about",
             noun="join", says=("joins", "how many joins")),
        Step("with_joins", "Take off what the joins use", "bias - joins * loss", label="bias strip after joins",
             says=("after joins", "joins counted", "counting the joins", "with joins", "allowing for joins", "less joins", "minus joins", "joined")),
        Step("step", "Along the selvedge each strip takes its width times the root of two", "strip * sqrt(2)", rounding=CUT, label="step along the selvedge",
             says=("along the selvedge", "along the selvage", "selvedge", "selvage")),
    ),
    answers=("bias", "with_joins", "joins", "step"),
    headline=("It gives {bias} of bias strip, about {with_joins} once joined.", "It gives {with_joins} of bias strip once joined.", "{joins}."),
    sizes=(("width", "length"),),
    source="area of the cloth over the width of the strip: MyDecozo soft furnishing FAQ",
    no_unknown=("loss", "length"),
    examples=(
        "never minding the joins, what length of 2 in bias comes out of a 24 in square -> 288 in",
        "how much 2 in bias out of a 20 x 30 in piece of cloth -> 300 in",
        "bias strips 4 cm wide from a square of 60 cm, what length -> 900 cm",
    ),
    related=("bias binding",),
)

PIPING = Rule(
    topic="piping",
    family="notions",
    says=("piping", "piped edge", "piping cord", "covered cord", "welting", "cording", "piping strip", "piped", "welt cord"),
    about="How wide to cut the strip that covers a piping cord, and how much cord.",
    inputs=(
        Input("cord", "cord diameter", LENGTH, says=("cord", "thick", "diameter", "piping cord", "thick cord", "piping"), axis="diameter", ask="How thick is the cord?",
              example="5 mm", sane="0.5 mm..10 cm", practice="3 mm..8 mm by 1 mm"),
        Input("edge", "edge to pipe", LENGTH, says=("edge", "round", "around", "cushion", "seam", "perimeter", "all round", "edges"), axis="girth", ask="How long is the edge?",
              example="180 cm", sane="1 cm..500 m", practice="100 cm..240 cm by 20 cm"),
        seam(),
        Input("spare", "extra cord", PERCENT, says=("extra", "spare"), default="5 %", because="for joining and the corners", sane="0 %..100 %"),
        how_many("number", "number of pieces", "piece", says=("cushions", "pieces", "cushion covers", "of them", "covers")),
    ),
    steps=(
        Step("strip", "Once round the cord, and a seam allowance on each edge", "pi * cord + 2 * seam", rounding=CUT, label="strip width",
             says=("how wide", "strip", "strip width", "width", "cut", "wide"), axis="width", stated=("strip", "cut", "have")),
        Step("length", "The edge and a little over", "number * edge * (1 + spare)", rounding=CUT_TAPE, label="cord and strip length",
             says=("how much cord", "how long", "length", "how much piping", "cord length", "how much", "cord"), axis="length"),
    ),
    answers=("strip", "length"),
    headline=("Cut the strips {strip} wide; take {length} of cord, and as much strip.", "Cut the strips {strip} wide.", "Take {length} of cord, and as much strip."),
    source=COMMON_PRACTICE,
    no_unknown=("seam", "spare", "number"),
    notes=("Cut the strip on the bias for curves and corners.",),
    examples=(
        "how wide a strip to cover 5 mm piping cord with 1.5 cm seams -> 4.6 cm",
        "piping 1/4 in cord, 1/2 in seams, strip width -> 1 3/4 in",
        "piping for a cushion 180 cm round, 5 mm cord, how much cord -> 189 cm",
    ),
    related=("bias binding",),
)
