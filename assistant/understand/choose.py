"""Which rule a question is for: each likely rule tries to place every number, and the best fit wins, or none does."""

from __future__ import annotations

from collections import Counter, defaultdict
from collections.abc import Container, Mapping, Sized
from dataclasses import dataclass, field
from fractions import Fraction
from functools import lru_cache

from rules.engine.answer import Answer
from rules.engine.declare import Input, Rule
from rules.engine.kinds import ANY, CHOICE, COUNT, LENGTH, PERCENT, RATIO
from rules.engine.request import Given, Request

from .asked import LEAD, UNITS_ASKED, asked_for, could_be_unknown, in_unit, length_asked, unit_asked, unknown_count
from .counted import Counted, counts_of
from .lexicon import Match
from .options import UNPLACED
from .place import Placing, one_of_another, place
from .readers import PLAIN, reader_of
from .tokens import FILLERS, tokens
from .values import Line, Value

CANDIDATES = 8
# The first few are always read closely; the others only when the words speak for them nearly as loudly.
ALWAYS, FAINT = 2, 0.35
TOPIC_WEIGHT = 3.0
CLOSE = 0.8
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
# Few rules take stitches, rates or weights: a number of such a kind tells much about the rule meant.
TELLING_UNIT = 0.3
PLAIN_KINDS = (LENGTH, COUNT, RATIO)
# How plainly a list does so.
LISTED = 0.5
OTHER_TOPIC = 1.2
OTHER_WORD = 0.6
DENIED = frozenset(("no", "not", "nothing", "none", "never", "without", "isnt", "arent", "wont", "neither"))
# "How many squares" is no question for a rule that knows nothing of squares.
UNKNOWN_COUNT = 2.5


@dataclass(frozen=True, slots=True)
class Tried:
    """A reading put to its rule: the request, and the answer to it; or the unit that a bare number wants."""

    request: Request | None
    answer: Answer

@dataclass(slots=True)
class Reading:
    """One way to read the question: a rule, where the numbers go, which options, what is asked, how well it fits."""

    rule: Rule
    line: Line
    placing: Placing
    options: dict[str, list[Match]]
    chosen: dict[str, tuple[str, ...]]
    asked: tuple[str, ...]
    listed: dict[str, Given] = field(default_factory=dict)
    counts: Mapping[int, Counted] = field(default_factory=dict)
    score: float = 0.0
    taken: frozenset[int] = frozenset()
    heard: frozenset[int] = frozenset()
    tried: Tried | None = None
    topic_score: float = 0.0

    @property
    def lost(self) -> list[Value]:
        """Numbers that found no place; a number word ("one of them") is not counted as lost."""
        return [value for value in self.placing.unplaced if not value.soft]


def candidates(matches: list[Match]) -> list[tuple[str, float]]:
    """Topics in order of how loudly the words speak for them."""
    scores: defaultdict[str, float] = defaultdict(float)
    for match in matches:
        for topic, strength in match.entry.loudness() if match.entry is not None else ():
            scores[topic] += strength
    if not scores:
        return []
    faint = FAINT * max(scores.values())
    loud = [entry for entry in scores.items() if entry[1] >= faint]
    if len(loud) < ALWAYS:
        loud = sorted(scores.items(), key=_loudest_first)[:ALWAYS]
    return sorted(loud, key=_loudest_first)[:CANDIDATES]


def _loudest_first(entry: tuple[str, float]) -> tuple[float, str]:
    return -entry[1], entry[0]


def names_itself(rule: Rule, matches: list[Match]) -> bool:
    """Whether a rule that must be called for is named too, besides the words that call for it ("plan a tote")."""
    return any(
        match.entry is not None
        and match.entry.words not in _calls_of(rule.called)
        and any(tag.what == "topic" for tag in match.of(rule.topic))
        for match in matches
    )


@lru_cache(maxsize=8)
def _calls_of(called: tuple[str, ...]) -> frozenset[tuple[str, ...]]:
    return frozenset(tokens(phrase) for phrase in called)


