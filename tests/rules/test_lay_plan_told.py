"""What a lay plan says of its search: how long it may take, and how near the lay is to the best possible."""

from __future__ import annotations

import re
from fractions import Fraction

from rules.engine.drawing import LayDrawing
from tests.support import ask

EASY = "lay plan: 2 fronts 30 x 70, 1 back 58 x 70 and 2 sleeves 40 x 60 cm on 140 cm cloth"
HARD = (
    "lay plan: 7 backs 31 x 47, 5 fronts 23 x 61, 9 pockets 17 x 29, 6 sides 37 x 41, 4 straps 53 x 19, "
    "8 cuffs 13 x 43 cm on 137 cm cloth, can be turned"
)


def test_a_lay_proved_best_is_called_so() -> None:
    made = ask(EASY)
    assert isinstance(made.drawing, LayDrawing)
    assert made.drawing.lay.length == made.drawing.lay.bound
    assert "this lay is the best possible" in made.headline
    assert made.notes[-1] == "A lay is improved for up to about 1 second; this search ended sooner, at the best possible."


def test_the_gap_told_is_no_smaller_than_the_gap() -> None:
    made = ask(HARD)
    assert isinstance(made.drawing, LayDrawing)
    lay = made.drawing.lay
    assert lay.length > lay.bound, "this set was chosen because its lay is not proved"
    told = re.search(r"within ([\d.]+) % of the best possible", made.notes[-1])
    assert told is not None
    assert told[0] in made.headline
    assert lay.gap * 100 <= Fraction(told[1]) < lay.gap * 100 + Fraction(1, 10)
    assert made.notes[-1].startswith("A lay is improved for up to about 1 second; the time ran out")
