"""Habits: units, money, the shop's step and usual values, in later questions until told otherwise."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book

STRIPS = "how many 2 1/2 in binding strips for a 60 x 72 in quilt"


def assumed(book: Book, line: str) -> dict[str, tuple[str, str]]:
    made = book.ask(line)
    assert made.status == "answered", made.message
    return {value.name: (value.text, value.why) for value in made.assumed}


def test_usable_width_counts_for_later_questions(book: Book) -> None:
    assert book.done("usable width 42 in") == "Kept: usable width 42 in."
    assert assumed(book, STRIPS)["usable fabric width"] == ("42 in", "you said so")
    made = book.ask(f"{STRIPS}, 36 in usable width")
    assert "usable fabric width" not in [value.name for value in made.assumed]
    assert made.results[0].text == "8 strips"  # 274 in / 36 in = 7.6


def test_a_usual_value_after_a_question_is_a_change_to_that_question(chat: Book) -> None:
    chat.told(STRIPS)
    assert chat.ask("usable width 36 in").results[0].text == "8 strips"
    assert not chat.path.exists()


def test_my_shop_sells_by_the_half_metre(book: Book) -> None:
    book.done("my shop sells by the half metre")
    made = book.ask("binding for a 150 x 200 cm quilt, strips 6.5 cm, how much cloth")
    cloth = next(result for result in made.results if result.unit == "m")
    assert cloth.text == "1 m"  # 8 strips of 6.5 cm are 0.52 m: 0.6 m by the usual step
    assert ("half metre", "you said so") in [(value.text, value.why) for value in made.assumed]


def test_work_in_inches_reads_bare_numbers_and_says_so(book: Book) -> None:
    assert book.ask("elastic for a 28 waist").status == "incomplete"
    assert book.done("work in inches") == "Kept: you work in inches."
    found = assumed(book, "elastic for a 28 waist")
    assert found["units"] == ("inches", "you said so")


def test_a_question_with_units_keeps_its_own(book: Book) -> None:
    book.done("work in inches")
    made = book.ask("elastic for a 66 cm waist")
    assert made.results[0].unit == "cm"


@pytest.mark.parametrize(
    ("said", "sign"), [("pounds", "£"), ("dollars", "$"), ("my prices are in euros", "€"), ("work in dollars", "$")]
)
def test_money(book: Book, said: str, sign: str) -> None:
    book.done(said)
    made = book.ask(f"{STRIPS}, price 9 a yard, what will it cost")
    cost = next(result for result in made.results if result.name == "cost")
    assert cost.text.startswith(sign)
    assert ("currency", "you said so") in [(value.name, value.why) for value in made.assumed]


@pytest.mark.parametrize(
    "said",
    [
        "always use 2 cm seam allowance",
        "my seam allowance is 2 cm",
        "I always use a 2 cm seam allowance",
        "seam allowance 2 cm",
        "from now on the seam allowance is 2 cm",
    ],
)
def test_seam_allowance(book: Book, said: str) -> None:
    assert book.done(said) == "Kept: seam allowance 2 cm."
    assert assumed(book, "tote 35 cm wide, 40 cm high, 10 cm deep, panel size")["seam allowance"] == (
        "2 cm",
        "you said so",
    )
    assert book.told("what's my seam allowance") == "Your seam allowance: 2 cm."


def test_habits_are_told_and_forgotten(book: Book) -> None:
    book.done("work in inches", "my shop sells by the half metre", "pounds", "usable width 42 in")
    assert (
        book.told("habits") == "Your habits: units inches, shop's step half metre, money pounds and usable width 42 in."
    )
    book.done("forget usable width")
    assert "usable width" not in book.told("habits")
    book.done("forget my habits")
    assert "no habits yet" in book.told("my habits")
    assert assumed(book, STRIPS)["usable fabric width"][1] != "you said so"
