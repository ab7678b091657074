"""Everything the understanding knows, made from the rules once and kept as bytes: grammar, unit factors, lexicon."""

from __future__ import annotations

import hashlib
import pickle
import sys
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path

from grammar import Reader, Vocabulary
from grammar import build as build_tables
from rules import catalogue
from rules.engine import formula, units
from rules.engine.declare import Rule

from . import lexicon


def vocabulary() -> Vocabulary:
    """The units and currency signs, as the rules' registry spells them."""
    return Vocabulary(units.SPELLED, units.PREFIX_CURRENCIES)


class Mind:
    """The rules by topic, the lexicon of their words, and the grammar's reader."""

    def __init__(self, reader: Reader, words: lexicon.Lexicon, grammar_bytes: bytes, known: Mapping[str, Rule]) -> None:
        self.reader, self.lexicon = reader, words
        self._grammar_bytes = grammar_bytes
        self.rules = known

    @classmethod
    def awake(cls, saved: bytes | None) -> Mind:
        """From bytes kept earlier by `to_bytes`, or built afresh (some hundred times slower) when there are none."""
        if saved is not None:
            grammar_bytes, factors, words, known = pickle.loads(saved)
            units.use_factors(factors)
        else:
            grammar_bytes = build_tables(vocabulary())
            units.use_factors(units.pint_factors())
            words = lexicon.build(catalogue.all_rules())
            known = catalogue.index()
        reader = Reader.loaded(vocabulary(), grammar_bytes)
        formula.use_reader(reader.read_formula)
        return cls(reader, words, grammar_bytes, catalogue.Shelf(known))

    def to_bytes(self) -> bytes:
        """What `awake` takes. Only ever give it bytes from here: they are a pickle."""
        return pickle.dumps((self._grammar_bytes, units.pint_factors(), self.lexicon.shut(), catalogue.index()))

    @classmethod
    def key(cls) -> str:
        """A name for the saved bytes that changes with the program's own files and Python's version."""
        here = Path(__file__).parents[2]
        parts = [sys.version]
        for folder in ("grammar", "rules", "assistant/understand"):
            for path in sorted((here / folder).rglob("*")):
                if path.suffix in (".py", ".lark"):
                    stat = path.stat()
                    parts.append(f"{path}{stat.st_mtime_ns}{stat.st_size}")
        return hashlib.sha256("\n".join(parts).encode()).hexdigest()[:32]

    def _entries(self) -> Mapping[str, catalogue.Entry]:
        return self.rules.known if isinstance(self.rules, catalogue.Shelf) else {}

    def topics(self) -> tuple[str, ...]:
        return tuple(self.rules)

    @lru_cache(maxsize=16)  # noqa: B019 - one mind lives as long as the program
    def takers(self, kind: str) -> tuple[str, ...]:
        """The topics whose rules have an input of a kind, by the kind's name."""
        return tuple(topic for topic, entry in self._entries().items() if kind in entry.kinds)

    @lru_cache(maxsize=1)  # noqa: B019
    def lone(self) -> tuple[str, ...]:
        """The topics that answer a lone measure with a unit asked for."""
        return tuple(topic for topic, entry in self._entries().items() if entry.lone)

    @lru_cache(maxsize=64)  # noqa: B019
    def telling(self, kinds: frozenset[str]) -> tuple[str, ...]:
        """The topics that values of these kinds tell without a word."""
        return tuple(topic for topic, entry in self._entries().items() if any(told <= kinds for told in entry.tells))

    @lru_cache(maxsize=1)  # noqa: B019
    def paired(self) -> tuple[str, ...]:
        """The topics told by a length of cloth and its width."""
        return tuple(topic for topic, entry in self._entries().items() if entry.paired)

    def families(self) -> dict[str, tuple[str, ...]]:
        """Family -> its topics, in order."""
        found: dict[str, list[str]] = {}
        for topic, entry in self._entries().items():
            found.setdefault(entry.family, []).append(topic)
        return {family: tuple(topics) for family, topics in sorted(found.items())}

    def words(self) -> tuple[str, ...]:
        """Words worth completing: topics and the words people use for rules and inputs."""
        found: dict[str, None] = {}
        for rule in self.rules.values():
            for phrase in (
                rule.topic,
                *rule.says,
                *(label for item in rule.inputs for label in (item.label, *item.says)),
            ):
                found[phrase] = None
        return tuple(found)
