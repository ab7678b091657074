"""Circle skirts: the waist's radius, the outer edge, the sweep of the hem, and the cloth."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import (
    GEOMETRY,
    Caution,
    Default,
    Derivation,
    Fact,
    Follows,
    Input,
    Refusal,
    Rule,
    Step,
    choice,
    flag,
)
from ..engine.kinds import COUNT, LENGTH, RATIO, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_UP, RADIUS, WAIST_RADIUS
from ..engine.run import Run
from ..engine.text import plural
from .words import BUY_WORDS, CLOTH_WIDTH, SEAM, hem

# The whole outer circle lies across the cloth.
WHOLE = "width >= 2 * outer"


def way(run: Run) -> Outcome:
    """How the skirt is cut, in words."""
    part, joins = run.get("part"), run.get("joins")
    if run.get("width") >= 2 * run.get("outer") and part > Fraction(1, 4):
        text = "in one piece across the cloth"
    else:
        text = {Fraction(1): "in two halves", Fraction(3, 4): "in three quarters"}.get(part,
            "in one piece along the cloth")
    return Outcome({"way": text + (f", joined from widths ({joins} {plural('join', joins)})" if joins else "")})


NAMES = {
    "full": ("full circle", "whole circle", "complete circle", "full circular", "circle full", "fullcircle"),
    "three_quarter": ("three-quarter circle", "three quarters circle", "three quarters of a circle", "three quarter circular",
                      "circle three quarter"),
    "half": ("half circle", "semi-circle", "semicircle", "half a circle", "half circular", "semi-circular", "semicircular",
             "circle half", "halfcircle", "half circel"),
    "quarter": ("quarter circle", "quarter of a circle", "quarter circular", "circle quarter", "quartercircle"),
}
# "Half or quarter circle" names two parts with one "circle": the phrase stands under both, so that they are compared.
SPOKEN_PARTS = {"full": "full", "three_quarter": "three quarter", "half": "half", "quarter": "quarter"}
EITHER = {part: tuple(f"{one} or {other} circle" for first, one in SPOKEN_PARTS.items() for second, other in SPOKEN_PARTS.items()
                      if first != second and part in (first, second)) for part in SPOKEN_PARTS}  # fmt: skip
# Each with "skirt" too: a longer phrase is met before a shorter one inside it.
OPTIONS = {
    part: (
        *(phrase for name in (*names, *EITHER[part]) for phrase in (name, f"{name} skirt")),
        f"circle skirt {SPOKEN_PARTS[part]}",
        f"circular skirt {SPOKEN_PARTS[part]}",
    )
    for part, names in NAMES.items()
}
FRACTION = choice("fraction", "part of a circle", OPTIONS, ask="Is it a full, three-quarter, half or quarter circle?",
                  example="half circle")
FRACTION_OF_ROUND = choice(
    "fraction", "part of a circle", NAMES, default=(Default("full", "the whole round, until a part is said"),)
)
PART_WORDS = (
    Default("1", derived=True, when={"fraction": "full"}), Default("3/4", derived=True,
        when={"fraction": "three_quarter"}),
    Default("1/2", derived=True, when={"fraction": "half"}), Default("1/4", derived=True, when={"fraction": "quarter"}),
)  # fmt: skip
PART = Input("part", "part of a circle as a number", RATIO, says=("of a circle", "circle", "circle skirt"),
             sane="1/8..2", spoken=True, default=PART_WORDS)

CIRCLE_SKIRT = Rule(
    topic="circle skirt",
    family="fabric",
    says=("circle skirt", "circular skirt", "skirt", "circle", "twirl skirt", "peplum", "circular peplum",
          "skating skirt", "skater skirt",
          *(phrase for phrases in OPTIONS.values() for phrase in phrases)),
    about="The waist and outer radius of a circle skirt (full, three-quarter, half or quarter), its sweep and its "
          "cloth.",
    inputs=(
        Input("waist", "waist", LENGTH, says=("waist", "waists", "waistline", "waist measurement", "waist size",
                                              "round the waist", "waistband", "whose waist", "what waist",
                                              "biggest waist", "largest waist"),
              ask="What is the waist?", example="70 cm", sane="5 cm..5 m", usual="40 cm..1.6 m",
              practice="60 cm..100 cm by 2 cm"),
        Input("length", "finished length", LENGTH, says=("long", "length", "finished length", "skirt length",
                                                         "in length", "drop", "deep", "what's the longest", "the longest",
                                                         "longest it can be", "longest can it be", "longest it can go",
                                                         "how long can i make it", "longest skirt",
                                                         "long can it be", "long can the skirt be", "long a skirt", "long may it be"),
              axis="length", ask="How long is the skirt when finished?", example="55 cm", sane="2 cm..2 m",
              usual="15 cm..1.2 m",
              practice="40 cm..80 cm by 5 cm"),
        FRACTION, PART, CLOTH_WIDTH,
        flag("one_piece", "cut in one piece", ("one-piece", "no join", "no joins", "without a join", "without joins",
        "mustn't need a join", "without joining",
                                               "without having to join", "without piecing", "in one piece")),
        Input("ease", "waist ease", LENGTH, says=("ease", "waist ease"), default=Default("0 cm",
            "the waistband gives the ease"), sane="0 cm..50 cm",
              spoken=True, practice="0 in..2 in by 1/2 in"),
        SEAM, hem("5/8 in | 1.5 cm", "a narrow hem: a circle's edge takes no deep one"),
    ),
    steps=(
        Step("radius", "The waist is that part of a circle: divide by 2 × π × the part",
             "(waist + ease) / (2 * pi * part)", rounding=WAIST_RADIUS,
             label="waist radius", says=("radius", "draw the stitching line", "do i draw the stitching line", "waist radius",
             "stitching radius", "stitching line",
                                         "waistline radius", "radius for the waist", "radius of the waist", "waist circle",
                                         "radius of the hole"),
             stated=("radius", "stitching radius", "radius came out at", *(f"waist radius {verb}" for verb in ("is", "was", "of", "came to",
                                                                                                           "came out at")))),
        Step("cut_radius", "Take off the seam allowance at the waist", "radius - seam", rounding=WAIST_RADIUS,
             label="waist cutting radius",
             says=("cutting radius", "cut radius", "waist cutting radius", "cutting line radius", "radius to cut", "cutting line",
                   "inner radius", "inner cut radius",
                   "waist cut radius", "cut out the waist at", "radius do i cut", "radius should i cut",
                   "radius must i cut", "radius shall i cut", "radius i cut", "radius i should cut", "radius for cutting",
                   "cut at what radius", "cut the waist at", "radius for the cutting line", "radius of the cutting line",
                   "radius do i draw for the cutting line", "cutting line of the waist",
                   *(f"from the {point} to {draw} the waist" for point in ("corner", "centre", "point")
                     for draw in ("draw", "mark", "cut"))),
             stated=("cutting radius", "cut radius", "waist cutting radius", "cutting radius came out at")),
        Step("hole", "Twice the waist's cutting radius", "2 * cut_radius", rounding=WAIST_RADIUS, label="diameter of the waist hole",
             says=("diameter of the hole", "diameter of the waist hole", "hole diameter", "wide is the hole", "big is the hole",
                   "big a hole",
                   "across the hole", "diameter hole", "wide a hole", "across is the hole")),
        Step("outer", "From the centre to the cut edge: add the length and the hem", "radius + length + hem",
             rounding=RADIUS,
             label="outer cutting radius", says=("outer radius", "outer cutting radius", "outer cut radius",
                                                 "hem radius", "outside radius", "outer", "out from the centre", "far out from the centre",
                                                 "from the centre to the cut edge", "far from the corner", "from the corner",
                                                 "far from the centre", "far from the point", "centre to the cut edge",
                                                 "outer cutting line",
                                                 "outer line", "radius of the outer", "radius for the outer", "radius for the hem",
                                                 "radius of the hem", "radius do i cut the hem", "radius to cut the hem",
                                                 "cut the hem edge",
                                                 "cut the hem at", "radius of the cut edge", "hem cutting line"),
             stated=("outer radius", "outer cutting radius", "outer cut radius", "outside radius", "outer radius came out at",
                     "outer radius is")),
        Step("across", "Twice the outer cutting radius", "2 * outer", rounding=RADIUS, label="diameter of the circle to cut",
             says=("diameter of the circle", "diameter of the whole circle", "diameter of the outer circle", "across the whole circle",
                   "outer diameter", "wide is the circle", "circle is how wide", "circle is how wide across", "across is the circle",
                   "big is the circle", "wide is the whole circle",
                   "across is the whole circle")),
        Step("sweep", "The finished hem is that part of a larger circle", "2 * pi * part * (radius + length)",
             rounding=RADIUS, label="hem sweep",
             says=("sweep", "hem sweep", "hem circumference", "hem measure", "hem measurement", "does the hem measure",
                   "around the hem", "hem length", "hem round",
                   "how long is the hem", "wide is the hem", "hem all the way round", "finished all the way round",
                   "bias tape for hem", "ribbon for hem", "lace for hem", "length of hem",
                   "bias tape for the hem", "round the hem", "far round", "far around", "round the finished hem",
                   "far is it round the finished hem", "far is it round the hem", "far round is the hem",
                   "hem to sew", "circumference of the bottom", "circumference", "bottom", "ribbon for the hem", "ribbon",
                   "lace for the hem", "lace", "trim for the hem", "trim", "braid", "binding",
                   "binding for the hem", "round the bottom", "around the bottom", "hem tape",
                   "tape for the hem", "tape to go round", *(f"{unit} of {trim}" for unit in ("yard", "metre")
                                                            for trim in ("ribbon", "lace", "trim", "braid", "binding", "tape", "bias",
                                                            "fringe")),
                   "bias tape"), stated=("sweep", "round the hem", "hem"), sane="30 cm..100 m"),
        Step("widths", "Widths of cloth side by side to reach from the centre to the outer edge, joined where there "
                       "is more than one",
             "(outer - seam) / (width - 2 * seam)", COUNT, rounding=COUNT_UP, noun="width",
             label="widths for one piece"),
        Step("cloth", "The least length of the ways that fit the width",
             f"if(part = 1, if({WHOLE}, 2 * outer, 4 * outer * rounded(widths)), "
             f"if(part = 3 / 4, if({WHOLE}, 2 * outer, 3 * (outer + seam) * rounded(widths)), "
             f"if(part = 1 / 2, if({WHOLE}, outer + seam, 2 * outer * rounded(widths)), (outer + seam) * "
             f"rounded(widths))))",
             rounding=BUY_CLOTH, label="cloth to buy", says=("how much", "fabric", "cloth", "yardage",
                 "how many metres", "how many yards", "buy", *BUY_WORDS),
             stated=("only", "only have", "took", "skirt took", "used")),
        Step("joins", "Each piece wider than the cloth is joined from widths",
             f"if({WHOLE}, 0, if(part = 1, 2, if(part = 3 / 4, 3, 1)) * (rounded(widths) - 1))", COUNT, noun="join",
             says=("joins", "how many joins", "how many seams in it"), sane="0..8"),
        Step("longest", "What the cloth leaves for the outer radius, less the waist radius and the hem, is the length",
             "if(part > 1 / 2, width / 2, width - seam) - radius - hem", rounding=RADIUS, label="longest that needs no join",
             when={"one_piece": "yes"},
             says=(*(f"longest {join}" for join in ("without a join", "with no join", "without joins", "in one piece", "without joining")),
                   *(f"{how} {verb} {it} be" for how in ("how long", "long") for verb in ("can", "could", "may")
                     for it in ("it", "the skirt", "my skirt", "the circle skirt")))),
        Step("least_width", "The whole circle lies across the cloth, or of a half or less its radius and a seam",
             "if(part > 1 / 2, 2 * outer, outer + seam)", rounding=RADIUS, label="width of cloth that needs no join",
             says=tuple(f"wide {cloth}" for cloth in ("a cloth", "a fabric", "must the cloth be", "must the fabric be",
              "should the cloth be",
                                                      "does the cloth have to be", "does the fabric have to be"))),
        Step("way", "How it is cut", "", TEXT, label="how it is cut", says=("how is it cut", "how to cut it",
            "cut in one", "how many pieces", "does it get cut", "in one piece or", "in two halves", "is it cut", "in one piece or in two")),
    ),
    answers=("cloth", "radius", "cut_radius", "outer", "sweep", "way", "joins"),
    algorithm=way,
    headline=("Buy {cloth}: {way}. Waist radius {radius}.",
              "Cut the waist at a radius of {cut_radius}, and stitch at {radius}.",
              "The waist radius is {radius}; cut at {cut_radius}.", "The waist radius is {radius}."),
    source=GEOMETRY,
    cautions=(Caution("Hang it for 24 hours before hemming: the bias parts drop"),),
    refusals=(
        Refusal("seam >= (waist + ease) / (2 * pi * part)", "the seam allowance is as deep as the waist radius: nothing is left to cut. "
                "Take a smaller seam allowance, such as 1/4 in (6 mm)."),
    ),
    related=("hem sweep", "gathered strip"),
    derivation=(
        Derivation(
            "radius",
            (
                Fact("A whole circle goes round by 2 π times its radius", "whole_round = 2 * pi * radius"),
                Fact("A part of a circle has that part of the way round", "waist_edge = part * whole_round"),
                Fact("The skirt's inner edge must go round the waist and its ease", "waist_edge = waist + ease"),
                Follows("Put the first two into the third", "2 * pi * part * radius = waist + ease"),
                Follows("Divide both by all that stands with the radius", "radius = (waist + ease) / (2 * pi * part)"),
            ),
            names={"whole_round": "the way round the whole circle", "waist_edge": "the inner edge of the skirt"},
            try_with={"waist": "28 in | 71 cm", "ease": "0 in | 0 cm", "part": "0.5"},
        ),
        Derivation(
            "sweep",
            (
                Fact("The hem is a circle about the same middle, a skirt's length further out",
                     "hem_radius = radius + length"),
                Fact("A part of a circle has that part of the way round", "sweep = part * 2 * pi * hem_radius"),
                Follows("Put the hem's radius in", "sweep = 2 * pi * part * (radius + length)"),
            ),
            names={"hem_radius": "the radius of the hem"},
        ),
    ),
    examples=(
        "Half-circle skirt for a 28 inch waist with a five-eighths inch seam allowance at the waist. What's my "
        "cutting radius? -> 8 5/16 in",
        "half circle skirt waist radius for a 70 cm waist -> 22.3 cm",
        "full circle skirt, 66 cm waist, 55 cm long, 1.5 cm hem, 150 cm cloth: how much -> 1.4 m",
        "three-quarter circle skirt, waist 28 in, 24 in long, 60 in cloth, how much fabric -> 2 5/8 yd",
        "full circle skirt 26 in waist, 20 in long, what is the hem sweep -> 151 5/8 in",
    ),
)
