"""The tables of the understanding, kept between runs in our own cache folder, since building them is slow.

The bytes hold a parse table that is unpickled when read back, and unpickling runs what it is told to. So they are read
only from a folder and a file that belong to this user and that nobody else can write. Any trouble means: build anew.
"""

from __future__ import annotations

import os
import stat
import zlib
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable
    from pathlib import Path

    from .understand.mind import Mind
    from .world import World

SUFFIX = ".table"
SUM_BYTES = 4


def awake(world: World) -> Mind:
    """The understanding, from the saved tables when they are there and sound, else built and saved."""
    from .understand.mind import Mind

    try:
        path = world.cache_folder() / (Mind.key() + SUFFIX)
    except (OSError, RuntimeError):  # no home folder at all
        return Mind.awake(None)
    kept = read(path)
    if kept is not None:
        try:
            return Mind.awake(kept)
        except Exception:  # bytes of another make: whatever unpickling them raises, building anew puts it right
            path.unlink(missing_ok=True)
    mind = Mind.awake(None)
    keep(path, mind.to_bytes())
    return mind


def read(path: Path) -> bytes | None:
    """What was kept, or None when there is nothing, it is damaged, or somebody else could have written it."""
    try:
        if not _is_ours(os.lstat(path.parent), stat.S_ISDIR):
            return None
        file = os.open(path, os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0))
        with open(file, "rb") as stream:
            if not _is_ours(os.fstat(file), stat.S_ISREG):
                return None
            whole = stream.read()
    except OSError:
        return None
    sound = len(whole) > SUM_BYTES and _sum(whole[SUM_BYTES:]) == whole[:SUM_BYTES]
    return whole[SUM_BYTES:] if sound else None


def keep(path: Path, data: bytes) -> bool:
    """Keep the bytes, all or nothing, and drop those of other keys. False when that could not be done."""
    fresh = path.with_name(f"{path.name}.{os.getpid()}")
    try:
        path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        if not _is_ours(os.lstat(path.parent), stat.S_ISDIR):
            return False
        file = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL | getattr(os, "O_BINARY", 0), 0o600)
        try:
            with open(file, "wb") as stream:
                stream.write(_sum(data) + data)
            os.replace(fresh, path)
        except OSError:
            fresh.unlink(missing_ok=True)
            raise
        for other in path.parent.glob("*" + SUFFIX):
            if other != path:
                other.unlink(missing_ok=True)
    except OSError:
        return False
    return True


def _is_ours(about: os.stat_result, is_kind: Callable[[int], bool]) -> bool:
    """Whether it is of the right kind, this user's, and closed to writing by others."""
    if not is_kind(about.st_mode):
        return False
    if not hasattr(os, "getuid"):  # Windows: the user's own folders are closed by their access lists
        return True
    return about.st_uid == os.getuid() and not about.st_mode & (stat.S_IWGRP | stat.S_IWOTH)


def _sum(data: bytes) -> bytes:
    """A check against damage, not against malice: that is what the owner and the mode are for."""
    return zlib.crc32(data).to_bytes(SUM_BYTES, "big")
