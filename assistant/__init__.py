"""The conversation: command line, chat, context, notebook, rendering. Holds no trade sum."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rules.engine.answer import Answer

__all__ = ["__version__", "ask"]
__version__ = "0.1.0"


def ask(question: str, units: str | None = None) -> Answer:
    """Answer one question, apart from any asked before.

    units: "inches" or "metric" (or "in", "cm") for the system to answer in; None for the question's own.
    The answer's `results` hold value, unit and text, and `quantity` for use with pint; `status` says whether it was
    answered. A question that cannot be answered raises nothing: see `status` and `message`. Raises ValueError for
    units that are not known.

    >>> ask("how many 2 1/2 in binding strips for a 60 x 72 in quilt").results[0].text
    '7 strips'
    """
    from .library import ask as answered  # at the point of need: the command imports this package first of all

    return answered(question, units)
