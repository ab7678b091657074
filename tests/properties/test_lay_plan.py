"""Lay plans for all pieces: nothing overlaps, no bound is passed, a rectangle cut up packs to its own length."""

from __future__ import annotations

from fractions import Fraction
from random import Random

from hypothesis import given, settings
from hypothesis import strategies as st

from rules.layplan.pack import lay_plan
from rules.layplan.pieces import Lay, Piece

Size = tuple[int, int]
SEEDS = st.integers(0, 2**32 - 1)


def cut_up(random: Random, width: int, length: int, most: int) -> list[Size]:
    """Cut a rectangle into at most so many, straight across, straight along or as a pinwheel of five."""
    sizes = [(width, length)]
    for _ in range(4 * most):
        if len(sizes) >= most:
            break
        size = sizes.pop(random.randrange(len(sizes)))
        sizes += cut_once(random, *size, pinwheel=len(sizes) + 5 <= most)
    random.shuffle(sizes)
    return sizes


def cut_once(random: Random, width: int, length: int, pinwheel: bool) -> list[Size]:
    if pinwheel and min(width, length) >= 3 and random.random() < 0.5:
        left, right = sorted(random.sample(range(1, width), 2))
        low, high = sorted(random.sample(range(1, length), 2))
        around = [(right, low), (width - right, high), (width - left, length - high), (left, length - low)]
        return [*around, (right - left, high - low)]
    if width > 1 and (length == 1 or random.random() < 0.5):
        at = random.randrange(1, width)
        return [(at, length), (width - at, length)]
    if length > 1:
        at = random.randrange(1, length)
        return [(width, at), (width, length - at)]
    return [(width, length)]


def pieces_of(sizes: list[Size], random: Random, may_turn: bool) -> list[Piece]:
    """Pieces of these sizes, in eighths of a unit; those that may turn may already lie turned."""
    turned = [may_turn and random.random() < 0.5 for _ in sizes]
    return [
        Piece(str(n), 1, Fraction(h if t else w, 8), Fraction(w if t else h, 8), may_turn=may_turn)
        for n, ((w, h), t) in enumerate(zip(sizes, turned, strict=True))
    ]


def check(lay: Lay, count: int) -> None:
    """Every piece is there, none overlaps another or leaves the cloth, and the bounds are below the length."""
    assert len(lay.placements) == count
    assert lay.length == max(placement.end for placement in lay.placements)
    assert lay.cut_area / lay.cloth_width <= lay.bound <= lay.length
    for number, one in enumerate(lay.placements):
        assert one.x >= 0 <= one.y
        assert one.right <= lay.lay_width
        assert not one.on_fold or one.x == 0
        for other in lay.placements[:number]:
            assert one.x >= other.right or other.x >= one.right or one.y >= other.end or other.y >= one.end


@settings(max_examples=60, deadline=None)
@given(seed=SEEDS, width=st.integers(6, 200), length=st.integers(6, 200), may_turn=st.booleans())
def test_a_small_cut_up_rectangle_packs_to_its_own_length(seed: int, width: int, length: int, may_turn: bool) -> None:
    random = Random(seed)
    sizes = cut_up(random, width, length, most=9)
    lay = lay_plan(pieces_of(sizes, random, may_turn), Fraction(width, 8))
    check(lay, len(sizes))
    assert (lay.length, lay.proved) == (Fraction(length, 8), True)


@settings(max_examples=12, deadline=None)
@given(seed=SEEDS, width=st.integers(30, 300), length=st.integers(30, 300), may_turn=st.booleans())
def test_a_large_one_packs_without_overlap_and_near_its_length(
    seed: int, width: int, length: int, may_turn: bool
) -> None:
    random = Random(seed)
    sizes = cut_up(random, width, length, most=60)
    lay = lay_plan(pieces_of(sizes, random, may_turn), Fraction(width, 8))
    check(lay, len(sizes))
    assert lay.bound <= Fraction(length, 8) <= lay.length <= Fraction(length, 8) * Fraction(3, 2)


def fits_anywhere(width: int, length: int, sizes: list[Size], turn: bool, folds: list[bool]) -> bool:
    """Whether the pieces go in, by trying every place of every piece: slow, and nothing like the search under test."""

    def lay_rest(number: int, rows: list[int]) -> bool:
        if number == len(sizes):
            return True
        fold = folds[number]
        across, along = sizes[number]
        for w, h in {(across, along), (along, across)} if turn and not fold else {(across, along)}:
            for y in range(length - h + 1):
                for x in range(min(1, width - w + 1) if fold else width - w + 1):
                    mask = ((1 << w) - 1) << x
                    if not any(row & mask for row in rows[y : y + h]):
                        used = [row | mask if y <= n < y + h else row for n, row in enumerate(rows)]
                        if lay_rest(number + 1, used):
                            return True
        return False

    return lay_rest(0, [0] * length)


@st.composite
def small_lays(draw: st.DrawFn) -> tuple[int, list[Size], list[bool]]:
    width = draw(st.integers(4, 9))
    sizes = draw(st.lists(st.tuples(st.integers(1, width), st.integers(1, 6)), min_size=2, max_size=6))
    return width, sizes, draw(st.lists(st.booleans(), min_size=len(sizes), max_size=len(sizes)))


@settings(max_examples=60, deadline=None)
@given(given_lay=small_lays(), turn=st.booleans(), folded=st.booleans())
def test_no_small_lay_is_shorter_than_the_one_proved(
    given_lay: tuple[int, list[Size], list[bool]], turn: bool, folded: bool
) -> None:
    width, sizes, on_fold = given_lay
    sizes.sort(key=lambda size: -size[0] * size[1])
    folds = [folded and fold for fold in on_fold]
    pieces = [
        Piece(str(n), 2 if folded and not fold else 1, Fraction(2 * w if fold else w), Fraction(h), turn, fold)
        for n, ((w, h), fold) in enumerate(zip(sizes, folds, strict=True))
    ]
    lay = lay_plan(pieces, 2 * width if folded else width, folded=folded)
    check(lay, len(sizes))
    assert lay.proved
    assert not fits_anywhere(width, int(lay.length) - 1, sizes, turn, folds)
