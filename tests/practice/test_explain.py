"""An explanation names every input and symbol, works an example, gives the source, and reads well aloud."""

from __future__ import annotations

import re

import pytest

from assistant import render
from assistant.conversation import Conversation
from assistant.practice.explain import explanation
from rules.engine import formula
from rules.engine.kinds import TEXT
from rules.engine.slips import label_of
from tests.support import ask, mind, talk

TOPICS = list(mind().rules)
TALK = Conversation(mind())


def told(topic: str) -> str:
    made = explanation(mind().rules[topic], TALK)
    return "\n".join((made.headline, *made.text))


@pytest.mark.parametrize("topic", TOPICS)
def test_it_names_every_input_and_step(topic: str) -> None:
    rule, text = mind().rules[topic], told(topic).lower()
    missing = [item.label for item in rule.inputs if item.label.lower() not in text]
    missing += [step.shown_label for step in rule.steps if step.formula and step.shown_label.lower() not in text]
    assert not missing


@pytest.mark.parametrize("topic", TOPICS)
def test_it_calls_everything_in_a_formula_by_its_name(topic: str) -> None:
    """No name of the declarations' own (in_hand, panel_width) shows, and pi and roots are explained."""
    rule, text = mind().rules[topic], told(topic)
    assert not re.findall(r"\b[a-z]+_[a-z_]+\b", text)
    for step in rule.steps:
        if step.formula and step.kind is not TEXT:
            for name in formula.names(formula.read(step.formula)):
                assert label_of(rule, name) in text, (step.name, name)
    if "× π" in text or "π ×" in text:
        assert "Pi, written π, is 3.1416" in text


@pytest.mark.parametrize("topic", TOPICS)
def test_it_says_why_each_value_is_assumed(topic: str) -> None:
    text = told(topic)
    for item in mind().rules[topic].inputs:
        for default in item.defaults:
            if default.because and not default.derived:
                assert default.because[1:] in text, item.name


@pytest.mark.parametrize("topic", TOPICS)
def test_it_works_an_example_and_gives_the_source(topic: str) -> None:
    made = explanation(mind().rules[topic], TALK)
    rule = mind().rules[topic]
    example = rule.examples[0].partition(" -> ")[0]
    worked = ask(example)
    assert f"For example: {example}" in made.text
    assert made.sources == (rule.source,)
    if worked.status == "answered":
        assert any(worked.headline.rstrip(".") in line for line in made.text)


@pytest.mark.parametrize("topic", TOPICS)
def test_it_reads_well_aloud(topic: str) -> None:
    """Sentences end as sentences, nothing is said twice in a row, no sign stands where a word belongs."""
    made = explanation(mind().rules[topic], TALK)
    for line in made.text:
        text = line.strip()
        if not text.startswith("For example:") and " = " not in text:
            assert text.endswith((".", ":", "?", "!")), text
        assert ".." not in text, text
        assert "  " not in text, text
        assert not re.search(r"\b(a|the|of|is|in) \1\b", text.lower()), text


def test_explain_on_the_screen_leaves_no_empty_line() -> None:
    shown = render.full(ask("explain elastic"), 60)
    assert shown.startswith("Elastic: ")
    assert all(line.strip() for line in shown.splitlines())
    assert max(map(len, shown.splitlines())) <= 60


@pytest.mark.parametrize(
    ("line", "topic"),
    [
        ("explain elastic", "elastic"),
        ("Explain the elastic rule.", "elastic"),
        ("explain how to work binding strips", "binding strips"),
        ("explain bindng strips", "binding strips"),
        ("teach me circle skirts", "circle skirt"),
    ],
)
def test_explain_finds_the_rule(line: str, topic: str) -> None:
    made = ask(line)
    assert (made.status, made.topic) == ("answered", topic)


def test_explain_alone_after_an_answer_shows_its_working_again() -> None:
    answer, again = talk("elastic for a 28 in waist, 1 in wide", "explain")
    assert again.working == answer.working


def test_why_after_an_answer_shows_its_working_again() -> None:
    answer, again = talk("elastic for a 28 in waist, 1 in wide", "why?")
    assert again.working == answer.working


def test_a_family_is_told_by_its_rules() -> None:
    made = ask("explain quilting")
    assert made.status == "unclear"
    assert "binding strips" in made.choices


def test_a_name_that_is_none_gets_the_nearest() -> None:
    made = ask("explain the zzyzx")
    assert made.status == "unclear"
    assert "zzyzx" in made.message
