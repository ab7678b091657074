"""Marks set evenly along a line: buttons, snaps, hooks, eyelets, pleats."""

from __future__ import annotations

import math
from dataclasses import dataclass
from fractions import Fraction

from ..engine.declare import ARITHMETIC, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.drawing import LineDrawing
from ..engine.kinds import COUNT, LENGTH, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import CUT, SPACING, apply
from ..engine.run import Impossible, Run

WHAT = {
    "button": ("buttons", "button"),
    "buttonhole": ("buttonholes", "button holes", "holes"),
    "snap": ("snaps", "press studs", "snap fasteners"),
    "hook": ("hooks and eyes", "hook and eye", "trouser hooks", "skirt hooks"),
    "eyelet": ("eyelets",),
    "grommet": ("grommets",),
    "pleat": ("pleats",),
    "tuck": ("tucks",),
    "ring": ("rings", "curtain rings"),
    "loop": ("loops", "belt loops"),
    "magnet": ("magnets", "magnetic closures"),
    "rivet": ("rivets",),
    "bow": ("bows",),
    "bead": ("beads", "sequins"),
    "pin": ("pins",),
    "mark": ("marks", "points", "notches"),
}
ORDINALS = ("first", "second", "third", "fourth", "fifth", "sixth", "seventh", "eighth", "ninth", "tenth", "eleventh", "twelfth")
ONE_OF_THEM = ("one", "button", "buttonhole", "snap", "hook", "eyelet", "ring", "loop", "mark", "hole", "rivet", "pleat")


def _called(*ordinals: str) -> tuple[str, ...]:
    """What a mark is called by its place: "the third one", "third button"."""
    return tuple(f"{ordinal} {one}" for ordinal in ordinals for one in ONE_OF_THEM)


def _sought(ordinal: str) -> tuple[str, ...]:
    """How one mark's place is asked for: "where do I put the third"."""
    verbs = ("is", "does", "will", "should", "must", "do i put", "do i mark", "do i sew", "do i work")
    return (*(f"where {verb} the {ordinal}" for verb in verbs), f"position of the {ordinal}", f"place of the {ordinal}",
            *(f"how far {way} is the {ordinal}" for way in ("down", "along", "from the top", "from the start")))


MOST_LISTED, MOST_DRAWN = 200, 40


@dataclass(frozen=True, slots=True)
class Setting:
    """How the marks stand: how many, the exact space between them, and what to say about it."""

    number: int
    spacing: Fraction
    notes: tuple[str, ...] = ()


def _even(run: Run) -> Setting:
    """What lies between the first and the last mark, shared among the spaces."""
    number, gaps = int(run.get("number")), run.get("gaps")
    span = run.get("length") - run.get("first") - run.get("last")
    if span < 0:
        raise Impossible(
            f"the ends take more than the line of {run.show(run.get('length'), LENGTH)} has; give shorter insets, "
            "such as: 1/2 in at each end"
        )
    if gaps < 1:
        raise Impossible("one mark has nothing to be spaced from; give two or more, such as: 2 buttons")
    run.say(
        "Share what lies between the first and the last among the spaces",
        "spacing = (length of the line − insets) ÷ spaces",
        f"({' − '.join(run.show(run.get(name), LENGTH) for name in ('length', 'first', 'last'))}) ÷ {gaps}",
        run.show(span / gaps, LENGTH),
    )
    return Setting(number, span / gaps)


def _through(run: Run, even: Setting, place: Fraction) -> Setting:
    """Marks spaced evenly from the first so that one falls at a stated place, the last as near its inset as can be."""
    length, first, inset = run.get("length"), run.get("first"), run.get("last")
    if not first < place <= length:
        raise Impossible(
            f"the place {run.show(place, LENGTH)} must lie between the first mark and the end of the line; "
            "give it from the same end as the first mark, such as: bust line 8 in from the top"
        )
    way = place - first
    tries = []
    for spaces in {max(1, math.floor(way / even.spacing)), max(1, math.ceil(way / even.spacing))}:
        step = way / spaces
        number = min(even.number, math.floor((length - first) / step) + 1)
        left = length - first - (number - 1) * step
        tries.append((abs(left - inset), spaces, number, left))
    _, spaces, number, left = min(tries)
    step = way / spaces
    run.say(
        "Divide the way from the first mark to the stated place into whole spaces",
        "spacing = (place − first) ÷ spaces",
        f"({run.show(place, LENGTH)} − {run.show(first, LENGTH)}) ÷ {spaces}",
        run.show(step, LENGTH),
    )
    said = f"One mark falls at {run.show(place, LENGTH)}, which leaves {_shown(run, left)} below the last."
    return Setting(number, step, (said,))


