"""Formulas as text, read into a small tree: `ceil((edge + joins) / usable) * strip`.

The tree has five kinds of node and no meaning of its own: the rules engine evaluates it, shows it and turns it round.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Number:
    """A number without a unit. Constants with units are inputs with a default, never literals."""

    value: Fraction


@dataclass(frozen=True, slots=True)
class Name:
    """An input or an earlier step, by its name in the rule."""

    name: str


@dataclass(frozen=True, slots=True)
class Negate:
    of: Node


@dataclass(frozen=True, slots=True)
class Binary:
    """left op right; op is one of + - * / ^ and, for conditions in if(), < <= > >= = !=."""

    op: str
    left: Node
    right: Node


@dataclass(frozen=True, slots=True)
class Call:
    """name(args...); which names mean something is for the engine to say."""

    name: str
    args: tuple[Node, ...]


Node = Number | Name | Negate | Binary | Call
