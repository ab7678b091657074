"""One conversation: each line answered on its own, as an answer to what was asked, or as a change to what went before."""

from __future__ import annotations

from dataclasses import dataclass, field, replace

from grammar import TooLong
from rules.engine.answer import Answer
from rules.engine.declare import Rule
from rules.engine.request import Given, Request
from rules.engine.work import answer as work

from . import drawing, practice
from .notebook import Notebook
from .practice.state import Practice
from .understand import follow, say
from .understand.asked import rate_asked, unit_asked
from .understand.beside import ASKING
from .understand.build import Habits, NeedsUnit, build, system_of_line
from .understand.choose import (
    CLOSE,
    PLAIN_KINDS,
    Reading,
    Tried,
    candidates,
    coverage,
    evidence,
    names_itself,
    read_as,
    reads_list,
    takes_list,
    unheard,
)
from .understand.doubt import against
from .understand.lexicon import Match
from .understand.mind import Mind
from .understand.place import one_of_another
from .understand.readers import PLAIN
from .understand.spelling import nearest
from .understand.sum_words import read_sum
from .understand.tokens import FILLERS
from .understand.values import Line, Value, kinds_of, lay_out

LONGEST = 8000
MOST_STRANGE = 60
# A line that names no topic this plainly is answered only when its other words fit a rule very well.
NAMED = 0.2
UNNAMED_SCORE = 3.0
UNNAMED_COVERAGE = 0.66
BARE_COVERAGE = 0.75
LOUD_ENOUGH, FAINT_COVERAGE = 0.3, 0.4  # a word that many rules know names none of them where little else is heard
UNASKED_EVIDENCE = 1.2
UNNAMED_EVIDENCE = 0.8
NEAR = 1.5
# A reading this plain is not weighed against those that the words speak for so much less.
PLAINLY_MEANT, PLAINLY_HEARD, QUIETER = 0.7, 0.75, 0.75
PLAINLY_NAMED = 1.0
LESS_HEARD = 0.2  # a reading that explains so much less of the line is no rival
LESS_HEARD_OF_THE_NAMED = 0.3
HALF_AS_WELL = 0.6
CLOSE_OF_A_NAME = 1.0
SHORTEST_LIST = 3  # numbers in a line that may be a list of things
MANY = 3  # numbers in a line, so that it is likelier a sum than something to keep


@dataclass(slots=True)
class Context:
    """What went before: the last request and its answer, and what is still to be said."""

    request: Request | None = None
    answer: Answer | None = None
    waiting: frozenset[str] = frozenset()
    changed: frozenset[str] = frozenset()
    choices: tuple[Request, ...] = ()
    pending_line: str = ""


@dataclass(slots=True)
class Heard:
    """A line laid out: its words, the phrases met, and what was corrected."""

    line: Line
    matches: list[Match]
    corrected: tuple[tuple[str, str], ...] = ()


@dataclass(slots=True)
class Live:
    """How a half-typed line is being read, for the line under the prompt."""

    topic: str = ""
    placed: tuple[tuple[str, str], ...] = ()
    missing: tuple[str, ...] = ()
    unplaced: tuple[str, ...] = ()


