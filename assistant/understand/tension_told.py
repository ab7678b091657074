"""Tensions told loosely: "26 sts to 10", a second one with less said ("16 to 10", "I'm getting 4 3/4")."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grammar.query import Measure, Part, Span, Word

from .puts import Before, Put

# A tension is told over 10 cm or 4 in; the bare number says which.
OVER = {Fraction(10): "cm", Fraction(4): "in"}
LENGTHS_OF_A_TENSION = frozenset((*(Part(number, unit) for number, unit in OVER.items()), Part(Fraction(1), "in")))
COUNTED = ("st", "row")
MOST_OF_A_TENSION = 60
GETS, ALIKE = frozenset(("getting", "get", "got", "knitting", "knit")), (0.6, 1.67)
SAYS = frozenset(("is", "wants", "says", "has"))
THEIRS = frozenset(("theirs", "mine", "pattern", "pattern's", "tension", "gauge", "leaflet"))


def per_a_bare_number(before: Before, measure: Measure) -> Put | None:
    """ "30 rows per 10" as so many to 10 cm."""
    above = before.made[-2] if len(before.made) > 1 and before.word() in ("per", "/") else None
    if not isinstance(above, Measure) or above.unit not in COUNTED or above.per is not None:
        return None
    if not measure.bare or measure.value not in OVER:
        return None
    per = Part(measure.value, OVER[measure.value])
    return Put((replace(above, per=per, text=f"{above.text} per {measure.text}", end=measure.end),), 2)


def to_a_bare_number(before: Before, span: Span) -> Put | None:
    """ "26 sts to 10" as so many to 10 cm, where nothing is shaped."""
    low, high = span.low, span.high
    counted = low.unit in COUNTED and high.unit in ("", low.unit) and high.value in OVER
    if not counted or before.shapes or not high.value < low.value <= MOST_OF_A_TENSION:
        return None
    return Put((replace(low, per=Part(high.value, OVER[high.value]), text=span.text, start=span.start, end=span.end),))


def per_a_length(before: Before, length: Measure) -> Put | None:
    """ "27 per 10cm" as stitches, where the line speaks of stitches."""
    number = before.made[-2] if len(before.made) > 1 and before.word() == "per" else None
    if not before.stitches or not isinstance(number, Measure) or not number.bare:
        return None
    if length.per is not None or length.parts[0] not in LENGTHS_OF_A_TENSION:
        return None
    stitches = (Part(number.value, "st"),)
    return Put((replace(number, parts=stitches, per=length.parts[0], text=f"{number.text} per {length.text}", end=length.end),), 2)


def told_again(before: Before, measure: Measure) -> Put | None:
    """A second tension told shortly after a first: "4 1/2 to the inch" after 5 stitches to the inch, "16 to 10" after 24 sts to 10 cm."""
    measures = (one for one in before.made if isinstance(one, Measure))
    first = next((one for one in measures if one.unit == "st/in" or (one.unit == "st" and one.per is not None)), None)
    if first is None:
        return None
    if measure.unit == "" and measure.per is not None and measure.per.unit in ("in", "cm"):
        return Put((replace(measure, parts=(Part(measure.value, "st"),)),))
    if measure.bare and _gets(before) and ALIKE[0] < measure.value / first.value < ALIKE[1]:
        return Put((replace(measure, parts=(Part(measure.value, first.unit),), per=first.per),))  # "I'm getting 4 3/4"
    return _to_the_same(before, measure, first)


def _gets(before: Before) -> bool:
    """Whether what stands before says that a tension is got or wanted: "I'm getting", "the pattern wants"."""
    last = [one.lower for one in before.made[-3:] if isinstance(one, Word)]
    return last[-1:] != [] and (last[-1] in GETS or (last[-1] in SAYS and not THEIRS.isdisjoint(last)))


def _to_the_same(before: Before, measure: Measure, first: Measure) -> Put | None:
    """ "16 to 10" where the first tension was to 10 cm."""
    number = before.made[-2] if len(before.made) > 1 and before.word() == "to" else None
    if not isinstance(number, Measure) or not number.bare or not measure.bare or before.shapes or first.per is None:
        return None
    if measure.value != first.per.value or measure.value not in OVER or not measure.value < number.value <= MOST_OF_A_TENSION:
        return None
    rate = replace(number, parts=(Part(number.value, "st"),), per=Part(measure.value, first.per.unit))
    return Put((replace(rate, text=f"{number.text} to {measure.text}", end=measure.end),), 2)
