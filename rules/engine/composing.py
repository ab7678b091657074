"""The results of a run as they are shown: rounded for use, exact beside, in the other system; and the whole answer."""

from __future__ import annotations

import string
from collections.abc import Iterable
from fractions import Fraction
from functools import lru_cache
from typing import Any

from .answer import Answer, Result, Value
from .cautions import cautions_for
from .declare import Rule, Step
from .kinds import LENGTH, TEXT
from .request import Amount, Request
from .rounding import SMALL, apply
from .run import Run
from .sample import number
from .text import decimal, plain, plain_in, shown
from .told import given_values
from .units import factor, system_of

OTHER = {"in": "cm", "cm": "in"}


def result_of(run: Run, step: Step) -> Result:
    """A step as a result: rounded for use, exact beside it, and in the other system."""
    exact = run.get(step.name)
    if isinstance(exact, Amount):
        return _amount_result(step, exact)
    label = run.outcome.labels.get(step.name, step.shown_label) if run.outcome else step.shown_label
    if step.kind is TEXT or isinstance(exact, str):
        return Result(label, exact, "text", exact, exact, exact, key=step.name)
    unit = run.step_unit(step)
    wanted = run.request.unit
    lead = run.request.asked[0] if run.request.asked else run.rule.answers[0]
    # "yardage" is of the cloth: the sizes beside it stay in the units of cutting.
    beside = wanted in ("yd", "m") and any(one.rounding is not None and one.rounding.bought for one in run.rule.steps)
    bought = step.rounding is not None and step.rounding.bought
    fixed = (step.unit is not None and step.unit[0] == step.unit[1]) or (beside and not bought)
    if wanted and wanted != unit and _fits(wanted, unit, step) and (step.name == lead or not (run.request.asked or fixed)):
        unit = wanted
    rounded = run.round_step(step, exact)
    noun = run.noun(step)
    name = noun or "1" if unit == "1" else unit
    as_worked = unit == run.step_unit(step)
    exact_text = run.exact_text(step, exact, noun) if as_worked else shown(exact, unit, noun)
    bare, other = plain_in(exact, unit), _other_system(run, step, exact, unit)
    if rounded == exact:
        return Result(label, bare, name, exact_text, bare, exact_text, other, step.name)
    return Result(label, plain_in(rounded, unit), name, shown(rounded, unit, noun), bare, exact_text, other, step.name)


def _amount_result(step: Step, amount: Amount) -> Result:
    bare = amount.value / factor(amount.unit)
    text = shown(amount.value, amount.unit, amount.noun)
    return Result(step.shown_label, plain(bare), amount.unit if not amount.noun else amount.noun, text, plain(bare), text, "", step.name)


def _fits(wanted: str, unit: str, step: Step) -> bool:
    """Whether a result may be shown in the unit asked for: the same kind of unit."""
    lengths = ("mm", "cm", "m", "in", "ft", "yd")
    groups = (lengths, ("in^2", "yd^2", "cm^2", "m^2", "ft^2", "mm^2"), ("g", "kg", "oz", "lb"), ("l", "ml"),
              ("g/m^2", "oz/yd^2"), ("st/in", "st/4in", "st/10cm", "st/cm"), ("row/in", "row/4in", "row/10cm", "row/cm"))  # fmt: skip
    return any(wanted in group and unit in group for group in groups)


def _other_system(run: Run, step: Step, exact: Any, unit: str) -> str:
    """The same length, area, weight or rate in the other system, rounded by that system's own line."""
    here = system_of(unit)
    if not here or unit[:1].isupper():  # money
        return ""
    there = OTHER[here]
    other = step.rounding.of(there) if step.rounding else None
    if other is not None and other.unit == unit:
        return ""
    if other is None:
        into = step.kind.inch if there == "in" else step.kind.metric
        if system_of(into) != there:
            return ""
        return length_in(exact, into) if step.kind is LENGTH else shown(exact, into)
    return shown(apply(exact, other), other.unit)


