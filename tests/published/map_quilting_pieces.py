"""Published cut sizes, settings on point and shapes, put to the quilting rules."""

from __future__ import annotations

from collections.abc import Callable

from tests.support import work

from .harness import Listed, Row
from .quilting_rows import cut, found, near, numbers, seam, sides, solved, up

FILE = "quilting"
TRIM = {"trim": "yes"}
PRINTED_WITH_1_414 = "q0244"


def patch(row: Row) -> float | None:
    find = row.get("find")
    if find == "finished side of square":
        return solved("patch", "width", {"cut_width": row.get("cut")}, seam=seam(row))
    if find.startswith("addition"):
        return found(work("patch", system="cm", width="10 cm", seam=seam(row)), "cut_width") - 10
    width, *length = sides(row.get("finished"))
    made = work("patch", width=width, length=(length or [width])[0], seam=seam(row))
    return cut(made, "cut_length" if find == "cut length" else "cut_width")


def _addition(row: Row, topic: str) -> float | None:
    """Rows about what is added to the finished size, for a seam."""
    find = row.get("find")
    system = "cm" if "cm" in row.get("seam") else "in"
    if find.startswith("exact addition"):
        return found(work(topic, asked="addition", system=system, finished="4 in", seam=seam(row)))
    if find.startswith("error of"):
        asked = work(topic, asked="addition", finished="4 in", seam=seam(row))
        return cut(asked) - found(asked)
    if find.startswith("multiple"):
        return found(work(topic, asked="addition", finished="4 in", seam="1 in"))
    if find.startswith("trade addition"):
        # The metric habit (+ 2.5, + 3.5 cm) falls short of the geometry; only what does not is checked.
        made = work(topic, asked="addition", system="cm", finished="10 cm", seam=seam(row))
        return cut(made) if cut(made) <= float(row.expected) else None
    return None


def half_square(row: Row) -> float | None:
    topic, find = "half-square triangles", row.get("find")
    added = _addition(row, topic)
    if added is not None or "addition" in find:
        return added
    if find.startswith("unfinished side"):
        return solved(topic, "finished", {"cut": row.get("cut square")}) + 0.5
    if row.get("rule") == "exact":
        return found(work(topic, asked="exact_cut", finished=row.get("finished"), seam=seam(row)))
    if "oversize" in find:
        (extra,) = numbers(row.get("extra over trade rule"))
        return cut(work(topic, finished=row.get("finished"), seam=seam(row), oversize=f"{0.875 + extra} in", **TRIM))
    return cut(work(topic, finished=row.get("finished"), seam=seam(row)))


def quarter_square(row: Row) -> float | None:
    topic, find = "quarter-square triangles", row.get("find")
    added = _addition(row, topic)
    if added is not None or "addition" in find:
        return added
    size = row.get("finished long side") or row.get("finished") or row.get("finished unit")
    if row.get("rule") == "exact":
        return found(work(topic, asked="exact_cut", finished=size, seam=seam(row)))
    if row.get("unfinished unit"):
        return cut(work(topic, finished=f"{numbers(row.get('unfinished unit'))[0] - 0.5} in", **TRIM))
    if row.get("extra over trade rule"):
        (extra,) = numbers(row.get("extra over trade rule"))
        return cut(work(topic, finished=size, oversize=f"{1.25 + extra} in", **TRIM))
    if "oversize" in find:
        return cut(work(topic, finished=size, **TRIM))
    return cut(work(topic, finished=size, seam=seam(row)))


def eight_at_a_time(row: Row) -> float | None:
    topic, way = "half-square triangles", {"method": "eight_at_a_time"}
    if row.get("find").startswith("pairs"):
        return cut(work(topic, finished="2 in", count=row.get("units wanted"), **way), "squares")
    size = row.get("unfinished") or row.get("trimmed")
    if size:
        return cut(work(topic, finished=f"{numbers(size)[0] - 0.5} in", **way, **TRIM))
    if row.get("rule") == "exact":
        return found(work(topic, asked="exact_cut", finished=row.get("finished"), **way))
    return cut(work(topic, finished=row.get("finished"), seam=seam(row), **way))


def four_at_a_time(row: Row) -> float:
    return found(work("half-square triangles", asked="exact_cut", finished=row.get("finished"), seam=seam(row),
    method="four_at_a_time"))