def read_as(rule: Rule, line: Line, matches: list[Match], system_hint: str, kept: Mapping[str, Given] | None = None,
            prefer: Mapping[str, float] | None = None) -> Reading:
    """The best reading of a line as this rule's. kept: values already known from before (a follow-up)."""
    mine = _of_rule(rule, line, matches)
    options, chosen = _options(rule, line, mine)
    eaten = {spot for found in options.values() for match in found for spot in range(match.first, match.last) if spot in line.at_value}
    values = [value for value in line.values if value.first not in eaten]
    before = frozenset(value.number for value in values)
    listed, values = _read_lists(rule, line, values, mine)
    nothing = _none_of(rule, line, mine)
    listed.update(nothing)
    asked = asked_for(rule, line, mine)
    if not line.values and not kept:
        asked = tuple(name for name in asked if rule.input(name) is None)  # nothing is told to work an input back from
    unknowns = frozenset(name for name in asked[:1] if could_be_unknown(rule, name))
    counts = counts_of(rule, line, values, mine)
    counted = {one.value.number for one in counts.values()}
    placed = [value for value in values if value.number not in counted]
    heard = _heard_as_asked(rule, mine, asked[:1])
    placing = place(rule, line, placed, heard, unknowns, system_hint, prefer, chosen=chosen)
    if _states(placing) and not unknowns and not _still_needed(rule, placing, {*listed, *chosen, *(kept or {})}):
        # Everything is known forwards: what looked like a result told is likelier an input.
        forwards = place(rule, line, placed, heard, unknowns, system_hint, prefer, told=False, chosen=chosen)
        placing = forwards if not forwards.unplaced else placing
    _keep_counts(placing, counts)
    filled = {slot.name for slots in placing.spots.values() for slot in slots}
    for name in nothing.keys() & filled:
        del listed[name]  # "1 1/2 in sashing, no sashing round the outside" has sashing
    asked = tuple(name for name in asked if name not in filled and name not in listed and name not in chosen)
    reading = Reading(rule, line, placing, options, chosen, asked or in_unit(rule, unit_asked(line) or length_asked(line)), listed, counts)
    reading.taken = before - {value.number for value in values}
    reading.heard = frozenset(spot for match in mine for spot in range(match.first, match.last))
    reading.score = _score(reading, mine, kept or {}) - _passed_over(reading, matches)
    return reading


def _still_needed(rule: Rule, placing: Placing, known: set[str]) -> list[str]:
    """Inputs without a default that nothing fills yet."""
    filled = known | {slot.name for slots in placing.spots.values() for slot in slots}
    return [item.name for item in rule.inputs if item.default is None and not item.extra and item.name not in filled]


def _heard_as_asked(rule: Rule, matches: list[Match], asked: tuple[str, ...]) -> list[Match]:
    """The phrases without those that only ask for a result: in "what square for 250 in" the square is not 250 in."""
    if not asked or rule.step(asked[0]) is None:
        return matches
    heard = []
    for match in matches:
        tags = tuple(tag for tag in match.tags if tag.what != "result" or tag.name not in asked)
        heard.append(match if len(tags) == len(match.tags) else match._replace(tags=tags))
    return heard


def _keep_counts(placing: Placing, counts: Mapping[int, Counted]) -> None:
    """A count whose length went elsewhere than to a list has no place."""
    for number, count in counts.items():
        slots = placing.spots.get(number, ())
        if not any(isinstance(slot.declared, Input) and slot.declared.many for slot in slots):
            placing.unplaced.append(count.value)
            placing.score += UNPLACED


def _longest(matches: list[Match], at_value: Container[int]) -> list[Match]:
    """A phrase inside a longer one that names the same rule or an option of it is that longer phrase's part."""
    naming = [
        match for match in matches
        if match.last - match.first > 1 and any(tag.what in ("option", "topic") for tag in match.tags)
    ]  # fmt: skip
    if not naming:
        return matches
    kept = []
    for match in matches:
        first, last = match.first, match.last
        if last in at_value and last - 1 not in at_value and any(tag.what == "role" for tag in match.tags):
            kept.append(match)  # "squares cut 5 in" names the topic, and the number too
            continue
        if not any(one.first <= first and last <= one.last and one.last - one.first > last - first for one in naming):
            kept.append(match)
    return kept


def _options(rule: Rule, line: Line, matches: list[Match]) -> tuple[dict[str, list[Match]], dict[str, tuple[str, ...]]]:
    """The options the words choose: input -> its option keys, more than one only when joined by "or"."""
    met: dict[str, list[tuple[Match, str]]] = {}
    for match in matches:
        for tag in match.tags:
            if tag.what == "option":
                met.setdefault(tag.name, []).append((match, _unless_denied(line, match, tag.option)))
    options, chosen = {}, {}
    for name, found in met.items():
        options[name] = [match for match, _ in found]
        keys = tuple(dict.fromkeys(key for _, key in found))
        if len(keys) > 1:
            if "or" in line.words or "versus" in line.words or "vs" in line.words:
                pass
            else:
                longest = max(found, key=lambda entry: (entry[0].last - entry[0].first, entry[0].weight, entry[0].first))
                keys = (longest[1],)
        chosen[name] = keys
    return options, chosen


