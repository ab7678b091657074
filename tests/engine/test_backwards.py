"""Rules run backwards: the value found, put forward again, gives what was stated; never on the short side."""

from __future__ import annotations

import math
import subprocess
import sys
from fractions import Fraction
from typing import Any

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from rules.engine.backwards import Found, find
from rules.engine.declare import ARITHMETIC, Default, Input, Rule, Step, choice
from rules.engine.kinds import AREA, COUNT, LENGTH, MONEY, PERCENT, PRICE, RATIO, STITCH_RATE, STITCHES
from rules.engine.outcome import Outcome
from rules.engine.request import Given, Item, Request
from rules.engine.rounding import (
    BUDGET_DOWN,
    BUY_CLOTH,
    COUNT_DOWN,
    COUNT_UP,
    CUT,
    PATCH_CUT,
    PENNY,
    STITCH,
    WAIST_RADIUS,
)  # fmt: skip
from rules.engine.run import Impossible, Needs, Run
from rules.engine.units import factor

INCH = Fraction(254, 10)


def a(name: str, label: str, kind: Any = LENGTH, **more: Any) -> Input:
    """An input that is asked for when not given."""
    return Input(name, label, kind, ask=f"What is the {label}?", example=more.pop("example", "1"), **more)


def rule(topic: str, inputs: tuple[Input, ...], steps: tuple[Step, ...], **more: Any) -> Rule:
    return Rule(topic, "test", (topic,), topic, inputs, steps, (steps[-1].name,), ARITHMETIC, **more)


BINDING = rule(
    "binding strips",
    (
        a("width", "quilt width", example="60 in", sane="1 in..300 in"),
        a("length", "quilt length", example="60 in", sane="1 in..300 in"),
        Input("joins", "joins and corners", default="10 in | 25 cm", because="common practice"),
        Input("usable", "usable cloth width", default="40 in | 1 m", because="common practice", sane="1 in..150 in"),
    ),
    (
        Step("edge", "Go round the quilt", "2 * (width + length)", label="edge"),
        Step("needed", "Add for joins", "edge + joins", label="binding needed"),
        Step("strips", "Share by the cloth width", "needed / usable", COUNT, COUNT_UP, noun="strip"),
    ),
)
TRIANGLES = rule(
    "half-square triangles",
    (a("finished", "finished size"), Input("allowance", "seam allowance", default="7/8 in", because="geometry")),
    (Step("cut", "Add the allowance", "finished + allowance", rounding=PATCH_CUT),),
)
CIRCLE = rule(
    "circle skirt",
    (a("waist", "waist"), Input("part", "part of a circle", RATIO, default="1", because="a full circle")),
    (Step("radius", "Divide", "waist / (2 * pi * part)", rounding=WAIST_RADIUS),),
)
SHRINK = rule(
    "shrinkage",
    (a("need", "length needed"), a("shrinks", "shrinkage", PERCENT, sane="0 %..50 %")),
    (Step("cut", "Divide by what is left", "need / (1 - shrinks)", rounding=BUY_CLOTH),),
)
SWAP = rule(
    "width swap",
    (a("length", "pattern length"), a("width", "pattern width"), a("other", "other width")),
    (Step("buy", "Keep the area", "length * width / other", rounding=BUY_CLOTH),),
)
ELASTIC = rule(
    "elastic",
    (a("waist", "waist"), Input("share", "share", PERCENT, default="92 %", because="usual"), a("overlap", "overlap")),
    (Step("cut", "Take the share and add the overlap", "waist * share + overlap", rounding=CUT),),
)
STITCHED = rule(
    "stitches",
    (
        a("width", "finished width"), a("tension", "tension", STITCH_RATE),
        Input("multiple", "multiple", COUNT, default="4", because="the pattern"),
        Input("over", "over", STITCHES, default="2", because="the pattern"),
    ),
    (
        Step("stitches", "Make it a multiple", "round((width * tension - over) / multiple) * multiple + over",
             STITCHES, STITCH),
    ),
)  # fmt: skip
CLOTH = rule(  # a border all round: cloth area from the panel's side
    "bordered square",
    (a("side", "side of the square", sane="1 in..100 in"), a("border", "border")),
    (Step("cloth", "Multiply the sides", "(side + border) * (side + 2 * border)", AREA),),
)
DIAGONAL = rule(
    "square on point",
    (a("side", "side of the square"),),
    (Step("across", "Measure corner to corner", "sqrt(2 * side ^ 2)", rounding=CUT),),
)
DROPS = rule(
    "pattern repeat",
    (a("cloth", "cloth in hand"), a("drop", "drop"), a("repeat", "repeat")),
    (
        Step("cut", "Go up to whole repeats", "ceil(drop / repeat) * repeat", label="each drop"),
        Step("drops", "See how many go in", "cloth / cut", COUNT, COUNT_DOWN, noun="drop"),
    ),
)
BUDGET = rule(
    "what a budget buys",
    (a("money", "budget", MONEY), a("price", "price", PRICE)),
    (Step("buys", "Divide", "money / price", rounding=BUDGET_DOWN),),
)
COST = rule(
    "cost of cloth",
    (a("length", "length needed"), a("price", "price", PRICE)),
    (
        Step("buy", "Round up to buy", "length", rounding=BUY_CLOTH),
        Step("cost", "Multiply", "rounded(buy) * price", MONEY, PENNY),
    ),
)


