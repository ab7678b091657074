"""Worksheets asked for in a line: which number, how many exercises, of what, shown or written to a file."""

from __future__ import annotations

import random
import re
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from rules.engine.answer import Answer, Result

from ..files import named, write
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
FILE = re.compile(
    r"""\b(?:to|into|in file|in the file)\s+(?P<file>"[^"]+"|'[^']+'|\S+\.(?:html?|md|markdown))"""
    r"(?P<replacing>,? (?:and )?(?:replace|replacing|overwriting) it)?\s*$",
    re.IGNORECASE,
)
FORM = re.compile(r"\bas (?:an? )?(?P<form>html|markdown|md)(?: page| file)?\b", re.IGNORECASE)
NUMBER = re.compile(r"\bwork ?sheet (?:number |no\.? )?(?P<number>\d{1,9})\b")
COUNT = re.compile(r"\b(?:of|with)? ?(?P<count>\d{1,4}) ?(?:questions|exercises|sums|problems)?\b")
TOPIC = re.compile(r"\b(?:on|about|for|of|in) (?P<topic>[a-z].*)$")
SYSTEMS = {" in inches": "in", " in metric": "cm", " in cm": "cm", " in centimetres": "cm"}
ENDINGS = {"html": ".html", "markdown": ".md"}


@dataclass(frozen=True, slots=True)
class Wish:
    """A worksheet as it was asked for. system: "in", "cm" or ""; form: "html", "markdown" or "" for the screen."""

    number: int
    count: int
    topic: str
    system: str
    file: str
    form: str


def sheet_asked(text: str, talk: Conversation) -> Answer:
    """The worksheet a line asks for, on the screen or in a file."""
    wish = wish_of(text, talk.habits.forced)
    if not 1 <= wish.count <= MOST:
        return unclear(
            f"A worksheet holds 1 to {MOST} exercises, not {wish.count}. Type, for example: worksheet of 10 on binding"
        )
    name, rules = _rules(wish.topic, talk)
    if not rules:
        near = nearest(name, talk)
        example = near[0] if near else next(iter(talk.mind.rules))
        return unclear(f"I know no topic called “{name}”. Type, for example: worksheet of 10 on {example}", near)
    sheet = make(wish.number, wish.count, sums_of(rules, talk), name, wish.system, talk)
    if not sheet.exercises:
        return unclear(nothing_to_practise(name))
    return _written(sheet, wish.file, wish.form) if wish.form else _shown(sheet)


def wish_of(text: str, system: str) -> Wish:
    """What a line asks for; a number of its own where none is typed."""
    file, form, rest = _where(text)
    for words, meant in SYSTEMS.items():
        if rest.endswith(words):
            rest, system = rest.removesuffix(words), meant
    met = NUMBER.search(rest)
    number = int(met["number"]) if met else random.SystemRandom().randint(*NUMBERS)
    rest = rest[met.end() :] if met else rest.partition("sheet")[2]
    met = COUNT.search(rest)
    count = int(met["count"]) if met else USUAL
    topic = TOPIC.search(COUNT.sub(" ", rest, count=1) if met else rest)
    return Wish(number, count, stripped(topic["topic"]) if topic else "", system, file, form)


def _where(text: str) -> tuple[str, str, str]:
    """(file, form, the rest of the line in lower case); the form may follow from the file's ending."""
    text = " ".join(text.split()).rstrip(" !?").removesuffix(".")
    file_met = FILE.search(text)
    file = f"{file_met['file']}{file_met['replacing'] or ''}" if file_met else ""
    rest = text[: file_met.start()] if file_met else text
    form_met = FORM.search(rest)
    rest = FORM.sub(" ", rest)
    form = (form_met["form"].lower() if form_met else "") or (named(file)[0].suffix.lower().lstrip(".") if file else "")
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
    return told(
        "worksheet",
        _headline(sheet),
        [*asked, "Answers", *keys, f"The same sheet again: {sheet.again}"],
        "worksheet",
        next=(f"{sheet.again} as HTML to worksheet-{sheet.number}.html",),
    )


def _headline(sheet: Sheet) -> str:
    return f"{sheet.title}: worksheet {sheet.number}, {len(sheet.exercises)} exercises."


def _written(sheet: Sheet, file: str, form: str) -> Answer:
    """The sheet in a file. Only a worksheet is ever written over."""
    writer, mark = (html.as_html, html.MARK) if form == "html" else (markdown.as_markdown, markdown.MARK)
    usual = f"worksheet-{sheet.number}{ENDINGS[form]}"
    path, replacing = named(file or usual)
    instead = f"{sheet.again} as {form} to {usual}"
    if trouble := write(path, writer(sheet), replacing or _is_sheet(path, mark)):
        message = f"{trouble}{'' if trouble.endswith('.') else '.'} Such as: {instead}"
        return Answer("impossible", topic="worksheet", message=message)
    topic, exercises = f"{sheet.title[:1].lower()}{sheet.title[1:]}", len(sheet.exercises)
    said = (
        f"Worksheet {sheet.number} is in {path}: {exercises} exercises on {topic}, the answers on a page of their own."
    )
    results = (Result("file", str(path), "text", str(path)),)
    again = f"The same sheet again: {sheet.again}"
    return Answer("answered", topic="worksheet", headline=said, results=results, text=(again,))


def _is_sheet(path: Path, mark: str) -> bool:
    """Whether a file is there that is a worksheet of ours, which may be written over."""
    try:
        with path.open(encoding="utf-8", errors="replace") as stream:
            return mark in stream.read(2000)
    except (OSError, ValueError):
        return False
