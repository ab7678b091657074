"""A reading made into a request: numbers into base units, the answer's system and currency, lists and tables to try."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass, replace
from fractions import Fraction

from grammar.query import Measure
from rules.engine.declare import Input, Rule
from rules.engine.kinds import ANY, COUNT, LENGTH, Kind
from rules.engine.request import USUAL_READING, Given, Item, Request
from rules.engine.units import CURRENCIES, SPELLED, factor, system_of

from .counted import Counted
from .fitting import in_sense, likely_in, rate_parts
from .reading import Reading
from .slots import Slot
from .unit_asked import unit_asked
from .usual import Usual, usual_values
from .values import LENGTHS, Line, Value, base_value, kinds_of, lacks_length

WEIGHTS = frozenset(("g", "kg", "oz", "lb"))
YOU_SAID_SO = "you said so"
MOST_COUNTS = 24
UNTYPED = "taken as {}, which was not typed"


# Units that may stand apart from their numbers.
LOOSE = {"mm": "mm", "millimetre": "mm", "cm": "cm", "centimetre": "cm"}


class NeedsUnit(Exception):
    """A bare number stands where a length is meant and nothing says whether inches or centimetres."""

    def __init__(self, label: str, text: str) -> None:
        super().__init__(label)
        self.label, self.text = label, text


@dataclass(frozen=True, slots=True)
class Habits:
    """What the maker is used to, until a question says otherwise. system: "in", "cm" or "" when not known.

    forced: a system to answer in whatever the question says. usual: values taken when a question does not give them.
    """

    system: str = ""
    currency: str = ""
    forced: str = ""
    usual: tuple[Usual, ...] = ()


def system_of_line(line: Line) -> str:
    """"in" or "cm" by the majority of the units typed, the first on a tie; "" when none was."""
    votes: dict[str, int] = {}
    for value in line.values:
        for measure in value.members:
            units = [part.unit for part in measure.parts] + ([measure.per.unit] if measure.per else [])
            for unit in units:
                system = system_of(unit)
                if system and unit in LENGTHS and unit != "ligne":
                    votes[system] = votes.get(system, 0) + 1
    return max(votes, key=lambda name: votes[name]) if votes else ""


def bare_unit_of(line: Line, system: str) -> str:
    """The unit a bare length takes: that of the other lengths of the question."""
    units = [
        measure.unit
        for value in line.values
        for measure in value.members
        if measure.unit in LENGTHS and measure.per is None and measure.unit not in ("ligne", "yd", "ft", "m", "km")
    ]
    units += [LOOSE[word] for word in line.words if word in LOOSE]  # "350 W x 380 H x 120 D mm"
    same = [unit for unit in units if system_of(unit) == system]
    return same[0] if same else (("in" if system == "in" else "cm") if system else "")


def build(reading: Reading, habits: Habits, mentions: frozenset[str], earlier: Request | None = None) -> Request:
    """The request a reading stands for; with `earlier`, a change to that request. Raises NeedsUnit."""
    rule, line = reading.rule, reading.line
    typed = system_of_line(line)
    unit = unit_asked(line)
    if unit == "metric":
        unit, asked_system = "", "cm"
    elif unit == "inches":
        unit, asked_system = "", "in"
    else:
        asked_system = system_of(unit) if unit else ""
    before = earlier.system if earlier is not None and (_measured(earlier) or not typed) else ""
    said = habits.forced or asked_system or before or typed or _word_system(line)
    system = said or habits.system or rule.home or ""
    bare = bare_unit_of(line, typed or before or (rule.home if not typed else "") or _word_system(line) or habits.system)
    bare = bare or _by_sense(reading)
    system = system or (system_of(bare) if bare else "")
    given: dict[str, Given] = dict(earlier.given) if earlier is not None else {}
    stated: dict[str, Given] = dict(earlier.stated) if earlier is not None else {}
    series: list[tuple[str, tuple[Given, ...]]] = []
    compare = False
    gathered: dict[str, list[tuple[Value, Slot]]] = {}
    for value in line.values:
        slots = reading.placing.spots.get(value.number)
        if slots is None:
            continue
        if len(slots) > 1:
            for slot, measure in zip(slots, _each_of(value, len(slots)), strict=True):
                (stated if slot.stated else given)[slot.name] = _given(measure, slot, _as_before(measure, slot, earlier) or bare, line)
        else:
            gathered.setdefault(slots[0].name, []).append((value, slots[0]))
    for name, entries in gathered.items():
        slot = entries[0][1]
        many = isinstance(slot.declared, Input) and slot.declared.many
        if many:
            items = [item for value, _ in entries for item in _items(value, slot, bare, line, reading.counts.get(value.number))]
            given[name] = Given(tuple(items), items[0].unit, ", ".join(_item_text(item) for item in items))
        elif len(entries) > 1 or entries[0][0].shape in ("series", "sweep") or _counts_up(entries[0][0], slot):
            values = [one for value, _ in entries for one in _members(value, slot, bare, line)]
            series.append((name, tuple(values)))
            given.pop(name, None)
            compare = compare or len(entries) > 1 or entries[0][0].alternatives
        else:
            one = _one(entries[0][0], slot, _as_before(entries[0][0].main, slot, earlier) or bare, line)
            (stated if slot.stated else given)[name] = one
    _in_units_before(rule, given, earlier)
    for name, keys in reading.chosen.items():
        if len(keys) > 1:
            series.append((name, tuple(Given(key, "text", key.replace("_", " ")) for key in keys)))
            compare = True
        else:
            given[name] = Given(keys[0], "text", keys[0].replace("_", " "))
            for nothing in _made_nothing_by(rule, name, keys[0]):
                if earlier is not None and given.get(nothing) == earlier.given.get(nothing):
                    given.pop(nothing, None)  # "and without any spare?" after 10 % spare
    given.update(reading.listed)
    if stated and reading.asked and rule.input(reading.asked[0]) is not None:
        given.pop(reading.asked[0], None)
    _say_whence(reading, given)
    currency, why = _currency(line, given, habits, earlier)
    # After one thing of a plan was asked for, a change gives the whole plan again.
    asked = reading.asked or (earlier.asked if earlier is not None and not rule.parts else ())
    return Request(
        topic=rule.topic,
        given=given,
        stated=stated,
        asked=asked,
        series=tuple(series),
        compare=compare,
        system=system or _default_system(currency if not why else ""),
        unit=unit or (earlier.unit if earlier is not None and not asked_system else ""),
        currency=currency,
        currency_assumed=bool(why),
        currency_why=why,
        system_why=YOU_SAID_SO if system and system == habits.system and not said else "",
        usual=usual_values(rule, habits.usual),
        mentions=mentions | (earlier.mentions if earlier is not None else frozenset()),
        largest=_largest(line),
        weights="" if asked_system or habits.forced else _weighed_in(line) or (earlier.weights if earlier is not None else ""),
    )


def _made_nothing_by(rule: Rule, name: str, key: str) -> list[str]:
    """The inputs that an option makes nothing."""
    return [
        item.name for item in rule.inputs
        if any(default.when.get(name) == key and default.value.startswith("0 ") for default in item.defaults)
    ]  # fmt: skip


def _measured(request: Request) -> bool:
    """Whether a request holds a measure, so that its units are settled."""
    return any(system_of(one.unit) for one in (*request.given.values(), *request.stated.values()))


def _default_system(currency: str) -> str:
    return "in" if currency == "USD" else "cm"


def _word_system(line: Line) -> str:
    """A system named in words only ("in inches", "inches,")."""
    for word in line.words:
        if word in ("inch", "yard", "yardage", "yd"):
            return "in"
        if word in ("cm", "centimetre", "metre", "mm", "metric"):
            return "cm"
    return ""


def _in_units_before(rule: Rule, given: dict[str, Given], earlier: Request | None) -> None:
    """A bare number for any kind of measure is in the unit that was said before: "and 60?" after 44 inches."""
    for name, before in earlier.given.items() if earlier is not None else ():
        item, now = rule.input(name), given.get(name)
        if item is not None and item.kind is ANY and now is not None and now.unit == "1" and before.unit not in ("1", "text"):
            given[name] = Given(now.value * factor(before.unit), before.unit, f"{now.text} {before.unit}", UNTYPED.format(before.unit))


def _by_sense(reading: Reading) -> str:
    """The unit that the bare lengths tell: inches where one has a ruler's fraction ("bust 37, jacket 40 1/2"), else the one
    in which each makes sense where it stands, when it does so in one system only: a height of 170. A table tells its own."""
    for given in reading.listed.values():
        if unit := getattr(given.value, "unit", ""):  # that of a table
            return str(unit)
    bare = []
    for value in reading.line.values:
        slots = reading.placing.spots.get(value.number, ())
        bare += [(one, slot) for slot, one in zip(slots, _each_of(value, len(slots)), strict=False) if slot.kind is LENGTH and one.bare]
    if any(_ruler_fraction(measure) for measure, _ in bare):
        return "in"
    sized = any(value.shape == "size" for value in reading.line.values)  # a runner of 40 by 200 may be of any size
    for fits in (in_sense,) if sized or len(bare) == 1 else (in_sense, likely_in):
        sensible = [unit for unit in ("in", "cm") if bare and all(fits(measure, slot, unit) for measure, slot in bare)]
        if len(sensible) == 1:
            return sensible[0]
    return ""


def _weighed_in(line: Line) -> str:
    """The system of the weights of a line, the first told; "" where none is told."""
    units = (measure.unit for value in line.values for measure in value.members if measure.per is None and measure.unit in WEIGHTS)
    return next((system_of(unit) for unit in units), "")


def _largest(line: Line) -> bool | None:
    text = line.text.lower()
    if not any(sign in text for sign in ("est", "most", "max", "min")):
        return None
    words = set(re.findall("[a-z]+", text))  # as typed: folded, "widest" and "wide" are one
    if words & {"biggest", "largest", "most", "maximum", "max", "longest", "widest"}:
        return True
    if words & {"smallest", "least", "minimum", "min", "narrowest", "shortest"}:
        return False
    return None


def _given(measure: Measure, slot: Slot, bare: str, line: Line) -> Given:
    kind, declared = slot.kind, slot.declared
    if kind is ANY:
        return _any(measure)
    why = ""
    use = ""
    if (measure.bare and (kind.base in ("mm", "mm^2", "g") or "/" in kind.base)) or lacks_length(measure, kind):
        use = "in" if kind is LENGTH and _ruler_fraction(measure) else _in_a_unit_of_sense(measure, slot, _unit_for_bare(kind, bare), line)
        label = declared.label if isinstance(declared, Input) else declared.shown_label
        if not use:
            raise NeedsUnit(label, measure.text)
        why = UNTYPED.format(use)
    value, unit = base_value(measure, kind, use)
    text = measure.text if not use else f"{measure.text} {use}"
    return Given(value, unit or "1", text, why)


def _in_a_unit_of_sense(measure: Measure, slot: Slot, unit: str, line: Line) -> str:
    """The unit for a bare length, or one in which alone it makes sense: "takes 1400 yds, the skeins are 210" by another unit of
    the line, "elastic 20 mm, waist 71" by the tape measure's of the same system."""
    if slot.kind is not LENGTH or not unit or likely_in(measure, slot, unit):
        return unit
    typed = [one.unit for value in line.values for one in value.members if one.unit in LENGTHS and one.per is None]
    return next((other for other in (*typed, system_of(unit)) if likely_in(measure, slot, other)), unit)


