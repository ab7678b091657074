"""The bare reply to a sentence whose number had no unit: "cm" finishes the sentence."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book


@pytest.mark.parametrize(("sentence", "reply", "kept"), [
    ("remember my waist is 66", "cm", "Kept: your waist 66 cm."),
    ("my waist is 66", "centimetres", "Kept: your waist 66 centimetres."),
    ("my waist is 26 1/2", "in", "Kept: your waist 26 1/2 in."),
    ("my waist is 26 1/2", "inches.", "Kept: your waist 26 1/2 inches."),
    ("my waist is 66", "66 cm", "Kept: your waist 66 cm."),
    ("Ines's hip is 97", "cm", "Kept: Ines's hip 97 cm."),
    ("my waist is 66 and hip is 92", "cm", "Kept: your waist 66 cm and hip 92 cm."),
])  # fmt: skip
def test_a_unit_alone_finishes_the_sentence(chat: Book, sentence: str, reply: str, kept: str) -> None:
    assert "not its unit" in chat.refused(sentence)
    assert chat.done(reply) == kept


def test_the_history_holds_the_whole_sentence(chat: Book) -> None:
    chat.refused("remember my waist is 66")
    chat.done("cm")
    assert chat.done("undo") == "Undone: remember my waist is 66 cm"


@pytest.mark.parametrize("line", ["maybe", "bust is 88 cm", "30 cm", "7", "cm and in", "elastic for a 28 in waist"])
def test_any_other_line_is_no_unit(chat: Book, line: str) -> None:
    chat.refused("remember my waist is 66")
    chat.ask(line)
    chat.talk.forget()
    assert "I have not kept your waist" in chat.refused("what is my waist?")


def test_a_unit_later_on_is_too_late(chat: Book) -> None:
    chat.refused("remember my waist is 66")
    chat.done("my hip is 92 cm")
    assert chat.ask("cm").status != "done"


def test_lines_of_a_pipe_stand_alone(book: Book) -> None:
    book.refused("remember my waist is 66")
    assert book.ask("cm").status != "done"
