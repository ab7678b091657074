"""Chunks in a short form that a table of expectations can be read in: <2 1/2 in>, [60 in x 72 in], 22 st / 10 cm."""

from __future__ import annotations

from fractions import Fraction

from grammar.query import Chunk, Mark, Measure, Part, Query, Series, Size, Span, Sweep, Word


def shown(query: Query) -> str:
    return " ".join(_chunk(chunk) for chunk in query.chunks)


def measure(of: Measure) -> str:
    text = of.sign + ("~" if of.about else "") + " + ".join(_part(part) for part in of.parts)
    return f"{text} / {_part(of.per)}" if of.per else text


def _part(part: Part) -> str:
    return f"{_number(part.value)} {part.unit}".rstrip()


def _number(value: Fraction) -> str:
    whole, rest = divmod(value, 1)
    if not rest:
        return str(whole)
    return f"{whole} {rest}" if whole else str(rest)


def _chunk(chunk: Chunk) -> str:
    match chunk:
        case Measure():
            return f"<{measure(chunk)}>"
        case Size(sides):
            return f"[{' x '.join(map(measure, sides))}]"
        case Span(low, high):
            return f"[{measure(low)} to {measure(high)}]"
        case Sweep(first, last, step):
            return f"[{measure(first)} to {measure(last)} by {measure(step)}]"
        case Series(members, alternatives):
            return f"[{(' or ' if alternatives else ', ').join(map(measure, members))}]"
        case Word():
            return chunk.lower
        case Mark():
            return chunk.text.replace("\n", "\\n")
