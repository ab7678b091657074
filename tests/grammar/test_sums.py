"""Sums of measures: what is one, how it is built up, and what is left to other readers."""

from __future__ import annotations

import pytest

from grammar import Reader, Sum, TooDeep
from grammar.formula import Binary, Negate
from grammar.sums import Leaf

from .shown import measure

SUMS = {
    "3 yd 8 in + 45 cm": "(3 yd + 8 in + 45 cm)",
    "3 x 5 3/8 in": "(3 * 5 3/8 in)",
    "27 in / 6": "(27 in / 6)",
    "27 in ÷ 6": "(27 in / 6)",
    "half of 22 1/2 in": "(1/2 * 22 1/2 in)",
    'half of 37 3/4"': "(1/2 * 37 3/4 in)",
    "(2 m - 35 cm) * 3": "((2 m - 35 cm) * 3)",
    "3 * (2 m - 35 cm)": "(3 * (2 m - 35 cm))",
    "2 1/2 in x 7 + 1 in": "((2 1/2 in * 7) + 1 in)",
    "1 in + 2 1/2 in x 7": "(1 in + (2 1/2 in * 7))",
    "10 in - 3 in - 2 in": "((10 in - 3 in) - 2 in)",
    "a third of 27 in": "(1/3 * 27 in)",
    "three quarters of 2 m": "(3/4 * 2 m)",
    "twice 4 1/2 in": "(2 * 4 1/2 in)",
    "45 cm plus 3 in": "(45 cm + 3 in)",
    "45 cm minus 3 in": "(45 cm - 3 in)",
    "12 divided by 5": "(12 / 5)",
    "20% of 3 m": "(20 % * 3 m)",
    "8 times 3 1/4 in": "(8 * 3 1/4 in)",
    "8 multiplied by 3 in": "(8 * 3 in)",
    "-3 in + 5 in": "(-(3 in) + 5 in)",
    "2 * -(3 in)": "(2 * -(3 in))",
    "two inches times three": "(2 in * 3)",
    "5'3\" - 2 in": "(5 ft + 3 in - 2 in)",
    "half of (3 in + 2 in)": "(1/2 * (3 in + 2 in))",
    "What is 3 in + 2 in?": "(3 in + 2 in)",
    "what's 3 in + 2 in": "(3 in + 2 in)",
    "how much is 3 in + 2 in =": "(3 in + 2 in)",
    "work out 3 in + 2 in": "(3 in + 2 in)",
}

NOT_SUMS = (
    "", "3 in", "-3 in", "what is 3 in in cm", "5/8", "44-45 in", "60 by 72", "elastic for a 28 in waist", "3 in +",
    "3 in + + x", "(3 in", "3 in)", "3 in 2 cm", "2nd + 3rd", "+", "()", "22 sts to 10 cm", "£7.25 a metre", "?",
)  # fmt: skip


def tree(of: object) -> str:
    match of:
        case Leaf(leaf):
            return measure(leaf)
        case Negate(within):
            return f"-({tree(within)})"
        case Binary(op, left, right):
            return f"({tree(left)} {op} {tree(right)})"
    raise AssertionError(of)


@pytest.mark.parametrize("text", SUMS)
def test_a_sum_is_built_up_in_the_usual_order(reader: Reader, text: str) -> None:
    found = reader.read_sum(text)
    assert isinstance(found, Sum)
    assert tree(found.tree) == SUMS[text]


@pytest.mark.parametrize("text", NOT_SUMS)
def test_what_is_not_a_sum_is_left_alone(reader: Reader, text: str) -> None:
    assert reader.read_sum(text) is None


@pytest.mark.parametrize(
    ("text", "unit"),
    [
        ("3 in + 2 in in cm", "cm"),
        ("3 in + 2 in", ""),
        ("what is 3 cm x 4 in square inches?", "in^2"),
        ("3 m / 4 as inches", "in"),
    ],
)
def test_the_unit_asked_for_is_handed_back(reader: Reader, text: str, unit: str) -> None:
    found = reader.read_sum(text)
    assert isinstance(found, Sum)
    assert found.asked_unit == unit


def test_leaves_point_into_the_text_as_typed(reader: Reader) -> None:
    text = "What is 2½ in + 3 in?"
    found = reader.read_sum(text)
    assert isinstance(found, Sum)
    assert isinstance(found.tree, Binary)
    assert isinstance(found.tree.left, Leaf)
    leaf = found.tree.left.measure
    assert text[leaf.start : leaf.end] == leaf.text == "2½ in"


@pytest.mark.parametrize("depth", [51, 300, 9_000])
def test_deep_brackets_are_told_apart_quickly(reader: Reader, depth: int) -> None:
    found = reader.read_sum("(" * depth + "1 in" + ")" * depth)
    assert isinstance(found, TooDeep)
    assert str(found) == "Sums are read 50 levels deep at most. Work it out in parts, such as: (2 m - 35 cm) * 3"


def test_fifty_brackets_are_read(reader: Reader) -> None:
    assert isinstance(reader.read_sum("(" * 50 + "1 in + 1 in" + ")" * 50), Sum)


def test_a_receipt_of_a_hundred_lengths_is_read_and_one_without_end_is_not(reader: Reader) -> None:
    assert isinstance(reader.read_sum(" + ".join(["3 in"] * 100)), Sum)
    assert isinstance(reader.read_sum(" + ".join(["3 in"] * 1000)), TooDeep)
    assert isinstance(reader.read_sum("-" * 1000 + "3"), TooDeep)
