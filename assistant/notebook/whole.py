"""The whole notebook as JSON and back, nothing lost: every thing, every sentence, every change."""

from __future__ import annotations

import json
from typing import Any

from rules.engine.answer import Answer
from rules.engine.draw import HARDEST
from rules.engine.text import plural

from . import reply
from .hearing import Hearing
from .page import TABLES, Page
from .schema import MIGRATIONS

FORMAT = "ellwand notebook"
BODIES = {"thing": ("body",), "change": ("before", "after")}
TEXTS = frozenset(("kind", "owner", "name", "said", "at", "does", "topic"))
SINCE = {"score": 3}  # the version in which a part came in; earlier files lack it
OLDEST = 2  # the first version that was ever written to a file of its own
Whole = dict[str, list[dict[str, Any]]]


COUNTED = {"measure": "measure", "table": "size table", "stock": "thing in hand", "project": "project", "note": "note",
           "need": "need on the shopping list", "habit": "habit"}  # fmt: skip


def tell(hearing: Hearing) -> Answer | None:
    """What there is in the notebook, counted, and how to see it."""
    counts = [(len(hearing.page.all(kind)), noun) for kind, noun in COUNTED.items()]
    counts.append((len(hearing.page.scores()), "score of practice"))
    held = [_counted(count, noun) for count, noun in counts if count]
    if not held:
        return reply.told("The notebook is empty. Such as: my waist is 66 cm")
    more = "To see more: my measures, size tables, stash, projects, notes, shopping list, habits, history."
    return reply.told(f"In the notebook: {reply.joined(held)}.", notes=[more])


def tell_scores(hearing: Hearing) -> Answer | None:
    """How practice went, a line a topic."""
    scores = hearing.page.scores()
    if not scores:
        return reply.told("Nothing was practised yet. Such as: practise elastic")
    rows = [(topic, f"{one.right} of {one.done}", f"{one.level} of {HARDEST}") for topic, one in scores.items()]
    right, done = sum(one.right for one in scores.values()), sum(one.done for one in scores.values())
    return reply.told(
        f"You have practised {len(rows)} {plural('topic', len(rows))}.",
        [reply.words("right", f"{right} of {done}")],
        reply.table(("topic", "right", "level"), rows),
    )


def _counted(count: int, noun: str) -> str:
    """ "2 things in hand": the first word of "thing in hand" is the one counted, but for "size table"."""
    head, space, rest = ("size table", "", "") if noun == "size table" else noun.partition(" ")
    return f"{count} {plural(head, count)}{space}{rest}"


def as_text(page: Page) -> str:
    """Everything, as indented JSON; bodies are written as objects and not as texts of JSON."""
    tables = {table: [_opened(table, row) for row in rows] for table, rows in page.dump().items()}
    return json.dumps({FORMAT: len(MIGRATIONS), **tables}, ensure_ascii=False, indent=1) + "\n"


def _opened(table: str, row: dict[str, Any]) -> dict[str, Any]:
    return {
        name: json.loads(value) if name in BODIES.get(table, ()) and value is not None else value
        for name, value in row.items()
    }


def read(text: str) -> Whole:
    """What `as_text` wrote. Raises ValueError for anything else, saying what is wrong."""
    try:
        made = json.loads(text)
    except ValueError:
        raise ValueError("it is not JSON") from None
    if not isinstance(made, dict) or FORMAT not in made:
        raise ValueError(f"it does not begin with “{FORMAT}”")
    if made[FORMAT] not in range(OLDEST, len(MIGRATIONS) + 1):
        raise ValueError(f"it is of version {made[FORMAT]}, and I read versions {OLDEST} to {len(MIGRATIONS)}")
    made |= {table: [] for table, since in SINCE.items() if made[FORMAT] < since}
    return {table: [_closed(table, row) for row in _rows(made, table)] for table in TABLES}


def _rows(made: dict[str, Any], table: str) -> list[Any]:
    rows = made.get(table)
    if not isinstance(rows, list):
        raise ValueError(f"its part “{table}” is missing")
    return rows


def _closed(table: str, row: Any) -> dict[str, Any]:
    """A row as the database has it, every column there and of its kind."""
    if not isinstance(row, dict) or set(row) != set(TABLES[table]):
        raise ValueError(f"a line of its part “{table}” is not as I write it")
    closed = {}
    for name, value in row.items():
        if name in BODIES.get(table, ()):
            fits = isinstance(value, dict) or (value is None and table == "change")
            value = (
                None if value is None else json.dumps(value, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
            )
        else:
            fits = (
                isinstance(value, str)
                if name in TEXTS
                else isinstance(value, int) or (value is None and name == "undone_by")
            )
        if not fits:
            raise ValueError(f"a line of its part “{table}” has a wrong {name}")
        closed[name] = value
    return closed


def replace(page: Page, found: Whole) -> None:
    """Put what was read in place of everything kept, as changes of the sentence being heard; scores only grow."""
    page.take_scores(found["score"])
    keys = {(row["kind"], row["owner"], row["name"]) for row in found["thing"]}
    for thing in page.everything():
        if (thing.kind, thing.owner, thing.name) not in keys:
            page.drop(thing.kind, thing.name, thing.owner)
    for row in found["thing"]:
        page.put(row["kind"], row["name"], json.loads(row["body"]), row["owner"])
