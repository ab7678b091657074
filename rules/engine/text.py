"""Numbers as people read them: inches in fractions, metric in decimals, counts with their noun, money with its sign."""

from __future__ import annotations

import math
from fractions import Fraction

from .request import Number
from .units import SIGNS, factor

FRACTION_UNITS = frozenset(("in", "ft", "yd", "oz", "lb"))
PLURALS = {"box": "boxes", "piece": "pieces", "patch": "patches", "inch": "inches", "half": "halves", "cross": "crosses"}


def plural(noun: str, number: object) -> str:
    """A count's noun in the singular or plural.

    >>> plural("strip", 7), plural("patch", 2), plural("body", 2)
    ('strips', 'patches', 'bodies')
    """
    if number == 1:
        return noun
    if noun in PLURALS:
        return PLURALS[noun]
    if noun.endswith(("s", "x", "ch", "sh")):
        return noun + "es"
    if noun.endswith("y") and noun[-2:-1] not in "aeiou":
        return noun[:-1] + "ies"
    return noun + "s"


def mixed(value: Fraction) -> str:
    """A mixed number: 5/2 is "2 1/2".

    >>> mixed(Fraction(5, 2)), mixed(Fraction(-3, 4)), mixed(Fraction(3))
    ('2 1/2', '-3/4', '3')
    """
    sign = "-" if value < 0 else ""
    size = abs(value)
    whole, numerator, denominator = size.numerator // size.denominator, size.numerator % size.denominator, size.denominator
    if not numerator:
        return f"{sign}{whole}"
    return f"{sign}{whole} {numerator}/{denominator}" if whole else f"{sign}{numerator}/{denominator}"


def decimal(value: Number, places: int = 3) -> str:
    """A decimal with at most so many places and no trailing noughts.

    >>> decimal(Fraction(5, 2)), decimal(Fraction(1, 3)), decimal(Fraction(40))
    ('2.5', '0.333', '40')
    """
    if isinstance(value, Fraction):
        return _exact_decimal(value.numerator, value.denominator, places)
    if abs(value) >= 10**300:
        return HUGE
    if isinstance(value, Fraction):  # ties away from nought, as on paper; a float cannot hold most of them
        value = Fraction(math.floor(abs(value) * 10**places + Fraction(1, 2)), 10**places) * (1 if value > 0 else -1) or value
    text = f"{float(value):.{places}f}".rstrip("0").rstrip(".") if abs(value) < 10**12 else f"{float(value):.6g}"
    if text in ("0", "-0") and value:
        return f"{float(value):.2g}"
    return text


HUGE = "a number of over 300 digits"
LARGE_BITS, HUGE_BITS = 50, 1000


def _exact_decimal(above: int, below: int, places: int) -> str:
    """The decimal of above/below, ties up, worked in whole numbers: it is wanted many times in each answer."""
    size = abs(above)
    if size.bit_length() - below.bit_length() > LARGE_BITS:
        return HUGE if size.bit_length() - below.bit_length() > HUGE_BITS else f"{above / below:.6g}"
    sign = "-" if above < 0 else ""
    if below == 1:
        return f"{sign}{size}"
    scale = 10**places
    whole, rest = divmod((2 * size * scale + below) // (2 * below), scale)
    if not whole and not rest:
        return f"{above / below:.2g}"
    digits = f"{rest:0{places}d}".rstrip("0") if rest else ""
    return f"{sign}{whole}.{digits}" if digits else f"{sign}{whole}"


def number_text(value: Number, unit: str) -> str:
    """The number alone, as a fraction where rulers have one (to 1/64), else as a decimal."""
    if unit in FRACTION_UNITS and isinstance(value, Fraction):
        below = value.denominator
        if below <= 64 and below & (below - 1) == 0:
            return mixed(value)
    return decimal(value)


def amount(value: Number, unit: str, noun: str = "") -> str:
    """A value with its unit: "2 1/2 in", "6 cm", "7 strips", "£6.40", "£8/m", "92 %".

    unit: a canonical unit; noun: for a plain count, what is counted.
    """
    if unit in SIGNS:
        sign = "-" if value < 0 else ""
        return f"{sign}{SIGNS[unit]}{abs(float(value)):.2f}"
    above, _, below = unit.partition("/")
    if below and above in SIGNS:
        return f"{SIGNS[above]}{float(value):.2f}/{below}"
    if unit == "1":
        shown = number_text(value, unit)
        return f"{shown} {plural(noun, value)}" if noun else shown
    if unit == "st":
        return f"{decimal(value)} {'stitch' if value == 1 else 'stitches'}"
    if unit == "row":
        noun = noun or "row"
        return f"{decimal(value)} {plural(noun, value)}"
    if below and below[0].isdigit():
        digits = len(below) - len(below.lstrip("0123456789"))
        what = {"st": "stitches", "row": "rows"}.get(above, above)
        return f"{decimal(value)} {what} to {below[:digits]} {below[digits:]}"
    return f"{number_text(value, unit)} {unit}"


def shown(value: Number, unit: str, noun: str = "") -> str:
    """A value in base units, shown in the unit."""
    size = factor(unit)
    return amount(value / size if isinstance(value, Fraction) else value / float(size), unit, noun)


def plain(value: Number) -> int | float:
    """A number as JSON carries it: whole numbers as int, the rest as float."""
    if isinstance(value, Fraction) and value.denominator == 1:
        return value.numerator
    if isinstance(value, Fraction) and value.numerator.bit_length() - value.denominator.bit_length() > HUGE_BITS:
        return int(value)
    number = float(value)
    return int(number) if number.is_integer() and abs(number) < 1e15 else number
