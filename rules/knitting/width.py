"""Stitches for a width, and the width or tension from the stitches."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import ARITHMETIC, Caution, Input, Refusal, Rule, Step
from ..engine.kinds import COUNT, LENGTH, ROWS, STITCHES
from ..engine.rounding import BODY, COUNT_NEAR, ROW, STITCH
from .words import (
    BALANCE,
    BALANCED,
    EDGE_STITCHES,
    GROUPS,
    HOW_MANY_REPEATS,
    MULTIPLE,
    NEEDLE_TOLD,
    REALLY_WIDE,
    ROW_TENSION,
    STITCH_TENSION,
    SWATCH_CAUTION,
)

# The stitches would be given as cast on, and be more than the width holds.
NO_ROOM_FOR_EDGES = Refusal("edge > product", "the edge stitches alone are wider than the piece. Give fewer of them "
                            "or a wider piece, such as: 50 cm at 22 sts to 10 cm, multiple of 8 plus 2 edge stitches")

STITCHES_FOR_A_WIDTH = Rule(
    topic="stitches for a width",
    family="knitting",
    says=("cast on", "casting on", *(f"cast on for {a} {piece}" for a in ("a", "the", "my") for piece in ("back", "front",
        "sleeve", "panel")), "stitches", "sts", "chain", "foundation chain", "on the needle", "on the needles",
          "put on the needle", "put on the needles", "chains", "how many chains",
          "what width do", "what width will", "what width is", "what width does", "what width do i get", "how wide do",
          "how wide does", "how big round will", "how wide can i go", "how wide can", "how wide would",
          "on my needle", "on my needles", "on my circular", "caston",
          "how wide is", "how wide are", "how wide will", "what tension", "which tension", "how wide was", "what width was",
          "what was my tension",
          "finished width of", "wide will it turn out", "wide will it", "mult of", "multiple of", "put on needle",
          "put on the needles", "wide took", "wide with"),
    about="How many stitches to cast on for a width at your tension, to a multiple if the pattern has one, and the "
          "width they really give.",
    inputs=(
        Input("width", "width", LENGTH, says=("wide", "across", "width", "piece", "back", "front", "panel", "measures",
                                              "come out at", "come out",
                                              "lie", "for", "finished width", "around", "circumference", "broad"),
              axis="width",
              ask="How wide is the piece?", example="48 cm", sane="5 mm..20 m", practice="20 cm..60 cm by 2 cm"),
        STITCH_TENSION,
        GROUPS,
        MULTIPLE,
        BALANCE,
        replace(EDGE_STITCHES, default=(*BALANCED, *EDGE_STITCHES.defaults)),
        Input("length", "length", LENGTH, says=("long", "length", "tall", "deep"), axis="length", extra=True,
              sane="5 mm..30 m", spoken=True),
        replace(ROW_TENSION, extra=True, says=("row gauge", "rows per", "row tension")),
        NEEDLE_TOLD,
    ),
    steps=(
        Step("product", "Multiply the width by the tension", "width * tension", STITCHES,
             label="stitches before rounding",
             says=("exact stitches", "before rounding")),
        Step("repeats", "Take the edge stitches off and divide by the multiple, to the nearest whole one (a tie goes "
             "up)",
             "(product - edge) / multiple", COUNT, rounding=COUNT_NEAR, label="multiples", noun="repeat", says=HOW_MANY_REPEATS),
        Step("stitches", "Take that many multiples and put the edge stitches back",
             "max(1, rounded(repeats)) * multiple + edge",
             STITCHES, rounding=STITCH, label="stitches to cast on",
             says=("stitches", "cast on", "how many stitches", "sts", "stitches do i cast on", "chain", "do i cast on",
                 "i cast on for", "to cast on for"),
             stated=("stitches", "have", "on the needle", "on the needles", "cast on", "got", "sts", "make",
                     "come out"), sane="3 st..20000 st"),
        Step("real", "Divide those stitches by the tension for the width they really give", "stitches / tension",
             rounding=BODY,
             label="width they give", says=REALLY_WIDE),
        Step("rows", "Multiply the length by the row tension", "length * row_tension", ROWS, rounding=ROW,
             label="rows for the length", sane="5 row..20000 row",
             says=("rows", "how many rows")),
    ),
    answers=("stitches", "real", "rows"),
    tells=("stitch tension + length", "stitches + stitch tension"),
    headline=("Cast on {stitches} and work {rows}.", "Cast on {stitches}; they come to {real} wide."),
    backwards={"width": "stitches / tension", "tension": "stitches / width"},
    refusals=(NO_ROOM_FOR_EDGES,),
    source=ARITHMETIC,
    cautions=(Caution(SWATCH_CAUTION),),
    examples=(
        "How many stitches to cast on for a back 52 cm wide at 22 sts to 10 cm? -> 114 stitches",
        "cast on for 20 in at 5 sts per inch, multiple of 8 plus 2 edge stitches -> 98 stitches",
        "sts for 48cm, gauge 22 sts = 10cm, mult of 8 -> 104 stitches",
        "I have 132 stitches on the needle at 24 sts per 10 cm, how wide will it be -> 55 cm",
        "what tension makes 126 stitches come out at 60 cm -> 21 stitches to 10 cm",
    ),
    defers=("hat", "sock", "scarf, blanket"),
    related=("rows for a length", "size at my tension"),
)
