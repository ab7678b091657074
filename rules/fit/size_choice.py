"""Which size to cut: by body measures and a size table, or by finished measures and the ease wanted."""

from __future__ import annotations

from collections.abc import Iterable

from ..engine.declare import COMMON_PRACTICE, Caution, Input, Rule, Step, choice
from ..engine.kinds import CHOICE, FIGURE, LENGTH, SIZES, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Number
from ..engine.rounding import FINE
from ..engine.run import Impossible, Needs, Run
from ..engine.text import shown
from .ease_table import least_for, verdict
from .size_tables import PUBLISHED, Size, SizeTable, fall, step_near
from .words import GARMENTS

PLACES = ("bust", "waist", "hip", "height", "own")
OWN = ("i am", "i'm", "she's", "she is", "he's", "he is", "measures", "body", "me", "she measures", "i measure")
LOWER = ("skirt", "trousers")


def _own(place: str, example: str, *says: str, practice: str = "60 cm..120 cm by 1 cm", sane: str = "30 cm..250 cm") -> Input:
    return Input(place, place, LENGTH, says=says, extra=True, ask="Which body measure (such as the bust or the hip)?", example=example,
                 sane=sane, practice=practice)  # fmt: skip


LONE = Input("own", "body measure", LENGTH, says=(*OWN, "mine", "mine is", "mine are", "person", "wearer", "measure"), extra=True, sane="30 cm..250 cm",
             practice="60 cm..120 cm by 1 cm")  # fmt: skip
TABLE = Input("table", "size table", SIZES, ask="Which sizes are there, and for which body measures?", example="10: 83/64/88 cm, 12: 87/68/92")
NAMED = Input("named", "published table", CHOICE, extra=True, options={
    "US misses, straight": ("astm", "misses sizes", "d5585", "us misses", "misses table", "misses size", "straight figure", "astm table"),
    "US misses, curvy": ("curvy figure", "curvy misses", "astm curvy", "misses curvy", "curvy"),
    "children by height": ("children's sizes", "child size", "children's table", "preschool", "child's size", "kids sizes", "toddler"),
})  # fmt: skip
CLOTH = choice("cloth", "cloth", {
    "woven": ("woven", "cotton", "linen", "poplin", "wool", "denim", "lawn", "crepe"),
    "knit": ("knit", "jersey", "stretch", "stretchy", "t-shirt", "tee", "ribbing", "sweatshirt", "knitted"),
}, default="woven", because="between sizes the larger is taken, as for woven cloth; the smaller for knits")  # fmt: skip
GATHERED = ("gathered", "gathered waist", "elasticated", "elasticated waist", "elastic waist", "dirndl", "pull-on")
GARMENT_FOR_SIZE = Input("garment", "garment", CHOICE, extra=True, options={**GARMENTS, "gathered": GATHERED})


def _table(run: Run) -> SizeTable:
    """The table typed, or the published one named. Raises Needs for the table."""
    named = run.maybe("named")
    table: SizeTable = PUBLISHED[named] if named and not run.was_given("table") else run.get("table")
    if table.source:
        run.say(f"Take the table for {table.title}", "", "", table.source)
    return table


def _measures(run: Run) -> dict[str, Number]:
    """The body measures given, by place. Raises Needs when there is none."""
    figure = run.maybe("figure")
    found: dict[str, Number] = dict(figure) if figure is not None else {}
    for place in PLACES:
        measure = run.maybe(place) if run.rule.input(place) else None
        if measure is not None:
            found[place] = measure
    if not found:
        raise Needs("bust")
    return found


def _aligned(run: Run, table: SizeTable, measures: dict[str, Number]) -> dict[str, Number]:
    """The measures that the table has; one given without its place ("mine is 96") is for the table's only place, or the
    one to choose by; a table of one unnamed measure is for the one measure that was given."""
    own = measures.get("own")
    if own is not None:
        return {_lead(run, table.places()): own}
    if table.places() == ("",) and len(measures) == 1:
        return {"": next(iter(measures.values()))}
    return {place: measure for place, measure in measures.items() if place in table.places()}