def _unless_denied(line: Line, match: Match, option: str) -> str:
    """A flag's option, or "no" where its words are denied: "nothing round the outside", "not lined"."""
    return "no" if option == "yes" and DENIED.intersection(line.words[max(0, match.first - 1) : match.first]) else option


def _read_lists(rule: Rule, line: Line, values: list[Value], matches: list[Match]) -> tuple[dict[str, Given], list[Value]]:
    """Inputs that are lists or tables have readers of their own; what they take is no longer to be placed."""
    listed: dict[str, Given] = {}
    for item in rule.inputs:
        reader = reader_of(item.kind.name)
        if reader is not None:
            given, taken = reader(item, line, values, matches)
            if given is None and not item.extra:
                given = line.kept.get(item.kind.name)
            if given is not None:
                listed[item.name] = given
                values = [value for value in values if value.number not in taken]
    return listed, values


def _none_of(rule: Rule, line: Line, matches: list[Match]) -> dict[str, Given]:
    """Inputs said to be nothing ("no seam allowance", "without ease"), where nothing is in their range."""
    found = {}
    for match in matches:
        before = match.first - (line.words[match.first - 1 : match.first] in (["any"], ["extra"]))
        if before < 1 or line.words[before - 1] not in ("no", "without", "zero"):
            continue
        for tag in match.tags:
            item = rule.input(tag.name) if tag.what == "role" else None
            if item is not None and item.sane.startswith("0 ") and item.kind in (LENGTH, PERCENT):
                text = f"{line.words[before - 1]} {' '.join(line.words[match.first : match.last])}"
                found[item.name] = Given(Fraction(0), "", text)
    return found


def _lone(reading: Reading) -> bool:
    """Whether the one measure of a line went to a place of its own kind: no bare number, no length that could go anywhere."""
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    values = reading.line.values
    return bool(values) and not values[0].main.bare and not any(slot.stated or slot.kind in PLAIN_KINDS for slot in slots)


def _states(placing: Placing) -> bool:
    """Whether a number was taken for a result told."""
    return any(slot.stated for slots in placing.spots.values() for slot in slots)


def _things(given: Given | None) -> int:
    """How many things a list has, none when it was not read; "6 mats 18 x 14 in" are six."""
    if given is None or not isinstance(given.value, Sized) or isinstance(given.value, str):
        return 0
    counts = [getattr(entry, "count", 1) for entry in given.value] if isinstance(given.value, tuple) else []
    return max(len(given.value), *(int(count) for count in counts if isinstance(count, Fraction | int)), 0)


def _tells(reading: Reading) -> bool:
    """Whether the line gives just the kinds of value that tell the rule (and a discount, perhaps), each in an input's place."""
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    if reading.lost or any(slot.stated for slot in slots):
        return False
    kinds, tells = Counter(slot.kind.name for slot in slots), Counter(reading.rule.tells)
    return bool(kinds) and set(tells) in (set(kinds), set(kinds) - {PERCENT.name}) and tells <= kinds


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
    return any(item.kind.name in PLAIN and _things(reading.listed.get(item.name)) > 1 for item in reading.rule.inputs)


def reads_list(rule: Rule, line: Line, matches: list[Match]) -> bool:
    """Whether a line holds a list of several things of the kind that a rule takes."""
    for item in rule.inputs:
        reader = reader_of(item.kind.name) if item.kind.name in PLAIN else None
        if reader is not None and _things(reader(item, line, line.values, _of_rule(rule, line, matches))[0]) > 1:
            return True
    return False


def _of_rule(rule: Rule, line: Line, matches: list[Match]) -> list[Match]:
    """The phrases that mean something to a rule, the longest where one lies in another."""
    mine = [Match(match.first, match.last, tags, match.weight) for match in matches if (tags := match.of(rule.topic))]
    return _longest(mine, line.at_value)


