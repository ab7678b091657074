"""Zips: the length to buy for an opening, and where the new stop goes."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, PERCENT, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import CUT, CUT_TAPE
from ..engine.run import Run
from ..engine.units import factor

# Zip lengths as they are sold, inches beside the metric length sold as its equal.
SOLD = {4: 10, 5: 13, 6: 15, 7: 18, 8: 20, 9: 23, 10: 25, 11: 28, 12: 30, 13: 33, 14: 36, 15: 38, 16: 41, 17: 43,
    18: 46, 20: 51, 21: 53, 22: 56,
        24: 61, 26: 66, 27: 69, 28: 71, 30: 76}  # fmt: skip
SOURCE = "zip lengths sold, inches and centimetres: UK Sewing Services, sewing guide"


def _zip(run: Run) -> Outcome:
    """The shortest zip sold that is as long as the opening, in the question's own units."""
    opening = run.get("opening")
    unit = "in" if run.system == "in" else "cm"
    lengths = SOLD if unit == "in" else SOLD.values()
    listed = [Fraction(length) * factor(unit) for length in lengths]
    found = next((length for length in listed if length >= opening), None)
    if found is None:
        run.say(
            f"The list of zips ends at {run.show(listed[-1], LENGTH)}: buy by the metre, or one made to length",
            "",
            run.show(opening, LENGTH),
            "",
        )
        return Outcome({"sold_as": f"longer than the list, which ends at {run.show(listed[-1], LENGTH)}"})
    inches, metric = next(pair for pair in SOLD.items() if pair[0 if unit == "in" else 1] * factor(unit) == found)
    run.say(
        "Take the next length that zips are sold in",
        "shortest zip not under the opening",
        run.show(opening, LENGTH),
        run.show(found, LENGTH),
    )
    return Outcome({"zip_length": found, "sold_as": f"{inches} in or {metric} cm"})


ZIP = Rule(
    topic="zip",
    family="notions",
    says=("zip", "zip length", "zips", "invisible zip", "dress zip", "skirt zip", "zip size", "zip stop",
        "zip to buy", "fly zip", "shorten a zip", "shorten zip", "concealed zip", "want a zip", "need a zip", "buying a zip",
            "length of zip"),
    about="Which zip to buy for an opening, and where to sew its new stop.",
    inputs=(
        Input("opening", "opening", LENGTH,
            says=("opening", "opening is", "slit", "fly", "seam opening", "gap", "side opening", "placket", "cushion",
                "finished opening", ), ask="How long is the opening?", example="15 1/2 in",
            sane="2 cm..5 m", practice="5 in..22 in by 1/2 in", ),
        Input("have", "zip in hand", LENGTH,
            says=("zip", "zip is", "have", "in zip", "long zip", "got", "only"), extra=True, sane="2 cm..5 m",
            practice="7 in..24 in by 1 in", ),
    ),
    steps=(
        Step("zip_length", "The next length sold", rounding=CUT, label="zip to buy",
            says=("zip", "what zip", "how long", "length", "what size", "which zip", "zip length", "buy",
                "what length", ), ),
        Step("stop", "The new stop goes at the length of the opening", "opening", rounding=CUT,
            label="stop from the top",
            says=("stop", "how far down", "new stop", "sew the stop", "from the top", "where", "how far", "bar tack",
                "shorten", "stitch across", "shorten it", ), ),
        Step("spare", "What is longer than the opening comes off", "max(have, opening) - opening", rounding=CUT,
            label="zip beyond the opening",
            says=(
                "below the stop", "left below the stop", "comes off below", "is left below",
                "past the stop", "beyond the stop",
                "spare", "cut off", "too long", "take off", "left over", "comes off", "how much off", "beyond"),
            stated=("come off", "came off", "cut off", "comes off", "too long", "took off", "left over", "spare"), ),
        Step("over", "The zip is so much longer than the opening", "zip_length - opening", rounding=CUT,
            label="zip longer than the opening by",
            says=("how much longer", "longer than the opening", "how much longer than the opening", "how much longer is the zip")),
        Step("sold_as", "As it is sold", kind=TEXT, label="sold as",
            says=("sold as", "equivalent", "metric length", "in metric", "trade length"), ),
    ),
    answers=("zip_length", "stop", "spare", "sold_as"),
    headline=(
        "Sew the new stop {stop} from the top; {spare} comes off below it.",
        "Buy a zip {zip_length} long; the stop goes {stop} from the top.",
        "Sew the new stop {stop} from the top.",
        "{spare} comes off below the stop.",
        "Sold as {sold_as}.",
    ),
    source=SOURCE,
    algorithm=_zip,
    no_unknown=("opening", "have"),
    # A zip so much longer than its opening is likelier the length that came off, told in the opening's place.
    refusals=(Refusal("have > 6 * opening",
        "the zip is more than six times as long as the opening; say which is which, such as: opening 14 in, zip in hand "
        "16 in"),),
    cautions=(Caution("The zip in hand is shorter than the opening", COMMON_PRACTICE, when="have < opening"),),
    notes=("A longer coil zip is cut down: sew over the teeth at the stop, and cut 1/2 in below it.",),
    examples=(
        "zip for a 15 1/2 in opening -> 16 in; 15 1/2 in; 16 in or 41 cm",
        "all I have is an 18 in zip and the opening is 15 1/2 in, how far down from the top do I sew the new "
        "stop -> 15 1/2 in; 2 1/2 in",
        "what zip for an opening of 19 cm -> 20 cm",
    ),
    related=("zipped pouch",),
)

