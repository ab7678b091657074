"""What is asked of a rule: every number in its place, in base units, with the text that was typed."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from .kinds import MASS, Kind

Number = Fraction | float
USUAL_READING = "the usual reading, until told otherwise"


@dataclass(frozen=True, slots=True)
class Given:
    """A value in an input's place. value: base units (or an option's key, or a structure for lists and tables).

    unit: the canonical unit it was typed in. text: as typed, echoed as it is. why: set when it was read by inference
    ("48 read as inches, like the other lengths").
    """

    value: Any
    unit: str
    text: str
    why: str = ""


@dataclass(frozen=True, slots=True)
class Amount:
    """A result that brings its own unit (a conversion, a sum): value in base units, and the unit to show it in."""

    value: Number
    unit: str
    noun: str = ""


@dataclass(frozen=True, slots=True)
class Item:
    """One of several in a list input: 4 seams of 24 in. value: base units; count: how many of it."""

    value: Number
    unit: str
    text: str
    count: Number = 1
    label: str = ""


@dataclass(frozen=True, slots=True)
class Cut(Item):
    """A piece to cut, `count` times: value is its width and length its length, both in mm, as cut.

    cloth: which cloth it is cut from ("lining"), or "" when there is but one. on_fold: one edge lies on the fold.
    """

    length: Number = 0
    cloth: str = ""
    on_fold: bool = False


@dataclass(frozen=True, slots=True)
class Request:
    """One question, understood.

    given: input name -> Given; a list input's Given holds a tuple of Items.
    stated: step name -> Given, a result the maker has told us; some input is then the unknown.
    asked: names of steps or inputs wanted, the first one first; empty for the rule's own answers.
    series: (input name, the values to try) for a sweep or a comparison; compare says it is the latter.
    system: "in" or "cm". weights: the system of the weights, where it was told, else "".
    unit: the unit the answer is wanted in, or "". currency: of any money here.
    usual: input name -> what the maker is used to, taken (and listed as assumed, with its why) where nothing was given.
    currency_why, system_why: why that currency or system, when it was assumed.
    mentions: lower-case words of the question, for the cautions. shop_step: base mm, or None for the usual step.
    """

    topic: str
    given: Mapping[str, Given] = field(default_factory=dict)
    stated: Mapping[str, Given] = field(default_factory=dict)
    asked: tuple[str, ...] = ()
    series: tuple[tuple[str, tuple[Given, ...]], ...] = ()
    compare: bool = False
    system: str = "in"
    unit: str = ""
    currency: str = "GBP"
    currency_assumed: bool = False
    currency_why: str = USUAL_READING
    system_why: str = ""
    usual: Mapping[str, Given] = field(default_factory=dict)
    mentions: frozenset[str] = frozenset()
    largest: bool | None = None
    weights: str = ""

    def system_for(self, kind: Kind) -> str:
        """The system a kind is shown in: wool is weighed in grams by one who measures in inches, if she says so."""
        return self.weights if self.weights and kind is MASS else self.system
