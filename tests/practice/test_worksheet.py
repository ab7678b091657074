"""Worksheets: the same for the same number, well formed, and never written over something else."""

from __future__ import annotations

from html.parser import HTMLParser
from pathlib import Path

import pytest

from assistant.practice import html, markdown
from tests.support import ask

VOID = {"meta", "br", "hr", "img", "input", "link"}


class Strict(HTMLParser):
    """Every element that opens is closed, in order."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.seen: list[str] = []

    def handle_starttag(self, tag: str, attrs: object) -> None:
        self.seen.append(tag)
        if tag not in VOID:
            self.open.append(tag)

    def handle_endtag(self, tag: str) -> None:
        assert self.open.pop() == tag


def sheet(line: str) -> tuple[str, ...]:
    made = ask(line)
    assert made.status == "answered", made.message
    return made.text


def test_the_same_number_gives_the_same_sheet() -> None:
    assert sheet("worksheet 4711 of 10 on binding") == sheet("Worksheet 4711 of 10 on binding strips.")
    assert sheet("worksheet 4711 of 10 on binding") != sheet("worksheet 4712 of 10 on binding")


def test_a_sheet_without_a_number_says_how_to_make_it_again() -> None:
    made = ask("worksheet of 5 on elastic")
    again = made.text[-1].removeprefix("The same sheet again: ")
    assert sheet(again) == made.text


@pytest.mark.parametrize(
    "line",
    ["worksheet 7 of 10 on binding", "worksheet 7 of 10 on knitting in metric", "worksheet 7 of 20 on everything"],
)
def test_as_many_exercises_as_asked_and_none_twice(line: str) -> None:
    text = sheet(line)
    asked = text[: text.index("Answers")]
    assert len(asked) == int(line.split()[3])
    assert len({one.partition(". ")[2] for one in asked}) == len(asked)


def test_a_system_is_kept_to() -> None:
    text = sheet("worksheet 7 of 6 on elastic in metric")
    asked = " ".join(text[: text.index("Answers")])
    assert " cm" in asked
    assert "yd" not in asked


@pytest.mark.parametrize("topic", ["binding", "knitting", "everything"])
def test_the_html_is_well_formed_with_the_answers_on_their_own_page(tmp_path: Path, topic: str) -> None:
    file = tmp_path / "sheet.html"
    made = ask(f"worksheet 4711 of 10 on {topic} as HTML to {file}")
    assert (made.status, made.results[0].value) == ("answered", str(file))
    text = file.read_text("utf-8")
    parser = Strict()
    parser.feed(text)
    assert not parser.open
    assert parser.seen.count("li") >= 20
    assert text.index("How many" if topic == "binding" else '<li class="exercise">') < text.index(
        '<section class="answers">'
    )
    assert "break-before: page" in html.STYLE
    assert "worksheet 4711 of 10 on" in text


def test_the_markdown_has_room_to_work_and_a_page_for_the_answers(tmp_path: Path) -> None:
    file = tmp_path / "sheet.md"
    assert ask(f"worksheet 12 of 4 on elastic as Markdown to {file}").status == "answered"
    asked, _, answers = file.read_text("utf-8").partition(markdown.PAGE_BREAK)
    assert asked.count("Answer: ____") == 4
    assert asked.count("&nbsp;") == 16
    assert all(f"**{number}.**" in answers for number in range(1, 5))


def test_the_form_follows_from_the_files_ending(tmp_path: Path) -> None:
    file = tmp_path / "sheet.html"
    ask(f"worksheet 12 of 4 on elastic to {file}")
    assert file.read_text("utf-8").startswith("<!DOCTYPE html>")


def test_only_a_worksheet_is_written_over(tmp_path: Path) -> None:
    file = tmp_path / "letter.html"
    file.write_text("<p>My dear Ines", "utf-8")
    made = ask(f"worksheet 12 of 4 on elastic as html to {file}")
    assert made.status == "impossible"
    assert "is there already" in made.message
    assert file.read_text("utf-8") == "<p>My dear Ines"
    sheet_file = tmp_path / "sheet.html"
    for number in (1, 2):
        assert ask(f"worksheet {number} of 3 on elastic to {sheet_file}").status == "answered"
    assert "worksheet 2" in sheet_file.read_text("utf-8")


def test_a_file_that_cannot_be_written_is_said(tmp_path: Path) -> None:
    made = ask(f"worksheet 12 of 4 on elastic to {tmp_path / 'nowhere' / 'sheet.html'}")
    assert made.status == "impossible"
    assert "cannot be written" in made.message


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("worksheet of 500 on binding", "A worksheet holds 1 to 60 exercises, not 500."),
        ("worksheet of 10 on zzyzx", "I know no topic called “zzyzx”."),
    ],
)
def test_what_cannot_be_is_said(line: str, told: str) -> None:
    made = ask(line)
    assert made.status == "unclear"
    assert made.message.startswith(told)


def test_another_file_is_written_over_only_when_that_is_said(tmp_path: Path) -> None:
    file = tmp_path / "letter.html"
    file.write_text("<p>My dear Ines", "utf-8")
    assert ask(f"worksheet 12 of 4 on elastic as html to {file}, replacing it").status == "answered"
    assert "worksheet 12" in file.read_text("utf-8")
