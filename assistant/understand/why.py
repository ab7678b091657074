"""Why, of one part of a plan: "why 19 in?", "why the lining?"."""

from __future__ import annotations

from dataclasses import replace

from rules.engine.answer import Answer, Result

from .tokens import FILLERS, tokens
from .values import Line

ASKING = ("why", "explain")


def of_part(plan: Answer, line: Line) -> Answer | None:
    """The part of a plan that a line asks why of, by a number it holds or by its words, else the whole; None when it
    does not ask why.
    """
    if not line.words or line.words[0] not in ASKING or not plan.parts:
        return None
    numbers = {_folded(value.text) for value in line.values}
    for _, part in plan.parts:
        for result in part.results:
            if numbers & {_folded(result.text), _folded(result.other)}:
                return _headed(part, result)
    words = {word for word in line.words if word not in FILLERS and word not in ASKING}
    scored = [(_score(title, part, words), -place, part) for place, (title, part) in enumerate(plan.parts)]
    best = max(scored, key=lambda entry: entry[:2])
    return best[2] if best[0] else whole(plan)


def whole(plan: Answer) -> Answer:
    """A plan with the working of all its parts, in place of the parts."""
    return replace(plan, parts=(), cut=None, order=())


def _folded(text: str) -> str:
    return text.lower().replace(" ", "")


def _headed(part: Answer, result: Result) -> Answer:
    other = f" ({result.other})" if result.other else ""
    return replace(part, headline=f"{result.name[:1].upper()}{result.name[1:]}: {result.text}{other}.")


def _score(title: str, part: Answer, words: set[str]) -> int:
    """How many of the words are in a part's title (twice over) or in the names of its results."""
    named = {word for result in part.results for word in tokens(result.name)}
    return 2 * len(words & set(tokens(title))) + len(words & named)
