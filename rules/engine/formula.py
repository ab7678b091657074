"""Formulas at work: read once, evaluated on plain numbers, shown in words and with the numbers put in."""

from __future__ import annotations

import math
from collections.abc import Callable
from fractions import Fraction
from functools import lru_cache
from typing import Any

from grammar import read_formula
from grammar.formula import Binary, Call, Name, Negate, Node, Number

Get = Callable[[str], Any]
Show = Callable[[str], str]
Take = Callable[[Node], bool]


class NoAnswer(ValueError):
    """The sum cannot be done with these numbers (a division by nought, the root of a negative)."""


_readers: list[Callable[[str], Node]] = [read_formula]


def use_reader(reader: Callable[[str], Node]) -> None:
    """Read formulas with tables built earlier, so that none is built at the start of a plain answer."""
    _readers[0] = reader


@lru_cache(maxsize=4096)
def read(text: str) -> Node:
    """The tree of a formula; each text is read once. Raises grammar.FormulaError for a bad one."""
    return _readers[0](text)


def names(node: Node) -> tuple[str, ...]:
    """Every name in a formula, in order, repeats included; pi is a number, not a name."""
    if isinstance(node, Name):
        return () if node.name == "pi" else (node.name,)
    if isinstance(node, Negate):
        return names(node.of)
    if isinstance(node, Binary):
        return names(node.left) + names(node.right)
    if isinstance(node, Call):
        return tuple(name for arg in node.args for name in names(arg))
    return ()


def evaluate(node: Node, get: Get, rounded: Get) -> Any:
    """The value of a formula in base units: a Fraction while it can be, a float once a root or pi enters.

    get: the exact value of a name; rounded: the value of a step after its own rounding. Raises NoAnswer.
    """
    if isinstance(node, Number):
        return node.value
    if isinstance(node, Name):
        return math.pi if node.name == "pi" else get(node.name)
    if isinstance(node, Negate):
        return -evaluate(node.of, get, rounded)
    if isinstance(node, Binary):
        return _binary(node, get, rounded)
    return _call(node, get, rounded)


def _binary(node: Binary, get: Get, rounded: Get) -> Any:
    left, right, op = evaluate(node.left, get, rounded), evaluate(node.right, get, rounded), node.op
    if op == "+":
        return left + right
    if op == "-":
        return left - right
    if op == "*":
        return left * right
    if op == "/":
        if right == 0:
            raise NoAnswer("it would divide by nought")
        return left / right
    if op == "^":
        return left ** int(right)
    return _compare(op, left, right)


def _compare(op: str, left: Any, right: Any) -> bool:
    if op == "<":
        return bool(left < right)
    if op == "<=":
        return bool(left <= right)
    if op == ">":
        return bool(left > right)
    if op == ">=":
        return bool(left >= right)
    return bool((left == right) is (op == "="))


def _whole(value: Any, how: str) -> Fraction:
    """ceil, floor or round (ties up); a float a hair from a whole number is that number."""
    if isinstance(value, float) and abs(value - round(value)) < 1e-9 * max(1.0, abs(value)):
        return Fraction(round(value))
    if how == "ceil":
        return Fraction(math.ceil(value))
    return Fraction(math.floor(value)) if how == "floor" else Fraction(math.floor(value + Fraction(1, 2)))


def root(value: Any) -> Any:
    """The square root: exact for the square of a fraction, else a float. Raises NoAnswer below nought."""
    if value < 0:
        raise NoAnswer("it would need the root of a negative number")
    if isinstance(value, Fraction):
        above, below = math.isqrt(value.numerator), math.isqrt(value.denominator)
        if above * above == value.numerator and below * below == value.denominator:
            return Fraction(above, below)
    return math.sqrt(value)


def _call(node: Call, get: Get, rounded: Get) -> Any:
    if node.name == "if":
        return evaluate(node.args[1 if evaluate(node.args[0], get, rounded) else 2], get, rounded)
    if node.name == "rounded":
        only = node.args[0]
        assert isinstance(only, Name)
        return rounded(only.name)
    values = [evaluate(arg, get, rounded) for arg in node.args]
    if node.name in ("ceil", "floor", "round"):
        return _whole(values[0], node.name)
    if node.name == "sqrt":
        return root(values[0])
    if node.name in SIMPLE:
        return SIMPLE[node.name](values)
    raise NoAnswer(f"{node.name}() is no function of the formula language")


def _sum(values: list[Any]) -> Any:
    (items,) = values
    return sum((item.value * item.count for item in items), Fraction(0))


def _count(values: list[Any]) -> Any:
    (items,) = values
    return sum((item.count for item in items), Fraction(0))


SIMPLE: dict[str, Callable[[list[Any]], Any]] = {
    "min": min, "max": max, "abs": lambda values: abs(values[0]), "sum": _sum, "count": _count,
}  # fmt: skip

_WORDS = {"*": "×", "/": "÷", "-": "−", "^": "^"}
_RANK = {"<": 0, "<=": 0, ">": 0, ">=": 0, "=": 0, "!=": 0, "+": 1, "-": 1, "*": 2, "/": 2, "^": 4}
_CALL_WORDS = {"ceil": "round up", "floor": "round down", "round": "round", "sqrt": "square root of", "rounded": "",
               "sum": "sum of", "count": "number of", "min": "the lesser of", "max": "the greater of", "abs": "size of"}  # fmt: skip


def show(node: Node, name: Show, rounded: Show | None = None, take: Take | None = None) -> str:
    """A formula for reading. name: how a name is shown (its label, or the number put in); rounded: likewise for
    rounded(step). take: says whether a condition holds, so that only the branch taken of an if() is shown."""
    return _show(node, name, rounded or name, take)[0]


def _show(node: Node, name: Show, rounded: Show, take: Take | None) -> tuple[str, int]:
    if isinstance(node, Number):
        value = node.value
        if value.denominator == 1:
            return str(value.numerator), 9
        exact = value * 1000
        return (f"{float(value):g}", 9) if exact.denominator == 1 else (f"{value.numerator}/{value.denominator}", 2)
    if isinstance(node, Name):
        return ("π" if node.name == "pi" else name(node.name)), 9
    if isinstance(node, Negate):
        return "−" + _inside(node.of, 3, name, rounded, take), 3
    if isinstance(node, Binary):
        rank = _RANK[node.op]
        left = _inside(node.left, rank, name, rounded, take)
        right = _inside(node.right, rank + (node.op in "-/"), name, rounded, take)
        return f"{left} {_WORDS.get(node.op, node.op)} {right}", rank
    return _show_call(node, name, rounded, take)


def _show_call(node: Call, name: Show, rounded: Show, take: Take | None) -> tuple[str, int]:
    if node.name == "rounded":
        only = node.args[0]
        assert isinstance(only, Name)
        return rounded(only.name), 9
    if node.name == "if" and take is not None:
        return _show(node.args[1 if take(node.args[0]) else 2], name, rounded, take)
    inside = [_show(arg, name, rounded, take)[0] for arg in node.args]
    if node.name == "if":
        return f"({inside[1]} if {inside[0]}, else {inside[2]})", 9
    if node.name in ("min", "max"):
        return f"{_CALL_WORDS[node.name]} {' and '.join(inside)}", 0
    return f"{_CALL_WORDS.get(node.name, node.name)} ({inside[0]})", 9


def _inside(node: Node, rank: int, name: Show, rounded: Show, take: Take | None) -> str:
    text, own = _show(node, name, rounded, take)
    return f"({text})" if own < rank else text
