"""The ways in which one number can be placed in a rule, each with how good it is."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import NamedTuple

from grammar.query import Measure
from rules.engine.buying import IN_HAND, WIDTHS_OF_CLOTH
from rules.engine.declare import Input, Rule
from rules.engine.kinds import ANY, COUNT, LENGTH, MONEY, PRICE, RATIO, ROWS, STITCHES

from .beside import (
    AFTER_ITS_NUMBER,
    BESIDE,
    BOUGHT_BY,
    affinity_of,
    counts_its_noun,
    counts_things,
    is_subject,
    leads_to,
    made_from,
    names_a_length,
    names_it,
    tells_tension,
)
from .fitting import OUT_OF_SENSE, Fitting, rate_parts
from .slots import Mention, Slot
from .tokens import FILLERS, tokens
from .values import Line, Value, lacks_length

UNPLACED = -6.0
LATER = 0.03
IN_ORDER = 0.001  # other things being equal, numbers are said in the order of their places
STATED_COST = 1.6
# When an input is asked for, some result must have been told.
STATED_COST_BACKWARDS = 0.8
UNCALLED_COST = 1.4  # an optional input (a shop's step), or a number in words, wants a word that speaks for it
THE = frozenset(("the", "those", "these", "my"))
OF_THEM = frozenset(("them", "those", "these", "em"))
MONEYS = (MONEY, PRICE)
GROUPED = ("size", "span")
SEVERAL = ("series", "sweep")
CLOTH_WIDTHS = {"in": (35, 66), "cm": (88, 168)}
WIDTH_COST, TOLD_AS_TENSION = 1.5, 1.5
SIDES = frozenset(("diameter", "width", "height", "depth", "thickness"))
MEASURES = frozenset(("width", "length", "height", "depth", "diameter", "breadth"))
SIDE_WORDS = AFTER_ITS_NUMBER | {"across", "each", "apart", "cut", "finish", "sew", "square"}
WIDE = frozenset(("wide", "width", "across"))
MADE_FROM = 2.0  # how plainly "from 5 m of" speaks of what is in hand
COUNTED_KINDS = (COUNT, STITCHES, ROWS)


class Option(NamedTuple):
    """One way to place a value: the slots it fills, how good that is, and the mention that speaks for it.

    spoken: a word beside the value speaks for these slots plainly. names: the places it takes up; a list has room for more.
    """

    slots: tuple[Slot, ...]
    score: float
    names: frozenset[str]
    mention: int = -1
    spoken: bool = False


@dataclass(slots=True)
class Places:
    """The places of a rule, and what a line says of them.

    by_slot: the mentions of each place. asked_inputs: inputs that are asked for, and so not told. hint: the system of
    the line's measures. prefer: places that a value is likelier to be for. roles_lead: each number has its word before it.
    duos: numbers of values of which one is of the other ("3 m of 140 cm"), in a rule that has such pairs of places.
    squares: where "square" stands and means nothing of its own to the rule. starts: where a mention begins.
    """

    rule: Rule
    line: Line
    slots: Sequence[Slot]
    by_name: Mapping[str, Slot]
    by_slot: Mapping[str, list[Mention]]
    asked_inputs: frozenset[str]
    hint: str
    prefer: Mapping[str, float]
    roles_lead: bool
    duos: tuple[tuple[int, int], ...] = ()
    squares: frozenset[int] = frozenset()
    starts: frozenset[int] = frozenset()


def options_of(places: Places, value: Value) -> list[Option]:
    """Every way to place a value, the best first."""
    found: list[Option] = []
    if value.aside:
        return found
    if value.shape in GROUPED or value.main.per is not None:
        found = _of_groups(places, value, value.members if value.shape in GROUPED else rate_parts(value.main))
    elif value.last in places.squares:
        found = _of_groups(places, value, (value.main, value.main))  # "36 in square" is so much each way
    if not (value.shape == "size" or (value.shape == "span" and found)):
        found += _of_slots(places, value)
    found.sort(key=lambda option: -option.score)
    return found


def _of_slots(places: Places, value: Value) -> list[Option]:
    """The single places a value can go to."""
    line, by_slot, main, soft = places.line, places.by_slot, value.main, value.soft
    bare, backwards = main.bare, bool(places.asked_inputs)
    fitting = Fitting(main, places.hint)
    counted = counts_its_noun(places.rule, line, value) and not names_a_length(line, value, places.by_slot, places.by_name)
    only_counts = counted or (bare and of_them(line, value))
    named = set() if places.roles_lead else _named(places, value, fitting, counted)
    no_length = counts_things(line, value) and all(
        mention.last != value.first for mentions in by_slot.values() for mention in mentions
    )  # "12 napkins" is how many; in "tails 9 knots 2" the tails are 9
    if soft and bare and value.first and line.words[value.first - 1] in THE:
        no_length = True  # "each of the two back pieces" gives no length
    # Things are counted in whole numbers: beside lengths that have their unit, "seam 5/8" gives a length.
    of_length = main.value.denominator != 1 and any(not other.main.bare for other in line.values)
    several = value.shape in SEVERAL
    head, second = _in_duo(places, value)
    following = line.at_value.get(value.last)
    before_measure = following is not None and not following.main.bare  # "two 40 cm envelope cushions" are two
    no_length = no_length or (bare and before_measure and following is not None and _are_several(line, following))
    is_counted = _is_counted(line, value)
    of_times = bare and line.words[value.last : value.last + 1] == ["time"]
    of_stuff = main.unit in BOUGHT_BY and main.per is None and _of_stuff(line, value)
    in_pair = tells_tension(line, value)
    if second and named.isdisjoint(second):
        named = set()  # in "3 yd of 45 in called for" the 3 yd are called for
    found = []
    for slot in places.slots:
        kind, declared = slot.kind, slot.declared
        if kind.name not in fitting.kinds and kind is not ANY:
            continue
        is_length, is_input = kind is LENGTH, not slot.stated
        if of_stuff and is_length and slot.declared.axis in SIDES:
            continue  # "2 m of canvas" is no diameter
        if of_times and kind in (ROWS, LENGTH):
            continue  # "12 times" is no number of rows
        if (is_length and no_length) or (only_counts and kind not in COUNTED_KINDS):
            continue
        if (bare and slot.stated and kind is MONEY) or (kind is COUNT and is_counted):
            continue  # what it comes to is told in money
        if slot.name in places.asked_inputs if is_input else several or (soft and not counted):
            continue
        if soft and is_length and is_input and slot.many:
            continue
        fit = fitting.of(slot)
        if fit is None:
            continue
        affinity, mention = 0.0, -1
        spoken_by = by_slot.get(slot.name)
        if spoken_by and places.roles_lead:
            spoken_by = [one for one in spoken_by if one.first < value.last]
        if spoken_by and second and slot.name not in second:
            spoken_by = [one for one in spoken_by if one.first != value.last]
        if spoken_by:
            affinity, mention = affinity_of(line, value, spoken_by, slot.spoken or head)
        drawn = places.prefer.get(slot.name)
        if named and slot.name not in named and drawn is None and not (spoken_by and leads_to(line, value, spoken_by)):
            continue  # "72 in wide" is no length
        if soft and bare and main.value == 1 and affinity < BESIDE:
            continue  # "each one 6 cm" and "in one piece" give no number
        if bare and kind in MONEYS and affinity < BESIDE and drawn is None:
            continue  # a bare number is money only where a word says so
        from_it = slot.spoken and made_from(line, value, slot)
        if from_it:
            affinity = max(affinity, MADE_FROM)
        elif slot.spoken and drawn is None and (affinity < BESIDE or (is_length and bare and not of_length)):
            continue
        if not bare and affinity < BESIDE and (drawn or 0.0) < 0.5 and lacks_length(main, kind) and not in_pair:
            continue  # stitches with no length are a tension only where the word is beside them, or rows are told with them
        score = 1.0 + fit + affinity - 0.04 * slot.order + IN_ORDER * value.number * slot.order + (drawn or 0.0)
        if in_pair and lacks_length(main, kind) and "tension" in line.words:
            score += TOLD_AS_TENSION
        if slot.name == IN_HAND.name and _looks_like_a_width(places.rule, value):
            score -= WIDTH_COST
        if slot.stated:
            score -= STATED_COST_BACKWARDS if backwards else STATED_COST
            score += LATER * value.number  # what it comes to is said after what it is made from, other things being equal
        elif mention < 0 and soft:
            score -= 0.0 if before_measure and kind is COUNT and not getattr(declared, "extra", True) else UNCALLED_COST
        elif mention < 0 and not from_it and isinstance(declared, Input) and declared.extra:
            score -= 2 * UNCALLED_COST if bare else UNCALLED_COST if kind in (LENGTH, COUNT, RATIO) else 0.0
        if score > UNPLACED / 2:
            found.append(Option((slot,), score, slot.takes, mention, affinity >= BESIDE))
    return found


def _looks_like_a_width(rule: Rule, value: Value) -> bool:
    """Whether a length told as in hand is likelier the width of the cloth: "I've 60 in"."""
    low, high = CLOTH_WIDTHS.get(value.main.unit, (0, 0))
    return low <= value.main.value <= high and any(item.label in WIDTHS_OF_CLOTH for item in rule.inputs)


def _are_several(line: Line, measure: Value) -> bool:
    """Whether things in the plural follow a measure: the "2 1/2 in squares" of "two hundred 2 1/2 in squares"."""
    if measure.last >= len(line.words) or measure.last in line.at_value:
        return False
    start, end = line.origin[measure.last]
    word = line.text[start:end].lower()
    return word.isalpha() and word.endswith("s") and not word.endswith("ss")


def _is_counted(line: Line, value: Value) -> bool:
    """Whether a number stands right before a measure and counts what is so large: the 7 of "seven two-row buttonholes"."""
    before = line.at_value.get(value.first - 1)
    return before is not None and before.main.bare and before.shape == "one" and not value.main.bare


def _named(places: Places, value: Value, fitting: Fitting, counted: bool) -> set[str]:
    """The places that a word straight behind the number names, where it fits them."""
    named: set[str] = set()
    if value.last not in places.starts:
        return named
    after = places.line.words[value.last] if value.last < len(places.line.words) else ""
    # "Bust 40 high bust 37": "high" is part of the longer phrase.
    longest = max((one.last for mentions in places.by_slot.values() for one in mentions if one.first == value.last), default=0)
    for name, mentions in places.by_slot.items():
        slot = places.by_name.get(name)
        if slot is None or (counted and slot.kind not in COUNTED_KINDS):
            continue
        if value.main.bare and slot.stated and slot.kind is MONEY:
            continue
        if slot.kind is COUNT and _is_counted(places.line, value):
            continue
        if slot.stated and after not in SIDE_WORDS and _told_before(places, value):
            continue  # in "waist 68 cm radius" the radius is asked for
        if value.main.unit in BOUGHT_BY and "width" in slot.declared.label and not _says_wide(places.line, value):
            continue  # "2 yd denim" is so long, "1.5 m wide denim" so wide
        if any(mention.first == value.last and mention.last >= longest and names_it(places.line, mention) for mention in mentions):
            fit = fitting.of(slot)
            if fit is not None and fit > OUT_OF_SENSE + 1:
                named.add(name)
    axes = {places.by_name[name].declared.axis for name in named} - {""}
    return named | {
        name for name, mentions in places.by_slot.items()
        if axes and (slot := places.by_name.get(name)) and slot.spoken and not slot.stated
        and not axes.isdisjoint(slot.declared.label.split()) and is_subject(places.line, value, mentions)
    }  # fmt: skip


def _of_stuff(line: Line, value: Value) -> bool:
    """Whether what a length is of follows it: "2 metres of canvas"."""
    after = line.words[value.last : value.last + 2]
    if after[:1] != ["of"] or not after[1:] or value.last + 1 in line.at_value:
        return False
    return after[1] not in FILLERS and after[1] not in MEASURES


def _told_before(places: Places, value: Value) -> bool:
    """Whether an input's word stands straight before a number that opens no part of the sentence."""
    return any(
        mention.last == value.first and places.line.words[mention.last - 1] not in FILLERS
        for name, mentions in places.by_slot.items() if name in places.by_name and not places.by_name[name].stated
        for mention in mentions
    )  # fmt: skip


