"""Seams that are a little off: how it adds up, and the seam that comes out right."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import DRIFT
from .words import SEAM

SEAM_DRIFT = Rule(
    topic="seam drift",
    family="quilting",
    says=("drift", "seam drift", "too short", "too long", "off by", "too narrow", "too wide", "seams out",
          "came out", "each seam is", "seam error", "out of true", "comes up short", "seam is off", "seams are off",
          "a thread too", "too small", "too big", "out by", "off", "seams each", "too much seam", "too little seam"),
    about="What a small error in every seam adds up to, and the seam allowance that makes a row come out right.",
    inputs=(
        Input("seams", "number of seams", COUNT, says=("seams", "joins", "seam", "joining seams"), noun="seam",
              ask="How many seams are there in the row?", example="12", sane="1..2000", practice="6..40 by 1"),
        Input("error", "error a seam", LENGTH, says=("each", "a seam", "per seam", "every seam", "off", "each seam",
              "in each seam", "out", "error", "each one", "at each seam", "on each seam", "off each", "too wide",
              "too narrow", "too deep", "too much", "too big on each", "too small on each", "too big in each",
              "too small in each"), ask="How much is each seam out (or the whole row)?", example="1/16 in",
              sane="0.1 mm..2 cm", practice="1/32 in..1/8 in by 1/32 in"),
        choice("counted", "error counted", {"a_seam": ("per seam", "each seam", "every seam"),
               "an_allowance": ("per seam allowance", "seam allowance is off", "each seam allowance", "on each side",
               "per allowance", "each allowance", "on each patch")}, default=(Default("a_seam",
               "the more usual way to say it"),)),
        Input("sides", "allowances that are out, in each seam", COUNT, spoken=True, default=(Default("1",
              derived=True, when={"counted": "a_seam"}), Default("2", derived=True,
              when={"counted": "an_allowance"}))),
        Input("total", "error of the whole row", LENGTH, says=("too short", "too long", "short", "long", "too small",
              "too big", "came out", "in all", "altogether", "out", "row", "shorter", "longer", "out by", "over",
              "comes up short"), default=Default("=seams * error * sides", "Add up what every seam is out",
              derived=True), sane="0.1 mm..20 cm", practice="1/4 in..1 in by 1/8 in"),
        choice("which", "the row is", {"too_short": ("too short", "short", "too narrow", "too small", "shorter",
               "narrow", "small"), "too_long": ("too long", "too wide", "too big", "too large", "longer"), },
               default=(Default("too_short", "the usual way for rows to go wrong"),)),
        SEAM,
    ),
    steps=(
        Step("drift", "The whole error", "total", rounding=DRIFT, label="error in all", says=("how much", "total",
             "in all", "add up", "altogether", "how far out", "how far off", "add up to", "how much in all",
             "total error", "overall", "difference")),
        Step("each", "Shared among the seams", "total / seams", rounding=DRIFT, label="error a seam",
             says=("each seam", "per seam", "error per seam")),
        Step("right_narrower",
             "A row too short was sewn with too much seam: half a seam's error comes off each patch's allowance",
             "seam - total / seams / 2", rounding=DRIFT, label="seam that comes out right",
             when={"which": "too_short"}, says=("what seam allowance", "seam allowance", "what seam", "right seam",
             "come out right", "allowance", "comes out right", "should i sew", "my seam be", "seam should i", "what should my seam",
             "the seam be")),
        Step("right_wider",
             "A row too long was sewn with too little: half a seam's error goes on to each patch's allowance",
             "seam + total / seams / 2", rounding=DRIFT, label="seam that comes out right",
             when={"which": "too_long"}, says=("what seam allowance", "seam allowance", "what seam", "right seam",
             "come out right", "allowance", "comes out right", "should i sew", "my seam be", "seam should i", "what should my seam",
             "the seam be")),
    ),
    answers=("drift", "each", "right_narrower", "right_wider"),
    headline=("Sew {right_narrower} instead.", "Sew {right_wider} instead.", "The seams are {drift} out in all."),
    home="in",
    source=ARITHMETIC,
    refusals=(Refusal("total / seams / 2 >= seam", "no seam would be left. Type a smaller error or more seams.",
                      {"which": "too_short"}),),
    notes=("An error is counted here for each seam; some count it for each seam allowance, which is twice as much: "
           "say “on each allowance” for that.", ),
    examples=(
        "row w/ 12 seams came out 3/4 in too short, I sew at the 1/4 in mark, what seam allowance comes out right "
        "-> 7/32 in; 1/16 in",
        "23 seams each 1/16 in off, how much in all -> 1 7/16 in",
        "my row of 10 seams is 5/8 in too long, what seam allowance comes out right -> 9/32 in",
    ),
    related=("patch",),
)
