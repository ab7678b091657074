"""The replies to help and examples, on the command line and in the chat."""

from __future__ import annotations

from typing import TYPE_CHECKING

from . import explain
from .notebook import help as notebook
from .wrap import wrap

if TYPE_CHECKING:
    from .understand.mind import Mind

ASKS_HELP = ("help", "?")
ASKS_EXAMPLES = ("examples", "example")


def guide(line: str, mind: Mind, columns: int) -> str | None:
    """The reply to `help`, `help TOPIC`, `help FAMILY`, `examples` or `examples TOPIC`; None for any other line."""
    word, _, name = line.strip().rstrip("?!.").partition(" ") if line.strip() != "?" else ("?", "", "")
    name = " ".join(name.split()).lower()
    if word.lower() in ASKS_HELP and name in notebook.NAMES:
        return notebook.told(columns)
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
    lines += wrap("To learn the sums: explain binding, derive circle skirt, step by step (after a question), practise quilting, "
                  "worksheet of 10 on elastic as HTML to sheet.html.", columns)  # fmt: skip
    lines += wrap("Type help notebook for what I can keep for you.", columns)
    return "\n".join(lines)


def help_on(name: str, mind: Mind, columns: int) -> str:
    """Help on a topic or a family, or the nearest names when it is neither."""
    rules = explain.found(name, mind.rules)
    if not rules:
        return _not_known(name, mind, columns)
    lines: list[str] = []
    for line in explain.on_rule(rules[0]) if len(rules) == 1 else explain.on_rules(rules):
        indent = line[: len(line) - len(line.lstrip())]
        lines += wrap(line, columns, indent, indent + "  ")
    return "\n".join(lines)


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
