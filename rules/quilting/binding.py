"""Strips to bind a quilt's edge."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from .words import LENGTH_OF_QUILT, USABLE_WIDTH, WIDTH_OF_QUILT

BINDING_STRIPS = Rule(
    topic="binding strips",
    family="quilting",
    says=("binding", "bind", "quilt binding", "bind a quilt", "binding strip", "double-fold binding strips"),
    about="How many strips to cut across the cloth to bind a quilt, and the cloth for them.",
    inputs=(
        WIDTH_OF_QUILT,
        LENGTH_OF_QUILT,
        Input("edge", "edge to bind", LENGTH, says=("all the way around", "all round", "perimeter", "edge", "round the edge"), axis="girth",
              default=Default("=2 * (width + length)", "Add the four sides", derived=True), sane="10 cm..60 m"),
        Input("strip", "strip width", LENGTH, says=("strips", "strip", "binding strips", "wide strips", "cut strips", "wide", "strips wide"),
              default="2 1/2 in | 6.5 cm", because="the usual double binding", sane="1 cm..30 cm", practice="2 in..3 in by 1/4 in",
              usual="3 cm..12 cm"),
        USABLE_WIDTH,
        Input("joins", "extra for joins and corners", LENGTH, says=("joins and corners", "joins", "corners", "extra", "spare"),
              default="10 in | 25 cm", because="the usual allowance for joining strips and turning corners", sane="0 cm..2 m",
              practice="8 in..16 in by 1 in"),
    ),
    steps=(
        Step("need", "Add the extra for joins and corners", "edge + joins", label="length of binding", rounding=CUT,
             says=("length of binding", "binding length", "how long a binding")),
        Step("strips", "Divide by what one strip gives, and take whole strips", "need / usable", COUNT, rounding=COUNT_UP,
             noun="strip", says=("how many strips", "number of strips", "how many", "binding strips", "how many binding strips", "strips of binding"), stated=("have", "found", "left", "cut")),
        Step("cloth", "Each strip takes its width of cloth", "rounded(strips) * strip", rounding=BUY_CLOTH, label="cloth for the binding",
             says=("fabric", "cloth", "yardage", "how much fabric", "how many yards")),
    ),
    answers=("strips", "cloth", "need"),
    headline=("Cut {strips} for the binding, from {cloth} of cloth.", "Buy {cloth} of cloth for the binding: {strips}."),
    sizes=(("width", "length"), ("strip", "usable")),
    home="in",
    source=COMMON_PRACTICE,
    cautions=(
        Caution("The loss in joining is not counted: each diagonal join uses up a strip's width, so here it may take one strip more",
                when="(need + (ceil(need / usable) - 1) * strip) / usable > ceil(need / usable)"),
    ),
    examples=(
        "how many 2 1/2 in binding strips for a 60 x 72 in quilt, 40 in usable width -> 7 strips; 1/2 yd",
        "binding for a quilt edge of 300 in, strips 2 1/2 in, 40 in usable, how much fabric -> 5/8 yd; 8 strips",
        "I have 7 strips 2 1/2 in wide of 40 in usable cloth, how big a square quilt will they bind -> 67 1/2 in",
    ),
)