def size_at(run: Run, table: SizeTable, place: str, measure: Number, knit: bool) -> Size:
    """The size at one place, said with why. Raises Impossible for a measure well beyond the table."""
    unit = "in" if run.system == "in" else "cm"
    text, where = shown(measure, unit), place or "measure"
    found = fall(table, place, measure)
    if found.lower is not None and found.lower is found.upper:
        run.say(f"Find the {where} in the table", f"{where} {text}", "", f"size {found.lower.name}")
        return found.lower
    if found.lower is None or found.upper is None:
        return _beyond(run, table, place, measure, found.lower or found.upper)
    chosen = found.lower if knit else found.upper
    ends = " and ".join(f"{size.name} ({shown(size.at[place][end], unit)})" for size, end in ((found.lower, 1), (found.upper, 0)))
    why = "a knit takes the smaller" if knit else "woven cloth takes the larger"
    run.say(f"The {where} lies between {ends}: {why}", f"{where} {text}", "", f"size {chosen.name}")
    return chosen


def _beyond(run: Run, table: SizeTable, place: str, measure: Number, nearest: Size | None) -> Size:
    assert nearest is not None
    unit = "in" if run.system == "in" else "cm"
    low, high = nearest.at[place]
    over = measure > high
    by = measure - high if over else low - measure
    if over or by > step_near(table, place):
        side, end = ("more", "largest") if over else ("less", "smallest")
        raise Impossible(f"the {place or 'measure'} of {shown(measure, unit)} is {side} than the {end} size of the table, {nearest.name} "
                         f"({shown(high if over else low, unit)}). Give a table that reaches it, or a size to alter from")  # fmt: skip
    run.say(f"The {place or 'measure'} is a little under the smallest size", f"{place} {shown(measure, unit)}", "", f"size {nearest.name}")
    return nearest


def _lead(run: Run, places: Iterable[str]) -> str:
    """The place to choose by: bust for tops, hip for fitted lower halves, waist where it is gathered or elasticated."""
    garment = run.maybe("garment") or ""
    order = ("waist", "hip", "bust") if garment == "gathered" else ("hip", "waist", "bust") if garment in LOWER else ("bust", "hip", "waist")
    known = tuple(places)
    return next((place for place in order if place in known), known[0])


def blend_text(sizes: dict[str, Size]) -> str:
    """The sizes from the top down, joined where they change: "12 at the bust to 14 at the hip"."""
    steps: list[str] = []
    last = ""
    for place in sizes:
        if sizes[place].name != last:
            steps.append(f"{sizes[place].name} at the {place}")
            last = sizes[place].name
    return " to ".join(steps)


def choose(run: Run) -> Outcome:
    """The size for each measure, the one to choose by, the blend, and the ease where finished measures are given."""
    table = _table(run)
    measures = _aligned(run, table, _measures(run))
    if not measures:
        raise Needs(next((place for place in PLACES if place in table.places()), "bust"))
    knit = run.get("cloth") == "knit"
    sizes = {place: size_at(run, table, place, measure, knit) for place, measure in measures.items()}
    lead = _lead(run, sizes)
    values: dict[str, object] = {"size": f"size {sizes[lead].name}"}
    if len(sizes) > 1:
        run.say("Choose by the " + lead, "", "", f"size {sizes[lead].name}")
        values["each"] = ", ".join(f"{place} {size.name}" for place, size in sizes.items())
        if len({size.name for size in sizes.values()}) > 1:
            values["blend"] = blend_text(sizes)
    values.update(_eases(run, sizes, measures))
    return Outcome(values, notes=(f"Sizes from {table.source}.",) if table.source else ())


def _eases(run: Run, sizes: dict[str, Size], measures: dict[str, Number]) -> dict[str, object]:
    """The ease at each place, where the finished measures of the chosen size are known."""
    finished: SizeTable | None = run.maybe("finished")
    eases: dict[str, object] = {}
    for place, measure in measures.items() if finished else ():
        size = finished.named(sizes[place].name) if finished else None
        where = place or "bust"
        span = None if size is None else size.at.get(place, size.at.get(""))
        if span is not None and where in ("bust", "waist", "hip"):
            ease = span[0] - measure
            unit = "in" if run.system == "in" else "cm"
            run.say(f"Ease at the {where} in size {sizes[place].name}", "finished − body", f"{shown(span[0], unit)} − {shown(measure, unit)}", shown(ease, unit))
            eases[f"ease_{where}"] = ease
    return eases


def _ease_step(place: str) -> Step:
    return Step(f"ease_{place}", f"Ease at the {place}", kind=LENGTH, rounding=FINE, label=f"ease at the {place}",
                says=("ease", "how much ease") if place == "bust" else ())  # fmt: skip


