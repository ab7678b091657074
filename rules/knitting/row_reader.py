"""Rows of instructions written and knitted: "k5, m1, (k10, m1) 5 times, k5" is counted stitch by stitch.

The rules write a row from its parts with `write_row`, then read it back with `knit` and count, so that no row is shown
that would not come out. Notation: kN knits N stitches; m1 makes a new stitch between two; kfb knits into the front and
back of one, making two of it; k2tog knits two together; (...) N times repeats.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise

# What each word of a row takes from the left needle and puts on the right.
ACTIONS = {"m1": (0, 1), "kfb": (1, 2), "k2tog": (2, 1)}
_WORD = re.compile(
    r"\s*(?:(?P<open>\()|(?P<close>\)\s*(?P<times>\d+)\s*times)|k(?P<plain>\d+)(?!tog)|(?P<action>m1|kfb|k2tog))\s*,?"
)


class RowError(ValueError):
    """A row that cannot be knitted: a word that is none, a bracket left open, too few stitches on the needle."""


@dataclass(frozen=True, slots=True)
class Knitted:
    """What a row does: stitches it uses up, stitches it leaves, and how many shapings it works."""

    used: int
    left: int
    shapings: int


def _read(text: str) -> list[tuple[str, int]]:
    """The row as a flat list of words, each plain run with its number, repeats written out. Raises RowError."""
    stack: list[list[tuple[str, int]]] = [[]]
    spot = 0
    while spot < len(text):
        word = _WORD.match(text, spot)
        if word is None:
            raise RowError(f"I cannot knit {text[spot:]!r}; write k5, m1, kfb, k2tog or (k5, m1) 3 times")
        spot = word.end()
        if word["open"]:
            stack.append([])
        elif word["close"]:
            if len(stack) == 1:
                raise RowError("a bracket closes that was never opened")
            inside = stack.pop()
            stack[-1] += inside * int(word["times"])
        else:
            stack[-1].append(("k", int(word["plain"])) if word["plain"] else (word["action"], 1))
    if len(stack) != 1:
        raise RowError("a bracket is left open")
    return stack[0]


def knit(text: str, on_needle: int | None = None) -> Knitted:
    """Knit a row, stitch by stitch. on_needle: refuse when the row does not use up exactly these.

    >>> knit("k5, m1, (k10, m1) 2 times, k5", 30)
    Knitted(used=30, left=33, shapings=3)
    """
    used = left = shapings = 0
    for word, number in _read(text):
        takes, gives = (number, number) if word == "k" else ACTIONS[word]
        used, left = used + takes, left + gives
        shapings += word != "k"
        if on_needle is not None and used > on_needle:
            raise RowError(f"the row needs a stitch more than the {on_needle} on the needle")
    if on_needle is not None and used != on_needle:
        raise RowError(f"{on_needle - used} stitches would be left over")
    return Knitted(used, left, shapings)


def spaced(total: int, parts: int) -> list[int]:
    """A whole number shared into parts that differ by one at most, the larger ones spread as evenly as can be.

    >>> spaced(75, 9)
    [8, 9, 8, 8, 9, 8, 8, 9, 8]
    """
    ends = [(2 * number * total + parts) // (2 * parts) for number in range(parts + 1)]
    return [after - before for before, after in pairwise(ends)]


def write_row(intervals: Sequence[int], action: str, last: int = 0) -> str:
    """A row of plain runs, each followed by the action, and a last plain run, repeats drawn together.

    >>> write_row([5, 10, 10], "m1", 5)
    'k5, m1, (k10, m1) 2 times, k5'
    """
    parts, spot = [], 0
    while spot < len(intervals):
        size, times = _best_repeat(intervals, spot)
        words = ", ".join(_run(run) + action for run in intervals[spot : spot + size])
        parts.append(f"({words}) {times} times" if times > 1 else words)
        spot += size * times
    if last:
        parts.append(f"k{last}")
    return ", ".join(parts)


def _run(number: int) -> str:
    return f"k{number}, " if number else ""


def _best_repeat(intervals: Sequence[int], spot: int) -> tuple[int, int]:
    """The repeat (its size, how many times) that covers most from here; the smaller of two as good."""
    best = (1, 1)
    for size in range(1, min(6, len(intervals) - spot) + 1):
        unit = intervals[spot : spot + size]
        times = 1
        while intervals[spot + times * size : spot + (times + 1) * size] == unit:
            times += 1
        if times > 1 and size * times > best[0] * best[1]:
            best = (size, times)
    return best


def actions(text: str) -> list[tuple[int, str]]:
    """The plain stitches before each shaping of a row and its word; a last plain run has no word.

    >>> actions("k5, m1, k10, m1, k5")
    [(5, 'm1'), (10, 'm1'), (5, '')]
    """
    found, plain = [], 0
    for word, number in _read(text):
        if word == "k":
            plain += number
        else:
            found.append((plain, word))
            plain = 0
    return [*found, (plain, "")] if plain else found
