"""Keeping an answer for a project: what it says to buy goes on the shopping list, what it says to cut on the cut list."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from rules.engine.answer import Answer, Result, Value
from rules.engine.declare import Rule, Step
from rules.engine.kinds import COUNT
from rules.engine.units import SIGNS, factor
from rules.kept.shopping import price_of_all

from . import projects, reply, state
from .amounts import Amount, of_measure
from .ask_on import exact
from .describe import describe, is_money, key_of, without_article
from .hearing import Hearing
from .page import Thing
from .stash import PRICE, in_words, lost, put_more

# Counts that are bought; other counts (strips, squares, pieces) are cut.
BOUGHT = frozenset((
    "ball", "skein", "hank", "cone", "reel", "spool", "pack", "packet", "zip", "button", "snap", "eyelet",
    "buckle", "hook", "slider", "ring", "toggle", "bead", "panel", "roll", "bundle"
))  # fmt: skip
NOT_CUT = frozenset(("body or finished measure", "error or drift", "how many can be got", "money", "percentage", "price a length", "stitches",
                     "rows", "stitch tension", "row tension", "stitch length", "length a budget buys", "yarn weight"))  # fmt: skip
WIDTHS = ("cloth", "fabric", "usable")


def keep(hearing: Hearing) -> Answer | None:
    """Keep the last answer. With a name of a project, for that one; with a name of a thing, what is bought is called so."""
    made = hearing.last
    if made is None or made.topic == reply.TOPIC:
        return reply.unsure("There is no answer to keep yet. Ask first, then type: keep that")
    project = projects.meant(hearing)
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


def _keep(hearing: Hearing, project: Thing, made: Answer, called: str) -> tuple[list[str], list[str]]:
    hearing.page.add(projects.KEPT, _whole(made), project.name)
    rule = hearing.talk.mind.rules.get(made.topic)
    bought, cut = [], []
    for result in made.results:
        step = rule.step(result.key) if rule is not None else None
        if step is None or not isinstance(result.value, int | float):
            continue
        if _is_bought(step, result):
            need = _need(made, step, result, called)
            hearing.page.add(projects.NEED, need, project.name)
            bought.append(f"{need['called']} {result.text}")
        elif step.rounding is not None and step.rounding.name not in NOT_CUT:
            piece = _piece(made, step, result)
            hearing.page.add(projects.CUT, piece, project.name)
            cut.append(f"{piece['text']} {piece['what']}".strip())
    _prices(hearing, made, called or _label(rule, made))
    return bought, cut


def _is_bought(step: Step, result: Result) -> bool:
    return (step.rounding is not None and step.rounding.bought) or result.unit in BOUGHT


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


def _need(made: Answer, step: Step, result: Result, called: str) -> dict[str, Any]:
    """What is bought, exact: it is rounded once, when the list is made."""
    count = result.unit in BOUGHT
    name = called or (result.unit if count else _thing(result.name))
    amount = Amount("count" if count else step.kind.name, exact(result), "1" if count else result.unit, result.text)
    need: dict[str, Any] = {"called": name, "thing": key_of(name), "amount": amount.body(), "noun": result.unit if count else "", "part": True,
                            "rounding": step.rounding.name if step.rounding is not None and not count else ""}  # fmt: skip
    width = next(
        (value for value in (*made.given, *made.assumed) if "width" in value.name and _is_width_of(value.name, name)),
        None,
    )
    if width is not None and isinstance(width.value, int | float):
        need["width"] = {
            "value": str(Fraction(width.value).limit_denominator(10**6) * factor(width.unit)),
            "text": width.text,
        }
    return need


def _piece(made: Answer, step: Step, result: Result) -> dict[str, Any]:
    """What is cut: a size and what it is of; or a number of pieces, and what the question says of their size."""
    what = result.name
    if step.kind is COUNT:
        about = [
            f"{value.name} {value.text}"
            for value in (*made.given, *made.assumed)
            if result.unit in key_of(value.name).split()
        ]
        what = ", ".join(about)
    return {"what": what, "of": made.topic, "text": result.text, "other": result.other, "part": True}


def _thing(label: str) -> str:
    """A result's label as the name of a thing: "elastic to buy" is elastic."""
    return label.removesuffix(" to buy").removeprefix("length of ").strip()


def _is_width_of(label: str, thing: str) -> bool:
    return any(word in label for word in (*WIDTHS, *key_of(thing).split()))


def _label(rule: Rule | None, made: Answer) -> str:
    for result in made.results:
        step = rule.step(result.key) if rule is not None else None
        if step is not None and _is_bought(step, result):
            return result.unit if result.unit in BOUGHT else _thing(result.name)
    return ""


def _prices(hearing: Hearing, made: Answer, called: str) -> None:
    """A price that the question gave is the thing's price from now on."""
    price = next((value for value in made.given if _is_price(value)), None)
    if price is None or not called:
        return
    number = Fraction(price.value).limit_denominator(10**6) * factor(price.unit)
    body = Amount("price a length", number, price.unit, price.text).body()
    hearing.page.put(PRICE, key_of(called), {"called": called, "price": body})


def _is_price(value: Value) -> bool:
    currency, slash, _ = value.unit.partition("/")
    return bool(slash) and currency in SIGNS and isinstance(value.value, int | float)


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
