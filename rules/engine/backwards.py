"""A rule worked for any of its inputs: from a result the maker states to the input that gives it, safe side first."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from . import formula
from .answer import Line
from .declare import Rule
from .invert import OTHER, Bound, Peeler, unround
from .kinds import LENGTH
from .known import AnyValue, Known, NoValue, Unpeelable
from .measurable import FINER, WHOLE, candidates, distance, fits, step_of
from .puzzle import Puzzle, any_will_do, out_of_sense, sorry
from .request import Number, Request
from .rounding import snap
from .run import Impossible, Needs


@dataclass(frozen=True, slots=True)
class Found:
    """The unknown, found. value: rounded to what can be measured, on the safe side; exact: before; both in base units.

    lines: the working. checked: a sentence on the value put forward through the rule again. side: the value is the
    "most" that still gives the result, the "least", or the "only" one.
    """

    value: Number
    exact: Number
    lines: tuple[Line, ...]
    checked: str
    side: str


def find(
    rule: Rule, request: Request, unknown: str, target: str, largest: bool | None = None, tied: tuple[str, ...] = ()
) -> Found:
    """The value of an input with which the rule gives a stated result.

    request: target is among what it states, in base units; "" when the rule's own formula needs no result.
    largest: True for the largest value that still gives the result, False for the least, None for the safe one.
    tied: other inputs that have the same value as the unknown.
    Raises Needs for another input that is missing, Impossible when no value exists.
    """
    puzzle = _puzzle(rule, request, unknown, target or rule.answers[0], tied)
    if not target:
        return _by_inputs_alone(puzzle)
    try:
        return _on_side(puzzle, largest)
    except NoValue as error:
        raise Impossible(sorry(puzzle, str(error))) from error
    except AnyValue as error:
        raise Impossible(any_will_do(puzzle)) from error
    except OverflowError as error:
        raise Impossible(sorry(puzzle, "the numbers are too large to work with")) from error
    except Needs as error:
        if error.name:
            raise
        label = puzzle.step.shown_label
        raise Impossible(f"The {label} does not come up with these choices. Ask for another.") from error


def _on_side(puzzle: Puzzle, largest: bool | None) -> Found:
    """The value on the safe side; when the other one is asked for, that, and then the result must be just as stated."""
    found = _solve(puzzle, None)
    wanted = found.side if largest is None else "most" if largest else "least"
    if found.side in (wanted, "only"):
        return found
    for side in ("most", "least"):
        found = _solve(puzzle, side)
        if found.side == wanted and _just_as_stated(puzzle, found.value):
            return found
    raise NoValue(f"there is no {'largest' if largest else 'smallest'} {puzzle.item.label} that gives just that")


def _just_as_stated(puzzle: Puzzle, value: Number) -> bool:
    got, run = puzzle.result(value), puzzle.known()
    return got is not None and bool(run.round_step(puzzle.step, got) == run.round_step(puzzle.step, puzzle.stated))


def _puzzle(rule: Rule, request: Request, unknown: str, target: str, tied: tuple[str, ...]) -> Puzzle:
    item, step = rule.input(unknown), rule.step(target)
    assert item is not None
    assert step is not None
    fixed = (unknown, *rule.no_unknown)
    stated = request.stated.get(target)
    in_words = stated is not None and isinstance(stated.value, str | tuple)
    if unknown in rule.no_unknown or not item.kind.is_number or in_words:
        others = [other.label for other in rule.inputs if other.kind.is_number and other.name not in fixed]
        hint = f"Ask for another of its numbers, such as the {others[0]}." if others else "Ask for its result instead."
        raise Impossible(f"The sum for {rule.topic} cannot be worked back to the {item.label}. {hint}")
    return Puzzle(rule, request, item, step, tied)


# -- the bound the result keeps to, and from it the unknown's --------------------------------------------------------


def _start(puzzle: Puzzle, side: str | None) -> Bound:
    """What the result may be before its own rounding. side: "most" or "least" to take that end of it, not the safe one.

    What is needed is rounded up, so the stated amount is the most it may be: a length in hand is no multiple of the
    shop's step. What can be got is rounded down, so the stated amount is the least.
    """
    how = puzzle.known().rounding(puzzle.step)
    direction = how.direction if how is not None else "near"
    safe = {"up": "most", "down": "least"}.get(direction, "only")
    if how is None or safe == "only":
        return Bound(puzzle.stated, side or "only")
    size = how.base_step()
    if side is not None and side != safe:
        return unround(Bound(snap(puzzle.stated, size, direction), side), size, direction)
    bound = Bound(puzzle.stated, safe)
    return unround(bound, size, direction) if puzzle.step.kind in WHOLE else bound


def _solve(puzzle: Puzzle, side: str | None) -> Found:
    start = _start(puzzle, side)
    known = puzzle.known()
    _say_start(puzzle, known, start)
    try:
        own = _by_own_formula(puzzle, known, start)
        if own is not None:
            return _finish(puzzle, known, start, own)
        peeler = Peeler(known, puzzle.step.name, start)
        bound = peeler.peel()
        turned = replace(start, want=OTHER[bound.want] if peeler.falls else bound.want)
        return _finish(puzzle, known, turned, bound)
    except Unpeelable:
        return _by_search(puzzle, start)
    except formula.NoAnswer as error:
        raise NoValue(str(error)) from error


def _say_start(puzzle: Puzzle, known: Known, start: Bound) -> None:
    if start.want == "only" or known.rounding(puzzle.step) is None:
        return
    may_be = f"may be {start.in_words()}" if start.want == "most" else f"must be {start.in_words()}"
    text = puzzle.show_result(start.value)
    known.say(f"Before it is rounded, the {puzzle.step.shown_label} {may_be} {text}", "", "", text)


def _by_own_formula(puzzle: Puzzle, known: Known, start: Bound) -> Bound | None:
    """The unknown by the formula the rule itself gives for it; None when it gives none for this result."""
    text = puzzle.rule.backwards.get(puzzle.item.name)
    if text is None:
        return None
    node = formula.read(text)
    run = puzzle.known(start.value)
    if puzzle.step.name not in formula.names(node) or run.hangs_on_unknown(node):
        return None
    value = run.evaluate(node)
    rises = puzzle.known(start.value * Fraction(1001, 1000)).evaluate(node) >= value
    known.lines += run.lines
    label = puzzle.item.label
    words, numbers = f"{label} = {run.words(node)}", run.numbers(node, "")
    known.say(f"Turn the sum round for the {label}", words, numbers, puzzle.show(value))
    return Bound(value, start.want if rises else OTHER[start.want], start.open)


def _by_inputs_alone(puzzle: Puzzle) -> Found:
    """The unknown by the rule's own formula when that takes other inputs only, and no stated result."""
    known = puzzle.known()
    node = formula.read(puzzle.rule.backwards[puzzle.item.name])
    exact = known.evaluate(node)
    label = puzzle.item.label
    known.say(f"Work out the {label}", f"{label} = {known.words(node)}", known.numbers(node, ""), puzzle.show(exact))
    if not known.allows(exact):
        raise Impossible(f"The {label} {out_of_sense(puzzle, exact)}. Change one of the other numbers.")
    value = snap(exact, step_of(puzzle.item.kind, puzzle.request.system_for(puzzle.item.kind)), "near")
    got = puzzle.result(value)
    if got is None:
        raise Impossible(f"With a {label} of {puzzle.show(value)} the sum does not come out. Change one of the others.")
    bound = Bound(exact, "only")
    return _found(puzzle, known, bound, value, got, Bound(got, "only"))


