"""Changes with a sign: "took 1 1/2 in out of the bodice, put 5 cm on the skirt", "+2 in, -3/4 in"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grammar.query import Measure
from rules.engine.declare import Input
from rules.engine.kinds import LENGTH
from rules.engine.request import Given, Item

from ..lexicon import Match
from ..tokens import tokens
from ..values import Line, Value, base_value

MORE, LESS = 1, -1


def _folded(*words: str) -> frozenset[str]:
    return frozenset(folded for word in words for folded in tokens(word))


# Before the number, and good for the numbers after it until another is met.
VERBS = {
    MORE: _folded(
        "add",
        "added",
        "adding",
        "put",
        "lengthen",
        "lengthened",
        "lengthening",
        "extended",
        "extend",
        "insert",
        "inserted",
        "dropped",
        "plus",
        "gained",
        "gain",
        "give",
        "gave",
        "lowered",
    ),
    LESS: _folded(
        "took",
        "take",
        "taken",
        "taking",
        "shorten",
        "shortened",
        "shortening",
        "removed",
        "remove",
        "lost",
        "lifted",
        "lift",
        "lose",
        "raised",
        "folded",
        "minus",
        "less",
        "cut",
        "trimmed",
        "trim",
        "subtract",
        "subtracted",
        "pinned",
        "tucked",
    ),
}
# After the number, for that number alone.
AFTER = {
    MORE: frozenset(("longer", "added", "extra", "down", "more")),
    LESS: frozenset(("shorter", "off", "out", "up", "away", "removed", "less")),
}
# "Let the skirt down", "let it out": what is let, in few words, stands between.
LET, LET_WHAT = frozenset(("down", "out")), 4
PIECES = _folded("sleeve", "skirt", "dress", "leg", "piece", "bodice", "jacket", "coat", "trouser", "hem", "pattern", "strap", "top")
ARTICLES = (["a"], ["an"], ["the"], ["my"], ["her"], ["his"])
WAS = _folded("was", "originally", "original", "pattern", "from", "length", "long", "started")


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """Every length of the line that was put on or taken out, with its sign; those that say neither are left alone."""
    items: list[Item] = []
    taken: list[int] = []
    unit = next((part.unit for value in values for measure in value.members for part in measure.parts if part.unit), "")
    for value in values:
        for measure in value.members if value.shape in ("one", "series") else ():
            sign = typed_sign(measure) or _sign(line, value)
            if not sign or measure.per is not None or (measure.bare and not unit):
                break
            items.append(item_of(measure, sign, unit))
        else:
            if value.shape in ("one", "series"):
                taken.append(value.number)
    if not items:
        return None, frozenset()
    return Given(tuple(items), items[0].unit, ", ".join(one.text for one in items)), frozenset(taken)


def typed_sign(measure: Measure) -> int:
    """The sign a measure was typed with, 0 for none."""
    return {"+": MORE, "-": LESS}.get(measure.sign, 0)


def item_of(measure: Measure, sign: int, unit: str) -> Item:
    """A measure put on or taken out, as an entry of a list of changes. unit: for a bare number."""
    plain = replace(measure, sign="")
    value, own = base_value(plain, LENGTH, unit)
    text = measure.text.lstrip("+-−– ")
    return Item(
        Fraction(value) * sign, own, ("" if sign == MORE else "−") + (f"{text} {unit}" if measure.bare else text)
    )


def _sign(line: Line, value: Value) -> int:
    """What the words about a number say was done: those just after it first, else the last verb before it."""
    behind = [line.text[start:end].lower() for start, end in line.origin[value.last : value.last + 1]]
    if behind in (["long"], ["now"]) or _is_now(line, value):
        return 0  # "on a sleeve 58 cm long", "it's now 57 cm" tell what there was or is, and no change to it
    if behind and line.words[value.last] in PIECES and line.words[value.first - 1 : value.first] in ARTICLES:
        return 0  # "shortened a 62 cm sleeve by 2.5 cm"
    if _put_on_again(line, value):
        return MORE
    return _after(line, value.last) or _before(line, value.first)


def _put_on_again(line: Line, value: Value) -> bool:
    """Whether one more length is put on: "then another half inch on at the hem"."""
    before, after = line.words[max(0, value.first - 2) : value.first], line.words[value.last : value.last + 1]
    return after == ["on"] and ("another" in before or "extra" in before)


def _is_now(line: Line, value: Value) -> bool:
    """Whether a number is what came of the changes: "it's now 57 cm", "ended up 57 cm"."""
    before = line.words[max(0, value.first - 3) : value.first]
    return "now" in before or before[-2:] in (["ended", "up"], ["end", "up"], ["came", "to"])


def _after(line: Line, spot: int) -> int:
    for start, end in line.origin[spot : spot + 2]:
        word = line.text[start:end].lower()  # as typed: "longer" and "long" are folded into one
        if word in (",", ";", ".", "and"):
            return 0
        for sign, known in AFTER.items():
            if word in known:
                return sign
    return 0


def _before(line: Line, spot: int) -> int:
    for back in range(spot - 1, -1, -1):
        word = line.words[back]
        if word in ("+", "-") and back == spot - 1:
            return MORE if word == "+" else LESS
        if word in WAS and back == spot - 1:
            return 0
        if word in (".", "?"):
            return 0
        if word in LET and "let" in line.words[max(0, back - LET_WHAT) : back]:
            return MORE
        for sign, known in VERBS.items():
            if word in known and back not in line.at_value:
                return sign
    return 0
