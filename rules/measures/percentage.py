"""Percentages of a measure, and one measure as a percentage of another."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from ..engine.declare import ARITHMETIC, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import ANY, PERCENT
from ..engine.outcome import Outcome
from ..engine.request import Amount, Given
from ..engine.rounding import PERCENT_TENTH
from ..engine.run import Impossible, Run
from ..engine.text import shown
from ..engine.units import factor, same_kind


def _percent_of(run: Run) -> Outcome:
    """The percentage of a measure, the measure less it, or the measure and it besides; or the measure there was before."""
    given = run.given("amount")
    share, how = run.get("percent"), run.get("how")
    told = run.given("percent").text
    if share > 1 and told.replace(" ", "").replace("/", "").replace(".", "").isdigit():
        raise Impossible(f"I cannot take {told} for a percentage. Type it with its sign, such as: {told}% of {given.text}; or ask: what "
                         f"percentage of {given.text} is {told}")
    if run.get("back") == "yes":
        return _before(run, given, share, how)
    part = given.value * share
    whole = {"of": part, "off": given.value - part, "more": given.value + part}[how]
    unit = run.request.unit if run.request.unit and same_kind(run.request.unit, given.unit) else given.unit
    run.say(
        "Divide the percentage by 100 and multiply",
        "amount × percentage ÷ 100",
        f"{given.text} × {shown(share, '%')}",
        shown(part, unit),
    )
    if how != "of":
        run.say(
            "Take it off" if how == "off" else "Add it",
            "",
            f"{given.text} {'−' if how == 'off' else '+'} {shown(part, unit)}",
            shown(whole, unit),
        )
    return Outcome({"result": Amount(whole, unit), "part": Amount(part, unit)})


def _before(run: Run, given: Given, share: Fraction, how: str) -> Outcome:
    """The measure that the percentage was taken of, from what came of it. Raises Impossible where nothing was left."""
    left = {"of": share, "off": 1 - share, "more": 1 + share}[how]
    if left <= 0:
        raise Impossible(f"with {shown(share, '%')} of it nothing would be left to tell it by. Such as: 20% off 45 cm")
    whole = given.value / left
    unit = run.request.unit if run.request.unit and same_kind(run.request.unit, given.unit) else given.unit
    run.say(
        f"What is told is {shown(left, '%')} of it: divide by that and multiply by 100",
        "amount ÷ percentage × 100",
        f"{given.text} ÷ {shown(left, '%')}",
        shown(whole, unit),
    )
    return Outcome({"result": Amount(whole, unit), "part": Amount(whole * share, unit)})


PERCENTAGE = Rule(
    topic="percentage",
    family="measures",
    says=(
        "percent of", "percentage of", "per cent of", "percent off", "percent more", "percent less", "add percent",
        "percentage", "% of", "bigger by", "smaller by", "increase", "decrease", "plus percent", "minus percent", "increase by",
        "decrease by", "knock", "so what do i pay", "what do i pay then", "pay after", "percent", "percent of my", "percent of the",
    ),
    about="A percentage of any measure, or the measure with it taken off or added.",
    inputs=(
        Input("amount", "amount", ANY, says=("of", "off", "to", "from"), ask="Of what?", example="3.2 m"),
        Input(
            "percent",
            "percentage",
            PERCENT,
            says=("percent", "percentage", "by", "plus", "less", "more"),
            ask="What percentage?",
            example="15 %",
            sane="0 %..1000 %",
            practice="5 %..50 % by 5 %",
        ),
        choice(
            "how",
            "what to do with it",
            {
                "of": ("of",),
                "off": (
                    "off", "less", "take off", "minus", "reduce by", "reduced by", "smaller", "shorter", "decrease by",
                    "decrease", "knock off",
                ),
                "more": (
                    "more", "plus", "add", "added", "bigger", "larger", "longer", "increase by", "extra", "on top", "increase",
                ),
            },
            default="of",
            because="the percentage of it, unless off or more is said",
        ),
        # What it came to is told, and what it was before is asked: the way back divides.
        flag(
            "back",
            "what it was before is wanted",
            (
                "what was it originally", "what was it to start with", "what was it at first", "what did it start at",
                "what did it cost before", "what was the original", "what was the price before",
                "what was the whole", "what is the whole", "how much is the whole", "how much have i", "how much had i",
                "how much did i have", "how much is all of it", "i've done", "i have done", "done so far", "which is only",
            ),
        ),
    ),
    steps=(
        Step("result", "The percentage", kind=ANY, label="result"),
        Step(
            "part",
            "The percentage by itself",
            kind=ANY,
            label="the percentage of it",
            says=("how much extra", "how much is added", "how much is taken off", "how much do i lose", "how much is lost",
                "comes off", "how much less"),
        ),
    ),
    answers=("result", "part"),
    tells=("any measure + percentage",),
    headline=("{result}.",),
    algorithm=_percent_of,
    no_unknown=("amount", "percent"),
    source=ARITHMETIC,
    examples=(
        "decrease 3.2 m by 15 percent -> 2.72 m; 0.48 m", "percentage: 20% off 45 cm -> 36 cm; 9 cm",
        "increase 80 cm by 10% -> 88 cm",
    ),
)


def _alike(part: Given, whole: Given) -> tuple[Given, Given]:
    """Both in one unit: a bare number beside a measure is so many of that measure's unit ("63 than 60 cm")."""
    if part.unit in ("", "1") and whole.unit not in ("", "1"):
        part = replace(part, value=part.value * factor(whole.unit), unit=whole.unit)
    elif whole.unit in ("", "1") and part.unit not in ("", "1"):
        whole = replace(whole, value=whole.value * factor(part.unit), unit=part.unit)
    return part, whole


