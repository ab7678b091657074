"""Which warnings an answer carries: its rule's own, and the trade's general ones by what the question mentions."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from .declare import Caution, Rule

if TYPE_CHECKING:
    from .run import Run

# "3 year old", "18 months old": a child, or a baby, by its age. Larger numbers are not kept among the words.
YOUNG_YEARS = frozenset(str(years) for years in range(13))
BABY_YEARS = frozenset(("0", "1", "2"))


def applies(caution: Caution, mentions: frozenset[str], run: Run | None) -> bool:
    """Whether a caution belongs here: by the words of the question, and by its condition."""
    if caution.mentions and not mentions.intersection(caution.mentions):
        return False
    if mentions.intersection(caution.unless) or not all(mentions.intersection(group) for group in caution.all_of):
        return False
    return not caution.when or (run is not None and run.holds_formula(caution.when))


def cautions_for(run: Run) -> tuple[str, ...]:
    """The cautions of a finished run, each with its source, none twice."""
    mentions = with_ages(run.request.mentions | _own_words(run.rule))
    met = [caution for caution in (*run.rule.cautions, *_brought_up(mentions)) if applies(caution, mentions, run)]
    return tuple(dict.fromkeys(f"{caution.text.rstrip('.')} ({caution.source})" for caution in met))


def _brought_up(mentions: frozenset[str]) -> list[Caution]:
    """The general cautions that some word of a question may bring up, in their own order."""
    by_word = _by_word()
    numbers = {number for word in mentions if word in by_word for number in by_word[word]}
    return [_general()[number] for number in sorted(numbers)]


@lru_cache(maxsize=1024)
def _own_words(rule: Rule) -> frozenset[str]:
    return frozenset((*rule.topic.split(), rule.family))


def _general() -> tuple[Caution, ...]:
    from rules.cautions import GENERAL  # here, since it is made of what this package declares

    return GENERAL


@lru_cache(maxsize=1)
def _by_word() -> dict[str, list[int]]:
    """Word -> the numbers of the general cautions that need it or one of its fellows. Each of them needs some word."""
    found: dict[str, list[int]] = {}
    for number, caution in enumerate(_general()):
        for word in caution.mentions or caution.all_of[0]:
            found.setdefault(word, []).append(number)
    return found


def with_ages(mentions: frozenset[str]) -> frozenset[str]:
    """The words, with "child" or "baby" added where an age says so.

    >>> "child" in with_ages(frozenset(("3", "year", "old")))
    True
    """
    aged = "aged" in mentions
    if "old" not in mentions and not aged:
        return mentions
    if "month" in mentions:
        return mentions | {"baby", "child"}
    if ("year" in mentions or aged) and mentions & YOUNG_YEARS:
        return mentions | {"child"} | ({"baby"} if mentions & BABY_YEARS else set())
    return mentions
