"""Small drawings in characters: one panel with squares cut out of its bottom corners, and a line with marks on it."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from assistant.drawing.canvas import Canvas, Formatter, clean

PANEL_COLUMNS = 36  # a panel's width on the page, where there is room
MOST_PANEL_ROWS = 24
LEAST_SIDE = 6  # columns; narrower than this a panel's sizes cannot be told apart


def draw_panel(
    width: Fraction,
    length: Fraction,
    formatter: Formatter,
    *,
    notch: tuple[Fraction, Fraction] | None = None,
    label: str = "",
    columns: int = 80,
    unicode: bool = True,
) -> str:
    """A panel as cut, with its sizes.

    width, length: as cut. notch: width and length of what is cut out of each bottom corner.
    """
    sizes = [clean(formatter(size), unicode) for size in (width, length, *(notch or ()))]
    left = 2 + (len(sizes[3]) if notch else 0)
    across = min(PANEL_COLUMNS, columns - left - len(sizes[1]) - 2, round(2 * MOST_PANEL_ROWS * width / length))
    right = left + max(LEAST_SIDE, len(label) + 2, across)
    rows = max(3, min(MOST_PANEL_ROWS, round((right - left) * length / width / 2)))
    canvas = Canvas(unicode)
    if notch is None:
        canvas.box(1, left, 1 + rows, right)
    else:
        cut = max(2, min((right - left) // 3, round((right - left) * notch[0] / width)))
        step = max(1, min(rows - 2, round(rows * notch[1] / length)))
        _outline(canvas, 1, left, 1 + rows, right, cut, step)
        canvas.write(1 + rows - step // 2, left - 1 - len(sizes[3]), sizes[3])
        canvas.write(2 + rows, left, sizes[2])
    _centre(canvas, 0, left, right, sizes[0])
    canvas.write(1 + rows // 2, right + 2, sizes[1])
    _centre(canvas, 1 + max(1, rows // 3), left, right, clean(label, unicode)[: right - left - 1])
    return "\n".join(line[:columns] for line in canvas.lines())


def _outline(canvas: Canvas, top: int, left: int, bottom: int, right: int, cut: int, step: int) -> None:
    """A box without its bottom corners: cut columns and step rows of each."""
    waist = bottom - step
    canvas.across(top, left, right)
    for side, inner in ((left, left + cut), (right, right - cut)):
        canvas.down(side, top, waist)
        canvas.across(waist, min(side, inner), max(side, inner))
        canvas.down(inner, waist, bottom)
    canvas.across(bottom, left + cut, right - cut)


def _centre(canvas: Canvas, row: int, left: int, right: int, text: str) -> None:
    canvas.write(row, max(0, left + (right - left + 1 - len(text)) // 2), text)


def draw_line(
    length: Fraction, marks: Sequence[tuple[Fraction, str]], *, columns: int = 80, unicode: bool = True
) -> str:
    """A line to scale with marks on it, each with its text below it, on as many lines as they need.

    marks: how far along each stands, from 0 to length, and what to write there.
    """
    texts = [(at, clean(text, unicode)) for at, text in sorted(marks, key=lambda mark: mark[0])]
    end = columns - 1 - max((len(text) for _, text in texts), default=0)
    canvas = Canvas(unicode)
    canvas.across(0, 0, end)
    for tick in (0, end):
        canvas.down(tick, 0, 1)
    taken: list[int] = []  # the leftmost column in use, by line of text
    for at, text in reversed(texts):
        column = round(at / length * end)
        row = next((r for r, used in enumerate(taken) if column + len(text) < used), len(taken))
        taken[row:] = [column, *taken[row + 1 :]]
        taken[:row] = [column] * row
        canvas.down(column, 0, 1 + row)
        canvas.write(2 + row, column, text)
    return "\n".join(canvas.lines())
