"""Practice: explanations, derivations, sums worked step by step, exercises that are marked, worksheets to print."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rules.engine.answer import Answer

    from ..conversation import Conversation
    from .state import Session

# A line is looked at more closely, and the rest of this package loaded, only when it begins or ends so.
BEGINS = (
    "explain",
    "derive",
    "deriv",
    "prove",
    "step",
    "work through",
    "walk me",
    "walk through",
    "take me through",
    "practise",
    "practice",
    "quiz",
    "test me",
    "drill",
    "exercise",
    "worksheet",
    "work sheet",
    "make a worksheet",
    "make me a worksheet",
    "print a worksheet",
    "a worksheet",
    "how do you work out",
    "teach me",
    "why is it",
    "where does",
    "let me practi",
    "i want to practi",
)
SURELY = ("explain ", "derive ", "step by step", "practise", "practice", "worksheet")
LONGEST_ANSWER = 4  # words
ENDS = ("step by step", "step-by-step", "stepwise")


def hear(text: str, talk: Conversation) -> Answer | None:
    """The answer to a line that asks for practice, or answers an exercise; None for any other line."""
    line = " ".join(text.lower().split()).strip(" .!?")
    if talk.practice.session is None and not line.startswith(BEGINS) and not line.endswith(ENDS):
        return None
    from .commands import reply

    return reply(text, line, talk)


def reading(text: str, talk: Conversation) -> str:
    """How a half-typed line is read where it is for practice; "" for any other line."""
    line = text.lower().strip()
    if talk.practice.session is not None and len(line.split()) <= LONGEST_ANSWER:
        return "answer to the exercise; hint, tell me, stop"
    return "practice" if line.startswith(SURELY) else ""


def resumed(answer: Answer, session: Session | None, talk: Conversation) -> Answer:
    """The answer to a line amid practice that practice did not take. Where it is none, the practice goes on."""
    if session is None or answer.status != "unclear":
        return answer
    from .told import unreadable

    talk.practice.session = session
    return unreadable(answer.question)
