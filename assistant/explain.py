"""Help on a topic or a family, made from the declarations of the rules and from nothing else."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rules.engine.declare import Input, Rule

MOST_SAYS = 6
DEFAULT_MARK = "="  # a default that begins with it is a formula


def found(name: str, rules: Mapping[str, Rule]) -> tuple[Rule, ...]:
    """The rules a name means: one for a topic or a word for it, several for a family, none when it is not known.

    A topic's own name comes first, then a family, then other words for a rule, then a word in a topic's name.
    """
    if name in rules:
        return (rules[name],)
    ways = (
        lambda rule: rule.family == name,
        lambda rule: name in rule.says,
        lambda rule: name in rule.topic.split(),
    )
    for fits in ways:
        if chosen := tuple(rule for rule in rules.values() if fits(rule)):
            return chosen
    return ()


def on_rule(rule: Rule) -> list[str]:
    """Help on one rule, a paragraph a line, indented where it belongs to the line above."""
    needed = [item for item in rule.inputs if item.default is None and not item.extra]
    known = [item for item in rule.inputs if item.default is not None and not _only_worked_out(item)]
    extra = [item for item in rule.inputs if item.extra]
    outcomes = [step.shown_label for name in rule.answers if (step := rule.step(name))]
    return [
        f"{rule.topic}: {rule.about}",
        *_part("Also called", [", ".join([word for word in rule.says if word != rule.topic][:MOST_SAYS])]),
        *_part("Tell me", [f"{item.label}, such as {item.example}" for item in needed]),
        *_part("Taken, unless you say otherwise", [_with_default(item) for item in known]),
        *_part("If you like", [_with_example(item) for item in extra]),
        *_part("You get", [", ".join(outcomes)]),
        *_part("For example", examples_of(rule)),
        *_part("Source", [rule.source]),
    ]


def on_rules(rules: Iterable[Rule]) -> list[str]:
    """Help on a family: each of its topics in a sentence, with a question to try."""
    lines = []
    for rule in rules:
        lines += [f"{rule.topic}: {rule.about}", *(f"  {question}" for question in examples_of(rule)[:1])]
    return lines


def examples_of(rule: Rule) -> list[str]:
    """The questions of the declared examples, without their answers."""
    return rule.questions()


def _only_worked_out(item: Input) -> bool:
    return all(default.derived for default in item.defaults)


def _with_default(item: Input) -> str:
    default = item.defaults[0]
    if default.value.startswith(DEFAULT_MARK):
        told = item.label
    else:
        told = f"{item.label} {default.value.replace(' | ', ' or ').replace('_', ' ')}"
    return f"{told}: {default.because}" if default.because else told


def _with_example(item: Input) -> str:
    return f"{item.label}, such as {item.example}" if item.example else item.label


def _part(title: str, items: list[str]) -> list[str]:
    """A title and its items: on one line when there is one item; nothing when there is none."""
    items = [item for item in items if item]
    if len(items) == 1:
        return [f"{title}: {items[0]}"]
    return [title, *(f"  {item}" for item in items)] if items else []
