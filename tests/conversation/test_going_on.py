"""How a line goes on from the one before: numbers that replace numbers, sums with the answer, and what is not understood."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from rules.engine.answer import Answer
from tests.support import mind

# Lines with " / " between them, and what the last comes to. Each sum is worked by hand beside it.
TALKS = (
    ("elastic for a 28 in waist / that × 3", "81 in"),  # 27 x 3
    ("elastic for a 28 in waist / double it", "54 in"),
    ("pattern says 2.5 m of 115, mine is 150 / half of that", "1 m"),  # 2.5 x 115 / 150, up to 2 m
    ("pattern says 2.5 m of 115, mine is 150 / what on earth / actually it's 140 wide", "2.1 m"),
    ("cast on for a 50 cm wide cushion at 20 sts to 10 cm / make that 45", "90 stitches"),  # the width, not the tension
    ("cast on for a 50 cm wide cushion at 20 sts to 10 cm / and if I get 22?", "110 stitches"),
    ("enlarge 10 cm by 150% / make it 180", "18 cm"),
    ("bust 36 in, ease 3 in / make it 4", "40 in"),  # the ease that was told
    ("gathered strip for an 80 cm edge, 10 cm deep, 140 cloth / make it 2.5", "0.3 m"),  # the fullness that was assumed
    ("I have £30 and it's £7 a metre, how much can I get / what if it's £6", "5 m"),
    ("how many 2 1/2 in binding strips for a 60 x 72 in quilt / and if the fabric is 36 wide?", "8 strips"),  # 274 / 36
    ("3 m at £9 a metre, what does it cost / less 10%", "£24.30"),
    ("how many balls for 900 m, 150 m a ball, 10% spare / and without any spare?", "6 balls"),
    ("how many balls for 900 m, 150 m a ball, no spare / at £5.20 a ball, what's that?", "£31.20"),
)  # fmt: skip


@pytest.mark.parametrize(("talk", "wanted"), TALKS)
def test_a_line_goes_on_from_the_one_before(talk: str, wanted: str) -> None:
    made = _last(talk)
    assert made.results and made.results[0].text == wanted, (made.status, made.message, made.results)


def test_a_line_that_was_not_understood_takes_nothing_away() -> None:
    conversation = Conversation(mind())
    conversation.ask("elastic for a 28 in waist")
    assert conversation.ask("blue whales sing at night").status == "unclear"
    assert conversation.ask("and for 32?").results[0].text == "30 1/2 in"


def _last(talk: str) -> Answer:
    conversation = Conversation(mind())
    *_, last = [conversation.ask(line) for line in talk.split(" / ")]
    return last
