"""Rough treatment: killed while writing, two writers, a full disk, files that may not be written or are no notebook.

A sentence here keeps three measures at once, so that half a sentence would be seen.
"""

from __future__ import annotations

import gc
import os
import random
import resource
import signal
import sqlite3
import time
from collections.abc import Callable
from pathlib import Path

import pytest

from assistant.conversation import Conversation
from assistant.notebook import Notebook
from assistant.notebook.schema import APPLICATION, MIGRATIONS
from tests.notebook.conftest import Book
from tests.support import mind

KILLS = 320
WRITES_EACH = 500


def sentence(number: int) -> str:
    return f"my waist is {number} mm, hip is {number} mm and bust is {number} mm"


def measures(path: Path) -> set[str]:
    """The three measures as they are kept; one text when the last sentence is whole."""
    connection = sqlite3.connect(path)
    try:
        assert connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
        rows = connection.execute("SELECT body FROM thing WHERE kind = 'measure' ORDER BY name").fetchall()
        assert len(rows) in (0, 3)
        return {row[0] for row in rows}
    finally:
        connection.close()


def number_in(body: str) -> int:
    return int(body.split('"value":"')[1].split('"')[0])


def in_child(work: Callable[[int], None]) -> tuple[int, int]:
    """Start work(pipe) in a process of its own: (its number, the end of the pipe to read from)."""
    read, write = os.pipe()
    child = os.fork()
    if child:
        os.close(write)
        return child, read
    os.close(read)
    status = 1
    try:
        work(write)
        status = 0
    finally:
        os._exit(status)


def writes_on(path: Path, start: int) -> Callable[[int], None]:
    """Write one sentence after the other, and tell of each, once it is said to be kept, down the pipe."""

    def work(pipe: int) -> None:
        talk = Conversation(mind(), Notebook(path))
        for number in range(start, start + 10_000):
            if talk.ask(sentence(number)).status == "done":
                os.write(pipe, b"%d\n" % number)

    return work


def last_told(pipe: int) -> int:
    told = b""
    while more := os.read(pipe, 65536):
        told += more
    os.close(pipe)
    lines = told.split()
    return int(lines[-1]) if lines else 0


def test_a_kill_at_any_moment_leaves_every_sentence_whole_or_unsaid(tmp_path: Path) -> None:
    path, dice = tmp_path / "notebook.db", random.Random(1)
    Book(path).done(sentence(1))  # what a child needs is then loaded already
    gc.freeze()
    number, mid_write = 2, 0
    for _ in range(KILLS):
        child, pipe = in_child(writes_on(path, number))
        os.set_blocking(pipe, True)
        first = os.read(pipe, 16)  # it is writing now
        time.sleep(dice.random() * 0.006)
        os.kill(child, signal.SIGKILL)
        os.waitpid(child, 0)
        told = last_told(pipe) or int(first.split()[-1])
        mid_write += path.with_name(path.name + "-journal").exists()
        kept = measures(path)
        assert len(kept) == 1, "half a sentence"
        assert number_in(kept.pop()) in (told, told + 1), "a sentence said to be kept is lost"
        number = told + 2
    gc.unfreeze()
    assert mid_write > KILLS // 20, "hardly a kill fell into the middle of writing"


