"""Trimmings, ribbon, webbing, hook-and-loop and boning: lengths to buy."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_TAPE, COUNT_UP, CUT_TAPE
from .words import how_many

TRIM = Rule(
    topic="trim",
    family="notions",
    says=("trim", "trimming", "lace", "braid", "rickrack", "ric rac", "fringe", "lace trim", "edging lace", "pompom trim", "bobble trim", "gimp", "broderie", "motifs", "motif",
          "eyelet lace", "ribbon trim", "lace edging", "beaded trim"),
    about="How much trimming an edge takes: turned ends, mitred corners, whole motifs.",
    inputs=(
        Input("side_a", "first side", LENGTH, says=("side",), extra=True, sane="1 cm..50 m"),
        Input("side_b", "second side", LENGTH, says=("side",), extra=True, sane="1 cm..50 m"),
        Input("edge", "edge to trim", LENGTH, says=("edge", "hem", "round", "around", "edges", "along", "skirt hem", "all round", "neckline", "curtain", "cushion", "perimeter", "long",
                                                    "tablecloth", "pillowcase"), axis="girth",
              default=Default("=2 * (side_a + side_b)", "Add the four sides", derived=True), ask="How long is the edge to trim?", example="100 cm", sane="1 cm..500 m",
              practice="50 cm..300 cm by 10 cm"),
        choice("loop", "ends", {"open": ("open edge", "each end", "both ends", "straight edge"),
                                "closed": ("closed", "closed loop", "all round", "all the way round", "round", "around", "circle", "in the round", "all the way around", "joined")},
               default=Default("open", "an edge with two ends; say \"closed loop\" for one that meets")),
        Input("turn", "turn-in", LENGTH, says=("turn in", "turned in", "each end", "turned under", "turning", "to turn under", "turned", "at each end", "for turning", "turn under",
                                               "ends", "overlap", "to overlap"),
              default="1 in | 2.5 cm", because="the usual to turn in at an end", sane="0 mm..30 cm", practice="1/2 in..1 in by 1/4 in"),
        choice("turned", "turned in", {"yes": (), "no": ("nothing turned in", "no turning", "no turn-in", "without turning", "nothing turned", "raw ends", "no turn in", "not turned in")},
               default=Default("yes", derived=True)),
        Input("width", "width of the trimming", LENGTH, says=("wide", "width", "wide lace", "wide braid", "wide trim"), axis="width",
              default=Default("0 in", "no width said", derived=True), sane="0 mm..50 cm", practice="1/2 in..3 in by 1/2 in"),
        Input("corners", "mitred corners", COUNT, says=("corners", "mitred corners", "mitres", "corner"), noun="corner", default=Default("0", "none said", derived=True), sane="0..1000"),
        Input("motif", "motif repeat", LENGTH, says=("motif", "repeat", "motifs", "every", "motif every", "pattern repeat", "scallop", "scallops", "each motif", "a motif"), extra=True,
              sane="1 mm..2 m", practice="3 cm..10 cm by 1 cm"),
        Input("turnings", "turnings", COUNT, says=("turnings",), default=(
            Default("0", derived=True, when={"turned": "no"}), Default("1", derived=True, when={"loop": "closed"}), Default("2", derived=True),
        ), sane="0..10", spoken=True),
        how_many("number", "number of pieces", "piece", says=("pieces", "sleeves", "pillowcases", "cushions", "of them", "curtains", "towels")),
    ),
    steps=(
        Step("length", "Add the turnings, and twice the width at each mitred corner", "number * (edge + turnings * turn + corners * 2 * width)", rounding=CUT_TAPE,
             label="trimming to cut", says=("how much", "how long", "length", "trim", "lace", "how much lace", "braid", "ribbon", "how much trim", "how much braid", "cut"),
             axis="length", stated=("have", "left", "of lace", "of trim", "got", "of braid", "only", "cut")),
        Step("motifs", "Whole motifs that cover it", "length / motif", COUNT, rounding=COUNT_UP, noun="motif", label="whole motifs",
             says=("how many motifs", "motifs", "how many", "whole motifs", "repeats", "how many repeats", "scallops", "how many scallops")),
        Step("whole", "Whole motifs are so long", "rounded(motifs) * motif", rounding=CUT_TAPE, label="length in whole motifs",
             says=("whole motifs", "length in motifs", "in whole motifs")),
        Step("buy", "What the shop cuts", "length", rounding=BUY_TAPE, label="trimming to buy", says=("buy", "to buy", "how many yards", "how many metres", "yards", "metres")),
    ),
    answers=("length", "motifs", "whole", "buy"),
    headline=("Cut {motifs}: {whole}.", "Cut {length} of trimming.", "Buy {buy} of trimming."),
    sizes=(("side_a", "side_b"),),
    source=COMMON_PRACTICE,
    no_unknown=("turn", "turnings", "width", "corners", "number", "side_a", "side_b"),
    examples=(
        "the lace has a motif every 6 cm and the hem is 100 cm, only whole motifs, nothing turned in: how many motifs -> 17 motifs; 102 cm",
        "braid along a 40 in edge, 1 in turned in at each end -> 42 in",
        "lace all round a hem of 90 in, 1 in turn-in -> 91 in",
        "trim for a 60 in edge with 2 mitred corners, 1 in wide, nothing turned in -> 64 in",
    ),
    related=("hook-and-loop, boning, ribbon",),
)

LENGTHS = Rule(
    topic="hook-and-loop, boning, ribbon",
    family="notions",
    says=("ribbon", "ribbon ties", "ties", "hook-and-loop", "hook and loop", "boning", "tape", "twill tape", "ribbons", "tie", "cotton tape", "seam tape", "apron ties", "bunting tape",
          "hook and loop tape", "bones", "rigilene", "elastic loops", "ribbon bow", "bows", "petersham", "lengths of ribbon", "cords", "cord for", "spiral boning"),
    about="So many lengths of ribbon, tape, hook-and-loop or boning, in all.",
    inputs=(
        Input("number", "number of lengths", COUNT, says=("ties", "pieces", "strips", "lengths", "bones", "ribbons", "channels", "of them", "bows", "tabs", "loops", "tie", "cords"),
              noun="length", ask="How many lengths?", example="8 ties", sane="1..100000", practice="2..12 by 1"),
        Input("each_length", "length of each", LENGTH, says=("each", "long", "in each", "length", "of", "apiece", "a piece", "per tie", "each one"), axis="length", ask="How long is each?",
              example="14 in", sane="1 mm..100 m", practice="4 in..36 in by 2 in"),
        Input("ends", "turned or sealed at each end", LENGTH, says=("at each end", "hem", "turned under", "each end", "for hemming", "turn under", "seam"),
              default=Default("0 in", "none said", derived=True), sane="0 mm..20 cm"),
    ),
    steps=(
        Step("cut", "Each with its ends", "each_length + 2 * ends", rounding=CUT_TAPE, label="each, as cut", says=("cut length", "cut each", "each cut")),
        Step("total", "So many times one", "number * cut", rounding=BUY_TAPE, label="in all",
             says=("total", "in all", "altogether", "how much", "how many yards", "how many metres", "total yards", "total length", "ribbon", "tape", "buy", "yards", "metres",
                   "how much ribbon"), stated=("have", "left", "got", "of ribbon", "of tape", "only", "roll of", "there's", "reel of")),
    ),
    answers=("total", "cut"),
    headline=("Buy {total}: each is cut {cut} long.", "Cut each {cut} long."),
    source=COMMON_PRACTICE,
    no_unknown=("ends",),
    notes=("A bow takes about 3 times its finished width and both tails; tie one in string first.",),
    examples=(
        "8 ribbon ties 14 in each, total yards -> 3 1/4 yd",
        "boning: 12 bones 20 cm long, how much in all -> 2.4 m",
        "4 strips of hook-and-loop 5 cm each, total -> 0.2 m",
    ),
    related=("trim", "strap"),
)
