"""Why triangles are cut so much larger than they finish: the seams at their ends, by geometry."""

from __future__ import annotations

from ..engine.declare import Derivation, Fact, Follows

USUAL_SEAM = "1/4 in | 0.75 cm"
NAMES = {
    "shift": "how far the diagonal's cut edge lies from its sewn line, measured along the side",
    "point_end": "what is added at a pointed end",
    "square_end": "what is added at the square corner",
}
# What happens at the end of a side where it meets the diagonal at half a right angle.
POINTED_END = (
    Fact(
        "The diagonal is cut one seam outside its sewn line; measured along the side, at half a right angle to it, "
        "that is the diagonal of a square of one seam, by Pythagoras",
        "shift ^ 2 = seam ^ 2 + seam ^ 2",
    ),
    Follows("Take the square root of both", "shift = seam * sqrt(2)"),
    Fact(
        "The side itself is cut one seam outside its sewn line, and there the slanting edge has gone one seam further",
        "point_end = shift + seam",
    ),
    Follows("Put the shift in", "point_end = seam * sqrt(2) + seam"),
)


def half_square_addition(step: str = "addition") -> Derivation:
    """A square cut once on the diagonal: a short side has a square corner at one end, a point at the other."""
    return Derivation(
        step,
        (
            *POINTED_END,
            Fact("At the square corner the other side is cut one seam outside its sewn line", "square_end = seam"),
            Fact("The side grows at both ends", f"{step} = square_end + point_end"),
            Follows("Put both ends in", f"{step} = seam + seam * sqrt(2) + seam"),
            Follows("Gather the seams", f"{step} = seam * (2 + sqrt(2))"),
        ),
        names=NAMES,
        try_with={"seam": USUAL_SEAM},
    )


def quarter_square_addition(step: str = "addition") -> Derivation:
    """A square cut twice on the diagonal: its side is each triangle's long side, which has a point at both ends."""
    return Derivation(
        step,
        (
            *POINTED_END,
            Fact("The long side has a point at both ends", f"{step} = 2 * point_end"),
            Follows("Put the points in", f"{step} = 2 * (seam * sqrt(2) + seam)"),
            Follows("Gather the seams", f"{step} = seam * (2 + 2 * sqrt(2))"),
        ),
        names=NAMES,
        try_with={"seam": USUAL_SEAM},
    )


def diagonal(step: str, side: str, words: str) -> Derivation:
    """The diagonal of a square by Pythagoras. words: what the square is."""
    return Derivation(
        step,
        (
            Fact(
                f"{words}: the squares of two sides make the square of the diagonal, by Pythagoras",
                f"{step} ^ 2 = {side} ^ 2 + {side} ^ 2",
            ),
            Follows("Both sides are alike", f"{step} ^ 2 = 2 * {side} ^ 2"),
            Follows("Take the square root of both", f"{step} = {side} * sqrt(2)"),
        ),
    )