def _shown(run: Run, at: Fraction) -> str:
    how = SPACING.of(run.system)
    return run.show_in(apply(at, how), how.unit)


def _marks(run: Run) -> Outcome:
    """The list of positions and the drawing of the line."""
    setting = _even(run)
    place = run.maybe("place")
    if place is not None and setting.spacing > 0:
        setting = _through(run, setting, place)
    if setting.number > MOST_LISTED:
        raise Impossible(f"{setting.number} marks are more than I list; give at most {MOST_LISTED}, or a longer spacing")
    places = [run.get("first") + index * setting.spacing for index in range(setting.number)]
    texts = [_shown(run, at) for at in places]
    unit = SPACING.of(run.system).unit
    numbers = ", ".join(text.removesuffix(f" {unit}") for text in texts)
    run.say(
        "Count every place from the start of the line with the exact spacing, and round only what is marked",
        "first + n × spacing",
        "",
        f"{numbers} {unit}",
    )
    drawing = (
        LineDrawing(Fraction(run.get("length")), tuple(zip(places, texts, strict=True)))
        if len(places) <= MOST_DRAWN
        else None
    )
    if run.request.asked[:1] == ("middle",) and len(places) % 2 == 0:
        raise Impossible(f"of {len(places)} marks none is in the middle; ask where one of them stands, such as: where is the third one")
    named = {f"mark_{index}": at for index, at in enumerate(places[: len(ORDINALS)], start=1)}
    named |= {"final": places[-1]} | ({"middle": places[len(places) // 2]} if len(places) % 2 else {})
    values = {**named, "spacing": setting.spacing, "count": Fraction(setting.number), "places": f"{numbers} {unit}"}
    return Outcome(values, notes=setting.notes, drawing=drawing)


EVEN_MARKS = Rule(
    topic="evenly spaced marks",
    family="notions",
    says=("buttons", "buttonholes", "snaps", "press studs", "hooks and eyes", "hooks each", "hooks every", "many hooks",
        "eyelets", "button spacing", "evenly spaced", "space evenly", "spacing", "evenly", "equally spaced",
        "equal spacing", "evenly along", "spaced out", "button band", "popper spacing", "grommets", "space",
        "belt loops", "apart", "marks", "rivets", "magnets", "space buttons", "bows", "curtain rings", "beads",
        "place buttons", "btns", "rings every", "rings along", "buttons every", "snaps every", "poppers every", "loops every",
        "eyelets every", "in from the ends", "first and last", "right at the ends", "at the very ends", "top hole",
        "bottom hole", "counting both", ),
    about="Where to mark buttons, snaps, hooks or eyelets so that they stand evenly along an edge.",
    inputs=(
        Input("length", "length of the line", LENGTH,
            says=("front edge", "front", "edge", "band", "button band", "placket", "opening", "line", "along",
                "length", "strip", "button front", "long", "seam", "top edge", "hem", "waistband", "cardigan",
                "cardi", "shirt", "shirt front", "in all", "over", "side", "belt", "panel", "cushion",
                "curtain", "rail", "circle", "hoop", "duvet", "sleeve", "neckline", "tab", "flap", "top hole to bottom hole",
                "top button to bottom button", "first hole to last hole", "first button to last button", ),
            default=Default("=first + last + gaps * apart", "The spaces between the marks and both ends together",
                derived=True), ask="How long is the edge they stand along?", example="24 in", sane="1 cm..100 m",
            practice="10 in..30 in by 1 in", ),
        Input("number", "number of marks", COUNT,
            says=("buttons", "button", "btns", "snaps", "hooks", "eyelets", "marks", "poppers", "buttonholes", "press studs",
                "hooks and eyes", "grommets", "rings", "loops", "belt loops", "tabs", "magnets", "rivets", "bows",
                "beads", "pins", "pleats", "tucks", "points", "notches", "of them", "sequins", "holes", ), noun="{what}",
            default=(Default("=max(1, round((length - first - last) / apart))",
                    "The nearest whole number of spaces, one mark each", when={"closed": "yes"}, derived=True, ),
                Default("=max(1, round((length - first - last) / apart)) + 1",
                    "The nearest whole number of spaces, and one mark more", derived=True, ), ),
            ask="How many are there, or how far apart do you want them?", example="7 buttons", sane="1..1000",
            practice="4..10 by 1", ),
        Input("apart", "distance wanted", LENGTH,
            says=("apart", "pitch", "at a pitch", "desired pitch", "increment", "increments", "increment of",
                  "at a spacing", "spacing wanted", "at a space",
                  "space between", "between", "every", "along",
                "gap", "distance", "set", "intervals",
                "at intervals", "between them", "centre to centre", "from centre to centre",
                "between buttons", "spaces of", "rings at", "buttons at", "snaps at", "eyelets at", "hooks at", "loops at",
                "poppers at", "rivets at", "pins at", "marks at", "magnets at", "bows at", "beads at", "tucks at",
                "pleats at", ), ask="How many are there, or how far apart do you want them?",
            example="3 in apart", sane="1 mm..5 m", practice="2 in..5 in by 1/2 in", ),
        Input("inset", "inset at each end", LENGTH,
            says=("from each side", "each side", "either side", "each end", "at each end", "both ends", "either end",
                "from each end", "insets", "inset", "in from each end", "from the ends", "ends", "at the ends",
                "margins", "margin", "end offset", "offset", "end margin", "from both ends", "in from the ends",
                "from the edges", "from each edge",
                "free at each end", "left at each end", "end", "first and last", "first and the last",
                "first and last are", "from end", "clear at each end", "top and bottom", "at top and bottom",
                "at the top and bottom", "at the top and the bottom", "at the top and at the bottom", "top and the bottom",
                "top and tail", "bottom and top", "from the top and bottom", "from top and bottom",
                "from the top and the bottom", "from the top and from the bottom", "end ones", "end ones are", ),
            default=(Default("0 in", "the marks run round and meet", when={"closed": "yes"}, derived=True),
                Default("0 in", "the first and the last stand at the ends", when={"ends": "taken"}, derived=True),
                Default("1/2 in | 1.2 cm", "the usual for buttons (common practice)"), ), sane="0 mm..5 m",
            practice="1/2 in..1 in by 1/4 in", ),
        Input("first", "inset of the first", LENGTH,
            says=("above the first", "from the top", "top", "at the top", "first", "above", "before the first",
                "left at the top", "below the top", "start", "from the start", "down from the top", "neck",
                "from the neck", "below the neck", "top button", "at the start", "first button", "at the neck",
                "above the top", "from the top edge", "below the top edge", ),
            default=Default("=inset", "As at each end", derived=True), sane="0 mm..5 m",
            practice="1/2 in..1 in by 1/4 in", ),
        Input("last", "inset of the last", LENGTH,
            says=("below the last", "from the bottom", "bottom", "at the bottom", "last", "below", "after the last",
                "left at the bottom", "above the hem", "from the hem", "at the hem", "up from the bottom",
                "above the bottom", "last button", "at the lower end", "bottom button",
                "from the bottom edge", "lower end", ),
            default=Default("=inset", "As at each end", derived=True), sane="0 mm..5 m",
            practice="1/2 in..4 in by 1/2 in", ),
        Input("gaps", "equal gaps", COUNT,
            says=("even gaps", "gaps between", "equal spaces", "even spaces", "spaces between", "spaces in all"),
            default=(Default("=number", "Round a closed line there are as many spaces as marks",
                    when={"closed": "yes"}, derived=True, ), Default("=number - 1",
                    "There is one space fewer than there are marks", derived=True), ), spoken=True, sane="1..1000", ),
        Input("place", "place where one must fall", LENGTH,
            says=("bust line", "bustline", "bust", "bust point", "falls at", "must fall", "to fall", "fall at",
                "must be at", "fullest part", "bust level", ), extra=True, sane="0 mm..100 m",
            practice="6 in..12 in by 1/2 in", ),
        choice("ends", "first and last", {"free": (), "taken": ("right at the ends", "right at the end",
               "at the very ends", "at the very end",
            "at the extreme ends", "flush with the ends", "from first to last", "from the first to the last", "first to last",
            "nothing at the ends", "top hole to bottom hole", "top hole to the bottom hole", "top button to bottom button",
            "top button to the bottom button", "first hole to last hole", "first button to last button",
            "first hole to the last hole", "first button to the last button", "top snap to bottom snap",
            "counting both ends", "one at each end", "one at either end")},
            default=Default("free", derived=True)),
        choice("what", "what is marked", WHAT, default=Default("mark", "not said", derived=True)),
        flag("closed", "closed line", ("in a circle", "round a circle", "closed loop", "all the way round",
                "all round", "all the way around", "in the round", "around the hem", "round the hem", "hoop",
                "circle", "round", ), ),
    ),
    steps=(
        Step("spacing", "Share what lies between the first and the last among the spaces", rounding=SPACING,
            label="spacing",
            says=(*(f"from {one}" for one in ("one to the next", "one to another", "each to the next", "button to button")),
                "gap from one to the next", "one to the next", "spacing", "how far apart", "space", "distance", "gap",
                "between", "interval", "apart", "pitch of", "pitch"), stated=("comes out", "turned out"), ),
        Step("count", "So many marks", kind=COUNT, noun="{what}", label="number",
            says=("how many", "number", "quantity", "quantity of",
                *(f"number of {them}" for them in ("buttons", "snaps", "poppers", "hooks", "eyelets", "buttonholes", "rings", "loops")),
                "how many buttons", "many buttons", "many"), ),
        *(Step(f"mark_{index}", f"The {ordinal} from the start of the line", rounding=SPACING, label=f"the {ordinal} at",
            says=(*_called(ordinal), *_sought(ordinal)))
            for index, ordinal in enumerate(ORDINALS, start=1)),
        Step("middle", "The middle one, from the start of the line", rounding=SPACING, label="the middle one at",
            says=(*_called("middle", "centre"), *_sought("middle"), *_sought("centre"))),
        Step("final", "The last one, from the start of the line", rounding=SPACING, label="the last one at",
            says=(*_called("last"), *_sought("last"), *(f"{where} button" for where in _sought("last")))),
        Step("spaces", "The spaces between the marks", "gaps", COUNT, noun="gap", label="gaps",
            says=("how many gaps", "how many spaces", "number of gaps", "number of spaces", "gaps are there", "spaces are there")),
        Step("end_left", "What the spaces leave of the line, half at each end", "(length - gaps * apart) / 2", rounding=SPACING,
            label="left at each end",
            says=("left at each end", "left over at each end", "is left at each end", "how much at each end", "space at each end",
                "leave at each end", "left at either end", "what is left at the ends", "left at both ends", "margin at each end",
                "margin at either end", "from each end")),
        Step("line", "The whole line", "length", rounding=CUT, label="whole line",
            says=(
                "whole band", "band in all", "whole strip", "whole edge", "length of the whole band",
                "how long is the whole band", "how long an edge", "length of the edge",
                "how long", "length of the band", "length of the strip", "length of strip", "strip", "button band",
                "how long is the band", "band length", "whole length", "how long is", "total length", "how long",
                "how long a band", "length of a band", "length of band", "length of a strip", "length of the line"), ),
        Step("places", "Each mark's place from the start of the line", kind=TEXT, label="marks at",
            says=("where", "positions", "position", "place", "places", "marks", "mark", "list", "placement",
                "measurements", ), ),
    ),
    answers=("spacing", "count", "places"),
    headline=(
        "Set {count} {spacing} apart: at {places}.",
        "{count}, {spacing} apart.",
        "Set them {spacing} apart.",
        "The line is {line} long.",
    ),
    source=ARITHMETIC,
    algorithm=_marks,
    defers=("buttonhole", "button sizes"),
    no_unknown=("length", "number", "apart", "gaps", "first", "last", "inset", "place"),
    refusals=(Refusal("apart > 2 * (length - first - last)",
        "the distance wanted is longer than what lies between the first and the last; give a shorter distance or a "
        "longer line, such as: 2 cm apart"),
        Refusal("apart > length", "the distance wanted is longer than the line; give a shorter one, such as: 2 cm apart"),
        Refusal("gaps * apart > length + apart / 2",
            "so many at that distance take more than the line has; give fewer, or a shorter distance, or leave the "
            "distance out, such as: 6 buttons on a 20 in band"),),
    notes=('Put one button at the fullest part of the bust, so that the front does not gape; say "bust line 8 in from the top".',),
    examples=(
        "7 buttons on a 40 cm band, 2 cm at each end -> 6 cm; 7 buttons",
        "front edge 64 cm, buttons 8 cm apart, 4 cm above the first and 4 cm below the last, how many buttons -> "
        "8 buttons",
        "5 buttons set 3 in apart with half an inch at the top and half an inch at the bottom; how long is the "
        "button band -> 13 in",
        "6 snaps along 15 in -> 2 3/4 in; 1/2, 3 1/4, 6 1/8, 8 7/8, 11 3/4, 14 1/2 in",
    ),
    related=("buttonhole", "button stand", "eyelets"),
)
