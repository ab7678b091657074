"""Which of the last question's values a bare new one replaces: "and for 55?" after a width of 50 cm, "what about 140 cm?"."""

from __future__ import annotations

import math
from collections.abc import Mapping
from fractions import Fraction

from rules.engine.buying import DISCOUNT, WIDTHS_OF_CLOTH
from rules.engine.declare import Input, Rule, Step
from rules.engine.kinds import Kind
from rules.engine.request import Given, Request
from rules.engine.run import LARGEST
from rules.engine.units import rough_factor

from .beside import TELLS
from .lexicon import Match
from .relative import compared
from .tokens import FILLERS, LINKS
from .values import Line, Value, kinds_of, rough_value

GIVEN = 0.1  # something already said is a little likelier to be changed than something new
CHANGED = 0.5  # and what was changed last a little more
NEAR = 1.2  # and what is about as large, the more so the nearer
NEAR_ALONE = 1.5  # and most of all where nothing else is
TOLD_BEFORE = 1.6  # a result that was told may be told anew
LAST = 0.2  # the last said of what is about as large most of all
AT_A_RATE = 0.4  # "at 20 sts" is a tension, though its length is not said again
AWAITED = 1.5
TAKEN_OFF = 1.5
OFF = frozenset(("less", "off", "discount", "reduction", "knocked", "minus"))
ABOUT_AS_LARGE = (0.4, 2.5)
HEDGES = frozenset(("it", "really", "actually", "now", "only", "just", "about", "is", "was"))
CLOTH = (["cloth"], ["fabric"], ["material"], ["kind"], ["sort"], ["stuff"])
ONES_OWN = frozenset(("mine", "i've"))  # "mine is 120 cm wide": not what the pattern said


def pulls(rule: Rule, request: Request, line: Line, matches: list[Match], waiting: frozenset[str],
          changed: frozenset[str], assumed: Mapping[str, Given] | None = None) -> dict[str, float]:  # fmt: skip
    """How strongly each input draws a new number to itself. assumed: what was taken before without being said."""
    drawn = {name: GIVEN + (CHANGED if name in changed else 0.0) for name in told(request)}
    if _has_one_new_number(line):
        alike, beside = near(rule, request, line), spoken_for(rule, line, matches)
        if subject := _told_of(rule, line, matches):
            drawn.update(dict.fromkeys(subject, NEAR_ALONE))  # "and if the fabric is 44 wide?"
            alike = []
        elif beside:
            alike = [name for name in alike if name in beside]  # "8 cm deep" is the depth, whatever else was told
        elif not alike:
            drawn.update(dict.fromkeys(_alike_names(rule, assumed or {}, line), NEAR_ALONE))
        for name in alike:
            before = told(request)[name]
            drawn[name] += NEAR_ALONE if len(alike) == 1 else NEAR * _closeness(rule, name, before, line.values[0])
            drawn[name] += AT_A_RATE if _at(line) and "/" in before.unit else 0.0
            drawn[name] += TOLD_BEFORE if name in request.stated else 0.0
        if last := last_near(rule, request, line):
            drawn[last] += LAST
    if _taken_off(line) and (item := rule.input(DISCOUNT.name)) is not None:
        drawn = {**dict.fromkeys(drawn, GIVEN), item.name: TAKEN_OFF}
    awaited = [item.name for item in rule.inputs if item.label in waiting]
    if awaited and _only_a_number(line):
        drawn = dict.fromkeys(drawn, GIVEN)  # the answer to what was asked
    drawn.update(dict.fromkeys(awaited, AWAITED))
    return drawn


def _only_a_number(line: Line) -> bool:
    """Whether a line is one number and nothing else that says something."""
    words = [word for spot, word in enumerate(line.words) if spot not in line.at_value and word[:1].isalpha()]
    return len(line.values) == 1 and all(word in FILLERS for word in words)


def _has_one_new_number(line: Line) -> bool:
    """Whether a line holds one number that may be meant in the place of one before it."""
    return len(line.values) == 1 and ONES_OWN.isdisjoint(line.words) and compared(line, line.values[0]) is None


def spoken_for(rule: Rule, line: Line, matches: list[Match]) -> set[str]:
    """The inputs of which a word stands right beside a line's one number."""
    value = line.values[0]
    before = value.first
    while before > 0 and (line.words[before - 1] in HEDGES or line.words[before - 1] in LINKS):
        before -= 1
    return {
        tag.name
        for match in matches if match.first == value.last or before <= match.last <= value.first
        for tag in match.of(rule.topic) if tag.what == "role"
    }  # fmt: skip


