"""Ways of saying a number, a sum, a step or a tension that the grammar alone does not settle."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.support import mind

# A question, and its first result; each sum is worked by hand beside it.
SAID = (
    ("add 2 m and 30 cm", "2.3 m"),
    ("take 5 in from 3 ft", "31 in"),
    ("two and a quarter yards and thirty centimetres added together in metres", "2.357 m"),
    ("can you add 2 yd 8 in + 50 cm for me, answer in cm, I keep getting different totals", "253.2 cm"),  # 80 in + 50 cm
    ("take 10 percent off 3.5 metres", "315 cm"),
    ("I take 3,5 m of cloth for 12 € a metre, how much is it?", "€42.00"),
    ("4.6 metres of backing at AUD 27.50 a metre, what does it cost?", "A$126.50"),
    ("three and a half yards at eleven dollars ninety nine a yard, what does it cost", "$41.97"),  # 3.5 x 11.99, up to a cent
    ("tension 20/10cm, cast on for 45 cm", "90 stitches"),
    ("how many stitches for a 100 cm wide throw when 15 sts make 10 cm", "150 stitches"),
    ("4 inches is 18 stitches, how many stitches for 20 inches", "90 stitches"),
    ("36 inch square blanket at 5 sts and 7 rows per inch", "180 stitches"),
    ("I want 50 cm across at 20 sts to 10 cm, how many is that?", "100 stitches"),
    ("27 stitches across 12 cm of my swatch. What's that to 10 cm?", "22.5 stitches to 10 cm"),
    ("how many 40 cm ties can I cut from 5 m of tape", "12 lengths"),  # 500 / 40, down
    ("3 1/4 yd of 45 in called for. How much in 54 in?", "2 3/4 yd"),  # 3.25 x 45 / 54 = 2.71
    ("is 2 m of 150 cm wide enough if the pattern says 2.4 m of 112 cm", "enough"),  # 2.4 x 112 / 150 = 1.79
    ("my swatch, 4 in by 4 in, weighs 8 g. Blanket 36 by 48 in, no spare, what weight of wool?", "864 g"),  # 108 x 8
)  # fmt: skip


@pytest.mark.parametrize(("question", "wanted"), SAID)
def test_a_way_of_saying_is_understood(question: str, wanted: str) -> None:
    made = Conversation(mind()).ask(question)
    assert made.results and made.results[0].text == wanted, (made.status, made.message, made.results)


@pytest.mark.parametrize(("question", "rows"), [
    ("elastic for waists 66 to 86 cm going up by 5", 5),
    ("half circle skirt for waists 600 mm to 800 mm, increment 50 mm, length 60 cm, cloth 150 cm", 5),
    ("5 to 9 buttons on a 40 cm band, 2 cm at each end", 5),
])  # fmt: skip
def test_steps_and_ranges_of_counts_make_a_table(question: str, rows: int) -> None:
    made = Conversation(mind()).ask(question)
    assert made.table is not None and len(made.table.rows) == rows


def test_an_age_is_no_measure_and_brings_its_caution() -> None:
    made = Conversation(mind()).ask("what ligne is a 15 mm button? It's for a coat for my nephew, he's 2")
    assert made.results[0].text == "24 ligne"
    assert any("chok" in caution for caution in made.cautions)


def test_a_bare_price_is_by_the_metre_or_yard_and_says_so() -> None:
    made = Conversation(mind()).ask("price 12, discount 10%, 3 yd: cost")
    assert made.results[0].text == "£32.40"
    assert any("not typed" in value.why for value in made.given) or made.assumed
