"""Answers for Python: what `from assistant import ask` does."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from .conversation import Conversation
from .options import SYSTEMS
from .saved import awake
from .understand.build import Habits
from .world import World

if TYPE_CHECKING:
    from rules.engine.answer import Answer

    from .understand.mind import Mind


@lru_cache(maxsize=1)
def _mind() -> Mind:
    return awake(World.real())


def ask(question: str, units: str | None = None) -> Answer:
    """Answer one question by itself. Raises ValueError for units that are not known."""
    if units is not None and units.lower() not in SYSTEMS:
        raise ValueError(f'units "{units}" are not known: give "inches" or "metric"')
    habits = Habits(forced=SYSTEMS[units.lower()] if units else "")
    return Conversation(_mind(), habits=habits).ask(question)
