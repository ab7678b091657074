"""What practice keeps between lines: the exercise being worked, the topic last explained, and the scores."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING, Protocol, runtime_checkable

if TYPE_CHECKING:
    from rules.engine.answer import Answer

    from ..conversation import Conversation


@dataclass(frozen=True, slots=True)
class Score:
    """How practice of a topic went: exercises right, exercises done, and the level reached (1 is the easiest)."""

    right: int = 0
    done: int = 0
    level: int = 1


@runtime_checkable
class ScoreBook(Protocol):
    """Where scores are kept by topic. The notebook is one, when there is a notebook."""

    def scores(self, topic: str) -> Score:
        """The score of a topic so far; Score() for one that was never practised."""

    def add_score(self, topic: str, right: bool, level: int) -> str:
        """Count an exercise, and keep the level at which the next one is set; "", or why it could not be kept."""


@dataclass
class Scores:
    """Scores kept for one conversation only."""

    kept: dict[str, Score] = field(default_factory=dict)

    def scores(self, topic: str) -> Score:
        return self.kept.get(topic, Score())

    def add_score(self, topic: str, right: bool, level: int) -> str:
        before = self.scores(topic)
        self.kept[topic] = Score(before.right + right, before.done + 1, level)
        return ""


class Session(Protocol):
    """An exercise, or several, being worked through line by line."""

    def hear(self, text: str, line: str, talk: Conversation) -> Answer | None:
        """The reply to a line; None when the line is no answer, and so a question of its own."""


@dataclass
class Practice:
    """The state of practice in a conversation. topic: last explained or practised."""

    session: Session | None = None
    topic: str = ""
    own: Scores = field(default_factory=Scores)

    def book(self, notebook: object | None) -> ScoreBook:
        """Where scores go: the notebook when it keeps them, else this conversation."""
        return notebook if isinstance(notebook, ScoreBook) else self.own
