"""Worksheets asked for in a line: which number, how many exercises, of what, shown or written to a file."""

from __future__ import annotations

import random
import re
from pathlib import Path
from typing import TYPE_CHECKING

from rules.engine.answer import Answer, Result

from . import html, markdown
from .practise import nothing_to_practise
from .told import told, unclear
from .topics import nearest, rules_named, stripped, sums_of
from .worksheet import Sheet, key, make

if TYPE_CHECKING:
    from rules.engine.declare import Rule

    from ..conversation import Conversation

USUAL, MOST = 10, 60
NUMBERS = (1000, 9999)  # a new sheet's number; any whole number may be typed
FILE = re.compile(r"""\b(?:to|into|in file|in the file)\s+(?P<file>"[^"]+"|'[^']+'|\S+\.(?:html?|md|markdown))\s*$""", re.IGNORECASE)
FORM = re.compile(r"\bas (?:an? )?(?P<form>html|markdown|md)(?: page| file)?\b", re.IGNORECASE)
NUMBER = re.compile(r"\bwork ?sheet (?:number |no\.? )?(?P<number>\d{1,9})\b")
COUNT = re.compile(r"\b(?:of|with)? ?(?P<count>\d{1,4}) ?(?:questions|exercises|sums|problems)?\b")
TOPIC = re.compile(r"\b(?:on|about|for|of|in) (?P<topic>[a-z].*)$")
SYSTEMS = {" in inches": "in", " in metric": "cm", " in cm": "cm", " in centimetres": "cm"}
ENDINGS = {"html": ".html", "markdown": ".md"}


def sheet_asked(text: str, line: str, talk: Conversation) -> Answer:
    """The worksheet a line asks for, on the screen or in a file."""
    file, form, rest = _where(text)
    system = talk.habits.forced
    for words, meant in SYSTEMS.items():
        if rest.endswith(words):
            rest, system = rest.removesuffix(words), meant
    number_met = NUMBER.search(rest)
    number = int(number_met["number"]) if number_met else random.SystemRandom().randint(*NUMBERS)
    rest = rest[number_met.end() :] if number_met else rest.partition("sheet")[2]
    count_met = COUNT.search(rest)
    count = int(count_met["count"]) if count_met else USUAL
    rest = COUNT.sub(" ", rest, count=1) if count_met else rest
    if not 1 <= count <= MOST:
        return unclear(f"A worksheet holds 1 to {MOST} exercises, not {count}. Type, for example: worksheet of 10 on binding")
    topic = TOPIC.search(rest)
    name, rules = _rules(stripped(topic["topic"]) if topic else "", talk)
    if not rules:
        near = nearest(name, talk)
        return unclear(f"I know no topic called “{name}”. Type, for example: worksheet of 10 on {near[0] if near else next(iter(talk.mind.rules))}", near)
    sheet = make(number, count, sums_of(rules, talk), name, system, talk)
    if not sheet.exercises:
        return unclear(nothing_to_practise(name))
    return _written(sheet, file, form) if form else _shown(sheet)


def _where(text: str) -> tuple[str, str, str]:
    """(file, form, the rest of the line in lower case); a form follows from a file's ending, a file's name from nothing."""
    text = " ".join(text.split()).rstrip(" !?").removesuffix(".")
    file_met = FILE.search(text)
    file = file_met["file"].strip("\"'") if file_met else ""
    rest = text[: file_met.start()] if file_met else text
    form_met = FORM.search(rest)
    rest = FORM.sub(" ", rest)
    form = (form_met["form"].lower() if form_met else "") or (Path(file).suffix.lower().lstrip(".") if file else "")
    form = {"htm": "html", "md": "markdown"}.get(form, form)
    return file, form, " ".join(rest.lower().split())


def _rules(name: str, talk: Conversation) -> tuple[str, tuple[Rule, ...]]:
    """The name a sheet goes by and its rules: a topic, a family, all; with no name, the topic last spoken of."""
    if not name:
        name = talk.context.request.topic if talk.context.request is not None else talk.practice.topic or "everything"
    if name in ("everything", "anything", "all", "all topics"):
        return "everything", tuple(talk.mind.rules.values())
    rules = rules_named(name, talk)
    if not rules or rules[0].family == name:
        return name, rules
    return rules[0].topic, rules[:1]


def _shown(sheet: Sheet) -> Answer:
    """The sheet on the screen: the questions, then the answers."""
    asked = [f"{number}. {one.question}" for number, one in enumerate(sheet.exercises, 1)]
    keys = [f"  {number}. {key(one)[0]}" for number, one in enumerate(sheet.exercises, 1)]
    made = told("worksheet", _headline(sheet), [*asked, "Answers", *keys, f"The same sheet again: {sheet.again}"], "worksheet",
                next=(f"{sheet.again} as HTML to worksheet-{sheet.number}.html",))  # fmt: skip
    return made


def _headline(sheet: Sheet) -> str:
    return f"{sheet.title}: worksheet {sheet.number}, {len(sheet.exercises)} exercises."


def _written(sheet: Sheet, file: str, form: str) -> Answer:
    """The sheet in a file. Only a worksheet is ever written over."""
    writer, mark = (html.as_html, html.MARK) if form == "html" else (markdown.as_markdown, markdown.MARK)
    path = Path(file or f"worksheet-{sheet.number}{ENDINGS[form]}").expanduser()
    try:
        if path.exists() and not (path.is_file() and mark in path.read_text("utf-8", "replace")[:2000]):
            return Answer("impossible", topic="worksheet", message=f"{path} is there already and is no worksheet, so I leave it as it is. "
                          f"Give another name, such as: {sheet.again} as {form} to worksheet-{sheet.number}{ENDINGS[form]}")  # fmt: skip
        path.write_text(writer(sheet), encoding="utf-8")
    except OSError as error:
        return Answer("impossible", topic="worksheet", message=f"The worksheet cannot be written to {path}: {error.strerror or error}. "
                      f"Give a file in a folder of your own, such as: {sheet.again} as {form} to worksheet-{sheet.number}{ENDINGS[form]}")  # fmt: skip
    said = f"Worksheet {sheet.number} is in {path}: {len(sheet.exercises)} exercises on {sheet.title[:1].lower()}{sheet.title[1:]}, the answers on their own page."
    return Answer("answered", topic="worksheet", headline=said, results=(Result("file", str(path), "text", str(path)),), text=(f"The same sheet again: {sheet.again}",))
