"""Formula trees reworked: written back as text, one place changed at a time, their power of length."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator
from dataclasses import replace
from fractions import Fraction
from typing import Any

from grammar.formula import Binary, Call, Name, Negate, Node, Number

Change = Callable[[Node], Iterable[tuple[Any, Node]]]
Powers = Callable[[str], Fraction]


def text(node: Node) -> str:
    """The formula that reads as this tree, every part of it in brackets.

    >>> text(Binary("+", Name("edge"), Binary("*", Number(Fraction(5, 8)), Name("seam"))))
    '(edge + ((5 / 8) * seam))'
    """
    if isinstance(node, Number):
        value = node.value
        return str(value.numerator) if value.denominator == 1 else f"({value.numerator} / {value.denominator})"
    if isinstance(node, Name):
        return node.name
    if isinstance(node, Negate):
        return f"(-{text(node.of)})"
    if isinstance(node, Binary):
        whole = f"{text(node.left)} {node.op} {text(node.right)}"
        return whole if node.op in ("<", "<=", ">", ">=", "=", "!=") else f"({whole})"
    return f"{node.name}({', '.join(text(arg) for arg in node.args)})"


def changed_once(node: Node, change: Change) -> Iterator[tuple[Any, Node]]:
    """The tree with each change made at one place of it, beside the change's note; conditions of if() stay."""
    yield from change(node)
    if isinstance(node, Negate):
        yield from ((note, Negate(of)) for note, of in changed_once(node.of, change))
    elif isinstance(node, Binary) and node.op in "+-*/^":
        yield from ((note, replace(node, left=left)) for note, left in changed_once(node.left, change))
        yield from ((note, replace(node, right=right)) for note, right in changed_once(node.right, change))
    elif isinstance(node, Call):
        first = 1 if node.name == "if" else 0
        for place in range(first, len(node.args)):
            for note, arg in changed_once(node.args[place], change):
                yield note, replace(node, args=(*node.args[:place], arg, *node.args[place + 1 :]))


def power_of_base(base: str) -> Fraction:
    """The power of length in a kind's base unit.

    >>> power_of_base("mm^2"), power_of_base("st/mm"), power_of_base("degree")
    (Fraction(2, 1), Fraction(-1, 1), Fraction(0, 1))
    """
    above, _, below = base.partition("/")
    return _power(above) - _power(below)


def _power(unit: str) -> Fraction:
    name, _, power = unit.partition("^")
    return Fraction(int(power or 1)) if name == "mm" else Fraction(0)


def length_power(node: Node, of_name: Powers) -> Fraction:
    """The power of length a formula comes out in: 1 for a length, 2 for an area, 0 for a count."""
    if isinstance(node, Number):
        return Fraction(0)
    if isinstance(node, Name):
        return Fraction(0) if node.name == "pi" else of_name(node.name)
    if isinstance(node, Negate):
        return length_power(node.of, of_name)
    if isinstance(node, Call):
        inside = length_power(node.args[1 if node.name == "if" else 0], of_name)
        return inside / 2 if node.name == "sqrt" else inside
    left = length_power(node.left, of_name)
    if node.op == "^":
        return left * (node.right.value if isinstance(node.right, Number) else 1)
    if node.op == "*":
        return left + length_power(node.right, of_name)
    return left - length_power(node.right, of_name) if node.op == "/" else left


def every(node: Node) -> Iterator[Node]:
    """Every part of a tree, the whole one first."""
    yield node
    if isinstance(node, Negate):
        yield from every(node.of)
    elif isinstance(node, Binary):
        yield from every(node.left)
        yield from every(node.right)
    elif isinstance(node, Call):
        for arg in node.args:
            yield from every(arg)
