"""The inputs and sentences that several measure rules share."""

from __future__ import annotations

from ..engine.declare import Input
from ..engine.kinds import LENGTH

WIDTH = Input(
    "width",
    "width",
    LENGTH,
    says=("wide", "width", "base", "across", "side", "square", "width is", "base is", "side is"),
    axis="width",
    ask="How wide is it?",
    example="30 cm",
    sane="0.1 mm..1 km",
    practice="4 in..40 in by 1/2 in",
)
HEIGHT = Input(
    "height",
    "height",
    LENGTH,
    says=("high", "height", "long", "length", "tall", "deep", "down", "height is", "length is", "depth is"),
    axis="length",
    ask="How high (or long) is it?",
    example="40 cm",
    sane="0.1 mm..1 km",
    practice="4 in..40 in by 1/2 in",
)
