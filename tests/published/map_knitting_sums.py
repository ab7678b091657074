"""Published knitting sums put to the rules: tension, rows, shaping, yarn, counts, hats and socks, toys, edges."""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Callable
from fractions import Fraction

from rules.knitting.row_reader import actions, knit
from rules.knitting.stripes import Stripe, Stripes
from rules.knitting.yarn_count import Count
from tests.support import exact, result, rounded, work

from .harness import Listed, Row

FILE = "knitting"

Said = float | int | str | None


def _rate(text: str) -> str:
    """A tension as the file writes it ("26 sts per 4 in") as a typed value."""
    return text.replace(" per ", " to ")


def _numbers(text: str) -> list[Fraction]:
    return [Fraction(figure) for figure in re.findall(r"\d+(?:\.\d+)?", text)]


def _multiple(row: Row) -> dict[str, str]:
    size, plus = (int(number) for number in _numbers(row.get("pattern"))[:2])
    return {"multiple": f"{size} st", "edge": f"{plus} st"}


# -- tension -----------------------------------------------------------------------------------------------------------


def gauge(row: Row) -> Said:
    quantity = row.get("quantity")
    if row.get("pattern gauge"):
        return _own_tension(row)
    if row.get("pattern"):
        return _multiples(row)
    if row.get("row gauge"):
        made = work("rows for a length", length=row.get("length"), row_tension=_rate(row.get("row gauge")),
                    asked="product")
        return exact(made, "product") if row.unit == "rows" and "->" not in row.expected else None
    if row.get("stitches over 4 in"):
        return exact(work("tension (gauge)", stitches=f"{row.get('stitches over 4 in')} st", over="4 in"), "each",
                     "st/in")
    if "implied gauge" in quantity:
        return exact(work("tension (gauge)", stitches="102 st", over="22 in"), "each", "st/in")
    if quantity in ("per inch", "per cm"):
        return _per_one(row)
    if quantity in ("stitches per inch", "stitches per 4 in"):
        (stitches,), over = _numbers(row.get("gauge"))[:1], _rate(row.get("gauge")).split(" to ")[1]
        made = work("tension (gauge)", stitches=f"{stitches} st", over=over)
        return exact(made, "tension", "st/in" if "inch" in quantity else "st/4in")
    return _width(row, quantity)


def _width(row: Row, quantity: str) -> Said:
    tension = _rate(row.get("gauge").split(" (")[0])
    width = row.get("circumference") or row.get("width") or row.get("bust") or row.get("sleeve")
    stitches = row.get("stitches") or row.get("back stitches")
    if stitches and "two pieces" in quantity:
        return 2 * exact(work("stitches for a width", stated={"stitches": f"{stitches} st"}, tension=tension,
                              asked="width"), "width", "in")
    if stitches:
        made = work("stitches for a width", stated={"stitches": f"{stitches} st"}, tension=tension, asked="width")
        return exact(made, "width", row.unit)
    if not width:
        return None
    if "rounded up to even" in quantity:
        return rounded(work("stitches for a width", width=width, tension=tension, multiple="2 st"), "stitches")
    made = work("stitches for a width", width=width, tension=tension, asked="product")
    return rounded(made, "stitches") if "rounded" in quantity else exact(made, "product")


def _per_one(row: Row) -> str:
    stitches, rows = _numbers(row.get("gauge"))[:2]
    over = row.get("gauge").split("per ")[1]
    made = work("tension (gauge)", stitches=f"{stitches} st", over=over, rows=f"{rows} rows",
                system="in" if "in" in over else "cm")
    return f"{exact(made, 'each'):g} sts and {exact(made, 'row_each'):g} rows"


def _own_tension(row: Row) -> Said:
    pattern, own = _rate(row.get("pattern gauge")), _rate(row.get("knitter gauge"))
    if "rows" in pattern:
        made = work("size at my tension", width="1 cm", pattern="20 sts to 10 cm", own="20 sts to 10 cm",
                    length=row.get("intended length"),
                    pattern_rows=pattern, own_rows=own)
        return exact(made, "got_length", "cm")
    if row.get("pattern stitches"):
        made = work("size at my tension", stitches=f"{row.get('pattern stitches')} st", pattern=pattern, own=own)
        return exact(made, "same")
    made = work("size at my tension", width=row.get("intended"), pattern=pattern, own=own)
    return -exact(made, "difference", "cm") if row.get("quantity") == "shortfall" else exact(made, "got", row.unit)


