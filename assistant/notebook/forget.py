"""Forgetting by name alone: whatever is kept under it, of whichever kind, when there is only one such thing."""

from __future__ import annotations

from rules.engine.answer import Answer

from . import reply
from .hearing import Hearing

KINDS = {
    "cloth": "in hand",
    "table": "size table",
    "price": "price",
    "habit": "habit",
    "measure": "measure",
    "need": "on the shopping list",
}


def by_name(hearing: Hearing, name: str) -> Answer | None:
    """Forget what has the name; asks back when several things have it; None when the line is hardly the notebook's."""
    name = name.removeprefix("the ").removeprefix("my ")
    found = [thing for thing in hearing.page.everything() if thing.name == name.lower() and thing.kind in KINDS]
    if not found:
        return (
            reply.unsure(f"I have nothing kept as {name}. Type history to see what was kept.")
            if hearing.alone
            else None
        )
    if len(found) > 1:
        kinds = [f"forget the {KINDS[thing.kind]} {name}" for thing in found]
        return reply.unsure(f"I have kept more than one thing as {name}. Which is to be forgotten?", kinds)
    hearing.page.drop(found[0].kind, found[0].name, found[0].owner)
    return reply.done(f"Forgotten: {KINDS[found[0].kind]} {found[0].body.get('called', name)}.", "undo brings it back.")
