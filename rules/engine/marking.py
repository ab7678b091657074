"""Marking: whether a learner's number is right, sensibly rounded, in either system; else which slip gives it."""

from __future__ import annotations

import math
import operator
from collections.abc import Iterator
from dataclasses import dataclass
from fractions import Fraction
from functools import partial
from typing import Any

from .declare import Input, Rule
from .declare import Step as RuleStep
from .formula import NoAnswer
from .kinds import COUNT, LENGTH, ROWS, STITCHES, TEXT, Kind
from .request import Amount, Number, Request
from .rounding import Step, apply
from .run import Impossible, Needs, Run
from .slips import STEP_SHORT, WRONG_UNIT, Slip, label_of, the
from .units import factor, same_kind, system_of

WHOLE = (COUNT, STITCHES, ROWS)
OTHER = {"in": "cm", "cm": "in"}
COARSEST = Fraction(1, 100)  # a rounding of the learner's own is sensible while it moves the value by no more than this
HAIR = Fraction(1, 5000)  # and nearer than this, anything that is no count and no money is the value
RULER = Fraction(127, 160)  # half a sixteenth of an inch, in mm: as near as a length in the other system is read off
EDGE = 1.0001  # a value just half a step away is rounded to it
LONGEST_WORDS = 48  # a result in words longer than this is no answer that can be typed from memory
POWERS_OF_TWO = (1, 2, 4, 8, 16, 32, 64)
TROUBLE = (
    Needs,
    NoAnswer,
    Impossible,
    ArithmeticError,
    ValueError,
    TypeError,
    AssertionError,
    KeyError,
    IndexError,
    RecursionError,
)


@dataclass(frozen=True, slots=True)
class Expected:
    """A result as it should come out. name: of the step (or input worked out); exact and rounded in base units.

    unit: it is shown in; noun: of a count. here, there: its rounding in the question's system and the other, or None.
    words: the result itself where it is in words ("size 14"); its numbers are then nought.
    """

    name: str
    label: str
    kind: Kind
    exact: Number
    rounded: Number
    unit: str
    noun: str = ""
    here: Step | None = None
    there: Step | None = None
    words: str = ""

    @property
    def whole(self) -> bool:
        return self.kind in WHOLE and self.here is not None


@dataclass(frozen=True, slots=True)
class Typed:
    """A learner's number: in base units; the unit it was typed in, or "" for a bare number taken in the expected one;
    or an answer in words."""

    value: Number
    unit: str = ""
    words: str = ""


@dataclass(frozen=True, slots=True)
class Verdict:
    """right: it counts as right. rounded: it is as the trade rounds it. slip, told: what went wrong, when known."""

    right: bool
    rounded: bool = True
    slip: str = ""
    told: str = ""


class Quiet(Run):
    """A run that keeps no working: twice as quick, for trying numbers and slips."""

    def _line(self, *told: Any) -> None:
        return

    def _line_for_conversion(self, *told: Any) -> None:
        return


