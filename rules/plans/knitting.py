"""Knitted things, planned: a hat, a scarf or blanket with its stripes, a toy to another yarn."""

from __future__ import annotations

from dataclasses import replace

from ..engine.plan import Buy, Do, Fixed, Part, plan, same
from ..knitting.head_and_foot import HAT
from ..knitting.scarf import SCARF_OR_BLANKET
from ..knitting.stripes import STRIPES_RULE
from ..knitting.toy import TOY_TO_ANOTHER_YARN
from ..knitting.words import ROW_TENSION, STITCH_TENSION
from ..knitting.yarn import YARN_BY_SWATCH, YARN_NEEDED
from ..knitting.yarn_class import YARN_BY_GARMENT
from .words import PLAN, like, total

SWATCH = (
    like(YARN_BY_SWATCH, "swatch_width", extra=True, spoken=True, ask="", example=""),
    like(YARN_BY_SWATCH, "swatch_length", extra=True, default=None, spoken=True),
    like(
        YARN_BY_SWATCH,
        "swatch_weight",
        extra=True,
        says=("weighs", "swatch weighs", "weigh", "swatch"),
        ask="",
        example="",
    ),
    like(
        YARN_BY_SWATCH,
        "ball_weight",
        says=("ball", "balls", "a ball", "per ball", "skein", "balls of", "g balls", "gram balls"),
    ),
    like(YARN_BY_SWATCH, "ball_length", spoken=True),
    like(YARN_BY_SWATCH, "spare", spoken=True),
    like(YARN_BY_SWATCH, "exactly"),
    like(YARN_BY_SWATCH, "each"),
)
OF_SWATCH = same(
    "swatch_width", "swatch_length", "swatch_weight", "ball_weight", "ball_length", "spare", "exactly", "each"
)
WEIGHED = ("swatch_width", "swatch_weight")
BALLS = Buy("balls", "{} of yarn", of="yarn")
YARN = Buy("yarn", unless="balls")
CLASS = like(YARN_BY_GARMENT, "yarn", extra=True, ask="", example="")
SWATCH_NOTE = (
    "The yarn is surest from a swatch: say its size and what it weighs (swatch 10 x 10 cm weighs 6 g), "
    "and the weight of a ball."
)
KNIT_FIRST = "Knit a swatch in the stitch, wash and dry it, and count again before casting on."

HAT_PLAN = plan(
    topic="hat plan",
    says=("hat", "beanie", "bobble hat", "knitted hat", "woolly hat", "cap", "watch cap", "bonnet"),
    called=PLAN,
    about="All that is needed before casting on a hat: the cast-on, the rows, the crown and the yarn.",
    inputs=(
        like(HAT, "head"),
        STITCH_TENSION,
        like(HAT, "ease", spoken=True),
        like(HAT, "multiple", spoken=True),
        like(HAT, "edge", spoken=True),
        like(HAT, "depth"),
        like(HAT, "wearer"),
        replace(ROW_TENSION, extra=True),
        CLASS,
        *SWATCH,
    ),
    sizes=(("swatch_width", "swatch_length"),),
    parts=(
        Part(
            "hat",
            "Hat",
            HAT,
            same("head", "tension", "ease", "multiple", "edge", "depth", "wearer", "row_tension"),
            takes=("stitches", "rows"),
        ),
        Part(
            "swatch",
            "Yarn by the swatch",
            YARN_BY_SWATCH,
            {**OF_SWATCH, "width": "hat.girth", "length": "hat.depth"},
            buys={"balls": BALLS, "weight": YARN},
            needs=WEIGHED,
        ),
        Part(
            "yarn",
            "Yarn, roughly",
            YARN_BY_GARMENT,
            {"yarn": "yarn", "garment": Fixed("hat"), "ball": "ball_length"},
            buys={"balls": BALLS, "range": YARN},
            leaves=("low", "high"),
            needs=("yarn",),
            unless=("swatch_weight",),
        ),
        total(),
    ),
    order=(
        KNIT_FIRST,
        "Cast on loosely, and join in the round without a twist; mark the start.",
        "Work a rib for the brim, then go on in the hat's stitch to the depth less the crown.",
        "Work the crown as it stands above, on double-pointed needles when the stitches no longer reach.",
        "Break the yarn, draw it through the last stitches twice, fasten off, weave in the ends.",
    ),
    notes=(SWATCH_NOTE,),
    examples=(
        "plan a hat for a 56 cm head, 22 sts and 30 rows to 10 cm, in dk yarn -> 200 to 300 yd (183 to 274 "
        "m); 112 stitches",
        "plan for a beanie, head 22 in, 5 sts per inch, swatch 4 x 4 in weighs 5 g, 50 g balls -> 2 balls",
        "everything for a hat: head 58 cm, 18 sts and 24 rows to 10 cm, swatch 10 x 10 cm weighs 7 g -> 82 g",
    ),
    related=("hat", "yarn by swatch"),
)

