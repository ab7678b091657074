"""How a plan is worked: each part by its rule, from the plan's inputs and what earlier parts gave."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import Any

from .answer import Answer, Result, Table
from .declare import Input
from .formula import NoAnswer
from .kinds import COUNT
from .literal import literal
from .outcome import Outcome
from .plan import Buy, Costs, CutLine, Fixed, Part, Pieces, Source, Told, gathered
from .request import Cut, Given, Item, Request
from .run import Impossible, Needs, Run
from .text import amount
from .work import forwards, result_of, with_other

SHARED = ("shop_step", "discount")  # what is said of the shop holds for all that is bought there
FEWEST_COSTS = 2
CUT_COLUMNS = ("piece", "cut", "width", "length", "from")


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


def work_plan(run: Run) -> Outcome:
    """Every part of the run's plan that is wanted, in order. Raises Needs for an input of the plan, or Impossible."""
    run = Run(
        run.rule, run.request, dict(run.values)
    )  # a run of its own: what it reads and assumes is told by the parts
    for item in run.rule.inputs:
        if item.default is None and not item.extra and run.holds(item.when):
            run.get(item.name)
    bench = Bench(run)
    for part in run.rule.parts:
        if _wanted(bench, part):
            _work(bench, part)
    assumed = gathered(bench.parts, run.assumed)
    return Outcome(
        bench.values,
        notes=tuple(_unpriced(bench)),
        parts=tuple(bench.parts),
        assumed=assumed,
        cut=_cut_list(bench),
        order=tuple(_order(bench)),
        headline=_headline(bench),
        used=frozenset(run.touched - bench.passed | bench.used),
    )


# -- one part --------------------------------------------------------------------------------------------------------


def _wanted(bench: Bench, part: Part) -> bool:
    run = bench.run
    if not run.holds(part.when) or any(run.was_given(name) for name in part.unless):
        return False
    if part.any_of and not any(run.maybe(name) is not None for name in part.any_of):
        return False
    if any(isinstance(source, Costs) and len(_costs(bench, source)) < FEWEST_COSTS for source in part.given.values()):
        return False
    if any(isinstance(source, Pieces) and not _cut_from(bench, source.cloth) for source in part.given.values()):
        return False
    known = all(run.maybe(name) is not None for name in part.needs)
    bench.used.update(part.needs if known else ())
    return known


def _work(bench: Bench, part: Part) -> None:
    """A part worked by its rule: what it buys, cuts and tells goes on the bench. Raises Impossible, naming the part."""
    request = _request(bench, part)
    own = Run(part.rule, request)
    try:
        made = forwards(part.rule, request, own)
        if made.status != "answered":
            raise Needs(_asked_of(bench, part, made))
        bench.runs[part.name] = own
        _buy(bench, part, own, made)
        for line in part.cuts:
            _cut(bench, own, line)
    except (Impossible, NoAnswer) as error:
        raise Impossible(f"{part.title}: {error}") from error
    bench.used.update(_input_name(source) for name, source in part.given.items() if name in own.touched)
    bench.used.update(name for name in SHARED if name in own.touched)
    bench.values.update({name: own.values[name] for name in part.takes if name in own.values})
    bench.parts.append((part.title, _told(bench, part, made)))


def _told(bench: Bench, part: Part, made: Answer) -> Answer:
    """A part's answer as the plan tells it: in the plan's own words for what is bought and what was assumed."""
    names = {result.key: buy.thing for result, buy in _buys(part, made)}
    results = tuple(
        replace(result, name=names.get(result.key, result.name))
        for result in made.results
        if result.key not in part.leaves
    )
    assumed = tuple(replace(value, name=_plan_label(bench, part, value.name)) for value in made.assumed)
    head = (
        part.headline.format(**{result.key: with_other(result) for result in made.results})
        if part.headline
        else made.headline
    )
    told = replace(made, headline=head, results=results, assumed=assumed, not_used=(), next=())
    return replace(told, drawing=None, notes=()) if part.plain else told


def _input_name(source: Source) -> str:
    """The plan's input that a source is, or ""."""
    if isinstance(source, tuple):
        return next((name for name in source if "." not in name), "")
    return source.name if isinstance(source, Told) else source if isinstance(source, str) else ""


def _plan_label(bench: Bench, part: Part, label: str) -> str:
    """What the plan calls an input of a part's rule, by which it can be changed."""
    for name, source in part.given.items():
        theirs = part.rule.input(name)
        mine = bench.run.rule.input(_input_name(source))
        if theirs is not None and theirs.label == label and mine is not None:
            return mine.label
    return label


def _request(bench: Bench, part: Part) -> Request:
    asked, given = bench.run.request, {}
    for name, source in part.given.items():
        item = part.rule.input(name)
        assert item is not None
        value = _value(bench, item, source)
        if value is not None:
            given[name] = value
    for name in SHARED:
        if name in asked.given and part.rule.input(name) is not None:
            bench.run.get(name)
            bench.passed.add(name)
            given[name] = asked.given[name]
    usual = {name: asked.usual[name] for name in SHARED if name in asked.usual and part.rule.input(name) is not None}
    return replace(
        asked,
        topic=part.rule.topic,
        given=given,
        stated={},
        asked=part.asked,
        series=(),
        unit="",
        usual=usual,
        system_why="",
    )


def _asked_of(bench: Bench, part: Part, made: Answer) -> str:
    """The plan's input from which a part lacks a value; "" when it lacks one that no input of the plan gives."""
    lacking = {missing.name for missing in made.missing}
    for name, source in part.given.items():
        item = part.rule.input(name)
        if item is not None and item.label in lacking and bench.run.rule.input(_input_name(source)) is not None:
            return _input_name(source)
    return ""


