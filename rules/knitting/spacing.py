"""Increases and decreases spread evenly along one row or round, as a row in words that is knitted to check it."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.run import Impossible, Run
from .row_reader import ACTIONS, knit, spaced, write_row
from .words import FLAT_OR_ROUND

ABBREVIATIONS = {
    "m1": "k5 = knit 5; m1 = make one (lift the strand before the next stitch and knit into its back).",
    "kfb": "k5 = knit 5; kfb = knit into the front and back of one stitch, making two of it.",
    "k2tog": "k5 = knit 5; k2tog = knit two together.",
}
HAVE = ("have", "on the needle", "on the needles", "on my needle", "on my needles", "got", "there are", "from",
        "stitches", "sts",
        "evenly to", "row of", "round of", "after rib", "after the rib", "after ribs", "after the ribs", "after ribbing",
        "after the ribbing", "rib", "ribbing", "ribbing is", "ribbing has", "rib is", "rib has", "cuff has", "round has",
        "down from", "start", "starting", "start with", "begin with", "now", "of",
        "in a row of", "out of", "i've", "ive", "i've got", "i have", "now have", "with", "my row has", "needle has", "across", "along",
        "over")  # fmt: skip
WANT = ("want", "wants", "need", "needs", "end up with", "to", "get to", "up to", "down to", "sts down to",
        "stitches to", "sts to", "until", "finish with", "pattern wants",
        "should be", "arrive at", "must arrive at", "come to", "go to", "body is", "body has", "end up at", "have to be",
        "have to have",
        "has to be", "reach", "come down to", "go down to", "should become", "must become", "become", "should be left",
        "are left",
        "remain", "should remain", "must be", "should have", "i should have", "must have", "increase to", "inc to", "decrease to",
        "dec to", "make it", "end with", "after it", "after the row", "after the round", "after this row",
        "need to have", "want to have", "to reach", "becomes",
        "increase evenly to", "inc evenly to", "decrease evenly to", "dec evenly to", "evenly up to", "evenly down to",
        "total", "ended up with", "ended with", "be left with", "left with", "am left with")  # fmt: skip


def _start(default: Default) -> Input:
    return Input(
        "stitches", "stitches on the needle", STITCHES, says=HAVE, default=default,
        ask="How many stitches are on the needle?", example="75 stitches", sane="2 st..5000 st",
        practice="40 st..160 st by 4 st", usual="12 st..800 st",
    )  # fmt: skip


def row_text(stitches: int, count: int, action: str, in_round: bool) -> str:
    """The row that works the action so many times, spread as evenly as whole stitches allow.

    Flat, half an interval lies at both ends (of an odd one the larger half last); in the round every interval is whole.
    """
    plain = stitches - count * ACTIONS[action][0]
    intervals = spaced(plain, count)
    if in_round:
        return write_row(intervals, action)
    split = _interval_to_split(intervals)
    intervals = spaced(plain - split, count - 1) if count > 1 else []
    return write_row([split // 2, *intervals], action, split - split // 2)


def _interval_to_split(intervals: list[int]) -> int:
    """Which size of interval goes half to each end: one that halves, else the commoner, so that both still show."""
    small, large = min(intervals), max(intervals)
    if small < 2:
        return large
    if intervals.count(small) == intervals.count(large):
        return small if small % 2 == 0 else large
    return max((small, large), key=intervals.count)


def _most(stitches: int, action: str, in_round: bool) -> int:
    """The most times an action can be worked in one row: make-one needs a stitch on both sides, k2tog needs two."""
    if action == "m1":
        return stitches if in_round else stitches - 1
    return stitches // ACTIONS[action][0]


def _work(run: Run, action: str, count: int) -> Outcome:
    stitches, in_round = int(run.get("stitches")), run.get("held") == "round"
    where = "round" if in_round else "row"
    most = _most(stitches, action, in_round)
    used, made = ACTIONS[action]
    if count > most:
        end = stitches + most * (made - used)
        raise Impossible(
            f"{action} cannot be worked {count} times in one {where} of {stitches} stitches. The nearest possible is "
            f"{most} times, which "
            f"leaves {end} stitches; work the rest in another {where}, such as: {most} in {stitches} stitches"
        )
    text = row_text(stitches, count, action, in_round)
    knitted = knit(text, stitches)
    assert knitted.shapings == count, "the row was written with another number of shapings"
    _say(run, stitches, count, action, in_round, text)
    return Outcome({"row": text, "after": Fraction(knitted.left), "times": Fraction(count), "before": Fraction(stitches)},
                   notes=(ABBREVIATIONS[action],))


def _say(run: Run, stitches: int, count: int, action: str, in_round: bool, text: str) -> None:
    used, made = ACTIONS[action]
    plain = stitches - used * count
    if used:
        run.say(f"Each {action} uses up {used} of the stitches; take them off", "stitches − used",
                f"{stitches} − {count} × {used}",
                f"{plain} plain stitches")
    low, high = plain // count, -(-plain // count)
    sizes = f"intervals of {low}" if low == high else f"intervals of {low} and of {high}"
    run.say(f"Share the plain stitches among the {count} times", "plain stitches ÷ times", f"{plain} ÷ {count}", sizes)
    if not in_round:
        run.say("Flat, put half an interval at both ends, the larger half last")
    else:
        run.say("In the round there are no ends: every interval is whole")
    run.say("Knit the row it gives and count", "stitches used; stitches left", text,
            f"{stitches} used, {stitches + count * (made - used)} left")


def _before_told(run: Run, way: str) -> None:
    """What there was before the row is asked for: the stitches told are then those after it, and must be said to be so."""
    if run.request.asked[:1] == ("before",) and not run.was_given("total"):
        raise Impossible(f"I took {int(run.get('stitches'))} for the stitches before the row. Say which are wanted after it, such as: "
                         f"{way} 8 stitches evenly to end up with 88, how many did I start with")


def _increase(run: Run) -> Outcome:
    _before_told(run, "add")
    stitches, total = run.get("stitches"), run.get("total")
    if total <= stitches:
        raise Impossible(f"{int(total)} is not more than {int(stitches)} stitches, so there is nothing to increase. "
                         f"Ask for decreases, "
                         f"such as: decrease from {int(stitches)} to {int(total)} stitches evenly" if total < stitches
                         else
                         f"there are {int(stitches)} stitches already. Give a larger number wanted, such as: increase "
                         f"from 75 to 84")
    return _work(run, run.get("method"), int(run.get("add")))


def _decrease(run: Run) -> Outcome:
    _before_told(run, "lose")
    stitches, total = run.get("stitches"), run.get("total")
    if total >= stitches or total < 1:
        raise Impossible(f"decreasing cannot bring {int(stitches)} stitches to {int(total)}. Give a smaller number "
                         f"wanted, of one or more, "
                         "such as: decrease from 96 to 84 evenly")
    return _work(run, "k2tog", int(run.get("lose")))


_ROW = ("row", "distribute", "space them", "space", "where do they go", "where do the increases go", "where do the decreases go",
        "how is it worked", "what is the row", "how do i work it", "instruction", "how", "spread", "evenly", "where",
        "how often", "every how many", "write the row",
        "spacing", "stitches between", "how many between", "stitches apart", "how far apart")

_AFTER = ("end up with", "stitches after", "stitches will i have", "stitches do i have", "stitches are left", "sts are left",
          "stitches left", "many are left", "stitches will there be", "stitches are there", "stitches then", "sts then",
          "stitches at the end", "sts at the end", "stitches afterwards", "sts afterwards", "left afterwards", "have i got now",
          *(f"many {do} {who} have {when}" for do in ("shall", "do", "will", "would", "should") for who in ("i", "we")
                             for when in ("then", "now", "after", "afterwards", "at the end", "in all", "altogether")),
          "do i have now", "will i have now", "have i now", "have i got then", "do i have then", "will i have then",
          "stitches have i", "sts have i", "stitches now", "sts now", "new total", "total stitches", "total sts", "stitches in total",
          "sts in total", "stitches altogether", "sts altogether", "on the needle then", "on the needle afterwards", "on the needle now",
          "on my needle then", "on my needle now", "on the needles now", "do i finish with", "will i finish with", "stitches in all",
          "stitches left on", "what am i left with", "am i left with", "does that make", "does it make", "will that make",
          *(f"{who} be left with" for who in ("i", "we", "will i", "will we", "many will i")), "are we left with")


def _counted(change: str, more: tuple[str, ...]) -> tuple[Step, ...]:
    """How many times the row shapes, and the stitches it starts from: asked for by name."""
    word = "increase" if change == "add" else "decrease"
    return (
        Step("times", f"One {word} for each of the stitches", kind=COUNT, label="times it is worked",
             says=(f"how many {word}s", f"number of {word}s", f"{word}s is that", f"{word}s do i need", f"{word}s will that be",
                   f"{word}s must i make", f"{word}s do i make", f"{word}s in all", f"{word}s altogether", *more)),
        Step("before", "The stitches before the row", kind=STITCHES, label="stitches before",
             says=("did i start with", "did i begin with", "were there before",
                   *(f"{had} {who} {before}" for who in ("i", "we") for had, before in (("had", "before"), ("did", "have before"),
                     ("had", "to start with"), ("had", "at first"), ("had", "at the start"), ("did", "have at first"),
                     ("did", "have at the start"), ("did", "have to start with"))))),
    )


EVENLY_SPACED_INCREASES = Rule(
    topic="evenly spaced increases",
    family="knitting",
    says=("increase evenly", "increase", "increasing", "evenly spaced increases", "spread the increases",
          "add stitches evenly", "inc evenly",
          "add evenly", "make 1", "m1", "kfb", "add stitches", "extra stitches evenly", "increase row",
          "increase round", "add", "spread evenly", "spaced evenly", "evenly", "more sts", "more stitches",
          "distribute the increases", "put in", "did i make", "after an increase row", "how many must i make", "how many do i make",
          "do the increases go", "place the increases", "go up by", "up to", "increases go", "evenly over", "evenly across",
          "evenly along", "increase it",
          "more stitches evenly"),
    about="A row in words that adds stitches as evenly as whole stitches allow, knitted to check it.",
    inputs=(
        _start(Default("=total - add", "Take the new stitches from those after the row", derived=True, given=("total", "add"))),
        Input("add", "stitches to add", STITCHES, says=("add", "increase", "inc", "more", "increase by", "adding",
                                                        "extra", "new stitches", "more sts", "more st", "plus", "additional",
                                                        "increases of", "inc by", "up by", "go up by",
                                                        "more stitches", "by", "increases", "make", "put in"),
              default=Default("=total - stitches", "Take what is on the needle from what is wanted", derived=True),
              ask="How many stitches are to be added?", example="9 stitches", sane="1 st..5000 st",
              practice="4 st..20 st by 1 st"),
        Input("total", "stitches wanted", STITCHES, says=WANT,
              default=Default("=stitches + add", "Add the new stitches to those on the needle", derived=True),
              ask="How many stitches are wanted after the row?", example="84 stitches", sane="1 st..10000 st"),
        FLAT_OR_ROUND,
        choice("method", "increase", {
            "m1": ("make one", "make ones", "make 1", "m1", "lifted", "lift the strand", "m1l", "m1r",
                   "raised increase", "bar between"),
            "kfb": ("kfb", "front and back", "knit front and back", "knitting front and back",
                    "knit into front and back",
                    "into the front and back", "inc 1", "bar increase", "kf&b", "front and the back"),
        }, default="m1", because="it adds a stitch between two and uses none up"),
    ),
    steps=(
        Step("row", "Write the row", kind=TEXT, label="row in words", says=_ROW),
        Step("after", "Count the stitches it leaves", kind=STITCHES, label="stitches after",
             says=_AFTER),
        *_counted("add", ("stitches do i add", "stitches must i add", "stitches to add", "stitches are added", "stitches do i need to add",
                          "how many to add", "how many must i make", "how many more stitches", "how many extra stitches")),
    ),
    answers=("row", "after"),
    headline=("{row}: {after}.",),
    spans=(("stitches", "total"),),
    sizes=(("stitches", "add"),),
    algorithm=_increase,
    no_unknown=("stitches", "add", "total"),
    # All three told, and one of them was meant otherwise ("1 in every 6 stitches").
    refusals=(Refusal("abs(total - stitches - add) > 0", "the stitches on the needle, those to add and those wanted do not "
                      "agree. Give two of the three, such as: increase 9 stitches evenly over 75"),),
    source=ARITHMETIC,
    cautions=(
        Caution("Knitting front and back leaves a small bar, which shows in stripes and plain work; make-one hides "
                "better",
                when="add > 0", mentions=("kfb",)),
    ),
    notes=("Some published rows divide by one more than the number of increases, so that a whole interval lies at both "
           "ends; "
           "both are even spacing.",),
    examples=(
        "I have 75 stitches and the pattern wants 84, spread the increases along the row, worked flat -> "
        "k4, m1, (k8, m1, k9, m1) 2 times, (k8, m1) 2 times, k9, m1, k8, m1, k4; 84 stitches",
        "increase 6 sts evenly across 60 sts -> k5, m1, (k10, m1) 5 times, k5; 66 stitches",
        "inc 8 evenly in the round over 96 sts -> (k12, m1) 8 times; 104 stitches",
        "increase 10 stitches evenly over 80 with kfb in the round -> (k7, kfb) 10 times; 90 stitches",
    ),
    tells=("stitches + stitches",),
    defers=("increases by make-one and by knitting front and back",),
    related=("evenly spaced decreases", "shape along rows"),
)

EVENLY_SPACED_DECREASES = Rule(
    topic="evenly spaced decreases",
    family="knitting",
    says=("decrease evenly", "decrease", "decreasing", "evenly spaced decreases", "lose stitches evenly", "lose", "stitches out of",
          "sts out of", "take away", "get rid of", "rid of", "diminish",
          "k2tog", "knit two together", "take out", "dec evenly", "spread the decreases", "decrease row", "decrease round", "lose evenly",
          "sc2tog", "reduce", "2 together", "remove", "spread evenly", "spaced evenly", "evenly", "go down from", "must go down",
          "sts down to", "stitches down to", "down to", "fewer sts", "distribute the decreases", "do the decreases go",
          "place the decreases", "decreases go", "come down from", "less stitches", "less sts", "evenly over", "evenly across",
          "evenly along", "fewer stitches"),
    about="A row in words that loses stitches as evenly as whole stitches allow, knitted to check it.",
    inputs=(
        _start(Default("=total + lose", "Add the lost stitches to those after the row", derived=True, given=("total", "lose"))),
        Input("lose", "stitches to lose", STITCHES, says=("lose", "decrease", "dec", "fewer", "less", "decrease by",
                                                          "losing", "get rid of", "rid of", "loose",
                                                          "take out", "by", "down by", "fewer sts", "fewer stitches",
                                                          "less sts", "less stitches", "minus", "dec by", "reduce by", "away",
                                                          "diminish", "decreases", "remove", "take", "to take out"),
              default=Default("=stitches - total", "Take what is wanted from what is on the needle", derived=True),
              ask="How many stitches are to be lost?", example="12 stitches", sane="1 st..5000 st",
              practice="4 st..20 st by 1 st"),
        Input("total", "stitches wanted", STITCHES, says=WANT,
              default=Default("=stitches - lose", "Take the lost stitches from those on the needle", derived=True),
              ask="How many stitches are wanted after the row?", example="84 stitches", sane="1 st..10000 st"),
        FLAT_OR_ROUND,
    ),
    steps=(
        Step("row", "Write the row", kind=TEXT, label="row in words", says=_ROW),
        Step("after", "Count the stitches it leaves", kind=STITCHES, label="stitches after",
             says=_AFTER),
        *_counted("lose", ("stitches do i lose", "stitches must i lose", "stitches to lose", "stitches are lost", "stitches have to go",
                           "stitches do i need to lose", "stitches must go", "how many to lose", "stitches to get rid of")),
    ),
    answers=("row", "after"),
    headline=("{row}: {after}.",),
    spans=(("stitches", "total"),),
    sizes=(("stitches", "lose"),),
    algorithm=_decrease,
    no_unknown=("stitches", "lose", "total"),
    # All three told, and one of them was meant otherwise ("1 in every 6 stitches").
    refusals=(Refusal("abs(stitches - lose - total) > 0", "the stitches on the needle, those to lose and those wanted do not "
                      "agree. Give two of the three, such as: decrease 12 stitches evenly over 96"),),
    source=ARITHMETIC,
    examples=(
        "Need to lose twelve sts evenly in one round. There are 96 on the needles -> (k6, k2tog) 12 times; 84 stitches",
        "decrease from 96 to 84 stitches evenly, flat -> k3, k2tog, (k6, k2tog) 11 times, k3; 84 stitches",
        "dec 10 evenly across 75 sts -> k3, k2tog, (k5, k2tog, k6, k2tog) 4 times, k5, k2tog, k3; 65 stitches",
    ),
    tells=("stitches + stitches",),
    related=("evenly spaced increases", "shape along rows"),
)
