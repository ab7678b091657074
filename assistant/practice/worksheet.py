"""A worksheet: so many exercises of a topic, the same for the same number, easy ones first."""

from __future__ import annotations

import random
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.engine.draw import EASIEST, HARDEST

from .exercise import Exercise, exercise
from .told import worked

if TYPE_CHECKING:
    from rules.engine.declare import Rule

    from ..conversation import Conversation

TRIES = 10


@dataclass(frozen=True, slots=True)
class Sheet:
    """number: what it can be made again from. lines: the line to type for that."""

    number: int
    title: str
    again: str
    exercises: tuple[Exercise, ...]


def make(number: int, count: int, rules: tuple[Rule, ...], name: str, system: str, talk: Conversation) -> Sheet:
    """The worksheet of a number. system: "in", "cm" or "" for both. It may hold fewer when a rule has few numbers."""
    dice = random.Random(f"{number} {name} {system}")
    made: list[Exercise] = []
    seen: set[str] = set()
    for place in range(count):
        level = EASIEST + place * HARDEST // count
        found = _fresh(rules, dice, system, level, seen, talk)
        if found is not None:
            made.append(found)
            seen.add(found.question)
    ending = {"in": " in inches", "cm": " in metric"}.get(system, "")
    again = f"worksheet {number} of {count} on {name}{ending}"
    return Sheet(number, f"{name[:1].upper()}{name[1:]}", again, tuple(made))


def _fresh(
    rules: tuple[Rule, ...], dice: random.Random, system: str, level: int, seen: set[str], talk: Conversation
) -> Exercise | None:
    """An exercise not yet on the sheet."""
    for _ in range(TRIES):
        rule = rules[dice.randrange(len(rules))]
        own = system or ("in" if dice.randrange(2) else "cm")
        made = exercise(rule, talk, dice.randrange, own, level)
        if made is not None and made.question not in seen:
            return made
    return None


def key(one: Exercise) -> tuple[str, list[str]]:
    """The answer of an exercise, and its working in lines."""
    return one.result, [worked(line) for line in one.answer.working]
