"""A length of cloth of one width as a length of another."""

from __future__ import annotations

from ..engine.declare import Caution, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import LENGTH
from ..engine.rounding import BUY_CLOTH
from .words import CLOTH_ASKED, CLOTH_WORDS, IN_HAND_WORDS

# The chart of long standing that pattern firms and extension services circulate adds a quarter of a yard for each.
EXTRA_SOURCE = "fabric width conversion chart circulated by pattern firms and extension services: 1/4 yd more for each"

STATED = Input(
    "stated_length", "length stated", LENGTH,
    says=("stated", "calls for", "asks for", "wants", "says", "takes", "needs", "requires", "yardage", "length",
          "pattern", "pattern says", "pattern takes", "pattern wants", "pattern needs",
          "recommends", "listed", "gives", "lists",
          "meant to be", "supposed to be", "instead of", "in place of",
          "book asks for", "model asks"),
    ask="What length does it call for?", example="2.5 m", sane="15 cm..200 m", usual="40 cm..20 m",
    practice="1 m..5 m by 10 cm",
)  # fmt: skip
STATED_WIDTH = Input(
    "stated_width", "width stated", LENGTH,
    says=(*CLOTH_WORDS, "of", "at", "wide", "stated width", "based on", "assumes", "instead of", "is for", "becomes",
          "rather than", "stated at", "width"),
    ask="For cloth of what width is that?", example="115 cm", sane="20 cm..3.5 m", usual="60 cm..1.7 m",
    practice="90 cm..150 cm by 5 cm",
)  # fmt: skip
WIDTH_IN_HAND = Input(
    "width", "width of the cloth", LENGTH,
    says=("instead", "mine is", "mine", "my fabric", "my cloth", "have", "buying", "wide", "width", "narrow width",
          "what width", "which width", "how wide", "least width", "in hand", "comes in", "only comes in",
          "shop", "available", "in stock", "fabric is", "cloth is", "is only", "found", "bought", "got", "ive got",
          "i've got", "using",
          *CLOTH_WORDS, "chosen", "sells", "roll", "bolt", "new width", "into", "only in", "actually", "if i buy",
          "if i buy it in", "if i use", "if i used", "buy it in", "stocks", "stocked", "only have", "have only",
          "only has", "only had", "they've only", "they only have",
          "i've only", "i've only got", "only got", "worth in",
          "same thing in", "get it in", "same in", "do it in", "make it in", "need in", "check", "plaid", "tartan",
         "narrow can mine be", "narrow may mine be", "narrow can it be", "narrow can the cloth be", "narrowest",
         "narrowest cloth", "widest", "wide would the cloth", "wide must the cloth", "wide does the cloth"),
    ask="How wide is the cloth in hand?", example="150 cm", sane="20 cm..3.5 m", usual="60 cm..1.7 m",
    practice="90 cm..150 cm by 5 cm",
)  # fmt: skip
EXTRA_EACH = Input(
    "extra_each", "extra for each", LENGTH, says=("extra", "add", "allow", "each case", "extra for nap",
                                                  "extra for each"),
    default=Default("1/4 yd | 25 cm", "the usual addition for each such case"), sane="0 cm..3 m", spoken=True,
    practice="1/8 yd..1/2 yd by 1/8 yd",
)  # fmt: skip
NAPPED = (*(word for word in CLOTH_WORDS[: CLOTH_WORDS.index("fabric width")] if word not in ("cloth", "fabric")), "fleece")
NAP = flag(
    "nap", "a nap", ("nap", "has a nap", "have a nap", "does have a nap", "is napped", "napped", "nap to it",
                     "with a nap", "pile", "has a pile",
                     "velvet", "velveteen", "corduroy", "needlecord",
                     "nap fabric", "there's a nap", "for nap", "for the nap", "but with nap", "but with a nap",
                     "mine has nap",
                     *(f"{cloth} with nap" for cloth in NAPPED), *(f"{cloth} with a nap" for cloth in NAPPED)), no=("no nap",
                     "has no nap",
                         "not napped", "doesn't have a nap"),
)  # fmt: skip
ONE_WAY = flag(
    "one_way", "a one-way design", ("one way", "one-way print", "one way design", "one-directional", "directional",
                                    "directional print",
                                    "right way up", "upright print", "one direction"), no=("not one-way",
                                        "not directional", "two-way"),
)  # fmt: skip
STATED_NAP = choice(
    "stated_nap", "stated length",
    {"with": ("with nap", "nap layout", "with nap layout", "yardage with nap", "already with nap", "includes nap",
              "nap included", "nap already included", "nap is included", "allows for nap", "nap allowed for", "nap already in it",
              "already includes nap", "nap is already in"),
     "without": ("without nap", "no nap layout", "without nap layout", "w/o nap")},
    default=(Default("without", "not said to be with nap", derived=True),),
)  # fmt: skip
NAP_EXTRA = Input(
    "nap_extra", "extra for the nap", LENGTH, says=("for nap", "for the nap", "nap allowance", "extra for nap"),
    sane="0 cm..3 m", spoken=True,
    default=(Default("=extra_each", "Add the extra for a nap: every piece must lie the same way", when={"nap": "yes",
        "stated_nap": "without"},
                     derived=True),
             Default("0 cm", derived=True)),
)  # fmt: skip
ONE_WAY_EXTRA = Input(
    "one_way_extra", "extra for the one-way design", LENGTH, says=("for the one-way design", "for the print"),
    sane="0 cm..3 m", spoken=True,
    default=(Default("=extra_each", "Add the extra for a one-way design: every piece must lie the same way up",
                     when={"one_way": "yes"},
                     derived=True),
             Default("0 cm", derived=True)),
)  # fmt: skip

