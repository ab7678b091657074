"""Readers for inputs that are lists or tables rather than one number; each says which values it took."""

from __future__ import annotations

from collections.abc import Callable

from rules.engine.declare import Input
from rules.engine.request import Given

from .lexicon import Match
from .values import Line, Value

Reader = Callable[[Input, Line, list[Value], list[Match]], tuple[Given | None, frozenset[int]]]

READERS: dict[str, Reader] = {}
