"""A quilt, planned: size, blocks, sashing, borders, binding, backing, wadding; from the roll or fat quarters."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import Default, When, choice
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, Told, plan, same
from ..quilting.backing import BACKING
from ..quilting.binding import BINDING_STRIPS
from ..quilting.borders import BORDERS
from ..quilting.fat_quarter import FROM_A_FAT_QUARTER
from ..quilting.patch import PATCH
from ..quilting.quilt_size import ALL_ROUND, BLOCKS_FOR_A_SIZE, BORDER, OUTER, QUILT_SIZE, SASH
from ..quilting.sashing import SASHING
from ..quilting.triangles import HALF_SQUARE_TRIANGLES, QUARTER_SQUARE_TRIANGLES
from ..quilting.wadding import WADDING
from ..quilting.words import ACROSS, BLOCK, DOWN, SEAM, USABLE_WIDTH
from ..quilting.yardage import QUILT_YARDAGE
from .words import PLAN, PRICE_OF_CLOTH, SHOP, like

COUNTED = {"across": ("across", "blocks.across"), "down": ("down", "blocks.down")}
SASHED, BORDERED = ("sash",), ("border",)
FROM_SMALL_CUTS: When = {"cloth_from": "fat quarters", "kind": ("plain", "pieced")}
YARDAGE = {
    **same(
        "sash", "border", "outer", "all_round", "usable", "strip", "joins", "over", "backing_width", "piecing", "seam"
    ),
    "block": Told("block"),
    **COUNTED,
}
CLOTHS = {
    "sash_cloth": Buy("cloth for the sashing", "{} for the sashing"),
    "stone_cloth": Buy("cloth for the cornerstones", "{} for the cornerstones"),
    "border_cloth": Buy("cloth for the border", "{} for the border"),
    "outer_cloth": Buy("cloth for the second border", "{} for the second border"),
    "binding_cloth": Buy("cloth for the binding", "{} for the binding"),
    "backing_cloth": Buy("cloth for the backing", "{} for the backing"),
    "wadding": Buy("wadding", "wadding ({})"),
}
NOT_CLOTH = ("width", "length", "blocks", "layout", "panels")

QUILT_PLAN = plan(
    topic="quilt plan",
    says=(
        "quilt",
        "patchwork",
        "quilt top",
        "bed quilt",
        "lap quilt",
        "baby quilt",
        "cot quilt",
        "sampler",
        "throw quilt",
        "patchwork quilt",
    ),
    called=PLAN,
    about="All that is needed before cutting a quilt: the blocks, sashing, borders, binding, backing and "
    "wadding, their cut sizes and cloth.",
    inputs=(
        replace(ACROSS, extra=True),
        replace(DOWN, extra=True),
        replace(BLOCK, default="12 in | 30 cm", because="a usual block", ask="", example=""),
        like(
            BLOCKS_FOR_A_SIZE,
            "wide",
            label="wanted quilt width",
            says=("wide", "finished size", "finished", "size"),
            axis="",
            extra=True,
        ),
        like(
            BLOCKS_FOR_A_SIZE, "long", label="wanted quilt length", says=("long", "finished size"), axis="", extra=True
        ),
        like(BLOCKS_FOR_A_SIZE, "aim"),
        choice(
            "kind",
            "kind of block",
            {
                "plain": ("plain blocks", "plain squares", "squares", "one patch"),
                "half-square triangles": ("half-square triangle", "half square triangles", "hst"),
                "hourglass": ("hourglass", "quarter-square triangle", "quarter square triangles", "qst"),
                "pieced": ("pieced", "pieced blocks", "sampler"),
            },
            default=Default(
                "plain",
                "no kind of block was named: each is taken as one square; say half-square triangles, "
                "hourglass or pieced",
            ),
        ),
        replace(SASH, extra=True, default=None, spoken=True),
        replace(BORDER, extra=True, default=None, spoken=True),
        replace(OUTER, extra=True, default=None, spoken=True),
        ALL_ROUND,
        like(SASHING, "stones"),
        USABLE_WIDTH,
        replace(SEAM, spoken=True),
        like(QUILT_YARDAGE, "strip"),
        like(QUILT_YARDAGE, "joins"),
        like(QUILT_YARDAGE, "over"),
        like(QUILT_YARDAGE, "backing_width"),
        like(QUILT_YARDAGE, "piecing", spoken=True),
        choice(
            "cloth_from",
            "blocks cut from",
            {
                "the roll": ("off the roll", "from the bolt", "by the yard", "yardage"),
                "fat quarters": ("fat quarters", "fat quarter", "from fat quarters", "fq"),
            },
            default=Default("the roll", "cloth is bought by the length; say fat quarters for small cuts", derived=True),
        ),
        like(WADDING, "roll", label="width of the wadding on the roll"),
        PRICE_OF_CLOTH,
        *SHOP,
    ),
    sizes=(("across", "down"), ("wide", "long")),
    home="in",
    parts=(
        Part(
            "blocks",
            "Blocks for the size",
            BLOCKS_FOR_A_SIZE,
            same("wide", "long", "block", "sash", "border", "outer", "all_round", "aim"),
            leaves=("layout",),
            needs=("wide", "long"),
        ),
        Part(
            "size",
            "The quilt",
            QUILT_SIZE,
            {**same("block", "sash", "border", "outer", "all_round"), **COUNTED},
            any_of=("across", "wide"),
        ),
        Part(
            "patch",
            "Plain blocks",
            PATCH,
            {"width": Told("block"), "seam": "seam"},
            headline="Cut each block {cut_width} square.",
            cuts=(CutLine("block", "cut_width", "cut_length", "blocks", "size.blocks"),),
            when={"kind": ("plain", "pieced")},
        ),
        Part(
            "fat_quarters",
            "From fat quarters",
            FROM_A_FAT_QUARTER,
            {"width": "patch.cut_width", "count": "size.blocks"},
            buys={"cuts": Buy("fat quarters", "{} for the blocks")},
            when=FROM_SMALL_CUTS,
        ),
        Part(
            "cloth",
            "Cloth",
            QUILT_YARDAGE,
            {**YARDAGE, "price": "price"},
            buys={"block_cloth": Buy("cloth for the blocks", "{} for the blocks"), **CLOTHS},
            takes=("cloth", "cost"),
            leaves=NOT_CLOTH,
            headline="In all {cloth} of cloth.",
            plain=True,
            when={"cloth_from": "the roll"},
        ),
        Part(
            "other_cloth",
            "Other cloth",
            QUILT_YARDAGE,
            YARDAGE,
            buys=CLOTHS,
            leaves=(*NOT_CLOTH, "cloth", "block_cloth", "cost"),
            headline="The rest is bought by the length.",
            plain=True,
            when={"cloth_from": "fat quarters"},
        ),
        Part(
            "triangles",
            "Half-square triangles",
            HALF_SQUARE_TRIANGLES,
            {"finished": Told("block"), "count": "size.blocks", "seam": "seam"},
            cuts=(CutLine("square, in 2 cloths", "cut", "cut", "blocks", "in_all"),),
            when={"kind": "half-square triangles"},
        ),
        Part(
            "hourglass",
            "Hourglass blocks",
            QUARTER_SQUARE_TRIANGLES,
            {"finished": Told("block"), "units": "size.blocks", "seam": "seam"},
            cuts=(CutLine("square, in 2 cloths", "cut", "cut", "blocks", "squares"),),
            when={"kind": "hourglass"},
        ),
        Part(
            "sashes",
            "Sashing",
            SASHING,
            {**same("sash", "all_round", "stones", "seam", "usable"), "block": Told("block"), **COUNTED},
            leaves=("cloth", "stone_cloth", "cost"),
            headline="Cut the sashes {cut_width} wide.",
            cuts=(
                CutLine("sash", "cut_width", "cut_length", "sashing", "pieces"),
                CutLine("cornerstone", "cornerstone", "cornerstone", "cornerstones", "cornerstones"),
                CutLine("short sash", "cut_width", "cut_length", "sashing", "shorts"),
                CutLine("long sash", "cut_width", "long_length", "sashing", "longs"),
            ),
            needs=SASHED,
        ),
        Part(
            "inner",
            "The quilt inside its borders",
            QUILT_SIZE,
            {**same("sash", "all_round"), "block": Told("block"), "border": Fixed("0 in | 0 cm"), **COUNTED},
            leaves=("layout", "blocks"),
            plain=True,
            needs=BORDERED,
        ),
        Part(
            "borders",
            "Border",
            BORDERS,
            {
                **same("border", "outer", "usable", "seam"),
                "width": "inner.width",
                "length": "inner.length",
                "is_finished": Fixed("yes"),
            },
            leaves=("cloth", "cost", "strips", "run_of_border"),
            headline="Cut two sides {sides} and two, top and bottom, {ends}, {cut_width} wide.",
            cuts=(
                CutLine("border, side", "cut_width", "sides", "border", "2"),
                CutLine("border, top and bottom", "cut_width", "ends", "border", "2"),
                CutLine("border corner square", "corner", "corner", "border", "4"),
            ),
            needs=BORDERED,
        ),
        Part(
            "binding",
            "Binding",
            BINDING_STRIPS,
            {**same("strip", "usable", "joins"), "width": "size.width", "length": "size.length"},
            leaves=("cloth", "cost"),
            headline="Cut {strips} across the cloth for {need} of binding.",
            cuts=(CutLine("binding strip", "strip", "width of the cloth", "binding", "strips"),),
        ),
        Part(
            "backing",
            "Backing",
            BACKING,
            {"over": "over", "usable": ("backing_width", "usable"), "width": "size.width", "length": "size.length"},
            leaves=("cloth", "cost", "area", "down_cloth", "across_cloth"),
        ),
        Part(
            "wadding",
            "Wadding",
            WADDING,
            {"over": "over", "roll": "roll", "width": "size.width", "length": "size.length"},
            leaves=("cost",),
        ),
    ),
    order=(
        "Press the cloth; wash it first if any of it may run or shrink.",
        "Cut the borders and the binding along the cloth first, so that they are in long lengths; then the "
        "sashes and the blocks.",
        "Piece the blocks and press them; trim each to its unfinished size.",
        Do(
            "Sew blocks and sashes into rows, then the rows together with the long sashes or the rows of "
            "cornerstones between.",
            ("sashes",),
        ),
        Do(
            "Sew the blocks into rows, press the seams of each row the other way, and sew the rows together.",
            without=("sashes",),
        ),
        Do("Measure through the middle, cut the border strips to that, and sew them on.", ("borders",)),
        "Join the backing, lay it face down, the wadding on it, the top face up; tack through all three.",
        "Quilt from the middle outwards; trim the edges square.",
        "Join the binding strips on the slant, fold in half, sew on with mitred corners, and turn to the back.",
    ),
    notes=("Have at hand besides: thread for piecing and for quilting.",),
    examples=(
        "plan a quilt 5 by 6 blocks of 12 in, 2 in sashing and a 4 in border -> 3 1/2 yd",
        "plan for a quilt about 60 x 72 in, 12 in blocks -> 3 1/2 yd",
        "quilt plan: 4 x 5 blocks of 10 in from fat quarters, 3 in border -> 10 fat quarters; 3 yd",
    ),
    related=("quilt yardage", "quilt size"),
)
