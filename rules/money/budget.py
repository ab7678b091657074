"""What some money buys: a length, or a number of things; and the change."""

from __future__ import annotations

from dataclasses import replace

from ..engine.buying import SHOP_STEP
from ..engine.declare import ARITHMETIC, Input, Refusal, Rule, Step, flag
from ..engine.kinds import COUNT, LENGTH, MONEY, PRICE
from ..engine.rounding import BUDGET_DOWN, COUNT_DOWN, PENNY
from .cost import BY_TICKET, CHANGE_WORDS, OFF_OR_SHARE, PRICE_INPUT, PURSE, TICKET, TICKET_LENGTH, TWO_PRICES
from .cost_of_some import SOLD_EACH
from .sale_price import SHARE

WHAT_LENGTH_WILL = ("what length will", *(f"length of {cloth} will" for cloth in ("cloth", "fabric", "lining", "linen", "cotton",
    "wool", "velvet")))
HOW_SHOPS_CUT = ("they cut to", "shop cuts to", "shop cuts", "only cuts", "cuts only", "sells in", "sell in", "sell it in",
                 "sold only in", "cut it every", "cut every", "cut in", "they cut in", "cuts in", "sold to the next",
                 "sold to the nearest", "cut to the next", "cuts every", "they cut every", "cut it in", "in steps of",
                 "sold every", "cut to a", "cut to the")  # fmt: skip

BUDGET = Rule(
    topic="budget",
    family="money",
    says=("budget", "spend", "to spend", "can i get", "can i buy", "how much can i get", "how much can i have",
          "how much fabric can i get", "afford", "buy at", "will buy", "buy for",
          "how much can i afford", "what can i get", "get for", "will it buy", "buy with", "change",
          "how many metres can i get", "cn i get",
          "how many yards can i get", "how much can i buy", "can i have", "voucher", "gift card", "can i take",
          "i can take", "i can buy", "i can get",
          "could i get", "could i buy", "can i afford", "how much of it can i", "how much of that could i", "take with", "obtainable for",
          "length obtainable", "the most i can have", "most i can have", "the most i can get", "most i can buy", "bring home",
          "can i bring home", "can i take home", "how much do i get", "what length can i", "buy me", "get me", "left in my purse",
          "in my purse", "what comes back",
          "longest piece i can", "longest piece i could", "longest piece", "i could have cut", "could i have cut", *WHAT_LENGTH_WILL),
    about="How much cloth some money buys, down to the shop's step, and the change.",
    inputs=(PURSE, PRICE_INPUT, OFF_OR_SHARE, SHARE,
        flag("more_wanted", "how much more is needed", ("more do i need", "more must i", "more have i", "more do i have to", "more money",
                                                        "have to add", "how much do i add", "must i add", "still have to pay")),
        replace(SHOP_STEP, says=(*SHOP_STEP.says, *HOW_SHOPS_CUT), sane="1 mm..1 m")),
    steps=(
        Step("net", "The price, less any discount", "price * (1 - discount)", PRICE, label="price to pay"),
        Step("length", "Divide the money by the price, and go down to what the shop cuts", "money / net", LENGTH,
             rounding=BUDGET_DOWN, label="length it buys", says=("how much can i get", "how much can i have",
                 "how much can i buy", "how much fabric can i get", "how much cloth can i get",
             "how many metres can i get", "how many yards can i get", "how much", "length", "how many metres",
             "how many yards", "how long", "fabric", "cloth", "the most i can have", "most i can have", "the most i can get",
             "most i can buy", "how much do i get", "what length can i", "how much cloth is that", "how much fabric is that",
             "longest piece",
             "longest length", *WHAT_LENGTH_WILL)),
        Step("spent", "What that length costs", "rounded(length) * net", MONEY, rounding=PENNY,
             says=("spent", "do i spend", "will i spend", "would i spend", "much will i spend", "actually spend", "really spend",
                   "much is spent", "will that cost", "does that cost", "that length cost")),
        Step("change", "What is left of the money", "money - rounded(spent)", MONEY, rounding=PENNY, says=CHANGE_WORDS),
    ),
    answers=("length", "change"),
    headline=("It buys {length}, and {change} is left.", "{change} is left: it buys {length}."),
    source=ARITHMETIC,
    tells=("money + price a length",),
    refusals=(Refusal("money > 0",
              "how much more is needed is asked: ask what the length costs, such as: what does 3 m at £11 a metre cost.",
                      choices={"more_wanted": "yes"}),),
    related=("cost",),
    examples=(
        "Twenty pounds to spend and it's £7.50 a metre. How much can I have? -> 2.6 m; £0.50",
        "I've €40 to spend and the linen is €13.50 a metre, cut to the nearest 10 cm below. How much can I get, and "
        "what's my change? -> 2.9 m; €0.85",
        "got £20 cloth £7.50/m how much cn i get -> 2.6 m; £0.50",
        "how many yards can I get for $30 at $8.99 a yard -> 3 1/4 yd; $0.78",
    ),
)

