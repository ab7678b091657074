"""A run of a rule in which one input is unknown: what hangs on it, and words and numbers for all the rest."""

from __future__ import annotations

from typing import Any

from grammar.formula import Binary, Call, Name, Negate, Node
from grammar.formula import Number as Literal

from . import formula
from .declare import Rule
from .kinds import ALL_KINDS
from .literal import bounds
from .request import Number, Request
from .run import Impossible, Needs, Run
from .text import amount, number_text, shown


class NoValue(Impossible):
    """No value of the unknown gives the stated result."""


class AnyValue(Impossible):
    """Every value of the unknown that makes sense keeps to the stated result."""


class Unpeelable(Exception):
    """The unknown cannot be reached by turning one operation round after the other."""


class Known(Run):
    """A run in which the unknown (and what is tied to it) may not be read, not even by its default."""

    def __init__(
        self, rule: Rule, request: Request, unknown: tuple[str, ...], override: dict[str, Any] | None = None
    ) -> None:
        super().__init__(rule, request, override)
        self.unknown = unknown
        self._hangs: dict[str, bool] = {}

    def get(self, name: str) -> Any:
        if name in self.unknown:
            raise Needs(name)
        return super().get(name)

    def limits(self) -> tuple[Number | None, Number | None]:
        """The lowest and highest value of the unknown that make sense; with none declared, more than nothing."""
        sane = self._inputs[self.unknown[0]].sane
        return bounds(sane, self.system) if sane else (None, None)

    def allows(self, value: Number) -> bool:
        """Whether the unknown may have this value."""
        low, high = self.limits()
        declared = bool(self._inputs[self.unknown[0]].sane)
        return (value > 0 or declared) and (low is None or value >= low) and (high is None or value <= high)

    def formula_of(self, name: str) -> str:
        """The formula by which a step or a default is worked here, or "" for a value that is simply there."""
        if name in self.values or name in self.unknown:
            return ""
        step = self._steps.get(name)
        if step is not None:
            try:
                there = self.holds(step.when)
            except Needs as need:
                raise Unpeelable(name) from need  # whether it is there at all hangs on the unknown
            if not there:
                raise Needs("")
            if not step.formula:
                raise Unpeelable(name)
            return step.formula
        if name in self.request.given:
            return ""
        chosen = next((d for d in self._inputs[name].defaults if self.holds(d.when)), None)
        return chosen.value[1:] if chosen is not None and chosen.value.startswith("=") else ""

    def hangs_on_unknown(self, node: Node) -> bool:
        """Whether a formula's value changes with the unknown; of an if() only the branch taken counts."""
        node = self.branch(node)
        if isinstance(node, Name):
            return node.name in self.unknown or (node.name != "pi" and self._name_hangs(node.name))
        return any(self.hangs_on_unknown(part) for part in parts(node))

    def _name_hangs(self, name: str) -> bool:
        if name in self._busy:  # two inputs, each the other's default, and neither given
            raise Needs(name)
        if name not in self._hangs:
            self._busy.add(name)
            try:
                text = self.formula_of(name)
                self._hangs[name] = bool(text) and self.hangs_on_unknown(formula.read(text))
            finally:
                self._busy.discard(name)
        return self._hangs[name]

    def branch(self, node: Node) -> Node:
        """The branch taken of an if() whose condition is known; any other formula as it is."""
        while isinstance(node, Call) and node.name == "if" and not self.hangs_on_unknown(node.args[0]):
            node = node.args[1 if self.evaluate(node.args[0]) else 2]
        return node

    # -- texts --------------------------------------------------------------------------------------------------

    def words(self, node: Node, that: str = "that") -> str:
        """A formula in words. that: what THAT is called in it."""
        return formula.show(node, lambda name: self._label(name) if name else that, None, self.work)

    def numbers(self, node: Node, that: str) -> str:
        """A formula with its numbers put in. that: the number that stands for THAT."""
        return formula.show(
            node, lambda name: self._number(name) if name else that, lambda name: self._rounded_number(name), self.work
        )

    def label(self, name: str) -> str:
        return self._label(name)

    def text(self, node: Node, value: Number) -> str:
        """A value of a formula, in the unit the maker would expect for it."""
        if isinstance(node, Name) and node.name in self._steps:
            step = self._steps[node.name]
            return self.show_in(value, self.step_unit(step), self.noun(step))
        if isinstance(node, Name) and node.name in self._inputs:
            item = self._inputs[node.name]
            return self.show(value, item.kind, self.noun(item))
        dimension = self._dimension(node)
        for kind in ALL_KINDS:
            if kind.is_number and kind.base != "any" and dimension and _powers(kind.base) == dimension:
                return shown(value, self.unit_of(kind))
        return amount(value, "1") if not dimension else number_text(value, "1")

    def _dimension(self, node: Node) -> dict[str, int]:
        if isinstance(node, Name):
            found = self._inputs.get(node.name) or self._steps.get(node.name)
            return _powers(found.kind.base) if found else {}
        if isinstance(node, Binary):
            left, right = self._dimension(node.left), self._dimension(node.right)
            if node.op in "*/":
                return _joined(left, right, 1 if node.op == "*" else -1)
            if node.op == "^" and isinstance(node.right, Literal):
                return {unit: power * int(node.right.value) for unit, power in left.items()}
            return left or right
        if isinstance(node, Call) and node.name == "sqrt":
            return {unit: power // 2 for unit, power in self._dimension(node.args[0]).items()}
        return next((self._dimension(part) for part in reversed(parts(node))), {})


def parts(node: Node) -> tuple[Node, ...]:
    """The formulas directly inside a formula."""
    if isinstance(node, Negate):
        return (node.of,)
    if isinstance(node, Binary):
        return node.left, node.right
    return node.args if isinstance(node, Call) else ()


def _powers(base: str) -> dict[str, int]:
    """The powers in a base unit: "st/mm" is {"st": 1, "mm": -1}."""
    above, _, below = base.partition("/")
    powers: dict[str, int] = {}
    for name, sign in ((above, 1), (below, -1)):
        unit, _, power = name.partition("^")
        if unit not in ("", "1"):
            powers[unit] = sign * int(power or 1)
    return powers


def _joined(left: dict[str, int], right: dict[str, int], sign: int) -> dict[str, int]:
    sums = {unit: left.get(unit, 0) + sign * right.get(unit, 0) for unit in (*left, *right)}
    return {unit: power for unit, power in sums.items() if power}
