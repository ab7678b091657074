"""Every rule there is: each module of each family's folder is read, and each Rule in it is one."""

from __future__ import annotations

import importlib
from functools import lru_cache
from pathlib import Path

from .engine.buying import with_buying
from .engine.declare import DeclarationError, Rule

_HERE = Path(__file__).parent
_NOT_FAMILIES = frozenset(("engine", "kept", "layplan", "__pycache__"))


def modules() -> tuple[str, ...]:
    """The dotted names of the rule modules, in order of family and file."""
    found = []
    for folder in sorted(path for path in _HERE.iterdir() if path.is_dir() and path.name not in _NOT_FAMILIES):
        found += [f"rules.{folder.name}.{path.stem}" for path in sorted(folder.glob("*.py")) if path.stem != "__init__"]
    return tuple(found)


@lru_cache(maxsize=1)
def all_rules() -> dict[str, Rule]:
    """Topic -> rule, buying added where a length is bought. Raises DeclarationError for a topic declared twice."""
    found: dict[str, Rule] = {}
    for name in modules():
        for value in vars(importlib.import_module(name)).values():
            if isinstance(value, Rule) and found.get(value.topic) is not value:
                if value.topic in found:
                    raise DeclarationError(f"{value.topic}: declared twice; give each rule a topic of its own")
                found[value.topic] = value
    return {topic: with_buying(rule) for topic, rule in found.items()}
