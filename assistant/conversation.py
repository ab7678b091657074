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
from .understand import asides, follow, likely, say, weigh
from .understand.build import Habits, NeedsUnit, build, system_of_line
from .understand.doubt import against
from .understand.lexicon import Match
from .understand.mind import Mind
from .understand.passed_over import pass_over
from .understand.reading import Reading, Tried
from .understand.spelling import nearest, with_digits
from .understand.sum_words import read_sum
from .understand.tokens import FILLERS
from .understand.values import Line, lay_out

NEAR, NEAR_A_REFUSAL = 1.5, 0.5  # a refusal of what is plainly meant stands
LONGEST = 8000
MOST_STRANGE = 60
MANY = 3  # numbers in a line, so that it is likelier a sum than something to keep


@dataclass(slots=True)
class Context:
    """What went before: the last request and its answer, and what is still to be said.

    reckoned: the sum that was reckoned on with the last answer ("that x 3"), until something else is asked.
    """

    request: Request | None = None
    answer: Answer | None = None
    waiting: frozenset[str] = frozenset()
    changed: frozenset[str] = frozenset()
    choices: tuple[Request, ...] = ()
    pending_line: str = ""
    reckoned: Request | None = None


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
            going_on = follow.asks(heard) or len(heard.line.values) >= MANY or self.context.request is not None
            doubted = told.status in ("incomplete", "unclear") and going_on
            asks = follow.asks(heard) and heard.line.values
            if doubted and ((made := self.attempt(text, heard)).status == "answered" or (asks and made.topic)):
                return made  # "I knitted 27 stitches and they measure 4 1/2 in. What is my tension?" is no line for the notebook
            return replace(told, question=text)
        return practice.resumed(self.answer(text, heard, trouble), session, self)

    def answer(self, text: str, heard: Heard, trouble: str = "") -> Answer:
        """The answer to a line laid out, corrections and trouble noted. text: as typed."""
        made = self._answer(heard)
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
        text, numbers = with_digits(text)
        line = lay_out(self.mind.reader.read(text))
        pass_over(line)
        line.sum = read_sum(line, self.mind.reader)
        corrected = numbers + self._correct(line)
        asides.mark(line, self.mind.lexicon.words)
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

    def _answer(self, heard: Heard) -> Answer:
        nothing = next((value for value in heard.line.values if value.main.per is not None and not value.main.per.value), None)
        if nothing is not None:
            return say.over_nothing(nothing)
        if (self.context.request is not None or self.context.choices) and not follow.changes_subject(heard):
            followed = follow.follow(self, heard)
            if followed is not None:
                return self._keep(*followed)
        before = self.context
        made = self._fresh(heard)
        if made.status == "unclear" and before.request is not None:
            # What could not be read takes nothing away: the next line may still go on from what went before.
            self.context = replace(before, choices=self.context.choices, pending_line=self.context.pending_line)
        return made

    def onward(self, text: str) -> tuple[None, Answer] | None:
        """The answer to a sum that goes on from the last answer, and is the last answer from now on; None where there is none."""
        before = self.context
        made = self._fresh(self.hear(text))
        reckoned = self.context.request
        self.context = before
        if made.status != "answered":
            return None
        made = replace(made, not_used=())
        self.context = replace(before, answer=made, reckoned=reckoned)
        return None, made

    def readings(self, heard: Heard, every: bool = False) -> list[Reading]:
        """The likely readings of a line on its own, the best first. every: the less likely ones too."""
        return likely.readings(self.mind, heard.line, heard.matches, system_of_line(heard.line) or self.habits.system, every)

    def _fresh(self, heard: Heard) -> Answer:
        """The answer to a line on its own; what seemed an aside is a number like any other where nothing is answered without it."""
        made = self._alone(heard)
        if made.status == "answered" or (line := asides.other_way(heard.line, self.mind.lexicon.words)) is None:
            return made
        before = self.context
        again = self._alone(replace(heard, line=line))
        if again.status == "answered" or made.status == "unclear":
            return again
        self.context = before
        return made

    def _alone(self, heard: Heard) -> Answer:
        self.forget()
        readings = self.readings(heard)
        best = weigh.best(readings, heard.matches)
        if best is None or self.tried(best, heard).answer.status != "answered":
            # What seemed plainly meant cannot be answered so: the others are heard as well.
            readings = self.readings(heard, every=True)
            best = weigh.best(readings, heard.matches)
        if best is None or weigh.talks_of_something_else(best):
            return say.lost(self.mind, heard.line, readings)
        rivals = [one for one in readings if one is not best and one.score > best.score - weigh.margin(best, one)]
        rivals = [one for one in rivals if len(one.lost) <= len(best.lost)]
        rivals = [one for one in rivals if one.topic_score >= best.topic_score - 0.05 and weigh.as_well_heard(one, best)]
        best, *rivals = [one for one in (best, *rivals) if self.tried(one, heard).answer.status != "impossible"] or (best, *rivals)
        if self.tried(best, heard).answer.status == "answered":
            # A rule defers only to one that can do its work here.
            rivals = [one for one in rivals if one.rule.topic not in best.rule.defers or self.tried(one, heard).answer.status == "answered"]
        best, rivals = weigh.fuller(*weigh.better_heard(best, rivals))
        if rivals and not self._agree(best, rivals, heard):
            requests = [tried.request for one in (best, *rivals[:3]) if (tried := self.tried(one, heard)).request is not None]
            self.context = Context(choices=tuple(requests), pending_line=heard.line.text)
            return say.rivals(self.mind, (best, *rivals[:3]))
        if best.lost:
            return say.unplaced(best)
        if self.tried(best, heard).answer.status == "unclear":
            # Numbers that were taken for results told, and do not go with the rest, are likelier put in.
            again = likely.untold(best, heard.matches, system_of_line(heard.line) or self.habits.system)
            best = again if again is not None and self.tried(again, heard).answer.status == "answered" else best
        if self.tried(best, heard).answer.status != "answered":
            # A near rival that can be worked as it stands is likelier meant than a rule that still needs something.
            refused = self.tried(best, heard).answer.status == "impossible" and not weigh.misplaces(best, system_of_line(heard.line))
            near = [one for one in readings if one.score > best.score - NEAR and not one.lost and weigh.plain_enough(one, heard.matches)]
            if refused:
                near = [one for one in near if one.score > best.score - NEAR_A_REFUSAL or one.topic_score >= best.topic_score]
            near = [one for one in near if weigh.coverage(one) >= weigh.coverage(best) - weigh.LESS_HEARD]
            best = next((one for one in near if self.tried(one, heard).answer.status == "answered"), best)
        return self._said(best, heard)

    def _agree(self, best: Reading, rivals: list[Reading], heard: Heard) -> bool:
        """Whether every reading comes to the same: then there is nothing to ask."""
        made = [self.tried(reading, heard).answer for reading in (best, *rivals)]
        if any(one.status != "answered" for one in made):
            return False
        first, *others = [one.results[0] for one in made]
        return all(weigh.same_kind(one, first) and weigh.alike(one.exact, first.exact) for one in others)

    def tried(self, reading: Reading, heard: Heard) -> Tried:
        """A reading put to its rule; each only once."""
        if reading.tried is None:
            try:
                request = build(reading, self.habits, heard.line.mentions, None)
                reading.tried = Tried(request, work(reading.rule, request))
            except NeedsUnit as need:
                reading.tried = Tried(None, say.needs_unit(reading, need))
        return reading.tried

    def _said(self, reading: Reading, heard: Heard) -> Answer:
        """The answer to a reading, with the words that changed nothing, kept for what follows."""
        tried = self.tried(reading, heard)
        made = tried.answer
        named = reading.topic_score >= weigh.PLAINLY_MEANT and weigh.coverage(reading) >= weigh.PLAINLY_HEARD
        if made.status == "impossible" and not reading.line.values and not reading.listed and not named:
            return say.lost(self.mind, reading.line, [reading])  # nothing was told that could be impossible
        if made.status == "answered" and tried.request is not None and made.not_used:
            told, other = against(reading.rule, tried.request, made)
            if told:
                return say.disagree(reading, told, other)
            if len(idle := weigh.idle(reading, made)) > 1 and reading.topic_score < weigh.PLAINLY_NAMED:
                return say.unplaced(reading, idle)  # a rule hardly named, that has no use for two of the numbers
        if made.status == "answered" and (more := (*reading.asides, *weigh.unheard(reading))):
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
        best = weigh.best(readings, heard.matches)
        if best is None:
            return Live(unplaced=tuple(value.text for value in heard.line.values if not value.soft))
        return live(best.rule, best, heard.line)


def _changed(before: Request, request: Request) -> frozenset[str]:
    """What a line changed in the question before it."""
    if before.topic != request.topic:
        return frozenset()
    return frozenset(name for name, given in request.given.items() if before.given.get(name) != given)


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
