"""`from assistant import ask`: answers in Python, with pint quantities, and the saved tables behind them."""

from __future__ import annotations

import os
import subprocess
import sys
from pathlib import Path

import pytest

from assistant import ask
from assistant.saved import awake, keep
from assistant.understand.mind import Mind
from assistant.world import World

QUESTION = "how many 2 1/2 in binding strips for a 60 x 72 in quilt, 40 in usable width"


@pytest.fixture(autouse=True)
def own_cache(tmp_path_factory: pytest.TempPathFactory, monkeypatch: pytest.MonkeyPatch) -> Path:
    folder = tmp_path_factory.getbasetemp() / "cache"
    monkeypatch.setenv("ELLWAND_CACHE", str(folder))
    return folder


def test_an_answer_holds_value_unit_text_and_quantity() -> None:
    answer = ask(QUESTION)
    assert answer.status == "answered"
    assert answer.results[0].text == "7 strips"  # 2 x (60 + 72) + 10 = 274 in; 274 / 40 = 6.85
    cloth = next(result for result in answer.results if result.unit == "yd")
    assert cloth.quantity.to("in").magnitude == 18  # 7 x 2 1/2 = 17 1/2 in, up to the next 1/8 yd


@pytest.mark.parametrize("name", ["metric", "cm", "Metric"])
def test_units_choose_the_system(name: str) -> None:
    assert {result.unit for result in ask(QUESTION, name).results} >= {"m", "cm"}
    assert {result.unit for result in ask(QUESTION, "inches").results} >= {"yd", "in"}


def test_units_that_are_not_known_raise() -> None:
    with pytest.raises(ValueError, match='units "cubits" are not known: give "inches" or "metric"'):
        ask(QUESTION, "cubits")


@pytest.mark.parametrize("question", ["", "???", "xyzzy 5", "9" * 2000])
def test_what_cannot_be_answered_raises_nothing(question: str) -> None:
    assert ask(question).status in ("unclear", "incomplete", "impossible")


def test_questions_are_apart() -> None:
    assert ask(QUESTION).status == "answered"
    assert ask("and with 42 in usable?").status != "answered"


def test_importing_the_package_alone_is_light() -> None:
    code = "import sys, assistant; print(*sys.modules)"
    root = Path(__file__).resolve().parents[2]
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True, text=True, cwd=root).stdout
    assert not {"lark", "pint", "prompt_toolkit", "rules", "grammar"} & set(out.split())


def test_a_plain_answer_from_saved_tables_loads_nothing_heavy(own_cache: Path) -> None:
    ask(QUESTION)  # so that the tables are there
    code = f"import sys; from assistant.cli import main; from assistant.world import World; " \
           f"main([{QUESTION!r}], World.real()); print(*sys.modules)"  # fmt: skip
    root = Path(__file__).resolve().parents[2]
    out = subprocess.run([sys.executable, "-c", code], capture_output=True, check=True, text=True, cwd=root).stdout
    assert out.startswith("Cut 7 strips")
    assert not {"sympy", "prompt_toolkit", "argparse"} & set(out.splitlines()[-1].split())


def test_saved_tables_that_do_not_unpickle_are_built_anew(tmp_path: Path) -> None:
    world = World(sys.stdin, sys.stdout, sys.stderr, {**os.environ, "ELLWAND_CACHE": str(tmp_path)})
    path = tmp_path / f"{Mind.key()}.table"
    assert keep(path, b"no pickle at all")
    assert "binding strips" in awake(world).topics()
    assert path.stat().st_size > 1000
