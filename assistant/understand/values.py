"""A question as a row of words and values, and which kinds of input each value could fill."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache

from grammar import Sum
from grammar.query import Mark, Measure, Query, Series, Size, Span, Sweep, Word
from rules.engine.kinds import Kind
from rules.engine.request import Given
from rules.engine.units import CURRENCIES, convert, factor, rough_factor

from .joined import put_right
from .tokens import LINKS, PER_CENT, tokens

LENGTHS = frozenset(("in", "ft", "yd", "mm", "cm", "m", "km", "ligne"))
MONEYS = frozenset((*CURRENCIES, "pence", "cent"))
KINDS_OF_UNIT: dict[str, tuple[str, ...]] = {
    **dict.fromkeys(LENGTHS, ("length",)),
    **dict.fromkeys(("in^2", "ft^2", "yd^2", "mm^2", "cm^2", "m^2"), ("area",)),
    **dict.fromkeys(("l", "ml"), ("volume",)),
    **dict.fromkeys(("g", "kg", "oz", "lb"), ("weight",)),
    **dict.fromkeys(MONEYS, ("money",)),
    **dict.fromkeys(("g/m^2", "oz/yd^2"), ("weight an area",)),
    **dict.fromkeys(("tex", "dtex", "denier"), ("weight a length",)),
    "pound": ("money", "weight"),
    "L": ("volume", "length"),
    "%": ("percentage", "ratio"),
    "st": ("stitches", "stitch tension"),
    "row": ("rows", "count", "row tension"),
    "st/in": ("stitch tension", "number a length"),
    "degree": ("angle",),
    **dict.fromkeys(("hour", "minute"), ("time",)),
}
RATE_KINDS = {"st": "stitch tension", "row": "row tension", "": "number a length", "g": "weight a length"}
BARE_KINDS = ("count", "ratio", "length", "stitches", "rows", "money", "percentage", "stitch tension", "row tension", "price a length",
              "weight", "area")  # fmt: skip


WHAT = ["what"]
TELLING = frozenset(("is", "are", "was", "were"))
OWNERS = frozenset("i my the a her his she he we our they their it you your this that one".split())
ASKS = frozenset(("what", "how", "which", "and", "so"))
LARGEST_BITS = 900
SIGNS = {"+": "plus", "&": "and"}
MOST_SOFT = 12  # "one of them", "the two of us"; "one hundred and forty" is a number to place
READABLE = 999  # larger numbers are in no phrase


@dataclass(slots=True)
class Value:
    """One number, or several that belong together, and where it stands among the words.

    shape: one, size, span, series, or sweep. first, last: its place in the row of tokens.
    why: where it comes from, when it was not typed. main: the first of the members.
    soft: a number word that may be no number at all ("one of the pieces", "what is that a metre").
    aside: it is likely none of the sum's ("I'm 61"), and is placed only where nothing can be answered without it.
    counts_others: an aside's, and a number of things that no rule knows ("6 deckchairs"), so it may be how many are made.
    """

    shape: str
    members: tuple[Measure, ...]
    text: str
    first: int
    last: int
    start: int
    end: int
    alternatives: bool = False
    number: int = 0
    why: str = ""
    aside: bool = False
    counts_others: bool = False
    main: Measure = field(init=False)
    soft: bool = field(init=False)

    def __post_init__(self) -> None:
        self.main = self.members[0]
        spelled = self.shape == "one" and self.main.spelled and self.main.value <= MOST_SOFT
        self.soft = spelled and (self.main.bare or self.text.lower().startswith(("a ", "an ")))


STOPS = frozenset((",", ";", ".", "?", "!", "\n", "and"))
VALUE_BARRIER, WORD_BARRIER = 2.2, 0.75
BARRIERS = {
    **dict.fromkeys(LINKS, 0.12),
    **dict.fromkeys((",", ";", "and", "with"), 1.3),
    **dict.fromkeys((".", "?", "!", "\n"), 2.0),
}


@dataclass(slots=True)
class Line:
    """A question laid out: tokens (a value's token is "#", or its digits when a small bare number), values, barriers.

    barriers: how hard it is to cross the tokens up to each, added up when first asked for. aged: someone's age is told.
    kept: lists and tables that were not typed but are meant, by the name of their kind.
    """

    text: str
    words: list[str]
    origin: list[tuple[int, int]]
    values: list[Value]
    at_value: dict[int, Value]
    sum: Sum | None = None
    kept: dict[str, Given] = field(default_factory=dict)
    barriers: list[float] = field(default_factory=list)
    aged: bool = False

    @property
    def mentions(self) -> frozenset[str]:
        """All that the line mentions, for the cautions."""
        return frozenset((*self.words, "aged") if self.aged else self.words)

    def signature(self) -> tuple[tuple[int, int, bool, str], ...]:
        """Where its values stand and of what shape they are, whatever their numbers."""
        return tuple((value.first, value.last, value.main.bare, value.shape) for value in self.values)

    def stops(self, first: int, last: int) -> bool:
        """Whether a comma, a stop or "and" lies between two places."""
        return any(word in STOPS for word in self.words[first:last])

    def crossing(self, first: int, last: int) -> float:
        """How far two places are apart: links cost little, words one, punctuation more, another number most."""
        if not self.barriers:
            self.barriers = [0.0]
            for spot, word in enumerate(self.words):
                self.barriers.append(self.barriers[-1] + (VALUE_BARRIER if spot in self.at_value else BARRIERS.get(word, WORD_BARRIER)))
        return self.barriers[last] - self.barriers[first]


def lay_out(query: Query) -> Line:
    """The row of tokens of a query."""
    line = Line(query.text, [], [], [], {})
    for chunk in put_right(query.chunks):
        if isinstance(chunk, Word):
            for part in tokens(chunk.lower) or (chunk.lower,):
                if part == PER_CENT[1] and line.words[-1:] == [PER_CENT[0]]:
                    line.words[-1], line.origin[-1] = "percent", (line.origin[-1][0], chunk.end)
                    continue
                line.words.append(part)
                if line.words[-2:-1] == WHAT:
                    _tell_what(line.words)
                line.origin.append((chunk.start, chunk.end))
        elif isinstance(chunk, Mark):
            line.words.append(SIGNS.get(chunk.text, chunk.text))
            line.origin.append((chunk.start, chunk.end))
        else:
            _add_value(line, chunk)
    return line


def _tell_what(words: list[str]) -> None:
    """In "7 3/4 in is what my notes give" the "what" tells and does not ask."""
    if len(words) > 3 and words[-3] in TELLING and words[-1] in OWNERS and ASKS.isdisjoint(words[:-2]):
        words[-2] = "that"


def _add_value(line: Line, chunk: Measure | Size | Span | Sweep | Series) -> None:
    shape, members = _shape(chunk)
    if members[0].about:
        # The word is part of the measure, but rules may listen for it too.
        line.words.append("about")
        line.origin.append((chunk.start, chunk.start))
    alternatives = isinstance(chunk, Series) and chunk.alternatives
    spot = len(line.words)
    words = _digits(shape, members[0])
    value = Value(shape, members, chunk.text, spot, spot + len(words), chunk.start, chunk.end, alternatives, len(line.values))
    line.values.append(value)
    line.at_value.update(dict.fromkeys(range(value.first, value.last), value))
    line.words += words
    line.origin += [(chunk.start, chunk.end)] * len(words)


def _digits(shape: str, measure: Measure) -> tuple[str, ...]:
    """A whole bare number stays readable, so that "two at a time" or "301 lockstitch" can be met; and "in one round"."""
    if shape == "one" and measure.bare and measure.value.denominator == 1 and 0 <= measure.value <= READABLE:
        return (str(measure.value.numerator),)
    if shape == "one" and measure.value == 1 and measure.unit in ("row", "st", "g") and measure.per is None:
        return tokens(measure.text)
    return ("#",)


def _shape(chunk: Measure | Size | Span | Sweep | Series) -> tuple[str, tuple[Measure, ...]]:
    if isinstance(chunk, Measure):
        return "one", (chunk,)
    if isinstance(chunk, Size):
        return "size", chunk.sides
    if isinstance(chunk, Span):
        return "span", (chunk.low, chunk.high)
    if isinstance(chunk, Sweep):
        return "sweep", (chunk.first, chunk.last, chunk.step)
    return "series", chunk.members


def kinds_of(measure: Measure) -> tuple[str, ...]:
    """The names of the kinds a measure could be, the likeliest first."""
    return _kinds(measure.unit, None if measure.per is None else measure.per.unit)


@lru_cache(maxsize=1024)
def _kinds(unit: str, per: str | None) -> tuple[str, ...]:
    if per is None:
        return KINDS_OF_UNIT.get(unit, ()) if unit else BARE_KINDS
    if per == "":
        return ("ratio",)
    if per in LENGTHS:
        if unit in MONEYS or unit == "pound":
            return ("price a length",)
        if unit == "":
            return ("price a length", "number a length", "stitch tension", "row tension", "ratio")
        rate = RATE_KINDS.get(unit, "") if unit else ""
        return (rate, "number a length") if unit == "st" else (rate,) if rate else ()  # machine stitches are a number a length
    if per in ("m^2", "yd^2", "cm^2", "in^2"):
        return ("price an area",) if unit in MONEYS or unit == "pound" else ("weight an area",)
    return ()


def settled(unit: str, kind: Kind) -> str:
    """A canonical unit for a word that means two: pounds of money or weight, L of ligne or litre."""
    if unit == "pound":
        return "lb" if kind.name == "weight" else "GBP"
    if unit == "pence":
        return "GBP"
    if unit == "cent":
        return "USD"
    if unit == "L":
        return "ligne" if kind.name == "length" else "l"
    return unit


def lacks_length(measure: Measure, kind: Kind) -> bool:
    """Whether a tension was said without the length it is over: "tension 22", "my gauge is 22 sts"."""
    return kind.name in ("stitch tension", "row tension") and measure.per is None and measure.unit in ("", "st", "row")


def base_value(measure: Measure, kind: Kind, bare_unit: str = "") -> tuple[Fraction, str]:
    """(value in base units, the canonical unit it was typed in). bare_unit: what a number without a unit is taken in."""
    total = Fraction(0)
    unit = settled(measure.unit, kind) or (bare_unit if measure.per is None else "")
    for part in measure.parts:
        own = settled(part.unit, kind) or unit
        number = part.value / 100 if part.unit in ("pence", "cent") else part.value
        total += convert(number, own, unit) if own and unit and own != unit else number
    if measure.sign == "-":
        total = -total
    if measure.per is not None and measure.per.unit:
        below = measure.per
        rate_unit = rate_name(unit or _bare_above(kind), below.value, below.unit)
        return total * factor(unit or "1") / (below.value * factor(below.unit)), rate_unit
    if measure.per is not None:
        return total / measure.per.value, ""
    if lacks_length(measure, kind):
        unit = bare_unit
    return total * (factor(unit) if unit else 1), unit


def _rough(number: Fraction) -> float:
    """A number as a float; one too large for it is without end."""
    above, below = number.as_integer_ratio()
    return math.inf if above.bit_length() > LARGEST_BITS else above / below


def rough_value(measure: Measure, kind: Kind, bare_unit: str = "") -> float:
    """A measure in base units, near enough to weigh whether it makes sense somewhere; never for a sum."""
    total = 0.0
    unit = settled(measure.unit, kind) or (bare_unit if measure.per is None else "")
    if lacks_length(measure, kind):
        return float(measure.value) * (rough_factor(bare_unit) if bare_unit else 1.0)
    for part in measure.parts:
        own = settled(part.unit, kind) or unit
        total += _rough(part.value) * (rough_factor(own) if own else 1.0) * (0.01 if part.unit in ("pence", "cent") else 1.0)
    if measure.per is not None:
        if not measure.per.value:
            return math.inf
        total /= float(measure.per.value) * (rough_factor(measure.per.unit) if measure.per.unit else 1.0)
    return -total if measure.sign == "-" else total


def _bare_above(kind: Kind) -> str:
    return {"stitch tension": "st", "row tension": "row"}.get(kind.name, "1")


def rate_name(above: str, number: Fraction, below: str) -> str:
    """The name of a rate's unit: st/10cm, GBP/m; one that is no unit of its own is given per single unit."""
    return f"{above}/{number.numerator if number.denominator == 1 and number != 1 else ''}{below}"
