"""Money paid, added up; each currency by itself, since no rate of exchange is kept."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction

from ..engine.answer import Line
from ..engine.text import amount


@dataclass(frozen=True, slots=True)
class Spent:
    """A total in one currency, with its working."""

    currency: str
    total: Fraction
    line: Line

    @property
    def text(self) -> str:
        return amount(self.total, self.currency)


def totals(payments: Iterable[tuple[str, Fraction]]) -> tuple[Spent, ...]:
    """The total of payments, (currency, amount), for each currency in the order they were first met.

    >>> [spent.text for spent in totals([("GBP", Fraction("4.20")), ("GBP", Fraction(18))])]
    ['£22.20']
    """
    by_currency: dict[str, list[Fraction]] = {}
    for currency, paid in payments:
        by_currency.setdefault(currency, []).append(paid)
    return tuple(_spent(currency, paid) for currency, paid in by_currency.items())


def _spent(currency: str, paid: list[Fraction]) -> Spent:
    total = sum(paid, Fraction(0))
    numbers = " + ".join(amount(one, currency) for one in paid)
    return Spent(
        currency, total, Line("Add what was paid", "cost = all that was paid", numbers, amount(total, currency))
    )
