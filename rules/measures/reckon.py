"""Sums of measures as people type them: "3 yd 8 in + 45 cm", "3 x 5 3/8 in", "half of 22 1/2 in"."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from grammar.formula import Binary, Negate
from grammar.query import Measure
from grammar.sums import Leaf, Sum

from ..engine.declare import ARITHMETIC, Input, Rule, Step
from ..engine.kinds import ANY, SUM
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.run import Impossible, Run
from ..engine.text import decimal, shown
from ..engine.units import UnitError, convert, factor, one, same_kind, system_of

LARGEST = 10**15
_SIGNS = {"*": "×", "/": "÷", "-": "−", "+": "+"}
_WORDS = {"+": "Add", "-": "Take away", "*": "Multiply", "/": "Divide"}


class _Reckoning:
    """A sum being worked with pint quantities, one line of working for each operation."""

    def __init__(self, run: Run) -> None:
        self.run = run
        self.typed: list[str] = []

    def value(self, node: Any) -> Any:
        if isinstance(node, Leaf):
            return self.leaf(node.measure)
        if isinstance(node, Negate):
            return -self.value(node.of)
        assert isinstance(node, Binary)
        left, right = self.value(node.left), self.value(node.right)
        if node.op in "+-" and _is_percentage(node.right) and left.dimensionality:
            if node.op == "-" and right.to_base_units().magnitude > 1:
                raise Impossible("no more than all of it, 100 %, can be taken off. Such as: 80 cm less 10 %")
            right = left * right  # "80 cm plus 10 %": that share of what stands before it
        left, right = self.same_unit(node, left, right)
        made = self.operate(node.op, left, right)
        if abs(made.magnitude) > LARGEST:
            raise Impossible(
                "that comes out larger than anything in a workroom. Try smaller numbers, such as: 3 x 5 3/8 in"
            )
        self.run.say(_WORDS[node.op], "", f"{self.show(left)} {_SIGNS[node.op]} {self.show(right)}", self.show(made))
        return made

    def same_unit(self, node: Binary, left: Any, right: Any) -> tuple[Any, Any]:
        """A bare number added to a measure takes its unit: "5/8 + 3/8 in"."""
        if node.op in "+-" and bool(left.dimensionality) != bool(right.dimensionality):
            if _is_bare(node.left):
                return left * one(self.unit_for(dict(right.dimensionality))), right
            if _is_bare(node.right):
                return left, right * one(self.unit_for(dict(left.dimensionality)))
        return left, right

    def operate(self, op: str, left: Any, right: Any) -> Any:
        import pint  # already loaded by the registry

        try:
            if op == "+":
                return left + right
            if op == "-":
                return left - right
            if op == "*":
                return left * right
            if right.magnitude == 0:
                raise Impossible("that divides by nought. Such as: 27 in / 6")
            return left / right
        except pint.DimensionalityError as error:
            raise Impossible(
                f"{self.show(left)} and {self.show(right)} measure different things, so they cannot be put "
                f"together. Such as: 3 yd + 45 cm"
            ) from error

    def leaf(self, measure: Measure) -> Any:
        total = Fraction(0)
        first = measure.unit
        for part in measure.parts:
            unit = _plain_unit(part.unit)
            total += convert(part.value, unit, _plain_unit(first)) if unit != _plain_unit(first) else part.value
        if measure.sign == "-":
            total = -total
        unit = _plain_unit(first)
        if unit not in ("", "1", "%"):
            feet_and_inches = unit == "ft" and len(measure.parts) > 1
            self.typed.append("in" if feet_and_inches else unit)
        below = measure.per
        made = total * one(unit or "1")
        return made / (below.value * one(below.unit)) if below is not None and below.unit else made

    def show(self, quantity: Any) -> str:
        base, unit = self.amount(quantity)
        return shown(base, unit) if unit != "?" else f"{quantity:~P}"

    def amount(self, quantity: Any) -> tuple[Fraction, str]:
        """(value in base units, the unit to show it in)."""
        base = Fraction(quantity.to_base_units().magnitude)
        kind = dict(quantity.to_base_units().dimensionality)
        return base, self.unit_for(kind)

    def unit_for(self, kind: dict[str, Any]) -> str:
        if not kind:
            return "1"
        for unit in self.typed:
            if dict(one(unit).dimensionality) == kind:
                return unit
        inches = any(system_of(unit) == "in" for unit in self.typed)
        if kind == {"[length]": 2}:
            return "in^2" if inches else "cm^2"
        if kind == {"[length]": 3}:
            return "l"
        if kind == {"[length]": 1}:
            return "in" if inches else "cm"
        return "?"


def _is_bare(node: Any) -> bool:
    return isinstance(node, Leaf) and node.measure.bare


def _is_percentage(node: Any) -> bool:
    return isinstance(node, Leaf) and node.measure.unit == "%"


def _plain_unit(unit: str) -> str:
    return {"pound": "GBP", "pence": "GBP", "cent": "USD", "L": "l"}.get(unit, unit)


def reckon(run: Run) -> Outcome:
    """The sum worked, one operation a line, in the unit asked for or the first one typed."""
    made: Sum = run.get("sum")
    reckoning = _Reckoning(run)
    try:
        quantity = reckoning.value(made.tree)
    except UnitError as error:
        raise Impossible(f"{error}. Such as: 3 yd 8 in + 45 cm") from error
    base, unit = reckoning.amount(quantity)
    if unit == "?":
        raise Impossible(
            "that comes out in no unit I can name. Multiply a length by a number or by a length, such as: 3 x 5 3/8 in"
        )
    wanted = made.asked_unit or run.request.unit
    if wanted and same_kind(wanted, unit):
        run.say(f"Put it into {wanted}", "", shown(base, unit), shown(base, wanted))
        unit = wanted
    values: dict[str, Amount] = {"total": Amount(base, unit)}
    other = {"in": "cm", "cm": "in", "yd": "m", "m": "yd", "ft": "cm", "mm": "in"}.get(unit)
    if other:
        values["other"] = Amount(base, other)
    return Outcome(
        values, notes=() if abs(base / factor(unit)) < 10**9 else (f"exactly {decimal(base / factor(unit))}",)
    )


RECKON = Rule(
    topic="reckon",
    family="measures",
    says=("reckon", "work out", "sum of measures"),
    about="Sums with units: add, take away, multiply and divide lengths, in any mixture of inches and metric.",
    inputs=(Input("sum", "sum", SUM, ask="What is the sum?", example="3 yd 8 in + 45 cm"),),
    steps=(
        Step("total", "The sum", kind=ANY, label="result"),
        Step("other", "The same in the other system", kind=ANY, label="in the other system"),
    ),
    answers=("total", "other"),
    headline=("{total}.",),
    algorithm=reckon,
    no_unknown=("sum",),
    source=ARITHMETIC,
    examples=(
        "3 yd 8 in + 45 cm -> 3.714 yd",
        "3 x 5 3/8 in -> 16 1/8 in",
        "half of 22 1/2 in -> 11 1/4 in",
        "27 in / 6 -> 4 1/2 in",
        "(2 m - 35 cm) * 3 -> 4.95 m",
    ),
)
