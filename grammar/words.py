"""Plain text between the measures: split into words and marks, and into the measures hidden in hyphenated words."""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction

from grammar.query import Chunk, Mark, Measure, Part, Word
from grammar.values import spelled
from grammar.vocabulary import Vocabulary

_PIECE = re.compile(r"-?[^\W\d_](?:\w|['-](?=[^\W\d_]))*|[0-9][\w.,/]*(?<![.,])|\n|[^\s]")
_SMALL = (
    r"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)"
    r"(?:-(?:one|two|three|four|five|six|seven|eight|nine))?|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen"
    r"|one|two|three|four|five|six|seven|eight|nine)"
)
_COUNT = re.compile(rf"(?:{_SMALL}-(?:half|third|quarter|eighth|sixteenth)s?|half|quarter|third|eighth|{_SMALL})(?=-)")
_EXTENT = frozenset({"wide", "long", "deep", "high", "tall", "thick", "square", "apart"})


class Typed:
    """A text as typed beside its plain form: what chunks are cut from."""

    __slots__ = ("origin", "text")

    def __init__(self, text: str, origin: list[int] | None) -> None:
        self.text = text
        self.origin = origin

    def span(self, start: int, end: int) -> tuple[str, int, int]:
        """The text as typed, and its start and end, for a stretch of the plain text."""
        if self.origin is not None:
            start, end = self.origin[start], self.origin[end - 1] + 1
        return self.text[start:end], start, end


def split(typed: Typed, plain: str, at: int, vocabulary: Vocabulary) -> Iterator[Chunk]:
    """The chunks of a stretch of plain text that stands at a position of the whole plain text."""
    for found in _PIECE.finditer(plain):
        piece = found.group()
        start = at + found.start()
        if "-" in piece and len(piece) > 3 and (halves := _hyphenated(typed, piece, start, vocabulary)):
            yield from halves
            continue
        text, begins, ends = typed.span(start, start + len(piece))
        if len(piece) > 1 or piece.isalnum():
            yield Word(text, piece.lstrip("-"), begins, ends)
        else:
            yield Mark(piece, begins, ends)


def _hyphenated(typed: Typed, word: str, start: int, vocabulary: Vocabulary) -> list[Chunk]:
    """The measure in "ten-inch", "half-inch", "inch-wide", "ten-inch-wide", and the word after it; else nothing."""
    count = _COUNT.match(word)
    unit_at = count.end() + 1 if count else 0
    unit, _, rest = word[unit_at:].partition("-")
    if unit not in vocabulary.units or not (count or rest in _EXTENT):
        return []
    ends = unit_at + len(unit)
    value = spelled(count.group()) if count else Fraction(1)
    text, begins, stops = typed.span(start, start + ends)
    chunks: list[Chunk] = [Measure((Part(value, vocabulary.units[unit]),), text, begins, stops, spelled=True)]
    if rest:
        text, begins, stops = typed.span(start + ends + 1, start + len(word))
        chunks.append(Word(text, rest, begins, stops))
    return chunks
