"""Each number put in one place of a rule: by unit, by the words beside it, by order and by sense."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from itertools import pairwise
from typing import NamedTuple

from rules.engine.declare import Rule

from .beside import AFTER_ITS_NUMBER, OF_A_WIDTH
from .lexicon import Match
from .options import UNPLACED, Option, Places, options_of
from .slots import Mention, Slot, mentions_of, places_of
from .values import Line, Value

MOST_STEPS = 4000
MANY, MOST_OPTIONS, FEW_OPTIONS = 6, 6, 3  # with many numbers only the best places of each are tried
UNPLACED_SOFT = -0.4
# How much likelier "3 m of 140 cm" is a length and its width than two things apart.
PAIRED = 1.7
Best = tuple[float, dict[int, Option | None]]
WITH_ITS_WIDTH = frozenset(("of", "fabric", "cloth", "with", "in", "at", "that", "is", "a", "width"))
IN_WIDTH = (["in", "width"], ["with", "width"], ["in", "a", "width", "of"], ["with", "a", "width", "of"], ["width"])
EITHER = frozenset(("or", "versus", "vs"))
AND_EITHER = EITHER | {"and", "with", "against"}
ENDS = frozenset(("?", ".", "please", "cm", "inch", "percent"))
# "Fewer strips with 42 in than with 40?" sets the two beside each other.
COMPARING = frozenset(("fewer", "less", "more", "cheaper", "better", "difference"))
BESIDE_EACH_OTHER = (("and", "if"), ("compared", "with"), ("compared", "to"))
# How much likelier two values that are set beside each other are for the same place.
ALIKE = 1.0

@dataclass(slots=True)
class Placing:
    """Where every value went. spots: value number -> slots; unplaced: values with no place; score: how well it fits.

    spoken: how many values have a word of their own that puts them where they are.
    """

    spots: dict[int, tuple[Slot, ...]] = field(default_factory=dict)
    unplaced: list[Value] = field(default_factory=list)
    score: float = 0.0
    spoken: int = 0


class Words(NamedTuple):
    """The phrases of a line that may speak for a rule's numbers, and the places they speak for."""

    heard: list[Match]
    mentions: list[Mention]
    by_slot: Mapping[str, list[Mention]]

    @classmethod
    def of(cls, rule: Rule, line: Line, heard: list[Match]) -> Words:
        """What the phrases say to a rule."""
        mentions = mentions_of(rule, line, heard)
        by_slot: dict[str, list[Mention]] = {}
        for mention in mentions:
            by_slot.setdefault(mention.slot, []).append(mention)
        return cls(heard, mentions, by_slot)


def place(rule: Rule, line: Line, values: list[Value], spoken: Words, asked_inputs: frozenset[str], system_hint: str,
          prefer: Mapping[str, float] | None = None, told: bool = True,
          chosen: Mapping[str, tuple[str, ...]] | None = None) -> Placing:
    """The best placing of the values in the rule's slots. prefer: slots that a value is likelier to be for (those asked for).

    told: whether a value may be a result that was told, so that the rule runs backwards. chosen: the options chosen.
    """
    slots, by_name = places_of(rule, told)
    if chosen and any(not _possible(slot, chosen) for slot in slots if slot.declared.when):
        slots = tuple(slot for slot in slots if _possible(slot, chosen))
        by_name = {slot.name: slot for slot in slots}
    by_slot = spoken.by_slot
    roles_lead = _roles_lead(line, values, spoken.mentions)
    duos = one_of_another(line, values) if rule.pairs else ()
    numbers = tuple((values[one].number, values[other].number) for one, other in duos)
    squares = _squares(line, spoken.heard) if rule.sizes and "square" in line.words else frozenset[int]()
    starts = frozenset(mention.first for mention in spoken.mentions)
    places = Places(rule, line, slots, by_name, by_slot, asked_inputs, system_hint, prefer or {}, roles_lead, numbers, squares, starts)
    most = MOST_OPTIONS if len(values) <= MANY else FEW_OPTIONS
    options = [options_of(places, value)[:most] for value in values]
    score, best = _best_of(rule, line, values, options)
    placing = Placing(score=score)
    for index, option in best.items():
        if option is None:
            placing.unplaced.append(values[index])
        else:
            placing.spots[values[index].number] = option.slots
            placing.spoken += option.spoken
    placing.unplaced.sort(key=lambda value: value.number)
    return placing


