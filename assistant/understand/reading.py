"""One way to read a question."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

from rules.engine.answer import Answer
from rules.engine.declare import Rule
from rules.engine.kinds import COUNT
from rules.engine.request import Given, Request

from .counted import Counted
from .lexicon import Match
from .place import Placing
from .values import Line, Value


@dataclass(frozen=True, slots=True)
class Tried:
    """A reading put to its rule: the request, and the answer to it; or the unit that a bare number wants."""

    request: Request | None
    answer: Answer

@dataclass(slots=True)
class Reading:
    """One way to read the question: a rule, where the numbers go, which options, what is asked, how well it fits."""

    rule: Rule
    line: Line
    placing: Placing
    options: dict[str, list[Match]]
    chosen: dict[str, tuple[str, ...]]
    asked: tuple[str, ...]
    listed: dict[str, Given] = field(default_factory=dict)
    counts: Mapping[int, Counted] = field(default_factory=dict)
    score: float = 0.0
    taken: frozenset[int] = frozenset()
    heard: frozenset[int] = frozenset()
    tried: Tried | None = None
    topic_score: float = 0.0

    @property
    def lost(self) -> list[Value]:
        """Numbers that found no place; a number word ("one of them") or that of an aside is not counted as lost."""
        return [value for value in self.placing.unplaced if not self._left_out(value) and (not value.soft or self._counts(value))]

    @property
    def asides(self) -> tuple[str, ...]:
        """Numbers that were left out as no part of the sum, as typed."""
        return tuple(value.text for value in self.placing.unplaced if self._left_out(value))

    def _left_out(self, value: Value) -> bool:
        """Whether a number is an aside's; one that counts things may be how many to make, where the rule makes several."""
        if not value.counts_others:
            return value.aside
        filled = {slot.name for slots in self.placing.spots.values() for slot in slots}
        several = (item for item in self.rule.inputs if item.kind is COUNT and (item.noun or item.label.startswith("how many")))
        return all(item.name in filled for item in several)

    def _counts(self, value: Value) -> bool:
        """Whether a number word stands right before a measure and counts what is so large: "two 40 cm cushions"."""
        after = self.line.at_value.get(value.last)
        return after is not None and not after.main.bare and after.main.per is None and value.main.bare and value.main.value > 1
