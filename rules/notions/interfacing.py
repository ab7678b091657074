"""Interfacing for pieces of one size, laid out on its width."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice, flag
from ..engine.drawing import LayDrawing
from ..engine.kinds import COUNT, LENGTH
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH
from ..engine.run import Impossible, Run
from ..layplan.pieces import Piece

MOST_PIECES = 200


def _interfacing(run: Run) -> Outcome:
    """The length that the pieces take, in the shortest lay found."""
    from ..layplan.pack import lay_plan  # long, and needed only here

    count = int(run.get("number") * run.get("layers"))
    width, length, room = run.get("width"), run.get("length"), run.get("stuff")
    if count > MOST_PIECES:
        raise Impossible(f"{count} pieces are more than I lay out; give at most {MOST_PIECES}")
    lay = lay_plan([Piece("piece", count, width, length, may_turn=run.get("turn") == "yes")], room)
    if lay.misfits:
        raise Impossible(
            f"a piece {run.show(width, LENGTH)} by {run.show(length, LENGTH)} does not fit interfacing "
            f"{run.show(room, LENGTH)} wide; "
            "give a wider one, or say that the pieces may be turned"
        )
    across = sum(1 for placement in lay.placements if placement.y == 0)
    turned = ", turned" if lay.placements[0].turned else ""
    run.say(
        "Lay the pieces side by side as often as the width takes them",
        "interfacing width ÷ piece width",
        f"{across} across{turned}",
        "",
    )
    sure = "no shorter lay exists" if lay.proved else "the shortest lay found"
    run.say("Count the rows", "rows × length of a piece", f"{count} pieces", f"{run.show(lay.length, LENGTH)} ({sure})")
    return Outcome({"need": lay.length}, drawing=LayDrawing(lay, run.unit_of(LENGTH)))


INTERFACING = Rule(
    topic="interfacing",
    family="notions",
    says=("interfacing", "fusible", "interlining", "iron-on interfacing", "stabiliser", "stabilizer",
        "fusible fleece", "how much interfacing", "sew-in interfacing",
        "fusible interfacing", "interfacing wide", "wide interfacing", "interfacing from", "interfacing pieces",
        "out of interfacing", "of interfacing only", "interfacing only", "on interfacing", ),
    about="How much interfacing to buy for pieces of one size.",
    inputs=(
        Input("width", "width of a piece", LENGTH,
            says=("wide", "pieces", "panels", "by", "collar", "waistband", "facing", "cuff", "piece", "base", "bag base",
                "square"), axis="width",
            ask="How wide is a piece?", example="16 in", sane="5 mm..5 m", practice="4 in..18 in by 1 in", ),
        Input("length", "length of a piece", LENGTH,
            says=("long", "high", "tall", "deep"), axis="length",
            default=Default("=width", "a square is as long as it is wide", derived=True, when={"square": "yes"}),
            ask="How long is a piece?", example="14 in",
            sane="5 mm..20 m", practice="6 in..30 in by 1 in", ),
        flag("square", "square pieces", ("square", "squares")),
        Input("number", "number of pieces", COUNT,
            says=("pieces", "panels", "bag panels", "of them", "collars", "cuffs", "facings", "times", "bags",
                "waistbands", "squares", ), noun="piece",
            default=Default("1", derived=True), sane="1..500", practice="2..8 by 1", ),
        Input("stuff", "interfacing width", LENGTH,
            says=("interfacing", "wide", "wide interfacing", "fusible", "wide fusible", "interfacing wide",
                "out of", "on",
                "from", "width of interfacing", "fleece", "stabiliser", "interlining", "bolt", "roll", ),
            ask="How wide is the interfacing?", example="20 in", sane="5 cm..4 m", practice="20 in..36 in by 4 in", ),
        Input("layers", "layers", COUNT,
            says=("layers", "layer", "thicknesses"), noun="layer",
            default=Default("1", "a single layer"), sane="1..5", ),
        choice("turn", "pieces turned", {"yes": ("turned", "may be turned", "can be turned", "either way", "turn",
                    "any direction"), "no": ("not turned", "cannot be turned", "can't be turned", "one way",
                    "with the grain", "on the grain", "no turning", "not to be turned", "never turned", "may not be turned",
                    "must not be turned", "without turning", "unturned", "not be turned", ), },
            default="yes", because="interfacing may be turned, unless it stretches one way", ),
    ),
    steps=(
        Step("need", "The length that the pieces take", rounding=BUY_CLOTH, label="interfacing to buy",
            says=("how much", "interfacing", "how much interfacing", "how long", "length", "yardage", "fabric",
                "how many yards", "how many metres", "buy", ), ),
    ),
    answers=("need",),
    headline=("Buy {need} of interfacing.",),
    sizes=(("width", "length"),),
    source=COMMON_PRACTICE,
    algorithm=_interfacing,
    no_unknown=("width", "length", "number", "stuff", "layers"),
    cautions=(Caution("Test it on a scrap of the cloth first"),),
    examples=(
        "2 bag panels 16 x 14 in out of interfacing 20 in wide, they can be turned, how much -> 7/8 yd",
        "interfacing 90 cm wide for 4 pieces 40 x 30 cm -> 0.6 m",
        "fusible 36 in wide for 6 collars 18 x 4 in -> 3/8 yd",
    ),
    related=("tote", "placket"),
)