def _multiples(row: Row) -> Said:
    quantity = row.get("quantity")
    if quantity == "nearest valid count":
        return rounded(work("stitches for a width", width=row.get("width"), tension=_rate(row.get("gauge")),
                            **_multiple(row)), "stitches")
    size, plus = (int(number) for number in _numbers(row.get("pattern"))[:2])
    if "first" in quantity:
        count = len(row.expected.split(","))
        made = [work("stitches for a width", width=f"{plus + size * number} in", tension="1 st to 1 in",
                     **_multiple(row)) for number in range(1, count + 1)]
        return ", ".join(f"{rounded(one, 'stitches'):g}" for one in made)
    if quantity == "cast on":
        edge = plus + 2 * int(_numbers(row.get("edge"))[0])
        width = size * int(row.get("repeats")) + edge
        return rounded(work("stitches for a width", width=f"{width} in", tension="1 st to 1 in", multiple=f"{size} st",
                            edge=f"{edge} st"), "stitches")
    if quantity == "whole repeats":
        return exact(work("stitches for a width", width=f"{row.get('stitches')} in", tension="1 st to 1 in",
                          asked="repeats", **_multiple(row)), "repeats")
    if "below and above" in quantity:
        return _around(row)
    if row.get("candidates"):
        made = [work("stitches for a width", width=f"{one} in", tension="1 st to 1 in",
                     **_multiple(row)) for one in _numbers(row.get("candidates"))]
        fits = [rounded(one, "stitches") == wanted for one, wanted in zip(made, _numbers(row.get("candidates")),
                                                                          strict=True)]
        return "all" if all(fits) else "not all"
    return None


def _around(row: Row) -> str:
    """The valid counts below and above, from a width a little less and a little more."""
    at = Fraction(_numbers(row.expected)[0] + _numbers(row.expected)[1], 2)
    made = [rounded(work("stitches for a width", width=f"{float(at + off):g} in", tension="1 st to 1 in",
                         **_multiple(row)), "stitches") for off in (-1, 1)]
    return f"{made[0]:g} and {made[1]:g}"


# -- rows of instructions ----------------------------------------------------------------------------------------------


def _ours(text: str, before: int) -> str:
    """A printed row in our own notation: repeats written out, "to end" and "round" worked out from the stitches."""
    text = text.lower()
    text = re.sub(r"\(([^)]*)\)x(\d+)", lambda match: f"({_commas(match[1])}) {match[2]} times", text)
    ending = re.search(r"\(([^)]*)\) (?:to end|round|to last (?:st|\d+)[a-z]*)(.*)", text)
    if ending:
        lead, rest = text[: ending.start()].strip(" ,"), ending[2].strip(" ,")
        fixed = sum(knit(part).used for part in (lead, rest) if part)
        used = knit(_commas(ending[1])).used
        middle = f"({_commas(ending[1])}) {(before - fixed) // used} times"
        text = ", ".join(part for part in (lead, middle, rest) if part)
    return text


def _commas(words: str) -> str:
    return ", ".join(words.replace(",", " ").split())


def rows_of_instructions(row: Row) -> Said:
    before = int(row.get("stitches before") or row.get("before") or row.get("stitches") or 0)
    if re.match(r"\(?[Kk]\d|\(?[Kk]2tog|\([Kk]fb|K\d", row.get("row")):
        return knit(_ours(row.get("row"), before), before).left
    if row.get("row").startswith("increase"):
        add = row.get("increases") or row.get("row").split()[1]
        return exact(work("evenly spaced increases", stitches=f"{before} st", add=f"{add} st"), "after")
    if row.get("shaping"):
        start, total = _numbers(row.get("shaping"))
        made = work("shape along rows", start=f"{start} st", total=f"{total} st", rows="400 rows")
        return exact(made, "times")
    if row.get("shaping rows") or row.get("increase rows"):
        return _plan(row)
    if "mode" in row.inputs:
        return _spacing(row)
    if row.get("context") == "euclid":
        gaps = _groups(int(row.get("steps")), int(row.get("pulses")), "m1")
        return _same(row, Counter(gaps), Counter(int(gap) for gap in _numbers(row.expected)))
    if row.get("condition").startswith("positions by rounding"):
        return _positions(row)
    if row.get("context") == "crown" and "8 decreases" in row.get("condition"):
        return exact(work("evenly spaced decreases", stitches=f"{before} st", lose="8 st", held="round"), "after")
    return None


