"""In which unit an answer is wanted: "in metres", "how many yards", "per m", "= ? lignes"."""

from __future__ import annotations

from rules.engine.declare import Rule, Step
from rules.engine.kinds import COUNT, LENGTH
from rules.engine.units import SPELLED

from .values import LENGTHS, Line

UNITS_ASKED = {
    "inch": "in", "in": "in", "inche": "in", "cm": "cm", "centimetre": "cm", "centimeter": "cm", "mm": "mm", "millimetre": "mm",
    "metre": "m", "m": "m", "yard": "yd", "yd": "yd", "yardage": "yd", "foot": "ft", "ft": "ft", "metric": "metric",
    "imperial": "inches", "gram": "g", "g": "g", "ounce": "oz", "oz": "oz", "kg": "kg", "litre": "l", "gsm": "g/m^2", "lb": "lb",
    "ligne": "ligne",
}  # fmt: skip
BOUGHT_BY = ("yd", "m")
CLOSING, STOPS = frozenset(("?", ".", "please")), frozenset((",", ".", ";", ":", "?", "-"))
LEAD = frozenset(("in", "many", "total", "into", "to", "as", "much", "=", "?"))


def length_asked(line: Line) -> str:
    """A unit of length when "what length" is asked, of no thing in particular; "" otherwise."""
    pairs = zip(line.words, line.words[1:], strict=False)
    return "m" if ("what", "length") in pairs else ""


def in_unit(rule: Rule, line: Line) -> tuple[str, ...]:
    """The result asked for by its unit alone: "= ? lignes", a length where the rule's own answer is a count, "... 60 in cloth: yards"."""
    unit = unit_asked(line) or length_asked(line)
    steps = [step for name in rule.answers if (step := rule.step(name)) is not None]
    if not unit or unit not in LENGTHS or not steps:
        return ()
    own = [step for step in steps if unit in _shown_in(step)]
    if unit == "ligne" and own:
        return (own[0].name,)
    bought = [step for step in steps if step.rounding is not None and step.rounding.bought]
    if bought and unit in BOUGHT_BY and _closing(line):
        return (bought[0].name,)
    if steps[0].kind is not COUNT or rule.parts:
        return ()
    lengths = [step for step in steps if step.kind is LENGTH]
    lengths.sort(key=lambda step: step not in bought)
    return (lengths[0].name,) if lengths else ()


def _shown_in(step: Step) -> tuple[str, ...]:
    """The units a step is shown in, when they are its own."""
    rounded = (step.rounding.inch.unit, step.rounding.metric.unit) if step.rounding is not None else ()
    return step.unit or rounded


def unit_asked(line: Line) -> str:
    """The unit an answer is wanted in ("in metres", "how many yards"), "metric", "inches", or ""."""
    found = ""
    words = line.words
    for spot in range(len(words) - 1):
        if spot in line.at_value or words[spot] not in LEAD or spot + 1 in line.at_value:
            continue
        unit = UNITS_ASKED.get(words[spot + 1], "")
        if unit and not (words[spot + 1] == "in" and words[spot] != "in"):
            found = unit
    for spot in line.at_value:
        after = spot + 1
        if after < len(words) and after not in line.at_value and words[after] in UNITS_ASKED and words[after] not in ("in", "foot"):
            found = found or UNITS_ASKED[words[after]]
    found = found or _closing(line)
    found = _compound(line) or found
    if "yardage" in words:
        found = found or "yd"
    return found


def _closing(line: Line) -> str:
    """The unit that closes a line in a part of its own: "12 squares from 54 in wide, yds", "double fullness. Metres please?"."""
    words, spot = line.words, len(line.words) - 1
    while spot > 0 and words[spot] in CLOSING:
        spot -= 1
    alone = spot > 0 and words[spot - 1] in STOPS and spot not in line.at_value
    return UNITS_ASKED.get(words[spot], "") if alone else ""


def rate_asked(line: Line) -> bool:
    """Whether a length that a rate is wanted for is said: "per m", "a yard"."""
    words = line.words
    return any(
        words[spot] in ("per", "a", "by", "the", "/") and UNITS_ASKED.get(words[spot + 1]) in LENGTHS
        for spot in range(len(words) - 1)
        if spot not in line.at_value and spot + 1 not in line.at_value
    )


# Units of more than one word or sign ("oz/yd2", "ounces to the square yard"), longest first, outside any measure.
COMPOUND = sorted((spelled for spelled in SPELLED if not spelled.isalpha() and len(spelled) > 3), key=len, reverse=True)


def _compound(line: Line) -> str:
    low = line.text.lower()
    if "/" not in low and "per" not in low and "square" not in low and "sq" not in low and "²" not in low:
        return ""
    for value in line.values:
        low = low[: value.start] + "#" * (value.end - value.start) + low[value.end :]
    return next((SPELLED[spelled] for spelled in COMPOUND if spelled in low), "")
