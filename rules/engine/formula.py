"""Formulas at work: read once, evaluated on plain numbers, shown in words and with the numbers put in."""

from __future__ import annotations

import math
import operator
from collections.abc import Callable
from fractions import Fraction
from functools import lru_cache
from typing import Any, NamedTuple

from grammar import read_formula
from grammar.formula import Binary, Call, Name, Negate, Node, Number

Get = Callable[[str], Any]
Show = Callable[[str], str]
Work = Callable[[Get, Get], Any]
Take = Callable[[Work], bool]


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


def surely_needed(node: Node) -> tuple[str, ...]:
    """The names in a formula whose values it needs whatever the others are: those outside the branches of an if()."""
    if isinstance(node, Call) and node.name == "if":
        return surely_needed(node.args[0])
    if isinstance(node, Negate):
        return surely_needed(node.of)
    if isinstance(node, Binary):
        return surely_needed(node.left) + surely_needed(node.right)
    if isinstance(node, Call):
        return tuple(name for arg in node.args for name in surely_needed(arg))
    return names(node)


def evaluate(node: Node, get: Get, rounded: Get) -> Any:
    """The value of a formula in base units: a Fraction while it can be, a float once a root or pi enters.

    get: the exact value of a name; rounded: the value of a step after its own rounding. Raises NoAnswer.
    """
    return worker(node)(get, rounded)


def worker(node: Node) -> Work:
    """A formula made ready to be worked many times: a function of get and rounded, as `evaluate` takes them."""
    if isinstance(node, Number):
        value = node.value
        return lambda get, rounded: value
    if isinstance(node, Name):
        name = node.name
        return (lambda get, rounded: math.pi) if name == "pi" else (lambda get, rounded: get(name))
    if isinstance(node, Negate):
        of = worker(node.of)
        return lambda get, rounded: -of(get, rounded)
    if isinstance(node, Binary):
        left, right, operation = worker(node.left), worker(node.right), OPERATIONS[node.op]
        return lambda get, rounded: operation(left(get, rounded), right(get, rounded))
    return _call_worker(node)


def _divide(left: Any, right: Any) -> Any:
    if right == 0:
        raise NoAnswer("it would divide by nought")
    return left / right


OPERATIONS: dict[str, Callable[[Any, Any], Any]] = {
    "+": operator.add, "-": operator.sub, "*": operator.mul, "/": _divide, "^": lambda left, right: left ** int(right),
    "<": operator.lt, "<=": operator.le, ">": operator.gt, ">=": operator.ge, "=": operator.eq, "!=": operator.ne,
}  # fmt: skip


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


def _call_worker(node: Call) -> Work:
    if node.name == "rounded":
        only = node.args[0]
        assert isinstance(only, Name)
        name = only.name
        return lambda get, rounded: rounded(name)
    args = [worker(arg) for arg in node.args]
    if node.name == "if":
        holds, then, other = args
        return lambda get, rounded: then(get, rounded) if holds(get, rounded) else other(get, rounded)
    function = FUNCTIONS.get(node.name)
    if function is None:
        raise NoAnswer(f"{node.name}() is no function of the formula language")
    return lambda get, rounded: function([arg(get, rounded) for arg in args])


def _sum(values: list[Any]) -> Any:
    (items,) = values
    return sum((item.value * item.count for item in items), Fraction(0))


def _count(values: list[Any]) -> Any:
    (items,) = values
    return sum((item.count for item in items), Fraction(0))


FUNCTIONS: dict[str, Callable[[list[Any]], Any]] = {
    "min": min, "max": max, "abs": lambda values: abs(values[0]), "sum": _sum, "count": _count, "sqrt": lambda values: root(values[0]),
    "ceil": lambda values: _whole(values[0], "ceil"), "floor": lambda values: _whole(values[0], "floor"),
    "round": lambda values: _whole(values[0], "round"),
}  # fmt: skip

_WORDS = {"*": "×", "/": "÷", "-": "−", "^": "^"}
_RANK = {"<": 0, "<=": 0, ">": 0, ">=": 0, "=": 0, "!=": 0, "+": 1, "-": 1, "*": 2, "/": 2, "^": 4}
_CALL_WORDS = {"ceil": "round up", "floor": "round down", "round": "round", "sqrt": "square root of", "rounded": "",
               "sum": "sum of", "count": "number of", "min": "the lesser of", "max": "the greater of", "abs": "size of"}  # fmt: skip


class Rounded(NamedTuple):
    """In a formula for reading: where the value of a step after its own rounding goes."""

    name: str


