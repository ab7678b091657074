"""A table runner, planned: the runner, a backing, wadding between."""

from __future__ import annotations

from dataclasses import replace

from ..engine.declare import Default, Input, flag
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, plan, same
from ..fabric.words import CLOTH_WIDTH
from ..fit.allowance import ADD_SEAM_ALLOWANCE
from .words import HAND, PLAN, PREWASH, PRICE_OF_CLOTH, SHOP, SHRINK, THREAD_TOO, lay, price, shrunk, total

BACKED = {"backed": "yes"}

RUNNER_PLAN = plan(
    topic="table runner plan",
    says=("table runner", "runner", "dresser runner", "bed runner", "table linen"),
    called=PLAN,
    about="All that is needed before cutting a table runner, hemmed or backed, with wadding if wanted.",
    inputs=(
        Input(
            "width",
            "finished width",
            LENGTH,
            says=("wide", "width", "across"),
            axis="width",
            ask="How wide is the finished runner?",
            example="35 cm",
            sane="5 cm..3 m",
            practice="30 cm..45 cm by 5 cm",
        ),
        Input(
            "length",
            "finished length",
            LENGTH,
            says=("long", "length"),
            axis="length",
            ask="How long is the finished runner?",
            example="150 cm",
            sane="10 cm..20 m",
            practice="100 cm..220 cm by 10 cm",
        ),
        flag(
            "backed", "backed", ("backed", "backing", "lined", "with a backing", "double-sided", "lining", "reversible")
        ),
        Input(
            "hem",
            "allowance at each edge",
            LENGTH,
            says=("hem", "hems", "seam allowance", "seams", "turned twice"),
            spoken=True,
            default=(
                Default("1/2 in | 1.2 cm", "a seam all round, to turn it through", when=BACKED),
                Default("1 1/2 in | 4 cm", "a hem turned twice, mitred at the corners"),
            ),
            sane="0 cm..20 cm",
        ),
        replace(
            CLOTH_WIDTH,
            name="cloth_width",
            default="55 in | 140 cm",
            because="the usual width of linen and furnishing cloth",
            says=tuple(word for word in CLOTH_WIDTH.says if word not in ("wide", "width")),
            ask="",
            example="",
        ),
        Input(
            "backing_width",
            "width of the backing",
            LENGTH,
            says=("backing", "backing cloth", "wide backing"),
            spoken=True,
            default="44 in | 112 cm",
            because="the usual width of cotton cloth",
            sane="10 cm..4 m",
            when=BACKED,
        ),
        flag("padded", "with wadding", ("wadding", "batting", "padded", "with wadding", "quilted")),
        Input(
            "wadding_width",
            "width of the wadding",
            LENGTH,
            says=("wadding", "wide wadding", "batting"),
            spoken=True,
            default="90 in | 228 cm",
            because="a usual width of wadding on the roll",
            sane="10 cm..4 m",
            when={"padded": "yes"},
        ),
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price("backing"),
        price("wadding", "batting"),
        *SHOP,
    ),
    sizes=(("width", "length"),),
    parts=(
        Part(
            "top",
            "Runner",
            ADD_SEAM_ALLOWANCE,
            same("width", "length", allowance="hem"),
            leaves=("plain_length",),
            headline="Cut the runner {cut_width} wide by {cut_length} long.",
            cuts=(CutLine("runner", "cut_width", "cut_length", "cloth"),),
        ),
        Part(
            "backing_piece",
            "Backing",
            ADD_SEAM_ALLOWANCE,
            same("width", "length", allowance="hem"),
            leaves=("plain_length",),
            headline="Cut the backing {cut_width} wide by {cut_length} long, as the top.",
            cuts=(CutLine("backing", "cut_width", "cut_length", "backing"),),
            when=BACKED,
        ),
        Part(
            "wadding_piece",
            "Wadding",
            ADD_SEAM_ALLOWANCE,
            same("width", "length", allowance=Fixed("0 in | 0 cm")),
            leaves=("plain_length",),
            headline="Cut the wadding to the finished size, {cut_width} by {cut_length}.",
            cuts=(CutLine("wadding", "cut_width", "cut_length", "wadding"),),
            when={"padded": "yes"},
        ),
        lay("outer", "Cloth", "cloth", "cloth_width", in_hand="in_hand"),
        shrunk("outer.cloth", buy=Buy("cloth")),
        lay("backing", "Cloth of the backing", "backing", "backing_width", "backing_price"),
        lay("wadding", "Wadding to buy", "wadding", "wadding_width", "wadding_price"),
        total(),
    ),
    order=(
        PREWASH,
        "Straighten the cut ends by a drawn thread, and cut the runner on the straight grain.",
        Do(
            "Press the hem under twice on every side, mitre the corners, and stitch it close to the inner fold.",
            when={"backed": "no"},
        ),
        Do("Tack the wadding to the wrong side of the top, inside the seam allowance.", ("wadding",)),
        Do(
            "Sew top and backing together, right sides inside, leaving a gap; trim the corners, turn, "
            "press, and topstitch all round.",
            ("backing",),
        ),
    ),
    notes=(THREAD_TOO,),
    examples=(
        "plan a table runner 35 cm wide and 150 cm long -> 1.6 m",
        "plan for a runner 14 x 72 in, backed, 60 in linen -> 2 1/8 yd; 2 1/8 yd",
        "everything for a backed table runner 40 x 180 cm with wadding, linen at £16/m -> 1.9 m; £30.40; 1.8 m",
    ),
    related=("tablecloth", "napkins"),
)
