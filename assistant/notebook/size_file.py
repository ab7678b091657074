"""A size table from a CSV file as spreadsheets write it: any order of columns, either way up, units in the headings.

Numbers are read by the grammar, so fractions, ranges and decimal commas are what they are in a question.
"""

from __future__ import annotations

import codecs
import csv
import io
import re
from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from pathlib import Path

from assistant.understand.readers.size_atoms import PLACES
from assistant.understand.readers.size_table import LARGEST_IN_INCHES
from assistant.understand.tokens import tokens
from grammar import Reader
from grammar.query import Measure, Span
from rules.engine.units import factor
from rules.fit.size_tables import Size, SizeTable

LARGEST_FILE = 1_000_000
UNITS = {
    **dict.fromkeys(("cm", "cms", "centimetres", "centimeters"), "cm"),
    **dict.fromkeys(("in", "ins", "inch", "inches", '"'), "in"),
    "mm": "mm",
}
MAYBE_UNITS = ("in", '"')
EMPTY = ("", "-", "–", "—", "n/a")
_WORDS = re.compile(r"[a-z]+|\"")
_DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d)")


class NotATable(Exception):
    """The file cannot be read as a size table; the message says where and why."""


@dataclass(frozen=True, slots=True)
class SizeFile:
    """What a file holds. left_out: headings of columns that are neither the size nor a measure."""

    table: SizeTable
    left_out: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Heading:
    """A heading: the measure it names, or "" for none, and the unit that stands in it, or ""."""

    text: str
    place: str
    unit: str


def read(path: Path, reader: Reader) -> SizeFile:
    """The size table in a file. Raises NotATable, or OSError when there is no reading it."""
    data = path.read_bytes()
    if len(data) > LARGEST_FILE:
        raise NotATable("it is far too long for a size table")
    rows, comma = _rows(_text(data))
    top, headings, rows = _upright(rows)
    unit = _unit(top, headings, rows)
    size = _size_column(headings)
    sizes = [_size(row, headings, size, unit, reader, comma) for row in rows if size < len(row) and row[size]]
    full = tuple(one for one in sizes if one.at)
    if not full:
        raise NotATable("no row in it has both a size and a measure")
    left_out = tuple(one.text for spot, one in enumerate(headings) if not one.place and spot != size and one.text)
    return SizeFile(SizeTable(full, unit), left_out)


# -- rows and columns ------------------------------------------------------------------------------------------------


def _text(data: bytes) -> str:
    if data.startswith((codecs.BOM_UTF16_LE, codecs.BOM_UTF16_BE)):
        return data.decode("utf-16", "replace")
    try:
        return data.decode("utf-8-sig")
    except UnicodeDecodeError:
        return data.decode("cp1252", "replace")  # what older spreadsheets write


def _rows(text: str) -> tuple[list[list[str]], bool]:
    """The rows that are not blank, and whether the comma is free to be a decimal sign."""
    best: list[list[str]] = []
    sign = ","
    for delimiter in ("\t", ";", "|", ","):
        found = [[cell.strip() for cell in row] for row in csv.reader(io.StringIO(text), delimiter=delimiter)]
        rows = [row for row in found if any(row)]
        if sum(len(row) > 1 for row in rows) >= 2:
            best, sign = rows, delimiter
            break
    if not best:
        raise NotATable("I find no columns in it. Part them by commas, semicolons or tabs")
    return best, sign != ","


def _upright(rows: list[list[str]]) -> tuple[str, list[Heading], list[list[str]]]:
    """(what stands above the table, its headings, its rows); a table that lies on its side is turned."""
    for at, row in enumerate(rows):
        headings = [_heading(cell) for cell in row]
        if sum(bool(one.place) for one in headings) >= (1 if len(row) < 3 else 2) or _is_head(headings):
            return _above(rows[:at]), headings, rows[at + 1 :]
    start = next((at for at, row in enumerate(rows) if _heading(row[0]).place), 0)
    if not start:
        raise NotATable("I find no heading such as bust, waist or hip in it")
    wide = max(len(row) for row in rows)
    turned = [
        list(column) for column in zip(*[row + [""] * (wide - len(row)) for row in rows[start - 1 :]], strict=True)
    ]
    return _above(rows[: start - 1]), [_heading(cell) for cell in turned[0]], turned[1:]


