"""Scores of practice kept in the notebook: closed and opened again, out and in again, and no matter for undo."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Callable
from pathlib import Path

from assistant.notebook import Notebook
from assistant.notebook.schema import APPLICATION, MIGRATIONS
from assistant.practice.practise import Practising
from assistant.practice.state import Score, ScoreBook
from rules.engine.answer import Answer
from tests.notebook.conftest import Book


def test_the_notebook_is_where_practice_keeps_its_scores(book: Book) -> None:
    assert isinstance(Notebook(book.path), ScoreBook)
    assert book.talk.practice.book(book.talk.notebook) is book.talk.notebook


def test_scores_outlive_the_program(reopened: Callable[[], Book]) -> None:
    for right, level in ((True, 1), (True, 2), (False, 2)):
        assert notebook(reopened()).add_score("elastic", right, level) == ""
    notebook(reopened()).add_score("tote", True, 1)
    assert notebook(reopened()).scores("elastic") == Score(right=2, done=3, level=2)
    assert notebook(reopened()).scores("tote") == Score(1, 1, 1)
    assert notebook(reopened()).scores("pleats") == Score()


def notebook(book: Book) -> Notebook:
    assert book.talk.notebook is not None
    return book.talk.notebook


def test_practice_goes_on_at_the_level_reached(reopened: Callable[[], Book]) -> None:
    first = reopened()
    first.together = True
    first.ask("practise elastic")
    assert all("Right" in answer_rightly(first).headline for _ in range(4))
    again = reopened()
    again.together = True
    again.ask("practise elastic")
    session = again.talk.practice.session
    assert isinstance(session, Practising)
    assert session.level == 3
    assert again.told("my scores") == "You have practised 1 topic."


def answer_rightly(book: Book) -> Answer:
    """The exercise asked now, answered with its own result (without the other system beside it)."""
    session = book.talk.practice.session
    assert isinstance(session, Practising)
    assert session.exercise is not None
    return book.ask(session.exercise.result.partition(" (")[0])


def test_undo_leaves_scores_alone(book: Book) -> None:
    book.done("my waist is 66 cm")
    notebook(book).add_score("elastic", True, 2)
    assert book.done("undo") == "Undone: my waist is 66 cm"
    assert book.done("redo") == "Done again: my waist is 66 cm"
    assert notebook(book).scores("elastic") == Score(1, 1, 2)
    history = book.ask("history").table
    assert history is not None
    assert len(history.rows) == 3


def test_scores_are_told_by_topic(book: Book) -> None:
    assert "Nothing was practised" in book.told("my scores")
    notebook(book).add_score("tote", True, 2)
    notebook(book).add_score("tote", False, 2)
    notebook(book).add_score("elastic", True, 1)
    made = book.ask("what are my practice scores?")
    assert made.table is not None
    assert made.table.texts == (("tote", "1 of 2", "2 of 4"), ("elastic", "1 of 1", "1 of 4"))
    assert made.results[0].text == "2 of 3"
    assert "2 scores of practice" in book.told("what is in my notebook?")


def test_scores_go_out_and_come_in(tmp_path: Path) -> None:
    here, there = Book(tmp_path / "here.db"), Book(tmp_path / "there.db")
    here.done("my waist is 66 cm")
    notebook(here).add_score("tote", True, 2)
    here.done(f"export the notebook to {tmp_path}/whole.json")
    notebook(there).add_score("elastic", False, 1)
    there.done(f"import the notebook from {tmp_path}/whole.json")
    assert notebook(there).scores("tote") == Score(1, 1, 2)
    assert notebook(there).scores("elastic") == Score(0, 1, 1)
    assert there.told("what is my waist?") == "Your waist: 66 cm."


def test_of_two_scores_of_a_topic_the_longer_practice_counts(tmp_path: Path) -> None:
    here, there = Book(tmp_path / "here.db"), Book(tmp_path / "there.db")
    there.done("my waist is 66 cm")
    for book, right in ((here, False), (there, True), (there, True)):
        notebook(book).add_score("tote", right, 2)
    here.done("my hip is 92 cm", f"export the notebook to {tmp_path}/whole.json")
    there.done(f"import the notebook from {tmp_path}/whole.json, replacing it")
    assert notebook(there).scores("tote") == Score(2, 2, 2)
    there.done("undo")
    assert notebook(there).scores("tote") == Score(2, 2, 2)


def test_a_file_written_before_there_were_scores_is_read(tmp_path: Path) -> None:
    here, there = Book(tmp_path / "here.db"), Book(tmp_path / "there.db")
    here.done("my waist is 66 cm", f"export the notebook to {tmp_path}/whole.json")
    older = json.loads((tmp_path / "whole.json").read_text("utf-8"))
    del older["score"]
    older["ellwand notebook"] = 2
    (tmp_path / "whole.json").write_text(json.dumps(older), "utf-8")
    there.done(f"import the notebook from {tmp_path}/whole.json")
    assert there.told("what is my waist?") == "Your waist: 66 cm."


def test_a_notebook_without_scores_is_upgraded_and_a_copy_kept(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    older = sqlite3.connect(path)
    for statement in (*MIGRATIONS[0], *MIGRATIONS[1]):
        older.execute(statement)
    body = '{"kind":"length","text":"66 cm","unit":"cm","value":"660"}'
    older.execute("INSERT INTO thing (kind, owner, name, body) VALUES ('measure', '', 'waist', ?)", (body,))
    older.execute(f"PRAGMA application_id = {APPLICATION}")
    older.execute("PRAGMA user_version = 2")
    older.commit()
    older.close()
    assert notebook(Book(path)).add_score("tote", True, 1) == ""
    assert Book(path).told("what is my waist?") == "Your waist: 66 cm."
    assert notebook(Book(path)).scores("tote") == Score(1, 1, 1)
    copy = sqlite3.connect(tmp_path / "notebook.db.version-2")
    assert copy.execute("PRAGMA user_version").fetchone()[0] == 2
    assert copy.execute("SELECT body FROM thing").fetchall() == [(body,)]
    copy.close()


def test_practice_goes_on_where_nothing_can_be_kept_and_says_so_once(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    path.write_text("no notebook at all, but a letter to Tomas")
    book = Book(path, together=True)
    book.ask("practise elastic")
    told = [" ".join(answer_rightly(book).text) for _ in range(2)]
    assert ["this conversation only" in one for one in told] == [True, False]
    assert notebook(book).scores("elastic").done == 2
    assert path.read_text() == "no notebook at all, but a letter to Tomas"
