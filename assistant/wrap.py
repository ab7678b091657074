"""Text in lines of a given width, with hanging indents, never parting a number from its unit."""

from __future__ import annotations

from .signs import clean

_OPENING = "(\"'“‘£$€-+~="
LEAST_ROOM = 12


def wrap(text: str, columns: int, first: str = "", rest: str = "") -> list[str]:
    """Lines of at most so many columns: the first begins with `first`, the others with `rest`.

    A word longer than a line stands on a line of its own, uncut, since it may be a number.

    >>> wrap("cut 7 strips across the cloth, each 2 1/2 in wide", 24, "- ", "  ")
    ['- cut 7 strips across', '  the cloth, each', '  2 1/2 in wide']
    """
    words = clean(text).split()
    room = max(columns, len(rest) + LEAST_ROOM)
    if len(first) + sum(map(len, words)) + len(words) - 1 <= room:
        return [first + " ".join(words)] if words else []
    lines: list[str] = []
    line, empty = first, True
    for piece in _pieces(words):
        if not empty and len(line) + 1 + len(piece) > room:
            lines.append(line)
            line, empty = rest, True
        line, empty = (line + piece if empty else f"{line} {piece}"), False
    return [*lines, line] if not empty else lines


def _pieces(words: list[str]) -> list[str]:
    """The words, each number joined to its fraction and its unit."""
    pieces: list[str] = []
    open_number = False
    for word in words:
        joins = open_number and (_is_number(word) or word.lstrip("(")[:1].isalpha() or word[:1] == "%")
        if joins:
            pieces[-1] += " " + word
        else:
            pieces.append(word)
        open_number = _is_number(word)
    return pieces


def _is_number(word: str) -> bool:
    """Whether a word is a number that the next word may belong to: "2", "1/2", "(40", "£7.25", but not "7," or "in"."""
    return word[-1:].isdigit() and word.lstrip(_OPENING)[:1].isdigit()
