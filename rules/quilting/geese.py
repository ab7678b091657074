"""Flying geese, one at a time or four at a time."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import GEOMETRY, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, FINE, PATCH_CUT
from .seam_geometry import half_square_addition, quarter_square_addition
from .triangles import AS_SEWN, HALF_SQUARE, QUARTER_SQUARE, TAKEN, UNFINISHED
from .words import SEAM

NOT_TWO_TO_ONE = (
    "four at a time only works for a unit twice as wide as it is high; a unit of other proportions has no way "
    "without waste. "
    "Ask for one at a time, such as: flying geese 3 x 2 in one at a time."
)


def _told(name: str, *kinds: str) -> tuple[Input, Input]:
    """A square already cut, from which the goose's size follows. A number with no unit is its size only where the words say
    so plainly: "the big square is 9 1/4", and not "9 big squares"."""
    plain = [words for kind in kinds for words in (f"{kind} square is", f"{kind} square was", f"{kind} squares are",
             f"{kind} square of", f"{kind} square cut", f"my {kind} squares", f"cut the {kind} squares",
             f"cut my {kind} squares", f"{kind} square measures", f"{kind} squares at", f"{kind} square is cut",
             f"{kind} squares are cut")]  # fmt: skip
    if name == "large":  # squares named alone are the large ones
        plain += ["squares of", "in squares", "square for no waste", "square for no waste geese", "square for four", "from squares of"]
    label, sane = f"{name} square in hand", "8 mm..60 cm"
    return (
        Input(f"{name}_told", label, LENGTH, says=tuple(f"{kind} square" for kind in kinds), extra=True, spoken=True, sane=sane,
              default=Default(f"={name}_bare", derived=True, given=(f"{name}_bare",)), ask="What size is it cut?", example="5 in"),
        Input(f"{name}_bare", label, LENGTH, says=tuple(plain), extra=True, sane=sane, ask="What size is it cut?", example="5 in"),
    )  # fmt: skip


# How wide the goose is, from a square of each sort.
FROM_SQUARE = {"large": "=large_told - rounded(large_addition)", "small": "=2 * (small_told - rounded(small_addition))",
               "corner": "=2 * (corner_told - 2 * seam)"}
RECTANGLE = ("rectangles cut", "rectangle is cut", "rectangles are cut", "cut rectangles", "from rectangles", "rectangle cut",
             "rectangles of", "goose rectangles", "geese rectangles", "from a rectangle of", "rectangle was cut", "my rectangles",
             *(f"rectangles for {whose} geese {are} cut" for whose in ("my", "the", "these") for are in ("are", "were")))
ONE, FOUR, GOOSE = {"method": "one_at_a_time"}, {"method": "four_at_a_time"}, {"asked_for": "goose"}

FLYING_GEESE = Rule(
    topic="flying geese",
    family="quilting",
    says=("flying geese", "geese", "flying goose", "goose", "geese units", "flying geese units", "goose units"),
    about="What to cut for flying geese: one at a time from a rectangle and two squares, or four at a time from "
          "one large square and four small.",
    inputs=(
        Input("width", "finished width", LENGTH, says=("finished", "finish", "finish at", "wide", "geese finish", "geese of",
              "long"), axis="width", default=tuple(Default(formula, derived=True, given=(f"{name}_{how}",))
              for name, formula in FROM_SQUARE.items() for how in ("told", "bare")),
              ask="How wide do the geese finish?", example="6 in", sane="5 mm..2 m",
              practice="2 in..8 in by 1 in"),
        Input("height", "finished height", LENGTH, says=("high", "height", "tall", "deep"), axis="height",
              default=(
              Default("=(width - taken) / 2 + taken", "A goose is twice as wide as it is high"),), sane="3 mm..2 m",
              practice="1 in..4 in by 1/2 in"),
        Input("count", "number of geese", COUNT, says=("geese", "flying geese", "units", "goose units", "of them",
              "goose"), noun="goose unit", extra=True, ask="How many geese do you want?", example="16",
              sane="1..20000", practice="4..80 by 4"),
        choice("method", "method", {"one_at_a_time": ("one at a time", "1 at a time", "stitch and flip",
               "stitched and flipped", "flip corners", "from a rectangle", "single geese", "sew and flip"),
               "four_at_a_time": ("four at a time", "4 at a time", "no waste", "no-waste", "four at once",
               "4 at once", "geese at once", "at once", "4 geese at once",
               "four geese at once", "4 geese at a time", "fast geese", "four from each square", "4 from each square",
               "four to a set", "4 to a set", "four from one square",
                "4 from one square")}, default=(
               *(Default("four_at_a_time", derived=True, given=(f"{name}_{how}",))
                 for name in ("large", "small") for how in ("told", "bare")), Default("one_at_a_time",
               "it works for a unit of any proportions"),)),
        choice("asked_for", "worked out", {"pieces": ("the pieces to cut", ), "goose": ("the finished goose", )}, default=(
            Default("goose", derived=True, when={"rectangle_cut": "yes"}),
            *(Default("goose", derived=True, given=(f"{name}_{how}",)) for name in FROM_SQUARE for how in ("told", "bare")),
            Default("pieces", derived=True))),
        SEAM,
        AS_SEWN,
        flag("rectangle_cut", "the size is that of the rectangle", RECTANGLE),
        replace(TAKEN, default=(Default("=2 * seam", "Sewn in, the rectangle loses a seam on every side", derived=True,
                when={"rectangle_cut": "yes"}), *TAKEN.defaults)),
        *_told("large", "large", "big", "larger", "bigger", "goose"),
        *_told("small", "small", "little", "smaller", "sky"),
        *_told("corner", "corner"),
    ),
    steps=(
        Step("wide", "A goose is wider than it is high: the longer side is its width", "max(width, height) - taken",
             label="width of the goose", says=("what does it finish", "what do they finish", "do the geese finish",
             "what do the geese finish", "goose finish", "finished goose")),
        Step("high", "And the shorter its height", "min(width, height) - taken", label="height of the goose"),
        Step("goose_width", "So wide it finishes", "wide", label="goose, finished width", rounding=FINE, when=GOOSE,
             says=("how big", "what size", "geese finish", "do the geese finish", "size geese", "goose do i get")),
        Step("goose_height", "And so high", "high", label="goose, finished height", rounding=FINE, when=GOOSE,
             says=("how high does the goose finish", "how high do the geese finish", "how high does it finish",
             "how high do they finish", "how tall do they finish", "height of the geese", "how high are the geese",
             "how high will they finish", "how high will the geese finish",
             "how high", "how tall", "goose high", "what height", "height of geese", "what height of geese")),
        Step("raw_width", "Before it is sewn in, a goose has a seam on both sides", "wide + 2 * seam", rounding=FINE,
             label="goose, unfinished width", says=UNFINISHED),
        Step("raw_height", "And above and below", "high + 2 * seam", rounding=FINE, label="goose, unfinished height", says=UNFINISHED),
        Step("rectangle_width", "Add a seam on both sides of the goose", "wide + 2 * seam", rounding=PATCH_CUT,
             label="rectangle width", when=ONE, says=("rectangle", "big patch", "cut", "size of the rectangle",
             "size of the rectangles", "rectangle size")),
        Step("rectangle_height", "Add a seam above and below", "high + 2 * seam", rounding=PATCH_CUT,
             label="rectangle height", when=ONE),
        Step("corner_square", "The squares that are sewn across and flipped are as high as the rectangle",
             "high + 2 * seam", rounding=PATCH_CUT, label="corner square", when=ONE, says=("squares", "square",
             "corner squares", "small square", "small squares", "little squares", "sky squares", "squares for the corners")),
        Step("rectangles", "A rectangle for each goose", "count", COUNT, noun="rectangle", rounding=COUNT_UP,
             when=ONE, label="rectangles", says=("how many rectangles", )),
        Step("corner_squares", "Two squares for each goose", "2 * count", COUNT, noun="square", rounding=COUNT_UP,
             when=ONE, label="corner squares", says=("number of squares", "squares needed", "number of corner squares", "squares in all",
             "how many squares", "how many corner squares")),
        Step("large_addition",
             "The large square ends up as four geese, quarter-square triangles: it takes seam × (2 + 2√2) more",
             QUARTER_SQUARE, rounding=PATCH_CUT, label="addition to the large square", when=FOUR),
        Step("large", "Add it to the finished width", "wide + rounded(large_addition)", rounding=PATCH_CUT,
             label="large square", when=FOUR, says=("large square", "big square", "larger square", "goose square",
             "cut")),
        Step("small_addition", "The small squares end up as half-square triangles: they take seam × (2 + √2) more",
             HALF_SQUARE, rounding=PATCH_CUT, label="addition to the small squares", when=FOUR),
        Step("small", "Add it to the finished height", "high + rounded(small_addition)", rounding=PATCH_CUT,
             label="small square", when=FOUR, says=("small square", "small squares", "little squares", "sky squares",
             "smaller squares", "squares for the sky", "little square")),
        Step("large_squares", "One large square makes four geese", "count / 4", COUNT, rounding=COUNT_UP,
             noun="large square", when=FOUR, says=("large squares needed", "big squares needed", "number of large squares",
             "number of big squares",
             "large squares in all", "big squares in all",
             "how many large squares", "how many big squares", "large squares",
             "big squares", "how many squares", "of the big squares", "of the large squares", "of the big ones", "many big",
             "many large"), stated=("big squares", "large squares"), label="large squares"),
        Step("small_squares", "Four small squares go with each large one", "4 * rounded(large_squares)", COUNT,
             rounding=COUNT_UP, noun="small square", when=FOUR, says=("small squares needed", "little squares needed",
             "number of small squares", "small squares in all",
             "how many small squares",
             "how many little squares", "small squares", "of the small squares", "of the little squares", "of the small ones",
             "many small"), label="small squares"),
        Step("spare", "Four from each large square, less those wanted", "4 * rounded(large_squares) - count", COUNT, noun="goose unit",
             when=FOUR, label="geese to spare", says=("spare geese", "how many are to spare", "how many to spare", "how many are spare",
               "how many over", "how many are left over", "geese left over", "geese to spare", "geese over", "extra geese",
             "how many spare", "how many extra", "geese are left")),
    ),
    answers=("goose_width", "goose_height", "large", "small", "large_squares", "small_squares", "rectangle_width", "rectangle_height",
             "corner_square", "rectangles", "corner_squares", "wide", "high"),
    headline=("The geese finish {goose_width} by {goose_height}.", "Cut {large_squares} {large} a side and {small_squares} {small} a side.",
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
