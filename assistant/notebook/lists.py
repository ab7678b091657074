"""The shopping list, the cut list and the cost, over all projects in work or of one."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from rules.engine.answer import Answer, Line, Table
from rules.engine.text import amount as amount_text
from rules.engine.text import plural, shown
from rules.engine.units import system_of
from rules.kept.shopping import Entry, Had, Need, Price, Shopping, fits
from rules.kept.shopping import shopping as add_up
from rules.kept.spending import Spent, totals

from . import projects, reply, state
from .amounts import Amount
from .describe import currency_of, key_of
from .habits import KIND as HABIT
from .habits import SHOP, UNITS
from .hearing import Hearing
from .page import Page, Thing
from .stash import KIND as STOCK
from .stash import PRICE

COLUMNS = ("buy", "thing", "width", "cost", "for", "needed", "in hand")


def shopping(hearing: Hearing) -> Answer | None:
    """All that is still to be bought, for one project or for all in work."""
    owners = _owners(hearing)
    return told(hearing.page, owners) if isinstance(owners, list) else owners


def told(page: Page, owners: Sequence[Thing]) -> Answer:
    """The shopping list of some projects, told."""
    listed = of_page(page, owners)
    to_buy = [entry for entry in listed.entries if entry.buy]
    if not listed.entries:
        return reply.told(
            "The shopping list is empty. After an answer, keep that puts what it needs on it; "
            "or: add 2 zips to the shopping list"
        )
    if not to_buy:
        return reply.told(
            "There is nothing left to buy: all that is needed is in hand.",
            table=table(listed.entries),
            notes=_notes(listed),
        )
    head = f"To buy: {reply.joined([_item(entry) for entry in to_buy])}.{_total(listed.totals)}"
    made = reply.told(
        head,
        [reply.in_unit(entry.called, entry.buy, entry.unit, entry.noun) for entry in to_buy],
        table(to_buy),
        _notes(listed),
    )
    return reply.with_working(made, _working(to_buy, listed.totals))


def left(hearing: Hearing) -> Answer | None:
    """What is left to buy: for the project in hand, when one is; else for all."""
    here = state.current(hearing.page)
    return told(hearing.page, [here] if here is not None else in_work(hearing.page))


def _owners(hearing: Hearing) -> list[Thing] | Answer | None:
    """The projects meant: the one named, or all in work; None when it is a question ("for a 60 x 72 in quilt")."""
    if not hearing.has("project"):
        return in_work(hearing.page)
    project = projects.meant(hearing)
    if project is not None:
        return [project]
    numbers = any(token.value is not None for token in hearing.found.slots["project"])
    return None if numbers or not hearing.alone else projects.missing(hearing)


def in_work(page: Page) -> list[Thing]:
    return [project for project in page.all(projects.KIND) if not project.body["finished"]]


def of_page(page: Page, owners: Sequence[Thing]) -> Shopping:
    """The shopping list of some projects; of all in work, things needed for no project are on it too."""
    called = {project.name: str(project.body["called"]) for project in owners}
    every = len(owners) != 1 or owners == in_work(page)
    if every:
        called[""] = ""
    needs = [_need(thing, name) for owner, name in called.items() for thing in page.all(projects.NEED, owner)]
    used = [_had(thing, name) for owner, name in called.items() for thing in page.all(projects.GOT, owner)]
    stock = [_in_hand(thing) for thing in page.all(STOCK)]
    prices = {thing.name: _price(thing) for thing in page.all(PRICE)}
    shop = page.get(HABIT, SHOP)
    return add_up(
        needs, used, stock, prices, _system(page), Amount.of_body(shop.body).value if shop is not None else None
    )


def _need(thing: Thing, project: str) -> Need:
    body, amount = thing.body, Amount.of_body(thing.body["amount"])
    width = Fraction(body["width"]["value"]) if "width" in body else None
    return Need(
        body["thing"], body["called"], amount.kind, amount.value, project, body["rounding"], body["noun"], width
    )


def _had(thing: Thing, project: str) -> Had:
    amount = Amount.of_body(thing.body["amount"]) if thing.body.get("amount") else None
    return Had(thing.body["thing"], amount.kind if amount else "", amount.value if amount else None, project)


def _in_hand(thing: Thing) -> Had:
    amount = Amount.of_body(thing.body["amount"])
    return Had(
        thing.name,
        amount.kind,
        amount.value,
        "",
        Fraction(thing.body["width"]["value"]) if "width" in thing.body else None,
    )


def _price(thing: Thing) -> Price:
    price = Amount.of_body(thing.body["price"])
    return Price(price.value, currency_of(price))


def _system(page: Page) -> str:
    """The maker's own units; else those of most of what is needed."""
    habit = page.get(HABIT, UNITS)
    if habit is not None:
        return str(habit.body["system"])
    units = [system_of(Amount.of_body(thing.body["amount"]).unit) for thing in page.all(projects.NEED)]
    return "in" if units.count("in") > units.count("cm") else "cm"


