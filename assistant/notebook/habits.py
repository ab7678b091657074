"""Habits: the maker's own units, money, shop's step and usual values, used in later questions until told otherwise.

Things of the kind "habit". A usual value (usable width, seam allowance) is kept under the name of what it is, and goes
into whichever input of a rule is called so.
"""

from __future__ import annotations

from collections.abc import Sequence

from assistant.understand.build import Habits
from assistant.understand.tokens import tokens
from assistant.understand.usual import Usual
from assistant.understand.values import Value
from rules.engine.answer import Answer
from rules.engine.request import Given

from . import reply
from .amounts import Amount, of_measure
from .hearing import Hearing
from .measures import Named
from .page import Page, Thing

KIND = "habit"
UNITS, MONEY, SHOP = "units", "money", "shop's step"
SYSTEMS = {
    **dict.fromkeys(("inches", "inch", "imperial", "yards"), "in"),
    **dict.fromkeys(("metric", "centimetres", "centimeters", "cm", "metres", "meters"), "cm"),
}
CURRENCIES = {"pounds": "GBP", "sterling": "GBP", "gbp": "GBP", "£": "GBP", "dollars": "USD", "usd": "USD", "$": "USD",
              "euros": "EUR", "euro": "EUR", "eur": "EUR", "€": "EUR"}  # fmt: skip
CURRENCY_WORDS = {"GBP": "pounds", "USD": "dollars", "EUR": "euros"}
# Values that people have a usual one of; each may be said in other words, which are its equals.
USUAL: tuple[tuple[str, ...], ...] = (
    ("usable width", "usable fabric width", "usable cloth width"),
    ("fabric width", "cloth width", "width of cloth", "width of fabric"),
    ("seam allowance", "seam allowances", "seams"),
    ("hem allowance", "hem"),
    ("corners and joins", "joins and corners", "extra for joins and corners"),
    ("overlap",),
    ("ease",),
)


NOT_NAMES = frozenset(("remember", "keep", "set", "that", "the", "a", "is", "of", ":", "="))


def name_of(said: str) -> str:
    """The name a usual value is kept under, or "" when it is none of those known.

    >>> name_of("usual seam allowances"), name_of("waist")
    ('seam allowance', '')
    """
    words = tokens(said.lower().removeprefix("usual ").removeprefix("the "))
    return next((names[0] for names in USUAL if any(tokens(name) == words for name in names)), "")


def is_habit(name: str) -> bool:
    return bool(name_of(name)) or name.lower().startswith("usual ")


def of_page(page: Page, forced: str) -> Habits:
    """The habits kept, as the understanding takes them."""
    kept = {thing.name: thing.body for thing in page.all(KIND)}
    usual = tuple(
        Usual(name, body["kind"], Given(amount.value, amount.unit, amount.text, "you said so"))
        for name, body in kept.items()
        if name not in (UNITS, MONEY) and (amount := Amount.of_body(body))
    )
    return Habits(kept.get(UNITS, {}).get("system", ""), kept.get(MONEY, {}).get("currency", ""), forced, usual)


# -- keeping -------------------------------------------------------------------------------------------------------


def keep_units(hearing: Hearing) -> Answer | None:
    system = SYSTEMS.get(hearing.said[-1].lower)
    if system is None:
        return keep_money(hearing)
    hearing.page.put(KIND, UNITS, {"system": system})
    return reply.done(
        f"Kept: you work in {'inches' if system == 'in' else 'centimetres'}.",
        "It counts for questions that name no units.",
    )


def keep_money(hearing: Hearing) -> Answer | None:
    currency = CURRENCIES.get(hearing.said[-1].lower)
    if currency is None or not (hearing.alone or len(hearing.said) > 1):
        return None
    hearing.page.put(KIND, MONEY, {"currency": currency})
    return reply.done(f"Kept: money is in {CURRENCY_WORDS[currency]}.", "It counts for questions that name no money.")


def keep_shop(hearing: Hearing) -> Answer | None:
    return _keep(hearing, SHOP, hearing.found.value("measure"))


def keep_usual(hearing: Hearing) -> Answer | None:
    """A usual value said by itself ("usable width 42 in"): after a question it is a change to that question."""
    spot = hearing.found.slots["measure"][0]
    words = [token.lower for token in hearing.said if token.end <= spot.start and token.lower not in NOT_NAMES]
    name = name_of(" ".join(words))
    return _keep(hearing, name, hearing.found.value("measure")) if name and hearing.alone else None


def keep_always(hearing: Hearing) -> Answer | None:
    """A usual value said to be one ("always use 1.5 cm seams")."""
    said = hearing.words("name").lower()
    return _keep(hearing, name_of(said) or " ".join(said.split()), hearing.found.value("measure"))


def keep_pairs(hearing: Hearing, found: Sequence[Named]) -> Answer | None:
    """Usual values said like measures ("my seam allowance is 1.5 cm")."""
    made: Answer | None = None
    for one in found:
        made = _keep(hearing, name_of(one.name) or one.name.lower().removeprefix("usual "), one.value)
    return made


def _keep(hearing: Hearing, name: str, value: Value) -> Answer:
    amount = of_measure(value.main, value.text, "length", hearing.system)
    if amount.value < 0:
        return reply.cannot(f"{amount.text} cannot be a {name}. Nothing was kept. Such as: usable width 42 in")
    hearing.page.put(KIND, name, amount.body())
    return reply.done(f"Kept: {name} {amount.text}.", "It counts for questions that do not give another.")


# -- telling and forgetting ------------------------------------------------------------------------------------------


def tell(hearing: Hearing) -> Answer | None:
    kept = hearing.page.all(KIND)
    if not kept:
        return reply.told(
            "You have told me no habits yet. Such as: work in inches; my shop sells by the half metre; "
            "usable width 42 in."
        )
    listed = [f"{thing.name} {_text(thing)}" for thing in kept]
    return reply.told(
        f"Your habits: {reply.joined(listed)}.", [reply.words(thing.name, _text(thing)) for thing in kept]
    )


def tell_one(hearing: Hearing, said: str) -> Answer | None:
    thing = hearing.page.get(KIND, name_of(said) or said)
    if thing is None or "value" not in thing.body:
        return None
    amount = Amount.of_body(thing.body)
    return reply.told(f"Your {thing.name}: {amount.text}.", [reply.result(thing.name, amount)])


def forget_all(hearing: Hearing) -> Answer | None:
    kept = hearing.page.all(KIND)
    for thing in kept:
        hearing.page.drop(KIND, thing.name)
    return reply.done(
        f"Forgotten: {reply.joined([thing.name for thing in kept]) or 'no habits, since none were kept'}."
    )


def _text(thing: Thing) -> str:
    if thing.name == UNITS:
        return "inches" if thing.body["system"] == "in" else "metric"
    return CURRENCY_WORDS[thing.body["currency"]] if thing.name == MONEY else str(thing.body["text"])
