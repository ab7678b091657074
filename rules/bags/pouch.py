"""Zipped pouches: zip, tabs, gusset."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH
from ..engine.outcome import Outcome
from ..engine.rounding import CUT
from ..engine.run import Impossible, Run
from .words import SEAM_OF_BAG


def _pouch(run: Run) -> Outcome:
    """Half of a gusset with a zip in it. A zip as wide as the gusset is refused only where the gusset is asked for, as a
    boxed pouch without one may well be less deep than its zip is wide.
    """
    depth, zip_width, seam = (Fraction(run.get(name)) for name in ("depth", "zip_width", "seam"))
    if depth <= zip_width:
        if run.request.asked[:1] == ("gusset",):
            raise Impossible("the zip is as wide as the gusset or wider. Type a deeper gusset or a narrower zip.")
        return Outcome({})
    half = (depth - zip_width) / 2 + 2 * seam
    run.say("Each half of a gusset with a zip in it: half of what the zip leaves, and two seams",
            "(depth of the base − width of the zip) ÷ 2 + 2 × seam allowance",
            f"({run.show(depth, LENGTH)} − {run.show(zip_width, LENGTH)}) ÷ 2 + 2 × {run.show(seam, LENGTH)}",
            run.show(half, LENGTH))  # fmt: skip
    return Outcome({"gusset": half})


POUCH = Rule(
    topic="zipped pouch",
    family="bags",
    says=("zipped pouch", "zip pouch", "pouch", "zipped top", "zip top", "pencil case", "cosmetic bag", "make-up bag",
        "makeup bag", "zipped bag", "zippy pouch", "wash bag", "toiletry bag", "zip bag", "coin purse",
        "zipped purse", "zip tabs", "zip gusset", "gusset zip", "recessed zip", "boxy pouch"),
    about="The zip, end tabs and panels of a zipped pouch or bag top.",
    inputs=(
        Input("width", "finished width", LENGTH,
            says=("wide", "width", "across", "finished", "long", "finished width", "pouch", "finish",
                  "will it finish", "does it finish",
                "will it be", "does the pouch finish", "come out", "finished pouch", "did the pouch finish",
                "how wide was the pouch", "how wide is the pouch"), axis="width",
            ask="How wide is the finished pouch?", example="9 in", sane="3 cm..2 m", practice="6 in..14 in by 1/2 in"),
        Input("height", "finished height", LENGTH,
            says=(
                "how tall does the pouch come out", "how high does the pouch come out",
                "how tall does it come out", "how high does it come out", "how high did it come out",
                "how tall will the pouch be", "tallest pouch",
                "finished height", "how high does the pouch finish", "how high will the pouch be",
                "how tall does the pouch finish", "how high does it finish", "how tall does it finish",
                "how high will it finish", "how tall will it be", "how high is the pouch",
                "high", "tall", "height", "deep from the zip"), axis="height",
            ask="How high is the finished pouch?", example="6 in", sane="2 cm..2 m", practice="3 in..9 in by 1/2 in"),
        Input("depth", "depth of the base", LENGTH,
            says=("deep", "depth", "base", "boxed", "gusset", "gusset depth"), axis="depth",
            default=Default("0 in", "a flat pouch", derived=True), sane="0 mm..1 m", practice="2 in..4 in by 1/2 in"),
        SEAM_OF_BAG,
        Input("clear", "zip shorter by", LENGTH,
            says=("shorter", "less", "clear", "shorter than the pouch", "zip shorter", "with a zip"),
            default="1 in | 2.5 cm", because="the zip's ends stay clear of the side seams", sane="0 mm..20 cm",
            practice="1/2 in..2 in by 1/2 in"),
        Input("tab", "finished end tab", LENGTH,
            says=("tab", "tabs", "end tabs", "end tab", "tab finished", "tabs finished", "end finished", "finished tab",
                "finished tabs"),
            default="1 in | 2.5 cm", because="the usual tab at a zip's end", sane="0 mm..20 cm"),
        Input("zip_width", "width of the zip", LENGTH,
            says=("wide zip", "zip tape", "zip width", "zip", "wide"), spoken=True,
            default="1 in | 2.5 cm", because="a dress-weight zip with its tapes", sane="5 mm..7 cm",
            usual="1.5 cm..4.5 cm"),
    ),
    steps=(
        Step("zip_length", "The zip is shorter than the pouch, so that its ends stay clear of the seams",
            "width - clear", rounding=CUT, label="zip length",
            says=("zip", "zip length", "how long a zip", "what zip", "what size zip", "length of zip", "how long",
                "zip size"), axis="length", stated=("zip", "have", "in zip", "zip is")),
        Step("panel_width", "The width, half the depth at each side, and a seam at each side",
            "width + depth + 2 * seam", rounding=CUT, label="panel width",
            says=("how wide is the pouch panel", "how wide are the pouch panels", "how wide is the pouch cut",
                "panel", "panel size", "panel width", "panel dimensions", "dimensions of the panels", "bag panel",
                  "case panel", "cut size", "size to cut",
                  "panels", "cut", "what size",
                "cut width", "how wide"), axis="width",
            stated=("panel cut", "panels cut", "panel is", "panels are", "cut", "cut panels", "pieces are")),
        Step("panel_height", "The height, half the depth, and a seam at the zip and at the base",
            "height + depth / 2 + 2 * seam", rounding=CUT, label="panel height",
            says=("panel height", "cut height", "how high"), axis="height",
            stated=("cut high", "high cut", "panel cut", "panels cut",)),
        Step("tab_piece", "Each tab is folded: twice its length and two seams", "2 * tab + 2 * seam", rounding=CUT,
            label="tab piece, long",
            says=("tab", "tabs", "tab piece", "end tab")),
        Step("gusset", "Each half of a gusset with a zip in it: half of what the zip leaves, and two seams",
            rounding=CUT, label="gusset half, wide",
            says=("gusset", "gusset pieces", "gusset half", "gusset strips", "zip gusset", "each half", "half of the gusset",
                "how wide is each half", "each gusset piece")),
    ),
    answers=("zip_length", "panel_width", "panel_height", "tab_piece"),
    headline=("Use a zip {zip_length} long; cut two panels {panel_width} wide by {panel_height} high.",
        "Cut two panels {panel_width} wide by {panel_height} high.",
              "Use a zip {zip_length} long.", "Cut each half of the gusset {gusset} wide.",
              "Cut each tab {tab_piece} long, folded in half."),
    sizes=(("width", "height", "depth"), ("width", "height")),
    source=COMMON_PRACTICE,
    algorithm=_pouch,
    no_unknown=("seam", "tab", "zip_width"),
    refusals=(Refusal("width <= clear", "the zip would have no length: it is shorter by more than the pouch is wide. "
                "Type a wider pouch or a zip less shorter."),),
    cautions=(Caution("Do not sew over metal teeth by machine: turn the wheel by hand there", mentions=("metal",
                "brass",
            "teeth")),),
    examples=(
        "zip length for a pouch 9 in wide finished -> 8 in",
        "zipped pouch 20 x 15 cm, 1 cm seams: panel size -> 22 cm; 17 cm; 17.5 cm",
        "I have an 8 in zip, how wide a zipped pouch can I make -> 9 in",
    ),
    related=("zip", "tote"),
)
