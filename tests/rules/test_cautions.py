"""The general cautions: each is raised by what a question mentions, and none where it would cry wolf."""

from __future__ import annotations

import re

import pytest

from rules.cautions import GENERAL
from rules.engine.cautions import applies, with_ages
from tests.support import ask, mind, talk

RAISED = (
    ("toddler's rain jacket, hood opening 46 cm: how long a drawstring with 10 cm tails", "No drawstrings at the hood"),
    ("drawstring for a 3 year old's trousers, waist 50 cm", "No drawstrings at the hood"),
    ("how long a drawcord for a hood opening of 60 cm", "16 CFR 1120.3"),
    ("drawstring bag for a toddler, 20 cm wide and 30 cm high", "neck can strangle"),
    ("drawstring for a curtain 90 cm round over a baby's cot", "at least 3 ft"),
    ("7 buttons on a 30 cm cardigan for a 6 month old baby", "choke"),
    ("6 snaps evenly along a 40 cm teddy", "16 CFR 1501"),
    ("how many 2 1/2 in binding strips for a 36 x 45 in baby quilt", "sleep space"),
    ("how many binding strips for a crib quilt 36 x 52 in", "fitted sheet"),
    ("how many 2 in binding strips for a cot bumper 10 x 120 in", "outside the ban"),
    ("elastic for a child's pyjama bottoms, waist 50 cm, 2.5 cm wide", "flammability"),
    ("how many 2 1/2 in binding strips for a child's weighted blanket 40 x 60 in", "ask a clinician"),
    ("elastic for a baby headband, head 42 cm, 1 cm wide", "two fingers"),
    ("how many 2 1/2 in strips with a rotary cutter to bind a 60 x 72 in quilt", "Close the blade"),
    ("metal zip for a 15 1/2 in opening", "turn the wheel by hand"),
    ("broke my needle, what is the US size of a size 80 needle", "Count pins"),
    ("webbing for 3 straps of 1.2 m each on a harness, total length", "tested designs"),
    ("webbing for 3 straps of 1.2 m each on a baby carrier I'm making, total length", "tested designs"),
    ("elastic for a car seat cover, 80 cm round, 1 cm wide", "car seat"),
    ("webbing for 2 straps of 2 m for a garden swing, total", "bears a person's weight"),
    ("elastic for a face mask, 30 cm round, 5 mm wide", "not protective equipment"),
    ("4 buttons along 20 cm on a toy I want to sell", "legal tests: ask"),
)  # fmt: skip

QUIET = (
    ("drawstring for an adult's trousers, 32 in waist", "hood"),
    ("drawstring for a 32 in waist", "hood"),
    ("drawstring for a man's hoodie, hood opening 60 cm", "hood"),
    ("7 buttons on a 60 cm coat", "choke"),
    ("how many 2 1/2 in binding strips for a 60 x 72 in quilt", "sleep"),
    ("elastic for pyjama bottoms, waist 80 cm, 2.5 cm wide", "flammability"),
    ("elastic for a 28 in waist, 1 in wide", "finger"),
    ("elastic for a baby's trousers, waist 40 cm, 1 cm wide", "finger"),
    ("a carrier bag 14 in wide, 15 in high and 4 in deep", "tested"),
    ("zip for a 15 1/2 in opening", "wheel"),
    ("elastic for a swing skirt, 28 in waist, 1 in wide", "person's weight"),
    ("elastic for a sleep mask, 54 cm round, 1 cm wide", "protective"),
    ("size 80 needle in US size", "Count pins"),
    ("thread for 40 m of lockstitch seams at £2 a reel in the sale", "legal tests"),
)  # fmt: skip


@pytest.mark.parametrize(("question", "says"), RAISED, ids=[question for question, _ in RAISED])
def test_a_caution_is_raised(question: str, says: str) -> None:
    made = ask(question)
    assert made.status == "answered", made.message
    assert any(says in caution for caution in made.cautions), made.cautions


@pytest.mark.parametrize(("question", "says"), QUIET, ids=[question for question, _ in QUIET])
def test_no_caution_cries_wolf(question: str, says: str) -> None:
    made = ask(question)
    assert made.status == "answered", made.message
    assert not any(says in caution for caution in made.cautions), made.cautions


@pytest.mark.parametrize("caution", GENERAL, ids=[caution.text[:50] for caution in GENERAL])
def test_every_general_caution_has_a_question_that_raises_it(caution: object) -> None:
    assert any(says in f"{caution.text} ({caution.source})" for _, says in RAISED)  # type: ignore[attr-defined]


def test_a_caution_comes_with_its_source_and_after_a_full_answer() -> None:
    made = ask("how long a drawcord for a hood opening of 60 cm")
    assert made.results
    assert made.working
    assert any(caution.endswith("(US 16 CFR 1120.3 and ASTM F1816; Europe EN 14682)") for caution in made.cautions)


def test_no_caution_ever_says_that_something_is_safe() -> None:
    rules = [caution for rule in mind().rules.values() for caution in rule.cautions]
    for caution in (*GENERAL, *rules):
        assert not re.search(r"\bsafe(ly)?\b", caution.text, re.IGNORECASE), caution.text


def test_a_caution_stays_through_a_follow_up() -> None:
    _, second = talk("drawstring for a toddler's hood, 46 cm round", "with 12 cm tails")
    assert any("hood" in caution for caution in second.cautions)


def test_an_age_counts_as_a_child() -> None:
    assert {"child", "baby"} <= with_ages(frozenset(("18", "month", "old")))
    assert "child" in with_ages(frozenset(("9", "year", "old")))
    assert "child" not in with_ages(frozenset(("#", "year", "old")))


def test_the_words_of_a_caution_all_count() -> None:
    caution = GENERAL[0]
    assert applies(caution, frozenset(("drawstring", "hood")), None)
    assert not applies(caution, frozenset(("drawstring", "waist")), None)
    assert not applies(caution, frozenset(("drawstring", "hood", "men")), None)
