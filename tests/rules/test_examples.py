"""The example questions of every declaration, put in words and answered as the declaration says."""

from __future__ import annotations

import pytest

from tests.support import ask, mind

EXAMPLES = [(rule.topic, example) for rule in mind().rules.values() for example in rule.examples]


@pytest.mark.parametrize(("topic", "example"), EXAMPLES, ids=[example for _, example in EXAMPLES])
def test_an_example_is_answered_as_declared(topic: str, example: str) -> None:
    question, _, wanted = example.partition(" -> ")
    made = ask(question)
    assert made.status == "answered", made.message
    assert made.topic == topic
    first, *others = [text.strip() for text in wanted.split(";")]
    assert made.results[0].text == first
    texts = {result.text for result in made.results}
    assert not set(others) - texts, f"no result {sorted(set(others) - texts)} among {sorted(texts)}"


def test_every_rule_has_at_least_three_examples() -> None:
    few = {rule.topic: len(rule.examples) for rule in mind().rules.values() if len(rule.examples) < 3}
    assert not few
