"""One run of a rule: values worked on demand, each step of the working kept as it is made."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Any

from grammar.formula import Call, Name, Node

from . import formula
from .answer import Line, Texts, Value
from .declare import Default, Input, Rule, Step, When, parts_by_name
from .kinds import ANY, CHOICE, COUNT, TEXT, Kind
from .literal import bounds, literal
from .request import Given, Number, Request
from .rounding import Step as RoundingStep
from .rounding import apply
from .text import shown
from .units import factor, system_of

LARGEST = 10**15


class Needs(Exception):
    """A value is needed that was not given and cannot be assumed. name: the input's."""

    def __init__(self, name: str) -> None:
        super().__init__(name)
        self.name = name


class Impossible(Exception):
    """The numbers contradict, or lie outside sense; the message says why and what to type instead."""


@dataclass(frozen=True, slots=True)
class Mark:
    """A point in a run: how many lines and assumed values there were, which inputs were touched, which values known."""

    lines: int
    assumed: int
    touched: frozenset[str]
    values: frozenset[str]


class Run:
    """A rule being worked for a request. Rules' algorithms get one and read their inputs from it with `get`.

    lines: the working so far, in order. assumed: what was taken without being said. touched: inputs that were used.
    """

    def __init__(self, rule: Rule, request: Request, override: dict[str, Any] | None = None) -> None:
        self.rule, self.request = rule, request
        self.system = request.system
        self.values: dict[str, Any] = dict(override or {})
        self.lines: list[Line] = []
        self.assumed: list[Value] = []
        self.touched: set[str] = set(self.values)
        self._inputs, self._steps = parts_by_name(rule)
        self._rounded: dict[str, tuple[Any, Any]] = {}  # step -> its value, and that rounded
        self._texts: dict[str, tuple[Any, str]] = {}  # input or step -> its value, and that for reading
        self._algorithm_done = False
        self._algorithm_mark: Mark | None = None
        self._busy: set[str] = set()
        self.outcome: Any = None

    # -- values -------------------------------------------------------------------------------------------------

    def get(self, name: str) -> Any:
        """The exact value of an input or step, in base units (a key for a choice). Raises Needs or Impossible."""
        if name in self.values:
            self.touched.add(name)
            return self.values[name]
        if name in self._busy:
            raise Needs(name)
        self._busy.add(name)
        try:
            value = self._input(self._inputs[name]) if name in self._inputs else self._step(self._steps[name])
        finally:
            self._busy.discard(name)
        self.values[name] = value
        self.touched.add(name)
        return value

    def maybe(self, name: str) -> Any:
        """The value of an input, or None when it was not given and cannot be assumed."""
        try:
            return self.get(name)
        except Needs:
            return None

    def given(self, name: str) -> Given:
        """What was typed in an input's place, with its unit and text. Raises Needs when it was not given."""
        if name not in self.request.given:
            raise Needs(name)
        self.get(name)
        return self.request.given[name]

    def was_given(self, name: str) -> bool:
        return name in self.request.given

    def rounded(self, name: str) -> Any:
        """The value of a step after its own rounding."""
        value = self.get(name)
        step = self._steps.get(name)
        return value if step is None else self.round_step(step, value)

    def round_step(self, step: Step, value: Any) -> Any:
        how = self.rounding(step)
        if how is None or isinstance(value, str):
            return value
        known = self._rounded.get(step.name)
        if known is None or known[0] is not value:
            known = self._rounded[step.name] = value, apply(value, how)
        return known[1]

    def rounding(self, step: Step) -> RoundingStep | None:
        """How a step is rounded here: its table line, or the shop's own step for a length that is bought."""
        if step.rounding is None:
            return None
        how = step.rounding.of(self.request.system_for(step.kind))
        shop = self.request.given.get("shop_step") or self.request.usual.get("shop_step")
        if step.rounding.bought and shop is not None:
            if "shop_step" in self.request.given:
                self.touched.add("shop_step")
            else:
                self.get("shop_step")  # so that it is listed as assumed
            return RoundingStep(how.direction, shop.value / factor(how.unit), how.unit)
        return how

    def holds(self, when: When) -> bool:
        """Whether the choices of a `when` are the ones made."""
        for name, wanted in when.items():
            options = (wanted,) if isinstance(wanted, str) else wanted
            if self.get(name) not in options:
                return False
        return True

    def may_hold(self, when: When) -> bool:
        """Whether the choices of a `when` are the ones made, as far as they are known."""
        try:
            return self.holds(when)
        except Needs:
            return True

    def _input(self, item: Input) -> Any:
        given = self.request.given.get(item.name)
        if given is not None:
            self._check_range(item, given)
            self._line_for_conversion(item, given)
            return given.value
        usual = self.request.usual.get(item.name)
        if usual is not None:
            return self._usual(item, usual)
        for default in item.defaults:
            if self.holds(default.when) and all(self.was_given(name) for name in default.given):
                try:
                    return self._default(item, default)
                except Needs:
                    if item.ask:  # it can be asked for itself, rather than for what it would be worked out from
                        raise Needs(item.name) from None
                    raise
        raise Needs(item.name)

    def _usual(self, item: Input, usual: Given) -> Any:
        """What the maker is used to, in place of the rule's own default."""
        self._check_range(item, usual)
        self.assumed.append(Value(item.label, _in_unit(usual.value, usual.unit), usual.unit, usual.text, usual.why))
        self._line_for_conversion(item, usual)
        return usual.value

    def _default(self, item: Input, default: Default) -> Any:
        if default.value.startswith("="):
            made = formula.ready(default.value[1:])
            value = self.work(made.value)
            sentence = default.because or f"Work out the {item.label}"
            self._line(item.label, sentence, self._taken(made), value, item.kind, None, self.noun(item))
            if not default.derived:
                unit = self.unit_of(item.kind)
                text = self.show(value, item.kind, self.noun(item))
                self.assumed.append(Value(item.label, _in_unit(value, unit), unit, text, default.because))
            return value
        if item.kind in (CHOICE, TEXT):
            if not default.derived:
                self.assumed.append(Value(item.label, default.value, "text", default.value.replace("_", " "), default.because))
            return default.value
        value, unit, text = literal(default.value, self.system)
        if not default.derived:
            unit = unit or (self.noun(item) or "1")
            self.assumed.append(Value(item.label, _in_unit(value, unit), unit, text, default.because))
        return value

    def _check_range(self, item: Input, given: Given) -> None:
        if not isinstance(given.value, Fraction | float):
            return
        if not -LARGEST <= given.value <= LARGEST:
            raise Impossible(f"{given.text[:40]} is larger than anything in a workroom. {self._say_example(item)}")
        if not item.kind.is_number or item.kind is ANY:
            return
        low, high = bounds(item.sane, self.system) if item.sane else (None, None)
        if low is None and given.value <= 0 and not item.sane:
            raise Impossible(f"the {item.label} cannot be {given.text}: it must be more than nothing. {self._say_example(item)}")
        if (low is not None and given.value < low) or (high is not None and given.value > high):
            raise Impossible(
                f"the {item.label} cannot be {given.text}: I take {item.sane.replace('..', ' to ')}. {self._say_example(item)}"
            )

    def _say_example(self, item: Input) -> str:
        return f"Type it again, such as: {item.label} {item.example}." if item.example else "Type it again."

    def mark(self) -> Mark:
        """How far the run has come, for `back_to`."""
        return Mark(len(self.lines), len(self.assumed), frozenset(self.touched), frozenset(self.values))

    def back_to(self, mark: Mark) -> None:
        """Undo what was worked, said and assumed since a mark; what the rule's algorithm did, once whole, stands."""
        done = self._algorithm_mark
        if done is not None and done.lines >= mark.lines and not mark.touched >= done.touched:
            mark = done
        del self.lines[mark.lines :], self.assumed[mark.assumed :]
        self.touched = set(mark.touched)
        if self._algorithm_done and self.outcome is None:
            self._algorithm_done = False
        known = self.outcome.values if self.outcome is not None else {}
        self.values = {name: value for name, value in self.values.items() if name in mark.values or name in known}

    # -- steps --------------------------------------------------------------------------------------------------

    def _step(self, step: Step) -> Any:
        if not self.holds(step.when):
            raise Needs("")
        if not step.formula:
            return self._from_algorithm(step)
        if step.words is not None:
            return self._verdict(step)
        made = formula.ready(step.formula)
        value = self.work(made.value)
        taken = self._taken(made)
        if not (made.is_choice and _is_name(taken)):
            self._line(step.shown_label, step.sentence, taken, value, step.kind, step, self.noun(step))
        elif self.round_step(step, value) != value:
            self.say("Round it for use", step.shown_label, "", self._result(value, step.kind, step, self.noun(step), self.rounding(step)))
        return value

    def _verdict(self, step: Step) -> str:
        """One of a step's two words, by whether its formula holds."""
        assert step.words is not None
        node = formula.read(f"if({step.formula}, 1, 0)")
        word = step.words[0 if self.evaluate(node) else 1]
        assert isinstance(node, Call)
        show = formula.show(node.args[0], self._label)
        self.say(step.sentence, show, formula.show(node.args[0], self._number, self._rounded_number), word)
        return word

    def _taken(self, made: formula.Formula) -> formula.Pieces:
        """How a formula is read here, with only the branches taken."""
        return formula.taken(made.pieces, self.work)

    def work(self, worker: formula.Work) -> Any:
        """The value here of a formula made ready."""
        return worker(self.get, self.rounded)

    def evaluate(self, node: Node) -> Any:
        return formula.evaluate(node, self.get, self.rounded)

    def holds_formula(self, text: str) -> bool:
        """Whether a condition written as a formula is true here; false when it needs a value that is not known."""
        try:
            return bool(self.work(formula.ready(f"if({text}, 1, 0)").value))
        except Needs:
            return False

    def _from_algorithm(self, step: Step) -> Any:
        if not self._algorithm_done:
            assert self.rule.algorithm is not None
            self._algorithm_done = True
            try:
                self.outcome = self.rule.algorithm(self)
            except Needs:
                self._algorithm_done = False
                raise
            self.values.update(self.outcome.values)
            self._algorithm_mark = self.mark()
        if step.name not in self.values:
            raise Needs("")
        return self.values[step.name]

    # -- working ------------------------------------------------------------------------------------------------

    def say(self, sentence: str, formula_text: str = "", numbers: str = "", result: str = "") -> None:
        """Add a line of working by hand, for algorithms."""
        self.lines.append(Line(sentence, formula_text, numbers, result))

    def _line(
        self, label: str, sentence: str, read: formula.Pieces, value: Any, kind: Kind, step: Step | None, noun: str
    ) -> None:
        """Add a line for a formula that was worked; its texts are made when they are read."""
        how = self.rounding(step) if step else None

        def texts() -> Texts:
            in_words = f"{label} = {formula.filled(read, self._label, self._label)}"
            numbers = formula.filled(read, self._number, self._rounded_number)
            return in_words, numbers, self._result(value, kind, step, noun, how)

        if _counts_what_is_chosen(self.rule):
            self.lines.append(Line(sentence, *texts()))  # at once: it may take a choice that is then listed as assumed
        else:
            self.lines.append(Line.when_read(sentence, texts))

    def noun(self, declared: Input | Step) -> str:
        """What a count counts: its own noun, or the option that its choice was given ("{what}")."""
        noun = declared.noun
        return str(self.get(noun[1:-1])).replace("_", " ") if noun.startswith("{") else noun

    def _result(self, value: Any, kind: Kind, step: Step | None, noun: str, how: RoundingStep | None) -> str:
        if isinstance(value, str):
            return value
        unit = self.step_unit(step) if step else self.unit_of(kind)
        exact = self.exact_text(step, value, noun) if step else self.show_in(value, unit, noun)
        if step is None or how is None:
            return exact
        final = self.rounded_text(step, value, noun)
        if final == exact:
            return exact
        words = {"up": "up to", "down": "down to", "near": "to the nearest"}[how.direction]
        if kind.base in ("mm", "mm^2") or kind.base.startswith("money/"):
            return f"{exact}, {words} {'the next ' if how.direction == 'up' else ''}{shown(how.base_step(), how.unit)}: {final}" \
                if not how.unit.startswith("money") else f"{exact}, to the nearest hundredth: {final}"
        if how.unit == "money":
            return final
        return f"{exact}, {words} {'a whole' if how.step == 1 else shown(how.base_step(), how.unit)}: {final}" \
            if how.direction == "near" else f"{exact}, {words} {final}"

    def _line_for_conversion(self, item: Input, given: Given) -> None:
        """A value typed in the other system is put into the answer's first, so that the sum can be followed by hand."""
        if isinstance(given.value, tuple | str) or given.unit in ("", "text") or item.kind is ANY:
            return
        system = system_of(given.unit)
        if system and system != self.request.system_for(item.kind):
            unit = self.unit_of(item.kind)
            if unit not in ("text", "any"):
                self.say(f"Put {given.text} into {unit}", f"{item.label} in {unit}", given.text, self.show_in(given.value, unit))

    def _label(self, name: str) -> str:
        if name in self._inputs:
            return self._inputs[name].label
        return self._steps[name].shown_label if name in self._steps else name

    def _number(self, name: str) -> str:
        item, step = self._inputs.get(name), self._steps.get(name)
        value = self.get(name)
        if isinstance(value, tuple):
            return " + ".join(
                (f"{shown(entry.count, '1')} × " if entry.count != 1 else "") + entry.text for entry in value
            )
        if item is not None:
            return self.show(value, item.kind, self.noun(item))
        assert step is not None
        return self.exact_text(step, value, self.noun(step))

    def _rounded_number(self, name: str) -> str:
        step = self._steps.get(name)
        return self.rounded_text(step, self.get(name), self.noun(step)) if step else self._number(name)

    def exact_text(self, step: Step, value: Any, noun: str) -> str:
        """A step's exact value for reading, in the step's own unit; it is wanted in several lines, and made once."""
        known = self._texts.get(step.name)
        if known is None or known[0] is not value:
            known = self._texts[step.name] = value, self.show_in(value, self.step_unit(step), noun)
        return known[1]

    def rounded_text(self, step: Step, value: Any, noun: str) -> str:
        """A step's value for reading after its own rounding."""
        rounded = self.round_step(step, value)
        if rounded == value:
            return self.exact_text(step, value, noun)
        return self.show_in(rounded, self.step_unit(step), noun)

    # -- units --------------------------------------------------------------------------------------------------

    def unit_of(self, kind: Kind) -> str:
        """The unit a kind is shown in here: inches or metric, in the question's currency."""
        unit = kind.inch if self.request.system_for(kind) == "in" else kind.metric
        return self.money(unit)

    def money(self, unit: str) -> str:
        return unit.replace("money", self.request.currency) if unit.startswith("money") else unit

    def step_unit(self, step: Step) -> str:
        """The unit a step's value is shown in: its own, or its rounding's, or its kind's."""
        system = self.request.system_for(step.kind)
        if step.unit is not None:
            return self.money(step.unit[0] if system == "in" else step.unit[1])
        if step.rounding is not None:
            return self.money(step.rounding.of(system).unit)
        return self.unit_of(step.kind)

    def show(self, value: Any, kind: Kind, noun: str = "") -> str:
        """A value in base units as text, in the unit of its kind here."""
        if isinstance(value, str) or not kind.is_number:
            return str(value).replace("_", " ")
        return self.show_in(value, self.unit_of(kind), noun if kind is COUNT else "")

    def show_in(self, value: Number | str, unit: str, noun: str = "") -> str:
        if isinstance(value, str):
            return value
        return shown(value, unit, noun)


@lru_cache(maxsize=1024)
def _counts_what_is_chosen(rule: Rule) -> bool:
    """Whether what some count counts is settled by a choice ("{what}")."""
    return any(item.noun.startswith("{") for item in rule.inputs) or any(step.noun.startswith("{") for step in rule.steps)


def _is_name(read: formula.Pieces) -> bool:
    """Whether a formula comes down to another value as it is: nothing is done, so nothing need be said."""
    return len(read) == 1 and isinstance(read[0], Name)


def _in_unit(value: Any, unit: str) -> Any:
    """A value in base units as a number of the unit; a noun is a plain count."""
    try:
        size = factor(unit)
    except ValueError:
        size = Fraction(1)
    return value / size if isinstance(value, Fraction) else value / float(size)
