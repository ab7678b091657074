"""Which size to cut by finished measures and the ease wanted."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Input, Rule, Step
from ..engine.kinds import LENGTH, SIZES, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Number
from ..engine.rounding import FINE
from ..engine.run import Impossible, Needs, Run
from ..engine.text import shown
from .ease_table import least_for, verdict
from .size_tables import SizeTable
from .size_words import (
    CLOTH,
    FIGURE_INPUT,
    GARMENT_FOR_SIZE,
    LONE,
    NOT_SHOP,
    PLACES,
    aligned,
    measures_given,
    own_measure,
)


def by_finished(run: Run) -> Outcome:
    """The size whose ease is nearest the wanted, none under the least ease for the place."""
    table: SizeTable = run.get("finished")
    measures = aligned(run, table, measures_given(run))
    if not measures:
        raise Needs(next((place for place in PLACES if place in table.places()), "bust"))
    place, measure = next(iter(measures.items()))
    unit = "in" if run.system == "in" else "cm"
    least: Number = 0 if run.get("cloth") == "knit" else least_for(place or "bust")
    wanted = run.get("ease")
    eases = [(size, high - measure) for size, _, high in table.column(place)]
    for size, ease in eases:
        run.say(
            f"Ease in size {size.name}",
            "finished − body",
            f"{shown(ease + measure, unit)} − {shown(measure, unit)}",
            shown(ease, unit),
        )
    allowed = [(size, ease) for size, ease in eases if ease >= min(least, wanted)]
    if not allowed:
        raise Impossible(
            f"none of the sizes has the least ease of {shown(least, unit)} there; the largest has "
            f"{shown(eases[-1][1], unit)}. "
            "Choose another pattern, or a knit"
        )
    size, ease = min(allowed, key=lambda entry: (abs(entry[1] - wanted), entry[1]))
    run.say(
        f"Nearest to {shown(wanted, unit)}, and no less than {shown(min(least, wanted), unit)}",
        "",
        "",
        f"size {size.name}",
    )
    said = verdict(ease, place or "bust", run.maybe("garment") or "", unit)
    return Outcome({"size": f"size {size.name}", "has": ease, **({"verdict": said} if said else {})})


SIZE_BY_FINISHED = Rule(
    topic="size by finished measures",
    family="fit",
    says=(
        "finished measures",
        "size by finished measures",
        "finished sizes",
        "size for ease",
        "finished garment sizes",
        "size with ease",
        "finished measurements",
        "by finished measures",
    ),
    about="Which size to cut for the ease wanted, from the finished measures of each size.",
    inputs=(
        Input(
            "finished",
            "finished measures by size",
            SIZES,
            ask="What are the finished measures of each size?",
            example="finished bust 10: 92 cm, 12: 96, 14: 101",
        ),
        own_measure("bust", "bust 92 cm", "bust", "chest", "full bust"),
        own_measure("waist", "waist 74 cm", "waist"),
        own_measure("hip", "hip 98 cm", "hip", "hips"),
        LONE,
        FIGURE_INPUT,
        Input(
            "ease",
            "ease wanted",
            LENGTH,
            says=("ease", "ease of", "of ease", "want", "like", "room"),
            ask="How much ease is wanted?",
            example="8 cm",
            sane="-30 cm..80 cm",
            practice="4 cm..12 cm by 1 cm",
        ),
        CLOTH,
        GARMENT_FOR_SIZE,
    ),
    steps=(
        Step(
            "size",
            "The size nearest the ease wanted",
            kind=TEXT,
            label="size",
            says=("size", "what size", "which size"),
        ),
        Step("has", "The ease it has", kind=LENGTH, rounding=FINE, label="ease it has",
             says=("how much ease", "ease will it", "ease does it", "ease it has", "ease would it", "ease does that", "ease will i have",
                   "ease do i get", "ease will that")),
        Step("verdict", "What is published", kind=TEXT, label="beside what is published"),
    ),
    answers=("size", "has", "verdict"),
    headline=("Cut {size}: it has {has} of ease.",),
    algorithm=by_finished,
    no_unknown=("finished", "bust", "waist", "hip", "own", "figure", "ease"),
    source=COMMON_PRACTICE,
    cautions=(NOT_SHOP,),
    examples=(
        "finished bust 10: 92 cm, 12: 96, 14: 101. My bust is 88 cm and I want 8 cm of ease, which size "
        "-> size 12; 8 cm",
        "finished measures by bust: S is 36 in, M is 39, L is 42. My bust is 36 in, woven shirt, 4 in "
        "ease wanted: what size -> size M; 3 in",
        "which size by finished measures: 10: 92 cm, 12: 96, 14: 100; my bust is 91, I'd like 2 cm ease "
        "in a knit -> size 10; 1 cm",
    ),
    related=("size choice", "ease"),
)
