"""A vocabulary such as a workroom's, and one reader for all the grammar's tests."""

from __future__ import annotations

import pytest

from grammar import Reader, Vocabulary, build

UNITS = {
    "in": 'in|inch|inches|ins|inchs|"', "ft": "ft|foot|feet|'", "yd": "yd|yds|yard|yards",
    "mm": "mm|millimetre|millimetres|millimeter|millimeters", "cm": "cm|cms|centimetre|centimetres|centimeters",
    "m": "m|metre|metres|meter|meters", "km": "km|kilometre|kilometres",
    "in^2": "sq in|square inch|square inches|in²|in2",
    "yd^2": "square yard|square yards|yd²", "cm^2": "sq cm|cm²|cm2", "m^2": "square metre|square metres|m²|m2",
    "g": "g|gram|grams|gramme|grammes", "kg": "kg|kilo|kilos", "oz": "oz|ounce|ounces", "lb": "lb|lbs",
    "l": "litre|litres|liter|liters", "ml": "ml", "%": "%|percent|per cent",
    "st": "st|sts|stitch|stitches|stich|stiches",
    "row": "row|rows|r", "round": "round|rounds|rnd|rnds", "tex": "tex", "denier": "denier|den",
    "g/m^2": "gsm|g/m2|g/m²|grams per square metre", "oz/yd^2": "oz/yd2|oz/yd²|ounces to the square yard",
    "ligne": "ligne|lignes", "L": "l", "spi": "spi", "degree": "degree|degrees|°", "pound": "pound|pounds",
    "pence": "p|pence", "GBP": "gbp|£",
    "USD": "usd|dollar|dollars", "EUR": "eur|euro|euros", "CAD": "cad", "AUD": "aud",
}  # fmt: skip


@pytest.fixture(scope="session")
def vocabulary() -> Vocabulary:
    units = {spelled: name for name, each in UNITS.items() for spelled in each.split("|")}
    return Vocabulary(units, {"£": "GBP", "$": "USD", "€": "EUR"})


@pytest.fixture(scope="session")
def kept(vocabulary: Vocabulary) -> bytes:
    return build(vocabulary)


@pytest.fixture(scope="session")
def reader(vocabulary: Vocabulary, kept: bytes) -> Reader:
    return Reader.loaded(vocabulary, kept)
