"""Cloth for a bought pattern: the length on the envelope, changed for the cloth in hand."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH, PERCENT
from ..engine.rounding import BUY_CLOTH
from .width_swap import (
    COMPARED,
    EXTRA_EACH,
    EXTRA_SOURCE,
    FAR_APART,
    NAP,
    NAP_EXTRA,
    NAP_NAMED,
    ONE_WAY,
    ONE_WAY_EXTRA,
    STATED,
    STATED_NAP,
    STATED_WIDTH,
    TOO_WIDE,
    WIDTH_IN_HAND,
)
from .words import CLOTH_ASKED, IN_HAND_WORDS

LENGTHENING = Input(
    "lengthen", "lengthening", LENGTH,
    says=("longer", "lengthen", "lengthened", "lengthening", "add", "adding", "extra length", "taller", "more in length", "long"),
    default=Default("0 cm", derived=True), spoken=True, sane="-1 m..1 m", practice="2 cm..10 cm by 1 cm",
    usual="0 cm..40 cm",
)  # fmt: skip
REPEAT = Input(
    "repeat", "pattern repeat", LENGTH, says=("repeat", "pattern repeat", "check", "checks", "plaid", "stripe repeat",
                                              "repeat of", "tartan"),
    default=Default("0 cm", derived=True), spoken=True, sane="0 cm..2 m", practice="5 cm..30 cm by 1 cm",
    usual="0 cm..1 m",
)  # fmt: skip

BOUGHT_PATTERN = Rule(
    topic="cloth for a bought pattern",
    family="fabric",
    says=("envelope", "bought pattern", "paper pattern", "pattern says", "pattern needs", "pattern states",
          "pattern gives", "pattern lists", "my pattern",
          "pattern recommends", "pattern that says", "pattern requires", "pattern for", "pattern is for",
          "envelope says", "pattern that wants", "pattern envelope", "back of the envelope",
          "pattern calls for", "pattern wants", "pattern takes", "cutting layout", "fabric requirement",
          "sewing pattern", "book asks for", "instructions ask for", "instructions say", "book says",
          "dress pattern", "pattern is written for", "pattern written for", "calls for"),
    about="What to buy when the pattern states a length of one width: new width, nap, lengthening, matching, "
          "shrinkage, in that order.",
    inputs=(
        STATED,
        replace(STATED_WIDTH, ask="For cloth of what width does the pattern state it?"),
        replace(WIDTH_IN_HAND, default=Default("=stated_width", "The cloth is as wide as the pattern states",
                                               derived=True), ask=""),
        NAP, ONE_WAY, STATED_NAP, EXTRA_EACH, NAP_EXTRA, ONE_WAY_EXTRA, LENGTHENING,
        Input("lengths", "lengths of cloth it is over", COUNT, says=("lengths", "over lengths", "times"), default="2",
              because="front and back each take the lengthening", sane="1..12", practice="1..3", noun="length", spoken=True),
        REPEAT,
        Input("matched", "pieces to match", COUNT, says=("matched pieces", "pieces to match", "main pieces", "pieces",
                                                         "to match"), default="1",
              because="a repeat for the one piece cut to match, until more are said", sane="1..40", practice="1..6", spoken=True,
              noun="piece"),
        Input("shrink", "shrinkage", PERCENT, says=("shrink", "shrinkage", "shrink by", "going to shrink",
                                                    "in the wash"),
              default=Default("0 %", derived=True), sane="0 %..99 %", usual="0 %..20 %", practice="2 %..10 %"),
    ),
    steps=(
        Step("swapped", "The same area of cloth on the width in hand", "stated_length * stated_width / width",
             label="length on this width", unit=("yd", "m"), says=("width swap", "exact length", "before rounding", "exactly")),
        Step("napped", "Add for the nap", "if(nap_extra > 0, swapped + nap_extra, swapped)",
             label="length with the nap", unit=("yd", "m")),
        Step("upright", "Add for the one-way design", "if(one_way_extra > 0, napped + one_way_extra, napped)",
             label="length one way up",
             unit=("yd", "m")),
        Step("lengthened", "Add the lengthening, once for each length of cloth it is over",
             "if(lengthen > 0, upright + lengthen * lengths, upright)", label="length lengthened", unit=("yd", "m")),
        Step("repeated", "Add a repeat for each piece to match",
             "if(repeat > 0, lengthened + repeat * matched, lengthened)",
             label="length with matching", unit=("yd", "m")),
        Step("cloth", "Divide by what the wash leaves", "if(shrink > 0, repeated / (1 - shrink), repeated)",
             rounding=BUY_CLOTH,
             label="cloth to buy", says=("how much", "cloth to buy", "how many yards", "how many metres", "buy",
                                         "length",
             "how much fabric", "yardage", "ask for", *CLOTH_ASKED),
             stated=("only have", "have only", "left", "left on the roll", "only", *IN_HAND_WORDS)),
        *COMPARED,
    ),
    answers=("cloth",),
    headline=("Buy {cloth}.",),
    source=f"common practice; {EXTRA_SOURCE}",
    cautions=(
        TOO_WIDE, FAR_APART, NAP_NAMED,
        Caution("Shortening is not taken off the cloth to buy: what it saves depends on the lay", when="lengthen < 0"),
        Caution("Matching a print can take more still: lay out the main pieces before cutting", when="repeat > 0"),
        Caution("Wash a test square first: the label's figure is only an average", when="shrink > 0"),
    ),
    related=("width swap", "pattern repeat"),
    pairs=(("stated_length", "stated_width"), ("in_hand", "width")),
    sizes=(("stated_length", "stated_width"),),
    examples=(
        "pattern says 2.2 m of 150 cm cloth and mine is 150 as well. I need it 5.5 cm longer back and front, so over "
        "two lengths, and the "
        "linen is going to shrink 8 per cent. How much to buy? -> 2.6 m",
        "Envelope: 2.3 m of 150 cm without nap. My cord does have a nap, it's 140 cm wide and shrinks 4%. What do I "
        "ask for? -> 2.9 m",
        "the pattern wants 3 yd of 45 in, I have 60 in fabric, a 4 in repeat and 3 pieces to match -> 2 5/8 yd",
        "Pattern wants 3 m of 114 cm. There's only 2.4 m left on the roll - what's the narrowest width that would "
        "still do it? -> 142.5 cm",
        "There's 3 m of 140 cm wide viscose in my stash. Is it enough for a pattern that says 3.5 m of 112 cm? -> "
        "enough; 0.2 m",
    ),
)
