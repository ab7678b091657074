"""A length made larger or smaller by a factor or a percentage."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Input, Rule, Step
from ..engine.kinds import LENGTH, PERCENT, RATIO
from ..engine.rounding import FINE, PERCENT_TENTH

SCALE = Rule(
    topic="scale",
    family="measures",
    says=(
        "scale",
        "scaled",
        "enlarge",
        "enlarged",
        "blow up",
        "photocopy",
        "copier",
        "scale factor",
        "scale up",
        "scale down",
        "enlargement",
        "resize",
        "shrink to",
        "print at",
        "printed at",
        "reduce to",
        "times the size",
    ),
    about="A length made larger or smaller by a factor or a percentage (150 % is half as large again).",
    inputs=(
        Input(
            "amount",
            "length",
            LENGTH,
            says=("length", "from", "of", "original", "is"),
            ask="Which length?",
            example="12 in",
            sane="0.1 mm..10 km",
            practice="2 in..30 in by 1/2 in",
        ),
        Input(
            "factor",
            "factor",
            RATIO,
            says=("by", "to", "times", "at", "percent", "factor", "scale", "percentage", "scale factor", "enlarge by"),
            ask="By what factor or percentage?",
            example="150 %",
            sane="0.001..1000",
            practice="0.5..2",
        ),
    ),
    steps=(
        Step(
            "scaled",
            "Multiply the length by the factor",
            "amount * factor",
            LENGTH,
            rounding=FINE,
            label="scaled length",
            says=("how long", "how big", "new length", "scaled"),
            axis="length",
            stated=("to", "becomes", "comes out", "finish", "want"),
        ),
        Step(
            "percent",
            "The factor as a percentage",
            "factor",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="as a percentage",
            says=("percentage", "percent"),
        ),
    ),
    answers=("scaled", "percent"),
    tells=("length", "ratio"),
    headline=("Scaled, it is {scaled}.",),
    source=ARITHMETIC,
    cautions=(
        Caution(
            "This makes it smaller: for one part in ten larger, type 110 %.",
            when="factor < 1",
            mentions=("enlarge", "enlargement", "up", "enlarged"),
        ),
    ),
    examples=(
        "scale 12 1/2 in by 150% -> 18 3/4 in",
        "enlarge 8 cm to 120 % -> 9.6 cm",
        "photocopy at 125%: a 6 cm piece becomes? -> 7.5 cm",
    ),
)