SCARF_PLAN = plan(
    topic="scarf or blanket plan",
    says=(
        "scarf",
        "blanket",
        "afghan",
        "throw",
        "shawl",
        "baby blanket",
        "knitted blanket",
        "stole",
        "striped scarf",
        "striped blanket",
        "stripes",
        "striped",
        "muffler",
        "wrap",
    ),
    called=PLAN,
    about="All that is needed before casting on a scarf or a blanket: the cast-on, the rows, the border, "
    "the stripes and the yarn.",
    inputs=(
        like(SCARF_OR_BLANKET, "width"),
        like(SCARF_OR_BLANKET, "length"),
        STITCH_TENSION,
        replace(ROW_TENSION, extra=True),
        like(SCARF_OR_BLANKET, "multiple", spoken=True),
        like(SCARF_OR_BLANKET, "edge", spoken=True),
        like(SCARF_OR_BLANKET, "border", spoken=True),
        like(SCARF_OR_BLANKET, "outside"),
        like(STRIPES_RULE, "sequence", extra=True),
        CLASS,
        *SWATCH,
    ),
    sizes=(("width", "length"), ("swatch_width", "swatch_length")),
    parts=(
        Part(
            "piece",
            "The piece",
            SCARF_OR_BLANKET,
            same("width", "length", "tension", "row_tension", "multiple", "edge", "border", "outside"),
            takes=("stitches", "rows"),
        ),
        Part(
            "swatch",
            "Yarn by the swatch",
            YARN_BY_SWATCH,
            {**OF_SWATCH, "width": ("piece.whole_width", "width"), "length": ("piece.whole_length", "length")},
            buys={"balls": BALLS, "weight": YARN},
            needs=WEIGHED,
        ),
        Part(
            "yarn",
            "Yarn, roughly, for a scarf",
            YARN_BY_GARMENT,
            {"yarn": "yarn", "garment": Fixed("scarf"), "ball": "ball_length"},
            buys={"balls": BALLS, "range": YARN},
            leaves=("low", "high"),
            needs=("yarn",),
            unless=("swatch_weight",),
        ),
        Part(
            "stripes",
            "Stripes",
            STRIPES_RULE,
            {"sequence": "sequence", "rows": "piece.rows", "weight": "swatch.weight"},
            needs=("sequence", "row_tension"),
        ),
        total(),
    ),
    order=(
        KNIT_FIRST,
        "Cast on loosely, so that both ends are as wide as the middle.",
        Do("Carry the yarns up the side where the stripes are of even rows; else weave in each end.", ("stripes",)),
        "Work to the rows, measuring flat and unstretched; keep enough yarn for the cast-off, four times the width.",
        "Cast off loosely, weave in the ends, wash, pin out to size and dry flat.",
    ),
    notes=(SWATCH_NOTE,),
    examples=(
        "plan a scarf 25 cm wide and 180 cm long, 20 sts and 28 rows to 10 cm, swatch 10 x 10 cm weighs 6 "
        "g, 50 g balls at £4.50 each -> 6 balls; £27.00; "
        "50 stitches; 504 rows",
        "plan for a blanket 100 x 120 cm, 18 sts and 24 rows to 10 cm, swatch 15 x 15 cm weighs 14 g, 100 g "
        "balls -> 9 balls; 180 stitches",
        "everything for a striped scarf 8 x 60 in, 5 sts and 6 rows per inch, stripes 6 rows navy, 4 rows "
        "white, swatch 4 x 4 in weighs 6 g -> 198 g",
    ),
    related=("scarf, blanket", "stripes"),
)

TOY_PLAN = plan(
    topic="toy plan",
    says=(
        "toy",
        "rabbit",
        "teddy",
        "bear",
        "doll",
        "bunny",
        "amigurumi",
        "soft toy",
        "elephant",
        "toy in another yarn",
        "dinosaur",
    ),
    called=PLAN,
    about="All that is needed before knitting a toy in another yarn than the pattern's: its size, yarn, "
    "balls and stuffing.",
    inputs=(
        like(TOY_TO_ANOTHER_YARN, "old"),
        like(TOY_TO_ANOTHER_YARN, "new"),
        like(TOY_TO_ANOTHER_YARN, "height"),
        like(TOY_TO_ANOTHER_YARN, "yarn"),
        like(TOY_TO_ANOTHER_YARN, "old_weight"),
        like(TOY_TO_ANOTHER_YARN, "filling"),
        like(TOY_TO_ANOTHER_YARN, "new_weight"),
        like(TOY_TO_ANOTHER_YARN, "new_length"),
        like(YARN_NEEDED, "spare", spoken=True),
        like(YARN_NEEDED, "exactly"),
        like(YARN_NEEDED, "each"),
    ),
    parts=(
        Part(
            "toy",
            "Toy",
            TOY_TO_ANOTHER_YARN,
            same("old", "new", "height", "yarn", "old_weight", "filling", "new_weight", "new_length"),
            takes=("tall", "factor"),
            leaves=("stuffing",),
        ),
        Part(
            "balls",
            "Balls",
            YARN_NEEDED,
            {**same("spare", "exactly", "each"), "length": "toy.length", "ball": "new_length"},
            buys={"balls": BALLS, "total": YARN},
            needs=("yarn", "new_length"),
        ),
        Part(
            "stuffing",
            "Stuffing",
            TOY_TO_ANOTHER_YARN,
            same("old", "new", "filling"),
            buys={"stuffing": Buy("stuffing")},
            asked=("stuffing",),
            leaves=("factor", "area"),
            headline="Have {stuffing} of stuffing.",
            needs=("filling",),
        ),
        total(),
    ),
    order=(
        "Choose needles that give the new tension in a fabric close enough that the stuffing does not show.",
        "Work every stitch and row as the pattern says: only the size changes.",
        "Fit eyes and joints to the new size, or embroider the face for a small child.",
        "Stuff firmly in small pieces, sew up, and check that nothing comes loose.",
    ),
    examples=(
        "plan a toy rabbit in thicker yarn: pattern 22 sts to 10 cm, mine 16.5 sts to 10 cm, 30 cm tall, "
        "150 m of yarn, 40 g of stuffing, new balls 75 m -> 3 balls; 40 cm",
        "plan for a teddy, the pattern's tension 24 sts to 10 cm, new tension 18 sts to 10 cm, 24 cm high -> 32 cm",
        "everything for a toy elephant: pattern 6 sts per inch, I shall knit 4 sts per inch, 10 in tall -> 15 in",
    ),
    related=("toy to another yarn", "yarn needed"),
)
