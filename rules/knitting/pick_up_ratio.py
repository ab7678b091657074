"""Stitches to pick up along an edge by a ratio that was told: three for every four rows."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Input, Rule, Step
from ..engine.kinds import ROWS, STITCHES
from ..engine.rounding import STITCH

_CALLED = ("for every", "out of every", "in every", "out of", "to every", "per every")

PICK_UP_BY_RATIO = Rule(
    topic="pick up by a ratio",
    family="knitting",
    says=("pick up", "picking up", "picked up", "pick up and knit", "knit up"),
    called=_CALLED,
    about="How many stitches are picked up along an edge of rows by a ratio such as three for every four rows.",
    inputs=(
        Input("pick", "stitches picked up", STITCHES, says=("pick up", "picking up", "knit up", "pick up and knit"),
              ask="How many stitches are picked up?", example="3 stitches", sane="1 st..20 st", practice="2 st..5 st by 1 st",
              spoken=True),
        Input("of_rows", "rows they are picked up from", ROWS, says=_CALLED, ask="From how many rows?", example="4 rows",
              sane="1 row..20 row", practice="3 row..7 row by 1 row", spoken=True),
        Input("rows", "edge rows", ROWS, says=("along", "edge", "rows along", "edge has", "front has", "edge of", "row ends", "band of"),
              ask="How many rows has the edge?", example="132 rows", sane="1 row..5000 row", practice="80 row..200 row by 4 row"),
    ),
    steps=(
        Step("stitches", "Divide the rows into such groups, and pick up so many for each", "rows / of_rows * pick", STITCHES,
             rounding=STITCH, label="stitches to pick up",
             says=("stitches", "how many", "how many stitches", "sts", "stitches in all", "stitches altogether"),
             stated=("have", "got", "picked up", "wanted", "need", "stitches in all", "stitches altogether")),
    ),
    answers=("stitches",),
    headline=("Pick up {stitches}.",),
    no_unknown=("pick", "of_rows"),
    source=ARITHMETIC,
    examples=(
        "pick up 3 for every 4 rows along 132 rows, how many stitches -> 99 stitches",
        "I pick up 2 stitches for every 3 rows and the edge has 120 rows, stitches in all -> 80 stitches",
        "picking up 3 stitches out of every 4 rows along 96 rows -> 72 stitches",
    ),
    related=("pick up",),
)
