"""What one costs of several that cost so much together: a piece of a batch, or a wear of a garment."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Input, Rule, Step
from ..engine.kinds import COUNT, MONEY
from ..engine.rounding import PENNY

COST_EACH = Rule(
    topic="cost each",
    family="money",
    says=("cost each", "cost per piece", "cost a piece", "cost apiece", "apiece", "cost per wear", "cost a wear", "each wear",
          "each wearing", "per wear", "a wear", "each cost", "cost of each", "cost per item", "how much an apron",
          "how much each", "what does each one cost", "worn it", "wears", "the lot cost", "altogether cost", "how much is each",
          "how much is each one", "what is each", "what does each", "each one cost", "each come to", "each works out",
          "each one works out", "split between", "shared between", "cost per bag", "per piece", "cost to make each"),
    about="What one costs of several that cost so much together, or what each wear of a garment has cost.",
    inputs=(
        Input("together", "cost together", MONEY, says=("cost", "cost me", "the lot cost", "altogether", "in all", "total", "spent", "paid",
                                                        "came to", "for", "materials", "on the lot",
                                                        "the lot", "set me back", "on materials", "on fabric"),
              ask="What did they cost together?", example="£48", practice="12 money..90 money by 6 money"),
        Input("number", "number", COUNT, says=("worn it", "worn", "times", "made", "makes", "made into", "sewed", "between",
                                               "among", "of them", "pieces", "wears", "uses", "things"),
              ask="How many are there (or how often was it worn)?", example="6", sane="1..1000000", practice="2..12"),
    ),
    steps=(
        Step("each", "Share the cost among them", "together / number", MONEY, rounding=PENNY, label="cost of each",
             says=("each", "apiece", "per wear", "cost per wear", "how much each", "a piece", "how much an", "how much is each",
                                                                      "each one", "each come to")),
    ),
    answers=("each",),
    headline=("Each costs {each}.",),
    no_unknown=("together", "number"),
    source=ARITHMETIC,
    related=("cost", "cost of several things"),
    examples=(
        "the materials cost £48 and made 6 aprons, how much each -> £8.00",
        "a coat that cost me £180 and I've worn it 60 times: cost per wear -> £3.00",
        "cost each: 5 pouches cost $42.50 in all -> $8.50",
        "cost per wear of a £75 dress worn 30 times -> £2.50",
    ),
)  # fmt: skip
