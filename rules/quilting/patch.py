"""The cut size of a plain patch from its finished size."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Rule, Step
from ..engine.kinds import LENGTH
from ..engine.rounding import PATCH_CUT
from .words import SEAM

PATCH = Rule(
    topic="patch",
    family="quilting",
    says=("patch", "patches", "cut size", "cut sizes", "square patch", "cut a square", "cut squares", "rectangle",
          "rectangles", "plain square", "plain patch", "unfinished size", "unfinished size of a", "cut patches",
          "finished squares", "squares", "patchwork", "charm square", "charm squares", "plain block"),
    about="The size to cut a square or rectangle that finishes at a given size: a seam on every side.",
    inputs=(
        Input("width", "finished width", LENGTH, says=("finished", "finish", "finish at", "finished size", "wide",
              "finished square", "come out", "sewn in", "measure", "once sewn", "after sewing", "sewn up", "end up",
              "finished dimension", "finished dimensions", "final size",
              "when sewn"), axis="width", ask="What size does the patch finish?",
              example="4 in", sane="2 mm..3 m", practice="1 in..12 in by 1/2 in"),
        Input("length", "finished length", LENGTH, says=("long", "length", "tall", "high", "deep"), axis="length",
              default=Default("=width", "A square is as long as it is wide", derived=True), sane="2 mm..3 m",
              practice="1 in..12 in by 1/2 in", spoken=True),
        SEAM,
    ),
    steps=(
        Step("cut_width", "Add a seam allowance on both sides", "width + 2 * seam", rounding=PATCH_CUT,
             label="cut width", says=("cut size", "cut", "cut sizes", "cut width", "what size", "how big",
             "how large", "unfinished", "unfinished size"), stated=("cut", "cut at", "unfinished", "raw",
             "raw edge to raw edge", "charm square", "charm squares", "squares cut", "cut my squares at")),
        Step("cut_length", "Add a seam allowance at both ends", "length + 2 * seam", rounding=PATCH_CUT,
             label="cut length"),
    ),
    answers=("cut_width", "cut_length"),
    headline=("Cut the patch {cut_width} by {cut_length}.",),
    sizes=(("width", "length"),),
    home="in",
    source=ARITHMETIC,
    examples=(
        "patch 2 1/2 x 4 1/2 in finished, cut size -> 3 in; 5 in",
        "what cut size for squares that finish at 6 in -> 6 1/2 in",
        "a patch cut 4 1/2 in, 1/4 in seams, what does it finish at -> 4 in",
        "cut size of a 10 cm finished patch -> 11.5 cm",
    ),
    related=("half-square triangles", "scale a block"),
)
