"""From a bought pattern: size and ease, changes, the cloth as chosen, lining, interfacing, notions, cost."""

from __future__ import annotations

from ..engine.declare import Caution, Input
from ..engine.kinds import ALTERATIONS, COUNT, LENGTH, MONEY
from ..engine.plan import Buy, Do, Fixed, Part, plan, same
from ..fabric.bought_pattern import BOUGHT_PATTERN
from ..fabric.width_swap import WIDTH_SWAP
from ..fit.lengths import FOR_HEIGHT, LENGTH_CHANGE
from ..fit.size_choice import SIZE_CHOICE
from ..notions.buttons import BUTTONHOLE
from ..notions.trim import LENGTHS
from ..notions.zips import ZIP
from .words import HAND, PLAN, PREWASH, PRICE_OF_CLOTH, SHOP, THREAD_TOO, VERDICT, like, price, price_each, total

CLOTH = (
    "stated_length",
    "stated_width",
    "width",
    "nap",
    "one_way",
    "stated_nap",
    "extra_each",
    "repeat",
    "matched",
    "shrink",
    "lengths",
    "price",
    "in_hand",
)


def _stuff(called: str, *says: str) -> tuple[Input, ...]:
    """What the pattern states of a lining or an interfacing, and the width in the shop."""
    words = (called, *says)
    return (
        Input(
            called,
            f"{called} stated",
            LENGTH,
            says=(*(f"of {word}" for word in words), *words),
            extra=True,
            spoken=True,
            sane="5 cm..20 m",
        ),
        Input(
            f"{called}_stated_width",
            f"width of {called} stated",
            LENGTH,
            says=tuple(f"{word} {wide}" for word in words for wide in ("of", "stated", "based on")),
            extra=True,
            spoken=True,
            sane="10 cm..5 m",
        ),
        Input(
            f"{called}_width",
            f"width of the {called} in the shop",
            LENGTH,
            says=tuple(f"{prefix} {word}" for word in words for prefix in ("wide", "my", "shop's")),
            extra=True,
            spoken=True,
            sane="10 cm..5 m",
        ),
        price(
            called, *says, f"{called} at"
        ),  # "0.6 m of lining at £5/m": the one word is the length's, both are the price's
    )


