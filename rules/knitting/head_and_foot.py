"""Hats and socks worked from the girth and the tension: cast-on, rows, crown, heel and toe."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step, choice, flag
from ..engine.kinds import COUNT, LENGTH, PERCENT, ROWS, STITCHES, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import BODY, COUNT_NEAR, ROW, STITCH
from ..engine.run import Run
from .row_reader import knit
from .words import EDGE_STITCHES, MULTIPLE_WORDS, ROW_TENSION, STITCH_TENSION, SWATCH_CAUTION

CROWN_SECTIONS = 8  # decreases in each crown round (common practice); the multiple of 8 in the cast-on is for them
_EASE_WORDS = ("negative ease", "ease", "smaller", "smaller than the head", "smaller than the foot", "less", "snug",
               "tighter", "stretch", "minus")


# (who, hat length, the row's own words): Hat measurement & sizing guide, Posh Patterns. Another table gives 12.7 cm
# (0-6 months) to 22.9 cm (adult M-L) for the height of a hat.
HAT_LENGTHS = (("newborn", "5 in", "a newborn"), ("baby", "6 1/2 in", "6 to 12 months"),
               ("toddler", "7 1/2 in", "2 to 4 years"),
               ("grown", "8 in", "5 years to adult"), ("large", "8 1/2 in", "a large adult or man"))  # fmt: skip


def _multiple(size: str) -> Input:
    return Input("multiple", "multiple of stitches", STITCHES, says=MULTIPLE_WORDS, default=f"{size} st",
                 because="so that the stitches divide evenly (common practice)", sane="1 st..100 st",
                 practice="4 st..8 st by 4 st", usual="1 st..40 st", spoken=True)  # fmt: skip


def _put(*parts: str) -> tuple[str, ...]:
    """How the stitches of a part of the sock are asked for: "stitches do I leave on the instep"."""
    return tuple(f"stitches {do} {put} {where} the {part}" for part in parts for do in ("do i", "must i", "should i", "will i", "do we")
                 for put, where in (("leave", "on"), ("leave", "for"), ("put", "on"), ("have", "on"), ("have", "for"), ("hold", "for"),
                                    ("work", "on"), ("work", "for"), ("need", "for"), ("knit", "for"), ("keep", "for")))


def crown_rounds(stitches: int, sections: int) -> list[tuple[str, int]]:
    """(the round in words, stitches it leaves), from a multiple of the sections down to one stitch a section."""
    rounds = []
    for plain in range(stitches // sections - 2, -1, -1):
        text = f"({f'k{plain}, ' if plain else ''}k2tog) {sections} times"
        rounds.append((text, knit(text, (plain + 2) * sections).left))
    return rounds


def _crown(run: Run) -> Outcome:
    """The crown round by round; it needs a cast-on that divides by eight, and is left out when it does not."""
    stitches = int(run.get("stitches"))
    if stitches % CROWN_SECTIONS or stitches < 2 * CROWN_SECTIONS:
        return Outcome({})
    rounds = crown_rounds(stitches, CROWN_SECTIONS)
    run.say("Decrease eight in each crown round until eight are left", "(stitches − 8) ÷ 8", f"({stitches} − 8) ÷ 8",
            f"{len(rounds)} decrease rounds")
    shown = rounds if len(rounds) <= 6 else [*rounds[:3], rounds[-2], rounds[-1]]
    texts = [f"{text} = {left} sts" for text, left in shown]
    if len(rounds) > 6:
        texts.insert(3, "and so on")
    return Outcome({"crown": "; ".join(texts), "crown_rounds": Fraction(len(rounds))},
                   notes=("Work a plain round between the crown's decrease rounds for a rounder top; break the yarn "
                          "and draw it through the last stitches.",))


HAT = Rule(
    topic="hat",
    family="knitting",
    says=("hat", "finished hat", "hat finished", "hat to measure", "hat should measure", "beanie", "cap", "toque",
          "bobble hat", "bonnet", "knitted hat", "woolly hat", "watch cap", "hats",
          "casting on a hat", "cast on a hat", "cast on for a hat", "casting on for a hat", "stitches for a hat",
          "crown"),
    about="Stitches to cast on for a hat, the rows to the crown, and the crown's decreases round by round.",
    inputs=(
        Input("head", "head girth", LENGTH, says=("head", "round the head", "head size", "head circumference",
                                                  "his head", "her head", "head measures", "around",
                                                  "head is", "girth", "size", "what size hat", "size hat"), axis="girth",
              ask="What is the head's girth?", example="56 cm", sane="5 cm..90 cm", practice="48 cm..60 cm by 1 cm",
              usual="25 cm..66 cm"),
        STITCH_TENSION,
        # A hat told by its own size has its ease in it already.
        flag("finished", "finished size", ("finished hat", "hat finished", "finished girth", "finished size", "finished at",
                                           "finished circumference", "finished measurement", "finished measure",
                                           "hat to measure", "hat should measure")),
        Input("ease", "negative ease", PERCENT, says=_EASE_WORDS, default=(
                  Default("0 %", "the size told is the finished hat's own", when={"finished": "yes"}),
                  Default("10 %", "a hat is made 5 to 15 % smaller than the head (common practice)"),
              ), sane="0 %..40 %", practice="5 %..15 % by 5 %", usual="0 %..25 %"),
        Input("ease_by", "negative ease as a length", LENGTH, says=_EASE_WORDS, extra=True, sane="0 cm..20 cm", spoken=True),
        _multiple("8"),
        EDGE_STITCHES,
        Input("depth", "depth of the hat", LENGTH, says=("deep", "depth", "long", "high", "tall", "length", "height",
                                                         "brim to top", "hat length"), axis="depth",
              default=tuple(Default(length, f"hat length for {who} (a published sizing guide)",
                                    when={"wearer": key})
                            for key, length, who in HAT_LENGTHS),
              sane="5 cm..45 cm", practice="7 in..9 in by 1/2 in"),
        choice("wearer", "wearer", {
            "newborn": ("newborn", "new born", "new baby"), "baby": ("baby", "infant", "bonnet"),
            "toddler": ("toddler", "little one"),
            "grown": ("child", "woman", "adult", "girl", "boy", "teenager", "lady"),
            "large": ("man", "large adult", "husband", "large head"),
        }, default=Default("grown", derived=True)),
        ROW_TENSION,
    ),
    steps=(
        Step("girth", "Make the hat smaller than the head by the negative ease", "head * (1 - ease)", rounding=BODY,
             label="girth of the hat",
             says=("hat girth", "finished", "circumference of the hat")),
        Step("product", "Multiply by the tension", "girth * tension", STITCHES, label="stitches before rounding"),
        Step("repeats", "Take the edge stitches off and divide by the multiple, to the nearest whole one (a tie goes "
             "up)", "(product - edge) / multiple",
             COUNT, rounding=COUNT_NEAR, label="multiples"),
        Step("stitches", "Take that many multiples, and the edge stitches",
             "max(1, rounded(repeats)) * multiple + edge", STITCHES, rounding=STITCH,
             label="stitches to cast on", says=("cast on", "stitches", "how many", "how many stitches", "sts"),
             stated=("have", "stitches", "cast on", "got", "took", "takes", "has", "with", "used")),
        Step("real", "Divide those stitches by the tension", "stitches / tension", rounding=BODY,
             label="girth they give",
             says=("measure round", "much round", "how much round", "measure how much", "stitches measure",
                   *(f"{much} round is {a} hat" for much in ("big", "how many inches", "how many cm", "how many centimetres",
                                                             "far") for a in ("a", "the", "my")), "hat measure", "how big round",
                                                             "big round is", "big round will", "hat come out", "hat comes out",
                   "really be round", "really measure", "really come out", "come out round", "hat be round", "hat really", "real girth",
                   "round is the hat", "round will the hat", "round will it", "round is it", "actually measure", "actually come out",
                   "big will the hat", "hat work out", "measure around", "actual girth", "unstretched")),
        Step("crown_rounds", "Count the crown's decrease rounds", kind=ROWS, noun="round",
             label="crown decrease rounds",
             says=("crown rounds", "decrease rounds", "how many decrease rounds")),
        Step("crown", "Write the crown", kind=TEXT, label="crown", says=("crown", "crown decreases", "shape the crown",
                                                                         "round by round", "top")),
        Step("rows", "Multiply the depth by the row tension, less a round for each crown decrease round and a plain "
             "one after it",
             "if(2 * crown_rounds < depth * row_tension, depth * row_tension - 2 * crown_rounds, 0 * crown_rounds)",
             ROWS, rounding=ROW, label="rows before the crown",
             says=("rows to the crown", "rows", "how many rows", "rounds before the crown", "how many rounds")),
    ),
    answers=("stitches", "real", "rows", "crown_rounds", "crown"),
    insists=True,
    headline=("Cast on {stitches}: {real} round, for a head a little larger.",),
    algorithm=_crown,
    backwards={"head": "stitches / tension / (1 - ease)", "tension": "stitches / girth"},
    no_unknown=("edge", "multiple", "depth", "row_tension"),
    source=f"{COMMON_PRACTICE}; hat lengths: Hat measurement & sizing guide, Posh Patterns",
    # Heard so that it is taken for no depth.
    refusals=(Refusal("ease_by > 0", "the ease of a hat is told as a share of the head: say it so, such as: 10 % ease"),),
    cautions=(
        Caution("Published hats take off anything from 1 in to 15 % of the head: choose the ease for how stretchy the "
                "stitch is", when="ease > 0"),
        Caution(SWATCH_CAUTION),
        Caution("For a baby or small child leave off bobbles, buttons and ties that could come loose or catch",
                mentions=("baby", "newborn", "toddler", "infant", "child")),
    ),
    examples=(
        "beanie, head 22 in, 5 1/2 sts per inch, 10% smaller than the head, multiple of 8 sts. what do I cast on -> "
        "112 stitches",
        "Hat for my nephew, head 19 in, tension 18 sts to 4 in. How many to cast on? -> 80 stitches; 9 rounds",
        "hat cast on for a 56 cm head at 22 sts to 10 cm, 5 % ease -> 120 stitches",
    ),
    related=("decrease rounds of a circle", "sock"),
)

SOCK = Rule(
    topic="sock",
    family="knitting",
    says=("sock", "socks", "foot", "ankle sock", "bed sock", "bed socks", "heel", "toe", "knee stocking", "bootee",
          "slipper", "slippers"),
    about="Stitches to cast on for a sock, the heel's stitches, and the rows of the foot between heel and toe.",
    inputs=(
        Input("foot", "foot girth", LENGTH, says=("foot", "round", "around", "foot is", "girth", "round the foot",
                                                  "circumference", "ankle", "ball of the foot", "foot round"),
              axis="girth", ask="What is the foot's girth, round the ball of the foot?", example="24 cm",
              sane="5 cm..60 cm", practice="18 cm..26 cm by 1 cm",
              usual="8 cm..40 cm"),
        Input("length", "foot length", LENGTH, says=("long", "length", "foot length", "heel to toe", "foot long"),
              axis="length",
              ask="How long is the foot?", example="25 cm", sane="5 cm..50 cm", practice="20 cm..28 cm by 1 cm",
              usual="7 cm..36 cm"),
        STITCH_TENSION,
        ROW_TENSION,
        Input("ease", "negative ease", PERCENT, says=_EASE_WORDS, default="10 %",
              because="socks are made 10 % smaller than the foot (most published sources; one has 15 to 20 %)",
              sane="0 %..40 %", practice="5 %..20 % by 5 %", usual="0 %..25 %"),
        Input("ease_by", "negative ease as a length", LENGTH, says=_EASE_WORDS, extra=True, sane="0 cm..15 cm", spoken=True),
        _multiple("4"),
        Input("heel_depth", "heel depth", LENGTH, says=("heel", "heel depth", "for the heel"), default="2 in | 5 cm",
              because="the usual depth of a heel (common practice)",
              sane="1 cm..15 cm", practice="1 1/2 in..2 1/2 in by 1/4 in"),
        Input("toe_depth", "toe depth", LENGTH, says=("toe", "toe depth", "for the toe"), default="2 in | 5 cm",
              because="toe decreases start 2 to 2 1/2 in before the full length (published)", sane="1 cm..15 cm",
              practice="1 1/2 in..2 1/2 in by 1/4 in"),
    ),
    steps=(
        Step("girth", "Make the sock smaller than the foot by the negative ease", "foot * (1 - ease)", rounding=BODY,
             label="girth of the sock"),
        Step("product", "Multiply by the tension", "girth * tension", STITCHES, label="stitches before rounding"),
        Step("repeats", "Divide by the multiple, to the nearest whole one (a tie goes up)", "product / multiple", COUNT,
             rounding=COUNT_NEAR, label="multiples"),
        Step("stitches", "Take that many multiples", "max(1, rounded(repeats)) * multiple", STITCHES, rounding=STITCH,
             label="stitches to cast on",
             says=("cast on", "stitches", "how many", "how many stitches", "sts"),
             stated=("have", "stitches", "cast on", "got", "took", "takes", "has", "with", "used")),
        Step("heel", "Work the heel on half of them", "stitches / 2", STITCHES, rounding=STITCH, label="heel stitches",
             sane="2 st..1000 st",
             says=("heel", "on the heel", "heel stitches", "for the heel", "go on the heel", "heel flap", "goes on the heel",
                   "stitches on the heel", "stitches for the heel", "stitches in the heel", *_put("heel", "heel flap"))),
        Step("instep", "The other half waits on the instep", "stitches - rounded(heel)", STITCHES, rounding=STITCH,
             label="instep stitches",
             says=("instep", "instep stitches", "on the instep", "for the instep", "top of the foot", "stitches on the instep",
                   "stitches are held", "stitches wait", *_put("instep", "top of the foot"))),
        Step("foot_length", "Take the heel and the toe off the length of the foot", "length - heel_depth - toe_depth",
             label="foot between heel and toe", rounding=BODY),
        Step("rows", "Multiply by the row tension", "foot_length * row_tension", ROWS, rounding=ROW,
             label="rounds between heel and toe",
             says=("rows", "how many rows", "foot rows", "rounds", "before the toe", "between heel and toe",
                   "rows between", "rounds between",
                   "between the heel and the toe", "rows in the foot", "rounds in the foot", "rows of foot")),
        Step("toe_rows", "The toe's depth at the row tension", "toe_depth * row_tension", ROWS, rounding=ROW,
             label="rounds of the toe", says=("toe", "toe rounds", "toe rows", "rounds for the toe", "rows for the toe",
                                                                      "rounds in the toe", "rows in the toe", "rounds of the toe",
                                                                      "toe take", "toe is how many")),
        Step("heel_rows", "The heel's depth at the row tension", "heel_depth * row_tension", ROWS, rounding=ROW,
             label="rows of the heel", says=("heel rows", "heel flap rows", "rows in the heel", "rows of the heel", "rows for the heel",
                                                                       "rows on the heel", "rows does the heel", "rows of heel",
                                                                       "rows deep is the heel", "rows in the heel flap",
                                                                       "rows is the heel",
                                                                       "rows for the heel flap", "long is the heel flap")),
    ),
    answers=("stitches", "heel", "rows", "heel_rows", "toe_rows"),
    insists=True,
    headline=("Cast on {stitches}; work the heel on {heel}.",),
    backwards={"foot": "stitches / tension / (1 - ease)", "tension": "stitches / girth"},
    source=COMMON_PRACTICE,
    # Heard so that it is taken for no heel or toe.
    refusals=(Refusal("ease_by > 0", "the ease of a sock is told as a share of the foot: say it so, such as: 10 % ease"),
              Refusal("foot_length < 0", "the heel and the toe together are longer than the foot. Give a longer foot, or a smaller "
                      "heel or toe, such as: foot 25 cm long, heel 5 cm, toe 5 cm")),
    cautions=(Caution(SWATCH_CAUTION),),
    notes=("One published sum takes the stitches down to a multiple of 4 instead of to the nearest.",),
    examples=(
        "Sock for a foot 24 cm round and 25 cm long, 30 sts and 42 rows to 10 cm, ten per cent negative ease, multiple "
        "of 4. Cast on? -> 64 stitches; 32 stitches",
        "socks for a 9 in foot, gauge 8 sts per inch, how many to cast on -> 64 stitches",
        "how many stitches on the heel of a sock, foot 21 cm round, 30 sts to 10 cm -> 28 stitches; 56 stitches",
    ),
    related=("hat", "stitches for a width"),
)
