"""Which rules a name means, in practice: a topic, a word for one, a family, or nearly one of these."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ..explain import found

if TYPE_CHECKING:
    from rules.engine.declare import Rule

    from ..conversation import Conversation

LEADING = (
    "the ",
    "a ",
    "an ",
    "my ",
    "me ",
    "on ",
    "in ",
    "of ",
    "about ",
    "how to ",
    "rule for ",
    "rule of ",
    "sum for ",
    "some ",
    "with ",
)
TRAILING = (
    " rule",
    " rules",
    " sums",
    " sum",
    " please",
    " questions",
    " works",
    " work",
    " is worked",
    " is worked out",
)


def rules_named(name: str, talk: Conversation) -> tuple[Rule, ...]:
    """The rules a name means, the likeliest first; none when nothing is near it."""
    name = stripped(name)
    if not name:
        return ()
    rules = found(name, talk.mind.rules) or found(name.removesuffix("s"), talk.mind.rules)
    if len(rules) > 1 and rules[0].family != name:
        rules = _likeliest_first(name, rules, talk)
    return rules or _by_words(name, talk)


def sums_of(rules: tuple[Rule, ...], talk: Conversation) -> tuple[Rule, ...]:
    """The rules to practise: in place of a plan, which is many sums, the rules that it works."""
    found: dict[str, None] = {}
    for rule in rules:
        for topic in [part.rule.topic for part in rule.parts] or [rule.topic]:
            found[topic] = None
    return tuple(talk.mind.rules[topic] for topic in found)


def stripped(name: str) -> str:
    """A name without the small words around it."""
    name = " ".join(name.lower().split()).strip(" .!?,:")
    changed = True
    while changed:
        changed = False
        for word in LEADING:
            if name.startswith(word):
                name, changed = name.removeprefix(word), True
        for word in TRAILING:
            if name.endswith(word):
                name, changed = name.removesuffix(word), True
    return name


def nearest(name: str, talk: Conversation) -> tuple[str, ...]:
    """Topics and families spelt much like a name."""
    from difflib import get_close_matches  # only when a name was not known: it is slow to import

    names = sorted({*talk.mind.topics(), *talk.mind.families()})
    return tuple(get_close_matches(stripped(name), names, n=3))


def _by_words(name: str, talk: Conversation) -> tuple[Rule, ...]:
    """The rule that the words would be read as, were they a question, with misspelt words put right."""
    readings = talk.readings(talk.hear(name))
    best = [reading for reading in readings if reading.topic_score > 0]
    best.sort(key=lambda reading: (-reading.topic_score, reading.rule.topic))
    return (best[0].rule,) if best else ()


def _likeliest_first(name: str, rules: tuple[Rule, ...], talk: Conversation) -> tuple[Rule, ...]:
    """Several rules that share a word, the one that the word means most first."""
    scores = {reading.rule.topic: reading.topic_score for reading in talk.readings(talk.hear(name))}
    return tuple(sorted(rules, key=lambda rule: -scores.get(rule.topic, 0)))
