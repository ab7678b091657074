"""Inputs and first steps that the size rules share: the measures given, and the place to choose by."""

from __future__ import annotations

from collections.abc import Iterable

from ..engine.declare import Caution, Input, choice
from ..engine.kinds import CHOICE, FIGURE, LENGTH, SIZES
from ..engine.request import Number
from ..engine.run import Needs, Run
from .size_tables import SizeTable
from .words import GARMENTS, told

PLACES = ("bust", "waist", "hip", "height", "own")
OWN = ("i am", "i'm", "she's", "she is", "he's", "he is", "measures", "body", "me", "she measures", "i measure")
LOWER = ("skirt", "trousers")


def own_measure(
    place: str, example: str, *says: str, practice: str = "60 cm..120 cm by 1 cm", sane: str = "30 cm..250 cm"
) -> Input:
    return Input(
        place,
        place,
        LENGTH,
        says=told(*says),
        extra=True,
        ask="Which body measure (such as the bust or the hip)?",
        example=example,
        sane=sane,
        practice=practice,
    )


LONE = Input(
    "own",
    "body measure",
    LENGTH,
    says=(*OWN, "mine", "mine is", "mine are", "person", "wearer", "measure"),
    extra=True,
    sane="30 cm..250 cm",
    practice="60 cm..120 cm by 1 cm",
)
TABLE = Input(
    "table",
    "size table",
    SIZES,
    ask="Which sizes are there, and for which body measures?",
    example="10: 83/64/88 cm, 12: 87/68/92",
)
NAMED = Input(
    "named",
    "published table",
    CHOICE,
    extra=True,
    options={
        "US misses, straight": (
            "astm",
            "misses sizes",
            "d5585",
            "us misses",
            "misses table",
            "misses size",
            "straight figure",
            "astm table",
        ),
        "US misses, curvy": ("curvy figure", "curvy misses", "astm curvy", "misses curvy", "curvy"),
        "children by height": (
            "children's sizes",
            "child size",
            "children's table",
            "preschool",
            "child's size",
            "kids sizes",
            "toddler",
            "child",
            "kid",
        ),
    },
)
CLOTH = choice(
    "cloth",
    "cloth",
    {
        "woven": ("woven", "cotton", "linen", "poplin", "wool", "denim", "lawn", "crepe"),
        "knit": ("knit", "jersey", "stretch", "stretchy", "t-shirt", "tee", "ribbing", "sweatshirt", "knitted"),
    },
    default="woven",
    because="between sizes the larger is taken, as for woven cloth; the smaller for knits",
)
GATHERED = ("gathered", "gathered waist", "elasticated", "elasticated waist", "elastic waist", "dirndl", "pull-on")
GARMENT_FOR_SIZE = Input("garment", "garment", CHOICE, extra=True, options={**GARMENTS, "gathered": GATHERED})


NOT_SHOP = Caution("Pattern sizes are not shop sizes: go by the measures.")
FINISHED_TABLE = Input("finished", "finished measures by size", SIZES, extra=True)
FIGURE_INPUT = Input("figure", "figure measures", FIGURE, extra=True)


def measures_given(run: Run) -> dict[str, Number]:
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


def aligned(run: Run, table: SizeTable, measures: dict[str, Number]) -> dict[str, Number]:
    """The measures that the table has; one given without its place ("mine is 96") is for the table's only place, or the
    one to choose by; a table of one unnamed measure is for the one measure that was given."""
    own = measures.get("own")
    if own is not None:
        return {lead(run, table.places()): own}
    if table.places() == ("",) and len(measures) == 1:
        return {"": next(iter(measures.values()))}
    return {place: measure for place, measure in measures.items() if place in table.places()}


def lead(run: Run, places: Iterable[str]) -> str:
    """The place to choose by: bust for tops, hip for fitted lower halves, waist where it is gathered or elasticated."""
    garment = run.maybe("garment") or ""
    order = (
        ("waist", "hip", "bust")
        if garment == "gathered"
        else ("hip", "waist", "bust")
        if garment in LOWER
        else ("bust", "hip", "waist")
    )
    known = tuple(places)
    return next((place for place in order if place in known), known[0])