TOO_WIDE = Caution("A pattern piece wider than the new cloth will not fit: measure the widest piece",
                   when="width < stated_width")
FAR_APART = Caution("Widths more than 12 in (30 cm) apart change the lay: try the pieces on the new width before "
                    "buying",
                    when="abs(width - stated_width) > 304.8")  # fmt: skip
NAP_NAMED = Caution("This cloth usually has a nap or pile: if the length stated is without nap, say \"it has a nap\" "
                    "to add for it",
                    mentions=("velvet", "corduroy", "needlecord", "cord", "velveteen", "fur", "terry",
                              "towelling"))  # fmt: skip

STATES = ("it says", "the pattern says", "that", "the pattern", "stated", "the pattern states", "the envelope says", "the envelope",
          "it states")
COMPARED = (
    Step("more", "Take the stated length from what is needed", "cloth - stated_length", label="more than is stated", unit=("in", "cm"),
         says=("how much more than", "how much extra", "how much longer", *(f"{much} than {states}" for states in STATES for much in (
             "more", "longer", "more do i need", "more must i buy", "more do i buy", "extra do i buy")))),
    Step("less", "Take what is needed from the stated length", "stated_length - cloth", label="less than is stated", unit=("in", "cm"),
         says=("how much less", "how much shorter", "how much do i save", "how much cloth do i save", "do i save", "save me", "saved",
               "how much does that save", "how much less cloth", "cloth is saved", *(f"{much} than {states}"
                                                                                     for states in STATES for much in (
                   "less", "shorter", "less do i need", "less do i buy")))),
)  # fmt: skip

WIDTH_SWAP = Rule(
    topic="width swap",
    family="fabric",
    says=("swap", "instead", "width swap", "different width", "another width", "change of width",
          "fabric width conversion", "width conversion",
          "narrower fabric", "wider fabric", "narrower cloth", "wider cloth", "same thing in", "equivalent length",
          "only comes in", "only have it in", "how much of", "convert yardage", "as wide", "would it be", "if i use",
          "if i buy", "if i used",
          "buying", "becomes how much", "only stocks", "gives me the same as", "book asks for",
          "instructions ask for", "instructions say", "in the shop", "in shop", "for the same thing", "if it was only",
          "if it were only", "shop only has", "shop has", "new width"),
    about="How much cloth of another width does the work of a stated length.",
    inputs=(
        STATED, STATED_WIDTH, WIDTH_IN_HAND, NAP, ONE_WAY, STATED_NAP,
        flag("sleeves", "sleeves cut in one", ("sleeves cut in one", "cut in one with the body", "cut in one",
                                               "cut-on sleeves", "grown-on sleeves",
                                               "kimono sleeves", "dolman sleeves", "magyar sleeves", "dolman",
                                               "magyar", "batwing",
                                               "sleeves are cut in one with the body",
                                               "sleeves cut in one with the body")),
        EXTRA_EACH, NAP_EXTRA, ONE_WAY_EXTRA,
        Input("sleeve_extra", "extra for sleeves cut in one", LENGTH, says=("for the sleeves",), sane="0 cm..3 m",
              spoken=True,
              default=(Default("=extra_each", "Add the extra for sleeves cut in one with the body",
                               when={"sleeves": "yes"}, derived=True),
                       Default("0 cm", derived=True))),
    ),
    steps=(
        Step("swapped", "The same area of cloth on the new width", "stated_length * stated_width / width",
             label="length on the new width",
             unit=("yd", "m"), sane="30 cm..200 m", says=("exactly", "exact length", "before rounding", "exact amount", "to be exact")),
        Step("napped", "Add for the nap", "if(nap_extra > 0, swapped + nap_extra, swapped)",
             label="length with the nap", unit=("yd", "m")),
        Step("upright", "Add for the one-way design", "if(one_way_extra > 0, napped + one_way_extra, napped)",
             label="length one way up",
             unit=("yd", "m")),
        Step("cloth", "Add for the sleeves", "if(sleeve_extra > 0, upright + sleeve_extra, upright)",
             rounding=BUY_CLOTH, label="cloth to buy",
             says=("how much", "cloth to buy", "how many yards", "how many metres", "yardage", "length", "how long",
                   *CLOTH_ASKED),
             stated=("left", "only have", "have only", "left on the roll", "buy only", "get away with", *IN_HAND_WORDS)),
        *COMPARED,
    ),
    answers=("cloth", "swapped"),
    headline=("Buy {cloth} of the new width.",),
    source=f"common practice: the same area of cloth; {EXTRA_SOURCE}",
    cautions=(TOO_WIDE, FAR_APART, NAP_NAMED),
    related=("cloth for a bought pattern",),
    pairs=(("stated_length", "stated_width"), ("in_hand", "width")),
    sizes=(("stated_length", "stated_width"),),
    defers=("cloth for a bought pattern",),
    examples=(
        "2 yd of 54 in cloth, buying 45 in instead, how much -> 2 1/2 yd",
        "2 yd of 54in, buying 45in instead. it has a nap, and the sleeves are cut in one with the body -> 3 yd",
        "swap 3 m of 115 cm cloth for 150 cm -> 2.3 m",
        "how much of a 140 cm cloth instead of 2.5 m of 112 cm -> 2 m",
    ),
    notes=("The printed width charts go by whole lays and may differ from this plain proportion by up to 3/8 yd.",),
)
