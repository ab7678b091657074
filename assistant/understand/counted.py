"""Counts that go with a length in a list: "four seams of 24 in and two of 36 in"."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction

from rules.engine.declare import Rule
from rules.engine.kinds import LENGTH

from .lexicon import Match
from .values import LENGTHS, Line, Value

TIMES = frozenset(("of", "at", "x", "×", "*", "each"))
MOST_BETWEEN = 4


@dataclass(frozen=True, slots=True)
class Counted:
    """The count said before a length, and how many times it makes the length stand."""

    value: Value
    times: Fraction


def counts_of(rule: Rule, line: Line, values: list[Value], matches: list[Match]) -> Mapping[int, Counted]:
    """Number of a length -> the count said before it, for a rule that takes a list of lengths.

    The first count is known by the list's own words between it and its length ("four seams of 24 in"); those after it
    may leave the words out ("and two of 36 in"). A count of the very lengths that follow ("three strips, 3 in, 2 in and
    1 in") says no more than they do.
    """
    lists = {item.name for item in rule.inputs if item.many and item.kind is LENGTH}
    if not lists:
        return {}
    called = {
        spot
        for match in matches
        if any(tag.topic == rule.topic and tag.what == "role" and tag.name in lists for tag in match.tags)
        for spot in range(match.first, match.last)
    }
    found: dict[int, Counted] = {}
    for number in range(len(values) - 1):
        count, length = values[number], values[number + 1]
        between = range(count.last, length.first)
        if not _counts(count) or length.main.unit not in LENGTHS or not between or len(between) > MOST_BETWEEN:
            continue
        words = [line.words[spot] for spot in between]
        if not all(word.isalpha() or word in TIMES for word in words) or "and" in words:
            continue
        if called.intersection((count.first - 1, *between)) or (found and words[-1] in TIMES) or words[0] in ("x", "×"):
            listed = _listed(line, values[number + 1 :])
            found[length.number] = Counted(count, Fraction(1) if count.main.value == listed > 1 else count.main.value)
    return found


def _listed(line: Line, values: list[Value]) -> int:
    """How many lengths stand in a row, with nothing but commas and "and" between them."""
    total = 0
    last: Value | None = None
    for value in values:
        between = line.words[last.last : value.first] if last is not None else []
        if value.main.unit not in LENGTHS or any(word not in (",", "and") for word in between):
            break
        total, last = total + len(value.members), value
    return total


def _counts(value: Value) -> bool:
    """Whether a value is a bare whole number above nothing."""
    return value.shape == "one" and value.main.bare and value.main.value.denominator == 1 and value.main.value > 0
