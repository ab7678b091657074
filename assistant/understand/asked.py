"""What a question asks for: which result, which unknown input, and in which unit."""

from __future__ import annotations

from rules.engine.buying import IN_HAND, SHOP_STEP
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import CHOICE, COUNT, LENGTH, MONEY

from .asking import ASKING, HOW_MANY, IS, as_typed, asking, asks_before, asks_in, could_answer, counted, inside, sought
from .beside import subject_of
from .lexicon import HOW_AXIS, Match, Tag
from .tokens import FILLERS, LINKS, stem
from .unit_asked import UNITS_ASKED
from .values import Line

SINGLES_OUT = frozenset(("how", "what", "which", "whats", "whose"))
NOT_COUNTED = frozenset(("of", "the", "those", "these", "more", "extra", "whole", "in", "x", "by", "long", "wide"))
AND = frozenset(("and", "n", "&", "plus", "x", "by", "or", "/", ","))
JOINED = frozenset(("and", "n", "&", "plus"))
BETWEEN = frozenset((",", "the", "a", "its", "how", "much", "many", "what", "which", "as", "also", "in"))
BOUGHT_BY = frozenset(("yard", "yd", "metre", "m"))
# What is asked for this plainly may lead, even before a second thing asked for more plainly.
PLAINLY = 1.15
COUNTED_NEXT = 1.7
COUNTED = 1.0
OF_THEM: tuple[list[str], ...] = ([], ["do"], ["will"], ["would"], ["can"], ["should"], ["must"], ["are"], ["is"], ["?"])
# "What is the longest skirt I can get" asks for the length: as typed, for folded the word says no more than "long".
MOST = {"longest": "length", "widest": "width", "deepest": "depth", "tallest": "height", "narrowest": "width", "highest": "height"}
AT_MOST = 1.8
SUBJECT = 1.9
PAST_THE_QUESTION = 0.6  # "where is the stitching line? Keep an allowance in mind for the cutting line"
COSTS = 2.2  # "what will the cloth cost" asks what it costs, and not for the cloth


# Told, never asked for: what is in hand, and the step a shop cuts by.
NEVER_ASKED = frozenset((IN_HAND.name, SHOP_STEP.name))


def asked_for(rule: Rule, line: Line, matches: list[Match]) -> tuple[str, ...]:
    """Names of the steps (or, for backwards, inputs) asked for, the likeliest first; empty when nothing particular is.

    matches: the phrases that mean something to the rule. A plan is wanted whole, unless an asking word singles something out.
    """
    if rule.parts and not any(word in SINGLES_OUT for word in line.words):
        return ()
    scores: dict[str, float] = {}
    spots: dict[str, tuple[int, int]] = {}
    longer = [match for match in matches if match.last - match.first > 1]
    asks_how = "how" in line.words
    asked_until = max((spot for spot, word in enumerate(line.words) if word == "?"), default=0)
    asked_until = asked_until if ASKING.isdisjoint(line.words[asked_until:]) else 0
    told = _told_of(line, matches)
    for match in matches:
        tags = [tag for tag in match.tags if tag.what in ("result", "role")]
        if not tags or inside(match, longer):
            continue
        how_many = counted(line, match)
        names_topic = len(tags) < len(match.tags) and any(tag.what == "topic" for tag in match.tags)
        strength = (asking(line, match, names_topic) or how_many) * (PAST_THE_QUESTION if match.first > asked_until > 0 else 1.0)
        subject = _subject(line, match) if asks_how else ""
        if strength <= 0 and not subject:
            continue
        strength = max(strength, _opening(rule, line, match, tags)) if strength else 0.0
        for tag in tags:
            if tag.what == "role" and (tag.name in NEVER_ASKED or not (_sought_count(rule, tag.name) if how_many else sought(line, match))):
                continue
            if tag.name in told or not could_answer(rule, tag.name, line, match):
                continue
            bonus = 0.35 if tag.what == "result" else 0.0
            plainly = max(strength, SUBJECT if subject and _measured_so(rule.step(tag.name), subject) else 0.0)
            score = plainly * (0.5 + match.weight) + bonus if plainly else 0.0
            if score > scores.get(tag.name, 0.0):
                scores[tag.name], spots[tag.name] = score, (match.first, match.last)
    if asks_how:
        _by_how(rule, line, scores, spots)
    _by_most(rule, line, scores, spots)
    opens = any(match.first == 0 and any(tag.what == "topic" for tag in match.tags) for match in matches)
    if opens and ["and", "is", "it", "enough"] in (line.words[spot : spot + 4] for spot in range(len(line.words))):
        return ()  # "ease at the hip, and is it enough": the rule's own first answer leads
    ranked = sorted((name for name in scores if scores[name] >= 0.9), key=lambda name: -scores[name])
    ranked = _of_what_is_asked(rule, line, _in_order_said(line, ranked, scores, spots))
    names = [match for match in matches if _opens_a_clause(line, match) and any(tag.what == "topic" for tag in match.tags)]
    if ranked and names:
        last = max(match.last for match in names)
        if last < spots[ranked[0]][0] and _in_one_breath(line.words[last : spots[ranked[0]][0]], JOINED):
            return (rule.answers[0], *ranked)  # "button stand and finished lap": the rule's own first answer, and the lap
    return tuple(ranked)


