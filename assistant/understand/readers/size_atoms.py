"""A line as a row of atoms for size tables: numbers, size letters, places of the body, signs and other words."""

from __future__ import annotations

from collections.abc import Iterator
from fractions import Fraction
from typing import NamedTuple

from grammar.query import Measure
from rules.engine.kinds import LENGTH
from rules.engine.units import factor

from ..values import LENGTHS, Line, Value, base_value

LETTERS = {
    **{name: name.upper() for name in ("xxs", "xs", "s", "m", "l", "xl", "xxl", "xxxl")},
    "small": "S",
    "medium": "M",
    "large": "L",
}
PLACES = {"bust": "bust", "chest": "bust", "waist": "waist", "hip": "hip", "height": "height", "seat": "hip"}
OWN = frozenset("my im i ive she he her his me mine sister daughter son client person am".split())
ASKS = frozenset(("what", "which", "whats"))
SIZE_WORDS = frozenset(("size", "uk", "us", "eu", "eur", "chart", "table"))
BEGINS = frozenset((":", "=", "is", "are", "fit", "has", "measure", "("))
SIGNS = frozenset((",", "/", "-", "&", "and", "|", "x"))
OPENS = frozenset((",", ":", ";", ".", "and", "\n"))
ENDS = frozenset((".", "?", "!", ";", "\n"))


class Atom(NamedTuple):
    """kind: number, name, place, sign or word. spot: its token; span: it is the first of two joined by - or "to"."""

    kind: str
    text: str
    spot: int
    value: Fraction = Fraction(0)
    unit: str = ""
    number: int = -1
    span: bool = False


def atoms_of(line: Line) -> Iterator[Atom]:
    for spot, word in enumerate(line.words):
        value = line.at_value.get(spot)
        if value is not None:
            yield from _numbers(value, spot)
        elif word in LETTERS:
            yield Atom("name", LETTERS[word], spot)
        elif word in PLACES:
            yield Atom("place", PLACES[word], spot)
        elif word in SIGNS:
            yield Atom("sign", word, spot)
        else:
            yield Atom("word", word, spot)


def _numbers(value: Value, spot: int) -> Iterator[Atom]:
    for index, measure in enumerate(value.members):
        if index:
            between = value.text[: measure.start - value.start].rstrip()[-1:]
            yield Atom(
                "sign",
                "-" if value.shape == "span" and "/" not in value.text else between if between in SIGNS else ",",
                spot,
            )
        yield _number(measure, spot, value, joined=value.shape == "span" and index == 0)


def _number(measure: Measure, spot: int, value: Value, joined: bool) -> Atom:
    unit = measure.unit if measure.unit in LENGTHS and measure.per is None else ""
    number, _ = base_value(measure, LENGTH) if unit else (abs(measure.value), "")
    digits = measure.text.split()[0] if not unit else measure.text
    return Atom("number", digits, spot, number / factor(unit) if unit else number, unit, value.number, joined)


def table_atoms(line: Line, finished: bool) -> list[Atom]:
    """The atoms without the clauses about the maker's own body, and only the finished measures or only the rest."""
    kept: list[Atom] = []
    own = asks = made_up = False
    row = list(atoms_of(line))
    for at, atom in enumerate(row):
        following = row[at + 1].text if at + 1 < len(row) else ""
        if atom.text in ENDS:
            own = asks = False
            made_up = made_up and atom.text == ";"
        elif atom.text in OWN:
            own = True
        elif atom.text in ("finish", "garment"):
            made_up, own, asks = True, False, False
        elif atom.text in ASKS:
            asks = True
        elif atom.text == ":":
            asks = False
        elif atom.text == "body":
            made_up = False
        if _opens_table(row, at, following):
            own = asks = False
        if not own and not asks and made_up == finished:
            kept.append(atom)
    return kept


def _opens_table(row: list[Atom], at: int, following: str) -> bool:
    atom = row[at]
    if atom.text in SIZE_WORDS:
        return at == 0 or row[at - 1].text not in ("what", "which", "pattern", "whats", "my")
    if atom.kind not in ("number", "name") or atom.unit:
        return False
    told = following == "is" and at + 2 < len(row) and row[at + 2].kind == "number"
    return told or following in (":", "=")
