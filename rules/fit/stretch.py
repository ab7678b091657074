"""Stretch of a knit, and how much smaller a pattern is cut for it."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Number
from ..engine.rounding import CUT, FINE, PERCENT_TENTH
from ..engine.run import Run
from .words import PLACE_WORDS, WHOSE, told

# From how much stretch on a knit is called so; the limits differ from book to book and none is a standard.
CLASSES = (
    (75, "super stretch"),
    (50, "stretchy knit"),
    (25, "moderate stretch knit"),
    (18, "stable knit"),
    (0, "hardly a stretch knit"),
)


def class_of(share: Number) -> str:
    """The class of a stretch, given as a share (0.5 for 50 %)."""
    return next((name for least, name in CLASSES if share * 100 >= least), CLASSES[-1][1])


def _class(run: Run) -> Outcome:
    name = class_of(run.get("stretch"))
    run.say("Find the class of knit; the limits differ from book to book", "18, 25, 50 and 75 %", "", name)
    return Outcome({"knit": name})


STRETCH = Rule(
    topic="stretch",
    family="fit",
    says=(
        "stretch", "stretch percentage", "how stretchy", "stretch test", "stretch factor", "crosswise stretch",
        "stretch of a knit", "pulls out to", "pulls from", "pulled from", "stretches from", "pulled out to", "stretches to",
        "stretches out to", "fabric reach", "reach", "when stretched", "is the stretch", "percent is the stretch",
        "stable knit", "stretchy knit", "moderate knit", "knit test", "jersey test", "class of knit", "kind of knit",
        "jersey was", "elastane was",
        *(f"{cloth} {verb}" for cloth in ("knit", "jersey", "rib", "ribbing") for verb in ("pulls", "pulled", "stretches")),
        "how much does it grow",
        "can be pulled", "be pulled", "i can pull it", "can pull it to", "how strechy", "strechy", "how far can",
        "how far will it pull", "how far does it pull",
    ),
    about="How far a cloth stretches, as a percentage of its length at rest, and what class of knit that is.",
    inputs=(
        Input(
            "rested",
            "length at rest",
            LENGTH,
            says=(
                "at rest", "relaxed", "rest", "unstretched", "resting", "folded", "piece", "swatch", "rib", "ribbing", "sample",
                "starts at",
                *told("rested", "at rest", "relaxed", "unstretched"),
                "i pulled", "to pull", "need to pull", "need to stretch", "i stretched", "i took", "from", "is", "measures",
                "stretch",
            ),
            ask="How long is the piece at rest?",
            example="10 cm",
            sane="1 mm..2 m",
            practice="4 in..10 in by 1 in",
        ),
        Input(
            "stretched",
            "stretched length",
            LENGTH,
            says=(
                "pull", "pulled", "pull it", "pull it to", "can pull it to", "pulls to", "goes to", "stretched", "stretches to",
                "stretch to", "reach", "reaches", "must reach",
                "has to reach", "needs to reach", "should reach",
                "pulls to", "pulled to", "goes to", "it goes",
                *told("when stretched", "when pulled"),
                "went to", "it went to", "went out to", "came out at", "goes out to", "stretches", "pulls out to",
                "when pulled", "pulled", "out to", "to", "up to", "extends to", "becomes", "gets to", "can be pulled", "be pulled",
                "how far can",
            ),
            axis="reach",
            ask="How long is it stretched?",
            example="15 cm",
            sane="1 mm..8 m",
            practice="5 in..20 in by 1 in",
        ),
    ),
    steps=(
        Step(
            "stretch", "Take what it grew by as a share of its length at rest", "(stretched - rested) / rested",
            PERCENT,
            rounding=PERCENT_TENTH,
            says=("stretch", "percent", "percentage", "stretch percentage", "how stretchy", "how strechy", "stretchy is it",
                  "strechy is it"),
            stated=("stretch", "stretchy", "has", "with"),
        ),
        Step(
            "growth", "Take the length at rest from the stretched length", "stretched - rested",
            LENGTH,
            rounding=FINE,
            label="what it grows by",
            says=("how much does it grow", "did it grow", "has it grown", "how much it grows", "how much longer", "what does it grow by",
                "how much further"),
            stated=("it grew", "grew by", "grows by", "it grows", "grew", "it gives"),
        ),
        Step(
            "knit",
            "What class of knit that is",
            kind=TEXT,
            label="class of knit",
            says=(
                "class", "kind of knit", "what kind", "what kind of knit", "what class of knit", "category", "a stretchy one",
                "is it a stretchy", "is it stretchy enough",
                "stable", "stretchy enough", "class is a knit", "class is the knit", "class is my knit", "what class is",
            ),
        ),
    ),
    answers=("stretch", "knit", "growth"),
    headline=("It stretches {stretch}: {knit}.", "It stretches {stretch}."),
    spans=(("rested", "stretched"),),
    algorithm=_class,
    refusals=(
        Refusal(
            "stretched < rested",
            "it is shorter stretched than at rest: check which is which. Such as: 10 cm at rest, 13 cm pulled",
        ),
    ),
    source=COMMON_PRACTICE,
    cautions=(
        Caution("Recovery matters as much: see that it springs back to its length."),
    ),
    examples=(
        "4 in of jersey stretches to 6 in, what stretch is that -> 50 %; stretchy knit",
        "how far will four inches of swimsuit fabric reach if it has 75% stretch -> 7 in",
        "stretch percentage: 10 cm at rest, 13 cm pulled -> 30 %; moderate stretch knit",
    ),
    related=("negative ease",),
)

NEGATIVE_EASE = Rule(
    topic="negative ease",
    family="fit",
    says=(
        "negative ease", "smaller pattern", "smaller than the body", "stretch pattern", "reduce for stretch",
        "smaller pattern width", "stretch reduction", "swimwear", "leggings", "activewear", "swimsuit", "swim suit",
        "bathing suit", "swimming costume", "leotard", "unitard", "catsuit", "dancewear", "bandeau", "rash vest",
        "percent smaller", "swim", "skin tight", "skin-tight", "usual quarter", "quarter of the stretch",
        "quarter of its stretch", "quarter of that stretch", 
        *(f"reduce by how many {per}" for per in ("percent", "per cent")),
        "are they reduced", "are the leggings", "cut the leggings", "how many cm come off", "how many inches come off",
    ),
    about="The width to cut a pattern in stretch cloth, smaller than the body.",
    inputs=(
        Input(
            "body",
            "body measure",
            LENGTH,
            says=(
                "body", "body measure", "i am", *told(*PLACE_WORDS), *WHOSE,
                "who does it fit", "what body", "who is it for", "who is it meant for", "who are they for",
            ),
            axis="girth",
            ask="What does the body measure there?",
            example="100 cm",
            sane="5 cm..300 cm",
            practice="60 cm..120 cm by 2 cm",
        ),
        Input(
            "reduction",
            "reduction",
            PERCENT,
            says=(
                "smaller", "reduction", "reduction as a percentage", "the reduction", "negative ease", "less", "reduce by",
                "reduced", "off", "down", "reduced by", "take off", "how much smaller", "how much smaller than the body",
                "percent smaller", "percentage smaller",
                *(f"{how} {are} reduced" for how in ("percent", "per cent", "percentage") for are in ("are they", "is it", "was it",
                "were they")),
                *(f"{how} have i reduced" for how in ("percent", "per cent", "percentage")),
                *(f"{per} did i reduce" for per in ("percent", "per cent", "percentage")),
                *(f"how many {per} smaller" for per in ("percent", "per cent")),
                *(f"reduce by how many {per}" for per in ("percent", "per cent")),
            ),
            default=Default("=stretch / 4", "a quarter of the cloth's stretch, never the whole (common practice)"),
            # Taken up to the whole, so that "70 % smaller" is refused and not taken for what the cloth stretches.
            sane="0 %..100 %",
            practice="5 %..20 % by 5 %",
            usual="0 %..30 %",
        ),
        Input(
            "stretch",
            "stretch of the cloth",
            PERCENT,
            says=("stretch", "stretchy", "stretches", "fabric stretch", "with stretch"),
            ask="How far does the cloth stretch (or how much smaller should the pattern be)?",
            example="40 %",
            sane="1 %..300 %",
            practice="20 %..100 % by 10 %",
        ),
    ),
    steps=(
        Step(
            "width", "Take the reduction off the body measure", "body * (1 - reduction)",
            LENGTH,
            rounding=CUT,
            label="pattern width",
            says=("pattern width", "pattern", "width", "cut size", "how wide", "how big", "finished"),
            axis="width",
            stated=(
                "pattern is", "pattern width", "finished", "garment", "pattern measures", "pattern comes to", "comes to",
                "pattern of", "comes out", "drafted at", "i cut", "i cut it", "i cut them", "cut the leggings", "cut the leotard",
                "cut the swimsuit",
                *(f"{thing} pattern" for thing in ("leggings", "leotard", "swimsuit", "bandeau")),
                *(f"{thing} is cut{at}" for thing in ("leggings", "leotard", "swimsuit", "bandeau", "pattern") for at in ("", " at")),
                "round for", "round for a", "wide for a", "leggings are", "leotard is",
            ),
        ),
        Step("off", "What that takes off", "body * reduction", LENGTH, rounding=CUT, label="taken off",
             says=("how much do i take off", "how many cm do i take off", "do i take off", "come off", "comes off",
                 "how much comes off", "how much do i reduce", "how much do i reduce by", "how much do i reduce it by",
                   "how much is taken off", "how much less", "how many cm come off", "how many inches come off", "cm come off")),
        Step(
            "quarter", "A quarter of it, for a front or back on the fold", "width / 4",
            LENGTH,
            rounding=CUT,
            label="each quarter",
            says=("quarter", "each quarter", "on the fold", "quarter piece"),
        ),
    ),
    answers=("width", "off", "quarter"),
    refusals=(
        Refusal(
            "reduction > 6 / 10",
            "no cloth is worn more than 60 % smaller than the body: give how much smaller the pattern is to be. Such as: "
            "hips 100 cm, 10% smaller",
        ),
    ),
    headline=("Cut the pattern {width} wide, {off} less than the body.", "A quarter of the pattern is {quarter}."),
    source=COMMON_PRACTICE,
    cautions=(
        Caution(
            "The pattern takes up more than half of the cloth's stretch: it will be tight and hard to get into.",
            when="reduction > stretch / 2",
        ),
        Caution("This is without seam allowance: add it at each edge."),
    ),
    examples=(
        "hips 100 cm, stretchy, 10% smaller, pattern width -> 90 cm; 10 cm; 22.5 cm",
        "negative ease for a 36 in bust in cloth with 40% stretch -> 32 3/8 in",
        "leggings for 98 cm hips in 60 % stretch fabric, how wide is the pattern -> 83.3 cm",
    ),
    related=("stretch", "add seam allowance"),
)