def _squares(line: Line, matches: list[Match]) -> frozenset[int]:
    """Where "square" stands and means nothing of its own to the rule."""
    known = {spot for match in matches for spot in range(match.first, match.last)}
    return frozenset(spot for spot, word in enumerate(line.words) if word == "square" and spot not in known)


def _roles_lead(line: Line, values: list[Value], mentions: list[Mention]) -> bool:
    """Whether each number has its role word straight before it ("bust 92 dress 98"): then none is named by what follows.

    "Triangles 4 in high cover a quilt 40 x 48 in" has words before its numbers and yet names one by what follows.
    """
    if len(values) < 2:
        return False
    before = {mention.last for mention in mentions}
    if any(one.first == value.last and "than" in line.words[one.first : one.last + 1] for value in values for one in mentions):
        return False  # "5 cm shorter than the waist" is named by what follows
    after = {mention.first for mention in mentions if not _closes(line, mention)}
    leading = {mention.first for mention in mentions if mention.last - mention.first > 1}  # "high bust 37" names what follows
    if _alternate(values, mentions):
        return True
    if any(value.last not in leading and AFTER_ITS_NUMBER.intersection(line.words[value.last : value.last + 1]) for value in values):
        return False
    return all(value.first in before for value in values) and not all(value.last in after for value in values)


def _alternate(values: list[Value], mentions: list[Mention]) -> bool:
    """Whether words and numbers take turns, and the last number has no word but that before it: "waist 25 in long 20 in"."""
    spans = {(mention.first, mention.last) for mention in mentions}
    firsts = {first for first, _ in spans}
    between = [(one.last, other.first) for one, other in pairwise(values)]
    led = any(last == values[0].first and first == 0 for first, last in spans)
    return led and all(span in spans for span in between) and values[-1].last not in firsts


def _closes(line: Line, mention: Mention) -> bool:
    """Whether a phrase ends the line, and so may be what is asked: "full bust 40 high bust 37 in, cup?"."""
    return all(word in ENDS for word in line.words[mention.last :])


def _possible(slot: Slot, chosen: Mapping[str, tuple[str, ...]]) -> bool:
    """Whether a place is there at all under the options chosen: a circle has no height."""
    for name, wanted in slot.declared.when.items():
        options = (wanted,) if isinstance(wanted, str) else wanted
        if name in chosen and not set(chosen[name]) & set(options):
            return False
    return True


def _alternatives(line: Line, values: list[Value]) -> dict[int, frozenset[int]]:
    """Which values are alternatives of one another: "in 112 cm cloth or in 150 cm cloth"."""
    twins: dict[int, frozenset[int]] = {}
    for index in range(1, len(values)):
        before, after = values[index - 1], values[index]
        between = line.words[before.last : after.first]
        either = EITHER if "compare" not in line.words else AND_EITHER
        compared = not either.isdisjoint(between) or ("than" in between and not COMPARING.isdisjoint(line.words))
        compared = compared or any(pair in BESIDE_EACH_OTHER for pair in pairwise(between))
        if not compared or before.shape != "one" or after.shape != "one":
            continue
        for one, other in ((index - 1, index), (index, index - 1)):
            twins[one] = twins.get(one, frozenset()) | {other}
    return twins


def one_of_another(line: Line, values: list[Value]) -> tuple[tuple[int, int], ...]:
    """Values with a word between them that says one is of the other: "3 m of 140 cm", "2 m on 150 wide"."""
    return tuple(
        (index - 1, index)
        for index in range(1, len(values))
        if _of_its_width(line.words[values[index - 1].last : values[index].first])
    )


def _of_its_width(between: list[str]) -> bool:
    """Whether words between two values say that the second is the width of the first: "of", "of fabric with"."""
    if between in OF_A_WIDTH or between in IN_WIDTH:
        return True
    return between[:1] == ["of"] and 1 < len(between) <= 4 and WITH_ITS_WIDTH.issuperset(between)


