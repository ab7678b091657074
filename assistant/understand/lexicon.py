"""Every phrase the rules know, and what it may mean; made from the declarations, so a new rule needs no edit here."""

from __future__ import annotations

import math
import pickle
from collections.abc import Callable, Hashable, Iterable, Mapping
from dataclasses import dataclass, field
from typing import Any, NamedTuple, TypeVar

from rules.cautions import WORDS
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import CHOICE

from .tokens import FILLERS, tokens

Made = TypeVar("Made")
MOST_LINES = 512  # so many lines' phrases are remembered


class Tag(NamedTuple):
    """What a phrase may mean. what: topic, called, role, option, result or stated; name: the input or step; option: its key."""

    what: str
    topic: str
    name: str = ""
    option: str = ""


# How loudly a phrase speaks for its rule by what it means there; a word of less weight is shared by too many rules.
LOUDNESS = {"topic": 3.0, "option": 0.9, "role": 0.6, "result": 0.6, "stated": 0.6}
SHARED = 0.12


@dataclass(slots=True)
class Entry:
    """A phrase and what it may mean. by_topic: its tags by topic, put in order when first asked for."""

    words: tuple[str, ...]
    tags: tuple[Tag, ...]
    weight: float
    names_topic: bool = False
    loud: tuple[tuple[str, float], ...] | None = None
    ordered: dict[str, tuple[Tag, ...]] = field(default_factory=dict)

    def by_topic(self) -> dict[str, tuple[Tag, ...]]:
        if not self.ordered:
            gathered: dict[str, list[Tag]] = {}
            for tag in self.tags:
                gathered.setdefault(tag.topic, []).append(tag)
            self.ordered = {topic: tuple(tags) for topic, tags in gathered.items()}
        return self.ordered


    def loudness(self) -> tuple[tuple[str, float], ...]:
        """How loudly it speaks for each topic; a word that many rules share speaks for none."""
        if self.loud is None:
            shared = self.weight < SHARED
            speaks = () if shared else self.by_topic().items()
            self.loud = tuple((topic, self.weight * max(LOUDNESS[tag.what] for tag in tags)) for topic, tags in speaks)
        return self.loud


class Match(NamedTuple):
    """A phrase met in a question: the tokens first..last (exclusive) and the readings it has."""

    first: int
    last: int
    tags: tuple[Tag, ...]
    weight: float
    entry: Entry | None = None

    def of(self, topic: str) -> tuple[Tag, ...]:
        """The readings that are of one topic."""
        if self.entry is not None:
            return self.entry.by_topic().get(topic, ())
        return tuple(tag for tag in self.tags if tag.topic == topic)


class Matches(list[Match]):
    """The phrases met in a line. known: what was made of them, for lines of the same words that differ in their numbers only."""

    __slots__ = ("known",)

    def __init__(self, found: Iterable[Match]) -> None:
        super().__init__(found)
        self.known: dict[Hashable, Any] = {}


def remembered(matches: list[Match], key: Hashable, make: Callable[[], Made]) -> Made:
    """What is made of the phrases of a line, made once for each key."""
    if not isinstance(matches, Matches):
        return make()
    if key not in matches.known:
        matches.known[key] = make()
    made: Made = matches.known[key]
    return made


# How plainly a word that calls for rules of its own names them, however many share it.
CALLED = 1.0
AXIS_WORDS = {
    "width": ("wide", "width", "across", "w", "breadth", "broad"),
    "length": ("long", "length", "l", "down"),
    "height": ("high", "height", "tall", "h", "upright"),
    "depth": ("deep", "depth", "d"),
    "girth": ("round", "around", "girth", "circumference"),
    "diameter": ("diameter", "across"),
    "thickness": ("thick", "thickness"),
}
# Words that say nothing by themselves, whatever a declaration has them say.
NOISE = frozenset("do does did it is the a an i me my that this so can will you we".split())
HOW_AXIS = {"wide": "width", "long": "length", "high": "height", "tall": "height", "deep": "depth", "thick": "thickness", "far": "reach"}


