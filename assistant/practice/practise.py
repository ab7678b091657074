"""Practising a topic: fresh exercises one after the other, marked, harder as it goes well, with a score by topic."""

from __future__ import annotations

import random
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.engine.answer import Answer, Result
from rules.engine.draw import EASIEST, HARDEST

from .exercise import Exercise, exercise
from .told import capital, worked
from .worked import STOP, Question, Reply, hints_of

if TYPE_CHECKING:
    from rules.engine.declare import Rule
    from rules.engine.sample import Pick

    from ..conversation import Conversation

HARDER = ("harder", "harder please", "too easy", "a harder one", "make it harder")
EASIER = ("easier", "easier please", "too hard", "an easier one", "make it easier")
SCORE = ("score", "my score", "how am i doing", "what is my score", "how many right")
IN_A_ROW = 2  # right ones, or wrong ones, before the level changes
TRIES = 12
HOW = "Type your answer with its unit; or hint, tell me, harder, easier or stop."


@dataclass
class Practising:
    """Exercises of some rules, endless until told to stop. pick draws whole numbers; system is "in", "cm" or "".

    row: right ones on end, or wrong ones when below nought. done, right: exercises finished, and those of them right.
    """

    rules: tuple[Rule, ...]
    name: str
    pick: Pick
    system: str = ""
    level: int = EASIEST
    row: int = 0
    done: int = 0
    right: int = 0
    exercise: Exercise | None = None
    question: Question | None = None
    trouble: str = ""  # why scores are not kept, once it was told

    def start(self, talk: Conversation) -> Answer:
        """The first exercise, at the level reached when the topic was last practised."""
        talk.practice.session = self
        if len(self.rules) == 1:
            reached = talk.practice.book(talk.notebook).scores(self.rules[0].topic).level
            self.level = min(max(self.level, reached), HARDEST)
        return self._next(talk, "")

    def hear(self, text: str, line: str, talk: Conversation) -> Answer | None:
        """The reply to a line, with the next exercise after it when this one is over."""
        score = f"{self.right} of {self.done} right" if self.done else "nothing was answered"
        if line in STOP:
            talk.practice.session = None
            return self._reply(f"Practice of {self.name} ends: {score}.", (), asks=False)
        if line in SCORE:
            return self._reply(f"So far: {score}, at level {self.level} of {HARDEST}.", ())
        if line in HARDER or line in EASIER:
            self._move(1 if line in HARDER else -1)
            return self._next(talk, f"Level {self.level} of {HARDEST}.")
        assert self.question is not None
        reply = self.question.answered(text, line, talk)
        if reply is None:
            return None
        if not reply.over:
            return self._reply(reply.said, (), reply)
        trouble = self._count(reply, talk)
        told = () if trouble == self.trouble else (f"The score counts for this conversation only. {trouble}",)
        self.trouble = trouble
        working = () if reply.right else self._working()
        return self._next(talk, reply.said, (*working, *told), reply)

    def _count(self, reply: Reply, talk: Conversation) -> str:
        """Keep the score; two right at once make it harder, two wrong ones easier; one that took help moves nothing.

        Gives "", or why the score could not be kept.
        """
        assert self.exercise is not None
        assert self.question is not None
        self.done += 1
        self.right += reply.right
        if not reply.right:
            self.row = min(self.row, 0) - 1
        elif self.question.tries or self.question.hinted:
            self.row = 0
        else:
            self.row = max(self.row, 0) + 1
        if abs(self.row) >= IN_A_ROW:
            self._move(1 if self.row > 0 else -1)
        return talk.practice.book(talk.notebook).add_score(self.exercise.rule.topic, reply.right, self.level)

    def _move(self, by: int) -> None:
        self.level = min(max(self.level + by, EASIEST), HARDEST)
        self.row = 0

    def _next(self, talk: Conversation, said: str, working: tuple[str, ...] = (), reply: Reply | None = None) -> Answer:
        """What was said to the last try, its working when it was not right, and the next exercise."""
        self.exercise = self._fresh(talk)
        if self.exercise is None:
            talk.practice.session = None
            return self._reply(nothing_to_practise(self.name), (), asks=False)
        self.question = Question(self.exercise.case, self.exercise.result, hints_of(self.exercise))
        asked = f"{self.done + 1}. {self.exercise.question}"
        return self._reply(said, (*working, asked), reply) if said else self._reply(asked, (HOW,))

    def _fresh(self, talk: Conversation) -> Exercise | None:
        """A new exercise; of several rules, one that gives numbers."""
        before = self.exercise.question if self.exercise else ""
        for _ in range(TRIES):
            rule = self.rules[self.pick(len(self.rules))]
            system = self.system or ("in" if self.pick(2) else "cm")
            made = exercise(rule, talk, self.pick, system, self.level)
            if made is not None and made.question != before:
                return made
        return None

    def _working(self) -> tuple[str, ...]:
        assert self.exercise is not None
        return tuple(f"  {worked(line)}" for line in self.exercise.answer.working)

    def _reply(self, said: str, paragraphs: tuple[str, ...], reply: Reply | None = None, asks: bool = True) -> Answer:
        """The words, and for JSON: the mark, the slip that was seen, the exercise now asked, the score."""
        results = {
            "marked": reply.mark if reply else "",
            "slip": reply.slip if reply else "",
            "said": said if reply else "",
            "exercise": self.exercise.question if self.exercise and asks else "",
            "score": f"{self.right} of {self.done}" if self.done else "",
        }
        return Answer(
            "answered",
            topic=self.exercise.rule.topic if self.exercise else "",
            headline=said,
            text=paragraphs or ("",),
            results=tuple(Result(name, word, "text", word) for name, word in results.items() if word),
        )


def nothing_to_practise(name: str) -> str:
    """Why a topic has no exercises."""
    return f"{capital(name)} answers in words: there is no number to practise. Type: explain {name}."


def dice() -> Pick:
    """Fresh numbers each time."""
    return random.SystemRandom().randrange
