"""What stands in a line put right before it is laid out: rates said without a link, digits that stand for words."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from grammar.query import Chunk, Mark, Measure, Part, Series, Size, Word

from .loose import told_loosely
from .sweeps import with_steps
from .tension_told import LENGTHS_OF_A_TENSION

BOTH = frozenset(("and", "&", ",", "x", "×", "/", "+", "plus"))
MAKES = frozenset(("make", "makes", "made", "measure", "measures", "measured", "is", "are", "equals", "give", "gives", "cover", "covers"))
HOLDS = frozenset(("is", "are", "hold", "holds", "has", "have", "takes", "gives", "="))
_SHARE = re.compile(r"(\d+)\s*/\s*(10|4)(?=\D)")
TENSION_WORDS = frozenset(("tension", "gauge"))
TENSION_UNITS = ("st", "row")
STITCHES = ("stitches", "sts", "rows")
MONEY = frozenset(("GBP", "USD", "EUR", "pound", "pence", "cent"))
# "4 a skirt" is "for a skirt"; "4 a side" is a number of each side.
FOR = "4"
ARTICLES = frozenset(("a", "an", "the", "my", "me"))
ONE_OF = {"inch": "in", "yard": "yd", "metre": "m", "meter": "m", "foot": "ft"}
EACH_OF = frozenset(("side", "piece", "end", "time", "row", "round", "head", "go", "metre", "meter", "yard", "pack", "set", "day", "week"))
MARKS = {
    **dict.fromkeys(("half", "1/2"), 2), **dict.fromkeys(("quarter", "4th"), 4), **dict.fromkeys(("eighth", "8th"), 8),
    **dict.fromkeys(("sixteenth", "16th"), 16), **dict.fromkeys(("thirty-second", "32nd"), 32),
}  # fmt: skip
ACROSS = frozenset(("wide", "long", "high", "tall", "deep", "across", "square", "by", "apart"))
MOST_TIMES = 8  # "1.5 m by 90" is no 90 m
MOST_OF_A_SWATCH = 80  # "132 stitches make 60 cm" is no tension
POINTERS = frozenset(("that", "it", "this", "is"))
ASKS = ("what", "how")


def put_right(chunks: Sequence[Chunk]) -> list[Chunk]:
    """The chunks with what belongs together joined, and what was read too far parted again."""
    made: list[Chunk] = []
    tension = any(isinstance(chunk, Word) and chunk.lower in TENSION_WORDS for chunk in chunks)
    for chunk in chunks:
        if isinstance(chunk, Measure):
            _add_measure(made, (_written_as_share(chunk) or chunk) if tension else chunk)
        elif isinstance(chunk, Word):
            _add_word(made, chunk)
        elif isinstance(chunk, Size) and any(side.per is not None for side in chunk.sides):
            made.extend(chunk.sides)  # "£6.80 per metre x 3.5 m" is no size
        elif isinstance(chunk, Size):
            made.append(_of_one_unit(chunk))
        elif isinstance(chunk, Mark) and chunk.text == "%":
            made.append(Word(chunk.text, "percent", chunk.start, chunk.end))
        elif isinstance(chunk, Mark) and chunk.text == "@":
            made.append(Word(chunk.text, "at", chunk.start, chunk.end))
        else:
            made.append(chunk)
    made = told_loosely(made)
    _share_lengths(made)
    return with_steps(made)


def _of_one_unit(size: Size) -> Size:
    """ "1.5 m by 2.4" is in metres both ways."""
    first = size.sides[0]
    sides = tuple(
        replace(side, parts=(Part(side.value, first.unit),), text=f"{side.text} {first.unit}")
        if first.unit in ("m", "yd", "ft") and side.bare and side.value < MOST_TIMES * first.value else side
        for side in size.sides
    )  # fmt: skip
    return replace(size, sides=sides)


def _written_as_share(measure: Measure) -> Measure | None:
    """The tension in "tension 20/10cm", which has no word for stitches; None for any other measure."""
    found = _SHARE.match(measure.text)
    if found is None or measure.per is not None or measure.unit != ("cm" if found[2] == "10" else "in"):
        return None
    return replace(measure, parts=(Part(Fraction(int(found[1])), "st"),), per=Part(Fraction(int(found[2])), measure.unit))


def _add_measure(made: list[Chunk], measure: Measure) -> None:
    before = made[-1] if made else None
    link = made[-2] if len(made) > 1 else None
    if _plain_length(measure) and isinstance(before, Measure) and _is_tension(before, measure):
        made[-1] = _over(before, measure)
    elif _plain_length(measure) and isinstance(before, Word) and _is_rate(link, before.lower):
        assert isinstance(link, Measure)
        made[-2:] = [_over(link, measure)]
    elif _holds(made, measure):
        length = made[-2]
        assert isinstance(length, Measure)
        made[-2:] = [replace(measure, per=length.parts[0], text=f"{length.text} {before.text if before else ''} {measure.text}",
                             start=length.start)]  # fmt: skip
    elif measure.per is not None and isinstance(before, Word) and before.lower in ("and", "or") and _gathered(made):
        link = made[-2]
        assert isinstance(link, Series)
        made[-2:] = [_one_series(link, measure, before.lower == "or")]
    elif measure.per is not None and measure.per.unit == "row" and " in " in measure.text:
        made.extend(_parted(measure))
    elif measure.text.lower() in ("an inch", "a cm", "a centimetre") and isinstance(before, Word) and before.lower in STITCHES:
        made.extend(_words(measure.text, measure.start))  # "how many stitches an inch"
    elif measure.text.lower() in ("a yard", "a metre", "a meter") and _asked_of(made):
        made.extend(_words(measure.text, measure.start))
    else:
        made.append(measure)


def _add_word(made: list[Chunk], word: Word) -> None:
    before = made[-1] if made else None
    if word.lower in MARKS and isinstance(before, Word) and before.lower == "nearest":
        made.append(Measure((Part(Fraction(1, MARKS[word.lower]), "in"),), word.text, word.start, word.end))
        return
    if word.lower == "em" and isinstance(before, Mark) and before.text == "'":
        made[-1] = Word("'em", "them", before.start, word.end)
        return
    link = made[-2] if len(made) > 1 else None
    if isinstance(before, Word) and isinstance(link, Word) and link.lower == "a" and (number := _in_words(before, word)) is not None:
        made[-2:] = [number]
        if word.lower == "of":
            return
    if word.lower in ("half", "quarter") and (length := _and_a_part(made, word)) is not None:
        made[-3:] = [length]
        return
    if isinstance(before, Measure) and before.text == FOR and word.lower in ARTICLES and isinstance(link, Word):
        made[-1] = Word(before.text, "for", before.start, before.end)
    elif word.lower in EACH_OF and isinstance(before, Word) and before.lower in ("a", "an") and _is_for(link):
        assert isinstance(link, Word)
        made[-2] = Measure((Part(Fraction(int(FOR)), ""),), link.text, link.start, link.end)
    made.append(word)


def _in_words(before: Word, word: Word) -> Measure | None:
    """ "a foot wide" is twelve inches, and "a score of" things are twenty."""
    if before.lower == "foot" and word.lower in ACROSS:
        return Measure((Part(Fraction(1), "ft"),), "a foot", before.start - 2, before.end, spelled=False)
    if before.lower == "score" and word.lower == "of":
        return Measure((Part(Fraction(20), ""),), "a score", before.start - 2, before.end, spelled=False)
    return None


def _and_a_part(made: list[Chunk], word: Word) -> Measure | None:
    """ "inch and a half" with no number before it: one and a half of them."""
    if len(made) < 3 or not all(isinstance(chunk, Word) for chunk in made[-3:]):
        return None
    unit, link, article = (chunk.lower for chunk in made[-3:] if isinstance(chunk, Word))
    if unit not in ONE_OF or link != "and" or article not in ("a", "one"):
        return None
    start, text = made[-3].start, f"{unit} and {article} {word.lower}"
    return Measure((Part(1 + Fraction(1, 2 if word.lower == "half" else 4), ONE_OF[unit]),), text, start, word.end)


def _is_for(chunk: Chunk | None) -> bool:
    return isinstance(chunk, Word) and chunk.text == FOR


def _plain_length(measure: Measure) -> bool:
    return measure.per is None and len(measure.parts) == 1 and measure.unit in ("cm", "in", "m", "yd")


def _is_tension(counted: Measure, length: Measure) -> bool:
    """Whether stitches or rows with a length straight after them are a tension: "24 sts 10cm"."""
    return counted.per is None and counted.unit in TENSION_UNITS and length.parts[0] in LENGTHS_OF_A_TENSION


def _is_price(chunk: Chunk | None) -> bool:
    return isinstance(chunk, Measure) and chunk.per is None and chunk.unit in MONEY


def _is_rate(chunk: Chunk | None, link: str) -> bool:
    """Whether what stands before "per", "on" or "measure" is so much or so many of a length."""
    if link == "per":
        return _is_price(chunk)
    return (link == "on" or link in MAKES) and _is_count(chunk) and isinstance(chunk, Measure) and chunk.value <= MOST_OF_A_SWATCH


def _holds(made: list[Chunk], measure: Measure) -> bool:
    """Whether a count of stitches is told of the length of a swatch: "4 inches is 18 stitches"."""
    if len(made) < 2 or not _is_count(measure):
        return False
    length, verb = made[-2:]
    swatch = isinstance(length, Measure) and length.per is None and length.parts[0] in LENGTHS_OF_A_TENSION
    return swatch and isinstance(verb, Word | Mark) and verb.text.lower() in HOLDS


def _is_count(chunk: Chunk | None) -> bool:
    return isinstance(chunk, Measure) and chunk.per is None and chunk.unit in TENSION_UNITS


def _gathered(made: list[Chunk]) -> bool:
    """Whether a list of bare numbers stands before "and"; two with a comma between them are made one list."""
    link = made[-2] if len(made) > 1 else None
    if isinstance(link, Measure) and link.bare and len(made) > 3 and isinstance(made[-3], Mark) and made[-3].text == ",":
        first = made[-4]
        if isinstance(first, Measure) and first.bare:
            made[-4:-1] = [Series((first, link), False, f"{first.text}, {link.text}", first.start, link.end)]
            return True
    return _is_bare_series(link)


def _is_bare_series(chunk: Chunk | None) -> bool:
    return isinstance(chunk, Series) and all(member.bare for member in chunk.members)


def _one_series(series: Series, last: Measure, either: bool) -> Series:
    """ "20, 21, 22 and 23 sts to 10 cm": what is said of the last is meant of them all."""
    members = tuple(replace(one, parts=(Part(one.parts[0].value, last.unit),), per=last.per) for one in series.members)
    return Series((*members, last), either, f"{series.text} {'or' if either else 'and'} {last.text}", series.start, last.end)


def _over(above: Measure, below: Measure) -> Measure:
    gap = " " * (below.start - above.end) if below.start - above.end == 1 else " per "
    return replace(above, per=below.parts[0], text=f"{above.text}{gap}{below.text}", end=below.end)


def _parted(measure: Measure) -> list[Chunk]:
    """ "90 sts in the round" again as stitches, and where they are."""
    said, _, where = measure.text.partition(" in ")
    first = measure.start + len(said) + 1
    whole = replace(measure, per=None, text=said, end=measure.start + len(said))
    return [whole, *_words(f"in {where}", first)]


def _words(text: str, start: int) -> list[Chunk]:
    made: list[Chunk] = []
    at = start
    for word in text.split(" "):
        made.append(Word(word, word.lower(), at, at + len(word)))
        at += len(word) + 1
    return made


def _asked_of(made: list[Chunk]) -> bool:
    """Whether what comes next is asked for: "what's that a yard"."""
    before = made[-1] if made else None
    priced = any(isinstance(chunk, Measure) and chunk.unit in MONEY and chunk.per is not None for chunk in made)
    if priced and isinstance(before, Word | Mark) and before.text in ("£", "$", "€", "in"):
        return True  # "£10 a metre in £ a yard"
    words = [chunk.lower for chunk in made[-3:] if isinstance(chunk, Word)]
    if words and words[-1] in ("price", "cost") and isinstance(before, Word):
        return True  # "£45.50 is what 3.5 m came to. Price a metre?"
    if words[-2:] == ["is", "what"]:
        return True  # "$11.50 a yard is what a metre?"
    if words[-1:] == ["for"] and any(word.startswith(ASKS) for word in words):
        return True  # "works out at what for a yard"
    return bool(words) and words[-1] in (*POINTERS, *(f"{ask}s" for ask in ASKS)) and any(word.startswith(ASKS) for word in words)


def _share_lengths(made: list[Chunk]) -> None:
    """Stitches and rows said together share the length said once: "24 sts 32 rows/10cm"."""
    for spot, chunk in enumerate(made):
        if not (isinstance(chunk, Measure) and chunk.per is None and chunk.unit in TENSION_UNITS):
            continue
        after = spot + 1
        if after < len(made) and isinstance(joins := made[after], Word | Mark) and joins.text in BOTH:
            after += 1
        other = made[after] if after < len(made) else None
        if isinstance(other, Measure) and other.per in LENGTHS_OF_A_TENSION and other.unit in TENSION_UNITS and other.unit != chunk.unit:
            made[spot] = replace(chunk, per=other.per)
