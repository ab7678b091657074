"""Things true of every rule for all numbers a maker would meet: backwards, never short, both systems, nothing ignored."""

from __future__ import annotations

import random
from dataclasses import replace
from fractions import Fraction

import pytest

from rules.engine.answer import Answer, Result
from rules.engine.kinds import TEXT
from rules.engine.request import Given, Request
from rules.engine.rounding import Rounding
from rules.engine.sample import sample
from rules.engine.units import factor
from rules.engine.work import answer
from tests.support import mind

TOPICS = list(mind().rules)
TRIES = 12


def requests(topic: str, system: str = "in", optional: bool = False) -> list[Request]:
    """Some requests with sensible numbers, the same at every run."""
    rule, dice = mind().rules[topic], random.Random(topic)
    return [Request(topic, given=sample(rule, dice.randrange, system, optional), system=system) for _ in range(TRIES)]


def worked(topic: str, request: Request) -> Answer:
    return answer(mind().rules[topic], request)


def base(result: Result, exact: bool = True) -> float:
    """A numeric result in base units."""
    value = result.exact if exact else result.value
    try:
        return float(value) * float(factor(result.unit))
    except ValueError:  # a count's noun
        return float(value)


@pytest.mark.parametrize("topic", TOPICS)
def test_what_is_bought_is_never_under_the_exact_need(topic: str) -> None:
    for system in ("in", "cm"):
        for request in requests(topic, system):
            for result in worked(topic, request).results:
                step = mind().rules[topic].step(result.key)
                rounding: Rounding | None = step.rounding if step else None
                if rounding is not None and rounding.of(system).direction == "up" and result.unit != "text":
                    assert result.value >= result.exact - 1e-9, (request.given, result)


@pytest.mark.parametrize("topic", TOPICS)
def test_inches_and_metric_agree_on_the_exact_result(topic: str) -> None:
    for request in requests(topic, "in", optional=True):
        inch, metric = worked(topic, request), worked(topic, replace(request, system="cm"))
        assert inch.status == metric.status
        if inch.status != "answered" or inch.assumed:
            continue  # a value left to the system's own default may differ
        others = {result.key: result for result in metric.results}
        for result in inch.results:
            step = mind().rules[topic].step(result.key)
            if (
                step is None
                or step.kind is TEXT
                or not step.formula
                or "rounded" in step.formula
                or result.unit == "text"
            ):
                continue
            if any("rounded" in (other.formula or "") for other in mind().rules[topic].steps):
                continue
            assert base(result) == pytest.approx(base(others[result.key]), rel=1e-9), (request.given, result)


CHANGES = (Fraction(3, 2), 3, 7, Fraction(11, 13))  # one of them no whole multiple of anything a rule rounds to


@pytest.mark.parametrize("topic", TOPICS)
def test_no_input_is_silently_ignored(topic: str) -> None:
    """Each value given is used in some result, or named as not used."""
    for request in requests(topic, optional=True):
        made = worked(topic, request)
        if made.status != "answered":
            continue
        rule = mind().rules[topic]
        for name, given in request.given.items():
            item = rule.input(name)
            assert item is not None
            if item.options or any(text.startswith(item.label) for text in made.not_used):
                continue
            listed = any(item.label in line.formula + line.step + line.numbers for line in made.working)
            assert listed or any(_changes(topic, request, name, given, times) for times in CHANGES), (
                name,
                request.given,
            )


def _changes(topic: str, request: Request, name: str, given: Given, times: Fraction | int) -> bool:
    """Whether another value of an input gives another answer."""
    changed = Given(given.value * times, given.unit, given.text)
    before, after = worked(topic, request), worked(topic, replace(request, given={**request.given, name: changed}))
    return [(r.exact, r.value) for r in before.results] != [(r.exact, r.value) for r in after.results]


def _invertible(topic: str) -> list[tuple[str, str]]:
    """(input, result) pairs of a rule that backwards questions may ask."""
    rule = mind().rules[topic]
    pairs = []
    for item in rule.inputs:
        if (
            item.practice
            and not item.many
            and item.kind.is_number
            and item.name not in rule.no_unknown
            and not item.extra
        ):
            pairs += [(item.name, name) for name in rule.answers[:1]]
    return pairs


@pytest.mark.parametrize("topic", TOPICS)
def test_backwards_and_forwards_agree_within_rounding(topic: str) -> None:
    rule = mind().rules[topic]
    for request in requests(topic)[:6]:
        forward = worked(topic, request)
        if forward.status != "answered":
            continue
        for unknown, target in _invertible(topic):
            result = next((one for one in forward.results if one.key == target), None)
            if unknown not in request.given or result is None or not isinstance(result.value, int | float):
                continue
            stated = Given(Fraction(base(result, exact=False)).limit_denominator(10**9), result.unit, result.text)
            given = {name: value for name, value in request.given.items() if name != unknown}
            back = answer(rule, replace(request, given=given, stated={target: stated}, asked=(unknown,)))
            if back.status != "answered":
                assert back.message  # no such value, or another is needed: said in words
                continue
            again = next((one for one in back.results if one.key == target), None)
            assert again is not None
            step = rule.step(target)
            assert step is not None
            slack = (
                float(step.rounding.of("in").base_step()) * 1.01 if step.rounding else 1e-6 * abs(base(result)) + 1e-9
            )
            assert abs(base(again, exact=False) - base(result, exact=False)) <= slack, (
                unknown,
                request.given,
                result,
                again,
            )
