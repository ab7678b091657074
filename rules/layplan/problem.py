"""A lay plan in whole numbers: pieces of one size joined into kinds, everything scaled exactly, and the way back."""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from fractions import Fraction
from typing import NamedTuple

from rules.layplan.pieces import Piece, Placement
from rules.layplan.sums import totals


class Group(NamedTuple):
    """What makes outlines interchangeable: the ways they can lie, and whether they must lie on the fold."""

    ways: tuple[tuple[Fraction, Fraction], ...]
    on_fold: bool


class Side(NamedTuple):
    """One way a kind can lie: units across the cloth, units along it."""

    width: int
    length: int


class Spot(NamedTuple):
    """A placement in units."""

    kind: int
    x: int
    y: int
    width: int
    length: int


class Trail(NamedTuple):
    """Placements made so far, the last first: half-made lays share what they have in common."""

    before: Trail | None
    spot: Spot


def spots_of(trail: Trail | None) -> list[Spot]:
    spots = []
    while trail is not None:
        spots.append(trail.spot)
        trail = trail.before
    return spots


@dataclass(frozen=True, slots=True)
class Kind:
    """Outlines of one size: interchangeable, so that no search tries them in each other's place."""

    sides: tuple[Side, ...]
    count: int
    on_fold: bool

    @property
    def area(self) -> int:
        return self.sides[0].width * self.sides[0].length


@dataclass(frozen=True, slots=True)
class Problem:
    """What the searches see. One unit is `unit` of the pieces' own unit."""

    width: int
    kinds: tuple[Kind, ...]
    outlines: tuple[tuple[Piece, ...], ...]
    unit: Fraction
    folded: bool

    @property
    def area(self) -> int:
        return sum(kind.count * kind.area for kind in self.kinds)

    @property
    def count(self) -> int:
        return sum(kind.count for kind in self.kinds)

    @property
    def counts(self) -> tuple[int, ...]:
        return tuple(kind.count for kind in self.kinds)


def lay_width(piece: Piece, folded: bool) -> Fraction:
    """What the piece takes across the cloth as it lies: half its width on the fold."""
    return Fraction(piece.width) / 2 if folded and piece.on_fold else Fraction(piece.width)


def outlines_of(piece: Piece, folded: bool) -> int:
    """How many times the piece is drawn: through both layers of a folded cloth one outline cuts two."""
    return piece.count if piece.on_fold or not folded else -(-piece.count // 2)


def ways(piece: Piece, room: Fraction, folded: bool) -> list[tuple[Fraction, Fraction]]:
    """The (width, length) it can lie in on a cloth `room` wide; none when it cannot fit."""
    across, along = lay_width(piece, folded), Fraction(piece.length)
    turned = [(along, across)] if piece.may_turn and not (folded and piece.on_fold) else []
    return sorted({way for way in [(across, along), *turned] if way[0] <= room})


def common_unit(sizes: Iterable[Fraction]) -> Fraction:
    """The largest length that goes into every size a whole number of times."""
    known = list(sizes)
    scale = math.lcm(*(size.denominator for size in known))
    return Fraction(math.gcd(*(int(size * scale) for size in known)), scale)


def make_problem(pieces: Sequence[Piece], room: Fraction, folded: bool) -> Problem:
    """Scale pieces that all fit `room` to whole units, the coarsest that are exact.

    The cloth's width is rounded down to a width that pieces side by side can have: no row can use more.
    """
    groups: dict[Group, list[Piece]] = {}
    for piece in pieces:
        group = Group(tuple(ways(piece, room, folded)), folded and piece.on_fold)
        groups.setdefault(group, []).extend([piece] * outlines_of(piece, folded))
    order = sorted(groups)
    unit = common_unit(size for group in order for way in group.ways for size in way)
    kinds = tuple(
        Kind(tuple(Side(int(w / unit), int(h / unit)) for w, h in group.ways), len(groups[group]), group.on_fold)
        for group in order
    )
    width = totals(across(kinds), int(room / unit)).floor(int(room / unit))
    return Problem(width, kinds, tuple(tuple(groups[group]) for group in order), unit, folded)


def across(kinds: Iterable[Kind]) -> list[tuple[tuple[int, ...], int]]:
    """Each kind's widths and count, as `totals` takes them."""
    return [(tuple(side.width for side in kind.sides), kind.count) for kind in kinds]


def along(kinds: Iterable[Kind]) -> list[tuple[tuple[int, ...], int]]:
    """Each kind's lengths and count, as `totals` takes them."""
    return [(tuple(side.length for side in kind.sides), kind.count) for kind in kinds]


def placed(problem: Problem, spots: Sequence[Spot]) -> tuple[Placement, ...]:
    """Spots in units as placements of the pieces they stand for, from the cut end on."""
    left = [list(pieces) for pieces in problem.outlines]
    return tuple(_placement(problem, spot, left[spot.kind].pop(0)) for spot in sorted(spots, key=lambda s: (s.y, s.x)))


def _placement(problem: Problem, spot: Spot, piece: Piece) -> Placement:
    on_fold = problem.kinds[spot.kind].on_fold
    x, y, width, length = (n * problem.unit for n in spot[1:])
    turned = length != piece.length
    return Placement(piece, x, y, width, length, turned, 2 if problem.folded and not on_fold else 1, on_fold)
