"""A rule's example question with other numbers in it, for rules whose numbers come as lists, tables or sums."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from rules.engine.marking import TROUBLE, expected, makes_sense
from rules.engine.run import Run
from rules.engine.text import mixed

if TYPE_CHECKING:
    from rules.engine.answer import Answer
    from rules.engine.declare import Rule
    from rules.engine.request import Request
    from rules.engine.sample import Pick

    from ..conversation import Conversation
    from ..understand.mind import Mind

NUMERAL = re.compile(r"(?<![\w^/.])(?:\d+ \d+/\d+|\d+/\d+|\d+\.\d+|\d+)")
TRIES = 12
STEPS = 7  # a number is moved by up to three of its own steps either way


def varied(rule: Rule, talk: Conversation, pick: Pick, words: bool = False) -> tuple[str, Request, str] | None:
    """(question, request, the result wanted) of an example in other numbers; None when no example has such a result.

    words: a result in words is wanted, else one that is a number.
    """
    questions = answerable(rule, talk.mind, words)
    if not questions:
        return None
    for attempt in range(TRIES):
        plain = questions[pick(len(questions))]
        question = plain if attempt == TRIES - 1 else with_other_numbers(plain, pick)
        made, request = _ask(question, talk.mind)
        if request is None or made.topic != rule.topic:
            continue
        if question != plain and made.not_used and set(made.not_used) - set(_ask(plain, talk.mind)[0].not_used):
            continue  # one of the new numbers found no place
        if target := _target(rule, request, made, words):
            return question, request, target
    return None


@lru_cache(maxsize=1024)
def answerable(rule: Rule, mind: Mind, words: bool) -> tuple[str, ...]:
    """The rule's example questions that have a result of the kind wanted."""
    questions = rule.questions()
    asked = [(question, *_ask(question, mind)) for question in questions]
    return tuple(
        question
        for question, made, request in asked
        if request is not None and made.topic == rule.topic and _target(rule, request, made, words)
    )


def _ask(question: str, mind: Mind) -> tuple[Answer, Request | None]:
    """The answer to a question by itself, and how it was read when it was one plain sum answered forwards."""
    from ..conversation import Conversation

    asked = Conversation(mind)
    made = asked.ask(question)
    request = asked.context.request
    plain = made.status == "answered" and not made.table and request is not None and not request.stated
    return made, request if plain else None


def _target(rule: Rule, request: Request, made: Answer, words: bool) -> str:
    """The step that gives what the question asks for first, when that is a number (or words, as wanted); else ""."""
    first = made.results[0]
    return first.key if (first.unit == "text") is words and _wanted(rule, request, first.key) else ""


def _wanted(rule: Rule, request: Request, name: str) -> bool:
    """Whether a result can be asked for: a number, or words short enough to be typed."""
    try:
        return rule.step(name) is not None and makes_sense(expected(Run(rule, request), name))
    except TROUBLE:
        return False


def with_other_numbers(question: str, pick: Pick) -> str:
    """The question with each number moved a little, in steps of its own size: halves by halves, tens by fives.

    >>> with_other_numbers("half of 22 1/2 in and 60 cm", lambda count: count - 1)
    'half of 24 in and 75 cm'
    """
    return NUMERAL.sub(lambda met: _moved(met.group(), pick), question)


def _moved(text: str, pick: Pick) -> str:
    value = sum((Fraction(part) for part in text.split()), Fraction(0))
    step = _own_step(text, value)
    moved = value + step * (pick(STEPS) - STEPS // 2)
    if moved <= 0:
        moved = value
    return f"{float(moved):.{len(text.partition('.')[2])}f}" if "." in text else mixed(moved)


def _own_step(text: str, value: Fraction) -> Fraction:
    if "." in text:
        return Fraction(1, 10 ** len(text.partition(".")[2]))
    if "/" in text:
        return Fraction(1, value.denominator)
    return Fraction(5 if value >= 20 and value % 5 == 0 else 1)
