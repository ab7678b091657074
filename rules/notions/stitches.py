"""Machine stitches and needles: stitch length each way, needle sizes, needle for a cloth."""

from __future__ import annotations

from fractions import Fraction

from ..engine.declare import Default, Input, Rule, Step, choice
from ..engine.kinds import COUNT, LENGTH, PER_LENGTH, RATIO, TEXT
from ..engine.outcome import Outcome
from ..engine.rounding import COUNT_NEAR, MM_TENTH, SPI
from ..engine.run import Impossible, Needs, Run

STITCH_LENGTH = Rule(
    topic="stitch length",
    family="notions",
    says=(
                "set the machine to", "machine to a", "machine set to", "machine stitch of", "stitches was that",
                "how long is each stitch", "length of each stitch", "how long a stitch",
                "long is each stitch", "how long a seam", "length is each stitch",
                "how long is one stitch", "each stitch how long",
                "stitch length", "stitches per inch", "stitches an inch", "stitches to the inch", "spi", "machine stitch",
        "stitch setting", "stitches in a seam", "stitch size", "mm stitch", "stitch dial", "machine stitches",
        "stitches are there in a seam", "stitches in the seam", "stitches does a seam", "seam sewn at", "in a seam of",
        "stitches along a seam", "set mine to", "set my machine", "what do i set", "machine is put on", "machine is set", "machine is on",
        "stitch is", "mm stitches", "stitches in seam", "dial", "dial setting", "walking foot", "stitch length dial",
        "length dial"),
    about="Stitch length in millimetres and in stitches an inch, and the stitches in a seam.",
    inputs=(
        Input("rate", "stitches a length", PER_LENGTH,
            says=("stitches to the inch", "stitches an inch", "spi", "stitches per inch", "stitches"),
            default=Default("=1 / mm", "One stitch over its length", derived=True),
            ask="How many stitches to the inch, or how long is a stitch?", example="10 stitches to the inch",
            practice="6 st/in..15 st/in by 1 st/in"),
        Input("mm", "stitch length", LENGTH,
            says=("stitch", "stitch is", "mm stitch", "stitch length", "long", "length", "setting", "stitches of", "set at", "set to",
                "in stitches", "sewn at", "stitched at", "sewn with", "to stitches", "stitches", "topstitching",
                "topstitch", "basting", "stitching",
                "machine is at", "machine at", "machine is put on", "machine is on", "put on", "machine on",
                "machine is set at", "machine to", "set the machine to", "set my machine to", "machine set to", "machine was set to",
                "dial is on", "dials on", "dial on", "dial at", "dial was on", "dial is at", "machine was on"),
            axis="length",
            default=Default("=1 / rate", "One length over the stitches in it", derived=True),
            ask="How long is a stitch, or how many are there to the inch?", example="2.5 mm", sane="0.1 mm..2 cm",
            usual="0.3 mm..12 mm", practice="2 mm..4 mm by 1/2 mm", spoken=True),
        Input("seam", "seam length", LENGTH,
            says=(
                "how long a seam", "how long a seam is that", "how long is the seam",
                "how long was the seam", "length of the seam",
                "seam", "hem", "of seam", "edge", "in a seam of", "along", "seam of", "over", "topstitching",
                  "topstitch", "of it"), extra=True,
            spoken=True, sane="2 cm..1000 km", practice="10 in..60 in by 5 in"),
    ),
    steps=(
        Step("length", "A stitch is as long as the length over the stitches in it", "mm", rounding=MM_TENTH,
            label="stitch length in mm", unit=("mm", "mm"),
            says=(
                "how long is each stitch", "length of each stitch", "each stitch",
                "how long is one stitch", "how long a stitch",
                "how long", "length", "what length", "stitch length", "what setting", "dial setting", "setting", "set the dial")),
        Step("spi", "As many stitches as the length holds", "1 / mm", PER_LENGTH, rounding=SPI,
            label="stitches to the inch", unit=("st/in", "st/in"),
            says=("counts in stitches", "pattern counts in stitches", "per inch", "to the inch", "stitches per inch", "spi",
                "stitches to the inch", "an inch",
                "stitches an inch", "how many to the inch")),
        Step("stitches", "As many stitches as the seam holds", "seam / mm", COUNT, rounding=COUNT_NEAR, noun="stitch",
            label="stitches in the seam", stated=("stitches", "counted", "has", "there are", "took"),
            says=("how many stitches", "how many machine stitches", "machine stitches", "stitches in the seam",
                "stitches in all", "in the seam", "in a seam")),
    ),
    answers=("stitches", "length", "spi"),
    headline=("A stitch is {length} long: {spi}.", "{spi}.", "There are {stitches} in the seam."),
    source="stitches an inch = 25.4 / mm: arithmetic",
    lone=True,
    no_unknown=("rate", "mm"),
    notes=("Usual: fine cloth 12 to 15 to the inch, medium 10 to 12, heavy 8 to 10, basting 6 (common practice).",),
    examples=(
        "8 stitches to the inch = ? mm -> 3.2 mm",
        "2.5 mm stitch length in stitches per inch -> 10 st/in; 2.5 mm",
        "how many machine stitches in a 30 in seam at 10 stitches to the inch -> 300 stitches",
    ),
    related=("machine needle", "thread"),
)

# Metric needle size -> US size as packets print them. One published table pairs 80 with 13; packets print 80/12.
US_SIZES = {
    60: 8,
    65: 9,
    70: 10,
    75: 11,
    80: 12,
    90: 14,
    100: 16,
    110: 18,
    120: 19,
    125: 20,
    130: 21,
    140: 22,
    160: 23,
    200: 25,
}
LEAST_METRIC = 40  # US sizes end well below, metric sizes begin above
FOR_CLOTH = {"light": "65/9 to 75/11", "medium": "80/12 to 90/14", "heavy": "100/16 to 110/18", "filmy": "65/9"}