def _opens_a_clause(line: Line, match: Match) -> bool:
    """Whether a phrase opens the line, or a sentence in it: "..., both cm. ease, and as a percentage?"."""
    return match.first == 0 or line.words[match.first - 1] in (".", ";", ":", "?")


def _told_of(line: Line, matches: list[Match]) -> set[str]:
    """The results that are told and not asked: each opens a sentence whose verb tells a number of it."""
    subjects = {subject_of(line, value) for value in line.values}
    opening = [match for match in matches if match.first in subjects and match.last - match.first > 1]
    return {tag.name for match in opening for tag in match.tags if tag.what == "stated"}


def _sought_count(rule: Rule, name: str) -> bool:
    """Whether an input may be what is asked where its size is told before it: "how many 40 cm ties can I cut"."""
    item = rule.input(name)
    return item is not None and item.kind is COUNT and item.noun != ""


def _subject(line: Line, match: Match) -> str:
    """The axis of "how wide is ..." when a phrase is what that asks about: only small words and small counts stand between."""
    for spot in range(match.first - 1, max(-1, match.first - 10), -1):
        if line.words[spot] in IS and line.words[spot - 2 : spot - 1] == ["how"] and line.words[spot - 1] in HOW_AXIS:
            return HOW_AXIS[line.words[spot - 1]]
        if line.words[spot] not in FILLERS and not (spot in line.at_value and line.at_value[spot].main.bare):
            return ""
    return ""


def _measured_so(step: Step | None, axis: str) -> bool:
    """Whether a result is a length that an axis could be asked of."""
    return step is not None and step.kind is LENGTH and step.axis in ("", axis)


def _opening(rule: Rule, line: Line, match: Match, tags: list[Tag]) -> float:
    """How much a result is what is asked by its place or kind: it opens the question ("strip width to cut ..."), or it is
    money in a question ("what does it cost at $12 a yard")."""
    results = [step for tag in tags if tag.what == "result" and (step := rule.step(tag.name))]
    if not results:
        return 0.0
    if any(step.kind is MONEY for step in results) and any(word in ("what", "how") for word in line.words):
        verb = bool({"cost", "pay"}.intersection(line.words[match.first : match.last]))
        return COSTS if verb and asks_before(line.words, match.first) else 1.3
    return 1.0 if match.first == 0 and ASKING.isdisjoint(line.words) else 0.0


def _in_order_said(line: Line, ranked: list[str], scores: dict[str, float], spots: dict[str, tuple[int, int]]) -> list[str]:
    """Of two things asked for, in one breath ("cut width and height") or in two ("how much can I get, and what change"),
    the one said first leads."""
    if not ranked or ranked[0] not in spots:
        return ranked
    leads, ends = spots[ranked[0]]
    for name in sorted((name for name in spots if name != ranked[0]), key=lambda name: -scores[name]):
        first, last = spots[name]
        breath = _in_one_breath(line.words[last:leads], AND if name in ranked else JOINED) or _in_a_list(line, last, leads, spots)
        again = last < leads and scores[name] >= PLAINLY and asks_before(line.words, first) and _asks_again(line.words, last, ends)
        by_itself = line.words[last : last + 1] == ["?"] and line.words[first - 1] in (".", "?", ",", ";", ":")
        again = again or (last < leads and scores[name] >= PLAINLY and by_itself and "?" in line.words[ends:])  # "sides? corners?"
        if breath or again:
            return [name, *(other for other in ranked if other != name)]
    return ranked


def _of_what_is_asked(rule: Rule, line: Line, ranked: list[str]) -> list[str]:
    """The same, a count leading where the first that is asked is "how many": of the big squares there are so many, not so large."""
    lead = rule.step(ranked[0]) if ranked else None
    if lead is None or lead.kind is not LENGTH or not _asks_count(line):
        return ranked
    counts = [name for name in ranked if (step := rule.step(name)) is not None and step.kind is COUNT]
    return [*counts[:1], *(name for name in ranked if name not in counts[:1])]


def _first_asking(line: Line) -> list[str]:
    """The first asking word of a line, and the two words behind it."""
    first = next((spot for spot, word in enumerate(line.words) if word in ASKING and spot not in line.at_value), len(line.words))
    return line.words[first : first + 3]


def _asks_count(line: Line) -> bool:
    """Whether what a line asks first is "how many", and not of a unit."""
    asking = _first_asking(line)
    return tuple(asking[:2]) == HOW_MANY and not (asking[2:] and asking[2] in UNITS_ASKED)


def asks_another_kind(rule: Rule, line: Line, asked: tuple[str, ...]) -> bool:
    """Whether the result that would lead is no answer to the first question: a length to "how many", a count to "how wide"."""
    lead = rule.step(asked[0]) if asked else rule.step(rule.answers[0])
    if lead is None or lead.kind not in (LENGTH, COUNT):
        return False
    if lead.kind is LENGTH:
        return _asks_count(line)
    asking = _first_asking(line)
    return asking[:1] == ["how"] and asking[1:2] != ["far"] and asking[1:2] != ["long"] and "".join(asking[1:2]) in HOW_AXIS