class Phrases(NamedTuple):
    """The phrases that begin with one word. alone: the word by itself; longer: second word -> phrases, the longest first."""

    alone: Entry | None
    longer: dict[str, list[Entry]]


@dataclass(slots=True)
class Lexicon:
    """phrases: first word -> the phrases that begin with it. words: every word known.

    closed: first word -> its phrases as bytes, opened when the word is first met, for a plain answer meets only a few.
    called: the phrases of the rules that are meant only when one of their own words is said; they are kept apart, so that
    no other question is read differently for them. calling: the first words of the phrases that call for such a rule.
    lines: the phrases met in the last lines, so that a line with other numbers is not searched again. met: the last words
    searched, and the phrases in them.
    """

    phrases: dict[str, Phrases] = field(default_factory=dict)
    words: frozenset[str] = frozenset()
    lines: dict[tuple[str, tuple[str, ...]], Matches] = field(default_factory=dict)
    spellings: dict[str, str] = field(default_factory=dict)
    topics: tuple[str, ...] = ()
    called: Lexicon | None = None
    closed: dict[str, bytes] = field(default_factory=dict)
    calling: frozenset[str] = frozenset()
    met: tuple[tuple[str, ...], list[Match]] = ((), [])

    def shut(self) -> Lexicon:
        """The same lexicon with its phrases as bytes, to be kept."""
        closed = self.closed | {word: pickle.dumps(tuple(found)) for word, found in self.phrases.items()}
        called = self.called.shut() if self.called is not None else None
        return Lexicon({}, self.words, {}, self.spellings, self.topics, called, closed, self.calling)

    def _opened(self, word: str) -> Phrases | None:
        """The phrases that begin with a word, if they are still closed."""
        if word not in self.closed:
            return None
        found = self.phrases[word] = Phrases(*pickle.loads(self.closed.pop(word)))
        return found

    def match(self, words: list[str], talked_of: str = "") -> list[Match]:
        """Every phrase in a list of tokens; one inside a longer one that means the same rule's is left out later.

        talked_of: the topic of what went before, which need not be called again.
        """
        key = (talked_of if self.called is not None and talked_of in self.called.topics else "", tuple(words))
        if key not in self.lines:
            if len(self.lines) >= MOST_LINES:
                self.lines.clear()
            self.lines[key] = Matches(self._match(words, key[0]))
        return self.lines[key]

    def _match(self, words: list[str], talked_of: str) -> list[Match]:
        found = self._meet(words)
        if self.called is not None and (talked_of in self.called.topics or not self.called.calling.isdisjoint(words)):
            others = self.called._meet(words)
            meant = self._calls(words, found) | ({talked_of} & set(self.called.topics))
            found += [kept for match in others if (kept := _only(match, meant)).tags] if meant else []
        return found

    def calls(self, words: list[str]) -> set[str]:
        """The topics that are meant only when called for, and are called for here."""
        if self.called is None or self.called.calling.isdisjoint(words):
            return set()
        return remembered(self.match(words), "calls", lambda: self._calls(words, self._meet(words)))

    def _calls(self, words: list[str], found: list[Match]) -> set[str]:
        assert self.called is not None
        return _called_for(words, self.called._meet(words), found)

    def _meet(self, words: list[str]) -> list[Match]:
        """The phrases in a list of tokens, kept for the last one: it is asked about more than once."""
        key = tuple(words)
        if self.met[0] != key:
            self.met = (key, self._found(words))
        return list(self.met[1])

    def _found(self, words: list[str]) -> list[Match]:
        found = []
        known, following = self.phrases, [*words[1:], ""]
        for first, (word, after) in enumerate(zip(words, following, strict=False)):
            phrases = known.get(word)
            if phrases is None and (phrases := self._opened(word)) is None:
                continue
            alone, longer = phrases
            for entry in longer.get(after, ()):
                last = first + len(entry.words)
                if last == first + 2 or tuple(words[first:last]) == entry.words:
                    found.append(Match(first, last, entry.tags, entry.weight, entry))
            if alone is not None:
                found.append(Match(first, first + 1, alone.tags, alone.weight, alone))
            if after in JOINED and (shared := self._shared(words[first : first + 4], longer)) is not None:
                found.append(Match(first, first + 1, shared.tags, shared.weight, shared))
        return found

    def _shared(self, words: list[str], longer: Mapping[str, list[Entry]]) -> Entry | None:
        """The phrase of which a word is the first half where the next one has the whole: "large" in "large and small squares"."""
        noun = words[3] if len(words) == 4 and words[2] not in DETERMINERS else ""
        other = self.phrases.get(words[2]) or self._opened(words[2]) if noun in longer else None
        if other is None or not any(len(entry.words) == 2 for entry in other.longer.get(noun, ())):
            return None
        return next((entry for entry in longer[noun] if len(entry.words) == 2), None)


