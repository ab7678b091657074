"""Plans: what each is made of, that its numbers are the single rules' own, that its lays fit, that a change goes all
through.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction

import pytest

from assistant import render
from assistant.plans_markdown import as_markdown
from rules.engine.answer import Answer
from rules.engine.drawing import Drawings, LayDrawing
from tests.support import ask, mind, talk

PLANS = [rule for rule in mind().rules.values() if rule.parts]
SENTENCES = [example.partition(" -> ")[0] for rule in PLANS for example in rule.examples]
TOTE = "plan a tote 35 cm wide, 40 cm high and 10 cm deep, lined, cloth £9/m, lining £5/m"
PATTERN = (
    "plan from a pattern: it takes 2.5 m of 115 cm cloth, mine is 150 cm wide at £12/m, lengthened 5 cm, "
    "a 40 cm zip, zip £3.20, 0.6 m of lining at £5/m"
)


def part(made: Answer, title: str) -> Answer:
    return dict(made.parts)[title]


def texts(made: Answer) -> dict[str, str]:
    """The results of an answer by the name of their step."""
    return {result.key: result.text for result in made.results}


def lays(made: Answer) -> list[LayDrawing]:
    found: list[LayDrawing] = []
    for _, one in made.parts:
        drawn = one.drawing.parts if isinstance(one.drawing, Drawings) else (one.drawing,)
        found += [drawing for drawing in drawn if isinstance(drawing, LayDrawing)]
    return found


def test_every_row_of_things_to_make_has_a_plan() -> None:
    asked = ("from a bought pattern", "tote bag", "zipped pouch", "drawstring bag", "gathered skirt", "circle skirt", "cushion cover", "table runner",
             "quilt", "knitted hat", "scarf", "blanket", "toy", "stripes")  # fmt: skip
    for thing in asked:
        made = ask(f"plan a {thing}")
        assert made.status == "incomplete" and mind().rules[made.topic].parts, thing


@pytest.mark.parametrize("sentence", SENTENCES)
def test_a_plan_is_whole(sentence: str) -> None:
    made = ask(sentence)
    assert made.status == "answered", made.message
    assert made.headline.startswith("Buy ") or made.results, sentence
    assert made.parts and made.order and made.sources
    for title, one in made.parts:
        assert one.status == "answered" and one.headline and one.topic in mind().rules, title
        assert one.working or not any(result.exact is not None for result in one.results), title
    assert len(made.working) >= sum(len(one.working) for _, one in made.parts)


@pytest.mark.parametrize("sentence", SENTENCES)
def test_what_a_plan_assumes_can_be_changed(sentence: str) -> None:
    """Every value that was taken is one of the plan's own inputs, or one that a rule inside another settles."""
    made = ask(sentence)
    labels = {item.label for item in mind().rules[made.topic].inputs} | {"currency", "units"}
    inner = {item.label for title, one in made.parts for item in mind().rules[one.topic].inputs}
    for value in made.assumed:
        name = value.name.partition(": ")[2] or value.name
        assert name in labels | inner or "join" in name or name == "corners", value


@pytest.mark.parametrize("sentence", SENTENCES)
def test_a_plan_is_told_in_lines_that_fit(sentence: str) -> None:
    made = ask(sentence)
    for columns in (80, 40):
        told = render.full(made, columns, False, False)
        assert all(len(line) <= columns for line in told.splitlines()), max(told.splitlines(), key=len)
        assert all(line for line in told.splitlines())
        assert not set(told) & set("┌┐└┘─│├┤┬┴┼")
        assert "To buy" in told and "Order of work" in told


