"""Words made comparable: lower case, plurals and verb forms folded, UK and US spellings met, number words as digits."""

from __future__ import annotations

import re
from functools import lru_cache
from itertools import pairwise

NUMBER_WORDS = {
    word: str(value)
    for value, word in enumerate(
        ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve")
    )
}

# Verb forms, and one spelling for what is spelled in several ways; each is an equal of the other.
SAME = {
    "finished": "finish", "finishes": "finish", "finishing": "finish", "shrinks": "shrink", "shrinking": "shrink",
    "shrunk": "shrink", "shrank": "shrink", "color": "colour", "colors": "colour", "center": "centre", "centered": "centre",
    "centred": "centre", "gauge": "tension", "gage": "tension", "batting": "wadding", "meter": "metre", "meters": "metre",
    "zipper": "zip", "zippers": "zip", "trousers": "trouser", "pants": "trouser", "pant": "trouser", "popper": "snap",
    "poppers": "snap", "costs": "cost", "costing": "cost", "paying": "pay", "pays": "pay", "needs": "need", "needed": "need",
             "needing": "need",
    "cutting": "cut", "cuts": "cut", "knitting": "knit", "knitted": "knit", "knits": "knit", "sewn": "sew", "sewing": "sew",
    "sews": "sew", "sewed": "sew", "buying": "buy", "buys": "buy", "bought": "buy", "measuring": "measure",
    "measures": "measure", "measured": "measure", "using": "use", "used": "use", "uses": "use", "making": "make",
    "makes": "make", "made": "make", "grey": "gray", "fibre": "fiber", "jewelry": "jewellery", "yarns": "yarn",
    "increases": "increase", "increasing": "increase", "increased": "increase", "decreases": "decrease",
    "decreasing": "decrease", "decreased": "decrease", "inc": "increase", "dec": "decrease", "gathers": "gather",
    "gathering": "gather", "pleating": "pleat", "mitering": "mitre", "miter": "mitre", "mitered": "mitre", "mitred": "mitre",
    "miters": "mitre", "mitres": "mitre", "halves": "half", "knives": "knife", "leaves": "leave", "geese": "geese",
    "feet": "foot", "inches": "inch", "ins": "inch", "cms": "cm", "mtrs": "metre",
    "metrs": "metre", "mts": "metre", "yds": "yd", "yrds": "yd",
    "kgs": "kg", "grms": "gram", "ozs": "oz", "lbs": "lb", "mms": "mm", "fabrics": "fabric", "material": "fabric",
    "stretches": "stretch", "stretchy": "stretch", "stretched": "stretch", "overlaps": "overlap", "overlapping": "overlap",
    "overlapped": "overlap", "hemmed": "hem", "hemming": "hem", "turned": "turn", "turning": "turn", "turns": "turn",
    "spaced": "space", "spacing": "space", "spaces": "space",
    "wider": "wide", "narrower": "narrow", "narrowest": "narrow", "widest": "wide",
    "longer": "long", "longest": "long", "deeper": "deep", "deepest": "deep", "taller": "tall", "tallest": "tall",
    "bias-cut": "bias", "interfaced": "interfacing", "jumper": "sweater", "cardi": "cardigan", "hexie": "hexagon",
    "hexies": "hexagon", "hexagons": "hexagon", "sq": "square", "sqs": "square", "hsts": "hst", "qsts": "qst", "blks": "block",
    "blk": "block", "geometry": "geometry", "weighted": "weighted", "neg": "negative", "fin": "finish", "pls": "please", "plz": "please",
    "allowances": "allowance", "enuff": "enough", "boht": "buy", "bort": "buy", "ful": "full", "wots": "what",
    "fullcircle": "full circle", "halfcircle": "half circle", "cardy": "cardigan", "bals": "ball", "wht": "what",
    "wat": "what", "hw": "how", "mny": "many", "tme": "time", "circ": "circle", "wst": "waist", "lng": "long", "enuf": "enough",
    "wot": "what", "wich": "which", "agen": "again", "sa": "seam allowance", "what'll": "what", "what're": "what",
    "what'd": "what", "how'll": "how", "shes": "she", "hes": "he", "whos": "who",
}  # fmt: skip

KEEP_S = frozenset(
    """is was has this its us yes gas plus less across press dress cross glass canvas always as his bias class mass
    lens trous apus previous series chess guess boss pass unless process address press progress""".split()
)

PER_CENT = ("per", "cent")  # one word however it is written
_WORD = re.compile(r"[^\W_]+(?:'[^\W_]+)*", re.UNICODE)


@lru_cache(maxsize=16384)
def stem(word: str) -> str:
    """One word folded: plural to singular, known verb forms to one, possessive dropped.

    >>> stem("Strips"), stem("patches"), stem("quilt's"), stem("finishing")
    ('strip', 'patch', 'quilt', 'finish')
    """
    low = word.lower().replace("’", "'")
    if low in SAME:
        return SAME[low]
    if low in NUMBER_WORDS:
        return NUMBER_WORDS[low]
    if low.endswith("'s"):
        return stem(low[:-2])
    low = low.replace("'", "")
    if low in KEEP_S or len(low) < 4 or low.isdigit():
        return low
    if low.endswith("ies") and len(low) > 4:
        return low[:-3] + "y"
    if low.endswith(("ches", "shes", "xes", "sses")):
        return low[:-2]
    if low.endswith("s") and not low.endswith("ss"):
        return SAME.get(low[:-1], low[:-1])
    if low.endswith("ed") and len(low) > 5:
        base = low[:-2]
        return base[:-1] if len(base) > 3 and base[-1] == base[-2] and base[-1] not in "ls" else base
    return low


@lru_cache(maxsize=16384)
def tokens(text: str) -> tuple[str, ...]:
    """The folded words of a phrase, hyphens parting them.

    >>> tokens("one-way prints")
    ('1', 'way', 'print')
    """
    found = [part for word in _WORD.findall(text) for part in stem(word).split()]
    while PER_CENT in pairwise(found):
        spot = next(spot for spot in range(len(found)) if tuple(found[spot : spot + 2]) == PER_CENT)
        found[spot : spot + 2] = ["percent"]
    return tuple(found)


# Words that carry no trade meaning; they neither count for nor against a reading.
FILLERS = frozenset(
    """a an the of for to in on at by with and or but is are was were be been being am it its i im ive id me my mine we
    our us you your he she his her they them their this that these those there here what whats which who whose how
    when where why do does did done doing have has had having can could would should will shall may might must get
    got gets want wants wanted need like please just only so then than as if from into onto off out up down over
    under about around roughly approx approximately very quite really some any all each every both either neither no
    not nor yes ok okay thanks thank hi hello hey tell give show say says said let lets make use take takes come
    comes go goes going work works working out find calculate tot total much many more most less least big large
    small bigger biggest larger largest smaller smallest size long wide deep high tall one two now also too again
    still same another other else per plus minus times gonna wanna idk umm um er well right exactly need know think
    wondering wonder help think say call put keep keeping set lot lots bit thing things way am pm s t d ll re ve
    because since while until before after during between among without within per rather instead""".split()
)  # fmt: skip

# Prepositions: as role words they belong to the number that follows.
LEADING = frozenset("""nearest than from to of until into at over with by a an the per for""".split())

# Fillers between a number and its role word that do not part them.
LINKS = frozenset(
    """of is are was a an the my his her its their at for in s = : be to measure measur size about round by i with that""".split()
)