def geese_four(row: Row) -> float | None:
    if "oversize" in row.get("find") or "cm" in row.get("finished"):
        return None
    width, height = sides(row.get("finished"))
    large = "large" in row.get("find")
    made = work("flying geese", width=width, height=height, method="four_at_a_time", seam=seam(row))
    if row.get("rule") == "exact":
        added = work("flying geese", asked="large_addition" if large else "small_addition", width=width,
            height=height, method="four_at_a_time", seam=seam(row))
        return numbers(width if large else height)[0] + found(added)
    return cut(made, "large" if large else "small")


def geese_one(row: Row) -> float:
    width, height = sides(row.get("finished"))
    made = work("flying geese", width=width, height=height, method="one_at_a_time", seam=seam(row))
    return cut(made, "rectangle_width" if "rectangle" in row.get("find") else "corner_square")


def square_in_square(row: Row) -> float | None:
    topic, find = "square in a square", row.get("find")
    if "on point" in find:
        # A block turned on point grows by the root of two each time: as an on-point setting of one block, or two.
        once = found(work("on-point size", block=row.get("block finished"), across="1", down="1"), "width")
        return once if "once" in find else found(work("on-point size", block=f"{once:.9f} in", across="1", down="1"),
        "width")
    if "stitched and flipped" in find or row.get("method"):
        made = work(topic, size=row.get("finished"), seam=seam(row), method="flipped")
        return cut(made, "base" if "base" in find else "flip")
    if row.get("rule") == "exact" or "before rounding" in find:
        made = work(topic, size=row.get("finished unit"), seam=seam(row))
        corner = found(work(topic, asked="addition", size="4 in",
            seam=seam(row))) + numbers(row.get("finished unit"))[0] / 2
        return corner if "corner" in find else found(made, "centre")
    if row.get("finished centre"):
        size = solved(topic, "size", {"centre_finished": row.get("finished centre")})
        return up(found(work(topic, size=f"{size:.9f} in"), "corner"),
        1 / 4 if row.get("rule") == "up to 1/4" else 1 / 8)
    if row.get("finished unit"):
        return cut(work(topic, size=row.get("finished unit"), seam=seam(row)), "centre")
    return None


def setting(row: Row) -> float | None:
    topic = "setting triangles"
    key, addition = ("side", "side_addition") if "twice" in row.get("find") else ("corner", "corner_addition")
    made = work(topic, block=row.get("block finished"), seam=seam(row))
    rule = row.get("rule")
    if "oversize" in row.get("find") or row.id == PRINTED_WITH_1_414:
        return None
    if rule == "exact":
        base = found(made, key) - cut(work(topic, asked=addition, block="4 in", seam=seam(row)))
        return base + found(work(topic, asked=addition, block="4 in", seam=seam(row)))
    if row.get("rounding") == "none":
        return found(made, key)
    for text, step in (("1/4", 1 / 4), ("1/2", 1 / 2)):
        if f"up to {text}" in rule or f"next {text}" in rule:
            return up(found(made, key), step)
    return cut(made, key)


def diagonal(row: Row) -> float:
    made = work("on-point size", block=row.get("block finished"), across="4", down="5")
    return cut(made, "diagonal") if "nearest" in row.get("find") else found(made, "diagonal")


def on_point_size(row: Row) -> float | None:
    find, topic = row.get("find"), "on-point size"
    if "binding each side" in find or "quilt width" in find or "quilt length" in find:
        binding = 0.5 if "binding" in find else 0
        made = work(topic, block=row.get("block finished") or row.get("block"), across=row.get("across", "4"),
            down=row.get("down", "5"))
        return found(made, "width" if "width" in find else "length") + binding
    if find == "blocks in all":
        return cut(work(topic, block="6 in", across=row.get("across"), down=f"{numbers(row.get('down'))[0]:g}"),
            "blocks")
    if find.startswith("side of square-in-square"):
        side = found(work(topic, block=row.get("block finished"), across="1", down="1"), "width")
        return near(side, 1) if "whole" in row.get("rounding") else side
    if find.startswith("field"):
        made = work("quilt size", block=row.get("unit"), across=row.get("units across", "1"),
            down=row.get("units down", "1"))
        return found(made, "width" if "width" in find else "length")
    return None


def counts(row: Row) -> float | None:
    find = row.get("find")
    across, down = row.get("across", "4"), row.get("down", "5")
    if row.get("side triangles"):
        # A stated number of side triangles belongs to a layout one block wide and so many down.
        across, down = "1", f"{numbers(row.get('side triangles'))[0] / 2 + 1:g}"
    made = work("setting triangles", block="10 in", across=across, down=down)
    key = {"side setting triangles": "side_triangles", "blocks in all": "blocks",
        "squares cut once for the corners": "corner_squares"}.get(find, "side_squares")
    return cut(made, key)


