"""The examples in docstrings are true."""

from __future__ import annotations

import doctest
import importlib
from pathlib import Path

import pytest

ROOT = Path(__file__).parents[2]
WITH_EXAMPLES = sorted(
    ".".join(path.relative_to(ROOT).with_suffix("").parts).removesuffix(".__init__")
    for package in ("assistant", "grammar", "rules")
    for path in (ROOT / package).rglob("*.py")
    if ">>> " in path.read_text("utf-8")
)


@pytest.mark.parametrize("module", WITH_EXAMPLES)
def test_the_examples_of_a_module_are_true(module: str) -> None:
    failed, tried = doctest.testmod(importlib.import_module(module))
    assert tried and not failed
