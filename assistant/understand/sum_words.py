"""A line in words that is a sum of measures, put as the grammar of sums has it: "add 2 m and 30 cm", "take 5 in from 3 ft".

Every letter that stays keeps its place, so that what is shown of a measure is what was typed.
"""

from __future__ import annotations

import re
from functools import lru_cache

from grammar import Reader, Sum

from .tokens import stem
from .values import Line

# A question about what was reckoned: "is what", "- what's that in cm".
_ASKS_OF_IT = re.compile(
    r"[\s,;:.=–—-]*\b(?:(?:is|are|makes?|equals?|comes? to)\s+(?:what|how much|how many)"
    r"|what(?:'s|’s|s|\s+is)\s+(?:left|over|left\s+over)"
    r"|(?:what(?:'s|’s|s|\s+is|\s+does)?|how\s+(?:much|long))(?:\s+is)?\s+(?:that|it|this)(?:\s+(?:come to|make))?)"
    r"(?=\s+(?:in|as)\b|[?.!\s]*$)",
    re.IGNORECASE,
)
# "..., in inches": the stop before the unit that is wanted.
_STOP_BEFORE_UNIT = re.compile(r"[,;:.–—]+(?=\s+(?:in|as)\s+[a-z]+(?:\s+please)?\W*$)", re.IGNORECASE)
_ASIDE = re.compile(r"\b(?:for me|(?:the\s+)?answer|(?:the\s+)?result)\b", re.IGNORECASE)
_ADD = re.compile(r"\s*(?:please\s+|(?:can|could)\s+you\s+)?add(?:\s+up|\s+together)?\b", re.IGNORECASE)
_TOGETHER = re.compile(
    r"\b(?:(?:added|put|joined|sewn|laid)\s+)?(?:(?:al)?together|in\s+all|all\s+told|in\s+total|end\s+to\s+end)\b", re.IGNORECASE
)
_MAKE = re.compile(r"(\s*(?:what|how\s+much)\s+(?:do|does|will)\b)(.*?)(\b(?:make|come\s+to|total)\b)", re.IGNORECASE | re.DOTALL)
_TAKE = re.compile(r"(\s*(?:please\s+)?take\s)(.*)(\s(?:from|off|away\s+from)\s)", re.IGNORECASE | re.DOTALL)
# What is to be added, in a line that says more: "can you add 2 yd 8 in + 50 cm for me, I keep getting ...".
_CLAUSE = re.compile(r"\badd\b(?:(?!\bfor me\b)[^,.?;:]|[.,](?=\d))+", re.IGNORECASE)
_PERCENT = re.compile(r"%|per\s*cent", re.IGNORECASE)
# "and" between two measures; in "two and a quarter" it is part of a number.
_PORTION = r"(?:an?\s+|one\s+|three\s+|two\s+)?(?:half|third|quarter|eighth|fifth|tenth|sixteenth)"
_JOINS = re.compile(rf"\b(?:and|with another|with|to)\b(?!\s+{_PORTION})|,(?=\s)|&", re.IGNORECASE)


_ASKING = frozenset(
    "what what's whats how much many long is are do does will make makes come comes to total that it this can could you please add up"
    " added put joined sewn laid together altogether in all told end take from with equal equals as & n"
    " left over whats for me the answer result".split()
)


def read_sum(line: Line, reader: Reader) -> Sum | None:
    """The sum that a whole line is, or a part of it that adds; None for most lines, which hold a word that no sum has."""
    words, known = line.words, _known(reader)
    if not line.values:
        return None
    text = line.text
    if any(word not in known for word in words if word[:1].isalpha()):
        if "add" not in words or (inner := _CLAUSE.search(text)) is None:
            return None
        text = " " * inner.start() + inner[0].ljust(len(text) - inner.start())
    found = reader.read_sum(only_the_sum(text))
    return found if isinstance(found, Sum) else None


@lru_cache(maxsize=4)
def _known(reader: Reader) -> frozenset[str]:
    """Every word that a line with a sum may hold, folded."""
    return frozenset(stem(word) for word in (*reader.sum_words(), *_ASKING)) | {"i", "s"}


def only_the_sum(text: str) -> str:
    """A text with blanks for what only asks, and signs for the words that add or take away; every position as it was."""
    text = _STOP_BEFORE_UNIT.sub(_blank, _ASKS_OF_IT.sub(_blank, _ASIDE.sub(_blank, text)))
    if _PERCENT.search(text):
        return text  # a share of something is added to it otherwise than a length is
    if taken := _TAKE.match(text):
        begins, what, link = taken.groups()
        return "-".rjust(len(begins)) + what + "+".center(len(link)) + text[taken.end() :]
    if made := _MAKE.match(text):
        begins, what, end = made.groups()
        return " " * len(begins) + _added(what) + " " * len(end) + text[made.end() :]
    if _ADD.match(text):
        return _added(_TOGETHER.sub(_blank, _ADD.sub(_blank, text, count=1)))
    if _TOGETHER.search(text):
        return _added(_TOGETHER.sub(_blank, text))
    return text


def _added(text: str) -> str:
    """The words between measures as signs that add."""
    return _JOINS.sub(lambda found: "+".center(len(found[0])), text)


def _blank(found: re.Match[str]) -> str:
    return " " * len(found[0])
