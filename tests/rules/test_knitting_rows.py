"""Rows of instructions are knitted stitch by stitch, and shaping is counted row by row, for numbers of every kind."""

from __future__ import annotations

import re
from itertools import pairwise

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from rules.knitting.head_and_foot import crown_rounds
from rules.knitting.row_reader import RowError, actions, knit, spaced
from rules.knitting.shaping import plan, rows_worked
from rules.knitting.spacing import _most, row_text
from tests.support import exact, result, work

SPREAD = st.tuples(st.integers(3, 300), st.integers(1, 150), st.sampled_from(("m1", "kfb", "k2tog")), st.booleans())
GIVES = {"m1": 1, "kfb": 1, "k2tog": -1}


@settings(deadline=None)
@given(SPREAD)
def test_a_row_uses_every_stitch_and_leaves_the_right_number(spread: tuple[int, int, str, bool]) -> None:
    stitches, count, action, in_round = spread
    count = min(count, _most(stitches, action, in_round))
    knitted = knit(row_text(stitches, count, action, in_round), stitches)
    assert (knitted.used, knitted.left, knitted.shapings) == (stitches, stitches + GIVES[action] * count, count)


@settings(deadline=None)
@given(SPREAD)
def test_the_intervals_differ_by_one_at_most(spread: tuple[int, int, str, bool]) -> None:
    stitches, count, action, in_round = spread
    count = min(count, _most(stitches, action, in_round))
    parts = actions(row_text(stitches, count, action, in_round))
    plain = [number for number, word in parts if word]
    tail = parts[-1][0] if not parts[-1][1] else 0
    whole = plain if in_round else [*plain[1:], plain[0] + tail]
    assert max(whole) - min(whole) <= 1
    if not in_round:
        assert 0 <= tail - plain[0] <= 1, "half an interval at both ends, the larger half last"


@given(st.integers(2, 300), st.integers(1, 200))
def test_a_made_stitch_lies_between_two_stitches_when_flat(stitches: int, count: int) -> None:
    count = min(count, _most(stitches, "m1", False))
    parts = actions(row_text(stitches, count, "m1", False))
    assert all(plain > 0 for plain, _ in parts)
    assert not parts[-1][1]


@given(st.integers(0, 500), st.integers(1, 90))
def test_what_is_shared_out_is_all_shared_out(total: int, parts: int) -> None:
    shares = spaced(total, parts)
    assert sum(shares) == total
    assert max(shares) - min(shares) <= 1


@given(st.integers(4, 400), st.integers(1, 200), st.booleans())
def test_shaping_keeps_to_the_rows_and_never_falls_on_the_first(rows: int, times: int, pairs: bool) -> None:
    times = min(times, rows // 2 if pairs else rows - 1)
    parts = plan(rows, times, pairs)
    if parts[0][0] == 1:
        parts.reverse()
    worked = rows_worked(parts)
    assert len(worked) == times
    assert worked[0] > 1
    assert rows - 1 - (rows % 2 and pairs) <= worked[-1] <= rows
    gaps = [after - before for before, after in pairwise([0, *worked])]
    assert max(gaps) - min(gaps) <= (2 if pairs else 1)
    assert not pairs or all(gap % 2 == 0 for gap in gaps)


@pytest.mark.parametrize(
    ("row", "complaint"),
    [
        ("k5, p3", "cannot knit"),
        ("(k5, m1", "left open"),
        ("k5) 3 times", "never opened"),
        ("k40", "stitch more than the 30"),
        ("k20", "10 stitches would be left over"),
    ],
)  # fmt: skip
def test_a_row_that_cannot_be_knitted_is_refused(row: str, complaint: str) -> None:
    with pytest.raises(RowError, match=complaint):
        knit(row, 30)


def test_a_crown_ends_with_a_stitch_for_each_section() -> None:
    rounds = crown_rounds(112, 8)
    left = 112
    for text, after in rounds:
        assert knit(text, left).left == after
        left = after
    assert left == 8


def test_too_many_increases_are_refused_with_the_nearest_possible() -> None:
    made = work("evenly spaced increases", stitches="10 st", add="20 st")
    assert made.status == "impossible"
    assert "nearest possible is 9 times" in made.message


def test_an_odd_change_at_both_ends_is_refused_with_the_nearest_possible() -> None:
    made = work("shape along rows", change="15 st", rows="60 rows", ends="both")
    assert made.status == "impossible"
    assert "14 and 16" in made.message


def test_too_few_rows_are_refused_with_the_nearest_possible() -> None:
    made = work("shape along rows", change="40 st", rows="30 rows", ends="both")
    assert made.status == "impossible"
    assert "30 stitches in 30 rows" in made.message
    assert exact(work("shape along rows", change="30 st", rows="30 rows", ends="both"), "times") == 15


def test_the_plan_in_words_adds_up_to_the_rows() -> None:
    text = result(work("shape along rows", change="23 st", rows="97 rows", ends="one", sides="any"), "plan").text
    assert sum(int(interval) * int(times) for interval, times in re.findall(r"every (\d+)\w+ row (\d+)", text)) == 97
