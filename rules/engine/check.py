"""Declarations that are wrong cannot exist: what is checked when a rule is made, and what only under test.

`check_rule` is quick and runs at each start. `check_deeply` reads every formula and works it with pint quantities, so
that a formula that adds a length to an area is found when the rules are loaded under test, not by a maker.
"""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING, Any

from .kinds import ANY, CHOICE, TEXT

if TYPE_CHECKING:
    from .declare import Rule


def check_rule(rule: Rule) -> None:
    """Raise DeclarationError, naming the rule, the field and the good form, for what can be seen at a glance."""
    from .declare import DeclarationError

    def wrong(message: str) -> DeclarationError:
        return DeclarationError(f"{rule.topic}: {message}")

    names = [item.name for item in rule.inputs] + [step.name for step in rule.steps]
    for name in names:
        if names.count(name) > 1:
            raise wrong(f"{name} is declared twice; give each input and step a name of its own")
        if not name.isidentifier():
            raise wrong(f"{name!r} is no name for a formula; write it like strip_width")
    for item in rule.inputs:
        if item.default is None and not item.extra and not (item.ask and item.example):
            raise wrong(f"{item.name} has no default and no way to ask for it; give because= or ask= and example=")
        if item.kind is CHOICE and not item.options:
            raise wrong(f"{item.name} is a choice without options; give options={{'flat': ('worked flat',)}}")
    for step in rule.steps:
        if step.words is not None and not (step.kind is TEXT and step.formula):
            raise wrong(
                f"{step.name} has words but is no TEXT step with a condition; write Step(..., 'a >= b', TEXT, words=('enough', 'short'))"
            )
        if not step.formula and rule.algorithm is None:
            raise wrong(f"{step.name} has no formula and the rule no algorithm; give one of them")
    for name in rule.answers:
        if rule.step(name) is None:
            raise wrong(f"answers names {name}, which is no step; answers are steps")
    for group in (*rule.sizes, *rule.spans, *rule.pairs):
        for name in group:
            if rule.input(name) is None and name != "in_hand":  # what is in hand is added with the buying
                raise wrong(f"sizes, spans or pairs names {name}, which is no input")
    for name in (name for group in rule.told_sizes for name in group):
        if rule.step(name) is None:
            raise wrong(f"told_sizes names {name}, which is no step")
    if not rule.source:
        raise wrong("has no source; say COMMON_PRACTICE, ARITHMETIC or the published source")


def check_deeply(rule: Rule) -> None:
    """Work every formula with pint quantities. Raises DeclarationError for one that does not fit its dimension."""
    from .declare import DeclarationError
    from .formula import read
    from .units import registry

    units = registry()
    known: dict[str, Any] = {}
    for item in rule.inputs:
        if item.kind.is_number and item.kind is not ANY:
            known[item.name] = _sample(item.kind.base, units)
    for step in rule.steps:
        if step.kind not in (TEXT, ANY):
            known.setdefault(step.name, _sample(step.kind.base, units))
    formulas = [(step.name, step.formula, step.kind) for step in rule.steps if step.formula]
    for item in rule.inputs:
        formulas += [
            (f"default of {item.name}", default.value[1:], item.kind)
            for default in item.defaults
            if default.value.startswith("=")
        ]
    formulas += [
        (f"backwards for {name}", text, found.kind)
        for name, text in rule.backwards.items()
        if (found := rule.input(name))
    ]
    for name, text, kind in formulas:
        if kind in (TEXT, ANY):
            continue
        try:
            found = dimension(read(text), known, units)
            wanted = _sample(kind.base, units)
            if found.dimensionality != wanted.dimensionality:
                raise DeclarationError(f"it comes out as {found.dimensionality}, not as {kind.name}")
        except Exception as error:
            raise DeclarationError(f"{rule.topic}: {name}: {text!r}: {error}") from error


def _sample(base: str, units: Any) -> Any:
    from .units import one

    return 7 * one(base)


def dimension(node: Any, known: dict[str, Any], units: Any) -> Any:
    """A formula worked with pint quantities, for its dimension alone; pint refuses what does not fit."""
    from grammar.formula import Binary, Call, Name, Negate, Number

    if isinstance(node, Number):
        return units.Quantity(node.value, "each")
    if isinstance(node, Name):
        if node.name == "pi":
            return units.Quantity(Fraction(22, 7), "each")
        if node.name not in known:
            raise KeyError(f"{node.name} is no number of this rule")
        return known[node.name]
    if isinstance(node, Negate):
        return dimension(node.of, known, units)
    if isinstance(node, Binary):
        return _binary_dimension(node, known, units)
    assert isinstance(node, Call)
    args = [dimension(arg, known, units) for arg in node.args[1 if node.name == "if" else 0 :]]
    if node.name == "count":
        return units.Quantity(Fraction(7), "each")
    if node.name == "sqrt":
        return args[0] ** 0.5
    if node.name in ("ceil", "floor", "round"):
        args[0].to("each")
        return args[0]
    for other in args[1:]:
        args[0] + other  # refuses to mix
    return args[0]


def _binary_dimension(node: Any, known: dict[str, Any], units: Any) -> Any:
    from grammar.formula import Number

    left = dimension(node.left, known, units)
    if node.op == "^":
        assert isinstance(node.right, Number), "a power is a plain number"
        return left ** int(node.right.value)
    right = dimension(node.right, known, units)
    if node.op == "*":
        return left * right
    if node.op == "/":
        return left / right
    if node.op in ("+", "-"):
        # Adding keeps to one dimension; the sample numbers are made equal to stay clear of nought.
        return left + abs(right)
    left + right
    return units.Quantity(Fraction(1), "each")
