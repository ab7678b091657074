"""Imports go one way, and a plain answer loads nothing heavy."""

from __future__ import annotations

import ast
import os
import subprocess
import sys
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
MAY = {"grammar": {"grammar", "lark"}, "rules": {"rules", "grammar", "pint", "sympy"}}
NEVER_IN_RULES = {"open", "print", "input"}


def imported(path: Path) -> set[str]:
    """The top-level packages a module imports from elsewhere."""
    found = set()
    for node in ast.walk(ast.parse(path.read_text("utf-8"))):
        if isinstance(node, ast.Import):
            found |= {name.name.partition(".")[0] for name in node.names}
        elif isinstance(node, ast.ImportFrom) and node.level == 0:
            found.add((node.module or "").partition(".")[0])
    return found


@pytest.mark.parametrize("folder", list(MAY))
def test_a_folder_imports_only_what_it_may(folder: str) -> None:
    wrong = {}
    for path in (ROOT / folder).rglob("*.py"):
        extra = imported(path) - MAY[folder] - set(sys.stdlib_module_names)
        if extra:
            wrong[str(path.relative_to(ROOT))] = extra
    assert not wrong


@pytest.mark.parametrize("folder", list(MAY))
def test_there_is_no_printing_no_clock_and_no_user_io(folder: str) -> None:
    for path in (ROOT / folder).rglob("*.py"):
        text = path.read_text("utf-8")
        calls = {
            node.func.id
            for node in ast.walk(ast.parse(text))
            if isinstance(node, ast.Call) and isinstance(node.func, ast.Name)
        }
        assert not calls & NEVER_IN_RULES, path
        assert not imported(path) & {"time", "datetime", "os", "socket", "subprocess", "sqlite3"}, path


def test_a_plain_answer_loads_nothing_heavy(tmp_path: Path) -> None:
    code = (
        "import sys; from assistant.__main__ import run; sys.argv = ['ellwand', 'binding strips for a 60 x 72 in quilt'];"
        "status = run(); print(sorted(m for m in ('sympy', 'prompt_toolkit', 'pint') if m in sys.modules), file=sys.stderr)"
    )
    outside = {**os.environ, "ELLWAND_CACHE": str(tmp_path / "cache")}
    for _ in range(2):  # the first run builds and keeps the tables, the second loads them
        done = subprocess.run(
            [sys.executable, "-c", code], capture_output=True, text=True, cwd=ROOT, env=outside, check=False
        )
    assert done.stdout.startswith("Cut 7 strips")
    assert done.stderr.strip() == "[]"