# -- shown -----------------------------------------------------------------------------------------------------------


def table(entries: Sequence[Entry]) -> Table:
    return reply.filled_table(COLUMNS, [row(entry) for entry in entries])


def row(entry: Entry) -> tuple[str, ...]:
    cost = amount_text(entry.cost[1], entry.cost[0]) if entry.cost is not None else ""
    return (entry.show(entry.buy), entry.called, _width(entry), cost, ", ".join(entry.projects), entry.show(entry.need),
            entry.show(entry.in_hand) if entry.in_hand else "")  # fmt: skip


def _width(entry: Entry) -> str:
    return shown(entry.width, "in" if system_of(entry.unit) == "in" else "cm") if entry.width is not None else ""


def _item(entry: Entry) -> str:
    wide = f", {_width(entry)} wide" if entry.width is not None else ""
    return f"{entry.show(entry.buy)}{' of' if entry.unit != '1' or entry.noun else ''} {_called(entry)}{wide}"


def _called(entry: Entry) -> str:
    """The thing's name, in the plural where several of it are counted."""
    counted = entry.unit == "1" and not entry.noun and key_of(entry.called) == entry.called.lower()
    return plural(entry.called, entry.buy) if counted else entry.called


def _total(spent: Sequence[Spent]) -> str:
    return f" In all {reply.joined([one.text for one in spent])}." if spent else ""


def _notes(listed: Shopping) -> list[str]:
    return (
        [f"Not in the total, since no price is known: {reply.joined(listed.unpriced)}."]
        if listed.unpriced and listed.totals
        else []
    )


def _working(entries: Sequence[Entry], spent: Sequence[Spent]) -> list[Line]:
    lines = [Line(f"{entry.called}: {line.step[:1].lower()}{line.step[1:]}", line.formula, line.numbers, line.result)
             for entry in entries for line in entry.working]  # fmt: skip
    return lines + [Line("Add the costs", "total = all the costs", one.line.numbers, one.text) for one in spent]


# -- to cut and paid -------------------------------------------------------------------------------------------------

CUT_COLUMNS = ("cut", "what", "of", "for")


def cut(hearing: Hearing) -> Answer | None:
    """What is to be cut, as the kept answers had it."""
    owners = _owners(hearing)
    if not isinstance(owners, list):
        return owners
    rows = cut_rows(hearing.page, owners)
    if not rows:
        return reply.told("The cut list is empty. After an answer, keep that puts what it cuts on it.")
    return reply.told(
        f"To cut: {reply.joined([f'{one[0]} {one[1]}' for one in rows])}.", table=reply.table(CUT_COLUMNS, rows)
    )


def cut_rows(page: Page, owners: Sequence[Thing]) -> list[tuple[str, ...]]:
    found: list[tuple[str, ...]] = []
    for owner in owners:
        for thing in page.all(projects.CUT, owner.name):
            body = thing.body
            size = f"{body['text']} ({body['other']})" if body["other"] else body["text"]
            found.append((size, body["what"], body["of"], owner.body["called"]))
    return found


def paid_for(hearing: Hearing) -> Answer | None:
    """What was paid for a thing, in all projects."""
    key = key_of(hearing.words("name"))
    found = [thing for thing in hearing.page.all(projects.PAID) if fits(key, key_of(thing.body["called"]))]
    if not found:
        return reply.told(f"Nothing is kept as paid for {hearing.words('name')}.") if hearing.alone else None
    return _spent(hearing.words("name"), found)


def cost(hearing: Hearing) -> Answer | None:
    """What was paid for a project, and for what."""
    everything = not hearing.has("project") and hearing.said[-1].lower in ("far", "spent", "paid")
    project = projects.meant(hearing)
    if project is None and not everything:
        return projects.missing(hearing) if hearing.alone else None
    owner = None if everything or project is None else project.name
    payments = hearing.page.all(projects.PAID, owner)
    called = project.body["called"] if project is not None and not everything else "everything"
    if not payments:
        return reply.told(f"Nothing is kept as paid for {called}. Such as: paid £4.20 for the zip")
    return _spent(called, payments)


def _spent(called: str, payments: Sequence[Thing]) -> Answer:
    amounts = [(thing.body["called"], Amount.of_body(thing.body["amount"])) for thing in payments]
    spent = totals([(amount.unit, amount.value) for _, amount in amounts])
    items = reply.joined([f"{what} {amount.text}" for what, amount in amounts])
    head = f"{called[:1].upper()}{called[1:]} cost {reply.joined([one.text for one in spent])}: {items}."
    made = reply.told(head, [reply.money("cost", one.total, one.currency, one.text) for one in spent])
    return reply.with_working(made, [one.line for one in spent])
