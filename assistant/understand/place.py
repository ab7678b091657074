"""Each number put in one place of a rule: by unit, by the words beside it, by order and by sense."""

from __future__ import annotations

import math
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from grammar.query import Measure
from rules.engine.buying import BUYING, IN_HAND, told_in_hand
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import ANY, COUNT, LENGTH, RATIO, ROWS, STITCHES, Kind
from rules.engine.literal import bounds

from .lexicon import Match
from .tokens import FILLERS, LEADING, stem
from .values import Line, Value, kinds_of, lacks_length, rough_value

UNPLACED = -6.0
MOST_STEPS = 1200
MANY, MOST_OPTIONS, FEW_OPTIONS = 6, 6, 3  # with many numbers only the best places of each are tried
OUT_OF_SENSE = -3.0
LATER = 0.03
IN_ORDER = 0.001  # other things being equal, numbers are said in the order of their places
MOST_STEPS = 4000
SLACK = 0.999999  # a range's end belongs to it, whatever a float makes of it
UNPLACED_SOFT = -0.4
STATED_COST = 1.6
# How much less the words past "of 140 cm" say of the length before it.
PAST_ITS_WIDTH = 0.8
# How much likelier "3 m of 140 cm" is a length and its width than two things apart.
PAIRED = 1.7
# When an input is asked for, some result must have been told.
STATED_COST_BACKWARDS = 0.8
SECOND_VOICE = 0.2  # two words that speak for a place say a little more than one
AFTER_STOP = 1.5  # a word after a comma seldom speaks for the number before it
# These follow the number they speak of, even with another number straight after them: "1 in wide 50 cm long".
AFTER_ITS_NUMBER = frozenset(("wide", "long", "high", "tall", "deep", "thick"))
THE = (["the"], ["those"], ["these"], ["my"])
EITHER = frozenset(("or", "versus", "vs"))
# How near its words must stand for a number to be taken by an input that is only taken when spoken of.
BESIDE = 0.9
UNCALLED_COST = 1.4  # an optional input (a shop's step), or a number in words, wants a word that speaks for it


@dataclass(frozen=True, slots=True)
class Slot:
    """A place for a number: an input, or a step that the maker may state.

    likely, sane: the ends, in base units, of what a maker would meet there and of what is not refused.
    """

    name: str
    kind: Kind
    declared: Input | Step
    order: int
    stated: bool = False
    likely: tuple[float, float] | None = None
    sane: tuple[float, float] | None = None


@dataclass(frozen=True, slots=True)
class Option:
    """One way to place a value: the slots it fills, how good that is, and the mention that speaks for it.

    spoken: a word beside the value speaks for these slots plainly.
    """

    slots: tuple[Slot, ...]
    score: float
    mention: int = -1
    spoken: bool = False

    @property
    def names(self) -> frozenset[str]:
        """The places it takes up; a list has room for more."""
        return frozenset(slot.name for slot in self.slots if not (isinstance(slot.declared, Input) and slot.declared.many))


@dataclass(slots=True)
class Placing:
    """Where every value went. spots: value number -> slots; unplaced: values with no place; score: how well it fits.

    spoken: how many values have a word of their own that puts them where they are.
    """

    spots: dict[int, tuple[Slot, ...]] = field(default_factory=dict)
    unplaced: list[Value] = field(default_factory=list)
    score: float = 0.0
    spoken: int = 0


@dataclass(frozen=True, slots=True)
class Mention:
    """A role word met in the question: it speaks for a slot.

    leads: it belongs to the number after it and never to the one before: from, to, at, until.
    """

    number: int
    slot: str
    first: int
    last: int
    stated: bool
    weight: float
    leads: bool = False


