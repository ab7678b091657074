"""The help on the notebook: every sentence in it is one that the notebook hears."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.notebook.help import SENTENCES
from tests.notebook.conftest import Book
from tests.support import mind

TURNS = [(title, sentence) for title, sentences in SENTENCES for sentence in sentences]


@pytest.mark.parametrize(("title", "sentence"), TURNS)
def test_a_sentence_of_the_help_is_heard(
    chat: Book, tmp_path: Path, monkeypatch: pytest.MonkeyPatch, title: str, sentence: str
) -> None:
    monkeypatch.chdir(tmp_path)
    (tmp_path / "sizes.csv").write_text("Size,Bust (cm)\n10,83\n12,87\n", "utf-8")
    other = Book(tmp_path / "other.db")
    other.done("my waist is 66 cm", "export the notebook to notebook.json")
    chat.done(
        "my waist is 66 cm, hip 92 cm and bust 85 cm", "Ines's hip is 38 in and bust 90 cm", "start project sea skirt"
    )
    chat.done(
        "size table sea dress: 10: 83/64/88 cm, 12: 87/68/92",
        "I have 1.5 m of navy linen",
        "start project harbour tote",
        "need 3 m of webbing",
    )
    chat.done("my back is 40 cm")
    if sentence.startswith("redo"):
        chat.done("undo")
    if sentence.startswith("keep that"):
        chat.told("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    if sentence.startswith(("import", "export")):
        (tmp_path / "notebook.json").unlink() if sentence.startswith("export") else None
        chat = Book(tmp_path / "empty.db") if sentence.startswith("import") else chat
    if title == "Habits":
        chat.talk.forget()
    made = chat.ask(sentence)
    assert made.status in ("done", "answered"), made.message


def test_the_help_is_told_in_the_chat_and_the_command() -> None:
    from assistant.guide import guide

    text = guide("help notebook", mind(), 80)
    assert text is not None
    assert text.startswith("The notebook keeps what you tell it")
    assert all(len(line) <= 80 for line in text.splitlines())
