"""Sizes to knit for, by the published tables: bodies, heads, hats, feet, hands and blankets."""

from __future__ import annotations

import re
from fractions import Fraction

from ..engine.declare import Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import CHOICE, COUNT, LENGTH, TEXT
from ..engine.literal import number
from ..engine.outcome import Outcome
from ..engine.rounding import BODY
from ..engine.run import Impossible, Run
from ..engine.units import factor
from .tables.sizes import SIZES, Printed

MONTHS = {"week": Fraction(1, 4), "month": Fraction(1), "year": Fraction(12), "T": Fraction(12)}
GROWN = Fraction(18 * 12)
NO_AGE = re.compile(r"glove|bust|blanket|mattress|afghan|throw|crib|adult M|X", re.IGNORECASE)
_AGE = re.compile(r"(\d+(?:\.\d+)?)\s*(week|month|year|T)?")


def ages(row: Printed) -> tuple[Fraction, Fraction] | None:
    """The ages in months that a row's size is for, or None when its size is no age. A child's bare number is years."""
    found = _AGE.findall(row.size)
    if not found or NO_AGE.search(row.size) or (not any(unit for _, unit in found) and row.who != "child"):
        return None
    unit = next((unit for _, unit in reversed(found) if unit), "year")
    ends = []
    for figure, own in reversed(found):
        unit = own or unit
        ends.append(number(figure) * MONTHS[unit])
    low, high = ends[-1], ends[0]
    if "younger" in row.size:
        low = Fraction(0)
    if "older" in row.size or "adult" in row.size:
        high = GROWN
    return low, high


def _matches(run: Run) -> list[Printed]:
    """The rows of the measure for the wearer and the size or age that was said, the nearest age first."""
    measure = run.get("measure")
    who = run.get("who")
    rows = [row for row in SIZES if row.measure == measure and (who == "any" or row.who in ("", who))]
    if not rows and who in ("boy", "girl"):
        # Boys and girls have rows of their own for few measures; for the others they are children.
        rows = [row for row in SIZES if row.measure == measure and row.who in ("", "child")]
    size = run.get("size")
    named = [row for row in rows if row.size == size] or [row for row in rows if _alike(row.size, size)]
    if named and not any(run.was_given(name) for name in ("years", "months", "aged")):
        return named
    months = _months(run)
    held = [(row, span) for row in rows if (span := ages(row)) and span[0] <= months <= span[1]]
    return [row for row, span in sorted(held, key=lambda entry: entry[1][1] - entry[1][0])]


def _alike(one: str, other: str) -> bool:
    """Whether two printed sizes are called the same: "Crib blanket" and "Crib" and "Crib mattress top"."""
    return bool(set(_size_words(one)) & set(_size_words(other)))


def _months(run: Run) -> Fraction:
    aged = run.get("aged")
    if aged != "none":
        number_of, unit = aged.split()
        return Fraction(number_of) * MONTHS[unit]
    if run.get("size") == "Newborn":
        return Fraction(0)  # an age as well as a size, where a table has ages only
    months = run.maybe("months")
    return Fraction(months) if months is not None else Fraction(run.get("years")) * 12


def _look_up(run: Run) -> Outcome:
    rows = _matches(run)
    if not rows:
        listed = list(dict.fromkeys(row.size for row in SIZES if row.measure == run.get("measure")))[:14]
        raise Impossible(f"the published tables give no {run.get('measure').replace('_', ' ')} for that size; they "
                         f"have: {', '.join(listed)}")
    first, *others = rows
    run.say("Find the row of the published table", "", first.source, f"{_named(first)}: {first.value} {first.unit}")
    values: dict[str, object] = {"range": _text(first)}
    if "x" not in first.value:
        low, high = _ends(first)
        values |= {"low": low, "high": high}
    notes = [*(f"Another list: {_named(row)}, {_text(row)} ({row.source})." for row in others
                                         if _text(row) != _text(first))]
    return Outcome(values, notes=tuple(dict.fromkeys(notes)))


def _named(row: Printed) -> str:
    return f"{row.who} {row.size}".strip()


def _ends(row: Printed) -> tuple[Fraction, Fraction]:
    low, _, high = row.value.partition("-")
    return number(low) * factor(row.unit), number(high or low) * factor(row.unit)


def _text(row: Printed) -> str:
    return f"{row.value.replace('-', ' to ')} {row.unit}"


def _size_words(size: str) -> tuple[str, ...]:
    """How a named size is said; one with digits is found by its age instead."""
    low = size.lower().removesuffix(" blanket").removesuffix(" mattress top")
    if len(size) <= 3 and not size.isdigit():
        return (f"size {low}", low) if len(size) > 1 else (f"size {low}",)
    if low.startswith("glove size"):
        return (low, low.removeprefix("glove "))
    return (low,) if not re.search(r"\d", low) else ()


