"""The saved tables: kept for us alone, refused when anybody else could have written them."""

from __future__ import annotations

import os
import stat
import sys
from pathlib import Path

import pytest

from assistant.saved import SUM_BYTES, keep, read

ours_only = pytest.mark.skipif(sys.platform == "win32", reason="owners and modes are POSIX")


@pytest.fixture
def path(tmp_path: Path) -> Path:
    return tmp_path / "cache" / "ellwand" / "one.table"


def test_what_is_kept_is_read_back(path: Path) -> None:
    assert read(path) is None
    assert keep(path, b"tables")
    assert read(path) == b"tables"


@ours_only
def test_the_folder_and_file_are_for_this_user_alone(path: Path) -> None:
    keep(path, b"tables")
    assert stat.S_IMODE(path.parent.stat().st_mode) == 0o700
    assert stat.S_IMODE(path.stat().st_mode) == 0o600


@ours_only
@pytest.mark.parametrize("mode", [0o620, 0o602])
def test_a_file_others_may_write_is_refused(path: Path, mode: int) -> None:
    keep(path, b"tables")
    path.chmod(mode)
    assert read(path) is None


@ours_only
def test_a_folder_others_may_write_is_neither_read_nor_written(path: Path) -> None:
    keep(path, b"tables")
    path.parent.chmod(0o777)
    assert read(path) is None
    assert not keep(path, b"new")


@ours_only
def test_a_link_is_not_followed(path: Path, tmp_path: Path) -> None:
    keep(path, b"tables")
    linked = path.with_name("two.table")
    linked.symlink_to(path)
    assert read(linked) is None


@ours_only
def test_a_file_of_another_user_is_refused(path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    keep(path, b"tables")
    monkeypatch.setattr(os, "getuid", lambda: path.stat().st_uid + 1)
    assert read(path) is None


@pytest.mark.parametrize("damage", [b"", b"\0" * SUM_BYTES, b"short"])
def test_a_damaged_file_counts_as_none(path: Path, damage: bytes) -> None:
    keep(path, b"tables")
    path.write_bytes(damage)
    assert read(path) is None


def test_only_the_newest_key_stays_and_no_half_written_file(path: Path) -> None:
    keep(path, b"old")
    keep(path.with_name("two.table"), b"new")
    assert [file.name for file in path.parent.iterdir()] == ["two.table"]


def test_a_folder_that_cannot_be_made_is_no_trouble(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    assert not keep(tmp_path / "file" / "one.table", b"tables")
    assert read(tmp_path / "file" / "one.table") is None
