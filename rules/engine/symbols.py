"""Formulas as sympy expressions of positive symbols, and back again. sympy is loaded only when one is called for."""

from __future__ import annotations

import operator
from fractions import Fraction
from typing import Any

from grammar.formula import Binary, Call, Name, Negate, Node, Number

OPERATIONS = {"+": operator.add, "-": operator.sub, "*": operator.mul, "/": operator.truediv, "^": operator.pow}


class DerivationError(ValueError):
    """A line that does not follow, or a last line that is not what the rule reckons; the message names both."""


def expression(node: Node) -> Any:
    """A formula as a sympy expression of positive symbols. Raises DerivationError for what algebra cannot take."""
    import sympy  # type: ignore[import-untyped]

    if isinstance(node, Number):
        return sympy.Rational(node.value.numerator, node.value.denominator)
    if isinstance(node, Name):
        return sympy.pi if node.name == "pi" else sympy.Symbol(node.name, positive=True)
    if isinstance(node, Negate):
        return -expression(node.of)
    if isinstance(node, Binary) and node.op in OPERATIONS:
        return OPERATIONS[node.op](expression(node.left), expression(node.right))
    if isinstance(node, Call) and node.name == "sqrt":
        return sympy.sqrt(expression(node.args[0]))
    if isinstance(node, Call) and node.name == "rounded":
        return expression(node.args[0])
    raise DerivationError(
        f"{type(node).__name__} {getattr(node, 'name', '')} has no place in a derivation; derive a part with of="
    )


def tree(made: Any) -> Node:
    """A sympy expression as a formula tree. Raises ValueError for what the formula language lacks."""
    import sympy

    if made == sympy.pi:
        return Name("pi")
    if made.is_Symbol:
        return Name(made.name)
    if made.is_Rational:
        value = Number(Fraction(abs(int(made.p)), int(made.q)))
        return Negate(value) if made < 0 else value
    if made.is_Add:
        return _added(sorted(made.args, key=lambda term: term.could_extract_minus_sign()))
    if made.is_Mul:
        return _multiplied(made)
    if made.is_Pow:
        if made.exp == sympy.Rational(1, 2):
            return Call("sqrt", (tree(made.base),))
        if made.exp.is_Integer and made.exp > 0:
            return Binary("^", tree(made.base), tree(made.exp))
        return Binary("/", Number(Fraction(1)), tree(1 / made))
    raise ValueError(f"{made} cannot be written as a formula")


def _added(terms: list[Any]) -> Node:
    whole = tree(terms[0])
    for term in terms[1:]:
        minus = term.could_extract_minus_sign()
        whole = Binary("-" if minus else "+", whole, tree(-term if minus else term))
    return whole


def _multiplied(made: Any) -> Node:
    if made.could_extract_minus_sign():
        return Negate(tree(-made))
    above, below = made.as_numer_denom()
    if below.as_coeff_Add()[0] < 0:  # 1 - share reads better than share - 1
        above, below = -above, -below
    if below != 1:
        return Binary("/", tree(above), tree(below))
    first, *others = made.args
    whole = tree(first)
    for factor in others:
        whole = Binary("*", whole, tree(factor))
    return whole
