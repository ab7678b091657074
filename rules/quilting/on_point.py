"""Blocks set on point: the triangles round the edge, how many, and the size of the whole."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Caution, Derivation, Fact, Follows, Rule, Step
from ..engine.drawing import OnPointDrawing
from ..engine.kinds import COUNT, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import COUNT_UP, CUT, PATCH_CUT
from ..engine.run import Run
from .seam_geometry import diagonal, half_square_addition, quarter_square_addition
from .triangles import HALF_SQUARE, QUARTER_SQUARE
from .words import ACROSS, BLOCK, DOWN, HOW_LONG, SEAM, UNFINISHED_BLOCK

BIAS_EDGES = Caution("Setting triangles cut the wrong way put bias on the edge: cut the sides from squares cut "
    "twice, the corners from squares "
                     "cut once; starch, and handle the edge gently", mentions=("setting", "triangle", "triangles",
                     "side", "corner"))  # fmt: skip


def _layout(run: Run) -> Outcome:
    """The setting drawn to scale, and what it holds in words."""
    across, down = int(run.get("across")), int(run.get("down"))
    words = f"{across} across and {down} down, {(across - 1) * (down - 1)} more between them"
    drawing = OnPointDrawing(across, down, run.rounded("width"), run.rounded("length"), run.unit_of(BLOCK.kind))
    return Outcome({"layout": words}, drawing=drawing)


def _counts() -> tuple[Step, ...]:
    return (
        Step("blocks", "The straight rows, and the blocks that lie between four of them",
             "across * down + (across - 1) * (down - 1)", COUNT,
             rounding=COUNT_UP, noun="block", label="blocks", says=("how many blocks", "blocks in all",
                 "number of blocks", "total blocks"),
             stated=("in all", "blocks in all")),
        Step("side_triangles", "One for each gap along the four sides", "2 * (across + down - 2)", COUNT,
             rounding=COUNT_UP, noun="triangle",
             label="side triangles", says=("number of setting triangles", "number of side setting triangles", "number of triangles",
             "how many along the sides", "setting triangles in all",
             "setting triangles along the sides",
             "how many side triangles", "side triangles", "how many triangles",
                 "how many setting triangles", "how many side setting triangles", "side setting triangles",
                                           "number of side triangles", "triangles for the sides", "how many for")),
    )  # fmt: skip


SETTING_TRIANGLES = Rule(
    topic="setting triangles",
    family="quilting",
    says=("setting triangle", "on point triangles", "edge triangle", "setting", "on point", "sides and corners",
          "cut twice for side", "corners for on point", "corner setting", "setting corners", "on pt",
          "setting sides", "triangles down the sides", "triangles at the corners", "triangles for the corners",
          "triangles along the sides", "on their points", "edge triangles", "triangles for the sides",
              "setting squares", "side triangle", "side triangles"),
    about="The squares to cut for the side and corner triangles of blocks on point, and how many a layout takes.",
    inputs=(
        BLOCK,
        ACROSS,
        DOWN,
        SEAM,
        UNFINISHED_BLOCK,
    ),
    steps=(
        Step("diagonal", "A block on its corner is as wide as its diagonal", "block * sqrt(2)",
             label="diagonal of a block", says=("diagonal", )),
        Step("side_addition", "A side triangle is a quarter of a square: it takes seam × (2 + 2√2) more",
             QUARTER_SQUARE, rounding=PATCH_CUT, label="addition for a square cut twice"),
        Step("side", "Add it to the diagonal, and cut the square twice: four side triangles",
             "diagonal + rounded(side_addition)", rounding=PATCH_CUT, label="square for the sides, cut twice",
             says=("side", "sides", "squares to cut twice", "side squares", "squares for the sides", "side triangles",
               "side triangle squares", "square for the side triangles",
             "square for the sides", "squares for the side triangles", "cut for the side triangles",
             "side setting triangles", "side setting triangle", "triangles down the sides", "triangles along the sides",
             "triangles for the sides"), stated=("cut", "already cut", "square", "squares",
             "cut twice", "side", "have", "cut at")),
        Step("corner_addition", "A corner triangle is half a square: it takes seam × (2 + √2) more", HALF_SQUARE,
             rounding=PATCH_CUT, label="addition for a square cut once"),
        Step("corner", "Add it to half the diagonal, and cut the square once: two corners",
             "diagonal / 2 + rounded(corner_addition)", rounding=PATCH_CUT, label="square for the corners, cut once",
             says=("corner squares what size", "squares to cut once", "one square cut once", "square cut once",
             "corner", "corners", "corner triangles", "square for the corners",
             "square for the corner triangles", "cut for the corners", "corner setting triangles",
             "corner triangle", "triangles for the corners",
             "triangles at the corners", "corner setting"), stated=("cut", "already cut", "square", "squares", "have", "cut at",
             "corner", "corners", "corner squares", "cut once", "corner square", "setting corners", "corner triangles",
             "for the corners")),
        *_counts(),
        Step("side_squares", "A square cut twice gives four", "side_triangles / 4", COUNT, rounding=COUNT_UP,
             noun="square", label="squares for the sides", says=("how many squares", "squares to cut for the sides",
             "how many squares for the sides", "how many squares to cut for the sides",
             "how many squares to cut twice", "how many to cut twice")),
        Step("corners", "Four corners, whatever the layout", "4", COUNT, rounding=COUNT_UP, noun="triangle",
             label="corner triangles", says=("how many corner triangles", "how many corners",
             "number of corner triangles")),
        Step("corner_squares", "Two corners from each square cut once", "corners / 2", COUNT, rounding=COUNT_UP,
             noun="square", label="squares for the corners", sane="2..2", says=("how many squares for the corners",
             "how many squares to cut once", "how many to cut once")),
        Step("width", "Blocks across, each its diagonal wide", "across * diagonal", rounding=CUT,
             label="width of the quilt centre", axis="width"),
        Step("length", "Blocks down, each its diagonal long", "down * diagonal", rounding=CUT,
             label="length of the quilt centre", axis="length"),
        Step("layout", "", kind=TEXT, label="layout"),
    ),
    answers=("side", "corner", "side_triangles", "side_squares", "corners", "corner_squares", "blocks", "width",
             "length", "layout"),
    headline=("Cut {side_squares} {side} for the sides, each twice on the diagonal, and {corner_squares} {corner} "
              "for the corners, each once.",
              "Cut squares {side} twice on the diagonal for the sides, and two squares {corner} once for the "
              "corners."),
    sizes=(("across", "down"),),
    home="in",
    source=GEOMETRY,
    algorithm=_layout,
    insists=True,
    cautions=(BIAS_EDGES,),
    notes=("Some charts round up to the next 1/4 or 1/2 in, or add 1/2 to 1 in more so that the blocks float: cut "
           "larger and trim if you like that.", ),
    examples=(
        "12 inch finished blocks on point, what square do I cut for the side triangles -> 18 1/4 in; 9 3/8 in",
        "on point, 5 blocks across 6 down, 8 in finished, how many squares to cut for the sides -> 5 squares; 18 "
        "triangles; 12 5/8 in",
        "corner setting triangles for a 10 in block -> 8 in",
    ),
    related=("on-point size", "square in a square"),
    derivation=(
        diagonal("diagonal", "block", "A block on point is crossed by its diagonal"),
        quarter_square_addition("side_addition"),
        Derivation(
            "corner",
            (
                Fact("A corner triangle's long side is a side of a block, by Pythagoras",
                "block ^ 2 = leg ^ 2 + leg ^ 2"),
                Fact("A block's diagonal, by Pythagoras", "diagonal ^ 2 = block ^ 2 + block ^ 2"),
                Follows("Put the first into the second", "diagonal ^ 2 = 4 * leg ^ 2"),
                Follows("Take the square root of both, and halve", "leg = diagonal / 2"),
            ),
            names={"leg": "the short side of a corner triangle, finished"},
            of="diagonal / 2",
        ),
        half_square_addition("corner_addition"),
    ),
    defers=("on-point size",),
)

ON_POINT_SIZE = Rule(
    topic="on-point size",
    family="quilting",
    says=("on-point size", "on point", "on pt", "set on point", "on-point", "on point quilt", "quilt on point",
          "diagonal set", "diagonally set", "set diagonally", "quilt centre", "before borders", "on point layout",
          "size on point", "on their points", "on its point", "diagonal"),
    about="How large blocks set on point come out, and how many blocks that takes.",
    inputs=(BLOCK, ACROSS, DOWN, UNFINISHED_BLOCK, SEAM),
    steps=(
        Step("diagonal", "A block on its corner is as wide as its diagonal", "block * sqrt(2)", rounding=CUT,
             label="diagonal of a block", says=("diagonal", )),
        Step("width", "Blocks across, each its diagonal wide", "across * diagonal", rounding=CUT,
             label="width on point", axis="width", says=("how big", "size", "how large", "what size", "width",
             "finished size", "quilt centre", "how wide", "big"), stated=("wide", "width", "come out at", "come out",
             "should be", "measure")),
        Step("length", "Blocks down, each its diagonal long", "down * diagonal", rounding=CUT,
             label="length on point", axis="length", says=("length", "how long", *HOW_LONG), stated=("long", )),
        *_counts(),
        Step("layout", "", kind=TEXT, label="layout"),
    ),
    answers=("width", "length", "blocks", "side_triangles", "diagonal", "layout"),
    headline=("The blocks on point come to {width} by {length}, {blocks} in all.",
        "The blocks on point come to {width} by {length}.",
              "It takes {blocks}."),
    sizes=(("across", "down"),),
    home="in",
    source=GEOMETRY,
    algorithm=_layout,
    examples=(
        "how big is a quilt centre with 4 blocks across and 5 down set on point, each block 12 in finished -> 67 "
        "7/8 in; 84 7/8 in; 32 blocks",
        "on point 3 x 4 blocks of 10 in, how many blocks -> 18 blocks",
        "what size block set on point, 5 across, comes out at 60 in wide -> 8 1/2 in",
    ),
    related=("setting triangles", "borders"),
    derivation=(diagonal("diagonal", "block", "A block on point is crossed by its diagonal"),),
)
