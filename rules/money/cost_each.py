"""What one costs of several that cost so much together: a piece of a batch, or a wear of a garment."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Input, Rule, Step
from ..engine.kinds import COUNT, MONEY
from ..engine.rounding import PENNY
from .cost import GARMENTS

COST_EACH = Rule(
    topic="cost each",
    family="money",
    says=("cost each", "cost per piece", "cost a piece", "cost apiece", "apiece", "cost per wear", "cost a wear", "each wear",
          "each wearing", "per wear", "a wear", "each cost", "each cost me", "cost of each", "cost per item", "how much an apron",
          "how much each", "what does each one cost", "what should one", "what should each", "worn it", "wears", "the lot cost",
          "altogether cost", "how much is each",
          "how much is each one", "what is each", "what does each", "each one cost", "each come to", "each works out",
          "each one works out", "split between", "shared between", "cost per bag", "per piece", "cost to make each",
          "unit cost", "cost per unit", "batch", "batch cost",
          "batch size", "how much is that each", "is that each", "each one works out at", "how much is one", "all together cost",
          "all together they cost", "how much was each", "what was each", "did each cost", "each of them cost", "each one come to",
          "what does one work out at", "divided between", "between us", "what each", "what's it each", "is it each",
          "what's that each", "what was that each", "for each one", "we shared", "how many of us", "how many shared",
          "each one how much", "each one what", "that for each",
          "for the batch", "materials", "is that per", "how much is that per", *(f"per {thing}" for thing in GARMENTS[:-1]),
          *(f"one {thing} cost" for thing in GARMENTS[:-1]), *(f"{how} {thing}" for how in ("cost of one", "what does one", "cost me per",
            "what's one", "what is one") for thing in GARMENTS[:-1]),
          "we each owe", "each owe", "each pay", "do we each", "what costs one", "how much is a", "of us", "how many did i make"),
    about="What one costs of several that cost so much together, or what each wear of a garment has cost.",
    inputs=(
        Input("together", "cost together", MONEY, says=("cost", "cost me", "the lot cost", "altogether", "in all", "total", "spent", "paid",
                                                        "came to", "for", "materials", "on the lot",
                                                        "the lot", "set me back", "on materials", "on fabric",
                                                        "material cost", "total cost", "batch cost",
                                                        "all together", "together", "costed", "came to in all"),
              ask="What did they cost together?", example="£48", practice="12 money..90 money by 6 money"),
        Input("number", "number", COUNT, says=("worn it", "worn", "times", "made", "makes", "made into", "sewed", "between",
                                               "among", "of them", "pieces", "wears", "uses", "things", "batch", "batch size",
                                               "batch of", "made from it", "quantity", "many did i make",
                                               "many were there", "units", "did"),
              ask="How many are there (or how often was it worn)?", example="6", sane="1..1000000", practice="2..12"),
    ),
    steps=(
        Step("each", "Share the cost among them", "together / number", MONEY, rounding=PENNY, label="cost of each",
             says=("each", "apiece", "how much each", "how much an", "how much is each",
                                                                      "each one", "each cost me", "each come to", "unit cost",
                                                                      "cost per unit",
                                                                      "each of them", "is one", "is that each"),
             stated=("works out at", "worked out at", "works out to", "each one works out at", "each works out at", "each came out at",
                     "each one came to", "came to each", "each came to")),
    ),
    answers=("each",),
    headline=("Each costs {each}.",),
    source=ARITHMETIC,
    related=("cost", "cost of several things"),
    examples=(
        "the materials cost £48 and made 6 aprons, how much each -> £8.00",
        "a coat that cost me £180 and I've worn it 60 times: cost per wear -> £3.00",
        "cost each: 5 pouches cost $42.50 in all -> $8.50",
        "cost per wear of a £75 dress worn 30 times -> £2.50",
    ),
)  # fmt: skip