def _ruler_fraction(measure: Measure) -> bool:
    """Whether a number is written as a ruler in inches has it (5/8, 2 1/2): centimetres have no halves and eighths."""
    plain = not measure.spelled and "." not in measure.text and "," not in measure.text
    return plain and measure.value.denominator in (2, 4, 8, 16, 32, 64)


def _as_before(measure: Measure, slot: Slot, earlier: Request | None) -> str:
    """The rate that was told before, for stitches that leave its length out: "what if I get 5 sts?" after 4 1/2 to the inch."""
    before = {**earlier.given, **earlier.stated}.get(slot.name) if earlier is not None and "/" in slot.kind.base else None
    alike = before is not None and "/" in before.unit and (measure.bare or lacks_length(measure, slot.kind))
    return before.unit if before is not None and alike else ""


def _unit_for_bare(kind: Kind, bare: str) -> str:
    if kind is LENGTH or "/" in bare:
        return bare
    system = system_of(bare)
    return (kind.inch if system == "in" else kind.metric) if system else ""


def _any(measure: Measure) -> Given:
    """A measure of whatever kind, for conversions: the value in base units of its own unit."""
    from rules.engine.kinds import ALL_KINDS

    name = kinds_of(measure)[0] if kinds_of(measure) else "count"
    if measure.bare:
        return Given(Fraction(measure.value), "1", measure.text)
    kind = next(kind for kind in ALL_KINDS if kind.name == name)
    value, unit = base_value(measure, kind)
    return Given(value, unit or "1", measure.text)


