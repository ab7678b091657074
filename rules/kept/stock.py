"""What is in hand, less what is used of it, and whether it is enough."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..engine.answer import Line
from ..engine.text import shown


class NotSoMuch(Exception):
    """More is to be taken than there is."""


@dataclass(frozen=True, slots=True)
class Enough:
    """Whether what is in hand is enough. spare: what is left over, negative for what is short; base units."""

    enough: bool
    spare: Fraction
    line: Line


def take(have: Fraction, used: Fraction, unit: str, noun: str = "") -> tuple[Fraction, Line]:
    """What is left when some is used, and the line of working. Base units. Raises NotSoMuch."""
    if used > have:
        raise NotSoMuch
    left = have - used
    numbers = f"{shown(have, unit, noun)} − {shown(used, unit, noun)}"
    return left, Line(
        "Take what is used from what is in hand", "left = in hand − used", numbers, shown(left, unit, noun)
    )


def put(have: Fraction, more: Fraction) -> Fraction:
    """What is in hand when more of it comes."""
    return have + more


def enough(have: Fraction, need: Fraction, unit: str, noun: str = "") -> Enough:
    """Whether one amount covers another of the same kind, both in base units.

    >>> enough(Fraction(1500), Fraction(800), "cm").line.result
    '70 cm'
    """
    spare = have - need
    numbers = f"{shown(have, unit, noun)} − {shown(need, unit, noun)}"
    return Enough(
        spare >= 0,
        spare,
        Line("Take what is needed from what is in hand", "spare = in hand − needed", numbers, shown(spare, unit, noun)),
    )
