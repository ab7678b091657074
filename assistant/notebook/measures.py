"""Measures of people: kept, told, forgotten. Things of the kind "measure"; the owner is the person, or ""."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

from assistant.understand.values import Value
from rules.engine.answer import Answer
from rules.engine.units import system_of

from . import reply
from .amounts import Amount, of_measure
from .describe import key_of
from .hearing import Hearing
from .page import Page, Thing
from .said import Token

KIND = "measure"
PERSON = "person"
ALL = ("measures", "measurements", "measure", "sizes")
JOINS = frozenset((",", ";", "and"))
IS = frozenset(("is", "are", "=", ":", "measures", "of", "at", "be"))
NOW = ("now", "today")
NOT_A_PART = frozenset((
    "what", "how", "why", "which", "if", "when", "much", "many", "for", "with", "in", "on", "by", "it", "that",
    "this", "will", "can", "do", "does"
))  # fmt: skip


@dataclass(frozen=True, slots=True)
class Named:
    """A value and the name it is given. text: as typed, of a tension with both its numbers."""

    name: str
    value: Value
    text: str


def pairs(tokens: Sequence[Token], text: str) -> list[Named] | None:
    """Names and values by turns, "waist is 66 cm, hip 92 cm and bust 88 cm"; None for anything else."""
    found: list[Named] = []
    name: list[Token] = []
    last = 0
    for token in tokens:
        if token.value is None:
            if name or token.lower not in (*JOINS, "my"):
                name.append(token)
            continue
        while name and name[-1].lower in IS:
            name.pop()
        if token.value.shape != "one" or any(word.lower in NOT_A_PART or word.lower in JOINS for word in name):
            return None
        if name:
            found.append(Named(text[name[0].start : name[-1].end], token.value, token.value.text))
            last = token.start
        elif found and _is_tension(found[-1].value, token.value):
            found[-1] = replace(found[-1], text=text[last : token.end])
        else:
            return None
        name = []
    return None if not found or any(token.lower not in NOW for token in name) else found


def _is_tension(first: Value, second: Value) -> bool:
    """Whether two values are the stitches and the rows of one tension."""
    return (first.main.unit, second.main.unit) == ("st", "row") and second.main.per is not None


def keep_own(hearing: Hearing) -> Answer | None:
    from . import habits  # habits look like measures until their names are known

    found = pairs(hearing.found.slots["about"], hearing.found.text)
    if found is None:
        return None
    if habits.is_habit(found[0].name):
        return habits.keep_pairs(hearing, found)
    return _keep(hearing, "", found)


def keep_other(hearing: Hearing) -> Answer | None:
    found = pairs(hearing.found.slots["about"], hearing.found.text)
    return None if found is None or _no_name(hearing) else _keep(hearing, hearing.words("who"), found)


def keep_has(hearing: Hearing) -> Answer | None:
    """ "Ines has a 70 cm waist", "Ines is 165 cm tall": of a person known, or named with a capital letter."""
    owner, value = hearing.words("who"), hearing.found.value("measure")
    if _no_name(hearing) or not (owner[:1].isupper() or hearing.page.get(PERSON, owner)):
        return None
    return _keep(hearing, owner, [Named(hearing.words("part") or "height", value, value.text)])


def keep_height(hearing: Hearing) -> Answer | None:
    return _keep(hearing, "", [Named("height", hearing.found.value("measure"), hearing.found.value("measure").text)])


def _no_name(hearing: Hearing) -> bool:
    """Whether what stands before 's is no name ("it's 5 cm", "what's my hip")."""
    first = hearing.found.slots["who"][0].lower
    return first in NOT_A_PART or first in ("the", "there", "here", "let", "he", "she", "who", "where", "my")


def _keep(hearing: Hearing, owner: str, found: Sequence[Named]) -> Answer | None:
    kept = []
    before = []
    for one in found:
        name = key_of(one.name)
        amount = of_measure(one.value.main, one.text, "length", hearing.system or _system(found))
        if amount.value <= 0:
            return reply.cannot(f"A measure of {amount.text} cannot be: it must be more than nothing. "
                                f"Nothing was kept. Such as: my {name} is 66 cm")  # fmt: skip
        earlier = hearing.page.get(KIND, name, owner)
        if earlier is not None and earlier.body["text"] != amount.text:
            before.append(f"{name} was {earlier.body['text']}")
        hearing.page.put(KIND, name, amount.body(), owner)
        kept.append(f"{name} {amount.text}")
    called = owner_called(hearing, owner)
    if owner and hearing.page.get(PERSON, owner) is None:
        hearing.page.put(PERSON, owner, {"called": called})
    whose = f"{called}'s" if owner else "your"
    return reply.done(f"Kept: {whose} {reply.joined(kept)}.", *([f"Before, {reply.joined(before)}."] if before else []))


