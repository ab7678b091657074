"""What a line takes over from the question before it: values told, worked out or assumed there, for another sum about the same thing."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from rules.engine.answer import Answer
from rules.engine.declare import Input, Rule
from rules.engine.request import Given, Request
from rules.engine.units import factor
from rules.engine.work import answer as work

from .build import NeedsUnit, build
from .reading import Reading
from .say import needs_unit

if TYPE_CHECKING:
    from assistant.conversation import Conversation, Heard

Carried = tuple[Request | None, Answer] | None


def carry(talk: Conversation, heard: Heard, best: Reading, request: Request, least: int = 1) -> Carried:
    """Another sum about the same thing: what it needs and was not said is taken from the last question and answer.

    least: how many values must be taken over for it to be about the same thing.
    """
    if best.lost:
        return None
    answer = talk.context.answer
    rule = best.rule
    filled = {slot.name for slots in best.placing.spots.values() for slot in slots} | set(best.chosen) | set(best.listed)
    taken: dict[str, Given] = {}
    known = _known(talk, request, answer)
    for item in rule.inputs:
        always = any(not default.when and not default.given for default in item.defaults)
        if item.name in filled or item.extra or always or item.options:
            continue
        given = _made_new(known, item) or known.get(item.label) or _given_as(talk.mind.rules[request.topic], request, rule, item)
        if given is not None:
            taken[item.name] = given
    if len(taken) < least:
        return None
    try:
        made = build(best, talk.habits, heard.line.mentions, None)
    except NeedsUnit as need:
        return request, needs_unit(best, need)
    whole = replace(made, given={**taken, **made.given})
    answer_to_it = work(rule, whole)
    return (whole, answer_to_it) if answer_to_it.status == "answered" else None


def _made_new(known: dict[str, Given], wanted: Input) -> Given | None:
    """What was worked out anew under the same name: the "new quilt width" is the quilt's from then on."""
    return known.get(f"new {wanted.label}")


def _given_as(before: Rule, request: Request, rule: Rule, wanted: Input) -> Given | None:
    """What was given under the same name to a rule of the same family: the depth of a tote is that of its corner."""
    item = before.input(wanted.name) if before.family == rule.family else None
    if item is None or item.kind is not wanted.kind:
        return None
    one, other = set(item.label.split()), set(wanted.label.split())
    return request.given.get(wanted.name) if one <= other or other <= one else None


def _known(talk: Conversation, request: Request, answer: Answer | None) -> dict[str, Given]:
    """What is known so far by label: what was given, and what was worked out."""
    rule = talk.mind.rules[request.topic]
    known: dict[str, Given] = {}
    for name, given in request.given.items():
        item = rule.input(name)
        if item is not None:
            known[item.label] = given
    for result in answer.results if answer is not None else ():
        if isinstance(result.value, int | float) and result.unit != "text":
            value = Fraction(result.value).limit_denominator(10**6) * _size_of(result.unit)
            known[result.name] = Given(value, result.unit, result.text, "from the answer before")
    return known


def assumed(rule: Rule, answer: Answer | None) -> dict[str, Given]:
    """What the last answer took without being told, by input."""
    found: dict[str, Given] = {}
    by_label = {value.name: value for value in answer.assumed} if answer is not None else {}
    for item in rule.inputs:
        value = by_label.get(item.label)
        if value is not None and item.kind.is_number and isinstance(value.value, int | float | Fraction):
            found[item.name] = Given(Fraction(value.value).limit_denominator(10**6) * _size_of(value.unit), value.unit, value.text)
    return found


def _size_of(unit: str) -> Fraction:
    """One of a unit in base units; a noun's is one."""
    try:
        return factor(unit)
    except ValueError:
        return Fraction(1)
