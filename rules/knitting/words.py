"""Inputs and words that the knitting rules share: tension, multiples, edge stitches, and how the work is held."""

from __future__ import annotations

from ..engine.declare import Default, Input, choice
from ..engine.kinds import LENGTH, ROW_RATE, STITCH_RATE, STITCHES

SANE_STITCHES = "1 st/10cm..250 st/10cm"
SANE_ROWS = "5 row/10cm..350 row/10cm"  # a bare "plus 2" behind a multiple is no row tension

STITCH_TENSION = Input(
    "tension", "stitch tension", STITCH_RATE, says=("tension", "gauge", "stitch gauge", "my tension", "sts per", "stitches are",
                                                    "knit at", "knitted to"),
    ask="What is your tension: how many stitches to 10 cm or 4 in?", example="22 sts to 10 cm",
    sane=SANE_STITCHES, practice="14 st/10cm..32 st/10cm by 1 st/10cm", usual="4 st/10cm..60 st/10cm",
)  # fmt: skip
ROW_TENSION = Input(
    "row_tension", "row tension", ROW_RATE, says=("row gauge", "tension", "gauge", "rows per", "row tension", "rows are",
                                                  "my rows"),
    ask="What is your row tension: how many rows to 10 cm or 4 in?", example="30 rows to 10 cm",
    sane=SANE_ROWS, practice="18 row/10cm..44 row/10cm by 2 row/10cm", usual="4 row/10cm..90 row/10cm",
)  # fmt: skip
MULTIPLE_WORDS = ("multiple of", "multiple", "multiples of", "pattern repeat", "repeat of", "stitch repeat",
                  "divisible by", "repeat",
                  "divides by", "mult of", "mult", "repeats over", "repeat is", "divide by", "divisible into", "cable repeat",
                  "lace repeat", "pattern of", "groups of", "goes in", "pattern goes in", "pattern in", "in multiples of",
                      "cables over", "cable over",
                  "lace over", "rep of", "rep",
                  "pattern over", "pattern repeats over", "pattern worked over", "pattern is worked over", "stitch pattern of", "motif of",
                  "motif over", "repeats every", "lace is over", "cable is over")  # fmt: skip
EDGE_WORDS = ("edge stitches", "edge", "edge sts", "selvedge stitches", "extra stitches", "plus", "selvedge",
              "balancing stitches", "seam stitches", "for the edges", "for the seams", "selvage", "selvage stitches",
              "over for the edges", "balance stitches", "edging stitches", "edge stitches of")
# "The pattern goes in sixes plus one", "in 4s plus 2": the repeat as a word of its own, and what is over ("plus" is read as a sign).
_IN_GROUPS = {size: (f"in {word}", f"in {size} s") for size, word in enumerate(
    ("twos", "threes", "fours", "fives", "sixes", "sevens", "eights", "nines", "tens"), start=2)}
GROUPS = choice("groups", "repeat told in groups", {
    **{f"{size} st": (said[0], f"and {said[0][3:]}", f"multiples of {said[0][3:]}",
                      *(f"{one} {over}" for one in said for over in range(1, 5))) for size, said in _IN_GROUPS.items()},
    "none": ("no groups",)}, default=Default("none", derived=True))  # fmt: skip
GROUPED = tuple(Default(key, when={"groups": key}, derived=True) for key in GROUPS.options if key != "none")
MULTIPLE = Input(
    "multiple", "multiple of stitches", STITCHES, says=MULTIPLE_WORDS,
    default=(*GROUPED, Default("1 st", "no pattern repeat was named")),
    sane="1 st..200 st", practice="4 st..12 st by 2 st", usual="1 st..60 st", spoken=True,
)  # fmt: skip
EDGE_STITCHES = Input(
    "edge", "edge stitches", STITCHES, says=EDGE_WORDS, default=Default("0 st", derived=True),
    sane="0 st..100 st", practice="1 st..4 st by 1 st", usual="0 st..20 st", spoken=True,
)  # fmt: skip

# "In 4s plus 2", "multiple of 6 and 1 over": the stitches that balance a pattern, told as a bare number behind it.
BALANCE = choice("balance", "stitches over the repeats", {
    **{f"{over} st": tuple(said for told in (over, word) for said in (
        f"plus {told}", f"and {told} over", f"with {told} over", f"with {told} extra", f"and {told} extra")) + tuple(
        f"{one} {over}" for said in _IN_GROUPS.values() for one in said if over < 5)
       for over, word in enumerate(("one", "two", "three", "four", "five", "six", "seven"), start=1)},
    "none": ("nothing over",)}, default=Default("none", derived=True))  # fmt: skip
BALANCED = tuple(Default(key, when={"balance": key}, derived=True) for key in BALANCE.options if key != "none")

HOW_MANY_REPEATS = ("how many repeats", "repeats is that", "repeats are that", "how many pattern repeats", "how many cable repeats",
                    "how many lace repeats", "how many cables", "how many multiples", "how many whole repeats", "how many motifs",
                    "number of repeats", "how many times does the pattern", "how many full repeats")
REALLY_WIDE = ("real width", "actual width", "true width", "really be", "really measure", "really come out", "width really", "exact width",
               "width after rounding", "actually be", "actually measure", "actually come out", "width do they give", "width does it give",
               "width do i really get", "width do i actually get", "really get")

FLAT_OR_ROUND = choice(
    "held", "how it is worked",
    {
        "flat": ("flat", "worked flat", "in rows", "back and forth", "along the row", "across the row", "in one row",
                 "one row", "in the one row", "in a single row", "in this row", "flat row",
                 "in a row", "next row", "in the next row", "over the row",
                 "straight needles",
                 "not in the round", "on straights", "to and fro"),
        "round": ("in the round", "one round", "in one round", "round", "circular", "circulars", "circular needle",
                  "dpns", "on dpns",
                  "double pointed needles", "in rounds", "rnd", "in the rnd", "rnds", "one rnd", "on one round", "circularly",
                  "next round", "in the next round", "next rnd",
                  "magic loop", "around", "a round", "the round", "tube"),
    },
    default="flat", because="nothing was said of working in the round",
)  # fmt: skip

# A pattern tells its needles beside its tension; they change no sum, and are heard so that they are taken for no width.
NEEDLE_TOLD = Input(
    "needle_told", "needle told", LENGTH, says=("needle", "needles", "mm needle", "mm needles", "hook", "mm hook"),
    extra=True, sane="0.5 mm..40 mm", spoken=True,
)  # fmt: skip

SWATCH_CAUTION = "Wash and dry the swatch as the finished work will be, and measure away from its edges"
