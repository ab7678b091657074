"""Equations that take more than turning operations round, solved exactly by sympy, which is loaded only for them."""

from __future__ import annotations

import operator
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from grammar.formula import Binary, Call, Name, Negate, Node

from . import formula
from .request import Number

if TYPE_CHECKING:
    from .known import Known

OPERATIONS = {"+": operator.add, "-": operator.sub, "*": operator.mul, "/": operator.truediv, "^": operator.pow}

def roots(known: Known, node: Node, value: Number) -> list[tuple[Number, bool]]:
    """The real values of the unknown for which a formula gives the value, each with whether the formula rises there.

    Fractions stay exact; an irrational root is a float. Raises Unpeelable for a formula that algebra cannot solve.
    """
    import sympy  # type: ignore[import-untyped]

    from .known import Unpeelable

    unknown = sympy.Symbol("unknown", real=True)
    expression = _expression(known, node, unknown)
    try:
        found = sympy.solve(sympy.Eq(expression, _number(value)), unknown)
        slope = sympy.diff(expression, unknown)
        real = [(root, slope.subs(unknown, root)) for root in found if root.is_real and not root.free_symbols]
        return [(_plain(root), bool(rise > 0)) for root, rise in real]
    except (NotImplementedError, ValueError, TypeError, AttributeError) as error:  # what sympy raises when it gives up
        raise Unpeelable("no algebra for it") from error


def _expression(known: Known, node: Node, unknown: Any) -> Any:
    """A formula of the rule as a sympy expression of the unknown, with all else put in."""
    import sympy

    from .known import Unpeelable

    node = known.branch(node)
    if not known.hangs_on_unknown(node):
        return sympy.pi if node == Name("pi") else _number(known.evaluate(node))
    if isinstance(node, Name):
        if node.name in known.unknown:
            return unknown
        return _expression(known, formula.read(known.formula_of(node.name)), unknown)
    if isinstance(node, Negate):
        return -_expression(known, node.of, unknown)
    if isinstance(node, Binary) and node.op in "+-*/^":
        left, right = _expression(known, node.left, unknown), _expression(known, node.right, unknown)
        return OPERATIONS[node.op](left, right)
    if isinstance(node, Call) and node.name == "sqrt":
        return sympy.sqrt(_expression(known, node.args[0], unknown))
    raise Unpeelable("a rounding or a choice inside the equation")


def _number(value: Number) -> Any:
    import sympy

    if isinstance(value, float):
        return sympy.Float(value)
    return sympy.Rational(value.numerator, value.denominator)


def _plain(root: Any) -> Number:
    return Fraction(int(root.p), int(root.q)) if root.is_Rational else float(root)
