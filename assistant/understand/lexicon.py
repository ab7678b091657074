"""Every phrase the rules know, and what it may mean; made from the declarations, so a new rule needs no edit here."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from typing import NamedTuple

from rules.cautions import WORDS
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import CHOICE

from .tokens import FILLERS, tokens


class Tag(NamedTuple):
    """What a phrase may mean. what: topic, role, option, result or stated; name: the input or step; option: its key."""

    what: str
    topic: str
    name: str = ""
    option: str = ""


class Match(NamedTuple):
    """A phrase met in a question: the tokens first..last (exclusive) and the readings it has."""

    first: int
    last: int
    tags: tuple[Tag, ...]
    weight: float


AXIS_WORDS = {
    "width": ("wide", "width", "across", "w", "breadth", "broad"),
    "length": ("long", "length", "l", "down"),
    "height": ("high", "height", "tall", "h", "upright"),
    "depth": ("deep", "depth", "d"),
    "girth": ("round", "around", "girth", "circumference"),
    "diameter": ("diameter", "across"),
    "thickness": ("thick", "thickness"),
}
HOW_AXIS = {"wide": "width", "long": "length", "high": "height", "tall": "height", "deep": "depth", "thick": "thickness", "far": "reach"}


@dataclass(slots=True)
class Lexicon:
    """phrases: first token -> [(all tokens, tags, weight)], longest first. words: every word known."""

    phrases: dict[str, list[tuple[tuple[str, ...], tuple[Tag, ...], float]]] = field(default_factory=dict)
    words: frozenset[str] = frozenset()
    spellings: dict[str, str] = field(default_factory=dict)
    topics: tuple[str, ...] = ()

    def match(self, words: list[str]) -> list[Match]:
        """Every phrase in a list of tokens; one inside a longer one that means the same rule's is left out later."""
        found = []
        phrases = self.phrases
        for first, word in enumerate(words):
            for phrase, tags, weight in phrases.get(word, ()):
                last = first + len(phrase)
                if len(phrase) == 1 or tuple(words[first:last]) == phrase:
                    found.append(Match(first, last, tags, weight))
        return found


def build(rules: Mapping[str, Rule]) -> Lexicon:
    """The lexicon of a set of rules."""
    entries: dict[tuple[str, ...], dict[Tag, None]] = {}
    spellings: dict[str, str] = {}
    for rule in rules.values():
        for phrase, tag in _phrases(rule):
            key = tokens(phrase)
            if key:
                entries.setdefault(key, {})[tag] = None
                spellings.update({folded: word for word in phrase.lower().replace("-", " ").split() for folded in tokens(word)})
    lexicon = Lexicon(topics=tuple(rules), spellings=spellings)
    count = len(rules)
    for key, tags in entries.items():
        spread = len({tag.topic for tag in tags})
        weight = math.log((count + 1) / spread) / math.log(count + 1) if count else 1.0
        if all(word in FILLERS for word in key):
            weight *= 0.3
        weight *= 1 + 0.35 * (len(key) - 1)
        lexicon.phrases.setdefault(key[0], []).append((key, tuple(tags), weight))
    for listed in lexicon.phrases.values():
        listed.sort(key=lambda entry: -len(entry[0]))
    lexicon.words = frozenset(word for key in entries for word in key) | WORDS
    return lexicon


def _phrases(rule: Rule) -> Iterable[tuple[str, Tag]]:
    topic = rule.topic
    for phrase in dict.fromkeys((topic, *rule.says)):
        yield phrase, Tag("topic", topic)
    for item in rule.inputs:
        yield from _input_phrases(topic, item)
    for step in rule.steps:
        yield from _step_phrases(topic, step)


def _input_phrases(topic: str, item: Input) -> Iterable[tuple[str, Tag]]:
    if item.kind is CHOICE:
        for option, phrases in item.options.items():
            for phrase in phrases:
                yield phrase, Tag("option", topic, item.name, option)
        return
    says = dict.fromkeys((item.label, *item.says, *_noun(item), *AXIS_WORDS.get(item.axis, ())))
    for phrase in says:
        yield phrase, Tag("role", topic, item.name)


def _step_phrases(topic: str, step: Step) -> Iterable[tuple[str, Tag]]:
    says = dict.fromkeys((step.shown_label, *step.says, *_noun(step), *AXIS_WORDS.get(step.axis, ())))
    for phrase in says:
        yield phrase, Tag("result", topic, step.name)
    for phrase in step.stated:
        yield phrase, Tag("stated", topic, step.name)


def _noun(declared: Input | Step) -> tuple[str, ...]:
    """A count's noun as a phrase; one that a choice gives is known by the choice's own phrases."""
    return (declared.noun,) if declared.noun and not declared.noun.startswith("{") else ()
