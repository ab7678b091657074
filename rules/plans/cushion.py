"""A cushion cover, planned: front, back, zip, piping."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import flag
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, Told, plan, same
from ..fabric.cushion_cover import CUSHION_COVER
from ..notions.bias import BIAS_BINDING, PIPING
from ..notions.trim import LENGTHS, TRIM
from ..notions.zips import ZIP
from .words import (
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

COVER = ("pad", "pad_height", "closing", "less", "cover", "cover_height", "overlap", "seam", "hem", "count")

CUSHION_PLAN = plan(
    topic="cushion cover plan",
    says=(
        "cushion cover",
        "cushion",
        "pillow cover",
        "throw pillow",
        "envelope cushion",
        "pillow",
        "scatter cushion",
        "pillowcase",
        "cushion covers",
    ),
    called=PLAN,
    about="All that is needed before cutting a cushion cover: front, back, zip, piping, the lay, and what to buy.",
    inputs=(
        like(CUSHION_COVER, "pad"),
        like(CUSHION_COVER, "pad_height"),
        like(CUSHION_COVER, "closing"),
        like(CUSHION_COVER, "less"),
        like(CUSHION_COVER, "cover"),
        like(CUSHION_COVER, "cover_height"),
        like(CUSHION_COVER, "overlap"),
        like(CUSHION_COVER, "seam"),
        like(CUSHION_COVER, "hem"),
        like(CUSHION_COVER, "count"),
        replace(like(CUSHION_COVER, "width"), default="55 in | 140 cm", because="the usual width of furnishing cloth"),
        flag("piped", "piped", ("piping", "piped", "with piping", "piped edge", "covered cord")),
        like(
            PIPING,
            "cord",
            says=("piping", "cord", "piping cord", "thick cord"),
            axis="",
            default="1/4 in | 5 mm",
            because="a usual piping cord",
            ask="",
            example="",
            spoken=True,
            when={"piped": "yes"},
        ),
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price_each("zip"),
        price("piping cord", "cord", "piping"),
        *SHOP,
    ),
    sizes=(("pad", "pad_height"),),
    parts=(
        Part(
            "cover",
            "Cover",
            CUSHION_COVER,
            same(*COVER, width=Told("width")),
            takes=("front", "back", "height"),
            leaves=("cloth", "rows", "cost"),
            headline="Cut the front {front} wide and the back {back} wide, all {height} high.",
            cuts=(CutLine("front", "front", "height", "cloth", "count"),),
        ),
        Part(
            "backs",
            "Backs",
            CUSHION_COVER,
            same(*COVER, width=Told("width")),
            asked=("back",),
            leaves=("cloth", "rows", "cost", "front", "height"),
            headline="Each back piece is {back} wide.",
            cuts=(CutLine("back", "back", "height", "cloth", "halves"),),
        ),
        Part(
            "trim",
            "Edge to pipe",
            TRIM,
            {
                "side_a": "cover.cover",
                "side_b": "cover.cover_height",
                "loop": Fixed("closed"),
                "turned": Fixed("no"),
                "number": "count",
            },
            leaves=("buy", "cost", "length"),
            headline="Once round the cover.",
            when={"piped": "yes"},
        ),
        Part("piping", "Piping", PIPING, same("cord", "seam", edge="trim.edge", number="count"), when={"piped": "yes"}),
        Part(
            "bias",
            "Bias for the piping",
            BIAS_BINDING,
            {"length": "piping.length", "strip": "piping.strip"},
            leaves=("need",),
            cuts=(CutLine("square for the bias", "square", "square", "cloth"),),
            when={"piped": "yes"},
        ),
        lay("outer", "Cloth", "cloth", "width", in_hand="in_hand"),
        shrunk("outer.cloth", buy=Buy("cloth")),
        Part(
            "zip",
            "Zip",
            ZIP,
            {"opening": "cover.cover"},
            buys={"zip_length": Buy("zip", "a zip {} long")},
            when={"closing": "zip"},
        ),
        Part(
            "piping_cord",
            "Piping cord",
            LENGTHS,
            {"number": Fixed("1"), "each_length": "piping.length", "price": "piping_cord_price"},
            buys={"total": Buy("piping cord")},
            leaves=("cut",),
            when={"piped": "yes"},
        ),
        total(zip="zip_price", piping_cord="piping_cord_price"),
    ),
    order=(
        PREWASH,
        "Cut the front and the back pieces, a motif in the middle of the front if the cloth has one.",
        Do(
            "Cover the cord with its strip and sew it round the front, raw edges together, the strip "
            "snipped at each corner.",
            ("piping",),
        ),
        Do("Hem the edge of each back piece that will show.", when={"closing": "envelope"}),
        Do("Sew the zip between the two back pieces, and open it before the next seam.", ("zip",)),
        Do(
            "Lay the backs on the front, right sides together and overlapping, and sew all round.",
            when={"closing": "envelope"},
        ),
        Do("Lay the back on the front, right sides together, and sew all round.", when={"closing": ("zip", "plain")}),
        Do("Leave a gap to put the pad in, and close it by hand.", when={"closing": "plain"}),
        "Taper the corners a little so that they do not stick out; trim, neaten, turn and press.",
    ),
    notes=(THREAD_TOO,),
    examples=(
        "plan a cushion cover for a 45 cm pad -> 0.5 m",
        "plan for a zip back cushion cover, 18 in pad, 54 in cloth -> 1/2 yd; 17 in",
        "everything for a piped envelope cushion, 50 cm pad, 140 cm fabric at £14/m -> 0.8 m; £11.20; 2 m",
    ),
    related=("cushion cover", "piping"),
)
