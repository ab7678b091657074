"""Straps: how long, how wide to cut, and webbing for several."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_TAPE, CUT, CUT_TAPE

STRAP = Rule(
    topic="strap",
    family="bags",
    says=("strap", "straps", "handle", "handles", "bag strap", "strap length", "bag handles", "tote straps", "shoulder strap", "crossbody strap", "strap width",
          "handle length", "bag handle", "strap drop", "drop"),
    about="How long a strap is for its drop, how wide to cut it, and the webbing for several.",
    inputs=(
        Input("drop", "drop", LENGTH, says=("drop", "hang", "drop of", "strap drop", "hangs", "handle drop"), axis="height", ask="How far does the strap drop, or how long is it?",
              example="10 in drop", sane="0 mm..2 m", practice="5 in..14 in by 1 in"),
        Input("apart", "distance between its ends", LENGTH, says=("apart", "between the ends", "between its ends", "distance between", "ends apart", "span", "between", "ends", "spread",
                                                                  "set apart", "between them"),
              ask="How far apart are the strap's ends?", example="5 in", sane="0 mm..2 m", practice="4 in..8 in by 1 in"),
        Input("inset", "sewn in at each end", LENGTH, says=("inset", "each end", "at each end", "sewn in", "sewn", "overlap", "into the seam", "insets", "end allowance", "turned under", "seam at each end",
                                                            "for attaching", "to attach", "attached", "tucked in", "tucked under"),
              default="1 in | 2.5 cm", because="enough to sew a boxed cross", sane="0 mm..30 cm", practice="1 in..2 in by 1/4 in"),
        Input("length", "strap length", LENGTH, says=("straps", "long", "strap", "each", "length", "of", "webbing", "handles", "long straps", "a strap", "straps of", "in length"), axis="length",
              default=Default("=2 * drop + apart + 2 * inset", "Down and up again, across between the ends, and what is sewn in", derived=True),
              sane="2 cm..5 m", practice="20 in..40 in by 1 in"),
        choice("kind", "made as", {
            "folded in four": ("folded in four", "folded in 4", "in four", "double folded", "edges to the centre", "edges to the middle", "four layers", "folded twice", "edges to centre",
                               "folded into four", "fold in four"),
            "tube": ("tube", "sewn as a tube", "turned tube", "turned through", "turned out", "turned right side out", "rouleau", "tube turned"),
            "webbing": ("webbing", "tape", "ready made", "leather"),
        }, default="folded in four", because="the usual cloth strap"),
        Input("finished", "finished width", LENGTH, says=("finished", "wide", "finished width", "finish", "finishes", "wide strap", "wide when finished", "to finish"), axis="width",
              ask="How wide is the finished strap?", example="1 in", sane="3 mm..30 cm", practice="1 in..2 in by 1/4 in"),
        Input("seam", "seam allowance", LENGTH, says=("seam allowance", "seam", "seams", "sa", "allowance", "seam allowances"), default="1/2 in | 1.2 cm",
              because="the usual for bags (common practice)", sane="0 mm..5 cm", usual="3 mm..3 cm", practice="1/4 in..5/8 in by 1/8 in"),
        Input("number", "number of straps", COUNT, says=("straps", "strap", "handles", "of them", "bags", "pieces", "lengths"), noun="strap", default=Default("1", derived=True), sane="1..10000",
              practice="2..6 by 1"),
    ),
    steps=(
        Step("strap", "The strap as cut", "length", rounding=CUT_TAPE, label="strap to cut", axis="length",
             says=("how long", "strap length", "length", "strap", "cut length", "how long a strap", "handle length", "length of the strap", "how long are the straps"),
             stated=("cut", "already cut", "straps are", "strap is", "have", "cut at", "long", "straps", "webbing")),
        Step("four", "Folded in four: four times the finished width", "4 * finished", rounding=CUT, label="cut width, folded in four", axis="width",
             says=("how wide", "cut width", "strip", "width", "strip how wide", "wide", "width to cut", "strip width", "how wide a strip"), when={"kind": "folded in four"},
             stated=("cut", "strip", "cut width", "strip of", "cut strip", "wide strip", "strips")),
        Step("tube", "As a tube: twice the finished width and two seams", "2 * finished + 2 * seam", rounding=CUT, label="cut width, as a tube", axis="width",
             says=("how wide", "cut width", "strip", "width", "strip how wide", "wide", "width to cut", "strip width", "how wide a strip"), when={"kind": "tube"},
             stated=("cut", "strip", "cut width", "strip of", "cut strip", "wide strip")),
        Step("webbing", "All the straps together", "number * rounded(strap)", rounding=BUY_TAPE, label="in all",
             says=("webbing", "total", "in all", "altogether", "total length", "how much webbing", "how much", "total webbing", "how many metres", "how many yards", "buy")),
    ),
    answers=("strap", "four", "tube", "webbing"),
    headline=("Cut the strap {strap} long and {four} wide, folded in four.", "Cut the strap {strap} long and {tube} wide, sewn as a tube.", "Cut the strip {four} wide.",
              "Cut the strip {tube} wide.", "{webbing} in all.", "Cut the strap {strap} long."),
    source=COMMON_PRACTICE,
    no_unknown=("seam", "inset"),
    defers=("webbing",),
    cautions=(Caution("Heavy loads: reinforce each end of a strap with a boxed cross of stitching"),),
    examples=(
        "strap sewn as a tube, 3 cm finished, 1 cm seam allowance, strip how wide -> 8 cm",
        "my straps are already cut at 24 in, the ends will be 5 in apart with 1 in inset at each end, what drop do I get -> 8 1/2 in",
        "strap with a 10 in drop, ends 5 in apart, 1 in sewn in at each end -> 27 in",
        "strap 1 in finished, folded in four, cut width -> 4 in",
    ),
    related=("tote", "webbing"),
)

WEBBING = Rule(
    topic="webbing",
    family="bags",
    says=("webbing", "strap webbing", "belt webbing", "cotton webbing", "webbing straps", "webbing handles", "webbing for", "nylon webbing"),
    about="Webbing for several straps.",
    inputs=(
        Input("number", "number of straps", COUNT, says=("straps", "strap", "handles", "of them", "bags", "pieces", "lengths", "belts", "loops"), noun="strap",
              default=Default("1", derived=True), sane="1..10000", practice="2..6 by 1"),
        Input("length", "length of each", LENGTH, says=("each", "of", "long", "straps", "strap", "handles", "in each", "apiece", "length"), axis="length", ask="How long is each strap?",
              example="26 in", sane="1 cm..50 m", practice="20 in..40 in by 1 in"),
        Input("ends", "turned under at each end", LENGTH, says=("at each end", "turned under", "each end", "for each end", "to turn under"), default=Default("0 in", "none said", derived=True),
              sane="0 mm..30 cm"),
    ),
    steps=(
        Step("cut", "Each with its ends", "length + 2 * ends", rounding=CUT_TAPE, label="each, as cut", says=("cut length", "cut each", "each cut")),
        Step("total", "So many times one", "number * cut", rounding=BUY_TAPE, label="webbing to buy",
             says=("total", "in all", "altogether", "how much", "how many yards", "how many metres", "total length", "webbing", "how much webbing", "buy", "yards", "metres"),
             stated=("have", "left", "got", "of webbing", "only", "roll of", "there's")),
    ),
    answers=("total", "cut"),
    headline=("Buy {total} of webbing: each strap is cut {cut} long.", "Cut each strap {cut} long."),
    source=COMMON_PRACTICE,
    no_unknown=("ends",),
    cautions=(Caution("Heavy loads: reinforce each end of a strap with a boxed cross of stitching"),),
    examples=(
        "webbing for 2 handles of 26 in each in yards -> 1 1/2 yd",
        "webbing for 3 straps of 1.2 m each, total length -> 3.6 m",
        "webbing for a 1.2 m strap with 2 cm turned under at each end -> 1.3 m; 124 cm",
    ),
    related=("strap",),
)
