"""At what percentage a pattern is printed again, from its test square: what it should measure and what it came out at."""

from __future__ import annotations

from ..engine.declare import ARITHMETIC, Default, Input, Rule, Step
from ..engine.kinds import LENGTH, PERCENT
from ..engine.rounding import PERCENT_TENTH

TEST_SQUARE = Rule(
    topic="printed test square",
    family="measures",
    says=("printed the test square", "printed my test square", "test square is", "test square says", "percent to print",
        "percentage to print", "to print at", "print it at",
          "test square came out", "test square printed", "test square prints", "test square measures", "test square should be",
          "test square comes out", "print it again", "print again", "reprint", "percent do i print", "percentage do i print",
          "percentage should i print", "percent should i print", "square came out", "square printed at", "square printed"),
    about="At what percentage to print a pattern again when its test square came out too small or too large.",
    inputs=(
        Input("drawn", "test square as it should be", LENGTH,
              says=("should be", "should measure", "should have been", "supposed to be", "meant to be", "ought to be", "test square",
                    "must be", "instead of", "square of", "inch square", "drawn"),
              ask="What should the test square measure?", example="10 cm", sane="5 mm..1 m", practice="1 in..4 in by 1 in"),
        Input("printed", "test square as printed", LENGTH,
              says=("printed at", "came out", "came out at", "comes out at", "measures", "prints at", "prints", "is", "printed as",
                  "printed",
                    "but is", "only"),
              ask="What does it measure as printed?", example="9.6 cm", sane="5 mm..1 m", practice="7/8 in..4 in by 1/8 in"),
        Input("now", "percentage it was printed at", PERCENT, says=("at", "printed at", "was set to", "printed with"),
              default=Default("100 %", "printed at its own size"), sane="5 %..500 %", practice="90 %..110 % by 5 %"),
    ),
    steps=(
        Step("print_at", "Multiply by what it should be, and divide by what it is", "now * drawn / printed", PERCENT,
            rounding=PERCENT_TENTH,
             label="print at", says=("print at", "what percentage", "what percent", "which percentage", "how many percent", "percentage",
                                     "percent", "print scale")),
        Step("size", "What was printed, of what it should be", "printed / drawn", PERCENT, rounding=PERCENT_TENTH, label="size as printed",
             says=("how big is it", "what it should be", "of what it should be", "how big did it print", "size it printed at")),
    ),
    answers=("print_at", "size"),
    headline=("Print it at {print_at}.",),
    no_unknown=("drawn", "printed", "now"),
    source=ARITHMETIC,
    related=("scale",),
    examples=(
        "my 2 in test square printed at 1 7/8 in, what percentage should I print at -> 106.7 %",
        "test square should be 10 cm and it came out 9.6 cm, at what percent do I print -> 104.2 %",
        "test square came out 5.2 cm, should be 5 cm, printed at 100% -> 96.2 %",
    ),
)  # fmt: skip
