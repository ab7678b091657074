"""The difference between a body and the size a pattern was made for, shared among its pieces."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Input, Rule, Step
from ..engine.kinds import LENGTH
from ..engine.rounding import FINE
from .size_words import OWN

BODY_TO_PATTERN = Rule(
    topic="body to pattern difference",
    family="fit",
    says=(
        "difference to the pattern",
        "pattern difference",
        "body to pattern",
        "pattern row",
        "adjust the pattern",
        "the pattern size",
        "pattern's bust",
        "alter the pattern",
        "size's bust",
        "quarter pattern",
        "pattern's waist",
        "pattern's hip",
        "quarter piece",
    ),
    about=(
        "What to add to a pattern (or take off) where the body differs from its size, and how much of "
        "it at each quarter piece."
    ),
    inputs=(
        Input(
            "body",
            "body measure",
            LENGTH,
            says=(*OWN, "bust", "waist", "hip", "chest", "hips", "body measure"),
            ask="What does the body measure there?",
            example="96 cm",
            sane="20 cm..250 cm",
            practice="84 cm..120 cm by 1 cm",
        ),
        Input(
            "row",
            "pattern's body measure",
            LENGTH,
            says=(
                "pattern",
                "size",
                "chart",
                "table",
                "drafted for",
                "pattern is for",
                "pattern's",
                "envelope",
                "pattern size",
                "row",
                "made for",
            ),
            ask="What body measure is the pattern's size for?",
            example="92 cm",
            sane="20 cm..250 cm",
            practice="80 cm..110 cm by 2 cm",
        ),
    ),
    steps=(
        Step(
            "difference",
            "Take the pattern's body measure from the body",
            "body - row",
            LENGTH,
            rounding=FINE,
            label="to add all round",
            says=("difference", "altogether", "all round"),
        ),
        Step(
            "quarter",
            "Share it among the four quarter pieces",
            "difference / 4",
            LENGTH,
            rounding=FINE,
            label="at each quarter piece",
            says=("quarter", "each quarter", "per quarter", "each piece", "each side seam", "each quarter piece"),
        ),
    ),
    answers=("difference", "quarter"),
    headline=("Add {difference} all round: {quarter} at each quarter piece.", "Add {quarter} at each quarter piece."),
    source=COMMON_PRACTICE,
    cautions=(
        Caution("A minus means to take off.", when="body < row"),
        Caution("Add the same at every piece that joins it there: facing, waistband, lining."),
    ),
    examples=(
        "my bust is 96 cm, the pattern size is for 92 cm, how much to add per quarter -> 1 cm; 4 cm",
        "pattern difference: hips 41 in, the size chart says 38 in -> 3 in; 3/4 in",
        "alter the pattern: waist 70 cm, pattern's waist 74 cm -> -4 cm; -1 cm",
    ),
    related=("spread a change", "size choice"),
)
