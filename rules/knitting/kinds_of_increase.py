"""Which increase to use: what make-one and knitting front and back each add, and where it sits."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Rule, Step, flag
from ..engine.kinds import TEXT
from ..engine.outcome import Outcome
from ..engine.run import Run

MAKE_ONE = (
    "make one (m1) lifts the strand between two stitches and knits into its back: it adds one stitch and uses none up, "
    "and hides well"
)
FRONT_AND_BACK = (
    "knitting front and back (kfb) works twice into one stitch: it uses one up and gives two, and the second lies as a "
    "small bar below the needle"
)


def _advise(run: Run) -> Outcome:
    striped = run.get("striped") == "yes"
    run.say("Compare what each takes and gives", "", "m1: 0 used, 1 made; kfb: 1 used, 2 made", "each adds one stitch")
    if striped:
        run.say("In stripes the bar of the front-and-back increase shows in the old colour")
        advice = (
            "make one (m1): in stripes the bar of knitting front and back (kfb) shows as a dash of the other colour"
        )
    else:
        advice = (
            "make one (m1) where the increase should not show, knitting front and back (kfb) in garter stitch, "
            "where its bar is lost"
        )
    return Outcome({"advice": advice, "make_one": MAKE_ONE, "front_and_back": FRONT_AND_BACK})


KINDS_OF_INCREASE = Rule(
    topic="increases by make-one and by knitting front and back",
    family="knitting",
    says=("which increase", "make one or", "m1 or kfb", "kfb or m1", "front and back", "kfb", "make one", "neater",
          "neatest increase", "increase neater",
          "knit into front and back", "what is m1", "what is kfb", "what does m1 mean", "what does kfb mean",
          "difference between m1 and kfb", "invisible increase",
          "increase shows less", "kind of increase", "best increase", "make 1", "m1", "bar increase",
          "type of increase", "lifted increase", "kfb mean", "m1 mean", "what's kfb", "what's m1", "what does make one mean",
          "kfb do", "m1 do", "make one do", "what does kfb do", "what does m1 do", "kfb work",
          "how does kfb", "what is a kfb",
          "difference between make one", "into the front and back", "knitting into the front and back",
          "make one or knit front and back", "increases to use", "way to increase", "how do i increase"),
    about="What make-one and knitting front and back each add, where they sit, and which to use in stripes.",
    inputs=(
        flag("striped", "striped", ("striped", "stripe", "stripes", "stripey", "stripy", "two colours", "colour change",
                                    "colourwork", "striping")),
    ),
    steps=(
        Step("advice", "Choose", kind=TEXT, label="increase to use", says=("which", "neater", "which increase",
                                                                           "better", "best", "neatest",
                                                                           "should i use", "use")),
        # Their labels are not the bare names: "make one or front and back?" asks which to use, not what one of them is.
        Step("make_one", "Make one", kind=TEXT, label="what make one does",
             says=("m1 mean", "what is m1", "what's m1", "m1 do", "what does m1 do", "make one mean", "what is make one")),
        Step("front_and_back", "Front and back", kind=TEXT, label="what front and back does",
             says=("kfb mean", "what is kfb", "what's kfb", "kfb do", "what does kfb do", "front and back mean")),
    ),
    answers=("advice", "make_one", "front_and_back"),
    headline=("Use {advice}.",),
    algorithm=_advise,
    source=COMMON_PRACTICE,
    examples=(
        "My sleeve is striped. Make one, or knit into front and back: which increase is neater? -> "
        "make one (m1): in stripes the bar of knitting front and back (kfb) shows as a dash of the other colour",
        "m1 or kfb in plain stocking stitch? -> "
        "make one (m1) where the increase should not show, knitting front and back (kfb) in garter stitch, where its "
        "bar is lost",
        "which increase shows least in stripes -> "
        "make one (m1): in stripes the bar of knitting front and back (kfb) shows as a dash of the other colour",
    ),
    related=("evenly spaced increases",),
)
