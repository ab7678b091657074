"""Rows still to work for a length, from the rows or the length worked so far."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, ROWS
from ..engine.rounding import BODY, ROW
from .words import ROW_TENSION, SWATCH_CAUTION

_ASKS = ("still to knit", "still to work", "still to do", "rows to go", "rounds to go", "more rows", "more rounds", "rows more",
         "rows left to knit", "rows left to work", "rows left to do", "rows remaining", "rows still", "still to go", "rows are left to",
         "rounds more", "rows have i left", "rows do i have left", "rows until", "many more", "rows left",
          "much longer must i knit", "much longer do i knit", "much longer have i to knit", "much more must i knit",
         "much more do i knit", "much more have i to knit", "inches to go", "cm to go", "centimetres to go", "left to knit",
         *(f"{must} {who} still" for must in ("must", "do", "should", "will") for who in ("i", "we")))  # fmt: skip

ROWS_STILL_TO_WORK = Rule(
    topic="rows still to work",
    family="knitting",
    says=_ASKS,
    called=_ASKS,
    about="How many rows are still to be worked for a length, from the rows or the length worked so far.",
    inputs=(
        Input("length", "length wanted", LENGTH,
              says=("to reach", "should be", "must be", "want", "wanted", "need", "in all", "altogether", "long", "total", "finished",
                    "for", "until", "is to be", "of a", "of the", "piece", "sleeve", "back", "front", "has to be", "to be",
                    "needs to be", "should measure", "must measure"), axis="length",
              default=Default("=remaining", derived=True, given=("remaining",)), ask="How long is the piece to be?", example="50 cm",
              sane="5 mm..30 m", practice="40 cm..60 cm by 2 cm"),
        ROW_TENSION,
        Input("done", "rows worked so far", ROWS,
              says=("done", "worked", "knitted", "have done", "so far", "have worked", "have knitted", "already", "i've done",
                    "i've knitted", "i've worked"),
              default=(Default("0 row", derived=True, given=("remaining",)),
                       Default("=so_far * row_tension", "The length so far at the row tension", derived=True, given=("so_far",))),
              ask="How many rows have you worked?", example="60 rows", sane="1 row..5000 row", practice="20 row..80 row by 2 row"),
        Input("so_far", "length so far", LENGTH,
              says=("done", "worked", "knitted", "have done", "so far", "have worked", "have knitted", "already", "i've done",
                    "i've knitted", "i've worked", "it measures", "measures now", "now measures", "i'm at", "i am at", "is now"),
              extra=True, sane="1 mm..30 m", spoken=True),
        Input("remaining", "length still to be worked", LENGTH,
              says=("left to knit", "left to work", "left to do", "still to knit", "still to work", "still to do", "to go", "still to go",
                    "more to knit", "more to go", "still needed"), extra=True, sane="1 mm..30 m", spoken=True),
    ),
    steps=(
        Step("rows", "Multiply the length by the row tension", "length * row_tension", ROWS, rounding=ROW, label="rows in all",
             says=("rows in all", "rows altogether")),
        Step("to_go", "Take off the rows worked", "rounded(rows) - done", ROWS, rounding=ROW, label="rows still to work", says=_ASKS),
        Step("left", "The same as a length", "to_go / row_tension", rounding=BODY, label="length still to work",
             says=("how much longer", "how much more", "how many inches", "how many cm", "how many centimetres", "inches to go",
                   "cm to go",
                   "centimetres to go", "what length is left", "length is left")),
    ),
    answers=("to_go", "rows", "left"),
    insists=True,
    headline=("Work {to_go} more.",),
    refusals=(Refusal("to_go < 0", "so many rows are longer than the piece already. Give fewer rows or a longer piece, such as: 60 rows "
                      "done, 28 rows to 10 cm, 50 cm wanted, how many more rows"),),
    no_unknown=("length", "row_tension", "done", "so_far", "remaining"),
    source=ARITHMETIC,
    cautions=(Caution(SWATCH_CAUTION),),
    examples=(
        "60 rows done, 28 rows to 10 cm, the back should be 50 cm, how many more rows -> 80 rows; 140 rows",
        "how many rows still to knit for 40 cm at 30 rows to 10 cm, I have knitted 66 rows -> 54 rows",
        "sleeve 18 in long, 7 rows per inch, 50 rows worked so far, how many rows to go -> 76 rows",
    ),
    related=("rows for a length",),
)
