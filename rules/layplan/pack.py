"""The lay plan: pieces and a cloth in, the shortest lay found and how good it is out."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from fractions import Fraction

from rules.layplan.offcuts import offcut_last
from rules.layplan.pieces import BoundKind, Lay, Misfit, Piece
from rules.layplan.problem import make_problem, placed, ways
from rules.layplan.search import EFFORT, Search


def lay_plan(
    pieces: Sequence[Piece],
    cloth_width: Fraction | int,
    *,
    folded: bool = False,
    one_way: bool = False,
    effort: int = EFFORT,
    stop: Callable[[], bool] | None = None,
) -> Lay:
    """Lay pieces on a cloth so that they take the least length of it.

    cloth_width: usable, between the selvedges, in the pieces' unit. folded: along the grain, so that half the width is
    laid out, one outline cuts two, and pieces on the fold touch x = 0. On an open cloth a piece marked on the fold is
    laid whole. one_way: a print or nap; rectangles lie the same, the drawing's arrows tell.
    effort: search steps after the first lay (the same effort gives the same lay); stop: ends the search when it says
    so. Pieces that cannot fit come back as misfits; the lay is that of the rest.
    """
    cloth = Fraction(cloth_width)
    room = cloth / 2 if folded else cloth
    fit = tuple(piece for piece in pieces if ways(piece, room, folded))
    misfits = tuple(_misfit(piece, room, folded) for piece in pieces if not ways(piece, room, folded))
    if not fit:
        return Lay(cloth, room, folded, one_way, fit, Fraction(0), Fraction(0), BoundKind.LONGEST, (), misfits)
    problem = make_problem(fit, room, folded)
    search = Search(problem, effort, stop)
    search.run()
    length, bound = search.length * problem.unit, search.bound * problem.unit
    placements = offcut_last(placed(problem, search.spots), room, folded)
    return Lay(cloth, room, folded, one_way, fit, length, bound, search.bound_kind, placements, misfits)


def _misfit(piece: Piece, room: Fraction, folded: bool) -> Misfit:
    on_fold = folded and piece.on_fold
    could_turn = not piece.may_turn and not on_fold and piece.length <= room
    return Misfit(piece, room * 2 if on_fold else room, could_turn)