def cut_pieces(run: Run) -> Outcome:
    """Pieces from a length, each followed by a cut, by taking them off one by one."""
    left, pieces = run.get("cloth"), 0
    while left >= run.get("piece") and pieces < 5000:
        left, pieces = left - run.get("piece") - run.get("kerf"), pieces + 1
    return Outcome({"pieces": Fraction(pieces)})


PIECES = rule(
    "pieces from a length",
    (a("cloth", "cloth", sane="1 in..1000 in", example="36 in"), a("piece", "piece", sane="1/2 in..100 in"),
     Input("kerf", "waste at each cut", default="0 in", because="none", sane="0 in..1 in")),
    (Step("pieces", "Cut them off", "", COUNT, COUNT_DOWN, noun="piece"),),
    algorithm=cut_pieces,
)  # fmt: skip


def value(text: str) -> Given:
    """A test's number: "40 in", "20 %", "7"."""
    number, _, unit = text.partition(" ")
    return Given(Fraction(number) * factor(unit), unit or "1", text)


def ask(which: Rule, unknown: str, stated: tuple[str, str], largest: bool | None = None, tied: tuple[str, ...] = (),
        system: str = "in", shop: str = "", **known: str) -> Found:  # fmt: skip
    values = {name: value(text) for name, text in known.items()}
    if shop:
        values["shop_step"] = value(shop)
    request = Request(which.topic, values, {stated[0]: value(stated[1])}, system=system)
    return find(which, request, unknown, stated[0], largest, tied)


def inches(found: Found) -> Fraction:
    return Fraction(found.value) / INCH


# -- the forms of sum -----------------------------------------------------------------------------------------------


def test_the_biggest_square_quilt_that_seven_strips_bind() -> None:
    # By hand: 7 strips of 40 in are 280 in, less 10 in for joins leaves 270 in, a quarter of it is 67 1/2 in.
    found = ask(BINDING, "width", ("strips", "7"), tied=("length",))
    assert (inches(found), found.side) == (Fraction(135, 2), "most")
    assert found.checked == "Put forward again: 67 1/2 in gives 7 strips."
    assert [line.result for line in found.lines] == ["7 strips", "280 in", "270 in", "135 in", "67 1/2 in"]


