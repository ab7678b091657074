"""Which sentences a line may be, found by its words without looking at every pattern."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from functools import lru_cache

from .phrases import meet, pieces
from .said import Token
from .sentences import KEEPS, TELLS

ALL = (*((pattern, act, True) for pattern, act in KEEPS), *((pattern, act, False) for pattern, act in TELLS))


@lru_cache(maxsize=1)
def _by_word() -> dict[str, list[int]]:
    """A word -> the ranks of the patterns that begin with it, or whose first slot it follows."""
    found: dict[str, list[int]] = {}
    for rank, (pattern, _, _) in enumerate(ALL):
        for word in _signs(pattern):
            found.setdefault(word, []).append(rank)
    return found


def _signs(pattern: str) -> list[str]:
    """The words of which a line that meets the pattern holds at least one: up to the first that must be there."""
    signs: list[str] = []
    for word in pattern.split():
        optional = word.endswith("?")
        bare = word[:-1] if optional else word
        if not bare.startswith("<"):
            signs += bare.split("|")
            if not optional:
                break
    return signs


def likely(said: Sequence[Token]) -> Iterator[tuple[str, str, bool]]:
    """The patterns that a line may meet, in their order: (pattern, act, whether it keeps)."""
    known = _by_word()
    ranks = {rank for token in said[:24] for rank in known.get(token.lower, ())}
    for rank in sorted(ranks):
        yield ALL[rank]


__all__ = ["likely", "meet", "pieces"]
