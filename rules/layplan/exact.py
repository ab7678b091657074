"""Branch and bound: whether any lay is at most as long as a target. It finds one, or proves that there is none.

Why nothing is missed. Take, of all lays within the target, one whose pieces stand nearest the cut end in all, then
nearest the left in all; no piece of it can move back or left. Look at the lowest niche of what is laid so far. Then

- a piece of that lay stands at the niche's left end, on its floor; or
- none stands on its floor: the niche is given up as far as its lower wall, which can only be when nothing left over
  would go into it whole (that piece could have moved back); or
- its leftmost piece stands off the left wall, kept from moving left by a piece that hangs over that wall: it reaches
  above the wall, the gap is empty, nothing else left over would go into the gap, and it stands where widths of pieces
  add up to.
"""

from __future__ import annotations

from enum import Enum
from typing import NamedTuple

from rules.layplan.beam import TASTES, cost, one_less, praises
from rules.layplan.effort import Effort
from rules.layplan.problem import Problem, Spot, Trail, across, spots_of
from rules.layplan.room import Room
from rules.layplan.scales import Conservative
from rules.layplan.sides import Way, Ways
from rules.layplan.skyline import Niche, Xs, Ys, fill, lowest, shift_left_wall
from rules.layplan.sums import totals

NODE_STEPS = 60  # what a node costs, beside what goes over its kinds and the ways they fit


class Verdict(Enum):
    FOUND = "found"
    NONE = "none exists"
    GAVE_UP = "gave up"


class Node(NamedTuple):
    """A half-made lay."""

    xs: Xs
    ys: Ys
    counts: tuple[int, ...]
    waste: int
    trail: Trail | None


class Here(NamedTuple):
    """A half-made lay, its lowest niche, and the ways of what is left that go in there."""

    node: Node
    niche: Niche
    fitting: list[Way]


class Exact:
    """Branch and bound for one problem, target by target."""

    def __init__(self, problem: Problem, ways: Ways, effort: Effort, scales: Conservative | None) -> None:
        self._problem, self._ways, self._effort = problem, ways, effort
        mean = problem.area / problem.count
        self._step_cost = TASTES[0].steps * mean
        self._praise = praises(problem, TASTES[0], mean)
        self._stands = totals(across(problem.kinds), problem.width)
        self._target = self._budget = 0
        self._dead: set[tuple[Xs, Ys, tuple[int, ...]]] = set()
        self._scales = scales
        self._room = Room(problem, 0, None)

    def search(self, target: int) -> tuple[Verdict, list[Spot]]:
        """A lay at most target long if one exists."""
        self._target = target
        self._budget = self._problem.width * target - self._problem.area
        self._dead.clear()
        self._room = Room(self._problem, target, self._scales)
        found = self._go(Node((0, self._problem.width), (0,), self._problem.counts, 0, None))
        if found is not None:
            return Verdict.FOUND, spots_of(found)
        return (Verdict.GAVE_UP if self._effort.spent else Verdict.NONE), []

    def _go(self, node: Node) -> Trail | None:
        """The finished lay that goes on from here, if there is one and the effort lasts."""
        xs, ys, counts, waste, _ = node
        niche = lowest(xs, ys, self._target)
        key = (xs, ys, counts)
        if waste > self._budget or key in self._dead or self._too_long(niche, counts):
            return None
        fitting = self._ways.fitting(niche.x, niche.width, self._target - niche.y, counts)
        if not self._effort.spend(NODE_STEPS + len(counts) + 8 * len(fitting)):
            return None
        if not self._room.holds(xs, ys, counts):
            return None
        here = Here(node, niche, fitting)
        found = self._at_left(here) or self._given_up(here) or self._off_wall(here)
        self._dead.add(key)
        return found

    def _too_long(self, niche: Niche, counts: tuple[int, ...]) -> bool:
        room = self._target - niche.y
        return any(count and length > room for count, length in zip(counts, self._ways.shortest, strict=True))

    def _at_left(self, here: Here) -> Trail | None:
        """A piece at the niche's left end; the likeliest first."""
        node, niche, fitting = here
        narrowest = min(width for width, count in zip(self._ways.narrowest, node.counts, strict=True) if count)
        ranked = []
        for way in fitting:
            lost, steps = cost(niche, way, narrowest)
            if node.waste + lost <= self._budget:
                ranked.append((lost + self._step_cost * steps - self._praise[way.kind], way))
        for _, way in sorted(ranked):
            found = self._lay(node, niche, way)
            if found is not None:
                return found
        return None

    def _given_up(self, here: Here) -> Trail | None:
        """No piece on the niche's floor."""
        node, niche, fitting = here
        level = min(niche.left, niche.right)
        if level >= self._target or any(way.length <= level - niche.y for way in fitting):
            return None
        xs, ys = fill(node.xs, node.ys, niche.step, niche.width, level)
        return self._go(Node(xs, ys, node.counts, node.waste + niche.width * (level - niche.y), node.trail))

    def _off_wall(self, here: Here) -> Trail | None:
        """The niche's leftmost piece off its left wall, and reaching above it."""
        node, niche, fitting = here
        depth = niche.left - niche.y
        if niche.x == 0 or niche.left >= self._target:
            return None
        widest = min(niche.width, (self._budget - node.waste) // depth)
        for x in self._stands.between(niche.x + 1, niche.x + widest):
            gap = x - niche.x
            moved = node._replace(xs=shift_left_wall(node.xs, niche.step, x), waste=node.waste + gap * depth)
            for way in fitting:
                if way.width > niche.width - gap or way.length <= depth:
                    continue
                if goes_in(gap, depth, fitting, one_less(node.counts, way.kind)):
                    continue
                found = self._lay(moved, niche._replace(x=x), way)
                if found is not None:
                    return found
        return None

    def _lay(self, node: Node, niche: Niche, way: Way) -> Trail | None:
        """Go on with a piece laid at the niche's left end, on its floor."""
        trail = Trail(node.trail, Spot(way.kind, niche.x, niche.y, way.width, way.length))
        counts = one_less(node.counts, way.kind)
        if not any(counts):
            return trail
        xs, ys = fill(node.xs, node.ys, niche.step, way.width, niche.y + way.length)
        return self._go(Node(xs, ys, counts, node.waste, trail))


def goes_in(width: int, length: int, fitting: list[Way], counts: tuple[int, ...]) -> bool:
    """Whether something left over goes into width by length."""
    return any(counts[way.kind] and way.width <= width and way.length <= length for way in fitting)
