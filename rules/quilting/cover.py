"""What a number of equal patches covers."""

from __future__ import annotations

import math

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step
from ..engine.kinds import AREA, COUNT, LENGTH
from ..engine.outcome import Outcome
from ..engine.rounding import CUT
from ..engine.run import Impossible, Run
from .words import SEAM

# A layout of all the patches is taken while it is no longer than this many times its width; else some are left over.
LONGEST_SHAPE = 2


def squarest(count: int) -> tuple[int, int]:
    """The layout nearest to a square, (across, down): of every patch, or of nearly all when all make but a long strip.

    >>> squarest(80), squarest(37)
    ((8, 10), (6, 6))
    """
    across = next(side for side in range(math.isqrt(count), 0, -1) if count % side == 0)
    if count // across <= LONGEST_SHAPE * across or count < 4:
        return across, count // across
    side = math.isqrt(count)
    return side, count // side


def _layout(run: Run) -> Outcome:
    """The layout named, or else the squarest, said step by step."""
    from fractions import Fraction

    count, finished = int(run.get("count")), run.get("finished")
    laid = "laid_across" in run.request.given
    across, down = (int(run.get("laid_across")), int(run.get("laid_down"))) if laid else squarest(count)
    left = count - across * down
    if left < 0:
        raise Impossible(f"{across} by {down} takes {across * down} patches, more than there are. Type another layout, or more patches.")
    run.say("The layout named" if laid else "The squarest layout", "", f"{count} patches",
    f"{across} across and {down} down" + (f", {left} left over" if left else ""))
    values = {"across": Fraction(across), "down": Fraction(down), "width": across * finished,
        "length": down * finished, "left": Fraction(left)}
    return Outcome(values)


COVER_FROM_PIECES = Rule(
    topic="cover from pieces",
    family="quilting",
    says=("how wide and how long", "square inches will they cover", "inches will they cover", "will they cover", "they cover",
          "do they make", "they make",
          "as square as possible", "square as possible", "near square", "nearest to square", "across and down", "squarest",
             "squares laid", "patches laid", "laid out", "i laid", "laid as", "lay them", "as square as i can", "as square as can be",
          "how big a top", "top does that make", "area covered", "covered by", "squares laid",
          "patches across", "patches down", "quilt size", "patches in a quilt",
          "how big a quilt", "how large a quilt", "what will they cover", "finished area", "quilt from squares",
          "quilt from", "squares make", "patches make", "charm squares", "square bundle",
          "what size quilt", "how big quilt", "how large quilt", "quilt goes from", "make from", "inch squares",
              "inches covered", "inches does it cover", "inches do they cover", "area do they cover", "squares cover", "patches cover",
                "pieces cover", "cover once sewn"),
    about="What a number of equal squares covers once sewn, and the squarest way to lay them.",
    inputs=(
        Input("count", "number of patches", COUNT, says=("squares", "patches", "pieces", "square", "patch",
              "of them", "charms", "charm squares"), noun="patch", ask="How many patches are there?", example="42",
              sane="1..50000", practice="20..200 by 2"),
        Input("cut", "cut size of a patch", LENGTH, says=("squares", "square", "patches", "patch", "cut", "pieces",
              "charms", "cut size"), default=Default("=sewn + 2 * seam",
              "The cut size is the finished size and two seams", derived=True, given=("sewn",)), ask="What size are the patches cut?",
              example="5 in", sane="1 cm..2 m",
              practice="2 1/2 in..10 in by 1/2 in"),
        Input("sewn", "finished size of a patch", LENGTH, says=("finish", "finished", "finish at", "finished size",
              "once sewn", "when sewn", "sewn in"), extra=True, ask="What size do the patches finish?", example="4 1/2 in",
              sane="5 mm..2 m"),
        *(Input(f"laid_{way}", f"patches laid {way}", COUNT, says=("laid", "laid out", "arranged", "set out", "in a grid", "sewn in",
                "set"), extra=True, spoken=True, ask=f"How many lie {way}?", example="6", sane="1..500")
          for way in ("across", "down")),
        SEAM,
    ),
    steps=(
        Step("finished", "Each loses a seam on both sides", "cut - 2 * seam", label="finished patch",
             says=("does each finish", "each square finish", "each finish at", "each finish", "does each of",)),
        Step("area", "All of them together", "count * finished * finished", AREA, label="finished area",
             says=("area covered", "what area", "area do they",
             "area", "finished area", "square inches", "how much area", "how much do they cover", "cover",
             "square inches will they cover", "how many square inches",
             "area in square inches", "square feet", "inches covered", "is covered", "will be covered", "do i cover"), stated=("area", )),
        Step("width", "Across", rounding=CUT, label="quilt width", axis="width", says=("how wide and how long",
             "how wide will it be", "how big a top",
             "what size do they make", "size do they make", "do they make", "how big do they come out",
             "how big", "how big quilt",
             "how large quilt", "what size",
             "how large", "how big a quilt", "how large a quilt", "what size quilt", "how wide", "quilt size",
             "size")),
        Step("length", "Down", rounding=CUT, label="quilt length", axis="length", says=("how long does it come out", "how long a quilt",
             "how long will it be", "how long is the quilt",
             "quilt length", "how long will the quilt",
             "how long", )),
        Step("across", "Across", kind=COUNT, noun="patch", label="across", says=("in a row", "in each row",
             "how many across and down", "across and down", "patches across",
             "squares across", "across",
             "how many across", )),
        Step("down", "Down", kind=COUNT, noun="patch", label="down", says=("rows down", "how many rows", "rows",
             "how many down", )),
        Step("left", "Left over", kind=COUNT, noun="patch", label="left over",
             says=("left over", "how many are left", "leftover", "how many left over", "spare squares", "squares left over",
             "squares are left", "patches are left",)),
    ),
    answers=("area", "width", "length", "across", "down", "left"),
    headline=("They make a quilt {width} by {length}, {across} across and {down} down; {left} left over.",),
    sizes=(("laid_across", "laid_down"),),
    home="in",
    source=ARITHMETIC,
    algorithm=_layout,
    refusals=(Refusal("cut <= 2 * seam",
                      "the seams would take the whole patch. Type a larger patch or a smaller seam."),),
    examples=(
        "80 ten-inch squares, 1/4 in seams, finished area in square inches -> 7220 in^2",
        "how big a quilt will 42 squares of 5 in make -> 27 in; 31 1/2 in",
        "I have 100 charm squares cut 5 in, what size quilt -> 45 in; 45 in",
    ),
    related=("strips and patches", "blocks for a size"),
)