@lru_cache(maxsize=512)
def slots_of(rule: Rule) -> list[Slot]:
    """Every place a number can go in a rule, inputs first."""
    slots = [
        Slot(item.name, item.kind, item, order, likely=_ends(item.usual or item.practice.partition(" by ")[0]), sane=_ends(item.sane))
        for order, item in enumerate(rule.inputs)
        if item.kind.is_number
    ]
    if all(slot.name in (*rule.no_unknown, *BUYING) for slot in slots):
        return slots  # nothing could be worked back to, so no result is told
    in_hand = told_in_hand(rule)
    slots += [
        Slot(step.name, step.kind, step, len(slots) + order, stated=True, sane=_ends(step.sane))
        for order, step in enumerate(rule.steps)
        if step.kind.is_number and step.kind is not ANY and (step.name in rule.answers or step.stated) and step.name != in_hand
    ]
    return slots


def _ends(text: str) -> tuple[float, float] | None:
    """The two ends of a declared range, an open one at infinity; None for no range."""
    if not text:
        return None
    low, high = bounds(text)
    return (-math.inf if low is None else float(low), math.inf if high is None else float(high))


@lru_cache(maxsize=512)
def _nouns(rule: Rule) -> frozenset[str]:
    """What a rule's counts count."""
    every: tuple[Input | Step, ...] = (*rule.inputs, *rule.steps)
    return frozenset(stem(declared.noun) for declared in every if declared.noun)


def mentions_of(rule: Rule, line: Line, matches: list[Match]) -> list[Mention]:
    """The role, result and stated words of the question that speak for this rule's slots; longer phrases win."""
    mine = [(match, tag) for match in matches for tag in match.tags if tag.topic == rule.topic and tag.what in ("role", "result", "stated")]
    kept = []
    for number, (match, tag) in enumerate(mine):
        inside = any(
            other.first <= match.first and other.last >= match.last and (other.last - other.first) > (match.last - match.first)
            for other, _ in mine
        )
        if not inside:
            words = line.words[match.first : match.last]
            leads = all(word in LEADING for word in words) or words[-1] == "to"  # "down to", "increase to"
            kept.append(Mention(number, tag.name, match.first, match.last, tag.what != "role", match.weight, leads))
    return kept


def place(rule: Rule, line: Line, values: list[Value], matches: list[Match], asked_inputs: frozenset[str], system_hint: str,
          prefer: Mapping[str, float] | None = None, told: bool = True,
          chosen: Mapping[str, tuple[str, ...]] | None = None) -> Placing:
    """The best placing of the values in the rule's slots. prefer: slots that a value is likelier to be for (those asked for).

    told: whether a value may be a result that was told, so that the rule runs backwards. chosen: the options chosen.
    """
    slots = [slot for slot in slots_of(rule) if (told or not slot.stated) and _possible(slot, chosen or {})]
    by_name = {slot.name: slot for slot in slots}
    mentions = mentions_of(rule, line, matches)
    by_slot: dict[str, list[Mention]] = {}
    for mention in mentions:
        by_slot.setdefault(mention.slot, []).append(mention)
    options = []
    backward = _roles_lead(line, values, mentions)
    for value in values:
        found = _options(rule, line, value, slots, by_name, by_slot, asked_inputs, system_hint, prefer or {}, backward)
        found.sort(key=lambda option: -option.score)
        options.append(found[: MOST_OPTIONS if len(values) <= MANY else FEW_OPTIONS])
    order = sorted(range(len(values)), key=lambda index: -(options[index][0].score if options[index] else 0))
    pairing = Pairing((*one_of_another(line, values), *_from_to(line, values)), frozenset((*rule.pairs, *rule.spans)))
    best = _search(values, options, order, _alternatives(line, values), pairing)
    placing = Placing(score=best[0])
    for index, option in best[1].items():
        if option is None:
            placing.unplaced.append(values[index])
        else:
            placing.spots[values[index].number] = option.slots
            placing.spoken += option.spoken
    placing.unplaced.sort(key=lambda value: value.number)
    return placing


OF_A_WIDTH = (["of"], ["in"], ["on"])
GROUPED = ("size", "span")