# -- where a value comes from ----------------------------------------------------------------------------------------


def _value(bench: Bench, item: Input, source: Source) -> Given | None:
    """The value of a part's input from its source; None when it is not known, so that the rule's own default stands."""
    if isinstance(source, tuple):
        return next((value for one in source if (value := _value(bench, item, one)) is not None), None)
    if isinstance(source, Fixed):
        return _fixed(bench.run, item, source.text)
    if isinstance(source, Told):
        return _of_plan(bench, None, source.name)
    if isinstance(source, Pieces):
        pieces = _cut_from(bench, source.cloth)
        return Given(
            pieces,
            pieces[0].unit,
            ", ".join(f"{piece.count} × {piece.text}" for piece in pieces),
            f"the pieces cut from {source.cloth}",
        )
    if isinstance(source, Costs):
        items = _costs(bench, source)
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


# -- what is bought ---------------------------------------------------------------------------------------------------


def _buys(part: Part, made: Answer) -> Iterator[tuple[Result, Buy]]:
    """The results of a part that are bought, in the order that the plan has them."""
    known = {result.key: result for result in made.results}
    for name, buy in part.buys.items():
        if name in known:
            yield known[name], buy


def _buy(bench: Bench, part: Part, own: Run, made: Answer) -> None:
    cost = next((result for result in made.results if result.key == "cost"), None)
    for thing in part.instead:
        bench.bought.pop(Buy(thing).step, None)
        bench.values.pop(Buy(thing).step, None)
        bench.spared.add(thing)
    for result, buy in _buys(part, made):
        if buy.thing in bench.spared or Buy(buy.unless).step in bench.bought:
            continue
        priced = cost if result.key == part.costed else None
        bench.bought[buy.step] = (buy, result, priced)
        bench.values[buy.step] = own.values[result.key]
        bench.values.pop(f"{buy.step}_cost", None)
        if priced is not None:
            bench.values[f"{buy.step}_cost"] = own.values["cost"]


def _costs(bench: Bench, source: Costs) -> tuple[Item, ...]:
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


def _unpriced(bench: Bench) -> Iterator[str]:
    """What is not in the total, when there is one."""
    run = bench.run
    totals = [source for part in run.rule.parts for source in part.given.values() if isinstance(source, Costs)]
    also = {thing: name for source in totals for thing, name in source.also.items()}
    without = [
        buy.thing
        for buy, _, cost in bench.bought.values()
        if cost is None and (buy.thing not in also or run.maybe(also[buy.thing]) is None)
    ]
    if without and len(without) < len(bench.bought):
        yield f"Not in the cost, as no price was said: {', '.join(without)}."


def _headline(bench: Bench) -> str:
    """What to buy, in one sentence, and what it comes to."""
    said = [buy.say(with_other(result)) for buy, result, _ in bench.bought.values()]
    if not said:
        return ""
    listed = said[0] if len(said) == 1 else f"{', '.join(said[:-1])} and {said[-1]}"
    costs = [cost for _, _, cost in bench.bought.values() if cost is not None]
    lone = bench.values.get(f"{next(iter(bench.bought))}_cost") if len(costs) == len(said) == 1 else None
    total = bench.values.get("total", bench.values.get("cost", lone))
    cost = f" It comes to {amount(total, bench.run.request.currency)}." if total is not None else ""
    return f"Buy {listed}.{cost}"


# -- what is cut, and in which order ----------------------------------------------------------------------------------


def _cut(bench: Bench, own: Run, line: CutLine) -> None:
    """A line of the cut list, and the piece for a lay when it has two sides."""
    try:
        count, (width, wide), (length, long) = (
            _count(bench, own, line.count),
            _side(own, line.width),
            _side(own, line.length),
        )
    except Needs:
        return
    bench.rows.append(
        ((line.piece, int(count), wide, long, line.cloth), (line.piece, str(count), wide, long, line.cloth))
    )
    if width is not None and length is not None:
        unit = "in" if own.system == "in" else "cm"
        bench.pieces.append(
            Cut(width, unit, f"{line.piece} {wide} × {long}", count, line.piece, length=length, cloth=line.cloth)
        )


def _count(bench: Bench, own: Run, name: str) -> Fraction:
    if name.isdigit():
        return Fraction(name)
    part, dot, step = name.partition(".")
    if dot and part not in bench.runs:
        raise Needs("")
    return Fraction(bench.runs[part].rounded(step) if dot else own.rounded(name))


def _side(own: Run, name: str) -> tuple[Fraction | None, str]:
    """A side as cut, and its text; words that name nothing of the rule ("width of cloth") stand for themselves."""
    step, item = own.rule.step(name), own.rule.input(name)
    if step is not None:
        own.get(name)
        return Fraction(own.rounded(name)), result_of(own, step).text
    if item is not None:
        value = own.get(name)
        return Fraction(value), own.show(value, item.kind)
    return None, name


def _cut_from(bench: Bench, cloth: str) -> tuple[Cut, ...]:
    """The pieces of a cloth, for a lay of their own."""
    return tuple(replace(piece, cloth="") for piece in bench.pieces if piece.cloth == cloth)


def _cut_list(bench: Bench) -> Table | None:
    if not bench.rows:
        return None
    columns = tuple((name, "1" if name == "cut" else "text") for name in CUT_COLUMNS)
    return Table(columns, tuple(values for values, _ in bench.rows), tuple(texts for _, texts in bench.rows))


def _order(bench: Bench) -> Iterator[str]:
    for do in bench.run.rule.order:
        if (
            bench.run.holds(do.when)
            and (not do.parts or bench.runs.keys() & set(do.parts))
            and not bench.runs.keys() & set(do.without)
        ):
            yield do.text
