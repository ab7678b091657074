"""Numbers of asides: ages, dates, how long something took, things that no rule knows; each may be left out of the sum, and is said.

What is certain to be no number of a sum ("in 1962", "on Oct 12", "at number 27") is left out of the line. What is likely
none is marked: it is placed only where nothing can be answered without it, and otherwise is shown as not used.
"""

from __future__ import annotations

import re
from collections.abc import Container
from dataclasses import replace

from rules.engine.units import CURRENCIES

from .tokens import FILLERS
from .values import Line, Value

YEARS = (1900, 2100)
BEFORE_A_YEAR = frozenset(("in", "since", "from", "of", "circa", "about", "the"))
MONTHS = frozenset(
    """january february march april june july august september october november december jan feb apr jun jul aug sep sept oct
    nov""".split()
)
CAPITAL_MONTHS = frozenset(("May", "March", "Mar"))
HOUSES = (["at", "number"], ["for", "flat"], ["in", "flat"], ["at", "flat"], ["to", "number"])
_DAY = re.compile(r"\b(?:the|on|['’]s)\s*$", re.IGNORECASE)
STOPS = frozenset((".", ",", ";", ":", "?", "!", "\n", "(", ")", "-", "–", "—"))
STOPS |= frozenset(("and", "so", "but", "because", "though", "when", "which", "after", "that"))
ASKS = frozenset(("how", "what", "which", "whats", "find", "need", "want", "buy", "cut", "make"))
OF_AGE = frozenset(("im", "he", "she", "who", "turn", "aged"))
PEOPLE = frozenset(
    """i he she who mum mother mom dad father daughter son niece nephew sister brother gran granny grandma nan grandson granddaughter
    husband wife aunt uncle cousin neighbour neighbor friend""".split()
)
OLDEST, TALLEST_FEET = 110, 7
TIMES = frozenset(("year", "yr", "month", "week", "day", "hour", "hr", "minute", "min", "decade", "evening", "night", "time"))
SAYS_NOTHING = TIMES | OF_AGE | PEOPLE | frozenset(("ive", "weve", "theyve", "id"))
TIME_UNITS = frozenset(("hour", "minute", "degree"))
LASTING = frozenset(("been", "ago", "old"))
LONG_AGO = frozenset(("last", "before", "ago", "once", "other"))
PAST = frozenset(("paid", "pay", "got", "spent", "buy"))


def leave_out(line: Line) -> set[int]:
    """Where numbers stand that are none of any sum: years, days of a month, house numbers."""
    single = (value for value in line.values if value.shape == "one" and (value.main.bare or value.main.unit in ("st", "ft")))
    return {value.first for value in single if any(is_one(line, value) for is_one in NO_NUMBERS)}


def mark(line: Line, known: Container[str]) -> None:
    """Mark the numbers that are likely an aside's. known: the words that mean something to some rule."""
    for value in line.values if len(line.values) > 1 else ():
        value.aside = _may_be_aside(line, value, known)
        things = line.words[value.last : value.last + 1] != ["of"] and TIMES.isdisjoint(line.words[value.last : value.last + 1])
        value.counts_others = value.aside and value.main.bare and things and not _is_age(line, value, known)


def other_way(line: Line, known: Container[str]) -> Line | None:
    """The line with such numbers as any others, and with how tall somebody is as an aside; None where there is nothing of these."""
    tall = {value.number for value in line.values if _is_height(line, value, known)}
    if not tall and not any(value.aside for value in line.values):
        return None
    values = [replace(value, aside=value.number in tall or _of_another(line, value), counts_others=False) for value in line.values]
    at_value = {spot: values[value.number] for spot, value in line.at_value.items()}
    return replace(line, values=values, at_value=at_value)


def _of_another(line: Line, value: Value) -> bool:
    """Whether an age is told of him or her: "He is 34" is no waist, where "I'm 35" and "Ines is 70" may be measures."""
    words = line.words[max(0, value.first - 2) : value.first]
    return value.aside and (words[-1:] == ["he"] or words[-1:] == ["she"] or words in (["he", "is"], ["she", "is"]))


