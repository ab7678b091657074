"""The likely readings of a line: of the rules that its words speak of, and of those that the kinds of its numbers tell."""

from __future__ import annotations

from .asked import could_be_unknown
from .choose import candidates, names_itself, read_as, reads_list
from .lexicon import Match
from .mind import Mind
from .place import one_of_another
from .readers import PLAIN
from .reading import Reading
from .unit_asked import rate_asked, unit_asked
from .values import Line, kinds_of
from .weigh import QUIETER, plain

SHORTEST_LIST = 3  # numbers in a line that may be a list of things


def readings(mind: Mind, line: Line, matches: list[Match], system: str, every: bool = False) -> list[Reading]:
    """Every likely reading of a line on its own, the best first. system: of its measures, "" when none is known.

    every: those are read too that are far less spoken of than one that is plainly meant.
    """
    found: list[Reading] = []

    def read(topic: str) -> None:
        rule = mind.rules[topic]
        found.append(read_as(rule, line, matches, system or rule.home))

    loud = candidates(matches)
    settled, loudest = False, loud[0][1] if loud else 0.0
    for topic, strength in loud:
        if settled and strength < QUIETER * loudest:
            break  # the loudest is plainly meant, and what follows is far less spoken of
        read(topic)
        settled = settled or (not every and len(found) == 1 and plain(found[0]))
    named = {topic for topic, _ in loud}
    for topic in dict.fromkeys((*_lone(mind, line), *(() if settled else _told_by_kind(mind, line, matches)))):
        if topic not in named:
            read(topic)
    found.sort(key=lambda reading: (-reading.score, reading.rule.topic))
    return _called(mind, line, matches, found)


def untold(reading: Reading, matches: list[Match], system: str) -> Reading | None:
    """The same rule's reading with every number put in; None when none was taken for a result that was told, or one is asked for."""
    told = any(slot.stated for slots in reading.placing.spots.values() for slot in slots)
    if not told or any(could_be_unknown(reading.rule, name) for name in reading.asked[:1]):
        return None
    again = read_as(reading.rule, reading.line, matches, system or reading.rule.home, told=False)
    return None if again.lost else again


def _lone(mind: Mind, line: Line) -> tuple[str, ...]:
    """The topics that need no more than one measure and the unit to put it into, where a line says just that."""
    return mind.lone() if len(line.values) == 1 and (unit_asked(line) or rate_asked(line)) else ()


def _told_by_kind(mind: Mind, line: Line, matches: list[Match]) -> list[str]:
    """The topics that a line speaks of by the kinds of its numbers, whatever its words."""
    topics: list[str] = []
    if line.sum is not None:
        topics += mind.takers("sum")
    if len(line.values) > 2 and one_of_another(line, line.values):
        topics += mind.paired()
    if len(line.values) > 1:
        kinds = frozenset(kind for value in line.values for kind in kinds_of(value.main)[:2] if value.main.unit)
        topics += mind.telling(kinds)
    if len(line.values) >= SHORTEST_LIST:
        lists = [topic for kind in sorted(PLAIN) for topic in mind.takers(kind)]
        topics += [topic for topic in lists if reads_list(mind.rules[topic], line, matches)]
    return topics


def _called(mind: Mind, line: Line, matches: list[Match], found: list[Reading]) -> list[Reading]:
    """The readings; only those of what is called for by name ("plan a tote"), when it is."""
    calls = mind.lexicon.calls(line.words)
    named = [one for one in found if one.rule.topic in calls and names_itself(one.rule, matches)] if calls else []
    return named or found
