"""A tote bag: panels, box corners, lining, and the cloth by a lay plan."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, GEOMETRY, Caution, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.drawing import Drawing, Drawings, LayDrawing, PanelDrawing
from ..engine.kinds import COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from ..engine.run import Impossible, Run
from ..engine.text import plural
from ..layplan.pieces import Lay, Piece
from .words import CLOTH_WIDTH, DEPTH_OF_BAG, FLAT_BAG, HEIGHT_OF_BAG, SEAM_OF_BAG, WIDTH_OF_BAG

LINING_TAKEN = "1/4 in | 0.6 cm"  # each side seam of a lining is taken 1/8 in (3 mm) deeper, so that it lies smooth


def _panel_piece(run: Run) -> Piece:
    """The outer panel as cut, as the lay plan takes it. A one-way print keeps it upright."""
    two = run.get("base") == "seamed"
    length = run.get("panel_height") if two else run.get("panel_length")
    count = (2 if two else 1) * int(run.get("many"))
    return Piece("panel", count, run.get("panel_width"), length, may_turn=_may_turn(run))


def _may_turn(run: Run) -> bool:
    return bool(run.get("turn") == "yes" and run.get("one_way") == "no")


def _pieces(run: Run) -> list[Piece]:
    """Everything cut from the outer cloth: the panels, and straps and pocket when their sizes were said."""
    pieces = [_panel_piece(run)]
    strap = run.maybe("strap_length")
    if strap is not None:
        pieces.append(Piece("strap",
        int(run.get("straps") * run.get("many")), 4 * run.get("strap_width"), strap, may_turn=True))
    wide, high = run.maybe("pocket_width"), run.maybe("pocket_height")
    if wide is not None and high is not None:
        seam, hem = run.get("seam"), run.get("pocket_hem")
        pieces.append(Piece("pocket", int(run.get("many")), wide + 2 * seam, high + seam + hem, may_turn=_may_turn(run)))
    return pieces


def _lay(run: Run) -> Lay:
    from ..layplan.pack import lay_plan  # long, and needed only when cloth is asked about

    width = run.get("cloth_width")
    found = lay_plan(_pieces(run), width, one_way=run.get("one_way") == "yes")
    if found.misfits:
        piece = found.misfits[0].piece
        turn = (
            " It would fit turned a quarter round: say that pieces may be turned."
            if found.misfits[0].fits_if_turned
            else ""
        )
        raise Impossible(
            f"the {piece.label}, {run.show(piece.width, LENGTH)} wide, does not fit cloth "
            f"{run.show(width, LENGTH)} wide.{turn} "
            "Give a wider cloth, such as: 60 in cloth"
        )
    return found


def _interfacing(run: Run) -> Fraction | None:
    """The interfacing that the panels take in one layer, turned where it helps; only when it is spoken of."""
    from ..layplan.pack import lay_plan  # as above

    if run.request.asked[:1] != ("interfacing",) and not run.was_given("interfacing_width"):
        return None
    panel, width = _panel_piece(run), run.get("interfacing_width")
    lay = lay_plan([replace(panel, may_turn=True)], width)
    if lay.misfits:
        raise Impossible(
            f"a panel {run.show(panel.width, LENGTH)} by {run.show(panel.length, LENGTH)} does not fit interfacing "
            f"{run.show(width, LENGTH)} wide; give a wider one, such as: 36 in interfacing"
        )
    run.say("Lay the panels on the interfacing, turned where that helps", "panels on the interfacing width",
            f"{panel.count} panels on {run.show(width, LENGTH)}", run.show(lay.length, LENGTH))  # fmt: skip
    return lay.length


def _say_lay(run: Run, lay: Lay) -> None:
    unit = run.unit_of(LENGTH)
    listed = ", ".join(
        f"{piece.count} {plural(piece.label, piece.count)} {run.show_in(piece.width, unit)} × {run.show_in(piece.length, unit)}"
        for piece in lay.pieces
    )
    sure = "no shorter lay exists" if lay.proved else "the shortest lay found"
    run.say(
        "Lay the pieces on the cloth so that they take the least length of it",
        "cut pieces on the cloth width",
        f"{listed}, on {run.show_in(lay.cloth_width, unit)}",
        f"{run.show_in(lay.length, unit)} ({sure})",
    )


def _panel_drawing(run: Run) -> PanelDrawing:
    piece, depth = _panel_piece(run), run.get("depth")
    folded = run.get("base") == "folded"
    notch = None if folded or not depth else (Fraction(depth) / 2, Fraction(depth) / 2)
    return PanelDrawing(
        f"panel, cut {piece.count}", Fraction(piece.width), Fraction(piece.length), run.unit_of(LENGTH), notch
    )


def _corners(run: Run) -> dict[str, Fraction]:
    """What is cut out for a boxed base; nothing for a flat bag."""
    depth, seam = Fraction(run.get("depth")), Fraction(run.get("seam"))
    if not depth:
        return {}
    run.say(
        "Box corners: cut out squares of half the depth, measured from the raw edges",
        "depth of the base ÷ 2",
        f"{run.show(depth, LENGTH)} ÷ 2",
        run.show(depth / 2, LENGTH),
    )
    if run.get("base") == "seamed":
        return {"corner": depth / 2}
    run.say(
        "At the fold the cut-out is a seam shallower, as no seam is sewn there",
        "depth of the base ÷ 2 − seam allowance",
        f"{run.show(depth / 2, LENGTH)} − {run.show(seam, LENGTH)}",
        run.show(depth / 2 - seam, LENGTH),
    )
    return {"corner": depth / 2, "corner_fold": depth / 2 - seam}


def _tote(run: Run) -> Outcome:
    """The cloth that the cut pieces take, and the drawings."""
    panel = _panel_drawing(run)
    drawing: Drawing = panel
    interfacing = _interfacing(run)
    values = {"panels": Fraction(_panel_piece(run).count), **_corners(run)}
    if interfacing is not None:
        values["interfacing"] = interfacing
    try:
        lay = _lay(run)
    except Impossible:
        if run.was_given("cloth_width"):
            raise
        return Outcome(values, drawing=drawing)
    values["cloth"] = lay.length
    if run.was_given("cloth_width") or run.request.asked[:1] == ("cloth",):
        _say_lay(run, lay)
        drawing = Drawings((panel, LayDrawing(lay, run.unit_of(LENGTH))))
    return Outcome(values, drawing=drawing)


TOTE = Rule(
    topic="tote",
    family="bags",
    says=("tote bag", "tote", "shopping bag", "shopper", "bag panels", "market bag", "book bag", "beach bag",
        "carrier bag", "bag", "pieces for a bag", "panels for a bag", "cut a bag", "canvas bag", "bag panel", "boxed bag", "flat bag", ),
    about="Panel sizes for a tote with a boxed or flat base, and the cloth for it.",
    inputs=(
        WIDTH_OF_BAG,
        HEIGHT_OF_BAG,
        DEPTH_OF_BAG,
        FLAT_BAG,
        SEAM_OF_BAG,
        Input("top", "top hem or facing", LENGTH,
            says=("top hem", "hem", "hem at the top", "top", "facing", "top facing", "hem at each top edge",
                "top edge", "hem allowance", "top allowance", "turned down at the top", "hems", "top turning",
                "hem at top", "top turn", "of hem", "casing at the top", "a top hem", "a hem", "a hem at the top",
                "top turned down", ),
            default=(Default("=seam", "A lined tote needs only a seam at the top", when={"lined": "yes"},
                    derived=True), Default("1 in | 2.5 cm", "the usual hem or facing at the top"), ),
            sane="0 mm..1 m", usual="0 mm..15 cm", practice="1 in..2 in by 1/4 in", ),
        choice("panels_as", "cut as", {"two panels": ("two panel", "two panels", "2 panels", "front and back",
                    "two pieces", "2 panel", "2 pc", "two pc", "base seam", "seamed base", "separate panels", "seam at the base",
                    "bottom seam", "two separate panels", ), "one piece": ("as one panel", "in one panel",
                    "one panel wrapped", "one panel tote", "one panel bag", "one piece", "1 piece",
                    "single piece", "single panel", "1 pc", "one pc", "single pc", "wrapped", "wrapped under",
                    "wraps under", "in one",
                    "folded base", "folded bottom", "no bottom seam", "no base seam", "no seam at the bottom",
                    "no seam at the base", "no seam across the bottom", "no seam underneath",
                    "without a seam at the bottom", "on the fold",
                    "fold at the bottom", "fold at the base", "one long piece", "without a bottom seam",
                    "cut in one", ), },
            default="two panels", because='the usual way; say "one piece" for a panel wrapped under the base', ),
        flag("one_way", "one-way print", ("one way print", "one-way print", "directional", "directional print",
                "one way", "with nap", "nap", "pile", "upright print", "one way design", "print has a right way up",
                ), no=("two way print", "two-way print", "no nap", "non directional", "all over print"), ),
        choice("base", "base", {"seamed": (), "folded": ()},
            default=(Default("seamed",
                    "a one-way print wrapped under the base would be upside down on the back, so two panels are "
                    "cut, with a base seam",
                    when={"panels_as": "one piece", "one_way": "yes"}, ), Default("folded", derived=True,
                    when={"panels_as": "one piece"}), Default("seamed", derived=True), ), ),
        flag("lined", "lined", ("lined", "with a lining", "with lining", "lining", "full lining", "and lining"),
            no=("unlined", "no lining", "without lining", "not lined"), ),
        flag("turn", "pieces turned", ("may be turned", "can be turned", "either way", "turn them", "pieces can turn",
                "turned sideways"), ),
        CLOTH_WIDTH,
        Input("strap_length", "strap length as cut", LENGTH,
            says=("straps", "strap", "handles", "handle", "strap length", "straps of", "handles of", "long straps",
                "long handles", ), extra=True, sane="5 cm..3 m", practice="20 in..30 in by 1 in", ),
        Input("strap_width", "finished strap width", LENGTH,
            says=("wide straps", "strap width", "wide handles", "straps wide"), spoken=True,
            default="1 in | 2.5 cm", because="the usual strap, folded in four", sane="5 mm..15 cm",
            practice="1 in..2 in by 1/4 in", ),
        Input("straps", "number of straps", COUNT,
            says=("straps", "handles"), noun="strap", spoken=True,
            default=Default("2", "a pair"), sane="1..8", ),
        Input("many", "how many are made", COUNT,
            says=("of them", "of these", "of the same", "the same", "tote bags", "totes"), noun="tote",
            default=Default("1", derived=True), sane="1..50", practice="1..4 by 1", ),
        Input("cut_panels", "panels told", COUNT,
            says=("tote panels", "bag panels"), noun="panel", extra=True, spoken=True,
            sane="1..1000", ),  # a pile of panels to cut is told by their cut size: no bag is worked out from it
        Input("pocket_width", "finished pocket width", LENGTH,
            says=("pocket", "pocket width", "wide pocket", "pocket of"), extra=True, sane="2 cm..1 m",
            practice="6 in..10 in by 1 in", ),
        Input("pocket_height", "finished pocket height", LENGTH,
            says=("pocket", "pocket height", "high pocket", "deep pocket"), extra=True, sane="2 cm..1 m",
            practice="6 in..10 in by 1 in", ),
        Input("pocket_hem", "hem of the pocket", LENGTH,
            says=("pocket hem", "hem of the pocket", "hem on the pocket"), spoken=True,
            default="1 in | 2.5 cm", because="the usual hem of a patch pocket", sane="0 mm..10 cm", ),
        Input("interfacing_width", "interfacing width", LENGTH,
            says=("interfacing", "wide interfacing", "fusible", "wide fusible", "interfacing width"), spoken=True,
            default="36 in | 90 cm", because="the usual wide interfacing", sane="10 cm..4 m"),
        Input("deeper", "lining narrower by", LENGTH,
            says=("lining narrower", "narrower"), spoken=True,
            default=Default(LINING_TAKEN,
                "each side seam of the lining is taken 1/8 in (3 mm) deeper, so that it lies smooth"),
            sane="0 mm..5 cm", ),
    ),
    steps=(
        Step("panel_width", "The width and the depth of the base go across, with a seam at each side",
            "width + depth + 2 * seam", rounding=CUT, label="panel width",
            says=("how wide is the bag panel", "how wide is the tote panel",
                "how wide is the panel", "how wide are the panels", "how wide are the bag panels", "how wide are the tote panels",
                "how wide is the bag cut", "how wide is the tote cut", "panel size", "panel width",
                "panel dimensions", "dimensions of the panels", "cut width",
                  "size of the panels", "size of one panel", "cut size of one panel", "size of a panel", "size of each panel",
                  "of one panel", "panels to cut", "panel sizes", "panel", "panels", "cut size",
                "size to cut", "what size", "pieces", "fabric pieces", "cloth pieces", "pieces of fabric", "front and back",
                "cut the front", "pieces to cut", "cut the panels", "how big", "wide", "width to cut", "sizes", ),
            axis="width", stated=("panel cut", "cut", "panels cut", "panel is", "panels are", "have",
                "pieces are", "two panels", "panels of", "panels that are", "pieces cut"), ),
        Step("panel_height", "Half the depth goes under, with a seam at the base and the top hem",
            "height + depth / 2 + seam + top", rounding=CUT, label="panel height",
            says=("panel height", "cut height", "height to cut", "panel sizes", "length of the panel", "panel length", "how high", "tall",
                  "how tall do i cut the panels",
                "how high do i cut the panels", "how tall are the panels", "how high are the panels",
                "tall do i cut the panels"), axis="height",
            when={"base": "seamed"},
            stated=("panel cut", "high cut", "cut high", "panels cut", "cut height",)),
        Step("panel_length", "The piece goes down one side, under the base and up the other, with a hem at each end",
            "2 * height + depth + 2 * top", rounding=CUT, label="length of the piece",
            says=("length of piece", "length of the piece", "length of the panel", "length of panel", "how long",
                "piece length", "panel length", "long",
                "panel height", "cut height", "how long is the piece", ), axis="length", when={"base": "folded"}, ),
        Step("panels", "Panels to cut", kind=COUNT, rounding=COUNT_UP, noun="panel", label="number of panels",
            says=("how many panels", ), ),
        Step("corner", "Box corners: squares of half the depth, measured from the raw edges", rounding=CUT,
            label="box corner cut-out",
            says=("box corner", "boxed corner", "corner", "cut out", "corners", "cutout", "corner squares", "notch",
                "corner square", "cut-out", ), ),
        Step("corner_fold", "At the fold the cut-out is a seam shallower", rounding=CUT,
            label="box corner from the fold",
            says=("from the fold", ), ),
        Step("lining_width", "The lining is cut narrower, so that it lies smooth inside", "panel_width - deeper",
            rounding=CUT, label="lining width",
            says=("lining width", "lining size", "lining panels", "lining", "cut the lining"), when={"lined": "yes"},
            ),
        Step("lining_height", "The lining is as high as the outer panel",
            "if(panels > many, height + depth / 2 + seam + top, 2 * height + depth + 2 * top)", rounding=CUT,
            label="lining height",
            says=("lining height", "lining length"), when={"lined": "yes"}, ),
        Step("fits", "A panel lies upright on the cloth where the cloth is at least as wide", "cloth_width >= panel_width",
            kind=TEXT, label="panel on the cloth", words=("wide enough", "too narrow"),
            says=("fit", "panels fit", "will it fit", "do the panels fit", "will the panels fit", "fit on", "wide enough",
                "too narrow", "fit across"), ),
        Step("cloth", "The cloth the pieces take", kind=LENGTH, rounding=BUY_CLOTH, label="cloth to buy",
            says=("metres of", "yards of", "fabric", "cloth", "how much fabric", "how much cloth", "how much canvas",
                "yardage", "how many yards", "how many metres", "how much", "fabric needed", "material", "canvas",
                "buy", "how much material", ), ),
        Step("interfacing", "The interfacing the panels take", rounding=BUY_CLOTH, label="interfacing to buy",
            says=("interfacing", "how much interfacing", "fusible", "wide interfacing", "wide fusible")),
    ),
    answers=(
        "panel_width",
        "panel_height",
        "panel_length",
        "panels",
        "corner",
        "corner_fold",
        "lining_width",
        "lining_height",
        "cloth",
    ),
    headline=(
        "The cloth is {fits}: a panel is cut {panel_width} wide.",
        "The cloth is {fits}.",
        "Cut {panels}, {panel_width} wide by {panel_height} high.",
        "Cut {panels}, {panel_width} wide by {panel_length} long.",
        "Buy {interfacing} of interfacing.",
        "Buy {cloth} of cloth.",
        "Cut {corner} squares out of the bottom corners of the panels, measured from the raw edges.",
        "Cut the lining {lining_width} wide by {lining_height} high.",
    ),
    told_sizes=(("panel_width", "panel_height"),),
    sizes=(("width", "height", "depth"), ("width", "height"), ("pocket_width", "pocket_height")),
    pairs=(("in_hand", "cloth_width"),),
    source=GEOMETRY,
    algorithm=_tote,
    refusals=(
        Refusal("top > height", "the hem at the top is deeper than the bag is high. Type a narrower hem or a higher bag."),
        Refusal("cut_panels > 2 * many", "so many panels are more than the bags take. If the sizes are of the panels as cut, ask for the "
                "cloth by a lay plan, such as: lay plan: 40 panels 38 x 42 cm on 150 cm cloth, not turned"),
    ),
    defers=("box corner", "interfacing", "add seam allowance", "strap"),
    no_unknown=("cloth_width", "seam", "top", "straps", "many", "cut_panels"),
    cautions=(
        Caution(
            "Heavy loads: reinforce each end of a strap with a boxed cross of stitching",
            COMMON_PRACTICE,
            mentions=("strap", "handle", "heavy", "shopping", "book", "load"),
        ),
    ),
    examples=(
        "two-panel tote 14 in wide, 15 in high and 4 in deep, 1/2 in seams, 1 in top hem -> 19 in; 18 1/2 in; 2 "
        "panels; 2 in",
        "tote 35 cm wide x 40 high x 10 deep, seams 1 cm, top hem 3 cm, two panels: panel size -> 47 cm; 49 cm",
        "one piece wrapped under the base for a tote 12 in wide, 14 in high, 4 in deep, 1/2 in seams, 1 in hem: "
        "how long is the piece -> 34 in; 17 in",
        "how much 44 in cloth for a two panel tote 14 x 15 x 6 in, 1/2 in seams, 1 in top hem -> 5/8 yd; 21 in; "
        "19 1/2 in",
    ),
    related=("strap", "pocket, centred", "box corner"),
)
