"""What must still be asked for before a rule can be worked."""

from __future__ import annotations

from typing import Any

from .answer import Answer, Missing, impossible
from .declare import Input, Rule
from .formula import NoAnswer
from .literal import bounds
from .request import Request
from .run import Impossible, Needs, Run
from .told import given_values


def incomplete(rule: Rule, request: Request, wanted: list[str]) -> Answer:
    """What must be asked for before the first of the wanted results can be worked."""
    best: list[str] | None = None
    for name in wanted[:3]:
        needs = needed(rule, request, name)
        if needs and (best is None or len(needs) < len(best)):
            best = needs
        if len(wanted) > 1 and best:
            break
    missing = tuple(missing_of(rule, name) for name in best or [])
    if not missing:
        return _no_way(rule, request)
    what = ", ".join(item.name for item in missing)
    return Answer("incomplete", topic=rule.topic, given=given_values(rule, request), missing=missing,
                  message=f"I read this as {rule.topic}, but still need the {what}.", sources=(rule.source,))


def still_needs(rule: Rule, request: Request, name: str) -> Answer:
    """What to ask where one input more is needed; a way that leads nowhere else is no sum."""
    if rule.input(name) is None:
        return _no_way(rule, request)
    given = given_values(rule, request)
    missing = missing_of(rule, name)
    return Answer("incomplete", topic=rule.topic, given=given, missing=(missing,), sources=(rule.source,),
                  message=f"I read this as {rule.topic}, but still need the {missing.name}.")


def needed(rule: Rule, request: Request, name: str, unknown: tuple[str, ...] = ()) -> list[str]:
    """The inputs still needed to work a step, found by filling each one met with a stand-in and trying on.

    unknown: inputs that are wanted, so not needed.
    """
    found: list[str] = []
    stand_ins: dict[str, Any] = {other: _stand_in(item) for other in unknown if (item := rule.input(other))}
    for _ in range(8):
        try:
            Run(rule, request, stand_ins).get(name)
            break
        except Needs as need:
            item = rule.input(need.name)
            if item is None or need.name in found:
                break
            found.append(need.name)
            stand_ins[need.name] = _stand_in(item)
        except (Impossible, NoAnswer, ArithmeticError, TypeError, AttributeError, ValueError):
            break
    return found


def _stand_in(item: Input) -> Any:
    from .literal import literal

    if item.options:
        return next(iter(item.options))
    if item.many or not item.kind.is_number:
        return ()
    try:
        return literal(item.example)[0]
    except (ValueError, IndexError):
        return bounds(item.sane)[0] or 1 if item.sane else 1


def missing_of(rule: Rule, name: str) -> Missing:
    item = rule.input(name)
    assert item is not None
    return Missing(item.label, item.ask or f"What is the {item.label}?", item.example)


def _no_way(rule: Rule, request: Request) -> Answer:
    text = f"I cannot work {rule.topic} from these. Try: {rule.first_question()}"
    return impossible(rule.topic, text, given=given_values(rule, request))
