"""Thread for quilting in lines."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, PERCENT, RATIO
from ..engine.rounding import COUNT_UP, THREAD
from .words import LENGTH_OF_QUILT, SQUARE, WIDTH_OF_QUILT

QUILTING_THREAD = Rule(
    topic="quilting thread",
    family="quilting",
    says=("quilting thread", "thread", "straight-line quilting", "straight line quilting", "lines of quilting",
          "quilting lines", "quilted lines", "thread for quilting", "quilt in lines", "crosshatch", "cross-hatch",
          "crosshatching", "grid quilting", "machine quilting", "lines apart", "crossed lines", "quilting"),
    about="The thread that quilting in evenly spaced lines takes.",
    inputs=(
        WIDTH_OF_QUILT,
        LENGTH_OF_QUILT,
        SQUARE,
        Input("spacing", "space between the lines", LENGTH, says=("apart", "lines", "spacing", "lines apart",
              "every", "between the lines", "between lines", "grid", "spaced"), ask="How far apart are the lines?",
              example="2 in", sane="1 mm..60 cm", practice="1/2 in..4 in by 1/2 in"),
        choice("ways", "lines run", {"one_way": ("one way", "one direction", "just the direction", "parallel",
               "straight lines one way", "lengthwise only", "in one direction"), "both_ways": ("both ways",
               "crosshatch", "cross-hatch", "crosshatching", "crossed", "grid", "both directions", "two directions",
               "cross hatched", "crosshatched", "squares", "crossed lines", "crossing lines", "lines crossed", "lines both ways",
               "a grid", "up and down and across", "in each direction", "each way")}, default=(Default("one_way",
               "no crossing lines were named"),)),
        Input("times", "times the lines are gone over", COUNT, spoken=True, default=(Default("1", derived=True,
              when={"ways": "one_way"}), Default("2", derived=True, when={"ways": "both_ways"}))),
        choice("allow", "spare thread", {"spare": ("spare", "allowance", "wastage", "for waste", "extra"),
               "as_told": ("times the stitched length", "times the line length", "times the length stitched",
               "times the stitching", "nothing to spare", "no spare", "without spare", "no extra",
               "times the length of the lines", "no waste")}, default=(Default("spare",
               "for starts, stops and mending"),)),
        Input("factor", "thread for each length of line", RATIO, says=("times", "times the stitched length",
              "times the line length", "times the length stitched", "times the stitching", "thread for each length",
              "times the length of the lines"), default="2.5",
              because="what a balanced stitch takes, top and bottom (common practice)", sane="1..10",
              practice="2..4 by 1/2"),
        Input("extra", "spare thread, for each hundred", PERCENT, says=("spare", "extra", "waste", "wastage",
              "for waste", "allowance", "more"), default=(Default("15 %",
              "for starts, stops and mending (common practice)", when={"allow": "spare"}), Default("0 %",
              derived=True, when={"allow": "as_told"})), sane="0 %..200 %", practice="10 %..30 % by 5 %"),
        Input("reel", "length on a reel", LENGTH, says=("reel", "spool", "cone", "bobbin", "per spool", "reels",
              "spools", "on a reel", "on a spool", "spools of", "reels of", "spool of", "reel of", "cones of", "cone of",
              "to a reel", "to a spool", "each reel", "each spool"), extra=True, spoken=True, ask="How much thread is on a reel?",
              example="300 yd", sane="5 m..20 km", practice="200 yd..1000 yd by 100 yd"),
    ),
    steps=(
        Step("line", "The quilt's area over the space between the lines is the length of all the lines",
             "width * length / spacing * times", label="length of the lines", says=("length of line",
             "length of the lines", "line length", "total line length", "length of quilting",
             "how long are the lines", "inches of quilting", "stitched length", "length of the quilting lines",
             "total length", "length of quilting lines", "total length of the lines", "how much line")),
        Step("thread", "So much thread for each length of line, and the spare", "line * factor * (1 + extra)",
             rounding=THREAD, unit=("yd", "m"), label="thread", says=("how much thread", "thread", "how much",
             "how many yards", "how many metres", "yards of thread", "metres of thread", "yds", "how many yds",
             "metres thread", "yards thread"), stated=("of thread",
             "thread", "have")),
        Step("reels", "Whole reels", "rounded(thread) / reel", COUNT, rounding=COUNT_UP, noun="reel", label="reels",
             says=("how many reels", "how many spools", "reels", "spools", "how many cones")),
    ),
    answers=("reels", "thread", "line"),
    headline=("Have {thread} of thread: {reels}.", "Have {thread} of thread."),
    sizes=(("width", "length"),),
    home="in",
    source=COMMON_PRACTICE,
    notes=("Free-motion quilting takes more by how dense it is; no settled figure was found for it.", ),
    examples=(
        "How much thread will straight-line quilting take on a 60 x 72 in quilt, lines 2 in apart? Use 2.5 times "
        "the stitched length -> 150 yd",
        "quilting thread for a 60 x 72 in quilt, lines 2 in apart -> 172 1/2 yd",
        "crosshatch a quilt 100 x 130 cm with lines 5 cm apart, how much thread -> 150 m",
    ),
    related=("wadding (batting)",),
)
