"""What so many things of one price cost together."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, flag
from ..engine.kinds import COUNT, MONEY
from ..engine.rounding import PENNY
from .cost import OFF_OR_SHARE
from .sale_price import SHARE

# What is bought by the piece, and so is counted and priced each.
SOLD_EACH = ("ball", "hank", "skein", "zip", "button", "reel", "spool", "popper", "snap", "packet", "pack", "card", "fat quarter", "cone",
             "buckle", "ring", "hook", "bobbin", "pattern", "charm")  # fmt: skip
EACH = ("marked", "is marked", "marked at", "ticketed", "tagged at", "each", "apiece", "a piece", "at", "price each", "one costs",
    "each one costs", "for each", "each at", "ea", "cost each", "are", "is")

COST_OF_SOME = Rule(
    topic="cost of so many",
    family="money",
    says=("cost of so many", "what am i in for", "in for", "what do they come to",
          "do they come to", "what do they cost", "do they cost", "cost in all", "cost altogether", "what's the total",
          "is marked", "what will they cost", "how much are", "how many balls cost", "price each", "each cost", "ea",
          *(f"{thing} {how}" for thing in SOLD_EACH for how in ("each", "are each", "cost each", "cost at")),
          *(f"{how} {thing}" for thing in SOLD_EACH for how in ("per",)),
          *(f"a {thing}" for thing in ("ball", "skein", "hank", "reel", "spool", "packet", "fat quarter")),
          *(f"{how} {thing}" for thing in ("ball", "skein", "hank", "reel", "spool") for how in ("how much is a", "how much is the",
              "what is a")),
          "each price", "each with", "what's that each",
          *(f"the {thing}" for thing in SOLD_EACH), *(f"{thing} at" for thing in SOLD_EACH)),
    about="What so many things cost together, from the price of one.",
    inputs=(
        Input("number", "how many", COUNT, says=SOLD_EACH, ask="How many are bought?", example="9",
              default=Default("1", "the price is of one thing", given=("discount",)), sane="1..1000000", usual="1..500",
              practice="3..12"),
        Input("each", "price each", MONEY, says=(*EACH, *(f"{how} {thing}" for thing in SOLD_EACH for how in ("a", "the", "per", "one"))),
              spoken=True, ask="What does one cost?", example="£2.20", practice="1 money..9 money", usual="0.01 money..200 money"),
        OFF_OR_SHARE, SHARE,
        flag("lot", "the price is for all of them", ("for the lot", "for them all", "for all of them", "for the whole lot", "the lot for")),
    ),
    steps=(
        Step("total", "Multiply the number by the price of one, less any discount", "number * each * (1 - discount)", MONEY, rounding=PENNY,
             label="cost", says=("cost", "total", "pay", "come to", "in for", "how much", "altogether", "in all", "the lot")),
        Step("saved", "What the discount takes off", "number * each * discount", MONEY, rounding=PENNY,
             says=("how much do i save", "do i save", "save", "saving", "saved", "is taken off", "is knocked off", "comes off")),
    ),
    answers=("total",),
    headline=("They cost {total}.", "It saves {saved}."),
    source=ARITHMETIC,
    refusals=(Refusal("number > 1", "the price could be for all of them, or for each. Say which, such as: 5 balls at £4.50 each, what do "
                      "they cost; or: 5 balls cost £22.50, how much each.", choices={"lot": "yes"}),),
    defers=("how many for the money",),
    related=("cost of several things", "how many for the money"),
    examples=(
        "nine zips at £1.20 each, what do they come to -> £10.80",
        "12 buttons at 35p apiece, what do they cost -> £4.20",
        "cost of so many: 6 reels at $3.40 each with 10% off -> $18.36",
    ),
)  # fmt: skip
