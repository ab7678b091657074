"""Notions: marks that do not drift, elastic both ways, seams with counts, thread shared out, bias within its limits."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.drawing import as_text
from rules.engine.drawing import LineDrawing
from tests.support import ask, exact, mind, result, rounded, talk, work

mind()  # woken before the properties are timed


def line_of(made: object) -> LineDrawing:
    drawing = made.drawing  # type: ignore[attr-defined]
    assert isinstance(drawing, LineDrawing)
    return drawing


# -- evenly spaced marks -----------------------------------------------------------------------------------------------


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(
    length=st.integers(min_value=30, max_value=2000),
    number=st.integers(min_value=2, max_value=40),
    first=st.integers(min_value=0, max_value=10),
    last=st.integers(min_value=0, max_value=10),
)
def test_marks_keep_their_exact_spacing_and_the_last_falls_exactly(
    length: int, number: int, first: int, last: int
) -> None:
    made = work(
        "evenly spaced marks",
        system="cm",
        length=f"{length} mm",
        number=str(number),
        first=f"{first} mm",
        last=f"{last} mm",
    )
    places = [at for at, _ in line_of(made).marks]
    assert places[0] == first
    assert places[-1] == length - last
    assert {after - before for before, after in pairwise(places)} == {Fraction(length - first - last, number - 1)}


def test_a_list_of_marks_is_rounded_from_the_exact_places() -> None:
    """13 spaces of 1 7/13 in: thirteen times the rounded 1 1/2 would end at 20 in, half an inch short."""
    made = work("evenly spaced marks", length="21 in", number="14", inset="1/2 in")
    assert result(made, "places").text.endswith("19, 20 1/2 in")


def test_one_button_falls_on_the_bust_line() -> None:
    made = work("evenly spaced marks", length="22 in", number="6", inset="1/2 in", place="9 in")
    places = [at / Fraction("25.4") for at, _ in line_of(made).marks]
    assert Fraction(9) in places
    steps = {after - before for before, after in pairwise(places)}
    assert len(steps) == 1
    assert places[0] == Fraction(1, 2)
    assert places[-1] <= 22


def test_marks_round_a_closed_line_have_as_many_spaces_as_marks() -> None:
    made = work("evenly spaced marks", system="cm", length="72 cm", number="8", closed="yes")
    assert exact(made, "spacing") == 9
    assert len(line_of(made).marks) == 8


def test_marks_are_drawn_on_their_line() -> None:
    made = ask("7 buttons on a 40 cm band, 2 cm at each end")
    text = as_text(made.drawing, 60, unicode=False)  # type: ignore[arg-type]
    assert text.isascii()
    assert all(at in text for at in ("2 cm", "20 cm", "38 cm"))


@pytest.mark.parametrize("inset", ["4 in", "40 in"])
def test_ends_longer_than_the_line_are_refused(inset: str) -> None:
    made = work("evenly spaced marks", length="6 in", number="4", inset=inset)
    assert made.status == "impossible"
    assert "such as" in made.message


# -- elastic, cords ----------------------------------------------------------------------------------------------------


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(waist=st.integers(min_value=40, max_value=150), share=st.integers(min_value=60, max_value=110))
def test_a_waist_comes_back_from_its_elastic(waist: int, share: int) -> None:
    cut = exact(work("elastic", system="cm", body=f"{waist} cm", share=f"{share} %"), "cut")
    made = work("elastic", system="cm", stated={"cut": f"{cut} cm"}, share=f"{share} %", asked="body")
    assert exact(made) == pytest.approx(waist, abs=0.6 * 100 / share)


def test_elastic_narrower_than_an_inch_is_cut_a_little_shorter() -> None:
    wide, narrow = work("elastic", body="30 in", width="1 in"), work("elastic", body="30 in", width="3/4 in")
    assert exact(wide, "in_wear") == pytest.approx(27.6)
    assert exact(narrow, "in_wear") == pytest.approx(27)


def test_a_stated_reduction_needs_neither_share_nor_width() -> None:
    made = work("elastic", body="31 1/2 in", less="2 in", overlap="1 in")
    assert result(made).text == "30 1/2 in"
    assert not any(value.name == "elastic width" for value in made.assumed)


def test_a_drawstring_is_talked_through() -> None:
    turns = talk(
        "drawstring for a 32 in waist, 8 in tails, 2 in for each knot",
        "what about the hood of a toddler's coat instead, 18 in round",
        "in cm please",
    )
    assert [made.results[0].text for made in turns] == ["52 in", "38 in", "97 cm"]
    assert any("No drawstrings at the hood" in caution for caution in turns[1].cautions)


# -- thread ------------------------------------------------------------------------------------------------------------


def test_seams_are_counted_with_their_lengths() -> None:
    made = ask("thread for four seams of 24 in and two of 36 in, lockstitch at 2.5 to one, with 15 percent waste")
    assert [value.text for value in made.given if value.name == "seam length"] == ["4 × 24 in, 2 × 36 in"]
    assert exact(made, "length", "in") == pytest.approx((4 * 24 + 2 * 36) * 2.5 * 1.15)


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(counts=st.lists(st.tuples(st.integers(1, 9), st.integers(10, 99)), min_size=1, max_size=4))
def test_any_list_of_counted_seams_is_summed(counts: list[tuple[int, int]]) -> None:
    listed = " and ".join(f"{count} seams of {length} cm" for count, length in counts)
    made = ask(f"thread for {listed}, lockstitch, no waste")
    total = sum(count * length for count, length in counts)
    assert exact(made, "length", "cm") == pytest.approx(2.5 * total)


def test_a_count_of_the_very_seams_that_are_listed_is_no_multiple() -> None:
    made = ask("thread for 2 seams of 30 cm and 40 cm, lockstitch, no waste")
    assert exact(made, "length", "cm") == pytest.approx(2.5 * 70)


def test_needle_and_bobbin_share_a_lockstitch_and_nothing_else() -> None:
    lock = work("thread", system="cm", seams=["10 m"])
    over = work("thread", system="cm", seams=["10 m"], stitch="504 three-thread overlock")
    assert exact(lock, "needle") + exact(lock, "bobbin") == exact(lock, "length")
    assert not any(one.key in ("needle", "bobbin") for one in over.results)


def test_thread_is_talked_through_to_its_reels() -> None:
    turns = talk(
        "thread for 40 m of lockstitch seams, 2.5 to 1, 15% waste",
        "how many 100 m reels is that?",
        "and with 250 m reels",
    )
    assert [made.results[0].text for made in turns] == ["115 m", "2 reels", "1 reel"]


# -- bias, plackets, sizes ---------------------------------------------------------------------------------------------


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(side=st.integers(min_value=10, max_value=60), strip=st.integers(min_value=1, max_value=4))
def test_a_square_gives_back_the_length_it_was_asked_for(side: int, strip: int) -> None:
    length = exact(work("bias yield", width=f"{side} in", strip=f"{strip} in"), "bias")
    made = work("bias binding", strip=f"{strip} in", length=f"{length} in")
    assert exact(made, "square") == pytest.approx(side)
    assert rounded(made, "square") >= side


def test_no_allowance_is_added_to_a_length_of_binding_only_to_an_edge() -> None:
    assert exact(work("bias binding", length="90 in"), "need") == 90
    assert exact(work("bias binding", edge="90 in"), "need") == 100


def test_the_limits_of_bias_are_told() -> None:
    made = work("bias binding", edge="90 in")
    assert any("straight strips will do" in caution for caution in made.cautions)
    assert any("nothing is taken off for joins" in note for note in made.notes)


def test_whole_interfacing_takes_twice_the_half() -> None:
    made = work("placket", finished="3 cm", length="16 cm", seam="1 cm", system="cm")
    assert exact(made, "whole") == 2 * exact(made, "half")
    assert exact(made, "whole_area") == 2 * exact(made, "half_area")
    assert any("two layers" in note for note in made.notes)


def test_a_zip_longer_than_the_list_is_said_to_be() -> None:
    made = work("zip", opening="50 in")
    assert "longer than the list" in result(made, "sold_as").text
    assert not any(one.key == "zip_length" for one in made.results)


def test_a_zip_in_hand_that_is_too_short_is_warned_of() -> None:
    made = work("zip", opening="20 in", have="18 in")
    assert any("shorter than the opening" in caution for caution in made.cautions)


def test_a_needle_size_that_no_packet_has_is_refused_with_those_there_are() -> None:
    made = work("machine needle", size="13")
    assert made.status == "impossible"
    assert "12, 14" in made.message


def test_stitch_length_goes_both_ways() -> None:
    rate = exact(work("stitch length", mm="2.54 mm"), "spi")
    assert rate == pytest.approx(10)
    assert exact(work("stitch length", rate="10 spi"), "length") == pytest.approx(2.54)
