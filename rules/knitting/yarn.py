"""How much yarn: balls for a length, a substitute by length, and grams or metres from a swatch."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Rule, Step, flag
from ..engine.kinds import AREA, COUNT, LENGTH, MASS, MONEY, PERCENT
from ..engine.rounding import COUNT_UP, PENNY, YARN_LENGTH, YARN_WEIGHT

NO_SPARE = flag("exactly", "no spare",
                ("no spare", "no extra", "nothing extra", "without spare", "without extra", "none spare", "no allowance", "exactly", "no reserve",
                 "no safety", "with no spare", "zero spare", "not a metre more", "nothing spare"))  # fmt: skip
_SPARE_SAYS = ("spare", "extra", "reserve", "to be safe", "allowance", "safety", "margin", "over", "on top", "for luck", "more")


def _spare(*exceptions: Default) -> Input:
    return Input(
        "spare", "spare", PERCENT, says=_SPARE_SAYS,
        default=(Default("0 %", "you asked for none", when={"exactly": "yes"}), *exceptions,
                 Default("10 %", "the usual allowance on a length (common practice)")),
        sane="0 %..100 %", practice="5 %..20 % by 5 %", usual="0 %..50 %",
    )  # fmt: skip


DYE_LOT = Caution("Buy all the yarn at once, from one dye lot: another lot may be another shade")
EACH = Input("each", "price each", MONEY, says=("a ball", "each", "per ball", "a skein", "per skein", "a hank", "price", "cost", "costs", "a ball cost"),
             extra=True, sane="0.01 money..1000 money", practice="2 money..15 money by 1 money")  # fmt: skip

YARN_NEEDED = Rule(
    topic="yarn needed",
    family="knitting",
    says=("yarn needed", "how many balls", "balls", "skeins", "hanks", "ball", "skein", "hank", "substitute yarn", "yarn", "wool", "how many skeins",
          "how much yarn", "how much wool", "balls of wool", "balls of yarn", "substitute", "replace the yarn", "swap the yarn", "yardage", "cakes",
          "different yarn", "how many hanks", "how many balls of wool", "cones", "metreage", "instead of the pattern's yarn", "run out"),
    about="How many balls for a length of yarn, or for the balls a pattern asks in another yarn: by length, never by weight.",
    inputs=(
        Input("length", "length of yarn needed", LENGTH,
              says=("needs", "takes", "calls for", "pattern needs", "requires", "total", "in all", "of yarn", "uses", "altogether", "need", "asks for", "for", "to make"),
              default=Default("=pattern_balls * pattern_ball", "The pattern's balls times the length of each", derived=True, given=("pattern_balls",)),
              ask="How much yarn is needed in all?", example="1340 m", sane="1 m..1000 km", practice="400 m..1600 m by 50 m", usual="30 m..20 km"),
        Input("ball", "length of a ball", LENGTH,
              says=("balls are", "a ball", "ball", "each", "per ball", "skein", "skeins", "hanks of", "skeins of", "hanks", "hold", "holds", "hank", "my balls", "new yarn", "balls of", "ball is",
                    "balls", "to the ball", "mine", "per skein", "has", "come in", "mine has", "i have", "to a ball", "in a ball", "apiece", "contains", "my yarn has", "yarn has", "my wool has",
                    "wool has", "my yarn is", "my yarn"),
              ask="How long is one ball?", example="120 m", sane="1 m..20 km", practice="80 m..400 m by 10 m", usual="15 m..2 km"),
        Input("pattern_balls", "balls the pattern asks", COUNT, noun="ball",
              says=("pattern asks for", "pattern balls", "pattern wants", "pattern calls for", "original balls", "pattern uses", "pattern", "calls for",
                    "asks for", "says", "specifies", "balls of", "skeins of"),
              extra=True, sane="1..500", practice="4..16 by 1"),
        Input("pattern_ball", "length of the pattern's ball", LENGTH,
              says=("pattern's ball", "original yarn", "pattern yarn", "balls of", "skeins of", "hanks of", "old yarn", "pattern", "calls for", "asks for"), spoken=True, ask="How long is a ball of the pattern's own yarn?", example="100 m", sane="1 m..20 km", practice="80 m..400 m by 10 m"),
        Input("ball_weight", "weight of a ball", MASS, says=("my yarn", "mine", "new yarn", "ball", "per ball"), extra=True, sane="1 g..5 kg"),
        _spare(Default("0 %", "the pattern's balls already hold the spare", given=("pattern_balls",))),
        NO_SPARE,
        EACH,
    ),
    steps=(
        Step("total", "Add the spare", "length * (1 + spare)", rounding=YARN_LENGTH, label="yarn to buy", unit=("yd", "m"),
             says=("how much yarn", "metres", "yards", "total length", "yardage", "total")),
        Step("balls", "Divide by the length of one ball, and take whole balls", "total / ball", COUNT, rounding=COUNT_UP, noun="ball",
             says=("how many balls", "balls", "how many skeins", "how many", "skeins", "hanks", "how many hanks", "number of balls"),
             stated=("have", "got", "balls", "skeins", "only have", "bought")),
        Step("cost", "Multiply the whole balls by the price of one", "rounded(balls) * each", MONEY, rounding=PENNY, label="cost",
             says=("cost", "price", "how much money", "come to", "pay", "cost me", "total cost")),
    ),
    answers=("balls", "total", "cost"),
    headline=("Buy {balls}, {cost} in all.", "Buy {balls}: {total} of yarn.", "Buy {balls}."),
    source=ARITHMETIC,
    cautions=(DYE_LOT, Caution("Match yarns by length and tension, not by weight: fibres of the same weight run to different lengths",
                               mentions=("substitute", "instead", "different", "replace", "swap", "other", "pattern"))),
    examples=(
        "The cardigan takes 1340 m and my balls are 120 m each. With 10 % spare, how many balls? -> 13 balls; 1474 m",
        "Jumper needs 1,250 yards; the skeins I like hold 200 m. No extra. How many skeins? -> 6 balls",
        "pattern asks for 9 balls of 200 yd, my yarn has 109 yd a ball, how many balls -> 17 balls",
        "pattern needs 1200 m, balls 125 m each at £4.80 a ball, no spare, cost? -> £48.00; 10 balls",
    ),
    related=("yarn by swatch", "yarn by garment"),
)

YARN_BY_WEIGHT = Rule(
    topic="yarn by weight",
    family="knitting",
    says=("yarn by weight", "balls", "ball", "skeins", "skein", "wool", "yarn", "how many balls", "grams of wool", "grams of yarn", "g balls", "hanks"),
    about="How many balls for a weight of yarn.",
    inputs=(
        Input("needed", "weight of yarn needed", MASS, says=("needs", "need", "takes", "calls for", "of wool", "of yarn", "in all", "total", "requires", "uses", "pattern"),
              ask="What weight of yarn is needed in all?", example="600 g", sane="1 g..100 kg", practice="300 g..800 g by 50 g"),
        Input("ball", "weight of a ball", MASS, says=("balls are", "a ball", "ball", "each", "per ball", "skein", "balls", "balls of", "g balls", "come in", "weighs", "skeins of"),
              ask="What does one ball weigh?", example="50 g", sane="1 g..5 kg", practice="50 g..100 g by 50 g"),
        Input("spare", "spare", PERCENT, says=_SPARE_SAYS, default="0 %", because="a weight stated by a pattern already holds the spare", sane="0 %..100 %",
              practice="5 %..20 % by 5 %"),
        NO_SPARE,
        EACH,
    ),
    steps=(
        Step("total", "Add the spare", "needed * (1 + spare)", MASS, rounding=YARN_WEIGHT, label="yarn to buy"),
        Step("balls", "Divide by the weight of one ball, and take whole balls", "total / ball", COUNT, rounding=COUNT_UP, noun="ball",
             says=("how many balls", "balls", "how many skeins", "how many", "skeins", "hanks"), stated=("have", "got", "only have", "bought")),
        Step("cost", "Multiply the whole balls by the price of one", "rounded(balls) * each", MONEY, rounding=PENNY, label="cost",
             says=("cost", "price", "come to", "pay", "total cost")),
    ),
    answers=("balls", "total", "cost"),
    headline=("Buy {balls}, {cost} in all.", "Buy {balls}."),
    source=ARITHMETIC,
    cautions=(DYE_LOT, Caution("Another yarn of the same weight may be of another length: substitute by length instead")),
    examples=(
        "I need 600 g of wool and the balls are 50 g, how many balls -> 12 balls",
        "pattern takes 430 g of yarn, 100 g skeins, how many skeins -> 5 balls",
        "350 g of wool needed, 50 g balls at £3.20 each, what cost -> £22.40; 7 balls",
    ),
    related=("yarn needed", "yarn by swatch"),
)

YARN_BY_SWATCH = Rule(
    topic="yarn by swatch",
    family="knitting",
    says=("swatch weighs", "weigh the swatch", "swatch", "yarn by swatch", "my swatch weighs", "how many grams", "grams of wool", "grams of yarn", "weigh",
          "weighs", "how much wool", "how much yarn", "swatch used", "from my swatch", "square weighs", "sample weighs", "tension square weighs"),
    about="The yarn a piece takes, in proportion to its area, from a swatch that was measured and weighed.",
    inputs=(
        Input("swatch_width", "swatch width", LENGTH, says=("swatch", "sample", "tension square", "square", "test piece"), ask="How wide is the swatch?",
              example="10 cm", sane="1 cm..1 m", practice="10 cm..20 cm by 1 cm", usual="3 cm..60 cm"),
        Input("swatch_length", "swatch length", LENGTH, says=("swatch", "sample", "tension square", "square", "test piece"),
              default=Default("=swatch_width", "the swatch is square"), ask="How long is the swatch?", example="10 cm", sane="1 cm..1 m"),
        Input("swatch_weight", "swatch weight", MASS, says=("weighs", "swatch weighs", "weight", "weigh", "it weighs", "swatch"), ask="What does the swatch weigh?",
              example="6 g", sane="0.1 g..2 kg", practice="4 g..20 g by 1 g"),
        Input("width", "width of the piece", LENGTH, says=("scarf", "blanket", "piece", "wide", "shawl", "throw", "panel", "by", "finished", "back"), axis="width",
              ask="How wide is the piece?", example="25 cm", sane="1 cm..10 m", practice="20 cm..150 cm by 5 cm"),
        Input("length", "length of the piece", LENGTH, says=("scarf", "blanket", "piece", "long", "shawl", "throw", "panel", "finished"), axis="length",
              ask="How long is the piece?", example="180 cm", sane="1 cm..30 m", practice="100 cm..200 cm by 10 cm"),
        Input("pieces", "pieces", COUNT, says=("pieces", "squares", "panels", "of them", "piece", "alike"), default=Default("1", "one piece", derived=True), noun="piece",
              sane="1..2000", practice="1..6 by 1"),
        Input("area", "area of the piece", AREA, says=("area", "in all", "total area", "piece"),
              default=Default("=width * length * pieces", "Multiply the width by the length", derived=True), sane="1 cm^2..1000 m^2"),
        Input("ball_weight", "weight of a ball", MASS, says=("ball", "balls", "a ball", "per ball", "skein", "each", "balls of", "g balls", "gram balls", "in"),
              extra=True, sane="5 g..5 kg", practice="50 g..100 g by 50 g"),
        Input("ball_length", "length of a ball", LENGTH, says=("ball", "balls", "a ball", "per ball", "skein", "metres a ball"), extra=True, sane="1 m..20 km"),
        _spare(),
        NO_SPARE,
        EACH,
    ),
    steps=(
        Step("bare", "The swatch's weight, as many times as its area goes into the piece", "area / (swatch_width * swatch_length) * swatch_weight", MASS,
             label="weight before the spare"),
        Step("weight", "Add the spare", "bare * (1 + spare)", MASS, rounding=YARN_WEIGHT, label="yarn needed",
             says=("how many grams", "grams", "how much wool", "how much yarn", "wool", "yarn", "ounces", "weight", "how much")),
        Step("balls", "Divide by the weight of one ball, and take whole balls", "weight / ball_weight", COUNT, rounding=COUNT_UP, noun="ball",
             says=("how many balls", "balls", "skeins", "how many skeins")),
        Step("yarn_length", "The same weight as a length of this yarn", "weight / ball_weight * ball_length", rounding=YARN_LENGTH, label="length of yarn",
             unit=("yd", "m"), says=("how many metres", "metres", "yards", "how many yards")),
        Step("cost", "Multiply the whole balls by the price of one", "rounded(balls) * each", MONEY, rounding=PENNY, label="cost", says=("cost", "price")),
    ),
    answers=("weight", "balls", "yarn_length", "cost"),
    headline=("Have {weight} of yarn: {balls}.", "Have {weight} of yarn."),
    sizes=(("swatch_width", "swatch_length"), ("width", "length")),
    source=ARITHMETIC,
    cautions=(DYE_LOT, Caution("The swatch must be in the stitch of the piece: ribs and cables take more yarn")),
    examples=(
        "My 10 x 10 cm swatch weighs 6 g. Scarf is 25 by 180 cm. With 10 % spare how many grams of wool? -> 297 g",
        "swatch 6 x 6 in weighs 9 g, blanket 36 x 40 in, no spare, in grams -> 360 g",
        "swatch 15 x 15 cm weighs 14 g, throw 120 x 150 cm, how many 100 g balls -> 13 balls; 1232 g",
    ),
    related=("yarn needed", "scarf, blanket"),
)
