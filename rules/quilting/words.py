"""Inputs and words that the quilting rules share."""

from __future__ import annotations

from ..engine.declare import Input
from ..engine.kinds import LENGTH

WIDTH_OF_QUILT = Input("width", "quilt width", LENGTH, says=("quilt", "wide", "width", "quilt top", "top", "square quilt", "across"),
                       ask="How wide is the quilt?", example="60 in", sane="5 cm..6 m", practice="40 in..90 in by 2 in")  # fmt: skip
LENGTH_OF_QUILT = Input("length", "quilt length", LENGTH, says=("quilt", "long", "length", "down", "square quilt"),
                        ask="How long is the quilt?", example="72 in", sane="5 cm..6 m", practice="40 in..108 in by 2 in")  # fmt: skip
USABLE_WIDTH = Input("usable", "usable fabric width", LENGTH,
                     says=("usable", "wof", "usable width", "fabric", "cloth", "width of fabric", "fabric width", "cloth width",
                           "between the selvedges", "wide fabric", "wide cloth", "usable fabric", "usable cloth", "cotton"),
                     default="40 in | 102 cm", because="what 42 to 44 in cloth gives between the selvedges (common practice)",
                     sane="10 cm..4 m", practice="40 in..44 in by 1 in", usual="85 cm..3 m")  # fmt: skip
