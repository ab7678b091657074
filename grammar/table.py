"""The grammar's parse tables: built from the .lark files and a vocabulary, or loaded from bytes built before.

Building takes some tens of times as long as loading, so whoever starts the program often keeps the bytes. Where they
are kept is not the grammar's affair: it hands bytes out and takes them back.
"""

from __future__ import annotations

import hashlib
import io
import pickle
import re
import sys
from pathlib import Path
from typing import Any

import lark
from lark import Lark

from grammar.vocabulary import Vocabulary, heads_pattern, units_pattern

_HERE = Path(__file__).parent
_FILES = ("numbers", "measures", "question", "sums", "formula")

# Names that keep their own spelling when imported; any other would be given its file's name in front.
_NUMBERS = "ORDINAL MIXED FRACTION RATIO COMMA_DECIMAL GROUPED DECIMAL INTEGER MONEY_DECIMAL SPELLED DICTATED PORTION_OF AN"
_MEASURES = f"quantity digits UNIT CURRENCY {_NUMBERS}"
_KEPT_NAMES = {
    "question": f"line run rate more loose TEXT RATE JOINT BEFORE AND_PART {_MEASURES}",
    "sums": f"sum binary share negate off measure PLUS MINUS TIMES OF OFF SHARE {_MEASURES}",
}
_STARTS = {"question": "line", "sums": "sum"}
_IGNORED = {"question": "", "sums": "%ignore /[ \\t]+/\n"}


def key(vocabulary: Vocabulary) -> str:
    """A name for the tables that changes whenever they would: with the grammar, the vocabulary or a version."""
    parts = [lark.__version__, sys.version, vocabulary_terminals(vocabulary), repr((_KEPT_NAMES, _STARTS, _IGNORED))]
    parts += [(_HERE / f"{name}.lark").read_text("utf-8") for name in _FILES]
    return hashlib.sha256("\0".join(parts).encode()).hexdigest()


def build(vocabulary: Vocabulary) -> bytes:
    """The three tables for a vocabulary, as bytes for load()."""
    return pickle.dumps([_saved(parser) for parser in parsers(vocabulary)])


def load(data: bytes) -> list[bytes]:
    """The tables of lines, sums and formulas, each still as bytes, so that only the one in use need be opened."""
    tables: list[bytes] = pickle.loads(data)
    return tables


def open_table(table: bytes) -> Lark:
    """A parser from its table. Only ever give it bytes that build() made: they are a pickle."""
    return Lark.load(io.BytesIO(table))


def parsers(vocabulary: Vocabulary, strict: bool = False) -> tuple[Lark, Lark, Lark]:
    """Build all three. strict: fail on any conflict or collision of terminals instead of settling it silently."""
    return (_built("question", vocabulary, strict), _built("sums", vocabulary, strict), formula_parser(strict))


def formula_parser(strict: bool = False) -> Lark:
    """Build the parser of formulas, which needs no vocabulary."""
    text = (_HERE / "formula.lark").read_text("utf-8")
    return Lark(text, parser="lalr", start="formula", strict=strict, maybe_placeholders=False)


def _built(name: str, vocabulary: Vocabulary, strict: bool) -> Lark:
    def vocabulary_file(_base: str | None, path: str) -> tuple[str, str]:
        if path != "vocabulary.lark":
            raise FileNotFoundError(path)
        return path, vocabulary_terminals(vocabulary)

    kept = _KEPT_NAMES[name].replace(" ", ", ")
    return Lark(
        f"%import {name} ({kept})\n{_IGNORED[name]}",
        parser="lalr",
        start=_STARTS[name],
        import_paths=[str(_HERE), vocabulary_file],
        strict=strict,
        maybe_placeholders=False,
    )


def _saved(parser: Lark) -> bytes:
    kept = io.BytesIO()
    parser.save(kept, exclude_options=["import_paths"])
    return pickle.dumps(_with_plain_names(pickle.loads(kept.getvalue()), {}))


def _with_plain_names(saved: Any, names: dict[str, str]) -> Any:
    """What Lark saved, with each name as one plain string: Lark keeps tokens for names, which are slow to compare."""
    if isinstance(saved, dict):
        return {_with_plain_names(key, names): _with_plain_names(value, names) for key, value in saved.items()}
    if isinstance(saved, list | tuple):
        return type(saved)(_with_plain_names(each, names) for each in saved)
    return names.setdefault(str(saved), str(saved)) if isinstance(saved, str) else saved


def vocabulary_terminals(vocabulary: Vocabulary) -> str:
    """The terminals that come from the vocabulary, as grammar text."""
    signs = "|".join(re.escape(sign) for sign in sorted(vocabulary.prefix_currencies, key=len, reverse=True))
    # "8 in every row", "12 in total", "111 in the round" and "US 14 in metric" are no inches.
    of_it = "every|total|(?:front|back)(?= *(?:[^a-z ]|$|and ))|all|pairs|the|(?:one|a|a single) (?:row|round)|rows|rounds"
    into = "tex|denier|metric|cm|mm|inches|metres|yards|us|uk"
    no_inch = f"(?!in (?:{of_it}|{into})(?![a-z]))"
    unit = f"{no_inch}(?:-(?=[a-z]))?(?:of +(?:an? +|the +)?)?{units_pattern(vocabulary.units)}"
    return (
        f"UNIT.70: /{unit}[ \\t]*/\n"
        f"CURRENCY.71: /(?<![a-z])(?:{signs}) *(?=\\.?[0-9])/\n"
        f"CURRENCY_SIGN: /(?:{signs})(?![a-z])/\n"
        f"UNIT_HEAD: /{heads_pattern(vocabulary.units)}/\n"
    )