def test_the_working_of_a_backwards_answer_can_be_followed() -> None:
    found = ask(BINDING, "width", ("strips", "7"), length="60 in")
    assert [(line.step, line.formula, line.numbers, line.result) for line in found.lines] == [
        ("Before it is rounded, the strips may be at most 7 strips", "", "", "7 strips"),
        ("Multiply by the usable cloth width", "binding needed = strips × usable cloth width", "7 strips × 40 in",
         "280 in"),
        ("Take off the joins and corners", "edge = binding needed − joins and corners", "280 in − 10 in", "270 in"),
        ("Divide by 2", "quilt width + quilt length = edge ÷ 2", "270 in ÷ 2", "135 in"),
        ("Take off the quilt length", "quilt width = that − quilt length", "135 in − 60 in", "75 in"),
    ]


def test_the_smallest_quilt_that_still_takes_seven_strips_takes_more_than_six() -> None:
    # By hand: 6 strips bind a square of (240 - 10) / 4 = 57 1/2 in, so seven start at the next eighth.
    found = ask(BINDING, "width", ("strips", "7"), largest=False, tied=("length",))
    assert (inches(found), found.side) == (Fraction(461, 8), "least")


def test_the_narrowest_cloth_for_five_strips_is_rounded_up() -> None:
    # By hand: round 40 x 47 in are 174 in, and 10 in for joins make 184 in; a fifth is 36.8 in, up to 36 7/8 in.
    found = ask(BINDING, "usable", ("strips", "5"), width="40 in", length="47 in")
    assert (inches(found), found.side) == (Fraction(295, 8), "least")


def test_a_default_of_the_unknown_is_not_used() -> None:
    assert ask(BINDING, "joins", ("strips", "7"), width="60 in", length="72 in").value == 16 * INCH


def test_half_square_triangles_from_a_cut_square() -> None:
    found = ask(TRIANGLES, "finished", ("cut", "4.875 in"))
    assert (inches(found), found.side) == (4, "most")


def test_the_waist_of_a_circle_skirt_from_its_radius() -> None:
    found = ask(CIRCLE, "waist", ("radius", "4.5 in"))  # by hand: 4.5 x 2 x 3.14159 = 28.27 in
    assert (inches(found), found.side) == (Fraction(113, 4), "only")
    assert math.isclose(float(found.exact) / 25.4, 9 * math.pi)


def test_shrinkage_for_each_unknown() -> None:
    # By hand: 2.5 m less 8 % is 2.3 m; and 2.3 m cut at 2.5 m may shrink by 8 %.
    need = ask(SHRINK, "need", ("cut", "2.5 m"), system="cm", shrinks="8 %")
    assert (need.value, need.side) == (2300, "most")
    percent = ask(SHRINK, "shrinks", ("cut", "2.5 m"), system="cm", need="2.3 m")
    assert (percent.value, percent.side) == (Fraction(8, 100), "most")


def test_the_narrowest_width_that_a_length_in_hand_allows() -> None:
    # By hand: 3 m x 114 cm / 2.4 m = 142.5 cm.
    found = ask(SWAP, "other", ("buy", "2.4 m"), system="cm", length="3 m", width="114 cm")
    assert (found.value, found.side) == (1425, "least")


def test_a_length_in_hand_need_be_no_multiple_of_the_shops_step() -> None:
    found = ask(SWAP, "length", ("buy", "2.43 m"), system="cm", shop="50 cm", width="114 cm", other="150 cm")
    assert found.value == 3197  # by hand: 2.43 x 150 / 114 = 3.19737 m
    assert found.checked == "Put forward again: 319.7 cm needs 2.43 m, within 2.43 m."


def test_elastic_backwards() -> None:
    found = ask(ELASTIC, "waist", ("cut", "26.76 in"), overlap="1 in")  # by hand: 25.76 / 0.92 = 28
    assert (inches(found), found.side) == (28, "only")


def test_stitches_to_a_multiple_backwards() -> None:
    found = ask(STITCHED, "width", ("stitches", "102 st"), system="cm", tension="20 st/10cm")
    assert found.value == 510  # by hand: 102 stitches at 2 to 1 cm are 51 cm
    assert found.checked == "Put forward again: 51 cm gives 102 stitches."


