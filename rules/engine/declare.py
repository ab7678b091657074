"""What a rule is: one frozen declaration from which vocabulary, help, sums, tests, practice and reference all come."""

from __future__ import annotations

from collections import Counter
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from .kinds import CHOICE, LENGTH, Kind
from .rounding import Rounding

if TYPE_CHECKING:
    from .plan import Do, Part

When = Mapping[str, str | tuple[str, ...]]

COMMON_PRACTICE = "common practice, no source"
ARITHMETIC = "arithmetic"
GEOMETRY = "geometry"


class DeclarationError(ValueError):
    """A declaration that is wrong; the message names the rule, the field and the good form."""


@dataclass(frozen=True, slots=True)
class Default:
    """What an input is taken to be when not said, and why.

    value: text as a person would type it ("2", "92 %", "40 in", "1/2 in | 1.2 cm": inches | metric), an option's key, or
    "=formula" of other inputs and steps. because: shown to the maker. when: only under these choices. given: only when
    all of these inputs were given.
    A formula that is plain arithmetic on what was given (an edge from two sides) is no assumption: derived=True.
    """

    value: str
    because: str = ""
    when: When = field(default_factory=dict)
    derived: bool = False
    given: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Input:
    """Something a rule takes.

    name: in formulas. label: in words. says: role words people use for it, besides the label's own words.
    axis: "width", "length", "depth", "height", "girth", "diameter": words such as wide, long, deep then mean it.
    default: see Default; a tuple of them is tried in order. With none it is needed: ask and example are required.
    sane: "low..high", outside of which the question is refused; usual: outside of which the answer warns.
    practice: "low..high step" of the numbers a maker would meet. noun: what a count counts ("button").
    options: for a CHOICE, key -> words that mean it. many: takes several (a sum, a list). extra: optional, with no value
    of its own: when not given the steps that need it are left out (a price). spoken: a number is taken for it only when
    one of its words stands beside the number, never because it is the only place left.
    """

    name: str
    label: str
    kind: Kind = LENGTH
    says: tuple[str, ...] = ()
    axis: str = ""
    default: str | Default | tuple[Default, ...] | None = None
    because: str = ""
    ask: str = ""
    example: str = ""
    sane: str = ""
    usual: str = ""
    practice: str = ""
    noun: str = ""
    options: Mapping[str, tuple[str, ...]] = field(default_factory=dict)
    many: bool = False
    extra: bool = False
    spoken: bool = False
    when: When = field(default_factory=dict)

    @property
    def defaults(self) -> tuple[Default, ...]:
        if self.default is None:
            return ()
        if isinstance(self.default, str):
            return (Default(self.default, self.because),)
        return (self.default,) if isinstance(self.default, Default) else self.default


@dataclass(frozen=True, slots=True)
class Step:
    """One step of the sum: a sentence and a formula; its name may be used by later steps.

    Later steps use the exact value; `rounded(name)` is the value after this step's own rounding.
    formula: "" for an output that the rule's algorithm gives. says: words that ask for it ("how many strips").
    unit: (inch, metric) units to show it in, when not the kind's or the rounding's own. label: in words.
    noun: what a count counts; "{what}" is the option made of the choice `what` ("button" or "eyelet").
    stated: words that, beside a number, state this result, so that the rule runs backwards ("have", "left", "only").
    when: only under these choices. words: for a TEXT step whose formula is a condition, what it says when that holds
    and when it does not ("enough", "short"). sane: "low..high", outside of which a number is not this result, told.
    """

    name: str
    sentence: str
    formula: str = ""
    kind: Kind = LENGTH
    rounding: Rounding | None = None
    label: str = ""
    says: tuple[str, ...] = ()
    axis: str = ""
    noun: str = ""
    unit: tuple[str, str] | None = None
    stated: tuple[str, ...] = ()
    when: When = field(default_factory=dict)
    words: tuple[str, str] | None = None
    sane: str = ""

    @property
    def shown_label(self) -> str:
        return self.label or self.name.replace("_", " ")


@dataclass(frozen=True, slots=True)
class Caution:
    """A warning with its source.

    when: a formula of the rule's values that is true where the warning applies ("width > 300"), or "" for always.
    mentions: any one of these words in the question; all_of: one from each group; unless: none of these.
    Words are lower case and singular, as the understanding folds them ("toddler", "shrink"), and hold the rule's own topic
    and family as well.
    """

    text: str
    source: str = COMMON_PRACTICE
    when: str = ""
    mentions: tuple[str, ...] = ()
    all_of: tuple[tuple[str, ...], ...] = ()
    unless: tuple[str, ...] = ()

    @property
    def words(self) -> frozenset[str]:
        """Every word that brings it up or keeps it away."""
        return frozenset((*self.mentions, *self.unless, *(word for group in self.all_of for word in group)))


@dataclass(frozen=True, slots=True)
class Fact:
    """What a derivation starts from: a truth of geometry, in words and as an equation "left = right"."""

    words: str
    equation: str


@dataclass(frozen=True, slots=True)
class Follows:
    """One algebraic step of a derivation: it follows from the lines above it. words: what is done; equation: what it gives."""

    words: str
    equation: str


