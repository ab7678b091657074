"""The parse tables: without conflicts, quick to load, and named after all they depend on."""

from __future__ import annotations

import pytest

import grammar
from grammar import Reader, Vocabulary, build, key, table


def test_every_grammar_is_free_of_conflicts_and_collisions(vocabulary: Vocabulary) -> None:
    lines, sums, formulas = table.parsers(vocabulary, strict=True)
    assert {parser.options.parser for parser in (lines, sums, formulas)} == {"lalr"}
    assert {parser.options.lexer for parser in (lines, sums, formulas)} == {"contextual"}


def test_a_kept_table_reads_as_a_built_one(vocabulary: Vocabulary, kept: bytes) -> None:
    text = "22 sts and 30 rows to 10 cm, 60 x 72 in, £7.25 a metre"
    assert Reader.built(vocabulary).read(text) == Reader.loaded(vocabulary, kept).read(text)


def test_the_plain_functions_read_as_a_reader_does(vocabulary: Vocabulary, reader: Reader) -> None:
    assert grammar.read("5/8 in", vocabulary) == reader.read("5/8 in")
    assert grammar.read_sum("5/8 in + 1 in", vocabulary) == reader.read_sum("5/8 in + 1 in") is not None


def test_a_kept_table_is_opened_without_building(kept: bytes, monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(table, "parsers", None)
    assert table.open_table(table.load(kept)[0]).parse("28 in").children


def test_the_key_changes_with_the_vocabulary(vocabulary: Vocabulary) -> None:
    more = Vocabulary({**vocabulary.units, "ell": "ell"}, vocabulary.prefix_currencies)
    same = Vocabulary(dict(vocabulary.units), vocabulary.prefix_currencies)
    assert key(vocabulary) == key(same) != key(more)


def test_a_new_unit_needs_no_change_of_the_grammar(vocabulary: Vocabulary) -> None:
    more = Vocabulary({**vocabulary.units, "ells": "ell"}, {**vocabulary.prefix_currencies, "¥": "JPY"})
    found = Reader.loaded(more, build(more)).read("3 ells of linen").chunks[0]
    assert (found.text, found.unit) == ("3 ells", "ell")  # type: ignore[union-attr]
    price = Reader.loaded(more, build(more)).read("cloth at, say, ¥900 or so").chunks[-3]
    assert (price.text, price.unit) == ("¥900", "JPY")  # type: ignore[union-attr]
