"""The outside as one object: streams, terminal, width, colour, folders. Tests hand in their own."""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, TextIO, cast

from .signs import carried

if TYPE_CHECKING:
    from pathlib import Path

APP = "ellwand"
USUAL_COLUMNS = 80
LEAST_COLUMNS, MOST_COLUMNS = 24, 100  # lines longer than 100 are hard to read, even where they fit
MOST_TYPED = 1_000_000
"""Signs of one line that are read; the rest of a longer line is passed over, so that memory stays bounded."""


@dataclass(slots=True)
class World:
    """Where questions come from and answers go.

    typed: stdin is a terminal. watched: stdout is a terminal.
    """

    stdin: TextIO
    stdout: TextIO
    stderr: TextIO
    environ: Mapping[str, str]
    typed: bool = False
    watched: bool = False

    @classmethod
    def real(cls) -> World:
        """The process's own streams; a stream that is closed is empty."""
        stdin, stdout, stderr = (_open(stream, mode) for stream, mode in
                                 ((sys.stdin, "r"), (sys.stdout, "w"), (sys.stderr, "w")))  # fmt: skip
        return cls(stdin, stdout, stderr, os.environ, stdin.isatty(), stdout.isatty())

    @property
    def columns(self) -> int:
        """Columns to write in: what COLUMNS says, else the terminal's width, else 80."""
        told = self.environ.get("COLUMNS", "")
        width = int(told) if told.isdecimal() and len(told) < 6 else self._terminal_columns()
        return min(max(width or USUAL_COLUMNS, LEAST_COLUMNS), MOST_COLUMNS)

    @property
    def rows(self) -> int:
        """Lines that the terminal shows at once; 0 when there is no telling."""
        return self._terminal_size()[1]

    def _terminal_columns(self) -> int:
        return self._terminal_size()[0]

    def _terminal_size(self) -> tuple[int, int]:
        """Columns and lines; 0 for both when there is no terminal."""
        if not self.watched:
            return 0, 0
        try:
            size = os.get_terminal_size(self.stdout.fileno())
        except (OSError, ValueError):
            return 0, 0
        return size.columns, size.lines

    @property
    def colour(self) -> bool:
        """Whether SGR codes may be written: a terminal that knows them, and NO_COLOR not set."""
        return self.watched and not self.environ.get("NO_COLOR") and self.environ.get("TERM", "dumb") != "dumb"

    @property
    def encoding(self) -> str:
        return self.stdout.encoding or "utf-8"

    @property
    def unicode(self) -> bool:
        """Whether stdout carries any sign there is."""
        return self.encoding.lower().replace("-", "").replace("_", "").startswith("utf")

    @property
    def box_signs(self) -> bool:
        """Whether drawings may use box characters: only on a terminal."""
        return self.watched and self.unicode

    def say(self, text: str) -> None:
        """Write lines to stdout at once, so that whoever reads the pipe has them."""
        self.stdout.write(carried(text, self.encoding) + "\n")
        self.stdout.flush()

    def trouble(self, text: str) -> None:
        """Write lines to stderr."""
        self.stderr.write(carried(text, self.stderr.encoding or "utf-8") + "\n")
        self.stderr.flush()

    def lines(self) -> Iterator[str]:
        """The lines of stdin as they come, without line ends; bytes that are no text come as a replacement sign."""
        if reconfigure := getattr(self.stdin, "reconfigure", None):
            reconfigure(errors="replace")
        while line := self.stdin.readline(MOST_TYPED):
            whole = line.endswith("\n") or len(line) < MOST_TYPED
            while not whole:
                more = self.stdin.readline(MOST_TYPED)
                whole = not more or more.endswith("\n")
            yield line.rstrip("\r\n").removeprefix("\ufeff")

    # -- folders: platformdirs is imported only where one is needed ---------------------------------------------

    def cache_folder(self) -> Path:
        """Where what can be made again is kept; ELLWAND_CACHE names another."""
        return self._folder("ELLWAND_CACHE", "user_cache_path")

    def state_folder(self) -> Path:
        """Where the history of the chat is kept; ELLWAND_STATE names another."""
        return self._folder("ELLWAND_STATE", "user_state_path")

    def data_folder(self) -> Path:
        """Where what people have kept lies; ELLWAND_DATA names another."""
        return self._folder("ELLWAND_DATA", "user_data_path")

    def _folder(self, variable: str, kind: str) -> Path:
        from pathlib import Path

        if own := self.environ.get(variable):
            return Path(own)
        import platformdirs

        found: Path = getattr(platformdirs, kind)(APP, appauthor=False)
        return found


def _open(stream: TextIO | None, mode: str) -> TextIO:
    """The stream, or an empty one where whoever started us has closed it."""
    return cast(TextIO, open(os.devnull, mode, encoding="utf-8")) if stream is None else stream
