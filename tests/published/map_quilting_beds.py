"""Published bed quilts, seams, strip sets, scaled blocks, shrinkage; and the rows that no rule can check."""

from __future__ import annotations

from collections.abc import Callable

from tests.support import work

from .harness import Listed, Row
from .quilting_rows import found, numbers, seam, sides

FILE = "quilting"
UK = {"king": "uk_king"}


def _bed(name: str) -> str:
    return name.lower().replace(" ", "_")


def mattress(row: Row) -> float | None:
    """The mattress alone is a quilt with no drop."""
    bed, metric = row.get("bed"), row.unit == "cm"
    if bed.startswith("full") and "this source" in row.get("note") and row.get("find") == "width":
        return None  # 53 in at this maker; 54 in everywhere else
    key = UK.get(bed, _bed(bed)) if "UK" in row.topic else {"king": "us_king"}.get(bed, _bed(bed))
    made = work("bed quilt size", system="cm" if metric else "in", bed=key, drop="0 cm")
    return found(made, "quilt_width" if row.get("find").startswith("width") else "quilt_length")


def cot(row: Row) -> float | None:
    find = row.get("find")
    if "tolerance" in find:
        return None
    bed = "cot" if "UK" in row.topic else "crib"
    made = work("bed quilt size", system="cm" if row.unit == "cm" else "in", bed=bed, drop="0 cm")
    return found(made, "quilt_width" if "width" in find else "quilt_length")


def uk(row: Row) -> float | None:
    return mattress(row) if row.get("bed") else cot(row)


def bed_quilt(row: Row) -> float | None:
    find = row.get("find")
    if not row.get("mattress") or find.startswith("floor"):
        return None
    wide, long = sides(row.get("mattress"))
    drop = row.get("drop").split(" in")[0] + " in"
    tuck = row.get("pillow tuck") or row.get("pillow cover") or "0 in"
    made = work("bed quilt size", width=wide, length=long, drop=drop, tuck=tuck)
    return found(made, "quilt_width" if find == "width" else "quilt_length")


def seams(row: Row) -> float | None:
    find = row.get("find")
    if find.startswith("error in length"):
        return found(work("seam drift", seams=row.get("joining seams"), error=row.get("error per seam")), "drift")
    if find.startswith("error in block"):
        joins = f"{numbers(row.get('patches across'))[0] - 1:g}"
        return found(work("seam drift", seams=joins, error=row.get("error per seam allowance"),
        counted="an_allowance"), "drift")
    if find == "length of border":
        return found(work("quilt size", block=row.get("unit finished"), across=row.get("units"), down="1"), "width")
    if find.startswith("width of"):
        count = {"two": 2, "three": 3}[find.split()[2 if find.split()[1] == "of" and find.split()[2] in ("two",
            "three") else 1]]
        size = row.get("cut") or f"{numbers(find)[0]} in"
        return found(work("strip sets", widths=[size], count=str(count), seam=seam(row)), "raw")
    if find.startswith("centre strip") or find.startswith("middle square"):
        width = row.get("cut") or "5 in"
        return found(work("strip sets", widths=[width], count="1", seam=seam(row)), "finished")
    return None


def strip_sets(row: Row) -> float | None:
    if not row.get("strips"):
        return None
    return found(work("strip sets", widths=[row.get("cut")], count=row.get("strips"), seam=seam(row)), "raw")


