"""Inputs and words that the fabric rules share."""

from __future__ import annotations

from ..engine.declare import Default, Input
from ..engine.kinds import LENGTH

CLOTH_WORDS = (
    "fabric", "cloth", "cotton", "linen", "wool", "lawn", "voile", "viscose", "silk", "satin", "denim", "calico",
    "poplin", "gingham",
    "flannel", "muslin", "crepe", "chiffon", "jersey", "tweed", "velvet", "corduroy", "damask", "canvas",
    "fabric width", "cloth width",
    "wide fabric", "wide cloth", "wide cotton", "roll", "bolt", "stuff", "moquette", "velveteen", "chintz", "ticking", "taffeta",
    "organza", "gabardine", "twill", "brocade", "hessian", "chambray", "seersucker", "sateen", "fleece",
)  # fmt: skip

# "How much cotton", "how many metres of lawn" ask for the cloth, whatever it is; the words alone would tell its width.
MUCH_CLOTH = tuple(f"{how} {cloth}" for how in ("much", "metre of", "yard of")
                   for cloth in (*CLOTH_WORDS[: CLOTH_WORDS.index("fabric width")], "stuff", "fleece"))

CLOTH_ASKED = ("metres please", "yards please", "metres needed", "yards needed", "yardage needed", "metres required", *MUCH_CLOTH,
               *(f"{length} of {cloth}" for length in ("what length",
               "length") for cloth in CLOTH_WORDS[: CLOTH_WORDS.index("fabric width")]))

# How a length that is in hand is told, besides "I have": it is this much that must do.
IN_HAND_WORDS = ("able to get", "managed to get", "to spare", "in the drawer", "in my drawer", "in the cupboard",
                 "in my cupboard", "got left",
                 "left over", "i've only", "i've only got", "we've only")

CLOTH_WIDTH = Input(
    "width", "fabric width", LENGTH, says=(*CLOTH_WORDS, "wide", "width"), ask="How wide is the cloth?",
    example="150 cm",
    sane="10 cm..3.5 m", usual="85 cm..3 m", practice="110 cm..150 cm by 5 cm",
)  # fmt: skip

# How cloth to buy is asked for besides "how much fabric"; no phrase opens with "how", which would bind it to a number before it.
BUY_WORDS = ("stuff do i need", "how much stuff", "a piece do i buy", "long a piece", "long a piece do i buy", "off the bolt",
             "off the roll", "do i buy", "shall i buy", "should i buy", "must i buy", "do i order", "should i order", "to order",
             "do i ask for", "should i ask for", *CLOTH_ASKED)

# Home sewing's seam allowance: 5/8 in, printed as 1.5 cm.
SEAM = Input(
    "seam", "seam allowance", LENGTH, says=("seam allowance", "seams", "seam", "allowance"), default="5/8 in | 1.5 cm",
    because="the usual seam allowance of home patterns", sane="0 cm..10 cm", practice="1/4 in..1 in by 1/8 in",
    usual="0 cm..4 cm",
    spoken=True,
)  # fmt: skip


def hem(inch_and_metric: str, because: str) -> Input:
    """A hem of a usual depth."""
    return Input("hem", "hem", LENGTH, says=("hem", "hem allowance", "deep hem"), default=Default(inch_and_metric,
        because),
                 sane="0 cm..30 cm", practice="1/2 in..3 in by 1/4 in", usual="0 cm..12 cm", spoken=True)  # fmt: skip
