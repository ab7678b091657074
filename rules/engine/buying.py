"""What every rule that ends in a length to buy can also take: a shop's step, a price, and a length already in hand."""

from __future__ import annotations

from dataclasses import replace

from .declare import Default, Input, Rule, Step
from .kinds import COUNT, LENGTH, MONEY, PERCENT, PRICE, TEXT
from .request import Request
from .rounding import PENNY

SHOP_STEP = Input(
    "shop_step", "shop's step", LENGTH, says=("sold by the", "sell by the", "sell it by the", "by the", "cut to the nearest",
    "step", "in steps of", "only sell", "sell only by", "only sell by", "only cut", "only cut by", "sell by", "cut by",
    "sells by the", "sold in", "multiples of", "to the next", "sold to the next", "cuts to the next", "cut in", "cuts in",
    "they cut to"), extra=True, spoken=True, sane="1 mm..5 m", practice="5 cm..1 m",
)  # fmt: skip
PRICE_A_LENGTH = Input(
    "price", "price a length", PRICE, says=("price", "a metre", "a yard", "costs"), extra=True, practice="1 money/m..60 money/m",
    sane="0.01 money/m..10000 money/m",
)  # fmt: skip
DISCOUNT = Input(
    "discount", "discount", PERCENT, says=("off", "discount", "reduction", "in the sale"), default=Default("0 %", derived=True),
    sane="0 %..100 %", practice="10 %..50 %", spoken=True,
)  # fmt: skip
IN_HAND = Input(
    "in_hand", "length in hand", LENGTH, extra=True, spoken=True, sane="1 cm..1 km", practice="50 cm..5 m", usual="20 cm..50 m",
    says=("in hand", "have", "have got", "got", "i've", "i've got", "found", "i found", "bought",
          "we've", "there's", "there is", "only have", "already have", "left", "in my stash", "stash",
          "left on the roll", "on the roll", "own", "i own", "enough", "remnant", "offcut"),
)  # fmt: skip
BUYING = (SHOP_STEP.name, PRICE_A_LENGTH.name, DISCOUNT.name, IN_HAND.name)
WIDTHS_OF_CLOTH = ("fabric width", "cloth width", "width of the cloth", "usable fabric width")
VERDICT = ("enough", "to_spare", "lacking")
VERDICT_HEADLINES = ("It is {enough}: {to_spare} to spare.", "It is {enough}: {lacking} more is needed.")


def with_buying(rule: Rule) -> Rule:
    """The rule with a shop's step, a price and a cost, and what is in hand, when its answers hold a length that is bought.

    A plan is left as it is: its parts have theirs.
    """
    if rule.parts:
        return rule
    bought = next((step for name in rule.answers if _is_bought(step := rule.step(name))), None)
    if bought is None:
        return rule
    if rule.input("shop_step") is None:
        rule = replace(rule, inputs=(*rule.inputs, SHOP_STEP))
    if rule.input("price") is None and rule.step("cost") is None:
        cost = Step("cost", f"The {bought.shown_label} as bought, at its price", f"rounded({bought.name}) * price * (1 - discount)",
                    MONEY, rounding=PENNY, when=bought.when, says=("cost", "price in all", "pay", "come to", "how much money", "total",
                    "the total", "total cost", "total price"))  # fmt: skip
        rule = replace(
            rule,
            inputs=(*rule.inputs, PRICE_A_LENGTH, DISCOUNT),
            steps=(*rule.steps, cost),
            answers=(*rule.answers, "cost"),
        )
    return _with_verdict(rule, bought) if _is_need(bought) else rule


def _with_verdict(rule: Rule, bought: Step) -> Rule:
    """The rule, also saying whether a length in hand is enough, and what is left or lacking against the exact need."""
    assert bought.rounding is not None
    need, units = bought.name, (bought.rounding.inch.unit, bought.rounding.metric.unit)
    steps = (
        Step("enough", "Compare what is in hand with what is needed, before any rounding up", f"in_hand >= {need}", TEXT, when=bought.when,
             words=("enough", "short"), says=("enough", "is it enough", "have enough", "will it do", "will that do", "suffice", "will do")),
        Step("to_spare", "Take the need from what is in hand", f"in_hand - {need}", LENGTH, label="to spare", unit=units,
             says=("to spare", "left over"), when={"enough": "enough"}),
        Step("lacking", "Take what is in hand from the need", f"{need} - in_hand", LENGTH, label="lacking", unit=units,
             says=("lacking", "short by", "how much more", "more"), when={"enough": "short"}),
    )  # fmt: skip
    hand = replace(IN_HAND, says=(*IN_HAND.says, *bought.stated))
    width = rule.input("width")
    if width is not None and width.label in WIDTHS_OF_CLOTH and ("in_hand", "width") not in rule.pairs:
        rule = replace(rule, pairs=(*rule.pairs, ("in_hand", "width")))
    return replace(rule, inputs=(*rule.inputs, hand), steps=(*rule.steps, *steps), answers=(*rule.answers, *VERDICT),
                   headline=(*VERDICT_HEADLINES, *rule.headline))  # fmt: skip


def verdict_first(rule: Rule, request: Request, wanted: list[str]) -> list[str]:
    """What is wanted, the verdict on a length in hand before the rest."""
    return [*VERDICT, *wanted] if "in_hand" in request.given and rule.step("enough") else wanted


def hand_as_result(rule: Rule, request: Request) -> Request:
    """The request with a length in hand as a stated result, where another input is asked for ("2 m, how wide must it be?")."""
    asked = next((name for name in request.asked if rule.input(name) is not None and name not in request.given), "")
    asked = asked or _count_wanted(rule, request)
    if "in_hand" not in request.given or request.stated or rule.input(asked) is None or asked in request.given:
        return request
    bought = next(name for name in rule.answers if _is_bought(rule.step(name)))
    return replace(request, stated={bought: request.given["in_hand"]}, asked=(asked,))


def _count_wanted(rule: Rule, request: Request) -> str:
    """The one count that is still needed, where a length is in hand: how many it makes is what is wanted; "" for none."""
    missing = [item for item in rule.inputs if item.default is None and not item.extra and item.name not in request.given]
    return missing[0].name if len(missing) == 1 and missing[0].kind is COUNT else ""


def told_in_hand(rule: Rule) -> str:
    """The length bought that is told as a length in hand, and in no other way; "" for none."""
    if rule.input("in_hand") is None:
        return ""
    return next(name for name in rule.answers if _is_bought(rule.step(name)))


def _is_bought(step: Step | None) -> bool:
    return step is not None and step.rounding is not None and step.rounding.bought


def _is_need(step: Step) -> bool:
    """Whether a length bought is what is needed, and not what some money buys."""
    return step.rounding is not None and step.rounding.inch.direction == "up"
