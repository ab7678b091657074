"""Girth to diameter, and vertical measures as a share of height beside published figures."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, GEOMETRY, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import CHOICE, LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import PERCENT_TENTH, RADIUS
from ..engine.run import Needs, Run
from ..engine.text import decimal

ROUND_TO_DIAMETER = Rule(
    topic="round to diameter",
    family="fit",
    says=(
        "diameter of a circle",
        "what girth",
        "girth",
        "round to diameter",
        "diameter",
        "neck hole",
        "diameter from circumference",
        "circle for",
        "girth to diameter",
        "how wide a circle",
        "headhole",
        "head hole",
        "neck of",
        "head of",
        "neckhole",
        "circle around",
        "how far across",
        "how wide across",
        "circle round",
        "around how wide across",
        "circle's edge",
        "head through",
        "head to go through",
        "round",
        "across",
    ),
    about="The diameter and radius of the circle that a girth makes.",
    inputs=(
        Input(
            "girth",
            "girth",
            LENGTH,
            says=(
                "round",
                "around",
                "girth",
                "circumference",
                "neck",
                "wrist",
                "head",
                "ankle",
                "waist",
                "arm",
                "finger",
                "all round",
                "circle's edge",
                "head through",
                "measure",
            ),
            axis="girth",
            ask="How far is it round?",
            example="38 cm",
            sane="1 mm..40 m",
            practice="14 cm..110 cm by 1 cm",
        ),
    ),
    steps=(
        Step(
            "diameter",
            "Divide the girth by pi",
            "girth / pi",
            LENGTH,
            rounding=RADIUS,
            says=("diameter", "across", "how wide", "how big a circle", "diameter and radius"),
            axis="diameter",
            stated=("across", "diameter", "wide"),
        ),
        Step(
            "radius",
            "Half of the diameter",
            "diameter / 2",
            LENGTH,
            rounding=RADIUS,
            says=(
                "radius", "neck hole radius", "hole radius", "opening radius", "radius of", "the radius of", "what radius",
                "compass", "set the compass", "set my compass",
            ),
            stated=("radius",),
        ),
    ),
    answers=("diameter", "radius"),
    headline=("The circle is {diameter} across: a radius of {radius}.", "The radius is {radius}: {diameter} across."),
    source=GEOMETRY,
    cautions=(
        Caution(
            "An opening without a fastening must pass the head: measure the head too.",
            mentions=("neck", "neckline", "neckhole"),
        ),
    ),
    examples=(
        "neck 14 in round, diameter -> 4 1/2 in; 2 1/4 in",
        "what is the diameter of a circle 94.2 cm in circumference -> 30 cm; 15 cm",
        "a neck hole 12 cm across, what girth is that -> 37.7 cm",
    ),
)

ANTHROPOMETRY = (
    "BME 207 anthropometric data, table 2, University of Rhode Island, 2016 (medians, as a share of stature)"
)
CIRCULAR = "Pattern Selection and Alteration, extension circular 306, 1943 (artistic standard figure)"
# Landmark -> (whose figure, height as a share of stature, source).
SHARES: dict[str, tuple[tuple[str, float, str], ...]] = {
    "waist": (("men", 0.6265, ANTHROPOMETRY), ("women", 0.6088, ANTHROPOMETRY)),
    "seat": (("men", 0.477, ANTHROPOMETRY), ("women", 0.4586, ANTHROPOMETRY)),
    "shoulder": (("men", 0.8209, ANTHROPOMETRY), ("women", 0.8121, ANTHROPOMETRY)),
    "hip": (("women", 0.5, CIRCULAR),),
    "underarm": (("women", 0.75, CIRCULAR),),
    "knee": (("women", 0.25, CIRCULAR),),
    "head": (("women", 1 / 7.5, CIRCULAR),),  # the figure is seven and a half heads high
}


def published_shares(landmark: str, figure: str) -> tuple[tuple[str, float, str], ...]:
    """The published shares for a landmark: those of the figure, or all when it is "any"."""
    return tuple(row for row in SHARES.get(landmark, ()) if figure in ("any", row[0]))


def _beside(run: Run) -> Outcome:
    """The published share for the landmark named. Raises Needs when none was, or none is published."""
    landmark = run.maybe("landmark")
    rows = published_shares(landmark, run.get("figure")) if landmark else ()
    if not rows:
        raise Needs("")
    said = ", ".join(f"{decimal(share * 100, 2)} % for {figure}" for figure, share, _ in rows)
    run.say(f"Published for the height of the {landmark} from the floor", "", "", said)
    return Outcome({"published": said})


PROPORTION_CHECK = Rule(
    topic="proportion check",
    family="fit",
    says=(
        "proportion",
        "proportions",
        "share of height",
        "fraction of height",
        "percentage of height",
        "percent of my height",
        "of my height",
        "body proportions",
        "proportion check",
        "share of my height",
    ),
    about="A vertical measure as a share of height, beside published figures.",
    inputs=(
        Input(
            "part",
            "vertical measure",
            LENGTH,
            says=(
                "waist height",
                "how high is it",
                "how high is my waist",
                "how high up",
                "how high would",
                "how high should",
                "waist be",
                "knee be",
                "hip be",
                "how far up",
                "up from the floor",
                "from the floor",
                "floor",
                "waist",
                "hip",
                "knee",
                "leg",
                "shoulder",
                "underarm",
                "is at",
                "height of the waist",
                "torso",
                "inside leg",
                "waist is",
                "seat",
                "crotch",
                "head",
            ),
            axis="length",
            ask="What is the vertical measure?",
            example="100 cm",
            sane="1 cm..230 cm",
            practice="40 cm..140 cm by 1 cm",
        ),
        Input(
            "height",
            "height",
            LENGTH,
            says=("height", "tall", "i am", "stature", "i'm", "total height", "high", "my height"),
            axis="height",
            ask="What is the whole height?",
            example="165 cm",
            sane="30 cm..230 cm",
            practice="150 cm..185 cm by 1 cm",
        ),
        Input(
            "landmark",
            "landmark",
            CHOICE,
            extra=True,
            options={
                "waist": ("waist", "waistline"),
                "seat": ("seat", "buttocks", "bottom"),
                "shoulder": ("shoulder", "mid shoulder"),
                "hip": ("hip", "hip line"),
                "underarm": ("underarm", "armpit"),
                "knee": ("knee",),
                "head": ("head",),
            },
        ),
        choice(
            "figure",
            "figure",
            {
                "any": (),
                "women": ("woman", "women", "female", "she", "her"),
                "men": ("man", "men", "male", "he", "his"),
            },
            default=(Default("any", derived=True),),
        ),
    ),
    steps=(
        Step(
            "share",
            "Divide the measure by the height",
            "part / height",
            PERCENT,
            rounding=PERCENT_TENTH,
            label="share of height",
            says=("share", "percentage", "percent", "proportion", "fraction", "what part"),
            stated=("of the height", "of my height", "of height", "share of height"),
        ),
        Step(
            "published",
            "What is published",
            kind=TEXT,
            label="published",
            says=("published", "average", "usual", "standard"),
        ),
    ),
    answers=("share", "published"),
    headline=("That is {share} of the height.",),
    algorithm=_beside,
    refusals=(
        Refusal(
            "part > height",
            "a measure of the body is never longer than the whole height: see that the two are not changed round. Such as: "
            "waist 100 cm from the floor, 165 cm tall",
        ),
    ),
    source=f"{ARITHMETIC}; published shares: {ANTHROPOMETRY}; {CIRCULAR}",
    examples=(
        "my waist is 100 cm from the floor and I am 165 cm tall, what proportion of my height is that -> 60.6 %",
        "proportion of height: knee 18 in from the floor, height 66 in -> 27.3 %",
        "body proportions: hip line at 82 cm for a woman 164 cm tall -> 50 %",
    ),
)
