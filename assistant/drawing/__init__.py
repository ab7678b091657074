"""Drawings of lays, panels, lines of marks and quilts, as text for the terminal and as SVG."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import Any

from rules.engine.drawing import (
    BackingDrawing,
    Drawing,
    Drawings,
    LayDrawing,
    LineDrawing,
    OnPointDrawing,
    PanelDrawing,
    QuiltDrawing,
)
from rules.engine.text import shown

Renderer = Callable[[Any, int, bool], str]


def as_text(drawing: Drawing, columns: int = 80, unicode: bool = True) -> str:
    """A drawing in characters, in lines of at most so many columns. unicode: box characters and arrows may be used."""
    renderer = RENDERERS.get(type(drawing))
    return renderer(drawing, columns, unicode) if renderer else ""


# Each renderer loads what it draws with only when it is called: most answers have no drawing.


def _several(drawing: Drawings, columns: int, unicode: bool) -> str:
    return "\n".join(as_text(part, columns, unicode) for part in drawing.parts)


def _lay(drawing: LayDrawing, columns: int, unicode: bool) -> str:
    from .lay_text import draw

    return draw(drawing.lay, _lengths_in(drawing.unit), columns, unicode)


def _line(drawing: LineDrawing, columns: int, unicode: bool) -> str:
    from .small_text import draw_line

    return draw_line(drawing.length, drawing.marks, columns=columns, unicode=unicode)


def _panel(drawing: PanelDrawing, columns: int, unicode: bool) -> str:
    from .small_text import draw_panel

    formatter = _lengths_in(drawing.unit)
    return draw_panel(drawing.width, drawing.length, formatter, notch=drawing.notch, label=drawing.label,
                      columns=columns, unicode=unicode)  # fmt: skip


def _quilt(drawing: QuiltDrawing, columns: int, unicode: bool) -> str:
    from .quilt_text import draw_quilt

    return draw_quilt(drawing, _lengths_in(drawing.unit), columns, unicode)


def _on_point(drawing: OnPointDrawing, columns: int, unicode: bool) -> str:
    from .quilt_text import draw_on_point

    return draw_on_point(drawing, _lengths_in(drawing.unit), columns, unicode)


def _backing(drawing: BackingDrawing, columns: int, unicode: bool) -> str:
    from .quilt_text import draw_backing

    return draw_backing(drawing, _lengths_in(drawing.unit), columns, unicode)


RENDERERS: dict[type, Renderer] = {
    Drawings: _several, LayDrawing: _lay, LineDrawing: _line, PanelDrawing: _panel,
    QuiltDrawing: _quilt, OnPointDrawing: _on_point, BackingDrawing: _backing,
}  # fmt: skip


def _lengths_in(unit: str) -> Callable[[Fraction], str]:
    """Writes a length of so many mm in the unit."""
    return lambda length: shown(length, unit)
