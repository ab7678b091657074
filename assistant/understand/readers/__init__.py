"""Readers for inputs that are lists or tables rather than one number; each says which values it took.

A reader is for a kind of input, by the kind's name. It is handed the input, the line, the values not yet spoken for and
the phrases met, and returns the input's Given (None when the line holds no such list) and the numbers of the values used.
"""

from __future__ import annotations

from collections.abc import Callable

from rules.engine.declare import Input
from rules.engine.request import Given

from ..lexicon import Match
from ..values import Line, Value
from . import changes, cost_lines, offers, pieces, size_table, stripes, sums, yarn_count

Reader = Callable[[Input, Line, list[Value], list[Match]], tuple[Given | None, frozenset[int]]]

# Lists of two or more that tell by themselves which rule they are for: lines of a bill, pieces of a lay, a size table.
PLAIN = frozenset(("cost lines", "pieces", "size table"))
READERS: dict[str, Reader] = {
    "changes": changes.read,
    "cloths on offer": offers.read,
    "cost lines": cost_lines.read,
    "figure measures": size_table.read_figure,
    "pieces": pieces.read,
    "size table": size_table.read,
    "stripes": stripes.read,
    "sum": sums.read,
    "yarn count": yarn_count.read,
}
