"""What a loosely told measure is read from, and what is put in its place."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import NamedTuple, TypeVar

from grammar.query import Chunk, Mark, Word

C = TypeVar("C", bound=Chunk)


class Before(NamedTuple):
    """What stands round a chunk that is read. made: the chunks before it, put right. ahead: the few behind it.

    shapes: the line speaks of shaping, so that "40 sts to 10" is none. stitches: it speaks of stitches.
    """

    made: Sequence[Chunk]
    ahead: Sequence[Chunk]
    shapes: bool = False
    stitches: bool = False

    @property
    def last(self) -> Chunk | None:
        """The chunk just before."""
        return self.made[-1] if self.made else None

    @property
    def next(self) -> Chunk | None:
        """The chunk just behind."""
        return self.ahead[0] if self.ahead else None

    def word(self, back: int = 1) -> str:
        """The word or sign so many places before, in small letters; "" where a number or nothing stands there."""
        chunk = self.made[-back] if len(self.made) >= back else None
        return chunk.text.lower() if isinstance(chunk, Word | Mark) else ""


class Put(NamedTuple):
    """What is put in the place of a chunk, and of so many of those before it."""

    chunks: tuple[Chunk, ...]
    taken: int = 0


Try = Callable[[Before, C], Put | None]  # one way in which a chunk may be meant; None where it is not