def _positions(row: Row) -> str:
    """The stitch after which each increase of our row in the round comes."""
    gaps = _groups(int(row.get("stitches")), int(row.get("increases")), "m1")
    return ", ".join(str(sum(gaps[: number + 1])) for number in range(len(gaps)))


def _plan(row: Row) -> Said:
    """Shaping rows put to the rule as stitches worked at one edge."""
    times, rows = row.get("shaping rows") or row.get("increase rows"), row.get("rows")
    if not rows or "plan" not in row.get("quantity"):
        return None
    sides = "right" if row.get("constraint") else "any"
    made = work("shape along rows", change=f"{times} st", rows=f"{rows} rows", ends="one", sides=sides)
    ours = Counter(re.findall(r"every (\d+)\w* row (\d+) time", result(made, "plan").text))
    return _same(row, ours, Counter(re.findall(r"every (\d+)\w* rows? (?:(\d+) times|once)", row.expected)),
                 result(made, "plan").text)


def _same(row: Row, ours: object, wanted: object, text: str = "") -> str:
    """The row's own words when what they list is what the rule gives, in whatever order."""
    return row.expected if ours == wanted else text or str(ours)


def _groups(stitches: int, count: int, action: str, held: str = "round") -> list[int]:
    """The stitches between one shaping and the next, from the row our rule writes."""
    topic, place = ("evenly spaced decreases", "lose") if action == "k2tog" else ("evenly spaced increases", "add")
    made = work(topic, stitches=f"{stitches} st", held=held, **{place: f"{count} st"})
    return [plain for plain, word in actions(result(made, "row").text) if word]


def _spacing(row: Row) -> Said:
    mode, quantity = row.get("mode"), row.get("quantity")
    stitches, count = int(row.get("stitches") or 0), int(row.get("increases") or row.get("decreases") or 0)
    if mode == "decrease":
        return _decreases(row, stitches, count)
    if mode != "round" or not count:
        return None
    if row.get("decreases"):
        gaps = Counter(_groups(stitches, count, "k2tog"))
        wanted = {int(plain): int(times) for times, plain in re.findall(r"(\d+) times \(k(\d+), k2tog\)", row.expected)}
        left = exact(work("evenly spaced decreases", stitches=f"{stitches} st", held="round", lose=f"{count} st"),
                     "after")
        return row.expected if gaps == wanted and f"{left:g} sts remain" in row.expected else f"{gaps}; {left:g}"
    gaps = _groups(stitches, count, "m1")
    if quantity in ("interval", "increase at every"):
        return sum(gaps) / len(gaps)
    if quantity == "group sizes":
        if "group" not in row.expected:
            return _same(row, Counter(gaps), Counter(int(gap) for gap in _numbers(row.expected)))
        wanted = {int(size): int(times) for times, size in re.findall(r"(\d+) groups? of (\d+)", row.expected)}
        return _same(row, dict(Counter(gaps)), wanted)
    return None


def _decreases(row: Row, stitches: int, count: int) -> Said:
    quantity = row.get("quantity")
    if quantity == "decreases":
        made = work("evenly spaced decreases", stitches=f"{stitches} st", total=f"{row.get('final')} st")
        return stitches - exact(made, "after")
    if quantity == "stitches after":
        return exact(work("evenly spaced decreases", stitches=f"{stitches} st", lose=f"{count} st"), "after")
    if not stitches or not count:
        return None
    gaps = [plain + 2 for plain in _groups(stitches, count, "k2tog")]
    if quantity == "interval":
        return sum(gaps) / len(gaps)
    if quantity.startswith("plain stitches"):
        return gaps[0] - 2
    if quantity == "plan":
        wanted = {int(size): int(times) for size, times in re.findall(r"every (\d+)\w+ stitch (\d+) times",
                                                                      row.expected)}
        return _same(row, dict(Counter(gaps)), wanted)
    return None


