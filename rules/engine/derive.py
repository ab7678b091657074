"""Formulas derived from geometry, every line checked by algebra; and any rule's steps put together and turned round.

sympy does the algebra. It is loaded only here and only when a derivation is asked for.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any

from grammar.formula import Binary, Call, Name, Negate, Node, Number

from . import formula
from .declare import Derivation, Fact, Rule
from .kinds import TEXT
from .literal import literal
from .request import Given, Request
from .rounding import apply
from .run import Run
from .slips import label_of
from .symbols import DerivationError, expression, tree
from .text import shown
from .trees import every

PLAIN_ROOT = re.compile(r"square root of \((\w+)\)")
DIRECTIONS = {"up": "up to the next", "down": "down to the next", "near": "to the nearest", "ties up": "to the nearest"}


@dataclass(frozen=True, slots=True)
class Shown:
    """A line of a derivation for reading. fact: the derivation starts from it; it follows from nothing above it."""

    words: str
    equation: str
    fact: bool = False


# -- from geometry to the rule ---------------------------------------------------------------------------------------


def derived(rule: Rule, made: Derivation) -> tuple[Shown, ...]:
    """The lines of a derivation, each checked. Raises DerivationError for one that does not hold."""
    check(rule, made)
    return tuple(Shown(line.words, in_words(rule, made, line.equation), isinstance(line, Fact)) for line in made.lines)


def check(rule: Rule, made: Derivation) -> None:
    """Let sympy see that every line follows from the facts above it, and that the last is the rule's own formula."""
    import sympy  # type: ignore[import-untyped]

    inputs, last = {item.name for item in rule.inputs}, set(formula.names(sides(rule, made.lines[-1].equation)[1]))
    facts: list[Any] = []
    for number, line in enumerate(made.lines, 1):
        left, right = (expression(side) for side in sides(rule, line.equation))
        if isinstance(line, Fact):
            facts.append(sympy.Eq(left, right, evaluate=False))
        elif not _follows(left - right, facts, inputs, last):
            raise DerivationError(
                f"{rule.topic}: line {number} does not follow from the lines above it: {line.equation}"
            )
    if rule_formula(rule, made) is None:
        _check_in_numbers(rule, made)
    else:
        _check_last(rule, made)


def _follows(residue: Any, facts: list[Any], inputs: set[str], last: set[str]) -> bool:
    """Whether an expression is nought wherever the facts are.

    Each fact that says what something is is put in its place. Where that is not enough, the facts are solved for what
    is neither given nor in the last line, and then for all that is not given.
    """
    import sympy

    if sympy.simplify(_put_in(residue, facts)) == 0:
        return True
    return any(_nought_where_solved(residue, facts, known) for known in (inputs | last, inputs))


def _put_in(residue: Any, facts: list[Any]) -> Any:
    """An expression with each thing that a fact names put in, the latest fact first."""
    import sympy

    for fact in reversed(facts):
        named = [
            symbol for symbol in fact.lhs.free_symbols if fact.lhs == symbol and symbol not in fact.rhs.free_symbols
        ]
        residue = residue.subs(dict.fromkeys(named, fact.rhs))
    return sympy.expand(residue)


def _nought_where_solved(residue: Any, facts: list[Any], known: set[str]) -> bool:
    import sympy

    symbols = {symbol for fact in facts for symbol in fact.free_symbols if symbol.name not in known}
    order = sorted(symbols, key=lambda symbol: str(symbol.name))
    solutions = sympy.solve(facts, order, dict=True) if facts else []
    return bool(solutions) and all(sympy.simplify(residue.subs(solution)) == 0 for solution in solutions)


def _check_last(rule: Rule, made: Derivation) -> None:
    """The last line against the formula. Raises DerivationError."""
    import sympy

    _, right = sides(rule, made.lines[-1].equation)
    own = rule_formula(rule, made)
    assert own is not None
    difference = expression(right) - expression(put_together(rule, own, set(formula.names(right))))
    if sympy.simplify(difference) != 0:
        raise DerivationError(_not_the_rule(rule, made))


def _check_in_numbers(rule: Rule, made: Derivation) -> None:
    """The last line against what the rule's algorithm gives for the numbers to try it with. Raises DerivationError."""
    given = {name: _given(rule, name, text) for name, text in made.try_with.items()}
    if not given:
        raise DerivationError(
            f"{rule.topic}: {made.step} comes of an algorithm; give try_with= numbers to check its derivation by"
        )
    run = Run(rule, Request(rule.topic, given=given, asked=(made.step,)))
    _, right = sides(rule, made.lines[-1].equation)
    own, worked = float(run.get(made.step)), float(formula.evaluate(right, run.get, run.rounded))
    if abs(own - worked) > 1e-9 * abs(own):
        raise DerivationError(_not_the_rule(rule, made))


def _not_the_rule(rule: Rule, made: Derivation) -> str:
    return f"{rule.topic}: the last line, {made.lines[-1].equation}, is not what the rule reckons for {made.step}"


def _given(rule: Rule, name: str, text: str, system: str = "in") -> Given:
    item = rule.input(name)
    if item is not None and item.options:
        return Given(text, "text", text)
    value, unit, shown_text = literal(text, system)
    return Given(value, unit or "1", shown_text)


