"""What can go wrong with the notebook's file, in plain words: what happened, that nothing was lost, what to do."""

from __future__ import annotations

import errno
import sqlite3
from pathlib import Path


class Trouble(Exception):
    """The notebook cannot be read or written; the message is for the maker."""


def damaged(path: Path) -> Trouble:
    return Trouble(
        f"The notebook {path} is damaged, so I have left it as it is. Put back a copy of it, "
        "or use another file: --notebook FILE"
    )


def not_ours(path: Path) -> Trouble:
    return Trouble(f"{path} is not a notebook of mine, or is damaged at its very start, so I have left it as it is. "
                   "Name another file: --notebook FILE")  # fmt: skip


def too_new(path: Path) -> Trouble:
    return Trouble(f"The notebook {path} was written by a newer Ellwand than this one, so I have left it as it is. "
                   "Use that newer one, or another file: --notebook FILE")  # fmt: skip


def read_only(path: Path) -> Trouble:
    return Trouble(f"The notebook {path} may only be read, so nothing of that was kept. Make it writable (chmod u+w), "
                   "or use another file: --notebook FILE")  # fmt: skip


def full(path: Path) -> Trouble:
    return Trouble(f"There is no room left on the disk for the notebook {path}, so nothing of that was kept; "
                   "what was kept before is whole. Make room and say it again.")  # fmt: skip


def busy(path: Path) -> Trouble:
    return Trouble(
        f"Another program has been writing in the notebook {path} for too long, so nothing of that was kept. "
        "Say it again."
    )


def no_room(path: Path, error: OSError) -> Trouble:
    """A file or folder that the system will not make or open."""
    if error.errno in (errno.ENOSPC, errno.EDQUOT, errno.EFBIG):
        return full(path)
    if error.errno == errno.EROFS:
        return read_only(path)
    return Trouble(f"The notebook {path} cannot be opened ({error.strerror or error}), so nothing was kept. "
                   "Use another file: --notebook FILE")  # fmt: skip


def of_sqlite(error: sqlite3.Error, path: Path) -> Trouble:
    """Words for what SQLite reports, by its error code."""
    code = getattr(error, "sqlite_errorcode", 0)
    main = code & 0xFF  # the first byte is the kind, the rest says more of it
    if main in (sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB):
        return damaged(path)
    if main == sqlite3.SQLITE_FULL or code in (
        sqlite3.SQLITE_IOERR_WRITE,
        sqlite3.SQLITE_IOERR_FSYNC,
        sqlite3.SQLITE_IOERR_TRUNCATE,
    ):
        return full(path)
    if main in (sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM):
        return read_only(path)
    if main in (sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED):
        return busy(path)
    return Trouble(
        f"The notebook {path} cannot be used ({error}), so nothing of that was kept. Use another file: --notebook FILE"
    )
