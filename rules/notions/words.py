"""Inputs and defaults that the rules for notions and bags share."""

from __future__ import annotations

from ..engine.declare import Default, Input
from ..engine.kinds import COUNT, LENGTH, MONEY, PERCENT

EACH = Input("each", "price each", MONEY,
    says=("each", "a piece", "apiece", "price each"), extra=True, practice="1 money..10 money")

SEAM_WORDS = ("seam allowance", "seam allowances", "seams", "seam", "sa", "seam allowance all round", "allowance")


def seam(default: str = "1/2 in | 1.2 cm", because: str = "the usual for bags and notions (common practice)") -> Input:
    """The seam allowance, its default given in inches and metric."""
    return Input("seam", "seam allowance", LENGTH,
        says=SEAM_WORDS,
        default=default, because=because, sane="0 mm..5 cm", usual="3 mm..3 cm", practice="1/4 in..5/8 in by 1/8 in")


def how_many(name: str, label: str, noun: str, says: tuple[str, ...] = (), one: str = "1", *,
             spoken: bool = False) -> Input:
    """A count of pieces, one unless said."""
    return Input(name, label, COUNT,
        says=says, noun=noun, spoken=spoken,
        default=Default(one, derived=True), sane="1..10000", practice="2..12 by 1")


WASTE = Input("waste", "waste", PERCENT,
    says=("waste", "wastage", "extra for waste", "allowance for waste"),
    default="15 %", because="10 to 15 % is the usual allowance (two thread makers)", sane="0 %..200 %",
    practice="10 %..20 %", usual="0 %..50 %")
