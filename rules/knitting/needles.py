"""Needle and hook sizes from one system to another, by the published lists."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import Default, Input, Rule, Step, choice
from ..engine.kinds import CHOICE, LENGTH, RATIO, TEXT
from ..engine.literal import number
from ..engine.outcome import Outcome
from ..engine.request import Amount
from ..engine.run import Impossible, Run
from .tables.needles import CROCHET_HOOKS, JAPANESE_NEEDLES, KNITTING_NEEDLES, STEEL_HOOKS, Size

LISTS = {"needle": (*KNITTING_NEEDLES, *JAPANESE_NEEDLES), "hook": CROCHET_HOOKS, "steel": STEEL_HOOKS}
SYSTEMS = {"us": "US", "uk": "old UK", "japan": "Japanese", "mm": "metric"}
LETTERS = ("B", "C", "D", "E", "F", "G", "H", "I", "J", "K", "L", "M", "N", "P", "Q")


def sizes_called(tool: str, system: str, name: str) -> list[Size]:
    """The rows of the lists in which a size has a name: US "10.5" or "10 1/2", UK "000", hook "H" or "8" of "H/8"."""
    return [one for one in LISTS[tool] if getattr(one, system) and _same(getattr(one, system), name)]


def _same(printed: str, name: str) -> bool:
    if printed.lower() == name.lower():
        return True
    parts = printed.split("/")
    if name.upper() in parts:
        return True
    return any(_plain(part) is not None and _plain(part) == _plain(name) for part in parts)


def _plain(text: str) -> Fraction | None:
    """The number in a name, where it is one; 0, 00 and 000 are names of their own."""
    if text.startswith("0") and text != "0":
        return None
    try:
        return number(text)
    except ValueError:
        return None


def sizes_thick(tool: str, thickness: Fraction) -> list[Size]:
    """The rows of the lists for a thickness in mm."""
    return [one for one in LISTS[tool] if one.mm == thickness]


def _look_up(run: Run) -> Outcome:
    tool, into = "hook" if run.get("letter") != "none" else run.get("tool"), run.get("into")
    if into == "all" and run.was_given("thickness") and run.was_given("named"):
        into = run.get("named")  # "3.5 mm hook US": the system named is the one wanted
    system, name, found = _wanted(run, tool)
    if into == system:
        into = "all"
    if not found:
        raise Impossible(_not_listed(tool, system, name))
    run.say(f"Look up {SYSTEMS[system]} {name}" if system != "mm" else f"Look up {name} mm", "", found[0].source,
            _row(found[0]))
    values: dict[str, object] = {}
    thickness = found[0].mm
    same = sizes_thick(tool, thickness)
    names = {key: next((getattr(one, key) for one in same if getattr(one, key)), "") for key in ("us", "uk", "japan")}
    if into in ("us", "uk", "japan") and not names[into]:
        raise Impossible(f"the published lists have no {SYSTEMS[into]} size for "
                         f"{run.show_in(thickness, 'mm')}{_neighbours(tool, thickness, into)}")
    if into in names:
        values |= _named(into, names[into])
        values["also_mm"] = thickness
    elif system == "mm":
        for key in ("us", "uk"):
            if names[key]:
                values |= _named(key, names[key])
        values.setdefault("also_mm", thickness)
    else:
        values["mm"] = thickness
        for key in ("us", "uk"):
            if names[key] and key != system:
                values |= _named(key, names[key])
    others = sorted({one.mm for one in found if one.mm != thickness})
    notes = [f"Another list gives {run.show_in(one.mm, 'mm')} for it ({one.source})." for one in found
             if one.mm in others]
    labels = {one.us for one in same if one.us} if into == "us" or system == "mm" else set()
    if len(labels) > 1:
        notes.append(f"The lists call it US {' and US '.join(sorted(labels))}.")
    return Outcome(values, notes=tuple(notes))


def _wanted(run: Run, tool: str) -> tuple[str, str, list[Size]]:
    """The system, the name and the rows that a question gives: a thickness, a letter or a number."""
    if run.was_given("thickness"):
        thickness = run.get("thickness")
        return "mm", f"{float(thickness):g}", sizes_thick(tool, thickness)
    letter = run.get("letter")
    if letter != "none":
        return "us", letter, sizes_called(tool, "us", letter)
    size = run.get("size")
    given = run.request.given.get("size")
    text = given.text if given is not None else str(size)
    digits = "".join(sign for sign in text if sign.isdigit())
    name = digits if digits and set(digits) == {"0"} else f"{float(size):g}"
    system = run.get("named")
    return system, name, sizes_called(tool, system, name)


def _named(key: str, name: str) -> dict[str, object]:
    """The name as a number where it is one, else as words ("000", "H/8")."""
    plain = _plain(name)
    return {key: Amount(plain, "1") if plain is not None else name}


def _row(size: Size) -> str:
    parts = [f"{float(size.mm):g} mm", size.us and f"US {size.us}", size.uk and f"old UK {size.uk}",
             size.japan and f"Japanese {size.japan}"]
    return ", ".join(part for part in parts if part)


def _neighbours(tool: str, thickness: Fraction, key: str) -> str:
    """The nearest thinner and thicker sizes that have a name in the system."""
    named = sorted({(one.mm, getattr(one, key)) for one in LISTS[tool] if getattr(one, key)})
    thinner = [one for one in named if one[0] < thickness][-1:]
    thicker = [one for one in named if one[0] > thickness][:1]
    near = " and ".join(f"{name} ({float(mm):g} mm)" for mm, name in (*thinner, *thicker))
    return f"; the nearest are {near}" if near else ""


def _not_listed(tool: str, system: str, name: str) -> str:
    word = {"needle": "knitting needle", "hook": "crochet hook", "steel": "steel crochet hook"}[tool]
    if system == "mm":
        near = _neighbours(tool, Fraction(name), "us")
        return f"the published lists have no {word} of {name} mm{near}. Ask again, such as: 4 mm needle in US size"
    return f"the published lists have no {SYSTEMS[system]} {word} {name}. Ask again, such as: US 7 needle in mm"


_US = ("us", "u s", "american", "usa", "us size", "us needle", "us hook",
       "american needle")
_UK = ("uk", "old uk", "english", "british", "imperial", "uk size", "old english", "old british", "vintage", "old size",
       "canadian", "old needle", "old pattern", "uk needle", "uk hook")


def _lettered(letter: str) -> tuple[str, ...]:
    """How a hook's letter is said: H hook, size H crochet hook, hook size H."""
    return (f"{letter} hook", f"hook {letter}", f"{letter} crochet hook", f"hook size {letter}", f"{letter} size hook",
            f"size {letter} hook")


