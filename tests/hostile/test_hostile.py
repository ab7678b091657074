"""Bad input of every kind gets a reply of the contract: a known status, and words that help."""

from __future__ import annotations

import json

import pytest

from assistant import render
from assistant.contract import as_line
from tests.support import ask, talk

from .lines import LINES

STATUSES = {"answered", "incomplete", "unclear", "impossible", "done"}


@pytest.mark.parametrize("name", LINES)
def test_a_hostile_line_gets_a_reply_of_the_contract(name: str) -> None:
    made = ask(LINES[name])
    assert made.status in STATUSES
    assert made.status in ("answered", "done") or made.message
    reply = json.loads(as_line(made))
    assert reply["contract"] == 1
    assert render.full(made, 80, False, False)


@pytest.mark.parametrize("name", LINES)
def test_a_hostile_line_does_not_harm_the_conversation(name: str) -> None:
    before, _, after = talk(
        "binding strips for a 60 x 72 in quilt", LINES[name], "binding strips for a 60 x 72 in quilt"
    )
    assert [result.text for result in after.results] == [result.text for result in before.results]


@pytest.mark.parametrize("name", LINES)
@pytest.mark.parametrize("after", ["and 30 in?", "what about 2 at 20 sts", "60"])
def test_a_hostile_line_can_be_followed_by_anything(name: str, after: str) -> None:
    *_, made = talk("elastic 1 in wide for a 28 in waist", LINES[name], after)
    assert made.status in STATUSES


@pytest.mark.parametrize(
    "name",
    [
        "negative",
        "far too large",
        "nought",
        "a rate of nothing",
        "a thousand digits",
        "a division by nought",
        "a sweep without end",
    ],
)
def test_a_senseless_number_is_never_answered(name: str) -> None:
    assert ask(LINES[name]).status in ("impossible", "unclear", "incomplete")
