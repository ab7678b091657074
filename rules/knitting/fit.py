"""The fit of a knitted garment: its ease, and what the published lists call it."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import (
    Input,
    Rule,
    Step,
)
from ..engine.kinds import LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, PERCENT_TENTH
from ..engine.run import Run

# Fit by ease over the body: the council's current list as its article readers print it, with the older list beside it.
FITS_NOW = ((Fraction(0), "very close (negative ease)"), (Fraction(1), "close"), (Fraction(4), "classic"),
            (Fraction(6), "loose"))
FITS_OLD = ((Fraction(1), "very close"), (Fraction(2), "close"), (Fraction(4), "standard"), (Fraction(6), "loose"))
INCH = Fraction(254, 10)


def _named(ease: Fraction, fits: tuple[tuple[Fraction, str], ...]) -> str:
    """The name of the first fit whose upper end, in inches, the ease does not pass."""
    for end, name in fits:
        if ease < 0 or ease / INCH < end or (ease / INCH == end and end > 2):
            return name
    return "oversized"


def _fit(run: Run) -> Outcome:
    ease = run.get("ease")
    if ease < 0:
        now, old = FITS_NOW[0][1], "very close"
    elif ease == 0:
        now, old = "close", "very close"
    else:
        now, old = _named(ease, FITS_NOW[1:]), _named(ease, FITS_OLD)
    words = now if now == old else f"{now} in the current list, {old} in the older list"
    run.say("Look the ease up in the lists of fits", "", run.show(ease, LENGTH), words)
    return Outcome({"fit": words}, notes=("Names of fits shift between lists, so both are given.",
                                          ) if now != old else ())


FIT = Rule(
    topic="fit and ease in knitting",
    family="knitting",
    says=("sweater ease", "ease in knitting", "knitting ease", "fit of a sweater", "knitted ease", "sweater fit",
          "cardigan ease", "knitted sweater",
          "jumper ease", "sweater ease is", "ease of a sweater", "ease of a jumper",
          "knitted jumper", "ease is that in knitting", "knitted cardigan", "cardigan knitted", "sweater knitted", "knitted pullover",
          "knitted garment", "loose fit", "close fit", "classic fit", "fitted or loose", "close classic or loose", "very close fit",
          "oversized fit"),
    about="The ease between a body and a finished knitted garment, and what the lists of fits call it.",
    inputs=(
        Input("body", "body measure", LENGTH, says=("body", "bust", "chest", "my bust", "my chest", "actual", "i am",
                                                    "my", "his chest", "her bust", "measures", "i measure"),
              ask="What does the body measure?", example="92 cm", sane="10 cm..3 m", practice="80 cm..120 cm by 2 cm"),
        Input("finished", "finished measure", LENGTH, says=("finished", "finished sweater", "finished chest",
                                                            "finished bust", "pattern", "comes out", "jumper is",
                                                            "sweater is",
                                                            "jumper of", "sweater of", "cardigan of", "should it measure",
                                                            "it measure finished",
                                                            "measure finished", "should the jumper measure", "should the sweater measure",
                                                            "should the cardigan measure", "must it measure", "finished size",
                                                            "should i knit it", "should the finished"),
              ask="What does the finished garment measure?", example="102 cm", sane="10 cm..4 m",
              practice="84 cm..130 cm by 2 cm"),
    ),
    steps=(
        Step("ease", "Take the body measure from the finished one", "finished - body", rounding=BODY, label="ease",
             says=("ease", "how much ease", "much ease", "difference"),
             stated=("ease", "positive ease", "of ease"), sane="-40 cm..60 cm"),
        Step("fit", "Name it", kind=TEXT, label="fit", says=("fit", "what fit", "how will it fit", "kind of fit",
                                                             "category", "classic", "tight", "loose",
                                                             "called", "what is it called")),
        Step("share", "As a share of the body", "ease / body", PERCENT, rounding=PERCENT_TENTH,
             label="ease as a share of the body", says=("percent", "percentage", "share", "per cent", "what per cent", "what percent",
                                                        "per cent ease",
                                                           "percent ease", "percentage ease", "as a percentage", "per cent of ease",
                                                           "percentage of the body", "per cent is that", "per cent is the ease")),
    ),
    answers=("ease", "fit", "share"),
    headline=("The ease is {ease}: {fit}.",),
    algorithm=_fit,
    backwards={"finished": "body + ease", "body": "finished - ease"},
    source="lists of fits: a current council list (very close, close, classic, loose, oversized) and an older one; "
           "names shift between them",
    examples=(
        "knitting ease: bust 92 cm, finished sweater 102 cm, what fit is that -> classic in the current list, standard "
        "in the older list; 10 cm",
        "what fit is a cardigan knitted 44 in round on a 40 in chest -> classic in the current list, standard in the "
        "older list; 4 in",
        "how will a knitted jumper of 86 cm fit on a 92 cm bust -> -6 cm; very close (negative ease) in the current "
        "list, very close in the older list",
    ),
    related=("size at my tension",),
)
