"""Which size to cut by body measures and a size table, and the blend between sizes."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Rule, Step
from ..engine.kinds import LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Number
from ..engine.rounding import FINE
from ..engine.run import Impossible, Needs, Run
from ..engine.text import shown
from .size_tables import PUBLISHED, Size, SizeTable, fall, step_near
from .size_words import (
    CLOTH,
    FIGURE_INPUT,
    FINISHED_TABLE,
    GARMENT_FOR_SIZE,
    LONE,
    NAMED,
    NOT_SHOP,
    PLACES,
    TABLE,
    aligned,
    lead,
    measures_given,
    own_measure,
)


def _table(run: Run) -> SizeTable:
    """The table typed, or the published one named. Raises Needs for the table."""
    named = run.maybe("named")
    table: SizeTable = PUBLISHED[named] if named and not run.was_given("table") else run.get("table")
    if table.source:
        run.say(f"Take the table for {table.title}", "", "", table.source)
    return table


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
    ends = " and ".join(
        f"{size.name} ({shown(size.at[place][end], unit)})" for size, end in ((found.lower, 1), (found.upper, 0))
    )
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
        raise Impossible(
            f"the {place or 'measure'} of {shown(measure, unit)} is {side} than the {end} size of the "
            f"table, {nearest.name} "
            f"({shown(high if over else low, unit)}). Give a table that reaches it, or a size to alter from"
        )
    run.say(
        f"The {place or 'measure'} is a little under the smallest size",
        f"{place} {shown(measure, unit)}",
        "",
        f"size {nearest.name}",
    )
    return nearest


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
    measures = aligned(run, table, measures_given(run))
    if not measures:
        raise Needs(next((place for place in PLACES if place in table.places()), "bust"))
    knit = run.get("cloth") == "knit"
    sizes = {place: size_at(run, table, place, measure, knit) for place, measure in measures.items()}
    by = lead(run, sizes)
    values: dict[str, object] = {"size": f"size {sizes[by].name}"}
    if len(sizes) > 1:
        run.say("Choose by the " + by, "", "", f"size {sizes[by].name}")
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
            run.say(
                f"Ease at the {where} in size {sizes[place].name}",
                "finished − body",
                f"{shown(span[0], unit)} − {shown(measure, unit)}",
                shown(ease, unit),
            )
            eases[f"ease_{where}"] = ease
    return eases


def _ease_step(place: str) -> Step:
    return Step(
        f"ease_{place}",
        f"Ease at the {place}",
        kind=LENGTH,
        rounding=FINE,
        label=f"ease at the {place}",
        says=("ease", "how much ease") if place == "bust" else (),
    )


SIZE_CHOICE = Rule(
    topic="size choice",
    family="fit",
    says=(
        "size",
        "which size",
        "what size",
        "pattern size",
        "size to cut",
        "sizes",
        "size chart",
        "size table",
        "between sizes",
        "what size am i",
        "what size am i with",
        "what size am i with a",
        "what size do i need",
        "what size should i make",
        "which size do i need",
        "us misses",
        "misses size",
        "astm",
        "child size",
        "children's size",
        "child's size",
        "kids size",
        "xs",
        "xl",
        "xxl",
        "size choice",
        "which size should i cut",
        "which size do i cut",
        "sizes by bust",
        "blend between sizes",
    ),
    about="Which size to cut for body measures and a size table, and the blend between sizes.",
    inputs=(
        TABLE,
        NAMED,
        own_measure("bust", "bust 92 cm", "bust", "chest", "full bust"),
        own_measure("waist", "waist 74 cm", "waist"),
        own_measure("hip", "hip 98 cm", "hip", "hips"),
        own_measure("height", "height 110 cm", "height", "tall", practice="92 cm..122 cm by 6 cm"),
        LONE,
        FIGURE_INPUT,
        CLOTH,
        GARMENT_FOR_SIZE,
        FINISHED_TABLE,
    ),
    steps=(
        Step("size", "The size to choose", kind=TEXT, label="size", says=("size", "what size", "which size")),
        Step(
            "blend",
            "The blend from one size to another",
            kind=TEXT,
            label="blend",
            says=("blend", "grade between", "between sizes"),
        ),
        Step(
            "each",
            "The size at each measure",
            kind=TEXT,
            label="size at each measure",
            says=("size at each", "each measure"),
        ),
        _ease_step("bust"),
        _ease_step("waist"),
        _ease_step("hip"),
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
        "which size: 10: 83/64/88 cm, 12: 87/68/92, 14: 92/73/97. My bust is 87 and hip 97 cm -> size 12; "
        "12 at the bust to 14 at the hip",
        "bust 83 87 92 cm for sizes 10 12 14, I'm 89 and it's jersey, what size -> size 12",
        "us misses size for a bust of 37 1/4 in -> size 10",
    ),
    related=("size by finished measures", "ease"),
)
