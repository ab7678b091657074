"""Borders, butted, mitred or with corner squares."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT, PATCH_CUT
from .words import CLOTH_ASKED, HOW_BIG, HOW_LONG, LENGTH_OF_QUILT, SEAM, SQUARE, USABLE_WIDTH, WIDTH_OF_QUILT

BUTTED = "sides_first"


def _by_kind(sides_first: str, ends_first: str, mitred: str, corner_squares: str, why: tuple[str, str, str,
str]) -> tuple[Default, ...]:
    """A length that each kind of border reckons in its own way."""
    kinds = ("sides_first", "ends_first", "mitred", "corner_squares")
    formulas = (sides_first, ends_first, mitred, corner_squares)
    return tuple(Default(f"={formula}", because, derived=True, when={"kind": kind})
                 for kind, formula, because in zip(kinds, formulas, why, strict=True))  # fmt: skip


BORDERS = Rule(
    topic="borders",
    family="quilting",
    says=("border", "borders", "border strips", "butted border", "mitred border", "mitred corners", "side borders",
          "top and bottom borders", "butted", "border yardage", "fabric for borders", "mitred", "border lengths",
          "outer border strips", "butted borders", "mitred borders"),
    about="The lengths to cut for a border, the strips and cloth it takes, and the quilt's size with it on.",
    inputs=(
        replace(WIDTH_OF_QUILT, says=(*WIDTH_OF_QUILT.says, "what was the quilt", "what size was the quilt", "how wide was the quilt",
                "how big was the quilt", "how big was it before", "how wide was it before", "what was it before",
                "what size was it before", "before the border")),
        LENGTH_OF_QUILT,
        SQUARE,
        Input("border", "border width, finished", LENGTH, says=("border", "borders", "finished border",
              "wide border", "border finish", "border wide", "wide", "finish wide", "wide borders", "border strips",
              "finished borders", "how wide are the borders", "how wide is the border", "how wide was the border",
              "how wide were the borders", "width of the border", "what width is the border",
              "what width is the finished border", "what width of border", "what width border",
              "how wide a border", "what do they finish", "what does it finish", "how wide do they finish",
              "what do the strips finish"), ask="How wide does the border finish?", example="4 in", sane="5 mm..1 m",
              practice="2 in..8 in by 1 in"),
        Input("outer", "second border width, finished", LENGTH, says=("outer border", "second border", "border",
              "borders", "then a border", "outside border", "another border"), extra=True, spoken=True,
              ask="How wide does the second border finish?", example="6 in", sane="5 mm..1 m",
              practice="3 in..8 in by 1 in"),
        choice("kind", "corners", {"sides_first": ("butted", "butted border", "butted borders", "sides first",
               "straight", "overlapped", "side borders first"), "ends_first": ("top and bottom first", "ends first",
               "tops first"), "mitred": ("mitred", "mitred border", "mitred borders", "mitre", "mitred corners",
               "mitring"), "corner_squares": ("corner squares", "cornerstones", "corner blocks", "corner posts",
               "corner stones")}, default=(Default("sides_first",
               "butted, the sides sewn on first, is the usual way"),)),
        flag("is_finished", "the size is the finished one", ("finished size", "finished quilt", "finishes at",
             "once finished")),
        Input("raw", "seams to add to a finished size", LENGTH, spoken=True, default=(Default("0 in | 0 cm",
              derived=True, when={"is_finished": "no"}), Default("=2 * seam", "A finished size lacks its outer seams",
              derived=True, when={"is_finished": "yes"}))),
        Input("spare", "extra for the mitres", LENGTH, says=("spare", "to spare", "extra", "extra for the mitres",
              "for the mitres"), spoken=True, default=(Default("2 in | 5 cm",
              "enough to mitre with (sources give 1, 2, 4 or 6 in)", when={"kind": "mitred"}), Default("0 in | 0 cm",
              derived=True, when={"kind": ("sides_first", "ends_first", "corner_squares")})), sane="0 cm..1 m",
              practice="2 in..6 in by 1 in"),
        Input("side", "side border, cut length", LENGTH, says=("side border", ), spoken=True,
              default=_by_kind("length + raw", "length + raw + 2 * border", "length + raw + 2 * border + spare",
              "length + raw", ("The sides are as long as the quilt, raw edge to raw edge",
              "The sides reach over the top and bottom borders: add two border widths",
              "Add two border widths, so that the corners meet, and something to mitre with",
              "The sides are as long as the quilt"))),
        Input("end", "top and bottom border, cut length", LENGTH, says=("top border", ), spoken=True,
              default=_by_kind("width + raw + 2 * border", "width + raw", "width + raw + 2 * border + spare",
              "width + raw", ("The top and bottom reach over the sides: the quilt's width and two border widths",
              "The top and bottom are as wide as the quilt", "Add two border widths and something to mitre with",
              "The top and bottom are as wide as the quilt: the corner squares do the rest"))),
        SEAM,
        USABLE_WIDTH,
    ),
    steps=(
        Step("sides", "Cut two for the sides", "side", rounding=CUT, label="sides, two of", says=("sides",
             "side borders", "side strips", "how long the sides", "each of the side borders", "side", "cut the sides",
             "lengths", "how long do i cut the strips", "how long must i cut the strips", "how long to cut the strips",
             "how long do i cut the borders", "cut lengths", "how long are the strips", "how long the strips",
             "strip lengths", "length of the strips",
             "length of strips", "how long are the borders", "length of each")),
        Step("ends", "Cut two for the top and bottom", "end", rounding=CUT, label="top and bottom, two of",
             says=("top and bottom", "top and bottom length",
             "top and bottom strips", "top and bottom borders", "ends", "tops", "top strips",
             "top and bottom border", "above and below", "strips above and below", "borders above and below")),
        Step("cut_width", "Add a seam on each side of the border", "border + 2 * seam", rounding=PATCH_CUT,
             label="cut width of the strips", says=("cut width", "how wide to cut", "strip width",
             "width of the strips", "cut the strips", "wide to cut the strips", "how wide do i cut",
             "how wide to cut the strips", "how wide should i cut", "how wide must i cut", "what width do i cut",
             "how wide do i cut the strips", "how wide do i cut border strips"), stated=("were cut", "was cut", "strips cut",
             "strips were cut", "border strips were cut", "border was cut", "wide")),
        Step("corner", "The corner squares are as wide as the strips", "border + 2 * seam", rounding=PATCH_CUT,
             label="corner squares, four of", when={"kind": "corner_squares"}, says=("corner squares", "cornerstones",
             "corner square")),
        Step("new_width", "The quilt's width, and a border on each side, raw edge to raw edge",
             "width + raw + 2 * border", rounding=CUT, label="new quilt width", says=("new size",
             "size with the border", "how big with", "end up", "new width", "size after", "how big", "how wide",
             "what size", "size once", "how big once", "how big after", "finished size", "quilt size", *HOW_BIG),
             stated=("wide", "with the border on", "with the border on it is",
             "with the borders on", "with it on")),
        Step("new_length", "The same for its length", "length + raw + 2 * border", rounding=CUT,
             label="new quilt length", says=("new length", *HOW_LONG)),
        Step("run_of_border", "All four end to end", "2 * side + 2 * end", rounding=CUT, label="length in all",
             says=("length in all", "total length", "running length")),
        Step("strips", "Strips across the cloth, joined end to end", "run_of_border / usable", COUNT,
             rounding=COUNT_UP, noun="strip", label="strips", says=("how many strips", "strips", "number of strips",
             "border strips", "how many border strips"), stated=("have", "strips")),
        Step("cloth", "Each strip takes its width of cloth", "rounded(strips) * (border + 2 * seam)",
             rounding=BUY_CLOTH, label="cloth for the border", says=(*CLOTH_ASKED, "border fabric")),
        Step("second_ends",
             "The second border's sides are as long as the quilt has become; its top and bottom reach over them",
             "new_width + 2 * outer", rounding=CUT, label="second border, top and bottom", when={"kind": BUTTED}),
        Step("last_width", "And the quilt with both on", "new_width + 2 * outer", rounding=CUT,
             label="width with both borders", says=("final size", "size with both")),
        Step("last_length", "The same for its length", "new_length + 2 * outer", rounding=CUT,
             label="length with both borders"),
    ),
    answers=("sides", "ends", "cut_width", "corner", "new_width", "new_length", "strips", "cloth", "run_of_border",
             "second_ends", "last_width", "last_length"),
    headline=("Cut two sides {sides} and two, top and bottom, {ends}, {cut_width} wide: {strips}, {cloth} of "
              "cloth. The quilt is then {new_width} by {new_length}.",
              "Buy {cloth} of cloth for the border: {strips}."),
    sizes=(("width", "length"),),
    home="in",
    insists=True,
    source=COMMON_PRACTICE,
    cautions=(
        Caution("Measure the quilt through the middle, not along the edge, which stretches; cut both sides to that "
                "one length"),
    ),
    notes=("Joins are not counted in the strips: each diagonal join uses up a strip's width.", ),
    examples=(
        "quilt top 60 by 72 in raw edge to raw edge, 4 in finished border, butted, sides first, how long do I cut "
        "the top and bottom -> 68 in; 72 in; 80 in",
        "mitred border 5 in wide round a quilt 50 by 60 in, with 4 in to spare for the mitres, how long are the "
        "side borders -> 74 in; 64 in",
        "how many strips for a 4 in border on a 60 x 72 quilt -> 7 strips; 7/8 yd",
        "border 3 in with cornerstones, quilt 40 x 50 in, cut the corner squares -> 3 1/2 in; 50 in; 40 in",
    ),
    related=("quilt size", "binding strips"),
)
