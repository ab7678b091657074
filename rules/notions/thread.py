"""Thread for seams: how much of it, needle and bobbin apart, and in reels."""

from __future__ import annotations

from ..engine.declare import Caution, Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, MONEY, RATIO
from ..engine.rounding import COUNT_UP, PENNY, THREAD
from .words import EACH, WASTE, how_many

FACTORS = (
    "factors credited to Carr and Latham, Technology of Clothing Manufacture, and to Coats; waste: Coats, and "
    "American & Efird 2010"
)

# Stitch class (ISO 4915) and its everyday name -> how it is asked for, and thread for each length of seam.
STITCHES = {
    "301 lockstitch": (("lockstitch", "lock stitch", "301", "straight stitch", "straight seams", "plain seams",
            "stitch 301", "class 301", "machine straight stitch"), "2.5"),
    "304 zigzag": (("zigzag", "zig zag", "304", "zig-zag", "zigzag lockstitch"), "7"),
    "101 single chainstitch": (("101", "single chainstitch", "single thread chainstitch", "one thread chainstitch",
            "basting chainstitch"), "4"),
    "401 chainstitch": (("401", "chainstitch", "chain stitch", "double chainstitch", "two thread chainstitch"), "5.5"),
    "406 coverstitch": (("406", "coverstitch", "cover stitch", "two needle coverstitch", "twin needle coverstitch"),
        "18"),
    "503 two-thread overlock": (("503", "two thread overlock", "2 thread overlock", "two thread serger",
            "two thread overedge"), "12"),
    "504 three-thread overlock": (("504", "three thread overlock", "3 thread overlock", "overlock", "serger",
            "overlocked", "serged", "three thread", "serging", "overlocking",
                                   "3 thread serger", "overedge", "three thread overedge"), "14"),
    "512 four-thread overlock": (("512", "four thread overlock", "4 thread overlock", "four thread serger",
            "4 thread serger", "mock safety stitch"), "18"),
    "516 five-thread overlock": (("516", "five thread overlock", "5 thread overlock", "safety stitch", "five thread"),
        "20"),
    "602 coverseam": (("602", "four thread coverseam", "top and bottom coverstitch"), "25"),
    "605 coverseam": (("605", "five thread coverseam", "three needle coverseam"), "28"),
    "606 flatseam": (("606", "flatseam", "flatlock", "flat seam"), "32"),
}  # fmt: skip

