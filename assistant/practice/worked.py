"""One exercise being worked: tries counted, a hint before the answer, the reply to each try in words."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from . import marking
from .told import sentence

if TYPE_CHECKING:
    from rules.engine.marking import Case, Verdict

    from ..conversation import Conversation
    from .exercise import Exercise

MOST_TRIES = 3
HINT = (
    "hint",
    "help",
    "help me",
    "a hint",
    "give me a hint",
    "clue",
    "hint please",
    "i am stuck",
    "i'm stuck",
    "stuck",
)
TELL = (
    "skip",
    "tell me",
    "show me",
    "show",
    "answer",
    "the answer",
    "give up",
    "i give up",
    "pass",
    "next",
    "i don't know",
    "dont know",
    "i dont know",
    "don't know",
    "no idea",
    "solution",
    "show the answer",
    "tell me the answer",
    "what is it",
    "why",
    "explain",
    "show the working",
    "show me the working",
)
STOP = (
    "stop",
    "end",
    "enough",
    "finish",
    "done",
    "that's enough",
    "stop practice",
    "stop practising",
    "no more",
    "leave it",
    "end practice",
)


@dataclass(frozen=True, slots=True)
class Reply:
    """What is said to a try. over: the question is done with, answered or given away; right: answered rightly.

    tried: an answer was marked. slip: the name of the slip that was seen in it.
    """

    said: str
    over: bool = False
    right: bool = False
    slip: str = ""
    tried: bool = False

    @property
    def mark(self) -> str:
        """Right or wrong; "" for what is no try (a hint)."""
        return "right" if self.right else "wrong" if self.tried else ""


def hints_of(exercise: Exercise) -> tuple[str, ...]:
    """From the gentlest: what is done in which order, the last formula in words, its numbers put in."""
    lines = exercise.answer.working
    steps = "; then ".join(line.step[:1].lower() + line.step[1:].rstrip(".") for line in lines)
    formulas = [line.formula for line in lines if line.formula]
    numbers = [line.numbers for line in lines if line.numbers]
    return (steps, *formulas[-1:], *(f"work {sum_}" for sum_ in numbers[-1:]))


@dataclass(slots=True)
class Question:
    """A number that is asked for. right: the answer as text; hints: from the gentlest to the plainest."""

    case: Case
    right: str
    hints: tuple[str, ...]
    tries: int = 0
    hinted: int = 0

    def answered(self, text: str, line: str, talk: Conversation) -> Reply | None:
        """The reply to a line, or None when it is no answer to this."""
        if line in HINT:
            return Reply(self.hint())
        if line in TELL:
            return Reply(f"It is {self.right}.", over=True)
        read = marking.reading(text, self.case.expected, talk)
        if read is None:
            return None
        verdict = marking.mark(self.case, read)
        return self._right(read, verdict) if verdict.right else self._wrong(verdict)

    def hint(self) -> str:
        """The next hint; the last one again when there is no more."""
        self.hinted = min(self.hinted + 1, len(self.hints))
        return (
            f"Hint: {sentence(self.hints[self.hinted - 1])}"
            if self.hints
            else "There is no hint for this one: type tell me."
        )

    def _right(self, read: marking.Reading, verdict: Verdict) -> Reply:
        said = f"Right: {self.right}."
        if read.bare:
            said = f"Right: {self.right}. Say the unit too."
        elif not verdict.rounded:
            said = f"Right before rounding: rounded as the trade does, {self.right}."
        return Reply(said, over=True, right=True, tried=True)

    def _wrong(self, verdict: Verdict) -> Reply:
        self.tries += 1
        told = verdict.told or "That is not it."
        if self.tries >= MOST_TRIES:
            return Reply(f"{told} It is {self.right}.", over=True, slip=verdict.slip, tried=True)
        if verdict.slip:
            return Reply(f"Not yet. {told} Try again.", slip=verdict.slip, tried=True)
        return Reply(
            f"Not yet. {verdict.told} {self.hint()}" if verdict.told else f"Not yet. {self.hint()}", tried=True
        )
