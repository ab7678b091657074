"""What is kept, within one transaction: things by kind, owner and name, and the changes of the sentence being heard."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Any

from assistant.practice.state import Score

Body = Mapping[str, Any]


@dataclass(frozen=True, slots=True)
class Thing:
    """Something kept. owner: whose it is, or which project's, or "". number: the order it was kept in."""

    kind: str
    owner: str
    name: str
    body: dict[str, Any]
    number: int


@dataclass(frozen=True, slots=True)
class Sentence:
    """A sentence of the history. does: "undo", "redo" or "". undone_by: the number of what took it back, or None."""

    number: int
    said: str
    at: str
    does: str
    undone_by: int | None


class Page:
    """The things of a notebook inside one transaction. Names are looked up without regard to case."""

    def __init__(self, connection: sqlite3.Connection) -> None:
        self._connection = connection
        self._sentence = 0  # its number, once it has changed something
        self._said = self._at = self._does = ""
        self._scored = self.discarded = False

    # -- things -------------------------------------------------------------------------------------------------

    def get(self, kind: str, name: str, owner: str = "") -> Thing | None:
        found = self._rows("kind = ? AND owner = ? AND name = ?", (kind, folded(owner), folded(name)))
        return found[0] if found else None

    def all(self, kind: str, owner: str | None = None) -> list[Thing]:
        """Every thing of a kind, of one owner or of all, in the order they were first kept."""
        if owner is None:
            return self._rows("kind = ?", (kind,))
        return self._rows("kind = ? AND owner = ?", (kind, folded(owner)))

    @property
    def empty(self) -> bool:
        """Whether nothing is kept, and nothing ever was."""
        return not self._connection.execute("SELECT 1 FROM thing UNION SELECT 1 FROM sentence").fetchone()

    def everything(self) -> list[Thing]:
        return self._rows("1", ())

    def put(self, kind: str, name: str, body: Body, owner: str = "") -> None:
        """Keep a thing, in place of what has its name."""
        self._set(kind, folded(owner), folded(name), body)

    def add(self, kind: str, body: Body, owner: str = "") -> None:
        """Keep one more thing of a kind that has no name of its own: it is numbered."""
        self._set(kind, folded(owner), str(self._highest(kind, folded(owner)) + 1), body)

    def drop(self, kind: str, name: str, owner: str = "") -> None:
        self._set(kind, folded(owner), folded(name), None)

    def _highest(self, kind: str, owner: str) -> int:
        query = "SELECT coalesce(max(CAST(name AS INTEGER)), 0) FROM thing WHERE kind = ? AND owner = ?"
        return int(self._connection.execute(query, (kind, owner)).fetchone()[0])

    def _rows(self, where: str, values: tuple[str, ...]) -> list[Thing]:
        query = f"SELECT kind, owner, name, body, number FROM thing WHERE {where} ORDER BY number"
        rows = self._connection.execute(query, values).fetchall()
        return [Thing(kind, owner, name, json.loads(body), number) for kind, owner, name, body, number in rows]

    def _set(self, kind: str, owner: str, name: str, body: Body | None) -> None:
        key = (kind, owner, name)
        row = self._connection.execute(
            "SELECT number, body FROM thing WHERE kind = ? AND owner = ? AND name = ?", key
        ).fetchone()
        number, before = row or (None, None)
        after = None if body is None else as_json(body)
        if after == before:
            return
        number = self._write(key, number, after)
        self._connection.execute(
            "INSERT INTO change (sentence, thing, kind, owner, name, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)",
            (self._sentence_number(), number, *key, before, after),
        )

    def _write(self, key: tuple[str, str, str], number: int | None, after: str | None) -> int:
        """The thing's row made as it should be; the number it has."""
        if after is None:
            self._connection.execute("DELETE FROM thing WHERE kind = ? AND owner = ? AND name = ?", key)
            return number or 0
        if (
            number is not None
            and self._connection.execute("SELECT 1 FROM thing WHERE number = ?", (number,)).fetchone()
        ):
            self._connection.execute("UPDATE thing SET body = ? WHERE number = ?", (after, number))
            return number
        made = self._connection.execute(
            "INSERT INTO thing (number, kind, owner, name, body) VALUES (?, ?, ?, ?, ?)", (number, *key, after)
        )
        return int(made.lastrowid or 0)

    # -- sentences ----------------------------------------------------------------------------------------------

    def begin(self, said: str, at: str) -> None:
        """What follows belongs to this sentence; it comes into the history with its first change."""
        self._said, self._at = said, at

    @property
    def changed(self) -> bool:
        """Whether there is anything to keep."""
        return bool(self._sentence or self._scored) and not self.discarded

    def discard(self) -> None:
        """Keep nothing of this sentence after all."""
        self.discarded = True

    def _sentence_number(self) -> int:
        if not self._sentence:
            made = self._connection.execute(
                "INSERT INTO sentence (said, at, does) VALUES (?, ?, ?)", (self._said, self._at, self._does)
            )
            self._sentence = int(made.lastrowid or 0)
        return self._sentence

    def sentences(self) -> list[Sentence]:
        """The history, the oldest first, without the sentence being heard."""
        query = "SELECT number, said, at, does, undone_by FROM sentence WHERE number != ? ORDER BY number"
        return [Sentence(*row) for row in self._connection.execute(query, (self._sentence,))]

    def take_back(self, sentence: Sentence, does: str) -> None:
        """Undo what a sentence changed, as a change of the sentence being heard, which is an "undo" or a "redo"."""
        self._does = does
        query = "SELECT thing, kind, owner, name, before FROM change WHERE sentence = ? ORDER BY number DESC"
        for number, kind, owner, name, before in self._connection.execute(query, (sentence.number,)).fetchall():
            self._restore(number, (kind, owner, name), before)
        self._connection.execute(
            "UPDATE sentence SET undone_by = ? WHERE number = ?", (self._sentence_number(), sentence.number)
        )

    def stand_again(self, sentence: Sentence) -> None:
        """A sentence that was taken back counts once more."""
        self._connection.execute("UPDATE sentence SET undone_by = NULL WHERE number = ?", (sentence.number,))

    def _restore(self, number: int, key: tuple[str, str, str], before: str | None) -> None:
        row = self._connection.execute(
            "SELECT number, body FROM thing WHERE kind = ? AND owner = ? AND name = ?", key
        ).fetchone()
        self._write(key, row[0] if row else number, before)
        self._connection.execute(
            "INSERT INTO change (sentence, thing, kind, owner, name, before, after) VALUES (?, ?, ?, ?, ?, ?, ?)",
            (self._sentence_number(), number, *key, row[1] if row else None, before),
        )

    # -- practice -----------------------------------------------------------------------------------------------

    def scores(self) -> dict[str, Score]:
        """How practice went, by topic, the one practised first first."""
        rows = self._connection.execute("SELECT topic, well, done, level FROM score ORDER BY number")
        return {topic: Score(well, done, level) for topic, well, done, level in rows}

    def add_score(self, topic: str, right: bool, level: int) -> None:
        """Count an exercise. It is no sentence, so undo leaves it alone."""
        before = self.scores().get(topic, Score())
        self._put_score(topic, Score(before.right + right, before.done + 1, level))

    def _put_score(self, topic: str, score: Score) -> None:
        query = (
            "INSERT INTO score (topic, done, well, level) VALUES (?, ?, ?, ?) ON CONFLICT (topic) "
            "DO UPDATE SET done = excluded.done, well = excluded.well, level = excluded.level"
        )
        self._connection.execute(query, (topic, score.done, score.right, score.level))
        self._scored = True

    def take_scores(self, rows: Sequence[Mapping[str, Any]]) -> None:
        """Scores read from a file: of a topic practised in both places, the longer practice counts."""
        here = self.scores()
        for row in rows:
            if row["done"] > here.get(row["topic"], Score()).done:
                self._put_score(row["topic"], Score(row["well"], row["done"], row["level"]))

    # -- the whole ----------------------------------------------------------------------------------------------

    def dump(self) -> dict[str, list[dict[str, Any]]]:
        """Every row of every table, as plain data."""
        return {table: self._dump_table(table) for table in TABLES}

    def _dump_table(self, table: str) -> list[dict[str, Any]]:
        query = f"SELECT {', '.join(TABLES[table])} FROM {table} WHERE number != ? ORDER BY number"
        cursor = self._connection.execute(query, (self._sentence if table == "sentence" else 0,))
        return [dict(zip(TABLES[table], row, strict=True)) for row in cursor.fetchall()]

    def load(self, whole: Mapping[str, list[dict[str, Any]]]) -> None:
        """Fill an empty notebook with what `dump` gave: its history comes with it, and this sentence adds none."""
        self.take_scores(whole["score"])
        for table in ("thing", "sentence", "change"):
            columns = TABLES[table]
            marks = ", ".join("?" * len(columns))
            for row in whole[table]:
                values = [row[column] for column in columns]
                self._connection.execute(f"INSERT INTO {table} ({', '.join(columns)}) VALUES ({marks})", values)
        self._sentence = -1


TABLES: dict[str, tuple[str, ...]] = {
    "thing": ("number", "kind", "owner", "name", "body"),
    "sentence": ("number", "said", "at", "does", "undone_by"),
    "change": ("number", "sentence", "thing", "kind", "owner", "name", "before", "after"),
    "score": ("number", "topic", "done", "well", "level"),
}


def folded(name: str) -> str:
    """A name as it is looked up: lower case, single spaces, straight apostrophes.

    >>> folded("  Harbour  Tote ")
    'harbour tote'
    """
    return " ".join(name.lower().replace("’", "'").split())


def as_json(body: Body) -> str:
    """A body as it is kept: JSON with its keys in order, so that equal bodies are equal texts."""
    return json.dumps(body, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
