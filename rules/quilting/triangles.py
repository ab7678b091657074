"""Half-square and quarter-square triangles: what to cut, by geometry from the seam."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import COUNT_UP, FINE, PATCH_CUT
from .seam_geometry import half_square_addition, quarter_square_addition
from .words import SEAM

# Two seams on the sides, and the seam along the diagonal measured square to the sides: s (2 + √2) and s (2 + 2 √2).
HALF_SQUARE = "seam * (2 + sqrt(2))"
QUARTER_SQUARE = "seam * (2 + 2 * sqrt(2))"

# A size told with its seams still in it: "5 1/2 in unfinished", "trim to 5 1/2 in".
AS_SEWN = flag("as_sewn", "the size is the unfinished one", ("unfinished", "trim to", "trimmed to", "trim down to",
               "trim them to", "trim them down to", "raw edge to raw edge", "before they are sewn in"),
               no=("what unfinished", "what is the unfinished", "what s the unfinished", "unfinished size do",
               "unfinished size should", "unfinished size will", "trim to size", "trimmed to size", "size before they are sewn in",
               "size before it is sewn in", "big before they are sewn in", "big before it is sewn in", "do i trim them to",
               "do i trim to", "do i trim them down to", "trim them to what", "trim to what", "trim down to what",
               "do i trim it to", "the unfinished size", "their unfinished size", "give unfinished size", "finished unfinished",
               "finished unfinished size", "unfinished how big", "unfinished what size"))  # fmt: skip
# And where it is what is asked for.
UNFINISHED = ("what unfinished size", "unfinished size", "what is the unfinished", "unfinished size do", "size before", "how big before",
              "what do i trim", "do i trim them to", "do i trim to", "trim to size", "trim them to what", "trim to what", "unfinished",
              "size to trim", "what size to trim", "trimmed size", "how big raw", "before they are sewn in", "before it is sewn in",
              "size before it s sewn in", "before it s sewn in", "before it goes in", "before they re sewn in")
TAKEN = Input("taken", "seams in the size told", LENGTH, spoken=True, default=(
              Default("0 in | 0 cm", derived=True, when={"as_sewn": "no"}), Default("=2 * seam",
              "Sewn in, a unit loses a seam on every side", derived=True, when={"as_sewn": "yes"})))  # fmt: skip
FINISHED = Input("finished", "finished size", LENGTH, says=("finished", "finish", "finish at", "finishes",
                 "finished size", "finished unit", "finished square", "come out", "end up", "sewn in",
                 "units finish", "finished side", "after sewing", "once sewn", "when sewn", "hst",
                 "half-square triangles", "half-square triangle units", "size unit", "unit will i", "units will i", "end up with"),
                 ask="What size do the units finish?", example="3 in", sane="3 mm..2 m",
                 practice="1 1/2 in..8 in by 1/2 in", )  # fmt: skip
TRIM_SAYS = ("trim", "trim down", "and trim", "oversize", "oversized", "trim to size", "cut over size", "square up",
    "squared up", "trimming", "trim to", "trimmed to", "trim down to", "trim them to", "trim them down to")
OVERSIZE_BECAUSE = "cut over size, to be trimmed when sewn (common practice)"


def _oversize(inch: str, metric: str) -> Input:
    return Input("oversize", "addition when trimming", LENGTH, says=("addition when trimming", "oversize by",
    "bigger to trim"), spoken=True, default=(
        Default("0 in | 0 cm", derived=True, when={"trim": "no"}), Default(f"{inch} | {metric}", OVERSIZE_BECAUSE,
            when={"trim": "yes"}),
    ), sane="0 cm..10 cm", practice="1 in..2 in by 1/2 in")  # fmt: skip


HALF_SQUARE_TRIANGLES = Rule(
    topic="half-square triangles",
    family="quilting",
    says=("half-square triangle", "half square triangle", "hst", "half square", "half-square", "triangle square",
          "half-square units", "triangle", "triangles", "half triangle", "hst unit"),
    about="The squares to cut for half-square triangle units, two, four or eight at a time, and how many of each "
          "cloth.",
    inputs=(
        FINISHED,
        AS_SEWN,
        TAKEN,
        Input("count", "number of units", COUNT, says=("half-square triangle units", "hst", "half-square triangle", "half-square triangles",
              "unit", "units", "triangle squares", "triangles", "of them", "half square", "hst unit", "hst units"), noun="unit", extra=True,
              ask="How many units do you want?", example="24", sane="1..20000", practice="8..120 by 4"),
        choice("method", "method", {"two_at_a_time": ("two at a time", "2 at a time", "in pairs", "two from a pair",
               "standard method", "traditional method", "pairs of units"), "eight_at_a_time": ("eight at a time",
               "8 at a time", "magic eight", "eight at once", "8 at once"), "four_at_a_time": ("four at a time",
               "4 at a time", "sewn all round", "four at once", "4 at once")}, default=(Default("two_at_a_time",
               "two from a pair of squares is the usual way"),)),
        flag("trim", "cut over size and trimmed", TRIM_SAYS),
        Input("per_pair", "units from a pair of squares", COUNT, says=("units from a pair", "from each pair"),
              spoken=True, default=(Default("2", derived=True, when={"method": "two_at_a_time"}), Default("8",
              derived=True, when={"method": "eight_at_a_time"}), Default("4", derived=True,
              when={"method": "four_at_a_time"}))),
        _oversize("1 in", "3 cm"),
        SEAM,
    ),
    steps=(
        Step("addition",
             "Each square gives two triangles: a seam on two sides, and the diagonal's seam, add seam × (2 + √2)",
             HALF_SQUARE, rounding=PATCH_CUT, label="addition", says=("addition", "add", "how much to add")),
        Step("exact_cut", "By geometry, before any rounding to the ruler",
             "if(per_pair = 8, 2 * (finished - taken + addition), if(per_pair = 4, sqrt(2) * (finished - taken + 2 * seam) + 2 * "
             "seam, finished - taken + addition))", label="exact size", says=("exact", "exact size", "by geometry", "exactly",
             "derive", "derived")),
        Step("cut",
             "Add to the finished size (for eight at a time, twice that; for four, the diagonal of the unit with "
             "its seams, and seams again)",
             "if(per_pair = 8, 2 * (finished - taken + max(rounded(addition), oversize)), if(per_pair = 4, sqrt(2) * "
             "(finished - taken + 2 * seam) + 2 * seam + oversize, finished - taken + max(rounded(addition), oversize)))",
             rounding=PATCH_CUT, label="square to cut", says=("cut", "square", "squares", "what size", "how big",
             "how large", "size of the squares", "cut size", "cut the squares", "starting squares", "size squares",
             "what size squares"), stated=("cut", "square", "squares", "start with", "starting", "already cut",
             "have", "squares cut", "squares are cut", "charm squares", "in charm squares", "in squares")),
        Step("unfinished", "Before it is sewn in, a unit has a seam on every side", "finished - taken + 2 * seam", rounding=FINE,
             label="unit, unfinished", says=UNFINISHED),
        Step("squares", "Share the units among the pairs, and take whole squares", "count / per_pair", COUNT,
             rounding=COUNT_UP, noun="square", label="squares of each cloth", says=("how many squares",
             "number of squares", "squares of each", "of each fabric", "of each colour", "of each cloth", "of each",
             "squares of each fabric", "squares of each colour", "how many", "squares of each colour do i need",
             "pairs"), stated=("pairs of squares", "pairs",
             "squares of each", )),
        Step("in_all", "As many of the other cloth", "2 * rounded(squares)", COUNT, noun="square",
             label="squares in all", says=("how many squares in all", "how many squares in total", "in total",
             "squares altogether", "both fabrics", "both cloths", "both colours", "of both", "in both",
             "how many squares altogether",
             "squares in all", "altogether", "squares in total")),
    ),
    answers=("cut", "squares", "in_all"),
    headline=("Cut {squares} of each cloth, {cut} a side: {in_all} in all.",
        "Cut the squares {cut}, one of each cloth."),
    home="in",
    source=GEOMETRY,
    notes=("The trade adds 7/8 in at a 1/4 in seam; by geometry it is 0.854 in, so the units come a hair large and "
           "can be trimmed.", ),
    examples=(
        "24 half-square triangles, 3 in finished, two at a time, how many squares of each colour -> 12 squares; 3 "
        "7/8 in",
        "How large do I cut the squares for eight-at-a-time half-square triangles that finish at 2 in -> 5 3/4 in",
        "HST finish 4 in, cut over size and trim, what size square -> 5 in",
        "hst cut from 5 in squares, what do they finish at -> 4 1/8 in",
        "half-square triangles 5 1/2 in unfinished, what do I cut -> 5 7/8 in",
    ),
    related=("quarter-square triangles", "flying geese"),
    derivation=(half_square_addition(),),
)

QUARTER_SQUARE_TRIANGLES = Rule(
    topic="quarter-square triangles",
    family="quilting",
    says=("quarter-square triangle", "quarter square triangle", "qst", "quarter square", "quarter-square",
          "hourglass", "hourglass unit", "hourglass block", "triangle", "triangles", "cut twice on the diagonal"),
    about="The squares to cut twice on the diagonal for quarter-square triangles and hourglass units.",
    inputs=(
        Input("finished", "finished size", LENGTH, says=("finished", "finish", "finish at", "finished size",
              "finished unit", "come out", "end up", "sewn in", "long side", "finished long side",
              "units finish", "hourglass",
              "quarter-square triangle"),
              ask="What size do the units finish (the triangle's long side)?", example="4 in", sane="3 mm..2 m",
              practice="2 in..8 in by 1/2 in"),
        AS_SEWN,
        TAKEN,
        Input("units", "number of hourglass units", COUNT, says=("hourglass", "hourglass units", "qst",
              "hourglasses", "hourglass blocks", "units", "blocks", "of them"), noun="hourglass unit", extra=True,
              ask="How many hourglass units do you want?", example="12", sane="1..20000", practice="4..60 by 2"),
        Input("triangles", "number of triangles of a cloth", COUNT, says=("triangles", "quarter-square triangles"),
              noun="triangle", default=Default("=2 * units", "An hourglass takes two triangles of each cloth",
              derived=True), sane="1..80000", practice="8..120 by 4"),
        flag("trim", "cut over size and trimmed", TRIM_SAYS),
        _oversize("1 1/2 in", "4 cm"),
        SEAM,
    ),
    steps=(
        Step("addition", "Each square gives four triangles: a seam on each side of both cuts adds seam × (2 + 2√2)",
             QUARTER_SQUARE, rounding=PATCH_CUT, label="addition", says=("addition", "add", "how much to add")),
        Step("exact_cut", "By geometry, before any rounding to the ruler", "finished - taken + addition", label="exact size",
             says=("exact", "exact size", "by geometry", "exactly", "derive", "derived")),
        Step("cut", "Add to the finished size", "finished - taken + max(rounded(addition), oversize)", rounding=PATCH_CUT,
             label="square to cut", says=("cut", "square", "squares", "what size", "how big", "how large",
             "size of the squares", "cut size", "cut the squares", "starting square", "what size squares"),
             stated=("cut", "square", "squares", "start with", "starting", "already cut", "have", "squares cut",
             "squares are cut", "in squares", "are cut")),
        Step("unfinished", "Before it is sewn in, a unit has a seam on every side", "finished - taken + 2 * seam", rounding=FINE,
             label="unit, unfinished", says=UNFINISHED),
        Step("squares", "A square gives four triangles", "triangles / 4", COUNT, rounding=COUNT_UP, noun="square",
             label="squares of each cloth", says=("how many squares", "number of squares", "squares of each",
             "of each fabric", "of each colour", "of each cloth", "of each", "how many")),
        Step("in_all", "As many of the other cloth", "2 * rounded(squares)", COUNT, noun="square",
             label="squares in all, for hourglass units of two cloths", says=("how many squares altogether", "how many squares in all",
             "how many squares in total",
             "squares in all", "altogether", "squares in total",
             "squares altogether", "both fabrics", "both cloths", "both colours", "of both", "in both")),
    ),
    answers=("cut", "squares"),
    headline=("Cut {squares} of each cloth, {cut} a side, twice on the diagonal.",
              "Cut the square {cut} and cut it twice on the diagonal."),
    home="in",
    source=GEOMETRY,
    notes=("The trade adds 1 1/4 in at a 1/4 in seam; by geometry it is 1.207 in, so the units come a hair large "
           "and can be trimmed.", ),
    examples=(
        "what square do I cut for quarter-square triangles that finish at 4 in -> 5 1/4 in",
        "12 hourglass units finishing 3 in, how many squares of each colour -> 6 squares; 4 1/4 in",
        "quarter-square triangle units from 6.5 inch squares, what do they finish at -> 5 1/4 in",
    ),
    related=("half-square triangles", "setting triangles"),
    derivation=(quarter_square_addition(),),
)
