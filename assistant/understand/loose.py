"""Measures told loosely: "one metre costs £8", "30 rows per 10", "94 round the hips", "w40 x h30", "a 32nd", "3 eighths"."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from grammar.query import Chunk, Mark, Measure, Part, Size, Span, Word

from .tension_told import COUNTED, MOST_OF_A_TENSION, OVER, Again, as_tension, counted, tension_again

MONEY = frozenset(("GBP", "USD", "EUR", "CAD", "AUD", "pound"))
COSTS = frozenset(("costs", "cost", "is", "=", "at", "for", "was"))
# Words of shaping: in "decrease 40 sts to 10" ten are left.
SHAPING = ("dec", "from", "down", "reduce", "lose", "losing", "crown", "shap", "left", "taper", "remain")
SOMEBODY = frozenset(("he's", "hes", "she's", "shes", "i'm", "im", "is"))
BODY = frozenset(("body", "the", "my", "his", "her", "their", "our", "at", "bust", "chest", "waist", "hip", "hips", "head", "neck"))


# Parts of an inch by name; a ruler has no others.
PARTS = {"eighths": 8, "eighth": 8, "8ths": 8, "sixteenths": 16, "sixteenth": 16, "16ths": 16, "nd": 32, "16th": 16, "8th": 8}
NAMED_PARTS = {"thirty-second": 32, "32nd": 32, "sixteenth": 16, "16th": 16, "eighth": 8, "8th": 8}
SHARES = {"half": 2, "third": 3, "quarter": 4, "eighth": 8}
ROUNDS = frozenset(("round", "rounds", "row", "rows", "rnd"))
# What cloth is sold by, straight behind a price.
BY = {"metre": "m", "meter": "m", "m": "m", "yard": "yd", "yd": "yd"}
PORTIONS = ("thirds", "quarters", "eighths", "sixteenths")
# A letter stuck to a number says which way it lies: w40 x h30 x d20.
SIDES = {"w": "wide", "h": "high", "d": "deep", "l": "long"}
HYPHENED = {"inch": "in", "yard": "yd", "metre": "m", "meter": "m", "foot": "ft"}
_HYPHENED = re.compile(r"(inch|yard|metre|meter|foot)-and-an?-(half|third|quarter|eighth)")
TIERS = {"two": 2, "three": 3, "four": 4, "five": 5}
_TIERED = re.compile(r"(two|three|four|five)-tier(?:ed)?")
TENSIONS = (Part(Fraction(10), "cm"), Part(Fraction(4), "in"), Part(Fraction(1), "in"))
STITCHES = frozenset(("sts", "st", "stitches", "stitch"))
PACKS = frozenset(("ball", "skein", "hank", "reel", "cone", "pack", "spool", "roll", "cake", "wide", "width", "piece", "length"))
FOR_ALL = frozenset(("each", "apiece", "the", "for", "in", "all", "altogether", "total", "off", "a", "per"))
NOTES = {"fiver": 5, "tenner": 10}
_TIMES = re.compile(r"x(\d+)")
_NTH = re.compile(r"([4-9]|1\d)th")
_SIDE = re.compile(r"([whdl])(\d+(?:\.\d+)?)")


def told_loosely(chunks: list[Chunk]) -> list[Chunk]:
    """The chunks with such measures put as they are meant."""
    made: list[Chunk] = []
    shapes = any(isinstance(chunk, Word) and chunk.lower.startswith(SHAPING) for chunk in chunks)
    stitches = any(isinstance(chunk, Word) and chunk.lower in STITCHES for chunk in chunks)
    for spot, chunk in enumerate(chunks):
        after = chunks[spot + 1] if spot + 1 < len(chunks) else None
        if isinstance(chunk, Measure) and _is_girth(chunk, after, made[-1] if made else None):
            made += _apart(chunk)
        elif isinstance(chunk, Measure) and chunk.bare and (above := counted(made)) is not None and chunk.value in OVER:
            made[-2:] = [replace(above, per=Part(chunk.value, OVER[chunk.value]), text=f"{above.text} per {chunk.text}", end=chunk.end)]
        elif isinstance(chunk, Span) and chunk.low.unit in COUNTED and chunk.high.unit in ("", chunk.low.unit) and chunk.high.value in OVER:
            made.append(chunk if shapes or not chunk.high.value < chunk.low.value <= MOST_OF_A_TENSION else as_tension(chunk))
        elif isinstance(chunk, Measure) and (again := tension_again(made, chunk, shapes)) is not None:
            made[len(made) - again.taken :] = [again.rate]
        elif isinstance(chunk, Measure) and chunk.text.lower() == "an inch" and (named := _parts_of_it(made)) is not None:
            made[len(made) - named.taken :] = [replace(named.rate, text=f"{named.rate.text} of {chunk.text}", end=chunk.end)]
        elif isinstance(chunk, Measure) and chunk.unit in MONEY and (below := _of_one(made)) is not None:
            made[-2:] = [replace(chunk, per=below.parts[0], text=f"{chunk.text} {below.text}", start=below.start)]
        elif isinstance(chunk, Measure) and chunk.per is not None and chunk.per.unit == "row" and chunk.unit in ("", "st"):
            made += _of_each_round(chunk)
        elif isinstance(chunk, Measure) and _is_within(chunk, chunks[spot + 1 : spot + 4]):
            made += _within(chunk)
        elif isinstance(chunk, Measure) and (size := _blocks_by(made, chunk)) is not None:
            made[-3:] = [size, made[-2]]
        elif isinstance(chunk, Measure) and (rate := _for_one(made, chunk)) is not None:
            made[-2:] = [rate]
        elif isinstance(chunk, Word) and chunk.lower == "do" and _will_it(made, after):
            made.append(Word(chunk.text, "enough", chunk.start, chunk.end))  # "will 2 m of 140 cm do?"
        elif isinstance(chunk, Word) and (priced := _by_the(made, chunk)) is not None:
            made[priced.taken :] = [priced.price]
        elif isinstance(chunk, Word) and (hyphened := _HYPHENED.fullmatch(chunk.lower)):
            parts = (Part(1 + Fraction(1, SHARES[hyphened[2]]), HYPHENED[hyphened[1]]),)
            made.append(Measure(parts, chunk.text, chunk.start, chunk.end))
        elif isinstance(chunk, Word) and (tiered := _TIERED.fullmatch(chunk.lower)):
            made += _so_many_tiers(chunk, tiered[1])
        elif isinstance(chunk, Mark) and chunk.text == ")" and (length := _in_brackets(made, chunk)) is not None:
            made[-3:] = [length]
        elif isinstance(chunk, Measure) and chunk.sign == "-" and chunk.text.lower().startswith("minus ") and _is_each(after):
            made += _taken_each_time(chunk)
        elif isinstance(chunk, Word) and chunk.lower in SHARES and (whole := _and_a_share(made, chunk)) is not None:
            made[-3:] = [whole]
        elif isinstance(chunk, Measure) and chunk.text.lower().startswith(PORTIONS) and (many := _many(made)) is not None:
            parts = (Part(many.value * chunk.value, chunk.unit),)
            made[-1:] = [replace(chunk, parts=parts, text=f"{many.text} {chunk.text}", start=many.start)]
        elif isinstance(chunk, Measure) and chunk.unit in MONEY and chunk.per is None and (unit := _sold_by(made, after)):
            made.append(replace(chunk, per=Part(Fraction(1), unit)))
        elif isinstance(chunk, Measure) and stitches and (rate := _bare_tension(made, chunk)) is not None:
            made[-2:] = [rate]  # "sts for 36 cm at 27 per 10 cm"
        elif isinstance(chunk, Measure) and chunk.text.startswith(".") and (whole := _glued(made, chunk)) is not None:
            made[-1:] = [whole]  # "x1.5 at every tier"
        elif isinstance(chunk, Word) and chunk.lower in NOTES:
            made.append(Measure((Part(Fraction(NOTES[chunk.lower]), "GBP"),), chunk.text, chunk.start, chunk.end))
        elif isinstance(chunk, Word) and (nth := _NTH.fullmatch(chunk.lower)) and made and made[-1].text.lower() in ("a", "an", "another"):
            made.append(Measure((Part(Fraction(nth[1]), ""),), nth[1], chunk.start, chunk.start + len(nth[1])))  # "found a 7th button"
        elif isinstance(chunk, Word) and (said := _SIDE.fullmatch(chunk.lower)):
            number = Measure((Part(Fraction(said[2]), ""),), said[2], chunk.start + 1, chunk.end)
            made += [number, Word(chunk.text[:1], SIDES[said[1]], chunk.start, chunk.start + 1)]
        elif isinstance(chunk, Word) and chunk.lower in PARTS and (part := _part_of_an_inch(made, chunk)) is not None:
            made[-1:] = [part]
        else:
            made.append(chunk)
    return made


def _of_each_round(measure: Measure) -> list[Chunk]:
    """ "8 per round" as eight, and what they are of."""
    number, _, rest = measure.text.partition(" ")
    counted, at = replace(measure, per=None, text=number, end=measure.start + len(number)), measure.start + len(number) + 1
    if measure.unit:
        said, _, rest = rest.partition(" ")
        counted, at = replace(counted, text=f"{number} {said}", end=at + len(said)), at + len(said) + 1
    made: list[Chunk] = [counted]
    for word in rest.split():
        made.append(Word(word, word.lower(), at, at + len(word)))
        at += len(word) + 1
    return made


def _is_within(measure: Measure, after: Sequence[Chunk]) -> bool:
    """Whether "in" behind a number is no inch: "8 in each round", "70 in a 115 cm cotton", "half in side seams", "150 in hand"."""
    if measure.unit != "in" or measure.per is not None or not measure.text.lower().endswith(" in") or not after:
        return False
    first = after[0]
    if isinstance(first, Measure):
        return first.unit in ("cm", "m", "mm") and first.per is None  # "fullness 1.5 in 140 cm linen"
    if not isinstance(first, Word):
        return False
    if first.lower in ("each", "every"):
        return any(isinstance(one, Word) and one.lower in ROUNDS for one in after[1:])
    if first.lower in ("hand", "stock", "store"):
        return True
    if first.lower in ("my", "her", "his") and len(after) > 1 and isinstance(worn := after[1], Word):
        return worn.lower.startswith(("sock", "stocking", "shoe", "bare", "heel", "slipper"))
    metric = len(after) > 1 and isinstance(second := after[1], Measure) and second.unit in ("cm", "m", "mm")
    return (first.lower in ("a", "an", "the") and metric) or (measure.spelled and first.lower == "side")


def _within(measure: Measure) -> list[Chunk]:
    number = measure.text[:-3]
    bare = replace(measure, parts=(Part(measure.parts[0].value, ""),), text=number, end=measure.start + len(number))
    return [bare, Word("in", "in", measure.end - 2, measure.end)]


class _Rate(NamedTuple):
    """A price found, and from where it takes the place of what was made."""

    price: Measure
    taken: int


def _by_the(made: Sequence[Chunk], word: Word) -> _Rate | None:
    """Money before what it is by: "£24-a-metre wool", "$9.99 yd", "$11.50 by the yard"."""
    unit = BY.get(word.lower.removeprefix("-").removeprefix("a-").removeprefix("per-"))
    spot = len(made) - 1
    if unit is not None and spot > 1 and [one.lower for one in made[-2:] if isinstance(one, Word)] == ["by", "the"]:
        spot -= 2
    before = made[spot] if spot >= 0 else None
    if unit is None or not isinstance(before, Measure) or before.unit not in MONEY or before.per is not None:
        return None
    said = "" if spot == len(made) - 1 else "by the "
    return _Rate(replace(before, per=Part(Fraction(1), unit), text=f"{before.text} {said}{word.text}", end=word.end), spot)


def _so_many_tiers(word: Word, number: str) -> list[Chunk]:
    """ "three-tiered" as three, and tiers."""
    end = word.start + len(number)
    tiers = Measure((Part(Fraction(TIERS[number]), ""),), word.text[: len(number)], word.start, end, spelled=True)
    return [tiers, Word(word.text[len(number) + 1 :], "tier", end + 1, word.end)]


def _in_brackets(made: Sequence[Chunk], mark: Mark) -> Measure | None:
    """ "102 (cm)" as 102 cm."""
    if len(made) < 3 or not isinstance(number := made[-3], Measure) or not number.bare or not isinstance(unit := made[-1], Word):
        return None
    opened = isinstance(made[-2], Mark) and made[-2].text == "("
    if not opened or unit.lower not in ("cm", "mm", "in", "inches"):
        return None
    part = Part(number.parts[0].value, "in" if unit.lower.startswith("in") else unit.lower)
    return replace(number, parts=(part,), text=f"{number.text} ({unit.text})", end=mark.end)


def _sold_by(made: Sequence[Chunk], after: Chunk | None) -> str:
    """The unit of a length right before "at" and a sum of money, which is for one of it: "3 5/8 yards at $11.99"; "" for none."""
    said_at = bool(made) and isinstance(made[-1], Word | Mark) and made[-1].text.lower() in ("at", "@")
    if not said_at or (isinstance(after, Word) and after.lower in FOR_ALL):
        return ""
    for spot in range(len(made) - 2, max(-1, len(made) - 6), -1):
        chunk = made[spot]
        if isinstance(chunk, Measure):
            packed = any(isinstance(one, Word) and one.lower.rstrip("s") in PACKS for one in made[max(0, spot - 2) : -1])
            bought = chunk.per is None and len(chunk.parts) == 1 and chunk.unit in ("m", "yd") and not packed
            return chunk.unit if bought else ""
        if isinstance(chunk, Mark):
            return ""
    return ""


def _bare_tension(made: Sequence[Chunk], length: Measure) -> Measure | None:
    """A bare number per the length of a tension."""
    if len(made) < 2 or length.per is not None or length.parts[0] not in TENSIONS:
        return None
    link, number = made[-1], made[-2]
    if not isinstance(link, Word) or link.lower != "per" or not isinstance(number, Measure) or not number.bare:
        return None
    return replace(number, parts=(Part(number.value, "st"),), per=length.parts[0], text=f"{number.text} per {length.text}", end=length.end)


def _glued(made: Sequence[Chunk], measure: Measure) -> Measure | None:
    """The number of which "x1" was taken for a word: the 1.5 of "x1.5"."""
    before = made[-1] if made else None
    if not isinstance(before, Word) or before.end != measure.start or (whole := _TIMES.fullmatch(before.lower)) is None:
        return None
    parts = (Part(int(whole[1]) + measure.parts[0].value, measure.parts[0].unit), *measure.parts[1:])
    return replace(measure, parts=parts, text=f"{whole[1]}{measure.text}", start=before.start + 1)


def _is_each(after: Chunk | None) -> bool:
    return isinstance(after, Word) and after.lower in ("each", "every", "per")


def _taken_each_time(measure: Measure) -> list[Chunk]:
    """ "minus 8 each round" as eight, which are taken away."""
    number = replace(measure, text=measure.text[6:].lstrip(), sign="", start=measure.end - len(measure.text[6:].lstrip()))
    return [Word(measure.text[:5], "minus", measure.start, measure.start + 5), number]


def _will_it(made: Sequence[Chunk], after: Chunk | None) -> bool:
    """Whether "do" asks if something is enough: "will that ... do", and nothing else is asked before it."""
    if after is not None and (after.text if isinstance(after, Mark) else after.text.lower()) not in ("?", ".", ",", "for"):
        return False
    for spot in range(len(made) - 1, -1, -1):
        chunk = made[spot]
        if not isinstance(chunk, Word):
            continue
        if chunk.lower in ("what", "how", "which", "i", "we", "you"):
            return False
        if chunk.lower in ("will", "would"):
            return spot == 0 or isinstance(made[spot - 1], Mark)
    return False


def _blocks_by(made: Sequence[Chunk], measure: Measure) -> Size | None:
    """ "6 blocks by 8" as the size 6 by 8, in blocks."""
    if len(made) < 3 or not isinstance(first := made[-3], Measure) or not (first.bare and measure.bare):
        return None
    words = [one.lower for one in made[-2:] if isinstance(one, Word)]
    if len(words) < 2 or words[0] not in ("blocks", "squares", "patches") or words[1] not in ("by", "x"):
        return None
    return Size((first, measure), f"{first.text} by {measure.text}", first.start, measure.end)


def _for_one(made: Sequence[Chunk], measure: Measure) -> Measure | None:
    """Money for one of a length: "€11 for one metre"."""
    if len(made) < 2 or not (isinstance(made[-1], Word) and made[-1].lower == "for") or not isinstance(price := made[-2], Measure):
        return None
    one = measure.spelled and measure.per is None and measure.value == 1 and measure.unit in ("m", "yd")
    if not one or price.unit not in MONEY or price.per is not None:
        return None
    return replace(price, per=measure.parts[0], text=f"{price.text} for {measure.text}", end=measure.end)


def _and_a_share(made: Sequence[Chunk], word: Word) -> Measure | None:
    """ "an inch and a half" as one measure, whatever follows it."""
    if len(made) < 3 or not isinstance(whole := made[-3], Measure) or len(whole.parts) != 1 or whole.bare or whole.per is not None:
        return None
    joint = tuple(one.lower for one in made[-2:] if isinstance(one, Word))
    if joint not in (("and", "a"), ("and", "an")):
        return None
    more = Part(whole.parts[0].value + Fraction(1, SHARES[word.lower]), whole.unit)
    return replace(whole, parts=(more,), text=f"{whole.text} and a {word.text}", end=word.end, spelled=False)


def _many(made: Sequence[Chunk]) -> Measure | None:
    """The bare whole number that counts the parts behind it: the 5 of "5 sixteenths of an inch"."""
    before = made[-1] if made else None
    return before if isinstance(before, Measure) and before.bare and before.value.denominator == 1 and before.value > 0 else None


def _part_of_an_inch(made: Sequence[Chunk], word: Word) -> Measure | None:
    """ "3 eighths", "a 32nd", "an 8th": so many parts of an inch, a bare number where it may be of something else."""
    before, parts = made[-1] if made else None, PARTS[word.lower]
    if isinstance(before, Measure) and before.bare and before.value.denominator == 1 and before.end <= word.start:
        if word.lower == "nd":
            article = made[-2] if len(made) > 1 else None
            said = before.value == parts and isinstance(article, Word) and article.lower in ("a", "by", "of", "one")
            return Measure((Part(Fraction(1, 32), "in"),), f"{before.text}nd", before.start, word.end) if said else None
        if 0 < before.value < parts and word.lower.endswith("s"):
            return Measure((Part(before.value / parts, ""),), f"{before.text} {word.text}", before.start, word.end)
    if isinstance(before, Word) and before.lower in ("a", "an", "by") and word.lower in ("16th", "8th"):
        return Measure((Part(Fraction(1, parts), "in"),), word.text, word.start, word.end)
    return None


def _is_girth(measure: Measure, after: Chunk | None, before: Chunk | None = None) -> bool:
    """Whether "94 round" measures round something: "I'm 94 round the hips", "he's 88 round" knit no rounds."""
    if isinstance(before, Word) and before.lower.replace("’", "'") in SOMEBODY and isinstance(after, Mark | None):
        after = Word("body", "body", measure.end, measure.end)
    said_round = measure.unit == "row" and measure.per is None and measure.text.lower().endswith((" round", " around"))
    return said_round and isinstance(after, Word) and after.lower in BODY


def _apart(measure: Measure) -> list[Chunk]:
    number, _, word = measure.text.rpartition(" ")
    length = replace(measure, parts=(Part(measure.parts[0].value, ""),), text=number, end=measure.start + len(number))
    return [length, Word(word, word.lower(), measure.end - len(word), measure.end)]


def _parts_of_it(made: Sequence[Chunk]) -> Again | None:
    """The part of an inch that "of an inch" follows: "a thirty-second of", "three sixteenths of"."""
    words = [one.lower if isinstance(one, Word) else "" for one in made[-3:]]
    if len(words) < 3 or words[-1] != "of" or (parts := NAMED_PARTS.get(words[-2].removesuffix("s"))) is None:
        return None
    first, part = made[-3], made[-2]
    many = Fraction(1) if words[0] in ("a", "one") else first.value if isinstance(first, Measure) and first.bare else None
    if many is None:
        return None
    return Again(Measure((Part(many / parts, "in"),), f"{first.text} {part.text}", first.start, part.end), 3)


def _of_one(made: Sequence[Chunk]) -> Measure | None:
    """One of a length, said in words, with a verb of costing behind it: "one metre costs", "a yard is"."""
    if len(made) < 2 or not isinstance(made[-1], Word | Mark) or made[-1].text.lower() not in COSTS:
        return None
    below = made[-2]
    whole = isinstance(below, Measure) and below.spelled and below.per is None and below.value == 1 and below.unit in ("m", "yd", "ft")
    return below if whole and isinstance(below, Measure) else None
