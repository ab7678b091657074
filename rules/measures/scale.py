"""A length made larger or smaller by a factor or a percentage."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
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
        "test square",
        "reduce to",
        "reduce",
        "reduced",
        "times the size",
        "photocopier",
        "drawing",
        "set the photocopier",
        "set the copier",
        "enlarge it",
        "enlarging it",
        "enlarging it to",
        "reducing it",
        "reducing it to",
        "reduce it",
    ),
    about="A length made larger or smaller by a factor or a percentage (150 % is half as large again).",
    inputs=(
        Input(
            "amount",
            "length",
            LENGTH,
            says=(
                "length", "from", "of", "original", "start with", "started with", "drawing was", "original was", "is",
                "long", "wide", "high",
            ),
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
            # A bare "make it 180" means 180 %: nothing in a workroom is made 180 times as large.
            sane="0.005..50",
            practice="0.5..2",
        ),
        choice(
            "said",
            "by or to",
            {"by": ("by",), "to": ("to", "at", "come to")},
            default=(Default("to", derived=True),),
        ),
        # "Enlarge by 10 %" can only mean a tenth more: a tenth of the size would be no enlargement.
        choice(
            "way",
            "larger or smaller",
            {
                "larger": ("enlarge", "enlarged", "enlarge it", "enlarging", "enlarging it", "blow up", "scale up", "scaled up"),
                "smaller": ("scale down", "scaled down", "reduce", "reduced", "reduce it", "reducing", "reducing it"),
                "not said": (),
            },
            default=(Default("not said", derived=True),),
        ),
        choice(
            "share",
            "what is done with the percentage",
            {
                "of it": ("by how much is it larger", "by how much is it smaller", "how much larger", "how much smaller"),
                "off": ("off", "smaller", "less", "minus", "take off", "knock off"),
                "more": ("extra", "bigger", "larger", "more", "plus", "add", "added", "on top"),
            },
            default=(Default("of it", derived=True),),
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
            says=("how long", "how big", "new length", "new size", "scaled"),
            axis="length",
            when={"share": "of it"},
            stated=(
                "came to", "came out", "came out at", "comes to", "photocopy measures", "copy measures", "photocopy is", "copy is",
                "to", "becomes", "comes out", "come out", "finish", "want", "end up"),
        ),
        Step(
            "less",
            "Take that share of the length off it",
            "amount * (1 - factor)",
            LENGTH,
            rounding=FINE,
            label="length left",
            stated=("came to", "came out", "came out at", "comes out", "comes to", "ended up", "after taking"),
            when={"share": "off"},
        ),
        Step(
            "more",
            "Add that share of the length to it",
            "amount * (1 + factor)",
            LENGTH,
            rounding=FINE,
            label="length in all",
            stated=("came to", "came out", "came out at", "comes out", "comes to", "ended up"),
            when={"share": "more"},
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
        Step(
            "change",
            "What that is over the whole, 100 %",
            "factor - 1",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="change",
            says=(
                "by how much",
                "by how much do i enlarge",
                "by how much do i reduce",
                "by what percentage do i enlarge",
                "by what percentage do i reduce",
                "how much larger",
                "how much smaller",
            ),
        ),
    ),
    answers=("scaled", "less", "more", "percent", "change"),
    tells=("length + ratio",),
    headline=("Scaled, it is {scaled}.", "That leaves {less}.", "With it, that is {more}."),
    refusals=(
        Refusal(
            "factor < 1",
            "a percentage below 100 % makes it smaller, not larger. To make it a tenth larger, type 110 %, such as: enlarge "
            "20 cm to 110 %; to make it smaller: scale 20 cm to 90 %",
            choices={"way": "larger", "share": "of it"},
        ),
        Refusal(
            "factor > 1",
            "a percentage over 100 % makes it larger, not smaller. Such as: scale 20 cm to 80 %, or: enlarge 20 cm to 120 %",
            choices={"way": "smaller", "share": "of it"},
        ),
        Refusal(
            # Half is the one share that is the same whether it is taken off or left.
            "(1 - factor) * abs(factor - 1 / 2) > 0",
            "that could be the share that is taken off, or the size it comes out at. Say which, such as: take 20 % off "
            "20 cm, or: scale 20 cm to 20 %",
            choices={"way": "smaller", "share": "of it", "said": "by"},
        ),
        Refusal("factor > 1", "no more than all of it, 100 %, can be taken off", choices={"share": "off"}),
    ),
    defers=("percentage",),
    source=ARITHMETIC,
    examples=(
        "scale 12 1/2 in by 150% -> 18 3/4 in",
        "enlarge 8 cm to 120 % -> 9.6 cm",
        "photocopy at 125%: a 6 cm piece becomes? -> 7.5 cm",
    ),
)