# -- put forward again ------------------------------------------------------------------------------------------


def _finish(puzzle: Puzzle, known: Known, start: Bound, bound: Bound) -> Found:
    """Round the unknown to what can be measured and put it forward again; raises NoValue when nothing fits."""
    if not known.allows(bound.value) and not bound.open:
        raise _outside(puzzle, known, bound)
    for value in candidates(puzzle, bound):
        got = puzzle.result(value) if known.allows(value) else None
        if got is not None and fits(puzzle, start, got):
            return _found(puzzle, known, bound, value, got, start)
    if bound.want == "only":
        return _nearest(puzzle, known, bound)
    if not known.allows(bound.value):
        raise _outside(puzzle, known, bound)
    raise NoValue(f"put forward again, {puzzle.show(bound.value)} does not give it")


def _outside(puzzle: Puzzle, known: Known, bound: Bound) -> Impossible:
    """The unknown's bound is no sensible value: then every sensible one keeps to it, or none does."""
    low, _ = known.limits()
    below = bound.value <= 0 if low is None else bound.value < low
    if bound.want == ("least" if below else "most"):
        return AnyValue("the bound lies outside")
    return NoValue(out_of_sense(puzzle, bound.value))


def _nearest(puzzle: Puzzle, known: Known, bound: Bound) -> Found:
    """No value gives the result quite: the one that comes nearest, when a little less and a little more lie astride."""
    step = step_of(puzzle.item.kind, puzzle.request.system_for(puzzle.item.kind))
    middle = snap(bound.value, step, "near")
    little = max(step, snap(bound.value, step * 20, "up") / 20)
    astride = [got for value in (middle - little, middle + little) if (got := puzzle.result(value)) is not None]
    tried = [(value, puzzle.result(value)) for value in (middle, middle - step, middle + step) if known.allows(value)]
    near = [(distance(got, puzzle.stated), value, got) for value, got in tried if got is not None]
    if not near or not astride or not min(astride) <= puzzle.stated <= max(astride):
        raise NoValue(f"put forward again, {puzzle.show(bound.value)} does not give it")
    if puzzle.request.largest and puzzle.step.kind is LENGTH:  # the largest block for at most 60 in: one that comes to 60 1/8 is too large
        run = puzzle.known()
        told = run.round_step(puzzle.step, puzzle.stated)
        near = [trial for trial in near if run.round_step(puzzle.step, trial[2]) <= told] or near
    _, value, got = min(near, key=lambda trial: trial[0])
    return _found(puzzle, known, bound, value, got, bound)


