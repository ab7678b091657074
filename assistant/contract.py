"""An answer as answer contract 1 has it: one JSON object, numbers as JSON can carry them."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    from rules.engine.answer import Answer, Line, Missing, Result, Table, Value

CONTRACT = 1
DRAWING_COLUMNS = 80


def as_dict(answer: Answer) -> dict[str, Any]:
    """The contract's object. Keys that belong to one status only are there with that status alone."""
    made: dict[str, Any] = {
        "contract": CONTRACT,
        "question": answer.question,
        "status": answer.status,
        "topic": answer.topic,
    }
    made.update(_of_status(answer))
    made.update(
        **_body(answer),
        not_used=list(answer.not_used),
        next=list(answer.next),
    )
    made.update(_when_there(answer))
    return made


def as_line(answer: Answer, ascii_only: bool = False) -> str:
    """The contract's object as one line of JSON. ascii_only: every other sign is written as an escape."""
    import json  # only with --json

    return json.dumps(as_dict(answer), ensure_ascii=ascii_only, allow_nan=False)


def _of_status(answer: Answer) -> dict[str, Any]:
    """What only answers of this status carry."""
    if answer.status in ("answered", "done"):
        return {}
    own: dict[str, Any] = {"message": answer.message}
    if answer.status == "incomplete":
        own["missing"] = [_missing(missing) for missing in answer.missing]
    elif answer.status == "unclear":
        own["choices"] = list(answer.choices)
    elif answer.status == "impossible":
        own["reason"] = answer.message
    return own


def _when_there(answer: Answer) -> dict[str, Any]:
    """What an answer carries only when it has it."""
    notes = [*answer.notes]
    if answer.status == "done" and (told := answer.headline or answer.message):
        notes.insert(0, told)
    there: dict[str, Any] = {"notes": notes} if notes else {}
    if answer.table is not None:
        there["table"] = _table(answer.table)
    if answer.drawing is not None:
        from .drawing import as_text  # only when there is something to draw

        there["drawing"] = as_text(answer.drawing, DRAWING_COLUMNS, False).splitlines()
    if answer.parts:
        there["parts"] = [
            {"title": title, "topic": part.topic, "text": part.headline, **_body(part), **_when_there(part)}
            for title, part in answer.parts
        ]
    if answer.cut is not None:
        there["cut"] = _table(answer.cut)
    if answer.order:
        there["order"] = list(answer.order)
    return there


def _body(answer: Answer) -> dict[str, Any]:
    """What every answer carries, a part of a plan too."""
    return {
        "given": [_value(value) for value in answer.given],
        "assumed": [_value(value) for value in answer.assumed],
        "results": [_result(result) for result in answer.results],
        "working": [_line(line) for line in answer.working],
        "cautions": list(answer.cautions),
        "sources": list(answer.sources),
    }


def _result(result: Result) -> dict[str, Any]:
    made = {"name": result.name, "value": number(result.value), "unit": result.unit, "text": result.text}
    if result.exact is not None:
        made.update(exact=number(result.exact), exact_text=result.exact_text)
    return made


def _value(value: Value) -> dict[str, Any]:
    made = {"name": value.name, "value": number(value.value), "unit": value.unit, "text": value.text}
    return {**made, "why": value.why} if value.why else made


def _line(line: Line) -> dict[str, str]:
    return {"step": line.step, "formula": line.formula, "numbers": line.numbers, "result": line.result}


def _missing(missing: Missing) -> dict[str, str]:
    return {"name": missing.name, "ask": missing.ask, "example": missing.example}


def _table(table: Table) -> dict[str, Any]:
    return {
        "columns": [{"name": name, "unit": unit} for name, unit in table.columns],
        "rows": [[number(value) for value in row] for row in table.rows],
    }


def number(value: Any) -> Any:
    """A value as JSON can carry it: whole numbers as int, other numbers as float, endless as null, the rest text.

    >>> number(Fraction(5, 2)), number(Fraction(6, 2)), number((1, "a")), number(float("inf"))
    (2.5, 3, [1, 'a'], None)
    """
    if value is None or isinstance(value, bool | str):
        return value
    if isinstance(value, int | Fraction | float):
        return _finite(value)
    if isinstance(value, list | tuple):
        return [number(one) for one in value]
    return str(value)


def _finite(value: Fraction | float) -> float | int | None:
    try:
        size = float(value)
    except OverflowError:
        return None
    if not math.isfinite(size):
        return None
    if not isinstance(value, float) and value.denominator == 1:
        return value.numerator
    return int(size) if size.is_integer() and abs(size) < 1e15 else size
