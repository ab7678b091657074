"""Shopping and cut lists, added up by hand here, and written to files."""

from __future__ import annotations

import csv
import io
import json
from fractions import Fraction
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from rules.kept.shopping import Had, Need, Price, shopping
from tests.notebook.conftest import Book

MM_PER_YD = Fraction("914.4")  # the international yard


@pytest.fixture
def listed(book: Book) -> Book:
    """Two projects that take the same linen, one price, some of it in hand."""
    book.done(
        "start project harbour tote",
        "need 0.84 m of navy linen, £9/m",
        "add 2 zips to the shopping list",
        "zips cost £1.25 each",
    )
    book.done(
        "start project sea cushion",
        "need 0.53 m of navy linen",
        "add a zip to the shopping list",
        "I have 20 cm of navy linen",
    )
    return book


def test_equal_things_are_added_stock_taken_off_and_each_rounded_once(listed: Book) -> None:
    # by hand: 0.84 + 0.53 = 1.37 m, less 0.20 m is 1.17 m, up to 1.2 m (rounded apart, 0.9 + 0.6, it would be 1.3 m)
    # 1.2 m x £9 = £10.80; 3 zips x £1.25 = £3.75; £14.55 in all
    made = listed.ask("shopping list")
    assert made.headline == "To buy: 1.2 m of navy linen and 3 zips. In all £14.55."
    assert made.table is not None
    assert made.table.texts == (
        ("1.2 m", "navy linen", "£10.80", "harbour tote, sea cushion", "1.37 m", "0.2 m"),
        ("3", "zips", "£3.75", "harbour tote, sea cushion", "3", ""),
    )
    assert [line.result for line in made.working][:4] == ["1.37 m", "1.17 m", "1.2 m", "£10.80"]


def test_the_list_of_one_project(listed: Book) -> None:
    # 0.84 m less the 0.2 m in hand is 0.64 m, up to 0.7 m
    assert listed.told("shopping list for the harbour tote") == "To buy: 0.7 m of navy linen and 2 zips. In all £8.80."


def test_the_shops_own_step_counts(listed: Book) -> None:
    listed.done("my shop sells by the half metre")
    assert listed.told("shopping list").startswith("To buy: 1.5 m of navy linen")


def test_in_inches(listed: Book) -> None:
    listed.done("work in inches")
    # 1.17 m are 1.2795 yd, up to 1 3/8 yd; 1 3/8 yd are 1.2573 m, at £9/m £11.3157
    assert listed.told("shopping list") == "To buy: 1 3/8 yd of navy linen and 3 zips. In all £15.07."


def test_things_without_a_price_are_named(listed: Book) -> None:
    listed.done("add 3 m of webbing to the shopping list")
    assert listed.ask("shopping list").notes == ("Not in the total, since no price is known: webbing.",)


def test_narrower_cloth_does_not_count(book: Book) -> None:
    book.done(
        "start project harbour tote", "need 1 m of navy linen 150 cm wide", "I have 3 m of navy linen 110 cm wide"
    )
    assert book.told("shopping list") == "To buy: 1 m of navy linen, 150 cm wide."
    book.done("I have 3 m of navy linen 150 cm wide")
    assert book.told("shopping list").startswith("There is nothing left to buy")


def test_the_cut_list(book: Book) -> None:
    book.done("start project lantern quilt")
    book.told("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    book.done("keep that")
    made = book.ask("cut list")
    assert made.table is not None
    assert ("7 strips", "strip width 2 1/2 in", "binding strips", "lantern quilt") in made.table.texts


# -- files -------------------------------------------------------------------------------------------------------------


def test_csv(listed: Book, tmp_path: Path) -> None:
    path = tmp_path / "list.csv"
    assert listed.done(f"shopping list as CSV to {path}") == f"The shopping list is in {path}, 2 lines."
    rows = list(csv.reader(io.StringIO(path.read_text("utf-8"))))
    assert rows[0] == ["buy", "thing", "cost", "for", "needed", "in hand"]
    assert rows[1][:3] == ["1.2 m", "navy linen", "£10.80"]
    assert rows[-1][:3] == ["total", "", "£14.55"]


def test_markdown(listed: Book, tmp_path: Path) -> None:
    path = tmp_path / "list.md"
    listed.done(f"save the shopping list as Markdown to {path}")
    text = path.read_text("utf-8")
    assert text.startswith("# Shopping list\n\n| buy | thing | cost |")
    assert "\n| 1.2 m | navy linen | £10.80 |" in text
    assert text.endswith("\nTotal: £14.55\n")


def test_bars_in_a_name_do_not_break_the_markdown(book: Book, tmp_path: Path) -> None:
    book.done(
        "start project harbour tote", "need 1 m of red | white lawn", f"save the shopping list to {tmp_path}/list.md"
    )
    assert "| red \\| white lawn |" in (tmp_path / "list.md").read_text("utf-8")


def test_json(listed: Book, tmp_path: Path) -> None:
    path = tmp_path / "my list.json"
    listed.done(f'shopping list as JSON to "{path}"')
    made = json.loads(path.read_text("utf-8"))
    assert made["totals"] == ["£14.55"]
    assert [line["thing"] for line in made["lines"]] == ["navy linen", "zips"]


def test_a_file_that_is_there_is_not_written_over_unless_told(listed: Book, tmp_path: Path) -> None:
    path = tmp_path / "list.csv"
    path.write_text("mine")
    assert "is there already, so I have left it as it is" in listed.refused(f"shopping list to {path}")
    assert path.read_text() == "mine"
    listed.done(f"shopping list to {path}, replacing it")
    assert path.read_text("utf-8").startswith("buy,")


def test_a_place_that_cannot_be_written_is_said_so(listed: Book, tmp_path: Path) -> None:
    assert "cannot be written" in listed.refused(f"shopping list to {tmp_path}/none/list.csv")
    assert "CSV, Markdown or JSON" in listed.refused(f"shopping list to {tmp_path}/list.xyz")


# -- the sums ----------------------------------------------------------------------------------------------------------

amounts = st.lists(st.fractions(min_value=1, max_value=5000, max_denominator=8), min_size=1, max_size=6)


@given(amounts, st.fractions(min_value=0, max_value=9000, max_denominator=8), st.sampled_from(("in", "cm")))
def test_a_list_is_never_short_and_never_a_step_too_long(needed: list[Fraction], stock: Fraction, system: str) -> None:
    needs = [Need("linen", "linen", "length", value, str(number)) for number, value in enumerate(needed)]
    (entry,) = shopping(needs, (), (Had("linen", "length", stock),), {}, system).entries
    step = MM_PER_YD / 8 if system == "in" else Fraction(100)
    short = max(sum(needed) - stock, Fraction(0))
    assert short <= entry.buy < short + step


@given(amounts)
def test_stock_is_shared_out_and_never_counted_twice(needed: list[Fraction]) -> None:
    needs = [
        Need("linen", "linen", "length", value, "", width=Fraction(width)) for width, value in enumerate(needed, 1)
    ]
    stock = sum(needed, Fraction(0)) / 2
    entries = shopping(needs, (), (Had("linen", "length", stock, width=Fraction(99)),), {}, "cm").entries
    assert sum(entry.in_hand for entry in entries) == min(stock, sum(needed))


def test_a_price_is_to_the_penny_half_up() -> None:
    (entry,) = shopping(
        [Need("zip", "zip", "count", Fraction(1))], (), (), {"zip": Price(Fraction("1.005"), "GBP")}, "cm"
    ).entries
    assert entry.cost == ("GBP", Fraction("1.01"))
