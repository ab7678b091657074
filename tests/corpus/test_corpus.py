"""Questions from many mouths with answers worked by hand: each file's score is printed, and held."""

from __future__ import annotations

import json
from pathlib import Path
from typing import Any

import pytest

from .judge import judge, replies

FILES = sorted(Path(__file__).parent.glob("*.jsonl"))
LEAST_RIGHT = 97.0


@pytest.mark.parametrize("path", FILES, ids=[path.stem for path in FILES])
def test_questions_are_answered_as_expected(path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    entries: list[dict[str, Any]] = [json.loads(line) for line in path.read_text("utf-8").splitlines() if line.strip()]
    judged = [(entry, turn, *judge(reply, turn)) for entry in entries for turn, reply in replies(entry)]
    right = sum(1 for *_, verdict, _ in judged if verdict == "right")
    bad = [
        f"{entry['id']}: {turn['ask']}\n   {verdict}: {why}"
        for entry, turn, verdict, why in judged
        if verdict != "right"
    ]
    score = 100 * right / len(judged)
    with capsys.disabled():
        print(f"\n{path.stem}: {right} of {len(judged)} right ({score:.1f} %)")
    assert score >= LEAST_RIGHT, "\n".join(bad)
    assert not [line for line in bad if "\n   wrong" in line or "\n   rash" in line], "\n".join(bad)
