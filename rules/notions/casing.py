"""The casing that elastic or a cord runs in."""

from __future__ import annotations

from ..engine.declare import Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.rounding import CUT

CASING = Rule(
    topic="casing",
    family="notions",
    says=("casing", "channel", "elastic casing", "elastic channel", "waistband casing", "cut on casing",
        "drawstring casing", "tunnel", "cord channel", "cut on above the waist", "do i cut on", "rows of elastic",
        "cut on for elastic", "fold down casing"),
    about="How deep a casing to stitch for elastic or a cord, and how much to cut on for it.",
    inputs=(
        Input("elastic", "width of the elastic or cord", LENGTH,
            says=(
                "elastic width", "what elastic", "which elastic", "widest elastic",
                "how wide an elastic", "how wide may the elastic be", "how wide can the elastic be",
                "what width elastic", "what width of elastic", "thickest cord", "how thick a cord",
                "elastic", "wide elastic", "cord", "wide", "drawstring", "elastic wide", "tape", "width",
                "cord diameter", "thick", "rod", "ribbon", "lace"), axis="width",
            ask="How wide is the elastic or cord?", example="1 in", sane="1 mm..20 cm",
            practice="1/4 in..2 in by 1/4 in"),
        choice("kind", "what runs in it", {"elastic": ("elastic", ), "cord": ("cord", "drawstring", "string", "lace",
                    "rope")},
            default=Default("elastic", derived=True)),
        Input("ease", "ease in the casing", LENGTH,
            says=("ease", "easing", "room", "play", "clearance", "to spare", "spare", "slack", "wiggle room",
                "extra"),
            default=(Default("1/4 in | 6 mm",
                    "the diameter and 1/4 in (Association of Sewing and Design Professionals)",
                    when={"kind": "cord"}), Default("1/8 in | 3 mm",
                    "room for the elastic to run (Association of Sewing and Design Professionals)")),
            sane="0 mm..2.5 cm", usual="1 mm..15 mm", practice="1/8 in..1/4 in by 1/8 in"),
        Input("turn", "turn-under", LENGTH,
            says=("turn under", "to turn under", "turned under", "turn in", "turning", "raw edge", "fold under",
                "first turn", "under", "turn-under", "hem turn", "first fold", "turning under", "folded under", "fold down", "turn down"),
            default="1/4 in | 6 mm", because="the usual turning of the raw edge (Sewing & Craft Alliance 12.150)",
            sane="0 mm..5 cm", practice="1/4 in..1/2 in by 1/8 in"),
        Input("topstitch", "topstitching from the fold", LENGTH,
            says=("topstitching", "topstitch", "edge stitching", "edgestitched", "edge stitch",
                "from the top edge", "stitched from the fold", "top fold", "from the top fold", "below the fold",
                "from the folded edge"),
            default=Default("0 in", "no topstitching said", derived=True), spoken=True, sane="0 mm..5 cm",
            practice="1/8 in..1/4 in by 1/8 in"),
        Input("heading", "heading above the channel", LENGTH,
            says=("heading", "frill", "header", "ruffle", "frill above", "heading above", "above the channel",
                "paper bag"),
            default=Default("0 in", "no heading said", derived=True), spoken=True, sane="0 mm..30 cm",
            practice="1/2 in..2 in by 1/4 in"),
        Input("channels", "channels", COUNT,
            says=("channels", "rows of elastic", "casings", "rows", "channel", "tunnels", "lines of elastic"),
            noun="channel",
            default=Default("1", derived=True), sane="1..20", practice="1..3 by 1"),
    ),
    steps=(
        Step("depth", "The channel is as deep as the elastic is wide, with a little ease", "elastic + ease",
            rounding=CUT, label="depth of the channel",
            says=("how deep", "depth", "finished casing", "channel depth", "depth of the casing", "stitch",
                "casing depth", "how wide a casing", "finished width", "stitching line", "casing width", "how wide",
                "from the fold"), axis="depth",
            stated=(
                "casing channel", "in the channel", "channel stitched", "stitched",
                "channel", "in a channel", "deep channel", "channel is", "channel of", "casing is")),
        Step("all_channels", "All the channels, one above another", "channels * depth", rounding=CUT, label="channels together",
            says=("channels together", "both channels", "both channels together", "all the channels", "channels in all",
                "channels altogether", "how deep are both channels", "depth of both channels", "both casings")),
        Step("allowance", "Cut on: topstitching, the heading twice over, each channel, and the turn-under",
            "topstitch + 2 * heading + channels * depth + turn", rounding=CUT, label="cut-on allowance",
            says=(
                "total depth", "total depth to add", "depth to add", "add in all", "add altogether",
                "in all to cut on",
                "casing do i add", "how deep a casing do i add", "how much casing do i add",
                "how much do i turn down", "how much is turned down", "how much do i allow",
                "allow for the casing",
                "cut on", "allowance", "add", "cut on above the waist", "how much", "extra", "turn down",
                "fold down", "casing allowance", "how much extra", "total casing", "add to the top",
                "how much do i add", "add at the top", "add for the casing", "allow"), stated=("have", "left",
                "allowed", "is turned down", "cut on", "allowance of", "altogether")),
    ),
    answers=("allowance", "depth"),
    headline=("Cut on {allowance} for a casing with a channel {depth} deep.", "Stitch the channel {depth} deep.",
        "Cut on {allowance}."),
    source="elastic + 1/8 in: Association of Sewing and Design Professionals, internal casings",
    cautions=(Caution("Anchor the elastic with a line of stitches at the seams, to stop it rolling"),),
    notes=("Published advice on the ease differs: 2 mm (Alberta distance learning), 1/8 in (Association of Sewing and "
    "Design Professionals), 1/4 in "
           "(Sewing & Craft Alliance 12.150).",),
    examples=(
        "topstitching 1/8\" from the fold, 3/4\" elastic, 1/8\" ease and 1/4\" to turn under: how much do I cut "
        "on for the casing -> 1 1/4 in",
        "casing for 1 in elastic, how much to add -> 1 3/8 in; 1 1/8 in",
        "how deep a channel for 2 cm elastic -> 2.3 cm",
        "casing allowance for 1 in elastic with a 1 in frill above -> 3 3/8 in",
    ),
    related=("elastic", "drawstring"),
)
