"""A toy worked stitch for stitch in another yarn: its size, its yarn and its stuffing."""

from __future__ import annotations

from ..engine.declare import (
    GEOMETRY,
    Caution,
    Derivation,
    Fact,
    Follows,
    Input,
    Rule,
    Step,
)
from ..engine.kinds import LENGTH, MASS, RATIO, STITCH_RATE
from ..engine.rounding import BODY, YARN_LENGTH, YARN_WEIGHT
from .words import SANE_STITCHES

TOY_TO_ANOTHER_YARN = Rule(
    topic="toy to another yarn",
    family="knitting",
    says=("toy", "rabbit", "teddy", "bear", "doll", "bunny", "amigurumi", "soft toy", "stuffed", "toy pattern",
          "another yarn", "thicker yarn", "thinner yarn",
          "elephant", "cuddly", "stuffing", "toys", "creature", "figure", "dinosaur", "octopus", "finer yarn",
          "chunky yarn", "mouse", "lamb"),
    about="The size, yarn and stuffing of a toy worked stitch for stitch in another yarn, by the factor of the two "
          "tensions.",
    inputs=(
        Input("old", "pattern's tension", STITCH_RATE,
              says=("pattern", "original", "old", "pattern is", "from", "pattern tension", "written for", "was",
                    "original tension", "old tension", "designed"),
              ask="What is the pattern's tension?", example="22 sts to 10 cm", sane=SANE_STITCHES,
              practice="18 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("new", "new tension", STITCH_RATE,
              says=("new", "i shall knit", "mine", "shall", "i will", "i'll knit", "instead", "new tension",
                    "what tension", "will knit", "i knit", "thicker", "now", "mine is"),
              ask="What is the tension of the new yarn?", example="16.5 sts to 10 cm", sane=SANE_STITCHES,
              practice="10 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("height", "height in the pattern", LENGTH,
              says=("tall", "stands", "high", "height", "long", "size", "big", "originally", "original height",
                    "pattern height", "pattern's was", "pattern's is",
                    "pattern was"),
              axis="height",
              ask="How tall is the toy in the pattern?", example="30 cm", sane="1 cm..3 m",
              practice="15 cm..40 cm by 1 cm", usual="3 cm..1.5 m"),
        Input("yarn", "yarn in the pattern", LENGTH, says=("yarn", "wool", "takes", "uses", "of yarn", "of wool"),
              extra=True, sane="1 m..10 km", practice="40 m..300 m by 10 m",
              usual="5 m..3 km"),
        Input("new_weight", "weight of a new ball", MASS, says=("ball", "balls", "per ball", "new yarn", "new ball",
                                                                "a ball", "skein"), extra=True, sane="1 g..5 kg",
              spoken=True),
        Input("new_length", "length of a new ball", LENGTH, says=("ball", "balls", "per ball", "new yarn", "new ball",
                                                                  "a ball", "skein", "to the ball"), extra=True,
              sane="1 m..10 km", spoken=True),
        Input("old_weight", "yarn weight in the pattern", MASS, says=("yarn", "wool", "weighs", "of yarn", "of wool",
                                                                      "weight"), extra=True, sane="1 g..20 kg",
              practice="20 g..200 g by 10 g", spoken=True),
        Input("filling", "stuffing in the pattern", MASS, says=("stuffing", "filling", "stuffed with", "of stuffing",
                                                                "toy stuffing", "fibrefill", "of filling"), extra=True,
              sane="1 g..50 kg",
              practice="30 g..200 g by 10 g"),
    ),
    steps=(
        Step("factor", "Divide the pattern's tension by the new one: each stitch is so many times as large",
             "old / new", RATIO, label="size factor",
             says=("factor", "times", "how much bigger", "scale", "size factor", "how many times")),
        Step("tall", "Every height and width grows by the factor", "height * factor", rounding=BODY, label="new height",
             says=("tall", "how tall", "high", "big", "how big", "new height", "size", "height", "come out", "long"),
             axis="height",
             stated=("want", "wanted", "to be", "should be", "must be", "finished", "come out", "came out", "stand", "wants", "bigger one", "smaller one", "want it", "want one", "give me one",
                     "make it", "makes it", "get one", "get it", "i'd like one", "reach", "become", "end up")),
        Step("length", "Each stitch uses the factor times as much yarn", "yarn * factor", rounding=YARN_LENGTH,
             unit=("yd", "m"), label="new yarn length",
             says=("how much yarn", "yarn", "wool", "metres", "yards", "how much wool", "how many metres", "mine take", "will mine take", "much will mine",
                   "will it take", "how much will it take", "how many yards", "will mine need")),
        Step("weight", "The new length at the new yarn's weight a metre", "length / new_length * new_weight", MASS,
             rounding=YARN_WEIGHT, label="new yarn weight",
             says=("grams of yarn", "how many grams", "yarn weight", "grams")),
        Step("about_weight", "In a yarn as much thicker as the stitches are larger, the weight goes by the cube of the "
             "factor", "old_weight * factor ^ 3", MASS,
             rounding=YARN_WEIGHT, label="new yarn weight, about", says=("weight of yarn", "grams of yarn",
                                                                         "how much yarn by weight", "yarn weight")),
        Step("stuffing", "Stuffing fills a space, which goes by the cube of the factor", "filling * factor ^ 3", MASS,
             rounding=YARN_WEIGHT, label="new stuffing",
             says=("stuffing", "filling", "how much stuffing", "fibrefill", "how much filling")),
        Step("area", "The knitted surface goes by the square of the factor", "factor ^ 2", RATIO,
             label="surface factor", says=("surface", "area")),
        Step("volume", "The space inside goes by the cube of the factor", "factor ^ 3", RATIO, label="stuffing factor",
             says=("volume", "stuffing factor")),
    ),
    answers=("tall", "length", "weight", "about_weight", "stuffing", "factor", "area", "volume"),
    headline=("It will stand {tall}.", "Everything grows {factor} times."),
    backwards={"new": "old * height / tall"},
    no_unknown=("old", "height", "yarn", "new_weight", "new_length", "old_weight", "filling"),
    source=GEOMETRY,
    cautions=(
        Caution("Eyes, buttons and other small parts do not belong on a toy for a child under three: they can come off "
                "and choke", "16 CFR 1501; EN 71-1"),
        Caution("Thicker needles with the same yarn open the stitches and the stuffing shows: change the yarn too"),
    ),
    notes=("A published list of toy scales differs from the ratio of hook sizes: go by tension, not by the hook.",),
    examples=(
        "Toy rabbit pattern is knitted at 22 stitches to 10 cm and stands 30 cm tall. I shall knit it at 16.5 to 10 "
        "cm. How tall will it be? -> 40 cm",
        "toy pattern 24 sts to 10 cm, mine 18 sts to 10 cm, 60 g of stuffing in the pattern, how much stuffing "
        "-> 143 g",
        "amigurumi doll 20 cm tall at 24 sts to 10 cm, I knit at 18 sts to 10 cm and it takes 60 m of yarn: how "
        "much "
        "yarn -> 80 m; 26.5 cm",
    ),
    related=("size at my tension", "yarn needed"),
    derivation=(
        Derivation(
            "length",
            (
                Fact("The pattern's yarn goes into its stitches", "yarn = stitches * old_each"),
                Fact("There are as many stitches in the new toy", "length = stitches * new_each"),
                Fact("Each stitch is the size factor times as large, and takes that much more yarn",
                     "new_each = factor * old_each"),
                Follows("Put the third into the second", "length = stitches * factor * old_each"),
                Follows("The first stands in it", "length = yarn * factor"),
            ),
            names={"stitches": "the number of stitches", "old_each": "the yarn in a stitch of the pattern",
                   "new_each": "the yarn in a new stitch"},
        ),
        Derivation(
            "volume",
            (
                Fact("The inside of a toy is like many small boxes, each long, wide and high",
                     "old_box = long * wide * high"),
                Fact("In the new toy every length is the size factor times as long",
                     "new_box = (factor * long) * (factor * wide) * (factor * high)"),
                Fact("The stuffing factor says how many times as much goes in", "volume = new_box / old_box"),
                Follows("Gather the factors", "new_box = factor ^ 3 * (long * wide * high)"),
                Follows("The old box stands in it, and cancels", "volume = factor ^ 3"),
            ),
            names={"old_box": "a box of the pattern's toy", "new_box": "the box in the new toy", "long": "its length",
                   "wide": "its width",
                   "high": "its height"},
            try_with={"factor": "1.5"},
        ),
    ),
)