NOT_SHOP = Caution("Pattern sizes are not shop sizes: go by the measures.")
FINISHED_TABLE = Input("finished", "finished measures by size", SIZES, extra=True)
FIGURE_INPUT = Input("figure", "figure measures", FIGURE, extra=True)
SIZE_CHOICE = Rule(
    topic="size choice",
    family="fit",
    says=("size", "which size", "what size", "pattern size", "size to cut", "sizes", "size chart", "size table", "between sizes", "what size am i",
          "what size am i with", "what size am i with a", "what size do i need", "what size should i make", "which size do i need",
          "us misses", "misses size", "astm", "child size", "children's size", "child's size", "kids size", "xs", "xl", "xxl",
          "size choice", "size should i cut", "size do i cut", "which size do i cut", "sizes by bust", "blend between sizes"),
    about="Which size to cut for body measures and a size table, and the blend between sizes.",
    inputs=(
        TABLE, NAMED,
        _own("bust", "bust 92 cm", "bust", "chest", "full bust"),
        _own("waist", "waist 74 cm", "waist"),
        _own("hip", "hip 98 cm", "hip", "hips"),
        _own("height", "height 110 cm", "height", "tall", practice="92 cm..122 cm by 6 cm"),
        LONE, FIGURE_INPUT, CLOTH, GARMENT_FOR_SIZE, FINISHED_TABLE,
    ),
    steps=(
        Step("size", "The size to choose", kind=TEXT, label="size", says=("size", "what size", "which size")),
        Step("blend", "The blend from one size to another", kind=TEXT, label="blend", says=("blend", "grade between", "between sizes")),
        Step("each", "The size at each measure", kind=TEXT, label="size at each measure", says=("size at each", "each measure")),
        _ease_step("bust"), _ease_step("waist"), _ease_step("hip"),
    ),
    answers=("size", "blend", "each", "ease_bust", "ease_waist", "ease_hip"),
    headline=("Cut {size}, blended: {blend}.", "Cut {size}."),
    sizes=(("bust", "waist", "hip"),),
    algorithm=choose,
    no_unknown=("table", "named", "bust", "waist", "hip", "height", "own", "figure", "finished"),
    source=COMMON_PRACTICE,
    cautions=(NOT_SHOP,),
    examples=(
        "Sizes by bust: 10 is 83 cm, 12 is 87, 14 is 92. My bust is 89 and it's a woven shirt. Size? -> size 14",
        "which size: 10: 83/64/88 cm, 12: 87/68/92, 14: 92/73/97. My bust is 87 and hip 97 cm -> size 12; 12 at the bust to 14 at the hip",
        "bust 83 87 92 cm for sizes 10 12 14, I'm 89 and it's jersey, what size -> size 12",
        "us misses size for a bust of 37 1/4 in -> size 10",
    ),
    related=("size by finished measures", "ease"),
)  # fmt: skip


def by_finished(run: Run) -> Outcome:
    """The size whose ease is nearest the wanted, none under the least ease for the place."""
    table: SizeTable = run.get("finished")
    measures = _aligned(run, table, _measures(run))
    if not measures:
        raise Needs(next((place for place in PLACES if place in table.places()), "bust"))
    place, measure = next(iter(measures.items()))
    unit = "in" if run.system == "in" else "cm"
    least: Number = 0 if run.get("cloth") == "knit" else least_for(place or "bust")
    wanted = run.get("ease")
    eases = [(size, high - measure) for size, _, high in table.column(place)]
    for size, ease in eases:
        run.say(f"Ease in size {size.name}", "finished − body", f"{shown(ease + measure, unit)} − {shown(measure, unit)}", shown(ease, unit))
    allowed = [(size, ease) for size, ease in eases if ease >= min(least, wanted)]
    if not allowed:
        raise Impossible(f"none of the sizes has the least ease of {shown(least, unit)} there; the largest has {shown(eases[-1][1], unit)}. "
                         "Choose another pattern, or a knit")  # fmt: skip
    size, ease = min(allowed, key=lambda entry: (abs(entry[1] - wanted), entry[1]))
    run.say(f"Nearest to {shown(wanted, unit)}, and no less than {shown(min(least, wanted), unit)}", "", "", f"size {size.name}")
    said = verdict(ease, place or "bust", run.maybe("garment") or "", unit)
    return Outcome({"size": f"size {size.name}", "has": ease, **({"verdict": said} if said else {})})


