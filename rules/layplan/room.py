"""Whether what is left over can still go above a skyline: quick tests, each of which can only say no with right.

Every line across the cloth runs free between standing pieces, and what lies in a free run is pieces side by side; every
line along it runs free from the skyline to the target. So the most that each such run can hold, in width or on a
conservative scale, bounds what can go above the skyline.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import replace
from itertools import pairwise
from typing import NamedTuple

from rules.layplan.problem import Problem, across, along
from rules.layplan.scales import Conservative
from rules.layplan.skyline import Xs, Ys
from rules.layplan.sums import Totals, totals


class Need(NamedTuple):
    """What is left over: its area, true and on each scale, and what widths and lengths it adds up to."""

    area: int
    weighed_across: int
    weighed_along: int
    widths: Totals
    lengths: Totals


class Most:
    """The most that goes into a run of a given size, on a scale."""

    def __init__(self, rows: list[tuple[int, int]]) -> None:
        self._sizes = [size for size, _ in rows]
        self._weights = [weight for _, weight in rows]

    def into(self, run: int) -> int:
        return self._weights[bisect_right(self._sizes, run) - 1]


class Room:
    """The tests for one target."""

    def __init__(self, problem: Problem, target: int, scales: Conservative | None) -> None:
        self._problem, self._target = problem, target
        self._needs: dict[tuple[int, ...], Need] = {}
        self._across = self._along = [0] * len(problem.kinds)
        self._most_across = self._most_along = Most([(0, 0)])
        if scales is not None:
            across_scale, along_scale = scales.across(), scales.along(target)
            self._across, self._most_across = across_scale.weights, Most(across_scale.rows)
            self._along, self._most_along = along_scale.weights, Most(along_scale.rows)

    def holds(self, xs: Xs, ys: Ys, counts: tuple[int, ...]) -> bool:
        """Whether counts of each kind might go between a skyline and the target."""
        need = self._needs.get(counts) or self._need(counts)
        runs = runs_across(xs, ys, self._target)
        if sum(need.widths.floor(run) * length for run, length in runs) < need.area:
            return False
        if sum(self._most_across.into(run) * length for run, length in runs) < need.weighed_across:
            return False
        columns = [(xs[i + 1] - xs[i], self._target - y) for i, y in enumerate(ys)]
        if sum(need.lengths.floor(run) * width for width, run in columns) < need.area:
            return False
        return sum(self._most_along.into(run) * width for width, run in columns) >= need.weighed_along

    def _need(self, counts: tuple[int, ...]) -> Need:
        left = [replace(kind, count=n) for kind, n in zip(self._problem.kinds, counts, strict=True)]
        need = Need(
            sum(kind.count * kind.area for kind in left),
            sum(k.count * weight * k.sides[0].length for k, weight in zip(left, self._across, strict=True)),
            sum(k.count * weight * k.sides[0].width for k, weight in zip(left, self._along, strict=True)),
            totals(across(left), self._problem.width),
            totals(along(left), self._target),
        )
        self._needs[counts] = need
        return need


def runs_across(xs: Xs, ys: Ys, target: int) -> list[tuple[int, int]]:
    """The free runs of lines across, as (run, how many lines have it)."""
    found = []
    for low, high in pairwise(sorted({*ys, target})):
        run = 0
        for i, y in enumerate(ys):
            if y <= low:
                run += xs[i + 1] - xs[i]
            elif run:
                found.append((run, high - low))
                run = 0
        if run:
            found.append((run, high - low))
    return found
