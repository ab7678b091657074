"""Published rows put to the rules: each row is checked by a mapping, or listed with the reason why it cannot be.

A mapping module (map_*.py) holds FILE (the data file's name), CHECKS: row topic -> a function of the row that gives what
the rule says (a number in the row's unit, a word, or None when this mapping does not know the row), and LISTED.
"""

from __future__ import annotations

import csv
import importlib
import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

HERE = Path(__file__).parent


@dataclass(frozen=True)
class Row:
    """One published check. inputs: name -> text, as the file has them; source and status tell its weight."""

    id: str
    topic: str
    inputs: dict[str, str]
    expected: str
    unit: str
    tolerance: str
    source: str
    publisher: str
    year: str
    status: str

    def get(self, name: str, otherwise: str = "") -> str:
        return self.inputs.get(name, otherwise)


@dataclass(frozen=True)
class Listed:
    """Rows that are no check of this program: which (a test of a row), how many, and why."""

    why: str
    count: int
    which: Callable[[Row], bool]


Check = Callable[[Row], "float | int | str | None"]


@lru_cache(maxsize=8)
def load(name: str) -> tuple[Row, ...]:
    """Every row of a data file."""
    with (HERE / "data" / f"{name}.csv").open(encoding="utf-8", newline="") as lines:
        return tuple(_row(entry) for entry in csv.DictReader(lines))


def _row(entry: dict[str, str]) -> Row:
    parts = [part.partition("=") for part in entry["inputs"].split(";") if part.strip()]
    inputs = {
        name.strip(): value.strip() for name, _, value in parts
    }  # a bare condition ("hip under 36 in") has no value
    fields = {key: (entry[key] or "").strip() for key in entry if key != "inputs"}
    return Row(inputs=inputs, **fields)


@lru_cache(maxsize=1)
def mappings() -> tuple[object, ...]:
    """Every mapping module there is."""
    return tuple(importlib.import_module(f"tests.published.{path.stem}") for path in sorted(HERE.glob("map_*.py")))


def of_file(name: str) -> Iterable[object]:
    return (mapping for mapping in mappings() if name == mapping.FILE)  # type: ignore[attr-defined]


def said(row: Row, name: str) -> float | int | str | None:
    """What the rules say for a row: the first mapping that knows it, else None."""
    for mapping in of_file(name):
        check = mapping.CHECKS.get(row.topic)  # type: ignore[attr-defined]
        if check is not None:
            value = check(row)
            if value is not None:
                return value
    return None


def listings(name: str) -> list[Listed]:
    return [listed for mapping in of_file(name) for listed in mapping.LISTED]  # type: ignore[attr-defined]


def tolerance(row: Row) -> float:
    """The row's tolerance as a number: "0.5 in" is 0.5, "exact" is nought, "+-15%" is of the value."""
    percent = re.search(r"([\d.]+)\s*%", row.tolerance)
    number = re.search(r"\d*\.?\d+", row.tolerance)
    if percent:
        return float(percent.group(1)) / 100 * float(re.findall(r"\d*\.?\d+", row.expected)[0])
    return float(number.group()) if number else 0.0


def agrees(row: Row, value: float | int | str) -> bool:
    """Whether a value is the one the row expects, a number within its tolerance, a range from end to end."""
    if isinstance(value, str):
        return value.strip().lower() == row.expected.strip().lower()
    slack = tolerance(row) + 1e-9 + 1e-7 * abs(value)
    limit = re.fullmatch(r"(<=|>=|<|>)\s*(-?\d*\.?\d+)", row.expected)
    if limit:
        end = float(limit.group(2))
        return {"<=": value <= end + slack, ">=": value >= end - slack, "<": value < end, ">": value > end}[
            limit.group(1)
        ]
    ends = re.fullmatch(r"(-?\d*\.?\d+)\s*(?:\.\.|-|to)\s*(\d*\.?\d+)", row.expected)
    if ends:
        return float(ends.group(1)) - slack <= value <= float(ends.group(2)) + slack
    return abs(value - float(row.expected)) <= slack
