"""A misspelt word met with the nearest known one, always the same, and said aloud."""

from __future__ import annotations

import re
from collections.abc import Iterable
from functools import lru_cache
from pathlib import Path

from .tokens import stem


def slips(left: str, right: str, most: int) -> int:
    """Letters put in, left out, changed, or two swapped, up to `most` (most + 1 when there are more).

    >>> slips("elastc", "elastic", 2), slips("fabirc", "fabric", 2)
    (1, 1)
    """
    if abs(len(left) - len(right)) > most:
        return most + 1
    before: list[int] = []
    row = list(range(len(right) + 1))
    for i, letter in enumerate(left, 1):
        earlier, before, row = before, row, [i] + [0] * len(right)
        for j, other in enumerate(right, 1):
            row[j] = min(before[j] + 1, row[j - 1] + 1, before[j - 1] + (letter != other))
            if i > 1 and j > 1 and letter == right[j - 2] and left[i - 2] == other:
                row[j] = min(row[j], earlier[j - 2] + 1)
        if min(row) > most:
            return most + 1
    return row[-1]


SHORTEST, LEAST_BARE = 5, 3
VOWELS = str.maketrans("", "", "aeiou")


@lru_cache(maxsize=1)
def common_words() -> frozenset[str]:
    """Everyday words that mean nothing to the rules and are not misspelt; read when an unknown word is first met."""
    text = Path(__file__).with_name("common_words.txt").read_text("utf-8")
    return frozenset(folded for word in text.split() for folded in (word, stem(word)))


@lru_cache(maxsize=4096)
def _nearest(word: str, known: frozenset[str]) -> str:
    bones = word.translate(VOWELS)
    bare = bones == word and len(word) >= LEAST_BARE  # "skrt", "wdth": typed without its vowels
    if (len(word) < SHORTEST and not bare) or word in common_words():
        return ""
    alike = [other for other in known if other[:1] == word[0] and other.translate(VOWELS) == bones]
    letters = sorted(word)
    alike.sort(key=lambda other: (sorted(other) != letters, len(other), other))  # "wasit" has the letters of "waist"
    if bare and alike:
        return alike[0]
    most = 1 if len(word) < 8 else 2
    best, least = "", most + 1
    for other in (*alike, *sorted(known)):  # a vowel left out is likelier than a letter changed
        if len(other) < 4 or (other[0] != word[0] and other[1:2] != word[:1]) or len(word) < SHORTEST:
            continue
        count = slips(word, other, most)
        if count < least:
            best, least = other, count
    return best


def nearest(word: str, known: frozenset[str]) -> str:
    """The nearest known word within one slip (two in words over seven letters), or "" when there is none."""
    return _nearest(word, known)


# A letter typed for a digit: O behind one, l or I before one. "2 oz" and "20 l" are left alone.
_NUMBER_WITH_LETTERS = re.compile(r"(?<![A-Za-z0-9])(?:[lI](?=[0-9O.])|[0-9])[0-9Oo.]*(?=mm\b|cm\b|in\b|m\b|yd|[^A-Za-z0-9]|$)")
_DIGITS = str.maketrans("OolI", "0011")


def with_digits(text: str) -> tuple[str, tuple[tuple[str, str], ...]]:
    """A line with the letters that were typed for digits put right, and each number so mended: as typed, as read.

    >>> with_digits("60 x 7O quilt, l0 blocks")
    ('60 x 70 quilt, 10 blocks', (('7O', '70'), ('l0', '10')))
    """
    mended: list[tuple[str, str]] = []

    def put_right(met: re.Match[str]) -> str:
        typed = met[0]
        read = typed.translate(_DIGITS)
        if read != typed and any(sign.isdigit() for sign in typed):
            mended.append((typed, read))
            return read
        return typed

    return _NUMBER_WITH_LETTERS.sub(put_right, text), tuple(mended)


def closest(word: str, known: Iterable[str], most: int = 3) -> list[str]:
    """Known phrases near a word, nearest first, ties by name: for suggestions."""
    ranked = sorted((slips(word, other, 3), other) for other in known)
    return [other for count, other in ranked if count <= 3][:most]