# -- yarn --------------------------------------------------------------------------------------------------------------


def yarn(row: Row) -> Said:
    quantity = row.get("quantity")
    if row.get("pattern") and quantity == "total length":
        balls, each = row.get("pattern").split(" balls x ")
        made = work("yarn needed", pattern_balls=balls, pattern_ball=each, ball="1 m")
        return exact(made, "total", row.unit)
    if row.get("needed") and row.get("ball"):
        reserve = row.get("reserve") or "0 %"
        return rounded(work("yarn needed", length=row.get("needed"), ball=row.get("ball"), spare=reserve), "balls")
    if row.get("length") and "metres as printed" in quantity:
        return exact(work("convert", amount=row.get("length"), system="cm", unit="m"), unit="m")
    if row.get("total area"):
        made = work("yarn by swatch", area="1440 in^2", swatch_width="6 in", swatch_length="6 in", swatch_weight="9 g",
                    spare="0 %", system="cm")
        return exact(made, "weight", "g")
    if row.get("blanket") and "without rounding" in quantity:
        made = work("yarn by swatch", width="60 in", length="60 in", swatch_width="6 in", swatch_length="6 in",
                    swatch_weight="6.96 g", spare="0 %", system="cm")
        return exact(made, "weight", "g")
    if row.get("swatch") and quantity == "length in swatch":
        made = work("yarn by swatch", area="1 in^2", swatch_width="1 in", swatch_weight="4 g", ball_weight="50 g",
                    ball_length="87 yd", spare="0 %")
        return exact(made, "yarn_length", "yd")
    if row.get("old throw"):
        made = work("yarn by swatch", width="40 in", length="48 in", swatch_width="20 in", swatch_length="30 in",
                    swatch_weight="280 g", spare="0 %", system="cm")
        return exact(made, "weight", "g")
    if row.get("stripe repeat"):
        sequence = Stripes((Stripe("A", Fraction(2)), Stripe("B", Fraction(2)), Stripe("C", Fraction(1))))
        made = work("stripes", sequence=sequence, rows="100 rows", yarn="900 m", system="cm")
        return ", ".join(f"{exact(made, f'yarn_{number}', 'm'):g}" for number in (1, 2, 3))
    return None


def blankets(row: Row) -> Said:
    if not row.get("blanket") or not row.get("gauge"):
        return None
    width, length = (f"{side} cm" for side in _numbers(row.get("blanket")))
    if row.get("pattern"):
        made = work("scarf, blanket", width=width, length=length, tension="18 sts to 10 cm", multiple="12 st",
                    edge="17 st")
        return rounded(made, "stitches")
    made = work("scarf, blanket", width=width, length=length, tension="18 sts to 10 cm", row_tension="26 rows to 10 cm")
    return f"{exact(made, 'stitches'):g} and {exact(made, 'rows'):g}"


# -- yarn counts -------------------------------------------------------------------------------------------------------

SYSTEMS = {"Nm": "Nm", "Ne": "Ne", "tex": "tex", "cotton count": "Ne", "worsted count": "worsted",
           "metres per 100 g": "m100", "yards per pound": "ydlb", "denier": "denier",
           "cotton": "Ne", "worsted": "worsted", "linen": "linen", "worsted-count": "worsted", "metric count": "Nm",
           "woolen run": "run", "linen lea": "linen",
           "linen lea or woolen cut": "linen", "yards per pound ": "ydlb"}  # fmt: skip


