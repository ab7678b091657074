"""Cloth, yarn and notions in hand."""

from __future__ import annotations

import pytest

from tests.notebook.conftest import Book

LINEN = "I have 1.5 m of navy linen 140 cm wide, £9/m"


def test_cloth_is_had_used_and_told(book: Book) -> None:
    assert book.done(LINEN) == "Kept: 1.5 m of navy linen, 140 cm wide, £9/m in hand."
    assert book.done("use 80 cm of it") == "Kept: used 80 cm of navy linen; 0.7 m left."
    assert book.told("how much navy linen is left?") == "In hand: 0.7 m of navy linen."
    assert book.done("used 20 cm of the navy linen") == "Kept: used 20 cm of navy linen; 0.5 m left."


@pytest.mark.parametrize(
    ("said", "kept"),
    [
        ("I have 3 balls of grey wool, 50 g each", "Kept: 3 balls of grey wool, 50 g each in hand."),
        ("I've got 200 g of grey wool", "Kept: 200 g of grey wool in hand."),
        ("I have two 20 cm zips", "Kept: two 20 cm zips in hand."),
        ("I have a 20 cm zip", "Kept: 1 20 cm zip in hand."),
        ("I have 12 shirt buttons at 25p each", "Kept: 12 shirt buttons, 25p each in hand."),
        ("I have half a yard of canvas in my stash", "Kept: half a yard of canvas in hand."),
        ("add 2 m of blue lawn to my stash", "Kept: 2 m of blue lawn in hand."),
        (
            "I have 2 1/4 yd of red wool, 60 in wide, at $14/yd",
            "Kept: 2 1/4 yd of red wool, 60 in wide, $14/yd in hand.",
        ),
    ],
)
def test_ways_to_have_a_thing(book: Book, said: str, kept: str) -> None:
    assert book.done(said) == kept


def test_no_number_of_a_description_is_dropped(book: Book) -> None:
    said = book.refused("I have 1.5 m of navy linen, 300, 140 cm wide")
    assert said.startswith("I read 1.5 m of navy linen, but could not place 300, so nothing was kept.")
    assert not book.path.exists()


def test_more_than_there_is_cannot_be_used(book: Book) -> None:
    book.done(LINEN)
    assert (
        book.refused("use 2 m of it")
        == "There is only 1.5 m of navy linen, so 2 m cannot be used of it. Nothing was changed."
    )
    assert "cannot be counted in 200 g" in book.refused("use 200 g of the navy linen")
    assert book.told("how much linen is left") == "In hand: 1.5 m of navy linen."


def test_what_is_not_in_hand_is_said_so(book: Book) -> None:
    book.done(LINEN)
    assert book.refused("use 1 m of red silk").startswith(
        "I have nothing in hand called red silk. In hand: navy linen."
    )
    assert "do not know how much red ribbon there is" in book.refused("I have some red ribbon")


def test_yards_are_used_of_metres_exactly(book: Book) -> None:
    book.done("I have 1 m of navy linen", "use half a yard of it")
    (result,) = book.ask("how much navy linen is left").results
    assert float(result.value) == pytest.approx(1 - 0.4572)  # the international yard: 0.9144 m


def test_the_stash_is_told_as_a_table(book: Book) -> None:
    book.done(LINEN, "I have 3 balls of grey wool, 50 g each")
    made = book.ask("stash")
    assert made.table is not None
    assert made.table.texts == (("navy linen", "1.5 m", "140 cm", "£9/m"), ("grey wool", "3 balls", "", ""))


# -- enough ------------------------------------------------------------------------------------------------------------


def test_enough_for_what_a_question_takes(book: Book) -> None:
    book.done("I have 1/2 yd of navy linen")
    # 7 strips of 2 1/2 in are 17 1/2 in, and half a yard is 18 in.
    made = book.ask("is my navy linen enough for binding a 60 x 72 in quilt, 40 in usable width?")
    assert made.headline.startswith("Yes, it is enough: 0.014 yd is left over.")  # 1/2 in
    assert made.results[0].value == "enough"
    book.done("use 1 in of it")
    made = book.ask("is my navy linen enough for binding a 60 x 72 in quilt, 40 in usable width?")
    assert made.headline.startswith("No, it is not enough: 0.014 yd short.")
    assert made.results[0].value == "not enough"
    assert any(value.why == "from the notebook" for value in made.given)


def test_the_width_in_hand_is_the_width_asked_with(book: Book) -> None:
    book.done("I have 1.5 m of navy linen 140 cm wide")
    made = book.ask("is my navy linen enough for a pattern that says 1.6 m of 150 cm")
    # 1.6 m of 150 cm is 2.4 m^2, which is 1.714 m of 140 cm: 0.214 m short
    assert made.headline.startswith("No, it is not enough: 0.214 m short.")


def test_enough_for_an_amount_said_outright(book: Book) -> None:
    book.done(LINEN)
    assert book.told("is my navy linen enough for a bag that takes 80 cm?").startswith(
        "Yes, it is enough: 0.7 m is left over."
    )
    assert book.told("do I have enough navy linen for a bag that takes 2 m").startswith("No, it is not enough: 0.5 m short.")


def test_what_it_should_be_enough_for_must_be_known(book: Book) -> None:
    book.done(LINEN)
    assert book.ask("is my navy linen enough for a coat?").status in ("incomplete", "unclear")
