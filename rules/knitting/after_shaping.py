"""Stitches and rows after a shaping that a pattern tells: each end, every so many rows, so many times."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, RATIO, ROWS, STITCHES
from .shaping import ordinal

_CALLED = ("stitches at the end", "sts at the end", "stitches will i have", "sts will i have", "stitches do i have", "sts do i have",
           "stitches have i", "stitches then", "sts then", "stitches after", "sts after", "stitches in the end", "sts in the end",
           "stitches when it is done", "stitches are left", "sts are left", "stitches left", "end up with", "finish with",
           "stitches are there", "stitches will there be", "how many stitches now", "rows does that take", "rows will that take",
           "rows is that", "rows does it take", "rows will it take", "over how many rows")  # fmt: skip

# "Every 8th row 14 times": how often it is worked, as a pattern tells it.
_WORDS = ("", "", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth")
_INTERVALS = {f"{rows} row": (f"every {ordinal(rows)} row", f"every {rows} rows", f"every {ordinal(rows)} round", f"every {rows} rounds",
                              *((f"every {_WORDS[rows]} row", f"every {_WORDS[rows]} round") if rows < len(_WORDS) else ()),
                              *(("every other row", "alternate rows", "every other round") if rows == 2 else ()))
              for rows in range(2, 25)}  # fmt: skip
_BOTH, _ONE = (
    tuple(f"{place} {every}" for place in places for every in ("every", "of every", "of the row every", "on every"))
    for places in (("each end", "both ends", "each side", "both sides", "either end", "either side", "each edge", "both edges"),
                   ("one end", "neck edge", "one edge", "one side", "front edge", "armhole edge"))
)
_SAID = (*_BOTH, *_ONE, *(words for said in _INTERVALS.values() for words in said))

STITCHES_AFTER_SHAPING = Rule(
    topic="stitches after shaping",
    family="knitting",
    says=_SAID,
    called=_SAID,
    about="How many stitches a shaping leaves, and how many rows it takes, when a pattern tells how often it is worked.",
    inputs=(
        Input("start", "stitches at the start", STITCHES, says=("from", "start", "start with", "have", "cast on", "cuff", "begin with",
                                                                "on the needle", "starting", "stitches", "sts"),
              ask="How many stitches are there to start with?", example="48 stitches", sane="1 st..5000 st",
              practice="40 st..80 st by 2 st"),
        Input("times", "times it is worked", COUNT, says=("times", "increases", "decreases", "increase rows", "decrease rows"),
              ask="How many times is it worked?", example="12", sane="1..1000",
              practice="4..16 by 1", spoken=True),
        choice("interval", "how often", {**_INTERVALS, "untold": ("untold",)}, default=Default("untold", derived=True)),
        Input("every", "rows from one to the next", ROWS, says=("every",), spoken=True, sane="1 row..100 row",
              default=tuple(Default(rows, when={"interval": rows}, derived=True) for rows in _INTERVALS),
              ask="Every how many rows is it worked?", example="every 6th row"),
        choice("ends", "at which ends", {
            "both": (*_BOTH, "each end", "both ends", "each side", "both sides", "either end", "either side", "each edge", "both edges"),
            "one": (*_ONE, "one end", "neck edge", "one edge", "one side", "front edge", "armhole edge", "at one end"),
        }, default="both", because="the usual way, one at each end of a shaping row"),
        choice("way", "more or fewer", {
            "more": ("increase", "inc", "add", "widen", "increasing", "increased"),
            "fewer": ("decrease", "dec", "lose", "take out", "remove", "narrow", "decreasing", "losing", "decreased", "k2tog"),
        }, default=Default("more", because="nothing was said of losing stitches")),
        Input("a_row", "stitches in a shaping row", STITCHES, default=(Default("1 st", when={"ends": "one"}, derived=True),
                                                                       Default("2 st", derived=True)), sane="1 st..20 st", spoken=True),
        Input("sign", "direction", RATIO, default=(Default("-1", when={"way": "fewer"}, derived=True), Default("1", derived=True)),
              sane="-1..1", spoken=True),
    ),
    steps=(
        Step("change", "The stitches of each shaping row, as many times as it is worked", "times * a_row", STITCHES,
             label="stitches changed"),
        Step("after", "Add them to the stitches at the start, or take them off", "start + sign * change", STITCHES,
             label="stitches at the end", says=_CALLED[:19]),
        Step("rows", "Rows from one to the next, as many times", "every * times", ROWS, label="rows it takes",
             says=("how many rows", "rows in all", *_CALLED[22:])),
    ),
    answers=("after", "change", "rows"),
    insists=True,
    headline=("It leaves {after}.",),
    no_unknown=("start", "times", "every", "a_row", "sign"),
    refusals=(Refusal("after < 1", "there are not so many stitches to lose. Give more stitches or fewer times, such as: 48 stitches, "
                      "decrease each end every 6 rows 12 times"),),
    source=ARITHMETIC,
    examples=(
        "48 sts, increase one each end every 6 rows 12 times, how many stitches at the end -> 72 stitches",
        "decrease each end every 4 rows 10 times from 90 stitches, stitches left -> 70 stitches",
        "62 stitches, dec at neck edge every 2 rows 14 times, stitches left -> 48 stitches; 14 stitches; 28 rows",
    ),
    defers=("shape along rows",),
    related=("shape along rows",),
)
