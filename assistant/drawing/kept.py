"""Drawings written to files: "draw it to lay.svg", on its own or at the end of a question."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.files import named, there_already, write
from rules.engine.answer import Answer
from rules.engine.drawing import Drawing, Drawings

from . import as_svg, as_text

if TYPE_CHECKING:
    from assistant.conversation import Conversation

PICTURE = (
    r"(?:(?:the|a|an|its|my|their) )?(?:drawings?|pictures?|diagrams?|sketch|lay(?: ?out| plan)?)"
    r"(?: of (?:it|that|this|them))?"
)
POINTS = r"(?:it|that|this|them)"
THING = r"(?:the|my|its|these|those)(?: [a-z-]+){1,3}?"  # whatever it shows: there is one answer it can be
WAY = r"(?: as (?:an )?svg)? (?:to|into|in|as|on)(?: (?:a|the))?(?: file)?(?: (?:called|named))? "
FILE = r"(?P<file>\"[^\"]+\"|'[^']+'|\S+?\.[a-z]\w{0,7})"
REPLACING = r"(?P<replacing>,? (?:and )?(?:replace|replacing|overwriting) it)?"
ASKS = re.compile(
    r"^(?P<before>|.*?[\s,;:.?!])(?:(?:and|then|please|also|could you|can you|i want to|with) )*"
    rf"(?:draw(?: (?:{POINTS}|{PICTURE}|{THING}))?{WAY}{FILE}"
    rf"|drawn{WAY}{FILE.replace('file', 'drawn')}"
    rf"|(?:(?:save|write|put|export|print|send) )?{PICTURE}{WAY}{FILE.replace('file', 'picture')}"
    rf"|(?:(?:save|write|put|export|print) {POINTS} )?(?:as (?:an )?svg )?(?:to|into) "
    r"(?P<svg>\"[^\"]+\.svg\"|'[^']+\.svg'|\S+?\.svg))"
    rf"{REPLACING}[.!]?$",
    re.IGNORECASE,
)
UNNAMED = re.compile(rf"^(?:please )?draw (?:{POINTS}|{PICTURE})(?: (?:to|into|in)(?: \S+)?)?$", re.IGNORECASE)
LOOSE = " ,;:.-"
NOTES = ("note", "add a note", "make a note", "keep a note", "take a note")  # what stands in a note is no order
ENDINGS = (".svg", ".txt")
TEXT_COLUMNS = 100
EXAMPLE = "lay plan: 2 fronts 30 x 70 cm and 1 back 58 x 70 cm on 140 cm cloth, draw it to lay.svg"


def hear(text: str, talk: Conversation) -> Answer | None:
    """The answer to a line that asks for a drawing in a file; None for any other line."""
    line = " ".join(text.split())
    if line.lower().startswith(NOTES):
        return None
    met = ASKS.match(line)
    if met is None:
        return _unsure("Name the file to draw it to, such as: draw it to lay.svg") if UNNAMED.match(line) else None
    file = f"{met['file'] or met['drawn'] or met['picture'] or met['svg']}{met['replacing'] or ''}"
    before = met["before"].strip(LOOSE)
    if not before:
        return _drawn(talk.context.answer, file)
    made = talk.ask(before)
    if made.status != "answered":
        return made
    drawn = _drawn(made, file)
    if drawn.status != "done":
        return replace(drawn, message=f"{made.headline} The drawing, though, was not kept. {drawn.message}")
    return replace(made, notes=(*made.notes, drawn.headline))


def _drawn(made: Answer | None, said: str) -> Answer:
    """The drawings of an answer put in the file named, or in one each, numbered, where there are several."""
    if made is None:
        return _unsure(f"There is no answer yet to draw. Ask first, or say both at once, such as: {EXAMPLE}")
    pictures = pictures_of(made)
    if not pictures:
        return _unsure(f"There is no drawing of {made.topic}. What can be drawn is, for example: {EXAMPLE}")
    path, replacing = named(said)
    if path.suffix.lower() not in ENDINGS:
        return _unsure(f"I draw as SVG or as text, so end the file's name so, such as: draw it to {path.stem}.svg")
    texts = _texts(path, pictures)
    there = [one for one in texts if not replacing and _is_there(one)]
    if there:
        return _cannot(there_already(there[0]).replace(f"with: {there[0]}", f"with: {path}"))
    for one, content in texts.items():
        if trouble := write(one, content, replacing):
            return _cannot(trouble)
    return Answer("done", topic="drawing", headline=_well(list(texts), pictures))


def pictures_of(made: Answer) -> list[tuple[str, Drawing]]:
    """Every drawing of an answer and of its parts, with what it shows: the part, or the cloth, or ""."""
    found: list[tuple[str, Drawing]] = []
    for title, answer in (("", made), *made.parts):
        one = answer.drawing
        each = () if one is None else one.parts if isinstance(one, Drawings) else (one,)
        cloths = [row[0] for row in answer.table.texts] if answer.table is not None else []
        names = cloths if len(cloths) == len(each) else [""] * len(each)
        called = [": ".join(part for part in (title, name) if part) for name in names]
        found += zip(called, each, strict=True)
    return found


def _texts(path: Path, pictures: Sequence[tuple[str, Drawing]]) -> dict[Path, str]:
    """What goes into each file: SVG holds one drawing, a text file all of them."""
    if path.suffix.lower() == ".txt":
        drawn = [f"{name}\n{as_text(one, TEXT_COLUMNS)}".lstrip("\n") for name, one in pictures]
        return {path: "\n\n".join(drawn) + "\n"}
    if len(pictures) == 1:
        return {path: as_svg(pictures[0][1]) + "\n"}
    return {path.with_stem(f"{path.stem}-{number}"): as_svg(one) + "\n" for number, (_, one) in enumerate(pictures, 1)}


def _is_there(path: Path) -> bool:
    try:
        return path.exists()
    except (OSError, ValueError):
        return False  # what is wrong with it is told when it is written


def _well(paths: Sequence[Path], pictures: Sequence[tuple[str, Drawing]]) -> str:
    if len(paths) == 1:
        return f"The drawing{'s are' if len(pictures) > 1 else ' is'} in {paths[0]}."
    each = [f"{path}{f' ({name})' if name else ''}" for path, (name, _) in zip(paths, pictures, strict=True)]
    return f"The drawings are in {', '.join(each[:-1])} and {each[-1]}."


def _unsure(message: str) -> Answer:
    return Answer("unclear", topic="drawing", message=message)


def _cannot(message: str) -> Answer:
    return Answer("impossible", topic="drawing", message=message)
