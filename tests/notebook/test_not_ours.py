"""Lines that sound like the notebook's and are questions: they go to the rules, and keep nothing."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book
from tests.support import mind

QUESTIONS = (
    "I have 7 strips 2 1/2 in wide of 40 in usable cloth, how big a square quilt will they bind",
    "my quilt is 60 x 72 in, how many 2 1/2 in strips to bind it",
    "what if my tension is 20?",
    "my waist is 28 in. how long should 1 in elastic be?",
    "use 44 in cloth",
    "make it 10 cm deeper",
    "in inches",
    "keep 3 in spare",
    "what is 3 yd 8 in + 45 cm",
    "I need elastic for a 28 in waist",
    "cut size of a 10 cm finished patch",
    "added 3 in to a 38 in hip, how much ease is that",
)


@pytest.mark.parametrize("line", QUESTIONS)
def test_a_question_is_left_to_the_rules(book: Book, line: str) -> None:
    assert book.ask(line).topic != "notebook"
    assert not book.path.exists()


def test_no_example_of_any_rule_is_taken_for_a_sentence(book: Book) -> None:
    book.done("start project harbour tote")
    before = book.path.read_bytes()
    taken = [example for rule in mind().rules.values() for example in rule.examples
             if book.ask(example.partition(" -> ")[0]).topic == "notebook"]  # fmt: skip
    assert taken == []
    assert book.path.read_bytes() == before


def test_a_follow_up_stays_a_follow_up(chat: Book) -> None:
    chat.told("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    assert chat.ask("usable width 36 in").results[0].text == "8 strips"
    assert chat.ask("in metres").topic == "binding strips"
    assert not chat.path.exists()


HOSTILE = (
    "'; DROP TABLE thing; --",
    "my \x00 is 5 cm",
    "remember",
    "forget",
    "use",
    "keep that as",
    "note:",
    "my",
    "what is my",
    "size table",
    "import the notebook from",
    "my waist is 1e999999 cm",
    "note: " + "long " * 1500,
    "note for " + ": " * 1500,
)


@pytest.mark.parametrize("line", HOSTILE)
def test_hostile_lines_raise_nothing(book: Book, line: str) -> None:
    book.done("my waist is 66 cm")
    book.ask(line)
    assert book.told("what is my waist") == "Your waist: 66 cm."