def _one(value: Value, slot: Slot, bare: str, line: Line) -> Given:
    if value.shape == "span":
        low, _ = value.members
        return Given(_given(low, slot, bare, line).value, low.unit or bare, value.text, f"the lesser of {value.text}")
    return _given(value.main, slot, bare, line)


def _each_of(value: Value, count: int) -> tuple[Measure, ...]:
    """The measures that a value gives to several places: the sides of a size, the parts of a rate, a square's side for each."""
    if value.shape in ("size", "span"):
        return value.members
    return rate_parts(value.main) if value.main.per is not None else (value.main,) * count


def _counts_up(value: Value, slot: Slot) -> bool:
    """Whether a span is of a count, and so means each of them: "5 to 9 buttons"."""
    low, high = value.members[0].value, value.members[-1].value
    return value.shape == "span" and slot.kind is COUNT and value.main.bare and low < high <= low + MOST_COUNTS


def _members(value: Value, slot: Slot, bare: str, line: Line) -> list[Given]:
    if value.shape == "span":
        low, high = (int(one.value) for one in value.members)
        return [Given(Fraction(count), "1", str(count)) for count in range(low, high + 1)]
    if value.shape != "sweep":
        return [_given(measure, slot, bare, line) for measure in value.members]
    first, last, step = (_given(measure, slot, bare, line) for measure in value.members)
    size = abs(step.value)
    if not size:
        return [first, last]
    count = int((abs(last.value - first.value)) / size) if abs(last.value - first.value) / size < 1000 else 1000
    from rules.engine.text import shown

    sign = 1 if last.value >= first.value else -1
    unit = first.unit
    amounts = [first.value + sign * size * index for index in range(count + 1)]
    return [Given(amount, unit, shown(amount, "1" if unit == "1" else unit)) for amount in amounts]