def test_stitches_no_multiple_reaches_say_what_they_give() -> None:
    found = ask(STITCHED, "width", ("stitches", "101 st"), system="cm", tension="20 st/10cm")
    assert found.checked.endswith("gives 102 stitches, the nearest to 101 stitches.")


def test_a_quadratic_is_solved_exactly() -> None:
    found = ask(CLOTH, "side", ("cloth", "80 in^2"), border="2 in")  # by hand: 8 x 10 with 2 in of border: 6 in
    assert (found.value, found.exact, found.side) == (6 * INCH, 6 * INCH, "only")


def test_a_root_and_the_side_itself_are_solved_together() -> None:
    right = rule("right triangle", (a("side", "side"),), (Step("round", "Go round", "2 * side + sqrt(2 * side ^ 2)",
                                                               rounding=CUT),))  # fmt: skip
    found = ask(right, "side", ("round", "17.0711 in"))  # by hand: 5 + 5 + 7.0711
    assert inches(found) == 5


def test_a_square_root_is_turned_round() -> None:
    found = ask(DIAGONAL, "side", ("across", "8.5 in"))  # by hand: 8.5 / 1.4142 = 6.0104
    assert inches(found) == 6


def test_cloth_for_four_drops_is_the_least_that_does() -> None:
    # By hand: 170 cm at a repeat of 60.96 cm is 3 repeats, 182.88 cm; four of them are 731.52 cm.
    found = ask(DROPS, "cloth", ("drops", "4"), system="cm", drop="170 cm", repeat="24 in")
    assert (found.value, found.exact, found.side) == (7316, Fraction("7315.2"), "least")


def test_the_longest_drop_goes_to_whole_repeats() -> None:
    # By hand: 9 m over 4 is 225 cm, three whole repeats of 60.96 cm are 182.88 cm.
    found = ask(DROPS, "drop", ("drops", "4"), system="cm", cloth="9 m", repeat="24 in")
    assert (found.value, found.side) == (1828, "most")


def test_the_dearest_cloth_a_budget_bears() -> None:
    found = ask(BUDGET, "price", ("buys", "3 yd"), money="20 GBP")  # by hand: 20 / 3 = 6.666, down to 6.66
    assert (found.value * factor("yd"), found.side) == (Fraction(666, 100), "most")


def test_a_cost_that_is_rounded_on_the_way_is_kept_within() -> None:
    # By hand: 30 at 8 a metre is 3.75 m, and cloth is sold by 10 cm: 3.7 m.
    found = ask(COST, "length", ("cost", "30"), system="cm", price="8 GBP/m")
    assert (found.value, found.side) == (3700, "most")


def test_an_algorithm_is_searched_on_both_sides() -> None:
    most = ask(PIECES, "piece", ("pieces", "7"), cloth="45 in")  # by hand: 45 / 7 = 6.43, down to 6 3/8
    assert (inches(most), most.side) == (Fraction(51, 8), "most")
    least = ask(PIECES, "cloth", ("pieces", "7"), piece="6 in", kerf="0.25 in")  # by hand: 7 x 6 + 6 x 1/4
    assert (inches(least), least.side) == (Fraction(87, 2), "least")
    assert least.lines[-1].numbers == "43 1/2 in gives 7 pieces; 43 3/8 in gives 6 pieces"


def test_a_search_on_the_other_side() -> None:
    found = ask(PIECES, "cloth", ("pieces", "7"), largest=True, piece="6 in")  # by hand: short of 48 in, where 8 go in
    assert (inches(found), found.side) == (Fraction(383, 8), "most")


def test_a_rules_own_formula_is_used() -> None:
    own = rule("cubed", (a("side", "side"),), (Step("volume", "Cube", "side * side * side", AREA, COUNT_UP),),
               backwards={"side": "volume / 100"})  # fmt: skip
    with pytest.raises(Impossible):  # the formula is wrong on purpose: it is used, and found out by putting it forward
        ask(own, "side", ("volume", "1000000"))


