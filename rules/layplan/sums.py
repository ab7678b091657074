"""Which totals some of a set of whole numbers can make: how wide a row can be, how long a column.

A set of totals is kept as the bits of one large integer, so that adding a piece is one shift.
"""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

MOST_UNITS = 200_000  # above this every total counts as reachable, which is never wrong, only less sharp


@dataclass(frozen=True, slots=True)
class Totals:
    """The totals that can be made, none above `most`."""

    bits: int
    most: int

    def floor(self, limit: int) -> int:
        """The largest total not above limit."""
        return (self.bits & ((1 << (limit + 1)) - 1)).bit_length() - 1

    def next_above(self, least: int) -> int:
        """The smallest total not below least; least itself when it is above them all."""
        rest = self.bits >> least
        return least + (rest & -rest).bit_length() - 1 if rest else least

    def between(self, low: int, high: int) -> list[int]:
        """Every total from low to high, both included."""
        window = self.bits >> low
        return [low + step for step in range(high - low + 1) if window >> step & 1]


def totals(parts: Iterable[tuple[tuple[int, ...], int]], most: int) -> Totals:
    """Totals up to `most` of parts given as (choices, count): each of count is left out or taken as one choice."""
    mask = (1 << (most + 1)) - 1
    if most > MOST_UNITS:
        return Totals(mask, most)
    bits = 1
    for choices, count in parts:
        for _ in range(min(count, most // min(choices))):
            grown = bits
            for choice in choices:
                grown |= bits << choice
            bits = grown & mask
    return Totals(bits, most)