@pytest.mark.parametrize("sentence", SENTENCES)
def test_the_lays_fit_the_cloth_and_hold_the_cut_list(sentence: str) -> None:
    made = ask(sentence)
    for drawing in lays(made):
        lay = drawing.lay
        assert not lay.misfits
        for one in lay.placements:
            assert one.x >= 0 and one.y >= 0 and one.right <= lay.lay_width and one.end <= lay.length
        for first in range(len(lay.placements)):
            for other in lay.placements[first + 1 :]:
                mine = lay.placements[first]
                assert mine.right <= other.x or other.right <= mine.x or mine.end <= other.y or other.end <= mine.y
        placed = Counter(one.piece.label for one in lay.placements)
        assert placed == {piece.label: piece.count for piece in lay.pieces}


# -- the numbers of a plan are those of its rules
# ------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("plan", "title", "question", "keys"),
    [
        (TOTE, "Outer bag", "lined tote 35 cm wide, 40 cm high and 10 cm deep", ("panel_width", "panel_height", "corner", "lining_width")),
        (TOTE, "Straps", "strap with a 25 cm drop, ends 13 cm apart, 2.5 cm sewn in at each end, 2.5 cm finished", ("strap", "four")),
        (TOTE, "Lining", "lay plan: 2 panels 46.8 x 47.4 cm on 112 cm cloth", ("cloth",)),
        ("plan a zipped pouch 9 in wide and 6 in high", "Pouch", "zipped pouch 9 in wide and 6 in high: panel size", ("zip_length", "panel_width", "panel_height")),
        ("plan a drawstring bag 25 cm wide and 30 cm high", "Bag", "drawstring bag 25 cm wide 30 cm high, panel size", ("panel_width", "one_cord", "all_cord")),
        ("plan for a circle skirt, waist 70 cm, 55 cm long, 150 cm cloth", "Skirt", "full circle skirt, waist 70 cm, 55 cm long, 150 cm cloth, how much",
         ("cloth", "radius", "outer")),
        ("plan a cushion cover for a 45 cm pad", "Cover", "envelope cushion cover for a 45 cm pad in 140 cm cloth, front", ("front", "height", "back")),
        ("plan a quilt 5 by 6 blocks of 12 in, 2 in sashing and a 4 in border", "Cloth", "yardage for a 5 x 6 sampler of 12 in blocks with 2 in sashing and a 4 in border",
         ("cloth", "block_cloth", "sash_cloth", "border_cloth", "binding_cloth", "backing_cloth")),
        ("plan a quilt 5 by 6 blocks of 12 in, 2 in sashing and a 4 in border", "Binding", "how many binding strips for a 76 x 90 in quilt", ("strips", "need")),
        ("plan a scarf 30 cm wide and 150 cm long, 20 sts and 28 rows to 10 cm", "The piece", "cast on for a scarf 30 cm wide and 150 cm long, 20 sts and 28 rows to 10 cm",
         ("stitches", "rows")),
        ("plan a hat for a 56 cm head, 22 sts and 30 rows to 10 cm", "Hat", "hat for a 56 cm head, 22 sts and 30 rows to 10 cm, how many stitches", ("stitches", "rows")),
        (PATTERN, "Cloth", "pattern says 2.5 m of 115 cm cloth, mine is 150 cm wide, 5 cm longer over two lengths, how much to buy", ("cloth",)),
        (PATTERN, "Zip", "zip for a 40 cm opening", ("zip_length", "stop")),
    ],
)  # fmt: skip
def test_a_part_says_what_the_single_rule_says(plan: str, title: str, question: str, keys: tuple[str, ...]) -> None:
    mine, alone = texts(part(ask(plan), title)), texts(ask(question))
    assert {key: mine.get(key) for key in keys} == {key: alone.get(key) for key in keys}


