"""Which of several cloths is cheaper, each with its width and its price a length."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..engine.answer import Table
from ..engine.declare import ARITHMETIC, Caution, Input, Rule, Step
from ..engine.kinds import LENGTH, MONEY, OFFERS, PRICE_AREA, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Item
from ..engine.rounding import BUY_CLOTH, PENNY, Rounding, apply
from ..engine.rounding import Step as RoundingStep
from ..engine.run import Run
from ..engine.text import plain, shown
from ..engine.units import factor


def cheaper(run: Run) -> Outcome:
    """The cloth that costs least: for the length needed, where one is, else for its area."""
    offers: tuple[Item, ...] = run.get("offers")
    by_area = [Fraction(offer.count) / Fraction(offer.value) for offer in offers]
    unit = run.unit_of(PRICE_AREA)
    for offer, area in zip(offers, by_area, strict=True):
        run.say(f"{offer.text}: the price of an area", "price a length ÷ width", offer.text, shown(area, unit))
    if run.maybe("need") is None:
        best = by_area.index(min(by_area))
        return Outcome({"cheaper": offers[best].text, "by_area": by_area[best]})
    return _for_a_need(run, offers, by_area)


@dataclass(frozen=True, slots=True)
class Bought:
    """A cloth on offer for the length needed: the exact length on its width, as bought, and what that costs."""

    offer: Item
    length: Fraction
    whole: Fraction
    cost: Fraction


def _for_a_need(run: Run, offers: tuple[Item, ...], by_area: list[Fraction]) -> Outcome:
    """The cloth that costs least for a length needed, on its own width or a width said."""
    need, need_width = run.get("need"), run.maybe("need_width")
    step = step_for(run, BUY_CLOTH)
    choices = []
    for offer in offers:
        length = need * need_width / offer.value if need_width else need
        whole = apply(length, step)
        choices.append(Bought(offer, length, whole, apply(whole * offer.count, PENNY.of(run.system))))
        run.say(f"{offer.text}: the length on this width, as bought, at its price",
                "length needed × its width ÷ this width × price",
                f"{shown(length, step.unit)}, bought as {shown(whole, step.unit)}",
                shown(choices[-1].cost, run.request.currency))  # fmt: skip
    best = min(choices, key=lambda one: one.cost)
    saved = sorted(one.cost for one in choices)[1] - best.cost
    values = {"cheaper": best.offer.text, "cost": best.cost, "saved": saved, "length": best.length}
    return Outcome({**values, "by_area": by_area[choices.index(best)]}, table=_table(run, choices))


def _table(run: Run, choices: list[Bought]) -> Table:
    """Each cloth with the length of it to buy and its cost."""
    unit, currency = step_for(run, BUY_CLOTH).unit, run.request.currency
    columns = (("cloth", "text"), ("length to buy", unit), ("cost", currency))
    rows = tuple((one.offer.text, plain(one.whole / factor(unit)), plain(one.cost)) for one in choices)
    texts = tuple((one.offer.text, shown(one.whole, unit), shown(one.cost, currency)) for one in choices)
    return Table(columns, rows, texts)


def step_for(run: Run, rounding: Rounding) -> RoundingStep:
    """How a length bought is rounded here, by the shop's step where one was said."""
    return run.rounding(Step("bought", "As bought", rounding=rounding)) or rounding.of(run.system)


CHEAPER_CLOTH = Rule(
    topic="cheaper cloth",
    family="money",
    says=("cheaper", "cheaper cloth", "better value", "cheapest", "which is cheaper", "better buy",
          "works out cheaper", "best value", "which works out",
          "good value", "less expensive", "better deal", "which is the better", "more convenient", "costs less",
          "most economical", "more economical", "save by the cheaper", "do i save by", "save by buying", "save by", "saved by",
          "how much cheaper",
          "how much dearer", "save with the cheaper", "how much is saved by",
          "economical", "lower cost", "cost less", "more cheap", "most cheap", "less money", "which should i buy", "cheaper buy"),
    about="Which of two or more cloths (width and price) is cheaper, by area or for what is needed.",
    inputs=(
        Input("offers", "cloths on offer", OFFERS, ask="What are the cloths: each one's width and price a length?",
              example="115 cm at £9 a metre or 150 cm at £11 a metre"),
        Input("need", "length needed", LENGTH, says=("need", "takes", "pattern", "calls for", "says", "wants", "for",
                                                     "requires", "of", "make"), extra=True,
              sane="10 cm..1 km", usual="40 cm..30 m"),
        Input("need_width", "width it is needed on", LENGTH, says=("of", "wide", "width", "in"), extra=True,
              sane="10 cm..5 m", usual="60 cm..3 m"),
    ),
    steps=(
        Step("cheaper", "The one that costs least", kind=TEXT, says=("cheaper", "cheapest", "better", "which",
            "best value", "value", "more convenient", "costs less", "economical", "cost less", "more cheap", "most cheap")),
        Step("cost", "What it costs", kind=MONEY, rounding=PENNY, says=("cost", "pay")),
        Step("saved", "What it saves against the next", kind=MONEY, rounding=PENNY, label="saved", says=("save",
            "saving", "difference", "how much do i save", "do i save", "save by the cheaper", "do i save by", "save by", "how much cheaper",
            "how much dearer", "how much less", "how much is saved", "saved", "would i save")),
        Step("length", "How much of it to buy", kind=LENGTH, rounding=BUY_CLOTH, label="length to buy",
             says=("how much",)),
        Step("by_area", "Its price an area", kind=PRICE_AREA, rounding=None, label="price an area",
             says=("price an area", *(f"{how} per square {unit}" for how in ("price", "cost", "how much", "what is it", "what does it cost")
                                               for unit in ("metre", "yard")))),
    ),
    answers=("cheaper", "cost", "saved", "length", "by_area"),
    headline=("The cheaper is {cheaper}: {cost} for {length}, {saved} less than the next.",
              "The cheaper for its area is {cheaper}: {by_area}."),
    algorithm=cheaper,
    no_unknown=("offers", "need", "need_width"),
    source=ARITHMETIC,
    cautions=(Caution("A piece wider than the narrower cloth may decide it: measure the widest one"),),
    related=("width swap", "cost"),
    examples=(
        "Pattern takes 3 m of 115 cm. Same lawn comes in 115 at £9 a metre and in 150 at £11 a metre. Which works "
        "out cheaper for the whole dress -> "
        "150 cm at £11 a metre; £25.30",
        "which is cheaper, 112 cm cloth at £8/m or 150 cm cloth at £10.50/m -> 150 cm at £10.50/m",
        "better value: 45 in at $12 a yard or 60 in at $18 a yard -> 45 in at $12 a yard",
    ),
)
