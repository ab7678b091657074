"""A sequence of stripes: "4 rows navy, 2 rows white and 6 rows grey", and the colour that is asked about."""

from __future__ import annotations

from rules.engine.declare import Input
from rules.engine.request import Given
from rules.knitting.stripes import Stripe, Stripes

from ..lexicon import Match
from ..tokens import FILLERS, LINKS
from ..values import Line, Value

NO_COLOUR = frozenset(
    """row round rnd line over total altogether repeat repeats stripe then knit plain long wide tall sequence
    pattern colour ball g m yarn wool piece time times each stitch scarf blanket body sleeve hat sock total ml""".split()
)


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """The stripes of a line, when at least two numbers each have a colour beside them, all on the same side."""
    rows = [value for value in values if value.shape == "one" and value.main.unit in ("row", "")
            and value.main.per is None]
    for side in (_after, _before):
        pairs = [(value, spot) for value in rows if (spot := side(line, value)) is not None]
        if len(pairs) >= 2 and len({line.words[spot] for _, spot in pairs}) >= 2:
            return _given(line, pairs), frozenset(value.number for value, _ in pairs)
    return None, frozenset()


def _given(line: Line, pairs: list[tuple[Value, int]]) -> Given:
    used = {spot for _, spot in pairs}
    stripes = tuple(Stripe(_typed(line, spot), value.main.value) for value, spot in pairs)
    colours = {line.words[spot]: _typed(line, spot) for _, spot in pairs}
    asked = next((colours[word] for spot, word in enumerate(line.words) if word in colours and spot not in used), "")
    return Given(Stripes(stripes, asked), "text", ", ".join(f"{value.text} {_typed(line, spot)}" for value,
                                                            spot in pairs))


def _typed(line: Line, spot: int) -> str:
    start, end = line.origin[spot]
    typed = line.text[start:end]
    return typed if len(typed) == 1 else typed.lower()


def _after(line: Line, value: Value) -> int | None:
    """The place of the colour word after a number: "4 rows of navy"."""
    spot = value.last
    passed = ("of", "in", "row", "round", "the", "x", "colour")
    while spot < len(line.words) and spot not in line.at_value and line.words[spot] in passed:
        spot += 1
    return spot if _colour(line, spot) else None


def _before(line: Line, value: Value) -> int | None:
    """The place of the colour word before a number: "navy 4 rows"."""
    spot = value.first - 1
    while spot >= 0 and spot not in line.at_value and line.words[spot] in (":", "=", "for", "-", "x"):
        spot -= 1
    return spot if _colour(line, spot) else None


def _colour(line: Line, spot: int) -> bool:
    if not 0 <= spot < len(line.words) or spot in line.at_value:
        return False
    word = line.words[spot]
    if len(word) == 1:
        return (word in "abcdef" and word != "a") or (word != "i" and line.text[slice(*line.origin[spot])].isupper())
    return word.isalpha() and word not in FILLERS and word not in LINKS and word not in NO_COLOUR
