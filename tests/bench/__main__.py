"""Ratios measured in one run, by hand: `python -m tests.bench`. Nothing here passes or fails."""

from __future__ import annotations

import os
import subprocess
import sys
import time
from collections.abc import Callable
from fractions import Fraction
from statistics import median

from assistant.conversation import Conversation
from assistant.understand.mind import Mind, vocabulary
from grammar import Reader, build
from rules.engine.units import registry
from tests.hostile.lines import LINES as LINES_OF_TROUBLE
from tests.support import mind

QUESTION = "how many 2 1/2 in binding strips for a 60 x 72 in quilt"
RUNS = 15
LINES = 5000
FIRST = 250  # so many of them are all different


def command(*words: str) -> float:
    """The middle time of a command over some runs, in seconds."""
    outside = {key: value for key, value in os.environ.items() if key != "PYTHONDONTWRITEBYTECODE"}
    times = []
    for _ in range(RUNS + 1):
        begun = time.perf_counter()
        subprocess.run([sys.executable, *words], capture_output=True, check=True, env=outside)
        times.append(time.perf_counter() - begun)
    return median(times[1:])


def each(work: Callable[[], object], times: int) -> float:
    """The time of one call, in seconds."""
    begun = time.perf_counter()
    for _ in range(times):
        work()
    return (time.perf_counter() - begun) / times


def questions() -> list[str]:
    """The declared examples of every rule that is a formula, over and over; those that search (lays, plans) are left out."""
    asked = [example.partition(" -> ")[0] for rule in mind().rules.values() if rule.algorithm is None for example in rule.examples]
    return [asked[index % len(asked)] for index in range(LINES)]


def main() -> None:
    answer = command("-m", "assistant", QUESTION)
    nothing, libraries = command("-c", "pass"), command("-c", "import lark, pint")
    print(f"one answer against python -c pass:                {answer / nothing:7.2f}")
    print(f'one answer against python -c "import lark, pint": {answer / libraries:7.2f}   (at most 1.35)')
    units = registry()
    conversion = each(lambda: units.Quantity(Fraction(5, 2), "in").to("cm"), 20000)
    conversation = Conversation(mind())
    lines = questions()
    begun = time.perf_counter()
    for line in lines[:FIRST]:
        conversation.forget()
        conversation.ask(line)
    first = (time.perf_counter() - begun) / FIRST
    begun = time.perf_counter()
    for line in lines:
        conversation.forget()
        conversation.ask(line)
    one = (time.perf_counter() - begun) / len(lines)
    print(f"a piped question against one pint conversion:     {one / conversion:7.1f}   (at most 40)")
    print(f"  where its words, and its rule, are met at first:{first / conversion:7.1f}")
    slowest = max(LINES_OF_TROUBLE, key=lambda name: each(lambda: conversation.ask(LINES_OF_TROUBLE[name]), 1))
    worst = each(lambda: conversation.ask(LINES_OF_TROUBLE[slowest]), 1)
    print(f"the slowest hostile line ({slowest}):  {worst:.2f} s   (at most 2)")
    data = build(vocabulary())
    built, loaded = each(lambda: build(vocabulary()), 3), each(lambda: Reader.loaded(vocabulary(), data).read("28 in"), 50)
    print(f"building the grammar against loading it:          {built / loaded:7.1f}")
    saved = mind().to_bytes()
    print(f"waking from saved tables against pint conversion: {each(lambda: Mind.awake(saved), 20) / conversion:7.0f}")


if __name__ == "__main__":
    main()