def test_an_own_formula_that_is_right_answers() -> None:
    own = rule("swap", SWAP.inputs, SWAP.steps, backwards={"other": "length * width / buy"})
    found = ask(own, "other", ("buy", "2.4 m"), system="cm", length="3 m", width="114 cm")
    assert (found.value, found.side) == (1425, "least")
    assert found.lines[-1].formula == "other width = pattern length × pattern width ÷ buy"


def test_an_own_formula_may_need_no_stated_result() -> None:
    own = rule("swap", SWAP.inputs, SWAP.steps, backwards={"other": "length * width / (length - width)"})
    given = {"length": value("6 in"), "width": value("2 in")}  # by hand: 6 x 2 / 4 = 3 in, with which 4 in are bought
    found = find(own, Request("swap", given), "other", "")
    assert (inches(found), found.side) == (3, "only")
    assert found.checked == "Put forward again: 3 in gives 1/8 yd."


def test_defaults_that_are_formulas_are_followed() -> None:
    square = rule(
        "square table", (a("width", "width"), Input("length", "length", default=Default("=width", derived=True))),
        (Step("edge", "Go round", "2 * (width + length)"),),
    )  # fmt: skip
    assert ask(square, "width", ("edge", "100 in")).value == 25 * INCH


def test_a_choice_settles_the_branch() -> None:
    ways = rule(
        "hem", (a("side", "side"), choice("way", "way", {"once": ("once",), "twice": ("twice",)}, "once", "plain")),
        (Step("single", "Add once", "side + 1 * side", when={"way": "once"}), Step("cut", "Take it", "single")),
    )  # fmt: skip
    assert ask(ways, "side", ("cut", "9 in")).value == Fraction(9, 2) * INCH


def test_a_sum_of_several_is_found_as_one() -> None:
    times = Input("times", "times", RATIO, default="5/2", because="usual")
    thread = rule("thread", (a("seams", "seams", many=True), times),
                  (Step("thread", "Multiply", "sum(seams) * times", rounding=BUY_CLOTH),))  # fmt: skip
    assert ask(thread, "seams", ("thread", "5 m"), system="cm").value == 2000


# -- sums of the trade, with answers worked by hand ------------------------------------------------------------------


@pytest.mark.parametrize(
    ("formula", "rounding", "stated", "system", "expected"),
    [
        # Quarter-square triangles are cut 1 1/4 in over: 6 1/2 - 1 1/4 = 5 1/4 in.
        ("x + 31.75", PATCH_CUT, "6.5 in", "in", "5.25 in"),
        # The middle of a square in a square: (4 3/4 - 1/2) x 1.4142 = 6.01 in, and 6 in fits.
        ("x / sqrt(2) + 12.7", PATCH_CUT, "4.75 in", "in", "6 in"),
        # A cloth 150 cm wide on a table of 90 cm, hemmed twice 2.5 cm: (150 - 90 - 4 x 2.5) / 2 = 25 cm.
        ("900 + 2 * x + 4 * 25", CUT, "150 cm", "cm", "25 cm"),
        # A finished waist of 78 cm with 4 cm of ease is meant for 78 - 4 = 74 cm.
        ("x + 40", CUT, "78 cm", "cm", "74 cm"),
        # Four inches stretched by 75 % reach 4 x 1.75 = 7 in.
        ("x / (1 + 3/4)", CUT, "4 in", "in", "7 in"),
    ],
)
def test_sums_worked_by_hand(formula: str, rounding: Any, stated: str, system: str, expected: str) -> None:
    worked = rule("worked", (a("x", "size"),), (Step("cut", "Work it", formula, rounding=rounding),))
    assert ask(worked, "x", ("cut", stated), system=system).value == value(expected).value