THREAD_LENGTH = Rule(
    topic="thread",
    family="notions",
    says=("thread", "sewing thread", "thread consumption", "how much thread", "machine thread", "reels of thread",
        "spools of thread", "cotton thread", "thread for", "lockstitch",
        "chainstitch", "overlocking", "cones of thread", "straight stitch seams", "of straight stitch", "spools", "reels",
        "reel holds", "reels hold", "spool holds", "spools hold", "cone holds", "cones hold", "without the waste",
        "zigzag", "zigzag stitch"),
    about="How much thread seams take, by the class of stitch, and how many reels.",
    inputs=(
        Input("seams", "seam length", LENGTH,
            says=("seams", "seam", "of seams", "seam length", "sewing", "stitching", "hems", "hem", "of stitching",
                "of seam", "side seams", "edges", "rows", "lines", "of sewing", "topstitching", "quilting lines",
                "of lockstitch", "long", "metres of seam", "yards of seam", "how many metres of seam", "how many yards of seam",
                "how much seam", "length of seam",
                "thread go", "thread sew", "thread do", "thread stitch", "thread last",
                "thread cover"), many=True, ask="How long are the seams, in all or one by one?",
            example="four seams of 24 in", sane="1 cm..1000 km", practice="2 m..20 m by 1 m"),
        choice("stitch", "stitch", {name: phrases for name, (phrases, _) in STITCHES.items()},
            default="301 lockstitch",
            because="a plain seam; say zigzag, overlock, chainstitch or a class number for another"),
        Input("ratio", "thread to a length of seam", RATIO,
            says=("times", "to 1", "to one", "times the seam", "ratio", "factor", "x the seam", "for each of seam",
                "per seam"),
            default=tuple(Default(factor, f"the factor of a {name} seam (published)",
                    when={"stitch": name}) for name, (_, factor) in STITCHES.items()), sane="1..60",
            practice="2.5..20 by 1/2"),
        WASTE,
        how_many("number", "number of pieces", "piece",
            says=("garments", "shirts", "bags", "of them", "pieces", "dresses", "quilts", "cushions", "curtains",
                "aprons", "tops", "skirts", "totes"), spoken=True),
        Input("reel", "thread on a reel", LENGTH,
            says=("reel", "reels", "spool", "spools", "cone", "cones", "cones of", "tubes of", "reels of", "spools of", "on a reel",
                "per reel", "reel of", "a reel", "m reels", "reels hold", "reel holds", "spools hold", "spool holds",
                "cone holds", "cones hold"),
            default="100 m", because="a usual small reel", sane="1 m..100 km", practice="100 m..500 m by 50 m"),
        EACH,
    ),
    steps=(
        Step("seam", "Add up the seams", "number * sum(seams)", label="seam in all", unit=("in", "cm"),
            says=("seam in all", "total seam")),
        Step("net", "Each length of seam takes so many lengths of thread", "seam * ratio",
            label="thread without waste", unit=("yd", "m"),
            says=(
                "before the waste", "without the waste", "leaving out the waste", "waste left out",
                "not counting the waste", "not counting waste",
                "without waste", "net", "before waste")),
        Step("length", "Add the waste of ends and starts", "net * (1 + waste)", rounding=THREAD, label="thread",
            says=("thread", "how much thread", "how many yards", "how many metres", "how much", "length of thread",
                "total thread", "thread needed"), stated=("have", "left", "got", "of thread", "only", "there's", "reel sew",
                "reel do", "reel make", "reel cover", "reel stitch", "spool sew", "spool do", "spool make", "spool stitch", "cone sew",
                "cone do", "reel will sew", "reel will do", "spool will sew", "spool will do")),
        Step("needle", "Half of a lockstitch is needle thread", "length / 2", rounding=THREAD, label="needle thread",
             says=("thread is on the needle", "thread on the needle", "thread goes on the needle", "thread for the needle",
                "thread does the needle take", "needle thread", "needle", "top thread", "upper thread",
                "thread on the needle", "on the needle",
                "thread for the needle"), when={"stitch": ("301 lockstitch",)}),
        Step("bobbin", "Half of a lockstitch is bobbin thread", "length / 2", rounding=THREAD, label="bobbin thread",
             says=("thread is on the bobbin", "thread on the bobbin", "thread goes on the bobbin", "thread is in the bobbin",
                "thread does the bobbin take", "bobbin thread", "bobbin", "under thread", "lower thread",
                "thread on the bobbin", "on the bobbin",
                "in the bobbin", "thread in the bobbin", "thread for the bobbin", "bobbins"),
            when={"stitch": ("301 lockstitch", )}),
        Step("sews", "A reel over what a length of seam takes, with the waste", "reel / (ratio * (1 + waste))", label="seam from one reel",
            unit=("yd", "m"),
            says=(
                "reel go", "reel last", "reel sew",
                "how long a seam will a reel sew", "how much seam does a reel sew", "seam will one reel sew",
                "seam will a reel sew", "seam will each reel sew", "seam does a reel sew", "seam does one reel sew",
                "seam can i sew with one reel", "seam from one reel", "seam can i sew from a reel",
                "seam can i sew from one reel", "can i sew from one reel",
                "can i sew from a reel", "can i sew from a spool", "can i sew from a cone", "can i sew with one reel",
                "can i sew with a reel", "can i sew out of a reel", "seam out of a reel", "seam out of one reel", 
                "can i sew with", "can i sew from", "can i sew out of", "seam will it sew", "how far will a", "how far does a",
                "how far will one", "how far does one",
                "how far will it go", "how far does it go", "how far will a reel go", "how far does a reel go",
                "how far will one reel go", "how far does one reel go")),
        Step("reels", "Divide by what a reel holds, and take whole reels", "length / reel", COUNT, rounding=COUNT_UP,
            noun="reel",
            says=("how many reels", "reels", "reels of", "spools of", "cones of", "spools", "how many spools", "cones", "how many cones", "how many do i need",
                "how many will i need", "how many should i buy", "how many to buy", "how many do we need"), stated=("have",
                "reels", "got", "left")),
        Step("cost", "The reels at the price of one", "rounded(reels) * each", MONEY, rounding=PENNY,
            says=(
                "thread come to", "will it come to", "what will it come to", "will the thread come to",
                "thread cost", "does it come to",
                "cost", "how much money", "price in all", "pay", "come to")),
    ),
    answers=("length", "needle", "bobbin", "reels", "cost"),
    headline=("It takes {length} of thread: {reels}.", "Buy {reels}.", "The needle takes {needle}.",
        "The bobbin takes {bobbin}."),
    source=FACTORS,
    no_unknown=("waste", "ratio", "number", "reel", "each"),
    cautions=(Caution("The factors are for ordinary cloth: they rise with its thickness and with closer stitches",
        "Coats and American & Efird bulletins"),),
    notes=("Published figures differ for some stitches: a thread maker's own guide gives 5 for 101 and 5.5 for 304.",),
    examples=(
        "thread in yards for four seams of 24 in and two of 36 in, lockstitch at 2.5 to one, with 15 percent "
        "waste -> 13 1/2 yd",
        "thread for 40 m of lockstitch seams, 2.5 to 1, 15% waste -> 115 m; 58 m; 2 reels",
        "how many 250 m reels for 120 m of overlock seams -> 8 reels; 1932 m",
        "zigzag 10 m of hem, 10 % waste, how much thread -> 77 m",
    ),
    related=("machine needle", "stitch length"),
)

