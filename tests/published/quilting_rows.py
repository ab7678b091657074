"""What the quilting mappings share: numbers out of a row's text, and rules worked from them."""

from __future__ import annotations

import math
import re
from typing import Any

from rules.engine.answer import Answer
from tests.support import exact, rounded, work

from .harness import Row

SEAM = "0.25 in"


def numbers(text: str) -> list[float]:
    """Every number in a text, in order."""
    return [float(found) for found in re.findall(r"\d+\.?\d*", text)]


def sides(text: str, unit: str = "in") -> list[str]:
    """The sides of "60 in x 80 in" as typed values."""
    return [f"{number:g} {unit}" for number in numbers(text)]


def seam(row: Row) -> str:
    return row.get("seam", SEAM)


def up(value: float, step: float) -> float:
    """A value up to the next multiple of a step, as the row's own source rounds."""
    return math.ceil(value / step - 1e-9) * step


def near(value: float, step: float) -> float:
    return math.floor(value / step + 0.5) * step


def found(made: Answer, key: str = "", unit: str = "") -> float:
    return exact(made, key, unit)


def cut(made: Answer, key: str = "", unit: str = "") -> float:
    return rounded(made, key, unit)


def solved(topic: str, unknown: str, stated: dict[str, Any], **inputs: Any) -> float:
    """An unknown worked backwards, before it is rounded."""
    return exact(work(topic, asked=unknown, stated=stated, **inputs))
