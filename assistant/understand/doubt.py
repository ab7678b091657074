"""Numbers that say the same thing twice, and not alike: a spacing, a count and a length that do not go together."""

from __future__ import annotations

import re
from dataclasses import replace

from rules.engine.answer import Answer
from rules.engine.declare import Rule
from rules.engine.request import Request
from rules.engine.work import answer as work

# How far two answers may lie apart and still be one, for what was measured roughly.
ROUGHLY = 0.02
_NAME = re.compile(r"[a-z_]+")


def against(rule: Rule, request: Request, made: Answer) -> tuple[str, str]:
    """What was told and what it goes against, in words; empty when nothing does.

    An input told is taken for what others told would come to, so those change nothing: then both must come to the same.
    """
    unused = {name for name in request.given if any(text.startswith(_told(rule, request, name)) for text in made.not_used)}
    for name in request.given if unused else ():
        item = rule.input(name)
        formulas = [default.value for default in item.defaults if default.derived and default.value.startswith("=")] if item is not None else []
        ignored = sorted({word for formula in formulas for word in _NAME.findall(formula)} & unused)
        if not ignored:
            continue
        other = work(rule, replace(request, given={key: value for key, value in request.given.items() if key != name}))
        if other.status == "answered" and _apart(made, other):
            return _told(rule, request, name), " and ".join(_told(rule, request, one) for one in ignored)
    return "", ""


def _told(rule: Rule, request: Request, name: str) -> str:
    item = rule.input(name)
    return f"{item.label if item is not None else name} {request.given[name].text}".strip()


def _apart(one: Answer, other: Answer) -> bool:
    """Whether two answers come to different first results."""
    first, second = one.results[0].exact, other.results[0].exact
    if not isinstance(first, int | float) or not isinstance(second, int | float):
        return False
    return abs(first - second) > ROUGHLY * max(abs(first), abs(second))
