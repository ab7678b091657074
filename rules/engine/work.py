"""A request answered: forwards, backwards or as a table, with everything the answer must show."""

from __future__ import annotations

import string
from collections.abc import Iterable, Mapping
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from . import tabulate
from .answer import Answer, Result, Value, impossible
from .buying import hand_as_result, verdict_first
from .cautions import cautions_for
from .declare import Input, Rule, Step
from .formula import NoAnswer, names, read, surely_needed
from .kinds import ANY, COUNT, LENGTH, TEXT
from .missing import incomplete, missing_of, needed, still_needs
from .request import Amount, Given, Item, Request
from .rounding import SMALL, apply
from .run import Impossible, Needs, Run
from .sample import number
from .text import decimal, number_text, plain, plain_in, shown
from .told import as_told, check_told, given_values
from .units import factor, system_of

if TYPE_CHECKING:
    from .backwards import Found

OTHER = {"in": "cm", "cm": "in"}


def answer(rule: Rule, request: Request) -> Answer:
    """Work a request with its rule. Never raises for bad numbers: the answer then says what is wrong."""
    request = hand_as_result(rule, request)
    try:
        if request.series:
            return tabulate.table(rule, request)
        if (made := _from_told(rule, request)) is not None:
            return made
        unknown = _unknown(rule, request)
        if unknown:
            return backwards(rule, request, unknown)
        made = forwards(rule, request)
        return (_untold(rule, request) or made) if made.status == "answered" else made
    except (Impossible, NoAnswer) as error:
        return impossible(rule.topic, _sentence(str(error)), given=given_values(rule, request))
    except Needs as need:  # met on the way back from a result that was told
        return still_needs(rule, request, need.name)


def _sentence(text: str) -> str:
    return text[:1].upper() + text[1:] + ("" if text.endswith((".", "?", "!")) else ".")


def forwards(rule: Rule, request: Request, run: Run | None = None) -> Answer:
    """The results asked for, or the rule's own, with the working. Raises Impossible or NoAnswer.

    run: a run of this rule and request to work in, for those who want more values of it afterwards.
    """
    if request.stated:
        _refuse(rule, request, {})
        return _over_told(rule, request)
    run = run or Run(rule, request)
    asked = [step.name for name in request.asked if (step := rule.step(name)) and run.may_hold(step.when)]
    wanted = verdict_first(rule, request, asked)
    try:
        results, head = _results(run, wanted)
    except (Impossible, NoAnswer):
        _refuse(rule, request, {})  # what the rule itself says of such numbers is said first
        raise
    _refuse(rule, request, run.values)
    if head is None:
        return incomplete(rule, request, wanted[:1] or ([rule_first(run)] if rule.insists else list(rule.answers)))
    return compose(run, results, asked=wanted[:1])


def _refuse(rule: Rule, request: Request, known: Mapping[str, Any]) -> None:
    """Raise Impossible for numbers that the rule declares it has no answer for. known: what was worked out already."""
    if not rule.refusals:
        return
    trial = Run(rule, request, dict(known))  # a run of its own: what it works out is no part of the working
    for refusal in rule.refusals:
        if trial.holds_formula(refusal.when) and trial.holds(refusal.choices):
            raise Impossible(refusal.text)


def _from_told(rule: Rule, request: Request) -> Answer | None:
    """A result that follows from another that was told: the leg of a dart from its intake; None where none does."""
    asked = [*request.asked[:1]]
    if not request.stated or not asked or asked[0] in request.stated or rule.step(asked[0]) is None:
        return None
    told = {name: given.value for name, given in request.stated.items()}
    untold = replace(request, stated={})
    if not all(needed(rule, untold, name) for name in told):
        return None  # what the inputs come to as well is told twice
    run = Run(rule, untold, dict(told))
    run.touched.clear()  # to see what the result hangs on
    try:
        results, head = _results(run, asked)
    except (Impossible, NoAnswer, Needs):
        return None
    if head is None or not run.touched.issuperset(told):
        return None
    check_told(rule, request)
    _refuse(rule, request, run.values)
    made = compose(run, [result for result in results if result.key not in told], asked=asked)
    return replace(made, given=given_values(rule, request))


