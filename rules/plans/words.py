"""Words and inputs that the plans share: what calls for a plan, prices, shrinkage, cloth in hand, and the total."""

from __future__ import annotations

from dataclasses import replace

from ..bags.words import CLOTH_WIDTH
from ..engine.buying import DISCOUNT, IN_HAND, PRICE_A_LENGTH, SHOP_STEP
from ..engine.declare import Input, Rule
from ..engine.kinds import MONEY, PERCENT, PRICE
from ..engine.plan import Buy, Costs, Part, Pieces, Source, Told
from ..fabric.lay_plan import LAY_PLAN
from ..fabric.shrinkage import SHRINKAGE
from ..money.cost import COST_OF_SEVERAL

PLAN = (
    "plan",
    "plan for",
    "project plan",
    "planner",
    "everything for",
    "everything i need",
    "everything needed",
    "all i need",
    "all that i need",
    "whole project",
    "work plan",
    "full plan",
    "list of everything",
    "what all do i need",
    "everything to buy",
    "all the bits",
    "all the parts",
    "everything i have to buy",
    "everything that i need",
    "everything you need",
)

SHOP = (SHOP_STEP, DISCOUNT)
SHRINK = Input(
    "shrink",
    "shrinkage",
    PERCENT,
    says=("shrink", "shrinkage", "shrinks by", "in the wash", "going to shrink"),
    extra=True,
    spoken=True,
    sane="0 %..99 %",
    usual="0 %..20 %",
    practice="2 %..10 %",
)


def like(rule: Rule, called: str, /, **changes: object) -> Input:
    """An input of a rule as a plan has it, with some of it changed."""
    item = rule.input(called)
    assert item is not None, f"{rule.topic} has no input {called}"
    return replace(item, **changes)  # type: ignore[arg-type]


def price(called: str, *says: str) -> Input:
    """The price a length of something bought besides the main cloth."""
    return Input(
        f"{called.replace(' ', '_')}_price",
        f"price of the {called}",
        PRICE,
        says=(*says, called, f"the {called}"),
        extra=True,
        spoken=True,
        practice="1 money/m..60 money/m",
    )


def price_each(called: str, *says: str) -> Input:
    """The price of something that is bought by the piece."""
    return Input(
        f"{called.replace(' ', '_')}_price",
        f"price of the {called}",
        MONEY,
        says=(*says, called, f"the {called}", f"a {called}"),
        extra=True,
        spoken=True,
        sane="0.01 money..1000 money",
        practice="1 money..10 money",
    )


def shrunk(*cloths: str, buy: Buy) -> Part:
    """The cloth of an earlier part (a step of it, the first that was worked), with what the wash takes: bought in its
    stead when a shrinkage was said.
    """
    return Part(
        "shrunk",
        "Shrinkage",
        SHRINKAGE,
        {"needed": cloths, "shrink": "shrink", "price": "price"},
        buys={"cloth": buy},
        needs=("shrink",),
    )


def total(**also: str) -> Part:
    """What all that is bought comes to. also: thing -> the input that holds its price, where it has no rule for its
    cost.
    """
    things = {thing.replace("_", " "): name for thing, name in also.items()}
    return Part("total", "Cost", COST_OF_SEVERAL, {"lines": Costs(things)}, takes=("total",), leaves=("count",))


# In a plan both the thing and its cloth may be so wide: "40 cm wide, ... canvas 140 cm wide".
CLOTH_OF_BAG = replace(CLOTH_WIDTH, says=(*CLOTH_WIDTH.says, "wide"))
VERDICT = ("enough", "to_spare", "lacking")
PRICE_OF_CLOTH = replace(PRICE_A_LENGTH, label="price of the cloth")
HAND = replace(
    IN_HAND,
    label="cloth in hand",
    says=(
        *IN_HAND.says,
        "of the cloth",
        "of it",
        "of cloth",
        "of fabric",
        "of the fabric",
        "of canvas",
        "of linen",
        "of cotton",
    ),
)
LAY_SAYS = ("bound", "nearness", "used")
PREWASH = "Wash and press the cloth before cutting, so that it shrinks now and not later."
THREAD_TOO = "Have at hand besides: matching thread, and a fresh machine needle for the cloth."


def lay(name: str, title: str, cloth: str, width: str, price_input: str = "price", **more: Source) -> Part:
    """A lay of all the pieces cut from a cloth, and its length to buy."""
    given: dict[str, Source] = {"pieces": Pieces(cloth), "width": Told(width), "price": price_input, **more}
    return Part(
        name,
        title,
        LAY_PLAN,
        given,
        buys={"cloth": Buy(cloth)},
        takes=VERDICT if "in_hand" in given else (),
        leaves=LAY_SAYS,
    )