def counts(row: Row) -> Said:
    if row.get("from"):
        return _counted(_typed(row.get("from")), SYSTEMS[row.get("to")])
    if row.get("yarn") and row.unit == "yd/lb":
        return _ply(row.get("yarn"))
    if row.get("quantity") == "1 yard":
        return exact(work("convert", amount="1 yd", system="cm", unit="m"), unit="m")
    if row.get("condition") == "1 oz":
        return exact(work("convert", amount="1 oz", system="cm", unit="g"), unit="g")
    if row.get("kind") == "factor" and " / " in row.get("quantity"):
        return _factor(row)
    if row.get("kind") == "constant" and " x " in row.get("quantity"):
        one, other = (SYSTEMS.get(name, "") for name in row.get("quantity").split(" x "))
        return _counted(Count(other, Fraction(1)), one) if one and other else None
    if row.get("quantity") == "doubled" and row.unit == "m/100 g":
        metres = _numbers(row.get("single") or row.get("strands"))
        size = metres[0] if row.get("single") else metres[1]
        return _counted(Count("m/g", size / 100), "m100", strands="2")
    if row.get("ball") and "453.59237" in row.get("quantity"):
        return _counted(Count("m/g", Fraction(350) * Fraction("0.9144") / 50), "ydlb")
    if row.get("context") == "Yorkshire skein":
        return _counted(Count("yorkshire", Fraction(1)), "ydlb")
    if row.get("context") == "ply":
        if "tex" in row.unit:
            return _counted(Count("tex", Fraction(60)), "m100", strands="2") ** -1 * 100000
        return _counted(Count("Nm", Fraction(28)), "tex", strands="4") ** -1 * 1000
    return None


def _typed(text: str) -> Count:
    if "yd/lb" in text:
        return Count("m/g", _numbers(text)[0] * Fraction("0.9144") / Fraction("453.59237"))
    if "m/100 g" in text:
        return Count("m/g", _numbers(text)[0] / 100)
    name, _, figure = text.rpartition(" ")
    return Count(SYSTEMS[name], Fraction(figure))


def _counted(count: Count, into: str, **more: str) -> float:
    return exact(work("yarn count", count=count, into=into, **more), f"first_{into}")


def _ply(text: str) -> Said:
    """A plied yarn as its band writes it ("2/24 worsted"), read as the assistant reads it."""
    from tests.support import ask

    strands = "2 strands of " in text
    figures = re.search(r"\d+/\d+", text)
    kind = next((word for word in ("cotton", "worsted", "linen") if word in text), "")
    if figures is None or not kind:
        return None
    made = ask(f"{figures.group()} {kind} count in yards per pound" + (" with 2 strands" if strands else ""))
    return exact(made)


def _factor(row: Row) -> Said:
    above, below = (part.strip("() ") for part in row.get("quantity").split(" / "))
    one, other = SYSTEMS.get(above, ""), SYSTEMS.get(below, "")
    if above == "yd/lb" or not one or not other:
        return None
    return _counted(Count(other, Fraction(1)), one)


# -- hats and socks ----------------------------------------------------------------------------------------------------