def _roles_lead(line: Line, values: list[Value], mentions: list[Mention]) -> bool:
    """Whether each number has its role word straight before it ("bust 92 dress 98"): then none is named by what follows.

    "Triangles 4 in high cover a quilt 40 x 48 in" has words before its numbers and yet names one by what follows.
    """
    before, after = {mention.last for mention in mentions}, {mention.first for mention in mentions}
    if any(AFTER_ITS_NUMBER.intersection(line.words[value.last : value.last + 1]) for value in values):
        return False
    return len(values) > 1 and all(value.first in before for value in values) and not all(value.last in after for value in values)


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
        if EITHER.isdisjoint(line.words[before.last : after.first]) or before.shape != "one" or after.shape != "one":
            continue
        for one, other in ((index - 1, index), (index, index - 1)):
            twins[one] = twins.get(one, frozenset()) | {other}
    return twins


def one_of_another(line: Line, values: list[Value]) -> tuple[tuple[int, int], ...]:
    """Values with a word between them that says one is of the other: "3 m of 140 cm", "2 m on 150 wide"."""
    return tuple(
        (index - 1, index)
        for index in range(1, len(values))
        if line.words[values[index - 1].last : values[index].first] in OF_A_WIDTH
    )


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


def _search(values: list[Value], options: list[list[Option]], order: list[int],
            twins: Mapping[int, frozenset[int]], pairing: Pairing) -> tuple[float, dict[int, Option | None]]:  # fmt: skip
    """Branch and bound over the ways to place each value; no slot (but a list's, or for twins) and no mention is used twice."""
    best_score = float("-inf")
    best: dict[int, Option | None] = {}
    bound = [0.0] * (len(order) + 1)
    for depth in range(len(order) - 1, -1, -1):
        found = options[order[depth]]
        bound[depth] = bound[depth + 1] + max(0.0, found[0].score if found else 0.0)
    names = {id(option): option.names for found in options for option in found}
    steps = 0

    def go(depth: int, score: float, used: frozenset[str], heard: frozenset[int], chosen: dict[int, Option | None]) -> None:
        nonlocal best_score, best, steps
        steps += 1
        if depth == len(order):
            score += pairing.bonus(chosen)
            if score > best_score:
                best_score, best = score, dict(chosen)
            return
        index, rest = order[depth], bound[depth + 1] + pairing.most
        for option in options[index]:
            if score + option.score + rest <= best_score or steps > MOST_STEPS:
                break  # the options come best first: none of the others can do better
            takes = names[id(option)]
            if option.mention >= 0 and option.mention in heard:
                continue
            if takes & used and not any((twin := chosen.get(other)) and twin.slots == option.slots for other in twins.get(index, ())):
                continue
            chosen[index] = option
            go(depth + 1, score + option.score, used | takes, heard | {option.mention} if option.mention >= 0 else heard, chosen)
        without = score + (UNPLACED_SOFT if values[index].soft else UNPLACED)
        if without + rest > best_score:
            chosen[index] = None
            go(depth + 1, without, used, heard, chosen)
        chosen.pop(index, None)

    go(0, 0.0, frozenset(), frozenset(), {})
    if not best and values:
        best = dict.fromkeys(range(len(values)))
    return best_score, best


