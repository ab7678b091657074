"""Which of the last question's values a bare new one replaces: "and for 55?" after a width of 50 cm, "what about 140 cm?"."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction

from rules.engine.declare import Input, Rule
from rules.engine.request import Given, Request
from rules.engine.units import rough_factor

from .values import Line, Value, kinds_of, rough_value

GIVEN = 0.1  # something already said is a little likelier to be changed than something new
CHANGED = 0.5  # and what was changed last a little more
NEAR = 0.6  # and what is about as large
LAST = 0.2  # the last said of what is about as large most of all
AWAITED = 1.5
ABOUT_AS_LARGE = (0.4, 2.5)
ONES_OWN = frozenset(("mine", "i've"))  # "mine is 120 cm wide": not what the pattern said


def pulls(rule: Rule, request: Request, line: Line, waiting: frozenset[str], changed: frozenset[str]) -> dict[str, float]:
    """How strongly each input draws a new number to itself."""
    drawn = {name: GIVEN + (CHANGED if name in changed else 0.0) for name in request.given}
    if len(line.values) == 1 and not ONES_OWN.intersection(line.words):
        for name in near(rule, request, line.values[0]):
            drawn[name] += NEAR
        if last := last_near(rule, request, line.values[0]):
            drawn[last] += LAST
    drawn.update({item.name: AWAITED for item in rule.inputs if item.label in waiting})
    return drawn


def near(rule: Rule, request: Request, value: Value) -> list[str]:
    """The inputs given before whose value is of the same kind and about as large as a new one."""
    if value.shape != "one":
        return []
    return [name for name, given in request.given.items() if (item := rule.input(name)) and _alike(item, given, value)]


def last_near(rule: Rule, request: Request, value: Value) -> str:
    """The one of these that was said last, when it is no side of a size whose sides could all be meant; "" for none."""
    alike = near(rule, request, value)
    sides = {name for group in rule.sizes if all(name in request.given for name in group) for name in group}
    return alike[-1] if alike and not (len(alike) > 1 and sides.issuperset(alike)) else ""


def replaces(rule: Rule, request: Request, line: Line, placed: Mapping[int, str], changed: frozenset[str]) -> bool:
    """Whether the one number of a line, spoken for by nothing, plainly takes the place of one given before."""
    if len(line.values) != 1 or not placed:
        return False
    alike, name = near(rule, request, line.values[0]), next(iter(placed.values()))
    return name in alike and (len(alike) == 1 or name in changed or name == last_near(rule, request, line.values[0]))


def _alike(item: Input, given: Given, value: Value) -> bool:
    measure = value.main
    if not item.kind.is_number or not isinstance(given.value, Fraction | float) or not given.value:
        return False
    if item.kind.name not in kinds_of(measure):
        return False
    unit = given.unit if given.unit != "1" else ""
    new = rough_value(measure, item.kind, unit)
    if measure.per is None and "/" in unit and measure.unit:  # "20 sts" for a tension of 22 sts to 10 cm
        new = float(measure.value) * rough_factor(unit)
    return ABOUT_AS_LARGE[0] <= abs(new / float(given.value)) <= ABOUT_AS_LARGE[1]
