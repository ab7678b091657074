"""A length shown in the other system beside the answer: never so coarse that it says something else."""

from __future__ import annotations

from fractions import Fraction

import pytest

from rules.engine.composing import length_in
from rules.engine.units import factor
from tests.support import ask


@pytest.mark.parametrize(
    ("question", "inches"),
    [("what is a US 9 needle in mm", "0.22 in"), ("how many mm is a US 0 needle", "0.08 in")],
)
def test_a_needle_is_no_ruler_fraction(question: str, inches: str) -> None:
    """US 9 is 5.5 mm and US 0 is 2 mm (knitting-and.com table, 2002); one inch is 25.4 mm exactly."""
    assert ask(question).results[0].other == inches


@pytest.mark.parametrize(("unit", "shown_in"), [("in", "in"), ("yd", "in"), ("cm", "mm"), ("m", "mm")])
def test_what_is_shown_under_an_inch_is_within_half_a_hundredth(unit: str, shown_in: str) -> None:
    for hundredths in range(1, 2540, 37):
        exact = Fraction(hundredths, 100)
        number, shown_unit = length_in(exact, unit).split()
        assert shown_unit == shown_in
        assert abs(Fraction(number) * factor(shown_in) - exact) <= Fraction(1, 200) * factor(shown_in)


def test_from_an_inch_up_a_length_is_as_a_ruler_has_it() -> None:
    assert length_in(Fraction(254, 10), "in") == "1 in"
    assert length_in(Fraction(127), "cm") == "12.7 cm"
    assert length_in(Fraction(0), "in") == "0 in"
