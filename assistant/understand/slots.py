"""The places of a rule that a number can go to, and the words of a question that speak for them."""

from __future__ import annotations

import math
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import NamedTuple

from rules.engine.buying import BUYING, VERDICT, told_in_hand
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import ANY, Kind
from rules.engine.literal import bounds

from .lexicon import Match
from .tokens import LEADING, stem
from .values import Line

IN_PLACE_OF = (("instead", "of"), ("place", "of"), ("rather", "than"))
SPEAKING = frozenset(("role", "result", "stated"))


@dataclass(frozen=True, slots=True)
class Slot:
    """A place for a number: an input, or a step that the maker may state.

    likely, sane: the ends, in base units, of what a maker would meet there and of what is not refused.
    spoken: it is taken only when spoken of. many: it is a list. takes: what a value put here takes up, which of a list
    is nothing, since that has room for several.
    """

    name: str
    kind: Kind
    declared: Input | Step
    order: int
    stated: bool = False
    likely: tuple[float, float] | None = None
    sane: tuple[float, float] | None = None
    spoken: bool = False
    many: bool = False
    takes: frozenset[str] = frozenset()


class Mention(NamedTuple):
    """A role word met in the question: it speaks for a slot.

    leads: it belongs to the number after it and never to the one before: from, to, at, until.
    """

    number: int
    slot: str
    first: int
    last: int
    stated: bool
    weight: float
    leads: bool = False


@lru_cache(maxsize=512)
def slots_of(rule: Rule) -> tuple[Slot, ...]:
    """Every place a number can go in a rule, inputs first."""
    slots = [_of_input(item, order) for order, item in enumerate(rule.inputs) if item.kind.is_number]
    if all(slot.name in (*rule.no_unknown, *BUYING) for slot in slots):
        return tuple(slots)  # nothing could be worked back to, so no result is told
    in_hand = told_in_hand(rule)
    slots += [
        Slot(step.name, step.kind, step, len(slots) + order, stated=True, sane=_ends(step.sane), takes=frozenset((step.name,)))
        for order, step in enumerate(rule.steps)
        if step.kind.is_number and step.kind is not ANY and (step.name in rule.answers or step.stated)
        and step.name not in (in_hand, *VERDICT)
    ]  # fmt: skip
    return tuple(slots)


@lru_cache(maxsize=1024)
def places_of(rule: Rule, told: bool) -> tuple[tuple[Slot, ...], Mapping[str, Slot]]:
    """The places of a rule, in order and by name. told: those for results that the maker tells are among them."""
    slots = tuple(slot for slot in slots_of(rule) if told or not slot.stated)
    return slots, {slot.name: slot for slot in slots}


def _of_input(item: Input, order: int) -> Slot:
    likely = _ends(item.usual or item.practice.partition(" by ")[0])
    takes = frozenset[str]() if item.many else frozenset((item.name,))
    return Slot(item.name, item.kind, item, order, False, likely, _ends(item.sane), item.spoken, item.many, takes)


def _ends(text: str) -> tuple[float, float] | None:
    """The two ends of a declared range, an open one at infinity; None for no range."""
    if not text:
        return None
    low, high = bounds(text)
    return (-math.inf if low is None else float(low), math.inf if high is None else float(high))


@lru_cache(maxsize=512)
def nouns_of(rule: Rule) -> frozenset[str]:
    """What a rule's counts count."""
    every: tuple[Input | Step, ...] = (*rule.inputs, *rule.steps)
    return frozenset(stem(declared.noun) for declared in every if declared.noun)


def _in_place_of(words: list[str]) -> bool:
    """Whether a phrase says that what follows was there before: "instead of", "in place of the"."""
    end = len(words) - (words[-1] in ("the", "my", "a"))
    return tuple(words[max(0, end - 2) : end]) in IN_PLACE_OF


def mentions_of(rule: Rule, line: Line, matches: list[Match]) -> list[Mention]:
    """The role, result and stated words of the question that speak for this rule's slots; longer phrases win."""
    topic = rule.topic
    mine = [(match, tag) for match in matches for tag in match.tags if tag.what in SPEAKING and tag.topic == topic]
    longer = [match for match, _ in mine if match.last - match.first > 1]
    kept = []
    for number, (match, tag) in enumerate(mine):
        first, last = match.first, match.last
        if any(one.first <= first and one.last >= last and one.last - one.first > last - first for one in longer):
            continue
        words = line.words[first:last]
        leads = words[-1] == "to" or LEADING.issuperset(words) or _in_place_of(words)  # "down to", "increase to"
        kept.append(Mention(number, tag.name, first, last, tag.what != "role", match.weight, leads))
    return kept