def _over_told(rule: Rule, request: Request) -> Answer:
    """A result was told and so was everything it is worked from: which is wanted must be asked, since both cannot be right."""
    worked = forwards(rule, replace(request, stated={}))
    if as_told(request, worked):
        return worked
    told = ", ".join(f"{value.name} {value.text}" for value in given_values(rule, replace(request, given={})))
    unknowns = [item.label for item in rule.inputs if item.name in request.given and item.kind.is_number][:3]
    return Answer("unclear", topic=rule.topic, given=given_values(rule, request),
                  message=f"I read {told}, but that is what the rest would work out. Say which of the numbers is wanted, or leave one "
                          f"out ({', '.join(unknowns)}), such as: {rule.first_question()}")  # fmt: skip


def _results(run: Run, wanted: list[str]) -> tuple[list[Result], str | None]:
    """Every result that can be worked, the wanted ones first; None beside them when the first wanted cannot."""
    results: list[Result] = []
    head: str | None = None
    for name in dict.fromkeys((*wanted, *run.rule.answers)):
        step = run.rule.step(name)
        assert step is not None
        if head is not None and _lacks_an_extra(run, name):
            continue
        before = run.mark()
        try:
            results.append(result_of(run, step))
            head = head or name
        except (Needs, NoAnswer) as error:
            run.back_to(before)  # what could not be worked used nothing and said nothing
            if name in (wanted or (rule_first(run),))[:1]:
                if isinstance(error, NoAnswer):
                    raise
                return results, None
        except Impossible:
            if head is None:
                raise
            run.back_to(before)  # what could not be worked used nothing and said nothing
    return results, head


def _lacks_an_extra(run: Run, name: str) -> bool:
    """Whether a result hangs on something optional that was not said (a price, a length in hand): it need not be tried."""
    request = run.request
    return any(
        extra not in request.given and extra not in request.usual and extra not in run.values
        for extra in _extras_needed(run.rule)[name]
    )


@lru_cache(maxsize=512)
def _extras_needed(rule: Rule) -> dict[str, tuple[str, ...]]:
    """Step -> the inputs without any value of their own that its formula cannot do without."""
    optional = {item.name for item in rule.inputs if item.extra and not item.defaults}
    return {step.name: tuple(name for name in _surely_needed_by(step) if name in optional) for step in rule.steps}


def _surely_needed_by(step: Step) -> tuple[str, ...]:
    """The names a step's formula (a condition, for a step in words) cannot do without."""
    text = step.formula if step.words is None else f"if({step.formula}, 1, 0)"
    return surely_needed(read(text)) if step.formula else ()


def rule_first(run: Run) -> str:
    """The answer a rule insists on when nothing in particular is asked, or "": the first that the choices made allow."""
    if not run.rule.insists:
        return ""
    return next((name for name in run.rule.answers if (step := run.rule.step(name)) and run.may_hold(step.when)), "")


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


# -- backwards -------------------------------------------------------------------------------------------------------


def _unknown(rule: Rule, request: Request) -> str:
    """The input that is asked for, when a result was stated; else the one missing input that the stated result fixes."""
    asked = next((name for name in request.asked if rule.input(name) and name not in request.given), "")
    if asked and (request.stated or _by_inputs_alone(rule, asked)):
        return asked
    if not request.stated or any(name in request.stated for name in request.asked):
        return ""
    target = next(iter(request.stated))
    needs = needed(rule, request, target)
    if len(needs) == 1 and needs[0] not in rule.no_unknown:
        return needs[0]
    return ""


def _untold(rule: Rule, request: Request) -> Answer | None:
    """What to say where an input is asked for first, and no result was told that it would follow from; None otherwise."""
    first = next(iter(request.asked), "")
    item = rule.input(first)
    if item is None or first in request.given or request.stated or item.default is not None or item.extra or first in rule.no_unknown:
        return None
    if any(rule.step(name) is not None for name in request.asked):
        return None
    return Answer("incomplete", topic=rule.topic, given=given_values(rule, request), missing=(missing_of(rule, first),),
                  message=f"I read this as {rule.topic} with the {item.label} asked for, but nothing was told that it follows from.")


def _by_inputs_alone(rule: Rule, name: str) -> bool:
    """Whether the rule gives a formula for an input that takes other inputs only, so that no result need be stated."""
    text = rule.backwards.get(name)
    return text is not None and all(rule.input(one) for one in names(read(text)))


