"""Seam allowances: adding them to a piece, and an inch allowance as the trade pairs it with metric."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import ANY, COUNT, LENGTH
from ..engine.literal import literal
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.rounding import CUT, apply
from ..engine.run import Run
from ..engine.text import shown
from ..engine.units import factor, system_of
from .words import told

ALLOWANCE = Input(
    "allowance",
    "seam allowance",
    LENGTH,
    says=(
        "seam allowance", "allowance", "seams", "seam", "both sides", "each side", "all round", "each edge", "sa", "sides",
        "all edges", "seam allowance did i use", "what seam allowance", "which seam allowance", "how much seam allowance",
        "what allowance",
    ),
    default="5/8 in | 1.5 cm",
    because="the usual garment seam allowance",
    sane="0 cm..15 cm",
    practice="1/4 in..1 in by 1/8 in",
    usual="0 cm..5 cm",
)

I_CUT = tuple(f"i cut {the} {piece}" for the in ("the", "a", "my") for piece in ("yoke", "panel", "piece", "cuff", "flap", "belt",
    "facing"))
ON_FOLD = tuple(f"{part} on {fold}" for part in ("front", "back") for fold in ("fold", "the fold", "a fold"))
TOP = Input(
    "top",
    "allowance at the top",
    LENGTH,
    says=("at the top", "top edge", "top", "waist edge", "top seam"),
    default=Default("=allowance", "the same as at the sides", derived=True),
    sane="0 cm..30 cm",
)
HEM = Input(
    "hem",
    "hem",
    LENGTH,
    says=("hem", "hem at the bottom", "hem allowance", "bottom hem", "at the bottom", "hems"),
    default=Default("=allowance", "a seam allowance at the bottom too, no hem said", derived=True),
    sane="0 cm..50 cm",
)
SIDES = Input(
    "sides",
    "side edges",
    COUNT,
    says=("side edges",),
    sane="0..2",
    spoken=True,  # the 2 of "cut 2 on fold" is how many are cut, not how many edges have an allowance
    default=(Default("2", derived=True, when={"fold": "no"}), Default("1", derived=True, when={"fold": "yes"})),
)

ADD_SEAM_ALLOWANCE = Rule(
    topic="add seam allowance",
    family="fit",
    says=(
        "add seam allowance", "seam allowance", "adding seam allowance", "with seam allowance", "seams and hem",
        "no seam allowance", "cutting size", "finished piece", "add seams", "plus seam allowance", "net pattern",
        "how big do i cut the piece", *(f"do i cut {a} {piece}" for a in ("a", "my")
            for piece in ("panel", "piece", "yoke", "cuff", "facing")), "panel is", "to all edges", "to each edge", "to every edge",
                "to each side",
        "all the edges of", "seams all round", "all round", "on each edge", "on every edge", "on all edges",
        "on all four edges", "seams on every edge", "seams on all edges", "yoke", "pocket flap", "pocket bag", "skirt panel",
        "skirt front", "skirt back", "bodice front", "cut a piece", "long panel", "panel that finishes", "belt finishes",
        "panel finishes", "piece that finishes", "no allowances on it", "no allowance on it", "usual garment seam",
        "without allowances", "without seam allowance", "panel with",
        *ON_FOLD,
        *(f"finished {piece}" for piece in ("cuff", "panel", "flap", "belt", "yoke")),
        *(f"{piece} {finished}" for piece in ("piece", "cuff", "panel", "flap", "belt") for finished in ("finishes", "finished")),
    ),
    about="The size to cut a piece: its finished size and the allowance at each edge, with a hem.",
    inputs=(
        Input(
            "width",
            "finished width",
            LENGTH,
            says=(
                "finished", "panel", "piece", "wide", "width", "does it finish", "finish at", "finishes", "finishes at",
                "what width does it finish", "how wide is it finished",
                "how wide does it finish", "how wide finished", "it came out",
                "finished width", *told("width", "finished width"),
            ),
            axis="width",
            ask="How wide is the finished piece?",
            example="20 in",
            sane="5 mm..10 m",
            practice="4 in..40 in by 1 in",
        ),
        Input(
            "length",
            "finished length",
            LENGTH,
            says=(
                "finished", "long", "length", "deep", "high", "drop", "tall",
                *told("finished length", "height", "depth"),
            ),
            axis="length",
            ask="How long is the finished piece?",
            example="26 in",
            sane="5 mm..10 m",
            practice="6 in..45 in by 1 in",
        ),
        ALLOWANCE,
        TOP,
        HEM,
        flag(
            "fold",
            "one side on a fold",
            (
                "on a fold", "on the fold", "on fold", "cut on fold", "one side on the fold", "fold at one side", *ON_FOLD,
            ),
        ),
        SIDES,
        Input(
            "copies",
            "pieces to cut",
            COUNT,
            says=("cut", "pieces", "panels"),
            noun="piece",
            extra=True,
            spoken=True,
            sane="1..1000",
        ),
        choice(
            "edges",
            "edges",
            {
                "all": ("all round", "all the way round", "all edges", "each edge", "every edge", "all sides"),
                "sides": ("sides only", "only at the sides", "only the sides", "no hem", "selvedge top and bottom"),
            },
            default="all",
            because="an allowance at every edge that is not on a fold",
        ),
    ),
    steps=(
        Step(
            "cut_width", "Add the allowance at each side edge that is not on a fold", "width + sides * allowance",
            LENGTH,
            rounding=CUT,
            label="cut width",
            says=("cut width", "cut size", "how wide", "cut", "width to cut"),
            axis="width",
            stated=("cut", "cut width", "cut it", "i cut it", "is cut", "when cut", "was cut", *I_CUT, *(f"{piece} cut"
                for piece in ("yoke", "panel", "piece", "cuff", "flap", "belt", "facing"))),
        ),
        Step(
            "cut_length", "Add the top allowance and the hem", "length + top + hem",
            LENGTH,
            rounding=CUT,
            label="cut length",
            says=("cut length", "cut size", "how long", "cut", "length to cut", "how tall", "how high", "height of the piece",
                "cut height", "height to cut",
                "cut depth", "depth to cut", "how deep"),
            axis="length",
            when={"edges": "all"},
            stated=("cut length",),
        ),
        Step(
            "plain_length", "No allowance at top or bottom", "length",
            LENGTH,
            rounding=CUT,
            label="cut length as it is",
            when={"edges": "sides"},
        ),
    ),
    answers=("cut_width", "cut_length", "plain_length"),
    headline=(
        "Cut it {cut_width} wide and {cut_length} long.", "Cut it {cut_width} wide.", "Cut it {cut_length} long.",
    ),
    sizes=(("width", "length"),),
    source=COMMON_PRACTICE,
    refusals=(
        Refusal(
            "sides > 1",
            "a piece on a fold has one side edge to add to, not two. Such as: panel 12 x 20 in on the fold, 1/2 in seams",
            choices={"fold": "yes"},
        ),
    ),
    cautions=(Caution("Check which edges lie on a fold: they take no allowance."),),
    notes=(
        "On a traced piece with no allowance, draw the cutting line that far outside the stitching line all round.",
    ),
    examples=(
        "skirt panel 20 in wide by 26 in long finished, seam allowance 5/8 in both sides and the top, and "
        "a 2 1/2 in hem at the bottom. cut size -> 21 1/4 in; 29 1/8 in",
        "add seam allowance of 1.5 cm to a piece 30 x 40 cm -> 33 cm; 43 cm",
        "cut size of a panel 12 x 20 in on the fold, 1/2 in seams -> 12 1/2 in; 21 in",
    ),
    related=("allowance swap",),
    defers=("allowance swap",),
)

# The trade's pairs: an inch allowance and the metric one printed beside it. 5/8 in with 1.5 cm, 3/8 in with 1 cm are
# published (an encyclopaedia's article on seam allowance; Pattern Cutting, Laurence King 2011), 1/4 and 1/2 in are as
# pattern envelopes print them; the others are common practice.
PAIRS = (
    ("1/8 in", "3 mm"),
    ("1/4 in", "6 mm"),
    ("3/8 in", "1 cm"),
    ("1/2 in", "1.3 cm"),
    ("5/8 in", "1.5 cm"),
    ("3/4 in", "2 cm"),
    ("1 in", "2.5 cm"),
    ("1 1/2 in", "4 cm"),
    ("2 in", "5 cm"),
)


def _pair(value: Fraction, there: str) -> str:
    """The other side of the trade's pair for an allowance, or ""."""
    for inch, metric in PAIRS:
        here, other = (metric, inch) if there == "in" else (inch, metric)
        if literal(here)[0] == value:
            return other
    return ""


