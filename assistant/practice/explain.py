"""A rule explained: what it needs, what is assumed and why, each step in words and as a formula, an example."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from grammar.formula import Binary, Call, Name, Node, Number
from rules.engine import formula
from rules.engine.kinds import LENGTH
from rules.engine.slips import label_of, the
from rules.engine.text import decimal

from .told import capital, listed, sentence, told, worked

if TYPE_CHECKING:
    from rules.engine.answer import Answer
    from rules.engine.declare import Default, Input, Rule, Step, When
    from rules.engine.rounding import Rounding

    from ..conversation import Conversation

SYMBOLS = {
    "pi": "pi, written π, is 3.1416: how many times the width of a circle goes round it",
    "sqrt(2)": "the square root of 2 is 1.4142: the diagonal of a square whose side is 1",
}
COMPARISON = re.compile(r"^(?P<left>[^<>=]+?) *(?P<sign><=|>=|<|>|=) *(?P<right>[^<>=]+)$")
COMPARED = {">=": "is at least", "<=": "is at most", ">": "is more than", "<": "is less than", "=": "is"}
DIRECTIONS = {"up": "up to the next", "down": "down to the next", "near": "to the nearest", "ties up": "to the nearest"}


def explanation(rule: Rule, talk: Conversation) -> Answer:
    """Everything a newcomer needs to work the rule by hand."""
    example = _example(rule, talk)
    lines = [
        *_part("You need:", [_needed(item) for item in rule.inputs if item.default is None and not item.extra]),
        *_part(
            "Taken, unless you say otherwise:",
            [_assumed(rule, item) for item in rule.inputs if item.default is not None],
        ),
        *_part("If you like:", [_extra(item) for item in rule.inputs if item.default is None and item.extra]),
        *_steps(rule),
        *_part("Signs:", _signs(rule, example)),
        *example,
        *_part(
            "Mind:",
            [sentence(f"{caution.text} ({caution.source})") for caution in rule.cautions if not caution.mentions],
        ),
        *_part("Note:", list(rule.notes)),
    ]
    derive = (f"derive {rule.topic}",) if rule.derivation else ()
    return told(
        rule.topic,
        sentence(f"{capital(rule.topic)}: {rule.about}"),
        lines,
        sources=(rule.source,),
        next=(*derive, f"practise {rule.topic}", f"step by step {rule.topic}"),
    )


# -- what goes in ----------------------------------------------------------------------------------------------------


def _needed(item: Input) -> str:
    if item.options:
        return f"{item.label}: {_options(item)}"
    return f"{item.label}, such as {item.example}"


def _extra(item: Input) -> str:
    return f"{item.label}, such as {item.example}" if item.example else item.label


def _options(item: Input) -> str:
    return listed([f"“{key.replace('_', ' ')}”" for key in item.options], "or")


def _assumed(rule: Rule, item: Input) -> str:
    """An input with what it is taken to be, and why."""
    choice = f", one of {_options(item)}," if item.options else ""
    return f"{item.label}{choice} is {'; or '.join(_default(rule, item, default) for default in item.defaults)}"


def _default(rule: Rule, item: Input, default: Default) -> str:
    """What an input is taken to be, when, and why: "1 in, or 2.5 cm in metric: the usual elastic for a waist"."""
    when = _when(rule, default.when)
    if default.value.startswith("="):
        if default.because and not default.derived:
            return f"{default.because}{when}"
        return f"worked out as {_formula(rule, default.value[1:])}{when}"
    inch, bar, metric = (part.strip() for part in default.value.replace("_", " ").partition("|"))
    value = f"{inch}, or {metric} in metric" if bar else f"“{inch}”" if item.options else inch
    because = f": {default.because}" if default.because and not default.derived else ""
    return f"{value}{when}{because}"


def _when(rule: Rule, when: When) -> str:
    """The choices under which something holds, in words."""
    parts = []
    for name, wanted in when.items():
        words = [f"“{one.replace('_', ' ')}”" for one in _several(wanted)]
        subject = _subject(rule, name)
        parts.append(f"{subject} {'' if subject.endswith(' is') else 'is '}{listed(words, 'or')}")
    return f" when {listed(parts)}" if parts else ""


def _subject(rule: Rule, name: str) -> str:
    """What a condition is about; a step that answers in words, such as enough or short, is called it."""
    return "it" if rule.step(name) else label_of(rule, name)


def _several(wanted: str | tuple[str, ...]) -> tuple[str, ...]:
    return (wanted,) if isinstance(wanted, str) else wanted


# -- the sum ---------------------------------------------------------------------------------------------------------


def _steps(rule: Rule) -> list[str]:
    """Each step: its sentence, its formula in words, how it is rounded."""
    lines = ["The sum, step by step:"]
    for number, step in enumerate(rule.steps, 1):
        lines.append(f"  {number}. {sentence(step.sentence)}")
        lines += [f"     {line}" for line in _below(rule, step)]
    return lines


def _below(rule: Rule, step: Step) -> list[str]:
    made = []
    if step.formula:
        made.append(f"{step.shown_label} = {_formula(rule, step.formula)}")
    else:
        made.append(f"This gives {the(step.shown_label)}.")
    if step.rounding is not None:
        made.append(f"Rounded {rounding_words(step.rounding)}.")
    if step.when:
        made.append(sentence(f"only{_when(rule, step.when)}"))
    return made


def _formula(rule: Rule, text: str) -> str:
    """A formula with the names of things as people say them; a comparison likewise."""

    def named(name: str) -> str:
        return label_of(rule, name)

    if "if(" not in text and (met := COMPARISON.match(text)):
        left, right = (formula.show(formula.read(met[side]), named) for side in ("left", "right"))
        return f"whether {left} {COMPARED[met['sign']]} {right}"
    whole = formula.show(_with_units(rule, formula.read(text)), named, lambda name: f"rounded {named(name)}")
    return whole.replace(">=", "≥").replace("<=", "≤")


def _with_units(rule: Rule, node: Node) -> Node:
    """The formula with mm beside a number that a length is compared with: the engine reckons lengths in them."""
    if isinstance(node, Call):
        return replace(node, args=tuple(_with_units(rule, arg) for arg in node.args))
    if not isinstance(node, Binary):
        return node
    if node.op in "<=>=" and isinstance(node.right, Number) and node.right.value and _is_length(rule, node.left):
        return replace(node, right=Name(f"{decimal(node.right.value)} mm"))
    return replace(node, left=_with_units(rule, node.left), right=_with_units(rule, node.right))


def _is_length(rule: Rule, node: Node) -> bool:
    declared = (rule.input(node.name) or rule.step(node.name)) if isinstance(node, Name) else None
    return declared is not None and declared.kind is LENGTH


def rounding_words(how: Rounding) -> str:
    """How a result is rounded: "up to the next 1/4 in (0.5 cm in metric)", "up to a whole number"."""
    from rules.engine.text import amount

    direction = DIRECTIONS[how.inch.direction]
    if how.inch.unit in ("1", "st", "row") and how.inch.step == 1:
        return f"{direction} whole number"
    if how.inch.unit == "money":
        return "to the penny or cent"
    if how.inch.unit.startswith("money"):
        return "to the penny or cent"
    inch, metric = (amount(one.step, one.unit) for one in (how.inch, how.metric))
    return f"{direction} {inch}" + (f", or {metric} in metric" if metric != inch else "")


def _signs(rule: Rule, example: list[str]) -> list[str]:
    """What pi and the root of 2 are, where the formulas or the example hold them."""
    formulas = [step.formula for step in rule.steps] + [one.value for item in rule.inputs for one in item.defaults]
    every = " ".join(formulas)
    there = {"pi": "pi" in _words(every) or "π" in "".join(example), "sqrt(2)": "sqrt(2)" in every}
    return [told_of for sign, told_of in SYMBOLS.items() if there[sign]]


def _words(text: str) -> set[str]:
    return set("".join(sign if sign.isalnum() or sign == "_" else " " for sign in text).split())


# -- an example ------------------------------------------------------------------------------------------------------


def _example(rule: Rule, talk: Conversation) -> list[str]:
    """The first of the declared examples, worked."""
    from ..conversation import Conversation

    if not rule.examples:
        return []
    question = rule.first_question()
    made = Conversation(talk.mind, habits=talk.habits).ask(question)
    lines = [f"For example: {question}"]
    lines += [f"  {number}. {worked(line)}" for number, line in enumerate(made.working, 1)]
    return [*lines, f"  {made.headline or made.message}"]


def _part(title: str, items: list[str]) -> list[str]:
    return [title, *(f"  {sentence(item)}" for item in items)] if items else []
