"""A panel, a line with marks, a quilt top, blocks on point and a backing, as SVG."""

from __future__ import annotations

from fractions import Fraction

from assistant.drawing.canvas import Formatter
from assistant.drawing.quilt_text import blocks, edges
from assistant.drawing.sheet import MARGIN, Sheet
from rules.engine.drawing import BackingDrawing, LineDrawing, OnPointDrawing, PanelDrawing, QuiltDrawing

NONE = Fraction(0)
LINE_LETTERS = 10  # SVG units across for each letter below a line with marks


def panel(drawing: PanelDrawing, formatter: Formatter) -> str:
    """The panel as cut, the notches of its bottom corners with their sizes."""
    width, length = drawing.width, drawing.length
    across, up = drawing.notch or (NONE, NONE)
    sheet = Sheet(drawing.label or "Panel", width, length, below=1)
    corners = [(NONE, NONE), (width, NONE), (width, length - up), (width - across, length - up)]
    corners += [(width - across, length), (across, length), (across, length - up), (NONE, length - up)]
    sheet.shape("piece", *dict.fromkeys(corners))
    sheet.sides(formatter(width), formatter(length))
    sheet.words((width / 2, length / 2), drawing.label)
    if drawing.notch:
        sheet.words((across / 2, length - up / 2), f"{formatter(across)} × {formatter(up)}")
    return sheet.text()


def line(drawing: LineDrawing, formatter: Formatter) -> str:
    """The line with its marks, the words of each below it, on as many rows as they need."""
    marks = sorted(drawing.marks, key=lambda mark: mark[0])
    scale = Fraction(800) / drawing.length
    ends: list[float] = []  # where the words of each row end
    rows = []
    for at, text in marks:
        middle, half = float(at * scale), len(text) * LINE_LETTERS / 2
        row = next((row for row, end in enumerate(ends) if end < middle - half), len(ends))
        ends[row : row + 1] = [middle + half]
        rows.append(row)
    sheet = Sheet("Marks along a line", drawing.length, NONE, below=len(ends) + 1)
    sheet.line((NONE, NONE), (drawing.length, NONE))
    for (at, text), row in zip(marks, rows, strict=True):
        reach = MARGIN * (row + 1) // 2
        sheet.tick(at, reach)
        sheet.words((at, NONE), text, drop=reach + MARGIN / 4)
    return sheet.text()


def quilt(drawing: QuiltDrawing, formatter: Formatter) -> str:
    """The top: borders from the outside in, the sashing, each block."""
    across, down = edges(drawing.across, drawing.block[0], drawing), edges(drawing.down, drawing.block[1], drawing)
    sheet = Sheet("Quilt top", across[-1], down[-1])
    for ring in range(len(drawing.borders) + 1):
        left, top = across[ring], down[ring]
        kind = "border" if ring < len(drawing.borders) else "cloth"
        sheet.box(kind, left, top, across[-1 - ring] - left, down[-1 - ring] - top)
    for top, bottom in blocks(down, drawing):
        for left, right in blocks(across, drawing):
            sheet.box("piece", left, top, right - left, bottom - top)
    sheet.sides(formatter(across[-1]), formatter(down[-1]))
    return sheet.text()


def on_point(drawing: OnPointDrawing, formatter: Formatter) -> str:
    """Blocks on their corners in a frame; what shows of the frame are the triangles that fill its edge."""
    sheet = Sheet("Blocks on point", drawing.width, drawing.length)
    sheet.box("cloth", NONE, NONE, drawing.width, drawing.length)
    wide, high = drawing.width / drawing.across, drawing.length / drawing.down
    places = [(wide * column, high * row) for row in range(drawing.down) for column in range(drawing.across)]
    places += [(wide * (2 * column + 1) / 2, high * (2 * row + 1) / 2) for row in range(drawing.down - 1)
               for column in range(drawing.across - 1)]  # fmt: skip
    for left, top in places:
        middle, centre = left + wide / 2, top + high / 2
        sheet.shape("piece", (middle, top), (left + wide, centre), (middle, top + high), (left, centre))
    sheet.sides(formatter(drawing.width), formatter(drawing.length))
    return sheet.text()


def backing(drawing: BackingDrawing, formatter: Formatter) -> str:
    """The backing, a line at each seam, its panels numbered."""
    sheet = Sheet("Backing", drawing.width, drawing.length)
    sheet.box("cloth", NONE, NONE, drawing.width, drawing.length)
    whole = drawing.width if drawing.upright else drawing.length
    seams = [min(whole, drawing.panel * number) for number in range(drawing.panels)]
    for number, (start, end) in enumerate(zip(seams, [*seams[1:], whole], strict=True), 1):
        if drawing.upright:
            sheet.words(((start + end) / 2, drawing.length / 2), str(number))
        else:
            sheet.words((drawing.width / 2, (start + end) / 2), str(number))
        if number > 1:
            other = (start, drawing.length) if drawing.upright else (drawing.width, start)
            sheet.line((start, NONE) if drawing.upright else (NONE, start), other)
    sheet.sides(formatter(drawing.width), formatter(drawing.length))
    return sheet.text()
