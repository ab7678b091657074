"""Published ease, by garment and place, each row with its source; and what they say of an ease."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..engine.literal import literal
from ..engine.request import Number
from ..engine.text import shown

COSTUME_TEXT = "Ease in Clothing, chapter 16 of a costume construction text, Central Washington University"
PANTS_GUIDE = "Guide C-209, Measurements for Fitting Pants, New Mexico State University Cooperative Extension"
FITTING_SHELL = "Fit for Real People, chapter 3, Palmer/Pletsch, 1998: least ease of a fitting shell"
LOOSE_JACKET = "an envelope for a loose-fitting jacket, sizes 8 to 16: finished less body measure"


@dataclass(frozen=True, slots=True)
class Published:
    """One row: the ease at a place of some garments. garments: () for any; low, high: as text, "" where open."""

    place: str
    garments: tuple[str, ...]
    low: str
    high: str
    what: str
    source: str

    def covers(self, place: str, garment: str) -> bool:
        return place == self.place and (not self.garments or garment in self.garments)

    def range_text(self, unit: str) -> str:
        """The range as words in a unit: "2 to 2 3/4 in", "at least 1 in", "up to 3 in"."""
        ends = [shown(_rounded(literal(end)[0], unit), unit) for end in (self.low, self.high) if end]
        if not self.high:
            return f"{ends[0]} at least"
        if not self.low:
            return f"{ends[0]} at most"
        return ends[0] if self.low == self.high else f"{ends[0].removesuffix(' ' + unit)} to {ends[1]}"

    def side(self, ease: Number) -> str:
        """ "less than", "within" or "more than"."""
        if self.low and ease < literal(self.low)[0]:
            return "less than"
        return "more than" if self.high and ease > literal(self.high)[0] else "within"


def _rounded(value: Fraction, unit: str) -> Fraction:
    """A published inch measure in cm goes to the nearest millimetre."""
    return Fraction(round(value)) if unit == "cm" else value


EASE_TABLE: tuple[Published, ...] = (
    Published(
        "bust", ("bodice", "dress", "blouse", "top"), "1 1/2 in", "2 in", "wearing ease at the bust", COSTUME_TEXT
    ),
    Published("bust", ("fitted shirt",), "1 1/2 in", "2 1/2 in", "ease of a fitted shirt at the chest", COSTUME_TEXT),
    Published("bust", ("shirt",), "", "3 in", "ease of a classic shirt at the chest", COSTUME_TEXT),
    Published("bust", ("loose jacket",), "6 1/4 in", "6 1/4 in", "ease of a loose jacket at the bust", LOOSE_JACKET),
    Published("waist", ("dress", "bodice"), "3/4 in", "1 in", "wearing ease at the waist of a dress", COSTUME_TEXT),
    Published(
        "waist",
        ("skirt", "trousers"),
        "1/2 in",
        "3/4 in",
        "wearing ease at the waist of a skirt or trousers",
        COSTUME_TEXT,
    ),
    Published("waist", ("trousers",), "", "1 in", "ease of trousers at the waist", PANTS_GUIDE),
    Published(
        "waist",
        ("trousers",),
        "3/4 in",
        "1 in",
        "wearing ease at the waist of trousers, in its second list",
        COSTUME_TEXT,
    ),
    Published("waist", ("fitting shell",), "1 in", "", "least ease of a fitting shell at the waist", FITTING_SHELL),
    Published("hip", ("fitting shell",), "2 in", "", "least ease of a fitting shell at the hip", FITTING_SHELL),
    Published("hip", (), "2 in", "2 3/4 in", "wearing ease at the hip", COSTUME_TEXT),
    Published("hip", ("trousers",), "2 in", "4 in", "ease of trousers at the hip, at least this range", PANTS_GUIDE),
    Published("hip", ("loose jacket",), "7 1/2 in", "7 1/2 in", "ease of a loose jacket at the hip", LOOSE_JACKET),
    Published("seat", ("trousers",), "1 1/2 in", "2 in", "wearing ease of trousers at the seat", COSTUME_TEXT),
    Published(
        "abdomen", ("trousers",), "", "2 in", "ease of trousers at the abdomen, 3 to 4 in below the waist", PANTS_GUIDE
    ),
    Published("thigh", ("trousers",), "1 in", "2 in", "ease of trousers at the thigh", PANTS_GUIDE),
    Published("thigh", ("trousers",), "1 in", "", "wearing ease of trousers at the thigh", COSTUME_TEXT),
    Published("knee", ("trousers",), "1 in", "", "ease of trousers at the knee", PANTS_GUIDE),
)


def rows_for(place: str, garment: str) -> tuple[Published, ...]:
    """The published rows for a place of a garment; for a bust with no garment named, those of a bodice."""
    if place == "bust" and not garment:
        garment = "bodice"
    return tuple(row for row in EASE_TABLE if row.covers(place, garment))


def least_for(place: str) -> Fraction:
    """The least published ease at a place, in base units; nought where none is published."""
    lows = [literal(row.low)[0] for row in EASE_TABLE if row.place == place and row.low]
    return min(lows, default=Fraction(0))


def verdict(ease: Number, place: str, garment: str, unit: str) -> str:
    """What each published row says of an ease, joined; "" where nothing is published for the place and garment."""
    said = [
        f"{row.side(ease)} the {row.range_text(unit)} of {row.what} ({row.source})"
        for row in rows_for(place, garment)
    ]
    return "; ".join(said)
