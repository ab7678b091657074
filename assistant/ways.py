"""Help on what is more than a sum: learning, plans and drawings, each with lines to type."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from .wrap import wrap

Parts = Sequence[tuple[str, Sequence[str]]]


@dataclass(frozen=True, slots=True)
class Way:
    """names: what help is asked by. parts: a title and the lines to type below it, in an order in which they work."""

    names: tuple[str, ...]
    opening: str
    parts: Parts


TOTE = "plan a tote 14 in wide, 15 in high and 4 in deep"
LEARNING = Way(
    ("practise", "practice", "practising", "practicing", "learning", "learn", "explain", "derive", "step by step",
     "worksheet", "worksheets", "exercises", "scores", "teaching"),
    "To learn the sums, type lines such as these:",
    (
        ("Told and shown", ("explain binding strips", "derive circle skirt",
                            "elastic 1 in wide for a 28 in waist, step by step")),
        ("Exercises, harder as they go well", ("practise elastic", "hint", "harder", "tell me", "score", "stop",
                                               "practise quilting in inches level 2")),
        ("Worksheets, with the answers behind", ("worksheet of 10 on elastic",
                                                 "worksheet 1234 of 8 on quilting in metric as HTML to sheet.html")),
        ("Scores, kept in the notebook", ("my scores",)),
    ),
)  # fmt: skip
PLANS = Way(
    ("plans", "plan", "planning"),
    "A plan works out everything before a thing is cut: what to buy, the cut list, the lays, the order of work.",
    (
        ("To begin", (TOTE,)),
        ("And then", ("why the straps?", "why?", "with 54 in cloth", "keep that as harbour tote",
                      "save the plan to plan.md", "draw it to plan.svg")),
    ),
)  # fmt: skip
DRAWINGS = Way(
    ("drawing", "drawings", "draw", "svg", "picture", "pictures"),
    "Lays, panels, marks along a line, quilts and backings are drawn below the answer, and into files when you say so:",
    (
        ("After an answer", ("lay plan: 2 fronts 30 x 70 cm and 1 back 58 x 70 cm on 140 cm cloth",
                             "draw it to lay.svg", "save the drawing to lay.txt", "draw it to lay.svg, replacing it")),
        ("With the question", ("backing for a quilt 64 x 82 in, 40 in usable fabric, draw it to backing.svg",)),
    ),
)  # fmt: skip
WAYS = (LEARNING, PLANS, DRAWINGS)


def way(name: str) -> Way | None:
    """What help of this name is on, if it is no topic."""
    return next((one for one in WAYS if name in one.names), None)


def told(opening: str, parts: Parts, columns: int) -> str:
    """An opening, and below each title its lines, in so many columns."""
    lines = wrap(opening, columns)
    for title, sentences in parts:
        lines += [title]
        for sentence in sentences:
            lines += wrap(sentence, columns, "  ", "    ")
    return "\n".join(lines)
