"""A drawstring bag, planned: panels, channel, cords, lining."""

from __future__ import annotations

from ..bags.drawstring_bag import DRAWSTRING_BAG
from ..bags.round_base import LINING
from ..engine.declare import Input, flag
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Do, Part, plan, same
from ..notions.trim import LENGTHS
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
    shrunk,
    total,
)

LINED = {"lined": "yes"}

DRAWSTRING_BAG_PLAN = plan(
    topic="drawstring bag plan",
    says=(
        "drawstring bag",
        "drawstring pouch",
        "laundry bag",
        "shoe bag",
        "gift bag",
        "gym bag",
        "bread bag",
        "produce bag",
        "pe bag",
        "drawstring sack",
        "drawstring",
        "drawstring backpack",
    ),
    called=PLAN,
    about="All that is needed before cutting a drawstring bag: panels, channel, cords, lining, the lays, "
    "and what to buy.",
    inputs=(
        like(DRAWSTRING_BAG, "width"),
        like(DRAWSTRING_BAG, "height"),
        like(DRAWSTRING_BAG, "seam"),
        CLOTH_OF_BAG,
        like(DRAWSTRING_BAG, "channel", spoken=True),
        like(DRAWSTRING_BAG, "turn", spoken=True),
        like(DRAWSTRING_BAG, "cords", spoken=True),
        like(DRAWSTRING_BAG, "tail", spoken=True),
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
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price("lining"),
        price("cord", "ribbon"),
        *SHOP,
    ),
    sizes=(("width", "height"),),
    parts=(
        Part(
            "bag",
            "Bag",
            DRAWSTRING_BAG,
            same("width", "height", "seam", "channel", "turn", "cords", "tail"),
            cuts=(
                CutLine("panel", "panel_width", "panel_height", "cloth", "2"),
                CutLine("cord", "cord", "one_cord", "cord", "cords"),
            ),
        ),
        Part(
            "lining_pieces",
            "Lining panels",
            LINING,
            {"width": "bag.panel_width", "height": "bag.panel_height", "top": "bag.lower"},
            cuts=(CutLine("lining panel", "lining_width", "lining_height", "lining", "2"),),
            when=LINED,
        ),
        lay("outer", "Cloth", "cloth", "cloth_width", in_hand="in_hand"),
        shrunk("outer.cloth", buy=Buy("cloth")),
        lay("lining", "Lining", "lining", "lining_width", "lining_price"),
        Part(
            "cord",
            "Cord",
            LENGTHS,
            {"number": "bag.cords", "each_length": "bag.one_cord", "price": "cord_price"},
            buys={"total": Buy("cord")},
            plain=True,
        ),
        total(),
    ),
    order=(
        PREWASH,
        "Cut everything out as the lays show.",
        "Sew the sides and the base, right sides together, leaving the sides open from the top to the lower "
        "line of the channel.",
        "Turn in the edges of the openings and stitch them down.",
        "Turn the raw top edge under, then the channel, and stitch along both edges of the channel.",
        Do(
            "Sew the lining in the same way without a channel, put it in wrong sides together, and catch "
            "its top edge under the channel.",
            ("lining",),
        ),
        "Thread each cord right round from its own side, and knot the ends together.",
    ),
    notes=(THREAD_TOO, "A safety pin, or a bodkin, to thread the cords."),
    examples=(
        "plan a drawstring bag 25 cm wide and 30 cm high -> 0.4 m; 1.4 m",
        "everything for a laundry bag 20 in wide and 28 in high, 60 in cloth -> 7/8 yd; 2 3/4 yd",
        "plan for a shoe bag 35 x 40 cm with one cord, cord at £1.20/m -> 0.5 m; 0.9 m; £1.08",
    ),
    related=("drawstring bag", "eyelets"),
)
