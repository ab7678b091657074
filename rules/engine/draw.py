"""Exercises drawn from a rule: a request with numbers a maker would meet, and the result wanted, harder by levels."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from .buying import VERDICT
from .declare import Input, Rule
from .kinds import ANY, LENGTH, TEXT
from .literal import bounds, literal
from .marking import TROUBLE, Quiet, expected, makes_sense
from .missing import needed
from .request import Given, Number, Request
from .run import Run
from .sample import Pick, number, sample
from .text import shown
from .units import factor, system_of

EASIEST, HARDEST = 1, 4
CURRENCY = "GBP"
OTHER = {"in": "cm", "cm": "in", "yd": "m", "m": "yd"}
STEPS = {"in": 4, "cm": 2, "yd": 8, "m": 10}  # parts of a unit that a converted length is given to
TRIES = 6  # draws looked at for one whose every step comes out in workable numbers
FRACTION_OF_INCH, PLACES = 16, 100  # a workable number is in sixteenths of an inch, or has two decimals


def targets(rule: Rule) -> tuple[str, ...]:
    """The rule's results that are numbers, in order of use."""
    return tuple(
        name for name in rule.answers if name not in VERDICT and (step := rule.step(name)) and step.kind is not TEXT
    )


def word_targets(rule: Rule) -> tuple[str, ...]:
    """The rule's results that are words, in order of use."""
    return tuple(
        name for name in rule.answers if name not in VERDICT and (step := rule.step(name)) and step.kind is TEXT
    )


def draw(rule: Rule, pick: Pick, system: str, level: int = EASIEST, words: bool = False) -> Request | None:
    """A request that the rule can work, with the result wanted in `asked`; None when no numbers can be drawn for it.

    level: 1 for what must be known, in coarse numbers; 2 adds a value or two of the maker's own in place of what is
    usually assumed; 3 asks for any of the results, in fine numbers; 4 gives one length in the other system too.
    A plan is not drawn for: it is worked by its parts' rules, which are. words: it asks for a result in words. A rule that
    gives no sum at a level (its plain case is told at once) is drawn from at the next that does.
    """
    if rule.parts:
        return None
    for own in (*range(level, HARDEST + 1), *range(level - 1, EASIEST - 1, -1)):
        if (made := _at_level(rule, pick, system, own, words)) is not None:
            return made
    return None


def _at_level(rule: Rule, pick: Pick, system: str, level: int, words: bool) -> Request | None:
    """The best of some draws; None when none gives a sum."""
    best: tuple[int, Request] | None = None
    wanted = word_targets(rule) if words else targets(rule)
    for _ in range(3 * TRIES if wanted else 0):
        run = _try(rule, pick, system, level, wanted)
        if run is None:
            continue
        awkward = _awkward(run)
        if best is None or awkward < best[0]:
            best = awkward, run.request
        if not awkward or rule.algorithm is not None or level > 2:
            break
    return best[1] if best else None


def _try(rule: Rule, pick: Pick, system: str, level: int, wanted: tuple[str, ...]) -> Run | None:
    """One draw, worked; None when the numbers do not go together or make no sum."""
    target = wanted[pick(len(wanted))] if level > 2 else wanted[0]
    request = Request(rule.topic, given=_given(rule, pick, system, level), asked=(target,), system=system)
    run = _worked(rule, request) or _completed(rule, request, pick, system, level)
    if run is not None and level >= HARDEST:
        run = _worked(rule, _mixed(rule, _pruned(run), pick))
    if run is None or not makes_sense(expected(run, target)) or _refused(run):
        return None
    run.request = _pruned(run)
    return None if _told_already(run) else run


def _worked(rule: Rule, request: Request) -> Run | None:
    """The request worked as far as the result asked for; None when it cannot be."""
    run = Quiet(rule, request)
    try:
        expected(run, request.asked[0])
    except TROUBLE:
        return None
    return run


def _refused(run: Run) -> bool:
    """Whether the rule declares that it has no answer for these numbers."""
    return any(run.holds_formula(refusal.when) and run.holds(refusal.choices) for refusal in run.rule.refusals)


def _told_already(run: Run) -> bool:
    """Whether the result hangs on nothing given, or is one of the values given: no sum to practise."""
    made = expected(run, run.request.asked[0])
    given = [(item.kind.base, value.value) for item, value in _numbers(run)]
    return not given or (made.kind.base, made.exact) in given


def _numbers(run: Run) -> list[tuple[Input, Given]]:
    """The inputs that were given numbers, with these."""
    return [
        (item, value)
        for name, value in run.request.given.items()
        if (item := run.rule.input(name)) and item.kind.is_number
    ]


def _given(rule: Rule, pick: Pick, system: str, level: int) -> dict[str, Given]:
    """What must be known, and of what may be known as much as the level asks."""
    given = sample(rule, pick, system)
    for name in given:
        item = rule.input(name)
        if item is not None and level < 3 and (coarse := number(item, pick, system, coarse=True)):
            given[name] = coarse
    if level > 1:
        more = sample(rule, pick, system, optional=True)
        for name, value in more.items():
            if name not in given and pick(2 if level > 2 else 3) == 0:
                given[name] = value
    return {name: _readable(value, system) for name, value in given.items() if not _only_spoken(rule, name)}


