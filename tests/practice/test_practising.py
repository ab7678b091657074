"""Practising and working step by step, line by line, in a conversation and on the command line."""

from __future__ import annotations

import io
import json
import random
import re
from pathlib import Path

import pytest

from assistant.cli import main
from assistant.conversation import Conversation
from assistant.practice.practise import Practising
from assistant.practice.state import Score, ScoreBook, Scores
from assistant.practice.stepwise import Stepping
from assistant.world import World
from rules.engine.answer import Answer
from tests.support import mind


def practising(talk: Conversation) -> Practising:
    session = talk.practice.session
    assert isinstance(session, Practising)
    return session


def started(topic: str, seed: int = 1) -> Conversation:
    talk = Conversation(mind())
    assert Practising((mind().rules[topic],), topic, random.Random(seed).randrange).start(talk).status == "answered"
    return talk


def right(talk: Conversation) -> Answer:
    exercise = practising(talk).exercise
    assert exercise is not None
    return talk.ask(exercise.answer.results[0].text)


def marks(made: Answer) -> dict[str, str]:
    return {result.name: result.text for result in made.results}


def test_right_answers_are_counted_and_make_it_harder() -> None:
    talk = started("binding strips")
    for number in range(1, 7):
        made = right(talk)
        assert marks(made)["marked"] == "right"
        assert marks(made)["score"] == f"{number} of {number}"
    assert practising(talk).level == 4
    assert talk.practice.own.scores("binding strips") == Score(6, 6, 4)


def test_wrong_answers_are_told_and_end_with_the_working() -> None:
    talk = started("elastic")
    practising(talk).level = 3
    for _ in range(2):
        assert marks(talk.ask("1 in"))["marked"] == "wrong"
    made = talk.ask("1 in")
    assert "It is " in made.headline
    assert any(" = " in line for line in made.text)
    assert marks(made)["score"] == "0 of 1"


def test_a_hint_comes_before_the_answer() -> None:
    talk = started("elastic")
    assert talk.ask("hint").headline.startswith("Hint: ")
    assert practising(talk).done == 0
    assert talk.ask("tell me").headline.startswith("It is ")
    assert practising(talk).done == 1


def test_stop_ends_it_with_the_score() -> None:
    talk = started("elastic")
    right(talk)
    assert talk.ask("stop").headline == "Practice of elastic ends: 1 of 1 right."
    assert talk.practice.session is None


def test_a_question_amid_practice_is_answered_and_ends_it() -> None:
    talk = started("elastic")
    made = talk.ask("how many 2 1/2 in binding strips for a 60 x 72 in quilt")
    assert made.topic == "binding strips"
    assert talk.practice.session is None


def test_what_is_no_answer_is_said_and_practice_goes_on() -> None:
    talk = started("elastic")
    made = talk.ask("blue moon")
    assert made.status == "unclear"
    assert "hint, tell me, or stop" in made.message
    assert marks(right(talk))["marked"] == "right"


@pytest.mark.parametrize(
    ("line", "rules", "system", "level"),
    [
        ("practise binding", 1, "", 1),
        ("practice elastic in inches", 1, "in", 1),
        ("Practise quilting in metric at level 3", 10, "cm", 3),
        ("quiz me on circle skirts", 1, "", 1),
        ("test me on elastic", 1, "", 1),
        ("practise", 50, "", 1),
    ],
)
def test_practise_hears_topic_system_and_level(line: str, rules: int, system: str, level: int) -> None:
    talk = Conversation(mind())
    assert talk.ask(line).status == "answered"
    session = practising(talk)
    assert len(session.rules) >= rules
    assert (session.system, session.level) == (system, level)


def test_scores_are_kept_where_a_book_is() -> None:
    """Anything that keeps scores will do, as the notebook does."""
    assert isinstance(Scores(), ScoreBook)
    book = Scores({"elastic": Score(3, 4, 3)})
    talk = Conversation(mind())
    talk.practice.own = book
    talk.ask("practise elastic")
    assert practising(talk).level == 3
    right(talk)
    assert book.scores("elastic").done == 5


def test_a_rule_that_advises_has_nothing_to_practise() -> None:
    made = Conversation(mind()).ask("practise increases by make-one and by knitting front and back")
    assert "no number to practise" in made.headline


# -- step by step ----------------------------------------------------------------------------------------------------


def stepping(*lines: str) -> tuple[Conversation, list[Answer]]:
    talk = Conversation(mind())
    return talk, [talk.ask(line) for line in lines]


