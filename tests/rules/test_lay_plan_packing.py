"""The lay plan's packing: lengths that can be worked out by hand, published dissections, and what must always hold."""

from __future__ import annotations

from fractions import Fraction

import pytest

from rules.layplan.offcuts import offcut
from rules.layplan.pack import lay_plan
from rules.layplan.pieces import BoundKind, Lay, Piece


def piece(label: str, count: int, width: str | int, length: str | int, **allowed: bool) -> Piece:
    return Piece(label, count, Fraction(width), Fraction(length), **allowed)


def test_pieces_over_half_the_width_lie_one_after_the_other() -> None:
    lay = lay_plan([piece("back", 3, 60, 70), piece("yoke", 1, 40, 20)], 100)
    assert (lay.length, lay.bound, lay.bound_kind) == (210, 210, BoundKind.SIDE_BY_SIDE)


def test_three_to_a_row_of_which_only_two_go_in() -> None:
    # 34 + 34 + 34 > 100: two side by side, so five take three rows, although their area takes less than two.
    lay = lay_plan([piece("sleeve", 5, 34, 50)], 100)
    assert (lay.length, lay.proved) == (150, True)


def test_a_lay_as_long_as_its_longest_piece_is_the_best_possible() -> None:
    lay = lay_plan([piece("strap", 2, 4, "45/2"), piece("panel", 1, 16, 18)], 44)
    assert (lay.length, lay.bound_kind) == (Fraction(45, 2), BoundKind.LONGEST)


def test_a_proof_where_no_simple_bound_reaches() -> None:
    # A pocket of 9 cannot follow a panel of 17 1/2 within less than 26 1/2, nor go beside both panels and both straps.
    pieces = [piece("panel", 2, "31/2", "35/2"), piece("strap", 2, 4, "45/2"), piece("pocket", 1, 8, 9)]
    lay = lay_plan([*pieces, piece("facing", 2, "31/2", 4)], 44)
    assert (lay.length, lay.proved, lay.bound_kind) == (Fraction(53, 2), True, BoundKind.SCALES)


def test_a_proof_by_search() -> None:
    # Their area is that of 7 x 6, but of three rectangles that fill a rectangle one reaches along a whole side of it.
    sizes = [(4, 3), (5, 2), (5, 4)]
    lay = lay_plan([piece(str(size), 1, *size, may_turn=True) for size in sizes], 7)
    assert (lay.length, lay.proved, lay.bound_kind) == (7, True, BoundKind.SEARCH)


def test_thirds_and_eighths_stay_exact() -> None:
    lay = lay_plan([piece("a", 3, "44/3", "1/8"), piece("b", 1, 44, "1/3")], 44)
    assert lay.length == Fraction(1, 8) + Fraction(1, 3)
    assert lay.proved


# Moroń 1925, the first dissections of a rectangle into unequal squares; Duijvestijn 1978, the smallest of a square.
# Numbers from memory; that the areas add up is checked below.
DISSECTIONS = [
    (33, 32, (18, 15, 14, 10, 9, 8, 7, 4, 1)),
    (69, 61, (36, 33, 28, 25, 16, 9, 7, 5, 2)),
    (112, 112, (50, 42, 37, 35, 33, 29, 27, 25, 24, 19, 18, 17, 16, 15, 11, 9, 8, 7, 6, 4, 2)),
]


@pytest.mark.parametrize(("width", "length", "squares"), DISSECTIONS)
def test_published_squared_rectangles_are_put_together(width: int, length: int, squares: tuple[int, ...]) -> None:
    assert sum(side * side for side in squares) == width * length
    lay = lay_plan([piece(str(side), 1, side, side) for side in squares], width)
    assert (lay.length, lay.proved) == (length, True)


def test_a_piece_keeps_its_grain_unless_it_may_turn() -> None:
    kept = lay_plan([piece("strip", 2, 10, 90)], 100)
    turned = lay_plan([piece("strip", 2, 10, 90, may_turn=True)], 100)
    assert (kept.length, turned.length) == (90, 20)
    assert not any(placement.turned for placement in kept.placements)
    assert all(placement.turned for placement in turned.placements)


def test_pieces_that_cannot_fit_are_named_and_the_rest_is_laid() -> None:
    pieces = [piece("cape", 1, 160, 90), piece("front", 1, 40, 60), piece("sail", 1, 200, 300, may_turn=True)]
    lay = lay_plan(pieces, 150)
    assert [(m.piece.label, m.fits_if_turned, m.room) for m in lay.misfits] == [
        ("cape", True, 150),
        ("sail", False, 150),
    ]
    assert [placement.piece.label for placement in lay.placements] == ["front"]
    assert lay.length == 60


def test_a_cloth_on_which_nothing_fits_gives_an_empty_lay() -> None:
    lay = lay_plan([piece("cape", 1, 160, 90)], 150)
    assert (lay.length, lay.placements, lay.gap) == (0, (), 0)
    assert [misfit.piece.label for misfit in lay.misfits] == ["cape"]


