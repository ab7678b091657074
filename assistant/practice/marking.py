"""A typed answer to an exercise: read by the grammar, marked by the engine, and the reply in words."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import TYPE_CHECKING

from grammar.query import Mark, Measure, Word
from rules.engine.kinds import ALL_KINDS, ANY, COUNT, Kind
from rules.engine.marking import Case, Expected, Typed, Verdict
from rules.engine.slips import the
from rules.engine.units import UnitError, same_kind, system_of

from ..understand.tokens import FILLERS
from ..understand.values import base_value, kinds_of

if TYPE_CHECKING:
    from ..conversation import Conversation

SMALL_WORDS = frozenset(("it", "is", "it's", "i", "think", "make", "a", "the", "so", "answer"))
# Words that may stand around an answer; any others make the line a question of its own.
AROUND = frozenset(
    (
        "it is it's its i think make makes get gets got answer about of the a to up down so that that's and rounded "
        "round equals = my maybe comes out at cut buy need needed whole or in all each as for would be should "
        "approximately exactly roughly take takes"
    ).split()
)


@dataclass(frozen=True, slots=True)
class Reading:
    """A typed answer: the value in the kind wanted, or None and the kind it is of instead. bare: no unit was typed."""

    typed: Typed | None
    kind: Kind | None = None
    bare: bool = False
    text: str = ""


def reading(text: str, want: Expected, talk: Conversation) -> Reading | None:
    """The answer in a line, or None when the line is no answer: no number, several, or words of a question."""
    if want.words:
        return _in_words(text, want)
    chunks = talk.mind.reader.read(text).chunks
    measures = [chunk for chunk in chunks if isinstance(chunk, Measure)]
    words = [chunk.lower for chunk in chunks if isinstance(chunk, Word)]
    others = [chunk for chunk in chunks if not isinstance(chunk, Measure | Word | Mark)]
    if len(measures) != 1 or others or any(isinstance(chunk, Mark) and chunk.text == "?" for chunk in chunks):
        return None
    if not all(word in AROUND or word in FILLERS or _names(word, want) for word in words):
        return None
    return of_measure(measures[0], want)


def _in_words(text: str, want: Expected) -> Reading | None:
    """A short line that asks nothing, as an answer in words."""
    words = text.lower().split()
    if len(words) > len(want.words.split()) + 6 or "?" in text or {"how", "what", "which", "why"}.intersection(words):
        return None
    said = " ".join(word for word in words if word not in SMALL_WORDS or word in want.words.lower().split())
    return Reading(Typed(Fraction(0), words=said), want.kind, text=text) if said else None


def _names(word: str, want: Expected) -> bool:
    """Whether a word is one of the result's own name, in the singular or plural."""
    own = {part for name in (want.label, want.noun) for part in name.lower().split()}
    return word in own or word.removesuffix("s") in own or word.removesuffix("es") in own


def of_measure(measure: Measure, want: Expected) -> Reading:
    """A measure as the kind of value wanted; when it cannot be that, the first kind it can be."""
    kinds = kinds_of(measure)
    if want.kind is ANY:
        return _any(measure, want)
    if (
        want.kind is COUNT and measure.per is None and measure.unit == want.noun[:2] == "st"
    ) or measure.unit == want.noun == "row":
        return Reading(Typed(measure.value), want.kind, text=measure.text)
    if want.kind.name in kinds or measure.bare:
        value, unit = base_value(measure, want.kind, "" if want.unit == "1" else want.unit)
        unit = unit if not measure.bare else want.unit
        return Reading(
            Typed(value, "" if unit == "1" else unit),
            want.kind,
            measure.bare and want.unit not in ("", "1"),
            measure.text,
        )
    kind = next((kind for kind in ALL_KINDS if kinds and kind.name == kinds[0]), None)
    if kind is None:
        return Reading(None, None, text=measure.text)
    value, unit = base_value(measure, kind)
    return Reading(Typed(value, unit), kind, text=measure.text)


def _any(measure: Measure, want: Expected) -> Reading:
    """For a result of any kind (a conversion): the kind its unit tells."""
    kind = next((kind for kind in ALL_KINDS if kind.name in kinds_of(measure) and _same(kind.base, want.unit)), None)
    if kind is None and not measure.bare:
        return Reading(None, None, text=measure.text)
    value, unit = base_value(measure, kind or ANY, "" if want.unit == "1" else want.unit)
    return Reading(
        Typed(value, "" if unit == "1" else unit), want.kind, measure.bare and want.unit != "1", measure.text
    )


def _same(base: str, unit: str) -> bool:
    try:
        return same_kind(base, unit)
    except UnitError:
        return False


def mark(case: Case, read: Reading) -> Verdict:
    """The verdict on a typed answer."""
    want = case.expected
    if read.typed is None or (read.kind is not None and read.kind is not want.kind):
        earlier = case.earlier(read.typed, read.kind) if read.typed is not None and read.kind is not None else None
        return earlier or Verdict(
            False, told=f"That is {_kind_words(read)}; {the(want.label)} is asked for{_such_as(want)}."
        )
    verdict = case.mark(read.typed)
    if verdict.right or verdict.slip:
        return verdict
    return case.earlier(read.typed, want.kind) or verdict


def _kind_words(read: Reading) -> str:
    return f"a {read.kind.name}" if read.kind is not None else "something else"


def _such_as(want: Expected) -> str:
    if want.noun:
        return ", a plain number"
    return f", in {want.unit}" if want.unit not in ("", "1") and system_of(want.unit) else ""
