"""The exit statuses, by name."""

from __future__ import annotations

from enum import IntEnum


class Status(IntEnum):
    """What the command says to the shell when it ends."""

    ANSWERED = 0
    """Every question was answered, or every instruction carried out."""
    SOME_NOT = 1
    """At least one question was not answered, or an answer could not be written."""
    WRONG_USAGE = 2
    """The options or arguments were not understood; nothing was answered."""
    STOPPED = 130
    """Ctrl-C, as shells expect it (128 + SIGINT)."""
