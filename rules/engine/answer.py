"""What comes back from a rule: results, working, what was assumed; or what is missing, unclear or impossible."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from .drawing import Drawing
from .request import Number

if TYPE_CHECKING:
    import pint


@dataclass(frozen=True, slots=True)
class Result:
    """One thing worked out. value: rounded, in `unit`; exact: before rounding, in the same unit.

    text and exact_text are for reading; other: the same in the other system, for reading, or "".
    """

    name: str
    value: Any
    unit: str
    text: str
    exact: Any = None
    exact_text: str = ""
    other: str = ""
    key: str = ""

    @property
    def quantity(self) -> pint.Quantity[Any]:
        """The rounded value as a pint quantity. Raises UnitError for results in words."""
        from .units import UnitError, one

        if self.unit == "text":
            raise UnitError(f"{self.name} is in words: {self.text}")
        made: pint.Quantity[Any] = self.value * one(self.unit)
        return made


@dataclass(frozen=True, slots=True)
class Line:
    """One step of the working: what is done, in words; the formula in words; the numbers put in; the result."""

    step: str
    formula: str
    numbers: str
    result: str


@dataclass(frozen=True, slots=True)
class Value:
    """A given or assumed value as the answer lists it; why is for assumed values (and inferred readings)."""

    name: str
    value: Any
    unit: str
    text: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class Missing:
    """Something that must be asked for: its name, the question to ask, and an example of an answer."""

    name: str
    ask: str
    example: str


@dataclass(frozen=True, slots=True)
class Table:
    """A sweep or a comparison: (column name, unit) pairs, rows of values, and the same rows as texts."""

    columns: tuple[tuple[str, str], ...]
    rows: tuple[tuple[Any, ...], ...]
    texts: tuple[tuple[str, ...], ...]


@dataclass(frozen=True, slots=True)
class Answer:
    """Everything about one answer. status: answered, incomplete, unclear, impossible or done.

    parts: of a plan, (title, answer) of each rule worked for it; cut: its cut list; order: its order of work.
    text: paragraphs to be read after the headline, in place of results, for what is no sum (an explanation).
    """

    status: str
    topic: str = ""
    headline: str = ""
    given: tuple[Value, ...] = ()
    assumed: tuple[Value, ...] = ()
    results: tuple[Result, ...] = ()
    working: tuple[Line, ...] = ()
    cautions: tuple[str, ...] = ()
    sources: tuple[str, ...] = ()
    not_used: tuple[str, ...] = ()
    next: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    missing: tuple[Missing, ...] = ()
    choices: tuple[str, ...] = ()
    message: str = ""
    table: Table | None = None
    drawing: Drawing | None = None
    question: str = ""
    parts: tuple[tuple[str, Answer], ...] = ()
    cut: Table | None = None
    order: tuple[str, ...] = ()
    text: tuple[str, ...] = ()


def impossible(topic: str, message: str, **more: Any) -> Answer:
    """No answer exists, or the numbers contradict; message says why and what to type instead."""
    return Answer("impossible", topic=topic, message=message, **more)


__all__ = ["Answer", "Line", "Missing", "Number", "Result", "Table", "Value", "impossible"]
