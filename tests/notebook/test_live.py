"""The line under the prompt while a sentence of the notebook is typed: it says so, and nothing is kept or read."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book


@pytest.mark.parametrize(("line", "topic"), [
    ("my waist is 66 cm", "notebook: measure"),
    ("Ines's hip is 38 in", "notebook: measure"),
    ("I have 1.5 m of navy linen 140 cm wide", "notebook: cloth in hand"),
    ("start project harbour tote", "notebook: project"),
    ("note: press the hem first", "notebook: project"),
    ("work in inches", "notebook: habit"),
    ("add 2 zips to the shopping list", "notebook: project"),
    ("shopping list", "notebook: list"),
    ("undo that", "notebook: changes"),
    ("my scores", "notebook: all of it"),
])  # fmt: skip
def test_a_sentence_is_seen_as_one(chat: Book, line: str, topic: str) -> None:
    assert chat.talk.reading(line).topic == topic
    assert not chat.path.exists()


@pytest.mark.parametrize("line", [
    "how many 2 1/2 in binding strips for a 60 x 72 in quilt", "elastic 1 in wide for a 28 in waist",
    "I need 3 m of what", "export the notebook to notebook.json",
])  # fmt: skip
def test_other_lines_are_not(chat: Book, line: str) -> None:
    assert not chat.talk.reading(line).topic.startswith("notebook")


def test_a_missing_unit_is_seen_while_typing(chat: Book) -> None:
    assert chat.talk.reading("my waist is 66").missing == ("unit",)
    assert chat.talk.reading("my waist is 66 c").missing in ((), ("unit",))
    assert chat.talk.reading("my waist is 66 cm").missing == ()


def test_typing_keeps_nothing_and_forgets_no_question_of_ours(chat: Book) -> None:
    chat.done("my hip is 92 cm")
    before = chat.path.read_bytes()
    chat.refused("my waist is 66")
    for end in range(1, 20):
        chat.talk.reading("my back is 40 cm long"[:end])
    assert chat.path.read_bytes() == before
    assert chat.done("cm") == "Kept: your waist 66 cm."
