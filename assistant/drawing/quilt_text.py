"""Quilts drawn in characters, to scale: blocks with sashing and borders, on point, and the panels of a backing."""

from __future__ import annotations

from fractions import Fraction

from assistant.drawing.canvas import Canvas, Formatter, clean
from rules.engine.drawing import BackingDrawing, OnPointDrawing, QuiltDrawing

WIDEST = 64  # columns a quilt is drawn over, where there is room
MOST_ROWS = 32
ROWS_PER_COLUMN = Fraction(1, 2)  # a character is about twice as high as wide
LARGEST_HALF = 3  # rows in half a block on point, where there is room


def draw_quilt(quilt: QuiltDrawing, formatter: Formatter, columns: int = 80, unicode: bool = True) -> str:
    """A top of blocks in straight rows: a box for each block, and one round each border."""
    across = edges(quilt.across, quilt.block[0], quilt)
    down = edges(quilt.down, quilt.block[1], quilt)
    sides = [clean(formatter(lines[-1]), unicode) for lines in (across, down)]
    scale = _scale(across[-1], down[-1], columns - len(sides[1]) - 3)
    xs, ys = _places(across, scale), _places(down, scale * ROWS_PER_COLUMN)
    if xs[across[-1]] + len(sides[1]) + 2 > columns:
        return clean(f"{quilt.across} blocks side by side are too many to draw in {columns} columns", unicode)
    canvas = Canvas(unicode)
    _ring_borders(canvas, quilt, xs, ys)
    for top, bottom in blocks(down, quilt):
        for left, right in blocks(across, quilt):
            canvas.box(ys[top] + 1, xs[left], ys[bottom] + 1, xs[right])
    return _with_sides(canvas, sides, xs[across[-1]], ys[down[-1]], columns)


def edges(count: int, block: Fraction, quilt: QuiltDrawing) -> list[Fraction]:
    """Every line along one side, from the outer edge of the quilt to the other."""
    lines = [Fraction(0)]
    for width in reversed(quilt.borders):
        lines.append(lines[-1] + width)
    if quilt.all_round and quilt.sash:
        lines.append(lines[-1] + quilt.sash)
    for number in range(count):
        lines.append(lines[-1] + block)
        if quilt.sash and (number < count - 1 or quilt.all_round):
            lines.append(lines[-1] + quilt.sash)
    for width in quilt.borders:
        lines.append(lines[-1] + width)
    return lines


def blocks(lines: list[Fraction], quilt: QuiltDrawing) -> list[tuple[Fraction, Fraction]]:
    """The two edges of each block along one side, of all the lines along it."""
    inside = lines[len(quilt.borders) : len(lines) - len(quilt.borders)]
    first = 1 if quilt.all_round and quilt.sash else 0
    step = 2 if quilt.sash else 1
    return [(inside[spot], inside[spot + 1]) for spot in range(first, len(inside) - 1, step)]


def _ring_borders(canvas: Canvas, quilt: QuiltDrawing, xs: dict[Fraction, int], ys: dict[Fraction, int]) -> None:
    """A box at the outer edge of each border, and round the sashing."""
    across, down = list(xs.values()), list(ys.values())
    for ring in range(len(quilt.borders) + 1):
        canvas.box(down[ring] + 1, across[ring], down[-1 - ring] + 1, across[-1 - ring])


def _scale(width: Fraction, length: Fraction, room: int) -> Fraction:
    """Columns for each mm, so that the drawing keeps to the page and to its height."""
    return min(Fraction(min(WIDEST, room)) / width, Fraction(MOST_ROWS) / ROWS_PER_COLUMN / length)


def _places(edges: list[Fraction], scale: Fraction) -> dict[Fraction, int]:
    """Where each edge comes, to scale, and never two of them in one place."""
    places: dict[Fraction, int] = {}
    last = -1
    for edge in edges:
        last = max(round(edge * scale), last + 1)
        places[edge] = last
    return places


def _with_sides(canvas: Canvas, sides: list[str], right: int, bottom: int, columns: int) -> str:
    """The sheet with its width written above and its length beside it."""
    canvas.write(0, max(0, (right + 1 - len(sides[0])) // 2), sides[0])
    canvas.write(1 + bottom // 2, right + 2, sides[1])
    return "\n".join(line[:columns] for line in canvas.lines())


def draw_on_point(setting: OnPointDrawing, formatter: Formatter, columns: int = 80, unicode: bool = True) -> str:
    """Blocks on their corners in a frame; the triangles that fill its edge are what the lines cut off."""
    sides = [clean(formatter(side), unicode) for side in (setting.width, setting.length)]
    half = min(LARGEST_HALF, (columns - len(sides[1]) - 4) // (4 * setting.across), MOST_ROWS // (2 * setting.down))
    if half < 1:
        return clean(f"{setting.across} by {setting.down} blocks on point are too many to draw in {columns} columns",
        unicode)
    canvas = Canvas(unicode)
    right, bottom = 4 * half * setting.across + 1, 2 * half * setting.down + 1
    canvas.box(1, 0, bottom + 1, right)
    for row in range(setting.down):
        for column in range(setting.across):
            _diamond(canvas, 2 + 2 * half * row, 1 + 2 * half + 4 * half * column, half, unicode)
    return _with_sides(canvas, sides, right, bottom, columns)


def _diamond(canvas: Canvas, top: int, middle: int, half: int, unicode: bool) -> None:
    """A block on its corner: two columns out for each row down, so that it looks square."""
    rising, falling = ("╱", "╲") if unicode else ("/", "\\")
    for row in range(half):
        canvas.write(top + row, middle - 1 - 2 * row, rising)
        canvas.write(top + row, middle + 2 * row, falling)
        back = half - 1 - row
        canvas.write(top + half + row, middle - 1 - 2 * back, falling)
        canvas.write(top + half + row, middle + 2 * back, rising)


def draw_backing(backing: BackingDrawing, formatter: Formatter, columns: int = 80, unicode: bool = True) -> str:
    """A backing with its seams, each panel numbered."""
    sides = [clean(formatter(side), unicode) for side in (backing.width, backing.length)]
    scale = _scale(backing.width, backing.length, columns - len(sides[1]) - 3)
    right = max(8, round(backing.width * scale))
    bottom = max(3, round(backing.length * scale * ROWS_PER_COLUMN))
    canvas = Canvas(unicode)
    canvas.box(1, 0, bottom + 1, right)
    along, whole = (right, backing.width) if backing.upright else (bottom, backing.length)
    seams = [min(along - 1, round(number * backing.panel / whole * along)) for number in range(1, backing.panels)]
    for seam in seams:
        if backing.upright:
            canvas.down(seam, 1, bottom + 1)
        else:
            canvas.across(seam + 1, 0, right)
    for number, (start, end) in enumerate(zip([0, *seams], [*seams, along], strict=True), 1):
        middle = (start + end) // 2
        canvas.write(*((1 + bottom // 3, middle) if backing.upright else (1 + middle, right // 2)), str(number))
    return _with_sides(canvas, sides, right, bottom, columns)
