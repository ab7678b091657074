"""Plans: something to make, worked by several rules in turn: one sentence gives all that is needed before cutting."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field, replace
from typing import Any

from .answer import Answer, Line, Value
from .buying import VERDICT_HEADLINES, with_buying
from .declare import DeclarationError, Input, Rule, Step, When
from .outcome import Outcome

FAMILY = "plans"
TO_BUY = "buy_"  # how the steps of what is bought begin


@dataclass(frozen=True, slots=True)
class Fixed:
    """A value of the plan's own for a part, as declarations write it: "2", "20 in | 50 cm", an option's key."""

    text: str


@dataclass(frozen=True, slots=True)
class Told:
    """An input of the plan that a part is told even when it was not said, and the part's rule would take it alike."""

    name: str


@dataclass(frozen=True, slots=True)
class Pieces:
    """The pieces that earlier parts cut from a cloth, for a lay of them."""

    cloth: str


@dataclass(frozen=True, slots=True)
class Costs:
    """What the things bought cost, for a total. also: thing -> the plan's input that holds its price."""

    also: Mapping[str, str] = field(default_factory=dict)


# Where a part's value comes from: one of the plan's inputs ("width"), a step of an earlier part ("outer.panel_width"),
# the first of several that is known, or one of the above.
Source = str | Fixed | Told | Pieces | Costs | tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Buy:
    """Something bought. thing: its name on the list; phrase: as the plan's first line says it ("a zip {} long").

    of: what a number is of, where its name does not say (balls of yarn). unless: a thing that is bought in its
    stead when known.
    """

    thing: str
    phrase: str = ""
    of: str = ""
    unless: str = ""

    @property
    def step(self) -> str:
        """The name of the plan's step for it."""
        return f"{TO_BUY}{self.thing.replace(' ', '_').replace('-', '_')}"

    def say(self, text: str) -> str:
        return self.phrase.replace("{}", text) if self.phrase else f"{text} of {self.thing}"


@dataclass(frozen=True, slots=True)
class CutLine:
    """A line of the cut list. width, length, count: a step or an input of the part's rule, or the words themselves.

    count may also be a step of an earlier part ("gather.panels"), or a number.
    """

    piece: str
    width: str
    length: str
    cloth: str
    count: str = "1"


@dataclass(frozen=True, slots=True)
class Part:
    """One part of a plan, worked by a rule.

    name: by which later parts know it. given: the rule's input -> where its value comes from; what is not there is
    left to
    the rule's own default. buys: the rule's step -> what is bought; a later part that buys the same thing stands in the
    earlier one's stead. takes: other steps of the rule that the plan gives too; leaves: results it does not tell,
    as another
    part does. cuts: what it puts on the cut list.
    asked: steps of the rule to ask for, when not its own answers. headline: a sentence with {step}s in the place of
    the rule's
    own. when: only under these choices of the plan; needs: only
    when these inputs of the plan are known, any_of: one of these; unless: not when any of these was given.
    instead: things that need not be bought when it is worked. plain: told without its drawing and notes.
    """

    name: str
    title: str
    rule: Rule
    given: Mapping[str, Source]
    buys: Mapping[str, Buy] = field(default_factory=dict)
    takes: tuple[str, ...] = ()
    leaves: tuple[str, ...] = ()
    cuts: tuple[CutLine, ...] = ()
    asked: tuple[str, ...] = ()
    headline: str = ""
    when: When = field(default_factory=dict)
    needs: tuple[str, ...] = ()
    any_of: tuple[str, ...] = ()
    unless: tuple[str, ...] = ()
    instead: tuple[str, ...] = ()
    plain: bool = False

    def __post_init__(self) -> None:
        object.__setattr__(self, "rule", with_buying(self.rule))
        for name in self.given:
            if self.rule.input(name) is None:
                raise DeclarationError(f"part {self.name}: {self.rule.topic} has no input {name}")
        for name in (*self.buys, *self.takes, *self.asked):
            if self.rule.step(name) is None:
                raise DeclarationError(f"part {self.name}: {self.rule.topic} has no step {name}")

    @property
    def costed(self) -> str:
        """The step that the rule's own cost is of: the first length it buys, or else the first thing bought here; ""
        for none.
        """
        if self.rule.step("cost") is None:
            return ""
        lengths = [
            name
            for name in self.rule.answers
            if (step := self.rule.step(name)) and step.rounding is not None and step.rounding.bought
        ]
        return lengths[0] if lengths else next(iter(self.buys), "")


