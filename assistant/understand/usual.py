"""Usual values: what the maker takes for an input when a question does not say."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

from rules.engine.declare import Input, Rule
from rules.engine.request import Given

from .tokens import tokens


@dataclass(frozen=True, slots=True)
class Usual:
    """A usual value. name: what it is of, in words; kind: the name of the kind it has."""

    name: str
    kind: str
    value: Given


def usual_values(rule: Rule, known: Iterable[Usual]) -> Mapping[str, Given]:
    """Input name -> the usual value for it, for the inputs that are called as a usual value is."""
    return {
        item.name: one.value
        for one in known
        for item in rule.inputs
        if item.kind.name == one.kind and is_called(item, one.name)
    }


def is_called(item: Input, name: str) -> bool:
    """Whether an input goes by a name: its label holds all the words of it, or it is one of the words people use."""
    words = tokens(name)
    return bool(words) and (
        set(words) <= set(tokens(item.label)) or any(tokens(phrase) == words for phrase in item.says)
    )
