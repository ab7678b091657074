"""How well a reading fits its line: the words that name its rule, the places of its numbers, what is missing or unheard."""

from __future__ import annotations

from collections import Counter
from collections.abc import Container, Mapping, Sized
from fractions import Fraction
from functools import lru_cache

from rules.engine.declare import Input, Rule
from rules.engine.kinds import CHOICE, COUNT, LENGTH, PERCENT, RATIO
from rules.engine.request import Given

from .asked import asks_another_kind, unknown_count
from .lexicon import Match
from .place import one_of_another
from .readers import PLAIN
from .reading import Reading
from .slots import SPEAKING
from .tokens import FILLERS
from .unit_asked import LEAD, UNITS_ASKED
from .values import Line

TOPIC_WEIGHT = 3.0
# One result may be told, and something worked back from it; two are seldom both told.
TOLD_TWICE = 1.5
OF_WHAT = 5
# A list or table that is not in the line is missed more than one number is.
MISSING_LIST = 1.5
# What a rule gains that needs nothing but the lone measure in the line.
LONE_GAIN = 2.0
DIRECT_GAIN = 3.0
# How plainly a lone measure with a unit asked for names its rule: less than any topic word does.
LONE = 0.3
PLAIN_KINDS = (LENGTH, COUNT, RATIO)
# How plainly a list does so.
LISTED = 0.5
MOST_STRANGE_WORDS = 3
OTHER_TOPIC = 1.2
OTHER_WORD = 0.6
# "How many squares" is no question for a rule that knows nothing of squares.
UNKNOWN_COUNT = 2.5
# Nor is "how many" one for a rule that would answer with a length.
OF_ANOTHER_KIND = 1.2


def _lone(reading: Reading) -> bool:
    """Whether the one measure of a line went to a place of its own kind: no bare number, no length that could go anywhere."""
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    values = reading.line.values
    return bool(values) and not values[0].main.bare and not any(slot.stated or slot.kind in PLAIN_KINDS for slot in slots)


def things(given: Given | None) -> int:
    """How many things a list has, none when it was not read; "6 mats 18 x 14 in" are six."""
    if given is None or not isinstance(given.value, Sized) or isinstance(given.value, str):
        return 0
    counts = [getattr(entry, "count", 1) for entry in given.value] if isinstance(given.value, tuple) else []
    return max(len(given.value), *(int(count) for count in counts if isinstance(count, Fraction | int)), 0)


def _tells(reading: Reading) -> bool:
    """Whether the line gives just the kinds of value that tell the rule (and a discount, perhaps), each in an input's place."""
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    strange = [word for spot, word in enumerate(reading.line.words) if _says_something(reading, spot, word)]
    if len(strange) > MOST_STRANGE_WORDS:
        return False  # a line that says much else is about something else
    told_back = any(slot.stated and slot.kind in PLAIN_KINDS for slot in slots)
    if reading.lost or told_back or any(value.main.bare for value in reading.line.values if not value.soft):
        return False  # a bare number tells no kind
    kinds = Counter(slot.kind.name for slot in slots)
    whole = (set(kinds), set(kinds) - {PERCENT.name})
    return bool(kinds) and any(set(told) in whole and told <= kinds for told in reading.rule.told_by())


def _says_something(reading: Reading, spot: int, word: str) -> bool:
    """Whether a word of a line says something, and nothing to the reading's rule."""
    return word[:1].isalpha() and word not in FILLERS and spot not in reading.line.at_value and spot not in reading.heard


def _told_in_pairs(reading: Reading) -> bool:
    """Whether the numbers are such a pair as the rule needs ("2 m of 140 cm") and another beside it, each in an input's place."""
    spots = reading.placing.spots
    if reading.lost or len(spots) <= 2 or any(slot.stated for slots in spots.values() for slot in slots):
        return False
    needed = {item.name for item in reading.rule.inputs if item.default is None and not item.extra}
    names = {number: slots[0].name for number, slots in spots.items()}
    pairs = {pair for pair in reading.rule.pairs if needed.issuperset(pair)}
    values = [value for value in reading.line.values if value.number in spots]
    return any((names[values[one].number], names[values[other].number]) in pairs for one, other in one_of_another(reading.line, values))


def takes_list(reading: Reading) -> bool:
    """Whether it takes a list that tells by itself what it is for: the lines of a bill, the pieces of a lay."""
    return any(item.kind.name in PLAIN and things(reading.listed.get(item.name)) > 1 for item in reading.rule.inputs)


