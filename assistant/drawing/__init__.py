"""Drawings of lays, panels and lines of marks, as text for the terminal and as SVG."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from rules.engine.drawing import Drawing, Drawings, LayDrawing, LineDrawing, PanelDrawing
from rules.engine.text import shown


def as_text(drawing: Drawing, columns: int = 80, unicode: bool = True) -> str:
    """A drawing in characters, in lines of at most so many columns. unicode: box characters and arrows may be used."""
    # Each is loaded only when it is drawn: most answers have no drawing.
    if isinstance(drawing, Drawings):
        return "\n".join(as_text(part, columns, unicode) for part in drawing.parts)
    if isinstance(drawing, LayDrawing):
        from .lay_text import draw

        return draw(drawing.lay, _lengths_in(drawing.unit), columns, unicode)
    if not isinstance(drawing, LineDrawing | PanelDrawing):
        return ""
    from .small_text import draw_line, draw_panel

    if isinstance(drawing, LineDrawing):
        return draw_line(drawing.length, drawing.marks, columns=columns, unicode=unicode)
    return draw_panel(drawing.width, drawing.length, _lengths_in(drawing.unit), notch=drawing.notch, label=drawing.label,
                      columns=columns, unicode=unicode)  # fmt: skip


def _lengths_in(unit: str) -> Callable[[Fraction], str]:
    """Writes a length of so many mm in the unit."""
    return lambda length: shown(length, unit)
