"""Which rule a question is for: each likely rule tries to place every number, and the best fit wins, or none does."""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Container, Mapping
from fractions import Fraction
from functools import lru_cache
from typing import NamedTuple

from rules.engine.declare import Input, Rule
from rules.engine.kinds import LENGTH, PERCENT
from rules.engine.request import Given

from .asked import asked_for, could_be_unknown
from .counted import Counted, counts_of
from .lexicon import Match, remembered
from .options import UNPLACED
from .place import EITHER, Placing, Words, place
from .readers import PLAIN, reader_of
from .reading import Reading
from .score import lacking, passed_over, score, things
from .tokens import tokens
from .unit_asked import in_unit
from .values import Line, Value

CANDIDATES = 8
# The first few are always read closely; the others only when the words speak for them nearly as loudly.
ALWAYS, FAINT = 2, 0.35
NOTHING = frozenset(("no", "without", "zero", "nil", "none", "minus", "skip", "forget", "omit"))
SAID_AFTER = (["nil"], ["none"], ["zero"], ["nothing"])  # "waste nil"
TAKES, TAKEN = frozenset(("take", "leave", "put", "lose")), (["away"], ["off"], ["out"])  # "take the sashing away again"
BEFORE_NOTHING = (["any"], ["extra"], ["a"], ["an"], ["the"], ["my"])
DENIED = frozenset(("no", "not", "nothing", "none", "never", "without", "isnt", "arent", "wont", "neither"))


def candidates(matches: list[Match]) -> list[tuple[str, float]]:
    """Topics in order of how loudly the words speak for them."""
    return remembered(matches, "loud", lambda: _candidates(matches))


def _candidates(matches: list[Match]) -> list[tuple[str, float]]:
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
            prefer: Mapping[str, float] | None = None, told: bool = True) -> Reading:
    """The best reading of a line as this rule's. kept: values already known from before (a follow-up).

    told: whether a number may be a result that was told.
    """
    untold = not line.values and not kept
    spoken = remembered(matches, (rule, line.signature(), untold), lambda: _hear(rule, line, matches, untold))
    mine, options, asked = spoken.mine, spoken.options, spoken.asked
    chosen = dict(spoken.chosen)
    eaten = {spot for found in options.values() for match in found for spot in range(match.first, match.last) if spot in line.at_value}
    values = [value for value in line.values if value.first not in eaten]
    before = frozenset(value.number for value in values)
    listed, values = _read_lists(rule, line, values, mine)
    listed.update(spoken.nothing)
    unknowns = frozenset(name for name in asked[:1] if could_be_unknown(rule, name))
    sides = {name for group in rule.sizes if rule.told_sizes and unknowns.intersection(group) for name in group}
    unknowns |= sides.intersection(asked)  # "what width and height will the bag finish"
    counts = counts_of(rule, line, values, mine)
    counted = {one.value.number for one in counts.values()}
    placed = [value for value in values if value.number not in counted]
    placing = place(rule, line, placed, spoken.heard, unknowns, system_hint, prefer, told, chosen)
    if _states(placing, prefer or {}) and not unknowns and not _still_needed(rule, placing, {*listed, *chosen, *(kept or {})}):
        # Everything is known forwards: what looked like a result told is likelier an input.
        forwards = place(rule, line, placed, spoken.heard, unknowns, system_hint, prefer, told=False, chosen=chosen)
        placing = forwards if all(value.soft for value in forwards.unplaced) else placing
    _keep_counts(placing, counts)
    filled = {slot.name for slots in placing.spots.values() for slot in slots}
    for name in spoken.nothing.keys() & filled:
        del listed[name]  # "1 1/2 in sashing, no sashing round the outside" has sashing
    asked = tuple(name for name in asked if name not in filled and name not in listed and name not in chosen)
    reading = Reading(rule, line, placing, options, chosen, asked or in_unit(rule, line), listed, counts)
    reading.taken = before - {value.number for value in values}
    reading.heard = frozenset(spot for match in mine for spot in range(match.first, match.last))
    reading.score = score(reading, mine, kept or {}) - passed_over(reading, matches)
    return reading


