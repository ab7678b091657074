"""Published rows on cloth put to the fabric rules: widths, gathers, tucks, pleats, circles, shrinkage, matching."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction

from rules.engine.request import Cut, Given
from tests.support import exact, rounded, work

from .harness import Listed, Row

FILE = "dressmaking"
# Rows of the width chart that go by whole lays.
CHART = 31


def last_of(width: str) -> str:
    """A chart's column "44-45 in" stands for its wider cloth."""
    return width.rpartition("-")[2]


# -- widths ----------------------------------------------------------------------------------------------------------


def swapped(row: Row) -> float:
    """The plain proportion, unrounded: the charts round in their own way."""
    made = work("width swap", stated_length=row.get("have_length"), stated_width=last_of(row.get("have_width")),
                width=last_of(row.get("want_width")))
    return exact(made, "cloth", "yd")


def width_conversion(row: Row) -> float | None:
    if row.get("reason"):
        extra = {"one-directional fabric": "one_way", "sleeve cut in one with body": "sleeves"}.get(row.get("reason"))
        if extra is None:
            return None
        base = {"stated_length": "3 yd", "stated_width": "45 in", "width": "60 in"}
        return exact(work("width swap", **base, **{extra: "yes"}), "cloth", "yd") - exact(work("width swap", **base),
            "cloth", "yd")
    if not row.get("have_length") or not row.get("want_width"):
        return None
    return None if by_whole_lays(row) else swapped(row)


def by_whole_lays(row: Row) -> bool:
    """Chart rows more than their 1/8 yd from the plain proportion."""
    of_chart = row.topic == "fabric width conversion" and row.get("lookup").startswith("chart")
    return of_chart and abs(swapped(row) - float(row.expected)) > 0.125


def estimation(row: Row) -> float | None:
    """Marker efficiency, of a piece of 8 sq ft that takes 10 sq ft of cloth."""
    if row.id != "FW-127":
        return None
    piece = Cut(Fraction(24) * Fraction("25.4"), "in", "24 x 48 in", Fraction(1), "piece",
                Fraction(48) * Fraction("25.4"))
    return exact(work("lay plan", pieces=Given((piece,), "in", piece.text), width="30 in"), "used", "%")


# -- gathers and tucks ------------------------------------------------------------------------------------------------

REDUCED = {"1/3": "3", "2/5": "2.5", "one half of original width": "2", "one third of original width": "3"}
# The stated ratios of GA-003 and GA-004.
BALDT = {"straight": "1.5", "bias": "1.25"}


def gathered(row: Row) -> float | None:
    unit = row.unit if row.unit in ("in", "cm", "m") else "cm"
    if row.get("strip_total"):
        made = work("gathered strip", system="cm", edge=row.get("strip_total"), fullness="1",
                    width=row.get("fabric_width"), seam="0 cm",
                    depth=row.get("frill_depth") or "10 cm", hem=row.get("allowance") or "0 cm")  # fmt: skip
        return rounded(made, "panels") if row.unit == "strips" else exact(made, "cloth", "cm")
    if row.get("strips"):
        made = work("gathered strip", system="cm", edge="5.40 m", fullness="1", width="1.10 m", seam="0 cm",
                    depth=row.get("frill_depth"),
                    hem=row.get("allowance"))  # fmt: skip
        return exact(made, "cloth", "cm")
    if row.get("tier"):
        return exact(work("tiers", edge="1 m", total="60 cm", number="1"), "last", "m")
    if row.unit == "ratio":
        cloth = row.get("fabric").partition(" ")[0] or ("sheer" if row.get("curtain") == "sheer" else "")
        if not cloth and row.id != "GA-002":
            return None
        return exact(work("gathered strip", edge="1 m", **({"heaviness": cloth} if cloth else {})), "full", "m")
    edge = row.get("seam") or row.get("space") or row.get("finished") or row.get("frilled_width") or row.get("window")
    reduced = REDUCED.get(row.get("reduced_to") or row.get("gathered_to"))
    fullness = row.get("fullness") or reduced or BALDT.get(row.get("ruffle"), "2")
    if not edge:
        return None
    return exact(work("gathered strip", edge=edge, fullness="2" if row.id == "GA-001" else fullness), "full", unit)


