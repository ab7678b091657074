"""The notebook's file: one SQLite database, each sentence one transaction, every change kept so that it can be undone.

A rollback journal is used rather than a write-ahead log: at rest the notebook is then one file and no more, which can
be copied, put on a stick or opened where nothing may be written.
"""

from __future__ import annotations

import os
import random
import sqlite3
import stat
import time
from collections.abc import Callable, Iterator
from contextlib import contextmanager, suppress
from datetime import UTC, datetime
from pathlib import Path
from weakref import finalize

from .page import Page
from .schema import APPLICATION, MIGRATIONS
from .trouble import Trouble, damaged, no_room, not_ours, of_sqlite, read_only, too_new

WAIT_SECONDS = 30.0
"""How long a sentence waits for another program that is writing."""
ASK_AGAIN = (0.001, 0.006)  # seconds; not always the same, so that two programs do not keep in step
SQLITE_HEAD = b"SQLite format 3\x00"


def _now() -> str:
    return datetime.now(UTC).isoformat(timespec="seconds")


class Store:
    """The file at a path. It is opened for each sentence and closed again, so that programs can take turns.

    now: the time as ISO 8601 text, for the history.
    """

    def __init__(self, path: Path, now: Callable[[], str] = _now) -> None:
        self.path, self._now = path, now
        self._blank: sqlite3.Connection | None = None

    def exists(self) -> bool:
        """Whether there is anything to read."""
        try:
            return self.path.stat().st_size > 0
        except OSError:
            return False

    @contextmanager
    def reading(self, said: str = "") -> Iterator[Page]:
        """What is kept, to look at; an empty page where there is no file. Raises Trouble."""
        if not self.exists():
            with _closing(sqlite3.connect(":memory:", isolation_level=None)) as empty:
                _upgrade(empty)
                yield Page(empty)
            return
        with _closing(self._open(for_writing=False)) as connection:
            try:
                yield Page(connection)
            except sqlite3.Error as error:
                raise of_sqlite(error, self.path) from error

    @contextmanager
    def rehearsing(self, said: str) -> Iterator[Page]:
        """An empty page that is kept nowhere, to try a sentence on."""
        if self._blank is None:  # made once: sentences are tried at every key
            self._blank = sqlite3.connect(":memory:", isolation_level=None, check_same_thread=False)
            finalize(self, self._blank.close)
            _upgrade(self._blank)
        page = Page(self._blank)
        page.begin(said, self._now())
        self._blank.execute("BEGIN")
        try:
            yield page
        finally:
            self._blank.execute("ROLLBACK")

    @contextmanager
    def writing(self, said: str) -> Iterator[Page]:
        """One sentence: all that is done to the page is kept together, or, should anything be raised, none of it.

        said: the sentence, for the history. Raises Trouble.
        """
        self._make()
        with _closing(self._open(for_writing=True)) as connection:
            try:
                _begin(connection)
                page = Page(connection)
                page.begin(said, self._now())
                yield page
                connection.execute("COMMIT" if page.changed else "ROLLBACK")
            except sqlite3.Error as error:
                _roll_back(connection)
                raise of_sqlite(error, self.path) from error
            except BaseException:
                _roll_back(connection)
                raise

    # -- opening ------------------------------------------------------------------------------------------------

    def _make(self) -> None:
        """An empty file that only its owner can read, where there is none yet."""
        try:
            self.path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
            os.close(os.open(self.path, os.O_RDWR | os.O_CREAT | os.O_EXCL, 0o600))
        except FileExistsError:
            return
        except OSError as error:
            raise no_room(self.path, error) from error

    def _open(self, for_writing: bool) -> sqlite3.Connection:
        """A connection to a file that was looked at first: what is no notebook of this version is left untouched."""
        self._look(for_writing)
        try:
            connection = sqlite3.connect(self.path, timeout=WAIT_SECONDS, isolation_level=None)
        except sqlite3.Error as error:
            raise of_sqlite(error, self.path) from error
        try:
            self._prepare(connection)
        except sqlite3.Error as error:
            connection.close()
            raise of_sqlite(error, self.path) from error
        except BaseException:
            connection.close()
            raise
        return connection

    def _look(self, for_writing: bool) -> None:
        try:
            about = self.path.stat()
            if not stat.S_ISREG(about.st_mode):
                raise not_ours(self.path)
            with self.path.open("rb") as stream:
                head = stream.read(len(SQLITE_HEAD))
        except OSError as error:
            raise no_room(self.path, error) from error
        half_written = self.path.with_name(self.path.name + "-journal").exists()  # SQLite will put it right
        if head and head != SQLITE_HEAD and not half_written:
            raise not_ours(self.path)
        if for_writing:
            if not about.st_mode & (stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH):
                raise read_only(self.path)
            if about.st_mode & 0o077:  # such as one put back from a copy
                with suppress(OSError):
                    os.chmod(self.path, about.st_mode & 0o700)

    def _prepare(self, connection: sqlite3.Connection) -> None:
        connection.execute("BEGIN")  # so that all three are of one moment: another program may be making the file
        version, tables = _version(connection), _tables(connection)
        made_by = connection.execute("PRAGMA application_id").fetchone()[0]
        connection.execute("COMMIT")
        if version > len(MIGRATIONS):
            raise too_new(self.path)
        if made_by != APPLICATION and (made_by or version or tables):
            raise not_ours(self.path)
        if connection.execute("PRAGMA quick_check(1)").fetchone()[0] != "ok":
            raise damaged(self.path)
        # EXTRA: the sentence stays kept even if the power fails the moment after "Kept".
        connection.execute("PRAGMA synchronous = EXTRA")
        if version < len(MIGRATIONS):
            if version:
                _keep_copy(connection, self.path, version)
            _upgrade(connection)


