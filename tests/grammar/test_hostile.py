"""Texts meant to break, slow down or mislead the reading."""

from __future__ import annotations

from fractions import Fraction

import pytest

from grammar import Reader, TooLong
from grammar.query import Measure, Word

HEAVY = {
    "brackets": "(" * 10_000,
    "digits": "1" * 20_000,
    "commas": "1," * 10_000,
    "spaces": "1" + " " * 19_998 + "2",
    "spaces in words": "a" + " " * 19_998 + "b",
    "tabs": "\t" * 20_000,
    "articles": "a " * 10_000,
    "halves": "half a " * 2_800,
    "sizes": "1 x " * 5_000,
    "sums": "1+" * 10_000,
    "minus": "-" * 20_000,
    "words": "and a half " * 1_800,
    "numbers in words": "twenty-" * 2_800,
    "feet": "5 ft 3 " * 2_800,
    "hyphens": "half-inch-" * 2_000,
    "dots": "1.2.3" * 4_000,
    "slashes": "1/" * 10_000,
    "emoji": "🧵" * 20_000,
    "lines": "3 in\n" * 4_000,
    "rates": "a metre a metre " * 1_250,
    "to": "1 to " * 4_000,
}


@pytest.mark.parametrize("name", HEAVY)
def test_a_heavy_line_is_read_whole(reader: Reader, name: str) -> None:
    assert reader.read(HEAVY[name]).text == HEAVY[name]
    reader.read_sum(HEAVY[name])


def test_a_line_nobody_types_is_refused(reader: Reader) -> None:
    with pytest.raises(TooLong) as caught:
        reader.read("1 in " * 200_000)
    assert str(caught.value) == (
        "That line has 1,000,000 characters, and I read lines of up to 20,000. "
        "Type one question a line, such as: elastic for a 28 in waist"
    )
    assert reader.read_sum("1 in " * 200_000) is None


def test_a_number_of_a_thousand_digits_is_exact(reader: Reader) -> None:
    (found,) = reader.read("9" * 1000 + " cm").chunks
    assert isinstance(found, Measure)
    assert found.value == Fraction(10**1000 - 1)


@pytest.mark.parametrize("text", ["9" * 4001, "9" * 4001 + ".5 cm", "1/" + "7" * 4001, "2 1" + "0" * 4400 + "/3"])
def test_a_number_beyond_reading_stays_text(reader: Reader, text: str) -> None:
    chunks = reader.read(text).chunks
    assert isinstance(chunks[0], Word | Measure)
    assert "".join(chunk.text for chunk in chunks).replace(" ", "") == text.replace(" ", "")


def test_nothing_is_divided_by_nothing(reader: Reader) -> None:
    assert [chunk.text for chunk in reader.read("5/0 in 0/0").chunks] == ["5", "/", "0 in", "0", "/", "0"]
