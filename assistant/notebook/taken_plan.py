"""What a kept plan takes: each thing that is bought, with its width and price from the part it is of; its cut list."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from rules.engine.answer import Answer, Result
from rules.engine.declare import Rule, Step
from rules.engine.kinds import LENGTH

from . import taken
from .amounts import Amount
from .describe import key_of

Body = dict[str, Any]


def bought(plan: Answer, rule: Rule) -> Iterator[tuple[Step, Result, Answer]]:
    """Each thing that the plan buys: its step, its result, and the part it is of."""
    things = {buy.step for part in rule.parts for buy in part.buys.values()}
    for result in plan.results:
        step = rule.step(result.key)
        if step is not None and result.key in things:
            of = [
                part
                for _, part in plan.parts
                if any(one.name == result.name and one.text == result.text for one in part.results)
            ]
            yield step, result, of[-1] if of else plan


def needs(plan: Answer, rule: Rule) -> list[Body]:
    """What goes on the shopping list."""
    counted = {buy.step: buy.of for part in rule.parts for buy in part.buys.values()}
    return [_need(step, result, part, counted[result.key]) for step, result, part in bought(plan, rule)]


def _need(step: Step, result: Result, part: Answer, of: str) -> Body:
    """A length, a weight or a number of things; one made to a length (a zip), or told in words, is one of that name."""
    cut_off = step.rounding is not None and step.rounding.bought
    if isinstance(result.value, str):
        return _one(f"{result.name}, {result.text}")
    if step.kind is LENGTH and not cut_off:
        return _one(f"{result.text} {result.name}")
    if step.kind is not LENGTH and step.noun:
        amount = Amount("count", Fraction(result.value), "1", result.text)
        called = of or result.unit
        return {
            "called": called,
            "thing": key_of(called),
            "amount": amount.body(),
            "noun": result.unit,
            "rounding": "",
            "part": True,
        }
    return taken.need(part, step, result, result.name)


def _one(called: str) -> Body:
    return {
        "called": called,
        "thing": key_of(called),
        "amount": Amount("count", Fraction(1), "1", "1").body(),
        "noun": "",
        "rounding": "",
        "part": True,
    }


def prices(plan: Answer, rule: Rule) -> Iterator[tuple[str, Amount]]:
    """What each thing bought by the length costs, as far as it was said."""
    for step, result, part in bought(plan, rule):
        price = taken.price(part) if step.rounding is not None and step.rounding.bought else None
        if price is not None:
            yield result.name, price


def pieces(plan: Answer) -> list[Body]:
    """What goes on the cut list, a line a kind of piece."""
    rows = plan.cut.texts if plan.cut is not None else ()
    return [
        {
            "what": f"{piece}, from {cloth}",
            "of": plan.topic,
            "text": f"{count} of {width} × {length}",
            "other": "",
            "part": True,
        }
        for piece, count, width, length, cloth in rows
    ]
