"""Derivations hold: each line is checked by sympy, a false one is caught, and the numbers are the trade's."""

from __future__ import annotations

import random
from dataclasses import replace

import pytest

from rules.engine import derive
from rules.engine.declare import Derivation, Fact, Follows
from rules.engine.draw import draw
from rules.engine.formula import NoAnswer, evaluate
from rules.engine.run import Impossible, Needs, Run
from tests.support import ask, mind

DERIVED = [(rule.topic, made) for rule in mind().rules.values() for made in rule.derivation]
IDS = [f"{topic}: {made.step}" for topic, made in DERIVED]
HALF_SQUARE = "half-square triangles"


@pytest.mark.parametrize(("topic", "made"), DERIVED, ids=IDS)
def test_every_line_follows_and_the_last_is_the_rule(topic: str, made: Derivation) -> None:
    lines = derive.derived(mind().rules[topic], made)
    assert len(lines) == len(made.lines)
    assert all(line.words and " = " in line.equation for line in lines)


@pytest.mark.parametrize(("topic", "made"), DERIVED, ids=IDS)
def test_every_derivation_takes_a_step_of_algebra(topic: str, made: Derivation) -> None:
    """It starts from facts of geometry, and its last line is no fact but follows."""
    assert isinstance(made.lines[0], Fact)
    assert isinstance(made.lines[-1], Follows)


@pytest.mark.parametrize(
    "topic",
    [
        HALF_SQUARE,
        "quarter-square triangles",
        "setting triangles",
        "circle skirt",
        "bias binding",
        "bias binding for a quilt",
        "box corner",
        "toy to another yarn",
        "pleats",
    ],
)
def test_what_has_geometry_is_derived(topic: str) -> None:
    assert mind().rules[topic].derivation


@pytest.mark.parametrize(
    ("line", "told"),
    [
        (Follows("wrong", "addition = seam * (2 + sqrt(3))"), "does not follow"),
        (Follows("wrong", "point_end = shift"), "does not follow"),
        (Fact("not the rule", "addition = seam * 3"), "is not what the rule reckons"),
    ],
)
def test_a_false_line_is_caught(line: Fact | Follows, told: str) -> None:
    rule = mind().rules[HALF_SQUARE]
    made = rule.derivation[0]
    with pytest.raises(derive.DerivationError, match=told):
        derive.check(rule, replace(made, lines=(*made.lines, line)))


def test_a_derivation_of_something_else_is_caught() -> None:
    rule = mind().rules["quarter-square triangles"]
    with pytest.raises(derive.DerivationError, match="is not what the rule reckons"):
        derive.check(rule, mind().rules[HALF_SQUARE].derivation[0])


@pytest.mark.parametrize(
    ("topic", "said"),
    [
        (HALF_SQUARE, "0.854 in, up to the next 1/8 in: 7/8 in"),  # the trade's 7/8 in; from memory
        ("quarter-square triangles", "1.207 in, up to the next 1/8 in: 1 1/4 in"),  # the trade's 1 1/4 in; from memory
        ("bias binding", "22.361 in, up to the next 1 in: 23 in"),  # the root of 500
    ],
)
def test_the_proof_ends_at_the_trades_rounding(topic: str, said: str) -> None:
    rule = mind().rules[topic]
    assert any(said in derive.tried(rule, one, "in") for one in rule.derivation)


def test_derive_says_each_step_in_words_and_as_an_equation() -> None:
    told = "\n".join(ask("derive half-square triangles").text)
    assert "by Pythagoras" in told
    assert "shift² = seam allowance² + seam allowance²" in told
    assert "addition = seam allowance × (2 + √2)" in told


@pytest.mark.parametrize("topic", list(mind().rules))
def test_what_is_turned_round_gives_what_was_given(topic: str) -> None:
    """A formula solved for an input, worked with the result, gives the input back."""
    rule = mind().rules[topic]
    for target in rule.answers:
        node = derive.whole_formula(rule, target)
        if node is None or rule.derivation:
            continue
        request = draw(rule, random.Random(topic).randrange, "in")
        if request is None:
            return
        run = Run(rule, request)
        for name, solved in derive.turned_round(rule, target):
            _same_again(run, node, target, name, solved)
        return


def _same_again(run: Run, node: object, target: str, name: str, solved: object) -> None:
    try:
        result = evaluate(node, run.get, run.get)  # type: ignore[arg-type]
        value = evaluate(solved, lambda one: result if one == target else run.get(one), run.get)  # type: ignore[arg-type]
        own = run.get(name)
    except (Needs, NoAnswer, Impossible, KeyError):  # the draw does not hold all of it
        return
    assert float(value) == pytest.approx(float(own), rel=1e-9), (run.rule.topic, name)


def test_a_rule_without_geometry_is_put_together() -> None:
    told = "\n".join(ask("derive elastic").text)
    assert "Put more shortly" in told
    assert "Turned round: overlap =" in told