def _items(value: Value, slot: Slot, bare: str, line: Line, counted: Counted | None) -> list[Item]:
    """The entries of a list that a value gives, each so many times as its count says."""
    items = []
    count = counted.times if counted is not None else Fraction(1)
    if len(value.members) > 1 and count == len(value.members):
        count = Fraction(1)  # "three strips 3 in, 2 in and 1 1/2 in" counts the list itself
    for measure in value.members:
        given = _given(measure, slot, bare, line)
        text = given.text if not measure.sign or measure.text.startswith(("+", "-", "−")) else f"{measure.sign}{given.text}"
        items.append(Item(given.value, given.unit, text, count))
    return items


def _item_text(item: Item) -> str:
    return item.text if item.count == 1 else f"{item.count} × {item.text}"


def _currency(line: Line, given: Mapping[str, Given], habits: Habits, earlier: Request | None) -> tuple[str, str]:
    """(the currency of any money here, why it was taken when it was not said)."""
    for value in line.values:
        for measure in value.members:
            unit = measure.unit
            if unit in CURRENCIES:
                return unit, USUAL_READING if unit == "USD" and "$" in measure.text and habits.currency != "USD" else ""
            if unit in ("pound", "pence") and any(
                given_one.unit.startswith("GBP") for given_one in given.values() if isinstance(given_one.unit, str)
            ):
                return "GBP", ""
            if unit == "cent":
                return habits.currency or "USD", YOU_SAID_SO if habits.currency else USUAL_READING
    for spot, word in enumerate(line.words):
        if spot not in line.at_value and (named := SPELLED.get(word, "")) in CURRENCIES:
            return named, ""  # "... at 9.50 a yard, dollars"
    if earlier is not None:
        return earlier.currency, earlier.currency_why if earlier.currency_assumed else ""
    return habits.currency or "GBP", YOU_SAID_SO if habits.currency else USUAL_READING


def _say_whence(reading: Reading, given: dict[str, Given]) -> None:
    """Values that were not typed say where they come from."""
    for value in reading.line.values:
        for slot in reading.placing.spots.get(value.number, ()) if value.why else ():
            if slot.name in given:
                given[slot.name] = replace(given[slot.name], why=value.why)