@dataclass
class Conversation:
    """Ask it a line, get an answer. It keeps what went before until told to forget."""

    mind: Mind
    notebook: Notebook | None = None
    habits: Habits = field(default_factory=Habits)
    context: Context = field(default_factory=Context)
    practice: Practice = field(default_factory=Practice)

    def forget(self) -> None:
        """Drop what went before: the next line stands alone."""
        self.context = Context()
        self.practice.session = None

    def ask(self, text: str) -> Answer:
        """The answer to a line. Never raises for anything a person can type."""
        try:
            heard = self.hear(text)
        except TooLong:
            return replace(say.too_long(len(text)), question=text[:200])
        trouble = self._take_habits()
        session = self.practice.session
        if (taught := practice.hear(text, self)) is not None:
            return replace(taught, question=text)
        if (drawn := drawing.hear(text, self)) is not None:
            return replace(drawn, question=text)
        if self.notebook is not None and (told := self.notebook.hear(heard, self)) is not None:
            doubted = told.status in ("incomplete", "unclear") and (follow.asks(heard) or len(heard.line.values) >= MANY)
            if doubted and (made := self.attempt(text, heard)).status == "answered":
                return made  # "I knitted 27 stitches and they measure 4 1/2 in. What is my tension?" is no line for the notebook
            return replace(told, question=text)
        return practice.resumed(self.answer(text, heard, trouble), session, self)

    def answer(self, text: str, heard: Heard, trouble: str = "") -> Answer:
        """The answer to a line laid out, corrections and trouble noted. text: as typed."""
        made = self._answer(text, heard)
        notes = tuple(f"I read “{typed}” as “{meant}”." for typed, meant in heard.corrected)
        made = replace(made, question=text, notes=(*notes, *made.notes, *([trouble] if trouble else [])))
        if self.notebook is not None and made.status == "answered":
            self.notebook.last = made
        return made

    def attempt(self, text: str, heard: Heard) -> Answer:
        """The answer to a line, what went before left as it was when there is none."""
        before = self.context
        made = self.answer(text, heard)
        if made.status != "answered":
            self.context = before
        return made

    def _take_habits(self) -> str:
        """The habits as the notebook has them now; words of trouble when it cannot be read."""
        if self.notebook is None:
            return ""
        self.habits, trouble = self.notebook.habits(self.habits)
        return trouble

    def hear(self, text: str) -> Heard:
        """A line laid out and its phrases met, misspelt words put right."""
        if len(text) > LONGEST:
            raise TooLong(len(text), LONGEST)
        line = lay_out(self.mind.reader.read(text))
        line.sum = read_sum(line, self.mind.reader)
        corrected = self._correct(line)
        talked_of = self.context.request.topic if self.context.request is not None else ""
        return Heard(line, self.mind.lexicon.match(line.words, talked_of), corrected)

    def _correct(self, line: Line) -> tuple[tuple[str, str], ...]:
        known = self.mind.lexicon.words
        corrected: list[tuple[str, str]] = []
        strange = 0
        for spot, word in enumerate(line.words):
            if spot in line.at_value or word in known or word in FILLERS or len(word) < 4 or not word.isalpha():
                continue
            strange += 1
            if strange > MOST_STRANGE:
                break  # a line of so many unknown words is no question with slips in it
            meant = nearest(word, known)
            if meant:
                line.words[spot] = meant
                start, end = line.origin[spot]
                corrected.append((line.text[start:end], self.mind.lexicon.spellings.get(meant, meant)))
        return tuple(corrected)

    # -- one line -----------------------------------------------------------------------------------------------

    def _answer(self, text: str, heard: Heard) -> Answer:
        if self.context.request is not None or self.context.choices:
            followed = follow.follow(self, heard)
            if followed is not None:
                return self._keep(*followed)
        return self._fresh(heard)

    def readings(self, heard: Heard) -> list[Reading]:
        """Every likely reading of a line on its own, the best first."""
        hint = system_of_line(heard.line) or self.habits.system
        found: list[Reading] = []

        def read(topic: str) -> None:
            rule = self.mind.rules[topic]
            found.append(read_as(rule, heard.line, heard.matches, hint or rule.home))

        loud = candidates(heard.matches)
        plain, loudest = False, loud[0][1] if loud else 0.0
        for topic, strength in loud:
            if plain and strength < QUIETER * loudest:
                break  # the loudest is plainly meant, and what follows is far less spoken of
            read(topic)
            plain = plain or (len(found) == 1 and _plain(found[0]))
        named = {topic for topic, _ in loud}
        for topic in dict.fromkeys((*self._lone(heard.line), *(() if plain else self._told_by_kind(heard)))):
            if topic not in named:
                read(topic)
        found.sort(key=lambda reading: (-reading.score, reading.rule.topic))
        return self._called(heard, found)

    def _lone(self, line: Line) -> tuple[str, ...]:
        """The topics that need no more than one measure and the unit to put it into, where a line says just that."""
        return self.mind.lone() if len(line.values) == 1 and (unit_asked(line) or rate_asked(line)) else ()

    def _told_by_kind(self, heard: Heard) -> list[str]:
        """The topics that a line speaks of by the kinds of its numbers, whatever its words."""
        line, topics = heard.line, list[str]()
        if line.sum is not None:
            topics += self.mind.takers("sum")
        if len(line.values) > 2 and one_of_another(line, line.values):
            topics += self.mind.paired()
        if len(line.values) > 1:
            kinds = frozenset(kind for value in line.values for kind in kinds_of(value.main)[:2] if value.main.unit)
            topics += self.mind.telling(kinds)
        if len(line.values) >= SHORTEST_LIST:
            lists = [topic for kind in sorted(PLAIN) for topic in self.mind.takers(kind)]
            topics += [topic for topic in lists if reads_list(self.mind.rules[topic], line, heard.matches)]
        return topics

    def _called(self, heard: Heard, found: list[Reading]) -> list[Reading]:
        """The readings; only those of what is called for by name ("plan a tote"), when it is."""
        calls = self.mind.lexicon.calls(heard.line.words)
        named = [one for one in found if one.rule.topic in calls and names_itself(one.rule, heard.matches)] if calls else []
        return named or found

    def _fresh(self, heard: Heard) -> Answer:
        self.forget()
        readings = self.readings(heard)
        best = self.best(readings, heard.matches)
        if best is None or _talks_of_something_else(best):
            return say.lost(self.mind, heard.line, readings)
        rivals = [one for one in readings if one is not best and one.score > best.score - _margin(best, one)]
        rivals = [one for one in rivals if len(one.lost) <= len(best.lost)]
        rivals = [one for one in rivals if one.topic_score >= best.topic_score - 0.05 and _as_well_heard(one, best)]
        best, *rivals = [one for one in (best, *rivals) if self.tried(one, heard).answer.status != "impossible"] or (best, *rivals)
        if self.tried(best, heard).answer.status == "answered":
            # A rule defers only to one that can do its work here.
            rivals = [one for one in rivals if one.rule.topic not in best.rule.defers or self.tried(one, heard).answer.status == "answered"]
        best, rivals = _fuller(best, rivals)
        if rivals and not self._agree(best, rivals, heard):
            requests = [tried.request for one in (best, *rivals[:3]) if (tried := self.tried(one, heard)).request is not None]
            self.context = Context(choices=tuple(requests), pending_line=heard.line.text)
            return say.rivals(self.mind, (best, *rivals[:3]))
        if best.lost:
            return say.unplaced(best)
        if self.tried(best, heard).answer.status != "answered":
            # A near rival that can be worked as it stands is likelier meant than a rule that still needs something.
            near = [one for one in readings if one.score > best.score - NEAR and not one.lost and plain_enough(one, heard.matches)]
            near = [one for one in near if coverage(one) >= coverage(best) - LESS_HEARD]
            best = next((one for one in near if self.tried(one, heard).answer.status == "answered"), best)
        return self._said(best, heard)

    def _agree(self, best: Reading, rivals: list[Reading], heard: Heard) -> bool:
        """Whether every reading comes to the same: then there is nothing to ask."""
        made = [self.tried(reading, heard).answer for reading in (best, *rivals)]
        if any(one.status != "answered" for one in made):
            return False
        first, *others = [one.results[0] for one in made]
        return all(one.unit == first.unit and _alike(one.exact, first.exact) for one in others)

    def tried(self, reading: Reading, heard: Heard) -> Tried:
        """A reading put to its rule; each only once."""
        if reading.tried is None:
            try:
                request = build(reading, self.habits, frozenset(heard.line.words), None)
                reading.tried = Tried(request, work(reading.rule, request))
            except NeedsUnit as need:
                reading.tried = Tried(None, say.needs_unit(reading, need))
        return reading.tried

    @staticmethod
    def best(readings: list[Reading], matches: list[Match]) -> Reading | None:
        """The best of the readings (which come best first) that speaks plainly enough of its rule.

        One that loses a number gives way to a list (the lines of a bill) that takes them all.
        """
        plain = [one for one in readings if plain_enough(one, matches)]
        if plain and plain[0].lost:
            return next((one for one in plain if not one.lost and takes_list(one)), plain[0])
        if plain and plain[0].topic_score < NAMED:
            return next((one for one in plain if _named_nearly(one, plain[0])), plain[0])
        return plain[0] if plain else None

    def _said(self, reading: Reading, heard: Heard) -> Answer:
        """The answer to a reading, with the words that changed nothing, kept for what follows."""
        tried = self.tried(reading, heard)
        made = tried.answer
        if made.status == "impossible" and not reading.line.values and not reading.listed:
            return say.lost(self.mind, reading.line, [reading])  # nothing was told that could be impossible
        if made.status == "answered" and tried.request is not None and made.not_used:
            told, other = against(reading.rule, tried.request, made)
            if told:
                return say.disagree(reading, told, other)
            if len(idle := _idle(reading, made)) > 1 and reading.topic_score < PLAINLY_NAMED:
                return say.unplaced(reading, idle)  # a rule hardly named, that has no use for two of the numbers
        if made.status == "answered" and (more := unheard(reading, self.mind.lexicon.words)):
            made = replace(made, not_used=(*made.not_used, *more))
        return self._keep(tried.request, made)

    def _keep(self, request: Request | None, made: Answer) -> Answer:
        if request is not None:
            waiting = frozenset(missing.name for missing in made.missing)
            before = self.context.request
            changed = _changed(before, request) if before is not None else frozenset()
            told = made if made.status == "answered" else self.context.answer
            self.context = Context(request, told, waiting, changed)
        return made

    def names(self) -> tuple[str, ...]:
        """What is kept in the notebook, by name, for completion."""
        return self.notebook.names() if self.notebook is not None else ()

    # -- for those who look on ----------------------------------------------------------------------------------

    def reading(self, text: str) -> Live:
        """How a half-typed line would be read. Changes nothing."""
        if told := practice.reading(text, self):
            return Live(told)
        try:
            heard = self.hear(text)
        except TooLong:
            return Live()
        kept, lacks = self.notebook.reading(heard, self) if self.notebook is not None else ("", ())
        if kept:
            return Live(f"notebook: {kept}", missing=lacks)
        readings = self.readings(heard)
        best = self.best(readings, heard.matches)
        if best is None:
            return Live(unplaced=tuple(value.text for value in heard.line.values if not value.soft))
        return live(best.rule, best, heard.line)


