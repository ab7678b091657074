"""Undo, redo, history, and the whole notebook out and in again."""

from __future__ import annotations

import json
import random
import sqlite3
from pathlib import Path

import pytest

from tests.notebook.conftest import Book

MONTH = (
    "my waist is 66 cm, hip 92 cm and bust 88 cm",
    "Ines's hip is 38 in",
    "work in inches",
    "my shop sells by the half metre",
    "usable width 42 in",
    "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92",
    "I have 1.5 m of navy linen 140 cm wide, £9/m",
    "start project harbour tote",
    "use 80 cm of it",
    "need 3 m of webbing",
    "shortened the straps 3/4 in",
    "paid £4.20 for the zip",
    "note: “curly” | bars, ½ and ünïcode",
    "forget Ines",
    "undo",
)


def things(path: Path) -> list[tuple[str, ...]]:
    connection = sqlite3.connect(path)
    rows = connection.execute("SELECT kind, owner, name, body FROM thing ORDER BY kind, owner, name").fetchall()
    connection.close()
    return rows


def test_undo_takes_back_one_sentence_after_the_other(book: Book) -> None:
    book.done("my waist is 66 cm", "my waist is 68 cm", "my hip is 92 cm")
    assert book.done("undo") == "Undone: my hip is 92 cm"
    assert book.done("undo that") == "Undone: my waist is 68 cm"
    assert book.told("what is my waist") == "Your waist: 66 cm."
    assert book.done("undo") == "Undone: my waist is 66 cm"
    assert book.refused("undo").startswith("There is nothing left to undo.")


def test_redo_brings_back_what_was_undone_until_something_new_is_said(book: Book) -> None:
    book.done("my waist is 66 cm", "my waist is 68 cm", "undo", "undo")
    assert book.done("redo") == "Done again: my waist is 66 cm"
    assert book.done("redo") == "Done again: my waist is 68 cm"
    assert "nothing to redo" in book.refused("redo")
    book.done("undo", "my hip is 92 cm")
    assert "nothing to redo" in book.refused("redo")
    assert book.told("my measures") == "Your measures: waist 66 cm and hip 92 cm."


def test_a_sentence_is_undone_whole(book: Book) -> None:
    book.done(
        "my waist is 66 cm, hip 92 cm and bust 88 cm",
        "start project harbour tote",
        "bought 2 m of navy linen at £9 a metre",
        "undo",
    )
    assert book.told("stash").startswith("There is nothing kept in hand.")
    assert book.told("what did it cost").startswith("Nothing is kept as paid")


@pytest.mark.parametrize("seed", range(5))
def test_undoing_all_and_redoing_all_comes_back_to_the_same(tmp_path: Path, seed: int) -> None:
    book = Book(tmp_path / "notebook.db")
    lines = [line for line in MONTH if line != "undo"]
    random.Random(seed).shuffle(lines)
    kept = [line for line in lines if book.ask(line).status == "done"]
    before = things(book.path)
    for _ in kept:
        book.done("undo")
    assert things(book.path) == []
    for _ in kept:
        book.done("redo")
    assert things(book.path) == before


def test_the_history_tells_what_was_said_and_undone(book: Book) -> None:
    book.done("my waist is 66 cm", "work in inches", "undo")
    book.told("what is my waist")
    table = book.ask("history of changes").table
    assert table is not None
    assert [row[2] for row in table.texts] == ["my waist is 66 cm", "work in inches (undone)", "undo"]
    assert all(len(row[1]) == len("2026-01-31 12:00") for row in table.texts)


# -- the whole ---------------------------------------------------------------------------------------------------------


def filled(path: Path) -> Book:
    book = Book(path)
    book.done(*MONTH[:9])
    book.told("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    book.done("keep that", *MONTH[9:])
    return book


def test_the_whole_notebook_goes_out_and_comes_in_without_loss(tmp_path: Path) -> None:
    book = filled(tmp_path / "notebook.db")
    book.done(f"export the notebook to {tmp_path}/whole.json")
    other = Book(tmp_path / "other.db")
    other.done(f"import the notebook from {tmp_path}/whole.json")
    other.done(f"export the notebook to {tmp_path}/again.json")
    assert (tmp_path / "again.json").read_bytes() == (tmp_path / "whole.json").read_bytes()
    assert things(other.path) == things(book.path)
    assert other.done("undo") == book.done("undo")
    assert other.told("history") == book.told("history")
    assert (tmp_path / "whole.json").stat().st_mode & 0o077 == 0


def test_importing_does_not_replace_unless_told_and_can_be_undone(tmp_path: Path) -> None:
    filled(tmp_path / "notebook.db").done(f"export the notebook to {tmp_path}/whole.json")
    other = Book(tmp_path / "other.db")
    other.done("my waist is 70 cm", "Tomas's chest is 102 cm")
    before = things(other.path)
    assert "is not empty, so nothing was changed" in other.refused(f"import the notebook from {tmp_path}/whole.json")
    assert things(other.path) == before
    other.done(f"import the notebook from {tmp_path}/whole.json, replacing it")
    assert things(other.path) == things(tmp_path / "notebook.db")
    other.done("undo")
    assert things(other.path) == before


@pytest.mark.parametrize(
    "spoil", ["not JSON", "{}", "[]", "newer", "a table missing", "a column missing", "a wrong kind"]
)
def test_what_is_no_whole_notebook_is_refused(tmp_path: Path, spoil: str) -> None:
    path = tmp_path / "whole.json"
    filled(tmp_path / "notebook.db").done(f"export the notebook to {path}")
    made = json.loads(path.read_text("utf-8"))
    if spoil == "newer":
        made["ellwand notebook"] += 1
    elif spoil == "a table missing":
        del made["change"]
    elif spoil == "a column missing":
        del made["thing"][0]["body"]
    elif spoil == "a wrong kind":
        made["thing"][0]["body"] = 7
    path.write_text(spoil if spoil in ("not JSON", "{}", "[]") else json.dumps(made), "utf-8")
    other = Book(tmp_path / "other.db")
    assert "is no whole notebook" in other.refused(f"import the notebook from {path}")
    assert not other.path.exists()


def test_what_is_in_the_notebook(tmp_path: Path) -> None:
    book = filled(tmp_path / "notebook.db")
    assert book.told("what is in my notebook") == (
        "In the notebook: 4 measures, 1 size table, 1 thing in hand, 1 project, 1 note, "
        "2 needs on the shopping list and 3 habits."
    )
