"""Alterations to a pattern among other numbers: "lengthened 5 cm", "shorten the sleeves by 2 cm", "3 cm longer"."""

from __future__ import annotations

from rules.engine.declare import Input
from rules.engine.request import Given

from ..lexicon import Match
from ..tokens import tokens
from ..values import Line, Value
from .changes import LESS, MORE, item_of, typed_sign

# How far before a number its verb may stand, other numbers not crossed.
REACH = 7
VERBS = {
    **dict.fromkeys(("lengthen", "lengthened", "lengthening"), MORE),
    **dict.fromkeys(("shorten", "shortened", "shortening"), LESS),
}
AFTER = {"longer": MORE, "shorter": LESS}
PLACES = frozenset(
    word
    for place in ("bodice", "skirt", "sleeve", "hem", "back", "front", "leg", "trousers", "body", "top")
    for word in tokens(place)
)


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """Every length that is said to be put on or taken out; all other numbers are left alone."""
    items, taken = [], []
    signs: dict[int, int] = {}
    unit = next((part.unit for value in values for measure in value.members for part in measure.parts if part.unit), "")
    for value in values:
        if value.shape != "one" or value.main.per is not None or (value.main.bare and not unit):
            continue
        sign = typed_sign(value.main) or _after(line, value) or _before(line, value, signs)
        if sign:
            signs[value.last] = sign
            items.append(item_of(value.main, sign, unit))
            taken.append(value.number)
    if not items:
        return None, frozenset()
    return Given(tuple(items), items[0].unit, ", ".join(one.text for one in items)), frozenset(taken)


def _after(line: Line, value: Value) -> int:
    if value.last >= len(line.words):
        return 0
    start, end = line.origin[value.last]
    return AFTER.get(line.text[start:end].lower(), 0)  # as typed: "longer" and "long" are folded into one


def _before(line: Line, value: Value, signs: dict[int, int]) -> int:
    """The sign of the verb before a number, or of the number before it when a place parts them ("and the hem by 1
    cm").
    """
    named = False
    for spot in range(value.first - 1, max(-1, value.first - 1 - REACH), -1):
        if spot in line.at_value:
            return signs.get(line.at_value[spot].last, 0) if named else 0
        start, end = line.origin[spot]
        word = line.text[start:end].lower()
        if word in (".", ";", "?"):
            return 0
        if word in VERBS:
            return VERBS[word]
        named = named or line.words[spot] in PLACES
    return 0