def rule_formula(rule: Rule, made: Derivation) -> Node | None:
    """The formula that is derived: the step's own, the part of it that `of` names, or None for an algorithm's.

    Raises DerivationError when there is no such step, or no such part in it.
    """
    step = rule.step(made.step)
    if step is None:
        raise DerivationError(f"{rule.topic}: derives {made.step}, which is no step")
    if not step.formula:
        return None
    whole = formula.read(step.formula)
    if not made.of:
        return whole
    part = formula.read(made.of)
    if part not in every(whole):
        raise DerivationError(f"{rule.topic}: {made.of} is no part of the formula of {made.step}: {step.formula}")
    return part


def sides(rule: Rule, equation: str) -> tuple[Node, Node]:
    """The two sides of "left = right". Raises DerivationError."""
    left, equals, right = equation.partition("=")
    if not equals:
        raise DerivationError(f"{rule.topic}: {equation!r} is no equation; write: side ^ 2 = 2 * leg ^ 2")
    return formula.read(left.strip()), formula.read(right.strip())


def in_words(rule: Rule, made: Derivation, equation: str) -> str:
    """An equation with things called by their names."""
    return " = ".join(words(rule, side, made) for side in sides(rule, equation))


def words(rule: Rule, node: Node, made: Derivation | None = None) -> str:
    """A formula with things called by their names, powers as small figures, roots with their sign."""
    names = made.names if made else {}
    text = formula.show(node, lambda name: name.replace("_", " ") if name in names else label_of(rule, name))
    text = PLAIN_ROOT.sub(r"√\1", text).replace("square root of (", "√(")
    return text.replace(" ^ 2", "²").replace(" ^ 3", "³")


def tried(rule: Rule, made: Derivation, system: str) -> str:
    """The last line in numbers, rounded as the trade rounds it; "" when there is nothing to try it with."""
    step = rule.step(made.step)
    if not made.try_with or step is None:
        return ""
    values = {name: _given(rule, name, text, system) for name, text in made.try_with.items()}
    _, right = sides(rule, made.lines[-1].equation)
    exact = formula.evaluate(right, lambda name: values[name].value, lambda name: values[name].value)
    given = ", ".join(f"{label_of(rule, name)} {one.text}" for name, one in values.items())
    how = step.rounding.of(system) if step.rounding is not None else None
    unit = how.unit if how is not None else step.kind.inch if system == "in" else step.kind.metric
    worked = shown(float(exact) if exact % 1 else exact, unit)
    if how is None or apply(exact, how) == exact:
        return f"With {given}: {worked}"
    rounded = shown(apply(exact, how), how.unit)
    return f"With {given}: {worked}, {DIRECTIONS[how.direction]} {shown(how.base_step(), how.unit)}: {rounded}"


# -- any rule's formulas -----------------------------------------------------------------------------------------------


def put_together(rule: Rule, node: Node, kept: set[str]) -> Node:
    """A formula with each step and each worked-out input put in by its own formula, but for those kept by name."""
    if isinstance(node, Name):
        inside = "" if node.name in kept else _formula_of(rule, node.name)
        return put_together(rule, formula.read(inside), kept | {node.name}) if inside else node
    if isinstance(node, Negate):
        return Negate(put_together(rule, node.of, kept))
    if isinstance(node, Binary):
        return Binary(node.op, put_together(rule, node.left, kept), put_together(rule, node.right, kept))
    if isinstance(node, Call):
        if node.name == "rounded":
            return put_together(rule, node.args[0], kept)
        return Call(node.name, tuple(put_together(rule, arg, kept) for arg in node.args))
    return node


def _formula_of(rule: Rule, name: str) -> str:
    step, item = rule.step(name), rule.input(name)
    if step is not None:
        return step.formula if step.kind is not TEXT else ""
    ways = [one.value[1:] for one in (item.defaults if item else ()) if one.derived and one.value.startswith("=")]
    return ways[0] if len(ways) == 1 and item is not None and len(item.defaults) == 1 else ""


def whole_formula(rule: Rule, target: str) -> Node | None:
    """A result as one formula of what is given; None when an algorithm or a choice stands in the way."""
    inside = _formula_of(rule, target)
    if not inside:
        return None
    node = put_together(rule, formula.read(inside), {target})
    return (
        node
        if all(isinstance(part, Number | Name | Negate | Binary) or _is_root(part) for part in every(node))
        else None
    )


def _is_root(node: Node) -> bool:
    return isinstance(node, Call) and node.name == "sqrt"


def simplified(rule: Rule, target: str) -> Node | None:
    """The result as one formula, as short as algebra makes it; None where there is no one formula."""
    import sympy

    node = whole_formula(rule, target)
    return None if node is None else tree(sympy.factor_terms(sympy.simplify(expression(node))))


def turned_round(rule: Rule, target: str) -> Iterator[tuple[str, Node]]:
    """(input, formula) for each input that a result can be solved for, before any rounding."""
    import sympy

    node = whole_formula(rule, target)
    if node is None:
        return
    made = expression(node)
    for name in dict.fromkeys(formula.names(node)):
        try:
            found = sympy.solve(made - sympy.Symbol(target, positive=True), sympy.Symbol(name, positive=True))
            if len(found) == 1:
                yield name, tree(sympy.factor_terms(found[0]))
        except (NotImplementedError, ValueError, TypeError):  # what sympy raises when it gives up
            continue
