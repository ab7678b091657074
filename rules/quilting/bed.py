"""The size of a quilt for a bed."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Rule, Step, choice, flag
from ..engine.kinds import LENGTH
from ..engine.rounding import BODY
from .words import HOW_LONG

# Published sizes: UK in cm (the trade body allows 2 cm either way) with the inch sizes sold beside them; US in inches.
# Names used on both sides of the ocean take the size of the question's own system.
BEDS: dict[str, tuple[tuple[str, ...], str, str]] = {
    "cot": (("cot", "cot bed size", "uk cot", "cot quilt"), "24 in | 60 cm", "48 in | 120 cm"),
    "crib": (("crib", "us crib", "crib quilt", "baby crib"), "28 in | 71 cm", "52 in | 132 cm"),
    "small_single": (("small single",), "30 in | 75 cm", "75 in | 190 cm"),
    "single": (("single", "single bed", "uk single"), "36 in | 90 cm", "75 in | 190 cm"),
    "large_single": (("large single", "king single", "long single"), "42 in | 105 cm", "78 in | 200 cm"),
    "small_double": (("small double", "three quarter bed", "queen uk small"), "48 in | 120 cm", "75 in | 190 cm"),
    "double": (("double", "double bed", "uk double"), "54 in | 135 cm", "75 in | 190 cm"),
    "king": (("king", "king size", "king size bed", "king bed"), "76 in | 150 cm", "80 in | 200 cm"),
    "uk_king": (("uk king", "british king", "uk king size", "british king size"), "60 in | 150 cm", "78 in | 200 cm"),
    "us_king": (("us king", "american king", "us king size", "american king size", "eastern king"), "76 in | 193 cm",
    "80 in | 203 cm"),
    "super_king": (("super king", "superking", "super king size"), "72 in | 180 cm", "78 in | 200 cm"),
    "twin": (("twin", "twin bed", "us twin", "twin size"), "38 in | 97 cm", "75 in | 191 cm"),
    "twin_xl": (("twin xl", "twin extra long", "xl twin", "long twin"), "38 in | 97 cm", "80 in | 203 cm"),
    "full": (("full", "full bed", "full size", "us full", "us double"), "54 in | 137 cm", "75 in | 191 cm"),
    "full_xl": (("full xl", "full extra long", "xl full"), "54 in | 137 cm", "80 in | 203 cm"),
    "queen": (("queen", "queen bed", "queen size", "us queen"), "60 in | 152 cm", "80 in | 203 cm"),
    "california_king": (("california king", "cal king", "western king"), "72 in | 183 cm", "84 in | 213 cm"),
}


def _sizes(which: int) -> tuple[Default, ...]:
    return tuple(Default(sizes[which],
    f"published size of a {key.replace('_', ' ').replace('uk', 'UK').replace('us ', 'US ')} mattress",
    when={"bed": key})
                 for key, (_, *sizes) in BEDS.items())  # fmt: skip


BED_QUILT_SIZE = Rule(
    topic="bed quilt size",
    family="quilting",
    says=("mattress", "quilt for a bed", "quilt for the bed", "quilt for his bed", "quilt for her bed", "for a bed",
          "bed measures", "bed quilt size", "drop", "bedspread", "coverlet", "comforter", "hang down",
          "quilt for my bed", "hang over", "overhang", "bed size", "double bed", "single bed", "queen bed",
          "king size bed", "king size", "twin bed", "super king", "queen size", "what size quilt",
          "size of quilt for", "quilt size for a", "bed is", "hanging", "our bed", "my bed", "the bed",
          "foot of the bed", "bed cover"),
    about="The size of a quilt for a bed: the mattress with the drop at both sides and the foot, and a tuck under "
          "the pillows if wanted.",
    inputs=(
        choice("bed", "bed", {key: words for key, (words, *_) in BEDS.items()},
               ask="Which bed, or what size is the mattress?", example="double"),
        Input("width", "mattress width", LENGTH, says=("width of bed", "width of the bed", "bed width", "how wide a bed",
             "what width of bed", "what width bed",
             "which bed", "how wide was the bed",
             "mattress", "bed", "wide", "width", "mattress width",
              "how wide is the mattress", "how wide is the bed", "width of the mattress", "wide is my bed"),
              axis="width", default=_sizes(0), ask="How wide is the mattress?", example="54 in", sane="40 cm..3 m",
              practice="38 in..76 in by 2 in"),
        Input("length", "mattress length", LENGTH, says=("length of bed", "length of the bed", "bed length", "how long a bed",
             "mattress", "bed", "long", "length", "mattress length",
              "how long is the mattress", "how long is the bed", "length of the mattress"),
              axis="length", default=_sizes(1), ask="How long is the mattress?", example="75 in", sane="60 cm..3 m",
              practice="74 in..84 in by 1 in"),
        Input("drop", "drop at each side", LENGTH, says=("drop", "what drop", "which drop", "what the drop",
            "what is the drop", "what drop each side", "what overhang",
              "what is the overhang", "how much drop", "how far does it hang",
              "how far will it hang", "how much hangs over", "how far it hangs", "hang", "hanging", "hang down", "hanging down",
              "hanging over", "overhang",
              "drop at the sides", "side drop", "over the side", "drops", "hang over", "sides", "each side",
              "drop each side", "at the sides and foot", "sides and foot", "sides and the foot", "at the sides", "drop on each side",
              "at each side"), default="12 in | 30 cm",
              because="to below the mattress (published: 12 to 16 in, 21 to 24 to the floor)", sane="0 cm..1.5 m",
              practice="10 in..20 in by 1 in"),
        Input("foot", "drop at the foot", LENGTH, says=("foot", "at the foot", "foot of the bed", "at the bottom",
              "at the end", "foot drop", "end", "bottom",
              "foot end", "drop at the foot"), default=(Default("0 in | 0 cm", derived=True, when={"no_foot": "yes"}),
              Default("=drop", "the foot hangs as the sides do")), sane="0 cm..1.5 m",
              practice="10 in..20 in by 1 in"),
        flag("no_foot", "no drop at the foot", ("no drop at the foot", "no foot drop", "footboard",
             "nothing at the foot", "without a drop at the foot")),
        flag("tucked", "tucked under the pillows", ("pillow tuck", "tuck", "round the pillows", "under the pillows",
             "tucked under the pillows", "cover the pillows", "over the pillows", "pillow allowance",
             "tucks under the pillows", "tuck under the pillows"), no=("no pillow tuck", "no tuck",
             "nothing tucked under the pillows", "not tucked", "no tuck under the pillows", "without a tuck",
             "without a pillow tuck")),
        Input("tuck", "pillow tuck", LENGTH, says=("tuck", "for tucking", "for tucking round the pillows",
             "tucking round the pillows", "to tuck", "round the pillows",
              "for the pillows", "pillow tuck", "under the pillows", "pillows",
              "tucked under the pillows", "pillow", "tuck under the pillows"), default=(Default("0 in | 0 cm",
              derived=True, when={"tucked": "no"}), Default("10 in | 25 cm",
              "enough to tuck under pillows (published: 10 to 15 in)", when={"tucked": "yes"})), sane="0 cm..1 m",
              practice="8 in..15 in by 1 in", spoken=True),
    ),
    steps=(
        Step("quilt_width", "The mattress, and a drop at each side", "width + 2 * drop", rounding=BODY,
             label="quilt width", says=("what size", "size", "how big", "how large", "quilt width", "how wide",
             "quilt", "wide"), stated=("quilt", "quilt is", "made", "came out", "came out at", "comes out", "comes out at", "turned out",
             "ended up", "came to", "quilt came out", "quilt came out at", "bed came out", "bed came out at", "quilt measures",
             "quilt ended up")),
        Step("quilt_length", "The mattress, the drop at the foot, and the tuck", "length + foot + tuck",
             rounding=BODY, label="quilt length", says=("quilt length", "how long", "long", *HOW_LONG)),
    ),
    answers=("quilt_width", "quilt_length"),
    headline=("Make the quilt {quilt_width} by {quilt_length}.",),
    sizes=(("width", "length"),),
    told_sizes=(("quilt_width", "quilt_length"),),
    home="in",
    source=COMMON_PRACTICE + "; mattresses: published UK and US sizes",
    cautions=(
        Caution("Do not put a quilt in a cot or crib with a sleeping baby: keep it for the floor or the wall",
                source="safe-sleep advice of child health bodies, UK and US", mentions=("cot", "crib", "baby",
                "infant", "newborn")),
    ),
    notes=("Quilting takes up 1 to 3 in and washing 3 to 5 in 100: add some if it must come out exact.", ),
    examples=(
        "The mattress is 54 by 75 in, the quilt to hang down 35 cm at the sides and the foot, nothing tucked under "
        "the pillows, what size in inches -> 81 1/2 in; 88 3/4 in",
        "what size quilt for a queen bed with a 12 in drop -> 84 in; 92 in",
        "quilt for a UK king size bed, 30 cm drop, cm -> 210 cm; 230 cm",
        "bed quilt for a double bed, 14 in drop and a pillow tuck -> 82 in; 99 in",
    ),
    related=("blocks for a size", "quilt yardage"),
    defers=("wadding (batting)", "backing", "binding strips", "quilt yardage", "blocks for a size"),
)