def test_two_programs_write_five_hundred_sentences_each_at_once(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    mind()

    def writes(who: str) -> Callable[[int], None]:
        def work(pipe: int) -> None:
            talk = Conversation(mind(), Notebook(path))
            for number in range(1, WRITES_EACH + 1):
                made = talk.ask(f"{who}'s part{chr(97 + number % 26)}{chr(97 + number // 26)} is {number} mm")
                assert made.status == "done", made.message

        return work

    children = [in_child(writes(who)) for who in ("Ines", "Tomas")]
    for child, pipe in children:
        _, status = os.waitpid(child, 0)
        os.close(pipe)
        assert os.waitstatus_to_exitcode(status) == 0
    connection = sqlite3.connect(path)
    assert connection.execute("SELECT owner, count(*) FROM thing WHERE kind = 'measure' GROUP BY owner").fetchall() == [
        ("ines", WRITES_EACH),
        ("tomas", WRITES_EACH),
    ]
    assert connection.execute("SELECT count(*) FROM sentence").fetchone()[0] == 2 * WRITES_EACH
    assert connection.execute("SELECT count(*) FROM change WHERE kind = 'measure'").fetchone()[0] == 2 * WRITES_EACH
    connection.close()


def test_a_full_disk_is_said_in_plain_words_and_loses_nothing(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    Book(path).done(sentence(1))
    room = path.stat().st_size + 20_000

    def work(pipe: int) -> None:
        resource.setrlimit(resource.RLIMIT_FSIZE, (room, room))
        talk = Conversation(mind(), Notebook(path))
        for number in range(2, 5000):
            made = talk.ask(sentence(number))
            if made.status != "done":
                os.write(pipe, f"{number - 1}|{made.status}|{made.message}".encode())
                return

    child, pipe = in_child(work)
    said = os.read(pipe, 4096).decode()
    os.waitpid(child, 0)
    os.close(pipe)
    last, status, message = said.split("|", 2)
    assert status == "impossible"
    assert message == (f"There is no room left on the disk for the notebook {path}, so nothing of that was kept; "
                       "what was kept before is whole. Make room and say it again.")  # fmt: skip
    assert number_in(measures(path).pop()) == int(last) > 1
    Book(path).done(sentence(9999))  # there is room again
    assert number_in(measures(path).pop()) == 9999


# -- files that are left as they are -----------------------------------------------------------------------------------


def untouched(path: Path, *lines: str) -> list[str]:
    """What is said to each line; the file must be the same after it, and nothing be laid beside it."""
    before, beside = path.read_bytes(), sorted(path.parent.iterdir())
    said = [Book(path).refused(line) for line in lines]
    assert path.read_bytes() == before
    assert sorted(path.parent.iterdir()) == beside
    return said


def a_notebook(path: Path) -> Path:
    Book(path).done(
        sentence(660),
        "Ines's hip is 38 in",
        "start project harbour tote",
        *(f"note: hem {number}" for number in range(60)),
    )
    return path


WRITE, READ = "my waist is 70 cm", "what is my waist?"


def test_a_file_that_may_only_be_read_is_read_and_not_written(tmp_path: Path) -> None:
    path = a_notebook(tmp_path / "notebook.db")
    path.chmod(0o444)
    words = (
        f"The notebook {path} may only be read, so nothing of that was kept. Make it writable (chmod u+w), "
        "or use another file: --notebook FILE"
    )
    assert untouched(path, WRITE) == [words]
    assert Book(path).told(READ) == "Your waist: 660 mm."


def test_a_file_damaged_in_the_middle_is_refused(tmp_path: Path) -> None:
    path = a_notebook(tmp_path / "notebook.db")
    data = bytearray(path.read_bytes())
    for at in range(4096, len(data), 4096):
        data[at : at + 200] = b"\xff" * 200
    path.write_bytes(data)
    words = (
        f"The notebook {path} is damaged, so I have left it as it is. Put back a copy of it, "
        "or use another file: --notebook FILE"
    )
    assert untouched(path, WRITE, READ) == [words, words]


def test_a_file_cut_short_is_refused(tmp_path: Path) -> None:
    path = a_notebook(tmp_path / "notebook.db")
    path.write_bytes(path.read_bytes()[:6000])
    assert all("is damaged" in said for said in untouched(path, WRITE, READ))


@pytest.mark.parametrize("content", [b"waist 66 cm\n", b"\x00" * 5000, b"SQLite format 3\x00" + b"\x00" * 50])
def test_a_file_of_something_else_is_refused(tmp_path: Path, content: bytes) -> None:
    path = tmp_path / "notebook.db"
    path.write_bytes(content)
    assert all("damaged" in said and "left it as it is" in said for said in untouched(path, WRITE, READ))


def test_another_programs_database_is_refused(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    other = sqlite3.connect(path)
    other.execute("CREATE TABLE recipe (name TEXT)")
    other.commit()
    other.close()
    assert all("is not a notebook of mine" in said for said in untouched(path, WRITE, READ))


def test_a_newer_notebook_is_refused(tmp_path: Path) -> None:
    path = a_notebook(tmp_path / "notebook.db")
    newer = sqlite3.connect(path)
    newer.execute(f"PRAGMA user_version = {len(MIGRATIONS) + 1}")
    newer.close()
    assert all("was written by a newer Ellwand" in said for said in untouched(path, WRITE, READ))


@pytest.mark.parametrize("kind", ["folder", "folder that is a file"])
def test_a_place_where_no_file_can_be_is_refused(tmp_path: Path, kind: str) -> None:
    path = tmp_path / "place" / "notebook.db"
    if kind == "folder":
        path.mkdir(parents=True)
    else:
        path.parent.write_text("")
    assert "--notebook FILE" in Book(path).refused(WRITE)


def test_a_question_is_answered_though_the_notebook_is_damaged(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    path.write_text("waist 66 cm\n")
    made = Book(path).ask("elastic 1 in wide for a 28 in waist")
    assert made.status == "answered"
    assert any("not a notebook of mine" in note for note in made.notes)


# -- older files, and the file itself ----------------------------------------------------------------------------------


def test_an_older_file_is_upgraded_in_place_and_a_copy_kept(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    older = sqlite3.connect(path)
    for statement in MIGRATIONS[0]:
        older.execute(statement)
    body = '{"kind":"length","text":"66 cm","unit":"cm","value":"660"}'
    older.execute("INSERT INTO thing (kind, owner, name, body) VALUES ('measure', '', 'waist', ?)", (body,))
    older.execute("INSERT INTO sentence (said) VALUES ('my waist is 66 cm')")
    older.execute(
        "INSERT INTO change (sentence, thing, kind, owner, name, after) VALUES (1, 1, 'measure', '', 'waist', ?)",
        (body,),
    )
    older.execute(f"PRAGMA application_id = {APPLICATION}")
    older.execute("PRAGMA user_version = 1")
    older.commit()
    older.close()
    assert Book(path).told(READ) == "Your waist: 66 cm."
    assert Book(path).done("undo") == "Undone: my waist is 66 cm"
    copy = sqlite3.connect(tmp_path / "notebook.db.version-1")
    assert copy.execute("PRAGMA user_version").fetchone()[0] == 1
    assert copy.execute("SELECT body FROM thing").fetchall() == [(body,)]
    copy.close()
    assert (tmp_path / "notebook.db.version-1").stat().st_mode & 0o077 == 0


def test_only_its_owner_can_read_the_file(tmp_path: Path) -> None:
    before = os.umask(0)
    try:
        path = tmp_path / "new" / "notebook.db"
        Book(path).done(WRITE)
        assert path.stat().st_mode & 0o777 == 0o600
        assert path.parent.stat().st_mode & 0o777 == 0o700
        path.chmod(0o644)  # as when put back from a copy
        Book(path).done(WRITE.replace("70", "71"))
        assert path.stat().st_mode & 0o777 == 0o600
    finally:
        os.umask(before)


def test_looking_makes_no_file(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    for line in (
        READ,
        "shopping list",
        "stash",
        "elastic for my waist",
        "undo",
        "forget my waist",
        "use 80 cm of it",
        "my blouse, how wide?",
    ):
        Book(path).ask(line)
        assert not path.exists(), line


def test_an_empty_file_left_by_a_kill_is_a_notebook_to_be_begun(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    path.touch()
    assert Book(path).refused(READ) == "I have not kept your waist yet."
    assert Book(path).done(WRITE) == "Kept: your waist 70 cm."
