"""What a piece that has been cut finishes at: its cut size less the allowance at each edge, and the hem."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Input, Refusal, Rule, Step, flag
from ..engine.kinds import LENGTH
from ..engine.rounding import CUT
from .allowance import ALLOWANCE, HEM, ON_FOLD, SIDES, TOP
from .words import told

PIECES = ("panel", "piece", "yoke", "cuff", "pocket flap", "skirt panel", "skirt front", "skirt back", "bodice front", "bodice back",
    "facing",
    "flap", "sleeve piece", "skirt piece")  # fmt: skip
WHEN = ("once sewn", "when sewn", "after sewing", "once made up")
# "Once sewn" may tell what is wanted as well as ask for it, so only asking forms call for this rule.
SEWN = (
    *(f"is it {when}" for when in ("when sewn", "once sewn", "after sewing", "once it is sewn", "once stitched", "when made up")),
    *(f"how {axis} {when}" for axis in ("wide", "long", "big", "tall") for when in WHEN),
    *(f"{verb} it come out at" for verb in ("does", "will", "would")), "after sewing how", "left once sewn", "left when sewn",
        "will it be when sewn", "will it be once sewn", "finished length when sewn",
    *(f"how {axis} is it {when}" for axis in ("wide", "long", "big", "tall") for when in WHEN),
    *(f"how {axis} sewn" for axis in ("wide", "long", "big", "tall", "deep")),
    "finished width and height", "finished width and length", "finished height and width", "finished length and width",
    "finished width when sewn", "finished size when sewn", "height once sewn",
)  # fmt: skip
FINISH = ("does it finish", "do they finish", "will it finish", "would it finish", "finishes how", "does that finish",
    "finish at what", "size finished",
    "finished size of a piece cut", "does the panel finish", "does the piece finish", "does the yoke finish", "will it be finished",
    "wide will it be sewn", "what's left when sewn", "is left once sewn",
    *(f"{piece} {cut}" for piece in PIECES for cut in ("was cut", "i cut", "as cut")))  # fmt: skip

SEWN_SIZE = Rule(
    topic="size when sewn",
    family="fit",
    says=(
        *SEWN,
        *(f"{piece} {cut}" for piece in PIECES for cut in (("was cut", "is cut", "as cut") if piece == "panel" else ("cut",
        "was cut", "is cut", "i cut", "as cut"))),
        "wide as cut",
        *(f"cut a {piece}" for piece in PIECES),
        *(f"cut the {piece}" for piece in PIECES),
        "have a piece",
        "if i cut a",
        "seams all round",
        "piece of",
        "long as cut",
    ),
    about="What a cut piece measures once it is sewn: the allowance at each edge, and the hem, come off it.",
    inputs=(
        Input(
            "width",
            "width as cut",
            LENGTH,
            says=("wide", "width", "across", "have a piece", "a piece", "wide as cut", "cut width", "was cut", "is cut", "panel cut",
                "piece cut"),
            axis="width",
            ask="How wide is the piece as cut?",
            example="24 in",
            sane="1 cm..10 m",
            practice="6 in..42 in by 1 in",
        ),
        Input(
            "length",
            "length as cut",
            LENGTH,
            says=("long", "length", "deep", "high", "tall", "long as cut", "cut length", *told("depth", "height")),
            axis="length",
            ask="How long is the piece as cut?",
            example="30 in",
            sane="1 cm..10 m",
            practice="8 in..48 in by 1 in",
        ),
        ALLOWANCE,
        TOP,
        HEM,
        flag("fold", "one side on a fold", ("on a fold", "on the fold", "on fold", "cut on fold", *ON_FOLD)),
        SIDES,
    ),
    steps=(
        Step(
            "sewn_width",
            "Take off the allowance at each side edge that is not on a fold",
            "width - sides * allowance",
            LENGTH,
            rounding=CUT,
            label="finished width",
            says=(
                "finished width", "how wide", "finished size", "what size", "width finished", "width once sewn", "finished width when sewn",
                *(f"how wide {when}" for when in WHEN), *(f"how wide is it {when}" for when in WHEN),
            ),
            axis="width",
        ),
        Step(
            "sewn_length",
            "Take off the top allowance and the hem",
            "length - top - hem",
            LENGTH,
            rounding=CUT,
            label="finished length",
            says=(
                "finished length", "how long", "finished height", "length once sewn", "height once sewn", "height finished",
                "how tall", "how deep",
                "finished length when sewn", *(f"how {axis} {when}" for axis in ("long", "tall") for when in WHEN),
                *(f"how {axis} is it {when}" for axis in ("long", "tall") for when in WHEN),
            ),
            axis="length",
        ),
    ),
    answers=("sewn_width", "sewn_length"),
    headline=(
        "Sewn, it is {sewn_width} wide and {sewn_length} long.",
        "Sewn, it is {sewn_width} wide.",
        "Sewn, it is {sewn_length} long.",
    ),
    sizes=(("width", "length"),),
    called=(*SEWN, *FINISH),
    no_unknown=("width", "length", "allowance", "top", "hem"),
    refusals=(
        Refusal("width - sides * allowance <= 0", "the seams take the whole width. Such as: panel cut 24 x 30 in, 5/8 in seams, when sewn"),
        Refusal("length - top - hem <= 0", "the seams and the hem take the whole length. Such as: panel cut 24 x 30 in, when sewn"),
    ),
    source=COMMON_PRACTICE,
    cautions=(Caution("An edge on a fold loses nothing."),),
    examples=(
        "a panel is cut 24 in by 30 in, 5/8 in seams on all four edges, what size does it finish -> 22 3/4 in; 28 3/4 in",
        "yoke cut 42 cm wide with 1 cm seams, how wide once sewn -> 40 cm",
        "skirt panel cut 33 x 60 cm, 1.5 cm seams and a 4 cm hem, finished length when sewn? -> 54.5 cm",
    ),
    related=("add seam allowance",),
    defers=("tote", "placket", "bias binding", "napkins", "cushion cover"),
)
