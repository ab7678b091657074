"""The unknown found by putting numbers forward through the rule: for sums that no algebra turns round."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from itertools import pairwise

from .request import Number

SAMPLES = 20
BEYOND = 2  # tries past the target, to see a result that turns back
Try = Callable[[Fraction], Number | None]


class NotFound(Exception):
    """No value in the range gives the result. why: "uneven" (it goes up and down), "low" or "high" (it is not reached
    even at that end), "beyond" (values past the range would), "none" (the result does not change)."""

    def __init__(self, why: str) -> None:
        super().__init__(why)
        self.why = why


def search(work: Try, target: Number, want: str, low: Fraction, high: Fraction, step: Fraction,
           open_end: bool = False) -> tuple[Fraction, str]:
    """The multiple of step between low and high at which the result comes nearest its target on the safe side.

    work: the result for a value, or None where there is none. want: the result is target at "most" or at "least", or
    "only" about it; open_end: not quite target. Returns the value and whether it is the "most" or "least" that does, or
    the "only" one. Takes under 200 tries. Raises NotFound.
    """
    points = _bracket(work, target, int(-(-low // step)), int(high // step), step)
    if not points:
        raise NotFound("none")
    results = [got for _, got in points]
    rising = results[-1] >= results[0]
    pairs = list(pairwise(results))
    if results[0] == results[-1] or not all((a <= b) if rising else (a >= b) for a, b in pairs):
        raise NotFound("uneven" if any(a != b for a, b in pairs) else "none")
    if want == "only":
        return _nearest(work, target, points, rising, step), "only"
    def fits(got: Number) -> bool:
        return not open_end if got == target else (got < target) is (want == "most")

    return _edge(work, target, fits, points, step, at_top=rising is (want == "most"))


def _bracket(work: Try, target: Number, first: int, last: int, step: Fraction) -> list[tuple[int, Number]]:
    """Places with their results, in order, from the first that has one until the target is well passed.

    The distance doubles, so that a sum that takes long with great numbers is not tried far beyond what is asked; then
    the stretch is filled in evenly, to see that the results only rise or only fall.
    """
    beyond = 0
    found: dict[int, Number] = {}
    place, distance = first, 1
    while place <= last:
        got = work(place * step)
        if got is not None:
            found[place] = got
            passed = got != target and len({(value > target) - (value < target) for value in found.values()}) > 1
            beyond += passed
            if beyond > BEYOND:
                break
        place = last if place < last < place + distance else place + distance
        distance *= 2
    if found:
        start, end = min(found), max(found)
        between = {start + (end - start) * i // SAMPLES for i in range(SAMPLES)} - set(found)
        tried = [(at, work(at * step)) for at in between]
        found.update((at, got) for at, got in tried if got is not None)
    return sorted(found.items())


def _edge(
    work: Try, target: Number, fits: Callable[[Number], bool], points: list[tuple[int, Number]], step: Fraction,
    at_top: bool,
) -> tuple[Fraction, str]:
    """The last value that fits going up (at_top), or the first."""
    good = [place for place, got in points if fits(got)]
    bad = [place for place, got in points if not fits(got)]
    if not good:
        raise NotFound("low" if at_top else "high")
    if not bad:
        place, end = points[-1 if at_top else 0]
        if end != target:
            raise NotFound("beyond")
        return place * step, "most" if at_top else "least"
    inside, outside = (max(good), min(bad)) if at_top else (min(good), max(bad))
    while abs(outside - inside) > 1:
        middle = (inside + outside) // 2
        got = work(middle * step)
        if got is not None and fits(got):
            inside = middle
        else:
            outside = middle
    return inside * step, "most" if at_top else "least"


def _nearest(work: Try, target: Number, points: list[tuple[int, Number]], rising: bool, step: Fraction) -> Fraction:
    """The value whose result is nearest the target; of several the least."""
    if not min(got for _, got in points) <= target <= max(got for _, got in points):
        raise NotFound("low" if (target < points[0][1]) is rising else "high")

    def reached(got: Number) -> bool:
        return got >= target if rising else got <= target

    if reached(points[0][1]):
        return points[0][0] * step
    at, _ = _edge(work, target, reached, points, step, at_top=False)
    here, before = work(at), work(at - step)
    if here is None or before is None:
        return at
    past, short = (here - target, target - before) if rising else (target - here, before - target)
    return at - step if short < past else at