def _from_to(line: Line, values: list[Value]) -> tuple[tuple[int, int], ...]:
    """Values said as "from 90 to 70"."""
    return tuple(
        (index - 1, index)
        for index in range(1, len(values))
        if line.words[values[index - 1].last : values[index].first] == ["to"] and line.words[max(0, values[index - 1].first - 1)] == "from"
    )


@dataclass(frozen=True, slots=True)
class Pairing:
    """duos: indices of values with "of" between them; pairs: the inputs of the rule that such a duo likely fills."""

    duos: tuple[tuple[int, int], ...]
    pairs: frozenset[tuple[str, str]]

    @property
    def most(self) -> float:
        """The most it can add to a score."""
        return PAIRED * len(self.duos) if self.pairs else 0.0

    def bonus(self, chosen: Mapping[int, Option | None]) -> float:
        """What the duos that fill a pair add."""
        if not self.pairs:
            return 0.0
        return sum(PAIRED for one, other in self.duos if self._is_pair(chosen.get(one), chosen.get(other)))

    def _is_pair(self, one: Option | None, other: Option | None) -> bool:
        return one is not None and other is not None and (one.slots[0].name, other.slots[0].name) in self.pairs


def _best_of(rule: Rule, line: Line, values: list[Value], options: list[list[Option]]) -> Best:
    """The best placing of all values together, and its score."""
    duos = (*one_of_another(line, values), *_from_to(line, values)) if len(values) > 1 and (rule.pairs or rule.spans) else ()
    if not duos and (firsts := _undisputed(options)) is not None:
        return sum(option.score for option in firsts), dict(enumerate(firsts))
    order = sorted(range(len(values)), key=lambda index: -(options[index][0].score if options[index] else 0))
    return _search(values, options, order, _alternatives(line, values), Pairing(duos, frozenset((*rule.pairs, *rule.spans))))


def _search(values: list[Value], options: list[list[Option]], order: list[int], twins: Mapping[int, frozenset[int]],
            pairing: Pairing) -> Best:  # fmt: skip
    """Branch and bound over the ways to place each value; no slot (but a list's, or for twins) and no mention is used twice."""
    best_score = float("-inf")
    best: dict[int, Option | None] = {}
    bound = [0.0] * (len(order) + 1)
    for depth in range(len(order) - 1, -1, -1):
        found = options[order[depth]]
        bound[depth] = bound[depth + 1] + max(0.0, found[0].score if found else 0.0)
    most = pairing.most + ALIKE * len(twins)
    steps = 0

    def go(depth: int, score: float, used: frozenset[str], heard: frozenset[int], chosen: dict[int, Option | None]) -> None:
        nonlocal best_score, best, steps
        steps += 1
        if depth == len(order):
            score += pairing.bonus(chosen)
            if score > best_score:
                best_score, best = score, dict(chosen)
            return
        index, rest = order[depth], bound[depth + 1] + most
        for option in options[index]:
            if score + option.score + rest <= best_score or steps > MOST_STEPS:
                break  # the options come best first: none of the others can do better
            takes = option.names
            beside = any((twin := chosen.get(other)) and twin.slots == option.slots for other in twins.get(index, ()))
            if option.mention >= 0 and option.mention in heard and not beside:
                continue
            if takes & used and not beside:
                continue
            chosen[index] = option
            spoken = heard | {option.mention} if option.mention >= 0 else heard
            go(depth + 1, score + option.score + ALIKE * beside, used | takes, spoken, chosen)
        without = score + (UNPLACED_SOFT if values[index].soft or values[index].aside else UNPLACED)
        if without + rest > best_score:
            chosen[index] = None
            go(depth + 1, without, used, heard, chosen)
        chosen.pop(index, None)

    go(0, 0.0, frozenset(), frozenset(), {})
    if not best and values:
        best = dict.fromkeys(range(len(values)))
    return best_score, best


def _undisputed(options: list[list[Option]]) -> list[Option] | None:
    """The best option of each value, when no two of them want the same place or word: nothing can be better then."""
    firsts: list[Option] = []
    used: set[str] = set()
    heard: set[int] = set()
    for found in options:
        if not found or found[0].score < 0 or not used.isdisjoint(found[0].names) or found[0].mention in heard:
            return None
        firsts.append(found[0])
        used |= found[0].names
        if found[0].mention >= 0:
            heard.add(found[0].mention)
    return firsts
