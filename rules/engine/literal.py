"""Values written in declarations: "40 in", "2 1/2 in", "92 %", "1/2 in | 1.2 cm", "20 in..60 in by 1/2 in"."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache

from .text import amount
from .units import factor, system_of


def number(text: str) -> Fraction:
    """A number as declarations write it: 2, 0.75, 5/8 or 2 1/2. Raises ValueError for anything else."""
    return sum((Fraction(part) for part in text.split()), Fraction(0))


@lru_cache(maxsize=2048)
def literal(text: str, system: str = "in") -> tuple[Fraction, str, str]:
    """(value in base units, unit, text) of a declared value; "inches | metric" picks by the question's system.

    >>> literal("1/2 in | 1.2 cm", "cm")
    (Fraction(12, 1), 'cm', '1.2 cm')
    >>> literal("2 row")[2], literal("1 st")[2]
    ('2 rows', '1 stitch')
    """
    inch, bar, metric = text.partition("|")
    chosen = (metric if bar and system == "cm" else inch).strip()
    words = chosen.split()
    unit = ""
    if words and not words[-1][0].isdigit() and words[-1][0] not in "-.":
        unit = words.pop()
    value = number(" ".join(words))
    base = value * factor(unit)
    if unit == "money" or unit.startswith("money/"):
        chosen = " ".join(words)
    elif unit in ("st", "row"):
        chosen = amount(value, unit)
    return base, unit, chosen


@lru_cache(maxsize=2048)
def bounds(text: str, system: str = "in") -> tuple[Fraction | None, Fraction | None]:
    """The ends, in base units, of a declared range "5 cm..20 m" (either may be left out).

    >>> bounds("1..12")
    (Fraction(1, 1), Fraction(12, 1))
    """
    low, _, high = text.partition("..")
    ends = [literal(end.strip(), system)[0] if end.strip() else None for end in (low, high)]
    return ends[0], ends[1]


def in_system(unit: str, system: str) -> bool:
    """Whether a unit belongs to the system or to neither."""
    return system_of(unit) in ("", system)