SIZE_BY_FINISHED = Rule(
    topic="size by finished measures",
    family="fit",
    says=("finished measures", "size by finished measures", "finished sizes", "size for ease", "finished garment sizes",
          "size with ease", "finished measurements", "by finished measures"),
    about="Which size to cut for the ease wanted, from the finished measures of each size.",
    inputs=(
        Input("finished", "finished measures by size", SIZES, ask="What are the finished measures of each size?",
              example="finished bust 10: 92 cm, 12: 96, 14: 101"),
        _own("bust", "bust 92 cm", "bust", "chest", "full bust"),
        _own("waist", "waist 74 cm", "waist"),
        _own("hip", "hip 98 cm", "hip", "hips"),
        LONE, FIGURE_INPUT,
        Input("ease", "ease wanted", LENGTH, says=("ease", "ease of", "of ease", "want", "like", "room"), ask="How much ease is wanted?", example="8 cm",
              sane="-30 cm..80 cm", practice="4 cm..12 cm by 1 cm"),
        CLOTH, GARMENT_FOR_SIZE,
    ),
    steps=(
        Step("size", "The size nearest the ease wanted", kind=TEXT, label="size", says=("size", "what size", "which size")),
        Step("has", "The ease it has", kind=LENGTH, rounding=FINE, label="ease it has"),
        Step("verdict", "What is published", kind=TEXT, label="beside published ease"),
    ),
    answers=("size", "has", "verdict"),
    headline=("Cut {size}: it has {has} of ease.",),
    algorithm=by_finished,
    no_unknown=("finished", "bust", "waist", "hip", "own", "figure", "ease"),
    source=COMMON_PRACTICE,
    cautions=(NOT_SHOP,),
    examples=(
        "finished bust 10: 92 cm, 12: 96, 14: 101. My bust is 88 cm and I want 8 cm of ease, which size -> size 12; 8 cm",
        "finished measures by bust: S is 36 in, M is 39, L is 42. My bust is 36 in, woven shirt, 4 in ease wanted: what size -> size M; 3 in",
        "which size by finished measures: 10: 92 cm, 12: 96, 14: 100; my bust is 91, I'd like 2 cm ease in a knit -> size 10; 1 cm",
    ),
    related=("size choice", "ease"),
)  # fmt: skip

BODY_TO_PATTERN = Rule(
    topic="body to pattern difference",
    family="fit",
    says=("difference to the pattern", "pattern difference", "body to pattern", "pattern row", "adjust the pattern", "the pattern size",
          "pattern's bust", "alter the pattern", "size's bust", "quarter pattern", "pattern's waist", "pattern's hip", "quarter piece"),
    about="What to add to a pattern (or take off) where the body differs from its size, and how much of it at each quarter piece.",
    inputs=(
        Input("body", "body measure", LENGTH, says=(*OWN, "bust", "waist", "hip", "chest", "hips", "body measure"),
              ask="What does the body measure there?", example="96 cm", sane="20 cm..250 cm", practice="84 cm..120 cm by 1 cm"),
        Input("row", "pattern's body measure", LENGTH,
              says=("pattern", "size", "chart", "table", "drafted for", "pattern is for", "pattern's", "envelope", "pattern size", "row", "made for"),
              ask="What body measure is the pattern's size for?", example="92 cm", sane="20 cm..250 cm", practice="80 cm..110 cm by 2 cm"),
    ),
    steps=(
        Step("difference", "Take the pattern's body measure from the body", "body - row", LENGTH, rounding=FINE, label="to add all round",
             says=("difference", "altogether", "all round")),
        Step("quarter", "Share it among the four quarter pieces", "difference / 4", LENGTH, rounding=FINE, label="at each quarter piece",
             says=("quarter", "each quarter", "per quarter", "each piece", "each side seam", "each quarter piece")),
    ),
    answers=("difference", "quarter"),
    headline=("Add {difference} all round: {quarter} at each quarter piece.", "Add {quarter} at each quarter piece."),
    source=COMMON_PRACTICE,
    cautions=(
        Caution("A minus means to take off.", when="body < row"),
        Caution("Add the same at every piece that joins it there: facing, waistband, lining."),
    ),
    examples=(
        "my bust is 96 cm, the pattern size is for 92 cm, how much to add per quarter -> 1 cm; 4 cm",
        "pattern difference: hips 41 in, the size chart says 38 in -> 3 in; 3/4 in",
        "alter the pattern: waist 70 cm, pattern's waist 74 cm -> -4 cm; -1 cm",
    ),
    related=("spread a change", "size choice"),
)  # fmt: skip
