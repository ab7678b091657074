"""What cloth costs, what several things cost together, and a price by the yard as one by the metre."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, flag
from ..engine.kinds import COST_LINES, COUNT, LENGTH, MONEY, PERCENT, PRICE, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import PENNY, PENNY_A_METRE, PENNY_A_YARD
from ..engine.run import Run
from ..engine.text import shown
from ..engine.units import system_of
from ..fabric.words import CLOTH_WORDS
from .sale_price import BY_SHARE, SHARE

# What so many of are made, each from a length: the words that count them.
GARMENTS = ("cape", "apron", "skirt", "tunic", "tabard", "shirt", "dress", "top", "bag", "cushion", "costume", "curtain", "gown",
    "cloak", "scarf",
            "bib", "robe", "coat", "waistcoat", "jacket", "of them")  # fmt: skip
EACH_TAKES = ("each takes", "each one takes", "each needs", "each one needs", "each uses", "each one uses", "takes each", "take each",
              *(f"each {thing} {verb}" for thing in GARMENTS[:-1] for verb in ("takes", "needs", "uses")))  # fmt: skip
PRICE_INPUT = Input(
    "price", "price a length", PRICE, says=("price", "a metre", "a yard", "per metre", "per yard", "costs", "at",
                                            "priced at", "for", "@", "is", "unit price"),
    ask="What is the price a metre or yard?", example="£9 a metre", practice="3 money/m..40 money/m",
    sane="0.001 money/m..2000 money/m",
)  # fmt: skip
# "2.5 m at £9" names no length for its price: a shop's ticket is by the metre, or by the yard.
TICKET = Input(
    "ticket", "ticket", MONEY, says=("at", "@", "priced at", "marked at", "the metre is", "the yard is", "the metre costs",
    "the yard costs"),
    extra=True, spoken=True,
    usual="0.5 money..200 money",
)  # fmt: skip
TICKET_LENGTH = Input("ticket_length", "length the ticket is for", LENGTH, says=("ticket is for",), spoken=True, sane="1 mm..100 m",
                      default=Default("1 yd | 1 m", derived=True))  # fmt: skip
BY_TICKET = Default("=ticket / ticket_length", "A price with no length is by the metre, or by the yard where cloth is in yards",
                    given=("ticket",))  # fmt: skip
TWO_PRICES = Refusal("abs(ticket - price * ticket_length) > 0", "two prices are told, and I cannot tell which is meant. Type it again with "
                     "one, such as: 2.5 m at £9.50 a metre.")  # fmt: skip
OFF = Input(
    "discount", "discount", PERCENT, says=("off", "discount", "reduction", "reduced by", "in the sale", "sale", "less", "minus", "cheaper",
                                            "knocked off", "taken off"),
    default=Default("0 %", derived=True), sane="0 %..100 %", practice="10 %..50 %", spoken=True,
)  # fmt: skip
OFF_OR_SHARE = replace(OFF, default=(*BY_SHARE, Default("0 %", derived=True)))
PURSE = Input(
    "money", "money to spend", MONEY,
    says=("spend", "to spend", "budget", "have", "i've", "got", "for", "with", "up to", "only have", "left", "purse",
          "i've got", "come to over", "come to more than", "be over", "over", "no more than", "at most", "not more than", "voucher",
          "gift card", "note", "gave", "given me", "has given me"),
    ask="How much money is there to spend?", example="£20", practice="15 money..90 money", usual="1 money..2000 money",
)  # fmt: skip
CHANGE_WORDS = ("change", "do i have left", "will i have left", "left over", "left", "what change", "my change", "remainder", "money left",
             "comes back", "what comes back", "come back", "left in my purse")


COST = Rule(
    topic="cost",
    family="money",
    says=("cost", "how much money", "what does it cost", "how much does it cost", "price for", "pay", "what do i pay", "bill",
          "come to", "how much is", "total price",
          "price of", "what's the damage", "set me back", "cost at", "would cost", "cost of", "cost for", "paying",
          "i paid", "what did i pay", "charge", "priced at", "is what", "what was a yard", "what was a metre",
          "price a metre", "price a yard", "price per metre", "price per yard", "will mine cost", "what will mine cost",
          "what will it cost", "will it cost", "unit price", "remember the price", "i pay", "much i pay", "i take",
          "came to", "what would mine cost", "we paid", "she paid", "paid for", "how much a metre", "how much a yard",
          "what does a metre cost", "what does a yard cost", "what's it come to",
          *(f"{cloth} come to" for cloth in CLOTH_WORDS), "it come to", "does it come to", "does that come to", "what does mine come to",
          "come to at", "comes to at", "how much for", "going to set me back", "at the metre", "the metre"),
    about="What a length of cloth costs.",
    inputs=(
        Input("length", "length", LENGTH, says=("of", "length", "metres", "yards", "long", "for", "buying", "cut",
                                                "get", "bought"),
              ask="What length is bought?", example="2.5 m", sane="1 mm..10 km", usual="5 cm..60 m",
              practice="50 cm..5 m by 50 cm"),
        replace(PRICE_INPUT, default=(BY_TICKET,)), TICKET, TICKET_LENGTH, OFF_OR_SHARE, SHARE,
        flag("each_takes", "the length is for each", EACH_TAKES),
        Input("made", "how many are made", COUNT, says=GARMENTS, sane="1..10000", spoken=True, extra=True),
        Input("times", "so many of the length", COUNT, says=("times over",), spoken=True, sane="1..10000",
              default=(Default("=made", "The length is for each", when={"each_takes": "yes"}, given=("made",), derived=True),
                       Default("1", derived=True))),
    ),
    steps=(
        Step("full_price", "The length at its price", "if(times > 1, length * times * price, length * price)", MONEY, rounding=PENNY,
             label="before the discount",
             says=("before the discount", "without the discount", "at full price", "before the sale", "without the sale",
                   "before it was reduced", "before the reduction", "been full price", "cost full price", "be full price",
                   "be at full price", "the full price be", "not in the sale",
                   "without the reduction")),
        Step("cost", "Take off the discount", "if(discount > 0, full_price * (1 - discount), full_price)", MONEY,
             rounding=PENNY,
             says=("cost", "pay", "total", "come to", "how much money", "price", "how much"),
             stated=("cost", "paid", "pay", "spent", "came to", "comes to", "for", "was", "charged", "total", "in total")),
        Step("saved", "What the discount takes off", "rounded(full_price) - rounded(cost)", MONEY, rounding=PENNY,
             says=("how much do i save", "do i save", "save", "saving", "saved", "how much is saved")),
    ),
    answers=("cost",),
    headline=("It costs {cost}.", "It saves {saved}."),
    source=ARITHMETIC,
    tells=("length + price a length",),
    defers=("price per length", "sale price"),
    refusals=(TWO_PRICES,
              Refusal("made > 1", "the length could be for each of them, or for all. Say which, such as: 14 capes, each takes 1.6 m, at "
                      "£3.49 a metre, total cost.", choices={"each_takes": "no"})),
    related=("budget", "change given", "price per length"),
    examples=(
        "1 3/8 yd of quilting cotton, priced at €15.80/m. What do I pay? -> €19.87",
        "cost of one to three metres by half metres at £9.20/m -> £27.60",
        "how much is 2.5 m at £7.20 a metre with 20% off -> £14.40",
        "2.5 m cost £23, what was the price a metre -> £9.20/m",
    ),
)


def several(run: Run) -> Outcome:
    """Each line of a bill, and their sum less any discount."""
    total = Fraction(0)
    for item in run.get("lines"):
        total += item.value
        run.say(f"{item.label[:1].upper()}{item.label[1:]}", item.label, item.text, shown(item.value,
            run.request.currency))
    discount = run.get("discount")
    run.say("Add them up", "sum of the lines", " + ".join(shown(item.value,
        run.request.currency) for item in run.get("lines")),
            shown(total, run.request.currency))  # fmt: skip
    if discount:
        run.say("Take off the discount", "total × (1 − discount)",
                f"{shown(total, run.request.currency)} × (1 − {shown(discount, '%')})",
                shown(total * (1 - discount), run.request.currency))  # fmt: skip
    return Outcome({"total": total * (1 - discount), "count": Fraction(len(run.get("lines")))})


COST_OF_SEVERAL = Rule(
    topic="cost of several things",
    family="money",
    says=("cost", "total", "add up", "adding up", "receipt", "bill", "altogether", "all together", "in all",
          "what's the total", "come to", "total cost",
          "add these up", "shopping list", "pay", "sum of", "project cost", "haberdashery", "total price"),
    about="What several lengths and things cost together.",
    inputs=(
        Input("lines", "things bought", COST_LINES, ask="What is bought, and at what price each?",
              example="1.5 m at £9 a metre and 2 zips at £2.20 each"),
        OFF_OR_SHARE, SHARE, replace(PURSE, says=("from", "out of", "is", "enough", "budget", "have"), extra=True, spoken=True),
        flag("compared", "which is cheaper", ("cheaper", "cheapest", "better value", "best value", "which is better", "better buy",
                                              "costs less", "more cheap", "most cheap", "which should i buy")),
        flag("for_each", "the cost of each is wanted", ("each one cost", "cost of each", *(f"{each} {thing} cost" for each in ("each",
        "one")
                                                                                           for thing in GARMENTS[:-1]))),
    ),
    steps=(
        Step("total", "Add them up", kind=MONEY, rounding=PENNY, says=("total", "cost", "pay", "in all", "altogether",
            "come to", "how much", "add up")),
        Step("count", "How many lines there are", kind=COUNT, noun="line", label="lines"),
        Step("enough", "Compare the money with what they come to", "money >= rounded(total)", TEXT, words=("enough", "short"),
             says=("enough", "is it enough", "have enough", "will it do", "will that do", "enough money")),
        Step("change", "Take what they come to from the money", "money - rounded(total)", MONEY, rounding=PENNY, says=CHANGE_WORDS,
             when={"enough": "enough"}),
        Step("lacking", "Take the money from what they come to", "rounded(total) - money", MONEY, rounding=PENNY, label="lacking",
             says=("lacking", "short by", "how much more"), when={"enough": "short"}),
    ),
    answers=("enough", "change", "lacking", "total", "count"),
    headline=("It is {enough}: {change} is left.", "It is {enough}: {lacking} more is needed.", "It comes to {total}."),
    algorithm=several,
    refusals=(Refusal("count > 0", "which is cheaper is asked, and not what they come to together. Say the width and the price a length of "
                      "each, such as: 115 cm at £9 a metre or 150 cm at £11 a metre, which is cheaper.", choices={"compared": "yes"}),
              Refusal("count > 0", "the cost of each is wanted, and I cannot tell how many are made of these things. Add them up first, "
                      "and then ask, such as: the materials cost £48 and made 6 aprons, how much each.", choices={"for_each": "yes"}),),
    no_unknown=("lines", "discount"),
    source=ARITHMETIC,
    related=("budget",),
    examples=(
        "Add these up for me: 1.5 m at €14 a metre, 75 cm at €9.60 a metre, and three zips at €2.20 each -> €34.80",
        "4 yd at $12.50 a yard, half a yard at $13 a yard, and batting for $29.95. What is the total? -> $86.45",
        "total cost of 2 m of lawn at £9/m, 4 buttons at 35p each and a zip at £2.40 -> £21.80",
        "2 m at £9 a metre, 3 zips at £1.20 each and thread £2.40, is £25 enough? -> enough; £1.00; £24.00",
    ),
)


def other_rate(run: Run) -> Outcome:
    """The price by the metre, by the yard, or both: what was not given."""
    price, wanted = run.get("price"), run.request.given.get("per")
    given = system_of(run.request.given["price"].unit) if "price" in run.request.given else run.system
    if wanted is not None:
        run.get("per")
        given = "in" if system_of(wanted.unit) == "cm" else "cm"
    values = {}
    price_unit = run.request.given["price"].unit.partition("/")[2] if "price" in run.request.given else ""
    if price_unit != "m" and (given != "cm" or "per_metre" in run.request.asked):
        values["per_metre"] = price
        run.say("A yard is 0.9144 m: divide by it", "price a metre = price a yard ÷ 0.9144",
                f"{shown(price, run.money('money/yd'))} ÷ 0.9144",
                shown(price, run.money("money/m")))  # fmt: skip
    if price_unit != "yd" and (given != "in" or "per_yard" in run.request.asked):
        values["per_yard"] = price
        run.say("A yard is 0.9144 m: multiply by it", "price a yard = price a metre × 0.9144",
                f"{shown(price, run.money('money/m'))} × 0.9144",
                shown(price, run.money("money/yd")))  # fmt: skip
    return Outcome(values)


PRICE_PER_LENGTH = Rule(
    topic="price per length",
    family="money",
    says=("price per length", "per metre", "per yard", "price per metre", "price per yard", "what is that a metre",
          "what is that a yard", "by the yard", "by the metre", "metre price", "yard price", "price a metre",
          "price a yard", "equivalent price", "how much per yard",
          "how much per metre", "in metres price", "what would that be by the yard", "what would that be by the metre",
          "thinks in yards", "think in yards", "thinks in metres", "think in metres", "what's the price per yard",
          "what's the price per metre", "is how much", "makes the metre", "makes the yard", "make the metre", "make the yard",
          "that make the metre", "that make the yard", "as a price", "as a price per metre",
          "as a price per yard",
          "as price per yard", "as price per metre", "the yard how much", "the metre how much", "the metre cost", "the yard cost",
          "would the metre be", "would the yard be", *(f"{what} {rate}" for what in ("what for", "what by", "what is it by", "how much for",
          "that for", "works out at what for", "what would it be by") for rate in ("a yard", "a metre", "the yard", "the metre")),
          "at what for", "works out at what", "that for",  "if the yard is", "if the metre is",
          "what's the price a yard", "what's the price a metre"),
    about="A price by the metre as one by the yard, or the other way.",
    inputs=(
        Input("price", "price", PRICE, says=("price", "at", "costs", "is"),
              ask="What is the price, by the metre or the yard?", example="£9 a metre",
              practice="3 money/m..40 money/m"),
        Input("per", "length the price is wanted for", LENGTH, says=("per", "price for", "what is that", "is that"),
              extra=True, sane="91 cm..1 m"),
    ),
    steps=(
        Step("per_metre", "By the metre", kind=PRICE, rounding=PENNY_A_METRE, label="price a metre",
             says=("per metre", "a metre", "how much per metre", "per m", "a m", "by the metre", "in metres", "the metre", "metre")),
        Step("per_yard", "By the yard", kind=PRICE, rounding=PENNY_A_YARD, label="price a yard",
             says=("per yard", "a yard", "how much per yard", "per yd", "by the yard", "in yards", "the yard", "yard")),
    ),
    answers=("per_metre", "per_yard"),
    headline=("That is {per_metre}.", "That is {per_yard}."),
    algorithm=other_rate,
    lone=True,
    tells=("price a length + length",),
    no_unknown=("price", "per"),
    source="international yard: 0.9144 m, exact",
    cautions=(Caution("Tax may be in one price and not in the other", mentions=("tax", "vat")),),
    related=("cost",),
    examples=(
        "€16.99/yd per metre? -> €18.58/m",
        "what is £12 a metre in price per yard -> £10.97/yd",
        "price of $9.50 a yard, what is that per metre -> $10.39/m",
    ),
)
