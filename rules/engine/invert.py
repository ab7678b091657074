"""Formulas turned round: from a stated result back to the one value that is unknown, a step of working at a time."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction
from typing import Any

from grammar.formula import Binary, Call, Name, Negate, Node

from . import formula
from .known import AnyValue, Known, NoValue, Unpeelable
from .request import Number
from .run import Impossible

THAT = Name("")  # stands for the value of the line above in a formula of the working
OTHER = {"most": "least", "least": "most", "only": "only"}
ROUNDINGS = {"ceil": "up", "floor": "down", "round": "near"}


@dataclass(frozen=True, slots=True)
class Bound:
    """The end of what a value may be. want: it is this at "most", at "least", or this "only"; open: not quite this."""

    value: Number
    want: str
    open: bool = False

    def in_words(self) -> str:
        words = {("most", False): "at most", ("most", True): "less than", ("least", False): "at least",
                 ("least", True): "more than"}  # fmt: skip
        return words.get((self.want, self.open), "")


def unround(bound: Bound, size: Fraction, direction: str) -> Bound:
    """What a value may be before it is rounded to a multiple of size, exactly, when after it the bound holds.

    A single value that is rounded to the nearest is taken as it is.

    >>> unround(Bound(Fraction(15, 2), "most"), Fraction(1), "up")
    Bound(value=Fraction(7, 1), want='most', open=False)
    """
    want = bound.want
    if want == "only":
        if direction == "near":
            return bound
        want = "most" if direction == "up" else "least"
    units = bound.value / (size if isinstance(bound.value, Fraction) else float(size))
    if isinstance(units, float) and abs(units - round(units)) < 1e-9 * max(1.0, abs(units)):
        units = Fraction(round(units))  # a hair's breadth from a multiple through a root or pi
    if want == "most":
        whole = math.floor(units) - (1 if bound.open and units == math.floor(units) else 0)
        edge = {"up": Fraction(0), "near": Fraction(1, 2), "down": Fraction(1)}[direction]
        return Bound((whole + edge) * size, want, direction != "up")
    whole = math.ceil(units) + (1 if bound.open and units == math.ceil(units) else 0)
    edge = {"up": Fraction(-1), "near": Fraction(-1, 2), "down": Fraction(0)}[direction]
    return Bound((whole + edge) * size, want, direction == "up")


class Peeler:
    """Peels a step's formula, operation by operation, until the unknown is left; writes the working into the run."""

    def __init__(self, known: Known, step: str, bound: Bound) -> None:
        self.known, self.bound = known, bound
        self.node: Node = Name(step)
        self.that = known.label(step)
        self.number = known.text(self.node, bound.value)
        self.falls = False  # whether the result falls while the unknown rises, as far as it is peeled

    def peel(self) -> Bound:
        """The bound of the unknown. Raises Unpeelable, Needs for a missing value, Impossible when there is none."""
        if not self.known.hangs_on_unknown(self.node):
            unknown = self.known.label(self.known.unknown[0])
            raise Impossible(f"The {unknown} makes no difference to the {self.that}. Ask for another of its numbers.")
        while not (isinstance(self.node, Name) and self.node.name in self.known.unknown):
            self._peel_one()
        return self.bound

    def _peel_one(self) -> None:
        node = self.known.branch(self.node)
        if isinstance(node, Name):
            self.that = self.known.label(node.name)
            self.node = formula.read(self.known.formula_of(node.name))
        elif isinstance(node, Negate):
            self._turn("Change the sign", Negate(THAT), node.of, True)
        elif isinstance(node, Binary):
            self._peel_binary(node)
        else:
            assert isinstance(node, Call)
            self._peel_call(node)

    def _peel_binary(self, node: Binary) -> None:
        on_left, on_right = self.known.hangs_on_unknown(node.left), self.known.hangs_on_unknown(node.right)
        if on_left and on_right:
            self._peel_gathered(node)
            return
        inner, other = (node.left, node.right) if on_left else (node.right, node.left)
        value = self.known.evaluate(other)
        name = self._name(other)
        if node.op == "+":
            self._turn(f"Take off {name}", Binary("-", THAT, other), inner, False)
        elif node.op == "-" and on_left:
            self._turn(f"Add {name} back", Binary("+", THAT, other), inner, False)
        elif node.op == "-":
            self._turn(f"Take it from {name}", Binary("-", other, THAT), inner, True)
        elif node.op == "*":
            self._turn(f"Divide by {name}", Binary("/", THAT, other), inner, value < 0)
        elif node.op == "/" and on_left:
            self._turn(f"Multiply by {name}", Binary("*", THAT, other), inner, value < 0)
        elif node.op == "/":
            if self.bound.value * value <= 0:
                raise self._out_of_reach()
            self._turn(f"Divide {name} by it", Binary("/", other, THAT), inner, True)
        elif node.op == "^" and on_left and value == 2:
            self._turn("Take the square root", Call("sqrt", (THAT,)), inner, False)
        else:
            raise Unpeelable(node.op)

    def _peel_call(self, node: Call) -> None:
        inner = node.args[0]
        if node.name in ROUNDINGS:
            self._turn_rounding(inner, Fraction(1), ROUNDINGS[node.name])
        elif node.name == "rounded":
            assert isinstance(inner, Name)
            step = self.known.rule.step(inner.name)
            how = self.known.rounding(step) if step else None
            if how is not None:
                self._turn_rounding(inner, how.base_step(), how.direction)
            self.node = inner
        elif node.name == "sqrt":
            if self.bound.value < 0:
                raise self._out_of_reach()
            self._turn("Multiply it by itself", Binary("*", THAT, THAT), inner, False)
        elif node.name in ("min", "max"):
            self._peel_limit(node)
        elif node.name == "sum" and isinstance(inner, Name) and inner.name in self.known.unknown:
            self.node = inner
        else:
            raise Unpeelable(node.name)

    def _peel_limit(self, node: Call) -> None:
        """The lesser or the greater of a known and an unknown value: the unknown one must be what counts."""
        free = [arg for arg in node.args if self.known.hangs_on_unknown(arg)]
        if len(free) != 1:
            raise Unpeelable(node.name)
        known = [self.known.evaluate(arg) for arg in node.args if arg is not free[0]]
        limit = min(known) if node.name == "min" else max(known)
        beyond, loose = self.bound.value - limit, "most" if node.name == "min" else "least"
        if self.bound.want == loose and (beyond >= 0 if loose == "most" else beyond <= 0):
            raise AnyValue(node.name)
        if beyond > 0 if loose == "most" else beyond < 0:
            raise self._nothing()
        if beyond == 0 and self.bound.want == "only":
            self.bound = Bound(limit, OTHER[loose])
        self._say(f"The {self.known.words(free[0])} is what counts", self.known.words(node), "", free[0])
        self.node, self.that = free[0], "that"

    def _peel_gathered(self, node: Binary) -> None:
        """The unknown on both sides: gathered when it is only multiplied and added to, else solved as an equation."""
        try:
            times, rest = linear(self.known, node)
        except Unpeelable:
            self._solve(node)
            return
        if times == 0:
            raise self._nothing()
        known, unknown = self.known, Name(self.known.unknown[0])
        times_text, rest_text = known.text(Binary("/", node, unknown), times), known.text(node, rest)
        both = " and ".join(f"the {known.label(name)}" for name in known.unknown)
        why = f"{both} are the same" if len(known.unknown) > 1 else f"{both} comes in more than once"
        gathered = f"{times_text} × {known.label(unknown.name)}" + (f" + {rest_text}" if rest else "")
        value = (self.bound.value - rest) / times
        self._take(value, times < 0)
        numbers = f"({self.number} − {rest_text}) ÷ {times_text}" if rest else f"{self.number} ÷ {times_text}"
        self._say(f"{why[0].upper()}{why[1:]}", f"{known.words(node)} = {gathered}", numbers, unknown)
        self.node, self.that = unknown, "that"

    def _solve(self, node: Node) -> None:
        """An equation in which the unknown comes in more than once, solved by algebra."""
        from .algebra import roots  # brings sympy, which takes longer than a plain answer

        known, unknown = self.known, Name(self.known.unknown[0])
        found = [root for root in roots(known, node, self.bound.value) if known.allows(root[0])]
        if not found:
            raise Unpeelable("no root that makes sense")
        value, rises = max(found)
        self._take(value, not rises)
        sentence = f"The {known.label(unknown.name)} comes in more than once: solve for it, and put it in to check"
        self._say(sentence, f"{known.words(node)} = {self.that}", self.number, unknown)
        self.node, self.that = unknown, "that"

    # -- one line of working ------------------------------------------------------------------------------------

    def _turn(self, sentence: str, inverse: Node, inner: Node, flips: bool) -> None:
        """Take one operation off: inverse is the sum that gives the inner formula's value from THAT."""
        try:
            value = formula.evaluate(inverse, self._get, self.known.rounded)
        except formula.NoAnswer:
            raise self._out_of_reach() from None
        numbers = self.known.numbers(inverse, self.number)
        self._take(value, flips)
        self._say(sentence, f"{self.known.words(inner)} = {self.known.words(inverse, self.that)}", numbers, inner)
        self.node, self.that = inner, "that"

    def _get(self, name: str) -> Any:
        return self.known.get(name) if name else self.bound.value

    def _take(self, value: Number, flips: bool) -> None:
        self.bound = Bound(value, OTHER[self.bound.want] if flips else self.bound.want, self.bound.open)
        self.falls ^= flips

    def _turn_rounding(self, inner: Node, size: Fraction, direction: str) -> None:
        self.bound = unround(self.bound, size, direction)
        words = {"up": "up", "down": "down", "near": "to the nearest"}[direction]
        sentence = f"It is rounded {words}, so before rounding it is {self.bound.in_words()}".rstrip()
        self._say(f"{sentence} {self.known.text(inner, self.bound.value)}", "", "", inner)
        self.node, self.that = inner, "that"

    def _say(self, sentence: str, words: str, numbers: str, inner: Node) -> None:
        self.number = self.known.text(inner, self.bound.value)
        self.known.say(sentence, words, numbers, self.number)

    def _name(self, node: Node) -> str:
        words = self.known.words(node)
        return f"the {words}" if isinstance(node, Name) and node.name != "pi" else words

    def _out_of_reach(self) -> Impossible:
        """Less than what the formula can give at all: at most so much is never so, at least so much always."""
        return AnyValue("less than it can be") if self.bound.want == "least" else self._nothing()

    def _nothing(self) -> NoValue:
        return NoValue(f"no {self.known.label(self.known.unknown[0])} gives that")


def linear(known: Known, node: Node) -> tuple[Any, Any]:
    """A formula as times x + rest, of the unknown x. Raises Unpeelable when it is not so simple."""
    node = known.branch(node)
    if not known.hangs_on_unknown(node):
        return Fraction(0), known.evaluate(node)
    if isinstance(node, Name):
        if node.name in known.unknown:
            return Fraction(1), Fraction(0)
        return linear(known, formula.read(known.formula_of(node.name)))
    if isinstance(node, Negate):
        times, rest = linear(known, node.of)
        return -times, -rest
    if isinstance(node, Binary) and node.op in "+-*/":
        (a, b), (c, d) = linear(known, node.left), linear(known, node.right)
        if node.op in "+-":
            return (a + c, b + d) if node.op == "+" else (a - c, b - d)
        if node.op == "*" and (a == 0 or c == 0):
            return a * d + b * c, b * d
        if node.op == "/" and c == 0 and d != 0:
            return a / d, b / d
    raise Unpeelable("more than multiplied and added to")