PATTERN_PLAN = plan(
    topic="bought pattern plan",
    says=(
        "pattern",
        "bought pattern",
        "sewing pattern",
        "from a pattern",
        "dress pattern",
        "blouse",
        "dress",
        "shirt",
        "trousers",
        "jacket",
        "skirt pattern",
        "envelope",
        "the pattern says",
        "pattern says",
    ),
    called=PLAN,
    about="All that is needed before cutting a bought pattern: size and ease, changes, cloth for the "
    "width and print chosen, lining, notions, cost.",
    inputs=(
        like(BOUGHT_PATTERN, "stated_length"),
        like(BOUGHT_PATTERN, "stated_width"),
        like(BOUGHT_PATTERN, "width"),
        like(BOUGHT_PATTERN, "nap"),
        like(BOUGHT_PATTERN, "one_way"),
        like(BOUGHT_PATTERN, "stated_nap"),
        like(BOUGHT_PATTERN, "extra_each"),
        like(BOUGHT_PATTERN, "repeat"),
        like(BOUGHT_PATTERN, "matched", spoken=True),
        like(BOUGHT_PATTERN, "shrink"),
        like(BOUGHT_PATTERN, "lengths", spoken=True),
        Input("changes", "length changes", ALTERATIONS, many=True, extra=True, says=("lengthen", "shorten")),
        Input(
            "original",
            "length in the pattern",
            LENGTH,
            says=("pattern is", "original length", "length in the pattern", "finished length"),
            extra=True,
            spoken=True,
            sane="10 cm..5 m",
        ),
        like(SIZE_CHOICE, "table", extra=True, ask="", example=""),
        like(SIZE_CHOICE, "finished"),
        like(SIZE_CHOICE, "named"),
        like(SIZE_CHOICE, "bust", says=("bust", "chest", "full bust", "my bust")),
        like(SIZE_CHOICE, "waist", says=("waist", "my waist")),
        like(SIZE_CHOICE, "hip", says=("hip", "hips", "my hip")),
        like(SIZE_CHOICE, "figure"),
        like(SIZE_CHOICE, "cloth", name="kind_of_cloth", label="kind of cloth"),
        like(SIZE_CHOICE, "garment"),
        like(FOR_HEIGHT, "drafted", extra=True, ask="", example="", spoken=True),
        like(FOR_HEIGHT, "own", extra=True, ask="", example="", spoken=True, axis=""),
        *_stuff("lining"),
        *_stuff("interfacing", "fusible"),
        Input(
            "zip",
            "zip the pattern asks for",
            LENGTH,
            says=("zip", "in zip", "cm zip", "long zip"),
            extra=True,
            spoken=True,
            sane="5 cm..1.5 m",
        ),
        Input(
            "elastic",
            "elastic the pattern asks for",
            LENGTH,
            says=("elastic", "of elastic"),
            extra=True,
            spoken=True,
            sane="5 cm..20 m",
        ),
        Input(
            "buttons",
            "buttons",
            COUNT,
            says=("buttons", "button"),
            extra=True,
            spoken=True,
            sane="1..100",
            noun="button",
        ),
        Input(
            "button",
            "button diameter",
            LENGTH,
            says=("button", "buttons", "diameter", "wide buttons"),
            extra=True,
            spoken=True,
            sane="5 mm..8 cm",
        ),
        Input(
            "button_each",
            "price of a button",
            MONEY,
            says=("a button", "each button", "buttons at", "for the buttons each"),
            extra=True,
            spoken=True,
            sane="0.01 money..100 money",
        ),
        price_each("zip"),
        price("elastic"),
        HAND,
        PRICE_OF_CLOTH,
        *SHOP,
    ),
    sizes=(("bust", "waist", "hip"),),
    parts=(
        Part(
            "size",
            "Size and ease",
            SIZE_CHOICE,
            same("table", "finished", "named", "bust", "waist", "hip", "figure", "garment", cloth="kind_of_cloth"),
            takes=("size", "blend", "ease_bust", "ease_waist", "ease_hip"),
            any_of=("table", "named"),
        ),
        Part(
            "height",
            "For the height",
            FOR_HEIGHT,
            {"drafted": "drafted", "own": "own", "length": "original"},
            needs=("drafted", "own", "original"),
        ),
        Part(
            "lengths",
            "Length",
            LENGTH_CHANGE,
            {"changes": "changes", "original": "original"},
            takes=("change", "new"),
            needs=("changes",),
        ),
        Part(
            "cloth",
            "Cloth",
            BOUGHT_PATTERN,
            {**same(*CLOTH), "lengthen": "lengths.change"},
            buys={"cloth": Buy("cloth")},
            takes=VERDICT,
        ),
        *(
            Part(
                called,
                called.capitalize(),
                WIDTH_SWAP,
                {
                    "stated_length": called,
                    "stated_width": (f"{called}_stated_width", f"{called}_width", usual),
                    "width": (f"{called}_width", f"{called}_stated_width", usual),
                    "price": f"{called}_price",
                },
                buys={"cloth": Buy(called)},
                leaves=("swapped",),
                headline="Buy {cloth}.",
                needs=(called,),
            )
            for called, usual in (("lining", "stated_width"), ("interfacing", "stated_width"))
        ),
        Part("zip", "Zip", ZIP, {"opening": "zip"}, buys={"zip_length": Buy("zip", "a zip {} long")}, needs=("zip",)),
        Part(
            "elastic",
            "Elastic",
            LENGTHS,
            {"number": Fixed("1"), "each_length": "elastic", "price": "elastic_price"},
            buys={"total": Buy("elastic")},
            leaves=("cut",),
            needs=("elastic",),
        ),
        Part("buttonhole", "Buttonholes", BUTTONHOLE, {"diameter": "button"}, needs=("button",)),
        total(zip="zip_price"),
    ),
    order=(
        "Check the size by your measures, not by the size you buy in shops; trace it, so that the pattern stays whole.",
        Do(
            "Make the length changes at the lines the pattern has for them, front and back alike, and "
            "redraw the edges smoothly.",
            ("lengths",),
        ),
        "Try the tissue or a calico on before cutting the cloth.",
        PREWASH,
        "Straighten the cut ends, fold as the layout says, grain lines along the selvedge.",
        Do("Lay every piece the same way up.", when={"one_way": "yes"}),
        Do("Lay every piece with the nap running one way.", when={"nap": "yes"}),
        "Cut, mark notches, darts and dots on both layers, before the tissue is taken off.",
        Do("Fuse the interfacing to its pieces.", ("interfacing",)),
        "Stay-stitch necklines and curves; then follow the pattern's own order.",
        Do("Work the buttonholes on a scrap first, through as many layers.", ("buttonhole",)),
    ),
    cautions=(Caution("The pattern's own chart goes before these sums: use them for what it does not say"),),
    notes=(THREAD_TOO,),
    examples=(
        "plan from a pattern: it takes 2.5 m of 115 cm cloth, mine is 150 cm wide at £12/m, lengthened 5 cm "
        "-> 2.1 m; £25.20",
        "plan for a bought pattern, the pattern says 3 yd of 45 in, my cloth is 60 in with a one-way print, "
        "shrinks 5 % -> 2 3/4 yd",
        "plan a blouse pattern: 10: 83/64/88 cm, 12: 87/68/92, 14: 92/73/97, my bust is 87 and hip 97 cm; "
        "takes 2 m of 140 cm cloth -> 2 m",
    ),
    related=("cloth for a bought pattern", "size choice"),
)
