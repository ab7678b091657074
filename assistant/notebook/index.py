"""Which sentences a line may be, found by its words without looking at every pattern."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

from .phrases import meet, pieces
from .said import Token
from .sentences import KEEPS, TELLS

ALL = (*((pattern, act, True) for pattern, act in KEEPS), *((pattern, act, False) for pattern, act in TELLS))


Ranks = dict[str, list[int]]


@lru_cache(maxsize=1)
def _by_word() -> tuple[Ranks, Ranks]:
    """A word -> the ranks of the patterns that a line may meet: that begins with it, and that holds it anywhere.

    A pattern that begins with a slot is known by the word after it, wherever that stands.
    """
    first: Ranks = {}
    within: Ranks = {}
    for rank, (pattern, _, _) in enumerate(ALL):
        begins, words = _signs(pattern)
        for word in words:
            (first if begins else within).setdefault(word, []).append(rank)
    return first, within


def _signs(pattern: str) -> tuple[bool, list[str]]:
    """The words of which a line that meets the pattern holds at least one, and whether it must begin with one of them."""
    signs: list[str] = []
    begins = True
    for piece in pieces(pattern):
        if piece.slot:
            begins = False
            continue
        signs += piece.words
        if not piece.optional:
            break
    return begins, signs


def likely(said: Sequence[Token]) -> Iterator[tuple[str, str, bool]]:
    """The patterns that a line may meet, in their order: (pattern, act, whether it keeps)."""
    first, within = _by_word()
    ranks = {rank for token in said[:24] for rank in within.get(token.lower, ())}
    ranks.update(rank for token in said[:1] for rank in first.get(token.lower, ()))
    words = {token.lower for token in said}
    for rank in sorted(ranks):
        if not any(words.isdisjoint(needed) for needed in _needed(ALL[rank][0])):
            yield ALL[rank]


@lru_cache(maxsize=1024)
def _needed(pattern: str) -> tuple[frozenset[str], ...]:
    """For each word that must be there, the words it may be."""
    return tuple(piece.words for piece in pieces(pattern) if piece.words and not piece.optional)


__all__ = ["likely", "meet", "pieces"]
