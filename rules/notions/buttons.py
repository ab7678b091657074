"""Buttons: their sizes, their buttonholes, the stand they sit on, and the placket."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Default, Input, Rule, Step, choice
from ..engine.kinds import AREA, COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import CUT, LIGNE, SMALL
from ..engine.run import Run

BUTTONHOLE = Rule(
    topic="buttonhole",
    family="notions",
    says=(
                "button can i get through", "button will go through", "button goes through",
                "button will fit through", "button fits through",
                "buttonhole", "buttonhole length", "button hole", "buttonhole size", "buttonhole for", "a buttonhole",
        "ball button",
        "shank button", "hole to cut", "hole for a button", "hole for the button", "how big a hole", "how long a hole"),
    about="How long to work a buttonhole for a button.",
    inputs=(
        choice("shape", "button shape", {"flat": ("flat", "flat button", "sew through"), "ball": ("ball",
                    "ball button", "round button", "domed ball", "bead button", "spherical")},
            default=Default("flat", derived=True)),
        Input("diameter", "button diameter", LENGTH,
            says=(
                "button can i get through", "button will go through", "button goes through",
                "button will fit through", "widest button", "biggest button", "largest button",
                "button", "diameter", "across", "over", "wide", "buttons", "flat button", "wide button", "how big across",
                "big across", "how big a button",
                "what size button", "how large a button"), axis="diameter",
            ask="How wide is the button?", example="5/8 in", sane="3 mm..10 cm",
            practice="3/8 in..1 1/4 in by 1/8 in", when={"shape": "flat"}),
        Input("thickness", "button thickness", LENGTH,
            says=("thick", "thickness", "deep"), axis="thickness",
            default="1/8 in | 3 mm", because="the usual for a flat button", sane="0 mm..4 cm", usual="1 mm..1 cm",
            practice="1/8 in..1/4 in by 1/16 in"),
        Input("through", "diameter of the ball", LENGTH,
            says=("through", "across", "diameter", "in diameter", "wide", "thick"), axis="diameter", extra=True, spoken=True,
            sane="2 mm..10 cm", when={"shape": "ball"}),
        Input("girth", "girth of the button", LENGTH,
            says=("round", "girth", "around", "round it", "all round"), axis="girth", spoken=True,
            default=Default("=pi * through", "Round a ball it is pi times its diameter", derived=True, given=("through",)),
            ask="How far is it round the ball button (wrap a strip of paper round it)?", example="36 mm",
            sane="5 mm..30 cm", when={"shape": "ball"}),
        Input("bar", "bar tacks", LENGTH,
            says=("bar tacks", "bar tack", "bartacks", "for bar tacks"),
            default=Default("0 in", "none said", derived=True), sane="0 mm..1 cm"),
    ),
    steps=(
        Step("flat_length", "The button's diameter and its thickness", "diameter + thickness + bar", rounding=SMALL,
            label="buttonhole length", unit=("in", "mm"),
            says=("buttonhole", "how long", "length", "buttonhole length", "opening", "slit", "size", "hole", "hole to cut"), axis="length",
            when={"shape": "flat"}, stated=(
                "came out", "come out",
                "buttonhole is", "buttonhole of", "buttonholes are", "long",
                "buttonhole",
                "slit", "worked the buttonholes", "made the buttonholes", "comes out at", "came out at",
                "buttonhole comes out at", "buttonhole came out at", "worked at",
                "buttonhole measures", "hole is", "hole measures")),
        Step("ball_length", "Half the way round it", "girth / 2 + bar", rounding=SMALL,
            label="buttonhole length for a ball", unit=("in", "mm"),
            says=("buttonhole", "how long", "length", "buttonhole length", "size"), axis="length",
            when={"shape": "ball"}),
    ),
    answers=("flat_length", "ball_length"),
    headline=("Work the buttonhole {flat_length} long.", "Work the buttonhole {ball_length} long."),
    source="diameter + thickness: Singer model 5147 owner manual",
    no_unknown=("bar",),
    notes=("Sew one on a scrap first. Some manuals add 1/8 in for bar tacks (Singer model W312).",),
    examples=(
        "buttonhole for a 5/8 in button 1/8 in thick -> 3/4 in",
        "ball button 36 mm round, buttonhole length -> 18 mm",
        "how long a buttonhole for a 15 mm button -> 18 mm",
    ),
    related=("button sizes", "evenly spaced marks"),
)

# Ligne -> mm as the published button size matrix has them; 1 ligne is 1/40 in, and moulds are made to about 0.5 mm.
MATRIX = {10: "6.35", 14: "9.2", 16: "10.5", 18: "11.6", 20: "12.7", 21: "13.5", 22: "14.2", 23: "14.8", 24: "15",
    27: "16.8", 28: "17.8", 30: "19",
          32: "20.5", 34: "21.5", 36: "22.9", 40: "25.4", 60: "38.1", 80: "50.8", 100: "63.5", 120: "76.2"}  # fmt: skip


def _nearest(run: Run) -> Outcome:
    """The nearest size that buttons are sold in, from the published matrix."""
    width = run.get("diameter")
    ligne, sold = min(
        ((ligne, Fraction(text)) for ligne, text in MATRIX.items()), key=lambda entry: abs(entry[1] - width)
    )
    run.say(
        "Look up the nearest size in the published list of button sizes",
        "nearest size sold",
        run.show_in(width, "mm"),
        f"{ligne} ligne, {MATRIX[ligne]} mm",
    )
    return Outcome({"sold": f"{ligne} ligne, sold as {float(sold):g} mm"})


BUTTON_SIZES = Rule(
    topic="button sizes",
    family="notions",
    says=("ligne", "button size", "button sizes", "line button", "size of button", "lignes", "button diameter",
        "button in mm", "button in inches", "button in cm", "mm button", "cm button", "inch button", "button", "24l button",
        "button size in mm", ),
    about="Button sizes in ligne, inches and millimetres: 40 ligne are an inch.",
    inputs=(
        Input("one", "one ligne", LENGTH, says=("one ligne",), default=Default("1 ligne", derived=True), spoken=True),
        Input("lines", "size in ligne", COUNT, says=("line", "lines", "line button", "line buttons"), extra=True,
            spoken=True, sane="4..300", practice="16..40 by 4"),
        Input("diameter", "button diameter", LENGTH,
            says=("button", "buttons", "ligne", "button size", "diameter", "wide", "across", "size", "button is"),
            axis="diameter", ask="How large is the button (ligne, in or mm)?", example="24 ligne",
            default=Default("=lines * one", "A ligne is a fortieth of an inch", derived=True, given=("lines",)),
            sane="2 mm..15 cm", practice="16 ligne..40 ligne by 4 ligne"),
    ),
    steps=(
        Step("mm", "A ligne is a fortieth of an inch, 0.635 mm", "diameter", unit=("mm", "mm"),
            label="millimetre size",
            says=("how big", ), ),
        Step("inches", "In inches", "diameter", unit=("in", "in"), label="inch size"),
        Step("ligne", "40 ligne are an inch", "diameter", rounding=LIGNE, label="ligne size", unit=("ligne", "ligne"),
            says=(
                "what ligne", "which ligne", "in ligne",
                "ligne", "lignes", "line", "ligne of", "ligne for", "ligne for a", "ligne number", "ligne size",
                "ligne size of", "line size"), ),
        Step("sold", "The nearest size sold", kind=TEXT, label="nearest size sold",
            says=("nearest size", "sold as", "sold"), ),
    ),
    answers=("mm", "inches", "ligne", "sold"),
    headline=("{mm}: {sold}.",),
    source="button size matrix, 1 ligne = 1/40 in: Apparel Science, 2020",
    algorithm=_nearest,
    no_unknown=("diameter", "lines", "one"),
    examples=(
        "24L button in mm -> 15.24 mm; 24 ligne, sold as 15 mm",
        "what ligne is a 15 mm button -> 24 ligne; 24 ligne, sold as 15 mm",
        "40 ligne button in inches -> 1 in",
    ),
    related=("buttonhole", "button stand"),
)

BUTTON_STAND = Rule(
    topic="button stand",
    family="notions",
    says=(
                "fronts lap", "fronts overlap",
                "smallest stand", "narrowest stand", "least stand", "wide is the stand",
                "wide a stand do i need",
                "button stand", "wide a stand", "button extension", "extension from the centre front", "buttonstand", "overlap for buttons",
        "button overlap", "button front extension", "extension past the centre", "extension",
        "centre front extension", "wrap for buttons", "past centre front", "past the centre front", "past the centre",
        "beyond the centre", "beyond centre front", "past the centre line"),
    about="How far a buttoned edge goes past the centre line.",
    inputs=(
        Input("diameter", "button diameter", LENGTH,
            says=("button", "buttons", "diameter", "wide", "across", "ligne"), axis="diameter",
            ask="How wide is the button?", example="3/4 in", sane="3 mm..10 cm",
            practice="1/2 in..1 1/4 in by 1/8 in"),
        Input("margin", "margin beyond the button", LENGTH,
            says=("margin", "beyond the button", "past the button"),
            default="1/4 in | 6 mm",
            because="half the diameter and 1/4 in at least (Association of Sewing and Design Professionals)",
            sane="0 mm..5 cm"),
    ),
    steps=(
        Step("stand", "The extension past the centre line is the button's diameter", "diameter", rounding=CUT,
            label="extension from the centre",
            says=("extension", "stand", "how wide", "how far", "past the centre", "button stand", "overlap"),
            axis="width"),
        Step("least", "At the least half the button and a margin", "diameter / 2 + margin", rounding=CUT,
            label="least extension",
            says=(
                "least the edge must go", "least it must go", "least the edge may go", "least it may go", "least the edge can go",
                "at the very least", "at the very least how far",
                "smallest stand", "narrowest stand", "least stand",
                "least i can let the stand go", "least the stand can be", "least the stand may be",
                "least i can let the edge go",
                "least i can", "whats the least", "what is the least", "the very least", "as little as",
                "least", "least i can get away with", "can get away with", "get away with", "least past the centre",
                "minimum", "at least", "smallest", "narrowest", "smallest button stand", "least button stand",
                "minimum button stand", "narrowest button stand")),
        Step("wrap", "Both edges lap by twice the extension", "2 * stand", rounding=CUT, label="finished lap",
            says=(
                "fronts lap", "lap in all", "do the fronts lap", "fronts overlap", "overlap in all",
                "lap altogether", "overlap altogether",
                "lap", "finished lap", "band width", "total overlap")),
    ),
    answers=("stand", "least", "wrap"),
    headline=("Let the edge go {stand} past the centre line; at the least {least}.",
        "At the least {least} past the centre line.", "The lap is {wrap} in all."),
    source="3/4 to 1 diameter: Singer model 28-8 owner manual; the least: Association of Sewing and Design "
    "Professionals",
    no_unknown=("margin", "diameter"),
    examples=(
        "button stand for a 3/4 in button -> 3/4 in; 5/8 in",
        "how wide a button stand for 20 mm buttons -> 2 cm; 1.6 cm",
        "extension past the centre for 1 in buttons -> 1 in",
    ),
    related=("buttonhole", "placket"),
)

PLACKET = Rule(
    topic="placket",
    family="notions",
    says=("placket", "plackets", "for a placket", "for the placket", "placket band", "placket with", "button placket",
        "half placket", "polo placket", "sleeve placket", "shirt placket",
        "button band cut width", "folded band", "folded placket", "shirt band"),
    about="How wide to cut a folded placket band, and its interfacing whole or half.",
    inputs=(
        Input("finished", "finished width", LENGTH,
            says=(
                "come to finished", "does it come to finished", "what does it come to",
                "placket come out", "does the placket come out", "how wide does the placket come out",
                "how wide did the placket come out", "does it come out", "will it come out",
                "did it come out", "how wide does it come out",
                "finished", "wide", "finish", "finished width", "width", "finishes", "how wide will it finish",
                "will it finish", "does it finish", "would it finish", "finish at", "come out at", "when done", "will the placket finish",
                "does the placket finish", "did the placket finish", "how wide will the placket be", "how wide is the placket",
                "placket finish", "placket finish at", "what will it finish at", "will it finish at", "will it be finished",
                    "is it finished"),
            axis="width", ask="How wide is the finished placket?", example="1 1/4 in", sane="5 mm..20 cm",
            practice="1 in..1 1/2 in by 1/4 in"),
        Input("length", "placket length", LENGTH,
            says=(
                "how long an opening", "how long was the opening", "how long is the opening",
                "opening is that for", "how long an opening is that for", "length of the opening",
                "how long a slit",
                "long", "length", "opening", "deep", "slit", "front edge"), axis="length",
            ask="How long is the placket?", example="6 in", sane="2 cm..2 m", practice="5 in..12 in by 1 in"),
        Input("seam", "seam allowance", LENGTH,
            says=("seam allowance", "seams", "seam", "allowance", "sa", "seam allowances"),
            default="5/8 in | 1.5 cm", because="the usual in home dressmaking", sane="0 mm..5 cm", usual="3 mm..3 cm",
            practice="1/4 in..5/8 in by 1/8 in"),
        Input("sides", "sides", COUNT,
            says=("sides", "plackets", "bands", "pieces"), noun="side",
            default=Default("1", derived=True), sane="1..50"),
    ),
    steps=(
        Step("cut", "The band is folded, so twice its finished width, and a seam on each edge",
            "2 * finished + 2 * seam", rounding=CUT, label="cut width",
            says=("cut width", "how wide", "width to cut", "cut", "strip", "wide"), axis="width", stated=("cut",
                "strip of", "have", "cut at", "strip", "strip is", "strips are", "placket strip", "strip cut", "cut wide",
                    "band cut", "it was cut")),
        Step("half", "Half interfacing reaches the fold: one finished width and one seam", "finished + seam",
            rounding=CUT, label="half interfacing, wide",
            says=(
                "half interfacing width", "interfacing to the fold", "interfaced to the fold",
                "interfacing", "half interfacing", "interfacing width", "half", "to the fold")),
        Step("whole", "Whole interfacing is as wide as the band", "cut", rounding=CUT,
            label="whole interfacing, wide",
            says=(
                "whole interfacing width", "width of the whole interfacing",
                "interfacing for the whole band", "interfaced whole", "full interfacing width",
                "interfacing whole",
                "whole interfacing", "whole", "full interfacing")),
        Step("cut_length", "As long as the opening, and a seam at each end", "length + 2 * seam", rounding=CUT,
            label="cut length",
            says=("cut length", "how long", "length to cut"), axis="length",
            stated=("cut long", "long cut", "cut", "cut length",)),
        Step("half_area", "Half interfacing, for all sides", "sides * half * cut_length", AREA,
            label="half interfacing, area"),
        Step("whole_area", "Whole interfacing, for all sides", "sides * whole * cut_length", AREA,
            label="whole interfacing, area"),
    ),
    answers=("cut", "half", "whole", "cut_length", "half_area", "whole_area"),
    headline=("Cut the placket {cut} wide by {cut_length} long; interface {half} to the fold, or {whole} whole.",
              "Cut the placket {cut} wide; interface {half} to the fold, or {whole} whole.",
              "Interface {half} to the fold, or {whole} whole.",
              "Cut it {cut_length} long."),
    source=COMMON_PRACTICE,
    no_unknown=("sides",),
    notes=("A folded placket interfaced whole has two layers of interfacing: stiff in light cloth.",
           "If it is set on after hemming, cut it to one length with the hemmed edge and turn its ends in."),
    examples=(
        "placket 1 1/4 in finished, 5/8 in seams, cut width -> 3 3/4 in; 1 7/8 in",
        "3 cm wide placket 18 cm long with 1 cm seams -> 8 cm; 4 cm; 20 cm",
        "how wide do I cut a placket to finish 1 in -> 3 1/4 in",
    ),
    related=("button stand", "evenly spaced marks"),
)
