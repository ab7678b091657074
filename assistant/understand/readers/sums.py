"""A line that is nothing but a sum of measures, for the input that takes one."""

from __future__ import annotations

from rules.engine.declare import Input
from rules.engine.request import Given

from ..lexicon import Match
from ..values import Line, Value


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """The whole line as a sum, when it is one; it takes every value."""
    if line.sum is None:
        return None, frozenset()
    return Given(line.sum, "text", line.text.strip()), frozenset(value.number for value in values)