def _may_be_aside(line: Line, value: Value, known: Container[str]) -> bool:
    unit = value.main.unit
    if value.shape != "one" or not (value.main.bare or unit in TIME_UNITS or unit in CURRENCIES or unit == "pound"):
        return False
    clause = _clause(line, value)
    words = [line.words[spot] for spot in clause if spot not in line.at_value]
    if not ASKS.isdisjoint(words) or any(
        spot in line.at_value and line.at_value[spot] is not value and not line.at_value[spot].soft for spot in clause
    ):
        return False
    quiet = not any(word in known and word not in SAYS_NOTHING and word not in FILLERS for word in words if word[:1].isalpha())
    after = line.words[value.last : value.last + 1]
    if unit in CURRENCIES or unit == "pound":
        return value.main.per is None and not PAST.isdisjoint(words) and (quiet or not LONG_AGO.isdisjoint(words))
    if unit in TIME_UNITS:
        return True
    if value.main.value.denominator != 1:
        return False
    if after and after[0] in TIMES:
        return quiet or not LASTING.isdisjoint(words)
    if line.words[value.last : value.last + 2] == ["of", "us"]:
        return True
    if _is_age(line, value, known):
        return quiet or line.words[value.first - 1] == "turn" or line.words[value.last : value.last + 1] == ["if"]
    return quiet and bool(after) and after[0][:1].isalpha() and after[0] not in FILLERS and after[0] not in known


def _clause(line: Line, value: Value) -> range:
    """The words from one stop or joining word to the next around a value."""
    first, last = value.first, value.last
    while first > 0 and line.words[first - 1] not in STOPS:
        first -= 1
    while last < len(line.words) and line.words[last] not in STOPS:
        last += 1
    return range(first, last)


def _is_age(line: Line, value: Value, known: Container[str]) -> bool:
    """Whether a bare number may be how old someone is: "Tomas is 83", "I turned 52", "I'm 47"."""
    return _of_someone(line, value, known) and value.main.value <= OLDEST


def _is_height(line: Line, value: Value, known: Container[str]) -> bool:
    """Whether a measure in feet may be how tall someone is: "he's 6 ft 1"."""
    tall = value.main.unit == "ft" and value.main.per is None and 2 <= value.main.parts[0].value <= TALLEST_FEET
    return tall and _of_someone(line, value, known)


def _of_someone(line: Line, value: Value, known: Container[str]) -> bool:
    """Whether a number is told of somebody: "I'm 61", "my neighbour Tomas is 83"."""
    words, verb = line.words, value.first - 1
    if verb < 0:
        return False
    if words[verb] in OF_AGE:
        return True
    if verb == 0 or words[verb] not in ("is", "was", "am", "are"):
        return False
    start, end = line.origin[verb - 1]
    named = line.text[start:end].istitle() and words[verb - 1] not in FILLERS and words[verb - 1] not in known
    return named or words[verb - 1] in PEOPLE


def _is_year(line: Line, value: Value) -> bool:
    """Whether a number is a year or the years of a decade: "from 1974", "a 1980s box"."""
    year = value.main.value
    if not value.main.bare or year.denominator != 1 or not YEARS[0] <= year < YEARS[1]:
        return False
    if line.text[value.end : value.end + 1] == "s" or line.text[value.end - 1 : value.end] == "s":
        return True
    return line.words[value.first - 1 : value.first] != [] and line.words[value.first - 1] in BEFORE_A_YEAR \
        and line.words[value.last : value.last + 1] != ["to"]  # fmt: skip


def _is_date(line: Line, value: Value) -> bool:
    """Whether a number is the day of a month: "Oct 12", "the 14th of May", "someone's 21st"."""
    if value.main.per is not None or not 1 <= value.main.value <= 31:
        return False
    if re.fullmatch(r"[23]?1st", value.text) and _DAY.search(line.text[: value.start]):
        return True
    if not value.main.bare:
        return False
    before = re.search(r"([A-Za-z]+)\.?\s*$", line.text[: value.start])
    after = re.match(r"(?:th|nd|rd)?\s*(?:of\s+)?([A-Za-z]+)", line.text[value.end :])
    return any(found is not None and _names_month(found[1]) for found in (before, after))


def _names_month(word: str) -> bool:
    return word.lower() in MONTHS - {"march"} or word in CAPITAL_MONTHS


def _is_shoe(line: Line, value: Value) -> bool:
    """Whether a number is a size of shoe: "size 37 feet"."""
    sized = line.words[value.first - 1 : value.first] == ["size"]
    return sized and (line.words[value.last : value.last + 1] in (["foot"], ["shoe"], ["boot"]) or value.main.unit == "ft")


def _is_house(line: Line, value: Value) -> bool:
    """Whether a number is that of a house: "the flat at number 27"."""
    whole = value.main.bare and value.main.value.denominator == 1
    return whole and line.words[max(0, value.first - 2) : value.first] in HOUSES


NO_NUMBERS = (_is_year, _is_date, _is_house, _is_shoe)