def _needle(run: Run) -> Outcome:
    """The size in the other system, the blade's thickness, or the sizes for a cloth."""
    cloth = run.get("cloth")
    size = run.maybe("size")
    if size is None:
        if cloth == "none":
            raise Needs("size")
        run.say("Look up the published table of needles for cloths", "", f"{cloth} cloth", FOR_CLOTH[cloth])
        return Outcome({"for_cloth": FOR_CLOTH[cloth]})
    size = _whole(size)
    metric = _metric(size)
    run.say(
        "Look up the size in the table that packets print",
        "metric size / US size",
        "",
        f"{metric}/{US_SIZES.get(metric, '?')}",
    )
    run.say(
        "A metric size is a hundred times the blade's thickness in millimetres",
        "size ÷ 100",
        f"{metric} ÷ 100",
        f"{metric / 100:g} mm",
    )
    other = (
        f"{metric} metric"
        if size < LEAST_METRIC
        else f"US {US_SIZES[metric]}"
        if metric in US_SIZES
        else "no US size in the table"
    )
    values: dict[str, object] = {"other": Fraction(metric if size < LEAST_METRIC else US_SIZES.get(metric, 0)),
        "both": f"{metric}/{US_SIZES.get(metric, '?')} ({other})",
                                 "blade": Fraction(metric, 100)}  # fmt: skip
    if metric not in US_SIZES:
        del values["other"]
    return Outcome(values)


def _whole(size: Fraction) -> int:
    """The metric size of a packet's double size: "80/12" is read as a fraction, and nearly every pair is one of its own."""
    pairs = [metric for metric, us in US_SIZES.items() if Fraction(metric, us) == size]
    return pairs[0] if len(pairs) == 1 and size not in US_SIZES.values() else int(size)


def _metric(size: int) -> int:
    if size >= LEAST_METRIC:
        return size
    found = next((metric for metric, us in US_SIZES.items() if us == size), None)
    if found is None:
        raise Impossible(
            f"no needle of US size {size} is in the table; give one of {', '.join(map(str, US_SIZES.values()))}, "
            "or a metric size such as 80"
        )
    return found


NEEDLE = Rule(
    topic="machine needle",
    family="notions",
    says=(
                "american number", "us number needle", "european number",
                "needle", "needle size", "machine needle", "sewing machine needle", "needle box", "needle packet",
                    "my machine", "size needle", "needles", "blade",
        "us needle", "metric needle", "needle for", "needle us", "needle in metric", "needle metric",
                "needle in american", "american needle", "needle in european", "needle american", "packet of needles",
        "american call", "us call"),
    about="A machine needle's size in both systems, its blade, and the size for a cloth.",
    inputs=(
        Input("size", "needle size", RATIO,
            says=("size", "needle", "us", "metric", "nm", "us size", "needle size", "number", "no"),
            ask="What is the needle's size, or what cloth is it for?", example="80", sane="6..330",
            practice="60..120 by 10", ),
        choice("cloth", "cloth", {"light": ("light", "lightweight", "light woven", "lawn", "silk", "chiffon lining",
                    "voile", "fine cloth", "batiste", "thin", "lightweight cotton", "light weight", ),
                "medium": ("medium", "medium weight", "cotton", "quilting cotton", "poplin", "linen", "calico",
                    "shirting", "gingham", "mediumweight", "medium woven", ), "heavy": ("heavy", "heavyweight",
                    "denim", "canvas", "upholstery", "heavy woven", "jeans", "coating", "heavy weight", "leather",
                    "duck", "tweed", ), "filmy": ("filmy", "organdy", "net", "organza", "chiffon", "tulle"),
                "none": (), },
            default=Default("none", derived=True), ),
    ),
    steps=(
        Step("other", "The size in the other system", kind=COUNT, rounding=COUNT_NEAR,
            label="size in the other system",
            says=(
                "american number", "us number", "european number", "american needle size",
                "in american", "in european",
                "us size", "metric size", "metric", "other", "equivalent", "convert", "same as", "us", "in us",
                "american size", "european size", "what size", "size", "american call", "would an american call",
                "us call", "called in us", "called in america"), ),
        Step("blade", "A metric size is a hundred times the blade's thickness in mm", kind=LENGTH, label="blade",
            unit=("mm", "mm"),
            says=("blade", "the blade", "blade in mm", "thickness", "how thick", "diameter", "blade diameter",
                  "blade thickness", "thick"),
            axis="thickness", ),
        Step("both", "As packets print it", kind=TEXT, label="as printed"),
        Step("for_cloth", "Sizes for the cloth", kind=TEXT, label="needle for the cloth",
            says=("which needle", "what needle", "needle for"), ),
    ),
    answers=("other", "for_cloth", "blade", "both"),
    headline=(
        "Needle {both}; the blade is {blade} thick.",
        "Use a needle of size {for_cloth}.",
        "The blade is {blade} thick.",
    ),
    source="packet sizes: Siruba and Texpedia tables; Nm = 100 x blade diameter: DIN 5325 (Schmetz)",
    algorithm=_needle,
    no_unknown=("size",),
    notes=("One UK table pairs US 13 with 80; packets print 80/12.",),
    examples=(
        "blade thickness of a size 80 needle, in mm -> 0.8 mm",
        "US size of a 90 needle -> 14",
        "which machine needle for denim -> 100/16 to 110/18",
        "what is a US 14 needle in metric -> 90",
    ),
    related=("stitch length", "thread"),
)

