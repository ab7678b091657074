"""The skyline: how far the cloth is used up, from selvedge to selvedge, as steps.

A skyline is two tuples: where each step begins across the cloth (and, last, the cloth's width), and how far along the
cloth it stands. Neighbouring steps are never level. All that lies below it is settled: a piece or waste.
"""

from __future__ import annotations

from typing import NamedTuple


class Niche(NamedTuple):
    """The lowest step, the leftmost of these: where the next piece goes.

    left, right: how far its neighbours stand; the cloth's edges stand as far as the target length.
    """

    step: int
    x: int
    y: int
    width: int
    left: int
    right: int


Xs = tuple[int, ...]
Ys = tuple[int, ...]


def lowest(xs: Xs, ys: Ys, target: int) -> Niche:
    y = min(ys)
    step = ys.index(y)
    left = ys[step - 1] if step else target
    right = ys[step + 1] if step + 1 < len(ys) else target
    return Niche(step, xs[step], y, xs[step + 1] - xs[step], left, right)


def fill(xs: Xs, ys: Ys, step: int, width: int, top: int) -> tuple[Xs, Ys]:
    """The skyline with the first `width` of a step raised to top (a piece laid there, or the step given up)."""
    new_xs, new_ys = list(xs), list(ys)
    if width < xs[step + 1] - xs[step]:
        new_xs.insert(step + 1, xs[step] + width)
        new_ys.insert(step, top)
    else:
        new_ys[step] = top
        if step + 1 < len(ys) and ys[step + 1] == top:
            del new_xs[step + 1], new_ys[step + 1]
    if step and ys[step - 1] == top:
        del new_xs[step], new_ys[step]
    return tuple(new_xs), tuple(new_ys)


def shift_left_wall(xs: Xs, step: int, x: int) -> Xs:
    """The skyline's x values with a step's left neighbour reaching on to x: the gap before x is given up."""
    return (*xs[:step], x, *xs[step + 1 :])
