"""The trade's general cautions: when each applies, what it says, and its source. Never instead of the answer.

A limit of law is given only where its section was read as published; otherwise the rule is named, to be checked.
"""

from __future__ import annotations

from .engine.declare import COMMON_PRACTICE, Caution


def _words(text: str) -> tuple[str, ...]:
    """The words of a line, each lower case and singular."""
    return tuple(text.split())


ADULT = _words("adult man men woman women lady gentleman gent")
BABY = _words("baby infant newborn toddler grandbaby preemie")
CHILD = BABY + _words(
    "child children childrens kid kiddy boy girl tot nursery schoolchild schoolchildren grandchild grandchildren "
    "grandson granddaughter"
)
CORDS = _words("drawstring drawcord cord tie string toggle lace")
COT = _words("cot crib bassinet cradle moses infant baby newborn")
BEDDING = _words(
    "quilt quilting patchwork blanket cushion pillow duvet comforter coverlet afghan eiderdown throw bumper toy teddy "
    "softie plushie lovey"
)
NIGHTWEAR = _words(
    "nightwear sleepwear nightie nightgown nightdress nightshirt pyjama pajama pj pjs jammy bathrobe gown robe "
    "sleepsuit"
)
SMALL_PARTS = _words(
    "button snap eye bead magnet magnetic pompom pom sequin bell toggle squeaker stud rhinestone popper charm"
)
TOYS = _words("toy teddy doll softie plushie rattle lovey teether")
ROUND_A_BABY = _words(
    "head headband neck wrist ankle leg thigh arm cuff bonnet hat limb sleeve bootee bootie mitten"
)
TESTED = "make only tested designs, with their own materials and stitching"

GENERAL: tuple[Caution, ...] = (
    Caution(
        "No drawstrings at the hood or neck of children's upper outerwear (US sizes 2T to 12; in Europe up to 7 years "
        "or 134 cm). At its waist or bottom (US sizes 2T to 16) at most 3 in (75 mm) may hang outside the channel with "
        "the garment at its widest, without toggles or knots on the free ends. Check the rules where you live",
        "US 16 CFR 1120.3 and ASTM F1816; Europe EN 14682",
        all_of=(CORDS, (*CHILD, "hood", "neck", "hoody", "hoodie")),
        unless=(*ADULT, *_words("bag sack pouch blind curtain piping eyelash")),
    ),
    Caution(
        "A cord or ribbon long enough to go round a small child's neck can strangle: keep it short, and away from a "
        "cot",
        all_of=(
            (*CORDS, "ribbon"),
            CHILD,
            _words("bag sack pouch cot crib bonnet bib dummy soother pacifier mobile bunting"),
        ),
    ),
    Caution(
        "Cords of blinds, monitors and lamps belong at least 3 ft (90 cm) from a cot",
        "US Consumer Product Safety Commission with UL, 2017",
        all_of=(_words("cord blind curtain lamp monitor"), _words("cot crib nursery")),
    ),
    Caution(
        "Small parts (buttons, snaps, eyes, beads, magnets) can choke a child under 3: embroider instead; magnets are "
        "worse. Toys for sale have legal tests: check the rules where you live",
        "US 16 CFR 1501.2 and 1501.4, for children under 36 months; Europe EN 71-1",
        all_of=(SMALL_PARTS, (*TOYS, *BABY)),
    ),
    Caution(
        "Nothing soft belongs in the sleep space of a baby under 12 months: no quilt, blanket, pillow, bumper or toy, "
        "only a fitted sheet",
        "US Consumer Product Safety Commission, guidance of 2020 and 15 September 2021",
        all_of=(BEDDING, COT),
    ),
    Caution(
        "Padded bumpers for cots may not be made for sale in the US; plain mesh liners are outside the ban",
        "US Consumer Product Safety Commission, release of 7 August 2023",
        all_of=(("bumper",), COT),
    ),
    Caution(
        "Children's nightwear must meet flammability rules: cloth certified for it, or a garment snug to the limits "
        "given there. Check the rules where you live",
        "US 16 CFR 1615 and 1616; UK Nightwear Regulations 1985",
        all_of=(NIGHTWEAR, CHILD),
        unless=("christening", "baptism"),
    ),
    Caution(
        "A weighted blanket is not for infants, nor for a child who cannot lift it off: ask a clinician",
        "American Academy of Pediatrics, 2022, for infants",
        all_of=(("weighted",), _words("blanket quilt lap throw pad sleeper swaddle"), CHILD),
    ),
    Caution(
        "Round a baby's head, neck or limbs snug is too tight: two fingers must go under the elastic",
        COMMON_PRACTICE,
        all_of=(("elastic", "headband", "elasticated"), BABY, ROUND_A_BABY),
    ),
    Caution(
        "Close the blade of a rotary cutter whenever you lay it down, and cut away from you",
        COMMON_PRACTICE,
        mentions=("rotary",),
    ),
    Caution(
        "Do not sew over metal teeth by machine: turn the wheel by hand there",
        COMMON_PRACTICE,
        all_of=(("metal", "brass"), ("teeth", "tooth", "zip")),
    ),
    Caution(
        "Count pins and needles, and find a lost one before the thing is worn or washed",
        COMMON_PRACTICE,
        all_of=(("pin", "needle"), _words("lost missing broken broke")),
    ),
    Caution(
        f"What bears a person's weight is not something to size by arithmetic: {TESTED}",
        COMMON_PRACTICE,
        mentions=_words("sling harness hammock babywearing climbing"),
        unless=("bag",),
    ),
    Caution(
        f"A carrier for a child is not something to size by arithmetic: {TESTED}",
        COMMON_PRACTICE,
        all_of=(("carrier",), CHILD),
    ),
    Caution(
        "What is added to a child's car seat can spoil its fit: make only what its maker has tested",
        COMMON_PRACTICE,
        all_of=(("car", "carseat"), ("seat", "carseat")),
    ),
    Caution(
        f"A swing bears a person's weight and is not something to size by arithmetic: {TESTED}",
        COMMON_PRACTICE,
        mentions=("swing",),
        unless=_words("skirt dress coat top tunic jacket cardigan back"),
    ),
    Caution(
        "This is not protective equipment, and no sum here makes it so",
        COMMON_PRACTICE,
        mentions=_words("mask facemask respirator ppe protective chainsaw welding"),
        unless=_words("sleep eye masking costume carnival"),
    ),
    Caution(
        "Toys, nightwear and children's clothes for sale have legal tests: ask your local authority or a test house",
        COMMON_PRACTICE,
        all_of=(_words("sell selling stall fair"), (*CHILD, *TOYS)),
    ),
)

# Clothes that a question may mention without more: known words, so that none is taken for a slip of another.
OTHER_WORDS = frozenset(
    _words("coat jacket rain raincoat hoody hoodie bonnet dress skirt top tunic blouse shirt apron")
)

WORDS = OTHER_WORDS.union(*(caution.words for caution in GENERAL))
