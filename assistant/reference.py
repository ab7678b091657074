"""The reference of every rule, as Markdown, made from the declarations: `python -m assistant.reference > rules/README.md`."""

from __future__ import annotations

from rules.catalogue import all_rules
from rules.engine.declare import Default, Input, Rule, Step

HEAD = """# Every rule

Made from the declarations by `python -m assistant.reference > rules/README.md`; a test keeps it true. For each rule: what it
answers, what it needs, what it assumes and why, the sum step by step, where it comes from, and questions that it answers.
"""


def reference() -> str:
    """The whole page."""
    families: dict[str, list[Rule]] = {}
    for rule in all_rules().values():
        families.setdefault(rule.family, []).append(rule)
    parts = [HEAD]
    for family, rules in sorted(families.items()):
        parts.append(f"## {family[:1].upper()}{family[1:]}\n")
        parts += [_rule(rule) for rule in sorted(rules, key=lambda rule: rule.topic)]
    return "\n".join(parts).rstrip() + "\n"


def _rule(rule: Rule) -> str:
    lines = [f"### {rule.topic}\n", rule.about, ""]
    also = [word for word in rule.says if word != rule.topic]
    if also:
        lines += [f"Also called: {', '.join(also)}.", ""]
    lines += ["| input | such as | when not said |", "|---|---|---|"]
    lines += [_input(item) for item in rule.inputs]
    lines += ["", "| step | sum | rounding |", "|---|---|---|"]
    lines += [_step(step) for step in rule.steps]
    lines += ["", *(f"- Mind: {caution.text} ({caution.source})." for caution in rule.cautions)]
    lines += [f"- {note}" for note in rule.notes]
    lines += [f"- Source: {rule.source}.", "", "```text"]
    for example in rule.examples:
        question, _, answer = example.partition(" -> ")
        lines += [f"> {question}", f"  {answer}"]
    return "\n".join([*lines, "```", ""]).replace("\n\n\n", "\n\n")


def _cell(text: str) -> str:
    return text.replace("|", "or").replace("\n", " ")


def _input(item: Input) -> str:
    if item.options:
        such = ", ".join(key.replace("_", " ") for key in item.options)
    else:
        such = item.example or item.practice.replace("..", " to ") or item.kind.name
    return f"| {_cell(item.label)} | {_cell(such)} | {_cell(_defaults(item))} |"


def _defaults(item: Input) -> str:
    if item.extra:
        return "left out"
    if not item.defaults:
        return f"asked: {item.ask}"
    return "; ".join(_default(default) for default in item.defaults)


def _default(default: Default) -> str:
    value = default.value[1:] if default.value.startswith("=") else default.value.replace("_", " ")
    when = " and ".join(
        f"{name} is {wanted if isinstance(wanted, str) else ' or '.join(wanted)}"
        for name, wanted in default.when.items()
    )
    return value + (f" ({default.because})" if default.because else "") + (f" when {when}" if when else "")


def _step(step: Step) -> str:
    how = ""
    if step.rounding is not None:
        inch, metric = step.rounding.inch, step.rounding.metric
        words = [f"{one.direction} {one.step} {'' if one.unit == '1' else one.unit}".strip() for one in (inch, metric)]
        how = words[0] if words[0] == words[1] else " or ".join(words)
    return f"| {_cell(step.sentence)} | `{_cell(f'{step.name} = {step.formula}' if step.formula else step.name)}` | {_cell(how)} |"


if __name__ == "__main__":
    print(reference(), end="")
