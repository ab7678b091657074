"""Questions that take a measure from the notebook: "elastic for my waist", "ease at the bust for Ines".

What is kept is put into the line beside the words that name it, and the line is then read like any other: so a measure
finds its place in a rule by the same words that a typed one would. The answer lists it as given, from the notebook.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from assistant.understand.tokens import tokens
from rules.engine.answer import Answer
from rules.engine.request import Given

from .measures import KIND, PERSON
from .page import Page, Thing
from .reply import FROM_HERE
from .said import Token
from .trouble import Trouble

if TYPE_CHECKING:
    from assistant.conversation import Conversation, Heard

    from .notebook import Notebook

ME = ("my", "me", "myself")
NEAR = 4  # tokens within which a number typed for a name follows it: "my waist, 70 cm", "my waist measurement is 70 cm"
NO_ROLE = frozenset(("and", "with", "for", "in", "at", "on", "but", "round", "around", "please", "how", "what"))
BETWEEN = frozenset((",", ":", "=", "is", "are", "of", "was", "measure", "measures", "measurement", "size", "now"))


@dataclass(frozen=True, slots=True)
class Filling:
    """A kept measure to be put into the line after a position, as words."""

    at: int
    words: str
    text: str
    part: str
    whose: str


def answer(notebook: Notebook, said: Sequence[Token], heard: Heard, talk: Conversation) -> Answer | None:
    """The answer to a line with what it names put in; None when it names nothing kept, or is better without."""
    try:
        with notebook.store.reading() as page:
            owners = _owners(page, said)
            kept = {owner: page.all(KIND, owner) for owner in owners}
    except Trouble:
        return None  # the trouble is told with the answer
    if not any(kept.values()):
        return None
    fillings = [
        filling for owner, called in owners.items() for filling in _named(said, kept[owner], called, owner == "")
    ]
    if not fillings:
        fillings = _wanted(notebook, said, heard, talk, owners, kept)
    return _answer(notebook, heard, talk, fillings) if fillings else None


def _owners(page: Page, said: Sequence[Token]) -> dict[str, str]:
    """Whose measures the line may take: owner -> what the owner is called; the maker is "" and called "your"."""
    words = {token.lower for token in said}
    people = {person.name: f"{person.body['called']}'s" for person in page.all(PERSON)}
    found = {name: called for name, called in people.items() if set(name.split()) <= words}
    return {**found, **({"": "your"} if words & set(ME) else {})}


def _named(said: Sequence[Token], kept: Iterable[Thing], called: str, own: bool) -> list[Filling]:
    """The kept measures that the line names and gives no number for."""
    found = []
    for thing in kept:
        spot = _spot(said, thing.name, own)
        if spot is not None and not _has_number(said, spot[0], spot[1]):
            text = thing.body["text"]
            found.append(Filling(said[spot[1] - 1].end, f" {text}", text, thing.name, called))
    return found


def _spot(said: Sequence[Token], name: str, own: bool) -> tuple[int, int] | None:
    """Where the line names a measure: the tokens first..last (exclusive). One's own is "my waist", or for "me"."""
    words = tokens(name)
    stems = [tokens(token.lower) for token in said]
    for first in range(len(said) - len(words) + 1):
        if tuple(part for stem in stems[first : first + len(words)] for part in stem) == words:
            before = said[first - 1].lower if first else ""
            if not own or before == "my" or any(token.lower in ("me", "myself") for token in said):
                return first, first + len(words)
    return None


def _has_number(said: Sequence[Token], first: int, last: int) -> bool:
    """Whether a number stands beside the name already."""
    before = said[first - 1] if first else None
    if before is not None and before.value is not None:
        return True
    for place in range(last, min(last + NEAR, len(said))):
        if said[place].value is not None:
            return said[place - 1].lower != "," or not _has_word_of_its_own(said, place)
        if said[place].lower not in BETWEEN:
            return False
    return False


def _has_word_of_its_own(said: Sequence[Token], place: int) -> bool:
    """Whether a number goes with the word after it: "my waist, 2.5 cm wide", but not "my waist, 70 cm, 1 in wide"."""
    after = said[place + 1].lower if place + 1 < len(said) else ""
    return after.isalpha() and after not in NO_ROLE


def _wanted(
    notebook: Notebook,
    said: Sequence[Token],
    heard: Heard,
    talk: Conversation,
    owners: Mapping[str, str],
    kept: Mapping[str, Sequence[Thing]],
) -> list[Filling]:
    """For "for Ines" alone: the measures that the question still needs, or that the answer before took of another."""
    before, last = talk.context, notebook.last
    made = talk.attempt(heard.line.text, heard)
    talk.context, notebook.last = before, last
    wanted = [missing.name for missing in made.missing] if made.status == "incomplete" else list(notebook.parts)
    found = []
    for owner, called in owners.items():
        for thing in kept[owner]:
            label = next((name for name in wanted if set(tokens(thing.name)) <= set(tokens(name))), "")
            if label and _spot(said, thing.name, own=False) is None:
                text = thing.body["text"]
                found.append(
                    Filling(len(heard.line.text.rstrip(" ?.!")), f", {label} {text}", text, thing.name, called)
                )
    return found


def _answer(notebook: Notebook, heard: Heard, talk: Conversation, fillings: Sequence[Filling]) -> Answer | None:
    """The filled line's answer; None, with nothing changed, when it is not understood so."""
    before, last = talk.context, notebook.last
    made = asked(talk, heard.line.text, fillings, {})
    if made.status == "unclear" or not any(value.why.endswith(FROM_HERE) for value in made.given):
        talk.context, notebook.last = before, last
        return None
    notebook.parts = tuple(filling.part for filling in fillings)
    return made


def asked(talk: Conversation, text: str, fillings: Sequence[Filling], kept: Mapping[str, Given]) -> Answer:
    """The answer to a text with fillings put in, and tables (by kind) handed with it; its question is the text."""
    whole, spans = _filled(text, fillings)
    line = talk.hear(whole)
    line.line.kept.update(kept)
    for value in line.line.values:
        for start, end, filling in spans:
            if start <= value.start and value.end <= end:
                value.why = f"{filling.whose} {filling.part}, {FROM_HERE}"
    made = talk.attempt(whole, line)
    people = {filling.whose.lower().removesuffix("'s") for filling in fillings}
    unused = tuple(word for word in made.not_used if word.lower().removesuffix("'s") not in people)
    made = replace(made, question=text, not_used=unused)
    if made.status == "answered" and talk.notebook is not None:
        talk.notebook.last = made
    return made


def _filled(text: str, fillings: Sequence[Filling]) -> tuple[str, list[tuple[int, int, Filling]]]:
    """The text with every filling in its place, and where each then stands."""
    made, at = "", 0
    spans = []
    for filling in sorted(fillings, key=lambda one: one.at):
        made += text[at : filling.at]
        spans.append((len(made), len(made) + len(filling.words), filling))
        made += filling.words
        at = filling.at
    return made + text[at:], spans