def _fuller(best: Reading, rivals: list[Reading]) -> tuple[Reading, list[Reading]]:
    """The best reading, or the rival to which its rule defers; and the rivals that do not defer to it."""
    best = next((one for one in rivals if one.rule.topic in best.rule.defers), best)
    return best, [one for one in rivals if one is not best and best.rule.topic not in one.rule.defers]


def _as_well_heard(reading: Reading, best: Reading) -> bool:
    """Whether a reading explains about as much of the line as the best one."""
    heard, most = coverage(reading), coverage(best)
    return heard >= most - LESS_HEARD and heard > HALF_AS_WELL * most - 1e-9


def _margin(best: Reading, other: Reading) -> float:
    """How near a rival is: one named by the very same word, and heard in all the same words, is a rival from farther off."""
    same = other.topic_score == best.topic_score < PLAINLY_NAMED and not (best.chosen or other.chosen)
    return CLOSE_OF_A_NAME if same and _telling_words(best) == _telling_words(other) else CLOSE


def _idle(reading: Reading, made: Answer) -> list[Value]:
    """The numbers of a line that were placed and then changed nothing."""
    idle = []
    for value in reading.line.values:
        labels = tuple(getattr(slot.declared, "label", "") or slot.name for slot in reading.placing.spots.get(value.number, ()))
        if labels and any(text.startswith(labels) for text in made.not_used):
            idle.append(value)
    return idle


