"""A price with a percentage taken off it or put on it: what is paid, and what that saves."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import MONEY, PERCENT, PRICE
from ..engine.rounding import PENNY, PENNY_A_METRE, PENNY_A_YARD, Rounding

SAVED = ("save", "how much have i saved", "have i saved", "how much do i save", "do i save", "saving", "saved", "how much did i save",
         "knocked off in money", "money off", "is taken off", "much is taken off", "comes off", "much comes off", "is knocked off",
         "off in money", "much discount", "discount in money", "how much cheaper")
SHARES_OFF = {"half": "50 %", "third": "33 1/3 %", "quarter": "25 %"}
ON_TOP = ("on top", "plus", "add", "added", "extra", "went up", "gone up", "going up", "goes up", "up by", "dearer", "rise", "increase",
          "tax", "sales tax", "vat", "gst", "markup", "mark up", "put on")  # fmt: skip
SHARE = choice(
    "share", "share taken off",
    {"half": ("half price", "half off", "half the price", "by half"),
     "third": ("third off", "by a third", "by one third", "a third off"),
     "quarter": ("quarter off", "by a quarter", "by one quarter", "a quarter off"), "not said": ()},
    default=Default("not said", derived=True),
)  # fmt: skip
BY_SHARE = tuple(Default(off, derived=True, when={"share": name}) for name, off in SHARES_OFF.items())

SALE_PRICE = Rule(
    topic="sale price",
    family="money",
    says=("sale price", "discount", "off now", "in the sale", "reduced by", "reduced",
          "so i pay", "so what do i pay", "what do i pay then", "do i pay now", "pay after", "hand over", "new price", "original price",
          "full price", "price before", "before the sale", "before the discount", "it cost before", "percent did i save", "what discount",
          "trade discount", "what percent off", "percent off is that", "per cent off", "per cent off is that", "what per cent off",
          "what percentage off", "sales tax", "vat",
          "plus tax", "half price", "come down to", "marked down", "knocked off", "what do i pay", "cost before", "before and now",
          "is off",
          *(words for words in SAVED[:8] if " " in words)),
    about="What is paid when a percentage is taken off a price or put on it, and what it saves; or the price there was before.",
    inputs=(
        Input("price", "full price", MONEY,
              says=("was", "original", "originally", "original price", "full price", "before", "price before", "marked", "off", "of",
                  "from",
                    "price was", "was it before", "what was it before", "it cost before", "regular", "normally", "usual price",
                    "cost before", "ticket", "less", "minus", "on"),
              ask="What was the price before?", example="£48", practice="4 money..80 money by 4 money", usual="0.1 money..5000 money"),
        Input("percent", "percentage", PERCENT, says=("off", "discount", "less", "reduction", "reduced by", "on top", "tax", "vat", "plus",
                                                      "up by", "by", "what percent off", "percent off",
                                                      "what percentage off", "percentage off", "per cent off", "what per cent off",
                                                      "what percent did i save", "how many percent off"),
              default=BY_SHARE,
              ask="What percentage?", example="20 %", sane="0 %..1000 %", practice="10 %..50 % by 5 %"),
        choice("way", "off or on top", {"off": ("off", "discount", "less", "reduced by", "cheaper", "sale", "minus", "reduced"),
            "on": ON_TOP},
               default="off", because="a percentage of a price is taken off it, unless it is put on top"),
        SHARE,
    ),
    steps=(
        Step("now", "Take the percentage off the price", "price * (1 - percent)", MONEY, rounding=PENNY, label="price to pay",
             when={"way": "off"},
             says=("pay", "i pay", "what do i pay", "now", "hand over", "sale price", "new price", "come down to", "cost", "total",
                 "come to"),
             stated=("paid", "i paid", "pay", "now", "is now", "its now", "sale price", "after", "reduced to", "down to", "to",
                 "came to", "came down to",
                     "comes to", "only", "got it for", "for")),
        Step("with_it", "Add the percentage to the price", "price * (1 + percent)", MONEY, rounding=PENNY, label="price with it",
             when={"way": "on"},
             says=("pay", "total", "new price", "now", "cost", "come to", "in all", "altogether", "with tax", "with vat"),
             stated=("paid", "now", "is now", "after", "to", "came to", "up to", "in all", "with tax", "including", "incl", "total")),
        Step("saved", "The percentage of the price", "price * percent", MONEY, rounding=PENNY, label="the percentage in money",
             says=(*SAVED, "how much tax", "how much vat", "the tax", "the vat")),
    ),
    answers=("now", "with_it", "saved"),
    headline=("You pay {now}; {saved} is taken off.", "You pay {now}.", "It comes to {with_it}.", "It comes to {saved}."),
    source=ARITHMETIC,
    tells=("money + percentage",),
    refusals=(Refusal("percent > 1", "no more than all of it, 100 %, can be taken off. Such as: 20% off £45", choices={"way": "off"}),),
    related=("cost", "percentage"),
    examples=(
        "sale price: 15% off £36.40 -> £30.94; £5.46",
        "it was $120 and is now 40% off, what do I pay -> $72.00",
        "I paid £34 after 15% off, what was the original price -> £40.00",
        "£18.50 plus 20% VAT, total -> £22.20; £3.70",
    ),
)  # fmt: skip

A_PENNY_A_LENGTH = Rounding("price a length", PENNY_A_YARD.inch, PENNY_A_METRE.metric)

PRICE_IN_THE_SALE = Rule(
    topic="price a length in the sale",
    family="money",
    says=("sale price", "discount", "what is the price now", "price now", "new price", "price after", "per metre now", "a metre now",
          "a yard now", "per yard now", "is it a metre", "is it a yard", "come down to"),
    about="What a metre or yard costs when a percentage is taken off its price.",
    inputs=(
        Input("price", "price a length", PRICE, says=("price", "at", "was", "normally", "full price", "usual price", "before"),
              ask="What was the price a metre or yard?", example="£32 a metre", practice="4 money/m..40 money/m"),
        Input("percent", "percentage off", PERCENT, says=("off", "discount", "less", "reduction", "reduced by", "in the sale"),
              default=BY_SHARE,
              ask="What percentage is taken off?", example="15 %", sane="0 %..100 %", practice="10 %..50 % by 5 %"),
        choice("way", "off or on top", {"off": ("off", "discount", "less", "reduced by", "cheaper", "sale", "minus", "reduced"),
              "on": ON_TOP},
               default="off", because="a percentage of a price is taken off it, unless it is put on top"),
        SHARE,
    ),
    steps=(
        Step("now", "Take the percentage off the price", "price * (1 - percent)", PRICE,
             rounding=A_PENNY_A_LENGTH, label="price a length now", when={"way": "off"},
             says=("pay", "price", "now", "sale price", "new price", "come down to", "cost"), stated=("now", "is now", "down to", "paid")),
        Step("with_it", "Add the percentage to the price", "price * (1 + percent)", PRICE, rounding=A_PENNY_A_LENGTH,
             label="price a length with it", when={"way": "on"}, says=("pay", "price", "now", "new price", "cost", "with tax", "with vat"),
             stated=("is now", "up to", "with tax", "with vat")),
    ),
    answers=("now", "with_it"),
    headline=("It is {now}.", "It is {with_it}."),
    source=ARITHMETIC,
    tells=("price a length + percentage",),
    defers=("cost", "budget", "price per length"),
    related=("sale price", "cost"),
    examples=(
        "price a length in the sale: £32 a metre, 15% off -> £27.20/m",
        "linen was $18 a yard and is 25% off, what is the price now -> $13.50/yd",
        "silk at €40 a metre less 10%, new price -> €36.00/m",
    ),
)
