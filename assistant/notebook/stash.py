"""Cloth, yarn and notions in hand: had, used, told, and whether they are enough. Things of the kind "stock"."""

from __future__ import annotations

from fractions import Fraction

from assistant.understand.values import MONEYS
from rules.engine.answer import Answer
from rules.engine.text import shown
from rules.kept import stock

from . import reply, state
from .amounts import Amount, of_measure
from .describe import ASKS, Description, describe, key_of, without_article
from .hearing import Hearing
from .page import Page, Thing

KIND = "stock"
PRICE = "price"


def have(hearing: Hearing) -> Answer | None:
    """I have ...: what is said is what there is now."""
    said = hearing.found.slots["about"]
    if said[0].lower == "some" and hearing.alone and not any(token.lower in ASKS for token in said):
        called = without_article(hearing.words("about"))
        return reply.needs(f"I do not know how much {called} there is, so nothing was kept.", "amount",
                           f"How much {called} is there?", f"I have 1.5 m of {called}")  # fmt: skip
    made = describe(said, hearing.found.text, hearing.system)
    if made is None:
        return None
    if made.lost:
        return lost(made)
    earlier = hearing.page.get(KIND, made.thing)
    before = f"Before, there was {_amount(earlier)}." if earlier is not None else ""
    keep(hearing.page, made, made.amount)
    return reply.done(f"Kept: {in_words(made)} in hand.", *([before] if before else []))


def lost(made: Description) -> Answer:
    """A number that could not be placed is asked about."""
    numbers = reply.joined(made.lost)
    return reply.unsure(f"I read {made.words}, but could not place {numbers}, so nothing was kept. "
                        "Say what it is, such as: I have 1.5 m of navy linen 140 cm wide, £9/m")  # fmt: skip


def keep(page: Page, made: Description, amount: Amount) -> None:
    """Keep so much of a described thing in hand, with its price; details not said again stay as they were."""
    earlier = page.get(KIND, made.thing)
    body = {**(earlier.body if earlier is not None else {}), "called": made.called, "amount": amount.body()}
    if made.noun:
        body["noun"] = made.noun
    if made.width is not None:
        body["width"] = made.width.body()
    if made.contents:
        body["contents"] = made.contents
    page.put(KIND, made.thing, body)
    if made.price is not None:
        page.put(PRICE, made.thing, {"called": made.called, "price": made.price.body()})
    state.point_at(page, made.thing)


def put_more(page: Page, made: Description) -> None:
    """More of a thing comes in hand."""
    earlier = page.get(KIND, made.thing)
    had = Amount.of_body(earlier.body["amount"]) if earlier is not None else None
    if had is None or had.kind != made.amount.kind:
        keep(page, made, made.amount)
    else:
        keep(page, made, made.amount.with_value(stock.put(had.value, made.amount.value)))


# -- using ---------------------------------------------------------------------------------------------------------


def use_it(hearing: Hearing) -> Answer | None:
    thing = state.pointed_at(hearing.page, KIND)
    if thing is None:
        return reply.needs("I do not know what you mean by it: nothing in hand was spoken of.", "thing",
                           "What was used?", "use 80 cm of the navy linen") if hearing.alone else None  # fmt: skip
    return _use(hearing, thing)


def use(hearing: Hearing) -> Answer | None:
    thing = find(hearing.page, hearing.words("name"))
    if thing is None:
        return nothing_called(hearing, hearing.words("name")) if hearing.alone else None
    return _use(hearing, thing)


def _use(hearing: Hearing, thing: Thing) -> Answer:
    had = Amount.of_body(thing.body["amount"])
    value = hearing.found.value("amount") if hearing.has("amount") else None
    used = of_measure(value.main, value.text, had.kind, hearing.system) if value is not None else had
    if used.kind != had.kind:
        return reply.cannot(f"There is {_amount(thing)}, which cannot be counted in {used.text}. Nothing was changed. "
                            f"Such as: use {had.text} of the {thing.body['called']}")  # fmt: skip
    noun = thing.body.get("noun", "")
    try:
        left, line = stock.take(had.value, used.value, had.unit, noun)
    except stock.NotSoMuch:
        return reply.cannot(
            f"There is only {_amount(thing)}, so {used.text} cannot be used of it. Nothing was changed."
        )
    hearing.page.put(KIND, thing.name, {**thing.body, "amount": had.with_value(left).body()})
    state.point_at(hearing.page, thing.name)
    project = state.current(hearing.page)
    if project is not None:
        hearing.page.add(
            "got",
            {"thing": thing.name, "called": thing.body["called"], "amount": used.body(), "how": "used"},
            project.name,
        )
    of = f" for {project.body['called']}" if project is not None else ""
    made = reply.done(f"Kept: used {used.text} of {thing.body['called']}{of}; {shown(left, had.unit, noun)} left.")
    return reply.with_working(made, [line])


# -- telling -------------------------------------------------------------------------------------------------------


