"""How well a number's unit and size suit a place, whatever words stand beside it."""

from __future__ import annotations

from grammar.query import Measure
from rules.engine.kinds import ANY, COUNT, LENGTH, RATIO, Kind

from .slots import Slot
from .values import kinds_of, lacks_length, rough_value

OUT_OF_SENSE = -3.0
SLACK = 0.999999  # a range's end belongs to it, whatever a float makes of it
ANYWHERE = 0.2
LIKELY = 0.35
BARE = {"count": 0.15, "ratio": 0.1, "length": 0.0, "stitches": 0.1, "rows": 0.05}


class Fitting:
    """One measure weighed for places. What depends on a place's kind alone is reckoned once for each kind.

    hint: the system of the line's other measures ("in" or "cm"), "" when none is known.
    """

    __slots__ = ("_of_kind", "hint", "kinds", "measure")

    def __init__(self, measure: Measure, hint: str) -> None:
        self.measure, self.hint, self.kinds = measure, hint, kinds_of(measure)
        self._of_kind: dict[str, tuple[float | None, float | None]] = {}

    def of(self, slot: Slot) -> float | None:
        """How well it suits a place, or None when it cannot go there."""
        kind = slot.kind
        if kind is ANY:
            return ANYWHERE
        if kind.name not in self.kinds:
            return None
        known = self._of_kind.get(kind.name)
        if known is None:
            known = self._of_kind[kind.name] = (self._unit_suits(kind), self._size(kind))
        suits, size = known
        if suits is None or size is None:
            return suits
        if size == 0:
            return suits  # nothing makes no sense anywhere, so its words alone say where it belongs
        if slot.sane is not None and not slot.sane[0] * SLACK <= size <= slot.sane[1] / SLACK:
            return suits + OUT_OF_SENSE
        if slot.likely is None:
            return suits
        return suits + (LIKELY if slot.likely[0] * SLACK <= size <= slot.likely[1] / SLACK else -LIKELY)

    def _unit_suits(self, kind: Kind) -> float | None:
        """How well the unit, or its absence, suits a kind."""
        measure = self.measure
        if not measure.bare:
            return -0.3 if lacks_length(measure, kind) else 0.6 if self.kinds[0] == kind.name else 0.3
        suits = BARE.get(kind.name, -0.3)
        if kind is COUNT and measure.value.denominator != 1:
            return None
        if kind in (COUNT, RATIO) and measure.sign == "-":
            suits -= 1
        if kind is LENGTH and measure.spelled and measure.value == 1:
            return None  # "one" alone is "one of them", not a length
        if kind is LENGTH and self.hint and measure.value.denominator == 1:
            suits -= 0.5  # beside lengths that have their unit, a bare whole number is likelier a count
        return suits

    def _size(self, kind: Kind) -> float | None:
        """The number in base units, near enough to say whether a maker would meet it; None when its unit is not known."""
        if self.measure.bare and kind is LENGTH and not self.hint:
            return None
        return rough_value(self.measure, kind, _unit_for_sense(kind, self.hint))


def in_sense(measure: Measure, slot: Slot, unit: str) -> bool:
    """Whether a bare number in a unit is not refused in a place; only where what is refused was declared."""
    value = rough_value(measure, slot.kind, unit)
    return slot.sane is None or slot.sane[0] * SLACK <= value <= slot.sane[1] / SLACK


def likely_in(measure: Measure, slot: Slot, unit: str) -> bool:
    """Whether a maker would meet a bare number in a unit in a place; where that was not declared, whether it is not refused."""
    if slot.likely is None:
        return in_sense(measure, slot, unit)
    return slot.likely[0] * SLACK <= rough_value(measure, slot.kind, unit) <= slot.likely[1] / SLACK


def _unit_for_sense(kind: Kind, hint: str) -> str:
    """The unit a bare number is weighed in: a tension is so many to 10 cm or 4 in."""
    if kind is LENGTH:
        return hint
    if kind.base in ("st/mm", "row/mm"):
        return kind.inch if hint == "in" else kind.metric
    return ""


def rate_parts(measure: Measure) -> tuple[Measure, Measure]:
    """A rate's two numbers apart: "33 stitches across 15 cm" is 33 stitches, and 15 cm."""
    assert measure.per is not None
    above = Measure(measure.parts, measure.text, measure.start, measure.end)
    below = Measure((measure.per,), measure.text, measure.start, measure.end)
    return above, below
