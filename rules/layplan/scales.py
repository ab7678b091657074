"""Bounds by conservative scales: weights for the pieces by which no row, and no column, can be overfull.

Give every piece a weight across the cloth so that no set of pieces that goes side by side weighs more than the cloth
does, and likewise a weight along it. Then the sum of the products cannot exceed the product of the two wholes, for the
same reason that areas cannot. The best weights are the prices of a cutting-stock problem (Gilmore and Gomory,
Operations Research 9, 1961), found for one direction with the other's held still, in turns (Belov, Kartak, Rohling and
Scheithauer, "Conservative scales in packing problems", OR Spectrum 35, 2013; references from memory). The prices are
found in floating point, then rounded to whole numbers whose heaviest row is worked out exactly: the bound holds
whatever the rounding.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import NamedTuple

from rules.layplan.effort import Effort
from rules.layplan.problem import Problem

FINE = 1_000_000  # whole-number weights to one unit of price
TINY = 1e-9
MOST_ROUNDS = 200  # columns brought in for one set of prices
TURNS = 2  # times each direction is weighed anew


Row = tuple[int, float, tuple[tuple[int, int], ...]]  # width, weight, kinds and how many of each


class Scale(NamedTuple):
    """weights: of one piece of each kind; rows: (width, weight) of every row heavier than all narrower ones."""

    weights: list[int]
    rows: list[tuple[int, int]]

    @property
    def whole(self) -> int:
        """No pieces side by side weigh more in all."""
        return max(1, self.rows[-1][1])


class Stock:
    """Pieces of given sizes and counts, to lie side by side within a room."""

    def __init__(self, sizes: Sequence[int], counts: Sequence[int], room: int, effort: Effort) -> None:
        self._sizes, self._counts, self._room, self._effort = sizes, counts, room, effort

    def heaviest(self, weights: Sequence[float]) -> tuple[float, list[int]]:
        """The heaviest pieces that go side by side, and how many there are of each kind."""
        _, value, held = self._rows(weights)[-1]
        pattern = [0] * len(weights)
        for kind, n in held:
            pattern[kind] = n
        return value, pattern

    def _rows(self, weights: Sequence[float]) -> list[Row]:
        """Every row heavier than all narrower ones."""
        rows: list[Row] = [(0, 0, ())]
        for kind, weight in enumerate(weights):
            if weight > 0:
                size = self._sizes[kind]
                longer = [
                    (used + n * size, value + n * weight, (*held, (kind, n)))
                    for used, value, held in rows
                    for n in range(1, min(self._counts[kind], (self._room - used) // size) + 1)
                ]
                rows = undominated(rows + longer)
                self._effort.spend(len(rows) + len(longer))
        return rows

    def scale(self, amounts: Sequence[int]) -> Scale:
        """The scale on which so much of each kind weighs the most rows."""
        weights = [max(0, int(price * FINE)) for price in self._prices(amounts)]
        return Scale(weights, [(used, int(value)) for used, value, _ in self._rows(weights)])

    def _prices(self, amounts: Sequence[int]) -> list[float]:
        """What a piece of each kind costs in rows, when amounts are cut from as few rows as can be."""
        each = [min(count, self._room // size) for count, size in zip(self._counts, self._sizes, strict=True)]
        kinds = range(len(each))
        inverse = [[1 / each[i] if i == j else 0.0 for j in kinds] for i in kinds]
        rows, costs = [amount / n for amount, n in zip(amounts, each, strict=True)], [1.0] * len(each)
        prices = [1 / n for n in each]
        for _ in range(MOST_ROUNDS):
            cheapest = min(kinds, key=lambda j: prices[j])
            value, pattern = self.heaviest(prices)
            if prices[cheapest] < -TINY:
                column, cost = [-1.0 if j == cheapest else 0.0 for j in kinds], 0.0
            elif value > 1 + TINY:
                column, cost = [float(n) for n in pattern], 1.0
            else:
                break
            if not pivot(inverse, rows, costs, column, cost):
                break
            prices = [sum(cost * line[j] for cost, line in zip(costs, inverse, strict=True)) for j in kinds]
        return prices


def undominated(rows: list[Row]) -> list[Row]:
    """Rows heavier than every narrower one, by width."""
    rows.sort(key=lambda row: (row[0], -row[1]))
    kept = rows[:1]
    for row in rows:
        if row[1] > kept[-1][1]:
            kept.append(row)
    return kept


def pivot(inverse: list[list[float]], rows: list[float], costs: list[float], column: list[float], cost: float) -> bool:
    """One step of the simplex method: bring a column into the basis; False when it leaves no way out."""
    kinds = range(len(rows))
    change = [sum(a * b for a, b in zip(line, column, strict=True)) for line in inverse]
    leaving = min((i for i in kinds if change[i] > TINY), key=lambda i: rows[i] / change[i], default=None)
    if leaving is None:
        return False
    inverse[leaving] = [value / change[leaving] for value in inverse[leaving]]
    rows[leaving] /= change[leaving]
    costs[leaving] = cost
    for i in kinds:
        if i != leaving and change[i]:
            factor = change[i]
            inverse[i] = [a - factor * b for a, b in zip(inverse[i], inverse[leaving], strict=True)]
            rows[i] -= factor * rows[leaving]
    return True


class Conservative:
    """Bounds by conservative scales for a problem whose kinds lie one way only."""

    def __init__(self, problem: Problem, effort: Effort) -> None:
        self._effort = effort
        self._counts = problem.counts
        self._width = problem.width
        self._widths = [kind.sides[0].width for kind in problem.kinds]
        self._lengths = [kind.sides[0].length for kind in problem.kinds]
        self._across = Stock(self._widths, self._counts, self._width, effort)

    def across(self) -> Scale:
        """The best weights across the cloth for true lengths along it."""
        return self._across.scale(self._times(self._lengths))

    def along(self, target: int) -> Scale:
        """The best weights along the cloth for true widths across it."""
        return Stock(self._lengths, self._counts, target, self._effort).scale(self._times(self._widths))

    def bound(self) -> int:
        """The least length by weights across the cloth and true lengths along it."""
        scale = self.across()
        return -(-self._sum(scale.weights, self._lengths) // scale.whole)

    def refutes(self, target: int) -> bool:
        """Whether some pair of scales shows that no lay is as short as target."""
        along = Stock(self._lengths, self._counts, target, self._effort)
        across = Scale(self._widths, [(0, 0), (self._width, self._width)])
        for _ in range(TURNS):
            down = along.scale(self._times(across.weights))
            if self._sum(across.weights, down.weights) > across.whole * down.whole:
                return True
            across = self._across.scale(self._times(down.weights))
            if self._sum(across.weights, down.weights) > across.whole * down.whole:
                return True
        return False

    def _times(self, weights: Sequence[int]) -> list[int]:
        return [count * weight for count, weight in zip(self._counts, weights, strict=True)]

    def _sum(self, across: Sequence[int], along: Sequence[int]) -> int:
        return sum(count * a * b for count, a, b in zip(self._counts, across, along, strict=True))
