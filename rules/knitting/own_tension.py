"""The size that comes out at one's own tension, and a needle to try instead when it is not the pattern's."""

from __future__ import annotations

from itertools import permutations

from ..engine.declare import ARITHMETIC, COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, PERCENT, ROW_RATE, STITCH_RATE, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, PERCENT_TENTH, STITCH
from ..engine.run import Run
from .tables.needles import KNITTING_NEEDLES
from .words import NEEDLE_TOLD, SANE_ROWS, SANE_STITCHES

_PATTERN = ("pattern", "pattern says", "pattern tension", "calls for", "should be", "the pattern", "asks for",
            "written for", "designed at",
            "pattern has", "supposed to be", "original", "pattern's", "pattern is", "pattern wants", "wants", "meant to be",
            "ought to be", "ask for", "pattern uses", "at", "band says", "theirs", "they say", "label says", "ball band",
            "chart says",
            "instead of", "instead of the", "should have", "should get", "should give", "supposed to have", "supposed to get",
            "but need", "i need", "needed", "should be", "wanted")  # fmt: skip
_OWN = ("mine", "mine came out at", "came out at", "comes out at", "mine is", "my", "i get", "came out", "comes out",
        "my tension", "own", "i got", "i knit", "getting", "my own", "knit at", "after blocking",
        "my swatch", "actually", "i have", "my gauge", "at my tension", "i'm getting",
        "but i get", "i keep getting", "keep getting", "my tension is", "my own is", "i manage", "i only get", "i knit too loose",
        "i knit too tight",
        "i knit too loosely", "i knit too tightly",
        "have got", "i've got", "i am getting", "i have got", "i come out at", "we get", "i am at", "i'm at", "too loose",
        "too tight", "i make", "mine has", "i work at", "i knit to",
        "my swatch is", "my swatch has", "my swatch gives", "mine's", "mine are")  # fmt: skip

_FAR_APART = ("the two tensions are too far apart to be of one pattern: say what length each is counted over, such as: pattern wants "
              "22 sts to 10 cm and I get 24 sts to 10 cm")