_SIZES = {size: _size_words(size) for size in dict.fromkeys(row.size for row in SIZES)}
_ALIASES = {"S": ("small",), "M": ("medium",), "L": ("large",), "XL": ("extra large",), "Toddler": ("toddler",),
            "Newborn": ("newborn", "new baby")}

# "4 year old" is one word for what somebody is, and its number none to place: so it is chosen, like any other word.
_AGES = {**{f"{years} year": (f"{years} year old",) for years in range(1, 19)},
         **{f"{months} month": (f"{months} month old",) for months in range(1, 37)}}

KNITTING_SIZES = Rule(
    topic="knitting sizes",
    family="knitting",
    says=("size chart", "standard size", "average", "usual", "body measurements", "size table", "knitting sizes",
          "typical", "sizing", "standard sizes", "normal size", "standard", "normal", "chart", "by the table", "by the chart",
          "hat girth", "hat circumference"),
    about="A body, head, hat, foot, hand or blanket size by the published tables, for an age or a named size.",
    inputs=(
        choice("measure", "measure", {
            "chest": ("chest",), "bust": ("bust",), "waist": ("waist",), "hip": ("hip", "hips"),
            "back waist length": ("back waist length", "back waist", "nape to waist"),
            "cross back": ("cross back", "back width", "shoulder to shoulder"), "upper arm": ("upper arm", "bicep"),
            "armhole depth": ("armhole depth", "armhole"),
            "sleeve length": ("sleeve length", "sleeve", "arm length"),
            "head": ("head", "head circumference", "head size"),
            "hat girth": ("hat circumference", "hat girth", "hat size"),
            "hat length": ("hat length", "hat height", "hat depth", "deep a hat", "tall a hat"),
            "crown to brow": ("crown to brow",), "foot length": ("foot length", "foot", "sole"),
            "foot girth": ("foot girth", "foot circumference", "ankle"),
            "hand": ("hand", "hand circumference", "glove", "mitten"), "blanket": ("blanket", "afghan", "throw"),
            "mattress": ("mattress", "mattress top"),
            "finished sweater chest": ("finished sweater", "finished chest"),
            "underarm to waist": ("underarm to waist",),
        }, ask="Which measure: chest, head, foot length, hat length, blanket, ...?", example="chest"),
        Input("who", "wearer", CHOICE, options={
            "woman": ("woman", "women", "lady", "ladies", "female"), "man": ("man", "men", "male", "gents"),
            "child": ("child", "children", "kid"), "baby": ("baby", "infant"),
            "boy": ("boy",), "girl": ("girl",), "adult": ("unisex",), "any": ("anyone",),
        }, default=Default("any", derived=True)),
        Input("size", "size", CHOICE, options={**{size: (*words, *_ALIASES.get(size, ())) for size,
                                                  words in _SIZES.items()}, "none": ("no size",)},
              default=Default("none", derived=True)),
        Input("aged", "age", CHOICE, options={**_AGES, "none": ("no age",)}, default=Default("none", derived=True)),
        Input("years", "age in years", COUNT, noun="year", says=("age", "aged", "years old", "year old", "years",
                                                                 "age of", "yr", "yrs", "size", "boy of", "girl of",
                                                                 "child of", "boy aged", "girl aged", "for a"),
              ask="For which age, or which size?", example="4 years", extra=True, sane="0..18", practice="2..10 by 1"),
        Input("months", "age in months", COUNT, noun="month", says=("months", "months old", "month old", "mths"),
              extra=True, sane="0..60", practice="3..24 by 3"),
    ),
    steps=(
        Step("range", "The row's value", kind=TEXT, label="size", says=("size", "chest", "head", "foot", "how big",
                                                                        "how long", "length")),
        Step("low", "Its lower end", kind=LENGTH, rounding=BODY, label="at least"),
        Step("high", "Its upper end", kind=LENGTH, rounding=BODY, label="at most"),
    ),
    answers=("range", "low", "high"),
    headline=("By the table: {range}.",),
    algorithm=_look_up,
    no_unknown=("years", "months"),
    source="published size tables, each named beside its row; body measures without ease unless it says finished",
    cautions=(Caution("Tables differ and so do people: measure the wearer where you can"),),
    examples=(
        "average head circumference of a toddler hat size, hat girth -> 19 in",
        "usual chest of a child aged 6 years, size chart -> 25 in",
        "size chart: bust of a woman, size M -> 36 to 38 in",
    ),
    related=("hat", "sock", "scarf, blanket"),
)