def tucks(row: Row) -> float | None:
    if row.id == "TU-001":
        return exact(work("tucks", finished="10 in", tuck="1 in", number="1"), "taken", "in")
    if row.get("shorten_by"):
        return exact(work("tucks", finished="10 in", number="1", asked="tuck",
                          stated={"taken": row.get("shorten_by")}), unit="in")
    if row.get("ask") == "material per tuck":
        return exact(work("tucks", system="cm", finished="10 cm", tuck=row.get("tuck_width"), number="1"), "taken",
                     "mm")
    if row.get("span"):
        made = work("tucks", system="cm", finished=row.get("span"), tuck="2 mm", number=str(int(row.get("gaps")) + 1))
        return exact(made, "spacing", "cm")
    if not row.get("gap"):
        return None
    given = {"finished": row.get("tucked_width"), "edge": row.get("edge_distance"),
             "tuck": row.get("tuck_width") or "2 mm"}
    made = work("tucks", system="cm", **given,
                **({"gap": row.get("gap")} if row.get("tuck_width") else {"pitch": row.get("gap")}))
    if row.get("ask") == "pattern width":
        return exact(made, "flat", "cm")
    return rounded(made, "count") - (1 if row.get("ask") == "number of gaps" else 0)


# -- pleats -----------------------------------------------------------------------------------------------------------


def pleat_inputs(row: Row) -> dict[str, str]:
    """What a row gives, as the rule's inputs."""
    names = {"pleat_width": "pleat", "pleat_depth": "depth", "fabric_width": "width"}
    given = {into: row.get(name) for name, into in names.items() if row.get(name)}
    section = row.get("pleated_section") or row.get("pleated_width")
    if section:
        given["finished"] = section
    number = row.get("pleats").partition(" ")[0]
    if number.isdigit():
        given["number"] = number
    if number == "one":
        given |= {"number": "1", "kind": row.get("pleats").split()[1]}
    return given


def pleats(row: Row) -> float | None:
    ask, given = row.get("ask"), pleat_inputs(row)
    if "seam_allowance_per_strip" in row.inputs or row.id == "PL-007":
        return pleated_cloth(row, given)
    if row.get("plaits").startswith("touching") or row.id in ("PL-044", "PL-045"):
        return touching(row)
    if "pattern_width" in row.inputs or "strip" in row.inputs:
        return exact(work("pleats", system="cm", asked="finished",
                          stated={"flat": row.get("pattern_width") or row.get("strip")}, **given), unit="cm")
    if ask.startswith("fabric per pleat"):
        return exact(work("pleats", system="cm", finished="1 m", number="1", **given), "takes", "cm")
    if ask == "fabric in all pleats":
        return exact(work("pleats", system="cm", finished="1 m", **given), "flat", "cm") - 100
    if "finished" not in given or "allowance" in row.inputs:
        return None
    made = work("pleats", system="cm", **given)
    if ask == "number of pleats":
        return rounded(made, "count")
    return exact(made, {"pattern width": "flat"}.get(ask.partition(" (")[0], "fits"), "cm")


def pleated_cloth(row: Row, given: dict[str, str]) -> float:
    """The book takes one allowance a strip from the width, its lengths as cut: half of it is our seam, each side."""
    if row.id in ("PL-006", "PL-007"):  # the same worked example as PL-005
        given = {"finished": "92 cm", "number": "18", "depth": "4 cm", "width": "90 cm"}
    seam = Fraction((row.get("seam_allowance_per_strip") or "2 cm").split()[0]) / 2
    length = Fraction((row.get("pleat_length") or "15 cm").split()[0]) - seam
    made = work("pleats", system="cm", length=f"{float(length)} cm", seam=f"{float(seam)} cm", hem="0 cm", **given)
    return rounded(made, "panels") if row.unit == "strips" else exact(made, "cloth", "cm")


def touching(row: Row) -> float:
    """Pleats that meet: cloth for an inch, the step from pleat to pleat, and what one box pleat takes."""
    if row.id == "PL-045":
        return exact(work("pleats", kind="box", finished="20 in", pleat="2 in", number="1"), "takes", "in")
    if row.get("plait_width"):
        made = work("pleats", finished="10 in", pleat=row.get("plait_width"))
        return exact(made, "takes", "in") + exact(made, "fits", "in")
    return exact(work("pleats", finished="1 in"), "flat", "in")


# -- circles, shrinkage, matching, seams -----------------------------------------------------------------------------


def circle(row: Row) -> float | None:
    waist = row.get("circumference") or row.get("waist")
    if row.get("facing"):
        return None
    made = work("circle skirt", system="cm" if row.unit == "cm" else "in", waist=waist,
                fraction=row.get("circle").replace("-", "_"), hem="0 cm",
                length=row.get("length") or "60 cm")  # fmt: skip
    return exact(made, "outer" if row.get("ask") == "outer radius" else "radius", row.unit)


