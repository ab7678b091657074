"""A month of work: three projects from measures to shopping list to what was paid, the file reopened for each sentence.

The shopping list and the costs are added up by hand in the comments.
"""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

import pytest

from rules.engine.answer import Answer
from tests.notebook.conftest import Book


def test_a_month_at_the_sewing_room(reopened: Callable[[], Book], tmp_path: Path) -> None:
    book: Book = reopened()

    def say(*lines: str) -> Answer:
        """Each sentence to a program started anew; only an answer and "keep that" after it go to the same one."""
        nonlocal book
        made = None
        for line in lines:
            book = book if line.startswith("keep that") else reopened()
            made = book.ask(line)
            assert made.status in ("done", "answered"), f"{line}: {made.message}"
        assert made is not None
        return made

    # the first week: measures, habits, what is in hand
    say("my waist is 28 in, hip 38 in and bust 36 in", "Ines's waist is 70 cm", "Ines's hip is 96 cm")
    say("work in inches", "pounds")
    say(
        "I have 10 in of red canvas 44 in wide",
        "red canvas costs £8/yd",
        "I have 2 yd of elastic",
        "zips cost £1.50 each",
    )

    # the harbour tote: two panels of 19 x 18 1/2 in lie side by side on 44 in: 18 1/2 in of cloth
    say("start project harbour tote", "two panel tote 14 in wide, 15 in high, 4 in deep, 44 in cloth, how much cloth")
    assert say("keep that as red canvas").notes[0].startswith("On the shopping list: red canvas 5/8 yd")
    say("add 1 zip to the shopping list", "lengthened the straps 2 in", "note: the base wants a stiffener")

    # the lantern quilt's binding: 2 x (60 + 72) + 10 = 274 in on 44 in: 7 strips of 2 1/2 in: 17 1/2 in of cloth
    say("start project lantern quilt", "how many 2 1/2 in binding strips for a 60 x 72 in quilt, 44 in usable width")
    say("keep that as red canvas", "add 2 zips to the shopping list for lantern quilt")

    # the sea skirt for Ines: elastic is 70 cm less 8 %, and 2.5 cm to lap: 66.9 cm, which is 26.34 in
    say("start project sea skirt", "elastic 1 in wide for Ines's waist")
    assert say("keep that").notes[0].startswith("On the shopping list: elastic 26 1/2 in")
    say("shortened the sea skirt by 3/4 in")

    # canvas: 18 1/2 + 17 1/2 = 36 in, less 10 in hand: 26 in = 0.722 yd, up to 3/4 yd (apart: 5/8 + 1/2 yd)
    # 3/4 yd x £8 = £6.00
    # zips: 1 + 2 = 3; x £1.50 = £4.50; elastic: 26.34 in of the 72 in hand; in all £10.50
    listed = say("shopping list")
    assert listed.headline == "To buy: 3/4 yd of red canvas, 44 in wide and 3 zips. In all £10.50."
    canvas = listed.working[0]
    assert canvas.result == "1 yd"
    say(f"shopping list as Markdown to {tmp_path}/list.md")
    assert "| 3/4 yd | red canvas | 44 in | £6.00 | harbour tote, lantern quilt |" in (tmp_path / "list.md").read_text(
        "utf-8"
    )

    # at the shop
    say("back to the harbour tote", "bought 3/4 yd of red canvas for £6", "paid £1.50 for the zip")
    say("back to the lantern quilt", "paid £3.20 for 2 zips")
    assert say("shopping list").headline.startswith("There is nothing left to buy")
    say("back to the sea skirt", "use 26 1/2 in of the elastic", "paid £2.75 for thread")

    # what it cost: tote 6.00 + 1.50 = 7.50; quilt 3.20; skirt 2.75; 13.45 in all
    assert say("what did the harbour tote cost?").results[0].text == "£7.50"
    assert say("what did the lantern quilt cost?").results[0].text == "£3.20"
    assert say("what did it cost?").results[0].text == "£2.75"
    assert say("what have I spent so far?").results[0].text == "£13.45"
    (elastic,) = say("how much elastic is left?").results
    assert elastic.value == pytest.approx(2 - 26.5 / 36)

    # next month: what was done?
    say("finish project harbour tote", "finish project lantern quilt", "finish project sea skirt")
    story = [(result.name, result.text) for result in say("what did I do on the harbour tote?").results]
    assert [name for name, _ in story] == ["worked out", "needed", "changed", "note", "paid", "paid"]
    assert story[2:] == [
        ("changed", "lengthened the straps 2 in"),
        ("note", "the base wants a stiffener"),
        ("paid", "£6 for red canvas"),
        ("paid", "£1.50 for zip"),
    ]
    assert say("what is Ines's hip?").results[0].text == "96 cm"
