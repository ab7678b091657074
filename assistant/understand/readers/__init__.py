"""Readers for inputs that are lists or tables rather than one number; each says which values it took.

A reader is for a kind of input, by the kind's name. It is handed the input, the line, the values not yet spoken for and
the phrases met, and returns the input's Given (None when the line holds no such list) and the numbers of the values used.
"""

from __future__ import annotations

from collections.abc import Callable
from functools import lru_cache
from importlib import import_module

from rules.engine.declare import Input
from rules.engine.request import Given

from ..lexicon import Match
from ..values import Line, Value

Reader = Callable[[Input, Line, list[Value], list[Match]], tuple[Given | None, frozenset[int]]]

# Lists of two or more that tell by themselves which rule they are for: lines of a bill, pieces of a lay, a size table.
PLAIN = frozenset(("cost lines", "pieces", "size table"))
# Kind of input -> the module and function that read it; a module is loaded when a question first needs it.
READERS = {
    "alterations": "alterations.read",
    "changes": "changes.read",
    "cloths on offer": "offers.read",
    "cost lines": "cost_lines.read",
    "figure measures": "size_table.read_figure",
    "pieces": "pieces.read",
    "size table": "size_table.read",
    "stripes": "stripes.read",
    "sum": "sums.read",
    "yarn count": "yarn_count.read",
}


@lru_cache(maxsize=32)
def reader_of(kind: str) -> Reader | None:
    """The reader for a kind of input, by the kind's name; None for a kind that is one number."""
    module, _, function = READERS.get(kind, "").partition(".")
    if not module:
        return None
    found: Reader = getattr(import_module(f"{__name__}.{module}"), function)
    return found
