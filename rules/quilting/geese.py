"""Flying geese, one at a time or four at a time."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import GEOMETRY, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, PATCH_CUT
from .seam_geometry import half_square_addition, quarter_square_addition
from .triangles import AS_SEWN, HALF_SQUARE, QUARTER_SQUARE, TAKEN
from .words import SEAM

# The rectangle is cut as large as the goose is with its seams, so its size told is the unfinished one.
GOOSE_AS_SEWN = replace(AS_SEWN, options={**AS_SEWN.options, "yes": (*AS_SEWN.options["yes"], "rectangle is cut",
    "rectangles are cut", "rectangles cut", "cut rectangles", "from rectangles", "rectangle cut", "rectangles of")})

NOT_TWO_TO_ONE = (
    "four at a time only works for a unit twice as wide as it is high; a unit of other proportions has no way "
    "without waste. "
    "Ask for one at a time, such as: flying geese 3 x 2 in one at a time."
)
ONE, FOUR = {"method": "one_at_a_time"}, {"method": "four_at_a_time"}

FLYING_GEESE = Rule(
    topic="flying geese",
    family="quilting",
    says=("flying geese", "geese", "flying goose", "goose", "geese units", "flying geese units", "goose units"),
    about="What to cut for flying geese: one at a time from a rectangle and two squares, or four at a time from "
          "one large square and four small.",
    inputs=(
        Input("width", "finished width", LENGTH, says=("finished", "finish", "finish at", "wide", "geese", "goose",
              "long"), axis="width", ask="How wide do the geese finish?", example="6 in", sane="5 mm..2 m",
              practice="2 in..8 in by 1 in"),
        Input("height", "finished height", LENGTH, says=("high", "height", "tall", "geese", "deep"), axis="height",
              default=Default("=(width - taken) / 2 + taken", "A goose is twice as wide as it is high"), sane="3 mm..2 m",
              practice="1 in..4 in by 1/2 in"),
        Input("count", "number of geese", COUNT, says=("geese", "flying geese", "units", "goose units", "of them",
              "goose"), noun="goose unit", extra=True, ask="How many geese do you want?", example="16",
              sane="1..20000", practice="4..80 by 4"),
        choice("method", "method", {"one_at_a_time": ("one at a time", "1 at a time", "stitch and flip",
               "stitched and flipped", "flip corners", "from a rectangle", "single geese", "sew and flip"),
               "four_at_a_time": ("four at a time", "4 at a time", "no waste", "no-waste", "four at once",
               "4 at once", "geese at once", "at once", "4 geese at once", 
               "four geese at once", "4 geese at a time", "fast geese")}, default=(Default("one_at_a_time",
               "it works for a unit of any proportions"),)),
        SEAM,
        GOOSE_AS_SEWN,
        TAKEN,
    ),
    steps=(
        Step("wide", "A goose is wider than it is high: the longer side is its width", "max(width, height) - taken",
             label="width of the goose", says=("what does it finish", "what do they finish", "do the geese finish",
             "what do the geese finish", "goose finish", "finished goose")),
        Step("high", "And the shorter its height", "min(width, height) - taken", label="height of the goose"),
        Step("rectangle_width", "Add a seam on both sides of the goose", "wide + 2 * seam", rounding=PATCH_CUT,
             label="rectangle width", when=ONE, says=("rectangle", "big patch", "what size", "how big", "cut", "size of the rectangle",
             "size of the rectangles", "rectangle size")),
        Step("rectangle_height", "Add a seam above and below", "high + 2 * seam", rounding=PATCH_CUT,
             label="rectangle height", when=ONE),
        Step("corner_square", "The squares that are sewn across and flipped are as high as the rectangle",
             "high + 2 * seam", rounding=PATCH_CUT, label="corner square", when=ONE, says=("squares", "square",
             "corner squares", "small square", "small squares")),
        Step("rectangles", "A rectangle for each goose", "count", COUNT, noun="rectangle", rounding=COUNT_UP,
             when=ONE, label="rectangles", says=("how many rectangles", )),
        Step("corner_squares", "Two squares for each goose", "2 * count", COUNT, noun="square", rounding=COUNT_UP,
             when=ONE, label="corner squares", says=("how many squares", "how many corner squares")),
        Step("large_addition",
             "The large square ends up as four geese, quarter-square triangles: it takes seam × (2 + 2√2) more",
             QUARTER_SQUARE, rounding=PATCH_CUT, label="addition to the large square", when=FOUR),
        Step("large", "Add it to the finished width", "wide + rounded(large_addition)", rounding=PATCH_CUT,
             label="large square", when=FOUR, says=("large square", "big square", "larger square", "goose square",
             "what size", "how big", "cut"), stated=("large square", "big square", "large squares", "big squares")),
        Step("small_addition", "The small squares end up as half-square triangles: they take seam × (2 + √2) more",
             HALF_SQUARE, rounding=PATCH_CUT, label="addition to the small squares", when=FOUR),
        Step("small", "Add it to the finished height", "high + rounded(small_addition)", rounding=PATCH_CUT,
             label="small square", when=FOUR, says=("small square", "small squares", "little squares", "sky squares",
             "smaller squares", "squares for the sky")),
        Step("large_squares", "One large square makes four geese", "count / 4", COUNT, rounding=COUNT_UP,
             noun="large square", when=FOUR, says=("how many large squares", "how many big squares", "large squares",
             "big squares", "how many squares"), label="large squares"),
        Step("small_squares", "Four small squares go with each large one", "4 * rounded(large_squares)", COUNT,
             rounding=COUNT_UP, noun="small square", when=FOUR, says=("how many small squares",
             "how many little squares", "small squares"), label="small squares"),
    ),
    answers=("large", "small", "large_squares", "small_squares", "rectangle_width", "rectangle_height",
             "corner_square", "rectangles", "corner_squares", "wide", "high"),
    headline=("Cut {large_squares} {large} a side and {small_squares} {small} a side.",
        "Cut a large square {large} and four small squares {small}.",
              "Cut {rectangles} {rectangle_width} by {rectangle_height} and {corner_squares} {corner_square} a side.",
              "Cut the rectangle {rectangle_width} by {rectangle_height} and two squares {corner_square}."),
    sizes=(("width", "height"),),
    home="in",
    source=GEOMETRY,
    refusals=(Refusal("high <= 0", "the seams would take the whole goose. Type a larger size or a smaller seam."),
              Refusal("wide != 2 * high", NOT_TWO_TO_ONE, FOUR),),
    examples=(
        "geese four at a time, 6 in x 3 in finished, big square -> 7 1/4 in; 3 7/8 in",
        "flying geese 3 x 1 1/2 in finished, one at a time -> 3 1/2 in; 2 in",
        "24 flying geese 4 x 2 in finished no waste, how many big squares -> 6 large squares; 24 small squares; 5 "
        "1/4 in; 2 7/8 in",
    ),
    related=("half-square triangles", "quarter-square triangles"),
    derivation=(quarter_square_addition("large_addition"), half_square_addition("small_addition")),
)