def length_in(exact: Any, unit: str) -> str:
    """An unrounded length in a unit: as a ruler has it, but under an inch in two decimals, which a ruler would lose."""
    there = system_of(unit)
    if not 0 < abs(exact) < factor("in"):
        return shown(apply(exact, SMALL.of(there)), unit)
    fine = "mm" if there == "cm" else "in"
    return f"{decimal(exact / (factor(fine) if isinstance(exact, Fraction) else float(factor(fine))), 2)} {fine}"


def compose(run: Run, results: list[Result], asked: list[str], head: str = "") -> Answer:
    """The whole answer from a finished run."""
    rule, request = run.rule, run.request
    unused = tuple(_unused(run))
    outcome = run.outcome
    whole = outcome.headline if outcome is not None and not asked else ""
    made = Answer(
        "answered",
        topic=rule.topic,
        headline=head or whole or headline(rule, results, asked),
        given=given_values(rule, request),
        assumed=(*_system(request), *_currency(request, results), *run.assumed),
        results=tuple(results),
        working=tuple(run.lines),
        cautions=cautions_for(run),
        sources=(rule.source,),
        not_used=unused,
        next=tuple(_next(run)),
        notes=(*rule.notes, *(outcome.notes if outcome else ())),
        drawing=outcome.drawing if outcome else None,
        table=outcome.table if outcome else None,
    )
    if outcome is None or not outcome.parts:
        return made
    from .plan import with_parts  # only for a plan

    return with_parts(made, outcome)


def _currency(request: Request, results: Iterable[Result]) -> tuple[Value, ...]:
    if request.currency_assumed and any(result.unit.startswith(request.currency) for result in results):
        names = {"USD": "US dollars", "GBP": "pounds sterling"}
        word = names.get(request.currency, request.currency)
        return (Value("currency", request.currency, "text", word, request.currency_why),)
    return ()


def _system(request: Request) -> tuple[Value, ...]:
    """The units of the answer, when it was a habit that settled them."""
    word = "inches" if request.system == "in" else "metric"
    return (Value("units", word, "text", word, request.system_why),) if request.system_why else ()


def _unused(run: Run) -> Iterable[str]:
    touched = run.touched | (run.outcome.used if run.outcome is not None else frozenset())
    for name, given in run.request.given.items():
        item = run.rule.input(name)
        if item is not None and item.options and any(default.value == given.value for default in item.defaults):
            continue  # words that choose what would be taken anyway
        if item is not None and item.options and run.rule.parts:
            continue  # what the thing is called may choose where no part asks ("skirt")
        if name not in touched and item is not None:
            yield f"{item.label} {given.text}".strip()
    for name, given in run.request.stated.items():
        step = run.rule.step(name)
        if name not in touched and step is not None:
            yield f"{step.shown_label} {given.text}"


def _next(run: Run) -> Iterable[str]:
    for value in run.assumed[:1]:
        item = next((item for item in run.rule.inputs if item.label == value.name), None)
        other = number(item, lambda count: count - 1, run.system) if item is not None and item.kind.is_number else None
        if other is not None and other.text != value.text:
            yield f"with {value.name} {other.text}"
    yield from run.rule.related[:2]


@lru_cache(maxsize=1024)
def _fields(template: str) -> tuple[str, ...]:
    return tuple(name for _, name, _, _ in string.Formatter().parse(template) if name)


def headline(rule: Rule, results: list[Result], asked: list[str]) -> str:
    """The first line: the first of the rule's sentences whose results were all worked, about what was asked."""
    by_key = {result.key: result for result in results}
    lead = results[0].key
    for template in rule.headline:
        fields = _fields(template)
        if all(name in by_key for name in fields) and (lead in fields if asked else True):
            return template.format(**{name: with_other(by_key[name]) for name in fields})
    first = results[0]
    return f"{first.name[:1].upper()}{first.name[1:]}: {with_other(first)}."


def with_other(result: Result) -> str:
    """A result with the other system in brackets: "7/8 yd (0.8 m)"."""
    return f"{result.text} ({result.other})" if result.other else result.text
