"""Darts: what each takes in, and each of its legs."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, PERCENT, TEXT
from ..engine.literal import literal
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, FINE, PERCENT_TENTH
from ..engine.run import Run
from ..engine.kinds import COUNT, LENGTH, PERCENT
from ..engine.rounding import FINE

DARTS = Rule(
    topic="darts",
    family="fit",
    says=("darts", "dart", "dart intake", "waist darts", "dart size", "darts each"),
    about="How much each dart takes in, and each of its legs.",
    inputs=(
        Input(
            "larger",
            "larger measure",
            LENGTH,
            says=("hip", "hips", "larger", "bust", "full", "bigger", "from"),
            axis="",
            ask="What is the larger measure (such as the hips)?",
            example="100 cm",
            sane="10 cm..300 cm",
            practice="86 cm..120 cm by 2 cm",
        ),
        Input(
            "smaller",
            "smaller measure",
            LENGTH,
            says=("waist", "smaller", "under the bust", "narrower", "underbust", "down to"),
            ask="What is the smaller measure (such as the waist)?",
            example="76 cm",
            sane="10 cm..300 cm",
            practice="60 cm..80 cm by 2 cm",
        ),
        Input(
            "difference",
            "difference to take out",
            LENGTH,
            says=(
                "difference",
                "take out",
                "get rid of",
                "lose",
                "excess",
                "to take out",
                "remove",
                "in all",
                "take in",
                "reduce",
                "total",
            ),
            default=Default("=larger - smaller", "Take the smaller measure from the larger", derived=True),
            sane="1 mm..100 cm",
        ),
        choice(
            "where",
            "where it is taken out",
            {
                "darts and side seams": (
                    "half in the side seams",
                    "side seams too",
                    "darts and side seams",
                    "rest in the side seams",
                ),
                "darts only": (
                    "all in the darts",
                    "darts only",
                    "only in darts",
                    "all in darts",
                    "no side seams",
                    "nothing in the side seams",
                    "into the darts",
                    "in darts alone",
                ),
            },
            default="darts and side seams",
            because="half of the difference goes into the side seams, unless said",
        ),
        Input(
            "share",
            "share in the side seams",
            PERCENT,
            says=("in the side seams", "side seams", "at the side seams", "in side seams"),
            default=(
                Default("50 %", derived=True, when={"where": "darts and side seams"}),
                Default("0 %", derived=True, when={"where": "darts only"}),
            ),
            sane="0 %..100 %",
        ),
        Input(
            "darts",
            "darts",
            COUNT,
            says=("darts", "dart"),
            noun="dart",
            ask="How many darts?",
            example="4 darts",
            sane="1..24",
            practice="2..8 by 2",
        ),
    ),
    steps=(
        Step(
            "to_darts",
            "What the side seams do not take goes into the darts",
            "difference * (1 - share)",
            LENGTH,
            rounding=FINE,
            label="to take in darts",
            says=("in the darts altogether",),
        ),
        Step(
            "intake",
            "Share it among the darts",
            "to_darts / darts",
            LENGTH,
            rounding=FINE,
            label="dart intake",
            says=(
                "each dart",
                "how big",
                "how wide",
                "how deep",
                "intake",
                "dart intake",
                "size of each dart",
                "take in each",
                "dart width",
            ),
            stated=("each", "dart of", "darts of", "intake", "wide darts", "deep", "each dart"),
        ),
        Step(
            "leg",
            "Each leg lies half of it from the dart's middle",
            "intake / 2",
            LENGTH,
            rounding=FINE,
            label="each side of the middle",
            says=("leg", "dart leg", "each leg", "half"),
        ),
        Step(
            "seam",
            "Four side seam edges share what the darts leave",
            "(difference - intake * darts) / 4",
            LENGTH,
            rounding=FINE,
            label="at each side seam edge",
            says=("each side seam", "side seam edge", "off the side seams"),
        ),
    ),
    answers=("intake", "leg", "seam"),
    headline=("Make each dart {intake} wide: {leg} each side of its middle.",),
    source=COMMON_PRACTICE,
    cautions=(
        Caution("A dart this wide pokes out at its point: use two in its place.", when="intake > 38"),
        Caution("The measures are the wrong way round, or the larger is not the larger.", when="difference < 0"),
    ),
    examples=(
        "Hips 100 cm, waist 76 cm, four darts - how big is each dart? -> 3 cm; 1.5 cm",
        "darts to take out a difference of 6 in, 4 darts, all in the darts -> 1 1/2 in; 3/4 in",
        "waist 28 in, hips 38 in, how many darts of 1 1/4 in each, half in the side seams -> 4 darts",
    ),
    related=("spread a change",),
)