def _into(names: tuple[str, ...], *more: str) -> tuple[str, ...]:
    return tuple(f"{lead} {name}" for name in names for lead in ("in", "to", "into", "as", "what", "which",
                                                                 "what is the", "what's the", "in old",
                                                                 "what size", "which size", "what number", "what size of")) + tuple(
        f"{name} equivalent" for name in names
    ) + more  # fmt: skip


_INTO_US = _into(("us", "us size", "american", "us number", "us needle size", "us sizes", "american size",
                  "us hook size", "us needle", "american needle", "american needle size"),
                 *(f"{tool} american" for tool in ("needle", "needles", "hook")))
_INTO_UK = _into(("uk", "uk size", "old uk", "old uk size", "english size", "uk number", "old english size",
                  "british size", "old english", "old british", "english", "british", "old english number", "uk needle",
                  "uk needle size", "old uk needle", "english needle",
                  "english needle size", "british needle"),
                 *(f"{tool} english" for tool in ("needle", "needles", "hook")))
# "What UK needle size" says what is wanted, and that it is a needle's.
_INTO_SAID = tuple(words for words in (*_INTO_US, *_INTO_UK) if "needle" in words or "hook" in words)

NEEDLE_OR_HOOK_SIZE = Rule(
    topic="needle or hook size",
    family="knitting",
    says=("knitting needle", "knitting needles", "crochet hook", "needle", "needles", "hook", "knitting needle size",
          "crochet hook size", "steel hook",
          "convert needle", "convert hook", "needle conversion", "knitting pins", "us needles", "us needle", "uk needle",
          "uk needles", "american needle", "american needles", "needle in mm", "needles in mm", "mm needle in",
          "mm needles in", 
          "needle in millimetres", "needles in millimetres", "needle in metric", "metric needle", "metric needles",
          "needle equivalent", "old uk size", "us hook", "uk hook", "hook in mm", "old size",
          "japanese needle", "circular needle", "american number",
          *_INTO_SAID, *(phrase for letter in LETTERS for phrase in _lettered(letter))),
    about="A knitting needle's or crochet hook's size in mm, US and old UK numbers, by the published lists.",
    inputs=(
        Input("size", "size number", RATIO, says=("size", "no", "number", "us", "uk", "american", "english", "needle",
                                                  "hook", "us size", "uk size", "japanese", "old uk", "no.",
                                                  "knitting needle", "knitting needles", "crochet hook", "pins"),
              ask="Which size, and in which system?", example="US 7", extra=True, sane="0..50", practice="2..10 by 1"),
        Input("thickness", "thickness", LENGTH, says=("thick", "thickness", "metric", "needle", "needles", "hook", "us", "uk",
                                                     "size", "pins", "american", "knitting needle", "knitting needles",
                                                     "crochet hook", "english", "japanese", "equal", "same as",
                                                     "equals", "equivalent to", "equivalent of", "convert", "what is",
                                                     "what's", "what is a", "what's a", "what are",
                                                     *(f"{system} {tool} {be}" for system in ("us", "uk", "american", "english")
                                                       for tool in ("needle", "size", "hook") for be in ("is", "matches", "equals"))),
              extra=True, spoken=True, sane="0.4 mm..60 mm",
              practice="3 mm..8 mm by 1/2 mm",
              usual="0.5 mm..30 mm"),
        choice("letter", "hook letter", {
            **{letter: _lettered(letter) for letter in LETTERS},
            "none": ("no letter",),
        }, default=Default("none", derived=True)),
        choice("tool", "needle or hook", {
            "needle": ("knitting needle", "needle", "knitting needles", "needles", "pins", "knitting pins"),
            "hook": ("crochet hook", "hook", "hooks", "crochet"), "steel": ("steel hook", "steel crochet hook",
                                                                            "steel"),
        }, default="needle", because="no hook was named"),
        Input("named", "system of the number", CHOICE, options={"us": _US, "uk": _UK,
                                                                "japan": ("japanese", "japan", "jp")}, extra=True,
              # "Size 10 needle american" names the list of the number, and no other.
              default=tuple(Default(system, "the only list named", when={"into": system}) for system in ("us", "uk", "japan")),
              ask="Is that a US, an old UK or a Japanese size?", example="US"),
        choice("into", "system wanted", {
            "mm": ("in mm", "mm", "to mm", "millimetres", "in millimetres", "metric", "in metric", "metric size",
                   "what mm", "to metric"),
            "us": _INTO_US, "uk": _INTO_UK,
            "japan": _into(("japanese", "japanese size")), "all": ("all sizes",),
        }, default=Default("all", derived=True)),
    ),
    steps=(
        Step("mm", "Read its thickness from the list", kind=LENGTH, unit=("mm", "mm"), label="thickness"),
        Step("us", "Read its US size", kind=TEXT, label="US size"),
        Step("uk", "Read its old UK size", kind=TEXT, label="old UK size"),
        Step("japan", "Read its Japanese size", kind=TEXT, label="Japanese size"),
        Step("also_mm", "Its thickness", kind=LENGTH, unit=("mm", "mm"), label="thickness, too"),
    ),
    answers=("mm", "us", "uk", "japan", "also_mm"),
    headline=("It is {mm} thick.", "It is US size {us}, old UK size {uk}.", "It is US size {us}.",
              "It is old UK size {uk}.", "It is Japanese size {japan}."),
    algorithm=_look_up,
    no_unknown=("size", "thickness"),
    source="published needle and hook lists, each named beside its rows",
    notes=("Millimetres are the only safe key: US numbers rise with thickness, old UK and steel hook numbers fall.",),
    examples=(
        "What is an old UK size 8 knitting needle in mm? -> 4 mm",
        "US 7 needle in mm -> 4.5 mm; 7",
        "what US size is a 4 mm knitting needle -> 6; 4 mm",
        "size H crochet hook in mm -> 5 mm",
    ),
    related=("yarn class", "needle change"),
)
