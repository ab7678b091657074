"""How many balls for a weight of yarn."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, MASS, MONEY, PERCENT
from ..engine.rounding import COUNT_UP, PENNY, YARN_WEIGHT
from .yarn import DISCOUNT, DYE_LOT, EACH, NO_SPARE, SPARE_SAYS

YARN_BY_WEIGHT = Rule(
    topic="yarn by weight",
    family="knitting",
    says=("yarn by weight", "balls", "ball", "skeins", "skein", "wool", "yarn", "how many balls", "grams of wool",
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
        EACH,
        DISCOUNT,
    ),
    steps=(
        Step("total", "Add the spare", "needed * (1 + spare)", MASS, rounding=YARN_WEIGHT, label="yarn to buy"),
        Step("balls", "Divide by the weight of one ball, and take whole balls", "total / ball", COUNT,
             rounding=COUNT_UP, noun="ball",
             says=("how many balls", "balls", "how many skeins", "how many", "skeins", "hanks"),
             stated=("have", "got", "only have", "bought")),
        Step("cost", "Multiply the whole balls by the price of one",
             "rounded(balls) * each * (1 - discount)", MONEY, rounding=PENNY,
             label="cost",
             says=("cost", "price", "come to", "pay", "total cost")),
    ),
    answers=("balls", "total", "cost"),
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
