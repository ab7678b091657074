"""Backing for a quilt: panels either way, the thriftier first."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step, choice
from ..engine.drawing import BackingDrawing
from ..engine.kinds import AREA, COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_UP, SHEET
from ..engine.run import Run
from .words import CLOTH_ASKED, LENGTH_OF_QUILT, QUILT_ASKED, SQUARE, USABLE_WIDTH, WIDTH_OF_QUILT

OVER = Input("over", "extra on each side", LENGTH, says=("over", "extra", "each side", "on each side",
             "over on each side", "all round", "overhang", "overage", "to spare all round", "to spare on each side",
             "to spare all the way round", "in to spare", "spare on each side", "bigger on each side",
             "extra on each side", "extra all round", "over each side", "spare all round", "larger on each side",
             "all the way round", "beyond the top", "over all round", "over ea side", "over a side", "over per side",
             "over every side", "on every side", "every side", "a side", "per side", "larger all round", "bigger all round",
             "beyond the quilt", "beyond the edge", "more on each side", "how much over", "how much extra"), default="4 in | 10 cm",
             because="what most quilters and longarm services ask for (published: 2 to 6 in)", sane="0 cm..60 cm",
             practice="2 in..6 in by 1 in")  # fmt: skip


def _layout(run: Run) -> Outcome:
    """Which way the seams run, in words and to scale."""
    upright, panels = run.get("need") == run.get("down_cloth"), int(run.get("panels"))
    width, length, unit = run.get("wide"), run.get("long"), run.unit_of(LENGTH)
    if panels == 1:
        words = f"in one piece, its {'length' if upright else 'width'} along the cloth"
    else:
        long, way = run.show(length if upright else width, LENGTH), "down" if upright else "across"
        words = f"{panels} panels {long} long, seams {way} the quilt"
    return Outcome({"layout": words}, drawing=BackingDrawing(width, length, run.get("usable") - run.get("join"),
    panels, upright, unit))


BACKING = Rule(
    topic="backing",
    family="quilting",
    says=("in backing", "inch backing", "cm backing",
          "backing", "quilt back", "backing fabric", "back a quilt", "back a", "back my", "back the", "back this",
          "to back", "quilt backing", "backing yardage", "wide backing", "backing cloth", "fabric for the back",
          "back of the quilt", "backing panels", "lining for the quilt", "back my quilt", "wideback",
          "back the quilt", "back it", "back side of the quilt", "back side for quilt", "back side for a quilt",
          "back for a quilt", "back for the quilt", "wide back", "back for an", "quilt backs", "for the back",
          *(f"quilt {can} i back" for can in ("can", "could", "may", "might")), "can i back", "could i back", "will they back",
          "will it back", "would it back"),
    about="How much cloth backs a quilt, in panels with the seams down it or across it, whichever takes less.",
    inputs=(
        replace(WIDTH_OF_QUILT, says=(*WIDTH_OF_QUILT.says, *QUILT_ASKED)),
        LENGTH_OF_QUILT,
        SQUARE,
        OVER,
        replace(USABLE_WIDTH, says=(*USABLE_WIDTH.says, "in backing", "cm backing", "backing fabric", "backing on the roll")),
        Input("join", "taken by each join", LENGTH, says=("each join", "per join", "joins take", "taken by joins",
              "for joining", "seam", "joining seam", "joins taking", "joins of", "lost to joins", "joint loss",
              "lost at each join"), spoken=True, default="1 in | 2.5 cm", because="a 1/2 in seam on both panels",
              sane="0 cm..10 cm", practice="1/2 in..1 in by 1/4 in"),
        choice("seams", "seams run", {"thriftier": ("whichever takes less", "whichever way takes less",
               "whichever way is less", *(f"whichever way the {seams} {run}" for seams in ("seam", "seams") for run in ("run", "runs", "go",
               "goes", "lie"))), "down": ("seams down",
               "vertical seams", "seam down", "lengthwise", "seams running down", "seams run down", "seam running down",
               "vertical seam", "seams go down", "seams lengthwise"), "across": ("seams across", "horizontal seams", "seam across",
               "widthwise", "crosswise seams", "seams running across", "seams run across", "horizontal seam", "seam running across",
               "seams go across", "seams crosswise", "crosswise")}, default=Default("thriftier", derived=True)),
        Input("way", "way the seams must run", COUNT, spoken=True, default=(Default("0", derived=True, when={"seams": "thriftier"}),
              Default("1", derived=True, when={"seams": "down"}), Default("2", derived=True, when={"seams": "across"}))),
    ),
    steps=(
        Step("wide", "Add the extra on both sides", "width + 2 * over", rounding=SHEET, label="backing width",
             says=("backing is how wide", "backing how wide", "backing be how wide",
             "inches wide", "how wide is the backing", "how wide should the backing", "how wide must the backing",
             "backing width", "how wide the backing", "width of the backing", "how wide a backing",
             "how wide will the backing", "cm wide is the backing",
             "backing size", "size of the backing", "how big", "how large", "what size",
                   "size", "size of backing", "what size backing", "how big a backing", "how big is the backing",
                   "how big should the backing", "what size should the backing", "how large a backing",
                   "size backing"), stated=("wide", "backing came to", "backing is", "backing measures", "came to",
             "came out at")),
        Step("long", "Add the extra at both ends", "length + 2 * over", rounding=SHEET, label="backing length",
             says=("backing is how long", "backing how long", "backing be how long",
             "how long will the backing", "how long is the backing", "how long should the backing",
             "how long must the backing", "how long a backing", "backing length", "length of the backing",
             "how long the backing", "how long does the backing",),
             stated=("backing is", "backing came to",)),
        Step("area", "Its area, if it is pieced from what is left over", "wide * long", AREA, label="backing area",
             says=("area", "square inches", "left over", "leftovers", "scraps")),
        Step("down_panels", "Seams down the quilt: every width of cloth but the first loses a join",
             "ceil((wide - join) / (usable - join))", COUNT, label="panels, seams down", noun="panel"),
        Step("down_cloth", "Each panel is as long as the backing", "down_panels * long", label="cloth, seams down"),
        Step("across_panels", "Seams across the quilt: the cloth lies the other way",
             "ceil((long - join) / (usable - join))", COUNT, label="panels, seams across", noun="panel"),
        Step("across_cloth", "Each panel is as long as the backing is wide", "across_panels * wide",
             label="cloth, seams across"),
        Step("need", "Take the way that needs less, or the one named",
             "if(way = 1, down_cloth, if(way = 2, across_cloth, min(down_cloth, across_cloth)))", label="length of cloth",
             unit=("in", "cm")),
        Step("cloth", "As it is bought", "need", rounding=BUY_CLOTH, label="cloth for the backing",
            says=(*CLOTH_ASKED, "how much backing", "yards", "metres"), stated=("have", "left")),
        Step("panels", "Its panels", "if(need = down_cloth, down_panels, across_panels)", COUNT,
             rounding=COUNT_UP, noun="panel", label="panels", says=("how many panels", "panels", "how many widths",
             "how many lengths", "number of panels"), stated=("panels", "panels of", "widths of", "widths", "lengths of", "have", "joined",
             "seamed together", "sewn together")),
        Step("panel_length", "Each panel is as long as the backing is that way", "if(need = down_cloth, long, wide)", rounding=SHEET,
             label="length of a panel", says=("how long is each panel", "length of each panel", "long is each panel",
             "long are the panels", "length of the panels", "long must each panel", "long do i cut each panel",
             "long is a panel", "cut length of each panel", "length of a panel")),
        Step("layout", "", kind=TEXT, label="how it lies", says=("which way", "way do the seams run", "way should the seams run",
          "way the seams run best", "how do the seams run",
             "how does it lie", "layout")),
    ),
    answers=("cloth", "panels", "layout", "wide", "long", "down_cloth", "across_cloth", "area"),
    headline=("Buy {cloth} of cloth for the backing: {layout}.", "The backing is {wide} by {long}."),
    sizes=(("width", "length"),),
    told_sizes=(("wide", "long"),),
    home="in",
    insists=True,
    source=COMMON_PRACTICE,
    refusals=(Refusal("join >= usable",
                      "the joins would take the whole width of the cloth. Type a wider cloth or a smaller join."),),
    algorithm=_layout,
    cautions=(
        Caution("Longarm services may ask for more on each side, and for square edges: ask yours",
                mentions=("longarm", "longarmer", "service", "quilter", "backing")),
        Caution("What the joins take tips the count here: charts that leave them out give a panel fewer",
                when="if(need = down_cloth, down_panels - ceil(wide / usable), across_panels - ceil(long / "
                "usable)) > 0"),
    ),
    examples=(
        "How many yards of 40 inch usable fabric do I need to back a quilt 64 by 82 inches, with 4 inches extra on "
        "each side -> 5 yd; 2 panels",
        "backing yardage for a 74 x 88 quilt, 4 in over each side, 108 in wide backing -> 2 3/8 yd; 1 panel",
        "backing for a 120 x 150 cm quilt, 110 cm usable -> 2.8 m; 2 panels",
        "how big is the backing for a 60 x 80 quilt with 4 in over each side -> 68 in; 88 in",
    ),
    related=("wadding (batting)", "binding strips"),
)
