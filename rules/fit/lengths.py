"""Lengths altered: changes added up, and a piece made longer or shorter for a height."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, COMMON_PRACTICE, Caution, Input, Refusal, Rule, Step, flag
from ..engine.kinds import CHANGES, LENGTH
from ..engine.rounding import CUT

# Whom a pattern may be said to be made for.
# What is lengthened and shortened.
PIECES = ("skirt", "sleeve", "bodice", "dress", "trousers", "leg", "coat", "jacket", "blouse", "hem", "shirt", "top")
WHO = ("lady", "woman", "man", "girl", "boy", "child", "figure", "person", "body", "model")

LENGTH_CHANGE = Rule(
    topic="length change",
    family="fit",
    says=(
        "net change", "change in the length", "length change", "lengthened", "shortened", "took out", "taken out", "let down",
        "longer or shorter", "alter the length", "let down the hem", *(f"{took} up {my}" for took in ("took", "take", "taken")
            for my in ("my", "the", "her", "his")), "let the hem down", "took up the hem", "took the hem up",
        "original length", "original skirt length", "lengthen", "shorten", "change the length", "change in length", "took off",
        "overall change", "altogether", "take out", "taking up", "i take up", "take it up", "take them up", "took it up",
        "took them up", "taken it up", "let it down", "let them down", "let the skirt down", "let the sleeve down", "back up",
        "turned up", "at the bodice", "take off the hem", "off the hem", "at the hem", "longer and", "shorter and",
        "shorter then", "longer then", "shorter and then", "longer and then",
        "longer again", "shorter again", "how long is it now", "how long now", "what length is it now", "long is it now",
        "then add", "then take off", "then took off", "above the elbow", "below the elbow", "above the knee", "below the knee",
        "lengthening line", "shortening line", "letting down", "taking them up", "taking it up", "taking them down",
        "out of a sleeve", "out of the sleeve", "out of the bodice",
        *(f"how long was the {piece}" for piece in PIECES),
        *(f"{piece} now" for piece in PIECES),
    ),
    about="What several lengthenings and shortenings come to, and the new length.",
    inputs=(
        Input(
            "changes",
            "changes",
            CHANGES,
            many=True,
            ask="What was added and what was taken out?",
            example="+2 in, -3/4 in",
        ),
        flag("shared", "shared out over several places", ("equally", "how much each place", "how much at each",
             "how much in each place", "shared equally",
             "how much at each place", "half at each")),
        Input(
            "original",
            "original length",
            LENGTH,
            says=(
                "pattern", "original", "was", "they were", "it was", "started at", "originally", "length", "long", "skirt", "from",
                "how long was it", "how long was it before", "how long were they", "how long were they before", "length before",
                "how long was the skirt", "how long was the sleeve", "how long was the pattern",
            ),
            axis="length",
            extra=True,
            sane="10 cm..5 m",
            practice="20 in..45 in by 1 in",
        ),
    ),
    steps=(
        Step(
            "change", "Add what was put on and take away what was taken out", "sum(changes)",
            LENGTH,
            rounding=CUT,
            label="net change",
            says=(
                "net change", "change", "difference", "overall", "altogether", "in all", "net", "how much longer",
                "how much shorter", "longer or shorter", "how much longer is", "how much shorter is", "how much longer does",
                "how much shorter does", "how much longer will", "how much shorter will",
            ),
        ),
        Step(
            "new", "Add the change to the original length", "original + change",
            LENGTH,
            rounding=CUT,
            label="new length",
            says=(
                "new length", "finished length", "how long", "how long is it", "length now", "end up", "long is it now",
                "what length is it now", "what does it come to", "now", *(f"{piece} now" for piece in PIECES),
            ),
            stated=("ended up", "ended up at", "now", "is now", "are now", "now it is", "now they are", "they're now", "it's now",
                "it is now", *(f"now the {piece} {be}" for piece in PIECES for be in ("is", "are", "measures"))),
            axis="length",
        ),
    ),
    answers=("change", "new"),
    refusals=(Refusal("abs(change) > 0", "the change is shared out over several places: divide it by how many there are. Such as: "
                      "divide 3 cm into 2 equal parts", choices={"shared": "yes"}),
              Refusal("new <= 0", "so much taken out leaves nothing. Type a smaller change, such as: shorten a 58 cm sleeve by 3 cm"),),
    headline=(
        "The length changes by {change}: it is now {new}.", "The length changes by {change} altogether.",
        "It is now {new} long.",
    ),
    source=ARITHMETIC,
    cautions=(Caution("Move the hem, pocket, dart and button marks with it."),),
    no_unknown=("changes",),
    examples=(
        "took 1 1/2 in out of the bodice, put 5 cm on the skirt and 1/2 in on the hem - net change in the "
        "length? -> 1 in", "length change +2 in, -3/4 in on a 25 in pattern -> 1 1/4 in; 26 1/4 in",
        "I lengthened the bodice 2 cm and shortened the skirt by 5 cm. net change -> -3 cm",
    ),
    related=("for height",),
)

FOR_HEIGHT = Rule(
    topic="for height",
    family="fit",
    says=(
        "drafted for", "drawn for someone", "meant for someone", "made for someone", "someone tall", "for someone", "my height",
        "i'm tall", "tall", "petite", "height", "designed for", "made for someone", "pattern height",
        "inside leg", "outside leg",
        *(f"pattern {made} for" for made in ("is meant", "was meant", "meant", "made", "was made", "drawn", "was drawn", "drafted")),
        *(f"made for a {who}" for who in WHO),
        *(f"drawn for a {who}" for who in WHO),
        *(f"meant for a {who}" for who in WHO),
        "for my height", "for height", "suit me", "for somebody", "drawn for somebody", "made for somebody", "drawn for",
        "in proportion", "by proportion", "taller", "shorter than",
    ),
    about="A pattern length made longer or shorter in proportion to height.",
    inputs=(
        Input(
            "drafted",
            "height drafted for",
            LENGTH,
            says=(
                "drafted for", "drawn for", "someone", "for someone", "meant for someone", "meant for", "made for",
                "pattern is for", "designed for", "pattern height", "made for", "model", "drafted", "pattern for",
                "for a height of", "height", "tall", "drafted for height", "what height was it drafted for", "what height was",
                "height was it drafted for", "what height was the pattern", "what height was the pattern drafted for",
                "height is the pattern drafted for", "on a pattern for", "drafted for a", "drafted for a height of",
                "pattern is for height", "drawn for height",
                *(f"for a {who}" for who in WHO),
                *(f"for a {who} of" for who in WHO),
                "intended for", "based on", "standard height", "somebody", "for somebody", "drawn for somebody", "cut for",
                "the model is", "pattern's height", "someone",
            ),
            ask="What height was it drafted for?",
            example="168 cm",
            sane="40 cm..230 cm",
            practice="160 cm..175 cm by 1 cm",
        ),
        Input(
            "own",
            "own height",
            LENGTH,
            says=(
                "i'm", "i am", "my height", "she is", "he is", "she's", "he's", "own height", "me", "daughter", "granddaughter",
                "grandson", "niece", "nephew", "sister", "husband", "wife", "son", "my", "wearer", "and i'm", "mine is",
                "customer", "somebody", "someone", "for somebody", "for someone", "client", "pupil", "for my", "i'm only",
                "i am only", "i'm just", "what height does it suit", "what height does", "to suit", "make it suit",
                "right for my", "what height", "what height now", "what height will it suit", "what height is it for",
                "height does it suit", "how tall am i", "how tall would she be", "how tall a person",
            ),
            axis="height",
            ask="How tall is the wearer?",
            example="158 cm",
            sane="40 cm..230 cm",
            practice="145 cm..185 cm by 1 cm",
        ),
        Input(
            "length",
            "piece length",
            LENGTH,
            says=(
                "piece", "pattern length", "outside leg", "inside leg", "leg", "skirt", "length", "sleeve", "bodice", "inseam",
                "back length", "dress", "side seam", "trousers", "long", "coat", "jacket",
                *(f"{piece} length" for piece in PIECES),
                *(f"the pattern's {piece}" for piece in PIECES),
            ),
            axis="length",
            ask="How long is the pattern piece?",
            example="104 cm",
            sane="2 cm..200 cm",
            practice="40 cm..110 cm by 1 cm",
        ),
    ),
    steps=(
        Step(
            "new", "Take the length in proportion to the heights", "length * own / drafted",
            LENGTH,
            rounding=CUT,
            label="length to suit",
            says=(
                "what length", "suit", "new length", "how long", "length should", "length for me", "how long should",
                "mine be", "mine in proportion", "whats mine", "what is mine", *PIECES,
                *(f"{piece} length" for piece in PIECES),
                "length for him", "length for her", "how long for me", "how long for him", "how long for her",
            ),
            stated=("shortened to", "lengthened to", "shorten it to", "lengthen it to", "ought to be", "mine ought to be",
                "mine must be", "leg came to", "sleeve came to", "came to", *(f"{piece} {must} be" for piece in PIECES
                    for must in ("should", "must", "ought to", "needs to"))),
            axis="length",
        ),
        Step(
            "change", "Take the pattern's length from it", "new - length",
            LENGTH,
            rounding=CUT,
            label="change",
            sane="-60 cm..60 cm",
            says=(
                "how much to shorten", "how much to lengthen", "shorten by how much", "lengthen by how much", "by how much",
                "how much shorter", "how much longer", "shorten", "lengthen", "change", "take off", "take out", "add",
            ),
        ),
        Step(
            "difference", "The whole difference in height", "own - drafted",
            LENGTH,
            rounding=CUT,
            label="difference in height",
            sane="-130 cm..130 cm",
        ),
    ),
    answers=("new", "change", "difference"),
    insists=True,  # the difference in height alone is not what to alter a piece by
    headline=("Make it {new} long: a change of {change}.", "Change it by {change}, to {new}."),
    source=COMMON_PRACTICE,
    cautions=(
        Caution(
            "The whole height difference does not go into one piece: it is spread over body and legs, in proportion."
        ),
        Caution("Measure a garment you like first."),
    ),
    examples=(
        "Trousers drafted for 5'6\" and I'm 5 ft 2. The pattern's outside leg is 42 inches. What length "
        "would suit me? -> 39 1/2 in; -2 1/2 in",
        "pattern drafted for 168 cm, my height is 175 cm, skirt piece 60 cm long, what length -> 62.5 cm; 2.5 cm",
        "I am 160 cm, it was drafted for 170 cm, sleeve length 58 cm -> 54.6 cm; -3.4 cm",
    ),
    related=("length change",),
)
