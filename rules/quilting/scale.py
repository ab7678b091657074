"""A block made larger or smaller."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import ARITHMETIC, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import LENGTH, PERCENT, RATIO
from ..engine.rounding import PERCENT_TENTH, SMALL
from .words import SEAM

SCALE_A_BLOCK = Rule(
    topic="scale a block",
    family="quilting",
    says=("copier at", "copier to", "set the copier", "on the copier", "my block is", "has a patch", "block has a patch", "has patches",
      "block has patches",
          "scaling a", "scaling up", "scaling down", "mine should be", "mine is to be", "mine will be",
          "old ones", "new ones",
          "scale", "scale factor", "scale a", "resize", "scale a block", "enlarge", "reduce", "make it bigger",
          "make it smaller", "block instead", "change the size", "scaled", "block but mine", "block but i want",
          "block and i want", "block and mine", "block but mine should be",
          "bigger block", "smaller block", "resized",
          "rescale", "enlarged", "shrink the block", "different size block", "scale up", "scale down", "copier",
          "photocopy", "into a", "into an", "turn a block", "twice the size", "double the size", "half the size",
          "half size", "i want the block", "want the block", "block is of", "old block", "new block", "old patch", "what block do i get"),
    about="The new finished and cut sizes of a block's patches: the finished size is scaled, the seams are added "
          "afterwards.",
    inputs=(
        Input("old", "old block, finished", LENGTH, says=("pattern", "old block", "from", "original", "block", "old",
              "pattern is for", "is for", "block of", "my block", "my block is",
              "block has a patch", "block has patches", "block has"), ask="What size does the pattern's block finish?", example="9 in",
              sane="1 cm..3 m", practice="6 in..12 in by 1 in"),
        Input("new", "new block, finished", LENGTH, says=("new one", "new one is", "for a", "for an", "mine should be",
             "mine is to be", "mine will be", "mine", "want the block", "i want the block with", "want the block with",
               "want the block to be",
             "new block", "to", "want", "instead", "new", "into",
              "into a", "into an", "up to a", "down to a", "up to", "down to", "scaled to", "enlarged to",
              "reduced to", "make it", "block instead", "wanted"),
              ask="What size do you want the block to finish?", example="12 in", sane="1 cm..3 m",
              practice="4 in..18 in by 1 in"),
        choice("by", "made", {"given": ("by a number", ), "half": ("half the size", "half size", "halve", "halved",
               "half as big", "half as large", "half as wide"), "double": ("double the size", "twice the size",
               "double", "doubled", "twice as big", "twice as large")}, default=(Default("given", derived=True),)),
        Input("enlarge", "scale in percent", PERCENT, says=("copier at", "up by", "down by", "enlarged by",
              "reduced by", "enlarged to", "reduced to", "up to", "down to", "scale by", "scale to",
              "scaled to", "enlarge a block", "enlarge the block", "enlarge by", "reduce by", "reduce to",
              "scale a block", "scale a block by", "reduce a block", "reduce the block"), extra=True, spoken=True,
              ask="By how much?", example="150 %", sane="5 %..2000 %"),
        Input("factor", "scale", RATIO, says=("times", "factor", "scale", "scale by", "by", "scaled by", "by a factor of",
              "times as large", "%"), default=(Default("1/2", derived=True, when={"by": "half"}),
              Default("2", derived=True, when={"by": "double"}), Default("=enlarge", derived=True, given=("enlarge",)),
              Default("=new / old", "The new block over the old", derived=True)),
              sane="0.05..20", practice="1/2..2 by 1/4", spoken=True),
        Input("patch", "patch, finished", LENGTH, says=("old patch", "old patches", "did the old ones finish", "what did the old",
             "old ones",
             "were the old patches",
             "patches", "patch", "finish", "finish at", "finished patch",
              "squares", "pieces", "finished"), default=Default("=cut - 2 * seam",
              "A patch finishes two seams smaller than it is cut", derived=True), sane="2 mm..2 m",
              practice="1 in..6 in by 1/2 in"),
        Input("cut", "patch, as cut", LENGTH, says=("cut", "patches cut", "cut at", "as cut", "squares cut",
              "cut patch", "pieces cut", "cut squares", "unfinished"),
              ask="What size do the patches finish (or are they cut)?", example="3 in",
              sane="5 mm..2 m", practice="1 1/2 in..7 in by 1/2 in"),
        replace(SEAM, sane="1 mm..3 cm"),  # the caution below counts in seams
    ),
    steps=(
        Step("percent", "As a percentage, for a copier", "factor", PERCENT, rounding=PERCENT_TENTH, label="scale in percent",
             says=("how many per cent", "per cent", "how many percent", "what per cent",
             "percentage", "what percentage", "copier", "percent", "scale", "by how much")),
        Step("new_patch", "Scale the finished patch", "patch * factor", rounding=SMALL, label="new patch, finished",
             says=("finished size of the new patch", "size of the new patch finished", "new patch finished",
             "finished size of the new patches", "new finished patch",
             "new ones finish", "do the new ones finish", "new patches finish", "what do they finish",
             "new patch finish", "will the new ones finish", "what do the new patches finish",
             "finished", "finished size", "new finished size", "finish", "becomes", "become")),
        Step("new_cut", "Add the seams, which do not change", "new_patch + 2 * seam", rounding=SMALL,
             label="new patch, cut", says=("cut", "what do i cut", "cut size", "new cut size", "cut the patches",
             "what size", "how big", "cut those patches"), stated=("new patches are cut", "new patch is cut", "new patches cut")),
        Step("new_block", "The block itself, scaled", "old * factor", rounding=SMALL, label="new block, finished",
             says=("what block", "what block do i get", "what size block", "how big a block", "what size is the block",
                   "big is the new block", "big is the block then", "block then",
             "size is the new block", "big will the block be", "new block size", "size of the new block", "block do i get"),
             stated=("new block came to", "block came to", "block came out", "new block came out at",)),
    ),
    answers=("new_cut", "new_patch", "percent", "new_block"),
    headline=("Cut the patch {new_cut}: it finishes {new_patch}.", "Scale it to {percent}."),
    spans=(("old", "new"),),
    home="in",
    source=ARITHMETIC,
    cautions=(
        Caution("The new size does not fall on the ruler's eighths: cut by the sixteenth nearest, or choose "
                "another block size", when="new_cut / seam != floor(new_cut / seam * 2) / 2 "),
    ),
    refusals=(Refusal("new_patch <= 0", "the seams would take the whole patch. Type a larger patch or a smaller seam."),),
    notes=("Never scale the cut size: the seams would be scaled too.", ),
    examples=(
        "The pattern is for a 9 inch block with patches that finish at 3 inches. I want a 12 inch block instead. "
        "What do I cut those patches -> 4 1/2 in; 4 in",
        "scale a block from 8 in to 6 in, what percentage on the copier -> 75 %",
        "make a 10 in block half the size, patches cut 3 in -> 1 3/4 in",
        "resize a 12 in block to 9 in, patches cut 4 1/2 in -> 3 1/2 in; 3 in",
    ),
    related=("patch",),
    defers=("scale",),
)
