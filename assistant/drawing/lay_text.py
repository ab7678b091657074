"""A lay drawn in characters: the cloth's width across the page, its length down it, each piece a box."""

from __future__ import annotations

from fractions import Fraction
from string import ascii_lowercase, ascii_uppercase
from textwrap import wrap
from typing import NamedTuple

from assistant.drawing.canvas import Canvas, Formatter, clean
from rules.layplan.offcuts import Offcut, offcut
from rules.layplan.pieces import Lay, Piece, Placement

ROWS_PER_COLUMN = Fraction(1, 2)  # a character is about twice as high as wide
LETTERS = ascii_uppercase + ascii_lowercase
MOST_ROWS = 40  # a longer cloth is drawn smaller, down to half the page's width
SCALES = 40  # how finely the drawing is made smaller until it fits


class Frame(NamedTuple):
    """A box on the sheet: its border's rows and columns."""

    top: int
    left: int
    bottom: int
    right: int

    @property
    def width(self) -> int:
        """Columns inside the border."""
        return self.right - self.left - 1

    @property
    def height(self) -> int:
        return self.bottom - self.top - 1


class Grid(NamedTuple):
    """Where each place on the cloth comes on the sheet."""

    columns: dict[Fraction, int]
    rows: dict[Fraction, int]

    def frame(self, at: Placement | Offcut) -> Frame:
        return Frame(self.rows[at.y], self.columns[at.x], self.rows[at.end], self.columns[at.right])


Key = tuple[Piece, bool]  # a piece and whether it lies turned: what has one letter in the drawing


class Writer(NamedTuple):
    """How the drawing writes: its lengths, its characters, its line length."""

    formatter: Formatter
    columns: int
    unicode: bool

    def size(self, width: Fraction, length: Fraction) -> str:
        return self.text(f"{self.formatter(width)} × {self.formatter(length)}")

    def text(self, text: str) -> str:
        return clean(text, self.unicode)

    def arrow(self, turned: bool, one_way: bool) -> str:
        """The piece's own grain: along the cloth, one way or either, or across it when turned."""
        if turned:
            return "↔" if self.unicode else "<>"
        if one_way:
            return "↑" if self.unicode else "^"
        return "↕" if self.unicode else "^v"


def draw(lay: Lay, formatter: Formatter, columns: int = 80, unicode: bool = True) -> str:
    """The lay as lines of at most `columns` characters (at least 20).

    formatter: writes a length. unicode: box characters and arrows; otherwise plain ASCII, for pipes. Each piece carries
    its name, size and grain arrow where they go in; else a letter, explained below. Dots are cloth left over.
    """
    writer = Writer(formatter, columns, unicode)
    marks = _marks(lay)
    grid = _grid(lay, columns, 1 + max(map(len, marks.values()))) if marks else None
    sheet = [] if grid or not marks else wrap(f"too many pieces side by side to draw in {columns} columns", columns)
    lettered = list(marks)
    if grid is not None:
        canvas = Canvas(unicode)
        _draw_cloth(canvas, lay, grid, writer)
        lettered = [key for key in marks if _draw_piece(canvas, lay, grid, writer, key, marks[key])]
        sheet = [*_heading(lay, writer, grid.columns[lay.lay_width] + 1), *canvas.lines()]
    legend = [f"{marks[key]}: {_entry(key, lay, writer)}" for key in lettered]
    notes = [line for note in [*legend, *_notes(lay, writer)] for line in wrap(writer.text(note), columns)]
    return "\n".join([*sheet, *notes])