def hexagon(row: Row) -> float | None:
    find, topic = row.get("find"), "hexagons"
    if row.get("flat to flat"):
        return solved(topic, "side", {"flat": row.get("flat to flat")})
    side = row.get("side", "1 in")
    made = work(topic, side=side, seam=seam(row))
    if find == "flat to flat" or find.startswith("column spacing"):
        return found(made, "flat")
    if find.startswith(("flat to flat, to the nearest", "paper height")):
        return near(found(made, "flat"), 1 / 4)
    if find == "point to point":
        return found(made, "point")
    if find == "area":
        return found(made, "area")
    if find.startswith("fabric strip height"):
        return cut(made, "strip")
    if find.startswith("cut fabric height"):
        return found(made, "strip")
    if find.startswith("addition to finished height"):
        return found(made, "strip") - found(made, "flat")
    if find.startswith("hexagons by area"):
        wide, long = sides(row.get("quilt"))
        return cut(work(topic, side=side, cover_width=wide, cover_length=long), "by_area")
    if find.startswith("2.5 in squares per strip"):
        return cut(work("strips and patches", count="420", cut="2.5 in", usable="40 in"), "per_strip")
    return None


def triangle(row: Row) -> float | None:
    find, topic = row.get("find"), "equilateral triangles"
    if row.get("finished height") and "strip cut" in find:
        return found(work(topic, height=row.get("finished height"), seam=seam(row)), "strip")
    if find == "exact cut side":
        return found(work(topic, height=row.get("finished height"), seam=seam(row)), "cut_side")
    if find == "finished side":
        return found(work(topic, height=row.get("finished height")), "finished_side")
    if find == "area":
        return found(work(topic, height=row.get("finished height")), "area")
    if find.startswith("rows"):
        made = work(topic, height=row.get("finished height"), cover_width="40 in", cover_length=row.get("quilt length"))
        return cut(made, "rows") if "up" in find else found(made, "rows")
    if find.startswith("addition"):
        made = work(topic, height="4 in", seam=seam(row))
        return found(made, "strip") - 4
    if find == "cut side":
        # The triangle as cut is one that finishes at its cut height with no seam to speak of.
        return found(work(topic, height=row.get("cut height")), "finished_side")
    if find.startswith("cut height"):
        (length,), (count,) = numbers(row.get("quilt length")), numbers(row.get("rows"))
        return found(work(topic, height=f"{length / count} in", seam=seam(row)), "strip")
    return None


CHECKS = {
    "cut sizes: square or rectangle": patch,
    "cut sizes: half-square triangle": half_square,
    "cut sizes: quarter-square triangle": quarter_square,
    "cut sizes: half-square triangles eight at a time": eight_at_a_time,
    "cut sizes: half-square triangles four at a time (bias edges)": four_at_a_time,
    "cut sizes: flying geese four at a time": geese_four,
    "cut sizes: flying geese one at a time": geese_one,
    "cut sizes: square in a square": square_in_square,
    "side setting triangles": setting,
    "corner setting triangles": setting,
    "cut sizes: side setting triangles": setting,
    "cut sizes: corner setting triangles": setting,
    "on-point: block diagonal": diagonal,
    "on-point: quilt size": on_point_size,
    "on-point: block and triangle counts": counts,
    "hexagon": hexagon,
    "equilateral triangle": triangle,
}



def _of(*topics: str) -> Callable[[Row], bool]:
    return lambda row: row.topic in topics


LISTED = (
    Listed("metric habits (+ 2.5, + 3.5 cm) that fall short of the geometry at a 0.75 cm seam: the rules are never "
    "short", 4,
           lambda row: "cm" in row.get("seam") and row.topic.startswith("cut sizes") and row.status == "published"),
    Listed("cut over size and trimmed in a maker's own way, which no rule takes", 6,
    lambda row: "oversize" in row.get("find")),
    Listed("a square that is cut for a triangle without a seam, by a maker's own table", 2,
           lambda row: row.get("find") in ("cut side of square cut once",
           "cut side of square cut twice") and "wanted" in "".join(row.inputs)),
    Listed("printed with 1.414 for the root of 2, 1/8 in under what the root itself gives", 1,
    lambda row: row.id == PRINTED_WITH_1_414),
    Listed("shapes beyond the family's rules (a worked sum of a maker's, rings of hexagons, wholes of a named quilt)",
    16,
           _of("hexagon", "equilateral triangle")),
    Listed("shapes that the family has no rule for", 50, _of("diamond", "octagon", "dresden plate",
    "clamshell and curves")),
)
