"""A worksheet as Markdown: questions with room to work, the answers after a page break."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .worksheet import key

if TYPE_CHECKING:
    from .worksheet import Sheet

MARK = "<!-- ellwand worksheet -->"
ROOM = "&nbsp;\n\n" * 4
PAGE_BREAK = '<div style="break-before: page"></div>'


def as_markdown(sheet: Sheet) -> str:
    """The whole sheet. The mark at its head lets a later sheet be written over it, and nothing else."""
    parts = [
        MARK,
        f"# {sheet.title}: worksheet {sheet.number}",
        "Name: ____________________  Date: ____________",
        "Show your working. Give each answer its unit.",
    ]
    for number, one in enumerate(sheet.exercises, 1):
        parts += [f"**{number}.** {plain(one.question)}", ROOM.strip(), "Answer: ____________________"]
    parts += [PAGE_BREAK, f"# Answers to worksheet {sheet.number}"]
    for number, one in enumerate(sheet.exercises, 1):
        result, lines = key(one)
        parts.append("\n".join((f"**{number}.** **{plain(result)}**", "", *(f"- {plain(line)}" for line in lines))))
    return "\n\n".join((*parts, f"To make this sheet again, type: `{sheet.again}`", ""))


def plain(text: str) -> str:
    r"""Text that Markdown leaves as it is.

    >>> plain("2 * 3 < 7")
    '2 \\* 3 &lt; 7'
    """
    text = text.replace("&", "&amp;").replace("<", "&lt;")
    return "".join("\\" + sign if sign in "\\`*_[]#|" else sign for sign in text)
