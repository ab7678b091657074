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
    ("elastic for a 28 in waist / that x 3 / in metric", "205.74 cm"),  # 81 x 2.54
    ("elastic for a 28 in waist / that x 3 / in metric / and for Tomas, his waist is 34", "32 1/2 in"),  # 34 x 0.92 + 1
    ("7 x 4 3/8 in / that x 3 / plus 2 in", "93 7/8 in"),  # 91 7/8 + 2
    ("7 balls at £12.50 each / and 20% off", "£70.00"),  # 87.50 x 0.8
    ("hat for a 22 in head, 4 1/2 sts to the inch / what if i get 5 sts", "96 stitches"),  # 22 x 0.9 x 5 = 99, in eights
    ("backing for a 54 x 70 in quilt, 2 in over each side, 42 in wide / what about the 108 in wide kind?", "1 5/8 yd"),  # 58 in
    ("two panel tote 36 cm wide, 35 high, 8 deep, 1 cm seams, 2 cm hem / how many litres will that hold?", "10.08 l"),
    ("yarn for a toy 20 cm tall at 28 sts to 10 cm, how tall at 20 to 10 cm? / the pattern used 75 m of yarn, how much will mine take",
     "105 m"),  # 75 x 28/20
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
