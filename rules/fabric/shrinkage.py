"""Cloth that shrinks: what to buy, and what a washed square says."""

from __future__ import annotations

from ..engine.declare import Caution, Default, Input, Refusal, Rule, Step, flag
from ..engine.kinds import LENGTH, PERCENT
from ..engine.rounding import BUY_CLOTH, CUT, FINE, PERCENT_TENTH
from .words import CLOTH_ASKED

SHRINK_WORDS = ("shrink", "shrinkage", "shrink by", "loses", "lose", "in the wash", "shrinkage of", "will shrink",
                "wash took", "wash takes", "goes in", "go in by", "goes in by", "draw up", "draws up", "draw up by", "draws up by",
                "pulls up", "pull up by", "draw in by", "draws in by")

LOST = ("how much is lost", "how much will it lose", "how much does it lose", "how much will i lose", "how much do i lose",
        "lost in the wash",
        "is lost", "lost to shrinkage", *(f"{much} {will} i lose" for much in ("many cm", "many centimetres", "many inches", "many in", "much length")
                                          for will in ("will", "do", "would")), "how much shorter", "how much will be lost", "will it lose", "goes in the wash")

SHRINKAGE = Rule(
    topic="shrinkage",
    family="fabric",
    says=("shrink", "shrinkage", "shrinks in the wash", "after the wash", "after washing", "pre-wash", "prewash",
          "preshrink", "preshrunk", "lose in the wash", "lose", "in the wash", "allow for shrinkage", "prewashing",
          "the wash took", "the wash takes",
          "the wash took off", "goes in", "go in by", "goes in by", "draw up by", "draws up by", "draw in by", "draws in by",
          "pulls up by", "after sponging", "sponged", "once sponged", "after steaming", "been washed", "after laundering",
          "after the first wash",
          "pre-washing"),
    about="What to buy so that enough is left after the cloth has shrunk.",
    inputs=(
        Input("needed", "length needed", LENGTH, says=("left", "be left", "is left", "will be left",
                                                       "will i have", "need", "want", "need after the wash",
                                                       "after washing", "after the wash", "finished", "to end up with",
              "end up with", "finish up with", "finish with", "left after", "left me", "left me with", "leaves me",
              "of it", "have left", "must be",
                                         "afterwards", "still have", "must still have", "must have", "should have",
                                         "once it's been washed", "when washed", "once washed", "net length", "net", "finished length",
                                                       "wanted", "length needed", "require", "want have", "i want", "want to have", "after",
              "for", "what'll be left", "what'll i have", "what will be left", "will be left of it", "length after washing",
              "length after the wash", "does it end up",
              "long does it end up", "how long does it end up", "length have i got", "have i got now", "long will it be",
              "how long is it after",
              "long is it after", "long is it after the wash", "how long is it afterwards", "long is it then", "long will it be after",
              "how long is it now", "long is it now",
              "buy to have", "get to have",
              "buy to end up with", "what have i got left", "have i got left", "got left to cut from", "what have i left", "left to cut from",
              "left to cut", "what do i have left", "do i have left"), ask="What length is needed after the wash?",
              example="3 m", sane="1 mm..1 km", usual="5 cm..40 m", practice="1 m..5 m by 10 cm"),
        # Told along with the length ("2 m of 110 cm lining"); it changes nothing.
        Input("width", "fabric width", LENGTH, says=("wide", "width", "fabric width", "wide cloth", "wide fabric"), axis="width",
            extra=True,
              spoken=True, sane="10 cm..5 m", usual="85 cm..3 m"),
        # Whether the length told is what is left, or what goes in: it makes a difference to what is lost.
        flag("said_after", "length said as wanted or left", ("need", "needed", "want", "wanted", "after the wash", "after washing", "left",
             "end up with", "finished", "once washed", "i need", "require", "must have")),
        Input("shrink", "shrinkage", PERCENT, says=SHRINK_WORDS, ask="By how much does it shrink?", example="5 %",
              sane="0 %..99 %", usual="0 %..25 %",
              practice="2 %..10 %"),
    ),
    steps=(
        Step("cloth", "Divide by what the wash leaves, not multiply by what it takes", "needed / (1 - shrink)",
             rounding=BUY_CLOTH, label="cloth to buy",
             says=("how much", "buy", "cloth to buy", "cut", "fabric", "cloth", "before washing", "before the wash",
                   "start with", "yardage", "gross length", "gross", "went in", "go in", "length before washing",
                   "length before the wash", "prior to washing", *CLOTH_ASKED),
             stated=("bought", "before the wash", "before washing", "mark", "marked")),
        Step("lost", "The wash takes its share of what is bought", "cloth * shrink", rounding=CUT, label="lost in the wash",
             when={"said_after": "yes"}, says=LOST),
        Step("loses", "The wash takes its share of the length", "needed * shrink", rounding=CUT, label="lost of the length in the wash",
             when={"said_after": "no"}, says=LOST),
    ),
    answers=("cloth",),
    pairs=(("needed", "width"),),
    headline=("Buy {cloth}.",),
    source="common practice; dividing by (1 - s): ForAllTex, shrinkage maths for pattern makers",
    cautions=(Caution("Wash a test square first, each way: warp and weft do not shrink alike"),),
    related=("shrink test",),
    examples=(
        "12 m wanted after the wash, shrinks 10%, buy how much -> 13.4 m",
        "I need 3.2 m and the cloth shrinks 6% -> 3.5 m",
        "need 4 yd, it loses 5 % in the wash, how much fabric to buy -> 4 1/4 yd",
        "bought 3 m before the wash, it will shrink 5 %, what length is left after -> 285 cm",
    ),
)

