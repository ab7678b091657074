"""Sweeps and comparisons: one rule run for each of several values, set out as a table."""

from __future__ import annotations

from dataclasses import replace
from itertools import product
from typing import TYPE_CHECKING, Any

from .answer import Answer, Result, Table
from .declare import Input, Rule
from .request import Given, Request
from .text import plain
from .units import factor

if TYPE_CHECKING:
    from collections.abc import Iterable

MOST_ROWS = 200


def table(rule: Rule, request: Request) -> Answer:
    """A row for each value of the series (each combination, when there are two). Raises Impossible."""
    from .run import Impossible
    from .work import answer

    names = [name for name, _ in request.series]
    combinations = list(product(*(values for _, values in request.series)))
    if len(combinations) > MOST_ROWS:
        raise Impossible(
            f"that would be a table of {len(combinations)} rows; I set out at most {MOST_ROWS}. Take a larger step."
        )
    answers: list[Answer] = []
    for values in combinations:
        given = {**request.given, **dict(zip(names, values, strict=True))}
        answers.append(answer(rule, replace(request, given=given, series=())))
    failed = next((one for one in answers if one.status != "answered"), None)
    worked = [one for one in answers if one.status == "answered"]
    if failed is not None and (failed.status != "impossible" or not worked):
        return failed
    keys = _shared_keys(worked)
    rows, texts = [], []
    for values, one in zip(combinations, answers, strict=True):
        by_key = {result.key: result for result in one.results}
        rows.append((*map(_number, values), *(by_key[key].value if key in by_key else None for key in keys)))
        texts.append(
            (*(v.text for v in values), *(by_key[key].text if key in by_key else "not possible" for key in keys))
        )
    first = {result.key: result for result in worked[-1].results}
    columns = [(_label(rule, name), values[0].unit or "1") for name, values in request.series]
    columns += [(first[key].name, first[key].unit) for key in keys]
    chosen = _winner(worked) if request.compare else worked[-1]
    return replace(
        chosen,
        headline=_headline(rule, request, answers, combinations, chosen),
        table=Table(tuple(columns), tuple(rows), tuple(texts)),
        notes=(*chosen.notes, *(one.message for one in answers if one.status == "impossible")),
    )


def _shared_keys(answers: list[Answer]) -> list[str]:
    """The results every answer has, in order."""
    return [
        result.key
        for result in answers[0].results
        if all(result.key in {r.key for r in one.results} for one in answers)
    ]


def _number(given: Given) -> Any:
    if isinstance(given.value, str | tuple):
        return given.text
    try:
        return plain(given.value / factor(given.unit))
    except ValueError:
        return plain(given.value)


def _label(rule: Rule, name: str) -> str:
    item = rule.input(name)
    return item.label if isinstance(item, Input) else name


def _winner(answers: list[Answer]) -> Answer:
    """The cheapest where all have a cost, else the one that takes least of what was asked for."""

    def cost(one: Answer) -> float | None:
        found = next((r for r in one.results if r.key == "cost"), None)
        return float(found.value) if found else None

    costs = [cost(one) for one in answers]
    if all(value is not None for value in costs):
        return answers[costs.index(min(value for value in costs if value is not None))]
    firsts = [one.results[0] for one in answers]
    if all(isinstance(result.exact, int | float) for result in firsts):
        return answers[min(range(len(firsts)), key=lambda index: firsts[index].exact)]
    return answers[0]


def _headline(
    rule: Rule, request: Request, answers: list[Answer], combinations: Iterable[tuple[Given, ...]], chosen: Answer
) -> str:
    def text(one: Answer) -> str:
        return one.results[0].text if one.status == "answered" else "not possible"

    pairs = [
        (", ".join(value.text for value in values), text(one))
        for values, one in zip(combinations, answers, strict=True)
    ]
    if request.compare or len(pairs) <= 3:
        parts = "; ".join(f"{value}: {result}" for value, result in pairs)
        what: Result = chosen.results[0]
        return f"{what.name[:1].upper()}{what.name[1:]}. {parts}."
    labels = " and ".join(_label(rule, name) for name, _ in request.series)
    what = chosen.results[0]
    return f"{what.name[:1].upper()}{what.name[1:]} for {labels} {pairs[0][0]} to {pairs[-1][0]}: {pairs[0][1]} to {pairs[-1][1]}."