def _telling_words(reading: Reading) -> set[int]:
    """Where the words stand that a reading heard, small ones left out."""
    return {spot for spot in reading.heard if reading.line.words[spot] not in FILLERS}


def _named_nearly(reading: Reading, best: Reading) -> bool:
    """Whether a reading names its topic, and fits nearly as well as one that does not."""
    near = reading.score > best.score - CLOSE and coverage(reading) >= coverage(best) - LESS_HEARD_OF_THE_NAMED
    return near and reading.topic_score >= NAMED and not reading.lost


def _talks_of_something_else(reading: Reading) -> bool:
    """Whether a line without a number, that asks for no result, says mostly what the rule does not know."""
    if reading.line.values or reading.asked or reading.chosen or reading.listed:
        return False
    unknown = len(unheard(reading, frozenset()))
    return unknown > max(2, len(reading.heard))


def _changed(before: Request, request: Request) -> frozenset[str]:
    """What a line changed in the question before it."""
    if before.topic != request.topic:
        return frozenset()
    return frozenset(name for name, given in request.given.items() if before.given.get(name) != given)


def _alike(one: object, other: object) -> bool:
    """Whether two exact results are the same but for a hair."""
    if isinstance(one, int | float) and isinstance(other, int | float):
        return abs(one - other) <= 1e-6 * max(1.0, abs(one))
    return one == other


