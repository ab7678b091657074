"""The length round a circular hem."""

from __future__ import annotations

from ..engine.declare import GEOMETRY, Input, Rule, Step
from ..engine.kinds import LENGTH, RATIO
from ..engine.rounding import BODY, SPACING
from .circle_skirt import FRACTION_OF_ROUND, NAMES, PART_WORDS

HEM_SWEEP = Rule(
    topic="hem sweep",
    family="fabric",
    says=("hem sweep", "sweep", "hem circumference", "round the hem", "around the hem", "hem measures",
          "hem of a circle", "circumference of the hem",
          "hem radius", "radius to the hem", "centre to the hem", "centre point to the hem", "to the hem line", "along the curve",
          "along the curved edge", "far round is the hem", "how far round is the hem",
          "how far round the hem",
          *(phrase for phrases in NAMES.values() for phrase in phrases)),
    about="The length round a circular hem from its radius, or the radius from the length.",
    inputs=(
        Input("radius", "radius", LENGTH, says=("radius", "hem radius", "radius to the hem", "radius to the hem is", "from the centre",
                                                "centre to hem", "centre point to the hem", "from the centre point", "from the middle",
                                                "middle to the hem",
                                                "centre to the hem"),
              ask="What is the radius, from the centre to the hem?", example="75 cm", sane="1 mm..50 m",
              usual="10 cm..2 m", practice="50 cm..1 m by 5 cm"),
        FRACTION_OF_ROUND,
        Input("part", "part of a circle as a number", RATIO, says=("circle", "of a circle"), sane="1/8..2",
              spoken=True, default=PART_WORDS),
    ),
    steps=(
        Step("sweep", "That part of the whole round: 2 × π × the radius", "2 * pi * part * radius", rounding=BODY,
             label="hem sweep",
             says=("sweep", "hem measure", "circumference", "round", "how long is the hem", "how far round", "length of the hem",
                   "around"), axis="girth",
             stated=("round", "sweep", "hem", "measures", "hem measures", "around", "circumference", "hem is",
                     "hem of", "hem circumference", "circumference of", "circumference is", "sweep of", "sweep is", "hem sweep",
                     "finished hem", "round it"), sane="5 cm..300 m"),
        Step("across", "The round is that part of π times the diameter", "sweep / (pi * part)", label="diameter", rounding=SPACING,
             says=("diameter", "diameter of it", "diameter of that", "diameter of a full circle",
            "diameter of the full circle", "diameter of the circle", "how far across",
            "how wide across")),
    ),
    answers=("sweep", "across"),
    headline=("The hem is {sweep} round.",),
    source=GEOMETRY,
    related=("circle skirt",),
    examples=(
        "hem measures 5 metres round, full circle. radius? -> 79.6 cm",
        "hem sweep of a full circle with a radius of 70 cm -> 440 cm",
        "hem sweep for a half circle of 30 in radius -> 94 1/4 in",
    ),
)
