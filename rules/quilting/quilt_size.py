"""The size of a quilt from its blocks, and the blocks for a size."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.drawing import OnPointDrawing, QuiltDrawing
from ..engine.kinds import COUNT, LENGTH, RATIO, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import COUNT_UP, CUT
from ..engine.run import Run
from .words import ACROSS, BLOCK, DOWN, HOW_BIG, HOW_LONG, SEAM, UNFINISHED_BLOCK

SASH = Input("sash", "sashing width", LENGTH, says=("sashing", "sash", "sashes", "lattice", "sashing strips",
             "finished sashing", "sashing between", "wide sashing", "finishing sashing", "how wide sashing",
             "how wide is the sashing", "how wide the sashing", "what width of sashing", "how wide a sash",
             "what width sashing", "how wide should the sashing"), default="0 in | 0 cm",
             because="no sashing was named",
             sane="0 cm..60 cm", practice="1 in..3 in by 1/2 in")  # fmt: skip
BORDER = Input("border", "border width", LENGTH, says=("border", "borders", "inner border", "finished border",
               "border finish", "first border", "border all round", "border round it", "width of border",
               "what width of border", "what width border", "how wide a border", "how wide is the border",
               "how wide the border", "how wide are the borders", "how wide should the border"), default="0 in | 0 cm",
               because="no border was named", sane="0 cm..1 m", practice="2 in..8 in by 1 in")  # fmt: skip
OUTER = Input("outer", "second border width", LENGTH, says=("outer border", "second border", "another border",
              "final border", "last border", "then a border", "then border", "outside border", "outermost border",
              "wide outer border", "and then a", "then a", "followed by a", "with an outer"),
              default=Default("0 in | 0 cm", derived=True), sane="0 cm..1 m",
              practice="3 in..8 in by 1 in")  # fmt: skip
# Whether it is the sashing that goes all round, or a border.
ROUND = ("all round", "all around", "all the way round", "round the outside", "around the outside", "around the edges")
BORDER_ROUND = tuple(f"border {round_it}" for round_it in ROUND)  # says nothing of the sashing
# What a quilt has none of names no sum of its own.
NO_BORDER, NO_SASHING = (tuple(f"{none} {what}" for none in ("no", "without", "without any") for what in kinds)
                       for kinds in (("border", "borders"), ("sashing", "sash", "sashes")))
ALL_ROUND = flag("all_round", "sashing all round", (*ROUND, *(f"{word} {round_it}" for word in ("and", "sashing", "sash", "sashed")
                 for round_it in ROUND), "all round too", "outside too", "round the edge too", "outer sashing",
                 "on the outside as well", "around the outside as well", "round the outside too", "all round the outside"),
                 no=("between only", "only between", "just between", *(f"{word} between {them}" for word in ("only", "just")
                 for them in ("them", "the blocks", "blocks")), *(f"between {them} only" for them in ("them", "the blocks",
                 "blocks"))))  # fmt: skip
OUTSIDE = Input("outside", "sashes outside the blocks, each way", COUNT, spoken=True, default=(Default("0",
                derived=True, when={"all_round": "no"}),
                Default("2", derived=True, when={"all_round": "yes"})))  # fmt: skip


def layout(run: Run) -> Outcome:
    """The quilt drawn to scale, and its make-up in words."""
    across, down, sash = int(run.rounded("across")), int(run.rounded("down")), run.get("sash")
    borders = tuple(width for width in (run.get("border"), run.get("outer")) if width)
    unit = run.unit_of(LENGTH)
    drawing = QuiltDrawing(across, down, (run.get("block"), run.get("block")), unit, sash,
        run.get("all_round") == "yes", borders)
    words = [f"{across} by {down} blocks of {run.show(run.get('block'), LENGTH)}"]
    if sash:
        words.append(f"{run.show(sash, LENGTH)} sashing {'between and all round' if drawing.all_round else 'between'}")
    words += [f"{run.show(width, LENGTH)} border" for width in borders]
    return Outcome({"layout": ", ".join(words)}, drawing=drawing)


QUILT_SIZE = Rule(
    topic="quilt size",
    family="quilting",
    says=("quilt size", "finished quilt", "quilt top size", "how big is the quilt", "how large is the quilt",
          "size of the quilt", "blocks", "finished size", "how big a quilt", "quilt finish", "sashing between",
          "how big will the quilt be", "blocks set", *BORDER_ROUND, *NO_BORDER, *NO_SASHING),
    about="The finished size of a quilt of blocks in straight rows, with sashing and borders.",
    inputs=(BLOCK, ACROSS, DOWN, SASH, BORDER, OUTER, ALL_ROUND, OUTSIDE, UNFINISHED_BLOCK, SEAM),
    steps=(
        Step("width", "The blocks, the sashes between (and outside) them, and a border on each side",
             "across * block + (across - 1 + outside) * sash + 2 * (border + outer)", rounding=CUT,
             label="quilt width", axis="width", says=("how big", "size", "how large", "what size", "finished size",
             "big", "width", "quilt", "how wide", "quilt size", "finished quilt size", *HOW_BIG), stated=("makes", "make", "it makes",
             "comes to", "come to",
             "wide", "width",
             "come out", "comes out", "finished top", "whole quilt", "whole top", "finished quilt")),
        Step("length", "The same down the quilt",
             "down * block + (down - 1 + outside) * sash + 2 * (border + outer)", rounding=CUT, label="quilt length",
             axis="length", says=("length", "how long", *HOW_LONG), stated=("long", )),
        Step("blocks", "Across times down", "across * down", COUNT, rounding=COUNT_UP, noun="block", label="blocks",
             says=("how many blocks", "blocks in all", "number of blocks"),
             stated=("blocks in all", "blocks",)),
        Step("layout", "", kind=TEXT, label="layout"),
    ),
    answers=("width", "length", "blocks", "layout"),
    insists=True,
    headline=("The quilt finishes {width} by {length}.", "It takes {blocks}."),
    sizes=(("across", "down"),),
    home="in",
    source=ARITHMETIC,
    refusals=(Refusal("across * down > 1000", "so many blocks make no quilt: perhaps the size of the quilt is meant. "
                      "Type its unit, such as: how many 12 in blocks for a 40 x 50 in quilt."),
              Refusal("block <= 0", "the seams would take the whole block. Type a larger block or a smaller seam.")),
    algorithm=layout,
    notes=("Binding adds nothing to speak of; quilting and washing take up some 3 to 5 in 100.", ),
    examples=(
        "5 by 6 blocks, each 10 inches finished, 2 in sashing between and a 4 in border, how big is the quilt -> "
        "66 in; 78 in",
        "4x5 blocks 10 in finished each, 1 1/2 in sashing between and all round, no border, finished size -> 47 "
        "1/2 in; 59 in",
        "a quilt 7 across by 9 down of 8 in blocks, how big -> 56 in; 72 in; 63 blocks",
        "12 1/2 in unfinished blocks, 5 by 6, how big -> 60 in; 72 in",
        "4 x 5 blocks, 2 in sashing, 3 in border, how big are the blocks if it comes out 60 in wide -> 12 in",
    ),
    related=("blocks for a size", "binding strips", "backing"),
    defers=("blocks for a size", "on-point size"),
)

def _layout_for_a_size(run: Run) -> Outcome:
    """Drawn in straight rows, or on point."""
    if run.get("on_point") == "no":
        return layout(run)
    across, down = int(run.rounded("across")), int(run.rounded("down"))
    words = f"on point, {across} across and {down} down, {(across - 1) * (down - 1)} more between them"
    drawing = OnPointDrawing(across, down, run.rounded("width"), run.rounded("length"), run.unit_of(LENGTH))
    return Outcome({"layout": words}, drawing=drawing)


BLOCKS_FOR_A_SIZE = Rule(
    topic="blocks for a size",
    family="quilting",
    says=("blocks for a", "blocks for my", "blocks for an", "blocks for her", "blocks for his", "blocks will cover",
          "blocks to fill",
          "really be", "really come out", "really measure", "really finish", "really come to", "how many rows of blocks",
          "how many blocks", "blocks for a size", "blocks needed", "number of blocks", "blocks do i need",
          "blocks for a quilt", "how many blocks for", "blocks to make", "squares make", "squares for a quilt",
          "squares to make", "make a quilt", "blocks will i need", "blocks do i make", "from blocks", "quilt to be",
              "quilt should be", "blocks for quilt", "blocks to cover",
          "blocks fit in a quilt", "blocks would cover", "blocks go into",
          "no bigger than", "no larger than", "want a quilt", *BORDER_ROUND, *NO_BORDER, *NO_SASHING, "blocks would i need",
            "blocks am i making"),
    about="How many blocks a quilt of a wanted size takes, and the size that really comes of it.",
    inputs=(
        Input("wide", "wanted width", LENGTH, says=("quilt", "wide", "at least", "about", "quilt of", "width",
              "wanted", "top"), axis="width", ask="How wide should the quilt be?", example="60 in", sane="20 cm..6 m",
              practice="48 in..100 in by 2 in"),
        Input("long", "wanted length", LENGTH, says=("quilt", "long", "length"), axis="length",
              ask="How long should the quilt be?", example="72 in", sane="20 cm..6 m",
              practice="60 in..110 in by 2 in"),
        BLOCK,
        SASH,
        BORDER,
        OUTER,
        ALL_ROUND,
        OUTSIDE,
        UNFINISHED_BLOCK,
        SEAM,
        flag("on_point", "set on point", ("on point", "on pt", "on their points", "set diagonally", "diagonal set", "diagonally set")),
        Input("pointed", "blocks stand on a corner", COUNT, spoken=True, default=(Default("0", derived=True, when={"on_point": "no"}),
              Default("1", derived=True, when={"on_point": "yes"}))),
        choice("aim", "how near", {"at_least": ("at least", "no smaller", "minimum", "or more", "not smaller",
               "cover"), "about": ("about", "around", "roughly", "nearest", "approximately", "more or less", "or so",
               "near enough", "doesn t have to be exact", "close to", "as near as", "near"), "at_most": ("at most",
               "no larger", "no bigger", "not bigger", "no bigger than",
               "no larger than", "not bigger than", "maximum", "to fit", "within")}, default=(Default("at_least",
               "a quilt a little large does, one too small does not"),)),
        Input("spared", "part of a block that may be wanting", RATIO, spoken=True, default=(Default("0",
              derived=True, when={"aim": "at_least"}), Default("1/2", derived=True, when={"aim": "about"}),
              Default("1", derived=True, when={"aim": "at_most"}))),
    ),
    steps=(
        Step("pitch", "A block takes its side, or its diagonal when it stands on a corner", "block * if(pointed = 1, sqrt(2), 1)",
             label="room for a block"),
        Step("fit_across",
             "What is left inside the borders, one sash lent to it, shared out in blocks with their sash",
             "(wide - 2 * (border + outer) + (1 - outside) * sash) / (pitch + sash)", COUNT,
             label="blocks across, unrounded"),
        Step("across", "Whole blocks", "if(spared >= 1, floor(fit_across), ceil(fit_across - spared))", COUNT,
             label="across", says=("how many blocks across", "blocks go across", "blocks across and down", "blocks across the quilt",
             "number of blocks across",
             "in a row", "in each row", "blocks in a row", "blocks in each row", "how many wide", "each row",
             "blocks across", "across", "how many across")),
        Step("fit_down", "The same down the quilt",
             "(long - 2 * (border + outer) + (1 - outside) * sash) / (pitch + sash)", COUNT,
             label="blocks down, unrounded"),
        Step("down", "Whole blocks", "if(spared >= 1, floor(fit_down), ceil(fit_down - spared))", COUNT,
             label="down", says=("how many blocks down", "blocks across and down", "number of blocks down", "blocks go down",
             "how many rows", "rows", "rows down", "rows of blocks", "number of rows",
             "blocks down", "down", "how many down")),
        Step("blocks", "Across times down, and on point those that lie between", "across * down + pointed * (across - 1) * (down - 1)",
             COUNT, rounding=COUNT_UP, noun="block", label="blocks",
             says=("how many blocks", "blocks", "blocks in all", "number of blocks", "total"), stated=("have",
             "blocks")),
        Step("width", "The size that really comes of it",
             "across * pitch + (across - 1 + outside) * sash + 2 * (border + outer)", rounding=CUT,
             label="quilt width", says=("really be", "really come out", "really measure", "really come to", "really finish", "actually be",
             "actually come out", "actually measure", "actually finish", "how wide will it", "finish at",
             "finished size", "what size does it come to",
             "real size", "real width", "actual size", "how big")),
        Step("length", "And down", "down * pitch + (down - 1 + outside) * sash + 2 * (border + outer)", rounding=CUT,
             label="quilt length",
             says=("how long will it", "real length", "actual length", "how long does it really", "long will it really",
             "how long is it really",)),
        Step("over_width", "The quilt's width, less the width wanted", "width - wide", rounding=CUT, label="wider than wanted",
             when={"aim": "at_least"}, says=("how much bigger", "how much wider", "how much larger", "wider than", "bigger than i want",
             "larger than i want", "too wide", "how much over")),
        Step("over_length", "The same for its length", "length - long", rounding=CUT, label="longer than wanted",
             when={"aim": "at_least"}, says=("how much bigger", "how much longer", "how much larger", "longer than", "too long")),
        Step("layout", "", kind=TEXT, label="layout"),
    ),
    answers=("blocks", "across", "down", "width", "length", "layout"),
    headline=("Make {blocks}, {across} across and {down} down: the quilt finishes {width} by {length}.",),
    sizes=(("wide", "long"),),
    home="in",
    source=ARITHMETIC,
    algorithm=_layout_for_a_size,
    refusals=(Refusal("pointed * sash > 0", "this is worked for blocks on point with no sashing. Leave the sashing out, or the on point."),
              Refusal("fit_across <= 0",
                      "the borders leave no room for a block across. Type a narrower border or a wider quilt."),
              Refusal("fit_down <= 0",
                      "the borders leave no room for a block down. Type a narrower border or a longer quilt."),
              Refusal("block > min(wide, long)",
                      "the block is larger than the quilt. Type a smaller block or a larger quilt."),
              Refusal("across < 1", "not one block goes in across. Type a smaller block or a wider quilt."),
              Refusal("down < 1", "not one block goes in down. Type a smaller block or a longer quilt.")),
    examples=(
        "about 84 x 99 in, 9 in blocks with 1 1/2 in sashing and a 4 in border, how many blocks -> 63 blocks; 80 "
        "in; 101 in",
        "how many 12 in blocks for a quilt 102 x 87 in -> 72 blocks; 9; 8",
        "how many 6 in blocks do I need for a quilt 92 x 96 in -> 256 blocks",
    ),
    related=("quilt size", "quilt yardage"),
    defers=("on-point size",),
)
