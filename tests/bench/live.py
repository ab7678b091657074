"""How long the line under the prompt takes at each key, by hand: `python -m tests.bench.live`."""

from __future__ import annotations

import time
from fractions import Fraction
from statistics import quantiles

from assistant.conversation import Conversation
from rules.engine.units import registry
from tests.support import mind

QUESTIONS = 40
CONVERSIONS = 20_000
MEASURED = (50, 95)  # percentiles


def questions() -> list[str]:
    """One example of each of so many topics, spread over all of them."""
    asked = [rule.examples[0].partition(" -> ")[0] for rule in mind().rules.values() if rule.examples]
    return [asked[place * len(asked) // QUESTIONS] for place in range(QUESTIONS)]


def one_conversion() -> float:
    """The seconds one pint conversion takes."""
    units = registry()
    begun = time.perf_counter()
    for _ in range(CONVERSIONS):
        units.Quantity(Fraction(5, 2), "in").to("cm")
    return (time.perf_counter() - begun) / CONVERSIONS


def keystrokes(asked: list[str]) -> list[float]:
    """The seconds of the reading after each key, each question typed from its first sign to its last."""
    talk = Conversation(mind())
    times = []
    for question in asked:
        for length in range(1, len(question) + 1):
            begun = time.perf_counter()
            talk.reading(question[:length])
            times.append(time.perf_counter() - begun)
    return times


def main() -> None:
    asked = questions()
    keystrokes(asked[:5])  # what is loaded at the first key is no part of the others
    conversion, times = one_conversion(), keystrokes(asked)
    cuts = quantiles(times, n=100)
    print(f"{len(times)} keystrokes, {len(asked)} questions, against one pint conversion of {conversion * 1e6:.0f} µs")
    for percent in MEASURED:
        at = cuts[percent - 1]
        print(f"{percent}th percentile: {at / conversion:7.1f} conversions, {at * 1e3:6.2f} ms")
    print(f"slowest:         {max(times) / conversion:7.1f} conversions, {max(times) * 1e3:6.2f} ms")


if __name__ == "__main__":
    main()