def _found(puzzle: Puzzle, known: Known, bound: Bound, value: Number, got: Number, start: Bound) -> Found:
    shown, exact = puzzle.show(value), puzzle.show(bound.value)
    if shown != exact:
        how = "up" if value > bound.value else "down"
        why = {"most": f"{how}, so that it still fits", "least": f"{how}, so that it is enough"}
        known.say(f"Round it {why.get(bound.want, 'to what can be measured')}", "", exact, shown)
    return Found(value, bound.value, tuple(known.lines), _checked(puzzle, value, got, start), bound.want)


def _checked(puzzle: Puzzle, value: Number, got: Number, start: Bound) -> str:
    """What the rule gives for the value found, in words."""
    run = puzzle.known()
    result, told = run.round_step(puzzle.step, got), puzzle.request.stated.get(puzzle.step.name)
    text = f"Put forward again: {puzzle.show(value)} gives {puzzle.show_result(result)}"
    if told is None:
        return f"{text}."
    stated = puzzle.show_result(told.value)
    if start.want == "most" and result > told.value:
        return f"Put forward again: {puzzle.show(value)} needs {puzzle.show_result(got)}, within {stated}."
    if puzzle.show_result(result) == stated or start.want != "only":
        return f"{text}."
    return f"{text}, the nearest to {stated}."


# -- by trying ------------------------------------------------------------------------------------------------------


def _by_search(puzzle: Puzzle, start: Bound) -> Found:
    """Numbers put forward until the result comes out, for sums that cannot be turned round."""
    from .search import NotFound, search

    known = puzzle.known()
    step = step_of(puzzle.item.kind, puzzle.request.system_for(puzzle.item.kind))
    if start.want == "only" and puzzle.item.kind not in WHOLE:
        step /= FINER[-1]
    low, high = known.limits()
    try:
        value, want = search(
            puzzle.result, start.value, start.want,
            max(Fraction(low or 0), step) if low is None or low >= 0 else Fraction(low),
            Fraction(high) if high is not None else step * 100_000, step, start.open,
        )  # fmt: skip
    except NotFound as error:
        raise NoValue(_WHY[error.why].format(unknown=puzzle.item.label)) from error
    known.say(
        f"Put one {puzzle.item.label} after another forward until the {puzzle.step.shown_label} comes out",
        "", *_tries(puzzle, value, want, step),
    )  # fmt: skip
    return _finish(puzzle, known, start, Bound(value, want))


_WHY = {
    "uneven": "the result goes up and down as the {unknown} grows, so I cannot search for it",
    "low": "even the least {unknown} I take gives another result",
    "high": "even the largest {unknown} I take gives another result",
    "beyond": "it would lie beyond any {unknown} I take",
    "none": "the {unknown} makes no difference to it",
}


def _tries(puzzle: Puzzle, value: Fraction, want: str, step: Fraction) -> tuple[str, str]:
    """The value and the next one beyond it, with their results."""
    tries = [value] if want == "only" else [value, value + step if want == "most" else value - step]
    texts = []
    for at in tries:
        got = puzzle.result(at)
        if got is not None:
            texts.append(f"{puzzle.show(at)} gives {puzzle.show_result(puzzle.known().round_step(puzzle.step, got))}")
    return "; ".join(texts), puzzle.show(value)
