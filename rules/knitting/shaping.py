"""Shaping along rows: increases or decreases at the edges, spread over the rows in two intervals and counted."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, ROWS, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.run import Impossible, Run
from .words import ROW_TENSION


def plan(rows: int, times: int, pairs: bool) -> list[tuple[int, int]]:
    """(interval, how many times), the shorter interval first, for so many shaping rows in so many rows.

    pairs: shape on right-side rows only, so that every interval is even. Intervals differ by one (or one pair) at most
    and add up to the rows (to the last even row when pairs is set). The caller has seen to it that times fits in.

    >>> plan(84, 12, True)
    [(6, 6), (8, 6)]
    """
    unit = 2 if pairs else 1
    short, over = divmod(rows // unit, times)
    parts = [(short * unit, times - over), ((short + 1) * unit, over)]
    return [part for part in parts if part[1]]


def rows_worked(parts: list[tuple[int, int]]) -> list[int]:
    """The numbers of the rows on which the shaping is worked, in the order of the plan."""
    worked, row = [], 0
    for interval, times in parts:
        for _ in range(times):
            row += interval
            worked.append(row)
    return worked


def in_words(parts: list[tuple[int, int]]) -> str:
    """The plan as a pattern says it: "every 6th row 5 times, then every 8th row 3 times"."""
    return ", then ".join(f"every {ordinal(interval)} row {times} {'time' if times == 1 else 'times'}" for interval,
                          times in parts)


def ordinal(number: int) -> str:
    """A number's place: 1st, 2nd, 3rd, 4th, 11th, 22nd.

    >>> [ordinal(number) for number in (1, 2, 3, 4, 11, 22)]
    ['1st', '2nd', '3rd', '4th', '11th', '22nd']
    """
    if number % 100 in (11, 12, 13):
        return f"{number}th"
    return f"{number}{ {1: 'st', 2: 'nd', 3: 'rd'}.get(number % 10, 'th')}"


def _most(rows: int, pairs: bool) -> int:
    """The most shaping rows that fit: each right-side row, or every row but the first."""
    return rows // 2 if pairs else rows - 1


def _shape(run: Run) -> Outcome:
    change, rows = int(run.get("change")), int(run.get("rows"))
    way, start, total = run.get("way"), run.maybe("start"), run.maybe("total")
    if run.was_given("way") and start is not None and total is not None and (total > start) != (way == "more"):
        raise Impossible(f"from {int(start)} to {int(total)} stitches is the other way: say which of the two is meant, such as: "
                         f"shape from {int(start)} to {int(total)} stitches over {rows} rows")
    each_end = run.maybe("each_end")
    if each_end == 1 and (start is None or total is None) and not run.was_given("change"):
        # "Inc 1 st each end every 4th row" tells what a shaping row does, not how many stitches are to be changed.
        raise Impossible("one stitch at each end is what a shaping row does. Say how many stitches are changed in all, or from "
                         f"how many to how many, such as: from 48 to 72 stitches, one at each end, over {rows} rows")
    if each_end is not None and each_end != 1 and start is not None and total is not None and 2 * each_end != change:
        raise Impossible(f"{int(each_end)} stitches at each end are {int(2 * each_end)} in all, but from {int(start)} to "
                         f"{int(total)} stitches are {change}. Give one of the two")
    if start is not None and total is not None and change != abs(total - start):
        if change != 2 or run.get("ends") != "both":
            raise Impossible(f"from {int(start)} to {int(total)} stitches are {int(abs(total - start))}, not {change}. Give one of the two")
        change = int(abs(total - start))  # "from 46 to 66 stitches, two each row" says how many go in a shaping row
    a_row = 2 if run.get("ends") == "both" else 1
    pairs = run.get("sides") == "right"
    if change % a_row:
        raise Impossible(
            f"{change} stitches cannot be worked one at each end: two go in every shaping row, so the number must be "
            f"even. The nearest "
            f"possible are {change - 1} and {change + 1}; or work one of them at one end only"
        )
    times = change // a_row
    most = _most(rows, pairs)
    which = "right-side rows" if pairs else "rows after the first"
    if times > most:
        raise Impossible(
            f"{times} shaping rows are needed, and {rows} rows hold only {most} {which}. The nearest possible is "
            f"{most * a_row} stitches in "
            f"{rows} rows, or {change} stitches in {times * 2 if pairs else times + 1} rows"
        )
    parts = plan(rows, times, pairs)
    if parts[0][0] == 1:
        parts.reverse()
    worked = rows_worked(parts)
    assert len(worked) == times, "the plan has another number of shaping rows"
    assert worked[0] > 1, "the plan shapes on the first row"
    assert worked[-1] <= rows, "the plan does not fit the rows"
    _say(run, change, a_row, times, rows, pairs, parts)
    values = {"plan": in_words(parts), "times": Fraction(times), "last": Fraction(worked[-1]),
              "plain_after": Fraction(rows - worked[-1])}
    note = f"Worked on rows {', '.join(map(str, worked[:40]))}{' and so on' if len(worked) > 40 else ''}."
    return Outcome(values, notes=(note,))


def _say(run: Run, change: int, a_row: int, times: int, rows: int, pairs: bool, parts: list[tuple[int, int]]) -> None:
    run.say("Divide the stitches by those worked in each shaping row", "shaping rows = stitches ÷ stitches a row",
            f"{change} ÷ {a_row}",
            f"{times} shaping rows")
    if pairs:
        run.say("Shaping is on right-side rows, so share out pairs of rows", "pairs of rows ÷ shaping rows",
                f"{rows // 2} ÷ {times}",
                f"{rows // 2 // times}, {rows // 2 % times} over")
    else:
        run.say("Share out the rows", "rows ÷ shaping rows", f"{rows} ÷ {times}",
                f"{rows // times}, {rows % times} over")
    sums = " + ".join(f"{times_} × {interval}" for interval, times_ in parts)
    run.say("Add the intervals to check that they use up the rows", "", sums, f"{sum(i * t for i, t in parts)} rows")


# Where the shaping is worked, as it is said: whoever says one of these means to shape along rows.
_ENDS = {
    "both": ("1 stitch each end", "1 stitch at each end", "1 stitch each side", "1 stitch at both ends",
             "1 stitch at each side", "1 st each end", "each end", "both ends", "each side", "both sides",
             "one at each end", "1 at each end", "at each end", "either end", "both edges",
             "each edge", "both armhole edges", "both raglan edges", "each armhole edge", "1 each end", "1 each side", "two at a time",
             "2 at a time", "two a time", "a pair at a time",
             "each end of the row", "sleeve", "one each end"),
    "one": ("1 stitch at one end", "1 stitch at the neck edge", "1 stitch at neck edge", "1 st at neck edge",
            "1 stitch at one edge", "one end", "only one end", "one side", "1 end", "neck edge", "one edge",
            "only at one end", "at one end", "armhole edge only",
            "neck edge only", "one end only", "1 end only", "single edge", "front edge", "at one edge",
            "1 side", "1 edge", "front slope", "armhole edge", "the armhole edge", "raglan edge"),
}

# "How many rows between increases" wants the intervals.
_APART = tuple(f"rows {between} {shaping}" for between in ("between", "between the", "between two", "between each", "from one",
                                                               "apart are the")
               for shaping in (*(f"{which}{way}" for way in ("increase", "decrease") for which in ("one ", "")), "shaping",
                               "increase rows", "decrease rows"))

SHAPE_ALONG_ROWS = Rule(
    topic="shape along rows",
    family="knitting",
    says=("shape along rows", "shape", "shaping", "at each end", "each end", "both ends", "one end", "how often",
          "every how many rows", "sleeve shaping",
          "increase rows", "decrease rows", "over rows", "every nth row", "each side", "neck edge", "at each side",
          "sleeve increases", "taper",
          "waist shaping", "armhole shaping", "side edge", "along the rows", "right side rows", "v neck", "sleeve seam",
          "end of every", *(words for said in _ENDS.values() for words in said if " " in words)),
    about="How often to increase or decrease at the edges so that the shaping is spread evenly over the rows, in two "
          "intervals.",
    inputs=(
        Input("start", "stitches at the start", STITCHES, says=("from", "start", "have", "begin with", "cuff",
                                                                "cast on", "on the needle", "starting"),
              extra=True, sane="1 st..5000 st", practice="40 st..80 st by 2 st"),
        Input("total", "stitches at the end", STITCHES, says=("to", "until", "reach", "end with", "end up with",
                                                              "wanted", "want", "top", "left", "remain",
                                                              "get to", "finish with", "need", "and need", "i need",
                                                              "must have", "should have", "down to", "be left",
                                                              "at the top", "becomes", "should be", "must be"),
              extra=True, sane="1 st..5000 st"),
        Input("change", "stitches to change", STITCHES,
              says=("stitches", "sts", "in all", "altogether", "by", "total change", "get rid of", "increase by",
                    "decrease by", "to add", "to lose", "to loose", "must add", "must lose", "to increase", "to decrease", "to take out",
                    "to get rid of", "in total",
                    "stitches in all", "sts in all", "total of"),
              default=(Default("=abs(total - start)",
                               "The difference between the stitches at the start and at the end", derived=True,
                               given=("start", "total")),
                       Default("=2 * each_end", "Twice the stitches of one end", derived=True, given=("each_end",))),
              ask="How many stitches are to be added or lost in all?", example="24 stitches", sane="1 st..5000 st",
              practice="2 st..40 st by 2 st"),
        # "12 sts each end" are twelve at the one end and twelve at the other; "12 sts at both ends" are twelve in all.
        Input("each_end", "stitches at each end", STITCHES, says=("each end", "at each end", "each side", "at each side",
                                                                  "per side", "each edge", "at each edge", "per end",
                                                                  "at either end", "on each side", "a side"),
              extra=True, sane="1 st..2500 st", spoken=True),
        Input("rows", "rows", ROWS, says=("over", "rows", "in", "within", "there are only", "rows left", "across", "along",
                                          "rows available"),
              default=Default("=length * row_tension", "The length at the row tension", derived=True,
                              given=("length", "row_tension")),
              ask="Over how many rows?", example="96 rows", sane="2 row..5000 row",
              practice="40 row..120 row by 2 row"),
        Input("length", "length of the shaping", LENGTH, says=("over", "in", "seam", "along", "within", "sleeve length",
                                                               "underarm to cuff", "sleeve seam", "sleeve of", "sleeve is", "side of",
                                                               "seam of", "edge of"), extra=True,
              sane="1 cm..3 m", spoken=True),
        replace(ROW_TENSION, extra=True),
        # "Increase" and "lose" are heard but are no number's name: in "increase 12 sts each end" the twelve are each end's.
        choice("way", "more or fewer", {
            "more": ("increase", "inc", "add", "need to add", "widen"),
            "fewer": ("decrease", "dec", "lose", "loose", "need to loose", "get rid of", "take out", "need to lose", "remove", "narrow"),
        }, default=Default("more", derived=True)),
        choice("ends", "at which ends", _ENDS, default="both", because="the usual way, one at each end of a shaping row"),
        choice("sides", "on which rows", {
            "right": ("right side rows", "right side", "rs rows", "rs", "even rows", "right-side rows only",
                      "only on right-side rows", "knit rows",
                      "rs only"),
            "any": ("any row", "right and wrong side", "wrong side too", "every row", "odd rows too", "in the round",
                    "any rows", "rounds",
                    "both right and wrong side", "ws too", "wrong side rows too", "whole rows", "whichever row"),
        }, default="right", because="shaping is easiest to see and to count on right-side rows"),
    ),
    steps=(
        Step("plan", "Write the shaping", kind=TEXT, label="shaping", says=("how often", "every how many",
                                                                            "every how many rows", "how",
                                                                            "when", "which rows", "spread", "every which row", *_APART)),
        Step("times", "Count the shaping rows", kind=COUNT, label="shaping rows", noun="row",
             says=("shaping rows", "how many times", "increase rows",
                   "decrease rows", "how many shaping rows", "how many increase rows", "how many decrease rows",
                   "times altogether", "times in all", "how many times do i increase", "how many times do i decrease",
                   "rows have an increase", "rows have a decrease", "rows with increases", "rows with decreases",
                   "times must i increase", "times must i decrease")),
        Step("last", "The row of the last shaping", kind=ROWS, label="rows used",
             says=("rows used", "last increase", "last decrease", "last shaping", "row of the last", "which row is the last",
                   "shaping finish", "shaping end",
                   *(f"{which} row {do} i make the last" for which in ("which", "what", "on which", "on what")
                     for do in ("do", "will", "must", "should")), "increases finish", "decreases finish", "finish the shaping",
                     "finish increasing",
                   "finish decreasing")),
        Step("plain_after", "Rows left to work plain after it", kind=ROWS, label="plain rows after the last shaping",
             says=("plain rows", "rows left plain", "straight rows", "rows straight", "rows after the last", "plain after the last",
                   "rows are left", "rows left over", "rows are left over", "rows remain", "rows plain", "plain at the top",
                   "plain rows are left", "rows to work straight", "rows without shaping")),
    ),
    answers=("plan", "times", "last", "plain_after"),
    headline=("Shape {plan}: {times} in all.",),
    spans=(("start", "total"),),
    algorithm=_shape,
    no_unknown=("start", "total", "change", "each_end", "rows", "length", "row_tension"),
    source=ARITHMETIC,
    cautions=(Caution("Work the shaping a stitch or two in from the edge if the edge is to be sewn up or picked up"),),
    notes=("Published plans put the longer or the shorter interval first; both are right, and the shorter comes first "
           "here.",),
    examples=(
        "I must increase from 48 to 72 stitches, one at each end, over 96 rows. How often? -> every 8th row 12 times; "
        "12 rows",
        "neck edge only, one end, dec 12 sts over 48 rows, how often -> every 4th row 12 times",
        "sleeve: inc 24 sts, one each end, in 84 rows -> every 6th row 6 times, then every 8th row 6 times; 84 rows",
        "shape a sleeve from 38 to 60 stitches over 108 rows on any row -> every 9th row 2 times, then every 10th row "
        "9 times",
    ),
    defers=("evenly spaced increases", "evenly spaced decreases"),
    related=("evenly spaced increases", "rows for a length"),
)