@dataclass(frozen=True, slots=True)
class Derivation:
    """How a step's formula comes out of geometry, line by line; the last line gives what the formula gives.

    step: the step derived. of: the formula that the last line must equal, when that is only part of the step's own
    (an addition inside it). names: word -> what it stands for, for those that are no input or step of the rule.
    try_with: name -> value ("1/4 in | 0.75 cm"): the last line worked with it and rounded as the step is.
    """

    step: str
    lines: tuple[Fact | Follows, ...]
    names: Mapping[str, str] = field(default_factory=dict)
    of: str = ""
    try_with: Mapping[str, str] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Refusal:
    """Numbers for which a rule has no answer.

    when: a formula that is true for them; text: why, and what to ask instead; choices: only under these.
    """

    when: str
    text: str
    choices: When = field(default_factory=dict)


@dataclass(frozen=True, slots=True, eq=False)  # a rule is itself: what is worked out about it is kept by identity
class Rule:
    """A rule of the trade, whole.

    topic: its name. says: words people use for it. about: one sentence of help.
    answers: names of steps in order of use; the first that can be worked is the headline unless another is asked for.
    insists: the first answer is never passed over for a later one that can be worked: what it needs is asked for.
    headline: sentences with {step name} in them, tried in order: one fits when all it names was worked and, when
    something in particular was asked, it names that.
    sizes: groups of input names that a size (60 x 72) fills, in order; tried longest first. told_sizes: groups of results
    that a size told fills where a word says so ("the panels were cut 17 by 16 in"), each worked back to its own input.
    lone: it answers a lone measure with a unit asked for, when the line names no topic ("60 cm in inches").
    spans: pairs of input names that a span (from 48 to 72) fills, where its two ends are two inputs.
    pairs: pairs of input names that "3 m of 140 cm" likely is: a length, and the width it is of.
    tells: kinds of value that together tell the rule when a line names no topic ("length + price a length": their cost), a
    kind as often as there must be values of it; one entry for each such set.
    home: "in" where bare numbers mean inches (patchwork). system: a fixed system for the answer, or "".
    algorithm: a function of the Run for what formulas cannot say; it returns an Outcome.
    backwards: input name -> formula of the steps and other inputs, for unknowns that need one (name "stated" steps in it).
    no_unknown: inputs that a backwards question cannot ask for. examples: "question -> answer; another result".
    refusals: numbers for which there is no answer, and why.
    called: where given, the rule is meant only when one of these words is said (or it is what is being talked of).
    derivation: how its formulas come out of geometry, one or several.
    defers: topics that answer in its stead where both fit as well (they do all that it does, and more).
    parts, order: of a plan, the rules it is worked by, and its order of work (see plan.py).
    """

    topic: str
    family: str
    says: tuple[str, ...]
    about: str
    inputs: tuple[Input, ...]
    steps: tuple[Step, ...]
    answers: tuple[str, ...]
    source: str
    insists: bool = False
    headline: tuple[str, ...] = ()
    sizes: tuple[tuple[str, ...], ...] = ()
    told_sizes: tuple[tuple[str, ...], ...] = ()
    spans: tuple[tuple[str, str], ...] = ()
    pairs: tuple[tuple[str, str], ...] = ()
    home: str = ""
    lone: bool = False
    tells: tuple[str, ...] = ()
    algorithm: Callable[..., Any] | None = None
    backwards: Mapping[str, str] = field(default_factory=dict)
    no_unknown: tuple[str, ...] = ()
    cautions: tuple[Caution, ...] = ()
    refusals: tuple[Refusal, ...] = ()
    notes: tuple[str, ...] = ()
    examples: tuple[str, ...] = ()
    related: tuple[str, ...] = ()
    called: tuple[str, ...] = ()
    derivation: tuple[Derivation, ...] = ()
    defers: tuple[str, ...] = ()
    parts: tuple[Part, ...] = ()
    order: tuple[Do, ...] = ()

    def __post_init__(self) -> None:
        from .check import check_rule

        check_rule(self)

    def input(self, name: str) -> Input | None:
        return parts_by_name(self)[0].get(name)

    def told_by(self) -> tuple[Counter[str], ...]:
        """The kinds of value that tell the rule, each so many times, for every way of telling it."""
        return _told_by(self.tells)

    def questions(self) -> list[str]:
        """The examples as they are typed, without their answers."""
        return [example.partition(" -> ")[0] for example in self.examples]

    def first_question(self) -> str:
        """What to type to reach the rule: its first example, or else its topic."""
        return self.questions()[0] if self.examples else self.topic

    def step(self, name: str) -> Step | None:
        return parts_by_name(self)[1].get(name)


@lru_cache(maxsize=256)
def _told_by(tells: tuple[str, ...]) -> tuple[Counter[str], ...]:
    return tuple(Counter(kinds.split(" + ")) for kinds in tells)


@lru_cache(maxsize=1024)
def parts_by_name(rule: Rule) -> tuple[Mapping[str, Input], Mapping[str, Step]]:
    """The inputs and the steps of a rule by their names."""
    return {item.name: item for item in rule.inputs}, {step.name: step for step in rule.steps}


def choice(
    name: str,
    label: str,
    options: Mapping[str, tuple[str, ...]],
    default: str | Default | tuple[Default, ...] | None = None,
    because: str = "",
    ask: str = "",
    example: str = "",
) -> Input:
    """An input that is one of a few named options; the first words that match in the question settle it."""
    return Input(name, label, CHOICE, options=options, default=default, because=because, ask=ask, example=example)


def flag(name: str, label: str, says: tuple[str, ...], because: str = "not said", no: tuple[str, ...] = ()) -> Input:
    """A yes-or-no input, no unless one of its words is met."""
    return Input(name, label, CHOICE, options={"yes": says, "no": no}, default=Default("no", because, derived=True))
