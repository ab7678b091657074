"""Answers in words: exact texts at 80 and at 40 columns, and what never happens in them."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from assistant.render import brief, full
from assistant.wrap import wrap
from rules.engine.answer import Answer, Line, Result, Value
from rules.engine.drawing import LineDrawing
from tests.fakes import IMPOSSIBLE, MISSING, STRIPS, SWEEP, UNCLEAR

AT_80 = """\
Cut 7 strips, 2 1/2 in wide, across the cloth.
Also: binding length 274 in (696 cm)
Working
  1. Go once round the quilt, and add 10 in for corners and the join.
     binding length = 2 × (quilt width + quilt length) + corners and join
     = 2 × (60 in + 72 in) + 10 in
     = 274 in
  2. See how many widths of cloth that takes.
     strips = binding length ÷ usable fabric width
     = 274 in ÷ 40 in
     = 6.85 strips, up to 7 strips
Assumed
  - Usable fabric width 40 in: the usual between selvedges, to be safe.
  To change one, say it in your own figures, such as "usable fabric width
  40 in".
Mind: Binding cut straight will not go round a curve.
Source: common practice, no source
Next: and with 60 in cloth?"""

AT_40 = """\
Cut 7 strips, 2 1/2 in wide, across the
  cloth.
Also: binding length 274 in (696 cm)
Working
  1. Go once round the quilt, and add
     10 in for corners and the join.
     binding length = 2 × (quilt width +
       quilt length) + corners and join
     = 2 × (60 in + 72 in) + 10 in
     = 274 in
  2. See how many widths of cloth that
     takes.
     strips = binding length ÷ usable
       fabric width
     = 274 in ÷ 40 in
     = 6.85 strips, up to 7 strips
Assumed
  - Usable fabric width 40 in: the usual
    between selvedges, to be safe.
  To change one, say it in your own
  figures, such as "usable fabric width
  40 in".
Mind: Binding cut straight will not go
  round a curve.
Source: common practice, no source
Next: and with 60 in cloth?"""

TABLE_AT_80 = """\
Strips for quilt length 60 in to 100 in: 7 strips to 9 strips.
  quilt length     strips   binding length
         60 in   7 strips           250 in
     72 1/2 in   7 strips           274 in
        100 in   9 strips           330 in
