"""Patterns of the notebook's sentences, and how a line is met with one.

A pattern is words with spaces between: `remember that? my <part> is|measures <measure>`. `a|b` is either word, a `?` at
the end makes it optional. `<slot>` takes something of the line: the slots of VALUES take one number as the grammar read
it, those of TEXTS take whatever there is, and any other slot takes words without a number in them. So a pattern that
meets a whole line has placed every number of it.
"""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

from assistant.understand.values import Value

from .said import Token

VALUES = frozenset(("measure", "amount", "money", "number"))
TEXTS = frozenset(("text", "file", "question", "project", "about"))
LONGEST = 4000
"""Tokens of a line that are looked at; a longer one is no sentence to the notebook."""
LONGEST_NAME = 8
ARTICLES = frozenset(("the", "a", "an", "my", "of", "is"))  # no name by themselves


@dataclass(frozen=True, slots=True)
class Piece:
    """One piece of a pattern: the words it may be, or the slot it fills."""

    words: frozenset[str]
    slot: str
    optional: bool


@dataclass(frozen=True, slots=True)
class Found:
    """What a pattern's slots took, as they stand in the line."""

    text: str
    slots: Mapping[str, tuple[Token, ...]]

    def words(self, slot: str) -> str:
        """What was typed in a slot, or "" when the pattern has none."""
        tokens = self.slots.get(slot, ())
        return self.text[tokens[0].start : tokens[-1].end].strip() if tokens else ""

    def value(self, slot: str) -> Value:
        value = self.slots[slot][0].value
        assert value is not None
        return value

    def values(self) -> tuple[Value, ...]:
        return tuple(token.value for tokens in self.slots.values() for token in tokens if token.value is not None)


@lru_cache(maxsize=512)
def pieces(pattern: str) -> tuple[Piece, ...]:
    """A pattern's pieces."""
    made = []
    for word in pattern.split():
        optional = word.endswith("?") and len(word) > 1
        bare = word[:-1] if optional else word
        slot = bare[1:-1] if bare.startswith("<") else ""
        made.append(Piece(frozenset() if slot else frozenset(bare.split("|")), slot, optional))
    return tuple(made)


def meet(pattern: str, said: Sequence[Token], text: str) -> Found | None:
    """The slots of a pattern filled from a whole line, each as short as may be; None when it is no such sentence."""
    if len(said) > LONGEST:
        return None
    slots: dict[str, tuple[Token, ...]] = {}
    return Found(text, dict(slots)) if _meet(pieces(pattern), said, 0, 0, slots) else None


def _meet(
    pattern: tuple[Piece, ...], said: Sequence[Token], piece: int, at: int, slots: dict[str, tuple[Token, ...]]
) -> bool:
    if piece == len(pattern):
        return at == len(said)
    one = pattern[piece]
    if at == len(said):
        return one.optional and _meet(pattern, said, piece + 1, at, slots)
    last = piece == len(pattern) - 1
    for end in _ends(one, said, at) if not (last and one.slot in TEXTS) else (len(said),):
        if one.slot:
            slots[one.slot] = tuple(said[at:end])
        if _meet(pattern, said, piece + 1, end, slots):
            return True
        slots.pop(one.slot, None)
    return one.optional and _meet(pattern, said, piece + 1, at, slots)


def _ends(piece: Piece, said: Sequence[Token], at: int) -> Iterator[int]:
    """Where a piece that begins at a token may end, the nearest first."""
    if at >= len(said):
        return
    if not piece.slot:
        if said[at].lower in piece.words:
            yield at + 1
    elif piece.slot in VALUES:
        if said[at].value is not None and said[at].value.shape == "one":  # type: ignore[union-attr]
            yield at + 1
    else:
        name = piece.slot not in TEXTS
        for end in range(at + 1, min(len(said), at + LONGEST_NAME if name else len(said)) + 1):
            if name and said[end - 1].value is not None:
                return
            if not name or end > at + 1 or said[at].lower not in ARTICLES:
                yield end
