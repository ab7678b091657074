"""The weight of cloth: grams a square metre and ounces a square yard, its class, and the weight of a length."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import Default, Input, Rule, Step
from ..engine.kinds import ANY, AREA, AREAL, LENGTH, MASS, TEXT
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.run import Impossible, Run
from ..engine.text import decimal, shown
from ..engine.units import factor
from .words import CLOTH_WORDS

# Up to these many g/m^2 (4 and 8 oz/yd^2 or so) a cloth counts as light, and as medium; common practice.
LIGHT, MEDIUM = Fraction(135), Fraction(270)
USES = {"light": "shirts, blouses, linings", "medium": "dresses, trousers, quilts",
        "heavy": "jeans, coats, bags, upholstery"}


def weigh(run: Run) -> Outcome:
    """The weight in the other unit, the class of the cloth, and of a length of a width where these are given."""
    told = run.request.given
    if run.request.asked[:1] == ("other",) and {"ounces", "length", "width"} <= told.keys():
        raise Impossible(f"{told['ounces'].text} could be what the piece weighs, or what a square yard of it weighs. Say which, such as: "
                         f"a piece of 2 yd of 45 in cloth, weight of the piece 15 oz; or: 6 oz per square yard")
    weight = run.get("weight")
    given = run.request.given["weight"].unit if "weight" in run.request.given else "oz/yd^2"
    target = run.request.unit if run.request.unit in ("g/m^2",
                                                      "oz/yd^2") else "oz/yd^2" if given == "g/m^2" else "g/m^2"
    ratio = factor(given) / factor(target) if given != target else Fraction(1)
    run.say(f"One {given} is {decimal(ratio, 6)} {target}", f"weight × {decimal(ratio, 6)}",
            f"{shown(weight, given)} × {decimal(ratio, 6)}",
            shown(weight, target))  # fmt: skip
    grams = weight / factor("g/m^2")
    kind = "light" if grams <= LIGHT else "medium" if grams <= MEDIUM else "heavy"
    return Outcome({"other": Amount(weight, target), "kind": f"{kind} ({USES[kind]})"})


FABRIC_WEIGHT = Rule(
    topic="fabric weight",
    family="fabric",
    says=("fabric weight", "cloth weight", "gsm", "weight of fabric", "grams per square metre",
          "ounces per square yard", "ounce to the square yard",
          "how heavy", "heavy", "weigh", "weighs", "heavy fabric", "weight class", "weight", "oz fabric", "oz denim",
          "heavyweight", "in gsm", "ounce denim", "ounce canvas", "oz canvas", "oz cotton", "how heavy is", "mass of fabric",
          "mass of the fabric", "mass of cloth", "mass of the cloth", "mass of the piece", "areal mass", "weighed"),
    about="A cloth's weight in gsm as oz/yd², or the other way, its class, and what a length of it weighs.",
    inputs=(
        Input("weight", "weight of the cloth", AREAL, says=("weight", "gsm", "fabric", "cloth", "is", "denim"),
              ask="What does the cloth weigh?",
              default=(Default("=ounces / over", "Ounces alone are ounces to the square yard, as cloth is sold",
                               given=("ounces",)),),
              example="200 gsm", sane="1 g/m^2..5000 g/m^2", usual="20 g/m^2..900 g/m^2",
              practice="100 g/m^2..400 g/m^2"),
        # "10 oz denim" gives a weight with no area: the trade means a square yard of it.
        Input("ounces", "ounces of a square yard", MASS, says=(*CLOTH_WORDS, "overcoating", "coating", "suiting", "shirting",
              "to the square yard", "to the sq yd"), extra=True, spoken=True,
              sane="0.1 oz..40 oz", usual="0.5 oz..25 oz"),
        Input("over", "area that weighs this", AREA, says=("square yard",), default=Default("1 yd^2", derived=True), spoken=True,
              sane="1 yd^2..1 yd^2"),
        Input("length", "length", LENGTH, says=("long", "length", "metres", "yards", "of", "piece", "bolt"),
              axis="length", extra=True, sane="1 mm..10 km",
              usual="20 cm..100 m", practice="1 m..5 m"),
        Input("width", "fabric width", LENGTH, says=(*CLOTH_WORDS, "wide", "width"), axis="width", extra=True,
              sane="1 cm..10 m", usual="60 cm..3 m"),
    ),
    steps=(
        Step("other", "Put it into the other unit", kind=ANY, label="weight of the cloth", says=("gsm",
            "ounces to the square yard", "oz per square yard",
             "what is it in", "grams per square metre", "in ounces", "in grams", "in gsm", "in those", "per square yard",
             "per square metre", "to the square yard", "to the square metre")),
        Step("kind", "Light, medium or heavy", kind=TEXT, label="weight class", says=("class", "heavy or light",
            "light or heavy", "is it heavy", "is it light", "medium", "weight class", "heavyweight", "lightweight", "medium or heavy",
            "light or medium", "light medium",
            "is that heavy", "is that light", "is that medium")),
        Step("whole", "The area at that weight", "weight * length * width", MASS, label="weight of the piece",
             unit=("oz", "g"),
             says=("weigh", "how much does it weigh", "weight of the piece", "how heavy", "total weight", "weight of",
                   "mass", "mass of fabric", "mass of cloth"),
             stated=("weighed", "weigh", "weighs", "piece weighs", "weighing", "have", "i've", "got")),
    ),
    answers=("whole", "other", "kind"),
    tells=("weight an area + length + length", "weight an area + weight"),
    headline=("The piece weighs {whole}; the cloth is {other}.", "It is {other}: {kind}.", "It is {kind}: {other}."),
    algorithm=weigh,
    backwards={"weight": "whole / (length * width)", "length": "whole / (weight * width)", "width": "whole / (weight * length)"},
    sizes=(("length", "width"),),
    no_unknown=("ounces", "over"),
    source="1 oz/yd² = 33.906 g/m², from the avoirdupois ounce and the international yard; classes are common practice",
    related=("convert",),
    examples=(
        "fabric weight of 200 gsm in ounces per square yard -> 5.899 oz/yd^2",
        "fabric weight 10 oz/yd2 in gsm -> 339.057 g/m^2",
        "how much does 3 m of 150 cm wide 300 gsm cloth weigh -> 1350 g",
    ),
)
