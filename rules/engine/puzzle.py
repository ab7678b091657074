"""What a backwards question asks: the unknown, the result stated, runs with and without it, words when none fits."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from typing import Any

from . import formula
from .declare import Input, Rule, Step
from .known import Known
from .literal import literal
from .request import Given, Item, Number, Request
from .run import Impossible, Needs, Run


@dataclass(frozen=True, slots=True)
class Puzzle:
    """What is asked: the input that is unknown (and others tied to its value) when a step's result is stated."""

    rule: Rule
    request: Request
    item: Input
    step: Step
    tied: tuple[str, ...]

    @property
    def stated(self) -> Number:
        value: Number = self.request.stated[self.step.name].value
        return value

    @property
    def names(self) -> tuple[str, ...]:
        return (self.item.name, *self.tied)

    def known(self, stated: Number | None = None) -> Known:
        """A run with all but the unknown. stated: what the stated step stands for, for the rule's own formula."""
        given = {name: value for name, value in self.request.given.items() if name not in self.names}
        told = {name: value.value for name, value in self.request.stated.items() if name != self.step.name}
        if stated is not None:
            told[self.step.name] = stated
        return Known(self.rule, replace(self.request, given=given, stated={}), self.names, told)

    def forward(self, value: Number) -> Run:
        """A run of the rule with the unknown put in."""
        given = dict(self.request.given)
        for name in self.names:
            item = self.rule.input(name)
            assert item is not None
            unit = item.kind.inch if self.request.system_for(item.kind) == "in" else item.kind.metric
            text = self.known().show(value, item.kind, self.known().noun(item))
            given[name] = Given((Item(value, unit, text),) if item.many else value, unit, text)
        return Run(self.rule, replace(self.request, given=given, stated={}, series=()))

    def result(self, value: Number) -> Number | None:
        """The exact result for a value of the unknown, or None where there is none."""
        try:
            got = self.forward(value).get(self.step.name)
        except (Impossible, Needs, formula.NoAnswer):
            return None
        return got if isinstance(got, int | float | Fraction) else None

    def show(self, value: Number) -> str:
        return self.known().show(value, self.item.kind, self.known().noun(self.item))

    def show_result(self, value: Number) -> str:
        run = self.known()
        return run.show_in(value, run.step_unit(self.step), run.noun(self.step))


def out_of_sense(puzzle: Puzzle, value: Number) -> str:
    sane = puzzle.item.sane.replace("..", " to ") if puzzle.item.sane else "more than nothing"
    return f"it would have to be {puzzle.show(value)}, and I take {sane}"


def sorry(puzzle: Puzzle, why: str) -> str:
    """What was understood, what is wrong, what to type instead."""
    stated = puzzle.show_result(puzzle.stated)
    gives = f"gives {stated}" if puzzle.step.noun else f"makes the {puzzle.step.shown_label} {stated}"
    return f"With these numbers no {puzzle.item.label} {gives}: {why}. {example(puzzle)}"


def any_will_do(puzzle: Puzzle) -> str:
    """What to say when every value keeps to the stated result."""
    label, result = puzzle.item.label, puzzle.step.shown_label
    stated = puzzle.show_result(puzzle.stated)
    return f"Any {label} will do for {stated}: the {result} keeps to that with each one I take. {example(puzzle)}"


def example(puzzle: Puzzle) -> str:
    """A value that does give a result, so that the maker sees what would."""
    for text in (puzzle.item.example, puzzle.item.practice.partition("..")[0]):
        try:
            value: Any = literal(text, puzzle.request.system)[0] if text else None
        except ValueError:
            continue
        got = puzzle.result(value) if value else None
        if got is not None:
            result = puzzle.show_result(puzzle.known().round_step(puzzle.step, got))
            return f"{puzzle.show(value)} gives {result}, for example: type a result nearer to that."
    return f"Type another {puzzle.step.shown_label}, or change one of the other numbers."
