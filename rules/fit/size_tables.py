"""Size tables: what one is, where a measure falls in it, and the published ones that are built in."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from ..engine.literal import literal
from ..engine.request import Number

FIGURE = ("bust", "waist", "hip")  # the order in which three measures of a figure are always given


@dataclass(frozen=True, slots=True)
class Size:
    """One size: its name, and at each place the lowest and highest body measure it is for, in base units; often one."""

    name: str
    at: Mapping[str, tuple[Number, Number]]


@dataclass(frozen=True, slots=True)
class SizeTable:
    """Sizes from the smallest. unit: what its measures were typed in. source: "" for one that the maker typed."""

    sizes: tuple[Size, ...]
    unit: str
    title: str = ""
    source: str = ""

    def __len__(self) -> int:
        return len(self.sizes)

    def places(self) -> tuple[str, ...]:
        return tuple(dict.fromkeys(place for size in self.sizes for place in size.at))

    def column(self, place: str) -> list[tuple[Size, Number, Number]]:
        """The sizes that have a measure there, with its ends, from the smallest."""
        rows = [(size, *size.at[place]) for size in self.sizes if place in size.at]
        return sorted(rows, key=lambda row: row[1])

    def named(self, name: str) -> Size | None:
        return next((size for size in self.sizes if size.name.lower() == name.lower()), None)


@dataclass(frozen=True, slots=True)
class Fall:
    """Where a measure falls: in one size (lower is upper), between two, or beyond an end (the other is None)."""

    lower: Size | None
    upper: Size | None


def fall(table: SizeTable, place: str, measure: Number) -> Fall:
    """Where a measure falls in a column of a table."""
    lower: Size | None = None
    for size, low, high in table.column(place):
        if low <= measure <= high:
            return Fall(size, size)
        if measure < low:
            return Fall(lower, size)
        lower = size
    return Fall(lower, None)


def step_near(table: SizeTable, place: str) -> Number:
    """The widest step between two sizes of a column: how far beyond the ends a measure may lie and be called close."""
    lows = [low for _, low, _ in table.column(place)]
    return max((after - before for before, after in pairwise(lows)), default=Fraction(0))


def _table(title: str, source: str, unit: str, names: str, columns: Mapping[str, str]) -> SizeTable:
    """A table from its columns, written as numbers in a row."""
    values = {place: [literal(f"{number} {unit}")[0] for number in text.split()] for place, text in columns.items()}
    sizes = tuple(
        Size(name, {place: (column[row], column[row]) for place, column in values.items()})
        for row, name in enumerate(names.split())
    )
    return SizeTable(sizes, unit, title, source)


ASTM = (
    "ASTM D5585-11e1, table 1 (adult female misses figure), ASTM International, 2011; its hip rows were not to be seen"
)
_ASTM_NAMES = "00 0 2 4 6 8 10 12 14 16 18 20"
_ASTM_BUST = "31.125 31.75 33 34.125 35.25 36.25 37.25 38.75 40.375 42.125 44 46"
_ASTM_NECK = "13.25 13.5 13.75 14 14.25 14.625 14.875 15.125 15.5 15.75 16 16.375"
_ASTM_UNDER_BUST = "25.75 26.5 27.25 28 29 30 31 32.5 34 35.75 37.625 39.625"
_ASTM_SHOULDER = "37.125 37.75 38.375 39 39.75 40.5 41.25 42 43 44.25 45.5 46.875"
_ASTM_SHARED = {
    "bust": _ASTM_BUST,
    "neck": _ASTM_NECK,
    "under bust": _ASTM_UNDER_BUST,
    "shoulder girth": _ASTM_SHOULDER,
}
_STRAIGHT = "25.375 26.125 26.875 27.625 28.5 29.5 30.5 32.25 34 36 38.25 40.5"
_CURVY = "23.875 24.625 25.375 26.125 27 28 29 30.75 32.5 34.5 36.75 39"
CHILDREN = "size chart for preschool children of 92 to 122 cm, Ottobre Design magazine"

PUBLISHED: Mapping[str, SizeTable] = {
    "US misses, straight": _table(
        "US misses, straight figure", ASTM, "in", _ASTM_NAMES, {**_ASTM_SHARED, "waist": _STRAIGHT}
    ),
    "US misses, curvy": _table("US misses, curvy figure", ASTM, "in", _ASTM_NAMES, {**_ASTM_SHARED, "waist": _CURVY}),
    "children by height": _table(
        "children of 92 to 122 cm",
        CHILDREN,
        "cm",
        "92 98 104 110 116 122",
        {
            "bust": "54 56 58 60 62 64",
            "waist": "53 54 55 56 57 58",
            "hip": "58 60 62 64 66 68",
            "height": "92 98 104 110 116 122",
            "outside leg": "54 58 62 66 70 74",
            "arm length": "32 34 36 38 40 42",
        },
    ),
}
