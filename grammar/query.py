"""What the grammar makes of a line: chunks in the order they were typed.

The grammar places nothing and sums nothing. It says "here stands a measure of 2 1/2 inches, here a word", each with
its position in the line as typed, so that whatever is decided later can be pointed at.
"""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from typing import NamedTuple


@dataclass(frozen=True, slots=True)
class Part:
    """A number and its unit, such as 5 ft. unit: a canonical unit name, or "" when none was typed."""

    value: Fraction
    unit: str


@dataclass(frozen=True, slots=True)
class Measure:
    """One number as people mean it: `2 1/2 in`, `5 ft 3`, `GBP 7.25 a metre`, `22 sts to 10 cm`, or a bare `7`.

    parts: one part, or several to be added (5 ft 3 in). The last part of "5 ft 3" has the unit "in".
    per: what it is a rate of (10 cm in "22 sts to 10 cm"; 1 m in "a metre"), or None.
    sign: "+" or "-" when one was typed before it, else "".
    spelled: written in words ("two"); such a number may belong to a phrase ("two at a time").
    about: "about", "roughly", "~" stood before it.
    value, unit: of the first part, the value with its sign. bare: whether no unit of any kind was typed.
    """

    parts: tuple[Part, ...]
    text: str
    start: int
    end: int
    per: Part | None = None
    sign: str = ""
    spelled: bool = False
    about: bool = False
    value: Fraction = field(init=False, repr=False, compare=False)
    unit: str = field(init=False, repr=False, compare=False)
    bare: bool = field(init=False, repr=False, compare=False)

    def __post_init__(self) -> None:
        first = self.parts[0]
        set_once = object.__setattr__  # the way into a frozen dataclass; these three are asked for hundreds of times a line
        set_once(self, "value", -first.value if self.sign == "-" else first.value)
        set_once(self, "unit", first.unit)
        set_once(self, "bare", first.unit == "" and self.per is None)


@dataclass(frozen=True, slots=True)
class Size:
    """Measures joined by x, × or "by": `60 x 72 in`. A unit typed once, on the last, is on each of them."""

    sides: tuple[Measure, ...]
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Span:
    """From one measure to another with no step: `44/45 in`, `44-45 in`, `5 to 15 %`."""

    low: Measure
    high: Measure
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Sweep:
    """Start, stop and step for a table: `24 to 40 in by 2`, `one to three metres by half metres`."""

    first: Measure
    last: Measure
    step: Measure
    text: str
    start: int
    end: int


@dataclass(frozen=True, slots=True)
class Series:
    """A plain list of measures, `5, 6, 7 and 8`, or `44 in or 60 in` (alternatives is True when joined by "or").

    A unit typed once, on the last, is on each of them.
    """

    members: tuple[Measure, ...]
    alternatives: bool
    text: str
    start: int
    end: int


class Word(NamedTuple):
    """A word as typed and in lower case; hyphenated words stay one word ("one-way")."""

    text: str
    lower: str
    start: int
    end: int


class Mark(NamedTuple):
    """Punctuation or a sign: , . ; : ? ! ( ) + - × / = and line ends (as "\\n")."""

    text: str
    start: int
    end: int


Chunk = Measure | Size | Span | Sweep | Series | Word | Mark


@dataclass(frozen=True, slots=True)
class Query:
    """A whole line: the text as typed, and its chunks in order. Positions are in the text as typed."""

    text: str
    chunks: tuple[Chunk, ...]