def _options(rule: Rule, line: Line, value: Value, slots: list[Slot], by_name: dict[str, Slot], by_slot: dict[str, list[Mention]],
             asked_inputs: frozenset[str], system_hint: str, prefer: Mapping[str, float],
             roles_lead: bool) -> list[Option]:  # fmt: skip
    found: list[Option] = []
    if value.shape in GROUPED or value.main.per is not None:
        found += _group_options(rule, line, value, by_name, by_slot, prefer, system_hint)
    if value.shape == "size" or (value.shape == "span" and found):
        return found
    counted = _counts(rule, line, value) and not _names_a_length(line, value, by_slot, by_name)
    named = set() if roles_lead else {
        name
        for name, mentions in by_slot.items()
        if name in by_name and (not counted or by_name[name].kind in COUNTED_KINDS)
        and any(_names(line, value, mention) for mention in mentions)
        and (fits := _fit(value.main, by_name[name], system_hint)) is not None and fits > OUT_OF_SENSE + 1
    }  # fmt: skip
    things = _counts_things(line, value) and all(mention.first != value.last for mentions in by_slot.values() for mention in mentions)
    soft, kinds, several = value.soft, kinds_of(value.main), value.shape in ("series", "sweep")
    for slot in slots:
        if slot.kind.name not in kinds and slot.kind is not ANY:
            continue
        if (slot.stated and several) or (slot.name in asked_inputs and not slot.stated):
            continue
        fit = _fit(value.main, slot, system_hint)
        if value.main.bare and slot.kind not in COUNTED_KINDS and line.words[value.last : value.last + 2] in OF_THEM:
            continue  # "two of them" is a number of things
        if soft and slot.kind is LENGTH and value.main.bare and line.words[value.first - 1 : value.first] in THE:
            continue  # "each of the two back pieces" gives no length
        if soft and ((slot.stated and not counted) or (slot.kind is LENGTH and isinstance(slot.declared, Input) and slot.declared.many)):
            continue
        if fit is None or (counted and slot.kind not in COUNTED_KINDS):
            continue
        spoken_by = [mention for mention in by_slot.get(slot.name, ()) if not (roles_lead and mention.first >= value.last)]
        affinity, mention = _affinity(line, value, spoken_by, isinstance(slot.declared, Input) and slot.declared.spoken)
        if named and slot.name not in named and slot.name not in prefer and not _led(line, value, spoken_by):
            continue  # "72 in wide" is no length
        if slot.kind is LENGTH and things:
            continue  # "12 napkins" is how many, in a rule that knows of no napkins
        if soft and value.main.bare and value.main.value == 1 and affinity < BESIDE:
            continue  # "each one 6 cm" and "in one piece" give no number
        if _unspoken(value, slot, affinity) and slot.name not in prefer and not _made_from(line, value, slot):
            continue
        if not value.main.bare and affinity < BESIDE and prefer.get(slot.name, 0.0) < 0.5 and lacks_length(value.main, slot.kind):
            continue  # stitches with no length are a tension only where the word is beside them
        score = 1.0 + fit + affinity - 0.04 * slot.order + IN_ORDER * value.number * slot.order + prefer.get(slot.name, 0.0)
        if slot.stated:
            score -= STATED_COST_BACKWARDS if asked_inputs else STATED_COST
            score += LATER * value.number  # what it comes to is said after what it is made from, other things being equal
        elif mention < 0 and soft:
            score -= UNCALLED_COST
        elif mention < 0 and isinstance(slot.declared, Input) and slot.declared.extra:
            score -= 2 * UNCALLED_COST if value.main.bare else UNCALLED_COST if slot.kind in (LENGTH, COUNT, RATIO) else 0.0
        if score > UNPLACED / 2:
            found.append(Option((slot,), score, mention, affinity >= BESIDE))
    return found


def _led(line: Line, value: Value, mentions: Sequence[Mention]) -> bool:
    """Whether a phrase of several words leads straight to a number ("meant for someone 168 cm tall", "up to a 15 in block")."""
    followed = not AFTER_ITS_NUMBER.isdisjoint(line.words[value.last : value.last + 1])  # "inverted pleat 6.5 cm deep"
    start = value.first - (line.words[value.first - 1] in ("a", "an") if value.first else 0)
    return any(
        mention.last in (start, value.first) and not mention.stated
        and not (followed and LEADING.isdisjoint(line.words[mention.first : mention.last]))
        for mention in mentions
        if mention.last - mention.first > 1
    )  # fmt: skip


def _counts_things(line: Line, value: Value) -> bool:
    """Whether a bare whole number stands before a word in the plural, beside numbers that have their units."""
    after = line.words[value.last : value.last + 1]
    if value.shape != "one" or not value.main.bare or value.main.value.denominator != 1 or not after:
        return False
    start, end = line.origin[value.last]
    word = line.text[start:end].lower()
    plural = word.isalpha() and word.endswith("s") and not word.endswith("ss") and not FILLERS.intersection((word, after[0]))
    return plural and any(not other.main.bare for other in line.values)