def _score(reading: Reading, matches: list[Match], kept: Mapping[str, Given]) -> float:
    topic = [match.weight for match in matches if any(tag.what == "topic" for tag in match.tags)]
    best_topic = max(topic, default=0.0)
    reading.topic_score = best_topic
    score = TOPIC_WEIGHT * best_topic + 0.5 * sum(sorted(topic)[:-1])
    score += 0.9 * sum(max(match.weight for match in found) for found in reading.options.values())
    roles: dict[str, float] = {}
    for match in matches:
        for tag in match.tags:
            if tag.what in ("role", "result", "stated"):
                roles[tag.name] = max(roles.get(tag.name, 0.0), match.weight)
    score += 0.45 * sum(roles.values())
    score += 0.55 * reading.placing.score
    score += 0.8 if reading.asked else 0.0
    score -= TOLD_TWICE * max(0, sum(slot.stated for slots in reading.placing.spots.values() for slot in slots) - 1)
    score -= UNKNOWN_COUNT if unknown_count(reading.line, reading.heard) else 0.0
    score += 1.2 * len(reading.listed) + 0.8 * len(reading.taken)
    if any(item.kind.name == "sum" and item.name in reading.listed for item in reading.rule.inputs):
        # The whole line is a sum and nothing else: as plain as naming the topic.
        reading.topic_score = max(reading.topic_score, 1.0)
        score += TOPIC_WEIGHT
    elif matches and takes_list(reading):
        # A list of the very kind the rule takes (lines of a bill, pieces to cut) tells what it is for.
        reading.topic_score = max(reading.topic_score, LISTED)
        score += TOPIC_WEIGHT * max(0.0, LISTED - best_topic)
    elif not best_topic and ((reading.rule.lone and _lone(reading)) or _tells(reading) or _told_in_pairs(reading)):
        reading.topic_score = LONE
    filled = {slot.name for slots in reading.placing.spots.values() for slot in slots}
    filled |= {*reading.listed, *reading.chosen, *kept}
    missing = [item for item in reading.rule.inputs if item.default is None and not item.extra and item.name not in filled]
    for item in missing:
        if item.name not in reading.asked[:1]:
            score -= 0.55 if item.kind.is_number or item.kind is CHOICE else MISSING_LIST
    if reading.topic_score == LONE and reading.rule.lone and not missing:
        if _is_put_into(reading.line):
            reading.topic_score = 1.0
            score += TOPIC_WEIGHT + DIRECT_GAIN
        score += LONE_GAIN if _says_no_more(reading.line) else DIRECT_GAIN if _put_directly(reading.line) else 0.0
    return score


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


def _is_put_into(line: Line) -> bool:
    """Whether a line is nothing but a measure, of something, to be put into a unit: "8 ounces of stuffing in grams"."""
    first = line.values[0].first
    said_of_what = _past_what(line, line.values[0].last) > line.values[0].last
    return said_of_what and _put_directly(line) and all(word in FILLERS for word in line.words[:first])


def _passed_over(reading: Reading, matches: list[Match]) -> float:
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


def coverage(reading: Reading) -> float:
    """The share of the question's content words that mean something to the reading's rule."""
    line = reading.line
    content = [
        spot for spot, word in enumerate(line.words) if spot not in line.at_value and word not in FILLERS and word[:1].isalpha()
    ]
    return sum(spot in reading.heard for spot in content) / len(content) if content else 0.0


def evidence(reading: Reading, matches: list[Match]) -> float:
    """How telling the words are that the reading's rule heard: the rarer they are among the rules, the more."""
    loud: dict[int, float] = {}
    for match in matches:
        if match.of(reading.rule.topic):
            for spot in range(match.first, match.last):
                if reading.line.words[spot] not in FILLERS:
                    loud[spot] = max(loud.get(spot, 0.0), match.weight / (match.last - match.first))
    units = sum(
        TELLING_UNIT for slots in reading.placing.spots.values() for slot in slots if slot.kind not in (*PLAIN_KINDS, ANY)
    )
    return sum(loud.values()) + units


def unheard(reading: Reading, known_elsewhere: frozenset[str]) -> tuple[str, ...]:
    """Content words that changed nothing."""
    line = reading.line
    words = []
    for spot, word in enumerate(line.words):
        if spot in line.at_value or spot in reading.heard or word in FILLERS or not word[:1].isalpha() or len(word) < 3:
            continue
        start, end = line.origin[spot]
        words.append(line.text[start:end])
    return tuple(dict.fromkeys(words))
