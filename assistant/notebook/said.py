"""A line as the notebook hears it: its words as typed, and its numbers as the grammar read them."""

from __future__ import annotations

import re
from dataclasses import dataclass

from assistant.understand.values import Line, Value

_WORD = re.compile(r"'s(?!\w)|[^\W_]+(?:[-'&./][^\W_]+(?!'s))*?(?='s(?!\w))|[^\W_]+(?:[-'&./][^\W_]+)*|\S")
_CURLY = str.maketrans("‘’“”", "''\"\"")
ENDS = frozenset(".!?")


@dataclass(frozen=True, slots=True)
class Token:
    """A word (lower: in small letters) or a value of the line, and where it stands in the text as typed."""

    lower: str
    start: int
    end: int
    value: Value | None = None


def tokens_of(line: Line) -> list[Token]:
    """The line's tokens in order, without the stops at its end."""
    text = line.text.translate(_CURLY)
    found: list[Token] = []
    at = 0
    for value in line.values:
        found += _words(text, at, value.start)
        found.append(Token(text[value.start : value.end].lower(), value.start, value.end, value))
        at = value.end
    found += _words(text, at, len(text))
    while found and found[-1].value is None and found[-1].lower in ENDS:
        found.pop()
    return found


def _words(text: str, start: int, end: int) -> list[Token]:
    return [Token(word.group().lower(), word.start(), word.end()) for word in _WORD.finditer(text, start, end)]
