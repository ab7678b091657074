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

# The tiers whose width may be asked for by their place.
PLACES = {"top": 1, "second": 2, "third": 3, "fourth": 4}
# What is asked of widths alone, forwards or back from the last: no length of skirt is needed for that.
LAST_ALONE = ("last", "edge", "fullness", "middle", *PLACES)


def tiers(run: Run) -> Outcome:
    """Each tier's width, cut depth, panels and cloth, from the top."""
    if run.request.asked[:1] == ("each",) and run.maybe("edge") is None:
        return _depth_alone(run)
    if run.request.asked[:1] and run.request.asked[0] in ("first_depth", "last_depth") and run.maybe("edge") is None:
        return _cut_depths(run)
    edge, number, fullness = run.get("edge"), int(run.get("number")), run.get("fullness")
    number += 1 if run.get("besides") == "yes" else 0
    seam, turn, width = run.get("seam"), run.get("hem"), run.maybe("width")
    unit = run.unit_of(LENGTH)
    if run.request.asked[:1] and run.request.asked[0] in LAST_ALONE and run.maybe("total") is None:
        return _last_only(run, edge, number, fullness)
    depth = _depth(run, number)
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
    values: dict[str, Any] = {"last": flat, "first_depth": rows[0][2], "last_depth": rows[-1][2], "each": depth}
    values |= _by_place([row[1] for row in rows])
    if width is not None:
        run.say("Add up the tiers, each its panels at its cut depth", "sum of panels × cut depth",
                " + ".join(f"{row[3]} × {shown(row[2], unit)}" for row in rows), shown(cloth, unit))  # fmt: skip
        values |= {"cloth": cloth, "panels": panels_in_all, "last_panels": rows[-1][3], "first_panels": rows[0][3]}
    return Outcome(values, table=_table(run, rows))


def _depth(run: Run, number: int) -> Any:
    """The depth of each tier when finished, all alike."""
    unit = run.unit_of(LENGTH)
    depth = run.get("total") / number
    run.say("Equal depths", "total length ÷ tiers", f"{shown(run.get('total'), unit)} ÷ {number}", shown(depth, unit))
    return depth


def _depth_alone(run: Run) -> Outcome:
    """How deep each tier is finished, for which no width is needed."""
    return Outcome({"each": _depth(run, int(run.get("number")))})


def _cut_depths(run: Run) -> Outcome:
    """How deep the tiers are cut, for which no width is needed."""
    number = int(run.get("number")) + (1 if run.get("besides") == "yes" else 0)
    depth, seam = _depth(run, number), run.get("seam")
    last = depth + seam + run.get("hem")
    run.say("Upper tiers have a seam at both edges, the last a seam and the hem", "depth + seams; depth + seam + hem", "",
            f"{run.show(depth + 2 * seam, LENGTH)}; {run.show(last, LENGTH)}")  # fmt: skip
    return Outcome({"first_depth": depth + 2 * seam if number > 1 else last, "last_depth": last})


def _last_only(run: Run, edge: Any, number: int, fullness: Any) -> Outcome:
    """The tiers' widths alone, which need no length."""
    times = number - (1 if run.get("yoke") == "yes" else 0)
    flat = edge * fullness**times
    unit = run.unit_of(LENGTH)
    run.say("Each gathering takes its fullness once more", f"first edge × fullness, {times} times",
            f"{shown(edge, unit)} × {decimal(fullness)} ^ {times}",
            shown(flat, unit))  # fmt: skip
    return Outcome({"last": flat, **_by_place([edge * fullness ** (times - above) for above in reversed(range(number))])})


