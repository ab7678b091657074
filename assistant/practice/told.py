"""Answers that are read rather than reckoned, and small pieces of English that practice shares."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

from rules.engine.answer import Answer, Line, Result


def told(
    topic: str,
    headline: str,
    paragraphs: Sequence[str] = (),
    name: str = "explanation",
    sources: tuple[str, ...] = (),
    next: tuple[str, ...] = (),
) -> Answer:
    """An answer in words. name: what the words are, in JSON; the rest as the Answer has it."""
    whole = "\n".join((headline, *paragraphs))
    results = (Result(name, whole, "text", whole),)
    return Answer(
        "answered", topic=topic, headline=headline, results=results, text=tuple(paragraphs), sources=sources, next=next
    )


def unclear(message: str, choices: Iterable[str] = ()) -> Answer:
    """A line that asks for practice of something that is not known."""
    return Answer("unclear", message=message, choices=tuple(choices))


def unreadable(question: str) -> Answer:
    """A line amid practice that is neither an answer nor anything else."""
    return Answer(
        "unclear",
        question=question,
        message="I cannot read an answer in that. Type a number with its unit, such as 62 cm; "
        "or hint, tell me, or stop to end the practice.",
    )


def capital(text: str) -> str:
    return text[:1].upper() + text[1:]


def sentence(text: str) -> str:
    """With a capital and a full stop."""
    return capital(text) + ("" if text.endswith((".", "?", "!", ":")) else ".")


def listed(words: Sequence[str], last: str = "and") -> str:
    """Words in a row: "a, b and c"."""
    return f"{', '.join(words[:-1])} {last} {words[-1]}" if len(words) > 1 else "".join(words)


def worked(line: Line) -> str:
    """A step of the working in one line: "Add the four sides: 2 × (60 in + 72 in) = 264 in."."""
    numbers = line.numbers if line.numbers != line.result else ""
    sum_ = f"{numbers} = {line.result}" if numbers and line.result else numbers or line.result
    return sentence(f"{line.step.rstrip('.:')}: {sum_}" if sum_ else line.step)
