"""Asking the conversation a question on the way to an answer of the notebook's."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from rules.engine.answer import Answer, Result
from rules.engine.units import factor

from . import said
from .amounts import Amount, of_measure
from .hearing import Hearing

Needed = tuple[Answer, Fraction, str]


def need_of(hearing: Hearing, question: str, had: Amount, width: Amount | None) -> Needed | None:
    """(the answer, how much is needed in base units, in words) for what a thing should be enough for; None when unknown."""
    for asked in _ways(question, had, width):
        made = _ask(hearing, asked)
        if made.status != "answered" or not _width_is_the_cloth(made, width):
            continue
        needed = bought(hearing, made, had)
        if needed is not None:
            value = exact(needed)
            return made, value, f"{needed.exact_text or needed.text}"
    return _said_outright(hearing, question, had)


def _ways(question: str, had: Amount, width: Amount | None) -> Iterator[str]:
    """The ways to ask how much a question needs: with the width of what is in hand first."""
    what = "how many" if had.kind == "count" else "how much cloth"
    if width is not None:
        yield f"{what} for {question}, in {width.text} wide cloth"
    yield f"{what} for {question}"


def _ask(hearing: Hearing, text: str) -> Answer:
    return hearing.talk.attempt(text, hearing.talk.hear(text))


def _width_is_the_cloth(made: Answer, width: Amount | None) -> bool:
    """Whether the width put in was taken for the cloth's, and not for that of what is made."""
    if width is None:
        return True
    took = [value.name for value in made.given if value.text == width.text]
    return all(any(word in name for word in ("cloth", "fabric", "usable", "yours")) for name in took)


def bought(hearing: Hearing, made: Answer, had: Amount) -> Result | None:
    """The first result that is bought, of the kind of what is in hand."""
    rule = hearing.talk.mind.rules.get(made.topic)
    for result in made.results:
        step = rule.step(result.key) if rule is not None else None
        if step is not None and step.kind.name == had.kind and (had.kind == "count" or (step.rounding is not None and step.rounding.bought)):
            return result
    return None


def exact(result: Result) -> Fraction:
    """A result before it was rounded, in base units."""
    try:
        size = factor(result.unit)
    except ValueError:  # a count's noun is no unit
        size = Fraction(1)
    value = result.exact if result.exact is not None else result.value
    return Fraction(value).limit_denominator(10**6) * size


def _said_outright(hearing: Hearing, question: str, had: Amount) -> Needed | None:
    """A question that only names an amount ("a bag that takes 80 cm")."""
    values = [token.value for token in said.tokens_of(hearing.talk.hear(question).line) if token.value is not None]
    if len(values) != 1 or values[0].shape != "one":
        return None
    amount = of_measure(values[0].main, values[0].text, had.kind, hearing.system)
    return (Answer("answered"), amount.value, amount.text) if amount.kind == had.kind else None


def whole(hearing: Hearing, called: str, had: Amount, width: Amount | None) -> Answer | None:
    """The sentence with what is in hand put into it, asked as a question of its own."""
    wide = f" {width.text} wide" if width is not None else ""
    made = _ask(hearing, f"is {had.text} of{wide} {called} enough for {hearing.words('question')}")
    return made if made.status != "unclear" else None
