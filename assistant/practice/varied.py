"""A rule's example question with other numbers in it, for rules whose numbers come as lists, tables or sums."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from rules.engine.text import mixed

if TYPE_CHECKING:
    from rules.engine.declare import Rule
    from rules.engine.request import Request
    from rules.engine.sample import Pick

    from ..conversation import Conversation

NUMERAL = re.compile(r"(?<![\w^/.])(?:\d+ \d+/\d+|\d+/\d+|\d+\.\d+|\d+)")
TRIES = 8
STEPS = 7  # a number is moved by up to three of its own steps either way


def varied(rule: Rule, talk: Conversation, pick: Pick) -> tuple[str, Request, str] | None:
    """(question, request, the result wanted) of an example in other numbers; None when the rule answers in words alone."""
    from ..conversation import Conversation

    questions = [example.partition(" -> ")[0] for example in rule.examples]
    for attempt in range(TRIES):
        plain = questions[pick(len(questions))]
        question = plain if attempt == TRIES - 1 else with_other_numbers(plain, pick)
        asked = Conversation(talk.mind)
        made = asked.ask(question)
        request = asked.context.request
        if made.status != "answered" or made.topic != rule.topic or made.table or request is None or request.stated:
            continue
        if question != plain and set(made.not_used) - set(Conversation(talk.mind).ask(plain).not_used):
            continue  # one of the new numbers found no place
        target = next((one.key for one in made.results if one.unit != "text" and rule.step(one.key)), "")
        if target:
            return question, request, target
    return None


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
