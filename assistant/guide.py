"""The replies to help and examples, on the command line and in the chat."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from . import explain, ways
from .notebook import help as notebook
from .wrap import wrap

if TYPE_CHECKING:
    from rules.engine.declare import Rule

    from .understand.mind import Mind

ASKS_HELP = ("help", "?")
BESIDES = {
    "practise": "to learn the sums: explained, derived, step by step, as exercises and worksheets.",
    "plans": "for whole projects: what to buy, the cut list, the lays, the order of work.",
    "drawings": "for drawings in a file, such as: draw it to lay.svg.",
    "notebook": "for what I can keep for you: measures, cloth in hand, projects, lists, habits.",
}
ASKS_EXAMPLES = ("examples", "example")


def guide(line: str, mind: Mind, columns: int) -> str | None:
    """The reply to `help`, `help TOPIC`, `help FAMILY`, `examples` or `examples TOPIC`; None for any other line."""
    word, _, name = line.strip().rstrip("?!.").partition(" ") if line.strip() != "?" else ("?", "", "")
    name = " ".join(name.split()).lower()
    if word.lower() in ASKS_HELP:
        return help_on(name, mind, columns) if name else overview(mind, columns)
    if word.lower() in ASKS_EXAMPLES:
        return examples(name, mind, columns)
    return None


def overview(mind: Mind, columns: int) -> str:
    """What can be asked: the families and their topics, and how to go on from there."""
    lines = wrap("Ask in plain words, with the numbers and their units. I know these topics:", columns)
    for family, topics in mind.families().items():
        lines += wrap(f"{family}: {'; '.join(topics)}", columns, "  ", "    ")
    lines += wrap("Type help and a topic or a family for more of it, or examples for questions to try.", columns)
    for name, what in BESIDES.items():
        lines += wrap(f"Type help {name} {what}", columns)
    return "\n".join(lines)


def help_on(name: str, mind: Mind, columns: int) -> str:
    """Help on a topic or a family, on the notebook and other ways, or the nearest names when it is none of them."""
    if name in notebook.NAMES:
        return ways.told(notebook.OPENING, notebook.SENTENCES, columns)
    if (way := ways.way(name)) is not None:
        told = ways.told(way.opening, way.parts, columns)
        rules = tuple(rule for rule in mind.rules.values() if rule.family in way.names)
        return "\n".join([told, *_on(rules, columns)])
    rules = explain.found(name, mind.rules)
    return "\n".join(_on(rules, columns)) if rules else _not_known(name, mind, columns)


def _on(rules: Sequence[Rule], columns: int) -> list[str]:
    """Help on one rule, or in short on several."""
    lines: list[str] = []
    for line in explain.on_rule(rules[0]) if len(rules) == 1 else explain.on_rules(rules):
        indent = line[: len(line) - len(line.lstrip())]
        lines += wrap(line, columns, indent, indent + "  ")
    return lines


def examples(name: str, mind: Mind, columns: int) -> str:
    """Questions to try: all of a topic, or the first of each topic of a family or of all."""
    rules = explain.found(name, mind.rules) if name else tuple(mind.rules.values())
    if not rules:
        return _not_known(name, mind, columns)
    each = None if len(rules) == 1 else 1
    lines: list[str] = []
    for question in [question for rule in rules for question in explain.examples_of(rule)[:each]]:
        lines += wrap(question, columns, "  ", "    ")
    return "\n".join([*wrap("Questions to try:", columns), *lines])


def _not_known(name: str, mind: Mind, columns: int) -> str:
    from difflib import get_close_matches  # only when a name was not known: it is slow to import

    names = sorted({*mind.topics(), *mind.families()})
    near = get_close_matches(name, names, n=3)
    every = f"Type help alone for all topics, or for example: help {names[0]}."
    hint = f"The nearest are: {', '.join(near)}." if near else every
    return "\n".join(wrap(f'I have no topic or family called "{name}". {hint}', columns))