def _share(run: Run) -> Outcome:
    """One measure as a percentage of another. Raises Impossible for two of different kinds."""
    part, whole = _alike(run.given("part"), run.given("whole"))
    if run.get("left") == "yes" and part.value > whole.value:
        part, whole = whole, part  # no more is left, or used, than there was
    if not whole.value or not same_kind(part.unit, whole.unit):
        raise Impossible(
            f"{part.text} is no part of {whole.text}: they must be measures of one kind. Such as: what "
            f"percentage of 80 cm is 12 cm"
        )
    share = part.value / whole.value
    run.say("Divide the part by the whole", "part ÷ whole", f"{part.text} ÷ {whole.text}", shown(share, "%"))
    if run.get("left") == "yes" and run.get("spent") == "yes":
        share = 1 - share
        run.say("What is left is the rest of the whole, 100 %", "", "", shown(share, "%"))
    if run.get("how") == "difference":
        share = share - 1
        run.say("Take away the whole, 100 %", "", "", shown(share, "%"))
    return Outcome({"share": share})


PERCENTAGE_OF_WHOLE = Rule(
    topic="what percentage",
    family="measures",
    says=(
        "what percentage", "what percent", "as a percentage", "as percent", "as percentage", "in percent", "as a percentage of",
        "as a percent of", "what share", "percentage is", "percent is", "what per cent", "how many percent",
        "how many per cent", "percentage by which", "percent by which", "per cent by which", "out of",
        *(f"{what} {per}{of}" for per in ("percent", "percentage", "per cent") for what, of in (("is what", " of"), ("what", " of"),
        ("are what", " of"))),
    ),
    about="One measure as a percentage of another.",
    inputs=(
        Input("part", "part", ANY, says=("is", "part", "used", "out of"), ask="What is the part?", example="12 cm"),
        Input(
            "whole",
            "whole",
            ANY,
            says=("of", "out of", "whole", "total", "from", "than", "was"),
            ask="Of what whole?",
            example="80 cm",
        ),
        choice(
            "how",
            "how",
            {
                "share": ("share of",),
                "difference": (
                    "bigger", "larger", "longer than", "more than", "smaller", "shorter", "less than", "wider", "narrower",
                    "shrank", "shrunk", "grew", "grown", "lost", "gained", "lose", "gain", "exceed", "exceeds", "by which",
                    "went up", "gone up", "went down", "gone down", "dropped", "rose", "up by", "down by", "how much dearer",
                    "how much cheaper", "fewer", "did i save", "saved", "saving",
                ),
            },
            default=(Default("share", derived=True),),
        ),
        # Of what was used the rest is left; of what is left, nothing is to be taken away.
        flag("left", "what is left is wanted", ("percent is left", "per cent is left", "percentage is left", "percent left",
        "per cent left", "percent did i waste", "per cent did i waste", "percent is wasted", "per cent is wasted", "percent was wasted",
             "percentage left", "percent remains", "percent do i have left", "percent have i left")),
        flag("spent", "the part is what was used", ("used", "i used", "cut off", "spent", "gone", "sold", "done", "made", "finished",
            "sewn", "are done", "cut away", "used up")),
    ),
    steps=(
        Step(
            "share",
            "The part as a percentage of the whole",
            kind=PERCENT,
            rounding=PERCENT_TENTH,
            label="percentage",
            says=("percentage", "percent"),
        ),
    ),
    answers=("share",),
    spans=(("whole", "part"),),
    headline=("It is {share}.",),
    algorithm=_share,
    no_unknown=("part", "whole"),
    source=ARITHMETIC,
    examples=(
        "what percentage of 80 cm is 12 cm -> 15 %", "12 in is what percent of 1 yd -> 33.3 %",
        "what percentage is 35 of 140 -> 25 %", "what percentage bigger is 110 cm than 100 cm -> 10 %",
    ),
)
