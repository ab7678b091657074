"""A notebook in a file of its own, closed and reopened between sentences, as a pipe would have it."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from pathlib import Path

import pytest

from assistant.conversation import Conversation
from assistant.notebook import Notebook
from rules.engine.answer import Answer
from tests.support import mind


@dataclass
class Book:
    """Says lines to a notebook. together: as one conversation; else each line stands alone, as in a pipe."""

    path: Path
    together: bool = False
    talk: Conversation = field(init=False)

    def __post_init__(self) -> None:
        self.talk = Conversation(mind(), Notebook(self.path))

    def ask(self, line: str) -> Answer:
        if not self.together:
            self.talk.forget()
        return self.talk.ask(line)

    def done(self, *lines: str) -> str:
        """Say lines that must be carried out; the words of the last reply."""
        said = ""
        for line in lines:
            made = self.ask(line)
            assert made.status == "done", f"{line}: {made.status}, {made.headline or made.message}"
            said = made.headline
        return said

    def told(self, line: str) -> str:
        """Ask what must be answered; the words of the answer."""
        made = self.ask(line)
        assert made.status == "answered", f"{line}: {made.status}, {made.message}"
        return made.headline

    def refused(self, line: str) -> str:
        """Say what cannot be carried out; the words that say why."""
        made = self.ask(line)
        assert made.status in ("incomplete", "unclear", "impossible"), f"{line}: {made.status}, {made.headline}"
        return made.message


@pytest.fixture
def book(tmp_path: Path) -> Book:
    return Book(tmp_path / "notebook.db")


@pytest.fixture
def chat(tmp_path: Path) -> Book:
    return Book(tmp_path / "notebook.db", together=True)


@pytest.fixture
def reopened(tmp_path: Path) -> Callable[[], Book]:
    """The same file opened afresh each time it is called, as by a program started anew."""
    return lambda: Book(tmp_path / "notebook.db")
