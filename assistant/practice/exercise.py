"""An exercise: a sum with numbers a maker would meet, put in words, ready to be marked."""

from __future__ import annotations

import random
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING

from rules.engine.draw import EASIEST, draw
from rules.engine.kinds import ANY, COUNT, ROWS, STITCHES
from rules.engine.marking import Case, Expected
from rules.engine.plan import FAMILY
from rules.engine.slips import is_usable_width, nominal_width, slips_of, the
from rules.engine.text import plural, shown
from rules.engine.work import answer

from .told import capital
from .varied import varied

if TYPE_CHECKING:
    from rules.engine.answer import Answer
    from rules.engine.declare import Rule
    from rules.engine.request import Given, Request
    from rules.engine.sample import Pick
    from rules.engine.slips import Slip

    from ..conversation import Conversation

NO_NOUN = frozenset(("as", "to", "at", "in", "from", "each", "above", "below", "across", "between", "or", "also"))
TELL_ROUNDING = 2  # up to this level the exercise says how to round


@dataclass(frozen=True, slots=True)
class Exercise:
    """question: the exercise in words. case: what is wanted, and how it is marked. answer: it, with its working."""

    question: str
    case: Case
    answer: Answer

    @property
    def rule(self) -> Rule:
        return self.case.rule

    @property
    def expected(self) -> Expected:
        return self.case.expected

    @property
    def result(self) -> str:
        """The right answer as text, the other system in brackets."""
        made = self.answer.results[0]
        return f"{made.text} ({made.other})" if made.other else made.text


def answered(case: Case) -> Answer:
    """A case answered, with the working of what is wanted and of nothing else."""
    return answer(replace(case.rule, answers=(case.target,)), replace(case.request, asked=(case.target,)))


@lru_cache(maxsize=64)
def _slips(rule: Rule, system: str) -> tuple[Slip, ...]:
    return slips_of(rule, system)


def case_of(rule: Rule, request: Request, target: str) -> Case:
    """A request ready to be marked. Raises one of TROUBLE when it cannot be worked."""
    return Case(rule, request, target, _slips(rule, request.system))


def exercise(rule: Rule, talk: Conversation, pick: Pick, system: str, level: int = EASIEST) -> Exercise | None:
    """A fresh exercise of a rule, or None when it has none. pick: draws a whole number below the one given.

    Numbers are drawn from the ranges that the rule declares for practice; where those do not make a whole sum (a list
    of measures, a sum typed out), one of the rule's example questions is taken with other numbers in it.
    """
    for words in (False, True) if rule.family != FAMILY else ():  # a plan is many sums, each of a rule of its own
        request = draw(rule, pick, system, level, words) if _can_draw(rule, system, words) else None
        if request is not None:
            case = case_of(rule, request, request.asked[0])
            worked = answered(case)
            return Exercise(in_words(case, worked, level), case, worked)
        made = varied(rule, talk, pick, words)
        if made is not None:
            question, request, target = made
            case = case_of(rule, request, target)
            if case.expected.kind is not ANY and not request.asked:
                question = f"{question.rstrip('.?')}. {wanted(case.expected, level)}"
            return Exercise(question, case, answered(case))
    return None


@lru_cache(maxsize=1024)
def _can_draw(rule: Rule, system: str, words: bool) -> bool:
    """Whether exercises can be drawn at all: found once, since looking in vain takes long."""
    return draw(rule, random.Random(rule.topic).randrange, system, EASIEST, words) is not None


# -- in words --------------------------------------------------------------------------------------------------------


def in_words(case: Case, worked: Answer, level: int = EASIEST) -> str:
    """The exercise in words: what is given, what to take, what to find."""
    rule, request = case.rule, case.request
    given = [
        f"{item.label}{':' if item.options else ''} {_with_unit(given)}{_sold_as(case, name)}"
        for name, given in request.given.items()
        if (item := rule.input(name))
    ]
    taken = [
        f"{value.name}{':' if value.unit == 'text' else ''} {value.text}{_sold_as_label(case, value.name)}"
        for value in worked.assumed
        if value.name != "currency" and value.value != 0
    ]
    parts = [f"{capital(rule.topic)}: {', '.join(given)}." if given else f"{capital(rule.topic)}."]
    if taken:
        parts.append(f"Take {', '.join(taken)}.")
    return " ".join((*parts, wanted(case.expected, level)))


def _with_unit(given: Given) -> str:
    """A value as it was typed, with its unit where that stood on another (60 in "60 x 72 in")."""
    bare = given.text[-1:].isdigit() and isinstance(given.value, Fraction) and given.unit not in ("", "1")
    return shown(given.value, given.unit) if bare else given.text


def _sold_as(case: Case, name: str) -> str:
    """Beside a usable width, the width that the cloth is sold as: the learner is to tell them apart."""
    item = case.rule.input(name)
    if item is None or not is_usable_width(item):
        return ""
    unit = case.run.unit_of(item.kind)
    return f" (sold as {shown(nominal_width(case.run.get(name), case.run.system), unit)} wide)"


def _sold_as_label(case: Case, label: str) -> str:
    return "".join(_sold_as(case, item.name) for item in case.rule.inputs if item.label == label)


def wanted(want: Expected, level: int = EASIEST) -> str:
    """What to find, and on the easier levels how to round it."""
    told = rounding(want) if level <= TELL_ROUNDING else ""
    return f"{_asked(want)} Round {told}." if told else _asked(want)


def _asked(want: Expected) -> str:
    noun = want.noun or {STITCHES: "stitch", ROWS: "row"}.get(want.kind, "")
    if want.words:
        return f"{capital(want.label)}?"
    if want.kind in (COUNT, STITCHES, ROWS) and noun:
        return (
            f"How many {want.label}?"
            if plural(noun, 2) in want.label
            else f"How many {plural(noun, 2)} ({want.label})?"
        )
    if want.label.partition(" ")[0] in NO_NOUN:
        return f"Find this: {want.label}."
    return f"Find {the(want.label)}."


def rounding(want: Expected) -> str:
    """How a result is rounded here: "up to the next 1/4 in", "down to a whole number"."""
    how = want.here
    if how is None or how.unit.partition("/")[0] in ("GBP", "USD", "EUR", "money"):
        return ""
    if how.unit in ("1", "st", "row") and how.step == 1:
        return {"up": "up to the next whole number", "down": "down to a whole number"}.get(
            how.direction, "to the nearest whole number"
        )
    step = shown(how.base_step(), how.unit)
    return {"up": f"up to the next {step}", "down": f"down to the {step} below"}.get(
        how.direction, f"to the nearest {step}"
    )
