"""Bags: geometry checked by sewing it up on paper, cloth by lay plans, drawings, and conversations."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from assistant.drawing import as_text
from rules.engine.drawing import Drawings, LayDrawing, PanelDrawing
from tests.support import ask, exact, mind, result, rounded, talk, work

MM = st.integers(min_value=2, max_value=40)
mind()  # woken before the properties are timed


def tote(**more: str) -> dict[str, str]:
    return {"width": "14 in", "height": "15 in", "depth": "4 in", "seam": "1/2 in", "top": "1 in", **more}


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(width=MM, height=MM, depth=st.integers(min_value=2, max_value=12), seam=st.integers(min_value=0, max_value=3))
def test_two_panels_and_one_wrapped_piece_make_the_same_bag(width: int, height: int, depth: int, seam: int) -> None:
    """Two panels joined at the base are as long as the wrapped piece and the two seams of the base."""
    sizes = {"width": width, "height": height, "depth": depth, "seam": seam, "top": 2}
    typed = {name: f"{size} cm" for name, size in sizes.items()}
    two = work("tote", system="cm", **typed)
    one = work("tote", system="cm", panels_as="one piece", **typed)
    assert 2 * exact(two, "panel_height") == pytest.approx(exact(one, "panel_length") + 2 * seam)
    assert exact(two, "panel_width") == exact(one, "panel_width")


def test_box_corners_of_a_seamed_and_a_folded_base_differ_by_one_seam() -> None:
    seamed, folded = work("tote", **tote()), work("tote", **tote(panels_as="one piece"))
    assert exact(seamed, "corner") == exact(folded, "corner") == 2
    assert exact(folded, "corner") - exact(folded, "corner_fold") == 0.5


def test_a_one_way_print_is_not_wrapped_but_cut_in_two_with_a_base_seam() -> None:
    made = work("tote", **tote(panels_as="one piece", one_way="yes"))
    assert rounded(made, "panels") == 2
    assert exact(made, "panel_height") == 18.5
    assert any("upside down" in value.why for value in made.assumed)
    assert not any(one.key == "panel_length" for one in made.results)


def test_a_lined_tote_has_a_seam_for_its_top_and_a_lining_a_quarter_inch_narrower() -> None:
    made = work("tote", width="14 in", height="15 in", depth="4 in", seam="1/2 in", lined="yes")
    assert exact(made, "panel_height") == 15 + 2 + 0.5 + 0.5
    assert exact(made, "panel_width") - exact(made, "lining_width") == 0.25


def test_a_tote_with_no_depth_has_no_corners_to_cut() -> None:
    made = work("tote", width="14 in", height="15 in")
    assert not any(one.key.startswith("corner") for one in made.results)


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(width=MM, depth=st.integers(min_value=1, max_value=20), seam=st.integers(min_value=0, max_value=3))
def test_a_finished_width_comes_back_from_its_panel(width: int, depth: int, seam: int) -> None:
    panel = width + depth + 2 * seam
    made = work("box corner", system="cm", panel_width=f"{panel} cm", depth=f"{depth} cm", seam=f"{seam} cm")
    assert exact(made, "width") == width


@pytest.mark.parametrize(
    ("question", "length"),
    [
        ("how much 44 in cloth for a tote 14 x 15 x 6 in, 1/2 in seams, 1 in top hem", "19 1/2 in"),
        ("how much 36 in cloth for a tote 14 x 15 x 6 in, 1/2 in seams, 1 in top hem", "39 in"),
        ("how much 54 in canvas for a tote 15 x 16 x 5 in with straps cut 24 in long, 1/2 in seams, 1 in hem", "24 in"),
    ],
)
def test_three_bags_are_laid_out_on_their_cloth_and_drawn(question: str, length: str) -> None:
    made = ask(question)
    assert isinstance(made.drawing, Drawings)
    panel, laid = made.drawing.parts
    assert isinstance(panel, PanelDrawing)
    assert isinstance(laid, LayDrawing)
    lay = laid.lay
    assert not lay.misfits
    assert all(one.x >= 0 and one.right <= lay.cloth_width and one.end <= lay.length for one in lay.placements)
    assert any(line.result.startswith(length) for line in made.working)
    text = as_text(made.drawing, 80, unicode=False)
    assert text.isascii()
    assert max(map(len, text.splitlines())) <= 80
    assert "panel" in text
    assert length.split()[0] in text


def test_a_panel_is_drawn_with_its_corners_cut_out() -> None:
    made = ask("two panel tote 14 in wide, 15 in high, 4 in deep, 1/2 in seams, 1 in top hem. panel size?")
    text = as_text(made.drawing, 80, unicode=True)  # type: ignore[arg-type]
    assert all(size in text for size in ("19 in", "18 1/2 in", "2 in"))


def test_a_panel_too_wide_for_the_cloth_is_refused_with_what_to_do() -> None:
    made = ask("how much 12 in cloth for a tote 14 x 15 x 4 in")
    assert made.status == "impossible"
    assert "does not fit" in made.message
    assert "such as: 60 in cloth" in made.message


def test_interfacing_for_a_tote_is_laid_out_when_it_is_asked_for() -> None:
    """Two panels of 19 x 18 1/2 on interfacing 20 in wide lie one after the other: 37 in at the least."""
    made, plain = (
        ask(f"tote 14 x 15 x 4 in, 1/2 in seams, 1 in hem: {what}")
        for what in ("how much 20 in wide interfacing", "how much 44 in cloth")
    )
    assert made.results[0].text == "1 1/8 yd"
    assert any(line.result == "37 in" for line in made.working)
    assert plain.results[0].text == "5/8 yd"
    assert not any(one.key == "interfacing" for one in plain.results)


def test_a_tote_is_talked_through() -> None:
    turns = talk(
        "two panel tote 14 in wide, 15 in high, 4 in deep, 1/2 in seams, 1 in top hem. panel size?",
        "make it 6 in deep",
        "how much 44 in cloth for that?",
        "and with 36 in cloth?",
    )
    assert [made.results[0].text for made in turns] == ["19 in", "21 in", "5/8 yd", "1 1/8 yd"]


def test_division_lines_come_from_the_exact_width() -> None:
    made = work("divided pocket", width="10 in", number="7")
    assert made.results[1].text.split(", ")[-1] == "8 5/8 in"  # 60/7 = 8.571, not six times the rounded 1 3/8 = 8 1/4
    assert exact(made, "each") == pytest.approx(10 / 7)


@settings(deadline=None)  # what is loaded at its first use takes longer than a deadline
@given(girth=st.integers(min_value=10, max_value=300))
def test_a_round_base_from_its_girth_and_from_its_diameter_agree(girth: int) -> None:
    first = work("round base", system="cm", girth=f"{girth} cm", seam="1 cm")
    diameter = exact(first, "circle") - 2
    second = work("round base", system="cm", diameter=f"{diameter:.6f} cm", seam="1 cm")
    assert exact(second, "panel") == pytest.approx(exact(first, "panel"), abs=1e-3)


def test_a_pocket_wider_than_its_panel_is_refused() -> None:
    made = work("pocket, centred", width="12 in", panel_width="10 in", asked="side")  # a margin below nothing is none
    assert made.status == "impossible"
    assert "wider than the panel" in made.message


def test_heavy_straps_are_told_to_be_reinforced() -> None:
    made = work("strap", drop="10 in", apart="5 in")
    assert any("boxed cross" in caution for caution in made.cautions)
    assert result(made).text == "27 in"


def test_a_capacity_gives_the_side_that_is_missing() -> None:
    made = work("capacity", system="cm", width="30 cm", height="40 cm", stated={"volume": "20 litre"}, asked="depth")
    assert float(Fraction(made.results[0].exact)) == pytest.approx(20000 / 1200, abs=0.06)
