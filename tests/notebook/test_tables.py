"""Size tables: typed, and from files as real spreadsheets write them."""

from __future__ import annotations

import codecs
from pathlib import Path

import pytest

from tests.notebook.conftest import Book

MEASURES = "my waist is 66 cm, hip 94 cm and bust 88 cm"
SHOWN = (("8", "80 cm to 83 cm", "60 cm"), ("10", "84 cm to 87 cm", "64.5 cm"), ("12", "88 cm to 91 cm", "68 cm"))


def shown(book: Book, name: str) -> tuple[tuple[str, ...], ...]:
    table = book.ask(f"show the size table {name}").table
    assert table is not None
    return table.texts


def test_a_table_typed_in_a_line(book: Book) -> None:
    book.done(MEASURES)
    assert book.done("size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92, 14: 92/73/97") == (
        "Kept: size table harbour dress, 3 sizes, 10 to 14, by bust, waist and hip, in cm."
    )
    assert shown(book, "harbour dress")[0] == ("10", "83 cm", "64 cm", "88 cm")
    made = book.ask("what size am I in it?")
    # between sizes the larger for woven cloth: bust 88 is 14, waist 66 is 12, hip 94 is 14
    assert made.results[0].text == "size 14"
    assert any(result.text == "bust 14, waist 12, hip 14" for result in made.results)
    assert {value.why for value in made.given} >= {"your bust, from the notebook", "the size table from the notebook"}


def test_someone_elses_size(book: Book) -> None:
    book.done("Ines's bust is 83 cm", "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92")
    assert book.ask("what size is Ines in the harbour dress?").results[0].text == "size 10"
    assert book.refused("what size am I in the harbour dress").startswith("I have no measure of you that the table has")


def test_a_measure_beyond_the_table_is_said_so(book: Book) -> None:
    book.done("my bust is 120 cm", "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92")
    assert "more than the largest size" in book.refused("what size am I in it")


FILES = {
    "in any order, units in the headings": "Waist (cm),UK size,Bust (cm)\n60,8,80-83\n64.5,10,84-87\n68,12,88-91\n",
    "semicolons and decimal commas": "Size;Bust in cm;Waist\n8;80-83;60\n10;84-87;64,5\n12;88-91;68\n",
    "tabs, and a title above": "Sea dress, body measures in cm\t\t\nSize\tBust\tWaist\n"
    "8\t80 - 83\t60\n10\t84 - 87\t64½\n12\t88 - 91\t68\n",
    "fractions and dashes": "size,bust cm,waist cm\n8,80–83,60\n10,84–87,64 1/2\n12,88–91,68\n",
    "on its side": "Measure,8,10,12\nBust cm,80-83,84-87,88-91\nWaist cm,60,64.5,68\n",
    "units in the cells": "size,bust,waist\nSize 8,80-83 cm,60 cm\nSize 10,84-87 cm,64.5 cm\nSize 12,88-91 cm,68 cm\n",
    "nothing said of units": "Size,Bust,Waist\n8,80 to 83,60\n10,84 to 87,64.5\n12,88 to 91,68\n",
    "quoted, with blank lines": '"Size","Bust (cm)","Waist (cm)"\n\n'
    '"8","80-83","60"\n"10","84-87","64.5"\n,,\n"12","88-91","68"\n',
}


@pytest.mark.parametrize("name", FILES)
def test_a_table_from_a_file(book: Book, tmp_path: Path, name: str) -> None:
    path = tmp_path / "sea dress.csv"
    path.write_text(FILES[name], "utf-8")
    book.done(f"read the size table from {path} as sea dress")
    texts = shown(book, "sea dress")
    places = [row[1:] for row in texts]
    assert [row[0] for row in texts] == ["8", "10", "12"]
    assert {frozenset(row) for row in places} == {frozenset(row[1:]) for row in SHOWN}


@pytest.mark.parametrize(
    ("mark", "coding"), [(codecs.BOM_UTF8, "utf-8"), (codecs.BOM_UTF16_LE, "utf-16-le"), (b"", "cp1252")]
)
def test_byte_order_marks_and_older_codings(book: Book, tmp_path: Path, mark: bytes, coding: str) -> None:
    path = tmp_path / "dress.csv"
    path.write_bytes(mark + "Size,Bust,Waist\r\n10,32½,25\r\n12,34½,27\r\n".encode(coding))
    book.done(f"read {path} as a size table for the sea dress")
    assert shown(book, "the sea dress") == (("10", "32 1/2 in", "25 in"), ("12", "34 1/2 in", "27 in"))


def test_inches_with_their_sign(book: Book, tmp_path: Path) -> None:
    path = tmp_path / "dress.csv"
    path.write_text('Size,"Bust","Waist"\nS,"32""-34""","24 1/2"""\nM,"35""-37""","27 1/4"""\n', "utf-8")
    book.done(f"read the size table from {path}")
    assert shown(book, "dress") == (("S", "32 in to 34 in", "24 1/2 in"), ("M", "35 in to 37 in", "27 1/4 in"))


def test_columns_that_are_no_measure_are_named(book: Book, tmp_path: Path) -> None:
    path = tmp_path / "dress.csv"
    path.write_text("UK size,US,Bust,Waist\n8,4,80,60\n10,6,84,64\n", "utf-8")
    assert book.ask(f"read the size table from {path}").notes == ("Left out, being no body measure: US.",)


@pytest.mark.parametrize(
    ("content", "told"),
    [
        ("Size,Bust,Waist\n8,80,60\n10,tight,64\n", "I cannot read “tight”, the Bust of size 10"),
        ("hello\nthere\n", "I find no columns in it"),
        ("a,b,c\n1,2,3\n4,5,6\n", "I find no heading such as bust, waist or hip"),
        ("Size,Bust,Waist\n8,,\n10,,\n", "no row in it has both a size and a measure"),
    ],
)
def test_a_file_that_is_no_table_is_refused_in_words(book: Book, tmp_path: Path, content: str, told: str) -> None:
    path = tmp_path / "dress.csv"
    path.write_text(content, "utf-8")
    assert told in book.refused(f"read the size table from {path}")
    assert not book.path.exists()


def test_a_file_that_is_not_there(book: Book, tmp_path: Path) -> None:
    assert "No such file" in book.refused(f"read the size table from {tmp_path}/none.csv")
    assert "I cannot read" in book.refused(f"read the size table from {tmp_path}")


def test_tables_are_listed_and_forgotten(book: Book) -> None:
    book.done(
        "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92", "size table sea shirt: S: 83/64/88 cm, M: 87/68/92"
    )
    assert book.told("size tables") == "Size tables: harbour dress and sea shirt."
    book.done("forget the sea shirt")
    assert book.told("size tables") == "Size tables: harbour dress."
    assert "cannot read that as a size table" in book.refused("size table coat: large and small")
