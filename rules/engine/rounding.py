"""The rounding table: results only, in the direction that wastes least but never leaves the maker short."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from fractions import Fraction
from typing import cast

from .request import Number
from .units import factor


@dataclass(frozen=True, slots=True)
class Step:
    """How one system rounds: direction ("up", "down", "near", "ties up"), step and unit ("1/8", "yd")."""

    direction: str
    step: Fraction
    unit: str
    _in_base: Fraction | None = field(default=None, init=False, repr=False, compare=False)

    def base_step(self) -> Fraction:
        """The step in base units; worked out when first asked for."""
        if self._in_base is None:
            object.__setattr__(self, "_in_base", self.step * factor(self.unit))
        return cast(Fraction, self._in_base)


@dataclass(frozen=True, slots=True)
class Rounding:
    """A line of the table: what it is for, and how it goes in inches and in metric."""

    name: str
    inch: Step
    metric: Step
    bought: bool = False

    def of(self, system: str) -> Step:
        return self.inch if system == "in" else self.metric


def _line(name: str, inch: str, metric: str, bought: bool = False) -> Rounding:
    """Two steps from their text: "up 1/8 yd", "near 0.1 cm"."""

    def read(text: str) -> Step:
        *direction, step, unit = text.split()
        return Step(" ".join(direction), Fraction(step), unit)

    return Rounding(name, read(inch), read(metric), bought)


BUY_CLOTH = _line("cloth to buy", "up 1/8 yd", "up 0.1 m", bought=True)
CUT_TAPE = _line("elastic, cord, tape or zip to cut", "up 1/4 in", "up 0.5 cm")
BUY_TAPE = _line("trimming or tape to buy", "up 1/4 yd", "up 0.1 m", bought=True)
PATCH_CUT = _line("patchwork cut size", "up 1/8 in", "up 0.1 cm")
CUT = _line("cut size", "near 1/8 in", "near 0.1 cm")
RADIUS = _line("radius or spacing", "near 1/8 in", "near 0.1 cm")
SPACING = RADIUS
BODY = _line("body or finished measure", "near 1/8 in", "near 0.5 cm")
WAIST_RADIUS = _line("waist radius", "near 1/16 in", "near 0.1 cm")
SHEET = _line("wadding or backing size", "up 1/2 in", "up 1 cm")
BIAS_SQUARE = _line("square for bias", "up 1 in", "up 2.5 cm")
DRIFT = _line("error or drift", "near 1/32 in", "near 0.05 cm")
HOLE = _line("hole", "up 1/64 in", "up 0.5 mm")
FINE = _line("fine measure", "near 1/16 in", "near 0.1 cm")
SMALL = _line("small measure", "near 1/16 in", "near 1 mm")
SPI = _line("stitches an inch", "near 1/2 st/in", "near 1/2 st/in")
LIGNE = _line("button size", "near 1 ligne", "near 1 ligne")
MM_TENTH = _line("stitch length", "near 0.1 mm", "near 0.1 mm")
THREAD = _line("thread or yarn length", "up 1/2 yd", "up 1 m")
YARN_LENGTH = _line("yarn length", "up 1 yd", "up 1 m")
YARN_WEIGHT = _line("yarn weight", "up 1 oz", "up 1 g")
COUNT_UP = _line("how many are needed", "up 1 1", "up 1 1")
COUNT_DOWN = _line("how many can be got", "down 1 1", "down 1 1")
COUNT_NEAR = _line("how many, nearest", "near 1 1", "near 1 1")
BUDGET_DOWN = _line("length a budget buys", "down 1/8 yd", "down 0.1 m", bought=True)
STITCH = _line("stitches", "near 1 st", "near 1 st")
ROW = _line("rows", "near 1 row", "near 1 row")
TENSION_ST = _line("stitch tension", "near 1/2 st/4in", "near 1/2 st/10cm")
TENSION_ROW = _line("row tension", "near 1/2 row/4in", "near 1/2 row/10cm")
PENNY = _line("money", "near 0.01 money", "near 0.01 money")
PENNY_A_YARD = _line("price a yard", "near 0.01 money/yd", "near 0.01 money/yd")
PENNY_A_METRE = _line("price a metre", "near 0.01 money/m", "near 0.01 money/m")
PERCENT_TENTH = _line("percentage", "near 0.1 %", "near 0.1 %")


def apply(value: Number, step: Step) -> Fraction:
    """A value in base units rounded by a step, in base units, exactly. Ties go up.

    >>> apply(Fraction(685, 100), Step("up", Fraction(1), "1"))
    Fraction(7, 1)
    """
    size = step.base_step()
    return snap(value, size, step.direction)


def snap(value: Number, size: Fraction, direction: str) -> Fraction:
    """Round to a multiple of size: "up", "down" or "near" (ties up).

    A value that came through a root or pi is a float; a hair's breadth above a multiple is that multiple.
    """
    if isinstance(value, float):
        units = value / float(size)
        whole = round(units)
        if abs(units - whole) < 1e-9 * max(1.0, abs(units)):
            return whole * size
        return _whole(units, direction) * size
    above, below = value.as_integer_ratio()
    step_above, step_below = size.as_integer_ratio()
    whole = _whole_of(above * step_below, below * step_above, direction)
    return Fraction(whole * step_above, step_below)


def _whole_of(above: int, below: int, direction: str) -> int:
    """above/below made whole."""
    if direction == "up":
        return -(-above // below)
    if direction == "down":
        return above // below
    return (2 * above + below) // (2 * below)


def _whole(units: float, direction: str) -> int:
    if direction == "up":
        return math.ceil(units)
    if direction == "down":
        return math.floor(units)
    return math.floor(units + Fraction(1, 2))