def test_a_question_is_worked_step_by_step() -> None:
    """60 x 72 in: 264 in round, 274 in with 10 in for joins, 6.85 strips of 40 in, so 7; worked by hand."""
    talk, made = stepping(
        "binding strips for a 60 x 72 in quilt, 40 in usable, step by step", "264 in", "274", "6 strips", "7"
    )
    assert [marks(one).get("marked", "") for one in made] == ["", "right", "right", "wrong", "right"]
    assert marks(made[3])["slip"] == "rounded down"
    assert made[4].text == ("That is the whole sum: 3 of 3 steps right.",)
    assert talk.practice.session is None


def test_the_last_question_is_worked_step_by_step() -> None:
    talk, made = stepping("elastic for a 28 in waist, 1 in wide", "step by step")
    assert isinstance(talk.practice.session, Stepping)
    assert "28 in" in made[1].headline


def test_a_forgotten_allowance_is_told() -> None:
    _, made = stepping("binding strips for a 60 x 72 in quilt, 40 in usable, step by step", "264 in", "264 in")
    assert marks(made[2])["slip"] == "forgot an allowance"
    assert "You left out the extra for joins and corners." in made[2].headline


def test_one_side_only_is_told() -> None:
    _, made = stepping("binding strips for a 60 x 72 in quilt, 40 in usable, step by step", "132 in")
    assert marks(made[1])["slip"] == "both sides or one"


@pytest.mark.parametrize("topic", list(mind().rules))
def test_every_exercise_can_be_worked_step_by_step(topic: str) -> None:
    """Each step's own right answer is taken, and the last of them is the result."""
    talk = Conversation(mind())
    made = talk.ask(f"step by step {topic}")
    session = talk.practice.session
    if session is None:
        assert "no steps in numbers" in made.message
        return
    assert isinstance(session, Stepping)
    for _ in range(len(session.stages)):
        assert session.now is not None
        made = talk.ask(session.now.right)
        assert marks(made).get("marked") == "right", (session.question, session.now, made)
    assert talk.practice.session is None


# -- on the command line ---------------------------------------------------------------------------------------------


def piped(tmp_path: Path, lines: str, *options: str) -> tuple[int, str]:
    world = World(
        io.StringIO(lines),
        io.StringIO(),
        io.StringIO(),
        {"ELLWAND_CACHE": str(tmp_path), "ELLWAND_DATA": str(tmp_path)},
    )
    status = main(options, world)
    return int(status), world.stdout.getvalue()  # type: ignore[attr-defined]


def test_explain_on_the_command_line(tmp_path: Path) -> None:
    status, out = piped(tmp_path, "", "explain", "elastic")
    assert status == 0
    assert out.startswith("Elastic: ")


def test_practice_in_a_pipe_is_one_conversation_with_together(tmp_path: Path) -> None:
    status, out = piped(
        tmp_path, "binding strips for a 60 x 72 in quilt, 40 in usable, step by step\n264 in\n274 in\n7\n", "--together"
    )
    assert status == 0
    assert "That is the whole sum: 3 of 3 steps right." in out


def test_practice_as_json(tmp_path: Path) -> None:
    status, out = piped(tmp_path, "practise elastic\ntell me\nexplain elastic\n", "--together", "--json")
    made = [json.loads(line) for line in out.splitlines()]
    assert status == 0
    assert [one["status"] for one in made] == ["answered"] * 3
    assert made[0]["results"][0]["name"] == "exercise"
    assert made[1]["results"][0]["value"].startswith("It is ")
    assert made[1]["results"][-1] == {"name": "score", "value": "0 of 1", "unit": "text", "text": "0 of 1"}
    assert re.match("Elastic: ", made[2]["results"][0]["text"])


def test_practice_in_the_chat(tmp_path: Path) -> None:
    from prompt_toolkit.application import create_app_session
    from prompt_toolkit.input import create_pipe_input
    from prompt_toolkit.output import DummyOutput

    folders = {"ELLWAND_CACHE": str(tmp_path), "ELLWAND_DATA": str(tmp_path), "ELLWAND_STATE": str(tmp_path)}
    out = io.StringIO()
    world = World(io.StringIO(), out, io.StringIO(), {**folders, "NO_COLOR": "1"}, True, True)
    with create_pipe_input() as keys, create_app_session(input=keys, output=DummyOutput()):
        keys.send_text("elastic for a 28 in waist, 1 in wide, step by step\rhint\r92 %\rstop\r\x04")
        assert main(["--no-notebook"], world) == 0
    assert "Step 1 of" in out.getvalue()
    assert "Hint: " in out.getvalue()
    assert "We leave it there." in out.getvalue()


def test_the_live_line_tells_practice_from_a_question() -> None:
    talk = Conversation(mind())
    assert talk.reading("practise bind").topic == "practice"
    assert talk.reading("binding for a 60 x 72 in quilt").topic == "binding strips"
    talk.ask("practise elastic")
    assert talk.reading("27 i").topic.startswith("answer to the exercise")
