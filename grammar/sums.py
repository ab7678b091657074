"""Sums of measures, such as (2 m - 35 cm) * 3, read into the nodes of a formula with measures for leaves."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction
from typing import cast

from lark import Lark, Token, Tree, UnexpectedInput

from grammar.door import enter
from grammar.errors import TooDeep
from grammar.formula import Binary, Negate, Node
from grammar.query import Measure, Part
from grammar.runs import Line, add_measure, quantity
from grammar.values import spelled
from grammar.vocabulary import Vocabulary
from grammar.words import Typed

DEEPEST = 50
_LEAD = re.compile(r"\s*(?:(?:what(?:'s| is| are)|how (?:much|many|long) (?:is|are)|work out|add up|add)\s+)?")
_ASKED = re.compile(r"(.*)\s(?:in|into|as)\s+([a-z][a-z /²2]*)$", re.DOTALL)
_WORD = re.compile(r"[a-z]+")
_ROOM = "plus minus less take away times x multiplied divided by of twice double half halves an and one two three five"
_ROOM += " four six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen"
_ROOM += " twenty thirty forty fifty sixty seventy eighty ninety hundred thousand dozen third thirds quarter quarters"
_ROOM += " off as into fifth fifths sixth sixths eighth eighths tenth tenths sixteenth sixteenths a the"


@dataclass(frozen=True, slots=True)
class Leaf:
    """A measure in a sum."""

    measure: Measure


# The nodes are a formula's: Binary with + - * / ("half of" is a half times, "20% of" is 20% times), Negate, and leaves.
SumNode = Leaf | Negate | Binary


@dataclass(frozen=True, slots=True)
class Sum:
    """A sum as typed. asked_unit: the canonical unit of a trailing "in cm", or "" when none was asked for."""

    tree: SumNode
    asked_unit: str


_OPERATIONS = {"+": "+", "plus": "+", "-": "-", "minus": "-", "less": "-", "take away": "-"}
_OPERATIONS |= {"x": "*", "*": "*", "times": "*", "multiplied by": "*", "/": "/", "divided by": "/", "of": "*"}


class SumReader:
    """Tells sums from other lines, mostly by one look at the words, and reads them. words: all that a sum may hold."""

    def __init__(self, vocabulary: Vocabulary) -> None:
        self.vocabulary = vocabulary
        self.words = frozenset(_ROOM.split()) | {word for unit in vocabulary.units for word in _WORD.findall(unit)}

    def read(self, text: str, parser: Callable[[], Lark]) -> Sum | TooDeep | None:
        """The sum that is the whole of a text; None for any other text; TooDeep (returned) for one nested too deep."""
        plain, origin = enter(text)
        begins = _LEAD.match(plain).end()  # type: ignore[union-attr]
        ends = max(begins, len(plain.rstrip(" \n?=.")))
        if any(word not in self.words for word in _WORD.findall(plain, begins, ends)):
            return None
        unit = ""
        asked = _ASKED.match(plain[:ends])
        if asked and asked.group(2) in self.vocabulary.units:
            unit, ends = self.vocabulary.units[asked.group(2)], len(asked.group(1).rstrip(" ,;"))
        if (deep := _too_deep(plain, begins, ends)) is not None:
            return TooDeep(deep, DEEPEST)
        # Blanks instead of a cut keep every position true.
        only = (" " * begins + plain[begins:ends]).rstrip()
        line = Line(Typed(text, origin), plain, self.vocabulary)
        try:
            tree = _node(line, parser().parse(only), 1)
        except UnexpectedInput:
            return None
        except TooDeep as deep_sum:
            return deep_sum
        alone = tree.of if isinstance(tree, Negate) else tree
        return None if tree is None or isinstance(alone, Leaf) else Sum(tree, unit)


def _too_deep(plain: str, begins: int, ends: int) -> int | None:
    """Where brackets nest more deeply than is read, if they do."""
    depth = 0
    for position in range(begins, ends):
        if plain[position] == "(":
            depth += 1
            if depth > DEEPEST:
                return position
        elif plain[position] == ")":
            depth -= 1
    return None


def _node(line: Line, branch: Tree[Token], depth: int) -> SumNode | None:
    """The node for a branch of the parse, or None when a part of it is no measure after all."""
    if depth > 4 * DEEPEST:
        raise TooDeep(0, DEEPEST)
    parts = branch.children
    if branch.data == "measure":
        return _leaf(line, parts)  # type: ignore[arg-type]
    last = _node(line, parts[-1], depth + 1)  # type: ignore[arg-type]
    if last is None:
        return None
    if branch.data == "negate":
        return Negate(cast(Node, last))
    if branch.data == "share":
        return _binary("*", _share(line, parts[0]), last)  # type: ignore[arg-type]
    left = _node(line, parts[0], depth + 1)  # type: ignore[arg-type]
    if branch.data == "off":  # "20 % off 45 in": what it is off, less that share of it
        return left and _binary("-", last, _binary("*", left, last))
    return left and _binary(_OPERATIONS[" ".join(str(parts[1]).split())], left, last)


def _binary(op: str, left: SumNode, right: SumNode) -> Binary:
    """A formula's node over measures; its fields are typed for formulas, whose leaves are numbers and names."""
    return Binary(op, cast(Node, left), cast(Node, right))


def _leaf(line: Line, quantities: list[Tree[Token]]) -> Leaf | None:
    done: list[Measure] = []
    for each in quantities:
        found = quantity(line, each, widths=False)
        if not isinstance(found, Measure) or len(each.children) > 2:
            return None
        add_measure(line, done, found)  # type: ignore[arg-type]
    return Leaf(done[0]) if len(done) == 1 else None


def _share(line: Line, token: Token) -> Leaf:
    word = token.rstrip()
    value = Fraction(2) if word in ("twice", "double") else spelled(word)
    start = token.start_pos or 0
    return Leaf(Measure((Part(value, ""),), *line.typed.span(start, start + len(word)), spelled=True))