def test_the_sums_of_a_tote_by_hand() -> None:
    """Panels 35 + 10 + 2 x 1.2 = 47.4 by 40 + 5 + 1.2 + 1.2 = 47.4 cm (a lined top takes a seam); straps 2 x 25 + 13 + 2 x 2.5 = 68 cm.

    Lining 0.6 cm narrower. In 112 cm two linings lie side by side: 47.4 cm, so 0.5 m at £5. Outer: two panels
    (94.8) and what
    is left, 17.2 cm, takes one strap of 10 x 68 cm beside them and the other across below: 68 cm, so 0.7 m at £9.
    """
    made = ask(TOTE)
    assert made.headline == "Buy 0.7 m (3/4 yd) of outer cloth and 0.5 m (5/8 yd) of lining. It comes to £8.80."
    assert made.cut is not None
    assert made.cut.texts == (
        ("strap", "2", "10 cm", "68 cm", "outer cloth"),
        ("panel", "2", "47.4 cm", "47.4 cm", "outer cloth"),
        ("lining panel", "2", "46.8 cm", "47.4 cm", "lining"),
    )
    assert made.results[0].text == "0.7 m"
    money = {result.name: result.value for result in made.results if result.unit == "GBP"}
    assert money == {"cost of outer cloth": 6.3, "cost of lining": 2.5, "total": 8.8}


def test_the_sums_of_a_bought_pattern_by_hand() -> None:
    """2.5 m x 115 / 150 = 1.917 m, and 5 cm over two lengths: 2.017 m, so 2.1 m at £12 = £25.20; lining 0.6 m at £5 =
    £3; zip £3.20.
    """
    made = ask(PATTERN)
    assert made.results[0].text == "2.1 m"
    assert [result.text for result in made.results if result.unit == "GBP"] == ["£25.20", "£3.00", "£31.40"]
    assert Fraction("25.20") + 3 + Fraction("3.20") == Fraction("31.40")


def test_a_size_is_chosen_with_its_ease_and_blend() -> None:
    made = ask(
        "plan a dress pattern: 10: 83/64/88 cm, 12: 87/68/92, 14: 92/73/97, my bust is 87 and hip 97 cm; takes 2 m of 140 cm cloth"
    )
    assert texts(part(made, "Size and ease"))["size"] == "size 12"
    assert "12 at the bust to 14 at the hip" in part(made, "Size and ease").headline


# -- a change goes all through
# -------------------------------------------------------------------------------------------


def test_deeper_is_added_to_what_it_was_everywhere() -> None:
    """10 and 10 cm: panels 35 + 20 + 2.4 = 57.4 by 40 + 10 + 2.4 = 52.4; two are 114.8, over 112, so both lays take
    two rows: 1.1 m.
    """
    before, after = talk(TOTE, "make it 10 cm deeper")
    assert {value.name: value.text for value in after.given}["depth of the base"] == "20 cm"
    assert after.cut is not None and ("panel", "2", "57.4 cm", "52.4 cm", "outer cloth") in after.cut.texts
    assert ("lining panel", "2", "56.8 cm", "52.4 cm", "lining") in after.cut.texts
    assert texts(part(after, "Lining"))["cloth"] == "1.1 m" and texts(part(before, "Lining"))["cloth"] == "0.5 m"


def test_narrower_is_taken_off() -> None:
    made = talk(TOTE, "5 cm narrower")[-1]
    assert {value.name: value.text for value in made.given}["finished width"] == "30 cm"


def test_one_thing_after_another() -> None:
    first, print_, wide, unlined, webbing = talk(
        TOTE, "with one-way print", "in 150 cm cloth", "unlined", "webbing straps"
    )
    assert {made.topic for made in (first, print_, wide, unlined, webbing)} == {"tote bag plan"}
    assert {value.name for value in print_.given} >= {"one-way print"}
    assert {value.name: value.text for value in wide.given}["cloth width"] == "150 cm"
    assert "Lining" not in dict(unlined.parts) and "cost of lining" not in [result.name for result in unlined.results]
    assert "buy_webbing" in texts(webbing)


