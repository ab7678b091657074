"""Keeping an answer for a project, and what is needed, paid and bought for it outright."""

from __future__ import annotations

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from rules.engine.answer import Answer, Value
from rules.kept.shopping import price_of_all

from . import projects, reply, state, taken, taken_plan
from .amounts import Amount, of_measure
from .describe import describe, is_money, key_of, without_article
from .hearing import Hearing
from .page import Thing
from .stash import PRICE, in_words, lost, put_more


def keep_known(hearing: Hearing) -> Answer | None:
    """ "add this to the harbour tote", where a project is called so."""
    return keep(hearing) if projects.find(hearing.page, hearing.words("project")) else None


def keep(hearing: Hearing) -> Answer | None:
    """Keep the last answer, for the project named if one is; with a name, what is bought is called so."""
    made = hearing.last
    if made is None or made.topic == reply.TOPIC:
        return reply.unsure("There is no answer to keep yet. Ask first, then type: keep that")
    project = _planned(hearing, made) or projects.meant(hearing)
    if project is None:
        if not hearing.has("project"):
            return reply.needs(
                "I do not know which project to keep it for.",
                "project",
                "Which project is it for?",
                "keep that for harbour tote",
            )
        project = projects.open_new(hearing.page, hearing.words("project"))
    called = hearing.words("name")
    bought, cut = _keep(hearing, project, made, called)
    notes = [f"On the shopping list: {reply.joined(bought)}."] if bought else []
    notes += [f"On the cut list: {reply.joined(cut)}."] if cut else []
    return reply.done(f"Kept for {project.body['called']}: {made.headline}", *notes)


def _planned(hearing: Hearing, made: Answer) -> Thing | None:
    """The project that a whole plan is kept as ("keep that as harbour tote"), begun when there is none of that name."""
    if not made.parts or not hearing.has("name") or hearing.has("project"):
        return None
    called = hearing.words("name")
    return projects.find(hearing.page, called) or projects.open_new(hearing.page, called)


def _keep(hearing: Hearing, project: Thing, made: Answer, called: str) -> tuple[list[str], list[str]]:
    """Keep an answer, and put what it takes on the lists; in words, what is now to be bought and to be cut."""
    rule = hearing.talk.mind.rules.get(made.topic)
    planned = rule is not None and bool(made.parts)
    needs = taken_plan.needs(made, rule) if rule is not None and planned else taken.needs(made, rule, called)
    pieces = taken_plan.pieces(made) if planned else taken.pieces(made, rule)
    hearing.page.add(projects.KEPT, _whole(made), project.name)
    for one in needs:
        hearing.page.add(projects.NEED, one, project.name)
    for one in pieces:
        hearing.page.add(projects.CUT, one, project.name)
    price = None if planned else taken.price(made)
    if price is not None and needs:
        hearing.page.put(PRICE, needs[0]["thing"], {"called": needs[0]["called"], "price": price.body()})
    for thing, each in taken_plan.prices(made, rule) if rule is not None and planned else ():
        hearing.page.put(PRICE, key_of(thing), {"called": thing, "price": each.body()})
    bought = [f"{one['called']} {one['amount']['text']}" for one in needs]
    return bought, [_cut_words(one) for one in pieces]


def _cut_words(piece: Mapping[str, Any]) -> str:
    """A piece in words: "7 strips (strip width 2 1/2 in)" for a number of them, "cut width 17 cm" for a size."""
    what, text = piece["what"], piece["text"]
    if any(sign.isdigit() for sign in what):
        return f"{text} ({what})"
    return f"{what} {text}".strip()


def _whole(made: Answer) -> dict[str, Any]:
    """The answer as it is kept: enough to tell it again."""
    return {
        "question": made.question,
        "topic": made.topic,
        "headline": made.headline,
        "given": [_value(value) for value in made.given],
        "assumed": [_value(value) for value in made.assumed],
        "results": [
            {"name": one.name, "text": one.text, "exact": one.exact_text, "unit": one.unit} for one in made.results
        ],
    }


def _value(value: Value) -> dict[str, str]:
    return {"name": value.name, "text": value.text, "why": value.why}


# -- needs and payments said outright --------------------------------------------------------------------------------


def need(hearing: Hearing) -> Answer | None:
    """Something put on the shopping list by hand."""
    made = describe(hearing.found.slots["about"], hearing.found.text, hearing.system)
    listed = hearing.said[0].lower in ("add", "put")
    if made is None or any(token.lower in projects.ASKS for token in hearing.said):
        return None
    project = projects.meant(hearing)
    if project is None and (hearing.has("project") or not listed):
        return None
    if made.lost:
        return lost(made)
    body: dict[str, Any] = {
        "called": made.called,
        "thing": made.thing,
        "amount": made.amount.body(),
        "noun": made.noun,
        "rounding": "",
    }
    if made.width is not None:
        body["width"] = made.width.body()
    hearing.page.add(projects.NEED, body, project.name if project is not None else "")
    if made.price is not None:
        hearing.page.put(PRICE, made.thing, {"called": made.called, "price": made.price.body()})
    return reply.done(
        f"On the shopping list{' for ' + project.body['called'] if project is not None else ''}: {made.words}."
    )


def paid(hearing: Hearing) -> Answer | None:
    """Money paid for a thing; so much of it as is needed counts as bought."""
    project = projects.meant(hearing)
    if any(token.lower in projects.ASKS for token in hearing.said):
        return None
    if project is None:
        return projects.missing(hearing) if hearing.alone else None
    value = hearing.found.value("money")
    amount = of_measure(value.main, value.text, "money")
    if not is_money(amount) or amount.kind != "money":
        return reply.unsure(f"I read {value.text}, which is no sum of money. Such as: paid £4.20 for the zip")
    made = describe(hearing.found.slots["about"], hearing.found.text, hearing.system)
    called = made.called if made is not None else without_article(hearing.words("about"))
    got: dict[str, Any] = {"thing": key_of(called), "called": called, "how": "bought", "part": True}
    if made is not None:
        got["amount"] = made.amount.body()
    hearing.page.add(projects.PAID, {"called": called, "amount": amount.body()}, project.name)
    hearing.page.add(projects.GOT, got, project.name)
    return reply.done(f"Kept for {project.body['called']}: {amount.text} paid for {called}.")


def paid_for(hearing: Hearing) -> Answer | None:
    """The same with the project named; "paid £3 for thread for the zip" names none."""
    return None if projects.meant(hearing) is None else paid(hearing)


def bought(hearing: Hearing) -> Answer | None:
    """A thing bought, which is then in hand, and what was paid for it."""
    made = describe(hearing.found.slots["about"], hearing.found.text, hearing.system)
    if made is None or made.lost:
        return lost(made) if made is not None else None
    project = state.current(hearing.page)
    put_more(hearing.page, made)
    total = made.paid
    if total is None and made.price is not None:
        unit = made.price.unit.partition("/")[0]
        total = Amount("money", Fraction(0), unit, "").with_value(price_of_all(made.amount.value, made.price.value))
    if total is None:
        return reply.done(f"Kept: {in_words(made)} bought, and in hand.")
    owner = project.name if project is not None else ""
    hearing.page.add(projects.PAID, {"called": made.called, "amount": total.body()}, owner)
    of = f" for {project.body['called']}" if project is not None else ""
    return reply.done(f"Kept{of}: {in_words(made)} bought for {total.text}, and in hand.")