def _only_spoken(rule: Rule, name: str) -> bool:
    """Whether an input counts only when its words were spoken (a shop's step): no part of the sum itself."""
    item = rule.input(name)
    return item is not None and item.spoken


def _readable(given: Given, system: str) -> Given:
    """Money with its sign, to the nearest quarter, a price by the yard or metre; a tension over 4 in or 10 cm."""
    above, _, below = given.unit.partition("/")
    if system == "in" and below == "10cm":
        unit = f"{above}/4in"
        value = given.value / factor(given.unit) * factor(unit)
        return Given(value, unit, shown(value, unit))
    if above != "money" or not isinstance(given.value, Fraction):
        return given
    below = {"in": "yd", "cm": "m"}[system] if below in ("yd", "m") else below
    unit = CURRENCY + (f"/{below}" if below else "")
    step = factor(unit) / 4
    value = max(step, round(given.value / step) * step)
    return Given(value, unit, shown(value, unit))


def _completed(rule: Rule, request: Request, pick: Pick, system: str, level: int) -> Run | None:
    """The request with what its result still needs, worked; None when that cannot be drawn."""
    for name in needed(rule, request, request.asked[0]):
        item = rule.input(name)
        drawn = item is not None and not item.many  # a list is not drawn
        value = item and drawn and (number(item, pick, system, coarse=level < 3) or _like_example(item, pick, system))
        if value:
            request = replace(request, given={**request.given, name: _readable(value, system)})
    return _worked(rule, request) or _with_one_more(rule, request, pick, system)


def _with_one_more(rule: Rule, request: Request, pick: Pick, system: str) -> Run | None:
    """With one of the inputs that are otherwise worked from each other (how many more, or how many in all)."""
    free = [
        item for item in rule.inputs if item.name not in request.given and item.practice and item.default is not None
    ]
    for item in free[(start := pick(len(free) or 1)) :] + free[:start]:
        value = number(item, pick, system)
        run = _worked(rule, replace(request, given={**request.given, item.name: value})) if value else None
        if run is not None:
            return run
    return None


def _like_example(item: Input, pick: Pick, system: str) -> Given | None:
    """A value about as large as the one in an input's example, for one that declares no practice range."""
    if item.options:
        key = list(item.options)[pick(len(item.options))]
        return Given(key, "text", key.replace("_", " "))
    if item.many or not item.kind.is_number or item.kind is ANY:
        return None
    try:
        value, unit, _ = literal(item.example, system)
    except ValueError:
        return None
    if not unit and item.kind.base != "1":
        return None
    size = factor(unit) if unit else Fraction(1)
    value = max(size, round(value * (8 + pick(5)) / 10 / size) * size)
    low, high = bounds(item.sane, system) if item.sane else (None, None)
    if (low is not None and value < low) or (high is not None and value > high):
        return None
    return Given(value, unit or "1", shown(value, unit or "1"))


def _mixed(rule: Rule, request: Request, pick: Pick) -> Request:
    """One length given in the other system, as patterns from elsewhere give it."""
    names = [
        name
        for name, given in request.given.items()
        if (item := rule.input(name))
        and item.kind is LENGTH
        and given.unit in OTHER
        and system_of(given.unit) == request.system
    ]
    if not names:
        return request
    name = names[pick(len(names))]
    there = OTHER[request.given[name].unit]
    step = factor(there) / STEPS[there]
    value = max(step, round(request.given[name].value / step) * step)
    return replace(request, given={**request.given, name: Given(value, there, shown(value, there))})


def _pruned(run: Run) -> Request:
    """The request without what its result does not depend on."""
    return replace(run.request, given={name: given for name, given in run.request.given.items() if name in run.touched})


def _awkward(run: Run) -> int:
    """How many of the numbers on the way to a result cannot be written shortly, and how many given are alike."""
    given = [(item.kind.name, value.value) for item, value in _numbers(run)]
    alike = len(given) - len(set(given))
    return alike + sum(1 for name in tuple(run.values) if (made := _number(run, name)) is not None and not made)


def _number(run: Run, name: str) -> bool | None:
    """Whether a value can be written shortly in its unit; None for one that is no number."""
    try:
        made = expected(run, name)
        size = factor(made.unit) if made.unit not in ("", "1") else Fraction(1)
    except TROUBLE:
        return None
    return workable(made.exact / size if isinstance(made.exact, Fraction) else made.exact)


def workable(value: Number) -> bool:
    """Whether a number is in sixteenths or has at most two decimals.

    >>> workable(Fraction(37, 16)), workable(Fraction(235, 100)), workable(Fraction(1, 3))
    (True, True, False)
    """
    return isinstance(value, Fraction | int) and ((value * FRACTION_OF_INCH) % 1 == 0 or (value * PLACES) % 1 == 0)
