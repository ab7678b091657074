"""Measures told loosely put as they are meant: "94 round the hips", "8 in each round", "w40 x h30", "three-tiered".

What may be meant is a list of ways for each sort of chunk, tried in order; prices, parts and tensions have modules of their own.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import replace
from fractions import Fraction
from typing import Any

from grammar.query import Chunk, Mark, Measure, Part, Size, Span, Word

from . import part_told, price_told, tension_told
from .puts import Before, Put, Try

# Words of shaping: in "decrease 40 sts to 10" ten are left.
SHAPING = ("dec", "from", "down", "reduce", "lose", "losing", "crown", "shap", "left", "taper", "remain")
STITCHES = frozenset(("sts", "st", "stitches", "stitch"))
SOMEBODY = frozenset(("he's", "hes", "she's", "shes", "i'm", "im", "is"))
BODY = frozenset(("the", "my", "his", "her", "their", "our", "at", "bust", "chest", "waist", "hip", "hips", "head", "neck"))
ROUNDS = frozenset(("round", "rounds", "row", "rows", "rnd"))
WORN = ("sock", "stocking", "shoe", "bare", "heel", "slipper")
# A letter stuck to a number says which way it lies: w40 x h30 x d20.
SIDES = {"w": "wide", "h": "high", "d": "deep", "l": "long"}
TIERS = {"two": 2, "three": 3, "four": 4, "five": 5}
FAR = 3  # so many chunks behind are looked at
_TIERED = re.compile(r"(two|three|four|five)-tier(?:ed)?")
_TIMES = re.compile(r"x(\d+)")
_NTH = re.compile(r"([4-9]|1\d)th")
_SIDE = re.compile(r"([whdl])(\d+(?:\.\d+)?)")


def told_loosely(chunks: Sequence[Chunk]) -> list[Chunk]:
    """The chunks with such measures put as they are meant."""
    made: list[Chunk] = []
    words = [chunk.lower for chunk in chunks if isinstance(chunk, Word)]
    shapes, stitches = any(word.startswith(SHAPING) for word in words), not STITCHES.isdisjoint(words)
    for spot, chunk in enumerate(chunks):
        if isinstance(chunk, Word) and chunk.lower.isalpha() and chunk.lower not in LOOSE:
            made.append(chunk)  # most words are just that
            continue
        before = Before(made, chunks[spot + 1 : spot + 1 + FAR], shapes, stitches)
        ways = (way(before, chunk) for way in WAYS.get(type(chunk), ()))
        put = next((found for found in ways if found is not None), Put((chunk,)))
        made[len(made) - put.taken :] = put.chunks
    return made


def _bare(measure: Measure, text: str) -> Measure:
    """A measure without its unit."""
    return replace(measure, parts=(Part(measure.parts[0].value, ""),), text=text, end=measure.start + len(text))


def girth(before: Before, measure: Measure) -> Put | None:
    """ "94 round" measures round something: "I'm 94 round the hips", "he's 88 round" knit no rounds."""
    if measure.unit != "row" or measure.per is not None or not measure.text.lower().endswith((" round", " around")):
        return None
    of_body = isinstance(before.next, Word) and before.next.lower in BODY
    of_someone = before.word().replace("’", "'") in SOMEBODY and isinstance(before.next, Mark | None)
    number, _, word = measure.text.rpartition(" ")
    said = Word(word, word.lower(), measure.end - len(word), measure.end)
    return Put((_bare(measure, number), said)) if of_body or of_someone else None


def of_each_round(before: Before, measure: Measure) -> Put | None:
    """ "8 per round" as eight, and what they are of."""
    if measure.per is None or measure.per.unit != "row" or measure.unit not in ("", "st"):
        return None
    number, _, rest = measure.text.partition(" ")
    if measure.unit:
        said, _, rest = rest.partition(" ")
        number = f"{number} {said}"
    made: list[Chunk] = [replace(measure, per=None, text=number, end=measure.start + len(number))]
    at = measure.start + len(number) + 1
    for word in rest.split():
        made.append(Word(word, word.lower(), at, at + len(word)))
        at += len(word) + 1
    return Put(tuple(made))


def within(before: Before, measure: Measure) -> Put | None:
    """ "In" behind a number is no inch: "8 in each round", "70 in a 115 cm cotton", "half in side seams", "150 in hand"."""
    in_words = measure.unit == "in" and measure.per is None and measure.text.lower().endswith(" in")
    if not in_words or not _goes_on_within(measure, before.ahead):
        return None
    return Put((_bare(measure, measure.text[:-3]), Word("in", "in", measure.end - 2, measure.end)))


def _goes_on_within(measure: Measure, ahead: Sequence[Chunk]) -> bool:
    """Whether what follows "in" says what something is in."""
    first, second = (*ahead[:2], None, None)[:2]
    metric = isinstance(second, Measure) and second.unit in ("cm", "m", "mm")
    if isinstance(first, Measure):
        return first.unit in ("cm", "m", "mm") and first.per is None  # "fullness 1.5 in 140 cm linen"
    if not isinstance(first, Word):
        return False
    if first.lower in ("each", "every"):
        return any(isinstance(one, Word) and one.lower in ROUNDS for one in ahead[1:])
    if first.lower in ("my", "her", "his"):
        return isinstance(second, Word) and second.lower.startswith(WORN)
    in_store = first.lower in ("hand", "stock", "store")
    return in_store or (first.lower in ("a", "an", "the") and metric) or (measure.spelled and first.lower == "side")


def blocks_by(before: Before, measure: Measure) -> Put | None:
    """ "6 blocks by 8" as the size 6 by 8, in blocks."""
    first = before.made[-3] if len(before.made) > 2 else None
    if not isinstance(first, Measure) or not (first.bare and measure.bare):
        return None
    if before.word(2) not in ("blocks", "squares", "patches") or before.word() not in ("by", "x"):
        return None
    return Put((Size((first, measure), f"{first.text} by {measure.text}", first.start, measure.end), before.made[-2]), 3)


def taken_each_time(before: Before, measure: Measure) -> Put | None:
    """ "Minus 8 each round" as eight, which are taken away."""
    each = isinstance(before.next, Word) and before.next.lower in ("each", "every", "per")
    if measure.sign != "-" or not measure.text.lower().startswith("minus ") or not each:
        return None
    text = measure.text[6:].lstrip()
    number = replace(measure, text=text, sign="", start=measure.end - len(text))
    return Put((Word(measure.text[:5], "minus", measure.start, measure.start + 5), number))


def glued(before: Before, measure: Measure) -> Put | None:
    """ "x1.5", of which "x1" was taken for a word."""
    word, whole = before.last, _TIMES.fullmatch(before.word())
    if not measure.text.startswith(".") or word is None or word.end != measure.start or whole is None:
        return None
    parts = (Part(int(whole[1]) + measure.parts[0].value, measure.parts[0].unit), *measure.parts[1:])
    return Put((replace(measure, parts=parts, text=f"{whole[1]}{measure.text}", start=word.start + 1),), 1)


def will_it_do(before: Before, word: Word) -> Put | None:
    """ "Do" where it asks if something is enough: "will 2 m of 140 cm do?", with nothing else asked before it."""
    after = before.next
    if word.lower != "do" or (after is not None and after.text.lower() not in ("?", ".", ",", "for")):
        return None
    for spot in range(len(before.made) - 1, -1, -1):
        chunk = before.made[spot]
        said = chunk.lower if isinstance(chunk, Word) else ""
        if said in ("what", "how", "which", "i", "we", "you"):
            return None
        if said in ("will", "would"):
            opens = spot == 0 or isinstance(before.made[spot - 1], Mark)
            return Put((Word(word.text, "enough", word.start, word.end),)) if opens else None
    return None


def so_many_tiers(before: Before, word: Word) -> Put | None:
    """ "Three-tiered" as three, and tiers."""
    found = _TIERED.fullmatch(word.lower)
    if found is None:
        return None
    end = word.start + len(found[1])
    tiers = Measure((Part(Fraction(TIERS[found[1]]), ""),), word.text[: len(found[1])], word.start, end, spelled=True)
    return Put((tiers, Word(word.text[len(found[1]) + 1 :], "tier", end + 1, word.end)))


def one_more(before: Before, word: Word) -> Put | None:
    """ "A 7th button" makes seven of them."""
    nth = _NTH.fullmatch(word.lower)
    if nth is None or before.word() not in ("a", "an", "another"):
        return None
    return Put((Measure((Part(Fraction(nth[1]), ""),), nth[1], word.start, word.start + len(nth[1])),))


def side(before: Before, word: Word) -> Put | None:
    """ "w40" as 40, and wide."""
    said = _SIDE.fullmatch(word.lower)
    if said is None:
        return None
    number = Measure((Part(Fraction(said[2]), ""),), said[2], word.start + 1, word.end)
    return Put((number, Word(word.text[:1], SIDES[said[1]], word.start, word.start + 1)))


def in_brackets(before: Before, mark: Mark) -> Put | None:
    """ "102 (cm)" as 102 cm."""
    number = before.made[-3] if len(before.made) > 2 else None
    unit = before.made[-1] if number is not None else None
    if mark.text != ")" or not isinstance(number, Measure) or not number.bare or not isinstance(unit, Word) or before.word(2) != "(":
        return None
    if unit.lower not in ("cm", "mm", "in", "inches"):
        return None
    part = Part(number.parts[0].value, "in" if unit.lower.startswith("in") else unit.lower)
    return Put((replace(number, parts=(part,), text=f"{number.text} ({unit.text})", end=mark.end),), 3)


WAYS: Mapping[type, tuple[Try[Any], ...]] = {
    Measure: (
        girth, tension_told.per_a_bare_number, tension_told.told_again, part_told.of_an_inch, price_told.of_one, of_each_round, within,
        blocks_by, price_told.for_one, taken_each_time, part_told.counted_parts, price_told.sold_at, tension_told.per_a_length, glued,
    ),
    Span: (tension_told.to_a_bare_number,),
    Word: (
        will_it_do, price_told.by_the, part_told.hyphened, so_many_tiers, part_told.and_a_share, price_told.note, one_more, side,
        part_told.part_of_an_inch,
    ),
    Mark: (in_brackets,),
}  # fmt: skip
# The words of letters alone that may be loosely meant.
LOOSE = frozenset(("do", *price_told.BY, *price_told.NOTES, *part_told.SHARES, *part_told.PARTS))
