"""Sashing between blocks, with cornerstones or in long strips."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_UP, PATCH_CUT
from .quilt_size import ALL_ROUND, OUTSIDE
from .words import ACROSS, BLOCK, DOWN, SEAM, UNFINISHED_BLOCK, USABLE_WIDTH

STONES, PLAIN = {"stones": "with_cornerstones"}, {"stones": "long_strips"}

SASHING = Rule(
    topic="sashing and cornerstones",
    family="quilting",
    says=("sashing", "sash", "sashes", "cornerstone", "cornerstones", "lattice", "sashing strips", "sashing fabric",
          "sashing and cornerstones", "each sash", "sashing yardage", "cut sashing", "sash pieces",
          "how much sashing", "fabric for sashing", "posts"),
    about="How many sashes and cornerstones a quilt takes, their cut sizes, and the strips and cloth, cut the "
          "thriftier way.",
    inputs=(
        BLOCK,
        ACROSS,
        DOWN,
        Input("sash", "sash width, finished", LENGTH, says=("sashing", "sash", "sashes", "sashing finishing",
              "wide sashing", "finished sashing", "lattice", "sashing strips", "sashing between", "cornerstones",
              "wide", "sashing finish", "finish", "finished", "finishing at"),
              ask="How wide does the sashing finish?", example="2 in", sane="3 mm..60 cm",
              practice="1 in..3 in by 1/2 in"),
        ALL_ROUND,
        OUTSIDE,
        choice("stones", "where sashes meet", {"with_cornerstones": ("cornerstones", "with cornerstones",
               "cornerstone", "posts", "corner squares"), "long_strips": ("without cornerstones", "no cornerstones",
               "long strips", "long sashing strips", "plain sashing", "one long strip"), },
               default=(Default("with_cornerstones", "every sash is then one block long"), )),
        SEAM,
        USABLE_WIDTH,
        UNFINISHED_BLOCK,
    ),
    steps=(
        Step("cut_width", "Add a seam on both sides of the sash", "sash + 2 * seam", rounding=PATCH_CUT,
             label="sash, cut width", says=("cut size", "cut size of each sash", "how wide to cut", "cut width",
             "size of each sash", "what size sashing", "what size sashes", "how big the sashes", "what size do i cut",
             "how big do i cut", "how wide do i cut", "cut the sashing", "size to cut", "size of the sashing")),
        Step("cut_length", "A sash is a block long: add a seam at both ends", "block + 2 * seam", rounding=PATCH_CUT,
             label="sash, cut length", says=("how long to cut", "cut length")),
        Step("pieces",
             "Between the blocks of each row, and between the rows (and one more each way for sashing all round)",
             "(across - 1 + outside) * down + (down - 1 + outside) * across", COUNT, rounding=COUNT_UP, noun="sash",
             label="sashes", when=STONES, says=("how many sashes", "sashes", "how many sash pieces",
             "how many pieces", "how many sashing strips", "sash pieces", "number of sashes", "sashing pieces",
             "how many sashing pieces")),
        Step("blocks", "Across times down", "across * down", COUNT, rounding=COUNT_UP, noun="block", label="blocks"),
        Step("cornerstones", "One where sashes meet", "(across - 1 + outside) * (down - 1 + outside)", COUNT,
             rounding=COUNT_UP, noun="cornerstone", label="cornerstones", when=STONES, says=("how many cornerstones",
             "cornerstones", "number of cornerstones", "posts")),
        Step("cornerstone", "A cornerstone is as wide as a sash both ways", "sash + 2 * seam", rounding=PATCH_CUT,
             label="cornerstone, cut", when=STONES, says=("cut size of the cornerstones", "size of the cornerstones",
             "size of cornerstones", "cornerstone size", "cut the cornerstones")),
        Step("along", "Cut from strips a sash wide: so many block lengths from each, and so many strips",
             "ceil(pieces / max(1, floor(usable / cut_length))) * cut_width", label="cloth, strips a sash wide",
             when=STONES),
        Step("turned", "Or from strips a block wide: so many sashes from each",
             "ceil(pieces / max(1, floor(usable / cut_width))) * cut_length", label="cloth, strips a block wide",
             when=STONES),
        Step("strips", "The way that takes less cloth",
             "if(along <= turned, ceil(pieces / max(1, floor(usable / cut_length))), ceil(pieces / max(1, "
             "floor(usable / cut_width))))", COUNT, rounding=COUNT_UP, noun="strip", label="strips for the sashes",
             when=STONES, says=("how many strips", "strips", "number of strips")),
        Step("cloth", "Its cloth", "min(along, turned)", rounding=BUY_CLOTH, label="cloth for the sashes",
             when=STONES, says=("fabric", "cloth", "yardage", "how much fabric", "how many yards", "how much",
             "material", "how much sashing")),
        Step("stone_cloth", "Strips of cornerstones",
             "ceil(cornerstones / floor(usable / cornerstone)) * cornerstone", rounding=BUY_CLOTH,
             label="cloth for the cornerstones", when=STONES, says=("fabric for the cornerstones",
             "cornerstone fabric")),
        Step("shorts", "Short sashes stand between the blocks of each row", "(across - 1 + outside) * down", COUNT,
             rounding=COUNT_UP, noun="short sash", label="short sashes", when=PLAIN, says=("how many short",
             "how many sashes", "short sashes")),
        Step("longs", "Long ones lie between the rows (and outside, for sashing all round)", "down - 1 + outside",
             COUNT, rounding=COUNT_UP, noun="long sash", label="long sashes", when=PLAIN, says=("how many long",
             "long strips", "long sashes")),
        Step("long_length", "As long as a row of blocks and its short sashes, and a seam at both ends",
             "across * block + (across - 1 + outside) * sash + 2 * seam", rounding=PATCH_CUT,
             label="long sash, cut length", when=PLAIN, says=("how long the long", "length of the long strips")),
        Step("plain_strips", "Strips a sash wide, the long ones joined end to end",
             "ceil(shorts / max(1, floor(usable / cut_length))) + ceil(longs * long_length / usable)", COUNT,
             rounding=COUNT_UP, noun="strip", label="strips for the sashing", when=PLAIN, says=("how many strips",
             "strips")),
        Step("plain_cloth", "Each strip takes its width of cloth", "rounded(plain_strips) * cut_width",
             rounding=BUY_CLOTH, label="cloth for the sashing", when=PLAIN, says=("fabric", "cloth", "yardage",
             "how much fabric", "how many yards", "how much")),
    ),
    answers=("pieces", "shorts", "cut_width", "cut_length", "cornerstones", "cornerstone", "strips", "cloth",
             "stone_cloth", "longs", "long_length", "plain_strips", "plain_cloth", "blocks"),
    headline=("Cut {pieces} {cut_width} by {cut_length} and {cornerstones} {cornerstone} square: {cloth} of cloth "
              "for the sashes, {stone_cloth} for the cornerstones.",
              "Cut {shorts} {cut_width} by {cut_length} and {longs} {long_length} long: {plain_cloth} of cloth.",
              "Cut each sash {cut_width} by {cut_length}."),
    sizes=(("across", "down"),),
    home="in",
    insists=True,
    defers=("quilt size", "quilt yardage"),
    source=ARITHMETIC,
    refusals=(Refusal("cut_width > usable",
                      "the sash is wider than the cloth. Type a narrower sash or a wider cloth."),),
    cautions=(Caution("Sashing wider than a quarter of the block overpowers it",
                      source="published advice for sashed quilts", when="sash > block / 4"),),
    examples=(
        "3 x 4 blocks, 9 in finished, sashing between finishing 1 3/4 in: cut size of each sash -> 2 1/4 in; 9 1/2 "
        "in",
        "how many sashes and cornerstones for a 4 x 5 quilt of 10 in blocks, 2 in sashing all round -> 49 sashes; "
        "30 cornerstones",
        "sashing 2 in for 5 x 6 blocks of 12 in, how much fabric -> 1 1/4 yd",
        "2 in sashing without cornerstones, 4 x 5 blocks of 10 in -> 15 short sashes; 2 1/2 in; 4 long sashes; 46 "
        "1/2 in",
    ),
    related=("quilt size", "borders"),
)