def backwards(rule: Rule, request: Request, unknown: str) -> Answer:
    """The input that gives the stated result, put forward again. Raises Impossible."""
    from .backwards import find  # only when asked for: it is long, and most questions go forwards

    check_told(rule, request)
    item = rule.input(unknown)
    assert item is not None
    target = _target(rule, request, item)
    beside = {name for group in rule.sizes if unknown in group for name in group}  # the sides of one size: "how big a square"
    single = len(request.stated) < 2
    tied = tuple(name for name in request.asked[1:] if single and name in beside and name not in request.given)
    missing = needed(rule, request, target, (unknown, *tied)) if target else []
    if missing:
        found_missing = tuple(missing_of(rule, name) for name in missing)
        what = ", ".join(entry.name for entry in found_missing)
        return Answer("incomplete", topic=rule.topic, given=given_values(rule, request), missing=found_missing,
                      message=f"I read this as {rule.topic}, backwards, but still need the {what}.")
    found = find(rule, request, unknown, target, request.largest, tied=tied)
    unit = Run(rule, request).unit_of(item.kind)
    filled = Given((Item(found.value, unit, ""),) if item.many else found.value, unit, "")
    whole = replace(request, given={**request.given, unknown: filled, **dict.fromkeys(tied, filled)}, asked=(), stated={})
    whole, more = _other_side(rule, request, whole, target)
    run = Run(rule, whole)
    _refuse(replace(rule, refusals=tuple(one for one in rule.refusals if not one.choices)), whole, {})
    asked = [step.name for name in request.asked if (step := rule.step(name)) and run.may_hold(step.when)][:1]
    if asked and unknown not in request.asked:
        return _on_from(run, asked, found, given_values(rule, request))
    head = _input_result(run, item, found.value, found.exact)
    sides = [_input_result(run, other, one.value, one.exact) for other, one in more]
    later, _ = _results(run, [])
    word = {"most": "at most ", "least": "at least "}.get(found.side, "")
    sentence = f"{item.label[:1].upper()}{item.label[1:]}: {word}{with_other(head)}."
    sentence += "".join(f" {side.name[:1].upper()}{side.name[1:]}: {with_other(side)}." for side in sides)
    made = compose(run, [head, *sides, *later], asked=[], head=sentence)
    lines, checked = found.lines, (found.checked, *(one.checked for _, one in more))
    lines = (*lines, *(line for _, one in more for line in one.lines))
    return replace(made, given=given_values(rule, request), working=lines, notes=(*made.notes, *checked), not_used=())


def _target(rule: Rule, request: Request, unknown: Input) -> str:
    """The told result that an input is worked back from: of two that are the sides of a size, the one along its axis."""
    along = (name for name in request.stated if (step := rule.step(name)) and unknown.axis and step.axis == unknown.axis)
    return next(along, next(iter(request.stated), ""))


def _other_side(rule: Rule, request: Request, whole: Request, target: str) -> tuple[Request, list[tuple[Input, Found]]]:
    """The request with what the other results told fix as well, each by itself: the height of a bag beside its width."""
    from .backwards import find

    more: list[tuple[Input, Found]] = []
    for name in request.stated if len(request.stated) > 1 else ():
        rest = replace(whole, stated={name: request.stated[name]})
        needs = needed(rule, rest, name) if name != target else []
        item = rule.input(needs[0]) if len(needs) == 1 and needs[0] not in rule.no_unknown else None
        if item is not None:
            found = find(rule, rest, item.name, name, request.largest)
            unit = Run(rule, rest).unit_of(item.kind)
            whole = replace(whole, given={**whole.given, item.name: Given(found.value, unit, "")})
            more.append((item, found))
    return whole, more


def _on_from(run: Run, asked: list[str], found: Found, told: tuple[Value, ...]) -> Answer:
    """Another result asked for than the one told: first back to the input that was not told, then on to it."""
    results, head = _results(run, asked)
    if head is None:
        return incomplete(run.rule, run.request, asked)
    made = compose(run, results, asked=asked)
    return replace(made, given=told, working=(*found.lines, *made.working), notes=(*made.notes, found.checked), not_used=())


def _input_result(run: Run, item: Input, value: Any, exact: Any) -> Result:
    unit = run.unit_of(item.kind)
    if system_of(run.request.unit) and item.kind is LENGTH:
        unit = run.request.unit
    elif item.kind is ANY:
        unit = "1"
    size = factor(unit)
    noun = run.noun(item) if item.kind is COUNT else ""
    name = noun or "1" if unit == "1" else unit
    other = ""
    if item.kind is LENGTH:
        there = "cm" if system_of(unit) == "in" else "in"
        other = shown(value, there) if there == "cm" else f"{number_text(round(value / factor('in') * 8) / 8, 'in')} in"
    text, exact_text = shown(value, unit, noun), shown(exact, unit, noun)
    return Result(item.label, plain(value / size), name, text, plain(exact / size), exact_text, other, item.name)
