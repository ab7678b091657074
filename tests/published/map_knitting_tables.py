"""Published knitting tables put to the rules that look them up: yarn classes, needles, sizes, fits, yarn by garment."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from rules.engine.answer import Answer
from rules.knitting.yarn_class import AU_PLY, CLASS_NAMES
from rules.knitting.yarn_count import Count
from tests.support import exact, result, work

from .harness import Listed, Row

FILE = "knitting"

OF_A_CLASS = {
    "knit gauge in stockinette over 4 in": "stitches", "knitting needle metric range": "needle",
    "knitting needle US range": "needle",
    "crochet gauge in single crochet over 4 in": "crochet", "crochet hook metric range": "hook",
    "crochet hook US range": "hook",
    "wraps per inch (current council table)": "wraps_of", "wraps per inch (spinners, older system 0-6)": "wraps_of",
    "yards per pound (spinners, older system 0-6)": "yards", "knit gauge in the older 0-6 system": "stitches",
    "crochet gauge in the older 0-6 system": "crochet", "metres per 100 g": "metres", "wraps per inch": "wraps_of",
    "council category": "number_of",
    "Australian/NZ ply name": "ply", "name used elsewhere": "names", "typical knit gauge over 10 cm": "stitches",
    "wraps per inch (single figure)": "wraps_of", "typical metres per gram": "a_gram",
    "metres per 100 g (older table, disagrees with the newer one for 1-3)": "metres",
}  # fmt: skip


def _classes(row: Row) -> list[str]:
    """The classes a row is about, by its number or by the name its list uses."""
    if row.get("category"):
        return [row.get("category").split()[0]]
    name = row.get("uk_name") or row.get("name") or row.get("au_nz_ply")
    return [key for key, (_, uk, other) in CLASS_NAMES.items() if name in uk or name in other or name == AU_PLY[key]]


def yarn_weight(row: Row) -> float | str | None:
    if row.get("ball length"):
        count = Count("m/g", Fraction(row.get("ball length").split()[0]) / Fraction(row.get("ball mass").split()[0]))
        return exact(work("yarn count", count=count, into="m100"), "first_m100")
    step = OF_A_CLASS.get(row.get("quantity"))
    classes = _classes(row)
    if step is None or not classes:
        return None
    texts = [result(work("yarn class", yarn=key), step).text for key in classes]
    if step == "number_of":
        return " or ".join(texts) if len(texts) > 1 else float(texts[0])
    wanted = row.expected.removesuffix(" ply") if step == "ply" else row.expected
    return _if_said(row, " | ".join(texts), wanted)


def _if_said(row: Row, text: str, wanted: str = "") -> str | float:
    """The row's own value when the answer's words hold it, else those words; answers write a range with "to"."""
    wanted = wanted or row.expected
    held = any(re.search(rf"(?<![\d.]){re.escape(form)}(?![\d.])",
                         text) for form in (wanted, wanted.replace("-", " to ")))
    if not held:
        return text
    return float(row.expected) if re.fullmatch(r"[\d.]+", row.expected) else row.expected


# -- needles and hooks -------------------------------------------------------------------------------------------------


IN_ANOTHER_LIST = ("NH-003", "NH-005")  # no US size in the older list; half sizes in the newer one, NH-020 and NH-021


def needles(row: Row) -> float | str | None:
    tool = {"knitting needle": "needle", "crochet hook": "hook", "steel crochet hook": "steel"}.get(row.get("tool"))
    if tool is None or row.status == "from memory" or row.id in IN_ANOTHER_LIST:
        return None
    if row.get("metric"):
        made = work("needle or hook size", thickness=row.get("metric"), tool=tool, system="cm")
        return _labels(row, made)
    if row.get("rule"):
        ends = [exact(work("needle or hook size", size=size, named="japan", tool=tool, system="cm"),
                      "mm") for size in ("6", "7")]
        return ends[1] - ends[0]
    if row.get("US") == "Q":
        made = work("needle or hook size", letter="Q", tool=tool, system="cm")
    elif row.get("US"):
        made = work("needle or hook size", size=row.get("US"), named="us", tool=tool, system="cm")
    else:
        made = work("needle or hook size", size=row.get("Japanese size"), named="japan", tool=tool, system="cm")
    return _if_said(row, " ".join((result(made, "mm").text, *made.notes)), f"{row.expected} mm")


def _labels(row: Row, made: Answer) -> str:
    """What an answer calls a thickness, written as the row writes it."""
    said = {one.key: one.text for one in made.results}
    names = {"US": said.get("us", "-"), "UK old": said.get("uk", "-")}
    wanted = [part.split("=")[0].strip() for part in row.expected.split(";")]
    return "; ".join(f"{name}={names[name]}" for name in wanted)


# -- sizes -------------------------------------------------------------------------------------------------------------

MEASURES = {
    "head circumference, 50th percentile": "head", "hat circumference (designer table)": "hat girth",
    "crown to brow (designer table)": "crown to brow",
    "hat circumference": "hat girth", "hat length": "hat length", "snug hat circumference": "hat girth",
    "hat height": "hat length",
    "head circumference (magazine chart)": "head", "foot length": "foot length",
    "foot length (second source)": "foot length",
    "hand circumference without thumb": "hand", "hand circumference": "hand",
    "usual foot/ankle circumference": "foot girth", "head circumference": "head",
}  # fmt: skip
PATTERN_GROUPS = {"women's socks": "woman", "men's socks": "man"}


def body(row: Row) -> float | str | None:
    if row.get("quantity") == "centimetres":
        return exact(work("convert", amount=row.get("length"), system="cm", unit="cm"), unit="cm")
    if row.status != "published" or not row.get("measure"):
        return None
    size = row.get("size") or row.get("age") or (f"bust {row.get('bust')}" if row.get("bust") else "")
    measure = row.get("measure").replace(" (body)", "").replace("chest/bust",
                                                                "chest").replace(" length to underarm", " length")
    return _size(row, measure.replace(" circumference", ""), row.get("group"), size)


def _size(row: Row, measure: str, who: str, size: str) -> float | str | None:
    """The row's value when the size rule gives it, as its answer or as what another list says."""
    made = work("knitting sizes", measure=measure, size=size, **({"who": who} if who else {}))
    value = re.sub(r" (in|cm)$", "", row.expected.split(";")[0].strip())
    unit = row.unit.split(";")[0].strip()
    text = " ".join((made.results[0].text, *made.notes)) if made.results else made.message
    return _if_said(row, text, f"{value} {unit}")


