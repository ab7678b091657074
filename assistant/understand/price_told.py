"""Prices told loosely: "one metre costs £8", "£24-a-metre", "3 5/8 yards at $11.99", "a tenner"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grammar.query import Mark, Measure, Part, Word

from .puts import Before, Put

MONEY = frozenset(("GBP", "USD", "EUR", "CAD", "AUD", "pound"))
COSTS = frozenset(("costs", "cost", "is", "=", "at", "for", "was"))
# What cloth is sold by, straight behind a price.
BY = {"metre": "m", "meter": "m", "m": "m", "yard": "yd", "yd": "yd"}
PACKS = frozenset(("ball", "skein", "hank", "reel", "cone", "pack", "spool", "roll", "cake", "wide", "width", "piece", "length"))
FOR_ALL = frozenset(("each", "apiece", "the", "for", "in", "all", "altogether", "total", "off", "a", "per"))
NOTES = {"fiver": 5, "tenner": 10}


def of_one(before: Before, money: Measure) -> Put | None:
    """Money behind one of a length and a verb of costing: "one metre costs £8"."""
    below = before.made[-2] if len(before.made) > 1 and before.word() in COSTS else None
    if money.unit not in MONEY or not isinstance(below, Measure) or not _is_one(below, ("m", "yd", "ft")):
        return None
    return Put((replace(money, per=below.parts[0], text=f"{money.text} {below.text}", start=below.start),), 2)


def for_one(before: Before, length: Measure) -> Put | None:
    """Money for one of a length: "€11 for one metre"."""
    price = before.made[-2] if len(before.made) > 1 and before.word() == "for" else None
    if not isinstance(price, Measure) or price.unit not in MONEY or price.per is not None or not _is_one(length, ("m", "yd")):
        return None
    return Put((replace(price, per=length.parts[0], text=f"{price.text} for {length.text}", end=length.end),), 2)


def _is_one(length: Measure, units: tuple[str, ...]) -> bool:
    """Whether a length is one of a unit, said in words."""
    return length.spelled and length.per is None and length.value == 1 and length.unit in units


def by_the(before: Before, word: Word) -> Put | None:
    """Money before what it is by: "£24-a-metre wool", "$9.99 yd", "$11.50 by the yard"."""
    unit = BY.get(word.lower.removeprefix("-").removeprefix("a-").removeprefix("per-"))
    if unit is None:
        return None
    said = "by the " if (before.word(2), before.word(1)) == ("by", "the") else ""
    back = 3 if said else 1
    price = before.made[-back] if len(before.made) >= back else None
    if not isinstance(price, Measure) or price.unit not in MONEY or price.per is not None:
        return None
    return Put((replace(price, per=Part(Fraction(1), unit), text=f"{price.text} {said}{word.text}", end=word.end),), back)


def sold_at(before: Before, money: Measure) -> Put | None:
    """Money behind a length and "at" is for one of it: "3 5/8 yards at $11.99"; for a packet of such a length it is not."""
    for_all = isinstance(before.next, Word) and before.next.lower in FOR_ALL
    if money.unit not in MONEY or money.per is not None or before.word() not in ("at", "@") or for_all:
        return None
    for spot in range(len(before.made) - 2, max(-1, len(before.made) - 6), -1):
        chunk = before.made[spot]
        if isinstance(chunk, Mark):
            return None
        if isinstance(chunk, Measure):
            packed = any(isinstance(one, Word) and one.lower.rstrip("s") in PACKS for one in before.made[max(0, spot - 2) : -1])
            bought = chunk.per is None and len(chunk.parts) == 1 and chunk.unit in ("m", "yd") and not packed
            return Put((replace(money, per=Part(Fraction(1), chunk.unit)),)) if bought else None
    return None


def note(before: Before, word: Word) -> Put | None:
    """A bank note by its name."""
    if word.lower not in NOTES:
        return None
    return Put((Measure((Part(Fraction(NOTES[word.lower]), "GBP"),), word.text, word.start, word.end),))
