"""A length in equal parts or cut into pieces; a length made larger or smaller; percentages of a measure."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Input, Rule, Step, choice
from ..engine.kinds import ANY, COUNT, LENGTH, PERCENT, RATIO, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.rounding import COUNT_DOWN, FINE, PERCENT_TENTH
from ..engine.run import Impossible, Needs, Run
from ..engine.text import shown
from ..engine.units import same_kind

MOST_MARKS = 40  # more marks than this are not listed one by one


def _marks(run: Run) -> Outcome:
    """Where to mark the equal parts, measured from one end. Raises Needs when no number of parts is given."""
    parts, total = int(run.get("parts")), run.get("total")
    if parts > MOST_MARKS or parts < 2:
        raise Needs("")
    unit = "in" if run.system == "in" else "cm"
    marks = ", ".join(shown(total * number / parts, unit).removesuffix(f" {unit}") for number in range(1, parts))
    run.say("Mark from one end, adding a part each time", "", "", f"{marks} {unit}")
    return Outcome({"marks": f"{marks} {unit}"})


DIVIDE = Rule(
    topic="divide",
    family="measures",
    says=("divide", "equal parts", "divided into", "split", "split into", "equal lengths", "cut into", "equal pieces", "left over", "pieces from", "how many pieces", "leftover",
          "equal sections", "evenly into", "into equal", "equally", "whats left over", "what's left", "lengths from", "pieces out of", "cut up",
          "mark off", "pieces can i cut"),
    about="A length in equal parts, with the marks; or how many pieces it gives and what is left.",
    inputs=(
        Input("total", "whole length", LENGTH,
              says=("length", "whole", "from", "have", "total", "ribbon", "roll", "cord", "tape", "strip", "elastic", "lace"),
              ask="How long is the whole?", example="4 m", sane="1 mm..100 km", practice="1 m..10 m by 10 cm"),
        Input("parts", "parts", COUNT,
              says=("parts", "equal parts", "pieces", "sections", "equal pieces", "into", "equal", "ways", "lengths", "spaces", "people", "bits"),
              noun="part", ask="Into how many parts (or pieces of what length)?", example="6 parts", sane="1..100000", practice="2..12"),
        Input("piece", "piece length", LENGTH,
              says=("pieces", "each", "piece", "lengths", "long pieces", "pieces of", "piece length", "bits", "every", "long each", "strips", "long"),
              ask="How long is each piece?", example="35 cm", extra=True, sane="0.1 mm..10 km", practice="5 cm..40 cm by 5 cm"),
    ),
    steps=(
        Step("each", "Divide the whole length by the parts", "total / parts", LENGTH, rounding=FINE, label="each part",
             says=("each part", "each", "how long", "how wide", "how big", "each piece")),
        Step("marks", "Where to mark", kind=TEXT, label="marks", says=("marks", "where do i mark", "where to mark", "mark", "where", "where do i stitch", "where do i sew", "where do i cut")),
        Step("pieces", "Divide by the length of a piece, and take whole pieces", "total / piece", COUNT, rounding=COUNT_DOWN, noun="piece",
             says=("how many pieces", "how many", "number of pieces", "how many lengths")),
        Step("left", "Take the pieces from the whole", "total - rounded(pieces) * piece", LENGTH, rounding=FINE, label="left over",
             says=("left over", "leftover", "remainder", "left", "waste", "spare")),
    ),
    answers=("each", "marks", "pieces", "left"),
    headline=("Each part is {each}; mark at {marks}.", "Each part is {each}.", "It gives {pieces}, with {left} left over.", "{left} is left over."),
    algorithm=_marks,
    source=ARITHMETIC,
    notes=("No loss in cutting is counted.",),
    examples=(
        "4 metres of ribbon, 35cm pieces, how many and whats left over -> 11 pieces; 15 cm",
        "divide 45 cm into 6 equal parts -> 7.5 cm; 7.5, 15, 22.5, 30, 37.5 cm",
        "cut 3 yd of tape into pieces 8 in long, how many pieces -> 13 pieces; 4 in",
    ),
)  # fmt: skip

SCALE = Rule(
    topic="scale",
    family="measures",
    says=("scale", "scaled", "enlarge", "enlarged", "blow up", "photocopy", "copier", "scale factor", "scale up", "scale down", "enlargement", "resize",
          "shrink to", "print at", "printed at", "reduce to", "times the size"),
    about="A length made larger or smaller by a factor or a percentage (150 % is half as large again).",
    inputs=(
        Input("amount", "length", LENGTH, says=("length", "from", "of", "original", "is"), ask="Which length?", example="12 in", sane="0.1 mm..10 km",
              practice="2 in..30 in by 1/2 in"),
        Input("factor", "factor", RATIO, says=("by", "to", "times", "at", "percent", "factor", "scale", "percentage", "scale factor", "enlarge by"),
              ask="By what factor or percentage?", example="150 %", sane="0.001..1000", practice="0.5..2"),
    ),
    steps=(
        Step("scaled", "Multiply the length by the factor", "amount * factor", LENGTH, rounding=FINE, label="scaled length",
             says=("how long", "how big", "new length", "scaled"), axis="length", stated=("to", "becomes", "comes out", "finish", "want")),
        Step("percent", "The factor as a percentage", "factor", PERCENT, rounding=PERCENT_TENTH, label="as a percentage", says=("percentage", "percent")),
    ),
    answers=("scaled", "percent"),
    headline=("Scaled, it is {scaled}.",),
    source=ARITHMETIC,
    cautions=(Caution("This makes it smaller: for one part in ten larger, type 110 %.", when="factor < 1", mentions=("enlarge", "enlargement", "up", "enlarged")),),
    examples=(
        "scale 12 1/2 in by 150% -> 18 3/4 in",
        "enlarge 8 cm to 120 % -> 9.6 cm",
        "photocopy at 125%: a 6 cm piece becomes? -> 7.5 cm",
    ),
)  # fmt: skip


def _percent_of(run: Run) -> Outcome:
    """The percentage of a measure, the measure less it, or the measure and it besides."""
    given = run.given("amount")
    share, how = run.get("percent"), run.get("how")
    part = given.value * share
    whole = {"of": part, "off": given.value - part, "more": given.value + part}[how]
    unit = run.request.unit if run.request.unit and same_kind(run.request.unit, given.unit) else given.unit
    run.say("Divide the percentage by 100 and multiply", "amount × percentage ÷ 100", f"{given.text} × {shown(share, '%')}", shown(part, unit))
    if how != "of":
        run.say("Take it off" if how == "off" else "Add it", "", f"{given.text} {'−' if how == 'off' else '+'} {shown(part, unit)}", shown(whole, unit))
    return Outcome({"result": Amount(whole, unit), "part": Amount(part, unit)})


PERCENTAGE = Rule(
    topic="percentage",
    family="measures",
    says=("percent of", "percentage of", "per cent of", "percent off", "percent more", "percent less", "add percent", "percentage", "% of", "bigger by",
          "smaller by", "increase", "decrease", "plus percent", "minus percent", "increase by", "decrease by", "percent"),
    about="A percentage of any measure, or the measure with it taken off or added.",
    inputs=(
        Input("amount", "amount", ANY, says=("of", "off", "to", "from"), ask="Of what?", example="3.2 m"),
        Input("percent", "percentage", PERCENT, says=("percent", "percentage", "by", "plus", "less", "more"), ask="What percentage?", example="15 %",
              sane="0 %..1000 %", practice="5 %..50 % by 5 %"),
        choice("how", "what to do with it", {
            "of": ("of",),
            "off": ("off", "less", "take off", "minus", "reduce by", "reduced by", "smaller", "shorter", "decrease by", "decrease", "knock off"),
            "more": ("more", "plus", "add", "added", "bigger", "larger", "longer", "increase by", "extra", "on top", "increase"),
        }, default="of", because="the percentage of it, unless off or more is said"),
    ),
    steps=(
        Step("result", "The percentage", kind=ANY, label="result"),
        Step("part", "The percentage by itself", kind=ANY, label="the percentage of it"),
    ),
    answers=("result", "part"),
    headline=("{result}.",),
    algorithm=_percent_of,
    no_unknown=("amount", "percent"),
    source=ARITHMETIC,
    examples=(
        "decrease 3.2 m by 15 percent -> 2.72 m; 0.48 m",
        "percentage: 20% off 45 cm -> 36 cm; 9 cm",
        "increase 80 cm by 10% -> 88 cm",
    ),
)  # fmt: skip


def _share(run: Run) -> Outcome:
    """One measure as a percentage of another. Raises Impossible for two of different kinds."""
    part, whole = run.given("part"), run.given("whole")
    if not whole.value or not same_kind(part.unit, whole.unit):
        raise Impossible(f"{part.text} is no part of {whole.text}: they must be measures of one kind. Such as: what percentage of 80 cm is 12 cm")
    share = part.value / whole.value
    run.say("Divide the part by the whole", "part ÷ whole", f"{part.text} ÷ {whole.text}", shown(share, "%"))
    return Outcome({"share": share})


PERCENTAGE_OF_WHOLE = Rule(
    topic="what percentage",
    family="measures",
    says=("what percentage", "what percent", "as a percentage", "as a percentage of", "as a percent of", "what share", "percentage is", "percent is", "what per cent"),
    about="One measure as a percentage of another.",
    inputs=(
        Input("part", "part", ANY, says=("is", "part", "used", "out of"), ask="What is the part?", example="12 cm"),
        Input("whole", "whole", ANY, says=("of", "out of", "whole", "total", "from"), ask="Of what whole?", example="80 cm"),
    ),
    steps=(Step("share", "The part as a percentage of the whole", kind=PERCENT, rounding=PERCENT_TENTH, label="percentage", says=("percentage", "percent")),),
    answers=("share",),
    headline=("It is {share}.",),
    algorithm=_share,
    no_unknown=("part", "whole"),
    source=ARITHMETIC,
    examples=(
        "what percentage of 80 cm is 12 cm -> 15 %",
        "12 in is what percent of 1 yd -> 33.3 %",
        "what percentage is 35 of 140 -> 25 %",
    ),
)  # fmt: skip