def _is_head(headings: Sequence[Heading]) -> bool:
    """A size column and a measure beside it."""
    return any(one.place for one in headings[1:]) or (
        any(one.place for one in headings) and any("size" in one.text.lower() for one in headings)
    )


def _above(rows: Sequence[Sequence[str]]) -> str:
    return " ".join(cell for row in rows for cell in row).lower()


def _heading(text: str) -> Heading:
    words = _WORDS.findall(text.lower())
    place = next((PLACES[stem] for word in words for stem in tokens(word) if stem in PLACES), "")
    return Heading(text, place, _unit_in(text))


def _unit_in(text: str) -> str:
    """The unit that stands in a text, or ""; "in" and a quote may be no unit, so any other comes first."""
    units = [word for word in _WORDS.findall(text.lower()) if word in UNITS]
    return UNITS[min(units, key=MAYBE_UNITS.__contains__)] if units else ""


def _size_column(headings: Sequence[Heading]) -> int:
    """The column with the word size in its heading; else the first that holds no measure."""
    named = [spot for spot, one in enumerate(headings) if not one.place and "size" in one.text.lower()]
    free = [spot for spot, one in enumerate(headings) if not one.place]
    if not named and not free:
        raise NotATable("I find no column of sizes in it. Give one the heading size")
    return (named or free)[0]


def _unit(above: str, headings: Sequence[Heading], rows: Sequence[Sequence[str]]) -> str:
    """The unit of measures whose heading has none: of another heading, the title or a cell; else told by their size."""
    cells = " ".join(cell for row in rows for cell in row)
    typed = next((one.unit for one in headings if one.unit), "") or _unit_in(above) or _unit_in(cells)
    if typed:
        return typed
    measured = [cell for row in rows for one, cell in zip(headings, row, strict=False) if one.place]
    numbers = [int(number) for cell in measured for number in re.findall(r"\d{2,3}", cell)]
    return "cm" if max(numbers, default=0) > LARGEST_IN_INCHES else "in"


# -- cells -----------------------------------------------------------------------------------------------------------


def _size(row: Sequence[str], headings: Sequence[Heading], size: int, unit: str, reader: Reader, comma: bool) -> Size:
    name = re.sub(r"(?i)^size\s+", "", row[size])
    at = {}
    for spot, cell in enumerate(row):
        heading = headings[spot] if spot < len(headings) else Heading("", "", "")
        if heading.place and cell.lower() not in EMPTY:
            at[heading.place] = _ends(cell, heading, heading.unit or unit, name, reader, comma)
    return Size(name, at)


def _ends(cell: str, heading: Heading, unit: str, size: str, reader: Reader, comma: bool) -> tuple[Fraction, Fraction]:
    """The lowest and highest measure of a cell, often one, in mm. Raises NotATable for one that is no measure."""
    text = _DECIMAL_COMMA.sub(".", cell) if comma else cell
    own = any(word in UNITS for word in _WORDS.findall(text.lower()))
    chunks = reader.read(text if own else f"{text} {unit}").chunks
    chunk = chunks[0] if len(chunks) == 1 else None
    pair = (
        (chunk, chunk) if isinstance(chunk, Measure) else (chunk.low, chunk.high) if isinstance(chunk, Span) else None
    )
    if pair is None or any(_size_of(measure, unit) <= 0 for measure in pair):
        raise NotATable(f"I cannot read “{cell}”, the {heading.text} of size {size}. Write it like 83, 83-86 or 32 1/2")
    low, high = sorted(_size_of(measure, unit) for measure in pair)
    return low, high


def _size_of(measure: Measure, unit: str) -> Fraction:
    total = Fraction(0)
    for part in measure.parts:
        total += part.value * factor(UNITS.get(part.unit, unit) if part.unit else unit)
    return total