def _marks(lay: Lay) -> dict[Key, str]:
    """A letter for each piece and way it lies; two letters each when there are more than 52."""
    keys = list(dict.fromkeys((placement.piece, placement.turned) for placement in lay.placements))
    if len(keys) <= len(LETTERS):
        return dict(zip(keys, LETTERS, strict=False))
    return {key: LETTERS[i // len(LETTERS) % len(LETTERS)] + LETTERS[i % len(LETTERS)] for i, key in enumerate(keys)}


def _grid(lay: Lay, columns: int, least: int) -> Grid | None:
    """Rows and columns of every edge, each piece at least `least` columns on; None when the page is too narrow."""
    spans_x = [(p.x, p.right) for p in lay.placements] + [(Fraction(0), lay.lay_width)]
    spans_y = [(p.y, p.end) for p in lay.placements] + [(Fraction(0), lay.length)]
    full = Fraction(columns - 1) / lay.lay_width
    full = min(full, max(full / 2, MOST_ROWS / ROWS_PER_COLUMN / lay.length))
    for part in range(SCALES, -1, -1):
        scale = full * Fraction(part, SCALES)
        places = _places(spans_x, scale, least)
        if places[lay.lay_width] < columns:
            return Grid(places, _places(spans_y, scale * ROWS_PER_COLUMN, 2))
    return None


def _places(spans: list[tuple[Fraction, Fraction]], scale: Fraction, least: int) -> dict[Fraction, int]:
    """Each edge at its place to scale, or further on where a span would be under `least` long."""
    starts: dict[Fraction, list[Fraction]] = {}
    for start, end in spans:
        starts.setdefault(end, []).append(start)
        starts.setdefault(start, [])
    places: dict[Fraction, int] = {}
    last = 0
    for edge in sorted(starts):
        last = max([last, round(edge * scale), *(places[start] + least for start in starts[edge])])
        places[edge] = last
    return places


def _draw_cloth(canvas: Canvas, lay: Lay, grid: Grid, writer: Writer) -> None:
    """The cloth's outline, dotted inside, and the offcut's size where it goes in."""
    bottom, right = grid.rows[lay.length], grid.columns[lay.lay_width]
    canvas.box(0, 0, bottom, right)
    for column in range(2, right, 3):
        canvas.shade(range(1, bottom), range(column, column + 1), "·" if writer.unicode else ".")
    left_over = offcut(lay)
    if left_over is not None:
        size = writer.size(left_over.opened_width, left_over.length)
        _write_inside(canvas, grid.frame(left_over), ["offcut", size])


def _draw_piece(canvas: Canvas, lay: Lay, grid: Grid, writer: Writer, key: Key, mark: str) -> bool:
    """Draw every placement of a piece; True when one of them had only room for its letter."""
    piece, turned = key
    label, size = writer.text(piece.label), writer.size(piece.width, piece.length)
    arrow = writer.arrow(turned, lay.one_way)
    layouts = [[label, size, arrow], [f"{label} {arrow}", size], [f"{label} {size} {arrow}"]]
    if lay.folded:
        layouts.insert(0, [label, size, "on the fold" if piece.on_fold else "cuts 2", arrow])
    lettered = False
    for placement in lay.placements:
        if (placement.piece, placement.turned) == key:
            frame = grid.frame(placement)
            canvas.box(*frame)
            canvas.shade(range(frame.top + 1, frame.bottom), range(frame.left + 1, frame.right), " ")
            if not any(_write_inside(canvas, frame, lines) for lines in layouts):
                _write_inside(canvas, frame, [f"{mark} {arrow}"]) or _write_inside(canvas, frame, [mark])
                lettered = True
    return lettered


def _write_inside(canvas: Canvas, frame: Frame, lines: list[str]) -> bool:
    """Write lines in the middle of a box, if they go in."""
    if len(lines) > frame.height or max(map(len, lines)) > frame.width:
        return False
    first = frame.top + 1 + (frame.height - len(lines)) // 2
    for row, line in enumerate(lines, first):
        canvas.write(row, frame.left + 1 + (frame.width - len(line)) // 2, line)
    return True


def _heading(lay: Lay, writer: Writer, width: int) -> list[str]:
    """What the left and right edges are, and how wide the cloth is between them."""
    left = "fold" if lay.folded else "selvedge"
    middle = f"{writer.formatter(lay.lay_width)} {'folded' if lay.folded else 'across'}"
    room = width - len(left) - len("selvedge")
    if room >= len(middle) + 2:
        return [writer.text(left + middle.center(room) + "selvedge")]
    return wrap(writer.text(f"{middle}; {left} left, selvedge right"), writer.columns)


def _entry(key: Key, lay: Lay, writer: Writer) -> str:
    piece, turned = key
    fold = ", on the fold" if lay.folded and piece.on_fold else ""
    return f"{piece.label}, {writer.size(piece.width, piece.length)}{fold} {writer.arrow(turned, lay.one_way)}"


def _notes(lay: Lay, writer: Writer) -> list[str]:
    """The lay's length, its offcut, and what was left out."""
    notes = [f"length {writer.formatter(lay.length)}"] if lay.placements else []
    left_over = offcut(lay) if lay.placements else None
    if left_over is not None:
        times = f"{left_over.copies} of " if left_over.copies > 1 else ""
        notes.append(f"offcut {times}{writer.size(left_over.opened_width, left_over.length)}")
    notes += [f"does not fit: {m.piece.label}, {writer.size(m.piece.width, m.piece.length)}" for m in lay.misfits]
    return notes
