"""The rounds in which a circle of stitches is decreased or increased."""

from __future__ import annotations

from ..engine.declare import (
    ARITHMETIC,
    Default,
    Input,
    Refusal,
    Rule,
    Step,
    flag,
)
from ..engine.kinds import COUNT, RATIO, STITCHES
from ..engine.rounding import COUNT_UP

ROUNDS_OF_A_CIRCLE = Rule(
    topic="decrease rounds of a circle",
    family="knitting",
    says=("crown", "decrease rounds", "decrease round", "how many decrease rounds", "decrease rounds of a circle",
          "circle", "rounds of decreasing", "taking out", "flat circle",
          "top of the hat", "crochet circle", "increase rounds", "close the top", "yoke decreases",
          "each decrease round", "every decrease round", "every round", "each round", "crown start", "crown started", "crown has",
          "hat top", "in the crown", "rounds to decrease", "rounds till", "rounds until"),
    about="How many decrease rounds bring a circle of stitches down to a few, so many in each round; the same for "
          "increase rounds.",
    inputs=(
        Input("start", "stitches at the start", STITCHES, says=("crown of", "from", "start", "have", "stitches", "sts",
                                                                "on the needles", "there are", "crown", "begin with",
                                                                "of", "got", "start at", "begins with", "started with",
                                                                "starts with", "hat has", "at the crown", "my beanie has"),
              ask="How many stitches are there to start with?", example="112 stitches", sane="1 st..5000 st",
              practice="64 st..128 st by 8 st"),
        Input("left", "stitches left", STITCHES, says=("left", "are left", "how many left", "how many are left", "how many stitches left",
                                                        "stitches are left", "stitches left", "until", "down to", "to", "remain",
                                                       "remaining", "end with", "reach", "become", "must become", "stop at",
                                                       "only", "there's", "get to", "down to just",
                                                       "reduce to", "finish with", "are left at the end", "til", "till"),
              ask="How many stitches are to be left?", example="8 stitches", sane="0 st..5000 st",
              practice="6 st..12 st by 2 st", usual="1 st..400 st"),
        Input("each", "stitches in each round", STITCHES,
              says=("taking out", "each round", "every round", "per decrease round", "decrease rounds of", "came off each round",
                    "come off each round",
                    "go each round", "lost each round", "in each round", "off each round", "added each round", "a round", "per round",
                    "in every decrease round", "each decrease round", "at a time", "losing", "lose",
                    "adding", "add", "gaining", "a time", "per increase round", "each increase round",
                    "in every round", "every decrease round", "times a round", "sections", "decreasing", "take away", "fewer",
                    "grows by",
                    "loses", "take out", "taking away", "reducing by", "minus", "reduce by", "at once"),
              default="8 st", because="eight sections are the usual crown (common practice)", sane="1 st..200 st",
              practice="6 st..10 st by 1 st", usual="2 st..24 st"),
        flag("fewer", "said to lose stitches", ("down to", "decreasing", "taking out", "losing", "loses", "decrease rounds",
                                                "decrease round",
                                              "take away", "lose")),
        flag("more", "said to gain stitches", ("increase rounds", "increase round", "increasing", "adding", "gaining", "grows",
                                               "grow", "increase")),
        Input("way", "direction", RATIO, default=(Default("-1", when={"more": "yes"}, derived=True), Default("1", derived=True)),
              spoken=True, sane="-1..1"),
    ),
    steps=(
        Step("change", "Take the smaller number of stitches from the larger", "abs(start - left)", STITCHES,
             label="stitches to change"),
        Step("rounds", "Divide by the stitches of each round", "change / each", COUNT, rounding=COUNT_UP, noun="round",
             label="decrease rounds",
             says=("rounds", "how many rounds", "decrease rounds", "increase rounds", "how many increase rounds",
                   "how many decrease rounds", "how many", "how many times"),
             stated=("rounds", "decrease rounds", "increase rounds", "times", "in", "over", "after", "within")),
        Step("over", "What the last round has too many", "rounded(rounds) * each - change", STITCHES,
             label="fewer in the last round", says=("in the last round", "fewer in the last", "over in the last", "less in the last")),
    ),
    answers=("rounds", "over"),
    headline=("Work {rounds}.",),
    spans=(("start", "left"),),
    backwards={"start": "left + way * rounds * each", "left": "start - way * rounds * each"},
    no_unknown=("way",),
    refusals=(Refusal("left > start",
                      "more stitches are to be left than there are at the start, and decreasing makes them fewer. Say "
                      "the larger number first, such as: crown from 96 stitches down to 8", choices={"fewer": "yes"}),),
    source=ARITHMETIC,
    examples=(
        "A crown of 112 stitches, taking out 8 in every decrease round until 8 are left: how many decrease rounds? -> "
        "13 rounds",
        "crown from 96 stitches down to 6, decreasing 6 each round, how many decrease rounds -> 15 rounds",
        "how many decrease rounds for a crown of 80 stitches down to 8 -> 9 rounds",
    ),
    related=("hat", "evenly spaced decreases"),
)
