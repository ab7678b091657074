"""A drawstring bag: panels, channel and cords."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import CUT, CUT_TAPE
from .words import HEIGHT_OF_BAG, SEAM_OF_BAG, WIDTH_OF_BAG

CHILD = ("child", "children", "kid", "toddler", "baby", "boy", "girl", "infant", "nursery", "school")

DRAWSTRING_BAG = Rule(
    topic="drawstring bag",
    family="bags",
    says=("drawstring bag", "drawstring pouch", "draw string bag", "laundry bag", "shoe bag", "gift bag",
        "drawstring sack", "gym bag", "bread bag", "produce bag", "dice bag", "pe bag", "drawstring backpack",
        "drawcord bag", "drawstring bags", "drawn up with cords", "bag drawn up", "drawn up with two cords",
        "drawn up by cords", "drawn up with a cord", "bag with a drawstring",
        "bag with drawstrings", "bag with a cord"),
    about="Panels, channel and cords of a bag drawn up with cords.",
    inputs=(
        WIDTH_OF_BAG,
        HEIGHT_OF_BAG,
        SEAM_OF_BAG,
        Input("channel", "channel", LENGTH,
            says=("channel", "casing", "tunnel", "deep channel", "channel depth"),
            default="1 in | 2.5 cm", because="room for two cords", sane="5 mm..15 cm",
            practice="3/4 in..1 1/2 in by 1/4 in"),
        Input("turn", "turn-under", LENGTH,
            says=("turn under", "turn-under", "turned under", "raw edge", "hem"),
            default="1/4 in | 6 mm", because="the usual turning of a raw edge", sane="0 mm..5 cm"),
        Input("thick", "thickness of the cord", LENGTH, says=("thick", "thick cord", "diameter"), extra=True,
            spoken=True, sane="0.5 mm..5 cm", usual="1 mm..3 cm"),
        Input("cords", "cords", COUNT,
            says=("cords", "cord", "drawstrings", "strings", "ribbons", "laces"), noun="cord",
            default=Default("2", "one drawn from each side"), sane="1..4"),
        Input("tail", "tails of a cord in all", LENGTH,
            says=("tails", "over", "over for its tails", "tail", "for tails", "for the tails", "extra", "for knots",
                "to tie", "for tying", "spare"),
            default="8 in | 20 cm", because="enough to knot and pull", sane="0 mm..2 m",
            practice="6 in..12 in by 1 in"),
    ),
    steps=(
        Step("panel_width", "The width and a seam at each side", "width + 2 * seam", rounding=CUT,
            label="panel width",
            says=("panel", "panel size", "panel width", "panel dimensions", "dimensions of the panels", "cut size",
                  "cut width", "size to cut", "panels", "what size",
                "pieces", "fabric pieces", "how big"), axis="width",
            stated=("panel cut", "panels cut", "panel is", "panels are", "cut", "cut panels", "two panels")),
        Step("panel_height", "A seam at the base, and above the bag the channel and its turning",
            "height + seam + channel + turn", rounding=CUT, label="panel height",
            says=("panel height", "cut height", "panel length", "how high", "how tall"), axis="height"),
        Step("one_cord", "Each cord goes right round: twice the width, and its tails", "2 * width + tail",
            rounding=CUT_TAPE, label="each cord",
            says=("each cord", "each", "cord length", "length of cord", "how long is each cord", "cut each cord",
                "each ribbon", "how long is each ribbon", "each string", "each drawstring", "each lace",
                "how long", "drawstring", "how long a cord", "how long should the cords be", "how long are the cords",
                "how long are the drawstrings", "how long is the cord", "length of the cords", "how long a drawstring",
                "how long is the drawstring", "how long do i cut the cords", "how long must the cords be"), axis="length",
            stated=("cord", "cords", "have", "cord is")),
        Step("all_cord", "All the cords", "cords * rounded(one_cord)", rounding=CUT_TAPE, label="cord in all",
            says=("how much cord", "cord in total", "total", "in all", "total cord", "altogether", "cord", "how much",
                "cord do i need", "cord in all", "ribbon", "how much ribbon"), stated=("of cord", )),
        Step("lower", "Stitch the lower line of the channel so far below the top edge", "channel + turn",
            rounding=CUT, label="lower stitching line from the raw edge",
            says=("stitching line", "channel lines", "lower line", "how far down", "sew the channel",
                "stitch the channel", "sew the casing",
                "stitch the casing", "how far from the top", "stop the side seam", "where")),
    ),
    answers=("panel_width", "panel_height", "one_cord", "all_cord", "lower"),
    headline=("Cut two panels {panel_width} wide by {panel_height} high; each cord is {one_cord}, {all_cord} in all.",
        "Each cord is {one_cord}; {all_cord} in all.",
              "Cut two panels {panel_width} wide.", "Stitch the channel {lower} from the raw edge."),
    sizes=(("width", "height"),),
    source=COMMON_PRACTICE,
    no_unknown=("seam", "channel", "turn", "cords"),
    cautions=(Caution("Cords and small children: a cord round the neck can strangle; keep them short",
            mentions=CHILD), ),
    notes=("Leave the side seams open at the channel, and turn their edges in.",),
    examples=(
        "drawstring bag 10 in wide with two cords, each cord has 12 in over for its tails, how much cord in "
        "total -> 64 in; 32 in",
        "drawstring bag 25 cm wide 30 cm high, panel size, 1 cm seams -> 27 cm; 34.1 cm",
        "laundry bag 20 in wide and 28 in high, how long is each cord -> 48 in; 96 in",
    ),
    related=("drawstring", "casing"),
)
