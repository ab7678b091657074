"""Why, of one part of a plan: "why 19 in?", "why the lining?"."""

from __future__ import annotations

from dataclasses import replace

from rules.engine.answer import Answer, Result
from rules.engine.units import SIGNS

from .tokens import FILLERS, tokens
from .values import LENGTHS, Line

ASKING = ("why", "explain")
COSTS = frozenset(("cost", "pay", "money", "price"))


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


def of_result(plan: Answer, line: Line) -> Answer | None:
    """The part of a plan, headed by the result that a line's words ask for ("how many panels?"); None when none is."""
    words = {word for word in line.words if word not in FILLERS}
    if words & COSTS:
        costs = [result for result in plan.results if result.unit in SIGNS]
        rest = (one for one in plan.results if one not in costs)
        return replace(plan, results=(*costs[::-1], *rest)) if costs else None
    scored = [
        (_about(title, result, words, line), -place, part, result)
        for place, (title, part) in enumerate(plan.parts)
        for result in part.results
    ]
    best = max(scored, key=lambda entry: entry[:2], default=None)
    return _headed(best[2], best[3]) if best is not None and best[0] else None


def _about(title: str, result: Result, words: set[str], line: Line) -> int:
    """How well a result of a part answers to the words; "how many" is no length, "how long" no count."""
    met = len(words & set(tokens(result.name))) + len(words & set(tokens(title)))
    many = "many" in line.words
    return 2 * met + (many != (result.unit in LENGTHS)) if met else 0


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
