"""How many balls for a weight of yarn."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, MASS, MONEY, PERCENT
from ..engine.rounding import COUNT_UP, PENNY, YARN_WEIGHT
from .yarn import DISCOUNT, DYE_LOT, EACH, LEFT, NO_SPARE, SPARE_SAYS, asks

_WEIGHT = ("how many grams", "how much wool", "how much yarn", "what weight", "how much", "how many ounces")

YARN_BY_WEIGHT = Rule(
    topic="yarn by weight",
    family="knitting",
    says=("yarn by weight", "balls", "ball", "skeins", "skein", "yarn", "of wool", "how much wool for", "how many balls", "grams of wool",
          "grams of yarn", "g balls", "hanks"),
    about="How many balls for a weight of yarn.",
    inputs=(
        Input("needed", "weight of yarn needed", MASS, says=("needs", "need", "takes", "calls for", "of wool",
                                                             "of yarn", "in all", "total", "requires", "uses", "weigh",
                                                             "weighs", "sweater weighs", "cardigan weighs",
                                                             "pattern"),
              default=Default("=pattern_balls * pattern_ball", "The pattern's balls times the weight of each", derived=True,
                              given=("pattern_balls", "pattern_ball")),
              ask="What weight of yarn is needed in all?", example="600 g", sane="1 g..100 kg",
              practice="300 g..800 g by 50 g"),
        Input("ball", "weight of a ball", MASS, says=("balls are", "a ball", "ball", "each", "per ball", "skein",
                                                      "balls", "g balls", "come in", "ball weighs", "each weighs",
                                                      "balls weigh", "ones", "g ones", "mine", "mine are", "gram balls",
                                                      "sold in", "want to use", "comes in", "instead", "the ones",
                                                      "i want to use"),
              default=tuple(Default("=pattern_ball", "The weight of the balls there are", derived=True, given=("pattern_ball", had))
                            for had in ("bought", "stash")),
              ask="What does one ball weigh?", example="50 g", sane="1 g..5 kg", practice="50 g..100 g by 50 g"),
        Input("pattern_balls", "balls the pattern asks", COUNT, noun="ball",
              says=("pattern asks for", "pattern wants", "pattern calls for", "pattern uses", "pattern", "calls for", "asks for",
                    "pattern says", "original", "needs", "takes", "wants", "balls of", "skeins of", "pattern needs",
                    "pattern takes",
                    "called for", "requires"),
              extra=True, sane="1..500", spoken=True),
        Input("pattern_ball", "weight of the pattern's ball", MASS,
              says=("pattern's ball", "balls of", "skeins of", "hanks of", "original", "called for"),
              extra=True, sane="1 g..5 kg", spoken=True),
        Input("spare", "spare", PERCENT, says=SPARE_SAYS, default="0 %",
              because="a weight stated by a pattern already holds the spare", sane="0 %..100 %",
              practice="5 %..20 % by 5 %"),
        NO_SPARE,
        Input("stash", "balls in hand", COUNT,
              says=("i have", "i've", "i've got", "have got", "i got", "in hand", "in my stash", "only have", "already have",
                    "already got", "own"), extra=True, sane="1..500", spoken=True),
        Input("bought", "balls bought", COUNT, noun="ball", says=("i bought", "we bought", "bought", "if i buy", "if i get"),
              default=(Default("=stash", derived=True, given=("stash",)), Default("=rounded(balls)", derived=True)), spoken=True, sane="1..500"),
        EACH,
        DISCOUNT,
    ),
    steps=(
        Step("total", "Add the spare", "needed * (1 + spare)", MASS, rounding=YARN_WEIGHT, label="yarn to buy",
             says=("how many grams", "grams altogether", "weight altogether", "total weight", "grams in all", "what weight of",
                   "weight is that", "weight of wool is that", "weight of yarn is that", "how much does it weigh", "how much do they weigh",
                   "grams is that", "grams do i buy", "how many ounces", "how much wool is that", "how much yarn is that")),
        Step("balls", "Divide by the weight of one ball, and take whole balls", "total / ball", COUNT,
             rounding=COUNT_UP, noun="ball",
             says=("how many balls", "balls", "how many skeins", "how many", "skeins", "hanks"),
             stated=("have", "got", "only have")),
        Step("leftover", "Take what is needed from the whole balls bought", "bought * ball - needed", MASS, rounding=YARN_WEIGHT,
             label="left over", says=("left over", "will be left", "leftover", "over at the end", *asks(_WEIGHT, LEFT))),
        Step("more", "Take the balls in hand from those needed", "max(0 * stash, rounded(balls) - stash)", COUNT, rounding=COUNT_UP,
             noun="ball", label="balls still to buy",
             says=("how many more", "more balls", "more skeins", "still need", "still to buy", "more must i", "many more", "balls more",
                   "skeins more", "more do i need", "more do i have to buy", "further balls")),
        Step("cost", "Multiply the whole balls by the price of one",
             "rounded(balls) * each * (1 - discount)", MONEY, rounding=PENNY,
             label="cost",
             says=("cost", "price", "come to", "pay", "total cost", "spend", "the bill", "set me back")),
    ),
    answers=("balls", "total", "cost", "more"),
    sizes=(("pattern_balls", "pattern_ball"),),
    insists=True,
    headline=("Buy {balls}, {cost} in all.", "Buy {balls}."),
    source=ARITHMETIC,
    cautions=(DYE_LOT,
              Caution("Another yarn of the same weight may be of another length: substitute by length instead")),
    examples=(
        "I need 600 g of wool and the balls are 50 g, how many balls -> 12 balls",
        "pattern takes 430 g of yarn, 100 g skeins, how many skeins -> 5 balls",
        "350 g of wool needed, 50 g balls at £3.20 each, what cost -> £22.40; 7 balls",
    ),
    related=("yarn needed", "yarn by swatch"),
)
