"""Drawings written to files: asked for after an answer or in the same breath, and never over what is there."""

from __future__ import annotations

from pathlib import Path
from xml.etree import ElementTree as ET

import pytest

from assistant.conversation import Conversation
from assistant.drawing import as_svg
from assistant.drawing.kept import pictures_of
from rules.engine.answer import Answer
from tests.support import ask, mind

SVG = "{http://www.w3.org/2000/svg}"
LAY = "lay plan: 2 fronts 30 x 70 cm and 1 back 58 x 70 cm on 140 cm cloth"
TWO_CLOTHS = "lay plan: 2 fronts 30 x 70 cm and 2 lining fronts 30 x 60 cm on 140 cm cloth"


@pytest.fixture(autouse=True)
def here(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Each test in a folder of its own."""
    monkeypatch.chdir(tmp_path)
    return tmp_path


def talk(*lines: str) -> list[Answer]:
    conversation = Conversation(mind())
    return [conversation.ask(line) for line in lines]


def words_in(path: Path) -> list[str]:
    root = ET.fromstring(path.read_text("utf-8"))
    assert root.tag == f"{SVG}svg"
    return [one.text or "" for one in root.iter(f"{SVG}text")]


@pytest.mark.parametrize("line", [
    "draw it to lay.svg", "Draw it to lay.svg.", "please draw that as SVG to lay.svg", "save the drawing to lay.svg",
    "save the drawing as lay.svg", "drawing to lay.svg", "as SVG to lay.svg", "save that to lay.svg",
    "write the lay plan to 'lay.svg'", "draw the lay to lay.svg", "draw to a file called lay.svg",
])  # fmt: skip
def test_a_drawing_is_asked_for_after_the_answer(line: str) -> None:
    _, made = talk(LAY, line)
    assert (made.status, made.headline) == ("done", "The drawing is in lay.svg.")
    assert "140 cm" in words_in(Path("lay.svg"))


@pytest.mark.parametrize("ending", [
    ", draw it to lay.svg", " and save the drawing to lay.svg", ", as svg to lay.svg", "; drawn to lay.svg",
    ". Save the drawing as lay.svg",
])  # fmt: skip
def test_or_at_the_end_of_the_question(ending: str) -> None:
    made = ask(LAY + ending)
    assert made.status == "answered"
    assert made.headline == ask(LAY).headline
    assert made.notes[-1] == "The drawing is in lay.svg."
    assert "140 cm" in words_in(Path("lay.svg"))


def test_each_cloth_has_a_file_of_its_own(here: Path) -> None:
    asked, made = talk(TWO_CLOTHS, "draw it to lay.svg")
    assert len(pictures_of(asked)) == 2
    assert made.status == "done"
    assert sorted(one.name for one in here.iterdir()) == ["lay-1.svg", "lay-2.svg"]
    assert "lay-2.svg (lining)" in made.headline


def test_a_plan_draws_its_parts() -> None:
    made = ask("plan a tote 12 in wide 14 in tall 4 in deep, save the drawings to tote.svg")
    assert "tote-1.svg" in made.notes[-1]
    assert "tote-2.svg" in made.notes[-1]


def test_what_is_there_is_left_and_another_way_is_named(here: Path) -> None:
    Path("lay.svg").write_text("my own", "utf-8")
    _, refused, replaced = talk(LAY, "draw it to lay.svg", "draw it to lay.svg, replacing it")
    assert refused.status == "impossible"
    assert "replacing it" in refused.message
    assert replaced.status == "done"
    assert "140 cm" in words_in(Path("lay.svg"))


def test_none_of_several_is_written_when_one_is_there(here: Path) -> None:
    Path("lay-2.svg").write_text("my own", "utf-8")
    _, refused = talk(TWO_CLOTHS, "draw it to lay.svg")
    assert refused.status == "impossible"
    assert "end with: lay.svg, replacing it" in refused.message
    assert [one.name for one in here.iterdir()] == ["lay-2.svg"]


def test_a_drawing_not_kept_is_no_success_and_the_answer_is_still_told() -> None:
    made = ask(f"{LAY}, draw it to nowhere/lay.svg")
    assert made.status == "impossible"
    assert ask(LAY).headline in made.message
    assert "nowhere/lay.svg cannot be written" in made.message


@pytest.mark.parametrize(("lines", "words"), [
    (("draw it to lay.svg",), "no answer yet"),
    ((LAY, "draw it to lay.png"), "as SVG or as text"),
    ((LAY, "draw it"), "Name the file"),
    (("binding strips 2 1/2 in for a 60 x 72 in quilt", "draw it to strips.svg"), "no drawing of binding strips"),
])  # fmt: skip
def test_what_cannot_be_drawn_is_said_with_an_example(here: Path, lines: tuple[str, ...], words: str) -> None:
    made = talk(*lines)[-1]
    assert made.status == "unclear"
    assert words in made.message
    assert not [*here.iterdir()]


def test_a_text_file_holds_every_drawing() -> None:
    talk(TWO_CLOTHS, "draw it to lay.txt")
    text = Path("lay.txt").read_text("utf-8")
    assert text.startswith("main\n")
    assert "\n\nlining\n" in text


@pytest.mark.parametrize(("question", "shapes"), [
    ("how many blocks: quilt of 3 x 2 blocks of 10 in with 2 in sashing and a 4 in border", 2 + 6),
    ("quilt on point 3 across and 4 down of 9 in blocks", 1 + 12 + 6),
    ("two-panel tote 14 in wide, 15 in high and 4 in deep", 1),
])  # fmt: skip
def test_other_drawings_are_svg_too(question: str, shapes: int) -> None:
    made = ask(question)
    ((_, drawing),) = pictures_of(made)[:1]
    root = ET.fromstring(as_svg(drawing))
    assert len(list(root.iter(f"{SVG}polygon"))) == shapes


def test_each_mark_of_a_line_and_each_panel_of_a_backing_is_drawn() -> None:
    marks = ET.fromstring(as_svg(pictures_of(ask("7 buttons evenly along 60 cm"))[0][1]))
    assert len(list(marks.iter(f"{SVG}text"))) == 7
    backing = ET.fromstring(as_svg(pictures_of(ask("backing for a quilt 64 x 82 in, 40 in usable fabric"))[0][1]))
    assert [one.text for one in backing.iter(f"{SVG}text")][:2] == ["1", "2"]
    assert len(list(backing.iter(f"{SVG}line"))) == 1
