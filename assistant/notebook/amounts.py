"""An amount as it is kept: exact, in base units, with the unit and the text it was typed in."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from assistant.understand.values import base_value, kinds_of
from grammar.query import Measure
from rules.engine.kinds import ALL_KINDS, Kind
from rules.engine.text import shown

KINDS = {kind.name: kind for kind in ALL_KINDS}


class NoUnit(Exception):
    """A bare number where a measure is meant, and no habit to read it by. text: as typed."""

    def __init__(self, text: str) -> None:
        super().__init__(text)
        self.text = text


@dataclass(frozen=True, slots=True)
class Amount:
    """value: in base units of its kind. unit: canonical, "1" for a plain count. text: as typed. kind: a Kind's name."""

    kind: str
    value: Fraction
    unit: str
    text: str

    def body(self) -> dict[str, Any]:
        return {"kind": self.kind, "value": str(self.value), "unit": self.unit, "text": self.text}

    @classmethod
    def of_body(cls, body: dict[str, Any]) -> Amount:
        return cls(body["kind"], Fraction(body["value"]), body["unit"], body["text"])

    def with_value(self, value: Fraction) -> Amount:
        """Another amount of the same kind and unit."""
        return Amount(self.kind, value, self.unit, shown(value, self.unit))


def of_measure(measure: Measure, text: str, wanted: str = "", system: str = "") -> Amount:
    """The amount of a measure, of its likeliest kind or the one wanted. Raises NoUnit when it needs a unit."""
    kind = _kind(measure, wanted)
    bare = ""
    if measure.bare and kind.name not in ("count", "ratio"):
        if not system:
            raise NoUnit(text)
        bare = kind.inch if system == "in" else kind.metric
    number, unit = base_value(measure, kind, bare)
    return Amount(kind.name, number, unit or "1", f"{text} {bare}" if bare else text)


def _kind(measure: Measure, wanted: str) -> Kind:
    """The kind wanted, when the measure can be of it; else its likeliest."""
    kinds = kinds_of(measure) or ("count",)
    return KINDS[wanted if wanted in kinds else kinds[0]]