BEFORE = Input(
    "before", "length before", LENGTH, says=("before", "original", "started at", "started", "was", "marked",
                                             "marked out", "cut", "drew", "square", "from",
    "measured", "cut at", "test square", "swatch", "lengthways before", "unwashed", "before it",
    "used to be", "it used to be", "started as", "began at", "sample", "sample measured", "initial length", "initial",
    "initially", "initial dimension", "it was",
    "original length", "length before", "went in at", "went in", "put it in at", "put in", "had been", "before had",
    "before was", "into the wash at", "went into the wash at",
    "nominal", "dry", "out of", "bought", "i bought", "in at"), axis="length",
    ask="How long was it before the wash?",
    example="20 cm", sane="1 mm..100 m", usual="5 cm..2 m", practice="10 cm..50 cm by 5 cm",
)  # fmt: skip

SHRINK_TEST = Rule(
    topic="shrink test",
    family="fabric",
    says=("shrink test", "test square", "what percentage did it shrink",
          "how much did it shrink",
          "what's the shrinkage",
          "shrinkage test", "wash test", "after the wash it was", "shrank to", "shrunk to",
          "percent did it shrink", "line on my cloth", "drew a line",
          "washed square", "what is the shrinkage", "work out the shrinkage", "shrinkage per cent",
          "percent shrinkage", "per cent shrinkage", "went down to", "sample measured", "swatch measured", "became",
          "washed sample", "before washing it", "swatch was", "sample was", "square was", "washed it and it's now",
          "shrinkage if", "as a percentage in the wash", "how much has it shrunk", "what has it shrunk",
          "what percent did it shrink", "what percentage has it shrunk", "has shrunk", "how much does it shrink",
          "how much does it shrink by", "does it shrink by", "now it is", "and now it's", "shrinkage percentage", "percentage shrinkage",
          "initial length", "final length", "initial dimension", "final dimension", "shrinkage in percent",
          "what did it lose", "what has it lost", "what's it lost", "has it lost",
          "how much has it lost", "did it lose", "is it shrinked", "it is shrinked", "percent it is",
          "percent is it shrunk", "that i washed",
          "i washed it", "left after washing", "how much was lost", "dimensional change", "percentage loss", "shrunk by how much",
          "by how much did it shrink", "by how much has it shrunk", "what percentage was lost", "loss in the wash",
          "percent of shrink", "per cent of shrink", "percentage of shrink",
          "i wash a square", "i washed a square", "wash a square", "shrinkage coupon", "shrinkage in each direction",
          "did i lose", "have i lost", "marked on the cloth", "cloth marked", "square marked", "line marked", "both ways",
          "marker line", "shrinkage each way", "in each direction", "shrinkage in both directions", "in both directions",
          "line i basted", "it lost", "line i drew", "line i marked", "basted a line", "percentage lost", "per cent lost", "percent lost",
          "after the tumble dryer", "after tumble drying"),
    about="How much a marked length shrank, each way when both are given.",
    inputs=(
        BEFORE,
        Input("after", "length after", LENGTH, says=("after", "after the tumble dryer", "after tumble drying", "after the wash", "lengthways", "now", "came out",
                                                     "down to", "shrunk to", "shrank to",
                                             "to", "is now", "now it's", "now it is", "went to", "went down to", "goes to", "reduced to",
                                             "ended at", "now is", "comes out", "afterwards", "washed", "now is", "along",
                                             "lengthwise", "after washing", "after laundering", "warp", "long",
              "it measures", "ended up", "in length", "final length", "final", "finally", "final dimension", "it's",
              "this morning", "today", "after the wash it was",
              "now it was", "then it was", "length after", "came out at", "came out of it at",
              "came back", "came back at", "out at", "length now", "long now", "has now", "only", "was left", "remained", "remains"),
              ask="How long is it after the wash?", example="19 cm", sane="1 mm..100 m", usual="5 cm..2 m",
              practice="10 cm..50 cm by 5 cm"),
        Input("before_across", "width before", LENGTH, says=("wide before", "across before", "width before"),
              default=Default("=before", derived=True),
              spoken=True, sane="1 mm..100 m"),
        Input("after_across", "width after", LENGTH, says=("across", "crossways", "widthways", "crosswise", "wide",
                                                           "width", "weft", "the other way",
              "widthwise", "in width"), extra=True, sane="1 mm..100 m", usual="5 cm..2 m"),
    ),
    steps=(
        Step("lengthways", "What was lost, as a share of the length before", "(before - after) / before", PERCENT,
             rounding=PERCENT_TENTH,
             label="shrinkage", says=("shrinkage", "shrink", "percentage", "lengthways", "per cent", "lose", "lost", "percent",
                                      "dimensional change", "loss"),
             stated=("shrink", "shrinkage"), sane="0 %..100 %"),
        Step("crossways", "What was lost across, as a share of the width before",
             "(before_across - after_across) / before_across", PERCENT,
             rounding=PERCENT_TENTH, label="shrinkage across", says=("across", "crossways"), sane="0 %..100 %"),
        Step("lost", "What was lost of the length", "before - after", rounding=FINE, label="length lost",
             says=("how many inches", "how many cm", "how many centimetres", "how many mm", "how much shorter", "length lost",
                   "was lost in inches", "was lost in cm", "lost in inches", "lost in cm", "in length was lost", "much length"),
             stated=("it lost", "lost", "has lost", "was lost")),
    ),
    answers=("lengthways", "crossways"),
    headline=("It shrank {lengthways} lengthways and {crossways} across.", "It shrank {lengthways}."),
    sizes=(("before_across", "before"), ("after_across", "after")),
    source="arithmetic; the loss over the original, as AATCC TM 135 reckons dimensional change (to 0.1 %)",
    refusals=(
        Refusal("after_across > before_across", "it would have grown across, not shrunk. Say which is before the wash and which after, "
                "such as: 100 cm before, 93 cm after."),
        Refusal("after > before", "it would have grown, not shrunk. Say which is before the wash and which after, "
                "such as: 100 cm before, 93 cm after."),
    ),
    related=("shrinkage",),
    examples=(
        "I marked out a 20 cm square on the calico. After the wash it was 19 cm lengthways and 19.5 cm across. "
        "What's the shrinkage? -> 5 %; 2.5 %",
        "shrink test: 50 cm before, 48 cm after -> 4 %",
        "test square was 10 in before the wash and 9 1/2 in after, what percentage did it shrink -> 5 %",
    ),
)

