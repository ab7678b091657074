"""The kinds of value a rule may take or give, each with its base unit and the units it is shown in."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True, eq=False)  # a kind is itself, and compared by identity
class Kind:
    """A dimension with the units people expect for it.

    base: the canonical unit in which the engine reckons (values of the kind are plain numbers of it).
    inch, metric: the units it is shown in for a question in inches, or in metric.
    """

    name: str
    base: str
    inch: str
    metric: str

    @property
    def is_number(self) -> bool:
        return self.base != "text"


LENGTH = Kind("length", "mm", "in", "cm")
AREA = Kind("area", "mm^2", "in^2", "cm^2")
VOLUME = Kind("volume", "mm^3", "l", "l")
MASS = Kind("weight", "g", "oz", "g")
AREAL = Kind("weight an area", "g/mm^2", "oz/yd^2", "g/m^2")
LINEAR = Kind("weight a length", "g/mm", "g/m", "g/m")
MONEY = Kind("money", "money", "money", "money")
PRICE = Kind("price a length", "money/mm", "money/yd", "money/m")
PRICE_AREA = Kind("price an area", "money/mm^2", "money/yd^2", "money/m^2")
COUNT = Kind("count", "1", "1", "1")
RATIO = Kind("ratio", "1", "1", "1")
PERCENT = Kind("percentage", "1", "%", "%")
STITCHES = Kind("stitches", "st", "st", "st")
ROWS = Kind("rows", "row", "row", "row")
STITCH_RATE = Kind("stitch tension", "st/mm", "st/4in", "st/10cm")
ROW_RATE = Kind("row tension", "row/mm", "row/4in", "row/10cm")
PER_LENGTH = Kind("number a length", "1/mm", "1/in", "1/cm")
ANGLE = Kind("angle", "degree", "degree", "degree")
TIME = Kind("time", "hour", "hour", "hour")

CHOICE = Kind("choice", "text", "text", "text")
TEXT = Kind("words", "text", "text", "text")
ANY = Kind("any measure", "any", "any", "any")
CHANGES = Kind("changes", "mm", "in", "cm")
ALTERATIONS = Kind("alterations", "mm", "in", "cm")
SUM = Kind("sum", "text", "text", "text")
PIECES = Kind("pieces", "text", "text", "text")
COST_LINES = Kind("cost lines", "text", "text", "text")
OFFERS = Kind("cloths on offer", "text", "text", "text")
SIZES = Kind("size table", "text", "text", "text")
FIGURE = Kind("figure measures", "text", "text", "text")
STRIPES = Kind("stripes", "text", "text", "text")
YARN_COUNT = Kind("yarn count", "text", "text", "text")

ALL_KINDS: tuple[Kind, ...] = (
    LENGTH, AREA, VOLUME, MASS, AREAL, LINEAR, MONEY, PRICE, PRICE_AREA, COUNT, RATIO, PERCENT, STITCHES, ROWS,
    STITCH_RATE, ROW_RATE, PER_LENGTH, ANGLE, TIME, CHOICE, TEXT, ANY, CHANGES, ALTERATIONS, SUM, PIECES, COST_LINES, OFFERS, SIZES, FIGURE,
    STRIPES, YARN_COUNT,
)  # fmt: skip
