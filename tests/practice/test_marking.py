"""For every rule: fifty exercises answered rightly, and with each named slip, are marked rightly."""

from __future__ import annotations

import random
from collections import Counter
from fractions import Fraction
from functools import cache

import pytest

from assistant.conversation import Conversation
from assistant.practice import marking
from assistant.practice.exercise import Exercise, exercise
from rules.engine import slips
from rules.engine.declare import Input, Rule, Step
from rules.engine.marking import HAIR, LONGEST_WORDS, Case, Expected, Typed, precision
from rules.engine.plan import FAMILY
from rules.engine.request import Given, Request
from rules.engine.text import shown
from rules.engine.units import factor
from tests.support import ask, mind

TOPICS = list(mind().rules)
QUESTIONS = 50
TALK = Conversation(mind())
NAMED = (
    slips.FORGOT,
    slips.DIVIDED,
    slips.MULTIPLIED,
    slips.NOMINAL,
    slips.ROUNDED_DOWN,
    slips.WRONG_UNIT,
    slips.ONE_SIDE,
    slips.UNROUNDED,
    slips.ONE_OFF,
)


@cache
def exercises(topic: str) -> tuple[Exercise, ...]:
    """Fifty exercises, in both systems and at every level, the same at each run."""
    dice = random.Random(topic)
    made = [
        exercise(mind().rules[topic], TALK, dice.randrange, ("in", "cm")[turn % 2], 1 + turn % 4)
        for turn in range(QUESTIONS)
    ]
    return tuple(one for one in made if one is not None)


def as_typed(want: Expected) -> str:
    """A result as a learner would type it."""
    return want.words or shown(want.rounded, want.unit, want.noun)


def marked(one: Exercise, text: str) -> marking.Verdict:
    read = marking.reading(text, one.expected, TALK)
    assert read is not None, f"{text!r} is not read as an answer to {one.question}"
    return marking.mark(one.case, read)


@pytest.mark.parametrize("topic", TOPICS)
def test_every_rule_gives_fifty_exercises(topic: str) -> None:
    """All but those that give advice: sentences, where there is nothing short to ask for."""
    assert len(exercises(topic)) == (0 if only_advises(topic) else QUESTIONS)


def only_advises(topic: str) -> bool:
    """Whether what every example asks for is a sentence, or the rule is a plan, whose sums are other rules'."""
    if mind().rules[topic].family == FAMILY:
        return True
    answers = [ask(example.partition(" -> ")[0]) for example in mind().rules[topic].examples]
    firsts = [answer.results[0] for answer in answers if answer.results]
    return all(result.unit == "text" and len(result.text) > LONGEST_WORDS for result in firsts)


@pytest.mark.parametrize("topic", TOPICS)
def test_the_right_answer_is_marked_right(topic: str) -> None:
    for one in exercises(topic):
        assert marked(one, as_typed(one.expected)).right, (one.question, as_typed(one.expected))
        result = one.answer.results[0]
        assert marked(one, result.text).right, (one.question, result.text)
        if result.other and one.expected.here is not None:  # one that is not rounded may be shown coarser than it is
            assert marked(one, result.other).right, (one.question, result.other)


@pytest.mark.parametrize("topic", TOPICS)
def test_each_slip_is_marked_wrong_and_told(topic: str) -> None:
    """A slip's own answer is never marked right, and is told as that slip or as another that gives the same answer."""
    for one in exercises(topic):
        for slip, made in one.case.wrong:
            typed = typed_from(made)
            if near(typed, one.expected):
                continue
            verdict = one.case.mark(typed)
            assert not verdict.right, (one.question, slip, as_typed(made), as_typed(one.expected))
            alike = {other.name for other, value in one.case.wrong if near(typed, value)}
            assert verdict.slip in alike, (one.question, slip.name, verdict)


def typed_from(made: Expected) -> Typed:
    return Typed(made.rounded, made.unit if made.unit != "1" else "", made.words)


