"""Darts, sleeve caps and crotch depth: what is taken out, eased in or allowed to sit down."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, PERCENT, TEXT
from ..engine.literal import literal
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, PERCENT_TENTH, FINE
from ..engine.run import Run

DARTS = Rule(
    topic="darts",
    family="fit",
    says=("darts", "dart", "dart intake", "waist darts", "dart size", "darts each"),
    about="How much each dart takes in, and each of its legs.",
    inputs=(
        Input("larger", "larger measure", LENGTH, says=("hip", "hips", "larger", "bust", "full", "bigger", "from"), axis="",
              ask="What is the larger measure (such as the hips)?", example="100 cm", sane="10 cm..300 cm", practice="86 cm..120 cm by 2 cm"),
        Input("smaller", "smaller measure", LENGTH, says=("waist", "smaller", "under the bust", "narrower", "underbust", "down to"),
              ask="What is the smaller measure (such as the waist)?", example="76 cm", sane="10 cm..300 cm", practice="60 cm..80 cm by 2 cm"),
        Input("difference", "difference to take out", LENGTH,
              says=("difference", "take out", "get rid of", "lose", "excess", "to take out", "remove", "in all", "take in", "reduce", "total"),
              default=Default("=larger - smaller", "Take the smaller measure from the larger", derived=True), sane="1 mm..100 cm"),
        choice("where", "where it is taken out", {
            "darts and side seams": ("half in the side seams", "side seams too", "darts and side seams", "rest in the side seams"),
            "darts only": ("all in the darts", "darts only", "only in darts", "all in darts", "no side seams", "nothing in the side seams",
                           "into the darts", "in darts alone"),
        }, default="darts and side seams", because="half of the difference goes into the side seams, unless said"),
        Input("share", "share in the side seams", PERCENT, says=("in the side seams", "side seams", "at the side seams", "in side seams"),
              default=(Default("50 %", derived=True, when={"where": "darts and side seams"}), Default("0 %", derived=True, when={"where": "darts only"})),
              sane="0 %..100 %"),
        Input("darts", "darts", COUNT, says=("darts", "dart"), noun="dart", ask="How many darts?", example="4 darts", sane="1..24", practice="2..8 by 2"),
    ),
    steps=(
        Step("to_darts", "What the side seams do not take goes into the darts", "difference * (1 - share)", LENGTH, rounding=FINE,
             label="to take in darts", says=("in the darts altogether",)),
        Step("intake", "Share it among the darts", "to_darts / darts", LENGTH, rounding=FINE, label="dart intake",
             says=("each dart", "how big", "how wide", "how deep", "intake", "dart intake", "size of each dart", "take in each", "dart width"),
             stated=("each", "dart of", "darts of", "intake", "wide darts", "deep", "each dart")),
        Step("leg", "Each leg lies half of it from the dart's middle", "intake / 2", LENGTH, rounding=FINE, label="each side of the middle",
             says=("leg", "dart leg", "each leg", "half")),
        Step("seam", "Four side seam edges share what the darts leave", "(difference - intake * darts) / 4", LENGTH, rounding=FINE,
             label="at each side seam edge", says=("each side seam", "side seam edge", "off the side seams")),
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
)  # fmt: skip

# How much a sleeve cap may be longer than its armhole, in order: from how much, and what it suits (common practice).
CAP = (
    ("4 cm", "more than most cloths ease in: it will pucker or look gathered"),
    ("2.5 cm", "the usual for a set-in sleeve in cloth that eases"),
    ("1 cm", "light ease: a flat cap, for firm cloth or a shirt"),
    ("0 cm", "almost none: for knits, dropped shoulders and leather"),
)


def _cap_verdict(run: Run) -> Outcome:
    ease = run.get("ease")
    said = next((words for least, words in CAP if ease >= literal(least)[0]), "the cap is shorter than the armhole: it will not go in")
    run.say("Compare it with what is usual", "", "", said)
    return Outcome({"verdict": said})


SLEEVE_CAP_EASE = Rule(
    topic="sleeve cap ease",
    family="fit",
    says=("sleeve cap", "cap ease", "sleeve head", "armhole", "armscye", "sleeve cap ease", "sleeve ease", "sleeve cap seam", "set-in sleeve"),
    about="How much longer a sleeve's cap is than the armhole it goes into.",
    inputs=(
        Input("cap", "cap seam", LENGTH, says=("cap", "sleeve cap", "sleeve head", "sleeve", "cap seam", "sleeve seam"),
              ask="How long is the seam line of the cap?", example="47 cm", sane="5 cm..150 cm", practice="44 cm..52 cm by 1 cm"),
        Input("armhole", "armhole seam", LENGTH, says=("armhole", "armscye", "armhole seam", "scye", "bodice"),
              ask="How long is the seam line of the armhole?", example="44 cm", sane="5 cm..150 cm", practice="38 cm..48 cm by 1 cm"),
    ),
    steps=(
        Step("ease", "Take the armhole from the cap", "cap - armhole", LENGTH, rounding=FINE, says=("ease", "how much ease", "what ease", "longer"),
             stated=("ease", "of ease", "ease of")),
        Step("share", "As a share of the armhole", "ease / armhole", PERCENT, rounding=PERCENT_TENTH, label="ease as a percentage",
             says=("percentage", "percent")),
        Step("verdict", "Beside what is usual", kind=TEXT, label="what it suits", says=("too much", "enough", "is that ok", "verdict")),
    ),
    answers=("ease", "share", "verdict"),
    headline=("The cap has {ease} of ease ({share}): {verdict}.",),
    algorithm=_cap_verdict,
    source=COMMON_PRACTICE,
    cautions=(Caution("Measure along the stitching lines, not the cut edges."),),
    examples=(
        "sleeve cap 47 cm, armhole 44 cm, how much ease -> 3 cm; 6.8 %",
        "the armhole seam is 17 1/2 in and the sleeve head 18 3/4 in, cap ease -> 1 1/4 in; 7.1 %",
        "armhole 45 cm with 2 cm of ease, how long a sleeve cap -> 47 cm",
    ),
    related=("ease",),
)  # fmt: skip

PANTS_GUIDE = "Guide C-209, Measurements for Fitting Pants, New Mexico State University Cooperative Extension, 2003"
CROTCH_DEPTH = Rule(
    topic="crotch depth",
    family="fit",
    says=("crotch depth", "trouser rise", "rise", "crotch", "body rise", "depth of crotch", "seat depth", "crotch line"),
    about="How far below the waist the crotch line of trousers lies.",
    inputs=(
        Input("seated", "seated side measure", LENGTH,
              says=("seated", "sitting", "sit", "waist to chair", "chair", "to the chair", "to the seat", "waist to seat", "side measure", "seated measure"),
              axis="length", default=Default("=outside - inside", "Take the inside leg from the outside leg", derived=True), sane="5 cm..80 cm"),
        Input("outside", "outside leg", LENGTH, says=("outside leg", "side length", "outseam", "outer leg", "waist to floor", "side seam"),
              ask="What is the side measure from waist to chair, sitting (or the outside and the inside leg)?", example="sitting 27 cm",
              sane="20 cm..160 cm", practice="95 cm..110 cm by 1 cm"),
        Input("inside", "inside leg", LENGTH, says=("inside leg", "inseam", "inner leg", "inside leg seam"), ask="What is the inside leg?",
              example="76 cm", sane="10 cm..120 cm", practice="70 cm..82 cm by 1 cm"),
        choice("size", "size of the hip", {
            "hip under 36 in": ("hip under 36", "small hips", "slim hips"),
            "hip over 38 in": ("hip over 38", "large hips", "full hips", "fuller hips"),
            "not said": (),
        }, default="not said", because="the ease is taken as 1/2 in (1.5 cm)"),
        Input("ease", "ease", LENGTH, says=("ease", "with", "plus", "crotch ease"), default=(
            Default("1 in", "published for hips over 38 in", when={"size": "hip over 38 in"}),
            Default("1/2 in", "published for hips under 36 in", when={"size": "hip under 36 in"}),
            Default("1/2 in | 1.5 cm", "the usual; the published guide takes 1/2 in under a 36 in hip and 1 in over 38 in", when={"size": "not said"})),
              sane="0 cm..10 cm", practice="1/2 in..1 in by 1/4 in"),
    ),
    steps=(
        Step("depth", "Add the ease to the seated measure", "seated + ease", LENGTH, rounding=BODY, label="crotch depth",
             says=("crotch depth", "rise", "depth", "how deep", "how long"), axis="depth", stated=("crotch depth", "rise")),
    ),
    answers=("depth",),
    headline=("Draw the crotch line {depth} below the waist.",),
    source=PANTS_GUIDE,
    cautions=(Caution("Sit on a hard chair, and measure from the waist down the side to the seat of the chair."),),
    examples=(
        "crotch depth: sitting measure 27 cm -> 28.5 cm",
        "outside leg 42 in, inside leg 31 in, crotch depth with 1/2 in ease -> 11 1/2 in",
        "trouser rise, waist to chair 11 in, full hips -> 12 in",
    ),
    related=("ease",),
)  # fmt: skip
