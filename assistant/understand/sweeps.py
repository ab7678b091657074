"""Spans with the step told of them in words: "66 to 86 cm going up by 5", "6 to 14 cm deep, every 2 cm", "rising by halves"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from grammar.query import Chunk, Mark, Measure, Part, Span, Sweep, Word

# Straight before a step: "by 2", "every 2 cm", "steps of 2", "going up 2 in".
BEFORE = frozenset(("by", "every", "up", "rising", "increment", "increments", "step", "steps", "stepping", "intervals", "each"))
LINKS = frozenset(("of", "in", "at", "with", "an", "a"))
# Straight behind one: "2 in at a time", "in half inch steps".
BEHIND = (("at", "a", "time"), ("steps",), ("increments",), ("intervals",), ("jumps",))
# What may stand between a span and the words of its step besides: "6 to 14 cm deep, every 2 cm".
MOST_BETWEEN = 7
SHARES = {"halves": 2, "quarters": 4, "eighths": 8}


class _Step(NamedTuple):
    """A step found: the measure, and the place after its last chunk."""

    measure: Measure
    end: int


def with_steps(chunks: list[Chunk]) -> list[Chunk]:
    """The chunks with each such span and its step as a sweep."""
    if not any(isinstance(chunk, Span) for chunk in chunks):
        return chunks
    made: list[Chunk] = []
    at = 0
    while at < len(chunks):
        chunk = chunks[at]
        step = _step_of(chunks, at, chunk) if isinstance(chunk, Span) else None
        if step is None or not isinstance(chunk, Span):
            made.append(chunk)
            at += 1
            continue
        unit = chunk.high.unit or step.measure.unit
        low, high, whole = (_in(one, unit) for one in (chunk.low, chunk.high, step.measure))
        made.append(Sweep(low, high, whole, f"{chunk.text} by {whole.text}", chunk.start, whole.end))
        between = (one for one in chunks[at + 1 : step.end] if isinstance(one, Word))
        made.extend(one for one in between if one.lower not in BEFORE | LINKS | SHARES.keys())
        at = step.end
    return made


def _in(measure: Measure, unit: str) -> Measure:
    """A bare measure in a unit; one that has its own as it is."""
    return replace(measure, parts=(Part(measure.parts[0].value, unit),)) if measure.bare and unit else measure


def _step_of(chunks: Sequence[Chunk], at: int, span: Span) -> _Step | None:
    """The step told soon after a span, in its unit or in none."""
    for spot in range(at + 1, min(len(chunks), at + 2 + MOST_BETWEEN)):
        chunk = chunks[spot]
        if isinstance(chunk, Measure):
            alike = chunk.per is None and (chunk.bare or span.high.unit in ("", chunk.unit)) and chunk.value > 0
            if not alike:
                return None
            behind = _said_behind(chunks, spot + 1)
            near = at + 1 < spot and _marked(chunks, at, spot)
            return _Step(chunk, spot + 1 + behind) if near or behind else None
        if isinstance(chunk, Word) and chunk.lower in SHARES and _marked(chunks, at, spot):
            part = Part(Fraction(1, SHARES[chunk.lower]), span.high.unit)
            return _Step(Measure((part,), chunk.text, chunk.start, chunk.end), spot + 1)
        if not isinstance(chunk, Word) and not (isinstance(chunk, Mark) and chunk.text == ","):
            return None
    return None


def _marked(chunks: Sequence[Chunk], at: int, spot: int) -> bool:
    """Whether a word that leads to a step stands straight before a place, small words between."""
    back = spot - 1
    while back > at and isinstance(one := chunks[back], Word) and one.lower in LINKS:
        back -= 1
    word = chunks[back]
    return back > at and isinstance(word, Word) and word.lower in BEFORE


def _said_behind(chunks: Sequence[Chunk], spot: int) -> int:
    """How many words behind a number say that it is a step."""
    for words in BEHIND:
        behind = chunks[spot : spot + len(words)]
        if tuple(one.lower for one in behind if isinstance(one, Word)) == words:
            return len(words)
    return 0