def _in_one_breath(between: list[str], joints: frozenset[str]) -> bool:
    """Whether two things are asked for together: "cut width and height", "radius, and how much cloth"."""
    return any(word in joints for word in between) and all(word in joints or word in BETWEEN for word in between)


def _in_a_list(line: Line, first: int, last: int, spots: dict[str, tuple[int, int]]) -> bool:
    """Whether only "and", small words and words of other results lie between two: "centre square, and the squares for the corners"."""
    between = range(first, last)
    if JOINED.isdisjoint(line.words[first : first + 1]) and line.words[first : first + 1] != [","]:
        return False  # "strip length and width" is of one strip
    if JOINED.isdisjoint(line.words[first:last]) or any(spot in line.at_value for spot in between):
        return False
    covered = {spot for begins, closes in spots.values() for spot in range(begins, closes)}
    small = LINKS - {"i", "is", "are", "was"} | BETWEEN - ASKING | JOINED
    return all(spot in covered or line.words[spot] in small for spot in between)


def _asks_again(words: list[str], first: int, last: int) -> bool:
    """Whether a new question begins between two places: "and" or a stop, and an asking word of its own."""
    between = words[first:last]
    return any(word in ("and", "n", "&", "?", ".", ",") for word in between) and any(word in ("what", "how", "which") for word in between)


def unknown_count(line: Line, heard: frozenset[int]) -> bool:
    """Whether the question is "how many" of something that means nothing here."""
    words = line.words
    for spot in range(len(words) - 2):
        if words[spot] == "how" and words[spot + 1] == "many" and spot not in line.at_value:
            after = spot + 2
            while after < len(words) and (after in line.at_value or words[after] in NOT_COUNTED):
                after += 1
            if after < len(words) and words[after][:1].isalpha() and after not in heard and words[after] not in FILLERS:
                return words[after] not in UNITS_ASKED and words[after] not in ("stitch", "st", "sts", "row", "round")
    return False


def _by_how(rule: Rule, line: Line, scores: dict[str, float], spots: dict[str, tuple[int, int]]) -> None:
    """How long, how wide, how many, how much: results (or inputs) with that axis, noun or use."""
    words = line.words
    every: tuple[Input | Step, ...] = (*rule.steps, *rule.inputs)
    first = rule.step(rule.answers[0])
    counts = first is not None and first.kind.base in ("1", "st", "row", "text")  # what is counted leads anyway
    for spot in range(len(words) - 1):
        if words[spot] != "how" or spot in line.at_value:
            continue
        following = words[spot + 1]
        axis = HOW_AXIS.get(following, "")
        of_them = following == "many" and words[spot + 2 : spot + 3] in OF_THEM and not counts  # "how many do I need?"
        measured = following == "many" and words[spot + 2 : spot + 3] and words[spot + 2] in BOUGHT_BY
        for declared in every:
            gain = 0.0
            if axis and declared.axis == axis:
                gain = 1.6 if isinstance(declared, Step) else 1.2
            elif following == "many" and isinstance(declared, Step) and _counts_next(line, spot + 2, declared.noun):
                gain = COUNTED_NEXT
            elif of_them and isinstance(declared, Step) and declared.kind is COUNT and declared.name in rule.answers:
                gain = COUNTED
            elif (following == "much" or measured) and isinstance(declared, Step):
                if declared.rounding is not None and declared.rounding.bought:
                    gain = 1.2
                elif declared.kind is MONEY:
                    gain = 0.5
            if gain > scores.get(declared.name, 0.0):
                scores[declared.name], spots[declared.name] = gain, (spot, spot + 2)


def _by_most(rule: Rule, line: Line, scores: dict[str, float], spots: dict[str, tuple[int, int]]) -> None:
    """What is the longest, the widest: inputs with that axis, which may be so and no more."""
    for spot, word in enumerate(line.words[1:], start=1):
        if word not in HOW_AXIS or spot in line.at_value or "the" not in line.words[max(0, spot - 1) : spot]:
            continue
        axis = MOST.get(as_typed(line, spot), "")
        if not axis or not asks_in(line.words, max(0, spot - 5), spot):
            continue
        for item in rule.inputs:
            if item.axis == axis and item.kind is LENGTH and scores.get(item.name, 0.0) < AT_MOST:
                scores[item.name], spots[item.name] = AT_MOST, (spot, spot + 1)


def _counts_next(line: Line, first: int, noun: str) -> bool:
    """Whether what is counted follows "how many" soon, sizes and kinds between ("how many 2 in knife pleats")."""
    soon = (spot for spot in range(first, min(first + 6, len(line.words))) if spot not in line.at_value)
    return bool(noun) and any(line.words[spot] == stem(noun) for spot in soon)


def could_be_unknown(rule: Rule, name: str) -> bool:
    """Whether an input can be asked for, backwards."""
    item = rule.input(name)
    return isinstance(item, Input) and item.kind is not CHOICE and name not in rule.no_unknown and item.kind is not None