JACKET_ZIP = Rule(
    topic="jacket zip",
    family="notions",
    says=("jacket zip", "separating zip", "open ended zip", "open-ended zip", "coat zip", "hoodie zip", "two way zip",
        "front zip", "cardigan zip", "zip for a jacket"),
    about="How long an open-ended zip a jacket front takes.",
    inputs=(
        Input("body", "body length", LENGTH,
            says=(
                "what body length", "how long is the body", "how long is the jacket",
                "how long was the body", "which body length",
                "body length", "body", "from the shoulder", "length", "long", "back length", "centre back"),
            axis="length", ask="How long is the body?", example="65 cm", sane="10 cm..2 m",
            practice="50 cm..80 cm by 1 cm"),
        Input("front_drop", "front neck drop", LENGTH,
            says=("front neck drop", "neck drop", "front drop", "front neck"), ask="How deep is the front neck?",
            example="8 cm", sane="0 mm..40 cm", practice="6 cm..10 cm by 1 cm"),
        Input("back_drop", "back neck drop", LENGTH,
            says=("back neck drop", "back drop", "back neck"),
            default=Default("0 in", "measured from the neck", derived=True), sane="0 mm..20 cm"),
        Input("less", "shorter by", PERCENT,
            says=("less", "shorter", "off", "shortening", "reduction", "taken off", "ease"),
            default="2 %", because="2 to 3 % less, so that the front does not ripple (trade)", sane="0 %..20 %"),
        Input("collar", "collar height", LENGTH,
            says=("collar", "collar height", "high collar", "stand"),
            default=Default("0 in", "no collar said", derived=True), sane="0 mm..30 cm"),
    ),
    steps=(
        Step("front", "The front is the body less the neck drops", "body - front_drop - back_drop",
            label="front edge",
            says=("front edge", "how long is the front", "how long is the front edge",
                "length of the front", "length of the front edge", "front edge be",
                "before the ease", "without the reduction",)),
        Step("zip_length", "Take off the share, and add the collar", "front * (1 - less) + collar", rounding=CUT_TAPE,
            label="zip length",
            says=("zip", "how long", "zip length", "length", "what length"),
            stated=("zip", "zip is", "jacket zip", "zip of", "in zip", "have", "separating zip",)),
    ),
    answers=("zip_length", "front"),
    headline=("The zip is {zip_length} long.",),
    source="zipper measurement: apparel-merchandising.com, 2012",
    no_unknown=("less", "collar", "back_drop"),
    refusals=(Refusal("front_drop + back_drop >= body",
        "the neck drops take the whole body; give a body length longer than they are, such as: body length 65 cm"),),
    examples=(
        "jacket zip: body length 73 cm, front neck drop 8 cm, back neck drop 2 cm -> 62 cm",
        "open-ended zip for a 65 cm body length, 6 cm front neck drop and a 6 cm collar -> 64 cm",
        "hoodie zip, body length 26 in, front neck drop 3 in -> 22 3/4 in",
    ),
    related=("zip",),
)
