"""A circle skirt, planned: radii, cloth, waistband, zip."""

from __future__ import annotations

from dataclasses import replace

from ..bags.strap import STRAP
from ..engine.declare import Default, Input
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Fixed, Part, Told, plan, same
from ..fabric.circle_skirt import CIRCLE_SKIRT, FRACTION
from ..notions.interfacing import INTERFACING
from ..notions.zips import ZIP
from .words import (
    HAND,
    PLAN,
    PREWASH,
    PRICE_OF_CLOTH,
    SHOP,
    SHRINK,
    THREAD_TOO,
    VERDICT,
    lay,
    like,
    price,
    price_each,
    shrunk,
    total,
)

CIRCLE_SKIRT_PLAN = plan(
    topic="circle skirt plan",
    says=(
        "circle skirt",
        "circular skirt",
        "half circle skirt",
        "full circle skirt",
        "skater skirt",
        "twirl skirt",
        "three-quarter circle skirt",
        "quarter circle skirt",
        "semicircle skirt",
        "circle",
    ),
    called=PLAN,
    about="All that is needed before cutting a circle skirt: the radii, the cloth, the waistband, its "
    "interfacing and a zip.",
    inputs=(
        like(CIRCLE_SKIRT, "waist"),
        like(CIRCLE_SKIRT, "length"),
        replace(FRACTION, default=Default("full", "a full circle, until a part of one is said"), ask="", example=""),
        like(CIRCLE_SKIRT, "part"),
        replace(like(CIRCLE_SKIRT, "width"), default="60 in | 150 cm", because="a usual width of dress cloth"),
        like(CIRCLE_SKIRT, "ease"),
        like(CIRCLE_SKIRT, "seam"),
        like(CIRCLE_SKIRT, "hem"),
        Input(
            "band",
            "finished depth of the waistband",
            LENGTH,
            says=("waistband", "band", "deep waistband", "wide waistband"),
            spoken=True,
            default="1 1/4 in | 3 cm",
            because="a usual waistband",
            sane="5 mm..20 cm",
        ),
        Input(
            "under",
            "waistband beyond each end",
            LENGTH,
            says=("underlap", "overlap"),
            spoken=True,
            default="1 in | 2.5 cm",
            because="a seam at one end, an underlap at the other",
            sane="0 cm..20 cm",
        ),
        Input(
            "opening",
            "zip opening",
            LENGTH,
            says=("opening", "zip", "zip opening", "zip of"),
            spoken=True,
            default="8 in | 20 cm",
            because="enough for a skirt to go over the hips",
            sane="2 cm..1 m",
        ),
        Input(
            "stuff",
            "width of the interfacing",
            LENGTH,
            says=("interfacing", "wide interfacing", "fusible"),
            spoken=True,
            default="36 in | 90 cm",
            because="the usual width of woven interfacing",
            sane="5 cm..4 m",
        ),
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price("interfacing", "fusible"),
        price_each("zip"),
        *SHOP,
    ),
    parts=(
        Part(
            "skirt",
            "Skirt",
            CIRCLE_SKIRT,
            same(
                "waist",
                "length",
                "part",
                "ease",
                "seam",
                "hem",
                "in_hand",
                "price",
                fraction=Told("fraction"),
                width=Told("width"),
            ),
            buys={"cloth": Buy("cloth")},
            takes=("radius", "cut_radius", "outer", "sweep", *VERDICT),
            cuts=(CutLine("skirt, by radii", "cut_radius", "outer", "cloth"),),
        ),
        shrunk("skirt.cloth", buy=Buy("cloth")),
        Part(
            "band",
            "Waistband",
            STRAP,
            {
                "drop": Fixed("0 in | 0 cm"),
                "apart": "waist",
                "inset": "under",
                "kind": Fixed("tube"),
                "finished": "band",
                "seam": "seam",
            },
            leaves=("webbing", "cost"),
            headline="Cut the waistband {strap} long and {tube} wide, to fold in half along its length.",
            cuts=(CutLine("waistband", "strap", "tube", "waistband cloth"),),
        ),
        lay("band_lay", "Cloth of the waistband", "waistband cloth", "width"),
        Part(
            "interfacing",
            "Interfacing of the waistband",
            INTERFACING,
            {"width": "band.tube", "length": "band.strap", "stuff": "stuff", "price": "interfacing_price"},
            buys={"need": Buy("interfacing")},
        ),
        Part("zip", "Zip", ZIP, same("opening"), buys={"zip_length": Buy("zip", "a zip {} long")}),
        total(zip="zip_price"),
    ),
    order=(
        PREWASH,
        "Fold the cloth as the way of cutting says, mark both radii from the folded corner with a tape and "
        "chalk, and cut.",
        "Stay-stitch the waist at once: its edge is on the bias and stretches.",
        "Sew the side seams, the zip into the one on the left or at the back.",
        "Fuse the interfacing to the waistband, fold it in half, sew its ends, and sew it on; catch its "
        "inside by hand.",
        "Hang the skirt for a day and a night, level the hem from the floor, and turn it up narrowly.",
    ),
    notes=(
        THREAD_TOO,
        "A hook and bar for the waistband.",
        "The corners left beside a circle may hold the waistband: lay it out before buying cloth for it.",
    ),
    examples=(
        "plan for a circle skirt, waist 70 cm, 55 cm long, 150 cm cloth -> 1.4 m; 0.1 m",
        "plan a half circle skirt for a 28 in waist, 24 in long, 60 in cloth -> 1 7/8 yd",
        "everything for a full circle skirt, waist 66 cm, 60 cm long, cloth at £8/m -> 1.5 m; £12.00",
    ),
    related=("circle skirt", "hem sweep"),
)
