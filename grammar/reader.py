"""Reading: a line into a query, a sum or a formula into a tree, with tables built here or kept from before."""

from __future__ import annotations

from functools import lru_cache

from lark import Lark, Token

from grammar import formulas, sums, table
from grammar.door import enter
from grammar.errors import TooDeep, TooLong
from grammar.formula import Node
from grammar.joins import joined
from grammar.query import Chunk, Query
from grammar.runs import Line, elements
from grammar.vocabulary import Vocabulary
from grammar.words import Typed

LONGEST_LINE = 20_000
_LINES, _SUMS, _FORMULAS = range(3)  # the order of the tables


class Reader:
    """Reads text by one vocabulary. Each of its parse tables is opened when first wanted."""

    def __init__(self, vocabulary: Vocabulary, tables: list[bytes]) -> None:
        self.vocabulary = vocabulary
        self._tables = tables
        self._parsers: dict[int, Lark] = {}
        self._sums: sums.SumReader | None = None

    @classmethod
    def built(cls, vocabulary: Vocabulary) -> Reader:
        """A reader whose tables are built now, which takes some tenths of a second."""
        return cls.loaded(vocabulary, table.build(vocabulary))

    @classmethod
    def loaded(cls, vocabulary: Vocabulary, data: bytes) -> Reader:
        """A reader from the bytes that table.build() made for this same vocabulary."""
        return cls(vocabulary, table.load(data))

    def _parser(self, which: int) -> Lark:
        parser = self._parsers.get(which)
        if parser is None:
            parser = self._parsers[which] = table.open_table(self._tables[which])
        return parser

    def read(self, text: str) -> Query:
        """The chunks of a line, in the order typed. Reads any text; raises TooLong beyond LONGEST_LINE characters."""
        _refuse_long(text)
        plain, origin = enter(text)
        line = Line(Typed(text, origin), plain, self.vocabulary)
        chunks: list[Chunk] = []
        for branch in self._parser(_LINES).parse(plain).children:
            if isinstance(branch, Token):
                start = branch.start_pos or 0
                chunks += line.words(start, start + len(branch))
            else:
                chunks += joined(line, elements(line, branch))
        return Query(text, tuple(chunks))

    def read_sum(self, text: str) -> sums.Sum | TooDeep | None:
        """A sum of measures with nothing else in the line, else None; TooDeep is returned for one nested too deep."""
        if len(text) > LONGEST_LINE:
            return None
        return self._sum_reader().read(text, lambda: self._parser(_SUMS))

    def sum_words(self) -> frozenset[str]:
        """Every word that a sum may hold: a line with another is none."""
        return self._sum_reader().words

    def _sum_reader(self) -> sums.SumReader:
        if self._sums is None:
            self._sums = sums.SumReader(self.vocabulary)
        return self._sums

    def read_formula(self, text: str) -> Node:
        """A rule's formula. Raises FormulaError."""
        return formulas.read(text, self._parser(_FORMULAS))


def _refuse_long(text: str) -> None:
    if len(text) > LONGEST_LINE:
        raise TooLong(len(text), LONGEST_LINE)


@lru_cache(maxsize=4)
def _reader(vocabulary: Vocabulary) -> Reader:
    return Reader.built(vocabulary)


@lru_cache(maxsize=1)
def _formula_parser() -> Lark:
    return table.formula_parser()


def read(text: str, vocabulary: Vocabulary) -> Query:
    """As Reader.read, by a reader built once for each vocabulary."""
    return _reader(vocabulary).read(text)


def read_sum(text: str, vocabulary: Vocabulary) -> sums.Sum | TooDeep | None:
    """As Reader.read_sum, by a reader built once for each vocabulary."""
    return _reader(vocabulary).read_sum(text)


def read_formula(text: str) -> Node:
    """As Reader.read_formula; formulas need no vocabulary."""
    return formulas.read(text, _formula_parser())
