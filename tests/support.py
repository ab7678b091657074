"""Helpers the tests share: a mind woken once, questions asked in words, rules worked from typed values."""

from __future__ import annotations

from fractions import Fraction
from functools import lru_cache
from typing import Any

from assistant.conversation import Conversation
from assistant.understand.mind import Mind
from assistant.understand.values import base_value
from grammar.query import Measure
from rules.engine.answer import Answer, Result
from rules.engine.request import Given, Item, Request
from rules.engine.units import CURRENCIES, factor
from rules.engine.work import answer


@lru_cache(maxsize=1)
def mind() -> Mind:
    """One mind for the whole test run."""
    return Mind.awake(None)


def ask(question: str) -> Answer:
    """A question put in words to a fresh conversation."""
    return Conversation(mind()).ask(question)


def talk(*turns: str) -> list[Answer]:
    """Several lines of one conversation, in order."""
    conversation = Conversation(mind())
    return [conversation.ask(turn) for turn in turns]


def given(topic: str, name: str, value: Any) -> Given:
    """A typed value ("66 cm", "7", an option's key, or a list of typed values) in an input's or step's place."""
    rule = mind().rules[topic]
    declared = rule.input(name) or rule.step(name)
    assert declared is not None, f"{topic} has no input or step {name}"
    if isinstance(value, Given):
        return value
    if isinstance(value, list | tuple):
        items = [given(topic, name, one) for one in value]
        return Given(
            tuple(Item(one.value, one.unit, one.text) for one in items),
            items[0].unit if items else "",
            ", ".join(map(str, value)),
        )
    if not declared.kind.is_number and declared.kind.name != "any measure":
        return Given(value, "text", str(value))
    (chunk,) = mind().reader.read(str(value)).chunks
    assert isinstance(chunk, Measure), f"{value!r} is not one measure"
    number, unit = base_value(chunk, declared.kind, "")
    return Given(number, unit or "1", str(value))


def work(topic: str, *, system: str = "in", asked: str = "", stated: dict[str, Any] | None = None, unit: str = "",
         largest: bool | None = None, currency: str = "GBP", **inputs: Any) -> Answer:  # fmt: skip
    """A rule worked from typed values, without going through words."""
    request = Request(
        topic,
        given={name: given(topic, name, value) for name, value in inputs.items()},
        stated={name: given(topic, name, value) for name, value in (stated or {}).items()},
        asked=(asked,) if asked else (),
        system=system,
        unit=unit,
        largest=largest,
        currency=currency,
    )
    return answer(mind().rules[topic], request)


def result(made: Answer, key: str = "") -> Result:
    """A result of an answer by its step's name; the first when no name is given."""
    assert made.status == "answered", made.message
    if not key:
        return made.results[0]
    return next(one for one in made.results if one.key == key)


def exact(made: Answer, key: str = "", unit: str = "") -> float:
    """The unrounded value of a result, in a unit (its own by default)."""
    one = result(made, key)
    return (
        float(Fraction(one.exact) * factor(one.unit) / factor(unit)) if unit and unit != one.unit else float(one.exact)
    )


def rounded(made: Answer, key: str = "", unit: str = "") -> float:
    """The rounded value of a result, in a unit (its own by default)."""
    one = result(made, key)
    return (
        float(Fraction(one.value) * factor(one.unit) / factor(unit)) if unit and unit != one.unit else float(one.value)
    )


__all__ = ["CURRENCIES", "ask", "exact", "given", "mind", "result", "rounded", "talk", "work"]
