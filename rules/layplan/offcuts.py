"""What is left at the end of the cloth, and how to have as much of it there as can be."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from rules.layplan.pieces import Lay, Placement


@dataclass(frozen=True, slots=True)
class Offcut:
    """An empty rectangle of cloth that reaches its end, where and as wide as it lies.

    copies: 2 when it lies in both layers away from the fold. opens: it lies at the fold, and opens to twice its width.
    """

    x: Fraction
    y: Fraction
    width: Fraction
    length: Fraction
    copies: int = 1
    opens: bool = False

    @property
    def right(self) -> Fraction:
        return self.x + self.width

    @property
    def end(self) -> Fraction:
        return self.y + self.length

    @property
    def opened_width(self) -> Fraction:
        return self.width * (2 if self.opens else 1)

    @property
    def area(self) -> Fraction:
        """Of one copy."""
        return self.opened_width * self.length


def offcut(lay: Lay, bought: Fraction | None = None) -> Offcut | None:
    """The largest empty rectangle at the end of the cloth; bought: the cloth's length, when longer than the lay."""
    return largest(lay.placements, lay.lay_width, max(lay.length, bought or lay.length), lay.folded)


def largest(placements: Sequence[Placement], width: Fraction, end: Fraction, folded: bool) -> Offcut | None:
    """The largest empty rectangle that reaches `end`; None when pieces stand there all across."""
    edges = sorted({Fraction(0), width, *(x for p in placements for x in (p.x, p.right))})
    steps = [
        (left, right, max((p.end for p in placements if p.x < right and p.right > left), default=Fraction(0)))
        for left, right in pairwise(edges)
    ]
    best: Offcut | None = None
    for number, (left, _, _) in enumerate(steps):
        opens = folded and left == 0
        start = Fraction(0)
        for _, right, top in steps[number:]:
            start = max(start, top)
            if start == end:
                break
            found = Offcut(left, start, right - left, end - start, 2 if folded and not opens else 1, opens)
            if best is None or found.area > best.area:
                best = found
    return best


def offcut_last(placements: Sequence[Placement], width: Fraction, folded: bool) -> tuple[Placement, ...]:
    """The same lay with its bands in another order, so that the largest offcut comes at the end.

    A band runs from one straight cut across the whole cloth to the next; each can be moved, or turned end for end (that
    moves pieces, it does not turn any upside down).
    """
    bands = _bands(placements)
    ways = [(number, way) for number, band in enumerate(bands) for way in (band, _end_for_end(band))]
    last, band_at_end = max(ways, key=lambda way: _area_at_end(way[1], width, folded))
    order = [*bands[:last], *bands[last + 1 :], band_at_end]
    moved: list[Placement] = []
    for band in order:
        shift = _end(moved) - min(p.y for p in band)
        moved += [replace(p, y=p.y + shift) for p in band]
    return tuple(sorted(moved, key=lambda p: (p.y, p.x)))


def _bands(placements: Sequence[Placement]) -> list[list[Placement]]:
    bands: list[list[Placement]] = []
    for placement in sorted(placements, key=lambda p: p.y):
        if not bands or placement.y >= _end(bands[-1]):
            bands.append([])
        bands[-1].append(placement)
    return bands


def _end_for_end(band: list[Placement]) -> list[Placement]:
    """A band with its end nearest the cut end."""
    both = min(p.y for p in band) + _end(band)
    return [replace(p, y=both - p.end) for p in band]


def _area_at_end(band: list[Placement], width: Fraction, folded: bool) -> Fraction:
    found = largest(band, width, _end(band), folded)
    return found.area if found else Fraction(0)


def _end(placements: Sequence[Placement]) -> Fraction:
    return max((p.end for p in placements), default=Fraction(0))