def test_on_a_folded_cloth_one_outline_cuts_two() -> None:
    lay = lay_plan([piece("front", 2, 30, 70), piece("sleeve", 2, 40, 60)], 150, folded=True)
    assert [placement.copies for placement in lay.placements] == [2, 2]
    assert (lay.length, lay.lay_width) == (70, 75)


def test_an_odd_count_through_both_layers_leaves_one_spare() -> None:
    lay = lay_plan([piece("pocket", 3, 20, 20), piece("front", 2, 30, 70)], 150, folded=True)
    assert lay.spare == {"pocket": 1}


def test_pieces_on_the_fold_lie_half_wide_against_it() -> None:
    pieces = [piece("back", 1, 58, 70, on_fold=True), piece("front", 1, 60, 72, on_fold=True), piece("cuff", 2, 12, 25)]
    lay = lay_plan(pieces, 110, folded=True)
    on_fold = [placement for placement in lay.placements if placement.on_fold]
    assert sorted((p.x, p.width) for p in on_fold) == [(0, 29), (0, 30)]
    assert (lay.length, lay.bound_kind) == (142, BoundKind.FOLD)


def test_a_piece_on_the_fold_is_never_turned() -> None:
    lay = lay_plan([piece("back", 1, 20, 90, on_fold=True, may_turn=True)], 200, folded=True)
    assert (lay.length, lay.placements[0].turned) == (90, False)


def test_a_fold_piece_too_wide_for_half_the_cloth_says_how_wide_it_may_be() -> None:
    lay = lay_plan([piece("back", 1, 120, 70, on_fold=True)], 110, folded=True)
    assert lay.misfits[0].room == 110


def test_on_an_open_cloth_a_fold_piece_is_laid_whole() -> None:
    lay = lay_plan([piece("back", 1, 58, 70, on_fold=True)], 110)
    assert (lay.placements[0].width, lay.placements[0].on_fold) == (58, False)


def test_the_offcut_is_the_largest_rectangle_at_the_end_of_the_cloth() -> None:
    lay = lay_plan([piece("panel", 1, 50, 40), piece("pocket", 1, 10, 15)], 50)
    beside = offcut(lay)
    assert beside is not None
    assert (beside.width, beside.length, beside.area) == (40, 15, 600)
    longer = offcut(lay, Fraction(100))
    assert longer is not None
    assert (longer.width, longer.length, longer.area) == (40, 60, 2400)


def test_a_lay_without_waste_has_no_offcut() -> None:
    lay = lay_plan([piece("square", 4, 25, 25)], 100)
    assert offcut(lay) is None
    assert lay.left_over_area == 0


def test_an_offcut_at_the_fold_opens_to_twice_its_width_and_one_away_from_it_comes_twice() -> None:
    away = offcut(lay_plan([piece("front", 1, 60, 70, on_fold=True)], 150, folded=True))
    assert away is not None
    assert (away.width, away.opened_width, away.copies) == (45, 45, 2)
    at_fold = offcut(lay_plan([piece("front", 1, 60, 70, on_fold=True)], 150, folded=True), Fraction(400))
    assert at_fold is not None
    assert (at_fold.opened_width, at_fold.length, at_fold.copies) == (150, 330, 1)


MANY = [piece(str(n), 1, 7 + 11 * n % 37, 5 + 17 * n % 43) for n in range(40)]


def test_the_same_question_has_the_same_lay() -> None:
    assert lay_plan(MANY, 120, effort=200_000) == lay_plan(MANY, 120, effort=200_000)


def test_the_order_of_the_pieces_does_not_matter() -> None:
    forward = lay_plan(MANY, 120, effort=200_000)
    assert forward.length == lay_plan(MANY[::-1], 120, effort=200_000).length


def test_more_effort_is_never_worse() -> None:
    lengths = [lay_plan(MANY, 120, effort=effort).length for effort in (0, 100_000, 1_000_000)]
    assert lengths == sorted(lengths, reverse=True)


def test_the_search_stops_when_told() -> None:
    asked = []

    def stop() -> bool:
        asked.append(True)
        return len(asked) > 3

    lay = lay_plan(MANY, 120, stop=stop)
    assert len(asked) == 4
    check(lay)


def test_a_piece_of_no_size_is_refused() -> None:
    with pytest.raises(ValueError, match="pocket"):
        piece("pocket", 1, 0, 5)


def check(lay: Lay) -> None:
    """No two pieces overlap, none leaves the cloth."""
    for number, one in enumerate(lay.placements):
        assert one.x >= 0 <= one.y
        assert one.right <= lay.lay_width
        assert one.end <= lay.length
        for other in lay.placements[:number]:
            assert one.x >= other.right or other.x >= one.right or one.y >= other.end or other.y >= one.end
