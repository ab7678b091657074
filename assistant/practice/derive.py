"""Where a formula comes from: geometry where a rule declares it, else its steps put together and turned round."""

from __future__ import annotations

from typing import TYPE_CHECKING

from rules.engine import derive
from rules.engine.slips import label_of, the

from .told import capital, sentence, told

if TYPE_CHECKING:
    from rules.engine.answer import Answer
    from rules.engine.declare import Derivation, Rule

CHECKED = "Every line was checked by algebra, and the last one against the rule's own formula."


def derivation(rule: Rule, system: str) -> Answer:
    """The derivation of a rule, line by line. system: "in" or "cm", for its numbers at the end."""
    if rule.derivation:
        lines = [line for made in rule.derivation for line in _from_geometry(rule, made, system)]
        headline = f"{capital(rule.topic)}: how the sum comes out of geometry."
        return told(
            rule.topic,
            headline,
            [*lines, CHECKED],
            "derivation",
            sources=(rule.source,),
            next=(f"explain {rule.topic}", f"practise {rule.topic}"),
        )
    lines = _from_steps(rule)
    if not lines:
        told_ = f"{capital(rule.topic)} is worked by rule of hand, not by one formula: explain {rule.topic} says how."
        return told(rule.topic, told_, (), "derivation", next=(f"explain {rule.topic}",))
    headline = (
        f"{capital(rule.topic)} is plain arithmetic, with no geometry in it: here are its steps put into each other."
    )
    return told(rule.topic, headline, lines, "derivation", sources=(rule.source,), next=(f"explain {rule.topic}",))


def _from_geometry(rule: Rule, made: Derivation, system: str) -> list[str]:
    lines = [f"{the(label_of(rule, made.step), True)}:"]
    called = [f"{name.replace('_', ' ')} is {what}" for name, what in made.names.items()]
    if called:
        lines.append(f"  {sentence('Here ' + '; '.join(called))}")
    for number, line in enumerate(derive.derived(rule, made), 1):
        lines += [f"  {number}. {sentence(line.words)}", f"     {line.equation}"]
    if numbers := derive.tried(rule, made, system):
        lines.append(f"  {sentence(numbers)}")
    return lines


def _from_steps(rule: Rule) -> list[str]:
    """The result as one formula of what is given, then turned round for each of these."""
    lines = []
    for target in rule.answers:
        node = derive.whole_formula(rule, target)
        if node is None:
            continue
        label = label_of(rule, target)
        whole, short = derive.words(rule, node), derive.words(rule, derive.simplified(rule, target) or node)
        lines.append(f"{capital(label)} = {whole}")
        if len(short) < len(whole):
            lines.append(f"  Put more shortly: {label} = {short}")
        for name, solved in derive.turned_round(rule, target):
            lines.append(f"  Turned round: {label_of(rule, name)} = {derive.words(rule, solved)}")
        break
    return [*lines, "Rounding comes last, on the result."] if lines else []
