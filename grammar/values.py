"""The value of a number as typed: each kind of number token to an exact fraction."""

from __future__ import annotations

import re
from fractions import Fraction
from functools import lru_cache

LONGEST_NUMBER = 4000  # digits; Python itself refuses to read a little more than that

_ONES = "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen"
_ONES += " eighteen nineteen"
_TENS = "twenty thirty forty fifty sixty seventy eighty ninety"
_WORDS = {word: number for number, word in enumerate(_ONES.split(), 1)}
_WORDS |= {word: 10 * number for number, word in enumerate(_TENS.split(), 2)}
_WORDS |= {"a": 1, "an": 1}
_TIMES = {"hundred": 100, "thousand": 1000, "dozen": 12}
_PARTS = {"half": 2, "halves": 2, "third": 3, "quarter": 4, "fifth": 5, "sixth": 6, "eighth": 8, "tenth": 10}
_PARTS |= {"sixteenth": 16}
_THS = "thrds \t"  # what may follow the figures of 5/8ths
_DIGITS = {"zero": 0, "oh": 0}
# "One fifty" is dictated for 150, "one hundred and fifty" is not.
_OF_A_HUNDRED = re.compile(r"\s*one ((?:ten|twelve|fifteen|thirty|forty|fifty|sixty)(?: five| seven)?)\s*$")
_PIECE = re.compile(r"[a-z]+|[0-9]+")


@lru_cache(maxsize=1024)
def number(kind: str, text: str) -> Fraction | None:
    """The value of a number token of a kind, or None for what is no number after all (2nd, 4,001 digits in a row)."""
    if kind == "ORDINAL" or len(text) > LONGEST_NUMBER:
        return None
    if kind in ("SPELLED", "DICTATED", "PORTION_OF", "AN"):
        return spelled(text)
    if kind in ("COMMA_DECIMAL", "MONEY_DECIMAL"):
        return Fraction(text.strip().replace(",", "."))
    if kind == "MIXED":
        whole, *_, part = re.split(r"[ -]+", text.rstrip(_THS))
        return int(whole) + Fraction(part)
    return Fraction(text.rstrip(_THS).replace(",", ""))


def spelled(text: str) -> Fraction:
    """The value of a number in words, such as "two and a half", "a hundred and twenty", "three quarters of a"."""
    whole, pointed, digits = text.partition(" point ")
    if pointed:
        return Fraction(f"{spelled(whole)}.{''.join(str(_DIGITS.get(digit, _WORDS.get(digit, 0))) for digit in digits.split())}")
    if rest := _OF_A_HUNDRED.match(text):
        return 100 + spelled(rest[1])
    total = Fraction(0)
    count = 0  # the number gathered so far that a hundred, a dozen or a part may still multiply
    for piece in _PIECE.findall(text):
        if piece.isdigit():
            count = int(piece)
        elif piece in _TIMES:
            half = 0 < total < 1  # half a dozen
            total = total * _TIMES[piece] if half else total + max(count, 1) * _TIMES[piece]
            count = 0
        elif part := _PARTS.get(piece) or _PARTS.get(piece[:-1]):
            total += Fraction(max(count, 1), part)
            count = 0
        elif piece == "and":
            total += count
            count = 0
        elif total == 0 or piece not in ("a", "an"):
            count += _WORDS.get(piece, 0)
    return total + count
