"""Sweeps and comparisons set out in columns with plain spaces, or as short lists where the columns do not fit."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .signs import clean
from .wrap import wrap

if TYPE_CHECKING:
    from rules.engine.answer import Table

GAP = "   "


def aligned(table: Table, columns: int) -> list[str]:
    """The table in lines: columns side by side, numbers to the right; a list for each row when that is too wide."""
    heads = [clean(name) for name, _ in table.columns]
    rows = [[clean(text) for text in row] for row in table.texts]
    widths = [max(len(cell) for cell in column) for column in zip(heads, *rows, strict=True)]
    if 2 + sum(widths) + len(GAP) * (len(widths) - 1) > columns:
        return _stacked(heads, rows, columns)
    to_right = [all(_is_number(row[index]) for row in rows) for index in range(len(heads))]
    return [_line(cells, widths, to_right) for cells in (heads, *rows)]


def tab_separated(table: Table) -> list[str]:
    """The rows, a line each, cells parted by tabs."""
    return ["\t".join(clean(text) for text in row) for row in table.texts]


def _line(cells: list[str], widths: list[int], to_right: list[bool]) -> str:
    places = zip(cells, widths, to_right, strict=True)
    shown = (cell.rjust(width) if right else cell.ljust(width) for cell, width, right in places)
    return ("  " + GAP.join(shown)).rstrip()


def _stacked(heads: list[str], rows: list[list[str]], columns: int) -> list[str]:
    lines: list[str] = []
    for row in rows:
        lines += wrap(f"{heads[0]} {row[0]}", columns, "  ", "    ")
        for head, cell in zip(heads[1:], row[1:], strict=True):
            lines += wrap(f"{head}: {cell}", columns, "    ", "      ")
    return lines


def _is_number(text: str) -> bool:
    return text.lstrip("-£$€¥")[:1].isdigit() or text == "not possible"
