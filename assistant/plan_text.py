"""A plan in words for people: what to buy, the cut list, each part with its lay, the order of work."""

from __future__ import annotations

from typing import TYPE_CHECKING

from rules.engine.plan import TO_BUY
from rules.engine.units import SIGNS

from .ink import BOLD, ink
from .render import drawn, not_told, section, told_beside
from .signs import clean
from .tables import aligned
from .wrap import wrap

if TYPE_CHECKING:
    from rules.engine.answer import Answer, Result


def in_lines(answer: Answer, columns: int, colour: bool, unicode: bool) -> list[str]:
    """A plan's lines, of at most so many columns. The working of a part is told when it is asked why."""
    lines = ink(wrap(answer.headline, columns, "", "  "), BOLD, colour)
    lines += _listed("To buy", [named(result) for result in answer.results if is_bought(result)], columns, colour)
    if rest := [named(result) for result in answer.results if not is_bought(result)]:
        lines += _listed("Also", rest, columns, colour)
    if answer.cut is not None:
        lines += ink(["Cut list"], BOLD, colour) + aligned(answer.cut, columns)
    for title, part in answer.parts:
        lines += _part(title, part, columns, colour, unicode)
    if answer.order:
        lines += ink(["Order of work"], BOLD, colour)
        for number, sentence in enumerate(answer.order, 1):
            lines += wrap(sentence, columns, f"  {number}. ", "     ")
    lines += told_beside(answer, columns, colour)
    first = answer.parts[0][0].lower().removeprefix("the ")
    return lines + section(
        "Why", [f'type "why the {first}?" for the working of a part, or "why?" for all of it'], columns
    )


def is_bought(result: Result) -> bool:
    """Whether a plan's result is something to buy, or what it costs."""
    return result.key.startswith(TO_BUY) or result.unit in SIGNS


def named(result: Result) -> str:
    """A result with its name, and in the other system."""
    other = f" ({result.other})" if result.other else ""
    return f"{result.name}: {result.text}{other}"


def _listed(title: str, items: list[str], columns: int, colour: bool) -> list[str]:
    lines = ink([title], BOLD, colour)
    for item in items:
        lines += wrap(item, columns, "  - ", "    ")
    return lines


def _part(title: str, part: Answer, columns: int, colour: bool, unicode: bool) -> list[str]:
    """A part: its sentence, its other results, its drawing."""
    lines = ink(wrap(clean(title), columns, "", "  "), BOLD, colour)
    lines += wrap(part.headline, columns, "  ", "  ")
    if part.table is not None:
        lines += aligned(part.table, columns)
    for result in not_told(part):
        lines += wrap(named(result), columns, "  - ", "    ")
    lines += drawn(part, columns, unicode)
    for note in part.notes:
        lines += wrap(note, columns, "  ", "  ")
    return lines
