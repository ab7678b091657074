"""What joins measures: x and by make a size, to a span, commas a series, "22 sts to 10 cm" a rate."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from grammar.query import Chunk, Measure, Part, Series, Size, Span, Sweep
from grammar.runs import Element, Joint, Line

_TIMES = frozenset({"x", "*", "by"})
_TO = frozenset({"to", "up to", "thru", "through", "-"})
_OVER = frozenset({"to", "over", "across", "per", "in", "for", "=", "/"})
_SWATCHES = frozenset({("cm", Fraction(10)), ("in", Fraction(4)), ("in", Fraction(1)), ("cm", Fraction(1))})
_TO_ONE = frozenset({"to", ":"})
_STEP = frozenset({"by", "every", "in steps of", "by steps of"})
_BESIDE = frozenset({"and", "&", ",", "x", "by", "/"})
_LIST = frozenset({",", ", and", ", or", "and", "or"})


def joined(line: Line, run: list[Element]) -> list[Chunk]:
    """The chunks of a run: the longest joining that begins at each measure, and what is left as words and marks."""
    if len(run) == 1 and not isinstance(run[0], Joint):
        return [run[0]]
    chunks: list[Chunk] = []
    at = 0
    while at < len(run):
        first = run[at]
        if isinstance(first, Joint):
            chunks += line.words(first.start, first.end)
            at += 1
            continue
        found = _join(line, run, at) if isinstance(first, Measure) else None
        chunks += found[0] if found else [first]
        at = found[1] if found else at + 1
    return chunks


def _join(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """The chunks of a joining that begins here and where it ends, or None."""
    if len(run) - at < 3:
        return None
    for way in (_gauge, _ratio, _sweep_or_span, _size, _series):
        if found := way(line, run, at):
            return found
    return None


def _chain(run: list[Element], at: int, joints: frozenset[str], most: int = 100) -> list[Measure]:
    """The measures from here on that are joined by any of some joints, at most so many that no line is slow to read."""
    first = run[at]
    chain = [first] if isinstance(first, Measure) else []
    while at + 2 < len(run) and len(chain) < most:
        joint, after = run[at + 1], run[at + 2]
        if not (isinstance(joint, Joint) and joint.text in joints and isinstance(after, Measure)):
            break
        chain.append(after)
        at += 2
    return chain


def _shared(measures: list[Measure]) -> tuple[Measure, ...]:
    """The unit, or the "a metre", typed once, on the last, given to each; as they are when they differ already."""
    last = measures[-1]
    if all(each.bare for each in measures[:-1]):
        return (*(_alike(each, last) for each in measures[:-1]), last)
    if last.per and all(each.unit == last.unit and each.per is None for each in measures[:-1]):
        return (*(_alike(each, last) for each in measures[:-1]), last)
    return tuple(measures)


def _alike(measure: Measure, last: Measure) -> Measure:
    return replace(measure, parts=(Part(measure.parts[0].value, last.unit),), per=last.per)


def _cut(line: Line, first: Measure, last: Measure) -> tuple[str, int, int]:
    return line.typed.text[first.start : last.end], first.start, last.end


def _counted(line: Line, measure: Measure) -> bool:
    return measure.unit in line.vocabulary.counted and measure.per is None


def _gauge(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """22 sts to 10 cm; 22 sts and 30 rows to 10 cm: what is counted becomes a rate."""
    counts = _chain(run, at, _BESIDE, 2)
    if len(counts) == 2 and not (_counted(line, counts[1]) and counts[0].unit != counts[1].unit):
        counts = counts[:1]
    if not _counted(line, counts[0]):
        return None
    if both := _rate_of_both(line, run, at):
        return both
    joint_at = at + 2 * len(counts) - 1
    ends = _chain(run, joint_at - 1, _OVER, 2)
    if len(ends) < 2 or ends[1].bare or ends[1].per or ends[1].unit in line.vocabulary.counted or len(ends[1].parts) > 1:
        return None
    if run[joint_at].text == "for" and (ends[1].unit, ends[1].value) not in _SWATCHES:
        return None  # "how many for 24 stitches for 30 cm" tells no tension; "24 stitches for 10 cm" does
    last = _rate(line, counts[-1], ends[1])
    if len(counts) == 1:
        return [last], joint_at + 2
    joint = run[at + 1]
    assert isinstance(joint, Joint)
    first = replace(counts[0], per=ends[1].parts[0])
    return [first, *line.words(joint.start, joint.end), last], joint_at + 2


def _rate_of_both(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """5 sts and 7 rows to the inch: the rate said once is of both."""
    first, joint, last = run[at : at + 3]
    if not (isinstance(first, Measure) and isinstance(joint, Joint) and isinstance(last, Measure) and joint.text in _BESIDE):
        return None
    if last.per is None or last.unit not in line.vocabulary.counted or last.unit == first.unit:
        return None
    return [replace(first, per=last.per), *line.words(joint.start, joint.end), last], at + 3


def _rate(line: Line, measure: Measure, over: Measure) -> Measure:
    text, start, end = _cut(line, measure, over)
    return replace(measure, per=over.parts[0], text=text, start=start, end=end)


def _ratio(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """2.5 to 1; 16.5 to 10 cm, a tension without its stitches, which is more than the length and so no span."""
    both = _chain(run, at, _TO_ONE, 2)
    if len(both) < 2 or not both[0].bare or both[1].per or len(both[1].parts) > 1:
        return None
    first, over = both
    to_one = over.bare and over.value == 1
    to_swatch = (over.unit, over.value) in (("cm", Fraction(10)), ("in", Fraction(4))) and first.value > over.value
    return ([_rate(line, first, over)], at + 3) if to_one or to_swatch else None


def _sweep_or_span(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """24 to 40 in; 24 to 40 in by 2. High to low is neither."""
    ends = _chain(run, at, _TO, 2)
    if len(ends) < 2:
        return None
    low, high = _shared(ends)
    if "%" in (low.unit, high.unit) and low.unit != high.unit:
        return None  # "8 cm to 120 %" has no from and to
    if low.unit == high.unit and not low.value < high.value:
        return None
    steps = _chain(run, at + 2, _STEP, 2)
    if len(steps) > 1:
        low, high, step = _shared([*ends, steps[1]]) if high.bare else (low, high, _stepped(high, steps[1]))
        return [Sweep(low, high, step, *_cut(line, low, step))], at + 5
    return [Span(low, high, *_cut(line, low, high))], at + 3


def _stepped(high: Measure, step: Measure) -> Measure:
    return replace(step, parts=(Part(step.parts[0].value, high.unit),)) if step.bare else step


def _size(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """60 x 72 in; 30 x 70 x 10 cm."""
    sides = _chain(run, at, _TIMES)
    if len(sides) < 2 or any(side.unit == "%" for side in sides):
        return None  # "by 150 %" is how much, not how wide
    return [Size(_shared(sides), *_cut(line, sides[0], sides[-1]))], at + 2 * len(sides) - 1


def _series(line: Line, run: list[Element], at: int) -> tuple[list[Chunk], int] | None:
    """5, 6, 7 and 8; 44 or 60 in. Two joined by "and" are two measures, for it may mean anything."""
    members = _chain(run, at, _LIST)
    after = at + 2 * len(members) - 1
    members = members if after + 1 >= len(run) or not _joins_on(run, after) else members[:-1]
    after = at + 2 * len(members) - 1
    joints = [joint.text for joint in run[at:after] if isinstance(joint, Joint)]
    closing = next((number for number, joint in enumerate(joints) if joint.endswith(("and", "or")) and number > 0), None)
    if closing is not None and len(members) > closing + 2:  # "24, 26 and 28 in, 1 in wide": what follows the "and" closes it
        members, joints = members[: closing + 2], joints[: closing + 1]
        after = at + 2 * len(members) - 1
    either = any(joint.endswith("or") for joint in joints)
    if len(members) < 2 or (len(members) == 2 and not either):
        return None
    shared = _shared(members)
    if len({(each.unit, each.per) for each in shared}) > 1:
        return None
    return [Series(shared, either, *_cut(line, members[0], members[-1]))], after


def _joins_on(run: list[Element], after: int) -> bool:
    """Whether the last member of a list begins a joining of its own: 2, 3, 4 x 5."""
    joint = run[after]
    return isinstance(joint, Joint) and joint.text in (_TIMES | _OVER | _TO) and after + 1 < len(run)
