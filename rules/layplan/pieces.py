"""What goes into a lay plan and what comes out: pieces, placements, the lay.

Lengths are exact numbers of any one unit. `width` runs across the cloth (x, from one selvedge, or from the fold),
`length` along the grain (y, from the cut end).
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Piece:
    """A rectangle to cut, as cut (seam allowances in), `count` times.

    may_turn: it may lie across the grain, a quarter turn round. on_fold: one edge along the grain lies on the fold when
    the cloth is folded; `width` is still that of the opened piece. Such a piece is never turned: another edge would lie
    on the fold.
    """

    label: str
    count: int
    width: Fraction
    length: Fraction
    may_turn: bool = False
    on_fold: bool = False

    def __post_init__(self) -> None:
        if self.count < 1 or self.width <= 0 or self.length <= 0:
            raise ValueError(f"piece {self.label}: count, width and length must be above nothing; give 2 of 30 x 70")


@dataclass(frozen=True, slots=True)
class Placement:
    """Where a piece lies: its corner nearest the origin, and its size there.

    width is half the piece's own when it lies on the fold. copies: pieces cut by this outline, 2 through both layers.
    """

    piece: Piece
    x: Fraction
    y: Fraction
    width: Fraction
    length: Fraction
    turned: bool
    copies: int
    on_fold: bool

    @property
    def right(self) -> Fraction:
        return self.x + self.width

    @property
    def end(self) -> Fraction:
        return self.y + self.length


@dataclass(frozen=True, slots=True)
class Misfit:
    """A piece that lies on this cloth in no allowed way. room: the widest a piece may be."""

    piece: Piece
    room: Fraction
    fits_if_turned: bool


class BoundKind(Enum):
    """Why no lay can be shorter."""

    AREA = "area"
    SIDE_BY_SIDE = "pieces that cannot lie side by side"
    LONGEST = "longest piece"
    FOLD = "pieces on the fold"
    SCALES = "what goes side by side and end to end"
    SEARCH = "every shorter lay was tried"


@dataclass(frozen=True, slots=True)
class Lay:
    """A lay found, and how good it is known to be.

    pieces: those that are laid; misfits: those that fit this cloth in no allowed way.
    length: cloth taken by the placements. bound: no lay of these pieces is shorter. Misfits are left out of both.
    lay_width: what the placements share out: the cloth's width, or half of it when folded.
    """

    cloth_width: Fraction
    lay_width: Fraction
    folded: bool
    one_way: bool
    pieces: tuple[Piece, ...]
    length: Fraction
    bound: Fraction
    bound_kind: BoundKind
    placements: tuple[Placement, ...]
    misfits: tuple[Misfit, ...]

    @property
    def proved(self) -> bool:
        """Whether no shorter lay exists."""
        return self.length == self.bound

    @property
    def gap(self) -> Fraction:
        """How far at most the lay is above the best possible, as a share of the best possible."""
        return self.length / self.bound - 1 if self.bound else Fraction(0)

    @property
    def cut_area(self) -> Fraction:
        """Cloth that becomes pieces, spare copies not counted."""
        return sum((p.count * Fraction(p.width) * p.length for p in self.pieces), Fraction(0))

    @property
    def spare(self) -> dict[str, int]:
        """Copies more than asked for, by label: an odd count cut through both layers leaves one over."""
        over: dict[str, int] = {}
        for placement in self.placements:
            over[placement.piece.label] = over.get(placement.piece.label, 0) + placement.copies
        for piece in self.pieces:
            over[piece.label] -= piece.count
        return {label: copies for label, copies in over.items() if copies}

    @property
    def left_over_area(self) -> Fraction:
        """Cloth of the lay's own length that becomes no piece."""
        return self.cloth_width * self.length - self.cut_area
