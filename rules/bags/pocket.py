"""Pockets on a panel: cut size, margins and divisions."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import ARITHMETIC, COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step, flag
from ..engine.drawing import LineDrawing
from ..engine.kinds import COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import CUT, SPACING, apply
from ..engine.run import Run
from ..notions.marks import ORDINALS
from .words import SEAM_OF_BAG

POCKET = Rule(
    topic="pocket, centred",
    family="bags",
    says=("pocket", "patch pocket", "pockets", "slip pocket", "pocket size", "centred pocket",
        "pocket cut size", "pocket bag", "pocket bags", "pocket flap", "flap", "inside pocket", "pocket placement", "pocket on a panel"),
    about="The cut size of a patch pocket, and its margins in the middle of a panel.",
    inputs=(
        Input("width", "finished pocket width", LENGTH,
            says=("how wide is it finished", "how wide is it when finished", "is it finished", "is it when finished", "was it finished",
                  "how wide did it finish", "how wide does it finish", "how wide will it finish",
                  "finished width", "finished size", "does it finish", "will it finish", "did it finish",
                "will the pocket finish", "does the pocket finish",
                  "how wide was the pocket", "how wide is the pocket", "wide",
                  "pocket", "width",
                "across", "wide pocket", "pocket width", "finish", "pockets", "pockets of", "in pocket",
                "cm pocket"), axis="width", ask="How wide is the pocket?",
            example="6 in", sane="1 cm..1 m", practice="5 in..10 in by 1/2 in"),
        Input("height", "finished pocket height", LENGTH,
            says=(
                "finished height", "how high does it finish", "how tall does it finish",
                "how high will it finish", "how high is the pocket", "how tall is the pocket",
                "tall", "high", "deep", "long", "height", "pocket height"), axis="height",
            ask="How high is the pocket?", example="7 in", sane="1 cm..1 m", practice="5 in..10 in by 1/2 in"),
        Input("panel_width", "panel width", LENGTH,
            says=(
                "panel measures",
                "panel", "wide panel", "panel width", "bag", "wide bag", "on a panel", "front", "lining",
                "centred on", "middle of", "back", "bag front", "wide front", "panel across"),
            axis="width", extra=True, spoken=True, sane="2 cm..3 m",
            practice="12 in..20 in by 1 in"),
        Input("panel_height", "panel height", LENGTH,
            says=(
                "panel measures",
                "panel", "panel height", "high panel", "tall panel", "back panel"), extra=True, spoken=True, sane="2 cm..3 m",
            practice="12 in..20 in by 1 in"),
        SEAM_OF_BAG,
        flag("all_edges", "seam on every edge", ("on all edges", "on every edge", "all edges", "every edge", "on all sides",
            "on every side", "all round", "all around", "all the way round", "on each edge", "on all four sides",
            "seam allowance all round")),
        Input("hem", "hem at the top", LENGTH,
            says=("hem", "hem at the top", "top hem", "top", "at the top", "top turning", "facing", "hem on top",
                  "a hem", "a top hem"),
            default=(Default("=seam", "a seam on every edge", when={"all_edges": "yes"}, derived=True),
                Default("1 in | 2.5 cm", "the usual hem of a patch pocket")), sane="0 mm..15 cm",
            practice="1 in..2 in by 1/4 in"),
    ),
    steps=(
        Step("cut_width", "A seam on each side", "width + 2 * seam", rounding=CUT, label="cut width", axis="width",
            says=("how wide is the pocket cut", "how wide is the pocket to be cut", "how wide is the pocket piece",
                "cut width", "cut size", "size to cut", "how wide", "cut the pocket", "cut", "what size", "how big",
                "size of the pocket piece", "size"), stated=("cut", "have", "pocket piece", "piece cut", "piece i cut",
                "wide cut", "cut wide", "pocket cut",
                "pocket is cut", "pocket was cut", "pocket cut wide", "is cut", "was cut", "pocket piece cut")),
        Step("cut_height", "A seam at the bottom and the hem at the top", "height + seam + hem", rounding=CUT,
            label="cut height", axis="height",
            says=("cut height", "how high", "how tall", "cut length", "how long"), stated=(
                "cut",
                "cut high", "high cut", "pocket cut", "pocket is cut", "pocket was cut", "is cut", "was cut", "pocket piece cut",
                  "cut height")),
        Step("side", "What is left of the panel, half at each side", "(panel_width - width) / 2", rounding=SPACING,
            label="margin at each side",
            says=("margin", "margins", "each side", "from the side", "how far from the side", "how far in",
                "side margin", "from each side", "from the edge", "where", "place", "side", "in from the side",
                "centred", "centre", "centre a pocket", "centre the pocket", "pocket margins", "margins for",
                "gap", "gap at each side", "gap at either side", "gap each side", "either side",
                "space", "space at each side", "space left", "left and right", "each edge", "from each edge",
                "how far from each edge", "how far from the edge", "space each side"),
            stated=("margin", "margins", "margins came out at", "margin came out at", "margins are", "margins were",
                "margins of")),
        Step("below", "Half of what is left of the height", "(panel_height - height) / 2", rounding=SPACING,
            label="margin above and below",
            says=(
                "how far down from the top", "from the top edge", "gap above and below",
                "how far down does it go", "how far down does it sit", "space above and below",
                "above and below it",
                "above and below", "from the top", "below", "top and bottom", "from the bottom", "how far down",
                "down from the top", "how far from the top",
                "top and bottom margin")),
    ),
    answers=("cut_width", "cut_height", "side", "below"),
    headline=("Cut the pocket {cut_width} wide by {cut_height} high; set it {side} in from each side.",
        "Cut the pocket {cut_width} wide by {cut_height} high.",
              "Set it {side} in from each side.", "Cut the pocket {cut_width} wide.",
              "Cut the pocket {cut_height} high.", "Leave {below} above and below."),
    sizes=(("width", "height"), ("panel_width", "panel_height")),
    source=ARITHMETIC,
    defers=("add seam allowance",),
    no_unknown=("seam",),
    refusals=(
        Refusal("width > panel_width", "the pocket is wider than the panel. Type a wider panel or a narrower pocket."),
        Refusal("height > panel_height", "the pocket is higher than the panel. Type a higher panel or a lower pocket."),
    ),
    cautions=(
        Caution("On a print, cut the pocket over the same place of the repeat as the panel beneath it",
            COMMON_PRACTICE, mentions=("print", "pattern", "stripe", "check", "repeat", "motif")),
    ),
    examples=(
        "patch pocket to finish 15 cm wide by 18 cm tall, 1 cm seam allowance, 3 cm hem at the top, cut width "
        "and cut height -> 17 cm; 22 cm",
        "centre a 6 in wide pocket on a 15 in wide panel, how far from each side -> 4 1/2 in",
        "pocket 8 x 7 in finished, 1/2 in seams, 1 in hem, what size do I cut -> 9 in; 8 1/2 in",
    ),
    related=("divided pocket", "tote"),
)


def _divide(run: Run) -> Outcome:
    """The lines of stitching that part a pocket into equal ones, from the exact width of each."""
    width, number = run.get("width"), int(run.get("number"))
    how = SPACING.of(run.system)
    lines = [width * nth / number for nth in range(1, number)]
    texts = [run.show_in(apply(line, how), how.unit) for line in lines]
    run.say(
        "Count every line from the left edge with the exact width, and round only what is marked",
        "n × width ÷ number of pockets",
        "",
        ", ".join(texts),
    )
    named = {f"line_{index}": line for index, line in enumerate(lines[: len(ORDINALS)], start=1)}
    named |= {"final": lines[-1], "middle": lines[len(lines) // 2]} if len(lines) % 2 else {"final": lines[-1]}
    return Outcome(
        {**named, "lines": ", ".join(texts) or "none"},
        drawing=LineDrawing(Fraction(width), tuple(zip(lines, texts, strict=True))) if lines else None,
    )


WHERE_LINES = tuple(f"where {verb} {lines}" for verb in ("do", "should", "would", "will") for lines in (
    "the lines go", "the lines come", "the lines be", "the lines fall", "lines go", "the stitching lines go", "the dividing lines go",
    "the seams go", "i put the lines", "i draw the lines", "i mark the lines", "i mark", "i mark it",
    "my stitching lines go", "the stitching go", "the division lines go", "the dividers go"))


def _line_called(ordinal: str) -> tuple[str, ...]:
    """How one line is asked for by its place: "the third stitching line", "where's the third"."""
    lines = ("line", "stitching line", "dividing line", "division line", "line of stitching", "seam", "row of stitching", "divider")
    return (*(f"{ordinal} {line}" for line in lines),
            *(f"where {verb} the {ordinal}" for verb in ("is", "does", "do i sew", "do i stitch", "do i mark", "should")))


DIVIDED_POCKET = Rule(
    topic="divided pocket",
    family="bags",
    says=(
                "pocket split", "split in", "pocket parted", "parted into", "shared into",
                "divided pocket", "pocket divided", "dividing line", "dividing lines", "pocket strip", "even slots",
                "equal slots", "pocket into", "pockets into", "pockets out of",
        "pockets out of one", "pockets from one", "where the lines go", "pocket dividers", "divide a pocket",
        "divide pocket", "split pocket", "split the pocket",
        "divide the pocket", "where are the lines", "pocket sections", "divided into", "divided in", "divided by",
        "divide into", "where do i sew",
        "pockets in a row", "pockets from it", "pockets of it", "pockets out of it", "each slot", "split a pocket", "tool roll",
        "pencil roll", "slots", "pen slots", "brush roll", "needle roll", "crochet hook roll", "compartments"),
    about="Where to stitch the lines that divide a wide pocket.",
    inputs=(
        Input("width", "pocket width", LENGTH,
            says=("wide", "pocket", "width", "across", "long", "wide pocket", "panel", "total pocket width",
                "whole pocket", "total width", "total width of the roll", "total width of the pencil roll",
                "how wide was the pocket",
                "how wide was the whole pocket",
                "how wide is the whole pocket", "how wide was the strip", "pocket strip",
                "how wide is the whole roll", "how wide is the roll", "how wide was the roll",
                "how wide must the roll be", "whole roll", "roll"), axis="width",
            ask="How wide is the whole pocket?", example="30 cm", sane="2 cm..5 m", practice="20 cm..80 cm by 2 cm"),
        Input("height", "pocket height", LENGTH, says=("high", "tall", "deep", "height"), axis="height", extra=True,
            spoken=True, sane="1 cm..1 m"),  # told with the width as a size; it changes no line
        Input("number", "number of pockets", COUNT,
            says=(
                "chisels", "brushes", "paintbrushes", "pens", "pencils", "knives", "spanners", "hooks", "needles", "tools",
                "slots of", "pockets of", "parts of", "sections of",
                "pockets", "sections", "slots", "parts", "compartments", "divided into", "pocket", "equal pockets",
                "into", "ways", "divided in", "in", "by"), noun="pocket", ask="How many pockets is it divided into?",
                example="4 pockets",
            sane="2..100", usual="2..40", practice="3..8 by 1"),
    ),
    steps=(
        Step("each", "Share the width among the pockets", "width / number", rounding=SPACING, label="width of each",
            says=(
                "width of one", "how wide is one", "how much for each", "width of each one",
                "width of each slot", "width of each pocket", "width of each compartment",
                "how wide is each one", "how wide is each slot",
                "each", "how wide", "width of each", "how wide is each", "slot width", "width each",
                  "how big is each"), axis="width",
            stated=("each", "each is", "each was", "each are", "wide each", "each one", "each slot", "each pocket",
                  "each compartment", "each section",
                "slots of", "slot is", "must be", "slot of", "wide slots")),
        Step("line_count", "One line fewer than there are pockets", "number - 1", COUNT, noun="line", label="lines to stitch",
            says=("how many lines", "how many stitching lines", "how many lines of stitching", "number of lines",
                "how many dividing lines", "how many rows of stitching", "how many division lines")),
        *(Step(f"line_{index}", f"The {ordinal} line from the left edge", rounding=SPACING, label=f"{ordinal} line at",
            says=(*_line_called(ordinal), *(WHERE_LINES if index < 6 else ()))) for index, ordinal in enumerate(ORDINALS, start=1)),
        Step("middle", "The middle line, from the left edge", rounding=SPACING, label="middle line at",
            says=(*_line_called("middle"), *_line_called("centre"))),
        Step("final", "The last line, from the left edge", rounding=SPACING, label="last line at", says=_line_called("last")),
        Step("lines", "The lines of stitching from the left edge", kind=TEXT, label="division lines at",
            says=("where", "where do i sew", "where to sew", "lines", "division lines", "positions", "stitch",
                "stitching lines", "marks", "where the lines go", "where are the lines")),
    ),
    answers=("each", "lines", *(f"line_{index}" for index in range(2, 7)), "final"),
    headline=("The first line lies {line_1} from the edge: stitch at {lines}.",
    "Each is {each} wide: stitch at {lines} from the edge.", "Stitch at {lines} from the edge.",
        "Each is {each} wide."),
    sizes=(("width", "number"), ("width", "height")),  # "divide a pocket 42 cm by 6"
    source=ARITHMETIC,
    algorithm=_divide,
    backwards={"number": "width / each"},
    notes=("What goes in is round: a pocket for something thick needs a pleat or more width than the thing is wide.",),
    examples=(
        "pocket 30 cm wide divided into 4 pockets, where are the division lines -> 7.5 cm, 15 cm, 22.5 cm; 7.5 cm",
        "divide a 12 in pocket into 5 slots, how wide is each -> 2 3/8 in",
        "pencil roll 50 cm wide, 12 slots, how wide is each -> 4.2 cm",
    ),
    related=("pocket, centred",),
)
