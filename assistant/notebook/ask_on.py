"""Asking the conversation a question on the way to an answer of the notebook's."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction

from rules.engine.answer import Answer, Result
from rules.engine.units import factor

from . import fill, reply, said
from .amounts import Amount, of_measure
from .hearing import Hearing

TAKES = frozenset(
    ["takes", "take", "needs", "need", "needing", "wants", "requires", "of", "says", "taking", "a", "an", "another"]
)
Needed = tuple[Answer, Fraction, str]


def need_of(hearing: Hearing, question: str, had: Amount, width: Amount | None) -> Needed | Answer:
    """(the answer, how much is needed in base units, and in words) for what a thing should be enough for.

    When that is not known: an answer that says what is still to be said.
    """
    if question.lower() in ("it", "that", "this") and hearing.last is not None:
        needed = bought(hearing, hearing.last, had)
        if needed is not None:
            return hearing.last, exact(needed), needed.exact_text or needed.text
    outright = _said_outright(hearing, question, had)
    if outright is not None:
        return outright
    unfinished = None
    for asked in _ways(question, had, width):
        made = _ask(hearing, asked)
        needed = bought(hearing, made, had) if made.status == "answered" and _width_is_the_cloth(made, width) else None
        if needed is not None:
            return made, exact(needed), needed.exact_text or needed.text
        unfinished = made if made.status == "incomplete" else unfinished
    return _whole(hearing, question, had, width) or unfinished or _unknown(question, had)


def _ways(question: str, had: Amount, width: Amount | None) -> Iterator[str]:
    """The ways to ask how much a question needs: with the width of what is in hand first."""
    what = "how many" if had.kind == "count" else "how much cloth"
    if width is not None:
        yield f"{what} for {question}, in {width.text} wide cloth"
    yield f"{what} for {question}"


def _ask(hearing: Hearing, text: str) -> Answer:
    """A question of its own, whatever went before; kept measures are put in."""
    talk = hearing.talk
    before = talk.context
    talk.forget()
    heard = talk.hear(text)
    filled = fill.answer(talk.notebook, said.tokens_of(heard.line), heard, talk) if talk.notebook is not None else None
    made = filled if filled is not None else talk.attempt(text, heard)
    if made.status != "answered":
        talk.context = before
    return made


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
        if (
            step is not None
            and step.kind.name == had.kind
            and (had.kind == "count" or (step.rounding is not None and step.rounding.bought))
        ):
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
    tokens = said.tokens_of(hearing.talk.hear(question).line)
    spots = [spot for spot, token in enumerate(tokens) if token.value is not None]
    value = tokens[spots[0]].value if len(spots) == 1 else None
    if value is None or value.shape != "one" or (spots[0] and tokens[spots[0] - 1].lower not in TAKES):
        return None
    amount = of_measure(value.main, value.text, had.kind, hearing.system)
    return (Answer("answered"), amount.value, amount.text) if amount.kind == had.kind else None


def _whole(hearing: Hearing, question: str, had: Amount, width: Amount | None) -> Answer | None:
    """The sentence with what is in hand put into it, where a rule knows by itself whether that is enough."""
    wide = f" of {width.text} wide cloth" if width is not None else ""
    made = _ask(hearing, f"is {had.text}{wide} enough for {question}")
    return made if any(isinstance(result.value, str) and "enough" in result.value for result in made.results) else None


def _unknown(question: str, had: Amount) -> Answer:
    return reply.needs(f"I cannot tell how much {question} takes.", "amount needed", f"How much does {question} take?",
                       f"is it enough for a piece that takes {had.text}")  # fmt: skip
