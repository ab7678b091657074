"""Drawstrings and the eyelets they come out of."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import LENGTH, RATIO
from ..engine.rounding import CUT_TAPE, HOLE, MM_TENTH, SPACING
from .words import how_many

DRAWSTRING = Rule(
    topic="drawstring",
    family="notions",
    says=("drawstring", "drawcord", "draw cord", "hood cord", "waist tie", "tie cord", "draw string",
        "lacing cord", "pull cord", "cord", "how much cord", "pyjama cord"),
    about="How long to cut a drawstring: round the opening, and a tail and a knot at each end.",
    inputs=(
        Input("girth", "girth of the opening", LENGTH,
            says=(
                "what waist", "which waist", "whose waist", "whose hips", "how big a waist",
                "biggest waist", "largest waist", "waist is that for", "waist will it fit",
                "waist will it suit", "waist will it go round", "how far round",
                "waist", "hood", "opening", "hood opening", "girth", "round", "body", "around", "waistband", "hem",
                "hips", "neck", "waist measure", "hole", "hood edge", "casing", "channel", "ankle",
                "wrist", "cuff"), axis="girth", ask="How far is it round the opening?", example="32 in",
            sane="0 cm..10 m", usual="5 cm..10 m", practice="24 in..44 in by 1 in"),
        Input("tail", "tail at each end", LENGTH,
            says=(
                "tail length", "length of tail",
                "how long are the tails", "how long is each tail", "how long will the tails be",
                "how long a tail", "length of the tails", "length of each tail",
                "how long can the tails be", "how much is left for the tails", "left for the tails",
                "left for each tail",
                "tails", "tail", "each side", "hanging", "to tie", "ends", "hanging out", "tails each side",
                "for tying", "each end", "loose ends", "to hang", "hang out", "hangs out", "over at each end",
                "extra each end", "tying", "each tail", "tail end", "left over each side", "dangling", "dangle"),
            default="8 in | 20 cm", because="enough to tie a bow", sane="0 cm..1 m", usual="0 cm..60 cm", practice="6 in..12 in by 1 in"),
        choice("knotted", "knotted ends", {"yes": (), "no": ("don't knot", "do not knot", "not knotted", "unknotted",
                    "without knotting", "without knots", "won't knot", "no knot", "no knots", "knots none")},
            default=Default("yes", derived=True)),
        Input("knot", "knot at each end", LENGTH,
            says=(
                "each end", "at each end", "knot each end", "knots each end",
                "knot", "each knot", "for each knot", "knots", "for the knots", "per knot", "for the knot"),
            default=(Default("0 in", "no knots", when={"knotted": "no"}, derived=True),
                Default("2 in | 5 cm", "what a plain knot takes")), sane="0 cm..50 cm",
            practice="1 in..3 in by 1/2 in"),
        Input("thick", "thickness of the cord", LENGTH, says=("thick", "thick cord", "wide", "diameter", "cord"),
            extra=True, spoken=True, sane="0.5 mm..5 cm", usual="1 mm..3 cm"),
        how_many("number", "number of drawstrings", "drawstring",
            says=("drawstrings", "of them", "cords", "pairs", "pair of trousers", "hoodies")),
    ),
    steps=(
        Step("cord", "Once round, and a tail and a knot at each end", "girth + 2 * (tail + knot)", rounding=CUT_TAPE,
            label="cord to cut",
            says=(
                "each cord", "each drawstring", "how long is each", "each one",
                "how long", "cord", "drawstring", "length", "how long a drawstring", "cut", "cord length",
                "length of cord"), axis="length", stated=("have", "cord", "left", "cord is", "long", "of cord", "got",
                "only", "cut", "drawstring is", "piece of cord", "length of cord", "there's", "drawstring")),
        Step("longer", "The cord is so much longer than the opening", "cord - girth", label="cord longer than the opening by",
            says=("how much longer", "how much longer than the waist", "longer than the waist", "longer than the opening",
                "how much longer than the opening", "more than the waist")),
        Step("total", "All the cords together", "number * rounded(cord)", rounding=CUT_TAPE, label="cord in all",
             says=(
                "for all of them", "cord for all", "cord for all of them", "for the lot",
                "cord for the lot", "for them all",
                "in all", "total", "total cord", "cord in all", "altogether", "in total", "how much cord",
                "how much", "how much drawstring cord",
                "how much drawstring")),
    ),
    answers=("cord", "total"),
    headline=("Cut the drawstring {cord} long.", "{total} of cord in all."),
    source=COMMON_PRACTICE,
    no_unknown=("number",),
    refusals=(Refusal("girth <= 0", "a cord goes round something. Give how far it is round the opening, such as: 32 in"),),
    defers=("piping",),
    notes=("Common advice is 18 to 30 in more than the body measure for tying.",),
    examples=(
        "drawstring for a 32 in waist, 8 in tails, 2 in for each knot -> 52 in",
        "I have 1.5 m of cord, 20 cm tails each side, 5 cm for each knot: what waist would it go round as a "
        "drawstring -> 100 cm",
        "how long a drawstring for a waist of 90 cm -> 140 cm",
    ),
    related=("casing", "eyelets"),
)

THICKEST_CORD = (
    "fattest cord", "thickest cord", "biggest cord", "largest cord", "widest cord", "how thick a cord", "how fat a cord", "what cord",
    "which cord", "what thickness of cord", "how thick may the cord be", "how thick can the cord be", "thickest drawstring",
    "fattest drawstring", "thickest lace", "thickest rope", "cord will go through", "cord goes through", "cord will pass",
    "cord will fit", "cord thatll pass", "cord that will pass")  # fmt: skip

EYELETS = Rule(
    topic="eyelets",
    family="notions",
    says=("eyelet", "eyelet hole", "eyelet size", "what hole does", "hole does a cord", "what size hole does", "grommet",
        "grommet size", "eyelets for a drawstring",
        "eyelet for cord", "hole for cord", "eyelets", "through eyelets", "through the eyelets", "cord through eyelets",
        "holes be", "holes for the cord", "hole for a cord", "big a hole for a cord", "hole for the cord"),
    about="The hole an eyelet needs for a cord, and where a pair of them goes either side of the centre.",
    inputs=(
        Input("cord", "cord diameter", LENGTH,
            says=("cord", "thick", "diameter", "lace", "drawstring", "rope", "ribbon", "string", "cord thickness",
                "thick cord", "elastic cord"), axis="diameter", ask="How thick is the cord?", example="4 mm",
            sane="0.5 mm..5 cm", practice="3 mm..8 mm by 1 mm"),
        Input("looseness", "hole as a multiple of the cord", RATIO,
            says=("times", "times the cord", "times as large", "times the thickness"),
            default=Default("1.25", "room for the cord to run"), spoken=True, sane="1..3"),
        flag("exactly", "how much larger told", tuple(f"quarter {more}" for more in ("bigger", "larger", "more", "wider", "as big again",
            "as large again", "again"))),
        Input("centre", "distance from the centre", LENGTH,
            says=("from the centre", "either side of the centre", "each side of the centre", "from centre front",
                "from the middle", "either side", "from the center"),
            default="1 in | 2.5 cm", because="far enough apart for a knot between", sane="0 mm..50 cm",
            practice="1/2 in..2 in by 1/4 in"),
    ),
    steps=(
        Step("hole", "The hole is a quarter larger than the cord, so that it runs", "cord * looseness", rounding=HOLE,
            label="eyelet hole", unit=("in", "mm"),
            says=("hole", "holes", "holes be", "size", "what size", "hole for a cord", "how big a hole",
                "hole for the cord", "eyelet", "inner diameter", "hole size", "eyelet size", "how big"),
            axis="diameter", stated=("hole is", "eyelet is", "hole of", "hole", "inside")),
        Step("exact_cord", "The hole without the quarter that it must be larger", "hole / looseness", rounding=MM_TENTH,
            label="thickest cord, exactly", unit=("mm", "mm"), says=THICKEST_CORD, when={"exactly": "yes"}),
        Step("thickest", "The cord that the hole takes", "cord", rounding=MM_TENTH, label="thickest cord",
            unit=("mm", "mm"), says=THICKEST_CORD, when={"exactly": "no"}),
        Step("apart", "One eyelet either side of the centre", "2 * centre", rounding=SPACING, label="eyelets apart",
            says=(
                "distance between", "between them",
                "between the two", "distance between the two", "distance between them",
                "between the eyelets", "distance apart", "how far between", "centre to centre",
                "how far apart", "apart", "spacing")),
        Step("patch", "The patch behind each is three holes square", "3 * rounded(hole)", rounding=SPACING,
            label="backing patch",
            says=(
                "how big a patch", "how big is the patch", "patch behind", "how wide is the patch",
                "patch", "backing", "reinforcement", "backing patch", "interfacing", "patch size", "size of patch",
                "size of the patch", "behind")),
    ),
    answers=("hole", "apart", "patch"),
    insists=True,
    headline=("Use eyelets with a hole of {hole}.", "Set the two eyelets {apart} apart.",
        "Back each eyelet with a patch {patch} square."),
    source=COMMON_PRACTICE,
    no_unknown=("looseness", "centre"),
    examples=(
        "what size eyelet hole for 4 mm cord -> 5 mm",
        "eyelet for 1/4 in cord -> 5/16 in",
        "eyelet size for 6 mm rope -> 7.5 mm",
    ),
    related=("drawstring", "evenly spaced marks"),
)

