"""How a reply is judged against what was expected: right, wrong (answered otherwise), rash (answered when it should ask),
unanswered, or other."""

from __future__ import annotations

import json
from collections.abc import Iterable
from typing import Any

from assistant.conversation import Conversation
from rules.engine.answer import Answer
from rules.engine.units import UnitError, factor, same_kind
from tests.support import mind

SAME = {"stitch": "st", "round": "row", "gsm": "g/m^2", "": "1"}


def replies(entry: dict[str, Any]) -> Iterable[tuple[dict[str, Any], Answer]]:
    """Each turn of an entry with its answer; an entry without turns is one turn."""
    conversation = Conversation(mind())
    for turn in entry.get("turns", [entry]):
        yield turn, conversation.ask(turn["ask"].replace("\n", " "))


def _same(value: Any, unit: str, wanted: dict[str, Any]) -> bool:
    if not isinstance(value, int | float):
        return False
    slack = wanted.get("tol", 0) + 1e-6 * max(1.0, abs(wanted["value"]))
    unit, other = SAME.get(unit, unit), SAME.get(wanted.get("unit", "1"), wanted.get("unit", "1"))
    if unit != other:
        try:
            if not same_kind(unit, other):
                return False
            value = value * float(factor(unit) / factor(other))
        except (UnitError, AttributeError):
            if "1" not in (unit, other) and unit != other:
                return _nouns(unit, other) and abs(value - wanted["value"]) <= slack
    return bool(abs(value - wanted["value"]) <= slack)


def _nouns(unit: str, other: str) -> bool:
    """Two counts' nouns: what is counted is not judged, only that both are counts."""
    return all(name.replace(" ", "").isalpha() for name in (unit, other))


def judge(made: Answer, turn: dict[str, Any]) -> tuple[str, str]:
    """(verdict, why) of one answer."""
    expect, also = turn.get("expect", {}), turn.get("also", [])
    wanted = expect.get("status_in") or [expect.get("status", "answered")]
    answered = made.status in ("answered", "done")
    if not answered:
        if "answered" in wanted and made.status not in wanted:
            return "unanswered", f"{made.status}: {made.message[:100]}"
        if made.status not in wanted:
            return "other", f"status {made.status}, wanted {wanted}"
        asked = json.dumps([(one.name, one.ask) for one in made.missing]).lower()
        lost = [fragment for fragment in expect.get("missing_has", []) if fragment not in asked]
        return ("other", f"does not ask for {lost}: {asked}") if lost else ("right", "")
    if made.status not in wanted:
        return "rash", f"answered {made.results[0].text if made.results else ''}"
    return _judge_answered(made, expect, also)


def _judge_answered(made: Answer, expect: dict[str, Any], also: list[dict[str, Any]]) -> tuple[str, str]:
    head = made.results[0] if made.results else None
    if "value" in expect and (head is None or not _same(head.value, head.unit, expect)):
        return "wrong", f"got {head.text if head else None}, wanted {expect['value']} {expect.get('unit', '')}"
    for fragment in expect.get("text_has", []):
        if head is None or fragment not in head.text.lower():
            return "wrong", f"got {head.text if head else None!r}, wanted {fragment!r} in it"
    if "rows" in expect and (made.table is None or len(made.table.rows) != expect["rows"]):
        return "wrong", f"table of {len(made.table.rows) if made.table else 0} rows, wanted {expect['rows']}"
    cells = [(result.value, result.unit) for result in made.results]
    if made.table is not None:
        cells += [
            (value, unit) for row in made.table.rows for value, (_, unit) in zip(row, made.table.columns, strict=True)
        ]
    for extra in also:
        if "value" in extra and not any(_same(value, unit, extra) for value, unit in cells):
            return "wrong", f"no result of {extra['value']} {extra.get('unit', '')}"
    for fragment in expect.get("caution_has", []):
        if fragment not in " ".join(made.cautions).lower():
            return "other", f"no caution with {fragment!r}"
    return "right", ""
