"""The words the grammar is told of and does not own: spelled units, currency signs, and which units go together."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from unicodedata import category

_FEET_AND_SUCH = {
    "ft": ("in",), "yd": ("ft", "in"), "m": ("cm", "mm"), "cm": ("mm",), "lb": ("oz",), "kg": ("g",), "pound": ("pence",),
    "USD": ("cent",), "EUR": ("cent",),
}  # fmt: skip

_ROOM = {("ft", "in"): 12, ("yd", "ft"): 3, ("yd", "in"): 36, ("m", "cm"): 100, ("m", "mm"): 1000, ("cm", "mm"): 10, ("lb", "oz"): 16,
         ("kg", "g"): 1000, ("pound", "pence"): 100,
         ("USD", "cent"): 100, ("EUR", "cent"): 100}  # fmt: skip


@dataclass(frozen=True, slots=True, eq=False)
class Vocabulary:
    """Units as they are spelled, in small letters, each with its canonical name, which means nothing to the grammar.

    units: "inches" -> "in". prefix_currencies: "£" -> "GBP", signs written before the number.
    counted: units that are counted against a length, so that "22 sts to 10 cm" is a rate and not a span.
    smaller: units that may follow another to make one measure, as inches follow feet.
    room: how many of the smaller make one of the larger; so many or more are a measure of their own (3 yd 45 in wide).
    tails: the unit meant by a bare number straight after one, as in "5 ft 3".
    things: spelled units that after "a" are more often a thing than a measure: a foot, a round, "as a percent".
    """

    units: Mapping[str, str]
    prefix_currencies: Mapping[str, str]
    counted: frozenset[str] = frozenset({"st", "row", "round"})
    smaller: Mapping[str, tuple[str, ...]] = field(default_factory=lambda: dict(_FEET_AND_SUCH))
    room: Mapping[tuple[str, str], int] = field(default_factory=lambda: dict(_ROOM))
    tails: Mapping[str, str] = field(default_factory=lambda: {"ft": "in", "m": "cm", "pound": "pence", "USD": "cent", "EUR": "cent"})
    things: frozenset[str] = frozenset({"foot", "round", "row", "stitch", "percent", "per cent", "tex"})


def units_pattern(spelled: Iterable[str]) -> str:
    """A regular expression for any of the spelled units, longest first, none ending in the middle of a word.

    One boundary a kind of ending, rather than one a unit: the pattern is compiled at each start of the program.
    """
    words = sorted(spelled)
    digits = [word for word in words if word[-1].isdigit() and word[-1].isascii()]
    letters = [word for word in words if word[-1].isalpha() or word[-1] == "'"]
    money = [word for word in words if category(word[-1]) == "Sc"]
    signs = [word for word in words if word not in digits and word not in letters and word not in money]
    # "12 £" is money, and in "2 £5 zips" the sign is the next number's.
    kinds = ((digits, "(?![0-9])"), (signs, ""), (money, "(?! *[.]?[0-9])"), (letters, "(?![a-z])"))
    return "(?:" + "|".join(_branches(_tree(each)) + boundary for each, boundary in kinds if each) + ")"


class _Tree(dict[str, "_Tree"]):
    """Words by their letters; "" marks the end of one."""


def _tree(words: list[str]) -> _Tree:
    tree = _Tree()
    for word in words:
        branch = tree
        for letter in word:
            branch = branch.setdefault(letter, _Tree())
        branch[""] = _Tree()
    return tree


def _branches(tree: _Tree) -> str:
    ways = [_letter(letter) + _branches(below) for letter, below in tree.items() if letter]
    if not ways:
        return ""
    pattern = ways[0] if len(ways) == 1 and "" not in tree else "(?:" + "|".join(ways) + ")"
    return pattern + "?" if "" in tree else pattern


def _letter(letter: str) -> str:
    return " +" if letter == " " else "\\/" if letter == "/" else re.escape(letter)


def heads_pattern(spelled: Iterable[str]) -> str:
    """A quick look at whether a unit may begin here: its first two letters, or the whole of a one-letter unit."""
    words = [word for word in spelled if word[0].isalpha()]
    short = "".join(sorted({word for word in words if len(word) == 1}))
    heads = "|".join(sorted({"".join(map(_letter, word[:2])) for word in words if len(word) > 1}))
    return f"(?:{heads}|[{short}](?![a-z]))" if short else f"(?:{heads})"
