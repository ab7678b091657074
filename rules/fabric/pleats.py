"""Pleats: how many, how wide, and how much cloth lies flat before they are folded."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

from ..engine.declare import Caution, Default, Derivation, Fact, Follows, Input, Rule, Step, choice, flag
from ..engine.formula import NoAnswer
from ..engine.kinds import COUNT, LENGTH
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_NEAR, COUNT_UP, CUT, SPACING, snap
from ..engine.run import Impossible, Run
from ..engine.text import plural
from .words import CLOTH_ASKED, CLOTH_WORDS, SEAM, hem

PLEAT_SOURCE = (
    "CITS Dress Making Trade Practical, pleats and tucks (National Instructional Media Institute, India, "
    "2024)"
)
# Layers folded under one knife pleat, and under one box or inverted pleat (two folds).
FOLDS = {"knife": 2, "box": 4, "inverted": 4}


def pleats(run: Run) -> Outcome:
    """Full pleats take twice the finished width more, however many; others take twice their depth at each fold."""
    if run.request.asked[:1] == ("takes",) and run.maybe("finished") is None and run.maybe("depth") is not None:
        return Outcome({"takes": _takes(run, run.get("kind"), run.get("depth"))})
    if run.request.asked[:1] == ("taken",) and run.maybe("finished") is None and run.maybe("depth") is not None:
        takes = _takes(run, run.get("kind"), run.get("depth"))
        return Outcome({"taken": takes * run.get("number"), "takes": takes})
    meet = run.get("spacing") == "full" and run.maybe("number") is not None and run.maybe("pleat") is not None
    if meet and run.request.asked[:1] and run.request.asked[0] in ("finished", "comes"):
        return Outcome({"comes": run.get("number") * run.get("pleat")})
    finished, kind = run.get("finished"), run.get("kind")
    run.get("of_each")  # it has done its work: the "one" in it is no number
    pleat, depth, number = run.maybe("pleat"), run.maybe("depth"), _number(run)
    if pleat is not None and pleat > finished:
        raise Impossible(f"a pleat {_size(run, pleat)} wide does not fit on a finished width of {_size(run, finished)}. Take a narrower "
                         f"pleat, or say which width is which, such as: 12 pleats 4 cm wide on a 60 cm skirt")
    if pleat is not None and number is not None and pleat * number - finished > pleat:
        raise Impossible(f"{number} {plural('pleat', number)} {_size(run, pleat)} wide take {_size(run, pleat * number)}, and the finished "
                         f"width is only {_size(run, finished)}. Take fewer pleats, or narrower ones")
    if depth is None and _full(run, finished, pleat, number):
        run.say("Full pleats meet, and lie three thick: three times the finished width",
                "flat width = 3 × finished width",
                f"3 × {_size(run, finished)}", _size(run, 3 * finished))  # fmt: skip
        values: dict[str, Any] = {"flat": 3 * finished, "taken": 2 * finished}
        if number is None and run.request.asked[:1] and run.request.asked[0] in ("count", "fits", "takes"):
            run.get("number")
        if number is not None:
            values |= {"count": number, "fits": finished / number, "takes": 2 * finished / number}
            values["under"] = finished / number / (1 if kind == "knife" else 2)
            if _depth_asked(run):
                return Outcome({"under": values["under"]})
        return Outcome(values)
    number = number or run.get("number")
    if _depth_asked(run) and depth is None:
        return Outcome({"under": (pleat if pleat is not None else finished / number) / (1 if kind == "knife" else 2)})
    shown = pleat if pleat is not None else finished / number
    under = depth if depth is not None else shown / (1 if kind == "knife" else 2)
    takes = _takes(run, kind, under)
    flat = finished + takes * number
    run.say("The finished width and what all the pleats take", "flat width = finished width + taken up × pleats",
            f"{_size(run, finished)} + {_size(run, takes)} × {number}", _size(run, flat))  # fmt: skip
    return Outcome({"flat": flat, "count": Fraction(number), "takes": takes, "fits": finished / number,
                    "taken": takes * number, "under": under})


def _depth_asked(run: Run) -> bool:
    """Whether the depth is what is asked for, with no flat width told that it would follow from: it is as deep as the faces are wide.

    Raises Impossible where a width is told that may be the flat width.
    """
    asked = run.request.asked[:1] == ("depth",) and not run.request.stated
    if asked and run.was_given("width") and not run.was_given("length"):
        wide = _size(run, run.get("width"))
        raise Impossible(f"{wide} could be the width of the cloth, or what is pleated, laid flat. Say which, such as: {wide} flat")
    return asked


def _takes(run: Run, kind: str, under: Any) -> Any:
    """What one pleat takes of the cloth, of which nothing else need be known."""
    takes = FOLDS[kind] * under
    run.say(f"Each {kind} pleat takes {FOLDS[kind]} times its depth", f"taken up = {FOLDS[kind]} × depth",
            f"{FOLDS[kind]} × {_size(run, under)}", _size(run, takes))  # fmt: skip
    return takes


def _number(run: Run) -> Any:
    """How many pleats: as said, or as many of their width as the finished width holds; None when neither is said."""
    if "number" in run.values or run.was_given("number"):
        return run.get("number")
    pleat = run.maybe("pleat")
    if pleat is None:
        return None
    number = snap(run.get("finished") / pleat, Fraction(1), "near")
    if number < 1:
        raise NoAnswer("one pleat is wider than the whole finished width")
    run.say("Divide the finished width by the pleat width, to the nearest whole pleat",
            "pleats = finished width ÷ pleat width",
            f"{_size(run, run.get('finished'))} ÷ {_size(run, pleat)}", str(number))  # fmt: skip
    return number


def _full(run: Run, finished: Any, pleat: Any, number: Any) -> bool:
    """Whether the pleats meet: not said to be apart, and their widths make up the finished width, within one pleat."""
    if run.get("spacing") == "spaced":
        return False
    return pleat is None or number is None or bool(abs(pleat * number - finished) <= pleat)


def _size(run: Run, value: Any) -> str:
    return run.show(value, LENGTH)


PLEATS = Rule(
    topic="pleats",
    family="fabric",
    says=("pleat", "pleats", "pleated", "pleated skirt", "knife pleat", "box pleat", "inverted pleat", "kick pleat",
          "kilt", "skirt", "plait",
          "pleated width", "pleating", "box pleated", "knife pleated"),
    about="The flat width that pleats are folded from, how many there are and how wide each is.",
    inputs=(
        Input("finished", "finished width", LENGTH, says=("finished", "pleated section", "waist", "section", "hips",
                                                          "hip", "pleated to", "into",
              "to fit", "meeting on", "meeting over", "pleats on", "pleats over", "pleats across", "across when pleated",
              "across once pleated", "front", "skirt front", "panel",
              "wide when pleated", "once pleated", "waistband",
              "pleated width", "hip width", "yoke",
              "when pleated", "wide finished", "brought it to", "brought it down to", "down to", "brings it to", "came to",
              "pleated down to", "pleated up to", "comes to", "pleated up", "when pleated up", "when it's pleated",
              "when it's pleated up", "it's pleated up", "once it's pleated", "after pleating", "folded up", "pleats for",
              "pleats for a", "go round", "goes round", "fit round", "go around", "does it come to", "do they come to",
              "width do they come to", "does that come to", "big a waist", "whose waist", "does it finish at", "finish at", "of box pleats",
              "of knife pleats", "of inverted pleats", "of pleats", "finished edge"),
              default=Default("=number * pleat", "Full pleats meet: their widths make up the finished width", given=("number", "pleat"),
                              when={"spacing": "full"}, derived=True),
              ask="How wide is it when pleated?", example="60 cm", sane="1 cm..30 m", usual="20 cm..4 m",
              practice="40 cm..120 cm by 4 cm"),
        choice("kind", "kind of pleat",
               {"knife": ("knife", "knife pleat", "side pleat", "kilt pleat", "kilt", "accordion", "knife pleated"),
                "box": ("box", "box pleat", "box pleated"), "inverted": ("inverted", "inverted pleat",
                    "inverted box pleat")},
               default=(Default("knife", "the plainest kind, until another is said"),)),
        choice("spacing", "spacing", {"full": ("full pleats", "touching", "meeting", "that meet", "they meet",
                                               "edge to edge"),
               "spaced": ("spaced", "space apart", "apart", "don't meet", "do not meet", "not touching",
                          "gaps between", "with gaps", "not meeting")},
               default=(Default("full", "full pleats, that meet, until said otherwise", derived=True),)),
        Input("pleat", "pleat width", LENGTH, says=("pleat", "kilt pleat", "each pleat", "each one", "face",
                                                    "across the face", "across",
                                                    "visible", "on show", "showing",
              "each show", "width of each pleat", "knife pleat", "box pleat", "inverted pleat", "pleats",
              "wide pleats"), extra=True, sane="1 mm..1 m",
              usual="5 mm..15 cm", practice="2 cm..6 cm by 1 cm"),
        # The "one" of "each one is 5 cm across" is no number of pleats.
        flag("of_each", "width said of each pleat", ("each one", "each one is", "every one")),
        Input("number", "number of pleats", COUNT, says=("pleat", "kilt pleat", "pleats", "number of pleats",
                                                         "knife pleat",
                                                         "box pleat", "inverted pleat"), noun="pleat",
              sane="1..1000", usual="1..80", practice="4..24", ask="How many pleats are there?", example="12"),
        Input("depth", "pleat depth", LENGTH, says=("deep", "depth", "pleat depth", "depth of each", "underlay",
                                                    "return", "depth of pleat", "fold depth", "depth is each pleat", "depth is each",
                                                    "deep was each pleat", "deep is each pleat", "deep are the pleats",
                                                    "deep were the pleats", "how deep are they"),
              axis="depth", extra=True, spoken=True, sane="1 mm..1 m", usual="5 mm..25 cm",
              default=(Default("=uses / 2", "A knife pleat takes twice its depth", when={"kind": "knife"}, given=("uses",), derived=True),
                       Default("=uses / 4", "A box or inverted pleat takes four times its depth", given=("uses",), derived=True)),
              practice="2 cm..6 cm by 1 cm"),
        Input("uses", "cloth that one pleat takes", LENGTH,
              says=("each taking", "taking", "each takes", "each taking up", "each one taking", "each one takes", "each using", "each uses",
                    "taken behind each", "behind each", "taken up by each", "taken by each", "under each", "in each pleat"),
              extra=True, spoken=True, sane="2 mm..4 m", usual="1 cm..60 cm"),
        Input("length", "finished length", LENGTH, says=("long", "length", "skirt length", "in length", "drop"),
              extra=True, spoken=True,
              sane="1 cm..3 m", usual="10 cm..1.3 m"),
        Input("width", "fabric width", LENGTH, says=(*CLOTH_WORDS, "wide fabric", "wide cloth"), extra=True,
              spoken=True, sane="10 cm..5 m",
              usual="85 cm..3 m"),
        SEAM, hem("3/4 in | 2 cm", "the usual narrow hem"),
    ),
    steps=(
        Step("flat", "The width to cut", rounding=CUT, label="flat width", says=("flat width", "flat", "unpleated",
            "cut width", "before pleating",
             "how wide to cut", "width to cut", "total width", "how much fabric", "strip length",
             "width before pleating", "how much", "start with", "cloth flat", "flat cloth", "flat fabric",
                   "cloth across", "much cloth across", "width do i cut", "wide do i cut", "wide do i start", "wide must i start",
                   "wide a strip"),
             stated=("flat", "cloth flat", "of cloth flat", "before pleating", "unpleated", "strip", "flat fabric", "flat cloth",
                     "of flat fabric",
                     "of flat cloth", "strip of cloth", "strip of fabric", "my strip of cloth", "strip of cloth is", "strip is", "my strip",
                   "flat the cloth is", "flat it is", "flat it's", "the cloth is", "cloth is", "lies flat", "laid flat", "lying flat",
                   "flat i have", "flat i've got", "flat i've")),
        Step("count", "How many pleats there are", kind=COUNT, rounding=COUNT_NEAR, noun="pleat", label="pleats",
             says=("how many pleats", "number of pleats", "how many", "knife pleat fit", "box pleat fit", "pleat fit")),
        Step("takes", "What one pleat takes", rounding=CUT, label="taken up by one pleat",
             says=("each pleat takes", "takes up how much", "takes how much", "take up how much", "does it take up",
                   "fabric per pleat", "taken up", "takes up", "cloth in each pleat", "uptake",
                   "take up", "does each pleat take", "does one pleat take", "pleat take", *(
                       f"how much {much} {one} pleat take{up}" for much in ("cloth does", "fabric does", "does")
                       for one in ("one", "each", "a single", "every", "each knife", "each box", "each inverted") for up in ("", " up")), *(
                       f"{one} pleat take{up}" for one in ("each knife", "each box", "each inverted", "a knife", "a box", "an inverted")
                       for up in ("", " up")))),
        Step("taken", "What all the pleats take", rounding=CUT, label="taken up by all the pleats",
             says=("taken up by all", "total taken up", "total taken up by the pleats", "total take up", "extra for the pleat",
                   "extra cloth",
                   "extra cloth for the pleat", "extra width", "extra fabric", "extra for the pleats", "how much wider",
                   "how much wider do i cut",
                   "goes into the pleats", "go into the pleats", "much goes into the pleats", "goes in the pleats",
                   "used up by the pleats", "take up altogether", "use up altogether", "use up in all", "take up in all", "they use up",
                   "take up how much altogether", "take altogether", "how much they take",
                   "much they take", "much do they take", "all the pleats take", "do the pleats take", "do they all take", "take in all"),
             stated=("took up", "took up in all", "taken up by the pleats", "pleats took", "pleats take up")),
        Step("fits", "The pleat width with which a whole number fits", rounding=SPACING, label="pleat width that fits",
             says=("how wide is each pleat", "how wide each", "width of each pleat", "corrected pleat width",
                   "what size pleats", "how wide each pleat", "wide is each", "wide is each one", "wide are they",
                   "wide will each be", "wide each one",
                   "each pleat how wide", "pleat width", "wide is every pleat", "wide does each pleat")),
        Step("under", "What lies under each fold", rounding=SPACING, label="depth of each fold",
             says=("deep is each fold", "deep are the folds", "depth of each fold", "deep each fold", "deep is the fold", "deep a fold",
                   "deep will each pleat be", "deep will each fold be", "deep will the pleats be", "fold back how deep",
                   "underlay of each")),
        Step("comes", "Full pleats meet: their widths make up the finished width", rounding=CUT, label="finished width of the pleats",
             says=("make it finished", "wide do they make it", "wide are they all together", "width of all the pleats")),
        Step("panels", "Divide by what one width gives between its seams, and take whole widths",
             "flat / (width - 2 * seam)", COUNT,
             rounding=COUNT_UP, noun="panel", says=("how many panels", "how many widths", "number of widths")),
        Step("cloth", "Each panel takes the length, a seam allowance and the hem",
             "rounded(panels) * (length + seam + hem)", rounding=BUY_CLOTH,
             label="cloth to buy", says=("how much cloth", "how many metres", "how many yards", "fabric to buy",
                                         "yardage", "buy", *CLOTH_ASKED)),
    ),
    answers=("flat", "count", "takes", "fits", "panels", "cloth", "under", "comes"),
    headline=("Buy {cloth}: {panels}, pleated from {flat} flat.", "Cut it {flat} wide for {count}.",
              "Cut it {flat} wide."),
    algorithm=pleats,
    source=f"{PLEAT_SOURCE}: finished + 2 × depth × number; a box or inverted pleat takes 4 × depth; full pleats 3 × "
           f"finished",
    cautions=(Caution("The number does not divide the width: fold them to the pleat width that fits",
                      when="abs(fits - pleat) > 0.5"),),
    related=("tucks", "gathered strip"),
    derivation=(
        Derivation(
            "flat",
            (
                Fact("Full pleats meet, so that their faces make up the finished width", "finished = number * face"),
                Fact("Under each face the cloth goes back as far as the face is wide, and forward again",
                     "under = 2 * face"),
                Fact("Laid flat, every pleat shows its face and what lay under it", "flat = number * (face + under)"),
                Follows("Put in what lies under", "flat = 3 * number * face"),
                Follows("The faces are the finished width", "flat = 3 * finished"),
            ),
            names={"face": "the width of a pleat's face", "under": "the cloth under a pleat"},
            try_with={"finished": "24 in | 60 cm"},
        ),
        Derivation(
            "flat",
            (
                Fact("Under a knife pleat the cloth goes back by its depth, and forward again", "under = 2 * depth"),
                Fact("Laid flat, the finished width grows by what lay under every pleat",
                     "flat = finished + number * under"),
                Follows("Put in what lies under", "flat = finished + 2 * depth * number"),
            ),
            names={"under": "the cloth under a pleat"},
            try_with={"finished": "24 in | 62 cm", "number": "12", "depth": "1 1/2 in | 4.2 cm"},
        ),
    ),
    examples=(
        "Skirt front 60 cm finished with 4 box pleats, each one 6 cm across the face, spaced apart so they don't "
        "meet. Flat width? -> 108 cm; 4 pleats",
        "full knife pleats for a 50 cm waist, each pleat 2.5 cm, how many pleats -> 20 pleats; 150 cm",
        "box pleats to a finished width of 30 in, flat width -> 90 in",
        "pleated section of 62 cm, 12 knife pleats 4.2 cm deep, flat width -> 162.8 cm",
        "one inverted pleat 6.5 cm deep in a skirt front 66 cm finished, how wide before pleating -> 92 cm",
    ),
)
