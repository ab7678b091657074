"""Files a maker asks for by name: written whole or not at all, and never over what is there unless that was said."""

from __future__ import annotations

import os
from contextlib import suppress
from pathlib import Path

REPLACING = (
    ", replacing it",
    " replacing it",
    ", overwriting it",
    " overwriting it",
    ", replace it",
    " and replace it",
)
QUOTES = "\"'“”‘’"


def named(said: str) -> tuple[Path, bool]:
    """The file that words name, and whether one that is there may be replaced.

    >>> named("lay.svg, replacing it")
    (PosixPath('lay.svg'), True)
    """
    ending = next((one for one in REPLACING if said.lower().endswith(one)), "")
    words = said[: len(said) - len(ending)].strip().strip(QUOTES)
    try:
        return Path(words).expanduser(), bool(ending)
    except RuntimeError:  # no such home folder: then it is a name like any other
        return Path(words), bool(ending)


def write(path: Path, text: str, replacing: bool = False, mode: int = 0o666) -> str:
    """Put the text in the file; "" when it is there, else the words that say why nothing was written.

    replacing: what is there already may go. mode: who may read a new file, before the umask.
    """
    fresh = path.with_name(f"{path.name}.{os.getpid()}") if path.name else path
    try:
        if path.exists() and not replacing:
            return there_already(path)
        file = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL, mode)
        with open(file, "w", encoding="utf-8", newline="") as stream:
            stream.write(text)
        os.replace(fresh, path)
    except (OSError, ValueError) as error:  # ValueError: a name that no file can have
        with suppress(OSError, ValueError):
            fresh.unlink()
        return f"{path} cannot be written ({getattr(error, 'strerror', None) or error}). Name another file."
    return ""


def there_already(path: Path) -> str:
    """What is said of a file that is not written over."""
    return f"{path} is there already, so I have left it as it is. Name another file, or end with: {path}, replacing it"