JOINED = frozenset(("and", "plus", "&", "or"))
DETERMINERS = frozenset(("each", "every", "the", "a", "an", "my", "how", "what"))


# "I plan to make" is no plan that is asked for, nor is "make that plan wider".
NOT_CALLED = frozenset(("to", "on"))
ONE_KNOWN = frozenset(("the", "that", "this", "my"))


def _called_for(words: list[str], matches: list[Match], others: list[Match]) -> set[str]:
    """The topics whose own words are said; a word inside another rule's phrase ("lay plan") does not count."""
    longer = [match for match in others if match.last - match.first > 1 and match.entry is not None and match.entry.names_topic]
    return {
        tag.topic for match in matches for tag in match.tags
        if tag.what == "called" and not NOT_CALLED.intersection(words[match.last : match.last + 1])
        and not ONE_KNOWN.intersection(words[max(0, match.first - 1) : match.first])
        and not any(other.first <= match.first and match.last <= other.last for other in longer)
    }  # fmt: skip


def _only(match: Match, topics: set[str]) -> Match:
    """A match with its readings of some topics."""
    tags = tuple(tag for tag in match.tags if tag.topic in topics and tag.what != "called")
    assert match.entry is not None
    return match._replace(tags=tags, entry=Entry(match.entry.words, tags, match.weight, match.entry.names_topic))


def build(rules: Mapping[str, Rule]) -> Lexicon:
    """The lexicon of a set of rules."""
    called = {topic: rule for topic, rule in rules.items() if rule.called}
    lexicon = _build({topic: rule for topic, rule in rules.items() if topic not in called})
    if called:
        lexicon.called = _build(called)
        lexicon.words |= lexicon.called.words
        lexicon.spellings = {**lexicon.called.spellings, **lexicon.spellings}
        lexicon.topics = tuple(rules)
    return lexicon


def _build(rules: Mapping[str, Rule]) -> Lexicon:
    entries: dict[tuple[str, ...], dict[Tag, None]] = {}
    spellings: dict[str, str] = {}
    for rule in rules.values():
        for phrase, tag in _phrases(rule):
            key = tokens(phrase)
            if key and not NOISE.issuperset(key):
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
        if any(tag.what == "called" for tag in tags):
            weight = CALLED
        entry = Entry(key, tuple(tags), weight, any(tag.what == "topic" for tag in tags))
        beginning = lexicon.phrases.setdefault(key[0], Phrases(None, {}))
        if len(key) == 1:
            lexicon.phrases[key[0]] = beginning._replace(alone=entry)
        else:
            beginning.longer.setdefault(key[1], []).append(entry)
    for phrases in lexicon.phrases.values():
        for listed in phrases.longer.values():
            listed.sort(key=lambda entry: -len(entry.words))
    lexicon.words = frozenset(word for key in entries for word in key) | WORDS
    lexicon.calling = frozenset(key[0] for key, tags in entries.items() if any(tag.what == "called" for tag in tags))
    return lexicon


def _phrases(rule: Rule) -> Iterable[tuple[str, Tag]]:
    topic = rule.topic
    for phrase in dict.fromkeys((topic, *rule.says)):
        yield phrase, Tag("topic", topic)
    for phrase in rule.called:
        yield phrase, Tag("topic", topic)
        yield phrase, Tag("called", topic)
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
