"""Beam search for a lay no longer than a target: many half-made lays side by side, the best few kept after each piece.

Pieces go into the lowest niche of the skyline, against its left wall. A half-made lay is good when it has wasted
little, its skyline has few steps, and it has got rid of the pieces that are hard to place later (the long ones, more
than the large ones).
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from rules.layplan.effort import Effort
from rules.layplan.problem import Problem, Spot, Trail, spots_of
from rules.layplan.sides import Way, Ways
from rules.layplan.skyline import Niche, Xs, Ys, fill, lowest

NODE_STEPS = 20  # what looking at one half-made lay costs, beside what goes over its kinds and the ways they fit


@dataclass(frozen=True, slots=True)
class Taste:
    """What a half-made lay is praised for. steps: dislike of each skyline step, in mean piece areas.

    early: praise for pieces laid, in mean piece areas; across, along: how it grows with a piece's width and length.
    """

    steps: float
    early: float
    across: float
    along: float


TASTES = (
    Taste(steps=0.3, early=1.0, across=0.3, along=1.0),
    Taste(steps=0.1, early=0.5, across=0.0, along=1.0),
    Taste(steps=0.3, early=2.0, across=0.5, along=1.5),
    Taste(steps=0.3, early=3.0, across=1.0, along=1.0),
)


class Part(NamedTuple):
    """A half-made lay."""

    xs: Xs
    ys: Ys
    counts: tuple[int, ...]
    waste: int
    praise: float
    trail: Trail | None


class Choice(NamedTuple):
    """A way to go on with a half-made lay; the smaller the score the better, the number settles ties."""

    score: float
    number: int
    part: Part
    niche: Niche
    way: Way


class Beam:
    """Beam search with one taste. It finds lays; that it finds none proves nothing."""

    def __init__(self, problem: Problem, ways: Ways, taste: Taste, effort: Effort) -> None:
        self._problem, self._ways, self._effort = problem, ways, effort
        mean = problem.area / problem.count
        self._step_cost = taste.steps * mean
        self._praise = praises(problem, taste, mean)

    def search(self, target: int, keep: int) -> list[Spot] | None:
        """A lay at most target long, keeping so many half-made lays after each piece; None when it finds none."""
        budget = self._problem.width * target - self._problem.area
        parts = [Part((0, self._problem.width), (0,), self._problem.counts, 0, 0.0, None)]
        for _ in range(self._problem.count):
            choices: list[Choice] = []
            for part in parts:
                self._look(part, target, budget, choices)
            if not choices or self._effort.spent:
                return None
            choices.sort()
            parts = self._take(choices, keep)
        return spots_of(parts[0].trail)

    def _look(self, part: Part, target: int, budget: int, choices: list[Choice]) -> None:
        """Add every way to go on with a part, in its lowest niche or, with that given up, in the next."""
        narrowest = min(width for width, count in zip(self._ways.narrowest, part.counts, strict=True) if count)
        while True:
            niche = lowest(part.xs, part.ys, target)
            fitting = self._ways.fitting(niche.x, niche.width, target - niche.y, part.counts)
            self._effort.spend(NODE_STEPS + len(part.counts) + 2 * len(fitting))
            self._rank(part, niche, fitting, narrowest, budget, choices)
            level = min(niche.left, niche.right)
            waste = part.waste + niche.width * (level - niche.y)
            if level >= target or waste > budget or any(way.length <= level - niche.y for way in fitting):
                return
            xs, ys = fill(part.xs, part.ys, niche.step, niche.width, level)
            part = part._replace(xs=xs, ys=ys, waste=waste)

    def _rank(
        self, part: Part, niche: Niche, fitting: list[Way], narrowest: int, budget: int, choices: list[Choice]
    ) -> None:
        """Add the ways to go on in one niche, with their scores."""
        base = part.waste - part.praise + self._step_cost * len(part.ys)
        for way in fitting:
            waste, steps = cost(niche, way, narrowest)
            if part.waste + waste <= budget:
                score = base + waste + self._step_cost * steps - self._praise[way.kind]
                choices.append(Choice(score, len(choices), part, niche, way))

    def _take(self, choices: list[Choice], keep: int) -> list[Part]:
        """The parts that the best choices lead to, no two alike."""
        parts: list[Part] = []
        seen: set[tuple[Xs, Ys, tuple[int, ...]]] = set()
        for _, _, part, niche, way in choices:
            xs, ys = fill(part.xs, part.ys, niche.step, way.width, niche.y + way.length)
            counts = one_less(part.counts, way.kind)
            if (xs, ys, counts) in seen:
                continue
            seen.add((xs, ys, counts))
            spot = Spot(way.kind, niche.x, niche.y, way.width, way.length)
            praise = part.praise + self._praise[way.kind]
            parts.append(Part(xs, ys, counts, part.waste, praise, Trail(part.trail, spot)))
            if len(parts) == keep:
                break
        return parts


def cost(niche: Niche, way: Way, narrowest: int) -> tuple[int, float]:
    """Waste for certain and skyline steps more (or fewer) when a way is laid in a niche.

    narrowest: the least width of what is left; a rest of the niche narrower than that is wasted.
    """
    top, rest = niche.y + way.length, niche.width - way.width
    if rest == 0:
        return 0, -(top == niche.left) - (top == niche.right)
    if rest < narrowest:
        return rest * (min(top, niche.right) - niche.y), 0.5 - (top == niche.left)
    return 0, 1 - (top == niche.left)


def praises(problem: Problem, taste: Taste, mean: float) -> list[float]:
    """What laying one piece of each kind is worth, in area."""
    worth = [max(side.width**taste.across * side.length**taste.along for side in kind.sides) for kind in problem.kinds]
    total = sum(value * kind.count for value, kind in zip(worth, problem.kinds, strict=True))
    return [taste.early * value / total * problem.count * mean for value in worth]


def one_less(counts: tuple[int, ...], kind: int) -> tuple[int, ...]:
    return (*counts[:kind], counts[kind] - 1, *counts[kind + 1 :])
