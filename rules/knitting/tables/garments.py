"""How much yarn a garment takes, as published: ranges in yards, each with its source. Estimates, never to the yard."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Takes:
    """A printed estimate: the yarn class number, the garment and who it is for, and yards from low to high."""

    yarn: str
    garment: str
    wearer: str
    low: Fraction
    high: Fraction
    source: str


BOOK_1 = "Estimating how much yarn to buy, Knitting & Crocheting All-in-One For Dummies (Wiley), n.d."
BOOK_2 = "How much yarn do I need?, Ajanta Studios, n.d."
BOOK_3 = "What size should a newborn crochet hat be, health9.org, n.d."

YARN_BY_GARMENT_TABLE: tuple[Takes, ...] = (
    Takes("1", "hat", "adult", Fraction(300), Fraction(375), BOOK_1),
    Takes("1", "scarf", "adult", Fraction(350), Fraction(350), BOOK_1),
    Takes("1", "sweater", "adult", Fraction(1500), Fraction(3200), BOOK_1),
    Takes("2", "hat", "adult", Fraction(250), Fraction(350), BOOK_1),
    Takes("2", "scarf", "adult", Fraction(300), Fraction(300), BOOK_1),
    Takes("2", "sweater", "adult", Fraction(1200), Fraction(2500), BOOK_1),
    Takes("3", "hat", "adult", Fraction(200), Fraction(300), BOOK_1),
    Takes("3", "scarf", "adult", Fraction(250), Fraction(250), BOOK_1),
    Takes("3", "sweater", "adult", Fraction(1000), Fraction(2000), BOOK_1),
    Takes("4", "hat", "adult", Fraction(150), Fraction(250), BOOK_1),
    Takes("4", "scarf", "adult", Fraction(200), Fraction(200), BOOK_1),
    Takes("4", "sweater", "adult", Fraction(800), Fraction(1500), BOOK_1),
    Takes("5", "hat", "adult", Fraction(125), Fraction(200), BOOK_1),
    Takes("5", "scarf", "adult", Fraction(150), Fraction(150), BOOK_1),
    Takes("5", "sweater", "adult", Fraction(600), Fraction(1200), BOOK_1),
    Takes("6", "hat", "adult", Fraction(75), Fraction(125), BOOK_1),
    Takes("6", "scarf", "adult", Fraction(125), Fraction(125), BOOK_1),
    Takes("6", "sweater", "adult", Fraction(400), Fraction(800), BOOK_1),
    Takes("1", "sweater", "baby", Fraction(600), Fraction(700), BOOK_2),
    Takes("2", "sweater", "toddler", Fraction(800), Fraction(1000), BOOK_2),
    Takes("2", "sweater", "child", Fraction(1000), Fraction(1500), BOOK_2),
    Takes("1", "sweater", "woman", Fraction(1500), Fraction(1700), BOOK_2),
    Takes("2", "sweater", "man", Fraction(1700), Fraction(2100), BOOK_2),
    Takes("4", "hat", "preemie", Fraction(30), Fraction(50), BOOK_3),
    Takes("4", "hat", "newborn", Fraction(50), Fraction(70), BOOK_3),
    Takes("4", "hat", "baby", Fraction(60), Fraction(80), BOOK_3),
)
# A cardigan takes 5 % more than a pullover: How much yarn do I need?, Ajanta Studios.
CARDIGAN_MORE = Fraction(5, 100)