SIZE_AT_MY_TENSION = Rule(
    topic="size at my tension",
    family="knitting",
    says=("size at my tension", "at my tension", "tension is off", "different tension", "really be", "it really be",
          "what size will it",
          "my tension is different",
          "wrong tension",
          "do i actually get", "actually get", "will i get", "came out at", "what size will it be",
          "what will it measure", "my gauge is off",
          "pattern tension", "which size should i knit", "off gauge", "instead of", "how big will mine be",
          "pattern says", "the pattern is",
          "tighter than the pattern", "looser than the pattern", "knit tighter", "knit looser", "chest", "bust",
          "pattern gauge", "same width", "size should i follow", "size do i follow", "which size to follow", "size to follow",
          "size should i make",
          "pattern has", "mine is", "adapt the pattern", "will mine", "mine come out", "turn out",
          "turns out", "pattern wants", "pattern's tension", "my tension not the pattern's"),
    about="The width you will get when your tension is not the pattern's, the difference, and the pattern width to "
          "follow instead.",
    inputs=(
        Input("width", "width in the pattern", LENGTH,
              says=("finished chest", "in around", "cm around", "jumper", "sweater", "sweater is", "chest", "bust", "wide",
                    "width", "finished", "measures", "finished width",
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
        Input("length", "length in the pattern", LENGTH,
              says=("long", "length", "rows long", "pattern length", "sleeve", "sleeve is", "length of"), axis="length",
              extra=True, sane="1 cm..20 m"),
        Input("pattern_rows", "pattern's row tension", ROW_RATE, says=_PATTERN, extra=True, sane=SANE_ROWS),
        Input("own_rows", "your row tension", ROW_RATE, says=_OWN, extra=True, sane=SANE_ROWS),
        NEEDLE_TOLD,
    ),
    steps=(
        Step("got", "The same stitches at your tension: multiply by the pattern's tension and divide by yours",
             "width * pattern / own",
             rounding=BODY, label="width you will get", says=("what chest", "get", "actually get", "how wide", "wide",
                                                              "width", "measure", "chest",
                                                              "bust", "come out", "finished", "turn out", "turns out",
                                                              "size will it", "big will it", "really be", "finished width",
                                                              "i get", "do i get", "will i get", "i end up", "size will mine",
                                                              "big will mine",
                                                                "end up with"), axis="width"),
        Step("difference", "Take the pattern's width away", "got - width", rounding=BODY, label="difference",
             says=("difference", "how much smaller", "how much bigger", "out", "how much wider", "too big", "too wide",
                   "how much larger", "too large",
                   "how much too big", "how much too wide", "by how much")),
        Step("narrower", "Take it from the pattern's width", "width - got", rounding=BODY, label="smaller by",
             says=("how much narrower", "how many inches narrower", "how many cm narrower", "how many centimetres narrower",
                   "how many inches too small", "how many cm too small", "too small", "too narrow", "how much too small",
                   "how much too narrow", "do i lose", "will i lose", "will it lose", "is it too narrow", "is it too small",
                   "is lost", "short by")),
        Step("follow", "The pattern width to follow instead: multiply by your tension and divide by the pattern's",
             "width * own / pattern",
             rounding=BODY, label="pattern width to follow instead", says=("which size", "what size should",
                                                                           "size to knit", "size to follow", "do i follow",
                                                                           "should i follow",
                                                                           "must i follow", "to follow", "follow instead",
                                                                           "size in the pattern", "pattern size", "size of the pattern",
                                                                           "which size should i knit", "size should i knit",
                                                                           "size should i follow",
                                                                           "size should i make", "size do i follow",
                                                                           "size do i knit",
                                                                           "which size to follow", "size to make")),
        Step("same", "The stitches that would give the pattern's width at your tension", "width * own", STITCHES,
             rounding=STITCH,
             label="stitches for the pattern's width", says=("stitches", "how many stitches", "how many sts", "sts",
                                                             "for the same width",
                                                        "to get the same width", "cast on instead",
                                                             "cast on")),
        Step("got_length", "The same rows at your row tension", "length * pattern_rows / own_rows", rounding=BODY,
             label="length you will get",
             says=("how long", "length", "length will i get", "length do i get", "length will it be"), axis="length"),
        Step("longer", "Take the pattern's length away", "got_length - length", rounding=BODY, label="longer by",
             says=("how much longer", "how much taller", "how much too long", "too long", "how many inches longer", "how many cm longer",
                   "how many centimetres longer")),
        Step("shorter", "Take it from the pattern's length", "length - got_length", rounding=BODY, label="shorter by",
             says=("how much shorter", "how much too short", "too short", "how many inches shorter", "how many cm shorter",
                   "how many centimetres shorter")),
    ),
    answers=("got", "difference", "follow", "same", "got_length"),
    tells=("stitch tension + stitch tension + length", "stitch tension + stitch tension + stitches", "row tension + row tension + length",
           "stitches + stitch tension + stitch tension"),
    defers=("stitches for a width", "needle change"),
    refusals=(
        Refusal("max(own, pattern) > 1.8 * min(own, pattern)", _FAR_APART),
        Refusal("max(own_rows, pattern_rows) > 1.8 * min(own_rows, pattern_rows)", _FAR_APART),
    ),
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


_THEIRS = tuple(f"{whose} {wants}" for whose in ("pattern", "leaflet", "book", "chart", "it", "ball band", "label")
                for wants in ("wants", "asks for", "calls for", "says", "needs", "has"))


def _counted(count: str) -> Default:
    """Stitches told without a length are those of a swatch of 10 cm (4 in)."""
    return Default(f"={count} / over", "The stitches of 10 cm (4 in)", derived=True, given=(count,))


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
          "finer needles", *(f"should i {do} to" for do in ("swap", "change", "switch")),
          *(f"{way} a needle" for way in ("up", "down", "up or down", "down or up")),
          *(f"{one} or {other}" for one, other in permutations(("finer", "thicker", "thinner", "bigger", "smaller"), 2))),
    about="Whether to try a finer or a thicker needle when your tension is not the pattern's: one size at a time, a "
          "first guess.",
    inputs=(
        Input("pattern_count", "pattern's stitches", STITCHES,
              says=(*_THEIRS, "pattern", "it should be", "should be", "instead of", "wants"),
              extra=True, spoken=True, sane="8 st..60 st"),
        Input("own_count", "your stitches", STITCHES, says=("i get", "i only get", "i am getting", "i'm getting", "mine", "mine has",
                                                             "my swatch has", "my swatch is", "i got", "i knit", "she knits", "she gets",
                                                             "he knits", "he gets"), extra=True, spoken=True, sane="8 st..60 st"),
        Input("pattern", "pattern's tension", STITCH_RATE, says=_PATTERN, default=_counted("pattern_count"),
              ask="What is the pattern's tension?",
              example="22 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("own", "your tension", STITCH_RATE, says=_OWN, default=_counted("own_count"), ask="What is your own tension?",
              example="24 sts to 10 cm",
              sane=SANE_STITCHES, practice="16 st/10cm..30 st/10cm by 1 st/10cm"),
        Input("over", "counted over", LENGTH, says=("over", "both over", "counted over", "both in", "both to"),
              default=Default("4 in | 10 cm", derived=True), spoken=True, sane="1 cm..20 cm"),
        Input("needle", "needle used now", LENGTH, says=("needle", "needles", "hook", "mm needle", "mm needles", "on",
                                                         "with", "using"), extra=True,
              sane="0.5 mm..40 mm", practice="3 mm..6 mm by 1/2 mm"),
    ),
    steps=(
        Step("advice", "Say which way to go", kind=TEXT, label="needle to try",
             says=("needle", "which needle", "needles", "size", "hook")),
        Step("off", "How far your tension is from the pattern's", "own / pattern - 1", PERCENT, rounding=PERCENT_TENTH,
             label="difference in tension", says=("how far off", "per cent off", "percent off", "per cent out", "percent out")),
        Step("needle_to_try", "The next size in the table", unit=("mm", "mm"), label="next size"),
    ),
    answers=("advice", "needle_to_try", "off"),
    headline=("Try {advice}, and swatch again.",),
    algorithm=_next_needle,
    no_unknown=("pattern", "own", "pattern_count", "own_count", "over", "needle"),
    # Stitches counted over one length and a tension over another.
    defers=("machine needle", "needle or hook size"),
    refusals=(Refusal("max(own, pattern) > 1.6 * min(own, pattern)", _FAR_APART),),
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