@contextmanager
def _closing(connection: sqlite3.Connection) -> Iterator[sqlite3.Connection]:
    try:
        yield connection
    finally:
        connection.close()


def _begin(connection: sqlite3.Connection) -> None:
    """Take the right to write, asking for it often: SQLite itself asks so seldom that a busy writer starves another."""
    connection.execute("PRAGMA busy_timeout = 0")
    last = time.monotonic() + WAIT_SECONDS
    while True:
        try:
            connection.execute("BEGIN IMMEDIATE")
            break
        except sqlite3.OperationalError as error:
            if error.sqlite_errorcode & 0xFF != sqlite3.SQLITE_BUSY or time.monotonic() > last:
                raise
            time.sleep(random.uniform(*ASK_AGAIN))
    connection.execute(f"PRAGMA busy_timeout = {int(WAIT_SECONDS * 1000)}")


def _roll_back(connection: sqlite3.Connection) -> None:
    try:
        connection.execute("ROLLBACK")
    except sqlite3.Error:
        return  # SQLite has rolled it back already, or will when the file is next opened


def _version(connection: sqlite3.Connection) -> int:
    return int(connection.execute("PRAGMA user_version").fetchone()[0])


def _tables(connection: sqlite3.Connection) -> int:
    return int(connection.execute("SELECT count(*) FROM sqlite_master").fetchone()[0])


def _upgrade(connection: sqlite3.Connection) -> None:
    """Every migration still to be done, in one transaction; another program may have done them meanwhile."""
    connection.execute("BEGIN IMMEDIATE")
    try:
        for number in range(_version(connection), len(MIGRATIONS)):
            for statement in MIGRATIONS[number]:
                connection.execute(statement)
        connection.execute(f"PRAGMA user_version = {len(MIGRATIONS)}")
        connection.execute(f"PRAGMA application_id = {APPLICATION}")
        connection.execute("COMMIT")
    except BaseException:
        _roll_back(connection)
        raise


def _keep_copy(connection: sqlite3.Connection, path: Path, version: int) -> None:
    """A copy of an older file beside it, before it is upgraded; one that is there already stays."""
    copy = path.with_name(f"{path.name}.version-{version}")
    fresh = path.with_name(f"{copy.name}.{os.getpid()}")
    if copy.exists():
        return
    try:
        os.close(os.open(fresh, os.O_RDWR | os.O_CREAT | os.O_EXCL, 0o600))
        with _closing(sqlite3.connect(fresh)) as into:
            connection.backup(into)
        os.replace(fresh, copy)
    except OSError as error:
        raise no_room(path, error) from error
    finally:
        fresh.unlink(missing_ok=True)


__all__ = ["Store", "Trouble"]