class Case:
    """A request with the result wanted from it, ready to mark. Raises one of TROUBLE when it cannot be worked."""

    def __init__(self, rule: Rule, request: Request, target: str, slips: tuple[Slip, ...]) -> None:
        self.rule, self.request, self.target = rule, request, target
        self.run = Run(rule, request)
        self.expected = expected(self.run, target)
        self._slips = slips
        self._wrong: list[tuple[Slip, Expected]] | None = None

    @property
    def wrong(self) -> list[tuple[Slip, Expected]]:
        """Each slip that leads to another answer, with that answer."""
        if self._wrong is None:
            self._wrong = list(self._worked_wrong())
        return self._wrong

    def _worked_wrong(self) -> Iterator[tuple[Slip, Expected]]:
        for slip in (*self._slips, *_unit_slips(self.rule, self.request)):
            if slip.place not in self.run.touched:
                continue
            try:
                override = {name: change(self.run.get(name)) for name, change in slip.altered.items()}
                made = expected(Quiet(slip.rule, self.request, override), self.target)
            except TROUBLE:
                continue
            if makes_sense(made) and not self._as_right(made):
                yield slip, made

    def _as_right(self, made: Expected) -> bool:
        """Whether a slip comes to the same, or so near that its answer is marked right."""
        if self.expected.words or made.words:
            return made.words == self.expected.words
        typed = Typed(made.rounded, made.unit if made.unit != "1" else "")
        return _is_rounded(self.expected, typed) or (not self.expected.whole and _is_exact(self.expected, typed))

    def mark(self, typed: Typed) -> Verdict:
        """Whether it is right; else the first slip that gives it."""
        if self.expected.words:
            return self._mark_words(typed)
        if _is_rounded(self.expected, typed):
            return Verdict(True)
        if not self.expected.whole and _is_exact(self.expected, typed):
            return Verdict(True, rounded=_needs_no_rounding(self.expected, typed))
        for slip, made in self.wrong:
            if _is_rounded(made, typed) or _is_exact(made, typed):
                return Verdict(False, slip=slip.name, told=slip.told)
        return self._in_another_unit(typed) or Verdict(False)

    def _mark_words(self, typed: Typed) -> Verdict:
        if same_words(typed.words, self.expected.words):
            return Verdict(True)
        met = next((slip for slip, made in self.wrong if same_words(typed.words, made.words)), None)
        return Verdict(False, slip=met.name, told=met.told) if met else Verdict(False)

    def _in_another_unit(self, typed: Typed) -> Verdict | None:
        """The right number with the wrong unit beside it."""
        want = self.expected
        if typed.unit in ("", "1", want.unit) or want.unit in ("", "1") or not same_kind(typed.unit, want.unit):
            return None
        again = Typed(typed.value / factor(typed.unit) * factor(want.unit), want.unit)
        if _is_rounded(want, again) or _is_exact(want, again):
            return Verdict(
                False, slip=WRONG_UNIT, told=f"The number is right, but it is {want.unit}, not {typed.unit}."
            )
        return None

    def earlier(self, typed: Typed, kind: Kind) -> Verdict | None:
        """The value of an earlier step, typed as the result: one step too few."""
        for name in self.run.values:
            if name == self.target:
                continue
            try:
                made = expected(self.run, name)
            except TROUBLE:
                continue
            given = name in self.request.given or self.rule.step(name) is None
            if made.kind.base == kind.base and not given and _is_rounded(made, typed):
                return Verdict(False, slip=STEP_SHORT, told=f"That is {the(made.label)}: go on, there is a step more.")
        return None


def expected(run: Run, name: str) -> Expected:
    """A step, or an input worked out, as a run gives it. Raises one of TROUBLE, also for words too long to be typed."""
    declared: RuleStep | Input | None = run.rule.step(name) or run.rule.input(name)
    if declared is None:
        raise KeyError(name)
    value: Any = run.get(name)
    label = label_of(run.rule, name)
    if isinstance(value, Amount):
        return Expected(name, label, declared.kind, value.value, value.value, value.unit, value.noun)
    if isinstance(value, str) and declared.kind is TEXT and 0 < len(value) <= LONGEST_WORDS:
        return Expected(name, label, TEXT, Fraction(0), Fraction(0), "text", words=value)
    if isinstance(value, bool) or not isinstance(value, int | float | Fraction):
        raise TypeError(f"{label} is no number")
    if isinstance(declared, Input):
        return Expected(name, label, declared.kind, value, value, run.unit_of(declared.kind), run.noun(declared))
    here = run.rounding(declared)
    there = declared.rounding.of(OTHER[run.system]) if declared.rounding else None
    rounded = run.round_step(declared, value)
    return Expected(
        name, label, declared.kind, value, rounded, run.step_unit(declared), run.noun(declared), here, there
    )


def makes_sense(made: Expected) -> bool:
    """Whether a result is one a maker could use: words, or more than nothing."""
    return bool(made.words) or (math.isfinite(made.rounded) and made.rounded > 0)


def same_words(typed: str, wanted: str) -> bool:
    """Whether words say the same: any case, "14" for "size 14", what stands in brackets said or not.

    >>> same_words("Size 14", "size 14"), same_words("14", "size 14"), same_words("12", "size 14")
    (True, True, False)
    """
    own, whole = _plain(typed), _plain(wanted)
    short = _plain(wanted.partition("(")[0])
    return bool(own) and own in (whole, short, short[1:] if len(short) == 2 else short)


