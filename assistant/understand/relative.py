"""Changes told by how much: "make it 10 cm deeper", "2 in narrower", which add to what went before, or take from it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction

from rules.engine.declare import Input, Rule
from rules.engine.kinds import COUNT, LENGTH
from rules.engine.request import Given, Request
from rules.engine.run import Impossible, Run
from rules.engine.text import shown

from .reading import Reading
from .slots import Slot
from .values import Line, Value

# What is said of a measure -> which way it goes, and the axes it may mean, the likeliest first.
COMPARED: Mapping[str, tuple[int, tuple[str, ...]]] = {
    "longer": (1, ("length", "height")),
    "shorter": (-1, ("length", "height")),
    "wider": (1, ("width",)),
    "narrower": (-1, ("width",)),
    "deeper": (1, ("depth", "height")),
    "shallower": (-1, ("depth",)),
    "taller": (1, ("height", "length")),
    "higher": (1, ("height",)),
    "lower": (-1, ("height",)),
}
# "Let out by 2 cm", "increase the width by an inch": verbs that change something by what follows "by".
BY_VERB: Mapping[tuple[str, ...], int] = {
    ("let", "out"): 1, ("let", "it", "out"): 1, ("increase",): 1, ("widen",): 1, ("lengthen",): 1, ("raise",): 1, ("deepen",): 1,
    ("take", "in"): -1, ("taken", "in"): -1, ("take", "it", "in"): -1, ("took", "in"): -1, ("reduce",): -1, ("shorten",): -1,
    ("narrow",): -1, ("decrease",): -1, ("lower",): -1,
}  # fmt: skip
MORE: Mapping[str, int] = {"more": 1, "extra": 1, "fewer": -1, "less": -1}
AXIS_WORD = {"length": "long", "height": "high", "width": "wide", "depth": "deep"}


def compared(line: Line, value: Value) -> tuple[int, tuple[str, ...]] | None:
    """Which way, and along which axes, the word straight after a value says that it changes something."""
    if value.shape != "one" or value.last >= len(line.words) or value.last in line.at_value:
        return None
    start, end = line.origin[value.last]
    return COMPARED.get(line.text[start:end].lower())


def with_axes(line: Line, rule: Rule) -> Line | None:
    """The line with each such word put as the rule's own word for what it changes; None when there is none."""
    axes = {item.axis for item in rule.inputs if item.kind is LENGTH}
    words, met = list(line.words), False
    for value in line.values:
        told = compared(line, value)
        axis = next((axis for axis in told[1] if axis in axes), "") if told is not None else ""
        if axis:
            words[value.last], met = AXIS_WORD[axis], True
    return replace(line, words=words) if met else None


def apply(rule: Rule, reading: Reading, earlier: Request, changed: Request) -> Request:
    """The changed request with values told by how much added to (or taken from) what they were before."""
    given = dict(changed.given)
    for value in reading.line.values:
        slots = reading.placing.spots.get(value.number, ())
        told = compared(reading.line, value) or _more(reading.line, value, slots) or _by_verb(reading.line, value)
        if told is None or len(slots) != 1 or slots[0].name not in given or slots[0].stated:
            continue
        name, one = slots[0].name, given[slots[0].name]
        before = _before(rule, earlier, name)
        if before is not None and isinstance(one.value, int | float | Fraction):
            whole = before + told[0] * one.value
            given[name] = Given(
                whole,
                one.unit,
                shown(whole, one.unit),
                f"{shown(before, one.unit)} before, and {value.text} {_word(reading.line, value) or ('more' if told[0] > 0 else 'less')}",
            )
    return replace(changed, given=given)


def _more(line: Line, value: Value, slots: tuple[Slot, ...]) -> tuple[int, tuple[str, ...]] | None:
    """Which way a count of things changes: "one more drop", "2 fewer buttons"."""
    if len(slots) != 1 or slots[0].kind is not COUNT:
        return None
    way = next((MORE[word] for word in line.words[value.last : value.last + 2] if word in MORE), 0)  # "one drop fewer"
    return (way, ()) if way else None


def _by_verb(line: Line, value: Value) -> tuple[int, tuple[str, ...]] | None:
    """Which way a verb before "by" changes something: "let out by 2 cm"."""
    words = tuple(line.words[: value.first])
    if value.shape != "one" or words[-1:] != ("by",):
        return None
    ways = (way for verb, way in BY_VERB.items() if any(words[spot : spot + len(verb)] == verb for spot in range(len(words))))
    way = next(ways, 0)
    return (way, ()) if way else None


def _word(line: Line, value: Value) -> str:
    """The word behind a value, as typed; "" where none follows."""
    start, end = line.origin[value.last] if value.last < len(line.origin) else (0, 0)
    word = line.text[start:end]
    return word if word[:1].isalpha() else ""


def _before(rule: Rule, earlier: Request, name: str) -> Fraction | None:
    """What an input was before: as given, or as it was assumed; None when it had no number."""
    item = rule.input(name)
    if not isinstance(item, Input) or item.kind not in (LENGTH, COUNT) or item.many:
        return None
    try:
        value = Run(rule, earlier).maybe(name)
    except Impossible:
        return None
    return value if isinstance(value, Fraction) else None