def _says_wide(line: Line, value: Value) -> bool:
    """Whether a word for a width stands close behind a value."""
    return not WIDE.isdisjoint(line.words[value.last : value.last + 3])


def _in_duo(places: Places, value: Value) -> tuple[bool, frozenset[str]]:
    """Whether another value is of this one; and, where this one is of another, the places it may then fill."""
    head = any(one == value.number for one, _ in places.duos)
    is_second = any(other == value.number for _, other in places.duos)
    return head, frozenset(name for _, name in places.rule.pairs) if is_second else frozenset()


def of_them(line: Line, value: Value) -> bool:
    """Whether a number is "two of them", which is a number of things."""
    words, spot = line.words, value.last
    return spot + 1 < len(words) and words[spot] == "of" and words[spot + 1] in OF_THEM


def _telling(places: Places, slot: Slot, value: Value) -> list[Mention]:
    """The mentions that tell a result, and do not only name it: in "batting for a 58 x 72" the batting is not told."""
    phrases = {tokens(phrase) for phrase in getattr(slot.declared, "stated", ())}
    words = places.line.words
    said = (one for one in places.by_slot.get(slot.name, ()) if tuple(words[one.first : one.last]) in phrases)
    return [one for one in said if "for" not in words[one.last : value.first]]


def _of_groups(places: Places, value: Value, measures: Sequence[Measure]) -> list[Option]:
    """The groups of inputs that a size, a span's two ends, or the two parts of a rate can fill."""
    fittings: list[Fitting] = []
    found = []
    rule = places.rule
    for rank, group in enumerate(rule.spans if value.shape == "span" else (*rule.sizes, *rule.told_sizes)):
        if len(group) != len(measures) or any(name not in places.by_name for name in group):
            continue
        fittings = fittings or [Fitting(measure, places.hint) for measure in measures]
        slots = tuple(places.by_name[name] for name in group)
        fits = [fitting.of(slot) for fitting, slot in zip(fittings, slots, strict=True)]
        if None in fits:
            continue
        told = slots[0].stated
        words = (_telling(places, slot, value) if told else places.by_slot.get(slot.name, ()) for slot in slots)
        near = max((affinity_of(places.line, value, mentions)[0] for mentions in words), default=0.0)
        if told and near < BESIDE:
            continue  # a size is told of results only where a word says so
        rank = 0 if told else rank
        score = 2.4 + near + sum(fit or 0.0 for fit in fits) / len(fits) - 0.1 * rank + places.prefer.get(group[0], 0.0)
        takes = frozenset[str]().union(*(slot.takes for slot in slots))
        found.append(Option(slots, score, takes, spoken=near >= BESIDE))
    return found
