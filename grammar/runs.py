"""A run of measures and what stands between them, read as far as each measure alone goes.

The parser hands over a flat run such as [about] [5 ft] [3] [by] [22 sts] [to] [10 cm]. Here tokens become measures, and
what belongs to one measure is taken in: signs, "about", smaller units (5 ft 3), rates (a metre). What joins several
measures is for grammar.joins.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from fractions import Fraction
from typing import NamedTuple

from lark import Token, Tree

from grammar.query import Chunk, Measure, Part, Span
from grammar.values import number, spelled
from grammar.vocabulary import Vocabulary
from grammar.words import Typed, split

_SIGNS = {"+": "+", "-": "-", "plus": "+", "minus": "-"}
_ABOUT = frozenset({"about", "around", "roughly", "approx", "approx.", "approximately", "circa", "nearly", "~"})
# After "5 ft 3", these may follow without the 3 being a count of them.
_NOT_COUNTED = re.compile(
    r"\s*(?:$|[^\sa-z]|(?:wide|long|deep|high|tall|thick|and|or|of|by|x|for|from|in|to|with|a|an|each|per|the|is|at|i|im|my|mine|so|was|are)(?![a-z]))"
)


class Joint(NamedTuple):
    """Something between measures: its plain text, and where that stands in the plain line. unit: of a rate."""

    text: str
    start: int
    end: int
    unit: str = ""


Element = Measure | Span | Joint


class Line(NamedTuple):
    """What is needed to cut chunks from a line: as typed, made plain, and the words it was read by."""

    typed: Typed
    plain: str
    vocabulary: Vocabulary

    def words(self, start: int, end: int) -> Iterator[Chunk]:
        """A stretch of the plain line as words and marks."""
        return split(self.typed, self.plain[start:end], start, self.vocabulary)


def elements(line: Line, run: Tree[Token]) -> list[Element]:
    """The measures of a run with their own small words taken in, and the joints left between them."""
    done: list[Element] = []
    for branch in run.children:
        if isinstance(branch, Token):
            done.append(_joint(branch, branch))
        elif branch.data == "quantity":
            add_measure(line, done, quantity(line, branch))
            if len(branch.children) == 3:
                unit = branch.children[2]
                done.append(_joint(unit, unit))  # type: ignore[arg-type]
        elif branch.data == "more":
            _add_more(line, done, branch.children[0])  # type: ignore[arg-type]
        elif branch.data == "rate":
            _add_rate(line, done, branch.children)  # type: ignore[arg-type]
        else:
            done.append(_joint(branch.children[0], branch.children[0]))  # type: ignore[arg-type]
    return done


def quantity(line: Line, branch: Tree[Token], widths: bool = True) -> Element:
    """One number with its unit; a joint when it is no number after all (2nd). widths: 44/45 is a span, not a share."""
    tokens: list[Token] = [each.children[0] if isinstance(each, Tree) else each for each in branch.children]  # type: ignore[misc]
    first, last = tokens[0], tokens[-1]
    figure, unit = first, ""
    if first.type == "CURRENCY":
        figure = last = tokens[1]  # in "£3 in all", the "in" is no unit
        unit = line.vocabulary.prefix_currencies[first.rstrip()]
    elif last is not first:
        unit = unit_name(line.vocabulary, last)
    value = number(figure.type, figure)
    if value is None or (figure.type == "AN" and last.rstrip() in line.vocabulary.things):
        return _joint(first, last)
    text, start, end = line.typed.span(first.start_pos, last.start_pos + len(last.rstrip()))  # type: ignore[arg-type,operator]
    if widths and figure.type == "RATIO" and (pair := _two_widths(figure)):
        low, high = (Measure((Part(width, unit),), text, start, end) for width in pair)
        return Span(low, high, text, start, end)
    return Measure((Part(value, unit),), text, start, end, None, "", figure.type in ("SPELLED", "AN", "PORTION_OF"))


def unit_name(vocabulary: Vocabulary, token: str) -> str:
    """The canonical name of a unit as it stands after a number: in, -inch, of a yard."""
    spelled = " ".join(token.split())
    known = vocabulary.units.get(spelled)
    return known or vocabulary.units[re.sub(r"^-?(?:of (?:an? |the )?)?", "", spelled)]


def _two_widths(figure: str) -> tuple[Fraction, Fraction] | None:
    """44/45 is cloth of one width or the other; 2/28 and 80/12 are not spans."""
    low, high = (Fraction(side) for side in figure.split("/"))
    return (low, high) if low < high <= 2 * low else None


def _joint(first: Token, last: Token, unit: str = "") -> Joint:
    start = first.start_pos or 0
    end = (last.start_pos or 0) + len(last.rstrip())
    return Joint(" ".join(first.split()), start, end, unit)


def add_measure(line: Line, done: list[Element], found: Element) -> None:
    """Put a measure after those done, with the signs before it, or as the smaller part of the last."""
    if isinstance(found, Measure):
        while done and isinstance(done[-1], Joint) and (changed := _before(line, done, found)):
            found = changed
            done.pop()
        if done and isinstance(done[-1], Measure) and (together := _together(line, done[-1], found)):
            done[-1] = together
            return
    done.append(found)


def _before(line: Line, done: list[Element], measure: Measure) -> Measure | None:
    """The measure with the sign or the "about" that stands last in done, if it is one."""
    joint = done[-1]
    assert isinstance(joint, Joint)
    text, start, end = line.typed.text, line.typed.span(joint.start, joint.end)[1], measure.end
    if joint.text in _ABOUT:
        return replace(measure, about=True, text=text[start:end], start=start)
    follows = len(done) > 1 and not isinstance(done[-2], Joint)
    glued = joint.start > 0 and line.plain[joint.start - 1].isalnum()
    if joint.text in _SIGNS and not measure.sign and not follows and not glued:
        return replace(measure, sign=_SIGNS[joint.text], text=text[start:end], start=start)
    return None


def _together(line: Line, large: Measure, small: Measure) -> Measure | None:
    """5 ft and 3 in as one measure, when they stand side by side and go together; else None."""
    if large.per or small.sign or small.about or small.spelled != large.spelled:
        return None
    vocabulary, unit = line.vocabulary, large.parts[-1].unit
    part = small.parts[0]
    if not part.unit and unit in vocabulary.tails and _is_tail(line, large, small):
        part = Part(part.value, vocabulary.tails[unit])
    if part.unit not in vocabulary.smaller.get(unit, ()) or part.value >= vocabulary.room.get((unit, part.unit), part.value + 1):
        return None
    text = line.typed.text[large.start : small.end]
    return Measure((*large.parts, part), text, large.start, small.end, None, large.sign, large.spelled, large.about)


def _is_tail(line: Line, large: Measure, small: Measure) -> bool:
    """Whether a bare number is the inches of 5 ft 3 or the centimetres of 1 m 20, and not a count of things."""
    value = small.parts[0].value
    if line.vocabulary.tails[large.parts[-1].unit] != "in" and not (value >= 10 and (small.spelled or len(small.text) == 2)):
        return False  # 1 m 20, one metre twenty; "1 m 5" is no 1.05 m
    if line.vocabulary.tails[large.parts[-1].unit] == "in" and small.spelled and value < 12:
        return True  # "five foot two" is so said of nothing but a height
    follows = line.typed.text[small.end : small.end + 20].lower()
    return value < 100 and large.parts[-1].value.denominator == 1 and bool(_NOT_COUNTED.match(follows))


def _add_more(line: Line, done: list[Element], more: Token) -> None:
    """ "a yard" and then "and a half" is a yard and a half."""
    last = done[-1] if done else None
    if not isinstance(last, Measure) or len(last.parts) > 1 or not last.unit or last.per:
        done.append(_joint(more, more))
        return
    start = more.start_pos or 0
    end = line.typed.span(start, start + len(more.rstrip()))[2]
    part = Part(last.parts[0].value + spelled(more), last.unit)
    done[-1] = replace(last, parts=(part,), text=line.typed.text[last.start : end], end=end)


def _add_rate(line: Line, done: list[Element], tokens: list[Token]) -> None:
    """ "a metre" after a price makes it a rate; after a joint it is one metre; else it is words."""
    rate = tokens[0]
    if len(tokens) == 1:
        done.append(_joint(rate, rate))
        return
    unit = unit_name(line.vocabulary, tokens[1])
    start, end = rate.start_pos or 0, (tokens[1].start_pos or 0) + len(tokens[1].rstrip())
    text, begins, ends = line.typed.span(start, end)
    last = done[-1] if done else None
    if isinstance(last, Measure) and last.unit == unit and rate.startswith("to "):
        done.append(Joint("to", start, start + 2))  # half an inch to an inch is a span
        text, begins, ends = line.typed.span(start + 3, end)
        last = done[-1]
    if isinstance(last, Measure) and last.per is None:
        done[-1] = replace(last, per=Part(Fraction(1), unit), text=line.typed.text[last.start : ends], end=ends)
    elif isinstance(last, Joint) and rate.rstrip().removeprefix("to ") in ("a", "an"):
        add_measure(line, done, Measure((Part(Fraction(1), unit),), text, begins, ends, spelled=True))
    else:
        done.append(_joint(rate, tokens[1]))
