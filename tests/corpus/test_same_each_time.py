"""The same question has the same answer in every run, whatever order Python's sets have there."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

HERE = Path(__file__).parent


def test_answers_do_not_hang_on_the_order_of_sets(tmp_path: Path) -> None:
    asked = []
    for path in sorted(HERE.glob("*.jsonl")):
        entries = [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines()]
        asked += [entry["ask"].replace("\n", " ") for entry in entries if "ask" in entry]
    one, other = (_answers(asked, seed, tmp_path) for seed in ("1", "2"))
    assert [pair for pair in zip(asked, one, other, strict=True) if pair[1] != pair[2]] == []


def _answers(asked: list[str], seed: str, folder: Path) -> list[str]:
    run = subprocess.run(
        [sys.executable, "-m", "assistant", "--json", "--no-notebook"], input="\n".join(asked) + "\n", capture_output=True, text=True,
        check=False, cwd=HERE.parents[1], env={**os.environ, "PYTHONHASHSEED": seed, "ELLWAND_CACHE": str(folder / seed)},
    )  # fmt: skip
    return run.stdout.splitlines()
