"""Knitting needles and crochet hooks as published: mm, US, old UK and Japanese sizes, each row with its source.

Only what was printed is here; where two published lists disagree both rows stand, and the answer says both.
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction


@dataclass(frozen=True, slots=True)
class Size:
    """One printed row: the thickness in mm and what the size is called; "" where the list has no such size."""

    mm: Fraction
    us: str = ""
    uk: str = ""
    japan: str = ""
    source: str = ""


LIST_1 = "Needle conversion table (US / metric / old UK), Sarah Bradberry, knitting-and.com, 2002"
LIST_2 = "Knitting needle conversion chart, KnitPro blog, 2024"
LIST_3 = "Knitting needle sizes and their conversions; same in KnitPro blog chart, Pattern Duchess, n.d."
LIST_4 = "Knitting needle size conversion US to mm, Fine Leaf Fibres, n.d."
LIST_5 = "Standard Yarn Weight System, as reproduced on the sconch.com conversion-charts page, Craft Yarn Council, n.d."
LIST_6 = "Japanese needle sizes list, Sarah Bradberry, knitting-and.com, 2002"
LIST_7 = "Crochet hook size conversion chart, matifs.com (same US letters in crochetlooppool.com chart B-1..I-9), n.d."
LIST_8 = "Crochet hook size conversion chart, matifs.com, n.d."
LIST_9 = "Standard Yarn Weight guide (earlier version), Craft Yarn Council via 222handspun.com, n.d."
LIST_10 = "Deciphering sizing in knitting needles and crochet hooks, kdafio.com, n.d."
LIST_11 = "What are the different crochet hook sizes, homequestionsanswered.com, n.d."
LIST_12 = "Guide to the steel crochet hook size chart, winenfood.com, n.d."

# Knitting needles, the first list first; later rows add sizes or disagree.
KNITTING_NEEDLES: tuple[Size, ...] = (
    Size(Fraction("2"), us="0", uk="14", source=LIST_1),
    Size(Fraction("2.25"), us="1", uk="13", source=LIST_1),
    Size(Fraction("2.5"), source=LIST_1),
    Size(Fraction("2.75"), us="2", uk="12", source=LIST_1),
    Size(Fraction("3"), uk="11", source=LIST_1),
    Size(Fraction("3.25"), us="3", uk="10", source=LIST_1),
    Size(Fraction("3.5"), us="4", source=LIST_1),
    Size(Fraction("3.75"), us="5", uk="9", source=LIST_1),
    Size(Fraction("4"), us="6", uk="8", source=LIST_1),
    Size(Fraction("4.5"), us="7", uk="7", source=LIST_1),
    Size(Fraction("5"), us="8", uk="6", source=LIST_1),
    Size(Fraction("5.5"), us="9", uk="5", source=LIST_1),
    Size(Fraction("6"), us="10", uk="4", source=LIST_1),
    Size(Fraction("6.5"), us="10.5", uk="3", source=LIST_1),
    Size(Fraction("7"), uk="2", source=LIST_1),
    Size(Fraction("7.5"), uk="1", source=LIST_1),
    Size(Fraction("8"), us="11", uk="0", source=LIST_1),
    Size(Fraction("9"), us="13", uk="00", source=LIST_1),
    Size(Fraction("10"), us="15", uk="000", source=LIST_1),
    Size(Fraction("2.5"), us="1.5", source=LIST_2),
    Size(Fraction("3"), us="2.5", source=LIST_2),
    Size(Fraction("12"), us="17", source=LIST_3),
    Size(Fraction("15"), us="19", source=LIST_3),
    Size(Fraction("20"), us="36", source=LIST_3),
    Size(Fraction("25"), us="50", source=LIST_3),
    Size(Fraction("1"), us="0000", source=LIST_4),
    Size(Fraction("1.25"), us="000", source=LIST_4),
    Size(Fraction("1.5"), us="00", source=LIST_4),
    Size(Fraction("12"), us="17", source=LIST_4),
    Size(Fraction("15"), us="19", source=LIST_4),
    Size(Fraction("19"), us="35", source=LIST_4),
    Size(Fraction("25"), us="50", source=LIST_4),
    Size(Fraction("1.5"), us="000", source=LIST_5),
    Size(Fraction("12.75"), us="17", source=LIST_5),
)

# Japanese needle sizes: each 0.3 mm thicker than the one before.
JAPANESE_NEEDLES: tuple[Size, ...] = (
    Size(Fraction("2.1"), japan="0", source=LIST_6),
    Size(Fraction("2.4"), japan="1", source=LIST_6),
    Size(Fraction("2.7"), japan="2", source=LIST_6),
    Size(Fraction("3"), japan="3", source=LIST_6),
    Size(Fraction("3.3"), japan="4", source=LIST_6),
    Size(Fraction("3.6"), japan="5", source=LIST_6),
    Size(Fraction("3.9"), japan="6", source=LIST_6),
    Size(Fraction("4.2"), japan="7", source=LIST_6),
    Size(Fraction("4.5"), japan="8", source=LIST_6),
    Size(Fraction("4.8"), japan="9", source=LIST_6),
    Size(Fraction("5.1"), japan="10", source=LIST_6),
    Size(Fraction("5.4"), japan="11", source=LIST_6),
    Size(Fraction("5.7"), japan="12", source=LIST_6),
    Size(Fraction("6"), japan="13", source=LIST_6),
    Size(Fraction("6.3"), japan="14", source=LIST_6),
    Size(Fraction("6.6"), japan="15", source=LIST_6),
)

# Crochet hooks.
CROCHET_HOOKS: tuple[Size, ...] = (
    Size(Fraction("2.25"), us="B/1", uk="13", source=LIST_7),
    Size(Fraction("2.75"), us="C/2", uk="12", source=LIST_7),
    Size(Fraction("3.25"), us="D/3", uk="10", source=LIST_7),
    Size(Fraction("3.5"), us="E/4", uk="9", source=LIST_7),
    Size(Fraction("3.75"), us="F/5", source=LIST_7),
    Size(Fraction("4"), us="G/6", uk="8", source=LIST_7),
    Size(Fraction("4.5"), us="7", uk="7", source=LIST_7),
    Size(Fraction("5"), us="H/8", uk="6", source=LIST_7),
    Size(Fraction("5.5"), us="I/9", uk="5", source=LIST_7),
    Size(Fraction("6"), us="J/10", uk="4", source=LIST_7),
    Size(Fraction("6.5"), us="K/10.5", uk="3", source=LIST_7),
    Size(Fraction("8"), us="L/11", uk="0", source=LIST_7),
    Size(Fraction("9"), us="M/N/13", uk="00", source=LIST_7),
    Size(Fraction("10"), us="N/P/15", uk="000", source=LIST_7),
    Size(Fraction("2"), uk="14", source=LIST_8),
    Size(Fraction("15"), us="Q", source=LIST_5),
    Size(Fraction("16"), us="Q", source=LIST_9),
    Size(Fraction("15.75"), us="Q", source=LIST_10),
)

# Steel crochet hooks: a larger number is a thinner hook.
STEEL_HOOKS: tuple[Size, ...] = (
    Size(Fraction("3.5"), us="00", source=LIST_11),
    Size(Fraction("0.75"), us="14", source=LIST_11),
    Size(Fraction("1.65"), us="7", source=LIST_12),
)