def _by_place(widths: list[Any]) -> dict[str, Any]:
    """The widths of the tiers that are spoken of by their place, from the top."""
    named = {name: widths[place - 1] for name, place in PLACES.items() if place <= len(widths)}
    return {**named, "middle": widths[len(widths) // 2]} if len(widths) % 2 else named


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


LASTS = ("last", "bottom", "lowest")


def _place(*names: str) -> tuple[str, ...]:
    """How the width of a tier is asked for by its place."""
    return tuple(phrase for name in names for phrase in (f"{name} tier", f"{name} tier width", f"width of the {name} tier",
        f"wide is the {name} tier", f"cut the {name} tier", f"{name} tier cut", f"{name} tier cut how wide", f"{name} one wide"))


PANELS_OF_LAST = tuple(phrase for last in LASTS for phrase in (f"panels does the {last} tier", f"panels in the {last} tier",
    f"panels for the {last} tier", f"panels of the {last} tier", f"panels does the {last} tier take", f"panels does the {last} tier need",
    f"widths does the {last} tier take", f"widths in the {last} tier", f"widths for the {last} tier"))  # fmt: skip
PANELS_OF_FIRST = tuple(phrase.replace("last", "top") if place == "top" else phrase.replace("last", "first")
    for place in ("top", "first") for phrase in PANELS_OF_LAST if "last" in phrase)  # fmt: skip

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
                                                     "finished length", "drop", "tiers over", "over"), axis="length",
              default=Default("=depth * number", "The tiers are all of one depth", given=("depth",), derived=True),
              ask="How long are the tiers together?", example="75 cm", sane="3 cm..5 m", usual="20 cm..1.5 m",
              practice="60 cm..90 cm by 6 cm"),
        Input("number", "number of tiers", COUNT, says=("tier", "tiers", "tiered", "layers", "number of tiers"),
              noun="tier", ask="How many tiers?", example="3",
              sane="1..12", usual="2..6", practice="2..5"),
        Input("depth", "finished depth of one tier", LENGTH,
              says=("deep each", "tiers of", "each deep", "tiers each", "finished each", "depth of each tier", "tier depth", "tiers are",
                    "each finished", "deep tiers", "deep"),
              extra=True, spoken=True, sane="1 cm..2 m", usual="5 cm..60 cm"),
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
        # "A flat yoke, then two more tiers under it": the yoke is the first tier, and not among those.
        flag("besides", "tiers besides the yoke", ("more tiers", "other tiers", "tiers under it", "tiers below it", "gathered tiers under",
                                                   "gathered tiers below", "further tiers")),
        SEAM, hem("3/4 in | 2 cm", "the usual narrow hem"),
    ),
    steps=(
        Step("cloth", "The cloth for all the tiers", rounding=BUY_CLOTH, label="cloth to buy", says=("how much",
            "fabric", "cloth", "yardage",
             "how many metres", "how many yards", "buy", "total cloth", *BUY_WORDS)),
        Step("panels", "Panels in all", kind=COUNT, rounding=COUNT_NEAR, noun="panel", says=("how many panels",
            "panels in all", "strips", "number of panels", "panels altogether", "total panels", "how many strips", "how many widths")),
        Step("last_panels", "Panels of the last tier", kind=COUNT, rounding=COUNT_NEAR, label="panels of the last tier",
             says=PANELS_OF_LAST),
        Step("first_panels", "Panels of the first tier", kind=COUNT, rounding=COUNT_NEAR, label="panels of the first tier",
             says=PANELS_OF_FIRST),
        Step("last", "The last tier before gathering", rounding=CUT, label="width of the last tier",
             says=("last tier", "bottom tier", "how wide is the bottom tier", "how wide is the last tier", "bottom",
                   "hem width", "widest tier", "last one", "bottom one", "lowest tier", "the last", "is the last one",
                   "does the hem measure", "hem measure", "hem come to", "does the hem come to",
                   "far round is the hem", "round the hem", "round the bottom"),
             stated=("bottom tier is", "bottom tier of", "bottom tier", "last tier", "last tier is", "bottom tier was", "last tier was",
             "tier skirt measures", "bottom tier measures", "last tier measures",
                     "tiered skirt measures")),
        Step("first_depth", "Cut depth of the upper tiers", rounding=CUT, label="cut depth of the upper tiers",
             says=("cut depth", "how deep", "deep", "how deep to cut", "cut depth of each", "cut each tier", "cut depth of the upper tiers",
                   "cut the upper tiers", "upper tiers", "cut depth of the top tier", "cut the top tiers", "deep do i cut each",
                   "cut the upper tiers deep", "upper tiers deep")),
        Step("last_depth", "Cut depth of the last tier", rounding=CUT, label="cut depth of the last tier",
             says=tuple(phrase for last in LASTS for phrase in (f"cut depth of the {last} tier", f"{last} tier cut depth",
                                                                f"cut the {last} tier", f"deep do i cut the {last} tier",
                                                                f"deep to cut the {last} tier", f"depth of the {last} tier",
                                                                f"deep is the {last} tier cut", f"{last} tier cut how deep"))),
        Step("each", "Share the length out evenly", rounding=CUT, label="finished depth of each tier",
             says=("deep is each tier", "finished depth of each tier", "depth of each tier", "each tier finished",
                   "each tier when finished",
                   "deep is each tier when finished", "deep is each finished tier", "long is each tier", "each tier finish",
                   "deep does each tier finish", "finished depth of a tier", "length of each tier", "deep each tier",
                   "finished tier depth", "deep does each finish",
                   "deep does each one finish", "deep will each finish", "deep is each one", "long does each tier finish")),
        Step("whole", "All the tiers, one under another", "depth * number", rounding=CUT, label="length of all the tiers",
             says=("long is the skirt", "long is it altogether", "long will the skirt be", "long will it be",
              "long does the skirt come out",
                   "long is the whole skirt", "long is it in all", "length of the skirt")),
        Step("top", "The first tier before gathering", rounding=CUT, label="width of the first tier", says=_place("top", "first")),
        Step("second", "The second tier before gathering", rounding=CUT, label="width of the second tier", says=_place("second", "2nd")),
        Step("third", "The third tier before gathering", rounding=CUT, label="width of the third tier", says=_place("third", "3rd")),
        Step("fourth", "The fourth tier before gathering", rounding=CUT, label="width of the fourth tier", says=_place("fourth", "4th")),
        Step("middle", "The middle tier before gathering", rounding=CUT, label="width of the middle tier", says=_place("middle")),
    ),
    answers=("cloth", "panels", "last", "first_depth", "last_depth"),
    headline=("Buy {cloth}: {panels} in all; the last tier is {last} wide.",
              "The last tier is {last} wide; cut the upper tiers {first_depth} deep."),
    algorithm=tiers,
    source=COMMON_PRACTICE + "; published ratios: first tier 1 to 1 1/2, each later 1 1/2 to 2 times the one above",
    related=("gathered strip",),
    defers=("gathered strip",),
    examples=(
        "tiered skirt, 3 tiers, waist 70 cm, 75 cm long, 1.5 fullness, 140 cm cloth -> 1.5 m; 5 panels; 236.3 cm",
        "3 tiers from a 28 in waist, 30 in long, how wide is the bottom tier -> 94 1/2 in",
        "tiered skirt of 4 tiers, first edge 1 m, total length 80 cm, twice as full at 2 times, flat yoke, cloth 150 "
        "cm wide, how much -> 2.8 m; 12 panels",
    ),
)
