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
class Drawings:
    """Several drawings, one below the other."""

    parts: tuple[PanelDrawing | LineDrawing | LayDrawing, ...]


Drawing = PanelDrawing | LineDrawing | LayDrawing | Drawings