def test_a_pattern_follows_each_change() -> None:
    """Net of −2 and 6 cm is 4 cm; a one-way print adds 25 cm; in 140 cm cloth 2.5 x 115 / 140 = 2.054 m + 0.25 + 0.08
    = 2.384.
    """
    _, lengths, print_, wide = talk(
        PATTERN,
        "shorten the sleeves 2 cm and lengthen the skirt by 6 cm",
        "with one-way print",
        "my cloth is 140 cm wide",
    )
    assert texts(part(lengths, "Length"))["change"] == "4 cm"
    assert [made.results[0].text for made in (lengths, print_, wide)] == ["2 m", "2.3 m", "2.4 m"]


def test_what_is_missing_is_asked_for_and_a_bare_answer_taken() -> None:
    asked, made = talk("plan a tote", "14 x 15 x 4 in")
    assert asked.status == "incomplete" and {missing.name for missing in asked.missing} == {
        "finished width",
        "finished height",
        "depth of the base",
    }
    assert (
        made.topic == "tote bag plan"
        and made.cut is not None
        and ("panel", "2", "19 in", "18 1/2 in", "outer cloth") in made.cut.texts
    )


def test_why_answers_with_the_part() -> None:
    _, lining, number, whole = talk(TOTE, "why the lining?", "why 68 cm?", "why?")
    assert lining.topic == "lay plan" and lining.working
    assert number.topic == "strap" and "68 cm" in number.headline
    assert (
        not whole.parts
        and len(whole.working) > 10
        and any(line.step.startswith("Outer bag: ") for line in whole.working)
    )


def test_a_new_plan_or_another_sum_begins_anew() -> None:
    *_, pouch, strips = talk(TOTE, "plan a pouch 20 x 15 cm", "binding strips for a 60 x 72 in quilt")
    assert (pouch.topic, strips.topic) == ("zipped pouch plan", "binding strips")


# -- plans keep out of other questions
# -----------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("question", "topic"),
    [
        ("tote 14 x 15 x 4 in, panel size", "tote"),
        ("I plan to make a tote 14 in wide, 15 in high and 4 in deep, what size panels", "tote"),
        ("full circle skirt, 66 cm waist, 55 cm long, 150 cm cloth: how much", "circle skirt"),
        ("lay plan: 2 fronts 30 x 70, 1 back 58 x 70 and 2 sleeves 40 x 60 cm on 140 cm cloth", "lay plan"),
        ("cast on for a scarf 30 cm wide and 1.5 m long, 20 sts and 28 rows to 10 cm", "scarf, blanket"),
    ],
)  # fmt: skip
def test_a_plain_question_is_no_plan(question: str, topic: str) -> None:
    assert ask(question).topic == topic


def test_a_plan_that_cannot_be_says_why() -> None:
    made = ask("plan a flat tote 130 cm wide, 40 cm high, in 112 cm cloth")
    assert made.status == "impossible" and "does not fit" in made.message and made.message.startswith("Outer bag: ")


def test_a_plan_as_markdown_has_its_tables_and_lists() -> None:
    told = as_markdown(ask(TOTE))
    assert told.startswith("# Tote bag plan\n")
    assert "| panel | 2 | 47.4 cm | 47.4 cm | outer cloth |" in told
    assert "- [ ] outer cloth: 0.7 m (3/4 yd)" in told and "1. Wash and press" in told
    assert told.count("```") % 2 == 0 and told.endswith("\n")


def test_cloth_in_hand_is_judged_first() -> None:
    """52 + 2.4 = 54.4 by 40 + 6 + 1.2 + 2.5 = 49.7 cm, twice in 140 cm, and a strap 10 cm deep below: 59.7 cm of the metre."""
    made = ask("plan a tote 40 x 40 x 12 cm, I have 1 m of canvas 140 cm wide")
    assert made.headline.startswith("It is enough: 0.403 m")
    assert "buy_outer_cloth" in texts(made)


def test_tiers_and_a_ruffle_together_are_refused() -> None:
    made = ask("plan a tiered skirt with a ruffle, waist 70 cm, 70 cm long")
    assert made.status == "impossible"
    assert "one more tier" in made.message
