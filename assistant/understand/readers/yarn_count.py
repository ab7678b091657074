"""A yarn's count: "2/28 Nm", "40 tex", "20/2 cotton", "400 m per 100 g", "3200 yd/lb"."""

from __future__ import annotations

import re
from fractions import Fraction

from grammar.query import Measure
from rules.engine.declare import Input
from rules.engine.request import Given
from rules.engine.units import factor
from rules.knitting.yarn_count import Count

from ..lexicon import Match
from ..tokens import tokens
from ..values import Line, Value

UNITS = {"tex": "tex", "denier": "denier", "dtex": "dtex", "Nm": "Nm", "Ne": "Ne"}
_SPELLED = {
    "worsted": "worsted", "cotton": "Ne", "linen": "linen", "lea": "linen", "woollen": "run", "woolen": "run",
    "run": "run", "nm": "Nm", "ne": "Ne",
    "metric": "Nm", "yorkshire": "yorkshire", "tex": "tex", "denier": "denier", "dtex": "dtex", "cut": "cut",
    "decitex": "dtex", "nec": "Ne", "nw": "worsted",
}  # fmt: skip
WORDS = {tokens(word)[0]: system for word, system in _SPELLED.items()}
_PLY = re.compile(r"(\d+)\s*/\s*(\d+)")


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """The first yarn count of the line, and the values it is made of."""
    for index, value in enumerate(values):
        if value.shape not in ("one", "span"):
            continue
        after = values[index + 1] if index + 1 < len(values) else None
        found = _length_and_weight(value, after) or _named(line, value)
        if found is not None:
            count, taken = found
            text = line.text[value.start : max(one.end for one in taken)]
            return Given(count, "text", text), frozenset(one.number for one in taken)
    return None, frozenset()


def _length_and_weight(value: Value, after: Value | None) -> tuple[Count, tuple[Value, ...]] | None:
    """A length of yarn and its weight, either first: 400 m per 100 g, 50 g = 120 m, 3200 yd/lb."""
    if value.main.per is not None and _is(value.main.per.unit, "m") and _is(value.main.unit, "g"):
        return None
    if value.main.per is not None and _is(value.main.unit, "m") and _is(value.main.per.unit, "g"):
        return _counted(value.main.value * factor(value.main.unit),
                        value.main.per.value * factor(_pound(value.main.per.unit))), (value,)
    if after is None or after.shape != "one" or value.main.per is not None or after.main.per is not None:
        return None
    one, other = value.main, after.main
    if _is(one.unit, "m") and _is(other.unit, "g"):
        return _counted(one.value * factor(one.unit), other.value * factor(_pound(other.unit))), (value, after)
    if _is(one.unit, "g") and _is(other.unit, "m"):
        return _counted(other.value * factor(other.unit), one.value * factor(_pound(one.unit))), (value, after)
    return None


def _counted(length: Fraction, weight: Fraction) -> Count:
    """Metres to a gram; nothing weighs nought, and the rule refuses it as no count."""
    return Count("m/g", length / factor("m") / weight if weight else Fraction(0))


def _is(unit: str, kind: str) -> bool:
    return unit in (("m", "yd", "km", "ft") if kind == "m" else ("g", "kg", "oz", "lb", "pound"))


def _pound(unit: str) -> str:
    return "lb" if unit == "pound" else unit


def _named(line: Line, value: Value) -> tuple[Count, tuple[Value, ...]] | None:
    """A number with the name of its system, in its unit or in a word beside it."""
    system = UNITS.get(value.main.unit, "")
    if not system and not value.main.bare:
        return None
    if not system:
        near = [spot for spot in (value.last, value.first - 1, value.first - 2,
                                  value.last + 1) if 0 <= spot < len(line.words) and spot not in line.at_value]
        system = next((WORDS[line.words[spot]] for spot in near if line.words[spot] in WORDS), "")
    if not system:
        return None
    return Count(system, _size(value.main)), (value,)


def _size(measure: Measure) -> Fraction:
    """The count of the plied yarn: cotton is written size/ply, worsted and metric ply/size; the larger is the size."""
    ply = _PLY.search(measure.text)
    if ply is None:
        return measure.value
    one, other = int(ply[1]), int(ply[2])
    return Fraction(max(one, other), min(one, other) or 1)
