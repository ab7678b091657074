"""Any measure in another unit, exactly, with the ruler's fraction beside a decimal."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import Input, Rule, Step
from ..engine.kinds import ANY, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Amount, Given
from ..engine.rounding import snap
from ..engine.run import Impossible, Run
from ..engine.text import decimal, number_text, shown
from ..engine.units import factor, same_kind, system_of

# The unit of the other system that a maker would turn to from each.
OTHER = {
    "in": "cm",
    "ft": "cm",
    "yd": "m",
    "mm": "in",
    "cm": "in",
    "m": "yd",
    "km": "yd",
    "ligne": "mm",
    "g": "oz",
    "kg": "lb",
    "oz": "g",
    "lb": "kg",
    "in^2": "cm^2",
    "ft^2": "m^2",
    "yd^2": "m^2",
    "cm^2": "in^2",
    "m^2": "yd^2",
    "mm^2": "in^2",
    "g/m^2": "oz/yd^2",
    "oz/yd^2": "g/m^2",
    "st/in": "st/10cm",
    "st/4in": "st/10cm",
    "st/10cm": "st/4in",
    "st/cm": "st/in",
    "row/in": "row/10cm",
    "row/4in": "row/10cm",
    "row/10cm": "row/4in",
    "row/cm": "row/in",
    "tex": "denier",
    "denier": "tex",
}


ASKED = ("what's that", "what is that", "what's it", "how much is that")
WEIGHTS = ("grams", "ounces", "kilos", "pounds")
LENGTHS_ASKED = ("inches", "cm", "centimetres", "mm", "millimetres", "metres", "yards", "metric")
# A weight that, of cloth, is a weight an area.
AREAL_OF = {"oz": "oz/yd^2", "g": "g/m^2"}


def _target(unit: str, run: Run) -> str:
    """The unit wanted: the one asked for, or the other system's own.

    Of a rate, a lone unit wanted is a rate too: ounces, of grams a square metre, are ounces a square yard.
    """
    wanted = run.request.unit
    if wanted and wanted in AREAL_OF and unit in AREAL_OF.values():
        return AREAL_OF[wanted]
    if wanted and "/" in unit and "/" not in wanted and unit.partition("/")[0].isupper():
        return f"{unit.partition('/')[0]}/{wanted}"
    if wanted:
        return wanted
    above, _, below = unit.partition("/")
    if below and above.isupper():
        return f"{above}/{'yd' if system_of(below) == 'cm' else 'm'}"
    found = OTHER.get(unit, "")
    if not found:
        raise Impossible(
            f"I can put {unit or 'a bare number'} into no other unit; say into which, such as: 3 1/2 in in cm"
        )
    return found


def _meant(given: Given, wanted: str, run: Run) -> Given:
    """Cloth is sold by ounces and grams for its weight an area: "8 oz in gsm" is 8 oz a square yard."""
    if wanted in AREAL_OF.values() and given.unit in AREAL_OF:
        unit = AREAL_OF[given.unit]
        run.say(
            f"Cloth weight in {given.unit} is {unit}",
            "",
            given.text,
            shown(given.value / factor(given.unit) * factor(unit), unit),
        )
        return Given(given.value / factor(given.unit) * factor(unit), unit, given.text)
    if given.unit == "l" and wanted in ("in", "mm", "cm"):
        ligne = given.value / factor("l") * factor("ligne")  # a button of 30L is of 30 lignes
        return Given(ligne, "ligne", given.text)
    if given.unit == "1" and "/" in given.text:
        return Given(
            given.value * factor("in"), "in", f"{given.text} in"
        )  # only rulers in inches have halves and eighths
    return given


def convert(run: Run) -> Outcome:
    """The amount in the unit wanted; inches also to the nearest 1/16, and a fraction of an inch as a decimal."""
    given = _meant(run.given("amount"), run.request.unit, run)
    target = _target(given.unit, run)
    if not same_kind(given.unit, target):
        raise Impossible(
            f"{given.text} cannot be put into {target}: they measure different things. Such as: 3 1/2 in in cm"
        )
    each = factor(given.unit) / factor(target)
    exact = shown(given.value, target)
    run.say(
        f"One {given.unit} is {decimal(each, 6)} {target}; multiply by it",
        f"{given.unit} × {decimal(each, 6)}",
        f"{shown(given.value, given.unit)} × {decimal(each, 6)}",
        exact,
    )
    values: dict[str, Amount | str] = {"converted": Amount(given.value, target)}
    if system_of(target) == "in" and target in ("in", "ft", "yd"):
        sixteenth = snap(given.value, Fraction(1, 16) * factor("in"), "near")
        inches = sixteenth / factor("in")
        if sixteenth != given.value:
            run.say(
                "The nearest mark on the ruler, to 1/16 in",
                "nearest 1/16 in",
                shown(given.value, "in"),
                number_text(inches, "in") + " in",
            )
        values["ruler"] = Amount(sixteenth, "in")
        if sixteenth != given.value:
            values["error"] = Amount(sixteenth - given.value, "in")
    inches = given.value / factor("in") if given.unit == "in" else Fraction(1)
    if inches.denominator > 1:
        values["decimal"] = f"{decimal(inches, 6)} in"
    return Outcome(values)


CONVERT = Rule(
    topic="convert",
    family="measures",
    says=(
        "conversion",
        "convert",
        "change into",
        "turn into",
        "equivalent",
        "what is it in",
        *(f"{what} in {unit}" for what in ASKED for unit in (*WEIGHTS, *LENGTHS_ASKED)),
        *(f"into {unit}" for unit in (*WEIGHTS, *LENGTHS_ASKED)),
        *(f"ask for in {unit}" for unit in LENGTHS_ASKED),
        *(f"of an inch in {unit}" for unit in LENGTHS_ASKED),
        "metric for",
        "the metric for",
        "metric equivalent",
        "metric tape",
        "metric ruler",
        "inch tape",
        *(f"{what} on {a} {tape}" for what in ASKED for a in ("an", "a", "my") for tape in ("inch tape", "metric tape", "tape")),
        "in square cm",
        "in square centimetres",
        "in square metres",
        "in square inches",
        "in square feet",
        "in square yards",
    ),
    about="Any length, area, weight or rate in another unit, exactly (the yard is 0.9144 m).",
    inputs=(Input("amount", "amount", ANY, ask="What is to be converted?", example="3 1/2 in"),),
    steps=(
        Step("converted", "Put it into the unit wanted", kind=ANY),
        Step("ruler", "The nearest mark on the ruler", kind=ANY, label="nearest 1/16 in"),
        Step("error", "How far the mark is off", kind=ANY, label="off by"),
        Step("decimal", "The inches typed, as a decimal", kind=TEXT, label="as decimal inches"),
    ),
    answers=("converted", "ruler", "error", "decimal"),
    headline=("{converted}.",),
    lone=True,
    defers=("stitch length",),
    algorithm=convert,
    no_unknown=("amount",),
    source="international yard and pound, 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg, both exact",
    examples=(
        "convert 5 ft 4 1/2 in to cm -> 163.83 cm",
        "what is 2 3/4 yd in metres -> 2.515 m",
        "60 cm in inches -> 23.622 in; 23 5/8 in",
        "convert 200 gsm to oz/yd2 -> 5.899 oz/yd^2",
        "convert 8 oz to gsm -> 271.246 g/m^2",
        "convert 3 3/8 in to cm -> 8.573 cm; 3.375 in",
    ),
)
