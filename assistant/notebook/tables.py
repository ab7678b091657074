"""Size tables kept by name: typed, read from a file, shown, and asked for a size. Things of the kind "table"."""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from pathlib import Path
from typing import Any

from assistant.understand.readers import size_table
from assistant.understand.readers.size_atoms import PLACES
from rules.engine.answer import Answer
from rules.engine.declare import Input
from rules.engine.kinds import SIZES
from rules.engine.request import Given
from rules.engine.text import shown
from rules.fit.size_tables import Size, SizeTable

from . import fill, reply, state
from .hearing import Hearing
from .measures import KIND as MEASURE
from .measures import PERSON
from .page import Thing

KIND = "table"
TYPED_EXAMPLE = "size table harbour dress: 10: 83/64/88 cm, 12: 87/68/92"
_TABLE = Input("table", "size table", SIZES, ask="Which sizes are there?", example="10: 83/64/88 cm, 12: 87/68/92")
SIZE_TABLE = SIZES.name


# -- keeping ---------------------------------------------------------------------------------------------------------


def typed(hearing: Hearing) -> Answer | None:
    """A table typed in the line itself."""
    called = hearing.words("name")
    line = hearing.talk.hear(f"size table: {hearing.words('about')}").line
    given, used = size_table.read(_TABLE, line, line.values, [])
    if given is None:
        return reply.unsure(f"I cannot read that as a size table, so nothing was kept. Such as: {TYPED_EXAMPLE}")
    lost = [value.text for value in line.values if value.number not in used]
    if lost:
        return reply.unsure(
            f"I could not place {reply.joined(lost)} in the size table, so nothing was kept. Such as: {TYPED_EXAMPLE}"
        )
    return _keep(hearing, called, given.value)


def from_file(hearing: Hearing) -> Answer | None:
    """A table read from a CSV file."""
    from .size_file import NotATable, read

    path = Path(unquoted(hearing.words("file"))).expanduser()
    called = hearing.words("name") or path.stem.replace("_", " ").replace("-", " ")
    try:
        found = read(path, hearing.talk.mind.reader)
    except NotATable as error:
        return reply.cannot(f"{path} is no size table that I can read: {error}. Nothing was kept.")
    except OSError as error:
        return reply.cannot(f"I cannot read {path} ({error.strerror or error}), so nothing was kept.")
    notes = [f"Left out, being no body measure: {reply.joined(found.left_out)}."] if found.left_out else []
    return _keep(hearing, called, found.table, notes)


def unquoted(text: str) -> str:
    return text[1:-1] if len(text) > 2 and text[0] == text[-1] and text[0] in "\"'" else text


def _keep(hearing: Hearing, called: str, table: SizeTable, notes: Sequence[str] = ()) -> Answer:
    sizes = [
        {"name": size.name, "at": {place: [str(low), str(high)] for place, (low, high) in size.at.items()}}
        for size in table.sizes
    ]
    hearing.page.put(
        KIND, called, {"called": called, "unit": table.unit, "places": list(table.places()), "sizes": sizes}
    )
    state.point_at_table(hearing.page, called)
    places = reply.joined([place or "measure" for place in table.places()])
    names = f"{table.sizes[0].name} to {table.sizes[-1].name}"
    return reply.done(
        f"Kept: size table {called}, {len(table.sizes)} sizes, {names}, by {places}, in {table.unit}.", *notes
    )


def of_body(body: dict[str, Any]) -> SizeTable:
    return SizeTable(tuple(_size_of(one, body["places"]) for one in body["sizes"]), body["unit"], body["called"])


def _size_of(kept: dict[str, Any], places: Sequence[str]) -> Size:
    """A size, its measures in the order of the table's columns."""
    ends = {place: kept["at"][place] for place in places if place in kept["at"]}
    return Size(kept["name"], {place: (Fraction(low), Fraction(high)) for place, (low, high) in ends.items()})


# -- telling ---------------------------------------------------------------------------------------------------------


def tell_all(hearing: Hearing) -> Answer | None:
    kept = hearing.page.all(KIND)
    if not kept:
        return reply.told(f"No size table is kept. Such as: {TYPED_EXAMPLE}")
    return reply.told(f"Size tables: {reply.joined([thing.body['called'] for thing in kept])}.")


def tell(hearing: Hearing) -> Answer | None:
    thing = _meant(hearing)
    if thing is None:
        return _none(hearing)
    table = of_body(thing.body)
    places = table.places()
    rows = [(size.name, *(_range(size, place, table.unit) for place in places)) for size in table.sizes]
    return reply.told(f"Size table {thing.body['called']}:", table=reply.table(("size", *places), rows))


def _range(size: Size, place: str, unit: str) -> str:
    if place not in size.at:
        return ""
    low, high = size.at[place]
    return shown(low, unit) if low == high else f"{shown(low, unit)} to {shown(high, unit)}"


def _meant(hearing: Hearing) -> Thing | None:
    """The table named, the only one whose name holds the words, or the one spoken of last."""
    called = hearing.words("name").lower()
    if called and called not in ("it", "that", "this", "the size table", "size table", "table"):
        exact = hearing.page.get(KIND, called)
        near = [thing for thing in hearing.page.all(KIND) if set(called.split()) <= set(thing.name.split())]
        return exact or (near[0] if len(near) == 1 else None)
    here = state.table_pointed_at(hearing.page)
    return hearing.page.get(KIND, here) if here else None


def _none(hearing: Hearing) -> Answer | None:
    kept = [thing.body["called"] for thing in hearing.page.all(KIND)]
    have = f"Size tables kept: {reply.joined(kept)}. " if kept else ""
    return reply.unsure(f"I have no such size table. {have}Such as: {TYPED_EXAMPLE}") if hearing.alone else None


def size_own(hearing: Hearing) -> Answer | None:
    return _size(hearing, "", "your")


def size_other(hearing: Hearing) -> Answer | None:
    person = hearing.page.get(PERSON, hearing.words("who"))
    return None if person is None else _size(hearing, person.name, f"{person.body['called']}'s")


def _size(hearing: Hearing, owner: str, whose: str) -> Answer | None:
    """The size for someone's kept measures in a kept table: the question asked whole, the table handed with it."""
    thing = _meant(hearing)
    if thing is None:
        return None
    table = of_body(thing.body)
    kept = [one for one in hearing.page.all(MEASURE, owner) if PLACES.get(one.name, one.name) in table.places()]
    if not kept:
        name = whose.removesuffix("'s") if owner else "you"
        place = table.places()[0] or "bust"
        return reply.needs(
            f"I have no measure of {name} that the table has: {reply.joined(table.places())}.",
            "measure",
            f"What is {whose} {place}?",
            f"{whose if owner else 'my'} {place} is 88 cm",
        )
    called = " ".join(word for word in thing.body["called"].split() if word.isalpha())
    text = f"which size to cut for {called}"
    fillings = [
        fill.Filling(len(text), f", {one.name} {one.body['text']}", one.body["text"], one.name, whose) for one in kept
    ]
    given = Given(
        table, "text", f"{thing.body['called']}, {len(table.sizes)} sizes", f"the size table {reply.FROM_HERE}"
    )
    return fill.asked(hearing.talk, text, fillings, {SIZE_TABLE: given})
