"""A length in equal parts, with the marks, or cut into pieces, with what is left."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import COUNT_DOWN, FINE
from ..engine.run import Needs, Run
from ..engine.text import shown

# Parts that have a name of their own: "mark it in quarters".
SHARES = {"halves": "2", "thirds": "3", "quarters": "4", "fifths": "5", "sixths": "6", "sevenths": "7", "eighths": "8", "ninths": "9",
    "tenths": "10"}
# Marks asked for one by one.
NTH = {"first": "1", "second": "2", "third": "3", "fourth": "4", "fifth": "5", "sixth": "6", "seventh": "7", "eighth": "8"}
LINES = ("mark", "line", "cut", "fold", "stitching line", "division")
# What takes so much of a length each.
MADE = ("apron", "bag", "skirt", "top", "cape", "tunic", "bib", "scarf", "curtain", "cushion", "shirt", "pouch", "tabard", "one")
# "Length from a" would be one length, such as that of bias from a square.
OUT_OF = (
    *(f"{thing} {how}" for thing in ("cords", "laces", "tapes", "ribbons", "tabs", "loops") for how in ("out of", "out of a", "from a")),
    "lengths out of", "lengths out of a",
)  # fmt: skip
MOST_MARKS = 40  # more marks than this are not listed one by one


def _marks(run: Run) -> Outcome:
    """Where to mark the equal parts, measured from one end. Raises Needs when no number of parts is given."""
    parts, total = int(run.get("parts")), run.get("total")
    if parts > MOST_MARKS or parts < 2:
        raise Needs("")
    unit = "in" if run.system == "in" else "cm"
    marks = ", ".join(shown(total * number / parts, unit).removesuffix(f" {unit}") for number in range(1, parts))
    run.say("Mark from one end, adding a part each time", "", "", f"{marks} {unit}")
    return Outcome({"marks": f"{marks} {unit}"})


DIVIDE = Rule(
    topic="divide",
    family="measures",
    says=(
        "divide", "equal parts", "divided into", "split", "split into", "equal lengths", "cut into", "equal pieces",
        "left over", "pieces from", "how many pieces", "leftover", "equal sections", "evenly into", "into equal",
        "equally", "whats left over", "what's left", "pieces out of", "cut up", "mark off", "where do i cut",
        "pieces can i cut", "cut in equal", "equal bits", "pieces how many", "into lengths of", "cut in pieces",
        "how much remains", "each bit", "each bit be", "share out", "how much for each",
        "pieces the same", "the same length", "bits from", "bits", "how much is left over", "how much is left",
        "into quarters", "in quarters", "into thirds", "into loops", "into loops of", "into tabs of",
        *(f"{how} {name}" for name in SHARES if name not in ("halves", "thirds", "quarters", "eighths") for how in ("into", "in")),
        "among", "length each", "in thirds", "into halves", "into eighths", "shared between", "share between",
        "share it between", "segments", "intervals", "subdivision", "subdivide", "pieces can i get", "cut it into",
        "cut them into", "cut pieces of", "how many pieces of", "pieces out of", "pieces can you get out of", "cut every",
        "how much waste", "no of pieces", "after cutting", "what remains", "does everyone get", "between friends",
        "how many will it do", "where do the marks go",
        *(f"{name} mark" for name in NTH),
        *(f"{part} parts" for part in ("equal", "same")),
        *(f"every {thing} {uses}" for thing in ("bow", "loop", "tie", *MADE[:-1]) for uses in ("takes", "needs", "uses", "wants")),
        *(f"each {thing} {uses}" for thing in MADE for uses in ("takes", "needs", "uses", "wants")),
        *OUT_OF,
    ),
    about="A length in equal parts, with the marks; or how many pieces it gives and what is left.",
    inputs=(
        Input(
            "total",
            "whole length",
            LENGTH,
            says=(
                "length", "whole", "from", "have", "total", "ribbon", "roll", "cord", "tape", "strip", "elastic", "lace", "tie",
                "banner", "hank",
                *OUT_OF,
            ),
            ask="How long is the whole?",
            example="4 m",
            sane="1 mm..100 km",
            practice="1 m..10 m by 10 cm",
        ),
        Input(
            "parts",
            "parts",
            COUNT,
            says=(
                "parts", "equal parts", "pieces", "sections", "equal pieces", "into", "equal", "ways", "lengths", "spaces",
                "people", "intervals", "bits",
            ),
            noun="part",
            default=tuple(Default(number, derived=True, when={"shares": name}) for name, number in SHARES.items()),
            ask="Into how many parts (or pieces of what length)?",
            example="6 parts",
            sane="1..100000",
            practice="2..12",
        ),
        choice(
            "shares",
            "shares",
            {
                **{name: (f"into {name}", f"into equal {name}", f"in {name}", f"in equal {name}") for name in SHARES},
                "quarters": ("into quarters", "in quarters", "in equal quarters"),
                "not said": (),
            },
            default=(Default("not said", derived=True),),
        ),
        Input(
            "piece",
            "piece length",
            LENGTH,
            says=(
                "pieces", "each", "piece", "lengths", "long pieces", "pieces of", "piece length", "bits", "every", "long each",
                "strips", "segments of", "loops", "ties", "flags", "long",
                *(f"each {thing} {uses}" for thing in MADE for uses in ("takes", "needs", "uses", "wants")),
            ),
            ask="How long is each piece?",
            example="35 cm",
            extra=True,
            sane="0.1 mm..10 km",
            practice="5 cm..40 cm by 5 cm",
        ),
        choice(
            "which",
            "which mark",
            {**{name: tuple(f"{name} {line}" for line in LINES) for name in NTH}, "not said": ()},
            default=(Default("not said", derived=True),),
        ),
        Input(
            "nth",
            "mark asked for",
            COUNT,
            default=tuple(Default(number, derived=True, when={"which": name}) for name, number in NTH.items()),
            extra=True,
            spoken=True,
            sane="1..8",
        ),
        # As told of parts by name: "two marks, into thirds".
        Input("told_marks", "marks told", COUNT, says=("marks", "lines"), noun="mark", extra=True, spoken=True, sane="1..100"),
        # One piece taken off, and no more of them.
        choice(
            "once",
            "one piece taken off",
            {
                "no": ("pieces", "lengths", "bits", "strips", "how many", "each", "every"),
                "yes": ("i take", "and use", "and used", "and take", "take", "have used", "i use", "i used", "i've used", "use up",
                "used up", "cut off", "is cut off"),
            },
            default=Default("no", derived=True),
        ),
        # So many pieces of such a length leave what is over them; with no number told, as many are cut as can be.
        Input(
            "cuts",
            "pieces cut off",
            COUNT,
            default=(
                Default("=parts", derived=True, given=("parts", "piece")),
                Default("1", derived=True, when={"once": "yes"}),
                Default("=floor(total / piece)", derived=True, given=("piece",)),
            ),
            spoken=True,
            says=("after cutting off", "after cutting", "pieces cut off", "i cut off"),
            sane="0..100000",
        ),
    ),
    steps=(
        Step(
            "each", "Divide the whole length by the parts", "total / parts",
            LENGTH,
            rounding=FINE,
            label="each part",
            says=(
                "each part", "each", "each bit", "how much for each", "how long", "how wide", "how big", "each piece",
                "between the marks", "how far apart",
                "one mark to the next",
            ),
        ),
        Step(
            "marks",
            "Where to mark",
            kind=TEXT,
            label="marks",
            says=(
                "marks", "where do the marks go", "where are the marks", "where do i mark", "where to mark", "mark", "where",
                "where do i stitch", "where do i sew", "where do i cut", "where do the lines go", "where are the lines",
            ),
        ),
        Step(
            "nth_mark", "The mark asked for lies that many parts from the end", "total / parts * nth",
            LENGTH,
            rounding=FINE,
            label="the mark asked for",
            says=tuple(f"{where}{name} {line}" for where in ("", "where is the ", "where's the ") for name in NTH for line in LINES),
        ),
        Step(
            "pieces", "Divide by the length of a piece, and take whole pieces", "total / piece",
            COUNT,
            rounding=COUNT_DOWN,
            noun="piece",
            says=(
                "how many pieces", "how many", "number of pieces", "how many lengths", "how many of those",
                *(f"how many {thing}s" for thing in ("bow", "loop", "bookmark", *MADE[:-1]) if thing != "one"),
                "how many become", "how many do i get",
                "number of segments",
            ),
        ),
        Step(
            "left", "Take the pieces from the whole", "total - cuts * piece",
            LENGTH,
            rounding=FINE,
            label="left over",
            says=(
                "left over", "what's left", "whats left", "what is left", "leftover", "how much is left over",
                "how much is left", "what is left over", "what is left if", "what's left if", "what is left after",
                "what's left after", "what's left over", "remainder", "what remains", "how much remains", "remains", "remaining", "rest",
                "what's over", "whats over", "how much waste", "rests", "left", "waste", "spare", "wasted",
                "how much is wasted", "goes to waste", "bit at the end", "at the end", "end piece", "offcut", "short of",
            ),
        ),
    ),
    answers=("each", "marks", "nth_mark", "pieces", "left"),
    headline=(
        "Each part is {each}; mark at {marks}.", "Each part is {each}.", "It gives {pieces}, with {left} left over.",
        "{left} is left over.",
    ),
    algorithm=_marks,
    refusals=(
        Refusal(
            "piece > total",
            "one piece is longer than the whole, so none can be cut. Such as: 4 m of ribbon, 35 cm pieces, how many",
        ),
        Refusal(
            "cuts * piece > total",
            "that many pieces of that length come to more than the whole. Such as: 4 m of ribbon, 35 cm pieces, how many",
        ),
    ),
    no_unknown=("total", "parts", "piece"),
    source=ARITHMETIC,
    notes=("No loss in cutting is counted.",),
    examples=(
        "4 metres of ribbon, 35cm pieces, how many and whats left over -> 11 pieces; 15 cm",
        "divide 45 cm into 6 equal parts -> 7.5 cm; 7.5, 15, 22.5, 30, 37.5 cm",
        "cut 3 yd of tape into pieces 8 in long, how many pieces -> 13 pieces; 4 in",
    ),
)