def score(reading: Reading, matches: list[Match], kept: Mapping[str, Given]) -> float:
    topic: list[float] = []
    roles: dict[str, float] = {}
    for match in matches:
        names_topic, weight = False, match.weight
        for tag in match.tags:
            if tag.what in SPEAKING:
                if weight > roles.get(tag.name, 0.0):
                    roles[tag.name] = weight
            elif tag.what == "topic":
                names_topic = True
        if names_topic:
            topic.append(weight)
    best_topic = max(topic, default=0.0)
    reading.topic_score = best_topic
    score = TOPIC_WEIGHT * best_topic + 0.5 * sum(sorted(topic)[:-1])
    score += 0.9 * sum(max(match.weight for match in found) for found in reading.options.values())
    score += 0.45 * sum(roles.values())
    score += 0.55 * reading.placing.score
    score += 0.8 if reading.asked else 0.0
    score -= OF_ANOTHER_KIND if asks_another_kind(reading.rule, reading.line, reading.asked) else 0.0
    score -= TOLD_TWICE * max(0, sum(any(slot.stated for slot in slots) for slots in reading.placing.spots.values()) - 1)
    score -= UNKNOWN_COUNT if unknown_count(reading.line, reading.heard) else 0.0
    score += 1.2 * len(reading.listed) + 0.8 * len(reading.taken)
    if reading.listed and any(item.kind.name == "sum" and item.name in reading.listed for item in reading.rule.inputs):
        # The whole line is a sum and nothing else: as plain as naming the topic.
        reading.topic_score = max(reading.topic_score, 1.0)
        score += TOPIC_WEIGHT
    elif reading.listed and takes_list(reading) and (matches or not reading.placing.unplaced):
        # A list of the very kind the rule takes (lines of a bill, pieces to cut) tells what it is for.
        reading.topic_score = max(reading.topic_score, LISTED)
        score += TOPIC_WEIGHT * max(0.0, LISTED - best_topic)
    elif best_topic < LONE and ((reading.rule.lone and _lone(reading)) or _tells(reading) or _told_in_pairs(reading)):
        reading.topic_score = LONE + best_topic  # a faint word of the topic counts besides
    filled = {slot.name for slots in reading.placing.spots.values() for slot in slots}
    filled |= {*reading.listed, *reading.chosen, *kept}
    missing = lacking(reading.rule, filled)
    for item in missing:
        if item.name not in reading.asked[:1]:
            score -= 0.55 if item.kind.is_number or item.kind is CHOICE else MISSING_LIST
    if LONE <= reading.topic_score < 2 * LONE and reading.rule.lone and not missing:
        if _is_put_into(reading.line):
            reading.topic_score = 1.0
            score += TOPIC_WEIGHT + DIRECT_GAIN
        score += LONE_GAIN if _says_no_more(reading.line) else DIRECT_GAIN if _put_directly(reading.line) else 0.0
    return score


@lru_cache(maxsize=512)
def _needed_by(rule: Rule) -> tuple[Input, ...]:
    """The inputs that a rule cannot do without and has no default for."""
    return tuple(item for item in rule.inputs if item.default is None and not item.extra)


def lacking(rule: Rule, filled: Container[str]) -> list[Input]:
    """The inputs that a rule still needs when some are filled."""
    return [item for item in _needed_by(rule) if item.name not in filled]


def _says_no_more(line: Line) -> bool:
    """Whether a line holds one plain measure and nothing else but fillers and units."""
    words = [word for spot, word in enumerate(line.words) if spot not in line.at_value and word[:1].isalpha()]
    plain = all(word in FILLERS or word in UNITS_ASKED or len(word) < 3 for word in words)
    return plain and len(line.values) == 1 and line.values[0].main.per is None


def _put_directly(line: Line) -> bool:
    """Whether the lone measure is put into a unit at once, and that is all its clause says: "5 ft 4 in centimetres, for the ..."."""
    words, spot = line.words, _past_what(line, line.values[0].last)
    spot += spot < len(words) and words[spot] in LEAD
    asked = spot < len(words) and spot not in line.at_value and words[spot] in UNITS_ASKED
    return asked and (spot + 1 == len(words) or words[spot + 1] in (",", ".", "?", ";", "!", "\n"))


def _past_what(line: Line, spot: int) -> int:
    """The place after "of stuffing" behind a measure, where a unit to put it into follows."""
    end = spot
    while line.words[spot : spot + 1] == ["of"] and end < min(len(line.words), spot + OF_WHAT):
        if line.words[end] in ("in", "into", "to"):
            return end
        end += 1
    return spot


def _asks_that_in(line: Line) -> bool:
    """Whether a line ends in "what's that in cm", after its one measure and little else."""
    words = [word for word in line.words if word not in ("?", ".", ",", "please", "is")]
    asking = words[-4:-1] in (["what", "that", "in"], ["whats", "that", "in"], ["what", "it", "in"], ["whats", "it", "in"])
    told = line.values[0].main.unit not in ("", "L")  # 45L are buttons
    return asking and told and words[-1] in UNITS_ASKED and line.values[0].first <= 3 and len(words) <= 4 + MOST_STRANGE_WORDS + OF_WHAT


def _is_put_into(line: Line) -> bool:
    """Whether a line is nothing but a measure, of something, to be put into a unit: "8 ounces of stuffing in grams"."""
    if _asks_that_in(line):
        return True
    first = line.values[0].first
    said_of_what = _past_what(line, line.values[0].last) > line.values[0].last
    return said_of_what and _put_directly(line) and all(word in FILLERS for word in line.words[:first])


def passed_over(reading: Reading, matches: list[Match]) -> float:
    """What speaks against a reading: words that name other rules and mean nothing to this one, and words nobody knows."""
    loud: dict[int, float] = {}
    words, heard = reading.line.words, reading.heard
    for match in matches:
        share = OTHER_TOPIC if match.entry is not None and match.entry.names_topic else OTHER_WORD
        strength = share * match.weight / (match.last - match.first)
        for spot in range(match.first, match.last):
            if spot not in heard and words[spot] not in FILLERS:
                loud[spot] = max(loud.get(spot, 0.0), strength)
    return sum(loud.values())
