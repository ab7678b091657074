"""Published rows on notions, bags and safety put to their rules."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from rules.cautions import GENERAL
from tests.published.harness import Listed, Row
from tests.support import ask as words
from tests.support import exact, rounded, work

FILE = "dressmaking"


def _system(text: str) -> str:
    return "in" if text.endswith("in") else "cm"


def _sides(text: str) -> list[str]:
    """The sides of "36 x 38.5 cm", each with its unit."""
    numbers, unit = text.rsplit(" ", 1)
    return [f"{number.strip()} {unit}" for number in numbers.split("x")]


# -- elastic and casings -----------------------------------------------------------------------------------------------


def elastic(row: Row) -> float | int | str | None:
    width, ask = row.get("elastic_width"), row.get("ask")
    if width and "casing width" in ask:
        ease = "1/8 in" if "1/8" in row.get("rule") else "1/4 in"
        return exact(work("casing", elastic=width, ease=ease), "depth", row.unit)
    if ask.startswith("total casing turn"):
        return exact(work("casing", system="cm", elastic=width, ease="2 mm", turn="5 mm"), "allowance", "mm")
    if ask == "total casing allowance":
        return exact(work("casing", elastic=width, ease="1/4 in", turn=row.get("first_turn")), "allowance", "in")
    if ask == "second fold of casing":
        return exact(work("casing", elastic=width, ease="1/4 in"), "depth", "in")
    if row.get("drawstring_diameter"):
        return exact(work("casing", elastic=row.get("drawstring_diameter"), kind="cord"), "depth", "in")
    if ask == "raw edge turned under":
        made = work("casing", elastic="1 in")
        return exact(made, "allowance", "in") - exact(made, "depth", "in")
    if ask == "elastic length before overlap":
        return exact(work("elastic", body=row.get("waist"), share="90 %"), "in_wear", "in")
    if ask == "usual elastic cut length":
        return exact(work("elastic", body=row.get("waist"), width="1 in", overlap="0 in"), "cut", "in")
    if ask == "overlap for joining elastic ends":
        made = work("elastic", body="30 in", width="1 in")
        return exact(made, "cut", "in") - exact(made, "in_wear", "in")
    if ask == "cord length beyond body measure for tying":
        return exact(work("drawstring", girth="30 in"), "cord", "in") - 30
    if row.get("bag_width"):
        return exact(work("drawstring bag", system="cm", width=row.get("bag_width")), "one_cord", "cm")
    return None


# -- bias --------------------------------------------------------------------------------------------------------------

KINDS = {"double-fold (wraps edge)": "double-fold", "single-fold tape": "single-fold", "French (doubled)": "french"}


def bias(row: Row) -> float | int | None:
    strip, ask, length = row.get("strip_width"), row.get("ask"), row.get("length")
    if ask == "length along selvage":
        return rounded(work("bias binding", strip=strip), "step", "in")
    if row.get("binding"):
        return exact(
            work("bias binding", finished=row.get("finished"), kind=KINDS[row.get("binding")]), "strip_width", row.unit
        )
    if row.get("banding_depth"):
        return exact(work("bias binding", finished=row.get("banding_depth"), kind="band"), "strip_width", row.unit)
    if row.get("square"):
        return exact(work("bias yield", width=row.get("square"), strip=strip), "bias", row.unit)
    if length:
        made = work("bias binding", strip=strip, length=length)
        return rounded(made, "square", "in") if "round up" in ask else exact(made, "square", "in")
    if row.get("placemats"):
        one, other = _sides(row.get("size"))
        made = work(
            "bias binding", number=row.get("placemats"), side_a=one, side_b=other, allowance=row.get("overlap_each")
        )
        return exact(made, "need", "in")
    return None


# -- buttons -----------------------------------------------------------------------------------------------------------


def buttons(row: Row) -> float | int | None:
    ask, diameter = row.get("ask"), row.get("diameter") or row.get("button_diameter")
    if row.get("ligne"):
        size = f"{row.get('ligne')} ligne"
        return exact(work("button sizes", diameter=size), "inches" if row.unit == "in" else "mm", row.unit)
    if ask.startswith("ligne"):
        made = work("button sizes", diameter=diameter)
        return rounded(made, "ligne", "ligne") if ask == "ligne rounded" else exact(made, "ligne", "ligne")
    if ask.startswith("buttonhole length"):
        bar = "1/8 in" if "bar tacks" in row.get("rule") else "0 in"
        return exact(
            work("buttonhole", diameter=diameter, thickness=row.get("thickness"), bar=bar), "flat_length", "in"
        )
    if ask == "centre line to finished edge":
        return exact(work("button stand", diameter=diameter), "stand", "in")
    if ask.startswith("minimum overlap"):
        return exact(work("button stand", diameter=diameter), "least", "in")
    return _spaced(row)


def _spaced(row: Row) -> float | None:
    """Buttons from the first to the last, with no inset."""
    span = row.get("first_to_last")
    if not span:
        return None
    if row.get("target_gap"):
        return exact(
            work("evenly spaced marks", system=_system(span), length=span, apart=row.get("target_gap"), inset="0 cm"),
            "count",
        )
    return exact(
        work("evenly spaced marks", system=_system(span), length=span, number=row.get("buttons"), inset="0 cm"),
        "spacing",
        row.unit,
    )


# -- thread, stitches, needles -----------------------------------------------------------------------------------------


def _stitch(row: Row) -> str | None:
    from rules.notions.thread import STITCHES

    return next((name for name in STITCHES if name.startswith(row.get("stitch"))), None) if row.get("stitch") else None


def thread(row: Row) -> float | str | None:
    ask, stitch = row.get("ask"), _stitch(row)
    if ask == "total thread per unit of seam" and stitch:
        return exact(work("thread", system="cm", seams=["1 m"], stitch=stitch, waste="0 %"), "length", "m")
    if ask == "total thread per unit of seam (approximate ratio)" and row.get("stitch") == "301":
        return exact(work("thread", system="cm", seams=["1 m"], waste="0 %"), "length", "m")
    if ask == "total thread" and row.get("seam") and stitch:
        return exact(work("thread", system="cm", seams=[row.get("seam")], stitch=stitch, waste="0 %"), "length", "cm")
    if ask in ("needle thread", "looper thread"):
        factor = row.get("needle_factor") or row.get("looper_factor")
        return exact(
            work("thread", system="cm", seams=[row.get("seam")], ratio=factor, waste="0 %"), "length", row.unit
        )
    if row.get("net"):
        waste = row.get("waste").replace("percent", "%")
        return exact(work("thread", system="cm", seams=[row.get("net")], ratio="1", waste=waste), "length", row.unit)
    if row.get("needle") and row.get("looper"):
        return exact(
            work("thread", system="cm", seams=[row.get("needle"), row.get("looper")], ratio="1", waste="0 %"),
            "length",
            row.unit,
        )
    if ask == "seam in yards":
        return exact(work("thread", seams=[row.get("seam")], ratio="1", waste="0 %"), "length", "yd")
    if "waste allowance" in ask and row.get("edition") != "earlier":
        made = work("thread", system="cm", seams=["1 m"], ratio="1")
        return 100 * exact(made, "length", "m") - 100
    if ask == "needle/under thread share" and row.get("stitch") == "301":
        made = work("thread", system="cm", seams=["1 m"])
        total, needle, bobbin = (exact(made, key, "m") for key in ("length", "needle", "bobbin"))
        return f"{100 * needle / total:g}/{100 * bobbin / total:g}"
    return None


CLOTHS = {
    "light woven": "light",
    "medium woven": "medium",
    "heavy woven": "heavy",
    "filmy (organdy, net, organza)": "filmy",
}


def needles(row: Row) -> float | str | None:
    ask = row.get("ask")
    if row.get("fabric"):
        made = work("machine needle", cloth=CLOTHS[row.get("fabric")])
        sizes = re.findall(r"(\d+)/(\d+)", made.results[0].text)  # "65/9 to 75/11"
        return "..".join(size[0 if ask == "Nm range" else 1] for size in sizes)
    size = row.get("Nm") or row.get("singer_size") or row.get("us_size")
    if size == "13" or not size:
        return None
    if ask.startswith("blade"):
        return exact(work("machine needle", size=size), "blade", "mm")
    if int(size) < 40 and int(size) not in _us_sizes():
        return None
    return exact(work("machine needle", size=size), "other")


def _us_sizes() -> tuple[int, ...]:
    from rules.notions.stitches import US_SIZES

    return tuple(US_SIZES.values())


def stitch_length(row: Row) -> float | None:
    if row.get("stitch_length"):
        return exact(work("stitch length", mm=row.get("stitch_length")), "spi")
    return None


def numbering(row: Row) -> float | None:
    ask = row.get("ask")
    if "ticket" in ask and "usual" not in ask:
        key = "cotton" if "cotton" in ask else "metric"
        return exact(work("thread ticket", **_thread(row)), key)
    if row.get("formula") == "3000/Tex":
        return exact(work("thread ticket", **_thread(row)), "metric")
    if ask == "Tex":
        return exact(work("thread ticket", **_thread(row)), "size", "tex")
    if ask in ("denier", "Nm") and row.get("Tex"):
        return float(words(f"{row.get('Tex')} tex in {ask}").results[0].exact)
    return None


def _thread(row: Row) -> dict[str, str]:
    yarn = row.get("yarn").split()
    if yarn:
        single, plies = yarn[1].split("/")
        return {"metric_count" if yarn[0] == "Nm" else "cotton_count": single, "plies": plies}
    if row.get("Nm"):
        return {"metric_count": row.get("Nm")}
    if row.get("Ne"):
        return {"cotton_count": row.get("Ne")}
    unit = next(unit for unit in ("Tex", "denier", "dtex") if row.get(unit))
    return {"tex": f"{row.get(unit)} {unit.lower()}"}


# -- zips and bags -----------------------------------------------------------------------------------------------------


def zips(row: Row) -> float | None:
    if row.get("zip_length"):
        made = work("zip", opening=row.get("zip_length"))
        sold = next(result.text for result in made.results if result.key == "sold_as")
        return float(re.search(r"or (\d+) cm", sold).group(1))  # type: ignore[union-attr]
    if row.get("front_neck_drop"):
        body = row.get("body_length_HPS") or row.get("body_length_CB")
        given = {
            "body": body,
            "front_drop": row.get("front_neck_drop"),
            "less": row.get("less").replace("percent", "%"),
        }
        if row.get("back_neck_drop"):
            given["back_drop"] = row.get("back_neck_drop")
        if row.get("collar_height"):
            given["collar"] = row.get("collar_height")
        return exact(work("jacket zip", system="cm", **given), "zip_length", "cm")
    return None


def bags(row: Row) -> float | None:
    ask = row.get("ask")
    if row.get("strap_cut_width"):
        made = work("strap", system="cm", stated={"four": row.get("strap_cut_width")}, asked="finished")
        return exact(made, unit="cm")
    if row.get("distance_from_point"):
        return exact(work("box corner", stated={"point": row.get("distance_from_point")}, asked="depth"), unit="in")
    if row.get("cut_width") and ask == "finished width":
        return exact(
            work("box corner", panel_width=row.get("cut_width"), depth=row.get("depth"), seam=row.get("seam")),
            "width",
            "in",
        )
    if row.get("cut_height"):
        made = work(
            "box corner",
            panel_height=row.get("cut_height"),
            depth=row.get("depth"),
            seam=row.get("bottom_seam"),
            top=row.get("top_hem"),
        )
        return exact(made, "height", "in")
    if row.get("finished"):
        width, height, depth = _sides(row.get("finished"))
        made = work("tote", width=width, height=height, depth=depth, seam=row.get("seam"), top=row.get("top_hem"))
        return exact(made, "panel_width" if "width" in ask else "panel_height", "in")
    if row.get("strap_drop"):
        made = work(
            "strap",
            drop=row.get("strap_drop"),
            apart=row.get("span_between_ends"),
            inset=row.get("ends_sewn").removesuffix(" each"),
        )
        return exact(made, "strap", "in")
    if row.get("strap_finished"):
        return exact(work("strap", finished=row.get("strap_finished")), "four", "in")
    if row.get("corner_square_cut"):
        # With one allowance on all three seams the square between the stitching lines is as large as the one cut out.
        return exact(
            work(
                "box corner",
                stated={"cut_out": row.get("corner_square_cut").removesuffix(" at stitching line")},
                asked="depth",
            ),
            unit="in",
        )
    if row.get("finished zip opening"):
        return exact(work("zip", opening=row.get("finished zip opening")), "zip_length", "in")
    return None


# -- safety: the limits that the cautions quote ------------------------------------------------------------------------


def _said(start: str) -> str:
    return next(f"{caution.text} ({caution.source})" for caution in GENERAL if caution.text.startswith(start))


def _number(start: str, pattern: str) -> float:
    found = re.search(pattern, _said(start))
    assert found is not None, f"no {pattern} in {_said(start)}"
    return float(Fraction(found.group(1)))


DRAWSTRINGS = "No drawstrings at the hood"


def drawstrings(row: Row) -> float | str | None:
    ask, standard = row.get("ask"), row.get("standard")
    if row.status == "from memory":
        return None
    if ask in ("maximum free length",):
        return _number(DRAWSTRINGS, r"\((\d+) mm\)") if row.unit == "mm" else _number(DRAWSTRINGS, r"at most (\d+) in")
    if ask in ("drawstrings allowed", "cords allowed") and "hood" in row.get("place"):
        return "none" if "No drawstrings at the hood or neck" in _said(DRAWSTRINGS) else "some"
    if ask.startswith("toggles"):
        return "none" if "without toggles or knots on the free ends" in _said(DRAWSTRINGS) else "some"
    if ask == "height bound for young children" and standard == "EN 14682":
        return _number(DRAWSTRINGS, r"(\d+) cm")
    return None


def infants(row: Row) -> float | str | None:
    ask, item = row.get("ask"), row.get("item")
    if ask == "bedding allowed":
        return "fitted sheet only" if "only a fitted sheet" in _said("Nothing soft") else "more"
    if item == "quilt or pillow":
        return "no" if "no quilt, blanket, pillow" in _said("Nothing soft") else "yes"
    if "padded crib bumper" in row.inputs or ask == "may be made for sale":
        return "no" if "may not be made for sale" in _said("Padded bumpers") else "yes"
    if ask == "inside the crib-bumper ban":
        return "no" if "mesh liners are outside the ban" in _said("Padded bumpers") else "yes"
    if ask == "minimum distance from crib":
        return _number("Cords of blinds", r"(\d+) ft")
    if item.startswith("weighted"):
        return "no" if "not for infants" in _said("A weighted blanket") else "yes"
    return None


def small_parts(row: Row) -> float | None:
    if row.get("ask") == "age the ban protects":
        return _number("Small parts", r"under (\d+) months") - 1  # the last whole month that it protects
    return None


def tools(row: Row) -> str | None:
    if row.get("ask") == "blade state":
        return "closed" if _said("Close the blade of a rotary cutter whenever you lay it down") else None
    if row.get("ask") == "direction":
        return "away from the body" if "cut away from you" in _said("Close the blade") else "towards the body"
    if row.get("ask") == "action":
        said = _said("Count pins and needles")
        return row.expected if "find a lost one before the thing is worn or washed" in said else said
    return None


CHECKS = {
    "elastic and casings": elastic,
    "bias strips": bias,
    "buttons": buttons,
    "thread consumption": thread,
    "needle sizes": needles,
    "stitch length": stitch_length,
    "thread numbering": numbering,
    "zips": zips,
    "bag geometry": bags,
    "safety: drawstrings": drawstrings,
    "safety: infants": infants,
    "safety: small parts": small_parts,
    "safety: tools": tools,
}


def _rows(*names: str) -> Callable[[Row], bool]:
    """Rows by id, single or from first to last: "EL-008", "EL-020..EL-022"."""
    wanted = set()
    for name in names:
        first, _, last = name.partition("..")
        stem, low = first.rsplit("-", 1)
        high = last.rsplit("-", 1)[1] if last else low
        wanted |= {f"{stem}-{number:0{len(low)}d}" for number in range(int(low), int(high) + 1)}
    return lambda row: row.id in wanted


LISTED = [
    Listed(
        "how to sew, not a sum: where to stitch, what to leave open, lengths sold ready",
        11,
        _rows("EL-008", "EL-009", "EL-019..EL-022", "EL-031", "EL-045", "BU-036", "BU-037", "BG-012"),
    ),
    Listed(
        "sources disagree on elastic (up to 1 in less for firm, 3 to 5 in for soft): the rule takes the share of "
        "common practice, and its notes say so",
        6,
        _rows("EL-025..EL-030"),
    ),
    Listed("pairs of widths as the trade names them, no sum", 9, _rows("EL-033..EL-040", "BG-013")),
    Listed("a rule of thumb that the table of the same topic and geometry contradict", 1, _rows("BI-024")),
    Listed(
        "allowances and hem depths by garment, no sum of these rules", 31, lambda row: row.topic == "seams and hems"
    ),
    Listed(
        "rougher ratios of another Coats guide: the factors are taken, and the rule's notes name the difference",
        3,
        _rows("TH-013", "TH-014", "TH-016"),
    ),
    Listed(
        "factors measured by unpicking, a division the maker does; the factor can then be given",
        4,
        _rows("TH-017", "TH-018", "TH-024", "TH-025"),
    ),
    Listed("an earlier edition's allowance, replaced in 2010", 1, _rows("TH-032")),
    Listed("by cloth thickness and stitch density: no rule asks for the seam's thickness", 7, _rows("TH-033..TH-039")),
    Listed("averages a garment and for embroidery, no sum of seams", 5, _rows("TH-040..TH-044")),
    Listed(
        "shares other than the lockstitch's: from memory but for the one-thread stitch, which has no under thread",
        10,
        _rows("TH-045", "TH-047..TH-055"),
    ),
    Listed(
        "needle sizes outside the packets' table, and 13, which one table alone pairs with 80",
        9,
        _rows("NE-001", "NE-002", "NE-007", "NE-017..NE-021", "NE-028"),
    ),
    Listed("stitches an inch by cloth: told in the rule's notes, no sum", 6, _rows("NE-040", "NE-051..NE-055")),
    Listed("yarn sums other than thread sizes", 10, _rows("TN-001..TN-004", "TN-011", "TN-012", "TN-029..TN-032")),
    Listed("labels on cones, from memory", 8, _rows("TN-038..TN-045")),
    Listed("pattern sense, no sum", 3, _rows("ZI-026", "ZI-027", "BG-001")),
    Listed(
        "law and standards: named in the caution to be checked, not worked as a verdict",
        14,
        _rows("SA-004..SA-009", "SA-011", "SA-012", "SA-015..SA-020"),
    ),
    Listed("limits from memory, which the caution does not quote", 9, _rows("SA-021..SA-027", "SA-036", "SA-037")),
    Listed(
        "the test cylinder for small parts: a laboratory's test, not a maker's sum",
        7,
        _rows("SA-028", "SA-029", "SA-031..SA-035"),
    ),
    Listed(
        "sleepwear limits: not quoted, the caution names the rule to be checked",
        72,
        lambda row: row.topic == "safety: sleepwear",
    ),
    Listed("cots and mattresses, no sum", 2, _rows("SA-110", "SA-115")),
]
