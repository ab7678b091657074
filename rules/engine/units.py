"""The trade's units: our own small pint registry, and the factors between its units.

Pint holds the definitions and does every conversion. Because importing pint takes longer than a whole answer, the
factors it gives are worked once, by `pint_factors`, and may be handed back with `use_factors` by whoever keeps them.
"""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Any

if TYPE_CHECKING:
    import pint

# The yard is the international yard of 0.9144 m (1959), the pound 0.45359237 kg; both exact. Weight and length only:
# an ounce is the avoirdupois ounce. A ligne is 1/40 in, as buttons are sold.
DEFINITIONS = """
mm = [length]
cm = 10 * mm
m = 1000 * mm
km = 1000 * m
in = 127 / 5 * mm
ft = 12 * in
yd = 3 * ft
ligne = 1 / 40 * in
ml = 1000 * mm ** 3
l = 1000 * ml
g = [mass]
kg = 1000 * g
lb = 45359237 / 100000 * g
oz = 1 / 16 * lb
tex = 1 / 1000 * g / m
denier = 1 / 9 * tex
dtex = 1 / 10 * tex
st = [stitch]
row = [row]
hour = [time]
minute = 1 / 60 * hour
degree = [angle]
each = []
percent = 1 / 100
money = [money]
GBP = [money_gbp]
USD = [money_usd]
EUR = [money_eur]
CAD = [money_cad]
AUD = [money_aud]
"""

CURRENCIES = ("GBP", "USD", "EUR", "CAD", "AUD")
SIGNS = {"GBP": "£", "USD": "$", "EUR": "€", "CAD": "C$", "AUD": "A$"}
INCH_UNITS = frozenset(("in", "ft", "yd", "in^2", "ft^2", "yd^2", "oz", "lb", "oz/yd^2", "st/in", "st/4in", "row/in", "row/4in"))
METRIC_UNITS = frozenset(
    ("mm", "cm", "m", "km", "cm^2", "mm^2", "m^2", "g", "kg", "l", "ml", "g/m^2", "st/10cm", "st/cm", "row/10cm", "row/cm")
)

# Spelled unit -> canonical unit. "pound" (money or weight), "pence" and "L" (ligne or litre) are settled by their place.
SPELLED: Mapping[str, str] = {
    **dict.fromkeys(("in", "ins", "inch", "inches", "inchs", "inche", '"', "''"), "in"),
    **dict.fromkeys(("ft", "foot", "feet", "'"), "ft"),
    **dict.fromkeys(("yd", "yds", "yard", "yards", "yrd", "yrds"), "yd"),
    **dict.fromkeys(("mm", "millimetre", "millimetres", "millimeter", "millimeters", "mil", "mils"), "mm"),
    **dict.fromkeys(("cm", "cms", "centimetre", "centimetres", "centimeter", "centimeters"), "cm"),
    **dict.fromkeys(("m", "metre", "metres", "meter", "meters", "mtr", "mtrs", "mtre"), "m"),
    **dict.fromkeys(("km", "kilometre", "kilometres", "kilometer", "kilometers"), "km"),
    **dict.fromkeys(("sq in", "square inch", "square inches", "in2", "in²", "in^2", "sq ins"), "in^2"),
    **dict.fromkeys(("sq ft", "square foot", "square feet", "ft2", "ft²", "ft^2"), "ft^2"),
    **dict.fromkeys(("sq yd", "square yard", "square yards", "yd2", "yd²", "yd^2", "sq yds"), "yd^2"),
    **dict.fromkeys(("sq cm", "square centimetre", "square centimetres", "square centimeters", "cm2", "cm²", "cm^2"), "cm^2"),
    **dict.fromkeys(("sq mm", "mm2", "mm²", "mm^2", "square millimetres"), "mm^2"),
    **dict.fromkeys(
        ("sq m", "square metre", "square metres", "square meter", "square meters", "m2", "m²", "m^2", "sqm"), "m^2"
    ),
    **dict.fromkeys(("g", "gm", "gms", "gram", "grams", "gramme", "grammes"), "g"),
    **dict.fromkeys(("kg", "kgs", "kilo", "kilos", "kilogram", "kilograms"), "kg"),
    **dict.fromkeys(("oz", "ozs", "ounce", "ounces"), "oz"),
    **dict.fromkeys(("lb", "lbs"), "lb"),
    **dict.fromkeys(("pound", "pounds"), "pound"),
    **dict.fromkeys(("p", "pence", "penny"), "pence"),
    **dict.fromkeys(("cent", "cents"), "cent"),
    **dict.fromkeys(("litre", "litres", "liter", "liters", "ltr"), "l"),
    **dict.fromkeys(("ml", "millilitre", "millilitres", "milliliters"), "ml"),
    **dict.fromkeys(("l",), "L"),
    **dict.fromkeys(("ligne", "lignes", "line buttons"), "ligne"),
    **dict.fromkeys(("%", "percent", "per cent", "pct", "pc"), "%"),
    **dict.fromkeys(("st", "sts", "stitch", "stitches", "stiches", "stich", "stitchs"), "st"),
    # Crochet stitches, counted against a length as knitted ones are.
    **dict.fromkeys(("dc", "sc", "htr", "hdc", "trebles", "treble", "half trebles", "double crochets", "double crochet", "single crochets",
                     "single crochet", "half double crochet", "tr"), "st"),
    **dict.fromkeys(("row", "rows", "round", "rounds", "rnd", "rnds"), "row"),
    **dict.fromkeys(("tex",), "tex"),
    **dict.fromkeys(("dtex", "decitex"), "dtex"),
    **dict.fromkeys(("denier", "den"), "denier"),
    **dict.fromkeys(("gsm", "g/m2", "g/m²", "g/m^2", "grams per square metre", "grams a square metre", "g per sq m"), "g/m^2"),
    **dict.fromkeys(
        ("oz/yd2", "oz/yd²", "oz/yd^2", "oz/sq yd", "ounces per square yard", "ounces to the square yard", "oz per square yard",
         "oz a square yard", "oz per sq yd"), "oz/yd^2"),
    **dict.fromkeys(("gbp", "sterling", "quid", "£"), "GBP"),
    **dict.fromkeys(("usd", "dollar", "dollars", "bucks", "$"), "USD"),
    **dict.fromkeys(("eur", "euro", "euros", "€"), "EUR"),
    **dict.fromkeys(("cad",), "CAD"),
    **dict.fromkeys(("aud",), "AUD"),
    **dict.fromkeys(("spi", "stitches per inch", "stitches an inch", "stitches to the inch"), "st/in"),
    **dict.fromkeys(("degree", "degrees", "°", "deg"), "degree"),
    **dict.fromkeys(("hour", "hours", "hr", "hrs"), "hour"),
    **dict.fromkeys(("minute", "minutes", "mins"), "minute"),
}  # fmt: skip
PREFIX_CURRENCIES: Mapping[str, str] = {
    "£": "GBP", "$": "USD", "€": "EUR", "c$": "CAD", "a$": "AUD", "gbp": "GBP", "usd": "USD", "eur": "EUR", "cad": "CAD", "aud": "AUD",
}

