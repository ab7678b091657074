"""Reckoning on with the last answer: "that × 3", "double it", "half of that", "that plus 5 cm"."""

from __future__ import annotations

import re

from rules.engine.answer import Answer, Result
from rules.engine.units import CURRENCIES

_LEAD = r"(?:(?:and|so|now|ok|okay|then|what's|whats|what is|please)[ ,]+)*"
_THAT = r"(?:that|it|this|the answer)"
_TIMES = re.compile(rf"{_LEAD}{_THAT}? ?(?:x|×|\*|times|multiplied by) ?(.*\d.*|[a-z]+)", re.IGNORECASE)
_SHARE = re.compile(rf"{_LEAD}(double|twice|treble|triple|halve|half(?: of)?|a third of|a quarter of) {_THAT}", re.IGNORECASE)
_MORE = re.compile(rf"{_LEAD}{_THAT} (plus|minus|less|\+|-) (.+)", re.IGNORECASE)
_MORE_OF_IT = re.compile(rf"{_LEAD}(plus|minus) ([\d./]+ ?[\d/]* ?[a-z\"']+)", re.IGNORECASE)
_PERCENT = r"([\d.]+) ?(?:%|per ?cent)"
_OFF = re.compile(rf"{_LEAD}(?:less |with |minus )?{_PERCENT} ?(?:off|discount|less|reduction)?(?: (?:it|that|them))?", re.IGNORECASE)
OFF = ("off", "discount", "less", "minus", "reduction")
SHARES = {"double": "twice ", "twice": "twice ", "treble": "3 x ", "triple": "3 x ", "halve": "half of "}


def as_sum(text: str, last: Answer, has_discount: bool = False) -> str:
    """The sum that a line asks for, with the last answer's first result in the place of "that"; "" for any other line.

    has_discount: whether the rule of the last answer takes a discount itself, so that "and 20% off" is for it.
    """
    said, that = text.strip().rstrip(" ?!."), _typed(last.results[0]) if last.results else ""
    if not that:
        return ""
    if found := _TIMES.fullmatch(said):
        return f"{that} x {found[1]}"
    if found := _SHARE.fullmatch(said):
        word = found[1].lower()
        return f"{SHARES.get(word, word if word.endswith(' of') else word + ' of')} {that}"
    if found := _MORE.fullmatch(said) or _MORE_OF_IT.fullmatch(said):
        return f"{that} {found[1]} {found[2]}"
    if not has_discount and last.results[0].unit in CURRENCIES and any(word in said for word in OFF) and (found := _OFF.fullmatch(said)):
        return f"{that} - {found[1]}%"
    return ""


def _typed(result: Result) -> str:
    """A result as it could be typed in a sum: a count without its noun; "" for words."""
    if isinstance(result.value, str) or result.unit == "text":
        return ""
    return result.text if any(sign in result.text for sign in "£$€") or " " not in result.text or _is_measure(result) else str(result.value)


def _is_measure(result: Result) -> bool:
    """Whether what stands behind the number is a unit, and no noun ("7 strips")."""
    return result.text.endswith(result.unit)
