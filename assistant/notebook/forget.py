"""Forgetting by name alone, whatever is kept under it; and crossing things off the shopping list."""

from __future__ import annotations

from rules.engine.answer import Answer

from . import projects, reply
from .describe import key_of
from .hearing import Hearing
from .page import Thing, folded

KINDS = {"stock": "in hand", "table": "size table", "price": "price", "habit": "habit", "measure": "measure"}
BACK = "undo brings it back."


def by_name(hearing: Hearing, name: str) -> Answer | None:
    """Forget what has the name, of whichever kind; None when the line is hardly the notebook's."""
    names = (folded(name), key_of(name))
    found = [thing for thing in hearing.page.everything() if thing.name in names and thing.kind in KINDS]
    if not found:
        crossed = _cross_off(hearing, key_of(name))
        unknown = reply.unsure(f"I have nothing kept as {name}. Type history to see what was kept.")
        return crossed or (unknown if hearing.alone else None)
    for thing in found:
        hearing.page.drop(thing.kind, thing.name, thing.owner)
    kinds = reply.joined([KINDS[thing.kind] for thing in found])
    return reply.done(f"Forgotten: {found[0].body.get('called', name)} ({kinds}).", BACK)


def cross_off(hearing: Hearing) -> Answer | None:
    """Take a thing off the shopping list."""
    called = hearing.words("name")
    unknown = reply.unsure(f"There is no {called} on the shopping list.")
    return _cross_off(hearing, key_of(called)) or (unknown if hearing.alone else None)


def _cross_off(hearing: Hearing, key: str) -> Answer | None:
    needs = [thing for thing in hearing.page.all(projects.NEED) if thing.body["thing"] == key]
    return _drop(hearing, needs) if needs else None


def clear(hearing: Hearing) -> Answer | None:
    """Take everything off the shopping list."""
    needs = hearing.page.all(projects.NEED)
    return _drop(hearing, needs) if needs else reply.unsure("The shopping list is empty already.")


def _drop(hearing: Hearing, needs: list[Thing]) -> Answer:
    for thing in needs:
        hearing.page.drop(thing.kind, thing.name, thing.owner)
    called = reply.joined(list(dict.fromkeys(thing.body["called"] for thing in needs)))
    return reply.done(f"Off the shopping list: {called}.", BACK)