def tell_all(hearing: Hearing) -> Answer | None:
    kept = hearing.page.all(KIND)
    if not kept:
        return reply.told("There is nothing kept in hand. Such as: I have 1.5 m of navy linen 140 cm wide, £9/m")
    rows = [(thing.body["called"], _how_much(thing), _width(thing), _price(hearing.page, thing)) for thing in kept]
    return reply.told(f"In hand: {reply.joined([_amount(thing) for thing in kept])}.",
                      table=reply.table(("thing", "amount", "width", "price"), rows))  # fmt: skip


def tell_one(hearing: Hearing) -> Answer | None:
    thing = find(hearing.page, hearing.words("name")) if hearing.has("name") else state.pointed_at(hearing.page, KIND)
    if thing is None:
        return None
    amount = Amount.of_body(thing.body["amount"])
    return reply.told(f"In hand: {_amount(thing)}.", [reply.result(thing.body["called"], amount)])


def find(page: Page, called: str) -> Thing | None:
    """The thing in hand of that name, or the only one whose name holds all its words ("the linen")."""
    key = key_of(called)
    exact = page.get(KIND, key)
    if exact is not None or not key:
        return exact
    near = [thing for thing in page.all(KIND) if set(key.split()) <= set(thing.name.split())]
    return near[0] if len(near) == 1 else None


def nothing_called(hearing: Hearing, called: str) -> Answer:
    kept = [thing.body["called"] for thing in hearing.page.all(KIND)]
    have = f" In hand: {reply.joined(kept)}." if kept else ""
    return reply.unsure(f"I have nothing in hand called {called}.{have} Such as: I have 1.5 m of {called} 140 cm wide")


def in_words(made: Description) -> str:
    """A description with its details, each as it was typed."""
    details = [f"{made.width.text} wide"] if made.width is not None else []
    details += [made.contents] if made.contents else []
    if made.price is not None:
        details.append(made.price.text if "/" in made.price.unit else f"{made.price.text} each")
    return ", ".join((made.words, *details))


def _how_much(thing: Thing) -> str:
    amount = Amount.of_body(thing.body["amount"])
    noun = thing.body.get("noun", "")
    return shown(amount.value, amount.unit, noun) if noun else amount.text


def _amount(thing: Thing) -> str:
    amount = Amount.of_body(thing.body["amount"])
    if amount.kind == "count" and not thing.body.get("noun"):
        return f"{amount.text} {thing.body['called']}"
    return f"{_how_much(thing)} of {thing.body['called']}"


def _width(thing: Thing) -> str:
    return str(thing.body["width"]["text"]) if "width" in thing.body else ""


def _price(page: Page, thing: Thing) -> str:
    price = page.get(PRICE, thing.name)
    return str(price.body["price"]["text"]) if price is not None else ""


def price_is(hearing: Hearing) -> Answer | None:
    """What a thing costs, for the shopping list."""
    value = hearing.found.value("money")
    if value.main.unit not in MONEYS or not hearing.alone or any(token.lower in ASKS for token in hearing.said):
        return None
    amount = of_measure(value.main, value.text, "price a length" if value.main.per is not None else "money")
    called = hearing.words("name")
    hearing.page.put(PRICE, key_of(called), {"called": called, "price": amount.body()})
    return reply.done(f"Kept: {called} {amount.text}{'' if '/' in amount.unit else ' each'}.")


def _both(value: Fraction, had: Amount, text: str) -> str:
    """What is needed, in the unit of what is in hand, and as the question had it where that differs."""
    here = shown(value, had.unit)
    return here if had.kind == "count" or text.endswith(f" {had.unit}") else f"{here} ({text})"


# -- enough --------------------------------------------------------------------------------------------------------


def enough(hearing: Hearing) -> Answer | None:
    """Whether what is in hand is enough for what a question needs: the question is asked, and its cloth compared."""
    from . import ask_on

    thing = (
        find(hearing.page, hearing.words("name"))
        if hearing.words("name").lower() not in ("it", "that")
        else state.pointed_at(hearing.page, KIND)
    )
    if thing is None:
        return None
    had = Amount.of_body(thing.body["amount"])
    width = Amount.of_body(thing.body["width"]) if "width" in thing.body else None
    need = ask_on.need_of(hearing, hearing.words("question"), had, width)
    if isinstance(need, Answer):
        return need
    made, value, text = need
    compared = stock.enough(had.value, value, had.unit, thing.body.get("noun", ""))
    spare = shown(abs(compared.spare), had.unit, thing.body.get("noun", ""))
    verdict = f"Yes, it is enough: {spare} is left over" if compared.enough else f"No, it is not enough: {spare} short"
    head = f"{verdict}. It takes {_both(value, had, text)}, and there is {_amount(thing)}."
    results = [reply.words("enough", "enough" if compared.enough else "not enough"),
               reply.result("spare" if compared.enough else "short", had.with_value(abs(compared.spare))), *made.results]  # fmt: skip
    return reply.built_on(made, head, results, [compared.line], thing.body["called"], had)
