"""A request answered: forwards, backwards or as a table, with everything the answer must show."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from . import tabulate
from .answer import Answer, Result, Value, impossible
from .buying import hand_as_result, verdict_first
from .composing import compose, result_of, with_other
from .declare import Input, Rule, Step
from .formula import NoAnswer, names, read, surely_needed
from .kinds import ANY, COUNT, LENGTH
from .missing import incomplete, missing_of, needed, still_needs
from .request import Given, Item, Request
from .run import Impossible, Needs, Run
from .text import number_text, plain, shown
from .told import as_told, check_told, given_values
from .units import factor, system_of

if TYPE_CHECKING:
    from .backwards import Found


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
