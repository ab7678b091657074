"""Slips a learner makes, each made again in the rule itself, so that a wrong answer can be told what went wrong.

A slip is a rule with one thing in it changed: a term left out of a formula, a sign turned round, a rounding turned
round. Working the request with that rule gives the answer that the slip leads to.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import partial
from typing import Any

from grammar.formula import Binary, Call, Name, Node, Number

from . import formula
from .declare import Default, Input, Rule, Step
from .kinds import LENGTH, PERCENT, ROWS, STITCHES, TEXT
from .literal import literal
from .rounding import Rounding
from .trees import changed_once, length_power, power_of_base, text
from .units import factor

FORGOT = "forgot an allowance"
DIVIDED = "divided instead of multiplied"
MULTIPLIED = "multiplied instead of divided"
NOMINAL = "took the nominal width"
ROUNDED_DOWN = "rounded down"
ROUNDED_UP = "rounded up"
UNROUNDED = "did not round first"
RADIUS = "radius for diameter"
ONE_SIDE = "both sides or one"
ONE_OFF = "one too few or too many"
STEP_SHORT = "one step too few"
WRONG_UNIT = "inches for centimetres"

# What cloth sold as 44 in (112 cm) loses to its selvedges when 40 in (102 cm) is used; common practice, no source.
SELVEDGES = "4 in | 10 cm"
USABLE = "usable"
ALLOWANCES = frozenset(
    ("allowance", "seam", "hem", "overlap", "ease", "extra", "turning", "join", "joins", "waste", "heading", "edge")
)
TWO, ONE, PI = Number(Fraction(2)), Number(Fraction(1)), Name("pi")

RADIUS_TOLD = "You took the radius for the diameter, or the diameter for the radius."

Noted = Iterator[tuple[tuple[str, str], Node]]
Altered = Mapping[str, Callable[[Any], Any]]


@dataclass(frozen=True, slots=True)
class Slip:
    """One slip. name: one of the names above; told: what went wrong, in words; place: the step or input it is made in.

    rule: the rule with the slip in it. altered: input name -> what the slip makes of its value.
    """

    name: str
    told: str
    place: str
    rule: Rule
    altered: Altered = field(default_factory=dict)


def slips_of(rule: Rule, system: str) -> tuple[Slip, ...]:
    """Every slip that can be made in a rule, for numbers of a system ("in" or "cm")."""
    in_formulas = tuple(_in_formulas(rule, system))
    return (*_nominal(rule, system), *_ignored(rule, in_formulas), *in_formulas, *_in_roundings(rule))


def nominal_width(usable: Any, system: str) -> Any:
    """The width that cloth is sold as, from what is usable between its selvedges; both in mm."""
    return usable + literal(SELVEDGES, system)[0]


def is_usable_width(item: Input) -> bool:
    return item.kind is LENGTH and USABLE in item.label.split()


# -- in the values put in --------------------------------------------------------------------------------------------


def _nominal(rule: Rule, system: str) -> Iterator[Slip]:
    """The width cloth is sold as, put in the place of the width that can be used."""
    for item in rule.inputs:
        if is_usable_width(item):
            told = f"You took the width that the cloth is sold as. Only {the(item.label)} counts."
            yield Slip(NOMINAL, told, item.name, rule, {item.name: lambda usable: nominal_width(usable, system)})


def _ignored(rule: Rule, in_formulas: tuple[Slip, ...]) -> Iterator[Slip]:
    """An allowance left out wherever it comes in: one that a formula adds, or an algorithm calls by such a name."""
    told = {slip.told for slip in in_formulas if slip.name == FORGOT}
    for item in rule.inputs:
        words = f"You left out {the(item.label)}."
        named = rule.algorithm is not None and bool(ALLOWANCES.intersection(item.label.split()))
        if item.kind in (LENGTH, STITCHES, ROWS, PERCENT) and item.default is not None and (named or words in told):
            yield Slip(FORGOT, words, item.name, rule, {item.name: lambda value: Fraction(0)})


# -- in formulas -----------------------------------------------------------------------------------------------------


def _in_formulas(rule: Rule, system: str) -> Iterator[Slip]:
    for step in rule.steps:
        if step.formula and step.kind is not TEXT:
            for name, told, tree in _changes(rule, formula.read(step.formula), system):
                yield Slip(name, told, step.name, _with_step(rule, replace(step, formula=text(tree))))
    for item in rule.inputs:
        for default in item.defaults:
            if default.value.startswith("=") and default.derived:
                for name, told, tree in _changes(rule, formula.read(default.value[1:]), system):
                    changed = replace(default, value="=" + text(tree))
                    yield Slip(name, told, item.name, _with_default(rule, item, default, changed))


def _changes(rule: Rule, tree: Node, system: str) -> Iterator[tuple[str, str, Node]]:
    """(name, what went wrong, the formula with the slip) for each slip that fits a formula."""
    for change in (_left_out, _sides, _unrounded, partial(_turned, system)):
        for (name, told), made in changed_once(tree, partial(change, rule)):
            yield name, told, made


def _left_out(rule: Rule, node: Node) -> Noted:
    """An allowance that is added or taken off, left out; or the 1 that is added in counting."""
    if not isinstance(node, Binary) or node.op not in "+-":
        return
    if node.right == ONE:
        yield (ONE_OFF, "You counted one too few or one too many."), node.left
    if _is_allowance(rule, node.right, last=True):
        yield (FORGOT, f"You left out {the(_labels(rule, node.right))}."), node.left
    if node.op == "+" and _is_allowance(rule, node.left, last=False):
        yield (FORGOT, f"You left out {the(_labels(rule, node.left))}."), node.right


def _is_allowance(rule: Rule, node: Node, last: bool) -> bool:
    """Whether a term is made of inputs alone that have a usual value; one that is worked out counts in last place."""
    inputs = [rule.input(name) for name in formula.names(node)]
    if not inputs or any(item is None for item in inputs):
        return False
    return any(item is not None and any(last or not default.derived for default in item.defaults) for item in inputs)


def _sides(rule: Rule, node: Node) -> Noted:
    """A times 2 or a half left out; the radius where the diameter belongs, and the other way round."""
    if isinstance(node, Binary) and node.op in "*/" and TWO in (node.left, node.right) and node.left != node.right:
        rest = node.right if node.left == TWO else node.left
        if node.op == "*":
            yield _doubled(rule, rest), rest
        elif node.right == TWO:
            yield (ONE_SIDE, f"You did not halve: {_labels(rule, rest)}."), rest
    if node == PI:
        yield (RADIUS, RADIUS_TOLD), Binary("*", TWO, PI)
        yield (RADIUS, RADIUS_TOLD), Binary("/", PI, TWO)


def _doubled(rule: Rule, rest: Node) -> tuple[str, str]:
    """What it is called to leave out a times 2."""
    if PI in (rest, *(getattr(rest, side, None) for side in ("left", "right"))):
        return RADIUS, RADIUS_TOLD
    return ONE_SIDE, f"You counted once what is there twice: {_labels(rule, rest)}."


def _turned(system: str, rule: Rule, node: Node) -> Noted:
    """Divided instead of multiplied, and the other way round, in the units a learner works in."""
    if (
        not isinstance(node, Binary)
        or node.op not in "*/"
        or not formula.names(node.left)
        or not formula.names(node.right)
    ):
        return
    other = "/" if node.op == "*" else "*"
    made: Node = Binary(other, node.left, node.right)
    surplus = length_power(made, lambda name: _power(rule, name)) - length_power(node, lambda name: _power(rule, name))
    if surplus:
        # The learner's number comes out in inches or centimetres, where the engine reckons in millimetres.
        unit = factor(system) ** abs(int(surplus))
        made = Binary("/" if surplus > 0 else "*", made, Number(unit))
    what = f"{_labels(rule, node.left)} and {_labels(rule, node.right)}"
    if node.op == "*":
        yield (DIVIDED, f"You divided where you should multiply: {what}."), made
    else:
        yield (MULTIPLIED, f"You multiplied where you should divide: {what}."), made


def _unrounded(rule: Rule, node: Node) -> Noted:
    """An earlier result taken as it came, where the sum goes on with the rounded one."""
    if isinstance(node, Call) and node.name == "rounded":
        yield (UNROUNDED, f"You went on without rounding {the(_labels(rule, node))}."), node.args[0]


def _power(rule: Rule, name: str) -> Fraction:
    declared = rule.input(name) or rule.step(name)
    return power_of_base(declared.kind.base) if declared else Fraction(0)


def _labels(rule: Rule, node: Node) -> str:
    """The names of a part of a formula as people say them."""
    names = dict.fromkeys(formula.names(node))
    labels = [label_of(rule, name) for name in names]
    return " and ".join((labels[0], *(the(label) for label in labels[1:]))) if labels else text(node)


def label_of(rule: Rule, name: str) -> str:
    """What an input or a step is called."""
    item, step = rule.input(name), rule.step(name)
    return item.label if item else step.shown_label if step else name.replace("_", " ")


def the(label: str, capital: bool = False) -> str:
    """A label after "the", unless it brings an article of its own.

    >>> the("strip width"), the("the whole"), the("waist", capital=True)
    ('the strip width', 'the whole', 'The waist')
    """
    words = label if label.partition(" ")[0] in ("the", "a", "an") else f"the {label}"
    return words[:1].upper() + words[1:] if capital else words


# -- in roundings ----------------------------------------------------------------------------------------------------

_TURNED = {"up": "down", "down": "up"}


def _in_roundings(rule: Rule) -> Iterator[Slip]:
    for step in rule.steps:
        how = step.rounding
        if how is not None and how.inch.direction in _TURNED:
            up = how.inch.direction == "up"
            told = (
                f"You rounded {the(step.shown_label)} down, which leaves it short: round up."
                if up
                else f"You rounded {the(step.shown_label)} up, and there is not so much: round down."
            )
            turned = Rounding(how.name, _turn(how.inch), _turn(how.metric), how.bought)
            yield Slip(
                ROUNDED_DOWN if up else ROUNDED_UP, told, step.name, _with_step(rule, replace(step, rounding=turned))
            )


def _turn(how: Any) -> Any:
    return replace(how, direction=_TURNED.get(how.direction, how.direction))


def _with_step(rule: Rule, changed: Step) -> Rule:
    return replace(rule, steps=tuple(changed if step.name == changed.name else step for step in rule.steps))


def _with_default(rule: Rule, item: Input, old: Default, new: Default) -> Rule:
    changed = replace(item, default=tuple(new if default is old else default for default in item.defaults))
    return replace(rule, inputs=tuple(changed if one is item else one for one in rule.inputs))
