"""Answer contract 1: which keys each status has, and numbers as JSON carries them."""

from __future__ import annotations

import json
from dataclasses import replace
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.contract import as_dict, as_line, number
from rules.engine.answer import Answer, Result
from rules.engine.drawing import LineDrawing
from tests.fakes import IMPOSSIBLE, MISSING, STRIPS, SWEEP, UNCLEAR

ALWAYS = {
    "contract", "question", "status", "topic", "given", "assumed", "results", "working", "cautions", "sources",
    "not_used", "next",
}  # fmt: skip


@pytest.mark.parametrize(
    ("answer", "own"),
    [
        (STRIPS, set()),
        (SWEEP, {"table"}),
        (MISSING, {"message", "missing"}),
        (UNCLEAR, {"message", "choices"}),
        (IMPOSSIBLE, {"message", "reason"}),
        (Answer("done"), set()),
        (replace(STRIPS, notes=("a note",)), {"notes"}),
    ],
)
def test_the_keys_of_each_status(answer: Answer, own: set[str]) -> None:
    assert set(as_dict(answer)) == ALWAYS | own


def test_an_answer_in_full() -> None:
    made = as_dict(replace(STRIPS, question="how many"))
    assert (made["contract"], made["question"], made["status"]) == (1, "how many", "answered")
    assert made["topic"] == "binding strips"
    assert made["given"][0] == {"name": "quilt width", "value": 60, "unit": "in", "text": "60 in"}
    assert made["assumed"][0]["why"] == "the usual between selvedges, to be safe"
    assert made["results"][0] == {
        "name": "strips", "value": 7, "unit": "strip", "text": "7 strips", "exact": 6.85, "exact_text": "6.85 strips",
    }  # fmt: skip
    assert made["working"][1]["numbers"] == "274 in ÷ 40 in"


def test_a_table_holds_numbers() -> None:
    table = as_dict(SWEEP)["table"]
    assert table["columns"][0] == {"name": "quilt length", "unit": "in"}
    assert table["rows"][1] == [72.5, 7, 275]


def test_what_is_missing_and_why_it_is_impossible() -> None:
    wanted = {"name": "quilt length", "ask": "How long is the quilt?", "example": "72 in"}
    assert as_dict(MISSING)["missing"] == [wanted]
    assert as_dict(IMPOSSIBLE)["reason"] == as_dict(IMPOSSIBLE)["message"]


def test_what_was_done_is_told_in_the_notes() -> None:
    assert as_dict(Answer("done", headline="Kept.", notes=("Where.",)))["notes"] == ["Kept.", "Where."]


def test_a_drawing_is_lines_of_plain_text() -> None:
    drawn = as_dict(replace(STRIPS, drawing=LineDrawing(Fraction(100), ((Fraction(50), "middle"),))))["drawing"]
    assert drawn[-1].strip() == "middle"
    assert all(line.isascii() and len(line) <= 80 for line in drawn)


def test_a_result_in_words_is_words() -> None:
    words = replace(STRIPS, results=(Result("size", "medium", "text", "medium", "medium", "medium"),))
    assert as_dict(words)["results"][0]["value"] == "medium"


@pytest.mark.parametrize(
    "endless", [float("inf"), float("nan"), Fraction(10) ** 400, 10**5000], ids=["inf", "nan", "fraction", "int"]
)
def test_numbers_that_json_cannot_carry_are_null(endless: object) -> None:
    assert number(endless) is None


@given(st.fractions() | st.floats() | st.integers() | st.text() | st.none() | st.tuples(st.fractions(), st.text()))
def test_any_value_goes_into_strict_json_and_comes_back_near_enough(value: object) -> None:
    line = as_line(replace(STRIPS, results=(Result("x", value, "in", "x"),)))
    back = json.loads(line, parse_constant=lambda constant: pytest.fail(constant))["results"][0]["value"]
    if isinstance(value, Fraction) and back is not None:
        assert float(back) == float(value)
    assert "\n" not in line
