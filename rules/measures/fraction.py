"""Decimal inches as a ruler's fraction, with the error; and a fraction as a decimal."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import ARITHMETIC, Default, Input, Rule, Step, choice
from ..engine.kinds import ANY, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.rounding import snap
from ..engine.run import Impossible, Run
from ..engine.text import decimal, mixed
from ..engine.units import factor

MARKS = (16, 8, 4, 2)  # the marks of a ruler, as parts of an inch
FINEST = 64
# The marks as they are spoken of without a number: "in eighths".
TEETH = {"sixteenths": 16, "eighths": 8, "quarters": 4, "halves": 2}


def _mark(run: Run) -> Fraction:
    """The mark to round to, in inches: what was asked for, or 1/16. Raises Impossible for one that no ruler has."""
    if not run.was_given("mark"):
        return Fraction(1, TEETH[run.get("teeth")])
    mark = Fraction(run.get("mark")) / factor("in")
    below = mark.denominator
    if mark.numerator != 1 or below > FINEST or below & (below - 1):
        raise Impossible(
            f"a ruler has no marks {decimal(mark)} in apart: it has 1/2, 1/4, 1/8 and 1/16. Such as: 3.37 "
            f"in to the nearest 1/8"
        )
    return mark


def _said(inches: Fraction, mark: Fraction) -> str:
    """A length to the nearest mark, with how far off that is: "3 3/8 in (0.005 in over)"."""
    near = snap(inches, mark, "near")
    return f"{mixed(near)} in ({_off(near - inches)})"


def _off(error: Fraction) -> str:
    return "exactly" if not error else f"{decimal(abs(error), 4)} in {'over' if error > 0 else 'under'}"


def fraction(run: Run) -> Outcome:
    """The nearest mark and its error, the coarser marks, the decimal and the metric length."""
    inches = Fraction(run.get("amount")) / factor("in")
    mark = _mark(run)
    near = snap(inches, mark, "near")
    run.say(
        f"Count the {mixed(mark)} in marks and take the nearest",
        f"length ÷ {mixed(mark)} in",
        f"{decimal(inches, 4)} ÷ {mixed(mark)}",
        f"{decimal(inches / mark, 2)} marks: {_said(inches, mark)}",
    )
    others = "; ".join(
        f"to 1/{below}: {_said(inches, Fraction(1, below))}" for below in MARKS if Fraction(1, below) != mark
    )
    return Outcome(
        {
            "near": Amount(near * factor("in"), "in"),
            "error": _off(near - inches),
            **dict.fromkeys(("decimal", "as_decimal"), f"{decimal(inches, 4)} in"),
            "metric": Amount(inches * factor("in"), "cm"),
            "others": others,
        }
    )


FRACTION = Rule(
    topic="fraction",
    family="measures",
    says=(
        "as a fraction",
        "fraction",
        "nearest 1/8",
        "nearest 1/16",
        "nearest 1/4",
        "nearest 1/2",
        "nearest sixteenth",
        "nearest eighth",
        "on a ruler",
        "on the ruler",
        "nearest mark",
        *(f"closest {mark}" for mark in ("eighth", "sixteenth", "quarter", "half inch", "mark", "1/8", "1/16", "1/4")),
        "nearest",
        "as a decimal",
        "decimal",
        "in decimals",
        "to the nearest",
        "round to the nearest",
        "on a tape",
        "on my tape",
        "fraction of",
        "normal ruler",
        "with a ruler",
        "to the 1/16",
        "on the tape measure",
        "on a tape measure",
        "on my tape measure",
        "on my ruler",
        "in sixteenths",
        "in 16ths",
        "in eighths",
        "in 8ths",
    ),
    about="Decimal inches to the nearest mark of a ruler, with the error; and a fraction as a decimal.",
    inputs=(
        Input(
            "amount",
            "length",
            LENGTH,
            says=("length", "what is", "round", "convert"),
            ask="Which length?",
            example="3.37 in",
            sane="-1 km..1 km",
            practice="1 in..30 in by 1/8 in",
        ),
        choice(
            "into",
            "into",
            {
                "fraction": ("as a fraction", "fraction"),
                "decimal": ("as a decimal", "decimal", "in decimals", "decimals"),
            },
            default=(Default("fraction", derived=True),),
        ),
        choice(
            "teeth",
            "marks",
            {
                "sixteenths": ("in sixteenths", "closest sixteenth", "sixteenths", "in 16ths"),
                "eighths": ("in eighths", "closest eighth", "eighths", "in 8ths"),
                "quarters": ("in quarters", "closest quarter", "quarters", "quarter inches"),
                "halves": ("in halves", "closest half inch", "half inches"),
            },
            default=(Default("sixteenths", derived=True),),
        ),
        # "0.625 as a fraction of an inch": the inch is what it is a fraction of, and no mark.
        Input("whole", "inch", LENGTH, says=("fraction of", "decimal of"), spoken=True, extra=True, sane="2.5 cm..2.6 cm"),
        Input(
            "mark",
            "mark",
            LENGTH,
            says=("nearest", "to the nearest", "to the", "marks"),
            extra=True,
            sane="0.1 mm..1 m",
        ),
    ),
    steps=(
        Step("near", "The nearest mark", kind=ANY, label="nearest mark", says=("fraction", "nearest", "as a fraction")),
        Step("error", "How far off that is", kind=TEXT, label="error", says=("error", "how far off", "how far out")),
        Step("as_decimal", "As a decimal", kind=TEXT, label="as a decimal", when={"into": "decimal"}),
        Step("decimal", "As a decimal", kind=TEXT, label="decimal", when={"into": "fraction"}),
        Step("metric", "In centimetres", kind=ANY, label="in centimetres"),
        Step("others", "To coarser marks", kind=TEXT, label="to other marks"),
    ),
    answers=("as_decimal", "near", "error", "decimal", "metric", "others"),
    headline=("{as_decimal}.", "{near}, {error}."),
    home="in",
    algorithm=fraction,
    no_unknown=("amount", "mark", "whole"),
    source=ARITHMETIC,
    examples=(
        "3.37 in as a fraction -> 3 3/8 in",
        "what is 5.79 in to the nearest 1/8 -> 5 3/4 in",
        "2 5/16 in as a decimal -> 2.3125 in",
    ),
)
