"""What holds for all texts: reading never fails, nothing typed is lost, and a measure written down is read back."""

from __future__ import annotations

import re
from fractions import Fraction

from hypothesis import example, given, settings
from hypothesis import strategies as st

from grammar import Reader, Vocabulary, build
from grammar.query import Measure, Query
from tests.grammar.conftest import UNITS

VOCABULARY = Vocabulary(
    {spelled: name for name, each in UNITS.items() for spelled in each.split("|")},
    {"£": "GBP", "$": "USD", "€": "EUR"},
)
READER = Reader.loaded(VOCABULARY, build(VOCABULARY))

# Texts made of what people type come nearer to the grammar's corners than letters drawn at random.
_NUMBERS = "1 2 10 24 44/45 5/8 2 1/2 2-1/2 .5 2,5 1,250 2½ ½ half quarter one two twenty dozen hundred 2nd 3/8ths"
_UNITS = "in inch \" ' ″ ft m cm yd % st sts rows £ $ half-inch ten-inch inch-wide -inch foot round"
_JOINTS = (
    "a an the per to by x × and or , - – + / = : . ? ( ) of about ~ minus plus every from waist for w one-way k2tog"
)
_ODD = "🧵 ’ _ \\ 三 ² ٣ İ ⁄"
BITS = [*f"{_NUMBERS} {_UNITS} {_JOINTS} {_ODD}".split(), *"\n\t\u00a0\u200b"]
TYPED = st.lists(st.tuples(st.sampled_from(BITS), st.sampled_from(["", " ", "  "])), max_size=14).map(
    lambda bits: "".join(bit + gap for bit, gap in bits)
)
# What may stand between two chunks and belong to neither: invisible letters, and a dash (written in any way) that only
# joins one word to the next.
INVISIBLE = "\u200b\u200c\u200d\u2060\ufeff\u00ad\u200e\u200f"
DASHES = "‐‑‒–—―−﹣－-"


def check(query: Query) -> None:
    last = 0
    for chunk in query.chunks:
        assert last <= chunk.start < chunk.end <= len(query.text)
        assert chunk.text == query.text[chunk.start : chunk.end] or len(chunk.text) == 1
        between = query.text[last : chunk.start]
        assert not re.search(rf"[^\s{INVISIBLE}{DASHES}]", between), (between, query)
        last = chunk.end
    assert not re.search(rf"[^\s{INVISIBLE}{DASHES}]", query.text[last:]), query


@settings(max_examples=600, deadline=None)
@given(TYPED)
@example("£1 in")
@example("a half a")
@example("half-inch–half")
@example("1 x 2 to 3 and 4")
def test_nothing_typed_is_lost_however_it_is_put_together(text: str) -> None:
    check(READER.read(text))
    READER.read_sum(text)


@settings(max_examples=200, deadline=None)
@given(st.text(max_size=40))
def test_any_text_at_all_is_read(text: str) -> None:
    check(READER.read(text))
    READER.read_sum(text)


@settings(max_examples=200, deadline=None)
@given(
    st.integers(0, 999),
    st.sampled_from([Fraction(n, d) for d in (2, 4, 8, 16, 32, 64) for n in range(1, d)]),
    st.sampled_from(["in", '"', " inches", " cm", " yd", " m"]),
    st.sampled_from([" ", "-"]),
)
def test_a_mixed_number_is_read_back(whole: int, part: Fraction, unit: str, gap: str) -> None:
    (found,) = READER.read(f"{whole}{gap}{part}{unit}").chunks
    assert isinstance(found, Measure)
    assert found.parts[0].value == whole + part
    assert found.unit == VOCABULARY.units[unit.strip()]


@settings(max_examples=200, deadline=None)
@given(st.integers(0, 10**9), st.integers(0, 3), st.sampled_from(sorted(VOCABULARY.units)))
def test_a_decimal_with_any_unit_is_read_back(number: int, places: int, unit: str) -> None:
    value = Fraction(number, 10**places)
    text = f"{number // 10**places}.{number % 10**places:0{places}d}" if places else str(number)
    (found,) = READER.read(f"{text} {unit}").chunks
    assert isinstance(found, Measure)
    assert (found.parts[0].value, found.unit) == (value, VOCABULARY.units[unit])


@settings(max_examples=100, deadline=None)
@given(st.sampled_from(["5/8 in", "two and a half", "44-45 in", "22 sts to 10 cm", "60 x 72"]), TYPED)
def test_capitals_make_no_difference(measure: str, before: str) -> None:
    text = f"{before} {measure}"
    if text.isascii():
        assert [type(chunk) for chunk in READER.read(text.upper()).chunks] == [
            type(c) for c in READER.read(text).chunks
        ]
