"""Files written by name: whole, never over what is there unless that was said, and trouble told in words."""

from __future__ import annotations

from pathlib import Path

import pytest

from assistant.files import named, write


@pytest.mark.parametrize("said", ["lay.svg", '"lay.svg"', "'lay.svg'", "“lay.svg”"])
def test_a_name_may_stand_in_quotes(said: str) -> None:
    assert named(said) == (Path("lay.svg"), False)


@pytest.mark.parametrize("ending", [", replacing it", " replacing it", " and replace it", ", Overwriting it"])
def test_replacing_is_said_at_the_end(ending: str) -> None:
    assert named(f"my lay.svg{ending}") == (Path("my lay.svg"), True)


def test_a_home_that_is_not_there_is_a_plain_name() -> None:
    assert named("~nobody-of-that-name/lay.svg")[0] == Path("~nobody-of-that-name/lay.svg")


def test_what_is_there_stays_unless_it_may_go(tmp_path: Path) -> None:
    path = tmp_path / "lay.svg"
    assert write(path, "first") == ""
    assert "replacing it" in write(path, "second")
    assert path.read_text("utf-8") == "first"
    assert write(path, "second", replacing=True) == ""
    assert path.read_text("utf-8") == "second"
    assert [one.name for one in tmp_path.iterdir()] == ["lay.svg"]


@pytest.mark.parametrize("name", ["nowhere/lay.svg", "n" * 300 + ".svg", "a\0b.svg", "plain.txt/lay.svg"])
def test_a_file_that_cannot_be_is_told_in_words(tmp_path: Path, name: str) -> None:
    (tmp_path / "plain.txt").write_text("", "utf-8")
    assert "cannot be written" in write(tmp_path / name, "text")


def test_a_folder_is_not_replaced(tmp_path: Path) -> None:
    assert "cannot be written" in write(tmp_path, "text", replacing=True)
    assert [*tmp_path.iterdir()] == []
    assert not [one for one in tmp_path.parent.iterdir() if one.name.startswith(f"{tmp_path.name}.")]
