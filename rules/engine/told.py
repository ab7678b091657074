"""What the maker told: the numbers as they are put back to her, and results told that can be none."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from .answer import Answer, Value
from .declare import Input, Rule
from .literal import bounds
from .request import Given, Request
from .run import Impossible
from .text import plain, plain_in


def given_values(rule: Rule, request: Request) -> tuple[Value, ...]:
    """What was given, echoed as it was typed."""
    values = []
    for name, given in (*request.given.items(), *request.stated.items()):
        declared = rule.input(name) or rule.step(name)
        label = declared.label if isinstance(declared, Input) else declared.shown_label if declared else name.replace("_", " ")
        values.append(Value(label, _given_number(given), given.unit or "1", given.text, given.why))
    return tuple(values)


def _given_number(given: Given) -> Any:
    if isinstance(given.value, tuple | str) or given.unit in ("text", ""):
        return given.text
    try:
        return plain_in(given.value, given.unit)
    except ValueError:
        return plain(given.value)


def check_told(rule: Rule, request: Request) -> None:
    """Raise Impossible for a result told that no such result can be: then the number was meant for something else."""
    for name, given in request.stated.items():
        step = rule.step(name)
        if step is None or not step.sane or not isinstance(given.value, Fraction | float):
            continue
        low, high = bounds(step.sane, request.system)
        if (low is not None and given.value < low) or (high is not None and given.value > high):
            raise Impossible(
                f"I read {given.text} as the {step.label or step.name.replace('_', ' ')}, which I take from "
                f"{step.sane.replace('..', ' to ')}. Say what it is. Such as: {rule.first_question()}"
            )


def as_told(request: Request, worked: Answer) -> bool:
    """Whether every result that was told is what the rest works out: "20 blocks, 4 x 5" only says it twice."""
    by_key = {result.key: result for result in worked.results}
    return all(
        name in by_key and isinstance(by_key[name].value, int | float) and by_key[name].value == _given_number(given)
        for name, given in request.stated.items()
    )  # fmt: skip
