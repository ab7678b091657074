"""Elastic to cut for a waist, cuff or head."""

from __future__ import annotations

from ..engine.declare import COMMON_PRACTICE, Caution, Default, Input, Refusal, Rule, Step
from ..engine.kinds import LENGTH, PERCENT
from ..engine.rounding import CUT_TAPE
from .words import how_many

BABY = ("baby", "infant", "newborn")
OLDER_CHILD = ("child", "children", "kid", "boy", "girl", "toddler", "daughter", "son", "niece", "nephew", "grandson",
    "granddaughter", "yr", "schoolchild", "preschooler")
ROUND_A_HEAD = ("head", "headband", "hat", "bonnet", "crown", "neck")
OTHER_ADVICE = "Burda Style; About.com Sewing"

ELASTIC = Rule(
    topic="elastic",
    family="notions",
    says=("elastic", "elastic length", "elasticated", "elasticated waist", "waist elastic", "headband",
        "elastic waistband"),
    about="How long to cut elastic so that it sits snugly on the body, ends overlapped.",
    inputs=(
        Input("body", "body measure", LENGTH,
            says=(
                "waist will it suit", "waist will it fit", "waist will it go round",
                "waist does it suit", "waist does it fit", "waist it will fit",
                "waist it will go round", "waist will it do", "waist will that do",
                "waist will that suit", "waist will that fit", "waist it fits", "waist it suits",
                "head will it fit", "head will it go round", "head will it suit", "how big a head",
                "biggest head", "largest head", "smallest waist", "enough for what waist", "for what waist", "for which waist",
                "which waist", "what waist",
                "what size waist", "how far round the body",
                "waist", "body", "waist measure", "head", "head size", "hip", "hips", "wrist", "ankle", "leg",
                "thigh", "arm", "measure", "waistline", "tummy", "round the waist", "round the head", "neck", "bust",
                "chest", "cuffs", "cuff", "opening", "biggest waist", "largest waist", "how big a waist",
                "how large a waist", "biggest hips",
                "whose waist", "whose hips", "whose head", "whose wrist"), axis="girth",
            ask="How far is it round the body where the elastic sits?", example="28 in", sane="5 cm..3 m", usual="12 cm..1.5 m",
            practice="24 in..44 in by 1 in"),
        Input("width", "elastic width", LENGTH,
            says=("wide elastic", "elastic", "wide", "elastic wide", "width", "inch elastic", "elastic of",
                "flat elastic", "thick"), axis="width",
            default="1 in | 2.5 cm", because="the usual elastic for a waist", sane="2 mm..15 cm", usual="3 mm..8 cm",
            practice="1/4 in..2 in by 1/4 in"),
        Input("off", "part taken off the body measure", PERCENT,
            says=(
                "what per cent", "what percentage", "per cent is taken off", "percentage is taken off",
                "per cent off", "percentage off",
                "smaller", "less", "shorter", "less than", "reduction", "reduce", "take off", "off",
                "negative ease", "tighter", "stretch", "stretched", "under"),
            default="=if(width >= 25, 0.08, 0.1)",
            because="8 % off for elastic 25 mm (1 in) or wider, 10 % off for narrower (common practice)",
            sane="-20 %..100 %", practice="5 %..15 %"),
        Input("share", "share of the body measure", PERCENT,
            says=("of the body", "of the waist", "of waist", "of body", "of the measure", "of the head", "share",
                "of my waist", "of it", "times the waist", "of the body measure"),
            default=Default("=1 - off", "Take what is taken off from the whole", derived=True), sane="40 %..120 %",
            practice="88 %..95 %"),
        Input("less", "reduction", LENGTH,
            says=("off", "less", "shorter", "smaller", "snugness", "reduction", "take off", "minus", "less than",
                "tighter", "less than the waist", "for snugness", "take", "negative ease", "taken off", "was taken off"),
            default=Default("=body * (1 - share)", "The part by which the elastic is shorter than the body",
                derived=True), spoken=True, sane="-10 cm..60 cm", practice="1 in..4 in by 1/2 in"),
        Input("each_end", "seam at each end", LENGTH,
            says=("each end", "at each end", "either end", "at either end", "both ends", "end for seam",
                "end for the seam"),
            default=Default("0 in", "none said", derived=True), spoken=True, sane="0 mm..5 cm"),
        Input("overlap", "overlap", LENGTH,
            says=(
                "left for the overlap", "how much was left for the overlap",
                "how much is left for the overlap", "how much overlap", "how long is the overlap",
                "how big is the overlap", "left to overlap", "left for overlapping",
                "overlap", "lap", "lap the ends", "join", "to join", "joining", "for the join", "for joining",
                "ends", "lapped", "seam", "seam allowance", "for overlap", "to overlap", "for seam"),
            default=(Default("0 in", "the ends have their seams", derived=True, given=("each_end",)),
                Default("1 in | 2.5 cm", "enough to lap the ends and stitch a square")), spoken=True, sane="0 mm..10 cm",
            practice="1/2 in..1 in by 1/4 in"),
        how_many("number", "number of pieces", "piece",
            says=("pieces", "of them", "pairs of trousers", "skirts", "lengths", "wrists", "ankles", "legs", "cuffs",
                "sleeves", "sheets", "headbands", "waists", "heads", "costumes", "masks", "knickers", "elastic headbands",
                "garments")),
    ),
    steps=(
        Step("in_wear", "The elastic in wear is the body measure less the reduction", "body - less",
 
                          label="length in wear",
            says=(
                "once it is on", "when it is on", "measure once it is on", "measure when it is on",
                "when worn", "when being worn", "on the body", "measure in wear",
                "length in wear", "how long in wear", "in wear", "before the overlap", "without the overlap",
                "finished length", "without overlap",
                "before overlap")),
        Step("shorter", "The reduction is what the elastic in wear is shorter than the body", "less", label="shorter in wear by",
            says=(
                "is it shorter than the waist", "is it shorter", "shorter in wear",
                "by how much is it shorter", "is it smaller than the waist",
                "how much shorter", "how much shorter than the waist", "how much shorter than the body", "how much smaller",
                "how much smaller than the waist", "how much is taken off", "how much comes off", "how much do i take off",
                "how many inches shorter", "how many cm shorter", "how much tighter")),
        Step("cut", "Add what joins the ends", "in_wear + overlap + 2 * each_end", rounding=CUT_TAPE,
            label="elastic to cut",
            says=("elastic", "how long", "cut", "how long is the elastic", "elastic length", "length of elastic", "each piece",
                "each one", "for each", "how long is each", "length of each", "how long is each piece", "how much for each",
                "how long for each", "how long do i cut each"), axis="length", stated=(
                "all that is left", "all that's left", "is left", "left of my", "left of the",
                "all i have", "all i've got",
                "have", "there's", "left", "found", "left over", "got",
                "piece of", "length of", "bit of", "scrap of", "bit", "on the card", "only", "cut", "cut it", "elastic is", "length",
                "came out at", "came out", "came to", "comes out at",
                "in the drawer", "in the tin", "in my box", "in hand", "of elastic"), sane="8 cm..20 m"),
        Step("total", "All the pieces together", "number * rounded(cut)", rounding=CUT_TAPE, label="elastic in all",
             says=(
                "total requirement", "requirement in all", "total needed", "total to buy",
                "how much do i buy", "for the lot", "for all of them", "for them all",
                "buy", "to buy", "how much elastic", "how much", "in all", "in total", "altogether", "total",
                "all together", "yards of elastic", "metres of elastic", "how many yards", "how many metres",
                "yards", "metres", "total elastic", "total elastic requirement", "total length of elastic", "elastic in all")),
    ),
    answers=("cut", "total", "in_wear"),
    headline=("Cut the elastic {cut} long.", "Buy {total} of elastic.", "The elastic is {in_wear} in wear."),
    source=f"{COMMON_PRACTICE}; other advice: {OTHER_ADVICE}",
    no_unknown=("number", "each_end"),
    refusals=(Refusal("if(share <= 1, max(0, -less), 0) > 0",
        "a reduction below nothing would make the elastic longer; say how much is taken off, such as: 4 cm less"),
        Refusal("less > body * 3 / 5",
            "less than half of the body measure is left, and no elastic stretches so far with comfort; say how much is "
            "taken off, such as: 4 cm less"),),
    cautions=(Caution("Try the elastic on before you close the casing: elastics differ in stretch"),
        Caution("Round a child's head snug is too tight: two fingers must go under the elastic", all_of=(OLDER_CHILD, ROUND_A_HEAD),
            unless=BABY)),  # a baby has its own, of the general cautions
    notes=("Published advice differs: one takes firm elastic up to 1 in less than the body and soft elastic 3 to 5 in "
           "less, another takes 2 to 4 in less.",),
    examples=(
        "elastic for a 28 in waist, 1 in wide -> 27 in",
        "how long do I cut 1 cm elastic for a 42 cm head, 10% less, overlap 2 cm -> 40 cm",
        "waist 80 cm, elastic 2.5 cm wide, how much -> 76.5 cm",
        "I have 60 cm of 1 in wide elastic, overlap 2.5 cm, 8% smaller than the body, how big a waist -> 62.5 cm",
        "elastic for a 30 in waist, 2 in less, 1 in overlap -> 29 in",
    ),
    related=("casing", "drawstring"),
)
