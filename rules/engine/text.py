"""Numbers as people read them: inches in fractions, metric in decimals, counts with their noun, money with its sign."""

from __future__ import annotations

import math
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

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
    return _mixed(*value.as_integer_ratio())


def _mixed(above: int, below: int) -> str:
    sign = "-" if above < 0 else ""
    whole, rest = divmod(abs(above), below)
    if not rest:
        return f"{sign}{whole}"
    return f"{sign}{whole} {rest}/{below}" if whole else f"{sign}{rest}/{below}"


def decimal(value: Number, places: int = 3) -> str:
    """A decimal with at most so many places and no trailing noughts.

    >>> decimal(Fraction(5, 2)), decimal(Fraction(1, 3)), decimal(Fraction(40))
    ('2.5', '0.333', '40')
    """
    if isinstance(value, Fraction):
        return _exact_decimal(*value.as_integer_ratio(), places)
    if abs(value) >= 10**300:
        return HUGE
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
    return _exact_text(*value.as_integer_ratio(), unit in FRACTION_UNITS) if isinstance(value, Fraction) else decimal(value)


def _exact_text(above: int, below: int, on_ruler: bool) -> str:
    if on_ruler and below <= 64 and below & (below - 1) == 0:
        return _mixed(above, below)
    return _exact_decimal(above, below, 3)


class Dress(NamedTuple):
    """What goes about a number in a unit. pence: the number is money, with two decimals. one, many: what follows it."""

    before: str
    one: str
    many: str
    pence: bool = False
    on_ruler: bool = False


@lru_cache(maxsize=1024)
def _dress(unit: str, noun: str) -> Dress:
    """How numbers of a unit are written, worked out once for each unit."""
    above, _, below = unit.partition("/")
    if above in SIGNS:
        rate = f"/{below}" if below else ""
        return Dress(SIGNS[above], rate, rate, pence=True)
    if unit in ("1", "row"):
        counted = noun or ("row" if unit == "row" else "")
        return Dress("", " " + counted, " " + plural(counted, 2)) if counted else Dress("", "", "")
    if unit == "st":
        return Dress("", " stitch", " stitches")
    if below and below[0].isdigit():
        digits = len(below) - len(below.lstrip("0123456789"))
        what = {"st": "stitches", "row": "rows"}.get(above, above)
        after = f" {what} to {below[:digits]} {below[digits:]}"
    else:
        after = f" {unit}"
    return Dress("", after, after, on_ruler=unit in FRACTION_UNITS)


def amount(value: Number, unit: str, noun: str = "") -> str:
    """A value with its unit: "2 1/2 in", "6 cm", "7 strips", "£6.40", "£8/m", "92 %".

    unit: a canonical unit; noun: for a plain count, what is counted.
    """
    if isinstance(value, Fraction):
        return _exact_amount(*value.as_integer_ratio(), unit, noun)
    dress = _dress(unit, noun)
    number = _money(value, dress) if dress.pence else dress.before + decimal(value)
    return number + (dress.one if value == 1 else dress.many)


def _exact_amount(above: int, below: int, unit: str, noun: str) -> str:
    """`amount` of above/below, in lowest terms: in whole numbers, since it is wanted many times in each answer."""
    dress = _dress(unit, noun)
    number = _money(above / below, dress) if dress.pence else dress.before + _exact_text(above, below, dress.on_ruler)
    return number + (dress.one if above == below else dress.many)


def _money(value: float, dress: Dress) -> str:
    if dress.many:  # a price for each of something
        return f"{dress.before}{value:.2f}"
    return f"{'-' if value < 0 else ''}{dress.before}{abs(value):.2f}"


def lowest(value: Fraction | int, size: Fraction) -> tuple[int, int]:
    """value / size as two whole numbers in lowest terms; size is more than nothing."""
    above, below = value.as_integer_ratio()
    size_above, size_below = size.as_integer_ratio()
    above, below = above * size_below, below * size_above
    shared = math.gcd(above, below)
    return above // shared, below // shared


def shown(value: Number, unit: str, noun: str = "") -> str:
    """A value in base units, shown in the unit."""
    size = factor(unit)
    if isinstance(value, Fraction):
        return _exact_amount(*lowest(value, size), unit, noun)
    return amount(value / float(size), unit, noun)


def plain_in(value: Number | int, unit: str) -> int | float:
    """A value in base units as JSON carries it: a number of the unit."""
    size = factor(unit)
    return plain(value / float(size)) if isinstance(value, float) else _exact_plain(*lowest(value, size))


def _exact_plain(above: int, below: int) -> int | float:
    if below == 1:
        return above
    if above.bit_length() - below.bit_length() > HUGE_BITS:
        return int(Fraction(above, below))
    number = above / below
    return int(number) if number.is_integer() and abs(number) < 1e15 else number


def plain(value: Number) -> int | float:
    """A number as JSON carries it: whole numbers as int, the rest as float."""
    if isinstance(value, Fraction):
        return _exact_plain(*value.as_integer_ratio())
    number = float(value)
    return int(number) if number.is_integer() and abs(number) < 1e15 else number