class Choice(NamedTuple):
    """In a formula for reading: an if(), of which only the branch taken is read."""

    holds: Work
    then: Pieces
    other: Pieces


Piece = str | Name | Rounded | Choice
Pieces = tuple[Piece, ...]


def show(node: Node, name: Show, rounded: Show | None = None, take: Take | None = None) -> str:
    """A formula for reading. name: how a name is shown (its label, or the number put in); rounded: likewise for
    rounded(step). take: says whether a condition holds, so that only the branch taken of an if() is shown."""
    found = pieces(node, choices=take is not None)
    return filled(found if take is None else taken(found, take), name, rounded or name)


def taken(found: Pieces, take: Take) -> Pieces:
    """The pieces with each choice settled."""
    if not any(type(piece) is Choice for piece in found):
        return found
    settled: list[Piece] = []
    for piece in found:
        settled += taken(piece.then if take(piece.holds) else piece.other, take) if isinstance(piece, Choice) else (piece,)
    return tuple(settled)


def filled(found: Pieces, name: Show, rounded: Show) -> str:
    """The pieces as one text, their names shown; no choice is left in them."""
    texts = []
    for piece in found:
        if isinstance(piece, str):
            texts.append(piece)
        elif isinstance(piece, Rounded):
            texts.append(rounded(piece.name))
        elif isinstance(piece, Name):
            texts.append("π" if piece.name == "pi" else name(piece.name))
    return "".join(texts)


def pieces(node: Node, choices: bool) -> Pieces:
    """A formula as it is read, in texts and the names between them. choices: an if() becomes a Choice, else words."""
    return _joined(_inside(node, -1, choices))


def _joined(found: Pieces) -> Pieces:
    """Pieces with texts side by side made one."""
    joined: list[Piece] = []
    for piece in found:
        if isinstance(piece, str) and joined and isinstance(joined[-1], str):
            joined[-1] += piece
        elif isinstance(piece, Choice):
            joined.append(Choice(piece.holds, _joined(piece.then), _joined(piece.other)))
        else:
            joined.append(piece)
    return tuple(joined)


def _inside(node: Node, rank: int, choices: bool) -> Pieces:
    """The pieces of a part of a formula, in brackets where it binds less than what it stands in."""
    if choices and isinstance(node, Call) and node.name == "if":
        holds, then, other = node.args
        return (Choice(worker(holds), _inside(then, rank, choices), _inside(other, rank, choices)),)
    found, own = _pieces(node, choices)
    return ("(", *found, ")") if own < rank else found


def _pieces(node: Node, choices: bool) -> tuple[Pieces, int]:
    """The pieces of a formula, and how tightly it binds."""
    if isinstance(node, Number):
        value = node.value
        if value.denominator == 1:
            return (str(value.numerator),), 9
        exact = value * 1000
        return ((f"{float(value):g}",), 9) if exact.denominator == 1 else ((f"{value.numerator}/{value.denominator}",), 2)
    if isinstance(node, Name):
        return (node,), 9
    if isinstance(node, Negate):
        return ("−", *_inside(node.of, 3, choices)), 3
    if isinstance(node, Binary):
        rank = _RANK[node.op]
        left = _inside(node.left, rank, choices)
        right = _inside(node.right, rank + (node.op in "-/"), choices)
        return (*left, f" {_WORDS.get(node.op, node.op)} ", *right), rank
    return _pieces_of_call(node, choices)


def _pieces_of_call(node: Call, choices: bool) -> tuple[Pieces, int]:
    if node.name == "rounded":
        only = node.args[0]
        assert isinstance(only, Name)
        return (Rounded(only.name),), 9
    inside = [_inside(arg, -1, choices) for arg in node.args]
    word = _CALL_WORDS.get(node.name, node.name)
    if node.name == "if":
        holds, then, other = inside
        return ("(", *then, " if ", *holds, ", else ", *other, ")"), 9
    if node.name in ("min", "max"):
        first, *more = inside
        return (f"{word} ", *first, *(piece for each in more for piece in (" and ", *each))), 0
    return (f"{word} (", *inside[0], ")"), 9


class Formula:
    """A formula made ready: its tree, its value as a function (see `worker`), and how it is read (see `pieces`)."""

    __slots__ = ("is_choice", "node", "pieces", "value")

    def __init__(self, node: Node) -> None:
        self.node = node
        self.value = worker(node)
        self.pieces = pieces(node, choices=True)
        self.is_choice = isinstance(node, Call) and node.name == "if"


@lru_cache(maxsize=4096)
def ready(text: str) -> Formula:
    """A formula of a rule made ready; each text only once. Raises grammar.FormulaError for a bad one."""
    return Formula(read(text))
