"""A plan as Markdown: headings, lists to tick off, the cut list as a table, lays as they are drawn."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING

from .drawing import as_text
from .plan_text import is_bought, named
from .render import not_told

if TYPE_CHECKING:
    from rules.engine.answer import Answer, Table

DRAWING_COLUMNS = 80


def as_markdown(plan: Answer) -> str:
    """The whole plan, ending in a newline."""
    blocks = [
        f"# {plan.topic[:1].upper()}{plan.topic[1:]}",
        *([f"> {plain(plan.question)}"] if plan.question else []),
        plain(plan.headline),
    ]
    blocks += ["## To buy", ticks(named(result) for result in plan.results if is_bought(result))]
    blocks += _listed("Also", [named(result) for result in plan.results if not is_bought(result)])
    if plan.cut is not None:
        blocks += ["## Cut list", table(plan.cut)]
    for title, part in plan.parts:
        blocks += _part(title, part)
    if plan.order:
        blocks += [
            "## Order of work",
            "\n".join(f"{number}. {plain(sentence)}" for number, sentence in enumerate(plan.order, 1)),
        ]
    blocks += _listed("Given", [f"{value.name} {value.text}" for value in plan.given])
    blocks += _listed(
        "Assumed", [f"{value.name} {value.text}" + (f": {value.why}" if value.why else "") for value in plan.assumed]
    )
    blocks += _listed("Mind", plan.cautions) + _listed("Notes", plan.notes) + _listed("Sources", plan.sources)
    return "\n\n".join(blocks) + "\n"


def _part(title: str, part: Answer) -> list[str]:
    """A part: its sentence, its results, its drawing, its working."""
    blocks = [f"## {plain(title)}", plain(part.headline)]
    if part.table is not None:
        blocks.append(table(part.table))
    if more := not_told(part):
        blocks.append("\n".join(f"- {plain(named(result))}" for result in more))
    if part.drawing is not None:
        blocks.append(f"```text\n{as_text(part.drawing, DRAWING_COLUMNS, True)}\n```")
    if part.working:
        blocks.append("Working:")
        blocks.append(
            "\n".join(
                f"{number}. {plain(': '.join(filter(None, (line.step, line.numbers, line.result))))}"
                for number, line in enumerate(part.working, 1)
            )
        )
    return blocks + ([plain(" ".join(part.notes))] if part.notes else [])


def _listed(title: str, items: Sequence[str]) -> list[str]:
    return [f"## {title}", "\n".join(f"- {plain(item)}" for item in items)] if items else []


def ticks(items: Iterable[str]) -> str:
    """A list to tick off."""
    return "\n".join(f"- [ ] {plain(item)}" for item in items)


def table(rows: Table) -> str:
    """A table with bars."""
    heads = [name for name, _ in rows.columns]
    lines = [heads, ["---"] * len(heads), *rows.texts]
    return "\n".join(f"| {' | '.join(plain(cell) for cell in cells)} |" for cells in lines)


def plain(text: str) -> str:
    """Text whose signs Markdown would not read as its own."""
    for sign in ("\\", "*", "_", "`", "<", "#", "|"):
        text = text.replace(sign, "\\" + sign)
    return text
