"""Ease in a sleeve cap: how much longer it is than its armhole."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, PERCENT, TEXT
from ..engine.literal import literal
from ..engine.outcome import Outcome
from ..engine.rounding import FINE, PERCENT_TENTH
from ..engine.run import Run
from .words import told

# How much a sleeve cap may be longer than its armhole, in order: from how much, and what it suits (common practice).
CAP = (
    ("4 cm", "more than most cloths ease in: it will pucker or look gathered"),
    ("2.5 cm", "the usual for a set-in sleeve in cloth that eases"),
    ("1 cm", "light ease: a flat cap, for firm cloth or a shirt"),
    ("0 cm", "almost none: for knits, dropped shoulders and leather"),
)


def _cap_verdict(run: Run) -> Outcome:
    ease = run.get("ease")
    said = next(
        (words for least, words in CAP if ease >= literal(least)[0]),
        "the cap is shorter than the armhole: it will not go in",
    )
    run.say("Compare it with what is usual", "", "", said)
    return Outcome({"verdict": said})


SLEEVE_CAP_EASE = Rule(
    topic="sleeve cap ease",
    family="fit",
    says=(
        "sleeve cap",
        "cap ease",
        "sleeve head",
        "armhole",
        "armscye",
        "sleeve cap ease",
        "sleeve ease",
        "sleeve cap seam",
        "set-in sleeve",
        "sleevehead",
        "sleeve crown",
        "scye",
    ),
    about="How much longer a sleeve's cap is than the armhole it goes into.",
    inputs=(
        Input(
            "cap",
            "cap seam",
            LENGTH,
            says=(
                *told("cap", "sleeve cap", "sleeve head", "cap seam"), "sleevehead", "sleevecap", "crown", "sleeve crown",
                "sleeve head", "sleeve", "cap seam", "sleeve seam",
            ),
            ask="How long is the seam line of the cap?",
            example="47 cm",
            sane="5 cm..150 cm",
            practice="44 cm..52 cm by 1 cm",
        ),
        Input(
            "armhole",
            "armhole seam",
            LENGTH,
            says=(*told("armhole", "armscye", "armhole seam", "scye"), "bodice"),
            ask="How long is the seam line of the armhole?",
            example="44 cm",
            sane="5 cm..150 cm",
            practice="38 cm..48 cm by 1 cm",
        ),
    ),
    steps=(
        Step(
            "ease",
            "Take the armhole from the cap",
            "cap - armhole",
            LENGTH,
            rounding=FINE,
            says=("ease", "cap ease", "how much ease", "what ease", "longer"),
            stated=("ease", "of ease", "ease of"),
            sane="-15 cm..15 cm",
        ),
        Step(
            "share",
            "As a share of the armhole",
            "ease / armhole",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="ease as a percentage",
            says=(
                "percentage", "what percent", "as a percent", "in percent", "percent", "ease percentage", "percentage ease",
                "percent ease", "percentage of ease", "ease percent", "per cent",
            ),
        ),
        Step(
            "verdict",
            "Beside what is usual",
            kind=TEXT,
            label="what it suits",
            says=(
                "will it go in", "will it go into", "too much", "enough", "is that ok", "verdict", "too much ease",
                "is that too much ease", "is that too much",
                "enough ease",
            ),
        ),
    ),
    answers=("ease", "share", "verdict"),
    headline=("The cap has {ease} of ease ({share}): {verdict}.",),
    algorithm=_cap_verdict,
    source=COMMON_PRACTICE,
    refusals=(
        Refusal(
            "cap < armhole * 3 / 4",
            "the cap is far shorter than the armhole, so that it cannot be set in: see that both are measured along the whole "
            "seam line. Such as: sleeve cap 47 cm, armhole 44 cm",
        ),
    ),
    cautions=(Caution("Measure along the stitching lines, not the cut edges."),),
    examples=(
        "sleeve cap 47 cm, armhole 44 cm, how much ease -> 3 cm; 6.8 %",
        "the armhole seam is 17 1/2 in and the sleeve head 18 3/4 in, cap ease -> 1 1/4 in; 7.1 %",
        "armhole 45 cm with 2 cm of ease, how long a sleeve cap -> 47 cm",
    ),
    related=("ease",),
)
