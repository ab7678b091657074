"""Help and examples, on the command line and in a pipe."""

from __future__ import annotations

import pytest

from assistant.cli import main
from assistant.guide import guide
from tests.fakes import FakeMind, room


def told(line: str, columns: int = 80) -> str | None:
    return guide(line, FakeMind(), columns)  # type: ignore[arg-type]


@pytest.mark.parametrize("line", ["help", "HELP", " help? ", "?", "help!"])
def test_help_names_each_family_and_topic(line: str) -> None:
    text = told(line)
    assert text is not None
    assert "  quilting: binding strips\n  fit: ease, elastic\n" in text


def test_help_on_a_topic_and_on_a_family() -> None:
    assert told("help binding  Strips") == "Help on binding strips.\n  Needs: the quilt width and the quilt length."
    assert (told("help fit") or "").startswith("Help on fit.")


def test_help_on_a_long_line_keeps_its_indent() -> None:
    assert (told("help fit", 30) or "").splitlines()[1:] == ["  Needs: the quilt width and", "    the quilt length."]


def test_help_on_what_is_not_known_offers_the_nearest() -> None:
    wanted = 'I have no topic or family called "binding strip". The nearest are: binding strips.'
    assert told("help binding strip", 100) == wanted
    assert "for example: help binding strips." in (told("help xyzzy") or "").replace("\n", " ")


def test_examples_are_questions_to_try() -> None:
    assert told("examples") == told("examples binding strips")
    assert told("examples") == "Questions to try:\n  how many strips for a 60 x 72 in quilt"


@pytest.mark.parametrize("line", ["how many strips", "helpful strips", "what helps", "exampled"])
def test_other_lines_are_questions(line: str) -> None:
    assert told(line) is None


def test_help_works_as_arguments_and_in_a_pipe() -> None:
    for place, arguments in ((room(), ["help", "fit"]), (room("help fit\n"), [])):
        assert main(arguments, place.world, place.wake) == 0
        assert place.out == "Help on fit.\n  Needs: the quilt width and the quilt length.\n"
        assert place.conversation.asked == []