def owner_called(hearing: Hearing, owner: str) -> str:
    """What a person is called back: "your daughter" for one spoken of as "my daughter"."""
    first = hearing.found.slots["who"][0] if owner else None
    before = [token.lower for token in hearing.said if first is not None and token.end <= first.start]
    return f"your {owner}" if before[-1:] == ["my"] else owner


def _system(found: Sequence[Named]) -> str:
    """The units of the other measures of the sentence, for one without."""
    systems = (system_of(one.value.main.unit) for one in found)
    return next((system for system in systems if system), "")


# -- telling -------------------------------------------------------------------------------------------------------


def tell_own(hearing: Hearing) -> Answer | None:
    return _tell(hearing, "", hearing.words("part"))


def tell_other(hearing: Hearing) -> Answer | None:
    owner = hearing.words("who")
    person = hearing.page.get(PERSON, owner)
    if person is None and (_no_name(hearing) or not hearing.alone):
        return None
    return _tell(hearing, owner, hearing.words("part"))


def _whose(page: Page, owner: str) -> str:
    person = page.get(PERSON, owner) if owner else None
    return f"{person.body['called'] if person is not None else owner}'s" if owner else "your"


def _tell(hearing: Hearing, owner: str, part: str) -> Answer | None:
    whose = _whose(hearing.page, owner)
    kept = hearing.page.all(KIND, owner)
    if part.lower() in ALL:
        if not kept:
            return _nothing(whose, "measures", owner, "waist")
        results = [reply.result(thing.name, Amount.of_body(thing.body)) for thing in kept]
        listed = reply.joined([f"{thing.name} {thing.body['text']}" for thing in kept])
        return reply.told(f"{whose[:1].upper()}{whose[1:]} measures: {listed}.", results)
    thing = hearing.page.get(KIND, key_of(part), owner) or hearing.page.get(KIND, key_of(_bare(part)), owner)
    if thing is None:
        asks = hearing.said[0].lower == "what" and hearing.alone
        return _other_thing(hearing, owner, part) or (_nothing(whose, part, owner, part) if asks else None)
    return reply.told(
        f"{whose[:1].upper()}{whose[1:]} {thing.name}: {thing.body['text']}.",
        [reply.result(thing.name, Amount.of_body(thing.body))],
    )


def _bare(part: str) -> str:
    """A part's name alone: "waist measurement" is waist."""
    name, _, last = part.rpartition(" ")
    return name if last.lower() in ALL or last.lower() == "measurement" else part


def _other_thing(hearing: Hearing, owner: str, part: str) -> Answer | None:
    from . import habits

    return None if owner else habits.tell_one(hearing, part)


def _nothing(whose: str, what: str, owner: str, example: str) -> Answer:
    name = f"{owner}'s" if owner else "my"
    return reply.needs(
        f"I have not kept {whose} {what} yet.", what, f"What is {whose} {what}?", f"{name} {example} is 66 cm"
    )


# -- forgetting ----------------------------------------------------------------------------------------------------


def forget_own(hearing: Hearing) -> Answer | None:
    from . import forget

    part = hearing.words("part")
    if hearing.page.get(PERSON, part) is not None:
        return _forget_all(hearing.page, part)
    if hearing.page.get(KIND, key_of(part)) is None:
        return forget.by_name(hearing, part)
    return _forget(hearing.page, "", [key_of(part)])


def forget_other(hearing: Hearing) -> Answer | None:
    owner, part = hearing.words("who"), hearing.words("part")
    kept = hearing.page.all(KIND, owner)
    names = [thing.name for thing in kept] if part.lower() in ALL else [key_of(part)]
    if not names or hearing.page.get(KIND, names[0], owner) is None:
        have = f" Of {owner} I have: {_names(kept)}." if kept else ""
        return reply.unsure(f"I have no {part} of {owner} to forget.{have}")
    return _forget(hearing.page, owner, names)


def forget_person(hearing: Hearing) -> Answer | None:
    """Everything of a person; or, when no such person is known, whatever else has that name."""
    from . import forget

    owner = hearing.words("who")
    if hearing.page.get(PERSON, owner) is None:
        return forget.by_name(hearing, owner)
    return _forget_all(hearing.page, owner)


def _forget_all(page: Page, owner: str) -> Answer:
    made = _forget(page, owner, [thing.name for thing in page.all(KIND, owner)])
    page.drop(PERSON, owner)
    return made


def _forget(page: Page, owner: str, names: Sequence[str]) -> Answer:
    gone = []
    for name in names:
        thing = page.get(KIND, name, owner)
        assert thing is not None
        gone.append(f"{thing.name} {thing.body['text']}")
        page.drop(KIND, name, owner)
    whose = _whose(page, owner)
    return reply.done(f"Forgotten: {whose} {reply.joined(gone) or 'measures'}.", "undo brings it back.")


def _names(things: Sequence[Thing]) -> str:
    return reply.joined([thing.name for thing in things])
