"""Ease: what a garment has over the body, and what it should measure for an ease."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, flag
from ..engine.kinds import COUNT, LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import FINE, PERCENT_TENTH
from ..engine.run import Needs, Run
from .ease_table import verdict
from .words import GARMENT, GARMENT_WORDS, PLACE, PLACE_WORDS, WHOSE, told

# "Blouse bust 98" is the blouse, or the body it is for where another number is said to be finished.
GARMENT_PLACES = tuple(f"{garment} {place}" for garment in GARMENT_WORDS for place in ("bust", "chest", "waist", "hip", "hips"))

WHAT_MEASURES = tuple(f"{verb} the {garment} measure" for verb in ("does", "should", "will", "must") for garment in GARMENT_WORDS)

STRETCH_ONLY = Caution(
    "Negative ease needs a cloth that stretches: check that the cloth stretches easily this far and springs back.",
    when="ease < 0",
)

BODY_MEASURE = Input(
    "body",
    "body measure",
    LENGTH,
    says=(
        "body", "i measure", "she measures", "i am", "she is", "i'm", "who is", "who", "she", "he", "she has", "he has", "has",
        "person", "wearer",
        "body is", *told(*PLACE_WORDS), *WHOSE, "me", "mine", "mine is", "than mine",
        *(f"body {place}" for place in PLACE_WORDS),
        *(f"how big {be} {her} {place}" for be in ("is", "are") for her in ("her", "his", "my", "their") for place in ("bust",
            "waist", "hips")),
        *GARMENT_PLACES,
    ),
    ask="What does the body measure there?",
    example="92 cm",
    sane="9 cm..300 cm",
    practice="70 cm..120 cm by 1 cm",
)
FINISHED_MEASURE = Input(
    "finished",
    "finished measure",
    LENGTH,
    says=(
        "finished",
        *(f"{verb}{by}" for verb in ("let out", "let it out", "taken in", "take it in", "took it in") for by in ("", " by")),
        "garment",
        "pattern",
        "finished garment",
        "finished size",
        "pattern measure",
        "garment measure",
        "finished width",
        "the pattern is",
        "pattern piece",
        "flat pattern",
        "made up",
        "collar",
        "cuff",
        "waistband",
        "hoodie",
        "copied",
        "how big",
        "how big round",
        "how wide all round",
        "how big all round",
        "what does it measure",
        "what should it measure",
        "what will it measure",
        "pattern comes to",
        "comes to",
        "and measures",
        "comes out",
        "make the waistband",
        "waistband is",
        "waistband measures",
        *(f"{garment} is" for garment in (*GARMENT_WORDS, "garment")),
        *GARMENT_WORDS,
        *(f"finished {place}" for place in PLACE_WORDS),
        *(f"{garment} {comes}" for garment in GARMENT_WORDS for comes in ("measures", "came out", "came out at", "comes out at")),
        *(f"{garment} be" for garment in (*GARMENT_WORDS, "it", "garment")),
        *told(*GARMENT_PLACES),
        *WHAT_MEASURES,
    ),
    ask="What does the finished garment measure there?",
    example="98 cm",
    sane="9 cm..400 cm",
    practice="75 cm..140 cm by 1 cm",
)


# A garment on the table shows half of what goes round.
FLAT = flag("flat", "measured flat", ("laid flat", "lying flat", "lies flat", "measured flat", "across flat", "flat across",
    "laid out flat"))
TIMES = Input(
    "times",
    "times it goes across",
    COUNT,
    spoken=True,
    sane="1..2",
    default=(Default("1", derived=True, when={"flat": "no"}), Default("2", derived=True, when={"flat": "yes"})),
)


def _verdict(run: Run) -> Outcome:
    """What the published tables say of the ease, for the place named. Raises Needs when no place was."""
    place = run.maybe("place")
    if not place:
        raise Needs("")
    garment = run.maybe("garment") or ""
    said = verdict(run.get("ease"), place, garment, run.unit_of(LENGTH))
    if not said:
        larger = "larger than the body" if run.get("ease") > 0 else "no larger than the body"
        said = f"{larger}; nothing is published here for the {place}{f' of a {garment}' if garment else ''}"
    run.say("Compare it with what is published for the place", "", "", said)
    return Outcome({"verdict": said})


EASE = Rule(
    topic="ease",
    family="fit",
    says=(
        "ease",
        "wearing ease",
        "design ease",
        "how much ease",
        "positive ease",
        "how roomy",
        "room in it",
        "finished from ease",
        "add ease",
        "finished measure with ease",
        "ease added",
        "allow ease",
        "want ease",
        "roomy",
        "roomier",
        "how tight",
        "how loose",
        "bigger than me",
        "bigger than i am",
        "roomier than",
        "how much room",
        "of ease",
        "inches of ease",
        "bigger all round",
        "larger all round",
        "bigger than my body",
        "bigger than my",
        "larger than my",
        "does that leave me",
        "smaller than me",
        "smaller than i am",
        "tighter than me",
        "more than mine",
        "bigger than mine",
        "larger than mine",
        "roomy by",
        "how much bigger is",
        "how much smaller is",
        "how much roomier",
        "does it leave me",
        "of room",
        "to sit down in",
        "laid flat",
        *(f"should the {garment} come out" for garment in GARMENT_WORDS),
        *(f"how much too {how} is" for how in ("small", "big", "large", "tight", "loose")),
    ),
    about=(
        "How much larger a garment is than the body, what published tables say of it, and the garment "
        "or the body for an ease."
    ),
    inputs=(BODY_MEASURE, FINISHED_MEASURE, FLAT, TIMES, PLACE, GARMENT),
    steps=(
        Step(
            "ease",
            "Take the body measure from the finished measure all round",
            "finished * times - body",
            LENGTH,
            rounding=FINE,
            says=("roomy", "room", "how much ease", "how much bigger", "how much roomier", "how much larger", "too big is", "too large is",
                "too loose is"),
            stated=(
                "ease",
                "with",
                "of ease",
                "ease of",
                "plus",
                "bigger",
                "roomier",
                "wearing ease",
                "of room",
                "extra",
                "more than",
                "bigger than",
                "larger than",
                "roomy by",
                "roomier by",
                "bigger by",
                "larger by",
                "looser by",
                "room",
                "design ease",
                "add",
                "allow",
            ),
            sane="-40 cm..50 cm",
        ),
        Step(
            "share",
            "As a share of the body measure",
            "ease / body",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="ease as a percentage",
            says=(
                "percentage", "percent", "as a percentage", "what percent ease is", "what percentage ease is", "per cent",
                "as a percent", "in percent",
                "ease as a percent", "ease percentage", "percentage ease", "percent ease", "percentage of ease",
                "ease percent", "per cent ease", "ease as percentage", "ease as a percentage", "ease in percent", "ease in per cent",
            ),
        ),
        # The same the other way about, told as a plain number: "4 cm of negative ease", "2 in smaller than the body".
        Step(
            "short",
            "Take the finished measure from the body measure",
            "body - finished * times",
            LENGTH,
            rounding=FINE,
            label="less than the body",
            says=("how much smaller", "how much tighter", "smaller is the", "how much too small", "how much too tight", "too small is",
                "too tight is"),
            stated=(
                "negative ease",
                "of negative ease",
                "negative ease of",
                "smaller",
                "smaller than the body",
                "smaller than me",
                "smaller than i am",
                "less than the body",
                "tighter",
                "too small",
                "too tight",
            ),
            sane="0 cm..40 cm",
        ),
        Step(
            "short_share",
            "As a share of the body measure",
            "short / body",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="less than the body, as a percentage",
            stated=("smaller", "smaller than the body", "smaller than me", "smaller than i am", "less than the body", "tighter",
                "negative ease"),
        ),
        Step(
            "verdict",
            "What is published",
            kind=TEXT,
            label="beside what is published",
            says=(
                "enough", "is that enough", "verdict", "too much", "too tight", "too loose", "is that enough ease",
                "enough ease",
            ),
        ),
    ),
    answers=("ease", "share", "verdict"),
    headline=("There is {ease} of ease, {share} of the body measure.",),
    algorithm=_verdict,
    defers=("negative ease",),
    source=ARITHMETIC,
    refusals=(
        Refusal(
            "finished * times < body / 2",
            "a garment of less than half the body goes on nobody: see that both are measured all round, and not one of them "
            "flat. Such as: bust 92 cm, dress 98 cm",
        ),
    ),
    cautions=(STRETCH_ONLY,),
    examples=(
        "bust 92 cm, dress 98 cm, ease -> 6 cm; 6.5 %",
        "hip 39 1/2 in and the skirt measures 42 in at the hip: how much ease is that -> 2 1/2 in; 6.3 %",
        "how much ease if my chest is 38 in and the finished chest is 41 in -> 3 in",
        "ease of a swim top that measures 80 cm on an 88 cm bust -> -8 cm; -9.1 %",
        "bust 36 in with 4 in of ease, what should the finished bust measure -> 40 in",
        "a finished waist of 78 cm with 4 cm ease in it, what size waist is that meant for -> 74 cm",
        "hips 98 cm, I want 6 cm ease, how big do I make the skirt -> 104 cm",
    ),
    related=("size choice",),
)
