"""A lay plan: pieces on a width of cloth, in the least length, with how near that is to the best possible."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from ..engine.answer import Table
from ..engine.declare import Caution, Input, Rule, Step, flag
from ..engine.drawing import Drawings, LayDrawing
from ..engine.formula import NoAnswer
from ..engine.kinds import LENGTH, PERCENT, PIECES, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Cut
from ..engine.rounding import BUY_CLOTH, PERCENT_TENTH
from ..engine.run import Impossible, Run
from ..engine.text import decimal, plain, plural, shown
from ..engine.units import factor
from ..layplan.pieces import Lay, Misfit, Piece
from .words import CLOTH_ASKED, CLOTH_WIDTH


def plan(run: Run) -> Outcome:
    """The lay of each cloth named, its length, its bound, the offcut and the drawing."""
    from ..layplan.offcuts import offcut

    cuts: tuple[Cut, ...] = run.get("pieces")
    if not cuts:
        raise NoAnswer("there are no pieces to lay")
    lays = {cloth: _lay(run, cloth, cuts) for cloth in dict.fromkeys(cut.cloth for cut in cuts)}
    first = next(iter(lays.values()))
    total = sum((lay.length for lay in lays.values()), Fraction(0))
    values: dict[str, Any] = {"cloth": first.length if len(lays) == 1 else total,
                              "bound": sum(lay.bound for lay in lays.values()),
                              "nearness": _nearness(lays), "used": _used(lays)}  # fmt: skip
    bought = run.round_step(run.rule.steps[0], first.length)
    left = offcut(first, bought)
    if left is not None and len(lays) == 1:
        unit = run.unit_of(LENGTH)
        values["offcut"] = f"{shown(left.opened_width, unit)} wide × {shown(left.length, unit)} long"
    drawings = tuple(LayDrawing(lay, run.unit_of(LENGTH)) for lay in lays.values())
    spare = [f"{copies} {label} more than asked for is cut through both layers" for lay in lays.values() for label,
             copies in lay.spare.items()]
    return Outcome(values, notes=(*spare, _searched(lays)), drawing=drawings[0] if len(drawings) == 1 else Drawings(drawings),
                   table=_table(run, lays))


def _lay(run: Run, cloth: str, cuts: tuple[Cut, ...]) -> Lay:
    """The lay of the pieces of one cloth, its working said. Raises Impossible, naming a piece that cannot fit."""
    from ..layplan.pack import lay_plan  # only for a lay: it is long, and every start would pay for it

    turn, width = run.get("turn") == "yes", run.get("width")
    mine = [cut for cut in cuts if cut.cloth == cloth]
    pieces = [Piece(cut.label, int(cut.count), Fraction(cut.value), Fraction(cut.length), turn,
                    cut.on_fold) for cut in mine]
    folded = run.get("folded") == "yes" or any(cut.on_fold for cut in mine)
    lay = lay_plan(pieces, width, folded=folded, one_way=run.get("one_way") == "yes")
    if lay.misfits:
        raise Impossible(" ".join(_misfit(run, misfit, turn) for misfit in lay.misfits))
    unit, long_unit = run.unit_of(LENGTH), run.step_unit(run.rule.steps[0])
    named = f"{cloth}: " if cloth else ""
    number = sum(piece.count for piece in pieces)
    area = decimal(lay.cut_area / factor("m^2"),
                   3) + " m^2" if run.system == "cm" else decimal(lay.cut_area / factor("yd^2"), 3) + " yd^2"
    run.say(f"{named}{number} {plural('piece', number)} laid {'free to turn' if turn else 'on their grain'} on "
            f"{shown(width, unit)}"
            f"{', folded in half' if folded else ''}", "shortest lay found", f"pieces of {area} in all",
            shown(lay.length, long_unit))  # fmt: skip
    run.say(f"{named}no lay can be shorter than this ({lay.bound_kind.value})", "lower bound", "", shown(lay.bound,
        long_unit))
    return lay


def _misfit(run: Run, misfit: Misfit, turn: bool) -> str:
    unit = run.unit_of(LENGTH)
    piece = misfit.piece
    hint = " unless it is turned: say it can be turned" if misfit.fits_if_turned else ""
    turned = ", however it is turned" if turn else hint
    return (f"The {piece.label}, {shown(piece.width, unit)} wide and {shown(piece.length, unit)} long, does not fit "
            f"across "
            f"{shown(misfit.room, unit)} of cloth{turned}. Take wider cloth, or join the piece.")  # fmt: skip


def _nearness(lays: dict[str, Lay]) -> str:
    gap = max(lay.gap for lay in lays.values())
    return "the best possible" if not gap else f"within {decimal(-(-gap * 1000 // 1) / 10, 1)} % of the best possible"


def _searched(lays: dict[str, Lay]) -> str:
    """How long was searched, and what that says of the lay."""
    from ..layplan.search import EFFORT_SECONDS

    budget = f"A lay is improved for up to about {EFFORT_SECONDS} {plural('second', EFFORT_SECONDS)}"
    if all(lay.proved for lay in lays.values()):
        return f"{budget}; this search ended sooner, at the best possible."
    return f"{budget}; the time ran out with this one {_nearness(lays)}, so a little shorter may exist."


def _used(lays: dict[str, Lay]) -> Fraction:
    area = sum((lay.cut_area for lay in lays.values()), Fraction(0))
    return area / sum((lay.cloth_width * lay.length for lay in lays.values()), Fraction(0))


def _table(run: Run, lays: dict[str, Lay]) -> Table | None:
    """The length of each cloth, when there are several."""
    if len(lays) < 2:
        return None
    unit = run.step_unit(run.rule.steps[0])
    lengths = {cloth or "main": run.round_step(run.rule.steps[0], lay.length) for cloth, lay in lays.items()}
    return Table((("cloth", "text"), ("length to buy", unit)), tuple((cloth, plain(length / factor(unit))) for cloth,
        length in lengths.items()),
                 tuple((cloth, shown(length, unit)) for cloth, length in lengths.items()))  # fmt: skip


LAY_PLAN = Rule(
    topic="lay plan",
    family="fabric",
    says=("lay plan", "layout", "lay", "lay out", "cutting layout", "pieces", "cut from", "cutting plan",
          "cut out of", "fit on", "fit across", "layplan",
          "pattern pieces", "marker", "lay them out", "can i cut", "to cut", "cut in one piece", "as cut",
          "cutting out", "panels", "rectangles", "cut whole", "no join", "no joins", "without joins",
          "without a join", "single piece", "as a single piece", "come out of", "shortest length", "shortest lay", "never turned",
          "may be turned", "can be turned", "no turning",
          "not turned", "without turning",
          "can't be turned", "cannot be turned", "turned", "grain kept", "keep the grain", "keeping the grain", "grain fixed",
          "skirt panels"),
    about="The shortest length of cloth that pieces (how many, how wide and how long as cut) can be laid on, and a "
          "drawing of it.",
    inputs=(
        Input("pieces", "pieces to cut", PIECES,
              ask="What are the pieces: how many of each, how wide and how long as cut?",
              example="2 fronts 30 x 70 cm and 1 back 58 x 70 cm"),
        CLOTH_WIDTH,
        flag("turn", "may be turned", ("can be turned", "may be turned", "free to turn", "either way round",
                                       "turned either way", "can turn", "any way round",
             "no grain", "with turning", "turn them", "turning allowed", "may turn", "grain doesn't matter",
             "can go either way"),
             no=("not turned", "never turned", "never turn", "no turning", "must not be turned", "can't be turned", "cannot be turned",
                 "may not be turned", "without turning", "not be turned",
                 "keep the grain", "on grain", "on the grain", "on the straight grain", "grain kept", "grain fixed",
                 "keeping the grain", "not turn", "don't turn",
                 "do not turn", "unturned")),
        flag("one_way", "one-way cloth", ("one way", "one-way print", "with nap", "has a nap", "right way up",
                                          "directional", "nap")),
        flag("folded", "folded in half", ("folded", "folded in half", "on the fold", "on fold", "double layer",
                                          "fold the fabric", "folded fabric",
             "through both layers")),
    ),
    steps=(
        Step("cloth", "The shortest lay found", rounding=BUY_CLOTH, label="cloth to buy", says=("how much", "fabric",
            "cloth", "what length", "shortest length", "length",
             "how many metres", "how many yards", "yardage", "buy", "how long", *CLOTH_ASKED)),
        Step("bound", "No lay is shorter", kind=LENGTH, label="no lay can be shorter than", unit=("yd", "m"),
             says=("lower bound", "least possible", "bound")),
        Step("nearness", "How near the best possible", kind=TEXT, label="this lay is", says=("how good",
            "best possible")),
        Step("offcut", "What is left at the end of the cloth bought", kind=TEXT, label="offcut of what is bought",
             says=("offcut", "left over",
            "leftover", "what is left")),
        Step("used", "Cloth that becomes pieces", kind=PERCENT, rounding=PERCENT_TENTH, label="share of the cloth used",
             says=("efficiency", "marker efficiency", "utilisation", "cloth is used", "of the cloth is used", "fabric is used",
                   "percent is used", "per cent is used", "percentage is used", "percentage of the cloth", "share of the cloth")),
        Step("wasted", "Cloth that becomes nothing", "1 - used", kind=PERCENT, rounding=PERCENT_TENTH, label="share of the cloth wasted",
             says=("how much is wasted", "percent is wasted", "per cent is wasted", "percentage is wasted", "is wasted", "wasted",
                   "wastage",
                   "waste", "percent waste", "per cent waste", "percentage waste", "cloth is wasted", "goes to waste")),
    ),
    answers=("cloth", "bound", "nearness", "offcut", "used"),
    headline=("Buy {cloth}: this lay is {nearness}.",),
    algorithm=plan,
    no_unknown=("pieces", "width"),
    source="search with a proof; bounds after Fekete and Schepers (2004)",
    cautions=(
        Caution("A pattern to match needs a repeat more for each piece that must meet it", mentions=("repeat",
            "check", "plaid", "stripe", "match", "matching")),
        Caution("Pieces are taken as rectangles: curved pieces may nest closer"),
    ),
    related=("pattern repeat", "cloth for a bought pattern"),
    examples=(
        "lay plan: 2 fronts 30 x 70, 1 back 58 x 70 and 2 sleeves 40 x 60 cm on 140 cm cloth -> 1.3 m",
        "I need sixteen backs for mini quilts, each 19 inches wide by 11 inches long as cut, with the print the "
        "right way up so no turning. How much "
        "42 inch fabric? -> 2 1/2 yd",
        "lay out 4 panels 50 x 40 cm on 100 cm fabric, they can be turned -> 0.8 m; the best possible",
    ),
)