Working for quilt length 72 1/2 in"""

TABLE_AT_40 = """\
Strips for quilt length 60 in to 100 in:
  7 strips to 9 strips.
  quilt length 60 in
    strips: 7 strips
    binding length: 250 in"""


def test_an_answer_at_80_columns() -> None:
    assert full(STRIPS, 80) == AT_80


def test_an_answer_at_40_columns() -> None:
    assert full(STRIPS, 40) == AT_40


def test_a_table_stands_in_columns_where_they_fit_and_as_a_list_where_not() -> None:
    assert full(SWEEP, 80).startswith(TABLE_AT_80)
    assert full(SWEEP, 40).startswith(TABLE_AT_40)


def test_what_is_missing_is_asked_for_with_an_example() -> None:
    assert full(MISSING) == (
        "I read this as binding strips, but still need the quilt length.\n"
        "So far: quilt width 60 in\n"
        "  How long is the quilt? For example: 72 in"
    )


def test_choices_are_numbered() -> None:
    assert full(UNCLEAR) == "That could be two things.\n  1. binding strips\n  2. a strip of cloth"


def test_the_impossible_is_its_message() -> None:
    assert full(IMPOSSIBLE) == brief(IMPOSSIBLE) == "The quilt width cannot be 0 in."


def test_an_instruction_carried_out_says_so() -> None:
    done = Answer("done", headline="Waist of Tomas kept: 34 in.")
    assert full(done) == brief(done) == "Waist of Tomas kept: 34 in."


@pytest.mark.parametrize("columns", range(24, 101, 4))
@pytest.mark.parametrize("answer", [STRIPS, SWEEP, MISSING, UNCLEAR, IMPOSSIBLE], ids=lambda one: one.status)
def test_no_line_is_too_long_or_empty_and_no_number_is_parted_from_its_unit(answer: Answer, columns: int) -> None:
    lines = full(answer, columns).split("\n")
    assert all(0 < len(line) <= columns for line in lines)
    assert not any(line[-1:].isdigit() and after.lstrip()[:2] == "in" for line, after in pairwise(lines))


def test_a_mixed_number_its_unit_and_a_count_stay_whole() -> None:
    assert wrap("a strip 2 1/2 in wide", 14) == ["a strip", "2 1/2 in wide"]
    assert wrap("cut all of 7 strips", 14) == ["cut all of", "7 strips"]
    assert wrap("a measure (2 1/2 in) here", 14) == ["a measure", "(2 1/2 in)", "here"]


def test_a_word_longer_than_the_line_is_not_cut() -> None:
    assert wrap("so " + "9" * 50 + " in", 24) == ["so", "9" * 50 + " in"]


def test_a_result_is_told_once_and_not_taken_for_part_of_another() -> None:
    results = (Result("strips", 17, "strip", "17 strips"), Result("left", 7, "strip", "7 strips"))
    text = full(replace(STRIPS, headline="Cut 17 strips.", results=results))
    assert "Also: left 7 strips\n" in text
    half = (Result("width", 0.5, "in", "1/2 in"),)
    assert "Also: width 1/2 in" in full(replace(STRIPS, headline="Cut it 2 1/2 in wide.", results=half))


def test_several_of_a_kind_stand_in_a_list() -> None:
    text = full(replace(STRIPS, cautions=("One thing.", "Another thing.")))
    assert "\nMind\n  - One thing.\n  - Another thing.\n" in text


def test_one_of_a_kind_stands_on_the_title_s_line_unless_it_has_a_colon_of_its_own() -> None:
    assert "\nNote: Press first.\n" in full(replace(STRIPS, notes=("Press first.",)))
    assert "\nNote\n  - Press first: it stretches.\n" in full(replace(STRIPS, notes=("Press first: it stretches.",)))


def test_what_comes_to_nothing_is_told_only_when_it_is_the_answer() -> None:
    none = Result("joins", Fraction(0), "join", "0 joins")
    assert "0 joins" not in full(replace(STRIPS, results=(*STRIPS.results, none)))
    assert "Also: joins 0 joins" in full(replace(STRIPS, results=(none, STRIPS.results[0])))


def test_a_result_in_words_is_parted_from_its_name() -> None:
    crown = Result("crown", "k2tog to the end", "text", "k2tog to the end")
    assert "\n  - crown: k2tog to the end\n" in full(replace(STRIPS, results=(*STRIPS.results, crown)))


def test_a_step_begins_with_a_capital_and_says_nothing_twice() -> None:
    working = (
        Line("the same at both ends", "part taken off = 8 %", "8 %", "8 %"),
        Line("four", "corners = 4", "4", "4 triangles"),
        Line("As cut", "strip = strip", "2 1/4 in", "2 1/4 in, up to the next 1/2 in: 2 1/2 in"),
    )
    text = full(replace(STRIPS, working=working))
    assert "  1. The same at both ends.\n     part taken off = 8 %\n  2. Four.\n     corners = 4\n" in text
    assert "     = 4 triangles\n  3. As cut.\n     = 2 1/4 in, up to the next 1/2 in: 2 1/2 in\n" in text


def test_a_step_in_which_nothing_is_done_is_left_out() -> None:
    working = (
        Line("As at each end", "inset of the first = inset at each end", "1 in", "1 in"),
        Line("Share it out", "spacing = length ÷ spaces", "18 in ÷ 9", "2 in"),
        Line("Round it for use", "spacing", "", "2 in"),
        Line("The binding is as long", "binding length = edge to bind", "274 in", "274 in"),
    )
    text = full(replace(STRIPS, working=working))
    assert "inset" not in text
    assert "Round it" not in text
    assert "  1. Share it out.\n     spacing = length ÷ spaces\n     = 18 in ÷ 9\n     = 2 in\n  2. The binding" in text


def test_how_a_number_was_taken_and_what_was_not_used_are_said() -> None:
    given = (Value("cloth width", 44, "in", "44", "taken as inches"),)
    text = full(replace(STRIPS, given=given, not_used=("blue", "please")))
    assert "\nRead\n  - Cloth width 44: taken as inches.\n" in text
    assert "\nNot used: blue; please\n" in text


def test_a_step_without_a_formula_shows_what_it_has() -> None:
    working = (Line("Lay the pieces", "", "", "3 across"), Line("Turn the cloth", "", "", ""))
    text = full(replace(STRIPS, working=working))
    assert "Working\n  1. Lay the pieces.\n     = 3 across\n  2. Turn the cloth.\n" in text


def test_a_drawing_is_asked_for_in_the_width_and_signs_there_are() -> None:
    line = LineDrawing(Fraction(100), ((Fraction(50), "middle"),))
    assert "─" * 20 in full(replace(STRIPS, drawing=line), 50, unicode=True)
    plain = full(replace(STRIPS, drawing=line), 50, unicode=False)
    assert "-" * 20 in plain
    assert max(map(len, plain.split("\n"))) <= 50


def test_colour_is_put_round_whole_lines_only() -> None:
    lines = full(STRIPS, 40, colour=True).split("\n")
    assert lines[0] == "\x1b[1mCut 7 strips, 2 1/2 in wide, across the\x1b[0m"
    assert all(line.count("\x1b[") in (0, 2) for line in lines)


def test_typed_text_cannot_steer_the_terminal() -> None:
    hostile = replace(UNCLEAR, message="I know no \x1b[2Jsuch\x07 \u202eword\r\nat all.")
    for text in (full(hostile), brief(hostile)):
        assert not set(text) & set("\x1b\x07\u202e\r")
    assert len(brief(hostile).splitlines()) == 1
