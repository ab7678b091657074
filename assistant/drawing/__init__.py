"""Drawings of lays, panels, lines of marks and quilts, as text for the terminal and as SVG for a file."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from typing import TYPE_CHECKING, Any

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

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from rules.engine.answer import Answer

Renderer = Callable[[Any, int, bool], str]


ENDS = (".svg", ".txt")


def hear(text: str, talk: Conversation) -> Answer | None:
    """The answer to a line that asks for a drawing in a file; None for any other line."""
    lower = text.lower()
    if "draw" not in lower and not any(end in lower for end in ENDS):
        return None
    from .kept import hear

    return hear(text, talk)


def as_text(drawing: Drawing, columns: int = 80, unicode: bool = True) -> str:
    """A drawing in characters, in lines of at most so many columns. unicode: box characters and arrows may be used."""
    renderer = RENDERERS.get(type(drawing))
    return renderer(drawing, columns, unicode) if renderer else ""


def as_svg(drawing: Drawing) -> str:
    """One drawing as an SVG document; of several, each has to be asked for on its own."""
    from . import lay_svg, small_svg

    if isinstance(drawing, LayDrawing):
        return lay_svg.svg(drawing.lay, _lengths_in(drawing.unit))
    shapes: dict[type, Callable[[Any, Callable[[Fraction], str]], str]] = {
        LineDrawing: small_svg.line, PanelDrawing: small_svg.panel, QuiltDrawing: small_svg.quilt,
        OnPointDrawing: small_svg.on_point, BackingDrawing: small_svg.backing,
    }  # fmt: skip
    return shapes[type(drawing)](drawing, _lengths_in(getattr(drawing, "unit", "cm")))


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