def _plain(reading: Reading) -> bool:
    """Whether a reading names its topic, finds a place for every number, and is heard in most of the line."""
    return reading.topic_score >= PLAINLY_MEANT and not reading.placing.unplaced and coverage(reading) >= PLAINLY_HEARD


def plain_enough(reading: Reading, matches: list[Match]) -> bool:
    """Whether a reading may be answered: its topic is named, or all its other words fit the rule very well."""
    if not reading.line.values and not any(word in ASKING or word == "?" for word in reading.line.words):
        return coverage(reading) >= BARE_COVERAGE  # a line that gives and asks nothing is at most the name of a topic
    if reading.topic_score >= NAMED:
        return reading.topic_score >= LOUD_ENOUGH or bool(reading.asked) or coverage(reading) >= FAINT_COVERAGE
    if reading.lost or reading.score < UNNAMED_SCORE or coverage(reading) < UNNAMED_COVERAGE:
        return False
    spoken, placed, telling = reading.placing.spoken, len(reading.placing.spots), evidence(reading, matches)
    if not reading.asked:  # nothing in particular is asked for: every number must be spoken for
        return spoken == placed and telling >= UNASKED_EVIDENCE
    by_kind = sum(1 for slots in reading.placing.spots.values() if slots[0].kind not in PLAIN_KINDS)
    return spoken + by_kind >= placed and telling >= UNNAMED_EVIDENCE


def live(rule: Rule, reading: Reading, line: Line) -> Live:
    """A reading as the line under the prompt shows it."""
    placed = []
    for value in line.values:
        slots = reading.placing.spots.get(value.number)
        if slots:
            labels = [getattr(slot.declared, "label", "") or slot.name for slot in slots]
            placed.append((" × ".join(labels), value.text))
    filled = {slot.name for slots in reading.placing.spots.values() for slot in slots} | set(reading.chosen) | set(reading.listed)
    missing = tuple(item.label for item in rule.inputs if item.default is None and not item.extra and item.name not in filled)
    return Live(rule.topic, tuple(placed), missing, tuple(value.text for value in reading.lost))


__all__ = ["Context", "Conversation", "Given", "Heard", "Live"]
