"""Tensions told loosely: "26 sts to 10", a second one with less said ("16 to 10", "I'm getting 4 3/4")."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from grammar.query import Chunk, Mark, Measure, Part, Span, Word

# A tension is told over 10 cm or 4 in; the bare number says which.
OVER = {Fraction(10): "cm", Fraction(4): "in"}
COUNTED = ("st", "row")
MOST_OF_A_TENSION = 60
GETS, ALIKE = frozenset(("getting", "get", "got", "knitting", "knit")), (0.6, 1.67)
SAYS = frozenset(("is", "wants", "says", "has"))
THEIRS = frozenset(("theirs", "mine", "pattern", "pattern's", "tension", "gauge", "leaflet"))


def counted(made: Sequence[Chunk]) -> Measure | None:
    """Stitches or rows with "per" or the like behind them, at the end of what was made."""
    if len(made) < 2 or not isinstance(made[-1], Word | Mark) or made[-1].text.lower() not in ("per", "/"):
        return None
    above = made[-2]
    return above if isinstance(above, Measure) and above.unit in COUNTED and above.per is None else None


class Again(NamedTuple):
    """A measure told in other words, and how many of the chunks before it are part of it."""

    rate: Measure
    taken: int


def tension_again(made: Sequence[Chunk], measure: Measure, shapes: bool) -> Again | None:
    """A second tension told shortly after a first: "4 1/2 to the inch" after 5 stitches to the inch, "16 to 10" after 24 sts to 10 cm."""
    first = next((one for one in made if isinstance(one, Measure) and (one.unit == "st/in" or (one.unit == "st" and one.per))), None)
    if first is None:
        return None
    if measure.unit == "" and measure.per is not None and measure.per.unit in ("in", "cm"):
        return Again(replace(measure, parts=(Part(measure.value, "st"),)), 0)
    last = [one.lower for one in made[-3:] if isinstance(one, Word)]
    gets = last[-1:] != [] and (last[-1] in GETS or (last[-1] in SAYS and not THEIRS.isdisjoint(last)))
    if gets and measure.bare and ALIKE[0] < measure.value / first.value < ALIKE[1]:
        return Again(replace(measure, parts=(Part(measure.value, first.unit),), per=first.per), 0)  # "I'm getting 4 3/4"
    before = made[-2] if len(made) > 1 and isinstance(made[-1], Word) and made[-1].lower == "to" else None
    if not isinstance(before, Measure) or not before.bare or not measure.bare or shapes or first.per is None:
        return None
    if measure.value != first.per.value or measure.value not in OVER or not measure.value < before.value <= MOST_OF_A_TENSION:
        return None
    rate = replace(before, parts=(Part(before.value, "st"),), per=Part(measure.value, first.per.unit))
    return Again(replace(rate, text=f"{before.text} to {measure.text}", end=measure.end), 2)


def as_tension(span: Span) -> Measure:
    """ "26 sts to 10" as so many to 10 cm."""
    return replace(span.low, per=Part(span.high.value, OVER[span.high.value]), text=span.text, start=span.start, end=span.end)