def scaled(row: Row) -> float | None:
    find, topic = row.get("find"), "scale a block"
    if find == "copy percentage":
        return found(work(topic, asked="percent", old=row.get("have"), new=row.get("want"), patch="2 in"))
    if row.get("patches across") and find.startswith("cut patch"):
        block, across = numbers(row.get("block finished"))[0], numbers(row.get("patches across"))[0]
        return found(work("patch", width=f"{block / across} in", seam=seam(row)), "cut_width")
    if row.get("nine-patch block finished") or row.get("16-patch (4 x 4) block finished"):
        block = numbers(row.get("nine-patch block finished") or row.get("16-patch (4 x 4) block finished"))[0]
        # A block as wide as its patches are many, of 1 in patches, made to the size wanted.
        old = 3 if row.get("nine-patch block finished") else 4
        return found(work(topic, old=f"{old} in", new=f"{block} in", patch="1 in"), "new_patch")
    if row.get("nine-patch finished"):
        return found(work(topic, old="3 in", new=row.get("nine-patch finished"), patch="1 in", seam=seam(row)),
            "new_cut")
    if row.get("sections"):
        block, sections = numbers(row.get("block"))[0], numbers(row.get("sections"))[0]
        patch = 2 if "two sections" in find else 1
        made = work(topic, old=f"{sections} in", new=f"{block} in", patch=f"{patch} in")
        return found(made, "new_cut" if find.startswith("cut") else "new_patch")
    if "remade" in row.get("note"):
        old, was, new = numbers(row.get("note"))[:3]
        return found(work(topic, old=f"{old} in", new=f"{new} in", cut=f"{was} in"), "new_cut")
    return None


def shrinkage(row: Row) -> float | None:
    if row.get("before"):
        return found(work("shrink test", before=row.get("before"), after=row.get("after")))
    if row.get("find").startswith("top to make"):
        return found(work("shrinkage", needed="90 in", shrink="5 %"), unit="in")
    return None


def longarm(row: Row) -> float | None:
    if row.get("find") != "area":
        return None
    wide, long = sides(row.get("quilt"))
    return found(work("backing", width=wide, length=long, over="0 in"), "area")


def _of(*topics: str) -> Callable[[Row], bool]:
    return lambda row: row.topic in topics


CHECKS = {
    "mattress: US": mattress,
    "mattress: US crib": cot,
    "mattress: UK": uk,
    "quilt size from mattress": bed_quilt,
    "seam accuracy": seams,
    "strip sets": strip_sets,
    "scale a block": scaled,
    "shrinkage": shrinkage,
    "longarm charge": longarm,
}

SHOP_ADVICE = ("binding: shop yardage by quilt size", "yardage: pieced top, shop estimate",
    "backing: shop yardage by quilt size")

LISTED = (
    Listed("a maker whose full mattress is 53 in wide; the rule takes the 54 in of most charts", 2,
    lambda row: row.id in ("q0926", "q0928")),
    Listed("usual sizes, standards and museum records: stated, not worked out", 34, _of("quilt size: usual sizes",
    "quilt size: charity standard", "museum records")),
    Listed("needles, stitches and grain in words: a table of other rules, or advice", 20, _of("needles and thread",
    "bias binding: when to use")),
    Listed("shop advice by bed name, which varies by a yard or more from chart to chart", 19, _of(*SHOP_ADVICE)),
    Listed("problems of school mathematics", 21, _of("maths education")),
    Listed("things the family has no rule for", 62, _of("log cabin", "hanging sleeve", "prairie points",
    "borders: coping (spacer) strip", "binding: diagonal joins",
                                                       "binding: strip width",
                                                       "bias binding: strips cut on the true bias",
                                                       "yardage by area (rough)")),
    Listed("a charge by area at a rate in hundredths of a cent", 10, _of("longarm charge")),
    Listed("a step of a worked example whose sum is a single multiplication, or advice in words", 38,
           _of("yardage from pieces", "borders: strips and cloth", "sashing and cornerstones",
           "quilt size: blocks, sashing, borders", "binding: length", "binding: cloth",
               "bias binding from a square", "backing: size", "batting: allowance", "mattress: UK",
               "quilt size from mattress", "seam accuracy", "strip sets",
               "shrinkage", "precut equivalents", "yield: squares from part yards")),
    Listed("backing sums by area, or rounded at each step, or for a size the source does not give", 15,
    _of("backing: panels and cloth")),
    Listed("one maker's own pack sizes, some inches off the others' (a note of the rule says so)", 12,
    _of("batting: pack sizes")),
)
