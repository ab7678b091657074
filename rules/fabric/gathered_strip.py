"""A strip gathered into an edge: ruffle, frill, gathered skirt; and how full a gathering is."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH, RATIO
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from .words import BUY_WORDS, CLOTH_WIDTH, SEAM, hem

EDGE = Input(
    "edge", "edge it is gathered into", LENGTH,
    says=("edge", "finished edge", "waist", "waistband", "around", "round", "hem edge", "hem", "finished length",
          "gathered into", "into",
          "gathered to", "to fit", "perimeter", "circumference", "finished width", "finished", "hem of", "for a",
          "long edge", "all round", "how long an edge", "long an edge", "longest edge", "what's the longest edge", "longest edge it will",
          "what edge", "edge will it", "whose waist"),
    ask="How long is the edge it is gathered into?", example="120 cm", sane="2 cm..60 m", usual="20 cm..12 m",
    practice="60 cm..150 cm by 5 cm",
)  # fmt: skip
HEAVINESS = choice(
    "heaviness", "weight of cloth",
    {"heavy": ("heavy", "heavy cloth", "heavyweight", "thick", "wool", "denim", "canvas", "corduroy", "velvet",
               "tweed"),
     "medium": ("medium", "medium weight", "mid-weight", "cotton", "poplin", "linen"),
     "sheer": ("sheer", "very light", "voile", "organza", "chiffon", "tulle", "net", "georgette", "muslin",
               "see-through")},
    default=(Default("medium", "the middle weight, until said", derived=True),),
)  # fmt: skip
NAMED_FULLNESS = choice(
    "said_fullness", "fullness, as said",
    {"half_again": ("half again", "half as much again", "one and a half times"), "double": ("double fullness",
        "doubled", "doubling", "doubles", "doubling each time", "twice", "twice the fullness",
     "double", "twice as full", "double the edge", "2 to 1", "two to one"), "triple": ("triple fullness", "triple",
         "three times the fullness",
     "thrice", "treble", "3 to 1", "three to one"), "by_cloth": ("usual fullness", "normal fullness")},
    default=(Default("by_cloth", "not said", derived=True),),
)  # fmt: skip
FULLNESS = Input(
    "fullness", "fullness", RATIO, says=("fullness", "times", "full", "times fuller", "times full", "as full",
                                         "ratio", "x", "times fullness", "to 1",
                                         "times the edge", "fuller", "gathered at"),
    default=(
        Default("2", derived=True, when={"said_fullness": "double"}),
        Default("3", derived=True, when={"said_fullness": "triple"}),
        Default("1 1/2", derived=True, when={"said_fullness": "half_again"}),
        Default("1 1/2", "the usual for heavy cloth", when={"heaviness": "heavy"}),
        Default("3", "the usual for sheer cloth", when={"heaviness": "sheer"}),
        Default("2", "the usual for cloth of medium weight"),
    ),
    sane="1..10", usual="1.2..4", practice="1..3",
)  # fmt: skip

STRIPS = ("gathered skirt", "dirndl", "strip", "ruffle", "frill", "flounce", "panel", "skirt", "valance")

GATHERED_STRIP = Rule(
    topic="gathered strip",
    family="fabric",
    says=("ruffle", "frill", "flounce", "gather", "gathered skirt", "gathered", "skirt", "dirndl", "dirndl skirt",
          "gathered valance", "valance", "ruffled",
          "frilled edge", "frilly", "gathered panel"),
    about="How long to cut a strip that is gathered into an edge, in how many panels, and the cloth for it.",
    inputs=(
        EDGE,
        Input("depth", "finished depth", LENGTH, says=("deep", "finished depth", "depth", "long", "skirt length",
                                                       "length", "drop", "tall", "high",
              "in length", "finished length", "wide", "how long can it be", "how long can the skirt be", "finishes", "finishing",
              "how long a skirt", "finish at", "does it finish at", "will it finish at", "come out at", "finish how deep",
              "the deepest", "what's the longest", "the longest", "deep does it finish", "deep will it finish", "finished depth of the",
              *(f"{how} the {thing} {verb}" for how in ("deep does", "deep will", "long does", "long will") for thing in STRIPS
                for verb in ("finish", "be", "come out", "end up"))), axis="depth",
              ask="How deep is it when finished?",
              example="15 cm", sane="5 mm..3 m",
              usual="2 cm..1.3 m", practice="5 cm..60 cm by 5 cm"),
        CLOTH_WIDTH, HEAVINESS, NAMED_FULLNESS, FULLNESS, SEAM, hem("3/4 in | 2 cm",
            "the usual narrow hem of a frill or skirt"),
        # A size of these is no edge and depth: the frill goes all round it.
        flag("goes_round", "sewn all round", ("pillow", "cushion")),
    ),
    steps=(
        Step("full", "Stretch the edge to its fullness", "edge * fullness", label="strip before gathering",
             rounding=CUT,
             says=("how long", "length of strip", "strip length", "cut length", "flat length", "long", "strip",
                   "total length", "how long a strip",
                   "full length", "before gathering", "long do i cut", "long do i make", "ruffle strip", "frill strip"),
             stated=(*(f"{thing} into" for thing in ("frill", "ruffle", "strip", "lace", "flounce")), "of frill", "of ruffle", "of strip",
              "of flounce", "gather the frill",
                     "gather the ruffle", "gather the strip",
                     "gather the lace", "a strip", "my strip", "of lace", "strip is", "strip of", "strip was", "took", "of ribbon",
                     "ungathered", "before gathering")),
        Step("panels", "Divide by what one panel gives between its seams, and take whole panels",
             "full / (width - 2 * seam)", COUNT,
             rounding=COUNT_UP, noun="panel", says=("how many panels", "how many strips", "how many widths", "number of widths",
                                                    "panels", "number of strips",
             "drops", "strips")),
        Step("cut_depth", "Add a seam allowance and the hem to the depth", "depth + seam + hem", label="cut depth",
             rounding=CUT,
             says=("cut depth", "how deep to cut", "depth to cut", "cut width of the strip", "cut how deep",
                   "how deep", "deep do i cut", "wide do i cut it", "cut depth of each",
                   *(f"{how} {verb} i cut {thing}" for how in ("wide", "deep") for verb in ("do", "must", "should", "shall")
                     for thing in ("the strip", "the strips", "the frill", "the ruffle", "each strip", "each panel", "the panels", "them")),
                   *(f"{verb} i cut {thing} long" for verb in ("do", "must", "should") for thing in ("the panels", "each panel")),
                   *(f"cut depth of {a} {thing}" for a in ("the", "each") for thing in STRIPS)), axis="depth",
             stated=("cut depth", "cut depth came out at", "cut depth was", "cut depth of", "cut depth is", "was cut", "is cut",
                     "i cut it", "i cut", "cut")),
        Step("cloth", "Each panel takes its cut depth of cloth", "rounded(panels) * cut_depth", rounding=BUY_CLOTH,
             label="cloth to buy",
             says=("how much", "fabric", "cloth", "yardage", "how many metres", "how many yards", "buy", *BUY_WORDS),
             stated=("only", "only have")),
        Step("real", "Whole panels gathered into the edge", "rounded(panels) * (width - 2 * seam) / edge", RATIO,
             label="fullness with whole panels",
             says=("real fullness", "actual fullness", "true fullness", "how full does it really", "full does it really come out",
                   "how full is it really", "how full really", "how full will it really", "full will it really be", "how full in the end",
                   "fullness in the end", "fullness with whole panels", "fullness do i really get", "fullness will i really get",
                   "fullness does that really", "how full with whole panels", "fullness come out at", "fullness really")),
    ),
    answers=("cloth", "panels", "full", "cut_depth", "real"),
    headline=("Buy {cloth}: cut {panels}, each {cut_depth} deep.", "Cut the strip {full} long, {cut_depth} deep.",
              "Cut the strip {full} long."),
    sizes=(("edge", "depth"),),
    refusals=(Refusal("3 * depth > edge",
              "a frill so deep for its edge is unlikely: is that the size of what it goes round? Say how far it is "
                      "all round, and how deep the frill is, such as: ruffle 3 in deep on a 64 in edge.", choices={"goes_round": "yes"}),
              *(Refusal(f"abs(fullness - {times}) > 0",
              "two fullnesses are told, and I cannot tell which is meant. Say one of them, such as: "
                        "at 2 1/2 times fullness.", choices={"said_fullness": said}) for said, times in (("double", "2"), ("triple",
                        "3")))),
    source="common practice: 1.5 for heavy cloth, 2 for medium, 3 for sheer; 2 to 3 times (Utah State University "
           "Extension, straight ruffle)",
    related=("tiers", "gather ratio"),
    examples=(
        "ruffle on a 40 in edge, 6 in deep finished, sheer voile 54 in wide, how much cloth -> 5/8 yd; 3 panels",
        "how long a frill strip for a 48 in edge at 2 1/2 times fullness -> 120 in",
        "gathered skirt, waist 70 cm, 55 cm long, cloth 140 cm wide, double fullness -> 1.2 m; 2 panels",
        "frill 8 cm deep on a 3 m edge in 115 cm cotton, one and a half times -> 0.6 m; 5 panels",
    ),
)

GATHER_RATIO = Rule(
    topic="gather ratio",
    family="fabric",
    says=("gather ratio", "gathering ratio", "what is the fullness", "what is my fullness", "is the fullness",
          "what fullness is", "is it gathered", "what fullness is that",
          "fullness if", "fullness of", "fullness ratio", "how full", "what fullness", "what ratio", "ratio when",
          "fullness when", "fullness", "goes down to", "what fullness do i get", "i gathered", "i've gathered",
          "how gathered is it", "how gathered", "squish it to",
          "squash it to",
          "how many times fullness", "how many times gathered", "times gathered", "widths gathered into", "gathered into what fullness",
          "ratio of gathering", "gathered down to"),
    about="How full a gathering is: the flat width over the gathered width.",
    inputs=(
        Input("flat", "flat width", LENGTH, says=("flat", "before gathering", "ungathered", "strip", "wide",
                                                  "gathered from", "before", "is gathered", "gathered",
                                                  "panels of", "widths of", "pieces of", "drops of", "flat length", "ungathered length",
                                                  "initial length", "cut length", "strip was", "strip of", "from"),
              ask="How wide is it flat?", example="2 m", sane="1 mm..1 km", usual="5 cm..30 m",
              practice="1 m..4 m by 10 cm"),
        Input("widths", "widths of it", COUNT, says=("widths", "width", "panels", "panels of", "widths of",
                                                    "pieces of", "drops of", "lengths", "pieces", "drops",
                                                     "strips"), noun="width", spoken=True,
              default=Default("1", derived=True), sane="1..100", practice="1..3"),
        Input("gathered", "gathered width", LENGTH, says=("after gathering", "gathered to", "gathered", "into", "gathered into",
                                                          "goes down to", "squish it to", "squash it to", "edge", "waistband",
                                                          "down to", "gathers to",
              "gather to", "gathered length", "gathers up to", "gathered up to", "gathers into", "goes on",
              "edge it goes on", "drawn up to",
              "pulled up to", "final length", "gathered width", "goes into", "rail", "pole", "track",
              "curtain rail", "curtain pole", "curtain track"), ask="How wide is it once gathered?",
              example="1 m", sane="1 mm..1 km", usual="5 cm..30 m",
              practice="50 cm..2 m by 10 cm"),
    ),
    steps=(
        Step("ratio", "Divide the flat width by the gathered width", "widths * flat / gathered", RATIO,
             label="fullness",
             says=("fullness", "ratio", "how full", "gather ratio", "how many times"), stated=("times", "fullness",
                 "ratio", "full", "fullness of", "at a fullness of")),
    ),
    answers=("ratio",),
    headline=("The fullness is {ratio} times.",),
    refusals=(
        Refusal("gathered > widths * flat", "what it is gathered into is longer than what is gathered. Say which is flat and "
                "which is gathered, such as: 3 m flat gathered into 120 cm."),
    ),
    source=ARITHMETIC,
    related=("gathered strip",),
    defers=("gathered strip",),
    examples=(
        "what fullness is a 3 m strip gathered into 120 cm -> 2.5",
        "gather ratio of 90 in flat, gathered to 60 in -> 1.5",
        "gathering ratio: 240 cm before gathering, 80 cm after gathering -> 3",
    ),
)