def hats_and_socks(row: Row) -> Said:
    quantity, gauge_text = row.get("quantity"), _rate(row.get("gauge"))
    girth = row.get("foot").removesuffix(" around")
    if row.get("foot") and "%" in row.get("negative ease"):
        made = work("sock", foot=girth, tension=gauge_text, ease=row.get("negative ease"), asked="product")
        return rounded(made, "stitches") if "multiple" in row.get("rounding") else exact(made, "product")
    if row.get("foot") and ("without ease" in quantity or row.get("ease") == "0 in"):
        return exact(work("sock", foot=girth, tension=gauge_text, ease="0 %", asked="product"), "product")
    if row.get("swatch") and quantity == "gauge":
        return exact(work("tension (gauge)", stitches="8.5 st", over="2 in"), "each", "st/in")
    if row.get("swatch") and quantity == "stitches before ease":
        return exact(work("sock", foot="8.5 in", tension="4.75 sts to 1 in", ease="0 %", asked="product"), "product")
    if row.get("hat rule").startswith("85 %"):
        return exact(work("hat", head="22 in", tension="4.25 sts to 1 in", ease="15 %", asked="product"), "product")
    if row.get("hat rule").startswith("subtract"):
        return rounded(work("hat", head="21 in", tension="5 sts to 1 in", ease="0 %", multiple="1 st"), "stitches")
    if row.get("context") == "hat":
        return knit("(k9, k2tog) 8 times", 88).left
    if row.get("context") == "heel":
        return exact(work("sock", foot="16 in", tension="4 sts to 1 in", ease="0 %", asked="heel"), "heel")
    if row.get("context") == "pattern" and row.get("cast on"):
        stitches, rate = _numbers(row.get("cast on"))[:2]
        made = work("stitches for a width", stated={"stitches": f"{stitches} st"}, tension=f"{rate} sts to 4 in",
                    asked="width")
        return exact(made, "width", "in")
    if quantity == "key number K":
        return exact(work("stitches for a width", width=row.get("circumference"), tension=gauge_text, asked="product"),
                     "product")
    if row.get("hand") and row.get("ease") == "0 in":
        return rounded(work("sock", foot=row.get("hand"), tension=gauge_text, ease="0 %"), "stitches")
    if row.get("foot") and row.get("ease") == "-1 in":
        return rounded(work("sock", foot="7 in", tension=gauge_text, ease="0 %"), "stitches")
    if row.get("stitches") == "40.375":
        return rounded(work("sock", foot="8.5 in", tension="4.75 sts to 1 in", ease="10 %"), "stitches")
    if row.get("context") == "yoke decreases" and row.unit == "stitches":
        return knit("(k1, k2tog) 63 times", knit("(k2, k2tog) 63 times", 252).left).left
    if row.get("context", "").startswith("yoke decrease") and row.unit == "%":
        before = 12
        row_text = row.get("condition").split(" round")[0].strip("()").lower().replace(" ", ", ")
        times = before // knit(row_text).used
        return (1 - knit(f"({row_text}) {times} times", before).left / before) * 100
    return None


# -- toys, circles, picking up, buttonholes ----------------------------------------------------------------------------


def toys(row: Row) -> Said:
    quantity = row.get("quantity")
    if row.get("old gauge"):
        made = work("toy to another yarn", old=_rate(row.get("old gauge")), new=_rate(row.get("new gauge")),
                    height=row.get("toy height") or "10 cm", system="cm")
        step = {"new height": "tall", "linear scale": "factor", "surface (fabric area) scale": "area",
                "stuffing volume scale": "volume", "yarn length scale": "factor"}
        return exact(made, step[quantity])
    if row.get("linear scale") and "more stitches" not in row.get("gauge") and row.get("toy"):
        made = work("toy to another yarn", old="30 sts to 10 cm", new="20 sts to 10 cm", filling="45 g", yarn="60 m",
                    system="cm")
        return exact(made, "stuffing", "g") if "stuffing" in row.get("toy") else exact(made, "length", "m")
    if row.get("stripe height"):
        multiple = "2 row" if "even" in row.get("rounding") else "1 row"
        made = work("rows for a length", length=row.get("stripe height"), row_tension=_rate(row.get("row gauge")),
                    multiple=multiple)
        return rounded(made, "rows")
    if row.get("stripe sequence"):
        return exact(work("stripes", sequence=_sequence(row.get("stripe sequence"))), "repeat")
    if row.get("stripe repeat"):
        return exact(work("rows for a length", stated={"rows": "7 rows"}, row_tension="14 rows to 4 in",
                          asked="length"), "length", "in")
    if row.get("rounds"):
        return exact(work("rows for a length", stated={"rows": "38 rows"}, row_tension="26 rows to 4 in",
                          asked="length"), "length", "in")
    if row.get("piece") == "flat circle" and row.get("start"):
        start, each = int(row.get("start")), int(row.get("increases per round"))
        made = work("decrease rounds of a circle", start=f"{start} st", left=row.expected + " st", each=f"{each} st")
        return start + each * exact(made, "rounds") if exact(made, "rounds") == int(row.get("round")) - 1 else None
    if row.get("context") == "stuffed tube" and "long" in row.get("condition"):
        return exact(work("rows for a length", length="52 in", row_tension="14 rows to 4 in"), "rows")
    if row.get("ball diameter") and "equator" in quantity:
        made = work("stitches for a width", width=f"{8 * math.pi:.6f} cm", tension="24 sts to 10 cm", multiple="6 st")
        return rounded(made, "stitches")
    if row.get("ball diameter") and "pole" in quantity:
        return rounded(work("rows for a length", length=f"{4 * math.pi:.6f} cm", row_tension="32 rows to 10 cm"),
                       "rows")
    return None


