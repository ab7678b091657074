"""A gathered skirt on elastic, planned: elastic, casing, panels, ruffle, pockets, or tiers."""

from __future__ import annotations

from dataclasses import replace

from ..bags.pocket import POCKET
from ..engine.declare import Default, Input, Refusal, flag
from ..engine.kinds import LENGTH
from ..engine.plan import Buy, CutLine, Do, Fixed, Part, Told, plan, same
from ..fabric.gathered_strip import FULLNESS, GATHERED_STRIP, HEAVINESS, NAMED_FULLNESS
from ..fabric.tiers import TIERS
from ..fabric.words import CLOTH_WIDTH
from ..fit.allowance import ADD_SEAM_ALLOWANCE
from ..notions.casing import CASING
from ..notions.elastic import ELASTIC
from ..notions.trim import LENGTHS
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
    shrunk,
    total,
)

WIDTH = replace(
    CLOTH_WIDTH,
    default="55 in | 140 cm",
    because="a usual width of dress cloth",
    practice="",
    says=(*CLOTH_WIDTH.says, "cloth is"),
)
POCKETS = {"pockets": "yes"}
PLAIN = {"tiered": "no"}
BESIDE = "cloth beside the tiers"  # for the casing band and the pockets of a skirt in tiers

SKIRT_PLAN = plan(
    topic="gathered skirt plan",
    says=(
        "gathered skirt",
        "elastic waist skirt",
        "elasticated skirt",
        "skirt with an elastic waist",
        "pull-on skirt",
        "dirndl",
        "skirt",
        "tiered skirt",
        "ruffled skirt",
        "skirt on elastic",
        "prairie skirt",
    ),
    called=PLAN,
    about="All that is needed before cutting a gathered skirt with an elastic waist, plain, with a "
    "ruffle, pockets, or in tiers.",
    inputs=(
        like(
            ELASTIC,
            "body",
            name="waist",
            label="waist",
            says=("waist", "waist measure", "waistline"),
            axis="",
            ask="What is the waist?",
            example="70 cm",
            practice="60 cm..100 cm by 2 cm",
        ),
        Input(
            "hip",
            "hip",
            LENGTH,
            says=("hip", "hips", "seat", "hip measure"),
            default=Default("=1.4 * waist", "no hip was said, so 1.4 times the waist, to be sure it goes over"),
            sane="30 cm..250 cm",
            practice="80 cm..120 cm by 2 cm",
        ),
        Input(
            "length",
            "finished length",
            LENGTH,
            says=("long", "length", "finished length", "skirt length", "drop"),
            axis="length",
            ask="How long is the skirt, waist to hem?",
            example="65 cm",
            sane="10 cm..2 m",
            practice="45 cm..90 cm by 5 cm",
        ),
        WIDTH,
        HEAVINESS,
        NAMED_FULLNESS,
        replace(FULLNESS, spoken=True),
        like(GATHERED_STRIP, "seam"),
        like(GATHERED_STRIP, "hem"),
        like(ELASTIC, "width", name="elastic_width", label="elastic width", axis="", spoken=True),
        like(ELASTIC, "overlap", label="overlap of the elastic", says=("overlap", "lap"), spoken=True),
        flag("ruffled", "ruffle", ("ruffle", "frill", "flounce", "with a ruffle", "ruffled")),
        Input(
            "ruffle_depth",
            "depth of the ruffle",
            LENGTH,
            says=("ruffle", "frill", "flounce", "deep ruffle", "deep frill"),
            spoken=True,
            default="6 in | 15 cm",
            because="a usual ruffle at a skirt's hem",
            sane="1 cm..60 cm",
            when={"ruffled": "yes"},
        ),
        flag("tiered", "in tiers", ("tier", "tiers", "tiered", "tiered skirt")),
        like(
            TIERS,
            "number",
            default="3",
            because="the usual number of tiers",
            ask="",
            example="",
            when={"tiered": "yes"},
            spoken=True,
        ),
        flag(
            "pockets",
            "pockets",
            ("pocket", "pockets", "patch pockets", "with pockets"),
            no=("no pockets", "without pockets"),
        ),
        like(
            POCKET,
            "width",
            name="pocket_width",
            label="finished pocket width",
            axis="",
            says=("pocket", "pockets", "pocket width"),
            spoken=True,
            default="6 in | 15 cm",
            because="a hand goes in",
            ask="",
            example="",
            when=POCKETS,
        ),
        like(
            POCKET,
            "height",
            name="pocket_height",
            label="finished pocket height",
            axis="",
            says=("pocket", "pockets", "pocket height"),
            spoken=True,
            default="7 in | 18 cm",
            because="deep enough to keep things in",
            ask="",
            example="",
            when=POCKETS,
        ),
        SHRINK,
        HAND,
        PRICE_OF_CLOTH,
        price("elastic"),
        *SHOP,
    ),
    sizes=(("pocket_width", "pocket_height"),),
    parts=(
        Part("casing", "Casing", CASING, {"elastic": "elastic_width"}),
        Part(
            "gather",
            "Gathering",
            GATHERED_STRIP,
            same("width", "heaviness", "said_fullness", "fullness", "seam", "hem", edge="hip", depth="length"),
            leaves=("cloth", "cost", "cut_depth"),
            headline="Gather {panels}, {full} round before gathering.",
            when=PLAIN,
        ),
        Part(
            "panels",
            "Skirt panels",
            ADD_SEAM_ALLOWANCE,
            {
                "width": Told("width"),
                "length": "length",
                "allowance": "seam",
                "top": "casing.allowance",
                "hem": Told("hem"),
                "sides": Fixed("0"),
            },
            leaves=("cut_width", "plain_length"),
            headline="Cut each panel right across the cloth, {cut_length} long.",
            cuts=(CutLine("skirt panel", "width", "cut_length", "cloth", "gather.panels"),),
            when=PLAIN,
        ),
        Part(
            "ruffle",
            "Ruffle",
            GATHERED_STRIP,
            same(
                "width",
                "heaviness",
                "said_fullness",
                "fullness",
                "seam",
                "hem",
                edge="gather.full",
                depth="ruffle_depth",
            ),
            leaves=("cloth", "cost"),
            headline="Cut {panels}, each {cut_depth} deep, right across the cloth.",
            cuts=(CutLine("ruffle strip", "width", "cut_depth", "cloth", "panels"),),
            when={"ruffled": "yes", "tiered": "no"},
        ),
        Part(
            "pocket",
            "Pockets",
            POCKET,
            same("seam", width="pocket_width", height="pocket_height"),
            cuts=(CutLine("pocket", "cut_width", "cut_height", "cloth", "2"),),
            when={**POCKETS, "tiered": "no"},
        ),
        lay("outer", "Cloth", "cloth", "width", in_hand="in_hand"),
        Part(
            "tiers",
            "Tiers",
            TIERS,
            same("number", "width", "seam", "hem", "price", "in_hand", edge="hip", total="length", yoke=Fixed("yes")),
            buys={"cloth": Buy("cloth")},
            takes=VERDICT,
            when={"tiered": "yes"},
        ),
        Part(
            "band",
            "Casing band",
            GATHERED_STRIP,
            same("width", "seam", edge="hip", depth="casing.allowance", fullness=Fixed("1"), hem=Fixed("0 in | 0 cm")),
            leaves=("full", "real", "cloth", "cost"),
            headline="Cut {panels}, each {cut_depth} deep, and join them into a ring.",
            cuts=(CutLine("casing band", "width", "cut_depth", BESIDE, "panels"),),
            when={"tiered": "yes"},
        ),
        Part(
            "tier_pocket",
            "Pockets",
            POCKET,
            same("seam", width="pocket_width", height="pocket_height"),
            cuts=(CutLine("pocket", "cut_width", "cut_height", BESIDE, "2"),),
            when={**POCKETS, "tiered": "yes"},
        ),
        lay("beside", "Cloth beside the tiers", BESIDE, "width"),
        shrunk("outer.cloth", "tiers.cloth", buy=Buy("cloth")),
        Part(
            "elastic",
            "Elastic",
            ELASTIC,
            {"body": "waist", "width": "elastic_width", "overlap": "overlap"},
            leaves=("total",),
            cuts=(CutLine("elastic", "width", "cut", "elastic"),),
        ),
        Part(
            "elastic_bought",
            "Elastic to buy",
            LENGTHS,
            {"number": Fixed("1"), "each_length": "elastic.cut", "price": "elastic_price"},
            buys={"total": Buy("elastic")},
            leaves=("cut",),
            plain=True,
        ),
        total(),
    ),
    order=(
        PREWASH,
        "Cut the panels right across the cloth, selvedge to selvedge; mark the middle of each.",
        Do("Sew the side seams, leaving a pocket's place free; finish the edges and press.", when=PLAIN),
        Do(
            "Hem the top of each pocket, press its other edges under and topstitch it to the front.",
            ("pocket", "tier_pocket"),
        ),
        Do(
            "Join the ruffle strips into a ring, hem one edge, gather the other with two rows of long "
            "stitches and sew it to the skirt's edge.",
            ("ruffle",),
        ),
        Do(
            "Join each tier into a ring; gather the top of every tier below the first and sew it to the "
            "tier above, quarter marks together.",
            ("tiers",),
        ),
        Do("Sew the casing band to the top of the first tier.", ("band",)),
        "Turn the raw edge under, then the casing, and stitch it, leaving a gap at the back.",
        "Thread the elastic, lap its ends, try it on, stitch a boxed cross; close the gap.",
        Do("Let the skirt hang overnight, then turn up the hem and stitch it.", when={"ruffled": "no"}),
    ),
    notes=(THREAD_TOO, "A ruffle comes below the length that was said."),
    examples=(
        "plan a gathered skirt with an elastic waist, waist 70 cm, hip 96 cm, 60 cm long, 140 cm cloth -> 1.4 m; 0.7 m",
        "plan for an elastic waist skirt, waist 28 in, hips 38 in, 26 in long, 44 in cloth, with a 6 in "
        "ruffle -> 2 1/2 yd; 3/4 yd",
        "everything for a tiered skirt, waist 72 cm, hip 100 cm, 80 cm long, 3 tiers, 150 cm cotton -> 1.5 "
        "m; 0.1 m; 0.7 m",
    ),
    refusals=(
        Refusal(
            "1 > 0",
            "tiers and a ruffle together are more than I plan: each is gathered into what is above. "
            "Say one more tier instead.",
            {"tiered": "yes", "ruffled": "yes"},
        ),
    ),
    related=("gathered strip", "elastic", "tiers"),
)
