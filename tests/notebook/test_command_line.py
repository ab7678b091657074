"""The notebook through the command: in a pipe, with --json, the default file, and no file at all."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]


@pytest.fixture(scope="module")
def cache(tmp_path_factory: pytest.TempPathFactory) -> Path:
    return tmp_path_factory.mktemp("cache")


def ellwand(cache: Path, data: Path, *arguments: str, lines: str = "") -> subprocess.CompletedProcess[str]:
    outside = {**os.environ, "ELLWAND_CACHE": str(cache), "ELLWAND_DATA": str(data), "COLUMNS": "100"}
    command = [sys.executable, "-m", "assistant", *arguments]
    return subprocess.run(command, input=lines, capture_output=True, text=True, cwd=ROOT, env=outside, check=False)


def test_a_pipe_of_sentences_and_questions(cache: Path, tmp_path: Path) -> None:
    lines = "my waist is 66 cm\nstart project harbour tote\nelastic for my waist\nkeep that\nwhat is my waist?\n"
    done = ellwand(cache, tmp_path, "--json", lines=lines)
    made = [json.loads(line) for line in done.stdout.splitlines()]
    assert [one["status"] for one in made] == ["done", "done", "answered", "done", "answered"]
    assert made[0]["topic"] == "notebook"
    assert made[0]["notes"] == ["Kept: your waist 66 cm."]
    assert made[2]["given"][0]["why"] == "your waist, from the notebook"
    assert made[4]["results"][0]["value"] == 66
    assert done.returncode == 0
    assert done.stderr == ""


def test_the_usual_file_outlives_the_program(cache: Path, tmp_path: Path) -> None:
    assert ellwand(cache, tmp_path, "my", "waist", "is", "66", "cm").stdout == "Kept: your waist 66 cm.\n"
    assert (tmp_path / "notebook.db").stat().st_mode & 0o777 == 0o600
    assert ellwand(cache, tmp_path, "what is my waist?").stdout == "Your waist: 66 cm.\n"
    assert ellwand(cache, tmp_path, "--no-notebook", "--brief", "elastic for my waist").returncode == 1
    assert ellwand(cache, tmp_path, "--notebook", str(tmp_path / "other.db"), "what is my waist?").returncode == 1


def test_a_trouble_with_the_file_is_no_traceback(cache: Path, tmp_path: Path) -> None:
    (tmp_path / "notebook.db").write_text("no notebook")
    done = ellwand(cache, tmp_path, "--json", "my waist is 66 cm")
    made = json.loads(done.stdout)
    assert made["status"] == "impossible"
    assert "is not a notebook of mine" in made["reason"]
    assert (done.returncode, done.stderr) == (1, "")


def test_a_plain_question_without_a_notebook_does_not_load_sqlite(cache: Path, tmp_path: Path) -> None:
    code = (
        "import sys; from assistant.__main__ import run;"
        "sys.argv = ['ellwand', 'elastic 1 in wide for a 28 in waist']; run();"
        "print([name for name in sys.modules if 'notebook' in name or name == 'sqlite3'], file=sys.stderr)"
    )
    outside = {**os.environ, "ELLWAND_CACHE": str(cache), "ELLWAND_DATA": str(tmp_path)}
    done = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, cwd=ROOT, env=outside, check=False
    )
    assert done.stdout.startswith("Cut the elastic")
    assert "sqlite3" not in done.stderr
    assert "assistant.notebook.store" not in done.stderr
    assert list(tmp_path.iterdir()) == []
