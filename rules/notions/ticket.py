"""Thread sizes: ticket numbers and tex, each way."""

from __future__ import annotations

from ..engine.declare import Default, Input, Rule, Step
from ..engine.kinds import COUNT, LINEAR, RATIO
from ..engine.rounding import COUNT_NEAR

ONE = Input("one", "one tex", LINEAR, says=("one tex",), default=Default("1 tex", derived=True), spoken=True)

TICKET = Rule(
    topic="thread ticket",
    family="notions",
    says=("ticket", "ticket number", "tkt", "thread ticket", "thread size",
        "ticket no"),
    about="A sewing thread's ticket number from its tex or its count, and back.",
    inputs=(
        ONE,
        Input("metric_count", "metric count", RATIO,
            says=("nm", "metric count"), extra=True, spoken=True, sane="0.1..1000", practice="20..120 by 10"),
        Input("cotton_count", "cotton count", RATIO,
            says=("ne", "cotton count", "english count"), extra=True, spoken=True, sane="0.1..1000",
            practice="20..80 by 10"),
        Input("tex_number", "number of tex", RATIO, says=("tex", "tex size"), extra=True, spoken=True, sane="1..1000",
            practice="18..80 by 2"),
        Input("plies", "plies", COUNT,
            says=("ply", "plies", "strands"), noun="ply",
            default=Default("1", derived=True), spoken=True, sane="1..24", practice="2..3 by 1"),
        Input("number", "ticket number", COUNT,
            says=("ticket", "tkt", "ticket number", "no", "metric ticket", "metric", "ticket is",
                  "thread's ticket is", "ticket reads", "labelled"), extra=True, spoken=True, sane="1..2000",
            practice="20..180 by 10"),
        Input("cotton_number", "cotton ticket number", COUNT,
            says=("cotton ticket", "cotton ticket number"), extra=True, spoken=True, sane="1..2000",
            practice="20..120 by 10"),
        Input("tex", "thread size in tex", LINEAR, says=("thread", "denier", "dtex"),
            default=(
                Default("=1000 * one * plies / metric_count", "A metric count is kilometres to a kilogram of one ply",
                    derived=True, given=("metric_count",)),
                Default("=590.54 * one * plies / cotton_count",
                    "A cotton count is hanks of 840 yd to a pound of one ply",
                    derived=True, given=("cotton_count",)),
                Default("=tex_number * one", "In tex", derived=True, given=("tex_number",)),
                Default("=3 * 590.54 * one / cotton_number", "A cotton ticket is three times 590.54 over the tex",
                    derived=True, given=("cotton_number",)),
                Default("=3000 * one / number", "A metric ticket is 3000 over the tex", derived=True, given=("number",
                        )),
            ),
            sane="2 tex..2000 tex",
            ask="What is the thread's tex, or its count?", example="40 tex", practice="18 tex..80 tex by 2 tex"),
    ),
    steps=(
        Step("metric", "A metric ticket is 3000 over the tex", "3000 * one / tex", COUNT, rounding=COUNT_NEAR,
            label="metric ticket",
            says=("ticket", "metric ticket", "ticket number", "what ticket", "tkt")),
        Step("cotton", "A cotton ticket is three times 590.54 over the tex", "3 * 590.54 * one / tex", COUNT,
            rounding=COUNT_NEAR, label="cotton ticket",
            says=("cotton ticket", )),
        Step("size", "In tex", "tex", LINEAR, unit=("tex", "tex"), label="size in tex",
            says=("tex", "what tex", "in tex", "size")),
    ),
    answers=("metric", "cotton", "size"),
    headline=("Metric ticket {metric}; cotton ticket {cotton}.", "The thread is {size}."),
    source="ticket numbers: Textile School and Online Clothing Study, 2013; tex = 590.54 / Ne: Coats Bulletin 05",
    no_unknown=("one", "metric_count", "cotton_count", "plies", "number", "cotton_number", "tex", "tex_number"),
    notes=("Labels round to the trade's steps: tex 24 comes to 125, and is sold as 120.",),
    examples=(
        "metric ticket of a 40 tex thread -> 75; 44",
        "what tex is a ticket 120 thread -> 25 tex; 120",
        "ticket number for 30 tex thread -> 100; 59",
    ),
    related=("machine needle", "thread"),
)
