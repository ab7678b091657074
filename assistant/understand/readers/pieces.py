"""Pieces to cut, as people list them: "2 fronts 30 x 70, 1 back 58 x 70 and 2 sleeves 40 x 60 cm"."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from grammar.query import Measure
from rules.engine.declare import Input
from rules.engine.kinds import LENGTH
from rules.engine.request import Cut, Given

from ..lexicon import AXIS_WORDS, Match
from ..tokens import FILLERS
from ..values import LENGTHS, Line, Value, base_value, kinds_of

WIDE = frozenset(AXIS_WORDS["width"])
LONG = frozenset((*AXIS_WORDS["length"], *AXIS_WORDS["height"], "deep"))
JOINS = frozenset(("by", "x", "×", "and", ",", "a", "in"))
CLOTHS = ("outer", "lining", "interfacing", "main", "contrast", "wadding", "interlining")
# A width before one of these is the cloth's, not a piece's.
STUFF = frozenset(
    ("fabric", "cloth", "cotton", "linen", "remnant", "wool", "canvas", "denim", "roll", "bolt", "calico", "wide", "moquette",
        "velveteen", "ticking",
     "lining", "velvet", "twill", "tweed")
)
EACH = frozenset(("each", "apiece"))
PARTS = frozenset(
    ("front", "back", "sleeve", "panel", "piece", "strip", "square", "rectangle", "pocket", "collar", "cuff", "facing", "yoke",
        "side", "base",
     "gusset", "handle", "strap", "lining", "flap", "tab", "band", "waistband")
)  # fmt: skip
NO_NAME = frozenset(("cut", "piece", "each", "size", "measure", "x", "off", "pcs", "as", "finish", "@", "by"))


@dataclass(slots=True)
class Found:
    """A piece met in the line: its two sides, the values it took, the tokens it stands on (first..last, exclusive)."""

    width: Measure
    length: Measure
    values: tuple[Value, ...]
    first: int
    last: int
    count: Fraction | None = None


def read(item: Input, line: Line, values: list[Value], matches: list[Match]) -> tuple[Given | None, frozenset[int]]:
    """Every piece with its count, name, cloth and whether it lies on the fold; None when none is met, or no unit."""
    found = _sides(line, values)
    unit = _unit(line, found)
    if not found or not unit:
        return None, frozenset()
    taken = {value.number for piece in found for value in piece.values}
    made = _made(line, values, found, taken)
    cuts, cloth, start = [], "", 0
    for index, piece in enumerate(found):
        end = found[index + 1].first if index + 1 < len(found) else len(line.words)
        count = _count(line, values, piece, start, end, taken) * made
        cloth = _cloth(line, start, piece.first) or cloth
        cuts.append(_cut(line, piece, count, cloth, unit, start, end))
        start = piece.last
    text = ", ".join(f"{cut.count} × {cut.text}" for cut in cuts)
    return Given(tuple(cuts), unit, text), frozenset(taken)


def _sides(line: Line, values: list[Value]) -> list[Found]:
    """What has two sides: 30 x 70, "19 in wide by 11 in long", "20 cm squares"."""
    found: list[Found] = []
    index = 0
    while index < len(values):
        value = values[index]
        after = values[index + 1] if index + 1 < len(values) else None
        piece = _size(value) or _square(line, value)
        if piece is None and after is not None:
            piece = _wide_and_long(line, value, after)
        if piece is not None:
            found.append(piece)
        index += len(piece.values) if piece is not None else 1
    return found


def _size(value: Value) -> Found | None:
    if value.shape != "size" or len(value.members) not in (2, 3) or not all(map(_is_length, value.members[:2])):
        return None
    count = value.members[2] if len(value.members) == 3 else None
    if count is not None and (not count.bare or count.value.denominator != 1):
        return None
    number = count.value if count is not None else None
    return Found(value.members[0], value.members[1], (value,), value.first, value.last, number)


def _square(line: Line, value: Value) -> Found | None:
    square = line.words[value.last : value.last + 1] == ["square"]
    if not square or value.shape != "one" or value.main.bare or not _is_length(value.main):
        return None
    return Found(value.main, value.main, (value,), value.first, value.last + 1)


def _wide_and_long(line: Line, one: Value, other: Value) -> Found | None:
    """Two lengths side by side, of which the words after them say which is the width."""
    if one.shape != "one" or other.shape != "one" or not _is_length(one.main) or not _is_length(other.main):
        return None
    between, after = line.words[one.last : other.first], line.words[other.last : other.last + 1]
    of_cloth = set(line.words[other.last + 1 : other.last + 2]) & STUFF
    if not between or not after or not set(between[1:]) <= JOINS or of_cloth:
        return None
    if between[0] in WIDE and after[0] in LONG:
        return Found(one.main, other.main, (one, other), one.first, other.last + 1)
    if between[0] in LONG and after[0] in WIDE:
        return Found(other.main, one.main, (one, other), one.first, other.last + 1)
    return None


def _is_length(measure: Measure) -> bool:
    return measure.per is None and "length" in kinds_of(measure)


def _unit(line: Line, found: list[Found]) -> str:
    """The unit of sides typed without: that of the other pieces, or of any other length in the line."""
    sides = [side for piece in found for side in (piece.width, piece.length)]
    others = [measure for value in line.values for measure in value.members]
    units = [measure.unit for measure in (*sides, *others) if measure.unit in LENGTHS and measure.per is None]
    small = [unit for unit in units if unit not in ("m", "yd", "ft")]
    return (small or [{"m": "cm"}.get(unit, "in") for unit in units] or [""])[0]


def _count(line: Line, values: list[Value], piece: Found, start: int, end: int, taken: set[int]) -> Fraction:
    """How many of it: the bare number before it ("2 fronts"), or after "cut" or "x" behind it; else one."""
    if piece.count is not None:
        return piece.count
    before = [v for v in values if start <= v.first < piece.first and v.number not in taken and _is_count(v)]
    near = [v for v in values if piece.last <= v.first < min(end, piece.last + 3)]
    behind = [
        v for v in near
        if v.number not in taken and _is_count(v) and {"cut", "x", "off", "×"} & set(line.words[piece.last : v.first])
    ]  # fmt: skip
    chosen = behind[:1] or before[-1:]
    if not chosen:
        return Fraction(1)
    taken.add(chosen[0].number)
    return Fraction(chosen[0].main.value)


def _made(line: Line, values: list[Value], found: list[Found], taken: set[int]) -> Fraction:
    """How many things are made of these pieces: "9 tunics, 2 pieces each", "9 tunics, 2 pieces each (so 18)"; else one."""
    counts = [value for value in values if value.first < found[0].first and value.number not in taken and _is_count(value)]
    if len(counts) not in (2, 3) or not EACH & set(line.words[counts[1].last : found[0].first]):
        return Fraction(1)
    named = line.words[counts[0].last : counts[1].first]
    if not set(named).isdisjoint((*PARTS, "and", "&", "+")):
        return Fraction(1)  # "3 fronts and 2 backs each 30 x 50 cm" tells two pieces of one size
    made = Fraction(counts[0].main.value)
    if len(counts) == 3 and (len(found) > 1 or counts[2].main.value != made * counts[1].main.value):
        return Fraction(1)
    # The count nearest the piece stays, as its own; the product, where it is told as well, says the same again.
    taken.update(value.number for value in (counts[0], *counts[2:]))
    return made


def _is_count(value: Value) -> bool:
    measure = value.main
    whole = measure.value.denominator == 1 and measure.value >= 1
    return value.shape == "one" and measure.bare and whole and not measure.sign


def _cloth(line: Line, start: int, end: int) -> str:
    """The cloth named last before the piece, since the one before it."""
    named = [word for word in line.words[start:end] if word in CLOTHS]
    return named[-1] if named else ""


def _cut(line: Line, piece: Found, count: Fraction, cloth: str, unit: str, start: int, end: int) -> Cut:
    width, own = base_value(piece.width, LENGTH, unit)
    length, _ = base_value(piece.length, LENGTH, unit)
    first, last = piece.values[0].start, piece.values[-1].end
    text = line.text[first:last]
    around = f"{_before(line, start, piece.first)} | {_clause(line, piece.last, end)}"
    on_fold = "on the fold" in around or "on fold" in around
    return Cut(width, own, text, count, _name(line, start, piece.first), length, cloth, on_fold)


def _clause(line: Line, first: int, last: int) -> str:
    """The words behind a piece, as far as the next comma or number."""
    spot = first
    while spot < last and spot not in line.at_value and line.words[spot] not in (",", ";", ".", "and", "\n"):
        spot += 1
    return " ".join(line.words[first:spot])


def _before(line: Line, first: int, last: int) -> str:
    """The words before a piece, back to the last comma."""
    spot = last
    while spot > first and line.words[spot - 1] not in (",", ";", ".", "and", "\n"):
        spot -= 1
    return " ".join(line.words[spot:last]) if spot > first or first == 0 else ""


def _name(line: Line, start: int, end: int) -> str:
    """What it is called: the words just before its size, back to a number or a comma."""
    words: list[str] = []
    for spot in range(end - 1, start - 1, -1):
        word = line.words[spot]
        if spot in line.at_value or word in (".", ";", ":", "\n") or (word in (",", "and", "(") and words):
            break
        if word[:1].isalpha() and word not in FILLERS and word not in NO_NAME:
            words.insert(0, word)
    return " ".join(words[-3:]) or "piece"
