"""What can be measured in the workroom: the steps values come in, the safe one for a bound, and whether it fits."""

from __future__ import annotations

import math
from collections.abc import Iterator
from fractions import Fraction

from .invert import Bound
from .kinds import COUNT, LENGTH, MASS, PERCENT, RATIO, ROW_RATE, ROWS, STITCH_RATE, STITCHES, Kind
from .puzzle import Puzzle
from .request import Number
from .rounding import snap
from .units import factor

WHOLE = (COUNT, STITCHES, ROWS)
NEAREST_FIRST = (RATIO, PERCENT, STITCH_RATE, ROW_RATE)
FINER = (1, 2)  # a ruler is read to 1/8 in, and where that is too coarse to 1/16 in


def step_of(kind: Kind, system: str) -> Fraction:
    """The step to which a value of a kind is measured in the workroom, in base units."""
    if kind is LENGTH:
        return factor("in") / 8 if system == "in" else factor("mm")
    fine = kind is RATIO or kind.base.startswith("money") or (kind is MASS and system == "in")
    share = Fraction(1, 100 if fine else 10)
    return Fraction(1) if kind in WHOLE else factor(kind.inch if system == "in" else kind.metric) * share


def candidates(puzzle: Puzzle, bound: Bound) -> Iterator[Number]:
    """Values to give for a bound, the best first; the exact one last, unless it must be whole."""
    step = step_of(puzzle.item.kind, puzzle.request.system_for(puzzle.item.kind))
    whole = puzzle.item.kind in WHOLE
    near = snap(bound.value, step, "near")
    if bound.want == "only":
        yield from (snap(bound.value, step / finer, "near") for finer in (FINER[:1] if whole else FINER))
    else:
        if distance(near, bound.value) * 1000 < step or puzzle.item.kind in NEAREST_FIRST:
            yield near
        inside = snap(bound.value, step, "down" if bound.want == "most" else "up")
        yield inside
        yield inside - step if bound.want == "most" else inside + step
    if not whole and not (bound.want == "only" and puzzle.item.kind is LENGTH):
        yield bound.value


def distance(one: Number, other: Number) -> Number:
    return one - other if one > other else other - one


def fits(puzzle: Puzzle, start: Bound, got: Number) -> bool:
    """Whether a result keeps to what was stated."""
    if isinstance(got, float) and math.isclose(got, start.value, rel_tol=1e-9):
        return not start.open
    if start.want == "most":
        return got < start.value if start.open else got <= start.value
    if start.want == "least":
        return got > start.value if start.open else got >= start.value
    how = puzzle.known().rounding(puzzle.step)
    step = how.base_step() if how is not None else step_of(puzzle.step.kind, puzzle.request.system_for(puzzle.step.kind))
    return distance(got, start.value) * 2 <= step