def _told_of(rule: Rule, line: Line, matches: list[Match]) -> set[str]:
    """The inputs of which a line's one number is told with a verb: "the fabric is 44 wide"."""
    verb = line.values[0].first - 1
    if verb < 1 or line.words[verb] not in TELLS or line.words[verb - 1] in FILLERS:
        return set()
    return {tag.name for match in matches if match.last == verb for tag in match.of(rule.topic) if tag.what == "role"}


def _taken_off(line: Line) -> bool:
    """Whether a line tells a discount: "less 10%", "and 15 per cent off"."""
    percents = [value for value in line.values if value.shape == "one" and value.main.unit == "%"]
    return any(OFF.intersection(line.words[max(0, one.first - 2) : one.first] + line.words[one.last : one.last + 2]) for one in percents)


def near(rule: Rule, request: Request, line: Line) -> list[str]:
    """The inputs given before whose value is of the same kind and about as large as a line's one new number.

    "At 20 sts" is a rate where one was given; "out of 70 cm cloth" is nothing's width but the cloth's.
    """
    return _alike_names(rule, told(request), line)


def _alike_names(rule: Rule, before: Mapping[str, Given], line: Line) -> list[str]:
    value = line.values[0]
    if value.shape != "one":
        return []
    alike = {
        name: declared for name, given in before.items()
        if (declared := rule.input(name) or rule.step(name)) and _alike(declared, given, value)
    }  # fmt: skip
    if _said_of_cloth(line, value):
        return [name for name, declared in alike.items() if declared.label in WIDTHS_OF_CLOTH]
    rates = [name for name in alike if "/" in before[name].unit]
    if rates and _at(line):
        return rates
    plain = [name for name in alike if value.main.bare and before[name].unit in ("", "1")]
    return plain or list(alike)  # a number of no unit is likelier for one that had none


def told(request: Request) -> dict[str, Given]:
    """All that was told: what is given, and results that were stated."""
    return {**request.given, **request.stated}


def of_cloth(line: Line) -> bool:
    """Whether a number of a line is told of cloth: "70 cm cloth"."""
    return any(_said_of_cloth(line, value) for value in line.values if not value.main.bare)


def _said_of_cloth(line: Line, value: Value) -> bool:
    """Whether a number is followed by a word for cloth: "70 cm cloth", "the 108 in wide kind"."""
    after = value.last + (line.words[value.last : value.last + 1] == ["wide"])
    return line.words[after : after + 1] in CLOTH


def _at(line: Line) -> bool:
    """Whether a line's one number is told as a rate is: "at 20 sts", "at £9"."""
    return line.words[line.values[0].first - 1 : line.values[0].first] == ["at"]


def last_near(rule: Rule, request: Request, line: Line) -> str:
    """The one of these that was said last, when it is no side of a size whose sides could all be meant; "" for none."""
    alike = near(rule, request, line)
    sides = {name for group in rule.sizes if all(name in request.given for name in group) for name in group}
    return alike[-1] if alike and not (len(alike) > 1 and sides.issuperset(alike)) else ""


def replaces(rule: Rule, request: Request, line: Line, placed: Mapping[int, str], changed: frozenset[str]) -> bool:
    """Whether the one number of a line, spoken for by nothing, plainly takes the place of one given before."""
    if len(line.values) != 1 or not placed:
        return False
    alike, name = near(rule, request, line), next(iter(placed.values()))
    return name in alike and (len(alike) == 1 or name in changed or name == last_near(rule, request, line))


def _closeness(rule: Rule, name: str, before: Given, value: Value) -> float:
    """How near a new number is to one given before: 1 for the same, less than a half at the ends of what is about as large."""
    declared = rule.input(name) or rule.step(name)
    times = _times(declared.kind, before, value) if declared is not None else 0.0
    return 1.0 - abs(math.log(times)) / (2 * math.log(ABOUT_AS_LARGE[1])) if times > 0 else 0.0


def _alike(declared: Input | Step, given: Given, value: Value) -> bool:
    if not declared.kind.is_number or not isinstance(given.value, Fraction | float):
        return False
    if not given.value or not -LARGEST <= given.value <= LARGEST:
        return False
    if declared.kind.name not in kinds_of(value.main):
        return False
    return ABOUT_AS_LARGE[0] <= abs(_times(declared.kind, given, value)) <= ABOUT_AS_LARGE[1]


def _times(kind: Kind, given: Given, value: Value) -> float:
    """How many times as large a new number is as one given before, the same unit meant where none is said."""
    measure = value.main
    unit = given.unit if given.unit != "1" else ""
    new = rough_value(measure, kind, unit)
    if measure.per is None and "/" in unit and measure.unit:  # "20 sts" for a tension of 22 sts to 10 cm
        new = float(measure.value) * rough_factor(unit)
    return new / float(given.value)
