"""Tablecloths, runners and napkins: the size to cut, the cloth and the joins."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_DOWN, COUNT_UP, CUT
from .words import CLOTH_ASKED

WIDTH = Input(
    "width", "fabric width", LENGTH, says=("fabric", "cloth", "fabric width", "wide", "wide fabric", "wide cloth",
                                           "cloth width", "roll", "bolt", "wide cotton", "wide linen"),
    ask="How wide is the cloth?", example="150 cm",
    sane="10 cm..5 m", usual="85 cm..3 m", practice="140 cm..180 cm by 10 cm",
)  # fmt: skip
HEM_KIND = choice(
    "turned", "hem", {"double": ("double hem", "double", "turned twice", "double-turned", "double turned hem"),
                      "single": ("single hem", "single",
    "turned once", "overlocked hem", "in all")}, default=(Default("double",
        "turned twice, the usual hem of table linen", when={"shape": "square"}),
                                                Default("double", "turned twice, the usual hem of table linen",
                                                        when={"shape": "oblong"}),
                                                Default("single", "a round edge takes a narrow hem", derived=True)),
)  # fmt: skip
HEM = Input(
    "hem", "hem", LENGTH, says=("hem", "hems", "double hem", "deep hem", "hem of", "hem allowance", "single hem"),
    default=(Default("1/2 in | 1.2 cm", "a narrow hem on a round cloth", when={"shape": "round"}),
             Default("1 in | 2.5 cm", "the usual hem of table linen")),
    sane="0 cm..20 cm", practice="1/2 in..2 in by 1/2 in", spoken=True,
)  # fmt: skip

TRIMS = ("lace", "trim", "trimming", "braid", "fringe", "edging", "ribbon", "binding", "bias", "bobble trim", "piping")
EDGING = (*(f"how much {trim}" for trim in TRIMS), *(f"how many {unit} of {trim}" for unit in ("metre", "yard") for trim in TRIMS),
          *(f"{trim} for the edge" for trim in TRIMS), *(f"{trim} to go round" for trim in TRIMS), "round the finished edge",
          "all round the finished edge", "round the finished cloth")  # fmt: skip

TABLECLOTH = Rule(
    topic="tablecloth",
    family="fabric",
    says=("tablecloth", "table cloth", "table runner", "runner", "table", "table linen", "cloth for a table"),
    about="The size to cut a tablecloth or runner, square, oblong or round, with its drop and hem, and the cloth for "
          "it.",
    inputs=(
        choice("shape", "shape of the table",
               {"round": ("round", "circular", "round table", "diameter", "round tablecloth"), "square": ("square",
                   "square table", "square tablecloth"),
                "oblong": ("all round", "all the way round", "rectangular", "oblong", "rectangle",
                           "rectangular table")},
               default=(Default("oblong", derived=True),)),
        Input("table_width", "table width", LENGTH, says=("table", "table top", "wide", "width", "diameter", "across",
                                                          "table is", "round table",
              "square table", "runner", "top", "biggest table", "largest table", "what table",
                                                          "what size table", "size table", "big a table", "size of the table",
                                                          "size of table", "big is the table", "big was the table", "table will it suit",
                                                          "table does it suit", "table will it fit", "table does it fit",
                                                          "table would it suit", "table would it fit", "wide a table"),
                                                          ask="How wide is the table?", example="90 cm", sane="5 cm..10 m",
              usual="30 cm..2.5 m",
              practice="80 cm..120 cm by 10 cm"),
        Input("table_length", "table length", LENGTH, says=("long", "length", "table length", "long finished"), sane="5 cm..20 m",
              ask="How long is the table?", example="180 cm", usual="30 cm..4 m", practice="100 cm..240 cm by 20 cm",
              default=(Default("=table_width", "Square: as long as wide", when={"shape": ("square", "round")},
                               derived=True),)),
        Input("drop", "drop", LENGTH, says=("drop", "overhang", "hang", "hanging", "hangs", "over the edge",
                                            "drop of", "overhanging", "fall", "falls", "to fall", "falling", "falls over",
                                            "what drop", "hang down", "to the floor"), ask="How far does it hang over the edge?",
              default=(Default("0 cm", "The size said is that of the cloth when finished", when={"made_to": "yes"}),),
              example="25 cm", sane="1 mm..3 m", usual="0 cm..1 m", practice="15 cm..40 cm by 5 cm"),
        flag("made_to", "made to its finished size", ("finished size", "to finish at", "finishing at",
                                                      "when finished", "once finished", "finished runner", "no drop",
                                                      "without a drop", "no overhang", "without overhang", "long finished",
                                                      "wide finished", "finished", "runner finished", "finished runner size")),
        HEM_KIND, HEM,
        Input("edge_hem", "hem allowance an edge", LENGTH, says=("hem in all",), spoken=True, sane="0 cm..40 cm",
              default=(Default("=2 * hem", "A double hem takes its depth twice", when={"turned": "double"},
                               derived=True),
                       Default("=hem", "A hem turned once takes its depth", derived=True))),
        WIDTH,
    ),
    steps=(
        Step("cut_width", "The table, a drop and a hem at both sides", "table_width + 2 * drop + 2 * edge_hem",
             label="cut width", rounding=CUT,
             says=("cut width", "cut size", "how big to cut", "size to cut", "how wide to cut", "cut diameter",
                   "what diameter", "what size", "how big", "cut", "diameter to cut"),
             stated=("cloth is", "across", "piece", "piece of", "fabric is", "cut", "damask", "square of cloth", "have",
                     "linen", "cut size", "square cloth", "cloth of", "my cloth", "cloth", "square of",
                     "cut cloth was", "cloth was", "cut cloth",
                     "i cut", "cut it at", "was cut", "cut at", "is cut", "cloth is cut", "my cloth is cut", "cloth cut", "a cloth cut",
                     "tablecloth cut")),
        Step("cut_length", "The table, a drop and a hem at both ends", "table_length + 2 * drop + 2 * edge_hem",
             label="cut length", rounding=CUT,
             says=("cut length", "how long to cut")),
        Step("long_side", "The longer of the two", "max(cut_width, cut_length)", label="cut length", rounding=CUT,
             says=(*tuple(f"long {verb} i cut" for verb in ("do", "should", "must", "shall")), "length do i cut", "length should i cut",
                   "cut how long", "how long and how wide do i cut", "how long and wide do i cut")),
        Step("short_side", "The shorter of the two", "min(cut_width, cut_length)", label="cut width", rounding=CUT,
             says=(*tuple(f"wide {verb} i cut" for verb in ("do", "should", "must", "shall")), "width do i cut", "width should i cut",
                   "cut how wide")),
        Step("finished_width", "The table and a drop at both sides", "table_width + 2 * drop", label="finished width", rounding=CUT,
             says=("finished size", "big is it when finished", "size when finished", "finished cloth", "big will it finish",
                   "big does it finish",
                   "what does it finish at", "does it finish at", "will it finish at", "finished width", "size once hemmed",
                   "big once hemmed", "when it's finished",
                   "when it's hemmed", "when hemmed", "cloth measure when it's hemmed", "cloth measure", "measure when it's hemmed",
                   "measure when hemmed", "measure when finished", "measure when it's finished", "measure once hemmed",
                   "size will it finish",
                   "big is it finished", "size is it finished", "size does it finish", "finished tablecloth", "finished diameter",
                   "big is the finished cloth"),
             stated=("finished", "round tablecloth and", "round tablecloth on", "tablecloth measures", "tablecloth is",
                     "finishes", "finishes at", "tablecloth finishes",
              "cloth finishes", "finished at", "finished cloth is",
             "tablecloth is finished",
                     "runner finishes")),
        Step("finished_length", "The table and a drop at both ends", "table_length + 2 * drop", label="finished length", rounding=CUT,
             says=("finished length", "long is it when finished", "long will it finish", "long does it finish", *(
                 "finished size", "big is it when finished", "size when finished", "big will it finish", "cloth measure",
                 "measure when it's hemmed", "measure when hemmed", "when it's hemmed", "cloth measure when it's hemmed",
                 "big does it finish",
                 "size once hemmed", "size will it finish", "size does it finish", "finished tablecloth"))),
        Step("edging", "All round the finished edge", "2 * (finished_width + finished_length)", label="edging to go all round",
             rounding=CUT,
             when={"shape": ("square", "oblong")}, says=EDGING),
        Step("round_edging", "Round the finished edge", "pi * finished_width", label="edging to go all round", rounding=CUT,
             when={"shape": "round"}, says=EDGING),
        Step("widths", "Widths of cloth side by side, joined where there is more than one (the lesser side across, "
                       "where that saves)",
             "min(cut_width, cut_length) / width", COUNT, rounding=COUNT_UP, noun="width", says=("how many widths",
                 "widths")),
        Step("cloth", "Each width runs the other way", "rounded(widths) * max(cut_width, cut_length)",
             rounding=BUY_CLOTH, label="cloth to buy",
             says=("how much", "fabric", "how many metres", "how many yards", "yardage", "buy", "how much cloth", *CLOTH_ASKED)),
        Step("joins", "Joins between the widths", "rounded(widths) - 1", COUNT, noun="join", rounding=COUNT_UP,
             says=("joins", "how many joins", "seams")),
    ),
    answers=("cut_width", "cut_length", "cloth", "joins"),
    headline=("Cut it {cut_width} by {cut_length}; buy {cloth}.", "Cut it {cut_width} by {cut_length}.",
              "Buy {cloth}."),
    sizes=(("table_width", "table_length"),),
    told_sizes=(("cut_width", "cut_length"),),
    source=COMMON_PRACTICE,
    refusals=(
        Refusal("table_length - table_width > 0", "a round table has one measure, its diameter, and two were told. Say "
        "rectangular table, or "
                "the diameter alone.", choices={"shape": "round"}),
        Refusal("table_width - table_length > 0", "a round table has one measure, its diameter, and two were told. Say "
        "rectangular table, or "
                "the diameter alone.", choices={"shape": "round"}),
    ),
    cautions=(Caution("A join takes two seam allowances more: put whole width in the middle and half a width at each "
                      "side", when="ceil(widths) > 1"),),
    related=("napkins",),
    examples=(
        "tablecloth for a table 90 x 180 cm with a 25 cm drop, cut size -> 150 cm; 240 cm",
        "If my piece of damask is 150cm square and the table is 90 cm square, what drop will the tablecloth have "
        "after a double 2.5 cm hem? -> 25 cm",
        "round tablecloth, table 120 cm diameter, 30 cm drop: how big to cut -> 182.4 cm",
        "square tablecloth for a 36 in table with a 10 in drop in 60 in cloth, how many yards -> 1 3/4 yd",
    ),
)

HEMMED = ("napkin", "serviette", "tea towel", "handkerchief", "hanky", "mat", "placemat", "towel")
THINGS_CUT = tuple(f"{thing} {how}" for thing in HEMMED for how in ("cut", "each cut", "are cut"))
# Words that tell the size as cut, and words that tell the finished one, or tell neither with "cut" in them.
AS_CUT = ("as cut", "each cut", "to be cut", "i cut them", "cut them", "i cut each", "squares cut", "cut squares", "cut at", "already cut",
             *THINGS_CUT)
CUT_OF = tuple(f"{thing} cut {what}" for thing in HEMMED for what in ("size", "from", "out of"))
FINISHED = ("finished", "when done", "when they are done", "when they're done", "when hemmed", "once hemmed",
            "cut size", "each cut from", "size to be cut", *CUT_OF)  # fmt: skip

NAPKINS = Rule(
    topic="napkins",
    family="fabric",
    says=("napkin", "napkins", "serviette", "serviettes", "tea towel", "tea towels", "handkerchief", "hankies",
          "cocktail napkins", "placemats", "place mats", *THINGS_CUT, *CUT_OF),
    about="The size to cut napkins, mats or towels with their hems, and the cloth for a number of them.",
    inputs=(
        Input("count", "how many", COUNT, says=("napkin", "napkins", "serviettes", "tea towels", "pieces", "squares",
                                                "handkerchief", "mats", "towels"), noun="napkin",
              ask="How many are there?", example="8", sane="1..2000", usual="1..200", practice="4..12"),
        Input("across", "finished width", LENGTH, says=("finished", "square", "wide", "width", "napkin", "size of",
                                                        "size is",
                                                        "finished size", "across", "when done", "when they are done",
                                                        "when they're done", "to be", "done",
                                                        "when it is done", "come out at", "finish", "which finish", "that finish",
                                                        "to finish", "finish at",
                                                        "finishing"),
              ask="How wide is one when finished?", example="40 cm", sane="2 cm..3 m", usual="10 cm..80 cm",
              practice="30 cm..50 cm by 5 cm"),
        Input("down", "finished length", LENGTH, says=("long", "length", "deep", "high"), sane="2 cm..3 m",
              usual="10 cm..1 m", spoken=True,
              default=Default("=across", "Square: as long as wide", derived=True)),
        choice("shape", "shape", {"square": ("square",), "oblong": ("oblong", "rectangular")},
               default=(Default("square", derived=True),)),
        # "12 napkins cut 45 cm square" tells the size of the pieces: their hems are in it already.
        flag("as_cut", "size said as cut", AS_CUT),
        flag("to_finish", "size said as finished", FINISHED),
        flag("both_said", "finished size said", ("finished size", "finish size", "size when finished")),
        HEM_KIND, HEM,
        Input("edge_hem", "hem allowance an edge", LENGTH, says=("hem in all",), spoken=True, sane="0 cm..40 cm",
              default=(Default("0 cm", "The size said is that of the pieces as cut", when={"as_cut": "yes", "to_finish": "no",
                                                                                                          "both_said": "no"},
                               derived=True),
                       Default("=2 * hem", "A double hem takes its depth twice", when={"turned": "double"},
                               derived=True),
                       Default("=hem", "A hem turned once takes its depth", derived=True))),
        WIDTH,
    ),
    steps=(
        Step("cut_across", "The finished width and a hem at both sides", "across + 2 * edge_hem", label="cut width",
             rounding=CUT,
             says=("cut size", "cut width", "how big to cut", "size to cut", "cut squares", "what size to cut",
                 "should each be cut", "should each square be cut",
                  "must each be cut", "do i cut them", "do i cut each", "square be cut", "each be cut", "size do i cut",
                  "what size do i cut",
                  "size should i cut", "big do i cut", *(f"{how} {verb} i cut" for how in ("size square", "size of square", "big a square",
                                                                               "size squares", "big square")
                                                         for verb in ("do", "must", "should", "shall", "will"))),
             stated=("square", "cut at", "were cut", "was cut", "each cut", "are cut", *THINGS_CUT)),
        Step("cut_down", "The finished length and a hem at both ends", "down + 2 * edge_hem", label="cut length",
             rounding=CUT, says=("cut length",)),
        Step("in_a_row", "How many lie side by side", "width / cut_across", COUNT, rounding=COUNT_DOWN, noun="napkin",
             label="across the cloth",
             says=("how many across", "fit across", "how many fit across", "go across", "how many go across", "lie across",
                   "side by side", "in a row", "how many in a row", "in each row", "across the cloth", "across the fabric",
                   "lie side by side",
                   "in one row", "to a row", "from one width", "across one width")),
        Step("rows", "Rows for all of them", "count / rounded(in_a_row)", COUNT, rounding=COUNT_UP, noun="row",
             label="rows of them", says=("how many rows",)),
        Step("cloth", "Each row takes a cut length", "rounded(rows) * cut_down", rounding=BUY_CLOTH,
             label="cloth to buy", says=("how much", "fabric", "cloth",
             "how many metres", "how many yards", "yardage", "buy", "what length", *CLOTH_ASKED), stated=("have", "only", "got")),
    ),
    answers=("cloth", "cut_across", "cut_down", "in_a_row", "rows"),
    headline=("Buy {cloth}: cut each {cut_across} by {cut_down}.", "Cut each {cut_across} by {cut_down}."),
    sizes=(("across", "down"),),
    refusals=(Refusal("across > 0", "the size could be that of the pieces as cut, or finished. Say one of them, such as: 8 napkins 40 cm "
                      "square finished; or: 8 napkins cut 50 cm square.", choices={"as_cut": "yes", "both_said": "yes"}),
              Refusal("cut_across > width", "one does not fit across the cloth: with its hems it is wider than the cloth. Take wider "
                      "cloth, or smaller ones."),),
    source=COMMON_PRACTICE,
    related=("tablecloth",),
    examples=(
        "8 napkins 40 cm square finished, 150 cm cloth, how much -> 1.5 m; 50 cm",
        "six napkins 18 in square, 1/2 in double hem, 44 in fabric, how many yards -> 1 3/4 yd; 20 in",
        "cut size of 12 napkins 45 cm square with a single hem of 1 cm -> 47 cm",
    ),
)