def _unspoken(value: Value, slot: Slot, affinity: float) -> bool:
    """Whether an input that is only taken when spoken of is not spoken of here, or by a number of no unit."""
    if not (isinstance(slot.declared, Input) and slot.declared.spoken):
        return False
    return affinity < BESIDE or (slot.kind is LENGTH and value.main.bare)


OF_THEM = (["of", "them"], ["of", "those"], ["of", "these"], ["of", "em"])
# A number is not named by the question that follows it ("£7.50/m how much can I get").
ASKING = frozenset(("how", "what", "which", "whats"))
COUNTED_KINDS = (COUNT, STITCHES, ROWS)


def _counts(rule: Rule, line: Line, value: Value) -> bool:
    """Whether a bare whole number counts what follows it: "7 strips" is a number of strips, never their width."""
    if value.shape != "one" or not value.main.bare or value.main.value.denominator != 1 or value.last >= len(line.words):
        return False
    return line.words[value.last] in _nouns(rule)


def _names_a_length(line: Line, value: Value, by_slot: Mapping[str, list[Mention]], by_name: Mapping[str, Slot]) -> bool:
    """Whether what follows a number is said of one thing, and names a length: "a 64 repeat" is no number of repeats."""
    start, end = line.origin[value.last]
    if value.main.value == 1 or line.text[start:end].lower().endswith("s"):
        return False
    return any(
        mention.first == value.last and not mention.stated
        for name, mentions in by_slot.items() if name in by_name and by_name[name].kind is LENGTH
        for mention in mentions
    )  # fmt: skip


def _group_options(rule: Rule, line: Line, value: Value, by_name: dict[str, Slot], by_slot: dict[str, list[Mention]],
                   prefer: Mapping[str, float], system_hint: str) -> list[Option]:
    """The groups of inputs that a size, a span's two ends, or the two parts of a rate can fill."""
    measures = value.members if value.shape in GROUPED else _rate_parts(value.main)
    found = []
    for rank, group in enumerate(rule.spans if value.shape == "span" else rule.sizes):
        if len(group) != len(measures) or any(name not in by_name for name in group):
            continue
        slots = tuple(by_name[name] for name in group)
        fits = [_fit(measure, slot, system_hint) for measure, slot in zip(measures, slots, strict=True)]
        if any(fit is None for fit in fits):
            continue
        near = max((_affinity(line, value, by_slot.get(slot.name, ()))[0] for slot in slots), default=0.0)
        score = 2.4 + near + sum(fit or 0.0 for fit in fits) / len(fits) - 0.1 * rank + prefer.get(group[0], 0.0)
        found.append(Option(slots, score, spoken=near >= BESIDE))
    return found


def _rate_parts(measure: Measure) -> tuple[Measure, ...]:
    """A rate's two numbers apart: "33 stitches across 15 cm" is 33 stitches, and 15 cm."""
    assert measure.per is not None
    above = Measure(measure.parts, measure.text, measure.start, measure.end)
    below = Measure((measure.per,), measure.text, measure.start, measure.end)
    return above, below


def _fit(measure: Measure, slot: Slot, system_hint: str) -> float | None:
    """How well a measure's unit suits a slot's kind, or None when it cannot go there."""
    kind = slot.kind
    if kind is ANY:
        return 0.2
    kinds = kinds_of(measure)
    if kind.name not in kinds:
        return None
    if not measure.bare:
        base = -0.3 if lacks_length(measure, kind) else 0.6 if kinds[0] == kind.name else 0.3
    else:
        base = {"count": 0.15, "ratio": 0.1, "length": 0.0, "stitches": 0.1, "rows": 0.05}.get(kind.name, -0.3)
        if kind is COUNT and measure.value.denominator != 1:
            return None
        if kind in (COUNT, RATIO) and measure.sign == "-":
            base -= 1
        if kind is LENGTH and measure.spelled and measure.value == 1:
            return None  # "one" alone is "one of them", not a length
        if kind is LENGTH and system_hint and measure.value.denominator == 1:
            base -= 0.5  # beside lengths that have their unit, a bare whole number is likelier a count
    return base + _sense(measure, slot, system_hint)


