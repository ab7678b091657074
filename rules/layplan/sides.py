"""The ways that kinds can lie, in the order and the lists in which the searches look them up."""

from __future__ import annotations

from bisect import bisect_right
from typing import NamedTuple

from rules.layplan.problem import Problem


class Way(NamedTuple):
    """A kind lying one way."""

    width: int
    length: int
    kind: int


class Ways:
    """Every way, by width; at the fold (x = 0) and away from it, where pieces on the fold have none."""

    def __init__(self, problem: Problem) -> None:
        at_edge = sorted(Way(*side, number) for number, kind in enumerate(problem.kinds) for side in kind.sides)
        inside = [way for way in at_edge if not problem.kinds[way.kind].on_fold]
        self._at_edge = (at_edge, [way.width for way in at_edge])
        self._inside = (inside, [way.width for way in inside])
        self.shortest = [min(side.length for side in kind.sides) for kind in problem.kinds]
        self.narrowest = [kind.sides[0].width for kind in problem.kinds]

    def fitting(self, x: int, width: int, length: int, counts: tuple[int, ...]) -> list[Way]:
        """The ways of what is left that go into width by length at x."""
        ways, widths = self._at_edge if x == 0 else self._inside
        return [way for way in ways[: bisect_right(widths, width)] if counts[way[2]] and way[1] <= length]
