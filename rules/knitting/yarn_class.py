"""Yarn classes by any name or number, by tension or wraps, and the yarn a garment takes: the published tables' rows."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, RATIO, STITCH_RATE, TEXT
from ..engine.literal import number
from ..engine.outcome import Outcome
from ..engine.rounding import COUNT_UP, YARN_LENGTH
from ..engine.run import Impossible, Run
from ..engine.units import factor
from .tables.garments import CARDIGAN_MORE, YARN_BY_GARMENT_TABLE, Takes
from .tables.yarn import YARN_CELLS, Cell

# The class's own name, then the names of the UK, Australian and other lists that fall in it.
CLASS_NAMES = {
    "0": ("Lace", ("Cobweb (UK)", "Laceweight / 2 ply"), ("Lace",)), "1": ("Super Fine",
                                                                           ("3 ply / light fingering",
                                                                            "4 ply / fingering / sock"),
                                                                           ("Fingering",)),
    "2": ("Fine", ("Sport",), ("Sport",)), "3": ("Light", ("DK",), ("DK",)),
    "4": ("Medium", ("Aran (US worsted)",), ("Worsted", "Aran", "Heavy worsted")),
    "5": ("Bulky", ("Chunky",), ("Bulky",)),
    "6": ("Super Bulky", ("Super Chunky",), ("Super bulky",)), "7": ("Jumbo", ("Super Chunky",), ()),
}  # fmt: skip
AU_PLY = {"0": "2-3 ply", "1": "4 ply", "2": "5 ply", "3": "8 ply", "4": "10 ply", "5": "12 ply", "6": "14 ply",
          "7": "16 ply+"}


def cells(subject: str, quantity: str) -> list[Cell]:
    """The printed cells of a class (or a list's own name) for a quantity, in the order of the lists."""
    return [cell for cell in YARN_CELLS if cell.subject == subject and cell.quantity == quantity]


def bounds_of(value: str) -> tuple[Fraction | None, Fraction | None]:
    """The ends of a printed range: "23-26", "<=6", ">=15", "14". (None for an open end.)"""
    text = value.split(" (")[0].rstrip("+")
    if text.startswith("<"):
        return None, number(text.lstrip("<="))
    if text.startswith(">"):
        return number(text.lstrip(">=")), None
    low, _, high = text.partition("-")
    return number(low), number(high or low)


def classes_for(quantity: str, value: Fraction) -> list[str]:
    """The classes whose printed range holds a value; two where they overlap, none in a gap."""
    found = []
    for key in CLASS_NAMES:
        for cell in cells(key, quantity):
            low, high = bounds_of(cell.value)
            if (low is None or value >= low) and (high is None or value <= high):
                found.append(key)
    return found


def _both(key: str, *quantities: str, unit: str = "") -> str:
    """What the lists print for a class, the first one plainly and those that differ after it."""
    texts: dict[str, str] = {}
    _, uk, others = CLASS_NAMES[key]
    for quantity in quantities:
        for subject in (key, *uk, *others):
            for cell in cells(subject, quantity):
                plain = cell.value if quantity == "US hook" else cell.value.replace("-", " to ")
                text = f"{plain} {unit}".strip()
                texts.setdefault(text, cell.source)
    shown = list(texts)
    return shown[0] + (f", other lists: {', '.join(shown[1:])}" if len(shown) > 1 else "") if shown else ""


def _classes_of(run: Run) -> list[str]:
    """The classes of a question, by its name, its number, its tension or its wraps; two where the table overlaps."""
    if run.was_given("yarn"):
        return [str(run.get("yarn"))]
    for name, quantity, unit in (("tension", "tension", "st/4in"), ("wraps", "wraps", "1")):
        if run.was_given(name):
            value = Fraction(run.get(name))
            value = value / factor("st/10cm") if unit != "1" else value
            found = classes_for(quantity, value)
            if not found:
                raise Impossible(f"{run.request.given[name].text} falls between two classes in the council's table, so "
                                 f"it has none by the letter; ask of the nearest, such "
                                 "as: yarn class for 20 sts to 4 in")
            if len(found) > 1:
                names = " and ".join(f"{key} ({CLASS_NAMES[key][0]})" for key in found)
                run.say("More than one class holds it", "", run.request.given[name].text, names)
            return found
    value = run.get("number")
    if value not in range(8):
        raise Impossible("yarn classes run from 0 (Lace) to 7 (Jumbo), such as: yarn class 4")
    return [str(value)]


def _describe(run: Run) -> Outcome:
    key, *also = _classes_of(run)
    name, uk, _ = CLASS_NAMES[key]
    others = ", ".join(cell.value for cell in cells(AU_PLY[key], "name"))
    names = f"class {key}, {name}: {', '.join((*uk, others, AU_PLY[key]))} in Australia and New Zealand"
    run.say("Find the row of the published tables", "", f"class {key}", names)
    values: dict[str, object] = {
        "names": names, "number_of": Fraction(key),
        "stitches": _both(key, "tension", "tension, older system", "tension, typical", unit="stitches to 4 in"),
        "needle": _both(key, "needle", unit="mm") + f" (US {cells(key, 'US needle')[0].value.replace('-', ' to ')})",
        "hook": _both(key, "hook", unit="mm") + f" (US {cells(key, 'US hook')[0].value})",
        "crochet": _both(key, "crochet tension", "crochet tension, older system", unit="single crochet to 4 in"),
        "wraps_of": _both(key, "wraps", "wraps, spinners", "wraps, single figure", unit="wraps to the inch"),
        "metres": _both(key, "metres per 100 g", "metres per 100 g, older table", unit="m to 100 g"),
        "yards": _both(key, "yards per pound", unit="yd to the pound"),
        "a_gram": _both(key, "metres per gram", unit="m to a gram, within 15 %"),
        "ply": f"{AU_PLY[key]}{_other_ply(key)}",
    }  # fmt: skip
    low, high = bounds_of(cells(key, "needle")[0].value)
    values |= {name: value for name, value in (("needle_low", low), ("needle_high", high)) if value is not None}
    both = [f"The council's table has it in class {other} ({CLASS_NAMES[other][0]}) too: the classes overlap."
            for other in also]
    return Outcome({name: value for name, value in values.items() if value != ""},
                   notes=(*both, "Plies are names here, not a count of strands."))


def _other_ply(key: str) -> str:
    """What another list prints as the ply, where it differs."""
    printed = [cell.value.removesuffix(" ply") for one in CLASS_NAMES[key][1] for cell in cells(one, "ply")]
    different = [text for text in printed if text != AU_PLY[key].removesuffix(" ply")]
    return f", another list: {', '.join(different)} ply" if different else ""


YARN_CHOICE = {
    "0": ("lace", "laceweight", "lace weight", "2 ply", "cobweb", "thread weight"),
    "1": ("super fine", "superfine", "fingering", "sock yarn", "sock weight", "4 ply", "4ply", "3 ply", "baby yarn",
          "light fingering", "sock wool", "sock"),
    "2": ("sport", "sport weight", "5 ply", "sportweight"),
    "3": ("dk", "double knitting", "double knit", "8 ply", "light worsted", "dk weight"),
    "4": ("worsted", "aran", "10 ply", "worsted weight", "aran weight", "medium weight", "afghan yarn", "10ply"),
    "5": ("bulky", "chunky", "12 ply", "chunky wool", "bulky weight", "chunky yarn", "12ply"),
    "6": ("super bulky", "super chunky", "14 ply", "superchunky", "superbulky"),
    "7": ("jumbo", "roving", "16 ply", "jumbo yarn"),
}  # fmt: skip

YARN_CLASS = Rule(
    topic="yarn class",
    family="knitting",
    says=("yarn class", "yarn weight", "what weight", "weight of yarn", "yarn category", "class", "category",
          "which class",
          "ply",           "wpi", "what is the equivalent of", "dk", "worsted", "aran", "chunky", "bulky", "fingering",
          "sport weight", "lace weight", "double knitting", "equivalent of",
          "yarn weights", "4 ply", "8 ply", "10 ply", "ball band", "chunky wool", "chunky yarn",
          "worsted weight", "aran weight", "bulky weight", "dk weight", "sock yarn", "baby yarn"),
    about="A yarn class by any of its names, its number, its tension or its wraps: tension, needles, hooks, wraps and "
          "names, UK, US and Australian.",
    inputs=(
        choice("yarn", "yarn", YARN_CHOICE, ask="Which yarn: its name, its class number or its tension?", example="DK"),
        Input("number", "class number", COUNT, says=("class", "category", "yarn class", "weight", "number", "symbol",
                                                     "no"), extra=True, sane="0..7", practice="0..7 by 1"),
        Input("tension", "stitch tension", STITCH_RATE, says=("tension", "gauge", "knits to", "knits at"), extra=True,
              sane="1 st/10cm..80 st/10cm"),
        Input("wraps", "wraps to the inch", COUNT, noun="wrap", says=("wpi", "wraps per inch", "wraps",
                                                                      "wraps to the inch"), extra=True, sane="1..80"),
    ),
    steps=(
        Step("names", "Its names", kind=TEXT, label="yarn", says=("called", "name", "names", "equivalent", "in the uk",
                                                                  "in the us", "in america", "in australia")),
        Step("stitches", "Its tension", kind=TEXT, label="tension", says=("tension", "gauge", "stitches", "knit to", "knit up to",
                                                                          "knit up at", "how many stitches", "tension of")),
        Step("needle", "Its needles", kind=TEXT, label="needles", says=("needle", "needles", "needle size",
                                                                        "what needles", "what needles for",
                                                                        "needles for", "what needle for",
                                                                        "what size needles for", "what size needles",
                                                                        "which needles", "what needle",
                                                                        "knitting needles")),
        Step("hook", "Its hooks", kind=TEXT, label="hooks", says=("hook", "hooks", "hook size", "crochet hook",
                                                                  "what hook", "what hook for", "hook for",
                                                                  "which hook")),
        Step("crochet", "Its crochet tension", kind=TEXT, label="crochet tension",
             says=("crochet tension", "single crochet", "crochet gauge")),
        Step("wraps_of", "Its wraps", kind=TEXT, label="wraps", says=("wraps", "wpi", "wraps per inch",
                                                                      "how many wraps", "wpi of", "wraps of", "wraps per inch of")),
        Step("metres", "Its length by weight", kind=TEXT, label="length by weight",
             says=("metres", "yards", "metres per 100 g", "how long", "how many metres", "meterage", "yardage",
                   "length")),
        Step("yards", "Its yards to the pound", kind=TEXT, label="yards to the pound",
             says=("yards per pound", "yards to the pound")),
        Step("a_gram", "Its metres to a gram", kind=TEXT, label="metres to a gram",
             says=("metres per gram", "metres a gram")),
        Step("ply", "Its ply", kind=TEXT, label="ply name", says=("ply", "what ply", "which ply", "how many ply")),
        Step("number_of", "Its class", kind=RATIO, label="class", says=("which class", "what class", "class number",
                                                                        "category", "what category", "class",
                                                                        "what weight")),
        Step("needle_low", "The thinnest needle", kind=LENGTH, unit=("mm", "mm"), label="thinnest needle"),
        Step("needle_high", "The thickest needle", kind=LENGTH, unit=("mm", "mm"), label="thickest needle"),
    ),
    answers=("names", "number_of", "stitches", "needle", "hook", "crochet", "wraps_of", "metres", "yards", "a_gram",
             "ply"),
    headline=("It is {names}.", "Needles: {needle}.", "Hooks: {hook}.", "Tension: {stitches}."),
    algorithm=_describe,
    no_unknown=("number", "tension", "wraps"),
    source="Standard Yarn Weight System (Craft Yarn Council) and other published lists, all given where they differ",
    cautions=(Caution("Classes are wide and lists differ: the ball band and your own swatch decide"),),
    examples=(
        "what needles for DK yarn -> 3.75 to 4.5 mm (US 5 to 7)",
        "what is worsted called in Australia -> class 4, Medium: Aran (US worsted), Worsted / aran, 10 ply in "
        "Australia and New Zealand; 4",
        "which class is a yarn that knits to 18 sts to 4 in -> 4",
    ),
    related=("needle or hook size", "yarn by garment"),
)

WEARERS = {"preemie": "preemie", "newborn": "newborn", "baby": "baby of 12 to 18 months (a hat: any baby)",
           "toddler": "toddler of 2 to 6 years", "child": "child of 6 to 12 years",
           "woman": "woman of 32 to 40 in bust", "man": "man of 36 to 48 in chest", "adult": "adult"}  # fmt: skip


def _rows_for(yarn: str, garment: str, wearer: str) -> list[Takes]:
    """The printed rows for a yarn, garment and wearer: the wearer's own first, then an adult's for a grown wearer."""
    mine = [row for row in YARN_BY_GARMENT_TABLE if row.yarn == yarn and row.garment == garment]
    own = [row for row in mine if row.wearer == wearer]
    return own or ([row for row in mine if row.wearer == "adult"] if wearer in ("woman", "man", "adult") else [])


def _takes(run: Run) -> Outcome:
    yarn, garment, wearer = run.get("yarn"), run.get("garment"), run.get("wearer")
    kind = "sweater" if garment == "cardigan" else garment
    rows = _rows_for(yarn, kind, wearer)
    if not rows:
        listed = sorted({f"{CLASS_NAMES[row.yarn][2][0]} {row.garment} ({row.wearer})" for row in YARN_BY_GARMENT_TABLE
                         if row.garment == kind and row.wearer == wearer})
        near = f"; they do have: {', '.join(listed)}" if listed else ""
        raise Impossible(f"the published tables have no {CLASS_NAMES[yarn][0]} {garment} for a {wearer}{near}. Weigh a "
                         f"swatch instead, such as: my 10 x 10 cm "
                         "swatch weighs 6 g, piece 50 x 60 cm")
    row = rows[0]
    more = 1 + CARDIGAN_MORE if garment == "cardigan" else Fraction(1)
    low, high = row.low * more * factor("yd"), row.high * more * factor("yd")
    run.say("Find the row of the published table", "", f"class {yarn}, {kind}, {WEARERS[row.wearer]}",
            _range(row.low, row.high, "yd"))
    if more != 1:
        run.say("A cardigan takes 5 % more than a pullover", "", "", run.show_in(low, "yd"))
    yards, metres = (_range(low / factor(unit), high / factor(unit), unit) for unit in ("yd", "m"))
    text = f"{yards} ({metres})"
    return Outcome({"range": text, "low": low, "high": high}, notes=(f"The table is {row.source.removesuffix(', n.d.')}.",))


def _range(low: Fraction, high: Fraction, unit: str) -> str:
    return f"{float(low):.0f} {unit}" if low == high else f"{float(low):.0f} to {float(high):.0f} {unit}"


YARN_BY_GARMENT = Rule(
    topic="yarn by garment",
    family="knitting",
    says=("how much yarn for", "how much wool for", "yarn for a", "wool for a", "how much yarn", "how much wool",
          "roughly how much", "yarn by garment", "rough amount", "about how much",
          "yarn estimate", "yardage for", "enough yarn for", "to knit a", "yarn to knit", "wool to knit",
          "jumper", "sweater", "pullover", "cardigan",
          "yards for a", "metres for a", "how many yards for a", "yarn do i need for a"),
    about="Roughly how much yarn a garment takes, by the published table: a range, from the yarn's class, the garment "
          "and the size.",
    inputs=(
        choice("yarn", "yarn", YARN_CHOICE, ask="Which yarn?", example="DK"),
        choice("garment", "garment", {
            "sweater": ("sweater", "jumper", "pullover", "gansey", "jersey"),
            "cardigan": ("cardigan", "cardi", "jacket"), "hat": ("hat", "beanie", "cap", "bonnet"),
            "scarf": ("scarf", "muffler"),
        }, ask="For which garment: a sweater, a cardigan, a hat or a scarf?", example="jumper"),
        choice("wearer", "wearer", {
            "preemie": ("preemie", "premature baby", "prem"), "newborn": ("newborn", "new born"),
            "baby": ("baby", "infant"), "toddler": ("toddler", "small child"),
            "child": ("child", "boy", "girl", "kid", "kids", "child's", "children"),
            "woman": ("woman", "ladies", "lady", "women", "woman's", "wife", "her", "female"),
            "man": ("man", "men", "man's", "gents", "husband", "him", "male"), "adult": ("adult", "grown up"),
        }, default="adult", because="nothing was said of who it is for"),
        choice("size", "size", {"small": ("small", "size s"), "medium": ("medium", "size m", "average"),
                                "large": ("large", "size l", "xl", "extra large")},
               default=Default("medium", derived=True)),
        Input("ball", "length of a ball", LENGTH, says=("ball", "balls", "skein", "each", "per ball", "a ball"),
              extra=True, sane="10 m..5 km", practice="100 m..400 m by 50 m"),
    ),
    steps=(
        Step("range", "The range", kind=TEXT, label="yarn", says=("how much", "yarn", "wool", "how much yarn",
                                                                  "how much wool")),
        Step("low", "The least", kind=LENGTH, rounding=YARN_LENGTH, unit=("yd", "m"), label="at least"),
        Step("high", "The most", kind=LENGTH, rounding=YARN_LENGTH, unit=("yd", "m"), label="at most"),
        Step("balls", "Whole balls for the most", "high / ball", COUNT, rounding=COUNT_UP, noun="ball", label="balls",
             says=("how many balls", "balls", "skeins")),
    ),
    answers=("range", "low", "high", "balls"),
    headline=("It takes roughly {range}.",),
    algorithm=_takes,
    no_unknown=("ball",),
    source="published estimates, each named beside its row",
    cautions=(
        Caution("This is an estimate: small sizes lie near the least, large ones near the most; cables and ribs take "
                "more. A pattern or a weighed swatch is surer"),
        Caution("Buy all the yarn at once, from one dye lot: another lot may be another shade"),
    ),
    examples=(
        "Roughly how much double knitting wool for a woman's medium jumper? -> 1000 to 2000 yd (914 to 1829 m)",
        "how much worsted yarn for a hat -> 150 to 250 yd (137 to 229 m)",
        "how much chunky wool for a scarf? -> 150 yd (137 m)",
    ),
    related=("yarn needed", "yarn by swatch"),
)
