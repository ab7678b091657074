"""A result that is told must be one that such a result can be; else its number was meant for something else."""

from __future__ import annotations

from assistant.conversation import Conversation
from tests.support import mind


def test_a_result_outside_its_range_is_no_way_back() -> None:
    made = Conversation(mind()).ask("cap seam for ease 47.5 cm, armhole seam 45 cm")  # the cap's own length, said as its ease
    assert made.status == "impossible", made.headline
    assert "47.5 cm as the ease" in made.message and "-15 cm to 15 cm" in made.message
    assert "sleeve cap 47 cm" in made.message  # what to type instead


def test_a_result_inside_its_range_still_leads_back() -> None:
    made = Conversation(mind()).ask("ease 2.5 cm, armhole seam 45 cm, what is the cap")
    assert made.results[0].text == "47.5 cm"  # 45 + 2.5
