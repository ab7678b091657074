"""Places of the body, garments, the words that lead to a number, and the inputs that several fit rules share."""

from __future__ import annotations

from ..engine.declare import Input
from ..engine.kinds import CHOICE


def told(*words: str) -> tuple[str, ...]:
    """The words, and the words with the verb that leads to the number they are of: "waist is 66 hip is 90".

    Without a comma between, only the verb shows that a hip is not the 66 before it.
    """
    return (*words, *(f"{word} {verb}" for word in words for verb in ("is", "are", "measures")))


PLACES = {
    "bust": ("bust", "chest", "full bust", "bustline"),
    "waist": ("waist", "waistline", "waistband"),
    "hip": ("hip", "hips", "hipline", "hip line"),
    "seat": ("seat",),
    "abdomen": ("abdomen", "tummy", "stomach", "high hip"),
    "thigh": ("thigh",),
    "knee": ("knee",),
    "upper arm": ("upper arm", "bicep", "biceps"),
    "neck": ("neck",),
    "calf": ("calf",),
    "wrist": ("wrist",),
}
PLACE_WORDS = tuple(word for words in PLACES.values() for word in words)
# How a question asks for the body that a garment is meant for.
WHOSE = tuple(
    f"whose {place}{meant}"
    for place in PLACE_WORDS
    for meant in ("", " are they for", " is it for", " is that for", " does it fit", " do they fit", " will it fit", " would it fit")
)
WHOSE += tuple(
    f"{what} {place} {meant}"
    for what in ("what", "which")
    for place in PLACE_WORDS
    for meant in ("does it fit", "do they fit", "would it fit", "would they fit", "will it fit", "would wear", "would suit")
)
GARMENTS = {
    "dress": ("dress", "gown", "frock"),
    "bodice": ("bodice",),
    "blouse": ("blouse",),
    "top": ("top", "tunic", "vest", "tee", "t-shirt", "sweater"),
    "shirt": ("shirt", "classic shirt"),
    "fitted shirt": ("fitted shirt", "slim shirt"),
    "skirt": ("skirt",),
    "trousers": ("trousers", "slacks", "shorts", "jeans", "culottes", "leggings"),
    "jacket": ("jacket", "blazer", "cardigan"),
    "loose jacket": ("loose jacket", "loose-fitting jacket"),
    "fitting shell": ("fitting shell", "sloper", "fitting sloper", "block pattern"),
    "coat": ("coat", "overcoat"),
}
GARMENT_WORDS = tuple(word for words in GARMENTS.values() for word in words)

PLACE = Input("place", "place", CHOICE, options=PLACES, extra=True)
GARMENT = Input("garment", "garment", CHOICE, options=GARMENTS, extra=True)
