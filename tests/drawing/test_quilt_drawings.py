"""Quilts drawn in characters: every block and seam is there, to scale, within the page, plain when plain."""

from __future__ import annotations

from fractions import Fraction

import pytest

from assistant.drawing import as_text
from rules.engine.drawing import BackingDrawing, Drawing, OnPointDrawing, QuiltDrawing
from tests.support import ask

INCH = Fraction(254, 10)


def top(
    across: int = 5, down: int = 6, sash: int = 2, all_round: bool = False, borders: tuple[int, ...] = (4,)
) -> QuiltDrawing:
    widths = tuple(width * INCH for width in borders)
    return QuiltDrawing(across, down, (10 * INCH, 10 * INCH), "in", sash * INCH, all_round, widths)


def backing(upright: bool = True) -> BackingDrawing:
    return BackingDrawing(72 * INCH, 90 * INCH, 39 * INCH, 2 if upright else 3, upright, "in")


DRAWINGS: tuple[Drawing, ...] = (
    top(), top(sash=0, borders=()), top(all_round=True, borders=(1, 6)), backing(), backing(upright=False),
    OnPointDrawing(4, 5, 68 * INCH, 85 * INCH, "in"),
)  # fmt: skip


@pytest.mark.parametrize("drawing", DRAWINGS, ids=lambda drawing: type(drawing).__name__)
@pytest.mark.parametrize("columns", [40, 60, 80])
def test_a_drawing_keeps_to_the_page_and_is_plain_when_plain(drawing: Drawing, columns: int) -> None:
    for unicode in (True, False):
        text = as_text(drawing, columns, unicode)
        assert max(map(len, text.splitlines())) <= columns
        assert unicode or text.isascii()


def test_each_block_has_its_corner() -> None:
    text = as_text(top(all_round=True), 80, True)
    assert text.count("┐") == 2 + 5 * 6  # and one at the outer edge of the border, one at its inner edge
    assert "70 in" in text
    assert "82 in" in text


def test_blocks_without_sashing_share_their_lines() -> None:
    text = as_text(top(across=3, down=4, sash=0, borders=()), 60, False)
    assert text.splitlines()[1].count("+") == 4
    assert sum(line.startswith("+") for line in text.splitlines()) == 5


def test_a_quilt_is_drawn_to_scale() -> None:
    lines = as_text(top(across=4, down=4, sash=0, borders=()), 80, True).splitlines()
    width, height = len(lines[1]) - 1, len(lines) - 2
    assert width == pytest.approx(2 * height, abs=2)  # a character is twice as high as wide


def test_too_many_blocks_are_said_not_squeezed() -> None:
    assert as_text(top(across=60, down=2), 40, True) == "60 blocks side by side are too many to draw in 40 columns"
    assert "too many" in as_text(OnPointDrawing(30, 30, INCH, INCH, "in"), 40, True)


def test_blocks_on_point_meet_at_their_corners() -> None:
    text = as_text(OnPointDrawing(3, 2, 30 * INCH, 20 * INCH, "in"), 80, False)
    assert sum(line.count("/\\") for line in text.splitlines()) >= 3 * 2


def test_a_backing_shows_a_seam_for_each_join() -> None:
    assert as_text(backing(), 80, True).splitlines()[1].count("┬") == 1
    assert sum("├" in line for line in as_text(backing(upright=False), 80, True).splitlines()) == 2


@pytest.mark.parametrize(
    ("question", "kind"),
    [
        ("quilt of 4 x 5 blocks 12 in, 2 in sashing, 4 in border, how big", QuiltDrawing),
        ("backing for a 64 x 82 in quilt", BackingDrawing),
        ("how big is a quilt centre with 4 blocks across and 5 down set on point, each block 12 in", OnPointDrawing),
    ],
)
def test_an_answer_brings_its_drawing(question: str, kind: type) -> None:
    assert isinstance(ask(question).drawing, kind)