def near(typed: Typed, want: Expected) -> bool:
    """Whether a slip's answer lies so near another that a sensible rounding brings them together."""
    if want.words:
        return typed.words == want.words
    apart = min(abs(float(typed.value) - float(value)) for value in (want.rounded, want.exact))
    step = float(want.here.base_step()) if want.here is not None and not want.whole else 0.0
    size = factor(typed.unit) if typed.unit else Fraction(1)
    own = float(precision(Fraction(typed.value) / size, typed.unit) * size)
    if want.kind.base.startswith("money"):
        return apart < 0.005 * float(factor(typed.unit))
    return apart <= max(
        step, 0.0 if want.whole else min(own, 0.02 * abs(float(want.exact))), float(HAIR) * abs(float(want.exact))
    )


def test_every_named_slip_is_met_among_the_rules() -> None:
    """Each slip that is promised comes up in some rule's exercises and is named when it is made."""
    met: Counter[str] = Counter()
    for topic in TOPICS:
        for one in exercises(topic)[:8]:
            for _, made in one.case.wrong:
                met[one.case.mark(typed_from(made)).slip] += 1
    assert not [name for name in NAMED if not met[name]], met


def test_the_radius_taken_for_the_diameter_is_named() -> None:
    """A circle 10 in round has the radius 10 / (2 x 3.1416) = 1.59 in; 3.18 in is its diameter."""
    rule = Rule(
        "hoop",
        "tests",
        ("hoop",),
        "The radius of a hoop.",
        (Input("girth", "girth", ask="How far round?", example="10 in"),),
        (Step("radius", "Divide by 2 and by pi", "girth / (2 * pi)", label="radius"),),
        ("radius",),
        source="geometry",
    )
    request = Request("hoop", given={"girth": Given(10 * factor("in"), "in", "10 in")}, asked=("radius",))
    case = Case(rule, request, "radius", slips.slips_of(rule, "in"))
    assert case.mark(Typed(factor("in") * Fraction("1.59"), "in")).right
    assert case.mark(Typed(factor("in") * Fraction("3.18"), "in")).slip == slips.RADIUS


def one_of(topic: str, system: str = "in") -> Exercise:
    made = exercise(mind().rules[topic], TALK, random.Random(1).randrange, system)
    assert made is not None
    return made


def test_either_system_and_fractions_or_decimals_will_do() -> None:
    """28 in waist, elastic 1 in wide: 28 x 0.92 + 1 = 26.76, so 27 in, or 68 cm; common practice, worked by hand."""
    talk = Conversation(mind())
    talk.ask("elastic for a 28 in waist, 1 in wide step by step")
    session = talk.practice.session
    assert session is not None
    case = session.case  # type: ignore[attr-defined]
    for text in (
        "27 in",
        '27"',
        "27",
        "27.0 inches",
        "68 cm",
        "68.0 cm",
        "26.76 in",
        "it is 27 in",
        "I make it 27 inches",
    ):
        read = marking.reading(text, case.expected, talk)
        assert read is not None, text
        assert marking.mark(case, read).right, text
    for text in ("26 in", "26 1/2 in", "27 cm", "68 in", "28 in", "2.7 in"):
        read = marking.reading(text, case.expected, talk)
        assert read is not None, text
        assert not marking.mark(case, read).right, text


@pytest.mark.parametrize(
    ("typed", "slip"),
    [
        ("27 cm", slips.WRONG_UNIT),
        ("26 3/4 in", slips.ROUNDED_DOWN),  # 26.76 in to the quarter below
        ("26 in", slips.FORGOT),  # 25.76 in without the overlap, up to the next quarter
        ("25.76 in", slips.FORGOT),
        ("26.5 in", ""),
    ],
)
def test_a_slip_is_named(typed: str, slip: str) -> None:
    talk = Conversation(mind())
    talk.ask("elastic for a 28 in waist, 1 in wide step by step")
    case = talk.practice.session.case  # type: ignore[union-attr]
    read = marking.reading(typed, case.expected, talk)
    assert read is not None
    assert marking.mark(case, read).slip == slip


def test_a_question_amid_exercises_is_no_answer() -> None:
    one = one_of("binding strips")
    for text in (
        "how many strips for a 60 x 72 in quilt",
        "elastic for a 28 in waist",
        "60 x 72",
        "7 or 8",
        "what is 7 in in cm?",
    ):
        assert marking.reading(text, one.expected, TALK) is None, text
