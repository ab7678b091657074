"""Plans through the command line and the notebook: one line in a pipe, JSON, a file, a project and its lists."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

from assistant.conversation import Conversation
from assistant.notebook import Notebook
from tests.support import mind

ROOT = Path(__file__).parents[2]
POUCH = "plan a zipped pouch 9 in wide and 6 in high, lined, cloth $12/yd, lining $6/yd"


def run(home: Path, *words: str, typed: str = "") -> subprocess.CompletedProcess[str]:
    outside = {**os.environ, "ELLWAND_CACHE": str(home / "cache"), "XDG_DATA_HOME": str(home), "COLUMNS": "80"}
    code = "import sys; from assistant.__main__ import run; sys.exit(run())"
    return subprocess.run(
        [sys.executable, "-c", code, *words],
        input=typed,
        capture_output=True,
        text=True,
        cwd=ROOT,
        env=outside,
        check=False,
    )


def test_a_plan_in_a_pipe_and_as_json(tmp_path: Path) -> None:
    told = run(tmp_path, "--no-notebook", POUCH)
    assert told.returncode == 0 and told.stdout.startswith(
        "Buy 1/4 yd (0.2 m) of outer cloth, 1/4 yd (0.2 m) of lining and a zip 8 in"
    )
    assert not set(told.stdout) & set("┌┐└┘─│")
    made = json.loads(run(tmp_path, "--no-notebook", "--json", POUCH).stdout)
    assert made["status"] == "answered" and made["results"][0]["text"] == "1/4 yd"
    assert [one["title"] for one in made["parts"]][:2] == ["Pouch", "Lining panels"]
    assert all({"given", "results", "working", "text"} <= one.keys() for one in made["parts"])
    assert (
        any("drawing" in one for one in made["parts"]) and made["order"] and made["cut"]["rows"][0][:2] == ["panel", 2]
    )


def test_a_plan_and_its_changes_in_one_pipe(tmp_path: Path) -> None:
    lines = f"{POUCH}\nmake it 2 in higher\nwhy the zip?\n"
    told = run(tmp_path, "--no-notebook", "--together", "--brief", typed=lines)
    assert told.returncode == 0 and len(told.stdout.splitlines()) == 3, told.stdout + told.stderr
    assert told.stdout.splitlines()[2] == "8 in"


def test_a_plan_is_kept_as_a_project_with_its_lists(tmp_path: Path) -> None:
    """Two panels of 10 x 7 in side by side take 7 in, so 1/4 yd: at $12 and $6 a yard $3.00 and $1.50."""
    kept = Conversation(mind(), notebook=Notebook(tmp_path / "notebook.db"))
    assert kept.ask(POUCH).status == "answered"
    assert kept.ask("keep that as harbour pouch").headline.startswith("Kept for harbour pouch: Buy 1/4 yd")
    listed = kept.ask("shopping list")
    assert listed.table is not None
    assert [row[:2] for row in listed.table.texts] == [
        ("1/4 yd", "outer cloth"),
        ("1/4 yd", "lining"),
        ("1", "8 in zip"),
    ]
    assert "In all $4.50." in listed.headline
    cut = kept.ask("cut list")
    assert cut.table is not None and ("2 of 10 in × 7 in", "panel, from outer cloth") in [
        row[:2] for row in cut.table.texts
    ]


def test_a_plan_is_written_to_a_file(tmp_path: Path) -> None:
    kept = Conversation(mind(), notebook=Notebook(tmp_path / "notebook.db"))
    kept.ask(POUCH)
    assert kept.ask(f"as Markdown to {tmp_path / 'plan.md'}").status == "done"
    assert (tmp_path / "plan.md").read_text("utf-8").startswith("# Zipped pouch plan\n")
    kept.ask(POUCH)
    assert kept.ask(f"save the plan to {tmp_path / 'plan.md'}").status == "impossible"  # what is there is left