def heads_and_feet(row: Row) -> float | str | None:
    measure = MEASURES.get(row.get("quantity"))
    if measure is None or row.status != "published":
        return None
    if row.get("glove size"):
        return _size(row, measure, "", f"glove size {row.get('glove size')}")
    group = PATTERN_GROUPS.get(row.get("pattern group"), "")
    size = row.get("size") or row.get("age") or row.get("glove/mitten size") or group
    return _size(row, measure, row.get("sex"), size) if size else None


def blankets(row: Row) -> float | str | None:
    if row.status != "published" or not row.get("item") or row.get("quantity") not in ("", "alternative sizes"):
        return None
    return _size(row, "mattress" if "mattress" in row.get("item") else "blanket", "", row.get("item"))


# -- fit ---------------------------------------------------------------------------------------------------------------

FIT_TABLES = {"older yarn-company table": "older", "article=Purl Soho": "current"}


def ease(row: Row) -> float | str | None:
    body_text = row.get("body chest") or row.get("body bust") or row.get("to fit bust") or row.get("body")
    finished = row.get("finished chest") or row.get("finished bust") or row.get("finished")
    if row.get("table") == "older yarn-company table" or row.get("article"):
        return _named_fit(row)
    if row.get("ease percent"):
        return None
    if not body_text:
        return None
    if not finished:
        return _finished(row, body_text)
    if row.get("quantity") == "ease as percentage of body":
        return exact(work("fit and ease in knitting", body=body_text, finished=finished, system="cm"), "share")
    if "both ends" in row.get("quantity"):
        unit = body_text.split()[1]
        ends = [exact(work("fit and ease in knitting", body=f"{end} {unit}", finished=finished), "ease",
                      unit) for end in body_text.split()[0].split("-")]
        return f"{ends[1]:g} to {ends[0]:g}"
    return exact(work("fit and ease in knitting", body=body_text, finished=finished), "ease", row.unit)


def _named_fit(row: Row) -> str:
    """The row's range when our rule gives its fit's name at both ends or, of an open one, beyond it."""
    ends = [Fraction(figure) for figure in re.findall(r"\d+", row.expected)]
    at = [ends[0] + 1] if "more" in row.expected else [sum(ends) / len(ends)]
    name = row.get("fit")
    said = [result(work("fit and ease in knitting", body="40 in", finished=f"{float(40 + one):g} in"),
                   "fit").text for one in at]
    which = "older" if row.get("table") else "current"
    return row.expected if all(text.startswith(name) or f"{name} in the {which}" in text for text in said) else said[0]


def _finished(row: Row, body_text: str) -> float | str | None:
    amounts = re.findall(r"\d+", row.get("ease") or row.get("fit"))
    if not amounts or "finished" not in row.unit:
        return None
    ends = [exact(work("fit and ease in knitting", body=body_text, stated={"ease": f"{amount} in"}, asked="finished"),
                  "finished", "in") for amount in amounts]
    return f"{ends[0]:g}-{ends[1]:g}" if len(ends) > 1 else ends[0]


# -- yarn by garment ---------------------------------------------------------------------------------------------------

PROJECTS = {
    "hat": ("hat", "adult", ""), "scarf": ("scarf", "adult", ""), "adult sweater": ("sweater", "adult", ""),
    "baby 12-18 months, fingering": ("sweater", "baby", "1"),
    "toddler 2-6 years pullover or cardigan, sport": ("sweater", "toddler", "2"),
    "child 6-12 years pullover or cardigan, sport": ("sweater", "child", "2"),
    "ladies 32-40 bust pullover, fingering": ("sweater", "woman", "1"),
    "men 36-48 chest pullover, sport": ("sweater", "man", "2"),
    "Preemie beanie, worsted weight": ("hat", "preemie", "4"),
    "Newborn beanie, worsted weight": ("hat", "newborn", "4"), "Baby beanie, worsted weight": ("hat", "baby", "4"),
}  # fmt: skip


def garments(row: Row) -> float | str | None:
    if row.get("project") == "cardigan instead of pullover":
        both = [exact(work("yarn by garment", yarn="3", garment=garment), "low",
                      "yd") for garment in ("cardigan", "sweater")]
        return (both[0] / both[1] - 1) * 100
    known = PROJECTS.get(row.get("project"))
    if known is None:
        return None
    garment, wearer, yarn = known
    made = work("yarn by garment", yarn=yarn or row.get("category").split()[0], garment=garment, wearer=wearer)
    low, high = exact(made, "low", "yd"), exact(made, "high", "yd")
    return low if low == high else f"{low:g}-{high:g}"


CHECKS: dict[str, Callable[[Row], float | int | str | None]] = {
    "yarn-weight": yarn_weight, "needles-hooks": needles, "body-size": body, "hats-socks-mittens": heads_and_feet,
    "blankets-shawls": blankets,
    "ease": ease, "yarn-quantity": garments,
}  # fmt: skip
LISTED: list[Listed] = []
