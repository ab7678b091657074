"""Cloth and money: the ways people list pieces, bills and offers, and what must never go wrong."""

from __future__ import annotations

from fractions import Fraction

import pytest

from rules.engine.request import Cut
from tests.support import ask, exact, mind, result, rounded, talk, work


def pieces(question: str) -> list[tuple[int, str, float, float]]:
    """The pieces read from a question: count, name, width and length in cm."""
    from assistant.conversation import Conversation
    from assistant.understand.readers.pieces import read

    heard = Conversation(mind()).hear(question)
    item = mind().rules["lay plan"].input("pieces")
    assert item is not None
    given, _ = read(item, heard.line, heard.line.values, heard.matches)
    assert given is not None, question
    cuts: tuple[Cut, ...] = given.value
    return [(int(cut.count), cut.label, float(cut.value) / 10, float(cut.length) / 10) for cut in cuts]


@pytest.mark.parametrize(
    ("question", "wanted"),
    [
        ("2 fronts 30 x 70, 1 back 58 x 70 and 2 sleeves 40 x 60 cm", [(2, 30, 70), (1, 58, 70), (2, 40, 60)]),
        ("sixteen backs, each 20 cm wide by 10 cm long as cut", [(16, 20, 10)]),
        ("one panel 90 cm long and 40 cm wide", [(1, 40, 90)]),
        ("front 50 x 60 cm cut 2, strap 8 x 70 cm cut 4", [(2, 50, 60), (4, 8, 70)]),
        ("6 squares of 20 x 20 cm", [(6, 20, 20)]),
        ("four 20 cm squares", [(4, 20, 20)]),
        ("30 x 40 x 3, 20 x 25 cm", [(3, 30, 40), (1, 20, 25)]),
    ],
)
def test_pieces_are_read_as_people_list_them(question: str, wanted: list[tuple[int, float, float]]) -> None:
    assert [(count, width, length) for count, _, width, length in pieces(question)] == wanted


def test_a_piece_that_cannot_fit_is_named() -> None:
    made = ask("2 fronts 30 x 70 cm and 1 cape 160 x 90 cm from 140 cm fabric, not turned")
    assert made.status == "impossible"
    assert "cape" in made.message
    assert "turned" in made.message


def test_each_cloth_of_a_lay_has_its_own_length() -> None:
    made = ask("outer: 2 panels 35 x 40 cm; lining: 2 panels 35 x 60 cm; fabric 112 cm wide, how much of each?")
    assert made.table is not None
    assert made.table.rows == (("outer", 0.4), ("lining", 0.6))


def test_a_lay_says_how_near_the_best_it_is_and_carries_a_drawing() -> None:
    made = ask("lay plan: 4 pieces 30 x 40 cm on 120 cm cloth")
    assert result(made, "nearness").text == "the best possible"
    assert made.drawing is not None
    assert exact(made, "used") == pytest.approx(100)


def test_a_bill_with_a_number_of_no_known_use_is_not_added_up() -> None:
    assert ask("total of 2 m at £5 a metre, 3 zips £4, and 2 m at £1 a metre").status != "answered"


def test_cloth_in_hand_is_set_against_the_exact_need_not_the_rounded_one() -> None:
    given = {"stated_length": "3 m", "stated_width": "115 cm", "width": "140 cm"}
    need = exact(work("width swap", system="cm", **given), "cloth", "m")
    made = work("width swap", system="cm", **given, in_hand="2.47 m")
    assert Fraction("2.47") > need > Fraction("2.4")
    assert made.results[0].text == "enough"
    assert exact(made, "to_spare", "m") == pytest.approx(2.47 - need)


def test_a_circle_too_wide_for_the_cloth_is_joined_and_says_how_often() -> None:
    made = work("circle skirt", system="cm", waist="70 cm", length="100 cm", fraction="half", width="90 cm")
    # R = 22.28 + 100 + 1.5 = 123.78; (R - 1.5) / (90 - 3) = 1.41: two widths, one join, 2 x 2R of cloth
    assert rounded(made, "joins") == 1
    assert exact(made, "cloth", "cm") == pytest.approx(4 * 123.7817, abs=0.01)


def test_each_part_of_a_bought_pattern_is_its_own_line_of_working() -> None:
    made = ask("pattern says 2.3 m of 150 cm without nap, mine has a nap, is 140 cm wide and shrinks 4%, 3 cm longer")
    steps = " ".join(line.step for line in made.working)
    for words in ("same area of cloth", "for the nap", "lengthening", "what the wash leaves"):
        assert words in steps


def test_the_whole_sum_of_a_skirt_of_no_named_kind_is_asked_for() -> None:
    first, second = talk("skirt, 28 inch waist, 26 long, 60 inch cloth, how much", "gathered")
    assert first.status == "unclear"
    assert second.topic == "gathered strip"
    assert second.status == "answered"
