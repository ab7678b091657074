"""The bench on which a plan is worked: its parts' runs so far, and where a part's values come from."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import Any

from .answer import Answer, Result
from .declare import Input
from .kinds import COUNT
from .literal import literal
from .plan import Buy, Costs, Fixed, Pieces, Source, Told
from .request import Cut, Given, Item
from .run import Run
from .text import amount


@dataclass(slots=True)
class Bench:
    """A plan being worked. runs: part name -> its run; bought: step of the plan -> (what, result, its cost or None)."""

    run: Run
    runs: dict[str, Run] = field(default_factory=dict)
    parts: list[tuple[str, Answer]] = field(default_factory=list)
    values: dict[str, Any] = field(default_factory=dict)
    bought: dict[str, tuple[Buy, Result, Result | None]] = field(default_factory=dict)
    pieces: list[Cut] = field(default_factory=list)
    rows: list[tuple[tuple[Any, ...], tuple[str, ...]]] = field(default_factory=list)
    passed: set[str] = field(default_factory=set)
    used: set[str] = field(default_factory=set)
    spared: set[str] = field(default_factory=set)


def input_name(source: Source) -> str:
    """The plan's input that a source is, or ""."""
    if isinstance(source, tuple):
        return next((name for name in source if "." not in name), "")
    return source.name if isinstance(source, Told) else source if isinstance(source, str) else ""


# -- where a value comes from ----------------------------------------------------------------------------------------


def value_of(bench: Bench, item: Input, source: Source) -> Given | None:
    """The value of a part's input from its source; None when it is not known, so that the rule's own default stands."""
    if isinstance(source, tuple):
        return next((value for one in source if (value := value_of(bench, item, one)) is not None), None)
    if isinstance(source, Fixed):
        return _fixed(bench.run, item, source.text)
    if isinstance(source, Told):
        return _of_plan(bench, None, source.name)
    if isinstance(source, Pieces):
        pieces = cut_from(bench, source.cloth)
        return Given(
            pieces,
            pieces[0].unit,
            ", ".join(f"{piece.count} × {piece.text}" for piece in pieces),
            f"the pieces cut from {source.cloth}",
        )
    if isinstance(source, Costs):
        items = costs_of(bench, source)
        return Given(items, items[0].unit, "; ".join(f"{one.label} {one.text}" for one in items), "what the parts cost")
    if "." in source:
        return _of_part(bench, item, source)
    return _of_plan(bench, item, source)


def _fixed(run: Run, item: Input, text: str) -> Given:
    if not item.kind.is_number:
        return Given(text, "text", text.replace("_", " "))
    value, unit, words = literal(text, run.system)
    return Given(value, unit or "1", words)


def _of_part(bench: Bench, item: Input, source: str) -> Given | None:
    name, _, step = source.partition(".")
    own = bench.runs.get(name)
    value = own.maybe(step) if own is not None else None
    if own is None or value is None:
        return None
    title = next(part.title for part in bench.run.rule.parts if part.name == name)
    unit = own.unit_of(item.kind) if item.kind.is_number else "text"
    return Given(value, unit, own.show(value, item.kind), f"from {title}")


def _of_plan(bench: Bench, theirs: Input | None, source: str) -> Given | None:
    """An input of the plan; one that was not said and that the part's rule would take alike is left to that rule."""
    run = bench.run
    item = run.rule.input(source)
    assert item is not None, f"{run.rule.topic} has no input {source}"
    said = source in run.request.given or source in run.request.usual
    if not said and theirs is not None and item.defaults and item.defaults == theirs.defaults:
        return None
    value = run.maybe(source) if item.extra else run.get(source)
    if value is None:
        return None
    bench.passed.add(source)
    if source in run.request.given:
        return run.request.given[source]
    unit = run.unit_of(item.kind) if item.kind.is_number else "text"
    return Given(value, unit, run.show(value, item.kind, run.noun(item) if item.kind is COUNT else ""))


def costs_of(bench: Bench, source: Costs) -> tuple[Item, ...]:
    """What each thing bought costs, as far as prices are known, to the penny."""
    run, items = bench.run, []
    for buy, _, cost in bench.bought.values():
        price = source.also.get(buy.thing, "")
        if cost is not None:
            items.append(_cost_item(run, buy, Fraction(cost.value).limit_denominator(100)))
        elif price and run.maybe(price) is not None:
            bench.used.add(price)
            items.append(_cost_item(run, buy, run.get(price)))
    return tuple(items)


def _cost_item(run: Run, buy: Buy, money: Fraction) -> Item:
    currency = run.request.currency
    return Item(money, currency, amount(money, currency), label=buy.thing)


def cut_from(bench: Bench, cloth: str) -> tuple[Cut, ...]:
    """The pieces of a cloth, for a lay of their own."""
    return tuple(replace(piece, cloth="") for piece in bench.pieces if piece.cloth == cloth)