def _sense(measure: Measure, slot: Slot, system_hint: str) -> float:
    """Whether the number is one a maker would meet there: a little for or against."""
    if (slot.likely is None and slot.sane is None) or (measure.bare and slot.kind is LENGTH and not system_hint):
        return 0.0
    value = rough_value(measure, slot.kind, _unit_for_sense(slot.kind, system_hint))
    if slot.sane is not None and not slot.sane[0] * SLACK <= value <= slot.sane[1] / SLACK:
        return OUT_OF_SENSE
    if slot.likely is None:
        return 0.0
    return 0.35 if slot.likely[0] * SLACK <= value <= slot.likely[1] / SLACK else -0.35


def in_sense(measure: Measure, slot: Slot, unit: str) -> bool:
    """Whether a bare number in a unit is not refused in a place; only where what is refused was declared."""
    value = rough_value(measure, slot.kind, unit)
    return slot.sane is None or slot.sane[0] * SLACK <= value <= slot.sane[1] / SLACK


def _names(line: Line, value: Value, mention: Mention) -> bool:
    """Whether a role word stands straight after a value and is not the next one's."""
    if mention.first != value.last or mention.leads:
        return False
    if mention.last in line.at_value and line.words[mention.first] not in AFTER_ITS_NUMBER:
        return False
    return line.words[mention.first] not in ASKING


def _unit_for_sense(kind: Kind, system_hint: str) -> str:
    """The unit a bare number is weighed in: a tension is so many to 10 cm or 4 in."""
    if kind is LENGTH:
        return system_hint
    if kind.base in ("st/mm", "row/mm"):
        return kind.inch if system_hint == "in" else kind.metric
    return ""


def _made_from(line: Line, value: Value, slot: Slot) -> bool:
    """Whether a length is what something is made from: "from 2 yd of 44 in", "out of 3 m of 140 cm", "will 2 m do"."""
    if slot.name != IN_HAND.name:
        return False
    if line.words[value.first - 1 : value.first] == ["will"] and line.words[value.last : value.last + 1] == ["do"]:
        return True
    if not _past_its_width(line, value):
        return False
    return line.words[value.first - 1 : value.first] == ["from"] or line.words[max(0, value.first - 2) : value.first] == ["out", "of"]


def _past_its_width(line: Line, value: Value) -> int:
    """The place after "of 140 cm" behind a length, from where words still speak of it ("1 m of 140 cm enough"); 0 for none."""
    if line.words[value.last : value.last + 1] == ["of"] and value.last + 1 in line.at_value:
        return line.at_value[value.last + 1].last
    return 0


def _affinity(line: Line, value: Value, mentions: Sequence[Mention], spoken: bool = False) -> tuple[float, int]:
    """How strongly the words beside a value speak for a slot, and the mention that does; mentions: those of the slot.

    spoken: the slot is only taken when spoken of, so that words farther on are heard too ("1 m of 140 cm fabric enough").
    """
    best, second, who = 0.0, 0.0, -1
    after = _past_its_width(line, value) if spoken else 0
    for mention in mentions:
        if value.first < mention.first and mention.last < value.last:
            near = 2.8  # between the members of a choice ("in 44 in cloth or in 60 in cloth")
        elif mention.first <= value.first < mention.last:
            near = 2.5  # the number stands inside the phrase ("2 at each end")
        elif mention.first >= value.last:
            if mention.leads:
                continue
            near = 3.0 - line.crossing(value.last, mention.first) * 1.1
            if line.stops(value.last, mention.first) or not ASKING.isdisjoint(line.words[value.last : mention.first]):
                near -= AFTER_STOP  # nor does a word of the question that follows it
            if after and mention.first >= after:
                near = max(near, 3.0 - PAST_ITS_WIDTH - line.crossing(after, mention.first) * 1.1)
        else:
            near = 2.8 - line.crossing(mention.last, value.first)
        near *= 0.55 + 0.45 * min(1.5, mention.weight)
        if near > best:
            best, second, who = near, best, mention.number
        else:
            second = max(second, near)
    return best + SECOND_VOICE * second, who
