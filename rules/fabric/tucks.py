"""Tucks: how many fit, and the width or length they take up."""

from __future__ import annotations

from ..engine.declare import Default, Input, Refusal, Rule, Step
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, CUT, SPACING
from .pleats import PLEAT_SOURCE

TUCKS = Rule(
    topic="tucks",
    family="fabric",
    says=("tuck", "tucks", "pin tucks", "pintucks", "pin-tucks", "tucked", "tucked panel", "growth tuck", "tucks spaced", "tucks fit", "tucks of"),
    about="How many tucks fit, and how wide to cut what they are sewn in.",
    inputs=(
        Input("finished", "tucked width", LENGTH, says=("tucked", "finished", "tucked width", "finished width",
                                                        "panel", "yoke", "bib", "wide", "across", "wide finished",
                                                        "wide when tucked", "bodice", "skirt",
              "front", "shirt front", "section", "wide will it be", "wide will it end", "wide will it end up",
              "wide will it finish", "end up", "came out", "came out at", "came to", "once tucked", "after tucking",
              "brought it to", "brought it down to",
              "down to", "tucked to", "wide does it end up", "how wide does it end up", "wide does it come out", "wide does it finish",
              "how wide does it finish", "does it finish at", "does it come out at", "how wide is it after", "wide is it after",
              "wide does that leave it", "what's left", "what is left", "is left", "much is left", "how wide is it finished", "wide is it finished", "how wide is it now",
              "wide is it now", "how wide is it when finished",
              *(f"wide is the {thing} {now}" for thing in ("front", "yoke", "panel", "bodice", "piece", "bib", "strip")
                for now in ("now", "afterwards", "when tucked", "once tucked"))), ask="How wide is it once tucked?",
              example="28 cm",
              sane="3 cm..30 m", usual="8 cm..4 m",
              practice="20 cm..60 cm by 2 cm"),
        Input("tuck", "tuck width", LENGTH, says=("tuck", "tuck width", "tuck depth", "deep", "depth", "each tuck",
                                                  "tucks", "wide tucks", "pin tucks",
              "pintucks", "tucks of", "pintucks of", "wide is each", "each of them", "wide was each", "wide are they",
              "deep is each"), ask="How wide is each tuck?", example="2 mm", sane="0.5 mm..50 cm", usual="1 mm..5 cm",
              default=Default("=spare / (2 * number)", "Share what is to be taken up among the tucks, each twice its width",
                              given=("spare", "number"), derived=True),
              practice="2 mm..1 cm by 1 mm"),
        Input("gap", "gap between tucks", LENGTH, says=("gap", "between", "gaps", "between tucks", "gap between",
                                                        "apart"), sane="0 mm..1 m", extra=True, spoken=True,
              usual="2 mm..10 cm", practice="5 mm..2 cm by 1 mm"),
        Input("pitch", "from one tuck to the next", LENGTH, says=("centre to centre", "fold to fold",
            "stitching to stitching", "spacing", "every",
              "from tuck to tuck"), default=Default("=gap + tuck", "A gap and a tuck, from one to the next",
                                                    derived=True), sane="1 mm..1 m", spoken=True),
        Input("edge", "edge to the first tuck", LENGTH, says=("edge", "from the edge", "each side", "edge distance",
            "from each edge", "at each side",
              "in from the edge"), default=Default("0 cm", "none was said, so the first and the last tuck lie at the edges"),
              sane="0 cm..5 m", spoken=True,
              practice="1 cm..3 cm by 5 mm"),
        Input("number", "number of tucks", COUNT, says=("tuck", "tucks", "pin tucks", "pintucks", "number of tucks", "of them", "of those"),
              noun="tuck", sane="1..2000",
              default=(Default("=spare / (2 * tuck)", "Divide what is to be taken up by twice the tuck", given=("spare", "tuck"),
                               derived=True),
                       Default("=ceil((finished - 2 * edge) / pitch) + 1",
                              "One tuck more than the gaps that fill the span, taken whole", derived=True))),
        Input("spare", "cloth to take up", LENGTH, says=("to use up", "to lose", "to take up", "spare", "in spare", "to get rid of",
                                                         "shorten by", "shorten it by", "shorten the skirt by", "skirt by",
                                                         "shorten a skirt by", "dress by", "shorter by", "to take out",
                                                         "must lose", "wants shortening by", "to be lost"), extra=True,
              spoken=True, sane="1 mm..5 m"),
    ),
    steps=(
        Step("count", "How many tucks there are", "number", COUNT, rounding=COUNT_UP, noun="tuck", label="number of tucks",
             says=("how many tucks", "how many")),
        Step("taken", "Each tuck takes up twice its width", "2 * tuck * number", label="taken up by the tucks",
             rounding=CUT,
             says=("how much longer", "how much wider", *(f"how much {more} {verb} i cut{it}" for more in ("wider", "longer", "extra")
                                                       for verb in ("do", "must", "should", "shall") for it in ("", " it")), "how much extra",
                   "shorter", "how much shorter", "extra for the tucks", "taken up",
                   "takes up", "take up", "take-up", "tuck take-up", "total take-up", "uptake",
                   "tucks use", "how much width", "much width", "how much cloth", "use up", "do they use",
                   "how much do the tucks take", "how much do they take", "shorten by", "shortens"),
             stated=("shorten", "shorten by", "take up", "shorter", "take in", "took up", "taken up", "took", "takes up",
                     "shortened it by", "shortened by", "lost to")),
        Step("flat", "What is left and what the tucks take",
        "finished + taken", label="flat width", rounding=CUT, says=("flat width", "flat", "cut width",
                                                                    "how wide to cut", "before tucking", "width to cut",
                   "pattern width", "how wide", "do i cut", "must i cut", "shall i cut", "should i cut", "to cut"),
             stated=("piece", "a piece", "cut a", "cut", "flat", "have", "from", "started as", "started at", "was cut",
                     "before tucking", "cloth", "fabric", "i cut", "i cut a piece",
                     *(phrase for thing in ("front", "yoke", "panel", "bodice", "piece", "bib", "it", "strip") for phrase in (f"{thing} was",
                         f"cut the {thing}", f"i cut the {thing}", f"cut my {thing}")))),
        Step("spacing", "Share the span evenly between them", "(finished - 2 * edge) / (number - 1)",
             label="from tuck to tuck", rounding=SPACING,
             says=("how far apart", "spacing", "corrected spacing", "tuck to tuck", "tuck to tuck distance", "distance between the tucks",
                   "distance between tucks", "apart are the tucks", "apart are they", "far apart do they")),
    ),
    answers=("flat", "count", "taken", "spacing"),
    insists=True,
    headline=("Cut it {flat} wide: {count} take up {taken}.", "{count}: cut it {flat} wide.",
              "The tucks take up {taken}."),
    source=PLEAT_SOURCE,
    refusals=(
        Refusal("tuck + 2 * edge > finished", "a tuck that wide does not fit in the tucked width. Say which width is the tuck's and "
                "which is the finished width, such as: 12 tucks 3 mm wide on a yoke 30 cm finished."),
        Refusal("gap > pitch", "from one tuck to the next is more than the gap between them. Say the tuck's own width beside it, such as: "
                "tucks 3 mm wide with a gap of 1.2 cm."),
        Refusal("pitch < tuck", "the tucks would lie over one another: from one to the next must be at least the width of a tuck"),
        Refusal("tuck * number > finished", "so many tucks of that width do not fit side by side in the tucked width. Take fewer, or "
                "narrower ones."),
    ),
    related=("pleats",),
    examples=(
        "tucked front 28 cm wide, tucks 2 mm wide with a gap of 1.5 cm, 2 cm from the edge, how wide to cut -> 34.4 "
        "cm; 16 tucks",
        "how much do 5 tucks 1/2 in deep take up -> 5 in",
        "12 pintucks 3 mm wide on a yoke 30 cm finished, flat width -> 37.2 cm",
    ),
)
