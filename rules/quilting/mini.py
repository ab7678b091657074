"""A mini quilt for a machine or a table: a cover, a mat or a runner."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Input, Rule, Step
from ..engine.kinds import LENGTH
from ..engine.rounding import CUT
from .words import SEAM

MACHINE_COVER = Rule(
    topic="mini quilt for a machine",
    family="quilting",
    says=("panel over the top", "panel that goes over", "panel that goes over the top", "cover the sewing machine",
          "cover my sewing machine", "cover a sewing machine", "cover her sewing machine",
          "machine cover", "sewing machine cover", "cover for a machine", "cover for my sewing machine",
          "dust cover", "toaster cover", "mixer cover", "overlocker cover", "cover for a sewing machine",
          "quilted cover", "serger cover", "machine a cover", "quilt a cover", "cover for sewing machine", "cover for the sewing machine",
          "cover for her sewing machine", "cover for the machine", "cover for his sewing machine", "appliance cover",
          "mini quilt for a machine", "for my overlocker", "for my serger", "for my mixer", "for my toaster", "for my machine",
          "cover for my machine", "cover for an overlocker", "cover for a serger", "cover for a mixer", "cover for a toaster",
          "machine is the cover", "machine is it for", "deep is the machine", "wide is the machine", "high is the machine",
             "tall is the machine", "panel of the cover", "panel of a cover"),
    about="The panels of a quilted cover that stands over a machine: one over front, top and back, and two sides.",
    inputs=(
        Input("width", "machine width", LENGTH, says=("wide", "width", "machine", "across"), axis="width",
              ask="How wide is the machine?", example="16 in", sane="5 cm..3 m", practice="12 in..18 in by 1 in"),
        Input("height", "machine height", LENGTH, says=("high", "height", "tall"), axis="height",
              ask="How high is the machine?", example="12 in", sane="3 cm..2 m", practice="10 in..14 in by 1 in"),
        Input("depth", "machine depth", LENGTH, says=("deep", "depth", "how deep is the machine", "deep is the machine",
             "front to back"), axis="depth",
              ask="How deep is the machine, front to back?", example="7 in", sane="3 cm..2 m",
              practice="6 in..10 in by 1 in"),
        Input("ease", "ease", LENGTH, says=("ease", "room", "ease all round", "spare", "looser"),
              default="1 in | 2.5 cm", because="so that it slips on and off, once each way", sane="0 cm..20 cm",
              practice="1/2 in..2 in by 1/2 in"),
        SEAM,
    ),
    steps=(
        Step("main_width", "The machine's width, the ease, and a seam on both sides", "width + ease + 2 * seam",
             rounding=CUT, label="long panel, width", says=("main panel", "long panel", "panel", "what size",
             "how big", "front", "cut"), stated=("main panel came out", "panel came out", "panel came out at", "came out",
             "came out at", "panel is", "panel was", "panel was cut", "panel measures")),
        Step("main_length",
             "Up the front, over the top and down the back: twice the height, the depth and the ease; its two ends "
             "are bound", "2 * height + depth + ease", rounding=CUT, label="long panel, length", axis="length", says=(
             "how long is the panel", "long is the panel that", "long do i cut the panel",
             "long do i cut the main panel", "long do i cut the long panel", "how long a panel",
             "panel over the top how long", "over the top how long",
             "panel length", "long is the main panel", "long is the long panel", "long is the panel", "long must the panel be",
             "length of the panel", "length of the main panel"),
             stated=("long panel comes to", "long panel came to", "long panel is", "panel length is", "panel came out long",
             "length of the panel is",)),
        Step("side_width", "The machine's depth, the ease, and a seam on both sides", "depth + ease + 2 * seam",
             rounding=CUT, label="side panels, width", says=("width of the side", "wide are the sides", "wide do i cut the sides",
             "wide are the side panels",
             "wide do i cut the side panels", "side pieces",
             "side panels", "sides", "side panel", "ends")),
        Step("side_height", "The machine's height and a seam at the top; the bottom is bound", "height + seam",
             rounding=CUT, label="side panels, height",
             says=("side panels how high", "sides how high", "side panels how tall", "sides how tall",
             "height of the sides", "high do i cut the side", "high are the sides", "high are the side",
             "tall are the sides", "tall are the side", "high the sides", "side panel height", "height of the side",
             "high do i cut the side panels", "high are the side panels", "tall are the side panels",
             "high must the sides be",)),
    ),
    answers=("main_width", "main_length", "side_width", "side_height"),
    headline=("Cut the panel over the top {main_width} by {main_length}, and two sides {side_width} by "
              "{side_height}.",),
    sizes=(("width", "height", "depth"),),
    home="in",
    source=COMMON_PRACTICE,
    notes=("Quilting takes up a little: quilt the panels first, then cut them to size.", ),
    examples=(
        "cover for a sewing machine 16 in wide, 12 in high and 7 in deep -> 17 1/2 in; 32 in; 8 1/2 in; 12 1/4 in",
        "machine cover 16 x 12 x 7 in, no ease 0 in, what size sides -> 7 1/2 in; 12 1/4 in",
        "quilted dust cover for a machine 42 cm wide, 30 cm high, 18 cm deep -> 46 cm; 80.5 cm",
    ),
    related=("quilt yardage", "binding strips"),
)

TABLE_QUILT = Rule(
    topic="mini quilt for a table",
    family="quilting",
    says=("quilted runner", "table topper", "table quilt", "quilt for a table", "mini quilt for a table",
          "quilted table mat", "quilted table runner", "quilted table topper", "quilted topper", "topper",
          "quilted tablecloth", "quilt for it", "quilt to cover a table", "quilt to go on a table", "quilt on the table",
          "quilted cloth for a table", "quilt for my table", "quilt for the table"),
    about="The finished size of a quilt for a table that hangs over its edges, or stays within them.",
    inputs=(
        Input("width", "table width", LENGTH, says=("what size table", "how wide a table", "how big a table", "what table", "which table",
             "how wide is the table", "how large a table",
             "table", "wide", "width", "across"), axis="width",
              ask="How wide is the table?", example="30 in", sane="10 cm..5 m", practice="24 in..40 in by 2 in"),
        Input("length", "table length", LENGTH, says=("table", "long", "length"), axis="length",
              ask="How long is the table?", example="60 in", sane="10 cm..10 m", practice="40 in..80 in by 4 in"),
        Input("drop", "overhang at each edge", LENGTH, says=("overhang", "drop", "hang", "hang over", "hanging",
              "over each edge", "over", "overhang at each end", "over the edge", "overhang all round", "all round",
              "each end"), default="0 in | 0 cm", because="it lies on the table, edge to edge, unless told to hang",
              sane="0 cm..1 m", practice="4 in..12 in by 2 in"),
    ),
    steps=(
        Step("quilt_width", "The table's width, and the overhang at both edges", "width + 2 * drop", rounding=CUT,
             label="quilt width", axis="width", says=("what size", "how big", "size", "how wide", "how large")),
        Step("quilt_length", "The table's length, and the overhang at both ends", "length + 2 * drop", rounding=CUT,
             label="quilt length", axis="length", says=("how long", )),
    ),
    answers=("quilt_width", "quilt_length"),
    headline=("Make it {quilt_width} by {quilt_length}, finished.",),
    sizes=(("width", "length"),),
    home="in",
    source=COMMON_PRACTICE,
    examples=(
        "table quilt for a table 30 x 60 in to hang over 8 in, what size -> 46 in; 76 in",
        "quilted table topper for a table 80 cm by 120 cm, overhang 15 cm -> 110 cm; 150 cm",
        "quilt for a table 36 in wide and 36 in long with a 6 in drop -> 48 in; 48 in",
    ),
    related=("blocks for a size", "binding strips"),
)
