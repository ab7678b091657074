"""A zipped pouch, planned: panels, zip, tabs, lining, interfacing."""

from __future__ import annotations

from ..bags.pouch import POUCH
from ..engine.declare import Input, flag
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, Told, plan, same
from ..notions.interfacing import INTERFACING
from ..notions.zips import ZIP
from .words import (
    CLOTH_OF_BAG,
    HAND,
    PLAN,
    PREWASH,
    PRICE_OF_CLOTH,
    SHOP,
    SHRINK,
    THREAD_TOO,
    lay,
    like,
    price,
    price_each,
    shrunk,
    total,
)

LINED = {"lined": "yes"}

POUCH_PLAN = plan(
    topic="zipped pouch plan",
    says=(
        "zipped pouch",
        "zip pouch",
        "pouch",
        "pencil case",
        "cosmetic bag",
        "make-up bag",
        "makeup bag",
        "wash bag",
        "toiletry bag",
        "zipped bag",
        "coin purse",
        "zippy pouch",
        "boxy pouch",
    ),
    called=PLAN,
    about="All that is needed before cutting a zipped pouch: panels, tabs, zip, lining and interfacing, "
    "the lays, and what to buy.",
    inputs=(
        like(POUCH, "width"),
        like(POUCH, "height"),
        like(POUCH, "depth"),
        like(POUCH, "seam"),
        CLOTH_OF_BAG,
        like(POUCH, "clear", says=("shorter", "shorter than the pouch", "clear of the seams"), spoken=True),
        like(POUCH, "tab", spoken=True),
        flag(
            "lined",
            "lined",
            ("lined", "with a lining", "with lining", "lining", "fully lined"),
            no=("unlined", "no lining", "without lining", "not lined"),
        ),
        Input(
            "lining_width",
            "width of the lining",
            LENGTH,
            says=("lining", "lining cloth", "wide lining", "lining is", "wide"),
            spoken=True,
            default="44 in | 112 cm",
            because="the usual width of cotton cloth",
            sane="10 cm..4 m",
            when=LINED,
        ),
        flag(
            "stiffened",
            "interfaced",
            ("interfacing", "interfaced", "with interfacing", "stiffened", "fusible", "fleece"),
            no=("no interfacing", "without interfacing"),
        ),
        Input(
            "stuff",
            "width of the interfacing",
            LENGTH,
            says=("interfacing", "wide interfacing", "fusible", "fleece", "wide"),
            spoken=True,
            default="36 in | 90 cm",
            because="the usual width of woven interfacing",
            sane="5 cm..4 m",
            when={"stiffened": "yes"},
        ),
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price("lining"),
        price("interfacing", "fusible"),
        price_each("zip"),
        *SHOP,
    ),
    sizes=(("width", "height", "depth"), ("width", "height")),
    parts=(
        Part(
            "pouch",
            "Pouch",
            POUCH,
            same("width", "height", "depth", "seam", "clear", "tab"),
            cuts=(
                CutLine("panel", "panel_width", "panel_height", "outer cloth", "2"),
                CutLine("zip tab", "as wide as the zip", "tab_piece", "outer cloth", "2"),
            ),
        ),
        Part(
            "lining_pieces",
            "Lining panels",
            POUCH,
            same("width", "height", "depth", "seam", "clear", "tab"),
            leaves=("zip_length", "tab_piece"),
            headline="Cut two more panels of the lining, {panel_width} wide by {panel_height} high.",
            cuts=(CutLine("lining panel", "panel_width", "panel_height", "lining", "2"),),
            when=LINED,
        ),
        lay("outer", "Outer cloth", "outer cloth", "cloth_width", in_hand="in_hand"),
        shrunk("outer.cloth", buy=Buy("outer cloth")),
        lay("lining", "Lining", "lining", "lining_width", "lining_price"),
        Part("zip", "Zip", ZIP, {"opening": "pouch.zip_length"}, buys={"zip_length": Buy("zip", "a zip {} long")}),
        Part(
            "interfacing",
            "Interfacing",
            INTERFACING,
            {
                "width": "pouch.panel_width",
                "length": "pouch.panel_height",
                "number": Fixed("2"),
                "stuff": Told("stuff"),
                "price": "interfacing_price",
            },
            buys={"need": Buy("interfacing")},
            when={"stiffened": "yes"},
        ),
        total(zip="zip_price"),
    ),
    order=(
        PREWASH,
        "Cut everything out as the lays show.",
        Do("Fuse the interfacing to the wrong side of the outer panels.", ("interfacing",)),
        "Fold a tab over each end of the zip, so that the zip with its tabs is as long as the panels are "
        "wide, and stitch across.",
        Do(
            "Lay the zip face down on an outer panel, a lining panel over it, and sew along with a zip "
            "foot; do the same on the other side.",
            ("lining",),
        ),
        Do(
            "Lay the zip face down along the top edge of a panel and sew along with a zip foot; do the same "
            "on the other side.",
            when={"lined": "no"},
        ),
        "Press the cloth away from the zip and topstitch beside it.",
        "Open the zip halfway, or the pouch cannot be turned.",
        "Sew round the sides and the base, right sides together.",
        Do("Leave a gap in the base of the lining to turn through, and close it afterwards.", ("lining",)),
        "For a deep base, cut out the corners and sew across them; then turn and press.",
    ),
    notes=(THREAD_TOO,),
    examples=(
        "plan a zipped pouch 9 in wide and 6 in high, lined -> 1/4 yd; 1/4 yd; 8 in",
        "plan for a pencil case 20 x 10 cm, unlined -> 0.2 m; 18 cm",
        "everything for a lined wash bag 25 cm wide, 18 cm high and 8 cm deep, 140 cm cloth -> 0.3 m; 0.3 m; 23 cm",
    ),
    related=("zipped pouch", "zip"),
)