def swap(run: Run) -> Outcome:
    """The allowance in the other system: exactly, and as the trade pairs it."""
    given = run.given("allowance")
    there = "cm" if system_of(given.unit) == "in" else "in"
    exact = shown(given.value, there)
    run.say("An inch is 2.54 cm, exactly", "inches × 2.54" if there == "cm" else "centimetres ÷ 2.54", given.text, exact)
    pair = _pair(given.value, there)
    if pair:
        run.say("Patterns print it beside", "the trade's pair", given.text, pair)
        value, unit, _ = literal(pair)
    else:
        value, unit = apply(given.value, CUT.of(there)), there
        run.say(
            "The nearest mark on the ruler",
            "nearest 1/8 in" if there == "in" else "nearest 0.1 cm",
            exact,
            shown(value, unit),
        )
    wanted = run.request.unit
    if wanted and system_of(wanted) == there:
        unit = wanted
    return Outcome({"pair": Amount(value, unit), "exact": Amount(given.value, unit if factor(unit) else there)})


ALLOWANCE_SWAP = Rule(
    topic="allowance swap",
    family="fit",
    says=(
        "seam allowance in metric", "allowance in metric", "seam allowance in cm", "allowance in cm",
        "seam allowance in inches", "metric allowance", "seam allowance in mm", "allowance swap", "allowance in inches",
        "seam allowance", "seam in cm", "seams of",
        *(f"allowance {to} {unit}" for to in ("to", "into") for unit in ("mm", "cm", "centimetres", "inches", "metric")),
        *(f"seam in {unit}" for unit in ("mm", "inches", "centimetres", "centimeters", "millimetres", "metric")),
        *(f"marked in {unit}" for unit in ("inches", "cm", "mm", "centimetres", "millimetres")),
        "seam plate", "machine plate", "metric patterns", "metric pattern print", "allowance how many", "patterns print",
        "allowance how much",
        "what is that in metric",
        "what's that in metric", "what is it in metric", "what's it in metric",
    ),
    about="A seam allowance in the other system: exactly, and as patterns print it.",
    inputs=(
        Input(
            "allowance",
            "seam allowance",
            LENGTH,
            says=("seam allowance", "allowance", "seam", "seams", "sa"),
            ask="What is the allowance?",
            example="5/8 in",
            sane="0.5 mm..20 cm",
            practice="1/4 in..1 in by 1/8 in",
        ),
    ),
    steps=(
        Step("pair", "The trade's pair", kind=ANY, label="as patterns pair it"),
        Step("exact", "Exactly", kind=ANY, label="exactly"),
    ),
    answers=("pair", "exact"),
    headline=("It is taken as {pair} ({exact} exactly).",),
    algorithm=swap,
    no_unknown=("allowance",),
    source="1 in = 2.54 cm; pairs as printed on patterns (common practice)",
    cautions=(Caution("Do not mix the two systems in one garment: the pairs are not equal."),),
    examples=(
        "5/8 inch seam allowance, what's that in metric -> 1.5 cm; 1.588 cm",
        "1 cm seam allowance in inches -> 3/8 in; 0.394 in", "a 1/4 in seam allowance in mm -> 6 mm; 6.35 mm",
    ),
    related=("add seam allowance",),
)
