"""What every rule that ends in a length to buy can also take: the shop's step a price and a discount, and so a cost."""

from __future__ import annotations

from dataclasses import replace

from .declare import Default, Input, Rule, Step
from .kinds import LENGTH, MONEY, PERCENT, PRICE
from .rounding import PENNY

SHOP_STEP = Input(
    "shop_step", "shop's step", LENGTH, says=("sold by the", "sell by the", "sell it by the", "by the", "cut to the nearest",
    "step", "in steps of", "only sell", "sells by the", "sold in", "multiples of"), extra=True, sane="1 mm..5 m", practice="5 cm..1 m",
)  # fmt: skip
PRICE_A_LENGTH = Input(
    "price", "price a length", PRICE, says=("price", "a metre", "a yard", "costs", "at"), extra=True, practice="1 money/m..60 money/m",
)  # fmt: skip
DISCOUNT = Input(
    "discount", "discount", PERCENT, says=("off", "discount", "reduction", "in the sale"), default=Default("0 %", derived=True),
    sane="0 %..100 %", practice="10 %..50 %",
)  # fmt: skip


def with_buying(rule: Rule) -> Rule:
    """The rule with a shop's step, a price and a cost, when its answers hold a length that is bought."""
    bought = next((name for name in rule.answers if _is_bought(rule.step(name))), "")
    if not bought:
        return rule
    inputs, steps, answers = rule.inputs, rule.steps, rule.answers
    if rule.input("shop_step") is None:
        inputs = (*inputs, SHOP_STEP)
    if rule.input("price") is None and rule.step("cost") is None:
        step = rule.step(bought)
        assert step is not None
        cost = Step("cost", f"The {step.shown_label} as bought, at its price", f"rounded({bought}) * price * (1 - discount)", MONEY, rounding=PENNY,
                    says=("cost", "price in all", "pay", "come to", "how much money"), label="cost", when=step.when)  # fmt: skip
        inputs, steps, answers = (*inputs, PRICE_A_LENGTH, DISCOUNT), (*steps, cost), (*answers, "cost")
    return replace(rule, inputs=inputs, steps=steps, answers=answers)


def _is_bought(step: Step | None) -> bool:
    return step is not None and step.rounding is not None and step.rounding.bought
