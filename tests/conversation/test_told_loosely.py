"""Measures and steps that people tell loosely: each line is laid out as numbers that mean what was said."""

from __future__ import annotations

import pytest

from assistant.understand.values import lay_out
from grammar.query import Measure
from tests.support import mind

# The line | its values as value, unit and what they are per (a span's step behind "by").
LINES = """
one metre costs 8,40 € | 42/5 EUR/m
£24-a-metre wool | 24 GBP/m
$11.50 by the yard | 23/2 USD/yd
€11 for one metre | 11 EUR/m
30 rows per 10 | 30 row/10cm
26 sts to 10, 34 rows to 10 | 26 st/10cm, 34 row/10cm
decrease 40 sts to 10 | 40 st
I'm 94 round the hips | 94
knit 94 rounds | 94 row
8 per round | 8
losing 8 in each round | 8
15 in each leg | 15 in
length 70 in a 115 cm cotton | 70, 115 cm
150 in hand | 150
a yard and a half in cm | 3/2 yd
inch-and-a-half sashing | 3/2 in
3 eighths | 3/8
5 sixteenths of an inch | 5/16 in
out by a 32nd on each seam | 1/32 in
w40 x h30 x d20 | 40, 30, 20
102 (cm) | 102 cm
a three-tiered skirt | 3
96 sts, minus 8 each round | 96 st, 8
bags 6 to 14 cm deep, every 2 cm | 6 cm
"""


@pytest.mark.parametrize("case", LINES.strip().splitlines())
def test_a_measure_told_loosely_is_read_as_it_is_meant(case: str) -> None:
    text, _, expected = case.partition(" | ")
    values = lay_out(mind().reader.read(text)).values
    assert ", ".join(_shown(value.main) for value in values) == expected


@pytest.mark.parametrize(
    ("text", "step"),
    [
        ("bags 6 to 14 cm deep, every 2 cm", "2 cm"),
        ("finishing 1 in to 4 in going up by halves", "1/2 in"),
        ("waists 24 to 30, two inches at a time", "2 in"),
        ("1 in to 4 in in half inch steps", "1/2 in"),
    ],
)
def test_a_step_told_in_words_makes_a_sweep(text: str, step: str) -> None:
    (value,) = lay_out(mind().reader.read(text)).values
    assert value.shape == "sweep"
    assert _shown(value.members[2]) == step


def test_a_step_of_another_kind_is_none() -> None:
    values = lay_out(mind().reader.read("increase from 48 to 72 stitches, one each end, every 4 rows")).values
    assert [value.shape for value in values] == ["span", "one", "one"]


def _shown(measure: Measure) -> str:
    below = measure.per
    per = "" if below is None else f"/{below.value if below.value != 1 else ''}{below.unit}"
    return f"{measure.value} {measure.unit}".strip() + per