def test_the_radius_of_a_hem_five_metres_round() -> None:
    hem = rule("hem sweep", (a("radius", "radius"),), (Step("sweep", "Go round", "2 * pi * radius", rounding=CUT),))
    found = ask(hem, "radius", ("sweep", "500 cm"), system="cm")
    assert math.isclose(float(found.exact), 5000 / (2 * math.pi))  # by hand: 79.577 cm
    assert abs(found.value - Fraction("795.77")) < Fraction(1, 2)  # to the millimetre of a ruler


# -- what cannot be -------------------------------------------------------------------------------------------------


def test_too_few_strips_are_explained() -> None:
    with pytest.raises(Impossible) as error:
        ask(BINDING, "width", ("strips", "1"), length="60 in")
    assert str(error.value) == (
        "With these numbers no quilt width gives 1 strip: it would have to be -45 in, and I take "
        "1 in to 300 in. 60 in gives 7 strips, for example: type a result nearer to that."
    )


def test_two_inputs_that_are_each_the_others_default_are_asked_for() -> None:
    either = rule(
        "sides", (Input("width", "width", default=Default("=length", derived=True)),
                  Input("length", "length", default=Default("=width", derived=True)), a("border", "border")),
        (Step("edge", "Go round", "2 * (width + length) + border"),),
    )  # fmt: skip
    with pytest.raises(Needs):
        ask(either, "border", ("edge", "100 in"))


def test_the_least_that_costs_just_so_much() -> None:
    # By hand: 29.60 at 8 a metre is 3.7 m, bought for anything over 3.6 m; no length costs 30.
    assert ask(COST, "length", ("cost", "29.60"), largest=False, system="cm", price="8 GBP/m").value == 3601
    with pytest.raises(Impossible, match="there is no smallest length needed that gives just that"):
        ask(COST, "length", ("cost", "30"), largest=False, system="cm", price="8 GBP/m")


def test_a_step_that_does_not_come_up() -> None:
    ways = rule(
        "hem", (a("side", "side"), choice("way", "way", {"once": ("once",), "twice": ("twice",)}, "once", "plain")),
        (Step("twice", "Double it", "2 * side", when={"way": "twice"}),),
    )  # fmt: skip
    with pytest.raises(Impossible, match="The twice does not come up with these choices"):
        ask(ways, "side", ("twice", "9 in"))


def test_a_missing_value_is_asked_for() -> None:
    with pytest.raises(Needs) as error:
        ask(SWAP, "other", ("buy", "2.4 m"), length="3 m")
    assert error.value.name == "width"


def test_an_input_that_makes_no_difference() -> None:
    idle = rule("idle", (a("side", "side"), a("colour", "colours", COUNT)), (Step("cut", "Take it", "2 * side"),))
    with pytest.raises(Impossible, match="The colours makes no difference to the cut"):
        ask(idle, "colour", ("cut", "4 in"), side="2 in")


def test_an_input_that_may_not_be_asked_for() -> None:
    kept = rule("kept", SWAP.inputs, SWAP.steps, no_unknown=("width",))
    with pytest.raises(Impossible, match=r"cannot be worked back to the pattern width\..* pattern length"):
        ask(kept, "width", ("buy", "4 in"), length="2 in", other="3 in")


def test_a_result_that_goes_up_and_down_is_refused() -> None:
    wavy = rule("wavy", (a("side", "side", COUNT, sane="1..40"),), (Step("out", "Make it", "", COUNT),),
                algorithm=lambda run: Outcome({"out": (run.get("side") - 20) ** 2}))  # fmt: skip
    with pytest.raises(Impossible, match="goes up and down"):
        ask(wavy, "side", ("out", "17"))


def test_a_value_outside_of_sense_is_refused_by_searching_too() -> None:
    with pytest.raises(Impossible, match="beyond any cloth I take"):
        ask(PIECES, "cloth", ("pieces", "1"), piece="0.5 in")  # by hand: 1/2 in, and 1 in is the least taken


def test_a_result_out_of_reach_is_refused() -> None:
    with pytest.raises(Impossible, match="even the largest cloth I take"):
        ask(PIECES, "cloth", ("pieces", "900"), piece="6 in")


