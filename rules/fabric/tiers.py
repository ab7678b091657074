"""A tiered skirt: each tier gathered into the one above."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from ..engine.answer import Table
from ..engine.declare import COMMON_PRACTICE, Default, Input, Rule, Step, flag
from ..engine.kinds import COUNT, LENGTH, RATIO
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_NEAR, COUNT_UP, CUT, apply
from ..engine.run import Run
from ..engine.text import decimal, plain, shown
from ..engine.units import factor
from .gathered_strip import NAMED_FULLNESS
from .words import BUY_WORDS, CLOTH_WIDTH, SEAM, hem

# What is asked of the last tier alone, forwards or back from it: no length of skirt is needed for that.
LAST_ALONE = (("last",), ("edge",), ("fullness",))


def tiers(run: Run) -> Outcome:
    """Each tier's width, cut depth, panels and cloth, from the top."""
    edge, number, fullness = run.get("edge"), int(run.get("number")), run.get("fullness")
    seam, turn, width = run.get("seam"), run.get("hem"), run.maybe("width")
    unit = run.unit_of(LENGTH)
    if run.request.asked[:1] in LAST_ALONE and run.maybe("total") is None:
        return _last_only(run, edge, number, fullness)
    depth = run.get("total") / number
    run.say("Equal depths", "total length ÷ tiers", f"{shown(run.get('total'), unit)} ÷ {number}", shown(depth, unit))
    rows, cloth, panels_in_all, flat = [], Fraction(0), Fraction(0), edge
    for tier in range(1, number + 1):
        if tier > 1 or run.get("yoke") == "no":
            flat = flat * fullness
        cut = depth + 2 * seam if tier < number else depth + seam + turn
        run.say(f"Tier {tier}: the edge above at its fullness, and its depth with seams", "width; cut depth", "",
                f"{shown(flat, unit)} wide; {shown(cut, unit)} deep")  # fmt: skip
        row: list[Any] = [tier, flat, cut]
        if width is not None:
            panels = apply(flat / (width - 2 * seam), COUNT_UP.of(run.system))
            cloth, panels_in_all = cloth + panels * cut, panels_in_all + panels
            row += [panels, panels * cut]
        rows.append(row)
    values: dict[str, Any] = {"last": flat, "first_depth": rows[0][2], "last_depth": rows[-1][2]}
    if width is not None:
        run.say("Add up the tiers, each its panels at its cut depth", "sum of panels × cut depth",
                " + ".join(f"{row[3]} × {shown(row[2], unit)}" for row in rows), shown(cloth, unit))  # fmt: skip
        values |= {"cloth": cloth, "panels": panels_in_all}
    return Outcome(values, table=_table(run, rows))


def _last_only(run: Run, edge: Any, number: int, fullness: Any) -> Outcome:
    """The last tier's width alone, which needs no length."""
    times = number - (1 if run.get("yoke") == "yes" else 0)
    flat = edge * fullness**times
    unit = run.unit_of(LENGTH)
    run.say("Each gathering takes its fullness once more", f"first edge × fullness, {times} times",
            f"{shown(edge, unit)} × {decimal(fullness)} ^ {times}",
            shown(flat, unit))  # fmt: skip
    return Outcome({"last": flat})


def _table(run: Run, rows: list[list[Any]]) -> Table:
    unit, cut = run.unit_of(LENGTH), CUT.of(run.system)
    columns = (("tier", "1"), ("width", unit), ("cut depth", unit), ("panels", "panel"), ("cloth",
        unit))[: len(rows[0])]
    made, texts = [], []
    for row in rows:
        sizes = [apply(row[1], cut), apply(row[2], cut)]
        values = [row[0], *(plain(size / factor(unit)) for size in sizes)]
        words = [str(row[0]), *(shown(size, unit) for size in sizes)]
        if len(row) > 3:
            values += [plain(row[3]), plain(row[4] / factor(unit))]
            words += [shown(row[3], "1", "panel"), shown(row[4], unit)]
        made.append(tuple(values))
        texts.append(tuple(words))
    return Table(columns, tuple(made), tuple(texts))


