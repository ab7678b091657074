"""A tote bag, planned: outer, straps, pocket, lining, interfacing, all by the rules for each."""

from __future__ import annotations

from ..bags.pocket import POCKET
from ..bags.strap import STRAP
from ..bags.tote import TOTE
from ..bags.words import CLOTH_WIDTH, DEPTH_OF_BAG, HEIGHT_OF_BAG, SEAM_OF_BAG, WIDTH_OF_BAG
from ..engine.declare import Caution, Input, choice, flag
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, Pieces, Told, plan, same
from ..fabric.lay_plan import LAY_PLAN
from ..notions.interfacing import INTERFACING
from .words import (
    HAND,
    LAY_SAYS,
    PLAN,
    PREWASH,
    PRICE_OF_CLOTH,
    SHOP,
    SHRINK,
    THREAD_TOO,
    VERDICT,
    like,
    price,
    shrunk,
    total,
)

OUTER, LINING, STIFF, WEBBING = Buy("outer cloth"), Buy("lining"), Buy("interfacing"), Buy("webbing")
LINED = {"lined": "yes"}

TOTE_PLAN = plan(
    topic="tote bag plan",
    says=("tote bag", "tote", "shopping bag", "shopper", "market bag", "book bag", "beach bag", "carrier bag", "canvas bag", "bag"),
    called=PLAN,
    about="All that is needed before cutting a tote bag: panels, straps, pocket, lining and interfacing, the lays, and what to buy.",
    inputs=(
        WIDTH_OF_BAG, HEIGHT_OF_BAG, DEPTH_OF_BAG, SEAM_OF_BAG,
        like(TOTE, "top", says=("top hem", "hem at the top", "top facing", "top edge", "hem"), spoken=True),
        like(TOTE, "panels_as"), like(TOTE, "one_way"), CLOTH_WIDTH,
        flag("lined", "lined", ("lined", "with a lining", "with lining", "lining", "fully lined", "and lining"), no=("unlined", "no lining", "without lining",
                                                                                                                    "not lined")),
        Input("lining_width", "width of the lining", LENGTH, says=("lining", "lining cloth", "wide lining", "lining is"), spoken=True,
              default="44 in | 112 cm", because="the usual width of cotton cloth", sane="10 cm..4 m", when=LINED),
        choice("strap_of", "straps of", {"cloth": ("cloth straps", "self straps", "straps of the cloth", "fabric straps", "strap of cloth"),
                                         "webbing": ("webbing", "webbing straps", "webbing handles", "tape handles"),
                                         "none": ("no straps", "without straps", "no handles", "without handles")},
               default="cloth", because="folded in four from the outer cloth"),
        Input("drop", "drop of the straps", LENGTH, says=("drop", "strap drop", "handle drop", "straps hang"), spoken=True, default="10 in | 25 cm",
              because="enough to go over a shoulder", sane="0 mm..2 m"),
        Input("apart", "distance between a strap's ends", LENGTH, says=("apart", "ends apart", "between the ends"), spoken=True, default="5 in | 13 cm",
              because="about a third of the width of a usual tote", sane="0 mm..2 m"),
        like(STRAP, "inset", label="strap sewn in at each end", says=("inset", "sewn in", "sewn in at each end"), spoken=True),
        like(TOTE, "strap_width", says=("wide straps", "strap width", "wide handles", "straps wide", "wide webbing", "webbing", "straps"), spoken=True),
        like(TOTE, "straps", says=("straps", "handles"), spoken=True),
        like(TOTE, "pocket_width", spoken=True), like(TOTE, "pocket_height", spoken=True), like(TOTE, "pocket_hem", spoken=True),
        like(TOTE, "deeper", spoken=True),
        flag("stiffened", "interfaced", ("interfacing", "interfaced", "with interfacing", "stiffened", "fusible", "fleece"), no=("no interfacing",
                                                                                                                                 "without interfacing")),
        Input("stuff", "width of the interfacing", LENGTH, says=("interfacing", "wide interfacing", "fusible", "fleece"), spoken=True,
              default="36 in | 90 cm", because="the usual width of woven interfacing", sane="5 cm..4 m", when={"stiffened": "yes"}),
        SHRINK, HAND, PRICE_OF_CLOTH, price("lining"), price("interfacing", "fusible"), price("webbing"), *SHOP,
    ),
    sizes=(("width", "height", "depth"), ("width", "height"), ("pocket_width", "pocket_height")),
    parts=(
        Part("strap", "Straps", STRAP, same("drop", "apart", "inset", "seam", kind=Fixed("folded in four"), finished="strap_width", number="straps"),
             leaves=("webbing",), cuts=(CutLine("strap", "four", "strap", "outer cloth", "number"),), when={"strap_of": "cloth"}),
        Part("pocket", "Pocket", POCKET, same("seam", width="pocket_width", height="pocket_height", hem="pocket_hem", panel_width="width", panel_height="height"),
             cuts=(CutLine("pocket", "cut_width", "cut_height", "outer cloth"),), needs=("pocket_width", "pocket_height")),
        Part("outer", "Outer bag", TOTE,
             same("width", "height", "depth", "seam", "top", "panels_as", "one_way", "lined", "strap_width", "straps", "pocket_width",
                  "pocket_height", "pocket_hem", "deeper", "in_hand", "price", strap_length="strap.strap", cloth_width=Told("cloth_width")),
             buys={"cloth": OUTER}, takes=VERDICT,
             cuts=(CutLine("panel", "panel_width", "panel_height", "outer cloth", "panels"),
                   CutLine("panel in one piece", "panel_width", "panel_length", "outer cloth", "panels"),
                   CutLine("lining panel", "lining_width", "lining_height", "lining", "panels"))),
        Part("webbing", "Straps", STRAP, same("drop", "apart", "inset", kind=Fixed("webbing"), finished="strap_width", number="straps", price="webbing_price"),
             buys={"webbing": WEBBING}, cuts=(CutLine("strap", "strap", "as wide as the webbing", "webbing", "number"),), when={"strap_of": "webbing"}),
        shrunk("outer", "cloth", OUTER),
        Part("lining", "Lining", LAY_PLAN, {"pieces": Pieces("lining"), "width": "lining_width", "one_way": Fixed("no"), "price": "lining_price"},
             buys={"cloth": LINING}, leaves=LAY_SAYS, when=LINED),
        Part("interfacing", "Interfacing", INTERFACING,
             {"width": "outer.panel_width", "length": ("outer.panel_height", "outer.panel_length"), "number": "outer.panels", "stuff": "stuff",
              "price": "interfacing_price"}, buys={"need": STIFF}, when={"stiffened": "yes"}),
        total(),
    ),
    order=(
        PREWASH,
        "Cut everything out as the lays show, on the straight grain; mark the middle of each top edge.",
        Do("Fuse the interfacing to the wrong side of the outer panels.", ("interfacing",)),
        Do("Hem the top of the pocket, press its other edges under and topstitch it to one panel, its top corners reinforced.", ("pocket",)),
        Do("Press each strap in half, open it, fold its edges to the crease, fold again and topstitch both edges.", ("strap",)),
        Do("Sew the side seams of the outer bag, and the base seam when there are two panels; press them open."),
        Do("Fit side to base at each cut-out corner and sew across, for the depth of the base."),
        Do("Sew the lining in the same way, each side seam a little deeper, leaving a gap in its base seam to turn through.", ("lining",)),
        Do("Tack the straps to the top edge, right sides together, each end as far from the side as the other.", ("strap", "webbing")),
        Do("Put the bag into the lining, right sides together, sew round the top, turn through the gap and close it.", ("lining",)),
        Do("Turn the top edge down twice and stitch it, the strap ends caught under and sewn up over it.", when={"lined": "no"}),
        Do("Stitch a boxed cross over each strap end, and topstitch the top edge.", ("strap", "webbing")),
        "Press, and try it with a weight in it before it is carried.",
    ),
    cautions=(
        Caution("Heavy loads: reinforce each end of a strap with a boxed cross of stitching"),
    ),
    notes=(THREAD_TOO,),
    examples=(
        "plan a tote 14 in wide, 15 in high and 4 in deep, lined -> 3/4 yd; 1/2 yd",
        "everything I need for a tote bag 35 cm wide, 40 cm high and 10 cm deep, canvas £9/m -> 0.7 m; £6.30",
        "plan for a lined tote 40 x 40 x 12 cm with webbing straps, 150 cm cloth -> 0.5 m; 1.4 m; 0.5 m",
    ),
    related=("tote", "strap"),
)
