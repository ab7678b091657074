"""Numbers a maker would meet, drawn from the declared ranges: for practice, and for trying every rule."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from functools import lru_cache

from .declare import Input, Rule
from .kinds import COUNT, LENGTH, ROWS, STITCHES, Kind
from .literal import literal
from .request import Given
from .text import amount, shown
from .units import factor, system_of

ENOUGH = 4  # steps that a range must hold, so that the same few numbers do not come again and again
Pick = Callable[[int], int]  # a whole number from 0 up to, not including, the one given


def sample(rule: Rule, pick: Pick, system: str = "in", optional: bool = False) -> dict[str, Given]:
    """A value for every input that needs one. optional: for those with a default too, so that nothing is assumed.

    Inputs that are lists, tables or sums, and those whose default is worked from others, are left out.
    """
    given: dict[str, Given] = {}
    for item in rule.inputs:
        if item.many or (not item.kind.is_number and not item.options) or item.kind.base == "any":
            continue
        if any(default.derived for default in item.defaults) and not (optional and item.options):
            continue
        if item.default is not None and not optional:
            continue
        if item.options:
            keys = list(item.options)
            key = keys[pick(len(keys))]
            given[item.name] = Given(key, "text", key.replace("_", " "))
        elif (made := number(item, pick, system)) is not None:
            given[item.name] = made
    return given


def number(item: Input, pick: Pick, system: str, coarse: bool = False) -> Given | None:
    """A value from an input's practice range, in the system's units; None when it declares none.

    coarse: a length in whole inches or whole half-decimetres and the like, where the range holds enough of them.
    """
    if not item.practice:
        return None
    unit, low, high, step = _range(item.practice, item.kind, system)
    if coarse and item.kind is LENGTH:
        low, step = _coarser(low, high, step, factor("in" if system == "in" else "cm"))
    count = int((high - low) / step) if step else 0
    value = low + step * pick(count + 1)
    text = amount(value / factor(unit), unit) if unit and unit != "1" else shown(value, "1")
    return Given(value, unit or "1", text)


@lru_cache(maxsize=2048)
def _range(practice: str, kind: Kind, system: str) -> tuple[str, Fraction, Fraction, Fraction]:
    """A declared range in the system's units: (unit, low, high, step)."""
    ends, _, step_text = practice.partition(" by ")
    low_text, _, high_text = ends.partition("..")
    low, unit, _ = literal(low_text.strip(), system)
    high = literal(high_text.strip(), system)[0]
    step = literal(step_text.strip(), system)[0] if step_text else _step(kind, low, high)
    return _into_system(kind, system, unit, low, high, step)


def _coarser(low: Fraction, high: Fraction, step: Fraction, unit: Fraction) -> tuple[Fraction, Fraction]:
    """The low end and the step of a range in fives of the unit, or in ones, where that leaves enough to draw from."""
    for size in (5 * unit, unit):
        first = -(-low // size) * size
        if size >= step and high - first >= ENOUGH * size:
            return first, size
    return low, step


def _step(kind: Kind, low: Fraction, high: Fraction) -> Fraction:
    if kind in (COUNT, STITCHES, ROWS):
        return Fraction(1)
    return (high - low) / 20


def _into_system(
    kind: Kind, system: str, unit: str, low: Fraction, high: Fraction, step: Fraction
) -> tuple[str, Fraction, Fraction, Fraction]:
    """A range declared in the other system, put into workable numbers of this one."""
    there = system_of(unit)
    if kind is not LENGTH or not there or there == system:
        return unit, low, high, step
    into = {"in": "cm", "yd": "m", "ft": "cm", "cm": "in", "m": "yd", "mm": "in"}.get(unit, unit)
    small = step < factor("cm")
    size = factor(into) / (1 if not small else (2 if into in ("cm", "m") else 8))
    first = max(size, round(low / size) * size)
    return into, first, max(first, (high // size) * size), max(size, round(step / size) * size)
