"""A square set on its corner in a square."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Default, Derivation, Fact, Follows, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, CUT, PATCH_CUT
from .seam_geometry import half_square_addition
from .triangles import AS_SEWN, HALF_SQUARE, TAKEN
from .words import SEAM

TRIANGLES, FLIPPED = {"method": "triangles"}, {"method": "flipped"}

SQUARE_IN_A_SQUARE = Rule(
    topic="square in a square",
    family="quilting",
    says=("square in a square", "square-in-a-square", "square in square", "economy block", "economy patch",
          "diamond in a square", "diamond in square", "square-in-square", "square in the square", "square inside a square",
          "square within a square", "square on point in a square"),
    about="The centre and the corner squares of a square set on point in a square.",
    inputs=(
        Input("size", "finished size", LENGTH, says=("finished", "finish", "finish at", "whole unit", "unit",
              "block", "whole block", "finished size", "come out", "square in a square", "square-in-a-square",
              "square-in-square", "economy block", "ready",
              "square in the square"), ask="What size does the whole unit finish?", example="6 in",
              sane="5 mm..3 m", practice="3 in..12 in by 1/2 in"),
        Input("count", "number of units", COUNT, says=("units", "blocks", "unit", "of them", "square in a square"),
              noun="unit", extra=True, ask="How many units do you want?", example="12", sane="1..5000",
              practice="4..40 by 2"),
        choice("method", "corners", {"triangles": ("triangles", "cut once", "corner triangles",
               "cut on the diagonal"), "flipped": ("stitch and flip", "stitched and flipped", "flip corners",
               "flipped", "flip", "snowball corners", "sew and flip")}, default=(Default("triangles",
               "no cloth is cut away"),)),
        SEAM,
        AS_SEWN,
        TAKEN,
    ),
    steps=(
        Step("whole", "The unit as it finishes", "size - taken", label="side less the seams told"),
        Step("centre_finished", "The centre lies on its corner: the unit's side over √2", "whole / sqrt(2)",
             rounding=CUT, label="centre, finished", says=("centre finished", "finished centre"),
             stated=("centre finishes", "finished centre", "centre finish"), when=TRIANGLES),
        Step("centre", "Add a seam on both sides of the centre", "centre_finished + 2 * seam", rounding=PATCH_CUT,
             label="centre square", says=("centre", "centre square", "middle", "middle square", "inner square",
             "what size", "how big"), when=TRIANGLES, stated=("centre", "centre square", "cut", "is cut", "middle")),
        Step("addition", "A corner is half a square cut once: it takes seam × (2 + √2) more", HALF_SQUARE,
             rounding=PATCH_CUT, label="addition", when=TRIANGLES),
        Step("corner", "Add it to half the unit's side, and cut the square once on the diagonal",
             "whole / 2 + rounded(addition)", rounding=PATCH_CUT, label="corner squares, cut once", says=("corner",
             "corners", "corner squares", "corner triangles", "triangles"), when=TRIANGLES, stated=("corner squares",
             "corners cut")),
        Step("corner_squares", "Two squares, cut once each, give the four corners of a unit", "2 * count", COUNT,
             rounding=COUNT_UP, noun="square", label="corner squares", when=TRIANGLES, says=("how many squares",
             "how many corner squares")),
        Step("base", "Add a seam on both sides of the base square", "whole + 2 * seam", rounding=PATCH_CUT,
             label="base square", when=FLIPPED, says=("base", "base square", "what size", "how big", "centre")),
        Step("flip", "Four squares of half the side, with seams, are sewn across the corners and flipped",
             "whole / 2 + 2 * seam", rounding=PATCH_CUT, label="corner squares to flip", when=FLIPPED,
             says=("corner squares", "corners", "corner")),
        Step("flip_squares", "Four squares for each unit", "4 * count", COUNT, rounding=COUNT_UP, noun="square",
             label="corner squares", when=FLIPPED, says=("how many squares", "how many corner squares")),
    ),
    answers=("centre", "corner", "corner_squares", "base", "flip", "flip_squares"),
    headline=("Cut the centre {centre} square, and two squares {corner} cut once on the diagonal for the corners.",
              "Cut the base {base} square, and four squares {flip} to flip."),
    home="in",
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
