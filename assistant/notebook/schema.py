"""The tables of the notebook's file, a tuple of statements for each version of it."""

from __future__ import annotations

APPLICATION = 0x456C6C77
"""Marks a database as a notebook of ours ("Ellw")."""

MIGRATIONS: tuple[tuple[str, ...], ...] = (
    (
        # Whatever is kept: a measure of Ines, a cloth, a project. body: JSON.
        """CREATE TABLE thing (
            number INTEGER PRIMARY KEY,
            kind TEXT NOT NULL,
            owner TEXT NOT NULL,
            name TEXT NOT NULL,
            body TEXT NOT NULL,
            UNIQUE (kind, owner, name)
        )""",
        # Each sentence that changed something, as it was said.
        "CREATE TABLE sentence (number INTEGER PRIMARY KEY, said TEXT NOT NULL)",
        # What a sentence changed: the thing's body before and after, NULL where there was none.
        """CREATE TABLE change (
            number INTEGER PRIMARY KEY,
            sentence INTEGER NOT NULL REFERENCES sentence (number),
            thing INTEGER NOT NULL,
            kind TEXT NOT NULL,
            owner TEXT NOT NULL,
            name TEXT NOT NULL,
            before TEXT,
            after TEXT
        )""",
    ),
    (
        # When it was said (ISO 8601, UTC), whether it is an undo or redo, and which later sentence took it back.
        "ALTER TABLE sentence ADD COLUMN at TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE sentence ADD COLUMN does TEXT NOT NULL DEFAULT ''",
        "ALTER TABLE sentence ADD COLUMN undone_by INTEGER",
        "CREATE INDEX change_by_sentence ON change (sentence)",
    ),
    (
        # How practice of a topic went: exercises done, those of them right, the level reached. No sentence changes it.
        """CREATE TABLE score (
            number INTEGER PRIMARY KEY,
            topic TEXT NOT NULL UNIQUE,
            done INTEGER NOT NULL,
            well INTEGER NOT NULL,
            level INTEGER NOT NULL
        )""",
    ),
)
