"""What a rule's algorithm returns to its run."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from .answer import Answer, Table, Value
from .drawing import Drawing


@dataclass(frozen=True, slots=True)
class Outcome:
    """values: step name -> exact value in base units (or words). notes: sentences after the answer.

    drawing: plain data of rules/engine/drawing.py, or None. labels: step name -> what to call its result here, where that
    depends on what was asked ("rows of navy"). The working is said to the run as it is made.
    For a plan: parts, (title, answer) of each rule worked for it; cut, its cut list; order, its order of work, a sentence
    a step; headline, what to say first when nothing in particular was asked; used, the inputs that its parts used.
    """

    values: Mapping[str, Any]
    notes: tuple[str, ...] = ()
    drawing: Drawing | None = None
    table: Table | None = None
    labels: Mapping[str, str] = field(default_factory=dict)
    parts: tuple[tuple[str, Answer], ...] = ()
    assumed: tuple[Value, ...] = ()
    cut: Table | None = None
    order: tuple[str, ...] = ()
    headline: str = ""
    used: frozenset[str] = frozenset()