class Spoken(NamedTuple):
    """What a line's words say to a rule, whatever its numbers are.

    mine: the phrases that mean something to it. heard: those that may speak for a number. nothing: inputs said to be none.
    """

    mine: list[Match]
    options: dict[str, list[Match]]
    chosen: Mapping[str, tuple[str, ...]]
    nothing: Mapping[str, Given]
    asked: tuple[str, ...]
    heard: Words


def _hear(rule: Rule, line: Line, matches: list[Match], untold: bool) -> Spoken:
    """What the words say. untold: nothing is told, now or before, to work an input back from."""
    mine = _of_rule(rule, line, matches)
    options, chosen = _options(line, mine)
    nothing, denied = _none_of(rule, line, mine)
    asked = asked_for(rule, line, mine)
    if untold:
        asked = tuple(name for name in asked if rule.input(name) is None)
    heard = [match for match in _heard_as_asked(rule, mine, asked[:1]) if match.first not in denied]
    return Spoken(mine, options, chosen, nothing, asked, Words.of(rule, line, heard))


def _still_needed(rule: Rule, placing: Placing, known: set[str]) -> list[str]:
    """Inputs without a default that nothing fills yet."""
    filled = known | {slot.name for slots in placing.spots.values() for slot in slots}
    return [item.name for item in lacking(rule, filled)]


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


def _options(line: Line, matches: list[Match]) -> tuple[dict[str, list[Match]], dict[str, tuple[str, ...]]]:
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
        if len(keys) > 1 and EITHER.isdisjoint(line.words):
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


def _none_of(rule: Rule, line: Line, matches: list[Match]) -> tuple[dict[str, Given], set[int]]:
    """Inputs said to be nothing ("no seam allowance", "without ease"), where nothing is in their range; and where they are said."""
    found, denied = {}, set[int]()
    for match in matches:
        before = match.first - (line.words[match.first - 1 : match.first] in BEFORE_NOTHING)
        said_before = before > 0 and line.words[before - 1] in NOTHING
        taken = line.words[match.last : match.last + 1] in TAKEN and line.words[before - 1] in TAKES if before > 0 else False
        if not said_before and not taken and line.words[match.last : match.last + 1] not in SAID_AFTER:
            continue
        for tag in match.tags:
            item = rule.input(tag.name) if tag.what == "role" else None
            if item is not None and item.sane.startswith("0 ") and item.kind in (LENGTH, PERCENT):
                text = f"no {' '.join(line.words[match.first : match.last])}"
                found[item.name] = Given(Fraction(0), "", text)
                denied.update(range(match.first, match.last))
    return found, denied


def denied_in(reading: Reading, matches: list[Match]) -> set[str]:
    """The measures that a line says there are none of, and that the reading's rule cannot take as nothing."""
    rule, line, denied = reading.rule, reading.line, set()
    chosen = {spot for found in reading.options.values() for match in found for spot in range(match.first, match.last)}
    for match in matches:
        if not chosen.isdisjoint(range(match.first, match.last)) or any(tag.name in reading.listed for tag in match.of(rule.topic)):
            continue
        before = match.first - (line.words[match.first - 1 : match.first] in BEFORE_NOTHING)
        if before > 0 and line.words[before - 1] in NOTHING:
            items = (rule.input(tag.name) for tag in match.of(rule.topic) if tag.what == "role")
            denied |= {item.name for item in items if item is not None and item.kind is LENGTH and not item.sane.startswith("0 ")}
    return denied


def _states(placing: Placing, prefer: Mapping[str, float]) -> bool:
    """Whether a number was taken for a result told, and not in the place of one that was told before."""
    return any(slot.stated and slot.name not in prefer for slots in placing.spots.values() for slot in slots)


def reads_list(rule: Rule, line: Line, matches: list[Match]) -> bool:
    """Whether a line holds a list of several things of the kind that a rule takes."""
    for item in rule.inputs:
        reader = reader_of(item.kind.name) if item.kind.name in PLAIN else None
        if reader is not None and things(reader(item, line, line.values, _of_rule(rule, line, matches))[0]) > 1:
            return True
    return False


def _of_rule(rule: Rule, line: Line, matches: list[Match]) -> list[Match]:
    """The phrases that mean something to a rule, the longest where one lies in another."""
    mine = [Match(match.first, match.last, tags, match.weight, match.entry) for match in matches if (tags := match.of(rule.topic))]
    return _longest(mine, line.at_value)