@dataclass(frozen=True, slots=True)
class Do:
    """A sentence of the order of work. parts: only when one of these parts was worked, without: only when none of
    these; when: only under these choices.
    """

    text: str
    parts: tuple[str, ...] = ()
    without: tuple[str, ...] = ()
    when: When = field(default_factory=dict)


def same(*names: str, **others: Source) -> dict[str, Source]:
    """What a part is given: inputs that the plan calls by the same name, and others by name."""
    return {**{name: name for name in names}, **others}


def plan(
    topic: str,
    says: tuple[str, ...],
    about: str,
    inputs: tuple[Input, ...],
    parts: tuple[Part, ...],
    order: tuple[Do | str, ...],
    **more: Any,
) -> Rule:
    """A plan as a rule: its steps are what its parts buy, what each costs, and what else they give.

    order: the order of work, a sentence a step. more: other fields of the rule (sizes, cautions, examples, notes).
    """
    from .planning import work_plan

    steps = _steps(parts)
    return Rule(
        topic=topic,
        family=FAMILY,
        says=says,
        about=about,
        inputs=inputs,
        steps=steps,
        answers=tuple(step.name for step in steps),
        source="each part's own",
        algorithm=work_plan,
        parts=parts,
        order=tuple(do if isinstance(do, Do) else Do(do) for do in order),
        no_unknown=tuple(item.name for item in inputs),
        headline=VERDICT_HEADLINES,
        **more,
    )


def _steps(parts: tuple[Part, ...]) -> tuple[Step, ...]:
    """What is bought first, each thing with its cost; then the rest."""
    bought: dict[str, Step] = {}
    rest: dict[str, Step] = {}
    for part in parts:
        for name, buy in part.buys.items():
            bought.setdefault(buy.step, _bare(part.rule, name, buy.step, buy.thing))
            if name == part.costed:
                bought.setdefault(
                    f"{buy.step}_cost", _bare(part.rule, "cost", f"{buy.step}_cost", f"cost of {buy.thing}")
                )
        for name in part.takes:
            rest.setdefault(name, _bare(part.rule, name, name, ""))
    return (*bought.values(), *rest.values())


def _bare(rule: Rule, name: str, called: str, label: str) -> Step:
    """A step of a part as the plan's: shown and rounded alike, its value brought by the plan's algorithm."""
    step = rule.step(name)
    assert step is not None
    noun = "" if step.noun.startswith("{") else step.noun
    return Step(
        called, step.sentence, "", step.kind, step.rounding, label or step.shown_label, noun=noun, unit=step.unit
    )


# -- the whole answer ------------------------------------------------------------------------------------------------


def with_parts(made: Answer, outcome: Outcome) -> Answer:
    """A plan's answer with its parts, and what they took, warn of and lean on gathered for the whole."""
    answers = [answer for _, answer in outcome.parts]
    return replace(
        made,
        parts=outcome.parts,
        cut=outcome.cut,
        order=outcome.order,
        assumed=(*made.assumed, *outcome.assumed),
        working=(*made.working, *(_titled(title, line) for title, answer in outcome.parts for line in answer.working)),
        cautions=_once((made.cautions, *(answer.cautions for answer in answers))),
        sources=_once(answer.sources for answer in answers),
    )


def _titled(title: str, line: Line) -> Line:
    return line.titled(f"{title}: {line.step[:1].lower()}{line.step[1:]}")


def _once(groups: Iterable[tuple[str, ...]]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(text for group in groups for text in group))


def gathered(parts: Iterable[tuple[str, Answer]], own: Iterable[Value]) -> tuple[Value, ...]:
    """What a plan and its parts assumed, none twice; what two parts took differently is told by the part."""
    found: dict[str, Value] = {value.name: value for value in own}
    for title, answer in parts:
        for value in answer.assumed:
            name = value.name if found.get(value.name, value).text == value.text else f"{title}: {value.name}"
            found.setdefault(name, replace(value, name=name))
    return tuple(found.values())
