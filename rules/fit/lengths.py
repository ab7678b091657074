"""Lengths altered: changes added up, a piece made longer or shorter for a height, a change spread over seams."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, COMMON_PRACTICE, Caution, Default, Input, Rule, Step
from ..engine.kinds import CHANGES, COUNT, LENGTH
from ..engine.rounding import CUT, DRIFT

LENGTH_CHANGE = Rule(
    topic="length change",
    family="fit",
    says=("net change", "change in the length", "length change", "lengthened", "shortened", "took out", "taken out", "let down", "longer or shorter",
          "alter the length", "let down the hem", "let the hem down", "took up the hem", "took the hem up", "original length", "original skirt length", "lengthen", "shorten", "change the length", "change in length", "took off", "overall change", "altogether"),
    about="What several lengthenings and shortenings come to, and the new length.",
    inputs=(
        Input("changes", "changes", CHANGES, many=True, ask="What was added and what was taken out?", example="+2 in, -3/4 in"),
        Input("original", "original length", LENGTH, says=("pattern", "original", "was", "started at", "originally", "length", "long", "skirt", "from"),
              axis="length", extra=True, sane="10 cm..5 m", practice="20 in..45 in by 1 in"),
    ),
    steps=(
        Step("change", "Add what was put on and take away what was taken out", "sum(changes)", LENGTH, rounding=CUT, label="net change",
             says=("net change", "change", "difference", "overall", "altogether", "in all", "net")),
        Step("new", "Add the change to the original length", "original + change", LENGTH, rounding=CUT, label="new length",
             says=("new length", "finished length", "how long", "length now", "end up", "long is it now"), axis="length"),
    ),
    answers=("change", "new"),
    headline=("The length changes by {change}: it is now {new}.", "The length changes by {change} altogether.", "It is now {new} long."),
    source=ARITHMETIC,
    cautions=(Caution("Move the hem, pocket, dart and button marks with it."),),
    no_unknown=("changes",),
    examples=(
        "took 1 1/2 in out of the bodice, put 5 cm on the skirt and 1/2 in on the hem - net change in the length? -> 1 in",
        "length change +2 in, -3/4 in on a 25 in pattern -> 1 1/4 in; 26 1/4 in",
        "I lengthened the bodice 2 cm and shortened the skirt by 5 cm. net change -> -3 cm",
    ),
    related=("for height",),
)  # fmt: skip

FOR_HEIGHT = Rule(
    topic="for height",
    family="fit",
    says=("drafted for", "my height", "i'm tall", "tall", "petite", "height", "designed for", "made for someone", "pattern height", "for my height",
          "for height", "suit me", "taller", "shorter than"),
    about="A pattern length made longer or shorter in proportion to height.",
    inputs=(
        Input("drafted", "height drafted for", LENGTH,
              says=("drafted for", "pattern is for", "designed for", "pattern height", "made for", "model", "drafted", "pattern for", "for a height of",
                    "intended for", "based on", "standard height", "someone"),
              ask="What height was it drafted for?", example="168 cm", sane="40 cm..230 cm", practice="160 cm..175 cm by 1 cm"),
        Input("own", "own height", LENGTH,
              says=("i'm", "i am", "my height", "she is", "he is", "she's", "he's", "own height", "me", "daughter", "son", "my", "wearer", "and i'm",
                    "for my", "i'm only"), axis="height",
              ask="How tall is the wearer?", example="158 cm", sane="40 cm..230 cm", practice="145 cm..185 cm by 1 cm"),
        Input("length", "piece length", LENGTH,
              says=("piece", "pattern length", "outside leg", "inside leg", "leg", "skirt", "length", "sleeve", "bodice", "inseam", "back length",
                    "dress", "side seam", "trousers", "long"), axis="length",
              ask="How long is the pattern piece?", example="104 cm", sane="2 cm..200 cm", practice="40 cm..110 cm by 1 cm"),
    ),
    steps=(
        Step("new", "Take the length in proportion to the heights", "length * own / drafted", LENGTH, rounding=CUT, label="length to suit",
             says=("what length", "suit", "new length", "how long", "length should", "length for me"), axis="length"),
        Step("change", "Take the pattern's length from it", "new - length", LENGTH, rounding=CUT, label="change",
             says=("how much to shorten", "how much to lengthen", "how much shorter", "how much longer", "shorten", "lengthen", "change",
                   "take off", "take out", "add")),
        Step("difference", "The whole difference in height", "own - drafted", LENGTH, rounding=CUT, label="difference in height"),
    ),
    answers=("new", "change", "difference"),
    headline=("Make it {new} long: a change of {change}.", "Change it by {change}, to {new}."),
    source=COMMON_PRACTICE,
    cautions=(
        Caution("The whole height difference does not go into one piece: it is spread over body and legs, in proportion."),
        Caution("Measure a garment you like first."),
    ),
    examples=(
        "Trousers drafted for 5'6\" and I'm 5 ft 2. The pattern's outside leg is 42 inches. What length would suit me? -> 39 1/2 in; -2 1/2 in",
        "pattern drafted for 168 cm, my height is 175 cm, skirt piece 60 cm long, what length -> 62.5 cm; 2.5 cm",
        "I am 160 cm, it was drafted for 170 cm, sleeve length 58 cm -> 54.6 cm; -3.4 cm",
    ),
    related=("length change",),
)  # fmt: skip

SPREAD_CHANGE = Rule(
    topic="spread a change",
    family="fit",
    says=("spread", "share out", "spread over", "let out", "take in", "each seam", "per seam", "taking in", "letting out", "spread a change",
          "each seam edge", "at each seam", "split between", "distribute", "let it out", "take it in"),
    about="A change all round shared out over the seams: how much at each cut edge.",
    inputs=(
        Input("change", "change all round", LENGTH,
              says=("change", "let out", "take in", "total", "altogether", "add", "bigger", "smaller", "extra", "wider", "narrower", "taking in",
                    "all round", "need", "lose", "gain", "more", "too big", "too tight", "too small", *("waist", "hip", "bust")),
              ask="How much is it to change altogether?", example="4 cm", sane="1 mm..60 cm", practice="1 cm..10 cm by 1 cm"),
        Input("seams", "seams", COUNT, says=("seams", "side seams", "seam"), noun="seam",
              default=Default("=panels", "as many seams as panels, all the way round", derived=True), sane="1..40", practice="2..8"),
        Input("panels", "panels", COUNT, says=("panels", "gores", "pieces", "panel"), noun="panel", ask="Over how many seams (or panels)?",
              example="4 seams", sane="1..40", practice="4..8"),
    ),
    steps=(
        Step("seam", "Share the change among the seams", "change / seams", LENGTH, rounding=DRIFT, unit=("in", "cm"), label="at each seam",
             says=("each seam", "per seam", "at each seam")),
        Step("edge", "A seam has two edges", "seam / 2", LENGTH, rounding=DRIFT, unit=("in", "cm"), label="at each cut edge",
             says=("each edge", "cut edge", "each side of the seam", "per edge", "each cut edge", "edge")),
    ),
    answers=("edge", "seam"),
    headline=("Change each cut edge by {edge}: {seam} at each seam.", "Change each seam by {seam}, {edge} at each cut edge."),
    source=ARITHMETIC,
    cautions=(Caution("Keep the darts and the piece it is sewn to (waistband, sleeve) in step."),),
    examples=(
        "let out 4 cm at the waist over 4 seams, how much at each cut edge -> 0.5 cm; 1 cm",
        "I need to take in 3 in altogether on a six-gore skirt, 6 panels, each edge -> 1/4 in; 1/2 in",
        "spread 2 in over 2 side seams -> 1/2 in; 1 in",
    ),
    related=("body to pattern difference",),
)  # fmt: skip

