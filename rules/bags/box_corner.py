"""Box corners: what to cut out for a depth, and the finished bag from its panels."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Derivation, Fact, Follows, Input, Rule, Step, choice
from ..engine.kinds import LENGTH
from ..engine.rounding import CUT
from .words import SEAM_OF_BAG

BOX_CORNER = Rule(
    topic="box corner",
    family="bags",
    says=("box corner", "boxed corner", "box corners", "corner cut-out", "corner cutout", "boxing the corners", "boxed base", "gusset corner", "corner squares", "box the corners",
          "boxed corner cutout", "boxing", "square bottom", "boxed bottom", "corner square", "box out the corners", "notch the corners", "squared corners"),
    about="The square to cut out of each bottom corner for a depth, and where to sew across.",
    inputs=(
        Input("depth", "depth of the base", LENGTH, says=("deep", "depth", "base", "boxed", "d", "gusset", "base depth", "wide base", "boxed base", "front to back", "bag"), axis="depth",
              ask="How deep is the base?", example="4 in", sane="5 mm..2 m", practice="2 in..6 in by 1/2 in"),
        choice("base", "base", {
            "seamed": ("seamed base", "seamed", "base seam", "two panels", "bottom seam", "seam at the bottom", "seam at the base", "raw edges", "2 panels"),
            "folded": ("folded base", "folded", "fold", "one piece", "no bottom seam", "on the fold", "no base seam", "fold at the bottom", "single piece"),
        }, default="seamed", because="two panels sewn together at the base; say \"folded base\" for one piece"),
        SEAM_OF_BAG,
        Input("panel_width", "panel width as cut", LENGTH, says=("panel", "panel width", "wide panel", "panels", "cut width", "panels cut", "panel cut"), extra=True, spoken=True,
              sane="1 cm..5 m"),
        Input("panel_height", "panel height as cut", LENGTH, says=("panel", "panel height", "high panel", "panels", "cut height", "panels cut"), extra=True, spoken=True, sane="1 cm..5 m"),
        Input("top", "top hem", LENGTH, says=("top hem", "hem", "top", "facing"), default="1 in | 2.5 cm", because="the usual hem at the top", sane="0 mm..30 cm"),
    ),
    steps=(
        Step("cut_out", "Half the depth each way, measured from the raw edges", "depth / 2", rounding=CUT, label="square to cut out",
             says=("cut out", "cutout", "square", "corner", "how big a square", "size", "what size", "squares", "corner square", "notch", "cut-out", "how big"), when={"base": "seamed"},
             stated=("cut out", "cutout", "square", "squares", "corner squares", "square cut out", "cut-out", "notch", "corner square", "squares cut", "cut")),
        Step("from_side", "Half the depth, measured from the side's raw edge", "depth / 2", rounding=CUT, label="cut-out from the side edge",
             says=("from the side", "cut out", "cutout", "corner", "size", "what size", "cut-out"), when={"base": "folded"}),
        Step("from_fold", "At the fold a seam less, as no seam is sewn there", "depth / 2 - seam", rounding=CUT, label="cut-out from the fold", says=("from the fold",),
             when={"base": "folded"}),
        Step("across", "Or, with no cut-out, sew across where the line from edge to edge is as long as the depth", "depth", rounding=CUT, label="line to sew across the corner",
             says=("sew across", "line", "across the corner", "stitch across", "line to sew", "sewn across")),
        Step("point", "That line lies half the depth from the point of the corner", "depth / 2", rounding=CUT, label="line from the point",
             says=("from the point", "from the tip", "distance from the point"), stated=("from the point", "from the tip", "from the corner")),
        Step("width", "The finished width is the panel less the depth and both seams", "panel_width - depth - 2 * seam", rounding=CUT, label="finished width",
             says=("finished width", "how wide", "finished size", "finished"), axis="width"),
        Step("height", "The finished height is the panel less half the depth, the base seam and the top", "panel_height - depth / 2 - seam - top", rounding=CUT,
             label="finished height", says=("finished height", "how high", "how tall"), axis="height", when={"base": "seamed"}),
    ),
    answers=("cut_out", "from_side", "from_fold", "across", "point", "width", "height"),
    headline=(
        "The finished bag is {width} wide and {height} high.",
        "The finished bag is {width} wide.",
        "Cut a square of {cut_out} out of each bottom corner, measured from the raw edges.",
        "Cut out {from_side} from the side edge by {from_fold} from the fold.",
        "Sew across where the line is {across} long.",
    ),
    sizes=(("panel_width", "panel_height"),),
    source=GEOMETRY,
    no_unknown=("seam", "top", "panel_width", "panel_height"),
    notes=("These squares are measured from the raw edges, with one seam allowance on all three seams; common practice boxes twice the side of a square "
           "measured to the stitching lines.",),
    examples=(
        "boxed corner cutout for a 12 cm deep bag, seamed base -> 6 cm; 12 cm",
        "box corner for a 4 in deep bag, folded base, 1/2 in seams -> 2 in; 1 1/2 in",
        "I cut 3 in squares out of the corners, seamed base: how deep is the bag -> 6 in",
    ),
    related=("tote",),
    derivation=(
        Derivation(
            "cut_out",
            (
                Fact("Opened out and laid seam on seam, the two edges of the cut-out come to lie in one line, which is sewn",
                     "across = cut_out + cut_out"),
                Fact("That line becomes the depth of the base", "across = depth"),
                Follows("So two sides of the square make the depth", "2 * cut_out = depth"),
                Follows("Halve both", "cut_out = depth / 2"),
            ),
            try_with={"depth": "4 in | 10 cm"},
        ),
        Derivation(
            "point",
            (
                Fact("The point of the corner is a right angle with two equal sides, and the line across is its long side, by Pythagoras",
                     "depth ^ 2 = edge ^ 2 + edge ^ 2"),
                Fact("The way from the point to the middle of the line stands square on it, by Pythagoras again",
                     "edge ^ 2 = point ^ 2 + (depth / 2) ^ 2"),
                Follows("Put the first into the second", "depth ^ 2 / 2 = point ^ 2 + depth ^ 2 / 4"),
                Follows("Take a quarter of the square from both", "point ^ 2 = depth ^ 2 / 4"),
                Follows("Take the square root of both", "point = depth / 2"),
            ),
            names={"edge": "a side of the corner's point"},
            try_with={"depth": "4 in | 10 cm"},
        ),
    ),
)
