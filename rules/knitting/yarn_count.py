"""Yarn counts turned into one another through tex: metric, cotton, worsted, linen, denier, and length by weight."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from ..engine.declare import Default, Input, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LINEAR, MASS, RATIO, YARN_COUNT
from ..engine.outcome import Outcome
from ..engine.rounding import Rounding
from ..engine.rounding import Step as RoundTo
from ..engine.run import Impossible, Run
from ..engine.units import factor

YARD = factor("yd") / factor("m")
POUND = factor("lb")
# Yards in the hank of which one to the pound is count 1.
HANKS = {"Ne": 840, "worsted": 560, "linen": 300, "cut": 300, "run": 1600, "yorkshire": 256}
NAMES = {"tex": "tex", "dtex": "dtex", "denier": "denier", "Nm": "metric count Nm", "Ne": "cotton count Ne",
         "worsted": "worsted count", "linen": "linen lea",
         "cut": "woollen cut", "run": "woollen run", "yorkshire": "Yorkshire skeins", "m100": "metres to 100 g",
         "ydlb": "yards to the pound"}  # fmt: skip
DIRECT = {"tex": Fraction(1), "dtex": Fraction(1, 10), "denier": Fraction(1, 9)}


@dataclass(frozen=True, slots=True)
class Count:
    """A yarn count as typed: its system and number (already of the plied yarn). "m/g" is a length for a weight."""

    system: str
    number: Fraction


def metres_a_gram(count: Count) -> Fraction:
    """Any count as metres to a gram, which is Nm. tex: grams to 1000 m (ISO 1144); by hanks: hanks to the pound.

    >>> metres_a_gram(Count("tex", Fraction(40))), metres_a_gram(Count("Nm", Fraction(14)))
    (Fraction(25, 1), Fraction(14, 1))
    """
    if count.system in DIRECT:
        return 1000 / (count.number * DIRECT[count.system])
    if count.system in HANKS:
        return count.number * HANKS[count.system] * YARD / POUND
    return count.number


def in_system(nm: Fraction, system: str) -> Fraction:
    """Metres to a gram as a count of another system."""
    if system in DIRECT:
        return 1000 / nm / DIRECT[system]
    if system in HANKS:
        return nm * POUND / YARD / HANKS[system]
    if system == "m100":
        return nm * 100
    return nm * POUND / YARD if system == "ydlb" else nm


_NEAR = {"tex": "1/10", "dtex": "1", "denier": "1/10", "Nm": "1/100", "m100": "1/10", "ydlb": "1"}


def _rounding(system: str) -> Rounding:
    unit = system if system in DIRECT else "1"
    step = RoundTo("near", Fraction(_NEAR.get(system, "1/100")), unit)
    return Rounding(f"{NAMES[system]}, nearest", step, step)


def _convert(run: Run) -> Outcome:
    count: Count = run.get("count")
    if count.number <= 0:
        raise Impossible("a yarn count must be more than nothing, such as: 40 tex in denier")
    nm = metres_a_gram(count) / run.get("strands")
    own = NAMES.get(count.system, "length by weight")
    run.say(f"Turn the {own} into metres to a gram (Nm)", _into_words(count.system), f"{float(count.number):g}",
            f"{float(metres_a_gram(count)):.4g} m to a gram")
    if run.get("strands") != 1:
        run.say("Strands held together weigh as many times as much a metre", "metres to a gram ÷ strands", "",
                f"{float(nm):.4g} m to a gram")
    into = "m100" if run.was_given("per") and not run.was_given("into") else run.get("into")
    if into == count.system and run.get("strands") == 1:
        into = "m100" if count.system == "tex" else "tex"
    systems = [into, *(one for one in ("tex", "denier", "dtex", "Nm", "Ne", "worsted", "m100",
                                       "ydlb") if one not in (into, count.system))]
    run.say(f"Turn that into {NAMES[into]}", _out_words(into), "", f"{float(in_system(nm, into)):.6g}")
    values: dict[str, object] = {}
    labels: dict[str, str] = {}
    for place, system in enumerate(systems):
        name = f"first_{system}" if place == 0 else f"as_{system}"
        value = in_system(nm, system) * (run.get("per") / 100 if system == "m100" else 1)
        values[name] = value * factor(system) if system in DIRECT else value
        labels[name] = f"metres to {run.show_in(run.get('per'), 'g')}" if system == "m100" else NAMES[system]
    return Outcome(values, labels=labels)


def _into_words(system: str) -> str:
    if system in DIRECT:
        return f"{1000 / DIRECT[system]} ÷ {system}"
    if system in HANKS:
        return f"count × {HANKS[system]} yd × 0.9144 ÷ 453.59237 g"
    return "the length in metres ÷ the weight in grams"


def _out_words(system: str) -> str:
    return {"m100": "metres to a gram × 100", "ydlb": "metres to a gram × 453.59237 ÷ 0.9144",
            "Nm": "metres to a gram"}.get(
        system, f"{1000 / DIRECT[system]} ÷ metres to a gram" if system in DIRECT
        else f"yards to the pound ÷ {HANKS.get(system, 1)}"
    )  # fmt: skip


def _steps() -> tuple[Step, ...]:
    found = []
    for prefix in ("first", "as"):
        for system in NAMES:
            kind = LINEAR if system in DIRECT else RATIO
            unit = (system, system) if system in DIRECT else None
            found.append(Step(f"{prefix}_{system}", "Turn it into the other system", kind=kind, unit=unit,
                              label=f"{NAMES[system]}{'' if prefix == 'first' else ', too'}",
                              rounding=_rounding(system)))
    return tuple(found)


_STEPS = _steps()


YARN_COUNT_RULE = Rule(
    topic="yarn count",
    family="knitting",
    says=("yarn count", "tex", "denier", "dtex", "nm", "ne", "count", "cotton count", "worsted count", "metric count",
          "yards per pound", "linen lea", "metres per", "how many metres per", "how many yards per pound", "cotton",
          "worsted",
          "yarn number", "yd per lb", "yards to the pound", "ypp", "den", "lea", "yards per lb", "yds per lb",
          "yards to a pound", "yards in a pound", "yards a pound", "in tex", "in nm", "in ne",
          "in denier", "metres in", "tex yarn", "nm yarn", "yards in", "metres to", "yards to", "to tex", "to nm", "to ne",
          "to denier", "into tex", "into nm", "into ne", "into denier"),
    about="A yarn count turned into any other system, through tex (grams to a kilometre).",
    inputs=(
        Input("count", "yarn count", YARN_COUNT, ask="What is the count, and in which system?", example="40 tex"),
        choice("into", "system wanted", {
            "tex": ("tex", "in tex", "to tex", "into tex"), "denier": ("denier", "den", "in denier", "to denier",
                    "into denier"), "dtex": ("dtex", "decitex"), "Nm": ("nm", "metric count", "in nm", "to nm", "into nm"),
            "Ne": ("ne", "cotton count", "english count", "in ne", "to ne", "into ne"), "worsted": ("worsted count", "worsted"),
            "linen": ("linen lea", "lea"),
            "run": ("woollen run", "woolen run", "run"), "cut": ("woollen cut", "woolen cut"),
            "yorkshire": ("yorkshire skeins",),
            "m100": ("in metres", "how many metres", "metres per", "how many metres per", "metreage", "metres to",
                     "metres in", "how long is"),
            "ydlb": ("yards per pound", "yd per lb", "yards to the pound", "yards a pound", "ypp", "yd/lb", "in yards",
                     "yards per lb", "yards a lb", "yards to the lb", "yards in a lb", "yards to a pound", "yds per lb",
                     "yards to lb", "yards lb", "yds per pound", "yds to the lb", "yard per lb",
                     "yards in a pound", "how many yards", "how many yards per pound", "yardage"),
        }, default="tex", because="the system of ISO 1144"),
        Input("strands", "strands held together", COUNT, noun="strand", says=("strands", "strands of", "held together",
                                                                              "ends", "ends of"),
              default=(Default("2", "held double", when={"doubled": "yes"}, derived=True), Default("1", "one strand")), sane="1..24"),
        flag("doubled", "held double", ("held double", "used double", "knitted double", "doubled", "double strand", "used doubled")),
        Input("per", "weight to give metres for", MASS, says=("per", "in", "to", "metres per", "metres in", "for"),
              default=Default("100 g", derived=True),
              sane="1 g..10 kg"),
    ),
    steps=_STEPS,
    answers=tuple(step.name for step in _STEPS),
    algorithm=_convert,
    no_unknown=("strands", "per"),
    source="ISO 1144 (tex); definitions of the counts by hanks to the pound: cotton 840 yd, worsted 560, linen lea and "
           "woollen cut 300, woollen run 1600, Yorkshire skein 256",
    notes=("Cotton is written size/ply (20/2), worsted and metric ply/size (2/28): either way the larger number is "
           "divided by the plies.",
           "Rounded conversion tables may be up to 2 % off the exact count."),
    examples=(
        "40 tex in denier? -> 360 denier",
        "2/28 Nm in tex -> 71.4 tex",
        "how many yards per pound is 20/2 cotton -> 8400",
        "400 m per 100 g in tex -> 250 tex",
    ),
    defers=("yarn class",),
    related=("yarn class",),
)
