"""Drops of a print cut so that the pattern matches."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from .words import CLOTH_ASKED, CLOTH_WORDS

PATTERN_REPEAT = Rule(
    topic="pattern repeat",
    family="fabric",
    says=("pattern repeat", "repeat", "drops", "curtain", "curtains", "drop", "match the pattern", "pattern matching",
          "matching pattern",
          "matching the print", "repeats", "blind", "wallpaper print"),
    about="Cloth for drops that are each cut to whole repeats of a print.",
    inputs=(
        Input("drop", "length of one drop", LENGTH, says=("drop", "each", "each drop", "cut length", "long", "cut",
                                                          "length", "deep", "drops of", "finished drop",
              "panels of", "cut drop", "longest drop", "what's the longest", "the longest", "long can each", "long may each",
              "must be", "has to be", "curtain", "a drop", "the drop", "longest each drop", "longest each"), axis="length",
              ask="How long is one drop as cut?", example="220 cm",
              sane="1 cm..20 m", usual="30 cm..5 m", practice="120 cm..280 cm by 10 cm"),
        Input("repeat", "pattern repeat", LENGTH, says=("repeat", "pattern repeat", "repeat of", "repeats every",
                                                        "repeat is", "vertical repeat"),
              ask="What is the pattern repeat?", example="32 cm", sane="1 mm..5 m", usual="2 cm..1.2 m",
              practice="10 cm..70 cm by 2 cm"),
        Input("drops", "drops", COUNT, says=("drops", "widths", "panels", "lengths", "curtain", "pieces", "drop",
            "how many matched drops", "matched drops"),
              noun="drop", ask="How many drops?",
              example="4", sane="1..200", usual="1..20", practice="2..8"),
        Input("width", "fabric width", LENGTH, says=(*CLOTH_WORDS, "wide", "width"), extra=True, spoken=True,
              sane="10 cm..5 m", usual="85 cm..3 m"),
    ),
    steps=(
        Step("repeats", "Whole repeats that hold one drop", "drop / repeat", COUNT, rounding=COUNT_UP, noun="repeat",
             label="repeats in a drop",
             says=("how many repeats", "repeats in a drop")),
        Step("cut", "Cut each drop at that many repeats", "rounded(repeats) * repeat", rounding=CUT,
             label="cut length of a drop",
             says=("cut length", "cut each", "cut drop", "length to cut", "each drop cut", "cut the drops", "to whole repeats",
             "cut it to whole repeats", "cut them to whole repeats", "long is each one once",
                   "each drop come out at", "drop come out at",
                   "come out at", "each drop be cut")),
        Step("cloth", "All the drops", "cut * drops", rounding=BUY_CLOTH, label="cloth to buy", says=("how much",
            "fabric", "cloth", "total", "yardage",
             "how many metres", "how many yards", "cloth total", *CLOTH_ASKED), stated=("have", "got", "only", "left", "from",
                                                                          "took", "took exactly", "would", "exactly", "used",
                                                                          "used up", "bought", "needed", "i needed", "out of",
                                                                          "obtainable from", "of fabric", "of cloth",
                   "cut from", "length of fabric")),
        Step("lost", "What goes to matching", "cloth - drop * drops", label="lost to matching", unit=("in", "cm"),
             says=("lost", "waste", "wasted", "lose to matching", "do i lose", "extra do i lose", "lost to matching",
                   "goes to matching", "extra for matching", *(f"{how}{lost} {to} the {match}" for how in ("", "is ", "gets ", "is just ",
                   "cloth is ", "cloth gets ",
                       "much is ") for lost in ("lost", "wasted") for to in ("to", "in") for match in ("matching", "match")),
                                                                                          "extra", "wasted in matching")),
        Step("lost_each", "What is cut from a drop beyond its length", "cut - drop", rounding=CUT, label="lost in each drop",
             says=(*tuple(phrase for drop in ("each drop", "every drop", "a drop", "one drop") for phrase in (f"lost in {drop}",
                 f"wasted in {drop}", f"wasted on {drop}", f"waste in {drop}", f"lost on {drop}", f"wasted from {drop}",
                 f"lose in {drop}", f"lose on {drop}", f"left over on {drop}", f"left over from {drop}", f"left over in {drop}",
                 f"spare on {drop}", f"waste on {drop}", f"{drop} lose", f"{drop} waste", f"cut off {drop}",
                 f"trim off {drop}", f"do i lose on {drop}", f"do i lose in {drop}", f"do i lose for {drop}", f"do i waste on {drop}",
                 f"do i waste in {drop}")), "wasted per drop", "lost per drop", "waste per drop", "lose per drop", "waste a drop",
                 "longer than the drop", "longer than a drop", "longer than the drop do i cut", "longer than the drop do i cut each",
                 "beyond the drop")),
        Step("choose", "One repeat more, to choose where the motif starts", "cloth + repeat", rounding=BUY_CLOTH,
             label="with a repeat to choose from",
             says=("choose where", "spare repeat", "extra repeat")),
    ),
    answers=("cloth", "cut", "lost", "choose"),
    headline=("Buy {cloth}: cut each drop {cut}.", "Cut each drop {cut}."),
    source=COMMON_PRACTICE,
    cautions=(Caution("To choose where the motif starts, buy one repeat more; a half-drop print needs half a repeat "
                      "more for every other drop"),),
    examples=(
        "Curtains: four drops, each 220 cm cut, pattern repeat 64 cm. How many metres of fabric? -> 10.3 m; 256 cm",
        "curtains drop 2.1m repeat 32cm 4 drops cloth tot -> 9 m",
        "3 drops of 90 in with a 24 in repeat, how many yards -> 8 yd; 96 in",
        "I've 9 metres of a print with a 24 inch repeat. Each drop has to be 170 cm. How many drops will it do? -> 4 "
        "drops",
        "cut length 98 in, repeat 13 in, 2 drops, what length to cut -> 104 in",
    ),
)
