"""Text in, chunks out: numbers, measures and words as people type them. Knows no trade sum and does no I/O of its own."""

from grammar.errors import FormulaError, TooDeep, TooLong
from grammar.reader import Reader, read, read_formula, read_sum
from grammar.sums import Sum
from grammar.table import build, key
from grammar.vocabulary import Vocabulary

__all__ = ["FormulaError", "Reader", "Sum", "TooDeep", "TooLong", "Vocabulary", "build", "key", "read", "read_formula", "read_sum"]