def shrinkage(row: Row) -> float | None:
    if row.get("original") and row.get("shrinkage"):
        original = row.get("original") + ("" if row.get("original").endswith("cm") else " cm")
        return exact(work("shrinkage", system="cm", needed=original, shrink=row.get("shrinkage").replace(" percent",
            " %")), "cloth", "cm")
    if row.status == "from memory":
        return None
    before = row.get("before") or row.get("template") or row.get("original")
    after = row.get("after") or row.get("after_wash")
    if row.get("loss"):
        after = f"{float(before.split()[0]) - float(row.get('loss').split()[0])} in"
    return exact(work("shrink test", before=before, after=after), "lengthways", "%") if before and after else None


def matching(row: Row) -> float | None:
    if row.get("cut_length"):
        return exact(work("pattern repeat", drop=row.get("cut_length"), repeat=row.get("repeat"), drops="1"), "cut",
                     "in")
    if not row.get("repeat"):
        return None
    base = {"stated_length": "3 yd", "stated_width": "45 in"}
    number = row.get("main_pieces") or row.get("stacked_pieces")
    made = work("cloth for a bought pattern", **base, repeat=row.get("repeat"), matched=number)
    return exact(made, "cloth", "in") - exact(work("cloth for a bought pattern", **base), "cloth", "in")


def seams(row: Row) -> float | None:
    """The usual seam allowance, by the difference it makes to a frill's cut depth."""
    system = {"SH-001": "in", "SH-002": "cm"}.get(row.id)
    if system is None:
        return None
    made = work("gathered strip", system=system, edge="1 m", depth="10 cm", hem="0 cm", width="150 cm")
    return exact(made, "cut_depth", row.unit) - (10 / 2.54 if system == "in" else 10)


CHECKS = {
    "fabric width conversion": width_conversion,
    "fabric estimation": estimation,
    "gathers and ruffles": gathered,
    "tucks": tucks,
    "pleats": pleats,
    "circle skirts": circle,
    "shrinkage": shrinkage,
    "pattern matching extra": matching,
    "seams and hems": seams,
}


def ids(prefix: str, first: int, last: int) -> Callable[[Row], bool]:
    """Rows by their running numbers."""
    wanted = {f"{prefix}-{number:03}" for number in range(first, last + 1)}
    return lambda row: row.id in wanted


LISTED = [
    Listed("the chart goes by whole lays: over 1/8 yd from the same area of cloth, as the rule works it", CHART,
           by_whole_lays),
    Listed("an addition for widths that differ greatly, by no stated amount of difference: the rule warns instead", 1,
           ids("FW", 109, 109)),
    Listed("no sum of a rule: an area over a width, which no lay of the one piece has", 1, ids("FW", 116, 116)),
    Listed("usable width is a measure taken, not a sum", 1, ids("FW", 117, 117)),
    Listed("estimates by garment, without a sum", 9, ids("FW", 118, 126)),
    Listed("an older and scantier fullness (1916) than the trade's 2 to 3; the strip lengths it gives are checked", 2,
           ids("GA", 3, 4)),
    Listed("unequal tiers added up: no rule's sum, ours are equal", 1, ids("GA", 17, 17)),
    Listed("a curtain heading's fullness: no rule takes the heading", 1, ids("GA", 21, 21)),
    Listed("a usual space between tucks, not a sum", 1, ids("TU", 2, 2)),
    Listed("adds end seams, which the rule leaves to the seam allowance step", 1, ids("PL", 10, 10)),
    Listed("rules of thumb for spaced pleating, whose depth is not given", 2, lambda row: row.id in ("PL-031",
        "PL-033")),
    Listed("one fitted pleated skirt drafted by subtraction (1922): no rule", 7, ids("PL", 34, 40)),
    Listed("plaits set in at a seam, as multiples of the plait: no rule", 3, ids("PL", 41, 43)),
    Listed("one pattern's own overlap and facings added up", 1, ids("CS", 1, 1)),
    Listed("customary allowances by place and hems by garment: facts, and no rule takes the place or the garment", 31,
           ids("SH", 3, 34)),
    Listed("facts on fibres and washing, not sums", 12, ids("SK", 8, 19)),
    Listed("how a test is conducted, not a sum", 6, ids("SK", 20, 25)),
    Listed("from memory: the standard was not seen", 5, ids("SK", 26, 30)),
    Listed("common practice for fibres, not sums", 3, ids("SK", 31, 33)),
    Listed("advice on buying more for plaids, without a sum", 6, ids("MX", 1, 6)),
]
