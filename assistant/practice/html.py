"""A worksheet as one HTML page that prints well on A4 and Letter, the answers on a page of their own."""

from __future__ import annotations

from html import escape
from typing import TYPE_CHECKING

from .worksheet import key

if TYPE_CHECKING:
    from .exercise import Exercise
    from .worksheet import Sheet

MARK = '<meta name="generator" content="Ellwand worksheet">'
# No paper size is named, so that the printer's own holds; margins and room are in mm and suit A4 and Letter alike.
STYLE = """
@page { margin: 16mm 18mm; }
* { box-sizing: border-box; }
body { font: 11pt/1.4 Georgia, "Times New Roman", serif; color: #111; max-width: 174mm; margin: 0 auto;
  padding: 6mm 0; }
h1 { font-size: 17pt; margin: 0 0 3mm; }
.who { display: flex; gap: 8mm; margin: 0 0 3mm; }
.who span { flex: 2; border-bottom: 0.3mm solid #111; padding-bottom: 1mm; }
.who span + span { flex: 1; }
.told { margin: 0 0 5mm; font-style: italic; }
ol { margin: 0; padding: 0; list-style: none; counter-reset: exercise; }
li.exercise { counter-increment: exercise; break-inside: avoid; padding-left: 9mm; position: relative;
  margin-bottom: 3.5mm; }
li.exercise::before { content: counter(exercise) "."; position: absolute; left: 0; font-weight: bold; }
.exercise p { margin: 0 0 2mm; }
.room { height: 21mm; border: 0.2mm solid #999; border-radius: 1mm; }
.given { margin: 2mm 0 0; }
.given span { display: inline-block; width: 60mm; border-bottom: 0.3mm solid #111; }
.answers { break-before: page; }
.answers ol { columns: 2; column-gap: 8mm; }
.answers li.exercise { margin-bottom: 3mm; padding-left: 7mm; font-size: 9.5pt; line-height: 1.3; }
.answers ul { margin: 0.5mm 0 0; padding-left: 5mm; }
footer { margin-top: 5mm; font-size: 9pt; color: #444; }
@media print { body { max-width: none; padding: 0; } }
"""


def as_html(sheet: Sheet) -> str:
    """The whole page, which needs nothing else. By the mark in its head a later sheet may be written over it."""
    title = escape(f"{sheet.title}: worksheet {sheet.number}")
    return f"""<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
{MARK}
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>{title}</title>
<style>{STYLE}</style>
</head>
<body>
<main>
<h1>{title}</h1>
<div class="who"><span>Name</span><span>Date</span></div>
<p class="told">Show your working. Give each answer its unit.</p>
<ol>
{"".join(_asked(one) for one in sheet.exercises)}</ol>
</main>
<section class="answers">
<h1>Answers to worksheet {sheet.number}</h1>
<ol>
{"".join(_answered(one) for one in sheet.exercises)}</ol>
<footer>To make this sheet again, type: {escape(sheet.again)}</footer>
</section>
</body>
</html>
"""


def _asked(one: Exercise) -> str:
    return (
        f'<li class="exercise"><p>{escape(one.question)}</p><div class="room"></div>'
        '<p class="given">Answer <span></span></p></li>\n'
    )


def _answered(one: Exercise) -> str:
    result, lines = key(one)
    working = "".join(f"<li>{escape(line)}</li>" for line in lines)
    return f'<li class="exercise"><strong>{escape(result)}</strong><ul>{working}</ul></li>\n'