TIERS = Rule(
    topic="tiers",
    family="fabric",
    says=("tier", "tiers", "tiered", "tiered skirt", "tiered dress", "prairie skirt", "skirt", "gypsy skirt",
          "peasant skirt", "ruffled tiers"),
    about="Each tier of a tiered skirt: its width, its cut depth, its panels, and the cloth.",
    inputs=(
        Input("edge", "first edge", LENGTH, says=("waist", "edge", "first edge", "waistband", "top edge", "yoke",
                                                  "into", "from", "waistline", "hip", "hips", "starting at",
                                                  "starting from", "starts from", "starts at", "starting edge",
                                                  "begins at", "whose waist", "waist edge", "edge at the top"),
              ask="How long is the edge the first tier is sewn to?", example="70 cm", sane="2 cm..20 m",
              usual="40 cm..3 m", practice="60 cm..100 cm by 4 cm"),
        Input("total", "total length", LENGTH, says=("long", "length", "total length", "in all", "skirt length",
                                                     "finished length", "drop"), axis="length",
              ask="How long are the tiers together?", example="75 cm", sane="3 cm..5 m", usual="20 cm..1.5 m",
              practice="60 cm..90 cm by 6 cm"),
        Input("number", "number of tiers", COUNT, says=("tier", "tiers", "tiered", "layers", "number of tiers"),
              noun="tier", ask="How many tiers?", example="3",
              sane="1..12", usual="2..6", practice="2..5"),
        Input("fullness", "fullness", RATIO, says=("fullness", "times", "full", "times full", "as full", "ratio",
                                                   "times the one above"),
              default=(
                  Default("2", derived=True, when={"said_fullness": "double"}),
                  Default("3", derived=True, when={"said_fullness": "triple"}),
                  Default("1 1/2", derived=True, when={"said_fullness": "half_again"}),
                  Default("1 1/2", "the usual fullness of a tier"),
              ), sane="1..5", usual="1.2..2.5", practice="1..2"),
        NAMED_FULLNESS, CLOTH_WIDTH,
        flag("yoke", "flat yoke", ("flat yoke", "first tier flat", "top tier flat", "flat top tier",
                                   "ungathered yoke", "not gathered at the waist",
                                   "first tier not gathered", "first one flat", "the first flat", "top one flat", "top not gathered",
                                   "top tier not gathered", "first not gathered")),
        SEAM, hem("3/4 in | 2 cm", "the usual narrow hem"),
    ),
    steps=(
        Step("cloth", "The cloth for all the tiers", rounding=BUY_CLOTH, label="cloth to buy", says=("how much",
            "fabric", "cloth", "yardage",
             "how many metres", "how many yards", "buy", "total cloth", *BUY_WORDS)),
        Step("panels", "Panels in all", kind=COUNT, rounding=COUNT_NEAR, noun="panel", says=("how many panels",
            "panels in all", "strips")),
        Step("last", "The last tier before gathering", rounding=CUT, label="width of the last tier",
             says=("last tier", "bottom tier", "how wide is the bottom tier", "how wide is the last tier", "bottom",
                   "hem width", "widest tier", "third tier", "last one", "bottom one", "lowest tier", "the last", "is the last one"),
             stated=("bottom tier is", "bottom tier of", "bottom tier", "last tier", "last tier is", "bottom tier was", "last tier was")),
        Step("first_depth", "Cut depth of the upper tiers", rounding=CUT, label="cut depth of the upper tiers",
             says=("cut depth", "how deep", "depth of each tier", "deep")),
        Step("last_depth", "Cut depth of the last tier", rounding=CUT, label="cut depth of the last tier"),
    ),
    answers=("cloth", "panels", "last", "first_depth", "last_depth"),
    headline=("Buy {cloth}: {panels} in all; the last tier is {last} wide.",
              "The last tier is {last} wide; cut the upper tiers {first_depth} deep."),
    algorithm=tiers,
    source=COMMON_PRACTICE + "; published ratios: first tier 1 to 1 1/2, each later 1 1/2 to 2 times the one above",
    related=("gathered strip",),
    examples=(
        "tiered skirt, 3 tiers, waist 70 cm, 75 cm long, 1.5 fullness, 140 cm cloth -> 1.5 m; 5 panels; 236.3 cm",
        "3 tiers from a 28 in waist, 30 in long, how wide is the bottom tier -> 94 1/2 in",
        "tiered skirt of 4 tiers, first edge 1 m, total length 80 cm, twice as full at 2 times, flat yoke, cloth 150 "
        "cm wide, how much -> 2.8 m; 12 panels",
    ),
)
