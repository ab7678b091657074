"""Every rule there is: each module of each family's folder is read, and each Rule in it is one."""

from __future__ import annotations

import importlib
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from .engine.buying import with_buying
from .engine.declare import DeclarationError, Rule
from .engine.plan import FAMILY

_HERE = Path(__file__).parent
_NOT_FAMILIES = frozenset(("engine", "kept", "layplan", "__pycache__"))


def modules() -> tuple[str, ...]:
    """The dotted names of the rule modules, in order of family and file; plans last, as they hold the rules of the others too."""
    found = []
    folders = (path for path in _HERE.iterdir() if path.is_dir() and path.name not in _NOT_FAMILIES)
    for folder in sorted(folders, key=lambda path: (path.name == FAMILY, path.name)):
        found += [f"rules.{folder.name}.{path.stem}" for path in sorted(folder.glob("*.py")) if path.stem != "__init__"]
    return tuple(found)


@dataclass(frozen=True, slots=True)
class Entry:
    """Where a rule is declared, and what is worth knowing of it before it is loaded."""

    module: str
    family: str
    kinds: frozenset[str]
    lone: bool
    tells: tuple[frozenset[str], ...]
    paired: bool


@lru_cache(maxsize=256)
def declared_in(module: str) -> dict[str, Rule]:
    """Topic -> rule of one module, buying added where a length is bought."""
    found = {value.topic: value for value in vars(importlib.import_module(module)).values() if isinstance(value, Rule)}
    return {topic: with_buying(rule) for topic, rule in found.items()}


@lru_cache(maxsize=1)
def index() -> dict[str, Entry]:
    """Topic -> where it is declared; every module is loaded for it. Raises DeclarationError for a topic declared twice."""
    found: dict[str, Entry] = {}
    declared: dict[str, Rule] = {}
    for module in modules():
        for topic, value in vars(importlib.import_module(module)).items():
            if not isinstance(value, Rule) or declared.get(value.topic) is value:
                continue
            topic = value.topic
            if topic in declared:
                raise DeclarationError(f"{topic}: declared twice; give each rule a topic of its own")
            declared[topic] = value
            kinds = frozenset(item.kind.name for item in value.inputs)
            tells = tuple(frozenset(told) for told in value.told_by())
            found[topic] = Entry(module, value.family, kinds, value.lone, tells, bool(value.pairs))
    return found


class Shelf(Mapping[str, Rule]):
    """Topic -> rule, each module loaded when one of its rules is first wanted: a plain answer wants only a few."""

    def __init__(self, known: Mapping[str, Entry]) -> None:
        self.known = known

    def __getitem__(self, topic: str) -> Rule:
        return declared_in(self.known[topic].module)[topic]

    def __iter__(self) -> Iterator[str]:
        return iter(self.known)

    def __len__(self) -> int:
        return len(self.known)


@lru_cache(maxsize=1)
def all_rules() -> Mapping[str, Rule]:
    """Topic -> rule, of every rule there is."""
    return Shelf(index())
