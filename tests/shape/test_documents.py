"""The documents tell the truth: the reference is what the declarations say, and the README's questions are answered so."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from assistant import render
from assistant.reference import reference
from tests.support import ask

ROOT = Path(__file__).parents[2]


def test_the_reference_is_what_the_declarations_say() -> None:
    kept = (ROOT / "rules" / "README.md").read_text("utf-8")
    assert kept == reference(), "make it again: python -m assistant.reference > rules/README.md"


def shown(name: str) -> list[tuple[str, list[str]]]:
    """(question, lines shown below it) of every `$ ellwand "..."` in a document's text blocks."""
    text = (ROOT / name).read_text("utf-8")
    found = []
    for block in re.findall(r"```text\n(.*?)```", text, re.DOTALL):
        for part in re.split(r"^\$ ellwand ", block, flags=re.MULTILINE)[1:]:
            first, *lines = part.strip().splitlines()
            found.append((first.strip().strip("'\""), lines))
    return found


QUESTIONS = shown("README.md")


def test_the_readme_shows_ten_questions() -> None:
    assert len(QUESTIONS) >= 10


@pytest.mark.parametrize(("question", "lines"), QUESTIONS, ids=[question for question, _ in QUESTIONS])
def test_a_question_of_the_readme_is_answered_as_shown(question: str, lines: list[str]) -> None:
    said = render.full(ask(question), 80, False, False).splitlines()
    assert said[: len(lines)] == lines


def test_the_rule_shown_to_contributors_works_as_shown(tmp_path: Path) -> None:
    """The complete example of DEVELOPERS.md is a rule that answers its own examples."""
    from assistant.conversation import Conversation
    from assistant.understand import lexicon
    from assistant.understand.mind import Mind
    from rules.engine.check import check_deeply
    from rules.engine.declare import Rule
    from tests.support import mind

    (code,) = re.findall(r"```python\n(.*?)```", (ROOT / "DEVELOPERS.md").read_text("utf-8"), re.DOTALL)
    names: dict[str, object] = {"__package__": "rules.notions", "__name__": "rules.notions.cord"}
    exec(compile(code, "cord.py", "exec"), names)
    rule = names["LACING"]
    assert isinstance(rule, Rule)
    check_deeply(rule)
    known = mind()
    more = {**known.rules, rule.topic: rule}
    other = Mind(known.reader, lexicon.build(more), b"", more)
    for example in rule.examples:
        question, _, wanted = example.partition(" -> ")
        assert Conversation(other).ask(question).results[0].text == wanted