def test_a_value_that_cannot_be_wrong() -> None:
    limited = rule(
        "limited", (a("side", "side"),),
        (Step("cut", "Take the greater", "max(side, 50.8)", rounding=PATCH_CUT),
         Step("drops", "Go down", "max(side, 50.8) / 25.4", COUNT, COUNT_DOWN)),
    )  # fmt: skip
    assert ask(limited, "side", ("cut", "2 in")).value == 2 * INCH
    assert ask(limited, "side", ("drops", "3")).value == 3 * INCH
    with pytest.raises(Impossible, match="Any side will do for 2: the drops keeps to that"):
        ask(limited, "side", ("drops", "2"))
    with pytest.raises(Impossible, match="no side makes the cut 1 in"):
        ask(limited, "side", ("cut", "1 in"))


# -- for all numbers ------------------------------------------------------------------------------------------------

eighths = st.integers(8, 1600).map(lambda n: Fraction(n, 8))


def forward(which: Rule, target: str, system: str = "in", **values: Any) -> tuple[Any, Any]:
    request = Request(which.topic, {name: Given(number, "1", "") for name, number in values.items()}, system=system)
    run = Run(which, request)
    return run.get(target), run.rounded(target)


@settings(max_examples=60, deadline=None)
@given(st.integers(3, 30), eighths, st.integers(4, 480).map(lambda n: Fraction(n, 4)))
def test_binding_uses_the_strips_and_no_more(strips: int, length: Fraction, usable: Fraction) -> None:
    try:
        found = ask(BINDING, "width", ("strips", str(strips)), length=f"{length} in", usable=f"{usable} in")
    except Impossible:  # by hand: outside 1 in to 300 in
        exact = (strips * usable - 10) / 2 - length
        assert exact < Fraction(9, 8) or exact > 300
        return
    assert forward(BINDING, "strips", width=found.value, length=length * INCH, usable=usable * INCH)[1] <= strips
    more = found.value + INCH / 8
    assert (2 * (more + length * INCH) + 10 * INCH) / (usable * INCH) > strips


@settings(max_examples=60, deadline=None)
@given(eighths, st.integers(0, 500))
def test_what_shrinks_back_is_what_was_needed(need: Fraction, thousandths: int) -> None:
    percent = Fraction(thousandths, 1000)
    exact, _ = forward(SHRINK, "cut", need=need * INCH, shrinks=percent)
    request = Request("shrinkage", {"shrinks": Given(percent, "%", "")}, {"cut": Given(exact, "in", "")})
    assert find(SHRINK, request, "need", "cut").value == need * INCH


LINKS = {  # a formula of the step before, and whether it falls as that rises
    "{0} + 3": False, "{0} * 3 / 7": False, "{0} / 5": False, "20000 / ({0} + 1)": True, "ceil({0} / 4) * 5": False,
    "floor({0} / 3) * 2 + 1": False, "round({0} / 6) * 4": False, "rounded({0}) + 1": False, "10 ^ 10 - {0}": True,
    "{0} ^ 2 / 100": False, "max({0}, 2)": False,
}  # fmt: skip
ROUNDED = (None, CUT, BUY_CLOTH, COUNT_DOWN)


