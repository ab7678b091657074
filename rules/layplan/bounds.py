"""How short a lay can possibly be: bounds that hold for every lay, whatever the search finds.

Widths are also weighed by dual feasible functions (Fekete and Schepers, "A general framework for bounds for
higher-dimensional orthogonal packing problems", Math. Methods Oper. Res. 60, 2004; reference from memory): a scale on
which pieces side by side still add up to no more than the cloth, so that the area on that scale bounds the length too.
"More than half the width: never side by side" is the plainest of them.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from rules.layplan.pieces import BoundKind
from rules.layplan.problem import Problem, along
from rules.layplan.sums import Totals, totals

MOST_PER_ROW = 8  # scales for "at most k of these side by side" up to this k

Scale = Callable[[int], int]


def lower_bound(problem: Problem) -> tuple[int, BoundKind]:
    """The best bound on the length in units, and what it rests on."""
    bounds = [
        (-(-problem.area // problem.width), BoundKind.AREA),
        (max(min(side.length for side in kind.sides) for kind in problem.kinds), BoundKind.LONGEST),
        (sum(k.count * k.sides[0].length for k in problem.kinds if k.on_fold), BoundKind.FOLD),
        (side_by_side(problem), BoundKind.SIDE_BY_SIDE),
    ]
    return max(bounds, key=lambda bound: bound[0])


def lengths(problem: Problem) -> Totals:
    """The lengths a lay can have when every piece is pushed back as far as it goes: totals of pieces' lengths."""
    most = sum(kind.count * max(side.length for side in kind.sides) for kind in problem.kinds)
    return totals(along(problem.kinds), most)


def side_by_side(problem: Problem) -> int:
    """The largest bound by any scale of the widths."""
    return max(weighed(problem, scale) for scale in scales(problem))


def weighed(problem: Problem, scale: Scale) -> int:
    """The area with widths on the scale, each piece its smallest way, over the cloth's width on the scale."""
    area = sum(k.count * min(scale(side.width) * side.length for side in k.sides) for k in problem.kinds)
    return -(-area // scale(problem.width))


def scales(problem: Problem) -> Iterator[Scale]:
    """The scales tried: one a width at most half the cloth, and one a number of pieces in a row."""
    width = problem.width
    narrow = {side.width for kind in problem.kinds for side in kind.sides if 2 * side.width <= width}
    for threshold in sorted(narrow | {width // 2 + 1 if width % 2 else width // 2}):
        yield threshold_scale(width, threshold)
    for most in range(1, MOST_PER_ROW + 1):
        yield row_scale(width, most)


def threshold_scale(cloth: int, threshold: int) -> Scale:
    """Widths that leave less than threshold beside them count as the whole cloth, those below threshold as nothing."""

    def scale(width: int) -> int:
        if width > cloth - threshold:
            return cloth
        return width if width >= threshold else 0

    return scale


def row_scale(cloth: int, most: int) -> Scale:
    """Widths of which at most `most` lie side by side count as 1/most of the cloth, and so on in steps.

    Width w counts floor((most + 1) w / cloth) / most, or w / cloth itself when that floor is exact.
    """

    def scale(width: int) -> int:
        steps, rest = divmod((most + 1) * width, cloth)
        return width * most if rest == 0 else steps * cloth

    return scale