CHANGE = Rule(
    topic="change given",
    family="money",
    says=("change", "change from", "change out of", "get back from", "back from", "how much change", "change do i get", "change will i get",
          "change should i get", "came back", "change was", "my change was", "change did i get", "change due", "paid with",
          "i hand over", "do i get back",
          "get back", "comes back", "money comes back", "is it enough", "is that enough", "is that enough money", "enough money",
          "do i have enough money", "have i enough", "have enough money", "enough with", "gave her", "gave him"),
    about="The change from some money when a length is bought at a price.",
    inputs=(
        PURSE,
        Input("length", "length bought", LENGTH, says=("of", "length", "buy", "bought", "buying", "get", "for", "cut"),
              ask="What length is bought?", example="2.2 m", sane="1 mm..10 km", usual="5 cm..60 m", practice="50 cm..2 m by 10 cm"),
        replace(PRICE_INPUT, practice="3 money/m..7 money/m", default=(BY_TICKET,)), TICKET, TICKET_LENGTH, OFF_OR_SHARE, SHARE,
    ),
    steps=(
        Step("spent", "The length at its price, less any discount", "length * price * (1 - discount)", MONEY, rounding=PENNY,
             label="spent", says=("spent", "cost", "did i spend", "do i spend", "will i spend", "would i spend", "i spend", "i spent")),
        Step("change", "Take that from the money", "money - rounded(spent)", MONEY, rounding=PENNY, says=CHANGE_WORDS,
             stated=("came back", "got back", "change was", "was my change", "handed back", "given back", "in change", "comes back",)),
    ),
    answers=("change", "spent"),
    headline=("{change} is left: it costs {spent}.",),
    source=ARITHMETIC,
    refusals=(TWO_PRICES, Refusal("length * price * (1 - discount) > money",
    "it costs more than the money there is. Ask how much the money buys, such as: £20 at "
                      "£7.50 a metre, how much can I get?"),),
    tells=("money + length + price a length",),
    defers=("budget",),
    related=("budget", "cost"),
    examples=(
        "change from £20 for 2.2 m at £8.50 a metre -> £1.30; £18.70",
        "how much change do I get from $50 if I buy 3 yd at $9.99 a yard -> $20.03",
        "what change from €40, buying 1.5 m at €12 a metre with 10 % off -> €23.80",
    ),
)

HOW_MANY_FOR_THE_MONEY = Rule(
    topic="how many for the money",
    family="money",
    says=("how many can i get", "how many can i buy", "how many can i afford", "afford", "to spend", "spend",
          "budget", "how many for the money",
          "each how many", "how many balls for", "how many reels", "how many spools", "how many zips",
          "in my purse", "bring home", *(f"{thing} can i" for thing in SOLD_EACH), *(f"{thing} can i {verb}" for thing in SOLD_EACH
                                                                                     for verb in ("buy", "get", "afford")),
                                                                                     "how many shall i",
                                                                                     *(f"how many {thing}" for thing in SOLD_EACH),
          *(f"a {thing} how many" for thing in SOLD_EACH)),
    about="How many things of one price some money buys, and the change.",
    inputs=(
        PURSE,
        Input("each", "price each", MONEY, says=("each", "apiece", "a piece", "at", "cost", "a ball", "a reel",
                                                 "a zip", "a skein", "a spool", "a button",
                                                 "a ball is", "are", "one", "ea", "one is", "costs",
                                                 *(f"{how} {thing}" for thing in SOLD_EACH for how in ("a", "the", "per")),
                                                 *(f"{thing} {how}" for thing in SOLD_EACH for how in ("at", "are", "is"))),
              ask="What does one cost?", example="£2.20", practice="1 money..9 money", usual="0.01 money..100 money"),
        OFF_OR_SHARE, SHARE,
        flag("by_length", "a length is wanted", ("how many yards", "how many metres", "how much fabric", "how much cloth", "yards of",
                                                 "metres of")),
    ),
    steps=(
        Step("things", "Divide the money by the price of one, and take whole ones", "money / (each * (1 - discount))",
             COUNT, rounding=COUNT_DOWN,
             noun="piece", label="how many", says=("how many", "how many shall", "how many can", "how many do",
                 "how many shall i bring home", "how many can i buy", "how many can i get", "how many can i afford",
                 *(f"how many {thing}" for thing in SOLD_EACH))),
        Step("spent", "What those cost", "rounded(things) * each * (1 - discount)", MONEY, rounding=PENNY, label="spent",
             says=("spent", "do i spend", "will i spend", "would i spend", "much will i spend", "do they come to", "will they come to",
                   "will they cost", "do they cost", "would they cost", "would they come to")),
        Step("change", "What is left of the money", "money - rounded(things) * each * (1 - discount)", MONEY,
             rounding=PENNY, says=CHANGE_WORDS),
    ),
    answers=("things", "change"),
    headline=("It buys {things}, and {change} is left.",),
    source=ARITHMETIC,
    tells=("money + money",),
    refusals=(Refusal("money > 0", "a length is asked for, and I cannot tell what length the price is for. Say it, such as: £20 to spend "
                      "at £7.50 a metre, how much can I get?", choices={"by_length": "yes"}),
              Refusal("each * (1 - discount) > money", "one costs more than the money there is to spend. Say which is the price of "
                      "one and which the money, such as: reels £2.20 each, £10 to spend."),),
    examples=(
        "how many zips at £2.20 each can I get for £10 to spend -> 4 pieces; £1.20",
        "budget $25, reels $3.40 each, how many -> 7 pieces; $1.20",
        "€12 to spend on buttons at €0.45 each, how many can I buy -> 26 pieces; €0.30",
    ),
)
