"""What is said when a line is not answered: what was understood, what is wrong, and what to type instead."""

from __future__ import annotations

from collections.abc import Sequence

from rules.engine.answer import Answer, Missing

from .build import NeedsUnit
from .mind import Mind
from .reading import Reading
from .spelling import closest
from .values import Line, Value


def too_long(length: int) -> Answer:
    return Answer("unclear", message=f"That line is {length:,} characters long; I read up to 8,000. Ask one question a line, "
                                     "such as: elastic 1 in wide for a 28 in waist")  # fmt: skip


def lost(mind: Mind, line: Line, readings: Sequence[Reading]) -> Answer:
    """No rule fits: the nearest topics, each with a question that works."""
    topics = [reading.rule.topic for reading in readings[:3]]
    if not topics:
        for word in line.words:
            if len(word) > 3 and word.isalpha():
                topics += closest(word, mind.topics(), 2)
    topics = list(dict.fromkeys(topics))[:3] or list(mind.topics())[:3]
    choices = tuple(f"{topic}: {mind.rules[topic].first_question()}" for topic in topics)
    numbers = ", ".join(value.text for value in line.values)
    read = f"I read the numbers {numbers}, but " if numbers else ""
    return Answer("unclear", message=f"{read or 'Sorry, '}I cannot tell which sum is wanted. Say what it is for, such as: "
                                     f"{mind.rules[topics[0]].first_question()}", choices=choices)  # fmt: skip


def rivals(mind: Mind, readings: Sequence[Reading]) -> Answer:
    """Two or more rules fit as well: a question back."""
    choices = tuple(f"{reading.rule.topic}: {reading.rule.about}" for reading in readings)
    names = " or ".join(reading.rule.topic for reading in readings)
    return Answer("unclear", message=f"I can read this in more than one way: {names}? Say which, such as: {readings[0].rule.topic}.",
                  choices=choices)  # fmt: skip


def disagree(reading: Reading, told: str, other: str) -> Answer:
    """Two things told that do not go together: which holds is asked."""
    rule = reading.rule
    text = f"I read {told}, but that does not go with {other}. Say which of them holds and leave the other out"
    return Answer("unclear", topic=rule.topic, message=f"{text}, such as: {rule.examples[0].partition(' -> ')[0]}")


def over_nothing(value: Value) -> Answer:
    """A rate over no length at all."""
    return Answer("impossible", message=f"I read {value.text}, which is so much over nothing. Type the length it is over, such as: "
                                        "22 stitches to 10 cm.")


def unplaced(reading: Reading, values: Sequence[Value] = ()) -> Answer:
    """A number has no place in the rule: never dropped, asked about. values: those, where they are not the lost ones."""
    texts = ", ".join(value.text for value in values or reading.lost)
    rule = reading.rule
    labels = ", ".join(item.label for item in rule.inputs if item.kind.is_number)
    return Answer("unclear", topic=rule.topic,
                  message=f"I read this as {rule.topic}, but could not place {texts}. Say what it is, beside the number "
                          f"({labels}), or leave it out. Such as: {rule.first_question()}",
                  choices=(f"{rule.topic}: {rule.first_question()}",))  # fmt: skip


def needs_unit(reading: Reading, need: NeedsUnit) -> Answer:
    """A length without a unit, and nothing to tell it by."""
    return Answer("incomplete", topic=reading.rule.topic,
                  message=f"I read this as {reading.rule.topic}, {need.label} {need.text}, but not the unit of {need.text}. "
                          f"Type: {need.text} in, or {need.text} cm.",
                  missing=(Missing("unit", f"Is {need.text} in inches or centimetres?", f"{need.text} in"),))  # fmt: skip
