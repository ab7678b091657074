"""A thing in hand or needed, as people describe it: "1.5 m of navy linen 140 cm wide, £9/m", "two 20 cm zips"."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from fractions import Fraction

from assistant.understand.tokens import tokens
from assistant.understand.values import MONEYS, Value
from rules.engine.text import plural
from rules.engine.units import SIGNS, system_of

from .amounts import Amount, of_measure
from .said import Token

WIDE = frozenset(("wide", "width", "across"))
EACH = frozenset(("each", "apiece"))
PARTS = frozenset((",", ";", "(", ")", "-", "and", "at", "@", "for", "in", "with", "x", "it", "is", "costing", "costs"))
ASKS = frozenset((
    "how", "what", "which", "will", "would", "can", "could", "is", "are", "do", "does", "enough", "if", "want",
    "need", "?", "make", "making"
))  # fmt: skip
ARTICLES = frozenset(("a", "an", "the", "my", "some", "more", "another"))


@dataclass(slots=True)
class Description:
    """amount: how much there is. noun: what a count counts ("ball"), or "". called: the thing's name as typed.

    width: of cloth or tape. price: for a length, or for each. paid: for all of it. contents: "50 g each".
    lost: numbers that could not be placed.
    """

    amount: Amount
    noun: str = ""
    called: str = ""
    width: Amount | None = None
    price: Amount | None = None
    paid: Amount | None = None
    contents: str = ""
    lost: list[str] = field(default_factory=list)

    @property
    def thing(self) -> str:
        return key_of(self.called)

    @property
    def words(self) -> str:
        """The amount and what it is of, in words."""
        of = f"{self.amount.text} {plural(self.noun, self.amount.value) if self.noun else ''}".strip()
        return (
            f"{of} of {self.called}"
            if self.noun or self.amount.kind != "count"
            else f"{self.amount.text} {self.called}"
        )


def key_of(called: str) -> str:
    """The name under which a thing is the same thing: its words without articles, in the singular.

    >>> key_of("The navy Linens"), key_of("20 cm zips")
    ('navy linen', '20 cm zip')
    """
    words = [word for part in called.lower().replace("-", " ").split() for word in (tokens(part) or (part,))]
    return " ".join(word for word in words if word not in ARTICLES)


def without_article(called: str) -> str:
    """A name without the article before it: "the zip" is zip."""
    first, _, rest = called.partition(" ")
    return rest if rest and first.lower() in ARTICLES else called


def describe(said: Sequence[Token], text: str, system: str) -> Description | None:
    """A description that begins with an amount; None when the words are something else. Raises NoUnit."""
    said = list(said)
    if not said or any(token.lower in ASKS for token in said if token.value is None):
        return None
    amount, at = _amount(said, system)
    if amount is None:
        return None
    made = Description(amount)
    at = _noun(said, text, at, made)
    if at < len(said) and said[at].lower in ("of", "the", "my"):
        at += 1
    at = _name(said, text, at, made)
    if not made.called:
        return None
    _details(said[at:], made, system)
    return made


def _amount(said: Sequence[Token], system: str) -> tuple[Amount | None, int]:
    first = said[0].value
    if first is None:
        return (
            (Amount("count", Fraction(1), "1", "1"), 1)
            if said[0].lower in ("a", "an", "another") and len(said) > 1
            else (None, 0)
        )
    if first.shape != "one" or first.main.per is not None or first.main.unit in MONEYS:
        return None, 0
    return of_measure(first.main, first.text, "", system), 1


def _noun(said: Sequence[Token], text: str, at: int, made: Description) -> int:
    """What a count counts: the word or two between the number and "of"."""
    if made.amount.kind == "count":
        for end in range(at + 1, min(at + 3, len(said) - 1) + 1):
            if said[end - 1].value is not None:
                break
            if said[end].lower == "of":
                made.noun = " ".join(tokens(text[said[at].start : said[end - 1].end]))
                return end
    return at


def _name(said: Sequence[Token], text: str, at: int, made: Description) -> int:
    """The name: words up to a comma or a detail; a number that is no detail belongs to it ("20 cm zips")."""
    first = at
    while at < len(said):
        token = said[at]
        after = said[at + 1].lower if at + 1 < len(said) else ""
        if token.value is None and token.lower in PARTS and not (token.lower == "-" and after):
            break
        if token.value is not None and (_is_money(token.value) or after in WIDE or after in EACH):
            break
        if token.lower in WIDE and at + 1 < len(said) and said[at + 1].value is not None:
            break
        at += 1
    if at > first:
        made.called = text[said[first].start : said[at - 1].end]
    return at


def _details(said: Sequence[Token], made: Description, system: str) -> None:
    for spot, token in enumerate(said):
        value = token.value
        if value is None:
            continue
        before = said[spot - 1].lower if spot else ""
        after = said[spot + 1].lower if spot + 1 < len(said) else ""
        if value.shape == "one" and _is_money(value):
            _money(value, before, after, made)
        elif value.shape == "one" and (after in WIDE or before in WIDE) and made.width is None:
            made.width = of_measure(value.main, value.text, "length", system or system_of(made.amount.unit))
        elif after in EACH or value.main.per is not None:
            made.contents = f"{value.text} {after}".strip()
        else:
            made.lost.append(value.text)


def _is_money(value: Value) -> bool:
    return value.main.unit in MONEYS or (value.main.unit == "pound" and value.main.per is not None)


def _money(value: Value, before: str, after: str, made: Description) -> None:
    amount = of_measure(value.main, value.text, "price a length" if value.main.per is not None else "money")
    if amount.kind == "money" and not (
        after in EACH or before in ("at", "@") or (made.amount.kind == "count" and before in (",", "("))
    ):
        made.paid = amount
    else:
        made.price = amount


def currency_of(price: Amount) -> str:
    """The currency of a price, with or without a length."""
    return price.unit.partition("/")[0]


def is_money(amount: Amount) -> bool:
    return currency_of(amount) in SIGNS
