"""Help and examples, on the command line and in a pipe."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.cli import main
from assistant.conversation import Conversation
from assistant.guide import guide
from assistant.notebook import Notebook
from assistant.ways import WAYS, Way
from tests.fakes import FakeMind, room
from tests.support import mind


def told(line: str, columns: int = 80) -> str | None:
    return guide(line, FakeMind(), columns)  # type: ignore[arg-type]


@pytest.mark.parametrize("line", ["help", "HELP", " help? ", "?", "help!"])
def test_help_names_each_family_and_topic(line: str) -> None:
    text = told(line)
    assert text is not None
    assert "  quilting: binding strips\n  fit: ease; elastic\n" in text


FIT = "elastic: About elastic.\n  elastic for 28 in\nease: About ease.\n  ease for 28 in"
ELASTIC = """\
elastic: About elastic.
Also called: waistband
Tell me: waist, such as 28 in
Taken, unless you say otherwise: overlap 1/2 in or 1.2 cm: enough to sew twice
If you like: price, such as 2 a metre
You get: cut
For example
  elastic for 28 in
  elastic for 70 cm
Source: arithmetic"""


@pytest.mark.parametrize("line", ["help elastic", "help  Elastic?", "help waistband"])
def test_help_on_a_topic_tells_what_it_takes_and_gives(line: str) -> None:
    assert told(line) == ELASTIC


def test_help_on_a_family_tells_its_topics_each_with_a_question() -> None:
    assert told("help fit") == FIT


def test_help_finds_a_topic_by_a_word_of_its_name() -> None:
    assert (told("help strips") or "").startswith("binding strips: About binding strips.")


def test_help_keeps_to_the_columns_and_its_indents() -> None:
    lines = (told("help elastic", 30) or "").splitlines()
    assert max(map(len, lines)) <= 30
    assert lines[3:6] == ["Taken, unless you say", "  otherwise: overlap 1/2 in or", "  1.2 cm: enough to sew twice"]


def test_help_on_what_is_not_known_offers_the_nearest() -> None:
    wanted = 'I have no topic or family called "binding strip". The nearest are: binding strips.'
    assert told("help binding strip", 100) == wanted
    assert "for example: help binding strips." in (told("help xyzzy") or "").replace("\n", " ")


def test_examples_are_questions_to_try() -> None:
    each = "Questions to try:\n  binding strips for 28 in\n  elastic for 28 in\n  ease for 28 in"
    assert told("examples") == each
    assert told("examples ease") == "Questions to try:\n  ease for 28 in\n  ease for 70 cm"
    assert "no topic or family called" in (told("examples xyzzy") or "")


@pytest.mark.parametrize("line", ["how many strips", "helpful strips", "what helps", "exampled"])
def test_other_lines_are_questions(line: str) -> None:
    assert told(line) is None


def test_help_works_as_arguments_and_in_a_pipe() -> None:
    for place, arguments in ((room(), ["help", "fit"]), (room("help fit\n"), [])):
        assert main(arguments, place.world, place.wake) == 0
        assert place.out == FIT + "\n"
        assert place.conversation.asked == []


@pytest.mark.parametrize("way", WAYS)
def test_every_line_of_the_help_on_a_way_works_in_its_order(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, way: Way
) -> None:
    monkeypatch.chdir(tmp_path)
    talk = Conversation(mind(), Notebook(tmp_path / "notebook.db"))
    for title, lines in way.parts:
        for line in lines:
            made = talk.ask(line)
            assert made.status in ("answered", "done"), f"{title}: {line}: {made.message}"
            assert made.headline or made.text


@pytest.mark.parametrize(
    ("name", "opening"),
    [
        ("practice", "To learn"),
        ("practise", "To learn"),
        ("plans", "A plan"),
        ("drawings", "Lays"),
        ("notebook", "The note"),
    ],
)
def test_help_is_there_for_what_is_no_sum(name: str, opening: str) -> None:
    text = told(f"help {name}", 60)
    assert text is not None
    assert text.startswith(opening)
    assert max(map(len, text.splitlines())) <= 60
    assert f"help {name}" in (told("help") or "") or name == "practice"


def test_help_on_plans_lists_every_plan() -> None:
    text = guide("help plans", mind(), 80) or ""
    assert all(f"{rule.topic}: " in text for rule in mind().rules.values() if rule.family == "plans")
