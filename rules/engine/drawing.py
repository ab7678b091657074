"""Drawings as plain data: what an answer would have drawn. How it looks is for whoever shows the answer."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from ..layplan.pieces import Lay


@dataclass(frozen=True, slots=True)
class PanelDrawing:
    """A panel as cut. width, length: in mm; unit: the unit its sizes are written in.

    notch: width and length of what is cut out of each bottom corner, or None.
    """

    label: str
    width: Fraction
    length: Fraction
    unit: str
    notch: tuple[Fraction, Fraction] | None = None


@dataclass(frozen=True, slots=True)
class LineDrawing:
    """A line with marks on it. length: in mm; marks: how far along each stands, in mm, and what is written there."""

    length: Fraction
    marks: tuple[tuple[Fraction, str], ...]


@dataclass(frozen=True, slots=True)
class LayDrawing:
    """A lay of pieces whose sizes are in mm; unit: the unit they are written in."""

    lay: Lay
    unit: str


@dataclass(frozen=True, slots=True)
class QuiltDrawing:
    """A quilt top of blocks in straight rows. Sizes in mm; unit: the unit they are written in.

    block: width and length; sash: its width, nought for none; all_round: sashing outside too; borders: from the inside out.
    """

    across: int
    down: int
    block: tuple[Fraction, Fraction]
    unit: str
    sash: Fraction = Fraction(0)
    all_round: bool = False
    borders: tuple[Fraction, ...] = ()


@dataclass(frozen=True, slots=True)
class OnPointDrawing:
    """Blocks set on their corners, so many across and down; width, length: of the whole, in mm."""

    across: int
    down: int
    width: Fraction
    length: Fraction
    unit: str


@dataclass(frozen=True, slots=True)
class BackingDrawing:
    """A backing of panels: seams that part it into widths of cloth, the last one what is left. Sizes in mm.

    panel: what a width of cloth covers; upright: the seams run down the backing, else across it.
    """

    width: Fraction
    length: Fraction
    panel: Fraction
    panels: int
    upright: bool
    unit: str


@dataclass(frozen=True, slots=True)
class Drawings:
    """Several drawings, one below the other."""

    parts: tuple[PanelDrawing | LineDrawing | LayDrawing | QuiltDrawing | OnPointDrawing | BackingDrawing, ...]


Drawing = PanelDrawing | LineDrawing | LayDrawing | QuiltDrawing | OnPointDrawing | BackingDrawing | Drawings