def _plain(text: str) -> list[str]:
    """The words and numbers of a text, without the marks around them."""
    return [word for part in text.lower().replace(",", " ").split() if (word := part.strip("().;:!?\"'"))]


def _unit_slips(rule: Rule, request: Request) -> Iterator[Slip]:
    """A value typed in the other system, its number taken as if it were in this one."""
    for name, given in request.given.items():
        item = rule.input(name)
        if item is None or not isinstance(given.value, Fraction) or system_of(given.unit) != OTHER[request.system]:
            continue
        here = item.kind.inch if request.system == "in" else item.kind.metric
        times = factor(here) / factor(given.unit) if system_of(here) == request.system else Fraction(1)
        if times != 1:
            told = f"{the(item.label, True)} is in {given.unit}: put it into {here} first."
            yield Slip(WRONG_UNIT, told, name, rule, {name: partial(operator.mul, times)})


# -- near enough -----------------------------------------------------------------------------------------------------


def _is_rounded(want: Expected, typed: Typed) -> bool:
    """Whether it is the value as the trade rounds it, in this system or the other, to the precision typed."""
    values = [want.rounded]
    if (
        want.there is not None
        and system_of(typed.unit) == system_of(want.there.unit) != ""
        and want.there.unit != want.unit
    ):
        values.append(apply(want.exact, want.there))
    near = Fraction(0) if want.whole else _own_rounding(want, typed)
    return any(_apart(typed.value, value) <= max(float(near) * EDGE, 1e-9 * abs(float(value))) for value in values)


def _is_exact(want: Expected, typed: Typed) -> bool:
    """Whether it is the value before rounding, to the precision typed."""
    near = _own_rounding(want, typed)
    return _apart(typed.value, want.exact) <= max(float(near) * EDGE, 1e-6 * abs(float(want.exact)))


def _needs_no_rounding(want: Expected, typed: Typed) -> bool:
    return want.here is None or _apart(typed.value, want.rounded) * 4 <= float(want.here.base_step())


def _apart(one: Number, other: Number) -> float:
    return abs(float(one) - float(other))


def _own_rounding(want: Expected, typed: Typed) -> Fraction:
    """Half the step the learner rounded to, when that is fine enough to be sensible; else nought, or next to it."""
    unit = typed.unit or want.unit
    size = factor(unit) if unit and unit != "1" else Fraction(1)
    if want.kind.base.startswith("money"):
        return size / 200  # money is told to the penny
    half = precision(Fraction(typed.value) / size, unit) * size / 2
    if half * 2 <= _finest(want):
        return half
    if want.here is not None and want.here.direction in ("up", "down"):
        return Fraction(0)  # rounded the other way it would not do
    sensible = COARSEST * abs(Fraction(want.exact))
    if want.here is None and want.kind is LENGTH and system_of(unit) != system_of(want.unit):
        half = min(half, RULER)
    return half if half <= sensible else HAIR * abs(Fraction(want.exact))


def _finest(want: Expected) -> Fraction:
    """A step that is fine enough whatever the value: half the rounding's own, or a millimetre."""
    if want.here is not None and not want.whole:
        return want.here.base_step() / 2
    return factor("mm") if want.kind.base == "mm" else Fraction(0)


def precision(number: Fraction, unit: str) -> Fraction:
    """The step a number was written to: 1/8 for 2 3/8 in, 1/100 for 0.25 m, 1 for a whole number.

    >>> precision(Fraction(19, 8), "in"), precision(Fraction(1, 4), "m"), precision(Fraction(7), "in")
    (Fraction(1, 8), Fraction(1, 100), Fraction(1, 1))
    """
    below = number.limit_denominator(10**6).denominator
    if system_of(unit) == "in" and below in POWERS_OF_TWO:
        return Fraction(1, below)
    places = next((places for places in range(7) if 10**places % below == 0), None)
    return Fraction(1, below) if places is None else Fraction(1, 10**places)