def _sequence(text: str) -> Stripes:
    """A printed sequence: "2 rows C1, 2 rows C2", or "6 stripes of 7 rows"."""
    if "stripes of" in text:
        count, rows = _numbers(text)
        return Stripes(tuple(Stripe(str(number), rows) for number in range(int(count))))
    return Stripes(tuple(Stripe(part.split(" rows ")[1], Fraction(part.split()[0])) for part in text.split(", ")))


def edges(row: Row) -> Said:
    quantity = row.get("quantity")
    if row.get("band"):
        return _buttonholes(row)
    if row.get("gauge") and ("pick" in quantity or row.get("edge")):
        return _picked_up(row)
    if row.get("gauge") and quantity == "stitch height / width":
        stitches, rows = _numbers(row.get("gauge"))
        return exact(work("pick up", rows="1 row", tension=f"{stitches} sts to 4 in",
                          row_tension=f"{rows} rows to 4 in"), "stitches")
    if row.get("stitch") and quantity == "stitch height / width":
        made = work("pick up", rows="1 row", tension=f"{row.get('sts')} sts to 4 in",
                    row_tension=f"{row.get('rows')} rows to 4 in")
        return exact(made, "stitches")
    if row.get("context") == "chart" and "square motif" in row.get("condition"):
        made = work("scarf, blanket", width="12 cm", length="12 cm", tension="22 sts to 10 cm",
                    row_tension="30 rows to 10 cm")
        return f"{rounded(made, 'stitches'):g} and {rounded(made, 'rows'):g}"
    if row.get("sample"):
        count, over = _numbers(row.get("sample"))
        if "rows" in quantity:
            return exact(work("tension (gauge)", rows=f"{count} rows", row_over=f"{over} cm", system="cm"), "row_each")
        return exact(work("tension (gauge)", stitches=f"{count} st", over=f"{over} cm", system="cm"), "each")
    return None


def _picked_up(row: Row) -> Said:
    stitches, rows = _numbers(row.get("gauge"))[:2]
    rates = {"tension": f"{stitches} sts to 4 in", "row_tension": f"{rows} rows to 4 in"}
    if row.get("edge"):
        made = work("pick up", edge=row.get("edge"), **rates)
        edge_rows = exact(work("rows for a length", length=row.get("edge"), row_tension=rates["row_tension"]), "rows")
        return f"{edge_rows:g} rows and {exact(made, 'stitches'):g} stitches"
    if row.get("edge rows"):
        return exact(work("pick up", rows=f"{row.get('edge rows')} rows", **rates), "stitches")
    if row.get("quantity") == "pick-up ratio":
        ratio = _numbers(result(work("pick up", rows="100 rows", **rates), "ratio").text)
        return f"{ratio[0]} of {ratio[1]}"
    if "lowest terms" in row.get("quantity"):
        return str(Fraction(exact(work("pick up", rows=f"{rows} rows", **rates),
                                  "stitches")).limit_denominator(100) / rows)
    return None


def _buttonholes(row: Row) -> Said:
    if row.get("buttonholes").count(" of ") == 0:
        return None
    holes, hole = (int(number) for number in _numbers(row.get("buttonholes")))
    ends = _numbers(row.get("ends"))
    made = work("buttonhole stitches", band=f"{_numbers(row.get('band'))[0]} st", holes=str(holes), hole=f"{hole} st",
                before=f"{ends[0]} st", after=f"{ends[1]} st",
                asked="exact")
    if "before rounding" in row.get("quantity"):
        return exact(made, "exact")
    between, over = int(rounded(made, "between")), int(exact(made, "left_over"))
    if row.get("quantity") == "stitches per space":
        return between if not over else exact(made, "exact")
    wanted = {int(size): int(times) for times, size in re.findall(r"(\d+) of (\d+)", row.expected)}
    return _same(row, {between: holes - 1 - over, between + 1: over}, wanted)


