"""A shopping list: equal things added over projects, what is in hand taken off, each rounded once, money totalled."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from fractions import Fraction

from ..engine import rounding as table
from ..engine.answer import Line
from ..engine.kinds import ALL_KINDS
from ..engine.rounding import Rounding, Step, apply
from ..engine.text import shown
from ..engine.units import factor
from .spending import Spent, totals

KINDS = {kind.name: kind for kind in ALL_KINDS}
ROUNDINGS: Mapping[str, Rounding] = {line.name: line for line in vars(table).values() if isinstance(line, Rounding)}
# Sold off the roll by the quarter yard or 10 cm rather than by the eighth of a yard.
TAPES = frozenset((
    "tape", "ribbon", "elastic", "cord", "piping", "webbing", "lace", "braid", "trimming", "trim", "rickrack",
    "zip", "strap", "string"
))  # fmt: skip


@dataclass(frozen=True, slots=True)
class Need:
    """Something a project takes. value: exact, in base units of its kind. rounding: the name of its line of the table.

    thing: what makes two needs equal, besides the kind and the width. width: mm, or None when it does not matter.
    """

    thing: str
    called: str
    kind: str
    value: Fraction
    project: str = ""
    rounding: str = ""
    noun: str = ""
    width: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Had:
    """Something in hand, or already used or bought for a project (which is then set). value: None is all of it."""

    thing: str
    kind: str
    value: Fraction | None
    project: str = ""
    width: Fraction | None = None


@dataclass(frozen=True, slots=True)
class Price:
    """value: for one base unit of the kind, or for one piece. currency: its code."""

    value: Fraction
    currency: str


@dataclass(frozen=True, slots=True)
class Entry:
    """A line of the list. need, in_hand and buy: base units; buy is as the shop sells. cost: None without a price."""

    called: str
    need: Fraction
    in_hand: Fraction
    buy: Fraction
    unit: str
    noun: str
    width: Fraction | None
    projects: tuple[str, ...]
    cost: tuple[str, Fraction] | None
    working: tuple[Line, ...]

    def show(self, value: Fraction) -> str:
        return shown(value, self.unit, self.noun)


@dataclass(frozen=True, slots=True)
class Shopping:
    """The whole list, and what it comes to in each currency."""

    entries: tuple[Entry, ...]
    totals: tuple[Spent, ...]

    @property
    def unpriced(self) -> tuple[str, ...]:
        return tuple(entry.called for entry in self.entries if entry.buy and entry.cost is None)


def shopping(needs: Sequence[Need], used: Iterable[Had], stock: Iterable[Had], prices: Mapping[str, Price], system: str,
             shop_step: Fraction | None = None) -> Shopping:  # fmt: skip
    """What is still to be bought for the needs.

    used: what each project has had already; stock: what is in hand for all. prices: by thing. system: "in" or "cm".
    shop_step: the step the shop sells lengths by, in mm, or None for the usual one.
    """
    groups: dict[tuple[str, str, Fraction | None], list[Need]] = {}
    for need in needs:
        groups.setdefault((need.thing, need.kind, need.width), []).append(need)
    had = list(used)
    left = [_Left(one, one.value or Fraction(0)) for one in stock]
    entries = []
    for group in groups.values():
        wanted = [max(need.value - _had(need, group, had), Fraction(0)) for need in group]
        in_hand = _draw(group[0], sum(wanted, Fraction(0)), left)
        entries.append(_entry(group, wanted, in_hand, prices, system, shop_step))
    return Shopping(tuple(entries), totals(entry.cost for entry in entries if entry.cost is not None))


def _had(need: Need, group: Sequence[Need], had: Iterable[Had]) -> Fraction:
    """How much of a need its project has had; shared out over equal needs of one project, the first one first."""
    mine = [
        one
        for one in had
        if one.project == need.project and one.kind in (need.kind, "") and fits(one.thing, need.thing)
    ]
    if any(one.value is None for one in mine):
        return need.value
    rest = sum((one.value or Fraction(0) for one in mine), Fraction(0))
    for other in group:
        if other is need:
            break
        if other.project == need.project:
            rest -= min(rest, other.value)
    return min(rest, need.value)


def fits(thing: str, needed: str) -> bool:
    """Whether a thing is the one needed: all its words are among those of the need ("zip" for a "20 cm zip")."""
    return set(thing.split()) <= set(needed.split())


@dataclass(slots=True)
class _Left:
    """What is left of a thing in hand while it is shared out."""

    of: Had
    value: Fraction


def _draw(need: Need, wanted: Fraction, stock: Iterable[_Left]) -> Fraction:
    """What the stock gives towards a need; cloth that is narrower than needed gives nothing. What is drawn is gone."""
    got = Fraction(0)
    for left in stock:
        wide = left.of.width is None or need.width is None or left.of.width >= need.width
        if left.of.kind == need.kind and left.of.thing == need.thing and wide:
            part = min(left.value, wanted - got)
            left.value -= part
            got += part
    return got


def _entry(
    group: Sequence[Need],
    wanted: Sequence[Fraction],
    in_hand: Fraction,
    prices: Mapping[str, Price],
    system: str,
    shop_step: Fraction | None,
) -> Entry:
    first = group[0]
    how = rounding_of(first, system, shop_step)
    unit = how.unit if how else KINDS[first.kind].inch if system == "in" else KINDS[first.kind].metric
    need = sum(wanted, Fraction(0))
    short = need - in_hand
    buy = apply(short, how) if how else short
    lines = []
    if len(wanted) > 1:
        lines.append(
            _line(
                "Add what the projects still take",
                "needed = all of it together",
                [*wanted],
                " + ",
                need,
                unit,
                first.noun,
            )
        )
    if in_hand:
        lines.append(
            _line(
                "Take off what is in hand", "to buy = needed − in hand", [need, in_hand], " − ", short, unit, first.noun
            )
        )
    if buy != short and how:
        lines.append(
            Line("Round it up once, as it is sold", "", shown(short, unit, first.noun), shown(buy, unit, first.noun))
        )
    price = prices.get(first.thing)
    cost = None
    if price is not None and buy:
        cost = (price.currency, price_of_all(buy, price.value))
        each = price.value * factor(unit)
        numbers = f"{shown(buy, unit, first.noun)} × {_money(each, price.currency)}{'' if unit == '1' else '/' + unit}"
        lines.append(Line("Multiply by the price", "cost = to buy × price", numbers, _money(cost[1], price.currency)))
    projects = tuple(dict.fromkeys(one.project for one in group if one.project))
    return Entry(first.called, need, in_hand, buy, unit, first.noun, first.width, projects, cost, tuple(lines))


def _money(value: Fraction, currency: str) -> str:
    return shown(value * factor(currency), currency)


def _line(step: str, formula: str, parts: Sequence[Fraction], sign: str, made: Fraction, unit: str, noun: str) -> Line:
    return Line(step, formula, sign.join(shown(part, unit, noun) for part in parts), shown(made, unit, noun))


def rounding_of(need: Need, system: str, shop_step: Fraction | None) -> Step | None:
    """How a thing is sold: a length by its line of the rounding table or the shop's own step, a count whole."""
    if need.kind == "count":
        return table.COUNT_UP.of(system)
    line = ROUNDINGS.get(need.rounding)
    if line is None and need.kind == "length":
        line = table.BUY_TAPE if TAPES & set(need.thing.split()) else table.BUY_CLOTH
    if line is None:
        return None
    how = line.of(system)
    if shop_step is not None and line.bought:
        return Step(how.direction, shop_step / factor(how.unit), how.unit)
    return how


def price_of_all(value: Fraction, price: Fraction) -> Fraction:
    """What an amount costs at a price, to the penny. value: base units, or a count; price: for one of those."""
    return apply(value * price, Step("near", Fraction(1, 100), "money"))
