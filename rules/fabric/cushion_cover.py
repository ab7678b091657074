"""Cushion covers: front, back or backs, and the cloth."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import COMMON_PRACTICE, Default, Input, Refusal, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH
from ..engine.outcome import Outcome
from ..engine.rounding import BUY_CLOTH, COUNT_UP, CUT
from ..engine.run import Impossible, Run
from ..engine.text import plural
from .words import BUY_WORDS, CLOTH_WORDS


def rows_of(run: Run) -> Outcome:
    """Pieces all of one height laid side by side in rows, the widest first into the first row with room."""
    front, width = run.get("front"), run.get("width")
    backs = [run.get("back")] * int(run.get("halves"))
    pieces = sorted([front, *backs] * int(run.get("count")), reverse=True)
    if pieces[0] > width:
        raise Impossible(f"a piece {run.show(pieces[0], LENGTH)} wide does not fit across cloth "
                         f"{run.show(width, LENGTH)} wide. Take wider cloth")
    rows: list[Fraction] = []
    for piece in pieces:
        fitting = next((spot for spot, used in enumerate(rows) if used + piece <= width), None)
        if fitting is None:
            rows.append(piece)
        else:
            rows[fitting] += piece
    run.say("Lay the pieces side by side in rows, the widest first", "pieces in rows across the cloth",
            f"{len(pieces)} pieces on {run.show(width, LENGTH)}",
            f"{len(rows)} {plural('row', len(rows))}")  # fmt: skip
    return Outcome({"rows": Fraction(len(rows))})


CUSHION_COVER = Rule(
    topic="cushion cover",
    family="fabric",
    says=("cushion", "cushion cover", "pillow", "pillow cover", "envelope cushion", "throw pillow", "envelope back",
          "pillowcase", "back of its cover", "back of the cover", "pad cover", "cover for a pad", "cover a pad",
          "scatter cushion",
          "cushion pad", "pillow form", "front piece", "front to cut", "pad size", "size pad", "pad fits", "what pad", "pad for a cover",
          "cover that finishes", "my cover", "cover should finish",
          "cover finishes"),
    about="The pieces of a cushion cover (envelope, plain or zip back) for a pad, and the cloth.",
    inputs=(
        Input("pad", "pad width", LENGTH, says=("pad", "cushion", "pillow", "pad size", "wide", "square", "form",
                                                "insert", "cushion pad", "pillow form", "what size pad", "size pad", "big a pad",
                                                "what pad", "pad fits", "pad will fit", "what pad do i buy",
                                                "pad do i buy", "pad should i buy", "pad do i need", "what size pad do i buy"),
              ask="How wide is the pad?", example="45 cm", sane="3 cm..3 m", usual="20 cm..1.2 m",
              practice="12 in..24 in by 2 in"),
        Input("pad_height", "pad height", LENGTH, says=("high", "height", "tall", "long"), sane="3 cm..3 m",
              usual="20 cm..1.2 m", spoken=True,
              default=Default("=pad", "Square: as high as wide", derived=True)),
        choice("closing", "back", {"envelope": ("envelope", "envelope back", "overlapping backs", "overlap",
                                                "envelope closure", "envelope backs"),
               "plain": ("plain", "plain back", "one-piece back", "sewn shut", "slip-stitched", "one piece back"),
               "zip": ("zip", "zip back", "zipped", "zip across the back", "zip closure")},
               default=(Default("envelope", "an envelope needs no fastening"),)),
        choice("fit", "fit of the cover", {
            "same": ("same size as the pad", "same size as the form", "same size as the cushion", "same size as the pillow",
                     "same size as the insert", "the same size", "size of the pad", "no smaller", "not smaller", "exact size",
                     "exactly the size", "same as the pad", "nothing off", "nothing smaller", "nothing taken off"),
            "snug": ("snug", "plump", "tight")}, default=(Default("snug", "not said otherwise", derived=True),)),
        Input("less", "how much smaller than the pad", LENGTH, says=("smaller", "less", "smaller than the pad",
            "undersize", "tighter", "under", "under the pad", "inch under", "under size", "below the pad", "smaller all round"),
              default=(Default("0 in | 0 cm", derived=True, when={"fit": "same"}),
                       Default("1 in | 2.5 cm", "a cover a little small keeps the cushion plump")), sane="0 cm..3 m",
              spoken=True,
              practice="0 in..2 in by 1/2 in"),
        Input("cover", "finished cover width", LENGTH, says=("finished cover", "cover", "cover that finishes", "cover finishes",
                     "that finishes", "finished", "finished size",
            "to finish", "cover to finish", "is to finish", "must finish", "square finished", "square when finished",
             "cover finished", "finished cushion"),
              default=Default("=pad - less", "The pad, less a little", derived=True), sane="3 cm..3 m", spoken=True),
        Input("cover_height", "finished cover height", LENGTH, says=("cover height",),
              default=Default("=pad_height - less", "The pad, less a little", derived=True),
              sane="3 cm..3 m", spoken=True),
        Input("overlap", "overlap", LENGTH, says=("overlap", "overlapping", "overlap of", "lapping", "lapping by", "lapped",
            "lap by", "lapped by"), default="4 in | 10 cm",
              because="enough to keep an envelope shut",
              sane="0 cm..1 m", usual="0 cm..30 cm", spoken=True, practice="3 in..6 in by 1 in"),
        Input("seam", "seam allowance", LENGTH, says=("seam allowance", "seams", "seam", "allowance"),
              default="1/2 in | 1.2 cm", because="the usual seam of a cushion cover",
              sane="0 cm..1 m", usual="0 cm..4 cm", practice="3/8 in..5/8 in by 1/8 in"),
        Input("hem", "hem of an opening edge", LENGTH, says=("hem", "hems", "hem on each opening edge",
            "opening edge"), default="1 in | 2.5 cm",
              because="turned once, the raw edge neatened", sane="0 cm..20 cm", practice="1/2 in..2 in by 1/2 in"),
        Input("halves", "pieces the back is made of", COUNT, noun="piece", says=("back in",), spoken=True, sane="1..2",
              default=(Default("1", derived=True, when={"closing": "plain"}), Default("2", derived=True))),
        Input("lap", "lap of the backs", LENGTH, says=("lap of",), spoken=True, sane="0 cm..40 cm",
              default=(Default("0 cm", derived=True, when={"closing": "zip"}), Default("=overlap",
                  "An envelope's backs overlap", derived=True))),
        Input("turn", "allowance at the opening", LENGTH, says=("at the opening",), spoken=True, sane="0 cm..20 cm",
              default=(Default("=seam", "A zip is sewn in with a seam allowance", when={"closing": "zip"},
                               derived=True),
                       Default("=hem", "An opening edge is hemmed", derived=True))),
        Input("count", "how many covers", COUNT, says=("cushions", "covers", "cushion", "cushion covers", "pillows"),
              default=Default("1", derived=True), sane="1..200", noun="cover",
              practice="1..6"),
        Input("width", "fabric width", LENGTH, says=(*CLOTH_WORDS, "wide", "wide fabric", "wide cloth"),
              ask="How wide is the cloth?", example="140 cm", sane="10 cm..5 m",
              usual="85 cm..3 m", practice="110 cm..150 cm by 10 cm"),
    ),
    steps=(
        Step("front", "The cover and a seam allowance at both sides", "cover + 2 * seam", label="front width",
             rounding=CUT,
             says=("front", "cut front", "front width", "how big is the front", "front piece", "cut the front", "front piece cut",
                   "big is the front piece"),
             stated=("square", "front was cut", "front is cut", "front cut", "cut the front", "front was", "front is")),
        Step("height", "The cover's height and a seam allowance at top and bottom", "cover_height + 2 * seam",
             label="height of every piece", rounding=CUT,
             says=("front height", "how high", "height to cut", "piece height"), axis="height"),
        Step("back", "The back: half the cover and the overlap with a seam and a hem; with a zip, half the cover and "
                     "two seams; or as the front",
             "if(halves = 2, (cover + lap) / 2 + seam + turn, front)", label="back width", rounding=CUT,
             says=("back", "each back", "back piece", "each back piece", "backs", "back width", "envelope back",
                   "how wide is the back", "back panel",
                   "back pieces", "back panels", "back bits", "back bit", "half of the back", "each half of the back", "back parts",
                   "back part", "back halves", "back half", *(f"{how} each of the {backs}" for how in ("cut", "width to cut",
                   "wide to cut", "wide do i cut", "wide is", "width of")
                   for backs in ("backs", "two backs", "back pieces", "two back pieces")))),
        Step("cloth", "Each row takes the height of the pieces", "rows * height", rounding=BUY_CLOTH,
             label="cloth to buy",
             says=("how much", "fabric", "cloth", "how many metres", "how many yards", "yardage", "buy", *BUY_WORDS),
             stated=("only",)),
        Step("finished", "The front without its seams", "front - 2 * seam", label="finished cover", rounding=CUT,
             says=("does the cover finish at", "cover finish at", "does the cover finish", "will the cover finish at",
                   "will the cover finish",
                   "size does the cover finish at", "size does the cover finish", "finished cover size", "size of the finished cover",
                   "finished size of the cover", "cover measure", "big is the finished cover", "size is the finished cover",
                   "size will the cover be", "big will the cover be", "size does it finish", "big does it finish", "size will it finish")),
        Step("rows", "Rows of pieces across the cloth", kind=COUNT, rounding=COUNT_UP, noun="row"),
    ),
    answers=("front", "height", "back", "cloth", "rows"),
    headline=("Cut the front {front} wide and the back {back} wide, all {height} high; buy {cloth}.",
              "Cut the front {front} wide and the back {back} wide, all {height} high."),
    sizes=(("pad", "pad_height"),),
    refusals=(
        Refusal("overlap > cover", "the backs cannot overlap by more than the cover is wide. Say a smaller overlap, such as 4 in (10 cm).",
                choices={"closing": "envelope"}),
        Refusal("4 * seam > cover", "so deep a seam allowance leaves little of the cover. Say a smaller one, such as 1/2 in (1.2 cm)."),
        Refusal("less >= pad", "a cover that much smaller than its pad is nothing at all"),
    ),
    algorithm=rows_of,
    source=COMMON_PRACTICE,
    examples=(
        "Envelope cushion for a 16 in pad, finished cover 15 in, 4 in overlap, 1/2 in seams and a 1 in hem on each "
        "opening edge. Each back piece is how wide? -> 11 in",
        "cushion pad 18in sq plain back, cover 1in smaller, seams half inch. cut front how big -> 18 in; 18 in",
        "envelope cushion cover for a 45 cm pad in 140 cm cloth, how much fabric -> 0.5 m; 44.9 cm; 30 cm",
        "four zip back cushion covers for 50 cm pads, 140 cm wide fabric, how much cloth -> 2 m",
    ),
)
