"""The words the grammar is told of and does not own: spelled units, currency signs, and which units go together."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

_FEET_AND_SUCH = {"ft": ("in",), "yd": ("ft", "in"), "m": ("cm", "mm"), "cm": ("mm",), "lb": ("oz",), "kg": ("g",)}


@dataclass(frozen=True, slots=True, eq=False)
class Vocabulary:
    """Units as they are spelled, in small letters, each with its canonical name, which means nothing to the grammar.

    units: "inches" -> "in". prefix_currencies: "£" -> "GBP", signs written before the number.
    counted: units that are counted against a length, so that "22 sts to 10 cm" is a rate and not a span.
    smaller: units that may follow another to make one measure, as inches follow feet.
    tails: the unit meant by a bare number straight after one, as in "5 ft 3".
    """

    units: Mapping[str, str]
    prefix_currencies: Mapping[str, str]
    counted: frozenset[str] = frozenset({"st", "row", "round"})
    smaller: Mapping[str, tuple[str, ...]] = field(default_factory=lambda: dict(_FEET_AND_SUCH))
    tails: Mapping[str, str] = field(default_factory=lambda: {"ft": "in", "m": "cm"})


def units_pattern(spelled: Iterable[str]) -> str:
    """A regular expression for any of the spelled units, longest first, none ending in the middle of a word."""
    tree: dict[str, dict] = {}  # type: ignore[type-arg]
    for word in sorted(spelled):
        branch = tree
        for letter in word:
            branch = branch.setdefault(letter, {})
        branch[""] = {}
    return _branches(tree, "")


def _branches(tree: dict[str, dict], before: str) -> str:  # type: ignore[type-arg]
    ways = [_letter(letter) + _branches(below, letter) for letter, below in tree.items() if letter]
    if "" in tree:
        ways.append(_boundary(before))
    return ways[0] if len(ways) == 1 else "(?:" + "|".join(ways) + ")"


def _letter(letter: str) -> str:
    return "[ ]+" if letter == " " else "\\/" if letter == "/" else re.escape(letter)


def _boundary(last: str) -> str:
    if last.isalpha() or last == "'":
        return "(?![a-z])"
    return "(?![0-9])" if last.isdigit() else ""


def heads_pattern(spelled: Iterable[str]) -> str:
    """A quick look at whether a unit may begin here: its first two letters, or the whole of a one-letter unit."""
    words = [word for word in spelled if word[0].isalpha()]
    short = "".join(sorted({word for word in words if len(word) == 1}))
    heads = "|".join(sorted({"".join(map(_letter, word[:2])) for word in words if len(word) > 1}))
    return f"(?:{heads}|[{short}](?![a-z]))" if short else f"(?:{heads})"
