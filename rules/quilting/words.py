"""Inputs and words that the quilting rules share."""

from __future__ import annotations

from ..engine.declare import Default, Input, flag
from ..engine.kinds import COUNT, LENGTH

WIDTH_OF_QUILT = Input("width", "quilt width", LENGTH, says=("quilt", "wide", "width", "quilt top", "top",
                       "square quilt", "across", "lap quilt", "baby quilt", "cot quilt", "throw",
                       "wall hanging", "square wall hanging", "square throw", "square lap quilt", "quilt is", "quilt measures"),
                       ask="How wide is the quilt?", example="60 in", sane="5 cm..6 m",
                       practice="40 in..90 in by 2 in")  # fmt: skip
# How a quilt's two sides, and cloth to buy, are asked for.
HOW_LONG = ("how tall is the quilt", "how tall the quilt", "how tall will the quilt", "how tall does the quilt",
             "how long is the quilt", "how long will the quilt", "how long the quilt", "how long should the quilt",
            "how long would the quilt", "how long a quilt", "how long does the quilt", "how long does it come out",
            "how long will it be", "how long is it", "quilt length", "length of the quilt")  # fmt: skip
HOW_BIG = ("how big is the quilt", "how large is the quilt", "what size is the quilt", "how big will the quilt be",
           "how large will the quilt be", "what size will the quilt be", "how big does the quilt come out", "size of the quilt",
           "what size does it come out", "how big does it come out", "what size will it be", "how big will it be",
           "what does it measure", "how much does the quilt measure", "how wide is the quilt",
           "how wide will the quilt be")  # fmt: skip
CLOTH_ASKED = ("fabric", "cloth", "yardage", "how much fabric", "how many yards", "how many yds", "how many metres", "how much",
               "material", "yds", "how much cloth", "how much material", "fabric needed", "length to buy",
               "what length of fabric", "yds for", "yards for", "metres for", "what length of cloth")  # fmt: skip
SQUARES = ("square quilt", "square top", "square throw", "square baby quilt", "square wall hanging", "square quilt top")
SQUARE = flag("is_square", "square quilt", (*SQUARES, "square"))
# where a square of cloth is asked for, the bare word says nothing of the quilt
SQUARE_QUILT = flag("is_square", "square quilt", SQUARES)
# Where the quilt's size is what a sheet of something goes by, it is asked for in these words.
QUILT_ASKED = ("how big is the quilt", "how wide is the quilt", "how large is the quilt", "what size is the quilt",
               "how big was the quilt", "what size quilt")
LENGTH_OF_QUILT = Input("length", "quilt length", LENGTH, says=("quilt", "long", "length", "down", "square quilt"),
                        default=Default("=width", "A square quilt is as long as it is wide",
                        when={"is_square": "yes"}, derived=True), ask="How long is the quilt?", example="72 in",
                        sane="5 cm..6 m", practice="40 in..108 in by 2 in")  # fmt: skip
USABLE_WIDTH = Input("usable", "usable fabric width", LENGTH, says=("usable", "wof", "usable width", "fabric",
                     "cloth", "width of fabric", "fabric width", "cloth width", "between the selvedges",
                     "wide fabric", "wide cloth", "wide backing", "usable fabric", "usable cloth", "cotton",
                     "wide cotton", "usable cotton", "fabric with a", "cloth with a", "strips of", "strip of",
                     "strips from", "strips cut from", "cut from", "usable across", "wide stuff", "wide goods",
                     "wide"), default="40 in | 102 cm",
                     because="what 42 to 44 in cloth gives between the selvedges (common practice)",
                     sane="10 cm..4 m", practice="40 in..44 in by 1 in", usual="85 cm..3 m")  # fmt: skip
SEAM = Input("seam", "seam allowance", LENGTH, says=("seam", "seams", "seam allowance", "sewn with", "allowance",
             "seam width", "sew at"), spoken=True, default="1/4 in | 0.75 cm", because="the seam of patchwork (common practice)",
             sane="0 mm..3 cm", usual="5 mm..1.6 cm", practice="1/4 in..1/2 in by 1/8 in")  # fmt: skip
BLOCK = Input("block", "block finished size", LENGTH, default=Default("=unfinished - 2 * seam",
              "Joined, a block loses a seam on every side", derived=True, given=("unfinished",)), says=("block",
              "blocks", "finished block", "finished blocks",
              "finish", "finished", "finish at", "blocks finish", "blocks finish at", "block size", "sampler blocks", "block finish",
              "square blocks", "each",
              "what size is the block", "what size is each block", "how big is the block", "what size were the blocks",
              "how big were the blocks", "how big are the blocks", "what size are the blocks", "size of the blocks", "size of each block",
              "what size blocks", "what size block", "how big is each block", "how large are the blocks",
              "what size should blocks", "what size should the blocks", "what size must the blocks", "how big must the blocks",
              "what block", "which block", "blocks of", "block of", "how big a block", "how big should the blocks"),
              ask="What size do the blocks finish?", example="12 in", sane="1 cm..2 m",
              practice="6 in..14 in by 1 in")  # fmt: skip
UNFINISHED_BLOCK = Input("unfinished", "block, unfinished", LENGTH, says=("unfinished", "unfinished block",
                         "unfinished blocks", "blocks cut", "blocks are cut", "cut blocks", "raw edge to raw edge",
                         "before they are joined", "raw", "raw blocks", "with their seams", "including seams", "including the seams"),
                         extra=True, ask="What size are the blocks before they are joined?", example="12 1/2 in",
                         sane="5 mm..2 m", usual="6 cm..1 m")  # fmt: skip
ACROSS = Input("across", "blocks across", COUNT, says=("across", "blocks across", "blocks wide", "columns", "wide",
               "in a row", "to a row", "to the row", "to each row", "in the width", "blocks in the width", "row of",
               "blocks in each row", "blocks",
               "rows of", "blocks finish", "blocks finish at"), ask="How many blocks across?",
               example="5", sane="1..50", usual="1..25", practice="3..8 by 1")  # fmt: skip
DOWN = Input("down", "blocks down", COUNT, says=("down", "blocks down", "rows", "rows of blocks", "rows of",
             "blocks long", "long", "rows down", "up and down", "in the height", "blocks in the height",
             "in the length", "blocks in the length", "blocks by"), ask="How many blocks down?", example="6",
             sane="1..50", usual="1..25", practice="4..9 by 1")  # fmt: skip
