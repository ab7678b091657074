"""The trade's general cautions: when each applies, what it says, and its source. Never instead of the answer."""

from __future__ import annotations

from .engine.declare import Caution

GENERAL: tuple[Caution, ...] = ()
