"""The cut size of a plain patch from its finished size."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import FINE, PATCH_CUT
from .words import SEAM

# Blocks of equal squares in a grid, the squares each way.
EACH_WAY = {"one": 1, "four_patch": 2, "nine_patch": 3, "sixteen_patch": 4}
GRIDS = {"one": ("a single patch",), **{f"{word}_patch": (*(form.format(number) for number in (word, figure) for form in
         ("a {} patch", "{} patch block", "{} patch unit", "each {} patch", "{}patch", "one {} patch", "{} patch made",
           "{} patch is made", "{} patch from")),) for word, figure in (("four", 4), ("nine", 9), ("sixteen", 16))}}
TRIMMED = tuple(f"{patches} trimmed{end}" for patches in ("square", "squares", "patch", "patches", "charm", "charms", "block", "blocks")
                for end in (" to", " at", ""))
# What is said of a patch as it lies cut, its seams still in it.
AS_CUT = (*TRIMMED, "made of", "made from", "sewn from", "pieced from", "trimmed to", "trimmed at", "is cut", "are cut", "was cut",
  "were cut", "cut squares", "cut square", "patch cut", "patches cut", "rectangle cut",
          "rectangles cut", "squares cut", "square cut", "sew rectangles", "in rectangles", "unfinished", "raw",
          "measured raw", "raw edge to raw edge",
          "charm square", "cut my squares at", "before sewing", "before it is sewn", "before they are sewn",
          "with the seams", "in charm square", "in charm squares", "including seams", "including the seams")

PATCH = Rule(
    topic="patch",
    family="quilting",
    says=("lose off", "lost off", "lose in the seams", "goes into the seams", "lost to the seams", "lost in the seams",
          "lose to the seams", "squares cut",
          "patch", "patches", "cut size", "cut sizes", "square patch", "cut a square", "cut squares", "rectangle",
          "rectangles", "plain square", "plain patch", "unfinished size", "unfinished size of a", "cut patches",
          "finished squares", "squares", "patchwork", "charm square", "charm squares", "plain block", "brick", "bricks",
          "corner squares finish", "strips finish", "strip finish", "strips that finish", "log cabin", "square came out", "once sewn in",
          *GRIDS["four_patch"], *GRIDS["nine_patch"], *GRIDS["sixteen_patch"], "rectangles finish", "charms", "charm", *TRIMMED,
            "finished square", "finished rectangle", "rect", "be cut how big"),
    about="The size to cut a square or rectangle that finishes at a given size: a seam on every side.",
    inputs=(
        Input("width", "finished width", LENGTH, says=("finished", "finish", "finish at", "finished size", "wide",
              "finished square", "come out", "sewn in", "measure", "once sewn", "after sewing", "sewn up", "end up",
              "finished dimension", "finished dimensions", "final size", "in the quilt", "when sewn"), axis="width",
              default=Default("=each_way * (raw_width - 2 * seam)", "Sewn in, a patch loses a seam on every side", derived=True,
              given=("raw_width",)), ask="What size does the patch finish?", example="4 in", sane="2 mm..3 m",
              practice="1 in..12 in by 1/2 in"),
        Input("length", "finished length", LENGTH, says=("long", "length", "tall", "high", "deep"), axis="length",
              default=(Default("=each_way * (raw_length - 2 * seam)", "Sewn in, a patch loses a seam at both ends", derived=True,
              given=("raw_length",)), Default("=width", "A square is as long as it is wide", derived=True)),
              sane="2 mm..3 m", practice="1 in..12 in by 1/2 in", spoken=True),
        Input("raw_width", "width as cut", LENGTH, says=(*AS_CUT, "cut", "cut at"), extra=True,
              ask="How wide is the patch cut?", example="4 1/2 in", sane="3 mm..1.5 m", usual="5 mm..60 cm"),
        Input("raw_length", "length as cut", LENGTH, says=AS_CUT, extra=True, spoken=True,
              ask="How long is the patch cut?", example="6 1/2 in", sane="3 mm..1.5 m", usual="5 mm..60 cm"),
        choice("grid", "block", GRIDS, default=Default("one", derived=True)),
        Input("each_way", "squares each way", COUNT, spoken=True, default=tuple(Default(str(ways), derived=True, when={"grid": key})
              for key, ways in EACH_WAY.items())),
        SEAM,
    ),
    steps=(
        Step("sewn_width", "Sewn in, it loses a seam on both sides", "each_way * (raw_width - 2 * seam)", rounding=FINE,
             label="finished width", says=("finish at", "what do they finish", "what do they finish at", "what does it finish",
             "what does it finish at", "does it finish", "do they finish", "will it finish", "will they finish",
             "it come out", "they come out", "finished size", "in the quilt", "after sewing", "once sewn", "end up",
             "sewn up", "final size", "finish size", "be when sewn", "what is it finished", "is it finished",
             "are they finished", "be finished",
             "be once sewn", "be sewn")),
        Step("sewn_length", "And a seam at both ends", "each_way * (raw_length - 2 * seam)", rounding=FINE, label="finished length",
             says=("how long does it finish", "long does it finish", "how long will it finish", "long do they finish",
             "finished length", "how long is it finished", "how long is it once sewn", "how long does it come out",)),
        Step("cut_width", "Add a seam allowance on both sides", "width / each_way + 2 * seam", rounding=PATCH_CUT,
             label="cut width", says=("cut size", "cut", "cut sizes", "cut width", "unfinished", "unfinished size",
             "cut how big", "cut how large", "what size to cut", "how big to cut", "how big do i cut", "how big must i cut",
             "what size do i cut")),
        Step("cut_length", "Add a seam allowance at both ends", "length / each_way + 2 * seam", rounding=PATCH_CUT,
             label="cut length",
             says=("cut length", "long side cut", "long side cut at", "long side be cut", "cut the long side", "how long to cut",
             "how long do i cut", "long to cut it", "how long must i cut",
             "length to cut",)),
        Step("lost", "Both seams together", "2 * seam", label="lost to the seams", says=("lose", "lost", "lose altogether", "lose off",
             "lost off", "lose in the seams", "goes into the seams", "lost to the seams", "lost in the seams", "how much smaller",
             "taken up by the seams", "how much is lost", "lose to the seams")),
        Step("taken", "What is gone is the seams on both sides", "(raw_width - width / each_way) / 2", rounding=FINE, label="seam sewn",
             says=("what seam", "which seam", "how wide a seam", "how wide was the seam", "how wide is the seam", "how big was the seam",
             "how big is the seam", "seam was used", "seam did i sew", "what seam allowance", "how much seam")),
    ),
    answers=("sewn_width", "sewn_length", "cut_width", "cut_length"),
    headline=("It finishes {sewn_width} by {sewn_length}.", "It finishes {sewn_width}.", "Cut the patch {cut_width} by {cut_length}.",),
    sizes=(("width", "length"), ("raw_width", "raw_length")),
    refusals=(Refusal("raw_width < width / each_way", "a patch cannot finish larger than it is cut. Say which is the finished size."),
              Refusal("width <= 0", "the seams would take the whole patch. Type a larger patch or a smaller seam."),
              Refusal("length <= 0", "the seams would take the whole patch. Type a larger patch or a smaller seam.")),
    home="in",
    source=ARITHMETIC,
    examples=(
        "patch 2 1/2 x 4 1/2 in finished, cut size -> 3 in; 5 in",
        "what cut size for squares that finish at 6 in -> 6 1/2 in",
        "a patch cut 4 1/2 in, 1/4 in seams, what does it finish at -> 4 in",
        "patch cut 3 1/4 by 5 3/4 in, what does it finish at -> 2 3/4 in; 5 1/4 in",
        "cut size of a 10 cm finished patch -> 11.5 cm",
        "nine patch block finishing 9 in, what do I cut the squares -> 3 1/2 in",
    ),
    related=("half-square triangles", "scale a block"),
    defers=("cover from pieces",),
)
