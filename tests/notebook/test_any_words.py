"""Words of the notebook in any order: each line gets an answer, and the file stays whole."""

from __future__ import annotations

import random
import sqlite3
from pathlib import Path

import pytest

from assistant.notebook.sentences import KEEPS, TELLS
from tests.notebook.conftest import Book

NUMBERS = (
    "66 cm", "3", "£4.20", "£9/m", "25p", "1/2 yd", "20 %", "5 ft 6", "44-45 in", "60 x 72 in", "0", "-3 cm", "1e9 m",
)  # fmt: skip
WORDS = (
    "waist", "hip", "Ines", "navy linen", "zip", "harbour tote", "it", "that", ",", ":", "?", "'s", "and", "of", "for",
    "each", "wide",
)  # fmt: skip
STUFF = (*NUMBERS, *WORDS)


def line(dice: random.Random) -> str:
    """A pattern with its slots filled anyhow, some words dropped and some put in."""
    pattern, _ = dice.choice((*KEEPS, *TELLS))
    words = []
    for piece in pattern.split():
        bare = piece.removesuffix("?")
        if piece.endswith("?") and dice.random() < 0.5:
            continue
        words.append(
            " ".join(dice.choices(STUFF, k=dice.randint(1, 3)))
            if bare.startswith("<")
            else dice.choice(bare.split("|"))
        )
        if dice.random() < 0.1:
            words.append(dice.choice(STUFF))
    return " ".join(words)


@pytest.mark.parametrize("seed", range(6))
def test_any_words_in_any_order_are_answered(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, seed: int) -> None:
    monkeypatch.chdir(tmp_path)  # some of them write files
    dice, book = random.Random(seed), Book(tmp_path / "notebook.db", together=bool(seed % 2))
    for _ in range(120):
        made = book.ask(line(dice))
        assert made.status in ("answered", "done", "incomplete", "unclear", "impossible")
        assert made.headline or made.message
    connection = sqlite3.connect(book.path)
    assert connection.execute("PRAGMA integrity_check").fetchone()[0] == "ok"
    connection.close()