_ALIASES = {"%": "percent", "1": "each", "": "each"}
_factors: dict[str, Fraction] = {}


class UnitError(ValueError):
    """A unit that is not known, or two of different kinds."""


@lru_cache(maxsize=1)
def registry() -> pint.UnitRegistry[Any]:
    """Our pint registry: exact (`Fraction`) numbers, our definitions and no others."""
    import pint  # here, not above: importing it takes longer than a whole answer

    units: pint.UnitRegistry[Any] = pint.UnitRegistry(None, non_int_type=Fraction)
    units.load_definitions(DEFINITIONS.strip().splitlines())
    return units


def atoms() -> tuple[str, ...]:
    """The names of the single units defined, in the order of their definition."""
    return tuple(line.split(" = ")[0] for line in DEFINITIONS.strip().splitlines())


def pint_factors() -> dict[str, Fraction]:
    """What one of each single unit is in base units (mm, g, st, row, ...), as pint gives it."""
    units = registry()
    return {name: Fraction(units.Quantity(Fraction(1), name).to_base_units().magnitude) for name in atoms()}


def use_factors(factors: Mapping[str, Fraction]) -> None:
    """Take factors worked by `pint_factors` earlier, so that pint need not be loaded for a plain answer."""
    _factors.update(factors)


def _atom(name: str) -> Fraction:
    """The factor of `10cm`, `yd^2`, `in`: an optional number, a single unit, an optional power."""
    if not _factors:
        _factors.update(pint_factors())
    digits = 0
    while digits < len(name) and name[digits].isdigit():
        digits += 1
    number = int(name[:digits] or 1)
    unit, _, power = name[digits:].partition("^")
    found = _factors.get(_ALIASES.get(unit, unit))
    if found is None:
        raise UnitError(f"unknown unit {name!r}")
    return number * found ** int(power or 1)


@lru_cache(maxsize=1024)
def factor(unit: str) -> Fraction:
    """One of a canonical unit (`yd`, `st/10cm`, `GBP/m`, `oz/yd^2`) in base units.

    Raises UnitError for a name that is not a canonical unit.

    >>> factor("st/10cm")
    Fraction(1, 100)
    """
    above, _, below = unit.partition("/")
    return _atom(above) / _atom(below) if below else _atom(above)


@lru_cache(maxsize=1024)
def rough_factor(unit: str) -> float:
    """`factor` as a float, for weighing readings; never for a sum."""
    return float(factor(unit))


def convert(value: Fraction, unit: str, into: str) -> Fraction:
    """The same amount in another unit of the same kind, exactly.

    >>> convert(Fraction(1), "in", "cm")
    Fraction(127, 50)
    """
    return value * factor(unit) / factor(into)


@lru_cache(maxsize=1024)
def same_kind(unit: str, other: str) -> bool:
    """Whether one unit can be put into the other. Raises UnitError for a name that is no unit."""
    return factor(unit) > 0 and factor(other) > 0 and bool(one(unit).dimensionality == one(other).dimensionality)


@lru_cache(maxsize=1024)
def one(unit: str) -> pint.Quantity[Any]:
    """One of a canonical unit as a pint quantity, exactly; a count's noun (strip, block) is a plain number."""
    above, _, below = unit.partition("/")
    return _one_atom(above) / _one_atom(below) if below else _one_atom(above)


def _one_atom(name: str) -> pint.Quantity[Any]:
    digits = len(name) - len(name.lstrip("0123456789"))
    single, _, power = name[digits:].partition("^")
    known = _ALIASES.get(single, single)
    quantity = registry().Quantity(Fraction(int(name[:digits] or 1)), known if known in atoms() else "each")
    return quantity ** int(power) if power else quantity


@lru_cache(maxsize=256)
def system_of(unit: str) -> str:
    """"in" or "cm" for a unit of one of the two systems, "" for one that belongs to neither (st, %, GBP)."""
    if unit in INCH_UNITS:
        return "in"
    if unit in METRIC_UNITS:
        return "cm"
    below = unit.partition("/")[2].lstrip("0123456789")
    return system_of(below) if below else ""
