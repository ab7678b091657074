"""Counts that go with a length in a list: "four seams of 24 in and two of 36 in"."""

from __future__ import annotations

from collections.abc import Mapping
from itertools import pairwise

from rules.engine.declare import Rule
from rules.engine.kinds import LENGTH

from .lexicon import Match
from .values import LENGTHS, Line, Value

TIMES = frozenset(("of", "at", "x", "×", "*", "each"))
MOST_BETWEEN = 4


def counts_of(rule: Rule, line: Line, values: list[Value], matches: list[Match]) -> Mapping[int, Value]:
    """Number of a length -> the count said before it, for a rule that takes a list of lengths.

    The first count is known by the list's own words between it and its length ("four seams of 24 in"); those after it
    may leave the words out ("and two of 36 in").
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
    found: dict[int, Value] = {}
    for count, length in pairwise(values):
        between = range(count.last, length.first)
        if not _counts(count) or length.main.unit not in LENGTHS or not between or len(between) > MOST_BETWEEN:
            continue
        words = [line.words[spot] for spot in between]
        if not all(word.isalpha() or word in TIMES for word in words) or "and" in words:
            continue
        if called.intersection((count.first - 1, *between)) or (found and words[-1] in TIMES) or words[0] in ("x", "×"):
            found[length.number] = count
    return found


def _counts(value: Value) -> bool:
    """Whether a value is a bare whole number above nothing."""
    return value.shape == "one" and value.main.bare and value.main.value.denominator == 1 and value.main.value > 0
