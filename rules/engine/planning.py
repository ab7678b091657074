"""How a plan is worked: each part by its rule, from the plan's inputs and what earlier parts gave."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction

from .answer import Answer, Result, Table
from .bench import Bench, costs_of, cut_from, input_name, value_of
from .composing import result_of, with_other
from .formula import NoAnswer
from .outcome import Outcome
from .plan import Buy, Costs, CutLine, Part, Pieces, gathered
from .request import Cut, Request
from .run import Impossible, Needs, Run
from .text import amount
from .work import forwards

SHARED = ("shop_step", "discount")  # what is said of the shop holds for all that is bought there
FEWEST_COSTS = 2
CUT_COLUMNS = ("piece", "cut", "width", "length", "from")


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
    if any(isinstance(source, Costs) and len(costs_of(bench, source)) < FEWEST_COSTS for source in part.given.values()):
        return False
    if any(isinstance(source, Pieces) and not cut_from(bench, source.cloth) for source in part.given.values()):
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
    bench.used.update(input_name(source) for name, source in part.given.items() if name in own.touched)
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


def _plan_label(bench: Bench, part: Part, label: str) -> str:
    """What the plan calls an input of a part's rule, by which it can be changed."""
    for name, source in part.given.items():
        theirs = part.rule.input(name)
        mine = bench.run.rule.input(input_name(source))
        if theirs is not None and theirs.label == label and mine is not None:
            return mine.label
    return label


def _request(bench: Bench, part: Part) -> Request:
    asked, given = bench.run.request, {}
    for name, source in part.given.items():
        item = part.rule.input(name)
        assert item is not None
        value = value_of(bench, item, source)
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
        if item is not None and item.label in lacking and bench.run.rule.input(input_name(source)) is not None:
            return input_name(source)
    return ""


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