CHECKS: dict[str, Callable[[Row], Said]] = {
    "gauge": gauge, "inc-dec": rows_of_instructions, "yarn-quantity": yarn, "yarn-count": counts,
    "hats-socks-mittens": hats_and_socks, "toys": toys, "fabric-geometry": edges,
    "blankets-shawls": blankets,
}  # fmt: skip


def _these(letters: str, *numbers: int | tuple[int, int]) -> Callable[[Row], bool]:
    """A test of a row by its number: single ones, or (first, last)."""
    wanted = {number for one in numbers for number in (range(one[0], one[1] + 1) if isinstance(one, tuple) else (one,))}
    return lambda row: row.id.startswith(f"{letters}-") and int(row.id.split("-")[1]) in wanted


LISTED: list[Listed] = [
    Listed("recalled, not read: no authority until compared with the original", 329,
           lambda row: row.status == "from memory"),
    Listed("common practice without an authority: mitten lengths", 12, lambda row: row.status == "common practice"),
    Listed("no rule: a gauge maker's range of numbers, and what a larger number means (said in the rule's note)", 3,
           _these("NH", 75, 123, 124)),
    Listed("the older list has no US size here, the newer one has a half size, checked at NH-020 and NH-021; the "
           "answer gives the newer", 2, _these("NH", 3, 5)),
    Listed("no rule: an armhole drafting rule of 1938", 2, _these("BS", 363, 364)),
    Listed("other authors' names of fits and ease: the rule gives the two council lists and says that names shift", 6,
           _these("EA", (6, 8), 15, 19, 20)),
    Listed("a designer's yarn classes for ease, a forum's ease for babies: no rule; ease in percent is dressmaking's",
           5, _these("EA", (21, 23), 56, 57)),
    Listed("rounds half a row down to even; ours takes a tie up", 1, _these("GA", 21)),
    Listed("the other school of even spacing, a whole section at both ends, or another order of the same groups; the "
           "rule's note says so", 9,
           _these("ID", 1, 4, 5, 8, (78, 82))),
    Listed("a step on the way that the rules do not give by itself", 6, _these("ID", 12, 18, 57, 60, 61, 107)),
    Listed("no rule: casting off in steps at armholes and shoulders, and raglans", 18,
           _these("ID", (48, 53), (95, 106))),
    Listed("no sum of ours: drawing a line on a grid", 2, _these("ID", 91, 92)),
    Listed("what single patterns state, not a sum", 16, lambda row: _these("YQ",
                                                                           (25, 30))(row) or _these("FG", (14, 19))(row)
           or _these("BL", (53, 56))(row)),
    Listed("areas of pieces and lengths per row or tail: rules of thumb that the rules do not hold", 36,
           _these("YQ", 66, 67, (69, 80), (82, 99), 103, 104, 105, 107)),
    Listed("definitions, rounded ounces, and rules of thumb for strands held together", 18,
           _these("YC", 28, 30, 31, 32, 48, 50, 51, (85, 95))),
    Listed("hat sizes in pi, other designers' negative ease, shoe sizes, and the percentage system: no rule", 36,
           _these("HM", 95, 96, 101, 102, 103, 107, 108, 111, 112, 113, 116, 117, (124, 140), (186, 192))),
    Listed("measured scales of hooks, which differ from the ratio of the hooks: the rule goes by tension, and its note "
           "says so", 11, _these("TO", (1, 11))),
    Listed("a toy of more stitches, shapes in crochet, and a doll's percentage: no rule", 12,
           _these("TO", (31, 33), 40, (42, 46), (52, 54))),
    Listed("small-parts law: the caution names it; no verdict is ever given", 19, _these("TO", (55, 73))),
    Listed("cot mattresses by law, and shawls by doubling: no rule", 22,
           _these("BL", (49, 52), (57, 62), (68, 73), (76, 81))),
    Listed("textile science of the loop, and other makers' ratios", 14, _these("FG", (1, 4), (49, 50), (52, 59))),
    Listed("pick-up and buttonhole plans row by row, and charts: the rules give the ratio, the total and the spaces",
           12,
           _these("FG", 25, 27, (30, 32), 37, 42, 43, 47, 48, 60, 62)),
]
