"""The search for a short lay: a first one at once, a proof if it is small, then better ones while the effort lasts.

Compared with the packing libraries rectpack and hyperpack (both Apache-2.0), which left larger gaps on the sets in
tests/bench/lay_plan.py and give no bound: so no library is used.
"""

from __future__ import annotations

from collections.abc import Callable

from rules.layplan.beam import TASTES, Beam
from rules.layplan.bounds import lengths, lower_bound
from rules.layplan.effort import Effort
from rules.layplan.exact import Exact, Verdict
from rules.layplan.pieces import BoundKind
from rules.layplan.problem import Problem, Spot
from rules.layplan.scales import Conservative
from rules.layplan.sides import Ways

EFFORT = 5_000_000  # search steps
EFFORT_SECONDS = 1  # which that takes, about, on a desktop machine of the 2020s
SCALES_MOST = 40  # kinds up to which bounds by conservative scales are tried
EXACT_MOST = 30  # outlines up to which a proof by search is tried
EXACT_SHARE = 0.4  # of the effort
FIRST_KEEP = 2  # half-made lays kept for the first lay
FIRST_RUNG = 64  # the first targets are above the bound by 1/64 of it, then 2/64, 4/64, ...


class Search:
    """One problem's search; afterwards `spots` is the best lay and `bound` what no lay is below, in units."""

    def __init__(self, problem: Problem, effort: int, stop: Callable[[], bool] | None) -> None:
        self._problem = problem
        self._ways = Ways(problem)
        self._effort = Effort(effort, stop)
        self._lengths = lengths(problem)
        bound, self.bound_kind = lower_bound(problem)
        self.bound = self._lengths.next_above(bound)
        self.spots: list[Spot] = []
        self._scales: Conservative | None = None

    @property
    def length(self) -> int:
        return max(spot.y + spot.length for spot in self.spots)

    @property
    def proved(self) -> bool:
        return self.length == self.bound

    def run(self) -> None:
        self._first_lay()
        if not self.proved and self._can_be_weighed():
            self._weigh()
        if not self.proved and self._problem.count <= EXACT_MOST:
            self._prove()
        keep = 2 * FIRST_KEEP
        while not self.proved and not self._effort.spent:
            for taste in TASTES:
                self._improve(Beam(self._problem, self._ways, taste, self._effort), keep)
            keep *= 2

    def _first_lay(self) -> None:
        """Try the bound, then longer and longer targets; every piece below the other always does."""
        beam = Beam(self._problem, self._ways, TASTES[0], Effort.unlimited())
        most = self._lengths.most
        step = max(1, self.bound // FIRST_RUNG)
        target = self.bound
        while not self.spots:
            self.spots = beam.search(min(target, most), FIRST_KEEP) or []
            target += step
            step *= 2

    def _can_be_weighed(self) -> bool:
        kinds = self._problem.kinds
        return len(kinds) <= SCALES_MOST and all(len(kind.sides) == 1 for kind in kinds)

    def _weigh(self) -> None:
        """Raise the bound by conservative scales: halve the range of lengths that might be refuted."""
        scales = self._scales = Conservative(self._problem, self._effort)
        self._raise_bound(scales.bound(), BoundKind.SCALES)
        targets = self._lengths.between(self.bound, self.length - 1)
        while targets and not self._effort.spent:
            middle = len(targets) // 2
            if scales.refutes(targets[middle]):
                self._raise_bound(targets[middle] + 1, BoundKind.SCALES)
                targets = targets[middle + 1 :]
            else:
                targets = targets[:middle]

    def _prove(self) -> None:
        """Try every length from the bound up by branch and bound, until one can be had or its share is spent."""
        purse = self._effort.share(int(self._effort.left * EXACT_SHARE))
        exact = Exact(self._problem, self._ways, purse, self._scales)
        for target in self._lengths.between(self.bound, self.length - 1):
            verdict, spots = exact.search(target)
            if verdict is Verdict.GAVE_UP:
                break
            if verdict is Verdict.FOUND:
                self.spots = spots
                break
            self._raise_bound(target + 1, BoundKind.SEARCH)
        self._effort.spend(purse.used)

    def _raise_bound(self, least: int, kind: BoundKind) -> None:
        """Take up a bound of at least so much, unless a better one is known."""
        if least > self.bound:
            self.bound = min(self._lengths.next_above(least), self.length)
            self.bound_kind = kind

    def _improve(self, beam: Beam, keep: int) -> None:
        """Halve the range of targets between the bound and the best lay, going down when the beam finds one."""
        low, targets = 0, self._lengths.between(self.bound, self.length - 1)
        while low < len(targets) and not self._effort.spent:
            middle = (low + len(targets)) // 2
            spots = beam.search(targets[middle], keep)
            if spots is None:
                low = middle + 1
            else:
                self.spots = spots
                targets = [target for target in targets if target < self.length]
