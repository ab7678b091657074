"""Which of the last question's values a bare new one replaces: "and for 55?" after a width of 50 cm, "what about 140 cm?"."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from rules.engine.buying import DISCOUNT
from rules.engine.declare import Input, Rule
from rules.engine.request import Given, Request
from rules.engine.run import LARGEST
from rules.engine.units import rough_factor

from .values import Line, Value, kinds_of, rough_value

GIVEN = 0.1  # something already said is a little likelier to be changed than something new
CHANGED = 0.5  # and what was changed last a little more
NEAR = 0.6  # and what is about as large
LAST = 0.2  # the last said of what is about as large most of all
AT_A_RATE = 0.4  # "at 20 sts" is a tension, though its length is not said again
AWAITED = 1.5
TAKEN_OFF = 1.5
OFF = frozenset(("less", "off", "discount", "reduction", "knocked", "minus"))
ABOUT_AS_LARGE = (0.4, 2.5)
CLOTH = (["cloth"], ["fabric"], ["material"])
ONES_OWN = frozenset(("mine", "i've"))  # "mine is 120 cm wide": not what the pattern said


def pulls(rule: Rule, request: Request, line: Line, waiting: frozenset[str], changed: frozenset[str]) -> dict[str, float]:
    """How strongly each input draws a new number to itself."""
    drawn = {name: GIVEN + (CHANGED if name in changed else 0.0) for name in request.given}
    if len(line.values) == 1 and not ONES_OWN.intersection(line.words):
        for name in near(rule, request, line):
            drawn[name] += NEAR + (AT_A_RATE if _at(line) and "/" in request.given[name].unit else 0.0)
        if last := last_near(rule, request, line):
            drawn[last] += LAST
    if _taken_off(line) and (item := rule.input(DISCOUNT.name)) is not None:
        drawn[item.name] = TAKEN_OFF
    drawn.update({item.name: AWAITED for item in rule.inputs if item.label in waiting})
    return drawn


def _taken_off(line: Line) -> bool:
    """Whether a line tells a discount: "less 10%", "and 15 per cent off"."""
    percents = [value for value in line.values if value.shape == "one" and value.main.unit == "%"]
    return any(OFF.intersection(line.words[max(0, one.first - 2) : one.first] + line.words[one.last : one.last + 2]) for one in percents)


def near(rule: Rule, request: Request, line: Line) -> list[str]:
    """The inputs given before whose value is of the same kind and about as large as a line's one new number.

    "At 20 sts" is a rate where one was given; "out of 70 cm cloth" is nothing's width but the cloth's.
    """
    value = line.values[0]
    if value.shape != "one":
        return []
    alike = {name: item for name, given in request.given.items() if (item := rule.input(name)) and _alike(item, given, value)}
    if line.words[value.last : value.last + 1] in CLOTH:
        return [name for name, item in alike.items() if "width" in item.label]
    rates = [name for name in alike if "/" in request.given[name].unit]
    return rates if rates and _at(line) else list(alike)


def of_cloth(line: Line) -> bool:
    """Whether a number of a line is told of cloth: "70 cm cloth"."""
    return any(line.words[value.last : value.last + 1] in CLOTH for value in line.values if not value.main.bare)


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


def _alike(item: Input, given: Given, value: Value) -> bool:
    measure = value.main
    if not item.kind.is_number or not isinstance(given.value, Fraction | float):
        return False
    if not given.value or not -LARGEST <= given.value <= LARGEST:
        return False
    if item.kind.name not in kinds_of(measure):
        return False
    unit = given.unit if given.unit != "1" else ""
    new = rough_value(measure, item.kind, unit)
    if measure.per is None and "/" in unit and measure.unit:  # "20 sts" for a tension of 22 sts to 10 cm
        new = float(measure.value) * rough_factor(unit)
    return ABOUT_AS_LARGE[0] <= abs(new / float(given.value)) <= ABOUT_AS_LARGE[1]
