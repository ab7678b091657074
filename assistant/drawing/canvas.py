"""A sheet of characters with ruled lines that join properly, in box characters or in plain + - |."""

from __future__ import annotations

import unicodedata
from collections.abc import Callable
from fractions import Fraction

Formatter = Callable[[Fraction], str]

UP, DOWN, LEFT, RIGHT = 1, 2, 4, 8
BOX = {
    UP: "╵", DOWN: "╷", LEFT: "╴", RIGHT: "╶", UP | DOWN: "│", LEFT | RIGHT: "─",
    DOWN | RIGHT: "┌", DOWN | LEFT: "┐", UP | RIGHT: "└", UP | LEFT: "┘",
    UP | DOWN | RIGHT: "├", UP | DOWN | LEFT: "┤", DOWN | LEFT | RIGHT: "┬", UP | LEFT | RIGHT: "┴",
    UP | DOWN | LEFT | RIGHT: "┼",
}  # fmt: skip
PLAIN = {UP: "|", DOWN: "|", UP | DOWN: "|", LEFT: "-", RIGHT: "-", LEFT | RIGHT: "-"}


class Canvas:
    """Characters by row and column: what is written stands before what is ruled, and that before what is shaded."""

    def __init__(self, unicode: bool) -> None:
        self._unicode = unicode
        self._ruled: dict[tuple[int, int], int] = {}
        self._written: dict[tuple[int, int], str] = {}
        self._shaded: dict[tuple[int, int], str] = {}

    def across(self, row: int, start: int, end: int) -> None:
        """Rule a line across, both ends included."""
        for column in range(start, end + 1):
            self._rule(row, column, (LEFT if column > start else 0) | (RIGHT if column < end else 0))

    def down(self, column: int, start: int, end: int) -> None:
        """Rule a line down, both ends included."""
        for row in range(start, end + 1):
            self._rule(row, column, (UP if row > start else 0) | (DOWN if row < end else 0))

    def box(self, top: int, left: int, bottom: int, right: int) -> None:
        self.across(top, left, right)
        self.across(bottom, left, right)
        self.down(left, top, bottom)
        self.down(right, top, bottom)

    def shade(self, rows: range, columns: range, char: str) -> None:
        """Cover an area with a character; a space clears it."""
        for row in rows:
            for column in columns:
                self._shaded[row, column] = char

    def write(self, row: int, column: int, text: str) -> None:
        for offset, char in enumerate(text):
            self._written[row, column + offset] = char

    def lines(self) -> list[str]:
        """The sheet as lines, without spaces at their ends."""
        rows = max((row for row, _ in [*self._ruled, *self._written]), default=-1) + 1
        width = max((column for _, column in [*self._ruled, *self._written]), default=-1) + 1
        return ["".join(self._char(row, column) for column in range(width)).rstrip() for row in range(rows)]

    def _rule(self, row: int, column: int, arms: int) -> None:
        self._ruled[row, column] = self._ruled.get((row, column), 0) | arms

    def _char(self, row: int, column: int) -> str:
        if (row, column) in self._written:
            return self._written[row, column]
        arms = self._ruled.get((row, column), 0)
        if not arms:
            return self._shaded.get((row, column), " ")
        return BOX[arms] if self._unicode else PLAIN.get(arms, "+")


def clean(text: str, unicode: bool) -> str:
    """Text with one column a character: nothing unprintable, combining or double-width, and only ASCII when plain."""
    if not unicode:
        text = unicodedata.normalize("NFKD", text.replace("×", "x"))
        text = "".join(char for char in text if not unicodedata.combining(char))
    return "".join(_one_column(char, unicode) for char in unicodedata.normalize("NFC", text))


def _one_column(char: str, unicode: bool) -> str:
    narrow = unicodedata.east_asian_width(char) not in "WF" and not unicodedata.combining(char)
    return char if char.isprintable() and narrow and (unicode or char.isascii()) else "?"
