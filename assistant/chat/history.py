"""What was asked before, a line an entry, in the user's state folder. Not being able to keep it stops nothing."""

from __future__ import annotations

import os
from collections.abc import Iterable
from pathlib import Path

from prompt_toolkit.history import History

MOST_KEPT = 1000
LONGEST_KEPT = 2000  # signs; a longer line is no question to come back to


class KeptHistory(History):
    """A history in a file that only this user can read. `trouble` says, once, that it could not be kept."""

    def __init__(self, path: Path) -> None:
        super().__init__()
        self._path = path
        self._trouble = ""
        self._told = False

    def trouble(self) -> str:
        """One sentence when the history cannot be kept, the first time it is asked for; else ""."""
        if self._told or not self._trouble:
            return ""
        self._told = True
        return self._trouble

    def load_history_strings(self) -> Iterable[str]:
        """The entries, newest first, as prompt_toolkit wants them. A file grown long is shortened to the newest."""
        try:
            lines = self._path.read_text(encoding="utf-8", errors="replace").splitlines()
        except FileNotFoundError:
            return []
        except OSError as error:
            self._fail(error)
            return []
        if len(lines) > 2 * MOST_KEPT:
            lines = lines[-MOST_KEPT:]
            self._write(lines, os.O_TRUNC)
        return lines[::-1][:MOST_KEPT]

    def store_string(self, string: str) -> None:
        """Keep what was typed; of a pasted block, each line."""
        lines = [line.strip() for line in string.splitlines()]
        self._write([line for line in lines if line and len(line) <= LONGEST_KEPT], os.O_APPEND)

    def _write(self, lines: list[str], how: int) -> None:
        try:
            self._path.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
            file = os.open(self._path, os.O_WRONLY | os.O_CREAT | how, 0o600)
            with open(file, "w", encoding="utf-8", errors="replace") as stream:
                stream.writelines(line + "\n" for line in lines)
        except OSError as error:
            self._fail(error)

    def _fail(self, error: OSError) -> None:
        self._trouble = f"The history of questions cannot be kept in {self._path}: {error.strerror or error}."
