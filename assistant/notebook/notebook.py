"""The notebook as the conversation knows it: it hears its own sentences, and fills in what a question takes from it."""

from __future__ import annotations

import re
from contextlib import ExitStack
from dataclasses import dataclass
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.practice.state import Score, Scores
from assistant.understand.follow import asks

from . import index
from .said import Token, tokens_of

if TYPE_CHECKING:
    from assistant.conversation import Context, Conversation, Heard
    from assistant.understand.build import Habits
    from rules.engine.answer import Answer

    from .phrases import Found
    from .store import Store

POLITE = frozenset(("please", "thanks", "thank", "you", "ok", "okay", ","))
WELL = ("done", "answered")
SPEAKS_OF = {
    "measures": "measure", "stash": "cloth in hand", "tables": "size table", "projects": "project",
    "keeping": "project", "habits": "habit", "lists": "list", "forget": "forget", "history": "changes",
    "whole": "all of it",
}  # fmt: skip
"""What the acts of a module speak of."""


class Notebook:
    """What the maker keeps, in the file at a path. It is opened only when it is there, or a sentence makes it."""

    def __init__(self, path: Path) -> None:
        self.path = path
        self._store: Store | None = None
        self.last: Answer | None = None
        """The last question's answer, which "keep that" keeps."""
        self._unkept = Scores()  # of practice, when the file cannot be written
        self._unit_asked: UnitAsked | None = None
        self.parts: tuple[str, ...] = ()
        """Names of the measures that the last answer took from here, for "and for Ines?"."""

    def _there(self) -> bool:
        """Whether there is a file; one that cannot be looked at is there, so that opening it tells the trouble."""
        try:
            return self.path.exists()
        except OSError:
            return True

    @property
    def store(self) -> Store:
        if self._store is None:
            from .store import Store  # sqlite3 takes a while to import, and most questions need no notebook

            self._store = Store(self.path)
        return self._store

    def hear(self, heard: Heard, talk: Conversation) -> Answer | None:
        """The reply to a sentence of the notebook's, or an answer that needs what is kept; None for any other line."""
        asked, self._unit_asked = self._unit_asked, None
        if asked is not None and (sentence := asked.answered(heard.line.text, talk)):
            return self.hear(talk.hear(sentence), talk)
        said = without_politeness(tokens_of(heard.line))
        if not said:
            return None
        for pattern, act, keeps in index.likely(said):
            found = index.meet(pattern, said, heard.line.text)
            if found is not None and keeps and heard.line.values and asks(heard):
                # "My ruler reads 0.69 inch. Nearest sixteenth?" is a question, and nothing to keep.
                made = talk.attempt(heard.line.text, heard)
                if made.status == "answered":
                    return made
            if found is not None and (told := self._carry_out(act, keeps, found, said, talk)) is not None:
                return told
        if not self._there():
            return None
        from . import fill

        return fill.answer(self, said, heard, talk)

    def habits(self, known: Habits) -> tuple[Habits, str]:
        """What the maker is used to, and words of trouble when that could not be read."""
        if not self._there():
            return known, ""
        from . import habits
        from .trouble import Trouble

        try:
            with self.store.reading() as page:
                return habits.of_page(page, known.forced), ""
        except Trouble as trouble:
            return known, str(trouble)

    def names(self) -> tuple[str, ...]:
        """The names of what is kept, as a maker would type them; none when the notebook cannot be read."""
        if not self._there():
            return ()
        from . import names
        from .trouble import Trouble

        try:
            with self.store.reading() as page:
                return names.of_page(page)
        except Trouble:
            return ()

    def reading(self, heard: Heard, talk: Conversation) -> tuple[str, tuple[str, ...]]:
        """What a half-typed line would do here, and what it lacks; ("", ()) where it is no sentence of the notebook's.

        A sentence that keeps something is tried on an empty page, so nothing is read or written, and no file looked at.
        """
        said, asked = without_politeness(tokens_of(heard.line)), self._unit_asked
        for pattern, act, keeps in index.likely(said):
            if "<file>" in pattern or not (keeps or "<" not in pattern):
                continue  # whether a question is meant for the notebook, only what is kept can tell
            found = index.meet(pattern, said, heard.line.text)
            made = self._act(act, found, said, talk, "rehearsing") if found is not None and keeps else None
            self._unit_asked = asked
            if made is not None or (found is not None and not keeps):
                lacks = ("unit",) if made is not None and any(one.name == "unit" for one in made.missing) else ()
                return SPEAKS_OF.get(act.partition(".")[0], ""), lacks
        return "", ()

    # -- practice -----------------------------------------------------------------------------------------------

    def scores(self, topic: str) -> Score:
        """How practice of a topic went so far, also in earlier conversations."""
        if not self._there():
            return self._unkept.scores(topic)
        from .trouble import Trouble

        try:
            with self.store.reading() as page:
                return page.scores().get(topic, Score())
        except Trouble:
            return self._unkept.scores(topic)

    def add_score(self, topic: str, right: bool, level: int) -> str:
        """Count an exercise; "", or why it counts for this conversation only."""
        from .trouble import Trouble

        try:
            with self.store.writing("") as page:
                page.add_score(topic, right, level)
        except Trouble as trouble:
            self._unkept.add_score(topic, right, level)
            return str(trouble)
        return ""

    # -- one sentence -------------------------------------------------------------------------------------------

    def _carry_out(self, act: str, keeps: bool, found: Found, said: list[Token], talk: Conversation) -> Answer | None:
        """What an act answers; None when the line was not meant for it. All it keeps is one transaction."""
        from .trouble import Trouble

        try:
            if keeps and not self.store.exists():
                tried = self._act(act, found, said, talk, "rehearsing")
                if tried is None or tried.status not in WELL:
                    return tried  # nothing to keep, so no file is made
            return self._act(act, found, said, talk, "writing" if keeps else "reading")
        except Trouble as trouble:
            from .reply import cannot

            return cannot(str(trouble))

    def _act(self, name: str, found: Found, said: list[Token], talk: Conversation, way: str) -> Answer | None:
        from .amounts import NoUnit
        from .hearing import Hearing
        from .reply import needs_unit

        module, _, function = name.partition(".")
        act = getattr(import_module(f".{module}", __package__), function)
        with ExitStack() as stack:
            hearing = Hearing(lambda: stack.enter_context(getattr(self.store, way)(found.text)), found, talk, said)
            try:
                made: Answer | None = act(hearing)
            except NoUnit as need:
                made = needs_unit(need.text, "number")
                self._unit_asked = UnitAsked(found.text, need.text, talk.context)
            if made is None or made.status not in WELL:
                hearing.discard()
        return made


@dataclass(frozen=True, slots=True)
class UnitAsked:
    """A sentence that was not kept because its number has no unit. before: what was spoken of then."""

    sentence: str
    number: str
    before: Context

    def answered(self, line: str, talk: Conversation) -> str:
        """The sentence with the unit that a line gives, "cm" or "66 cm"; "" for any other line, or one too late."""
        if talk.context is not self.before:
            return ""
        measure = f"{self.number} {line.strip(' .!').removeprefix(self.number).strip()}"
        values = talk.hear(measure).line.values
        if len(values) != 1 or values[0].text != measure or values[0].main.bare:
            return ""
        bare = rf"(?<![\w.,/]){re.escape(self.number)}(?![.,/]?\d)"
        return re.sub(bare, lambda _: measure, self.sentence, count=1)


def without_politeness(said: list[Token]) -> list[Token]:
    """The line without please and thanks at its ends."""
    first, last = 0, len(said)
    while first < last and said[first].lower in POLITE:
        first += 1
    while last > first and said[last - 1].lower in POLITE:
        last -= 1
    return said[first:last]
