"""Tension (gauge) from a swatch, rows for a length, the size at one's own tension, and a needle to try instead."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import ARITHMETIC, COMMON_PRACTICE, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH, PERCENT, ROW_RATE, ROWS, STITCH_RATE, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, COUNT_NEAR, PERCENT_TENTH, ROW, STITCH, TENSION_ROW, TENSION_ST
from ..engine.run import Run
from .tables.needles import KNITTING_NEEDLES
from .words import MULTIPLE_WORDS, NEEDLE_TOLD, ROW_TENSION, SANE_ROWS, SANE_STITCHES, STITCH_TENSION, SWATCH_CAUTION

_COUNTED = ("count", "counted", "over", "across", "in", "swatch", "measured over", "sample")

TENSION = Rule(
    topic="tension (gauge)",
    family="knitting",
    says=("what is my tension", "my tension over", "swatch", "work out my tension", "find my tension",
          "what tension is that", "tension swatch",
          "tension square", "counted", "convert tension", "measure tension", "measure my tension", "stitches per",
          "what's my tension", "what tension have i", "which tension have i", "what tension do i have", "tension from",
          "tension do i get", "my tension if", "what is the tension", "what's the tension", "sample", "i counted",
          "in stitches per inch", "what tension is it", "tension is that over", "is my tension", "tension i have",
          "rows per inch", "row tension per inch", "rows an inch", "holds",
          "stitches an inch", "stitches to", "measured across", "determine the gauge", "gauge given",
          "gauge really", "tension", "gauge", "how many in", "what is that to", "what is that over", "how many for", "many in one inch", "how many to", "that to 10", "is that to",
          "is that over", "what gauge", "what tension", "gauge is that", "which gauge", "what is the gauge", "is the gauge", "swatch is",
          "what is that per inch", "that per inch", "that per cm", "which is the tension", "which is the row tension", "both tensions"),
    about="Your tension from stitches or rows counted over a width: to 10 cm and 4 in, and to one centimetre or inch.",
    inputs=(
        Input("stitches", "stitches counted", STITCHES, says=("stitches", "sts", "count", "counted", "got"),
              ask="How many stitches did you count?",
              example="33 stitches", sane="0.1 st..2000 st", practice="16 st..40 st by 1 st"),
        Input("over", "width counted over", LENGTH, says=_COUNTED, ask="Over what width did you count them?",
              example="15 cm",
              default=Default("=row_over", "the stitches were counted over the same length as the rows",
                              given=("row_over",)),
              sane="5 mm..5 m", practice="10 cm..16 cm by 1 cm"),
        Input("rows", "rows counted", ROWS, says=("rows", "rounds", "count", "counted"),
              ask="How many rows did you count?", example="42 rows",
              sane="0.1 row..2000 row", practice="20 row..60 row by 1 row"),
        Input("per", "length to give it over", LENGTH, says=("tension over", "my tension over", "tension to",
                                                             "give it over", "tension per", "stitches per",
                                                             "stitches to", "rows per", "rows to", "tension is that over",
                                                             "is that over", "tension in", "that over", "that to",
                                                             "is that to", "is that in", "is that per", "how many for", "how many to", "how many over", "how many in", "many on",
                                                             "is it on", "much is it on", "is it to", "is it over", "is it in"),
              extra=True, sane="5 mm..26 cm", spoken=True),
        Input("row_over", "length the rows were counted over", LENGTH, says=("rows over", "rows across", "rows in", "high", "tall", "deep", "cm high", "in high"),
              default=Default("=over", "the rows were counted over the same length as the stitches", given=("over",)),
              ask="Over what length did you count the rows?", example="15 cm", sane="5 mm..5 m", spoken=True),
    ),
    steps=(
        Step("tension", "Divide the stitches by the width they were counted over", "stitches / over", STITCH_RATE,
             rounding=TENSION_ST,
             label="stitch tension", says=("tension", "gauge", "stitch gauge", "stitches")),
        Step("row_tension", "Divide the rows by the length they were counted over", "rows / row_over", ROW_RATE,
             rounding=TENSION_ROW,
             label="row tension", says=("row tension", "row gauge", "rows to")),
        Step("each", "The same to one unit", "stitches / over", STITCH_RATE, unit=("st/in", "st/cm"),
             label="stitches to one unit",
             says=("per inch", "to the inch", "an inch", "each inch", "to 1 inch", "per centimetre", "each centimetre",
                   "per cm", "spi")),
        Step("row_each", "The same to one unit", "rows / row_over", ROW_RATE, unit=("row/in", "row/cm"),
             label="rows to one unit",
             says=("rows per inch", "rows to the inch", "rows per cm", "rpi", "row tension per inch", "rows an inch",
                   "row tension per cm", "per inch", "to the inch", "an inch", "each inch", "per cm", "row tension to the inch", "rows in an inch", "rows each inch")),
        Step("there", "Multiply by the length it is wanted over", "stitches / over * per", STITCHES,
             label="stitches in that length"),
    ),
    answers=("tension", "row_tension", "each", "row_each", "there"),
    headline=("Your tension is {tension} and {row_tension}.", "Your tension is {tension}.",
              "Your tension is {row_tension}."),
    sizes=(("stitches", "over"), ("rows", "row_over")),
    no_unknown=("stitches", "over", "rows", "row_over", "per"),
    source=ARITHMETIC,
    cautions=(Caution(SWATCH_CAUTION),),
    examples=(
        "My washed swatch has 33 stitches across 15 cm, what is my tension over 10 cm? -> 22 stitches to 10 cm",
        "I counted 27 sts over 6 in on my swatch, what gauge is that -> 18 stitches to 4 in",
        "my swatch is 35 sts and 49 rows over 14 cm, what is my tension -> 25 stitches to 10 cm; 35 rows to 10 cm",
    ),
    defers=("stitches for a width", "rows for a length"),
    related=("stitches for a width", "size at my tension"),
)

ROWS_FOR_A_LENGTH = Rule(
    topic="rows for a length",
    family="knitting",
    says=("rows", "row", "how many rows", "rows for", "rounds", "how many rounds", "rows to knit", "rows tall",
          "row gauge", "row tension",
          "number of rows", "rows for a length", "rows do i knit", "how long will", "row repeat", "cable repeat",
          "lace repeat", "cable", "lace", "length so far", "i have worked", "i've worked", "worked so far",
          "have knitted", "i've knitted", "rows worked", "rows done", "how many rounds for", "how long is my knitting",
          "how long is the piece", "rows long", "how tall is", "how tall will", "how tall are", "how tall would",
          "how long is it now", "how long is it so far"),
    about="How many rows to work for a length at your row tension, to a multiple if the pattern has one, and the "
          "length they really give.",
    inputs=(
        Input("length", "length", LENGTH, says=("long", "length", "deep", "tall", "high", "measures", "body", "piece", "for",
                                                "knit to", "work to", "armhole",
                                                "straight"), axis="length",
              ask="How long is the piece?", example="40 cm", sane="2 mm..30 m", practice="20 cm..60 cm by 2 cm"),
        ROW_TENSION,
        Input("multiple", "multiple of rows", ROWS, says=(*MULTIPLE_WORDS, "row repeat", "cable is", "cable of", "row cable", "row lace",
                                                           "lace is", "pattern is", "motif is", "full cable",
                                                           "lace pattern", "lace", "cable", "cable pattern",
                                                           "motif", "whole pattern",
                                                           "whole repeats of", "row pattern"), default="1 row",
              because="no row repeat was named",
              sane="1 row..400 row", practice="2 row..12 row by 2 row", usual="1 row..80 row", spoken=True),
        Input("extra", "extra rows", ROWS, says=("plus", "extra rows", "set-up rows", "setup rows"),
              default=Default("0 row", derived=True), sane="0 row..400 row", spoken=True),
        # A tension is told whole ("22 sts and 30 rows"); the rows of it are what counts here.
        replace(STITCH_TENSION, extra=True, says=("stitch tension", "sts per")),
        NEEDLE_TOLD,
    ),
    steps=(
        Step("product", "Multiply the length by the row tension", "length * row_tension", ROWS,
             label="rows before rounding"),
        Step("repeats", "Take the extra rows off and divide by the multiple, to the nearest whole one (a tie goes up)",
             "(product - extra) / multiple", COUNT, rounding=COUNT_NEAR, label="multiples"),
        Step("rows", "Take that many multiples and put the extra rows back",
             "max(1, rounded(repeats)) * multiple + extra", ROWS, rounding=ROW,
             label="rows", says=("rows", "how many rows", "rounds", "row count"),
             stated=("rows", "have", "knitted", "worked", "done", "make")),
        Step("real", "Divide those rows by the row tension for the length they really give", "rows / row_tension",
             rounding=BODY,
             label="length they give", says=("real length", "actual length")),
    ),
    answers=("rows", "real"),
    headline=("Work {rows}; they come to {real} long.",),
    backwards={"length": "rows / row_tension", "row_tension": "rows / length"},
    source=ARITHMETIC,
    tells=("row tension + length", "rows + row tension"),
    cautions=(Caution(SWATCH_CAUTION),),
    examples=(
        "15-1/4 in long, gauge 7 rows per inch, and the lace needs a multiple of 6 rows -> 108 rows",
        "how many rows for 40 cm at 30 rows to 10 cm -> 120 rows",
        "I have knitted 90 rows at 28 rows to 10 cm, how long is it -> 32.1 cm",
    ),
    related=("stitches for a width", "shape along rows"),
)

_PATTERN = ("pattern", "pattern says", "pattern tension", "calls for", "should be", "the pattern", "asks for",
            "written for", "designed at",
            "pattern has", "supposed to be", "original", "pattern's", "pattern is", "pattern wants", "wants", "meant to be",
            "ought to be", "ask for", "pattern uses", "at", "band says", "theirs", "they say", "label says", "ball band", "chart says",
            "instead of", "instead of the", "should have", "should get", "should give", "supposed to have", "supposed to get", "but need", "i need", "needed", "should be", "wanted")  # fmt: skip
_OWN = ("mine", "mine came out at", "came out at", "comes out at", "mine is", "my", "i get", "came out", "comes out",
        "my tension", "own", "i got", "i knit", "getting", "my own", "knit at", "after blocking",
        "my swatch", "actually", "i have", "my gauge", "at my tension", "i'm getting",
        "but i get", "my tension is", "my own is", "i manage", "i only get", "i knit too loose", "i knit too tight",
        "i knit too loosely", "i knit too tightly",
        "have got", "i've got", "i am getting", "i have got", "i come out at", "we get", "i am at", "i'm at", "too loose",
        "too tight", "i make", "mine has", "i work at", "i knit to",
        "my swatch is", "my swatch has", "my swatch gives", "mine's", "mine are")  # fmt: skip

SIZE_AT_MY_TENSION = Rule(
    topic="size at my tension",
    family="knitting",
    says=("size at my tension", "at my tension", "tension is off", "different tension", "really be", "it really be", "what size will it",
          "my tension is different",
          "wrong tension",
          "do i actually get", "actually get", "will i get", "came out at", "what size will it be",
          "what will it measure", "my gauge is off",
          "pattern tension", "which size should i knit", "off gauge", "instead of", "how big will mine be",
          "pattern says", "the pattern is",
          "tighter than the pattern", "looser than the pattern", "knit tighter", "knit looser", "chest", "bust",
          "pattern gauge", "same width", "size should i follow", "size do i follow", "which size to follow", "size to follow",
          "size should i make",
          "pattern has", "mine is", "adapt the pattern", "i knit at", "will mine", "mine come out", "turn out",
          "turns out", "pattern wants", "pattern's tension", "my tension not the pattern's"),
    about="The width you will get when your tension is not the pattern's, the difference, and the pattern width to "
          "follow instead.",
    inputs=(
        Input("width", "width in the pattern", LENGTH,
              says=("finished chest", "in around", "cm around", "jumper", "sweater", "sweater is", "chest", "bust", "wide", "width", "finished", "measures", "finished width",
                    "pattern width", "size", "around"),
              axis="width", default=Default("=stitches / pattern", "The pattern's stitches at the pattern's tension",
                                            derived=True, given=("stitches",)),
              ask="How wide is it in the pattern?", example="96 cm", sane="1 cm..20 m",
              practice="80 cm..130 cm by 2 cm"),
        Input("pattern", "pattern's tension", STITCH_RATE, says=_PATTERN, ask="What is the pattern's tension?",
              example="24 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("own", "your tension", STITCH_RATE, says=_OWN, ask="What is your own tension?", example="25 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("stitches", "pattern's stitches", STITCHES, says=("stitches", "cast on", "pattern's stitches", "sts"),
              extra=True,
              sane="1 st..5000 st", practice="60 st..200 st by 2 st"),
        Input("length", "length in the pattern", LENGTH, says=("long", "length", "rows long"), axis="length",
              extra=True, sane="1 cm..20 m"),
        Input("pattern_rows", "pattern's row tension", ROW_RATE, says=_PATTERN, extra=True, sane=SANE_ROWS),
        Input("own_rows", "your row tension", ROW_RATE, says=_OWN, extra=True, sane=SANE_ROWS),
    ),
    steps=(
        Step("got", "The same stitches at your tension: multiply by the pattern's tension and divide by yours",
             "width * pattern / own",
             rounding=BODY, label="width you will get", says=("what chest", "get", "actually get", "how wide", "wide",
                                                              "width", "measure", "chest",
                                                              "bust", "come out", "finished", "turn out", "turns out", "size will it", "big will it", "really be", "finished width", "i get", "do i get", "will i get", "i end up", "size will mine", "big will mine",
                                                                "end up with"), axis="width"),
        Step("difference", "Take the pattern's width away", "got - width", rounding=BODY, label="difference",
             says=("difference", "how much smaller",
                   "how much bigger", "out")),
        Step("follow", "The pattern width to follow instead: multiply by your tension and divide by the pattern's",
             "width * own / pattern",
             rounding=BODY, label="pattern width to follow instead", says=("which size", "what size should",
                                                                           "size to knit", "size to follow")),
        Step("same", "The stitches that would give the pattern's width at your tension", "width * own", STITCHES,
             rounding=STITCH,
             label="stitches for the pattern's width", says=("stitches", "how many stitches", "how many sts", "sts", "for the same width",
                                                        "to get the same width", "cast on instead",
                                                             "cast on")),
        Step("got_length", "The same rows at your row tension", "length * pattern_rows / own_rows", rounding=BODY,
             label="length you will get",
             says=("how long", "length"), axis="length"),
    ),
    answers=("got", "difference", "follow", "same", "got_length"),
    tells=("stitch tension + stitch tension + length",),
    defers=("stitches for a width", "needle change"),
    headline=("At your tension it comes to {got} wide; to get the pattern's width, follow {follow}.",),
    source=ARITHMETIC,
    cautions=(Caution("The rows change too when the tension does: check the lengths that are given in rows"),),
    examples=(
        "Pattern says the finished chest is 96 cm on 24 sts per 10 cm, mine came out at 25 sts per 10 cm. What chest "
        "do I actually get? -> 92 cm",
        "pattern tension 20 sts to 10 cm, I get 22 sts to 10 cm, width 100 cm, how wide will mine be -> 91 cm",
        "the pattern has 160 stitches at 5 sts per inch but my gauge is 4.5 sts per inch, what width will I get -> 35 "
        "1/2 in",
    ),
    related=("needle change", "tension (gauge)"),
)


def _next_needle(run: Run) -> Outcome:
    """Which way to go, and the neighbour of a needle that was named, from the published needle table."""
    pattern, own = run.get("pattern"), run.get("own")
    if own == pattern:
        run.say("Both tensions are the same")
        return Outcome({"advice": "keep the needle: your tension is the pattern's"})
    up = own > pattern
    run.say("More stitches than the pattern means small stitches, so a thicker needle; fewer means large ones, so a "
            "finer one",
            "your tension; pattern's tension", f"{run.show(own, STITCH_RATE)}; {run.show(pattern, STITCH_RATE)}",
            "thicker" if up else "finer")  # fmt: skip
    way = "thicker" if up else "finer"
    words = f"a {way} needle, one size {'up' if up else 'down'}"
    needle = run.maybe("needle")
    if needle is None:
        return Outcome({"advice": words})
    sizes = sorted({one.mm for one in KNITTING_NEEDLES})
    beyond = [size for size in sizes if size > needle] if up else [size for size in reversed(sizes) if size < needle]
    if not beyond:
        return Outcome({"advice": words})
    run.say("The next size in the needle table", "", run.show_in(needle, "mm"), run.show_in(beyond[0], "mm"))
    return Outcome({"advice": f"{words}: {run.show_in(beyond[0], 'mm')}", "needle_to_try": beyond[0]})


NEEDLE_CHANGE = Rule(
    topic="needle change",
    family="knitting",
    says=("needle change", "change needle", "change needles", "which needle", "needle size", "bigger needle",
          "smaller needle", "go up a needle size",
          "go down a needle size", "thicker needle", "finer needle", "what needle should i use", "different needle",
          "needles", "too tight",
          "too loose", "hook size", "bigger hook", "smaller hook", "larger needle", "try next", "thicker needles",
          "finer needles"),
    about="Whether to try a finer or a thicker needle when your tension is not the pattern's: one size at a time, a "
          "first guess.",
    inputs=(
        Input("pattern", "pattern's tension", STITCH_RATE, says=_PATTERN, ask="What is the pattern's tension?",
              example="22 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("own", "your tension", STITCH_RATE, says=_OWN, ask="What is your own tension?", example="24 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("needle", "needle used now", LENGTH, says=("needle", "needles", "hook", "mm needle", "mm needles", "on",
                                                         "with", "using"), extra=True,
              sane="0.5 mm..40 mm", practice="3 mm..6 mm by 1/2 mm"),
    ),
    steps=(
        Step("advice", "Say which way to go", kind=TEXT, label="needle to try",
             says=("needle", "which needle", "needles", "size", "hook")),
        Step("off", "How far your tension is from the pattern's", "own / pattern - 1", PERCENT, rounding=PERCENT_TENTH,
             label="difference in tension"),
        Step("needle_to_try", "The next size in the table", unit=("mm", "mm"), label="next size"),
    ),
    answers=("advice", "needle_to_try", "off"),
    headline=("Try {advice}, and swatch again.",),
    algorithm=_next_needle,
    no_unknown=("pattern", "own", "needle"),
    source=COMMON_PRACTICE,
    cautions=(Caution("This is a first guess: swatch again with the new needle before you cast on"),),
    examples=(
        "pattern wants 22 sts to 10 cm and I get 24 sts to 10 cm on 4 mm needles, which needle should I try -> a "
        "thicker needle, one size up: 4.5 mm; 4.5 mm",
        "my tension is too loose: I get 20 sts to 10 cm, pattern says 22 sts to 10 cm, bigger or smaller needle? -> a "
        "finer needle, one size down",
        "gauge should be 18 sts to 4 in, I'm getting 17 sts to 4 in with 5.5 mm needles. Change needles to what? -> a "
        "finer needle, one size down: 5 mm",
    ),
    related=("size at my tension", "tension (gauge)"),
)
