"""Parts of an inch and other fractions told in words: "3 eighths", "a 32nd", "a thirty-second of an inch", "an inch and a half"."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

from grammar.query import Measure, Part, Word

from .puts import Before, Put

# Parts of an inch by name; a ruler has no others.
PARTS = {"eighths": 8, "eighth": 8, "8ths": 8, "sixteenths": 16, "sixteenth": 16, "16ths": 16, "nd": 32, "16th": 16, "8th": 8}
NAMED_PARTS = {"thirty-second": 32, "32nd": 32, "sixteenth": 16, "16th": 16, "eighth": 8, "8th": 8}
SHARES = {"half": 2, "third": 3, "quarter": 4, "eighth": 8}
PORTIONS = ("thirds", "quarters", "eighths", "sixteenths")
HYPHENED = {"inch": "in", "yard": "yd", "metre": "m", "meter": "m", "foot": "ft"}
_HYPHENED = re.compile(r"(inch|yard|metre|meter|foot)-and-an?-(half|third|quarter|eighth)")


def of_an_inch(before: Before, inch: Measure) -> Put | None:
    """ "A thirty-second of an inch", "three sixteenths of an inch"."""
    parts = NAMED_PARTS.get(before.word(2).removesuffix("s"))
    if inch.text.lower() != "an inch" or before.word() != "of" or parts is None or len(before.made) < 3:
        return None
    first, part = before.made[-3], before.made[-2]
    counted = isinstance(first, Measure) and first.bare
    if not counted and before.word(3) not in ("a", "one"):
        return None
    many = first.value if isinstance(first, Measure) else Fraction(1)
    return Put((Measure((Part(many / parts, "in"),), f"{first.text} {part.text} of {inch.text}", first.start, inch.end),), 3)


def counted_parts(before: Before, measure: Measure) -> Put | None:
    """ "5 sixteenths of an inch", of which the sixteenths were read as one."""
    many = before.last
    if not measure.text.lower().startswith(PORTIONS) or not isinstance(many, Measure) or not _counts(many):
        return None
    parts = (Part(many.value * measure.value, measure.unit),)
    return Put((replace(measure, parts=parts, text=f"{many.text} {measure.text}", start=many.start),), 1)


def _counts(measure: Measure) -> bool:
    """Whether a bare whole number counts the parts behind it."""
    return measure.bare and measure.value.denominator == 1 and measure.value > 0


def hyphened(before: Before, word: Word) -> Put | None:
    """ "Inch-and-a-half"."""
    found = _HYPHENED.fullmatch(word.lower)
    if found is None:
        return None
    parts = (Part(1 + Fraction(1, SHARES[found[2]]), HYPHENED[found[1]]),)
    return Put((Measure(parts, word.text, word.start, word.end),))


def and_a_share(before: Before, word: Word) -> Put | None:
    """ "An inch and a half" as one measure, whatever follows it."""
    whole = before.made[-3] if len(before.made) > 2 else None
    if word.lower not in SHARES or before.word(2) != "and" or before.word() not in ("a", "an"):
        return None
    if not isinstance(whole, Measure) or len(whole.parts) != 1 or whole.bare or whole.per is not None:
        return None
    more = Part(whole.parts[0].value + Fraction(1, SHARES[word.lower]), whole.unit)
    return Put((replace(whole, parts=(more,), text=f"{whole.text} and a {word.text}", end=word.end, spelled=False),), 3)


def part_of_an_inch(before: Before, word: Word) -> Put | None:
    """ "3 eighths", "a 32nd", "an 8th": so many parts of an inch, a bare number where it may be of something else."""
    parts, many = PARTS.get(word.lower), before.last
    if parts is None:
        return None
    if isinstance(many, Measure) and many.bare and many.value.denominator == 1 and many.end <= word.start:
        if word.lower == "nd":
            said = many.value == parts and before.word(2) in ("a", "by", "of", "one")
            return Put((Measure((Part(Fraction(1, 32), "in"),), f"{many.text}nd", many.start, word.end),), 1) if said else None
        if 0 < many.value < parts and word.lower.endswith("s"):
            return Put((Measure((Part(many.value / parts, ""),), f"{many.text} {word.text}", many.start, word.end),), 1)
    if before.word() in ("a", "an", "by") and word.lower in ("16th", "8th"):
        return Put((Measure((Part(Fraction(1, parts), "in"),), word.text, word.start, word.end),), 1)
    return None
