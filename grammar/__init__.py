"""Text in, chunks out: numbers, measures and words as people type them. Knows no trade sum, keeps no file."""

from grammar.errors import FormulaError, GrammarError, TooDeep, TooLong
from grammar.reader import Reader, read, read_formula, read_sum
from grammar.sums import Leaf, Sum, SumNode
from grammar.table import build, key, load
from grammar.vocabulary import Vocabulary

__all__ = [
    "FormulaError",
    "GrammarError",
    "Leaf",
    "Reader",
    "Sum",
    "SumNode",
    "TooDeep",
    "TooLong",
    "Vocabulary",
    "build",
    "key",
    "load",
    "read",
    "read_formula",
    "read_sum",
]
