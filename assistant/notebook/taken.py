"""What a kept answer takes: what it says to buy, for the shopping list; what it says to cut, for the cut list."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import Any

from rules.engine.answer import Answer, Result, Value
from rules.engine.declare import Rule, Step
from rules.engine.kinds import COUNT, LENGTH
from rules.engine.rounding import BUY_TAPE, CUT_TAPE
from rules.engine.units import SIGNS, factor

from .amounts import Amount
from .ask_on import exact
from .describe import key_of

# Counts that are bought; other counts (strips, squares, panels) are cut.
BOUGHT = frozenset((
    "ball", "skein", "hank", "cone", "reel", "spool", "pack", "packet", "zip", "button", "snap", "eyelet", "buckle",
    "hook", "slider", "ring", "toggle", "bead",
))  # fmt: skip
# Lines of the rounding table for what is neither bought nor cut.
NOT_CUT = frozenset((
    "body or finished measure", "error or drift", "how many can be got", "money", "percentage", "price a length",
    "stitches", "rows", "stitch tension", "row tension", "stitch length", "length a budget buys", "yarn weight",
))  # fmt: skip
WIDTHS = ("cloth", "fabric", "usable")

Body = dict[str, Any]


def _worked(made: Answer, rule: Rule | None) -> Iterator[tuple[Step, Result]]:
    """The results that are numbers, each with its step."""
    for result in made.results:
        step = rule.step(result.key) if rule is not None else None
        if step is not None and isinstance(result.value, int | float):
            yield step, result


def _is_bought(step: Step, result: Result) -> bool:
    return (step.rounding is not None and step.rounding.bought) or result.unit in BOUGHT


# -- to buy ------------------------------------------------------------------------------------------------------------


def needs(made: Answer, rule: Rule | None, called: str) -> list[Body]:
    """What the answer says to buy. called: a name for the first of it, or "" for the rule's own."""
    bought = [pair for pair in _worked(made, rule) if _is_bought(*pair)] or _tape(made, rule)
    return [need(made, step, result, "" if place else called) for place, (step, result) in enumerate(bought)]


def _tape(made: Answer, rule: Rule | None) -> list[tuple[Step, Result]]:
    """Elastic, cord and the like are bought by the length that is cut: the whole of it, where it is cut in pieces."""
    tapes = [(step, result) for step, result in _worked(made, rule) if step.rounding is CUT_TAPE]
    return [max(tapes, key=lambda pair: exact(pair[1]))] if tapes else []


def need(made: Answer, step: Step, result: Result, called: str) -> Body:
    """A thing to buy, exact: it is rounded once, when the list is made."""
    name = called or name_of(result)
    noun = result.unit if result.unit in BOUGHT else ""
    amount = Amount("count" if noun else step.kind.name, exact(result), "1" if noun else result.unit, result.text)
    rounding = "" if noun or step.rounding is None else (BUY_TAPE if step.rounding is CUT_TAPE else step.rounding).name
    need: Body = {"called": name, "thing": key_of(name), "amount": amount.body(), "noun": noun, "rounding": rounding}
    width = _width(made, name) if step.kind is LENGTH else None
    return {**need, "part": True, **({"width": width} if width is not None else {})}


def name_of(result: Result) -> str:
    """What a result is called as a thing to buy: "elastic to buy" is elastic."""
    if result.unit in BOUGHT:
        return result.unit
    name = result.name
    for ending in (" to buy", " to cut", " in all"):
        name = name.removesuffix(ending)
    return name.removeprefix("length of ").strip()


def _width(made: Answer, called: str) -> Body | None:
    """The width of the cloth or tape that the answer reckons with."""
    words = (*WIDTHS, *key_of(called).split())
    for value in (*made.given, *made.assumed):
        if "width" in value.name and isinstance(value.value, int | float) and any(word in value.name for word in words):
            return {"value": str(_exact(value)), "text": value.text}
    return None


def _exact(value: Value) -> Fraction:
    return Fraction(value.value).limit_denominator(10**6) * factor(value.unit)


def price(made: Answer) -> Amount | None:
    """The price a length that the question gave."""
    for value in made.given:
        currency, slash, _ = value.unit.partition("/")
        if slash and currency in SIGNS and isinstance(value.value, int | float):
            return Amount("price a length", _exact(value), value.unit, value.text)
    return None


# -- to cut ------------------------------------------------------------------------------------------------------------


def pieces(made: Answer, rule: Rule | None) -> list[Body]:
    """What the answer says to cut."""
    return [
        {"what": _what(made, step, result), "of": made.topic, "text": result.text, "other": result.other, "part": True}
        for step, result in _worked(made, rule)
        if not _is_bought(step, result) and step.rounding is not None and step.rounding.name not in NOT_CUT
    ]


def _what(made: Answer, step: Step, result: Result) -> str:
    """What a size is of; of a number of pieces, what the question says of their size."""
    if step.kind is not COUNT:
        return result.name
    about = [value for value in (*made.given, *made.assumed) if result.unit in key_of(value.name).split()]
    return ", ".join(f"{value.name} {value.text}" for value in about)
