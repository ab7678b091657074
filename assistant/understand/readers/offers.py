"""Cloths on offer, each a width and a price: "in 115 at £9 a metre and in 150 at £11 a metre"."""

from __future__ import annotations

from dataclasses import replace

from rules.engine.declare import Input
from rules.engine.kinds import LENGTH, PRICE
from rules.engine.request import Given, Item

from ..lexicon import Match
from ..values import Line, Value, base_value, kinds_of

FEWEST = 2
# A bare width of cloth from here up is in centimetres; the widest cloth counted in inches is 120 in.
LEAST_CENTIMETRES = 80


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """Each price a length with the width said nearest before it (or, when none is, just after it)."""
    single = _by_the_same_length([value for value in values if value.shape == "one"])
    prices = [value for value in single if kinds_of(value.main)[:1] == ("price a length",) and value.main.per]
    widths = [value for value in single if value.main.per is None and not value.soft and "length" in kinds_of(value.main)]
    ways = [pairs for pairs in (_before(prices, widths), _after(prices, widths)) if pairs]
    pairs = min(ways, key=lambda pairs: sum(abs(width.first - price.first) for width, price in pairs), default=[])
    if len(pairs) < FEWEST:
        return None, frozenset()
    items = tuple(_offer(width, price) for width, price in pairs)
    taken = frozenset(value.number for pair in pairs for value in pair)
    return Given(items, items[0].unit, "; ".join(each.text for each in items)), taken


def _by_the_same_length(values: list[Value]) -> list[Value]:
    """A sum of money after a price a length is one too, by the same length: "£12 a metre or 110 cm wide at £10"."""
    rates = [value.main.per for value in values if kinds_of(value.main)[:1] == ("price a length",) and value.main.per]
    if len(rates) != 1:
        return values
    return [
        replace(value, members=(replace(value.main, per=rates[0]),)) if kinds_of(value.main)[:1] == ("money",) else value
        for value in values
    ]


def _before(prices: list[Value], widths: list[Value]) -> list[tuple[Value, Value]]:
    """Prices each with the width before it, none of them shared; empty when one has none."""
    pairs, last = [], 0
    for price in prices:
        near = [width for width in widths if last <= width.first < price.first]
        if not near:
            return []
        pairs.append((near[-1], price))
        last = price.first
    return pairs


def _after(prices: list[Value], widths: list[Value]) -> list[tuple[Value, Value]]:
    pairs = []
    for index, price in enumerate(prices):
        end = prices[index + 1].first if index + 1 < len(prices) else None
        near = [width for width in widths if width.first > price.first and (end is None or width.first < end)]
        if not near:
            return []
        pairs.append((near[0], price))
    return pairs


def _offer(width: Value, price: Value) -> Item:
    """value: the width in mm; count: the price in money a mm."""
    measure = width.main
    guess = "cm" if measure.value >= LEAST_CENTIMETRES else "in"
    size, unit = base_value(measure, LENGTH, guess if measure.bare else "")
    text = f"{width.text} {guess}" if measure.bare else width.text
    rate, _ = base_value(price.main, PRICE)
    return Item(size, unit, f"{text} at {price.text}", rate, text)
