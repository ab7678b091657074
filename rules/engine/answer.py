"""What comes back from a rule: results, working, what was assumed; or what is missing, unclear or impossible."""

from __future__ import annotations

from collections.abc import Callable
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


Texts = tuple[str, str, str]


class Line:
    """One step of the working: what is done, in words; the formula in words; the numbers put in; the result.

    later: gives the last three when they are first read, since the working of many sums (those tried on the way to an
    answer, or answered in brief) is never read.
    """

    __slots__ = ("_later", "_texts", "step")

    def __init__(
        self, step: str, formula: str, numbers: str, result: str, later: Callable[[], Texts] | None = None
    ) -> None:
        self.step = step
        self._texts: Texts = formula, numbers, result
        self._later = later

    @classmethod
    def when_read(cls, step: str, later: Callable[[], Texts]) -> Line:
        """A line whose formula, numbers and result are written when they are first read."""
        return cls(step, "", "", "", later)

    def titled(self, step: str) -> Line:
        """The same line with other words for what is done."""
        return Line(step, *self.texts)

    @property
    def texts(self) -> Texts:
        if self._later is not None:
            self._texts, self._later = self._later(), None
        return self._texts

    @property
    def formula(self) -> str:
        return self.texts[0]

    @property
    def numbers(self) -> str:
        return self.texts[1]

    @property
    def result(self) -> str:
        return self.texts[2]

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Line) and (self.step, self.texts) == (other.step, other.texts)

    def __hash__(self) -> int:
        return hash((self.step, self.texts))

    def __repr__(self) -> str:
        return f"Line{(self.step, *self.texts)!r}"


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
