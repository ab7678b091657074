"""What was bought, line by line: "1.5 m at €14 a metre, three zips at €2.20 each, and wadding for €29.95"."""

from __future__ import annotations

from fractions import Fraction

from rules.engine.declare import Input
from rules.engine.kinds import COUNT, LENGTH, MONEY, PRICE
from rules.engine.request import Given, Item

from ..lexicon import Match
from ..values import MONEYS, Line, Value, base_value, kinds_of

EACH = frozenset(("each", "apiece", "a", "per", "ea"))
AT = frozenset(("at", "@", "x", "×"))
FEWEST = 2


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """Two or more things with their prices, each an amount of money; None when a number has no part in any."""
    items: list[Item] = []
    taken: list[int] = []
    waiting: Value | None = None
    for value in values:
        if value.shape != "one" or "percentage" in kinds_of(value.main)[:1]:
            continue
        if _is_purse(line, value):
            continue
        if not _is_money(value):
            if waiting is not None and not waiting.soft:
                return None, frozenset()
            waiting = value
            continue
        if waiting is not None and not {";", "."}.isdisjoint(line.words[waiting.last : value.first]):
            return None, frozenset()  # "lining at £6.40, 2.25 m; interfacing at £4.80": whose the amount is is not plain
        made = _bought(line, waiting, value)
        if made is None:
            return None, frozenset()
        items.append(made)
        taken += [value.number, *([waiting.number] if waiting is not None else [])]
        waiting = None
    if len(items) < FEWEST or (waiting is not None and not waiting.soft):
        return None, frozenset()
    return Given(tuple(items), items[0].unit, "; ".join(each.text for each in items)), frozenset(taken)


def _is_purse(line: Line, value: Value) -> bool:
    """Whether a sum of money is what there is to spend: "change from £30", "out of a £20 note", "is £25 enough"."""
    if not _is_money(value) or value.main.per is not None:
        return False
    before, after = line.words[max(0, value.first - 3) : value.first], line.words[value.last : value.last + 2]
    held = before[:-1] if before[-1:] in (["a"], ["my"]) else before
    return held[-1:] in (["from"], ["have"]) or held[-2:] == ["out", "of"] or "budget" in before or "enough" in after


def _is_money(value: Value) -> bool:
    measure = value.main
    if measure.unit in MONEYS or measure.unit == "pound":
        return True
    return measure.per is not None and kinds_of(measure)[:1] == ("price a length",)


def _bought(line: Line, amount: Value | None, price: Value) -> Item | None:
    """One line: a length at a price a length, a number of things at a price each, or a sum of money."""
    kinds = kinds_of(price.main)
    text = line.text[(amount or price).start : price.end].strip()
    if kinds[:1] == ("price a length",):
        if amount is None or "length" not in kinds_of(amount.main) or amount.main.bare:
            return None
        rate, unit = base_value(price.main, PRICE)
        length, _ = base_value(amount.main, LENGTH)
        return Item(length * rate, unit.partition("/")[0], f"{amount.text} × {price.text}", label=text)
    money, unit = base_value(price.main, MONEY)
    count = _count(line, amount, price)
    if count is None:
        return None
    words = text if amount is not None else _thing(line, price)
    return Item(money * count, unit, price.text if count == 1 else f"{count} × {price.text}", label=words)


def _count(line: Line, amount: Value | None, price: Value) -> Fraction | None:
    """How many at this price: the number before it when the price is for each, one when it is for all of them."""
    if amount is None:
        return Fraction(1)
    between = line.words[amount.last : price.first]
    if "length" in kinds_of(amount.main) and not amount.main.bare:
        # "half a metre of ribbon for £2", but "3 1/2 yd of background at $12.75" a yard
        return amount.main.value if AT.intersection(between) and len(amount.main.parts) == 1 else Fraction(1)
    after = line.words[price.last : price.last + 1]
    number = base_value(amount.main, COUNT)[0]
    if EACH.intersection(after) or AT.intersection(between):
        return number
    return Fraction(1) if number == 1 or "for" in between else None


def _thing(line: Line, price: Value) -> str:
    """What a price without a number is for: the words since the last comma or number."""
    first = price.first
    while first > 0 and first - 1 not in line.at_value and line.words[first - 1] not in (",", ".", ";", "and", ":",
        "+", "\n"):
        first -= 1
    return line.text[line.origin[first][0] : price.end]
