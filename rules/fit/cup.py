"""Bust and high bust: the cup a pattern is drafted for, and by which of them to choose its size."""

from __future__ import annotations

from fractions import Fraction
from math import floor

from ..engine.declare import Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Number
from ..engine.rounding import FINE
from ..engine.run import Impossible, Run
from ..engine.units import factor
from .words import told

CUPS = ("A", "B", "C", "D")  # a cup for each inch of difference, from 1 in
CUP_SOURCE = (
    "a fitting guide for three pattern lines: cup by bust less high bust (Vogue, Butterick and McCall's); "
    "the high bust rule: Principles of Pattern Alteration, Texas Agricultural Extension Service"
)


def cup_of(difference: Number) -> str:
    """The pattern cup nearest a difference in base units. Raises Impossible beyond those published."""
    inches = floor(Fraction(difference) / factor("in") + Fraction(1, 2))  # midway between two cups: the fuller
    if inches > len(CUPS):
        raise Impossible(
            "the difference is more than the 4 in of a D cup: alter the bust of the pattern, or draft it. "
            "Check both measures"
        )
    return CUPS[max(inches, 1) - 1]


def _cup(run: Run) -> Outcome:
    difference = run.get("difference")
    cup = cup_of(difference)
    run.say("Each inch of difference is a cup, from A at 1 in", "", "", f"{cup} cup")
    by = "high bust" if difference >= 2 * factor("in") else "bust"
    run.say("From 2 in of difference on, choose the size by the high bust", "", "", f"by the {by}")
    return Outcome({"cup": f"{cup} cup", "choose_by": f"choose the pattern size by the {by}"})


CUP_SIZE = Rule(
    topic="cup size",
    family="fit",
    says=(
        "cup size",
        "cup",
        "high bust",
        "pattern cup",
        "full bust adjustment",
        "high bust measure",
        "bust adjustment",
        "above the bust",
        "upper bust",
        "fullest part",
    ),
    about="The cup that a bust and a high bust stand for, and by which of them to choose the pattern size.",
    inputs=(
        Input(
            "bust",
            "full bust",
            LENGTH,
            says=told("full bust", "bust", "fullest", "fullest part", "round the fullest part"),
            ask="What is the full bust?",
            example="38 in",
            sane="40 cm..200 cm",
            practice="34 in..42 in by 1/2 in",
        ),
        Input(
            "high_bust",
            "high bust",
            LENGTH,
            says=told("high bust", "upper bust", "above the bust", "over the bust", "above it", "under the arms"),
            ask="What is the high bust?",
            example="35 in",
            sane="40 cm..200 cm",
            practice="33 in..39 in by 1/2 in",
        ),
    ),
    steps=(
        Step(
            "difference",
            "Take the high bust from the full bust",
            "bust - high_bust",
            LENGTH,
            rounding=FINE,
            label="difference",
            says=("difference", "between them", "between the two", "how far apart", "difference in cm", "difference in inches",
                "difference between them"),
        ),
        Step("cup", "The cup", kind=TEXT, label="cup", says=("cup", "cup size", "what cup")),
        Step(
            "choose_by",
            "Which to choose the size by",
            kind=TEXT,
            label="choose by",
            says=(
                "choose by",
                "by which do i choose", "by which", "do i choose by",
                "which measure",
                "go by",
                "size by",
                "which should i",
                "choose the size by the high bust",
                "choose by the high bust",
                "go by the high bust",
                "use the high bust",
                "choose my size by",
                "choose the size by",
            ),
        ),
    ),
    answers=("cup", "difference", "choose_by"),
    headline=("That is a pattern's {cup}, for a difference of {difference}: {choose_by}.",),
    algorithm=_cup,
    refusals=(
        Refusal(
            "high_bust > bust",
            "the high bust, above the bust and under the arms, is never larger than the full bust: see that the two are "
            "not changed round. Such as: full bust 38 in, high bust 35 in",
        ),
    ),
    source=CUP_SOURCE,
    examples=(
        "full bust 38 in, high bust 35 in, what cup size is that -> C cup; 3 in; choose the pattern size "
        "by the high bust",
        "pattern cup: bust 92 cm, high bust 89.5 cm -> A cup; 2.5 cm",
        "high bust 34 in and bust 36 in, do I go by the bust or the high bust -> B cup; choose the "
        "pattern size by the high bust",
    ),
    related=("size choice",),
)
