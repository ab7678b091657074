"""Numbers of a line that are none to place: ages, years, dates, "each one", the length that a tension is asked over."""

from __future__ import annotations

from fractions import Fraction

from grammar.query import Part

from .asides import leave_out
from .tokens import FILLERS
from .values import Line, Value

# The lengths that tensions are told over.
TENTH, FOUR_INCHES, AN_INCH = (Part(Fraction(10), "cm"),), (Part(Fraction(4), "in"),), (Part(Fraction(1), "in"),)
OVER = (TENTH, FOUR_INCHES, AN_INCH, (Part(Fraction(10), ""),), (Part(Fraction(4), ""),))
POINTERS = frozenset(("that", "it", "this", "these", "those", "many"))
OLDEST = 17  # who is older is no reason for care, and "he's 42" may be a chest
AGED = frozenset(("aged", "turn", "he", "she", "who"))
SOMEONE = frozenset(("he", "she", "who"))
THE_ONE = (["each"], ["every"], ["that"], ["this"], ["which"], ["first"], ["last"], ["another"], ["next"], ["other"], ["between"])
AFTER_SOMEONE: tuple[list[str], ...] = ([], ["and"], [","], ["."], ["?"], ["then"], ["instead"], ["please"], ["is"], ["with"])
EACH_END = (["each", "end"], ["each", "side"], ["both", "end"], ["both", "side"], ["either", "end"], ["either", "side"])
CLAUSE_ENDS: tuple[list[str], ...] = ([], ["."], [","], ["?"], ["!"], ["and"], ["so"], [";"])
AGES = (["year"], ["month"], ["week"], ["yr"])


def pass_over(line: Line) -> None:
    """Leave such numbers as words of the line, and note whether someone's age is among them."""
    words, spots = line.words, set[int]()
    for spot, value in line.at_value.items():
        aged = _is_age(words, spot, value)
        line.aged = line.aged or aged
        if aged or any(is_none(words, value) for is_none in NO_NUMBERS) or _is_asked_over(line, value):
            spots.add(spot)
    spots |= leave_out(line)
    if spots:
        _leave_out(line, spots)


def _leave_out(line: Line, spots: set[int]) -> None:
    """Numbers that stay words of the question, and are not to be placed."""
    line.values = [value for value in line.values if value.first not in spots]
    line.at_value = {spot: value for spot, value in line.at_value.items() if spot not in spots}
    for number, value in enumerate(line.values):
        value.number = number


def _is_asked_over(line: Line, value: Value) -> bool:
    """Whether a length is what a tension told before is asked over: "27 sts across 12 cm, what's that to 10 cm?"."""
    if value.shape != "one" or value.main.parts[:1] not in OVER or value.main.per is not None:
        return False
    words, first = line.words, value.first
    if words[first - 1 : first] == ["per"] and words[first - 2 : first - 1] in ([","], ["."], ["?"], ["and"]):
        return True
    if first < 2 or words[first - 1] not in ("to", "in", "per", "over", "on", "for") or words[first - 2] not in POINTERS:
        return False
    return any(
        other.main.unit == "st/in" or (other.main.per is not None and other.main.unit in ("st", "row"))
        for other in line.values if other.first < first
    )  # fmt: skip


def _is_someone(words: list[str], value: Value) -> bool:
    """Whether "one" is a thing spoken of, and no number: "each one is 5 cm across", "the first one"."""
    if not (value.soft and value.main.bare and value.main.value == 1):
        return False
    before, after = words[value.first - 1 : value.first], words[value.last : value.last + 1]
    named = bool(before) and before[0].isalpha() and before[0] not in FILLERS  # "a full circle one, and the cloth is ..."
    return before in THE_ONE or (named and after in AFTER_SOMEONE)


def _is_of_each_end(words: list[str], value: Value) -> bool:
    """Whether one stitch is that of each end, as shaping is written: "dec 1 st at each end"."""
    if value.shape != "one" or value.main.unit not in ("st", "") or value.main.value != 1 or value.main.per is not None:
        return False
    after = value.last + (words[value.last : value.last + 1] == ["at"])
    shaped = value.main.spelled or words[value.first - 1 : value.first] in (["increase"], ["decrease"])
    return shaped and words[after : after + 2] in EACH_END


def _is_age(words: list[str], spot: int, value: Value) -> bool:
    """Whether a number is how old someone is: "3 year old", "he's 2", "aged four"."""
    if words[spot + 1 : spot + 2] in AGES and words[spot + 2 : spot + 3] == ["old"]:
        return True
    if value.shape != "one" or not value.main.bare or value.main.value > OLDEST or words[value.last : value.last + 1] not in CLAUSE_ENDS:
        return False
    return words[spot - 1] in AGED or (words[spot - 1] == "is" and words[spot - 2] in SOMEONE) if spot else False


NO_NUMBERS = (_is_someone, _is_of_each_end)
