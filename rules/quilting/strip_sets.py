"""Strips sewn side by side: strip sets and tops from a strip bundle."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import AREA, COUNT, LENGTH
from ..engine.rounding import COUNT_DOWN, COUNT_UP, CUT
from .words import SEAM, USABLE_WIDTH

STRIP_SETS = Rule(
    topic="strip sets",
    family="quilting",
    says=("strip set", "strip sets", "strips sewn together", "strips sewn side by side", "sewn together",
          "strip piecing", "joined strips", "strips joined", "strata", "strip pieced", "strip-pieced",
          "band of strips", "strips cut", "sew strips together", "strip panel", "squares in a row",
          "squares sewn together", "equal strips", "strips sewn into", "into a set", "into a strip set"),
    about="How wide strips come out when they are sewn side by side, and the segments cut across them.",
    inputs=(
        Input("widths", "cut width of the strips", LENGTH, says=("strips", "strip", "cut", "strips cut", "wide",
              "widths", "squares", "in strips", "each"), many=True, ask="How wide are the strips cut?",
              example="2 1/2 in", sane="3 mm..1 m", practice="1 1/2 in..4 in by 1/2 in"),
        Input("count", "number of strips", COUNT, says=("strips", "number of strips", "squares", "joined", "sewn"),
              default=Default("=count(widths)", "Count the strips", derived=True), sane="1..200",
              practice="2..9 by 1"),
        SEAM,
        Input("segment", "segment cut width", LENGTH, says=("segment", "segments", "cross-cut", "cross cut",
              "cross-cuts", "crosscut", "cut across", "slices", "subcut", "sub-cut", "sub-cuts", "sections", "wide"),
              extra=True, spoken=True, ask="How wide are the segments cut?", example="2 1/2 in", sane="5 mm..1 m",
              practice="1 1/2 in..6 in by 1/2 in"),
        Input("segments", "number of segments", COUNT, says=("segments", "segment", "cross cuts", "slices",
              "sections"), extra=True, spoken=True, ask="How many segments do you need?", example="40",
              sane="1..5000", practice="10..80 by 5"),
        USABLE_WIDTH,
    ),
    steps=(
        Step("raw", "Add up the strips and take off two seams for each join between them",
             "if(count(widths) = 1, count * sum(widths), sum(widths)) - 2 * seam * (count - 1)", rounding=CUT,
             label="width, raw edge to raw edge", says=("raw", "raw edge to raw edge", "unfinished",
             "before it is sewn in", "unfinished width", "raw width", "width raw", "strip set width", "raw edge")),
        Step("finished", "In the quilt its own two outer seams go too", "raw - 2 * seam", rounding=CUT,
             label="finished width", says=("finished", "finished width", "in the quilt", "how wide", "what width",
             "width", "come out", "how wide will it be", "finish"), axis="width"),
        Step("per_set", "Segments from one set, along the strip", "usable / segment", COUNT, rounding=COUNT_DOWN,
             noun="segment", label="segments from a set", says=("how many segments", "segments",
             "how many cross cuts", "cross-cuts", "slices", "how many slices")),
        Step("sets", "Sets for the segments wanted", "segments / rounded(per_set)", COUNT, rounding=COUNT_UP,
             noun="set", label="sets", says=("how many strip sets", "how many sets")),
    ),
    answers=("finished", "raw", "per_set", "sets"),
    headline=("Sew {sets}; each gives {per_set}, {raw} high raw.", "The set gives {per_set}, {raw} high raw.",
              "The strips come to {raw} raw edge to raw edge, {finished} in the quilt."),
    home="in",
    source=ARITHMETIC,
    no_unknown=("widths",),
    refusals=(Refusal("finished <= 0", "the seams would take up the strips. Type wider strips or a smaller seam."),
              Refusal("segment > usable", "a segment is longer than the strips. Type a narrower segment or a wider cloth.")),
    examples=(
        "strips cut 1 1/2, 2 1/2 and 3 1/2 in sewn together, 1/4 in seams, finished width in the quilt -> 6 in; 6 "
        "1/2 in",
        "strip set of 3 strips cut 2 1/2 in, how wide raw edge to raw edge -> 6 1/2 in",
        "strip set of 2 strips cut 2 1/2 in, 40 segments 2 1/2 in wide, how many strip sets -> 3 sets; 16 segments",
    ),
    related=("strips and patches", "strip bundle"),
)

STRIP_BUNDLE = Rule(
    topic="strip bundle",
    family="quilting",
    says=("strip bundle", "bundle", "bundle of strips", "strips from a bundle", "precut strips", "pre-cut strips",
          "roll of strips", "2 1/2 in strip bundle", "strip roll", "precut roll", "strips side by side",
          "sewn side by side", "side by side", "top from", "strip quilt", "strips make", "a roll of"),
    about="What a bundle of strips covers when they are sewn side by side.",
    inputs=(
        Input("strips", "number of strips", COUNT, says=("strips", "strip", "of them", "bundle"), noun="strip",
              ask="How many strips are there?", example="40", sane="1..500", practice="20..40 by 2"),
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "wide", "wide strips"),
              default="2 1/2 in | 6.5 cm", because="the width strips are bundled in", sane="1 cm..30 cm",
              practice="2 in..3 in by 1/2 in"),
        Input("long", "strip length", LENGTH, says=("long", "length", "strips long", "wof", "usable"),
              default="42 in | 107 cm", because="cut across 42 to 44 in cloth", sane="10 cm..3 m",
              practice="40 in..44 in by 1 in", spoken=True),
        SEAM,
    ),
    steps=(
        Step("finished_strip", "Each strip loses a seam on both sides", "strip - 2 * seam", label="finished strip"),
        Step("across", "Sewn side by side", "strips * finished_strip", rounding=CUT,
             label="across the strips, finished", says=("how wide", "across", "how big", "how large", "what size",
             "size", "width", "finishes"), axis="width", stated=("across", "finishes", "finish", "top", "wide",
             "make", "top that finishes", "come out")),
        Step("down", "Their length less its two outer seams", "long - 2 * seam", rounding=CUT,
             label="along the strips, finished"),
        Step("area", "What they cover", "across * down", AREA, label="area covered", says=("area",
             "how much do they cover", "square inches")),
        Step("cloth", "The cloth that is in them", "strips * strip", unit=("yd", "m"), label="cloth in the bundle",
             says=("how much fabric", "yardage", "how many yards", "cloth", "how much cloth", "fabric")),
    ),
    answers=("across", "down", "area", "cloth"),
    headline=("Sewn side by side the strips cover {across} by {down}.",),
    sizes=(("strip", "long"),),
    home="in",
    source=ARITHMETIC,
    refusals=(Refusal("strip <= 2 * seam", "the seams would take the whole strip. Type wider strips or a smaller seam."),),
    cautions=(Caution("Measure a strip of the bundle before you sew: with pinked edges it is often a little over "
                      "its size"),),
    examples=(
        "How many 2 1/2 inch strips from a bundle, sewn side by side with 1/4 in seams, make a top that finishes "
        "64 inches across -> 32 strips",
        "what size top from a bundle of 40 strips -> 80 in; 41 1/2 in",
        "strip bundle of 20 strips, how much fabric is that -> 1.389 yd",
    ),
    related=("strip sets",),
)
