"""A square set on its corner in a square."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Default, Derivation, Fact, Follows, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, CUT, FINE, PATCH_CUT
from .seam_geometry import half_square_addition
from .triangles import AS_SEWN, HALF_SQUARE, TAKEN
from .words import SEAM

TRIANGLES, FLIPPED = {"method": "triangles"}, {"method": "flipped"}
UNIT = {"asked_for": "unit"}

SQUARE_IN_A_SQUARE = Rule(
    topic="square in a square",
    family="quilting",
    says=("square in a square", "square-in-a-square", "square in square", "economy block", "economy patch",
          "diamond in a square", "diamond in square", "square-in-square", "square in the square", "square inside a square",
          "square within a square", "square on point in a square"),
    about="The centre and the corner squares of a square set on point in a square.",
    inputs=(
        Input("size", "finished size", LENGTH, says=("finished", "finish", "finish at", "whole unit", "unit",
              "block", "whole block", "finished size", "come out", "ready",
              "whole thing", "whole finish", "whole square", "unit finish", "block finish"), default=(
              Default("=sqrt(2) * (centre_told - 2 * seam) + taken", derived=True, given=("centre_told",)),
              Default("=2 * (corners_told - rounded(addition)) + taken",
                    derived=True, given=("corners_told",)),
              Default("=sqrt(2) * middle_told + taken", derived=True, given=("middle_told",))),
              ask="What size does the whole unit finish?", example="6 in",
              sane="5 mm..3 m", practice="3 in..12 in by 1/2 in"),
        Input("centre_told", "centre square in hand", LENGTH, says=("centre as cut", "middle as cut", "centre square as cut",
             "is cut", "was cut", "centre is", "middle is",
              "centre is cut", "centre was cut", "middle is cut", "centre cut", "middle cut", "centre square cut",
              "centre square of", "middle square of", "centre square is", "middle square is", "cut the middle square",
              "cut the centre square", "cut the centre", "cut the middle", "cut my centre"), extra=True,
              ask="What size is the centre cut?", example="4 3/4 in", sane="8 mm..2 m", practice="2 in..9 in by 1/4 in"),
        Input("corners_told", "corner squares in hand", LENGTH, says=("corner squares are", "corners cut", "corner squares cut",
              "corner squares of", "corner triangles cut", "corners are cut"), extra=True, ask="What size are the corners cut?",
              example="3 7/8 in", sane="12 mm..2 m", practice="2 in..7 in by 1/4 in"),
        Input("middle_told", "centre square in hand, finished", LENGTH, says=("middle finish", "centre finish", "middle finishes",
              "centre finishes", "middle square finish", "centre square finish", "inner square finish"),
              extra=True, spoken=True, ask="What size does the centre finish?", example="4 1/4 in",
              sane="5 mm..2 m", practice="2 in..9 in by 1/4 in"),
        Input("count", "number of units", COUNT, says=("units", "blocks", "unit", "of them", "square in a square"),
              noun="unit", extra=True, ask="How many units do you want?", example="12", sane="1..5000",
              practice="4..40 by 2"),
        choice("method", "corners", {"triangles": ("triangles", "cut once", "corner triangles",
               "cut on the diagonal"), "flipped": ("stitch and flip", "stitched and flipped", "flip corners",
               "flipped", "flip", "snowball corners", "sew and flip")}, default=(Default("triangles",
               "no cloth is cut away"),)),
        SEAM,
        AS_SEWN,
        choice("asked_for", "worked out", {"pieces": ("the pieces to cut",), "unit": ("the finished unit",)}, default=(
            Default("unit", derived=True, given=("centre_told",)), Default("unit", derived=True, given=("corners_told",)),
            Default("unit", derived=True, given=("middle_told",)),
            Default("pieces", derived=True))),
        TAKEN,
    ),
    steps=(
        Step("whole", "The unit as it finishes", "size - taken", label="side less the seams told"),
        Step("unit_finished", "So large the whole unit finishes", "whole", rounding=FINE, label="unit, finished", when=UNIT,
             says=("whole unit", "whole thing", "unit finish", "block finish", "whole block", "does it finish", "will it finish",
             "how big", "what size", "finished size")),
        Step("centre_finished", "The centre lies on its corner: the unit's side over √2", "whole / sqrt(2)",
             rounding=CUT, label="centre, finished", says=("middle finished", "size of the middle finished", "finished size of the middle",
             "finished size of the centre", "size of the centre finished", "middle once sewn", "centre once sewn",
             "middle when sewn", "size does the middle finish",
             "centre finished", "finished centre", "centre finish", "middle finish",
             "centre square finish", "middle square finish", "finished middle"),
             stated=("middle finish", "middle square finish", "centre square finish", "middle that finishes",
             "centre that finishes",
             "centre finishes", "finished centre", "centre finish"), when=TRIANGLES),
        Step("centre", "Add a seam on both sides of the centre", "centre_finished + 2 * seam", rounding=PATCH_CUT,
             label="centre square", says=("centre", "centre square", "middle", "middle square", "inner square",
             "what size", "how big"), when=TRIANGLES),
        Step("addition", "A corner is half a square cut once: it takes seam × (2 + √2) more", HALF_SQUARE,
             rounding=PATCH_CUT, label="addition", when=TRIANGLES),
        Step("corner", "Add it to half the unit's side, and cut the square once on the diagonal",
             "whole / 2 + rounded(addition)", rounding=PATCH_CUT, label="corner squares, cut once", says=("corners be cut",
             "cut the corners", "what do i cut the corners",
             "corner",
             "corners", "corner squares", "corner triangles", "triangles"), when=TRIANGLES),
        Step("corner_squares", "Two squares, cut once each, give the four corners of a unit", "2 * count", COUNT,
             rounding=COUNT_UP, noun="square", label="corner squares", when=TRIANGLES, says=("how many squares",
             "how many corner squares")),
        Step("base", "Add a seam on both sides of the base square", "whole + 2 * seam", rounding=PATCH_CUT,
             label="base square", when=FLIPPED, says=("base", "base square", "what size", "how big", "centre")),
        Step("flip", "Four squares of half the side, with seams, are sewn across the corners and flipped",
             "whole / 2 + 2 * seam", rounding=PATCH_CUT, label="corner squares to flip", when=FLIPPED,
             says=("squares to flip", "to flip", "flip squares", "flip corners what size", "size of the squares",
             "corner squares", "corners", "corner")),
        Step("flip_squares", "Four squares for each unit", "4 * count", COUNT, rounding=COUNT_UP, noun="square",
             label="corner squares", when=FLIPPED, says=("how many squares", "how many corner squares")),
    ),
    answers=("unit_finished", "centre", "corner", "corner_squares", "base", "flip", "flip_squares"),
    headline=("The unit finishes {unit_finished}.",
          "Cut the centre {centre} square, and two squares {corner} cut once on the diagonal for the corners.",
              "Cut the base {base} square, and four squares {flip} to flip."),
    home="in",
    refusals=(Refusal("whole <= 0", "the seams would take the whole of it. Type a larger size or a smaller seam."),),
    source=GEOMETRY,
    examples=(
        "square in a square finishing 6 in, what do I cut -> 4 3/4 in; 3 7/8 in",
        "The center of my square in a square is cut 4 3/4 in, 1/4 in seams, what does the whole unit finish at -> "
        "6 in",
        "square in a square, 4 in finished, stitch and flip -> 4 1/2 in; 2 1/2 in",
    ),
    related=("half-square triangles", "setting triangles"),
    derivation=(
        Derivation(
            "centre_finished",
            (
                Fact("The centre's corners touch the middles of the sides, so a side of it is the long side of a "
                "corner triangle whose short "
                     "sides are half the unit, by Pythagoras", "centre_finished ^ 2 = (whole / 2) ^ 2 + (whole / 2) ^ 2"),
                Follows("Gather the halves", "centre_finished ^ 2 = whole ^ 2 / 2"),
                Follows("Take the square root of both", "centre_finished = whole / sqrt(2)"),
            ),
        ),
        half_square_addition(),
    ),
)