@settings(max_examples=150, deadline=None)
@example([("{0} * 3 / 7", BUY_CLOTH), ("rounded({0}) + 1", None)], 200, False)
@given(
    st.lists(st.tuples(st.sampled_from(sorted(LINKS)), st.sampled_from(ROUNDED)), min_size=1, max_size=4)
    .filter(lambda links: all(sum(sign in text for text, _ in links) < 2 for sign in "-^")),  # stays above nought
    st.integers(200, 4000),
    st.booleans(),
)
def test_any_chain_of_sums_is_turned_round_to_its_very_edge(links: Any, millimetres: int, up: bool) -> None:
    """The value fits, and a millimetre further on its side does not."""
    steps = [Step("s0", "Start", "x", rounding=CUT)]
    for i, (text, rounding) in enumerate(links):
        steps.append(Step(f"s{i + 1}", "Go on", text.format(f"s{i}"), rounding=rounding))
    last = Step("last", "Round", f"{steps[-1].name} / 8", COUNT, COUNT_UP if up else COUNT_DOWN)
    chain = rule("chain", (a("x", "x"),), (*steps, last))
    stated = forward(chain, "last", "cm", x=Fraction(millimetres))[1]
    request = Request("chain", {}, {"last": Given(stated, "1", "")}, system="cm")
    results = [forward(chain, "last", "cm", x=Fraction(size))[1] for size in (1, 10, 100, 1000, 10_000)]
    if all(got <= stated if up else got >= stated for got in results):
        return  # with nothing to find
    found = find(chain, request, "x", "last")
    falls = sum(LINKS[text] for text, _ in links) % 2 == 1
    assert found.side == ("most" if up is not falls else "least")
    further = found.value + (1 if found.side == "most" else -1)
    got = forward(chain, "last", "cm", x=found.value)[1]
    assert got <= stated if up else got >= stated
    if further > 0:
        over = forward(chain, "last", "cm", x=further)[1]
        assert over > stated if up else over < stated


@settings(max_examples=60, deadline=None)
@given(eighths)
def test_a_root_there_and_back(side: Fraction) -> None:
    exact, _ = forward(DIAGONAL, "across", side=side * INCH)
    request = Request("square on point", {}, {"across": Given(exact, "in", "")})
    assert find(DIAGONAL, request, "side", "across").value == side * INCH


@settings(max_examples=20, deadline=None)
@given(st.integers(8, 800).map(lambda n: Fraction(n, 8)), st.integers(1, 80).map(lambda n: Fraction(n, 8)))
def test_a_quadratic_there_and_back(side: Fraction, border: Fraction) -> None:
    exact, _ = forward(CLOTH, "cloth", side=side * INCH, border=border * INCH)
    known, stated = {"border": Given(border * INCH, "in", "")}, {"cloth": Given(exact, "in^2", "")}
    request = Request("bordered square", known, stated)
    assert find(CLOTH, request, "side", "cloth").value == side * INCH


@settings(max_examples=40, deadline=None)
@given(st.integers(1, 9), st.integers(8, 300).map(lambda n: Fraction(n, 8)), eighths)
def test_the_least_cloth_gives_the_drops_and_less_does_not(drops: int, drop: Fraction, repeat: Fraction) -> None:
    found = ask(DROPS, "cloth", ("drops", str(drops)), drop=f"{drop} in", repeat=f"{repeat} in")
    known = {"drop": drop * INCH, "repeat": repeat * INCH}
    assert forward(DROPS, "drops", cloth=found.value, **known)[1] >= drops
    assert forward(DROPS, "drops", cloth=found.value - INCH / 8, **known)[1] < drops


@settings(max_examples=25, deadline=None)
@given(st.integers(1, 40), st.integers(8, 80).map(lambda n: Fraction(n, 8)))
def test_a_search_agrees_with_division(pieces: int, piece: Fraction) -> None:
    found = ask(PIECES, "cloth", ("pieces", str(pieces)), piece=f"{piece} in")
    assert inches(found) == pieces * piece


def test_no_algebra_is_loaded_where_none_is_needed() -> None:
    code = (
        "import sys; sys.path.insert(0, 'tests/engine'); import test_backwards as t;"
        "t.ask(t.BINDING, 'width', ('strips', '7'), tied=('length',)); print('sympy' in sys.modules)"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.strip() == "False"


def test_several_given_as_items_are_summed_forward() -> None:
    items = (Item(Fraction(254), "in", "10 in", 2),)
    assert forward(rule("t", (a("s", "s", many=True),), (Step("t", "Add", "sum(s)"),)), "t", s=items)[0] == 508
