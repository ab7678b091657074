"""What the notebook's acts are handed: the open page, what was said, and the conversation it was said in."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.engine.answer import Answer

from .page import Page
from .phrases import Found
from .said import Token

if TYPE_CHECKING:
    from assistant.conversation import Conversation


@dataclass(slots=True)
class Hearing:
    """One sentence being heard. said: its tokens. open_page: opens the notebook, once it is needed."""

    open_page: Callable[[], Page]
    found: Found
    talk: Conversation
    said: Sequence[Token]
    _page: Page | None = None

    @property
    def page(self) -> Page:
        if self._page is None:
            self._page = self.open_page()
        return self._page

    def discard(self) -> None:
        """Keep nothing of what was done to the page."""
        if self._page is not None:
            self._page.discard()

    def words(self, slot: str) -> str:
        return self.found.words(slot)

    def has(self, slot: str) -> bool:
        return slot in self.found.slots

    @property
    def last(self) -> Answer | None:
        """The last question's answer, to be kept."""
        return self.talk.notebook.last if self.talk.notebook is not None else None

    @property
    def alone(self) -> bool:
        """Whether no question went before, that the line could be about."""
        return self.talk.context.request is None and not self.talk.context.choices

    @property
    def system(self) -> str:
        """The units the maker works in, "" when nothing says."""
        return self.talk.habits.forced or self.talk.habits.system
