"""What the notebook says back, as answers like any other."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction

from rules.engine.answer import Answer, Line, Missing, Result, Table, Value
from rules.engine.text import plain, shown
from rules.engine.units import factor

from .amounts import Amount

TOPIC = "notebook"
FROM_HERE = "from the notebook"


def done(text: str, *notes: str) -> Answer:
    """An instruction was carried out; text says what is now so."""
    return Answer("done", topic=TOPIC, headline=text, notes=notes)


def told(text: str, results: Sequence[Result] = (), table: Table | None = None, notes: Sequence[str] = ()) -> Answer:
    """What was asked about what is kept."""
    return Answer("answered", topic=TOPIC, headline=text, results=tuple(results), table=table, notes=tuple(notes))


def needs(message: str, name: str, ask: str, example: str) -> Answer:
    """Something is still to be said."""
    return Answer("incomplete", topic=TOPIC, message=message, missing=(Missing(name, ask, example),))


def unsure(message: str, choices: Sequence[str] = ()) -> Answer:
    """The sentence can be meant in more than one way, or names what is not kept."""
    return Answer("unclear", topic=TOPIC, message=message, choices=tuple(choices))


def cannot(message: str) -> Answer:
    """What was said cannot be; nothing was kept."""
    return Answer("impossible", topic=TOPIC, message=message)


def needs_unit(text: str, what: str) -> Answer:
    return needs(f"I read the {what} {text}, but not its unit, so nothing was kept. Type: {text} in, or {text} cm.",
                 "unit", f"Is {text} in inches or centimetres?", f"{text} cm")  # fmt: skip


def result(name: str, amount: Amount) -> Result:
    """A kept amount as a result, its text as it was typed."""
    number = amount.value / factor(amount.unit)
    return Result(name, plain(number), amount.unit, amount.text, plain(number), amount.text)


def in_unit(name: str, value: Fraction, unit: str, noun: str = "") -> Result:
    """An amount in base units as a result in a unit; noun: what a count counts."""
    number = plain(value / factor(unit))
    text = shown(value, unit, noun)
    return Result(name, number, noun or "1" if unit == "1" else unit, text, number, text)


def words(name: str, text: str) -> Result:
    return Result(name, text, "text", text)


def money(name: str, pence_exact: Fraction, currency: str, text: str) -> Result:
    return Result(name, plain(pence_exact), currency, text, plain(pence_exact), text)


def table(columns: Sequence[str], rows: Sequence[Sequence[str]]) -> Table:
    """A table of texts."""
    cells = tuple(tuple(row) for row in rows)
    return Table(tuple((name, "text") for name in columns), cells, cells)


def filled_table(columns: Sequence[str], rows: Sequence[Sequence[str]]) -> Table:
    """A table without the columns in which nothing stands."""
    kept = [spot for spot in range(len(columns)) if any(row[spot] for row in rows)]
    return table([columns[spot] for spot in kept], [[row[spot] for spot in kept] for row in rows])


def joined(items: Sequence[str]) -> str:
    """A list in words.

    >>> joined(["waist", "hip", "bust"])
    'waist, hip and bust'
    """
    return items[0] if len(items) == 1 else f"{', '.join(items[:-1])} and {items[-1]}" if items else ""


def with_working(made: Answer, lines: Sequence[Line]) -> Answer:
    return replace(made, working=tuple(lines))


def built_on(
    asked: Answer, head: str, results: Sequence[Result], lines: Sequence[Line], called: str, had: Amount
) -> Answer:
    """An answer that goes on from another: what that was given and assumed, and its working, come first."""
    in_hand = Value(f"{called} in hand", plain(had.value / factor(had.unit)), had.unit, had.text, FROM_HERE)
    working, given = (*asked.working, *lines), (*asked.given, in_hand)
    topic = asked.topic or TOPIC
    return replace(
        asked, status="answered", topic=topic, headline=head, results=tuple(results), given=given, working=working
    )
