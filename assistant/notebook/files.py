"""Lists and the whole notebook written to files, and a notebook read back from one."""

from __future__ import annotations

import csv
import io
import json
from collections.abc import Sequence
from pathlib import Path

from assistant.files import named, write
from rules.engine.answer import Answer, Table
from rules.engine.text import amount

from . import lists, reply, whole
from .hearing import Hearing

FORMATS = {"csv": "csv", "markdown": "markdown", "md": "markdown", "json": "json"}


def write_shopping(hearing: Hearing) -> Answer | None:
    """The shopping list to a file."""
    listed = lists.of_page(hearing.page, lists.in_work(hearing.page))
    to_buy = [entry for entry in listed.entries if entry.buy]
    totals = [amount(one.total, one.currency) for one in listed.totals]
    return _write(hearing, "shopping list", lists.table(to_buy), totals)


def write_cut(hearing: Hearing) -> Answer | None:
    """The cut list to a file."""
    rows = lists.cut_rows(hearing.page, lists.in_work(hearing.page))
    return _write(hearing, "cut list", reply.table(lists.CUT_COLUMNS, rows), ())


def write_plan(hearing: Hearing) -> Answer | None:
    """The plan that was just told, as Markdown."""
    plan = hearing.last
    if plan is None or not plan.parts:
        return None
    from assistant.plans_markdown import as_markdown as plan_as_markdown

    path, replacing = _path(hearing)
    return _put(path, plan_as_markdown(plan), f"The {plan.topic} is in {path}.", replacing, 0o666)


def _write(hearing: Hearing, what: str, table: Table, totals: Sequence[str]) -> Answer:
    if not table.rows:
        return reply.cannot(f"The {what} is empty, so nothing was written.")
    path, replacing = _path(hearing)
    said = hearing.words("format").lower() if hearing.has("format") else path.suffix[1:].lower()
    form = FORMATS.get(said)
    if form is None:
        return reply.needs(f"I can write the {what} as CSV, Markdown or JSON, and {path} does not say which.", "form",
                           "As CSV, Markdown or JSON?", f"{what} as CSV to list.csv")  # fmt: skip
    text = {"csv": as_csv, "markdown": as_markdown, "json": as_json}[form](what, table, totals)
    return _put(
        path,
        text,
        f"The {what} is in {path}, {len(table.rows)} {'line' if len(table.rows) == 1 else 'lines'}.",
        replacing,
        0o666,
    )


def _path(hearing: Hearing) -> tuple[Path, bool]:
    """The file named, and whether one that is there may be replaced."""
    return named(hearing.words("file"))


def _put(path: Path, text: str, well: str, replacing: bool, mode: int) -> Answer:
    """The text put in the file; well: what is said then."""
    trouble = write(path, text, replacing, mode)
    return reply.cannot(trouble) if trouble else reply.done(well)


# -- forms -----------------------------------------------------------------------------------------------------------


def as_csv(what: str, table: Table, totals: Sequence[str]) -> str:
    """Comma-separated, as RFC 4180 has it. A total has a row of its own, its amount in the column of costs."""
    heads = [name for name, _ in table.columns]
    stream = io.StringIO()
    rows = csv.writer(stream)
    rows.writerow(heads)
    rows.writerows(table.texts)
    for total in totals:
        rows.writerow(["total" if name == heads[0] else total if name == "cost" else "" for name in heads])
    return stream.getvalue()


def as_markdown(what: str, table: Table, totals: Sequence[str]) -> str:
    """A heading, a table with bars, and the total below."""
    heads = [name for name, _ in table.columns]
    lines = [
        f"# {what.capitalize()}",
        "",
        _bars(heads),
        _bars(["---"] * len(heads)),
        *(_bars(row) for row in table.texts),
    ]
    lines += ["", *(f"Total: {total}" for total in totals)] if totals else []
    return "\n".join(lines) + "\n"


def _bars(cells: Sequence[str]) -> str:
    escaped = (cell.replace("\\", "\\\\").replace("|", "\\|") for cell in cells)
    return f"| {' | '.join(escaped)} |"


def as_json(what: str, table: Table, totals: Sequence[str]) -> str:
    """An object with the lines, each an object by its columns, and the totals."""
    heads = [name for name, _ in table.columns]
    rows = [dict(zip(heads, row, strict=True)) for row in table.texts]
    return json.dumps({"list": what, "lines": rows, "totals": list(totals)}, ensure_ascii=False, indent=2) + "\n"


# -- the whole notebook ----------------------------------------------------------------------------------------------


def export(hearing: Hearing) -> Answer | None:
    """The whole notebook to a JSON file that only its owner can read."""
    path, replacing = _path(hearing)
    if path.suffix.lower() not in (".json", ""):
        return reply.cannot(
            f"The whole notebook is written as JSON, and {path} does not look like it. "
            "Type: export the notebook to notebook.json"
        )
    text = whole.as_text(hearing.page)
    return _put(
        path,
        text,
        f"The whole notebook is in {path}. To put it back: import the notebook from {path}",
        replacing,
        0o600,
    )


def bring_in(hearing: Hearing) -> Answer | None:
    """A notebook written by `export`, put back into an empty one, or in place of this one."""
    path, replacing = _path(hearing)
    try:
        found = whole.read(path.read_text("utf-8"))
    except (ValueError, RecursionError) as error:
        return reply.cannot(f"{path} is no whole notebook: {error}. Nothing was changed.")
    except OSError as error:
        return reply.cannot(f"I cannot read {path} ({error.strerror or error}). Nothing was changed.")
    if not hearing.page.empty:
        if not replacing:
            return reply.cannot(
                f"This notebook is not empty, so nothing was changed. To put {path} in place of what is kept "
                f"(undo brings it back), type: import the notebook from {path}, replacing it"
            )
        whole.replace(hearing.page, found)
        return reply.done(
            f"The notebook is now as {path} has it: {len(found['thing'])} things.",
            "undo brings back what was kept before.",
        )
    hearing.page.load(found)
    return reply.done(
        f"The notebook is back from {path}: {len(found['thing'])} things, {len(found['sentence'])} sentences."
    )
