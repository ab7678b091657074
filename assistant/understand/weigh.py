"""How plainly a reading is meant, and which of several: what an answer may rest on, and when it must be asked back."""

from __future__ import annotations

from rules.engine.answer import Answer, Result
from rules.engine.kinds import ANY
from rules.engine.units import CURRENCIES, system_of

from .beside import ASKING
from .fitting import in_sense
from .lexicon import Match
from .reading import Reading
from .score import PLAIN_KINDS, takes_list
from .tokens import FILLERS
from .values import KINDS_OF_UNIT, Value

# Few rules take stitches, rates or weights: a number of such a kind tells much about the rule meant.
TELLING_UNIT = 0.3
# A line that names no topic this plainly is answered only when its other words fit a rule very well.
NAMED = 0.2
CLOSE = 0.8
UNNAMED_SCORE = 3.0
UNNAMED_COVERAGE = 0.66
BARE_COVERAGE = 0.75
LOUD_ENOUGH, FAINT_COVERAGE = 0.3, 0.4  # a word that many rules know names none of them where little else is heard
UNASKED_EVIDENCE = 1.2
UNNAMED_EVIDENCE = 0.8
# A reading this plain is not weighed against those that the words speak for so much less.
PLAINLY_MEANT, PLAINLY_HEARD, QUIETER = 0.5, 0.75, 0.75
PLAINLY_NAMED = 1.0
LESS_HEARD = 0.2  # a reading that explains so much less of the line is no rival
MUCH_MORE_HEARD = 0.3
LESS_HEARD_OF_THE_NAMED = 0.3
HALF_AS_WELL = 0.6
CLOSE_OF_A_NAME = 1.0


def coverage(reading: Reading) -> float:
    """The share of the question's content words that mean something to the reading's rule."""
    line = reading.line
    content = [
        spot for spot, word in enumerate(line.words) if spot not in line.at_value and word not in FILLERS and word[:1].isalpha()
    ]
    return sum(spot in reading.heard for spot in content) / len(content) if content else 0.0


def evidence(reading: Reading, matches: list[Match]) -> float:
    """How telling the words are that the reading's rule heard: the rarer they are among the rules, the more."""
    loud: dict[int, float] = {}
    for match in matches:
        if match.of(reading.rule.topic):
            for spot in range(match.first, match.last):
                if reading.line.words[spot] not in FILLERS:
                    loud[spot] = max(loud.get(spot, 0.0), match.weight / (match.last - match.first))
    units = sum(
        TELLING_UNIT for slots in reading.placing.spots.values() for slot in slots if slot.kind not in (*PLAIN_KINDS, ANY)
    )
    return sum(loud.values()) + units


def unheard(reading: Reading) -> tuple[str, ...]:
    """Content words that changed nothing and are not shown again as the name of a thing in a list."""
    line = reading.line
    lists = (given.value for given in reading.listed.values() if isinstance(given.value, tuple))
    shown = {word for items in lists for item in items for word in getattr(item, "label", "").split()}
    words = []
    for spot, word in enumerate(line.words):
        if spot in line.at_value or spot in reading.heard or word in FILLERS or not word[:1].isalpha() or len(word) < 3:
            continue
        start, end = line.origin[spot]
        words.append(line.text[start:end])
    return tuple(word for word in dict.fromkeys(words) if word not in shown)


def best(readings: list[Reading], matches: list[Match]) -> Reading | None:
    """The best of the readings (which come best first) that speaks plainly enough of its rule.

    One that loses a number gives way to a list (the lines of a bill) that takes them all.
    """
    plain = [one for one in readings if plain_enough(one, matches)]
    if plain and plain[0].lost:
        return next((one for one in plain if not one.lost and takes_list(one)), plain[0])
    if plain and plain[0].topic_score < NAMED:
        return next((one for one in plain if named_nearly(one, plain[0])), plain[0])
    return plain[0] if plain else None


def fuller(best: Reading, rivals: list[Reading]) -> tuple[Reading, list[Reading]]:
    """The best reading, or the rival to which its rule defers; and the rivals that do not defer to it."""
    best = next((one for one in rivals if one.rule.topic in best.rule.defers), best)
    return best, [one for one in rivals if one is not best and best.rule.topic not in one.rule.defers]


def misplaces(reading: Reading, system: str) -> bool:
    """Whether a number went to a place where it makes no sense: the reading, rather than the number, is likely wrong then."""
    placed = [(value, slots) for value in reading.line.values if (slots := reading.placing.spots.get(value.number))]
    return any(
        not in_sense(measure, slot, system)
        for value, slots in placed
        for measure, slot in ((value.main, slots[0]),) if slot.kind is not ANY and (len(slots) == 1 or value.shape == "size")
    )  # fmt: skip


def better_heard(best: Reading, rivals: list[Reading]) -> tuple[Reading, list[Reading]]:
    """The best reading and its rivals; one named by the same words leads where it hears much more of the line."""
    same = [one for one in rivals if one.topic_score == best.topic_score and coverage(one) >= coverage(best) + MUCH_MORE_HEARD]
    lead = max(same, key=coverage, default=best)
    return lead, [one for one in (best, *rivals) if one is not lead and (lead is best or one is not best)]


def as_well_heard(reading: Reading, best: Reading) -> bool:
    """Whether a reading explains about as much of the line as the best one."""
    heard, most = coverage(reading), coverage(best)
    return heard >= most - LESS_HEARD and heard > HALF_AS_WELL * most - 1e-9


def margin(best: Reading, other: Reading) -> float:
    """How near a rival is: one named by the very same word, and heard in all the same words, is a rival from farther off."""
    same = other.topic_score == best.topic_score < PLAINLY_NAMED and not (best.chosen or other.chosen)
    return CLOSE_OF_A_NAME if same and telling_words(best) == telling_words(other) else CLOSE


def idle(reading: Reading, made: Answer) -> list[Value]:
    """The numbers of a line that were placed and then changed nothing."""
    idle = []
    for value in reading.line.values:
        labels = tuple(getattr(slot.declared, "label", "") or slot.name for slot in reading.placing.spots.get(value.number, ()))
        if labels and any(text.startswith(labels) for text in made.not_used):
            idle.append(value)
    return idle


def telling_words(reading: Reading) -> set[int]:
    """Where the words stand that a reading heard, small ones left out."""
    return {spot for spot in reading.heard if reading.line.words[spot] not in FILLERS}


def named_nearly(reading: Reading, best: Reading) -> bool:
    """Whether a reading names its topic, and fits nearly as well as one that does not."""
    near = reading.score > best.score - CLOSE and coverage(reading) >= coverage(best) - LESS_HEARD_OF_THE_NAMED
    return near and reading.topic_score >= NAMED and not reading.lost


def talks_of_something_else(reading: Reading) -> bool:
    """Whether a line without a number, that asks for no result, says mostly what the rule does not know."""
    if reading.line.values or reading.asked or reading.chosen or reading.listed:
        return False
    unknown = len(unheard(reading))
    return unknown > max(2, len(reading.heard))


def answers_in(unit: str, result: Result) -> bool:
    """Whether a result could be put into the unit that a line asks for: litres are no answer in cm, nor strips in yards."""
    kinds = KINDS_OF_UNIT.get(unit, ())
    if not kinds or result.unit in ("text", "1", *CURRENCIES) or "/" in result.unit:
        return True  # a rate, a plain number or a sum of money may well be asked for beside a unit
    return not set(kinds).isdisjoint(KINDS_OF_UNIT.get(result.unit, ()))


def same_kind(one: Result, other: Result) -> bool:
    """Whether two results are in the same unit, or both count things ("12 lengths", "12 pieces")."""
    return one.unit == other.unit or (_is_count(one) and _is_count(other))


def _is_count(result: Result) -> bool:
    number, _, noun = result.text.partition(" ")
    return number.isdigit() and not system_of(result.unit) and noun.rstrip("s") == result.unit.rstrip("s")


def alike(one: object, other: object) -> bool:
    """Whether two exact results are the same but for a hair."""
    if isinstance(one, int | float) and isinstance(other, int | float):
        return abs(one - other) <= 1e-6 * max(1.0, abs(one))
    return one == other


def plain(reading: Reading) -> bool:
    """Whether a reading names its topic, finds a place for every number, and is heard in most of the line."""
    return reading.topic_score >= PLAINLY_MEANT and not reading.placing.unplaced and coverage(reading) >= PLAINLY_HEARD


def plain_enough(reading: Reading, matches: list[Match]) -> bool:
    """Whether a reading may be answered: its topic is named, or all its other words fit the rule very well."""
    if not reading.line.values and not any(word in ASKING or word == "?" for word in reading.line.words):
        return coverage(reading) >= BARE_COVERAGE  # a line that gives and asks nothing is at most the name of a topic
    if reading.topic_score >= NAMED:
        return reading.topic_score >= LOUD_ENOUGH or bool(reading.asked) or coverage(reading) >= FAINT_COVERAGE
    if reading.lost or reading.score < UNNAMED_SCORE or coverage(reading) < UNNAMED_COVERAGE:
        return False
    spoken, placed, telling = reading.placing.spoken, len(reading.placing.spots), evidence(reading, matches)
    if not reading.asked:  # nothing in particular is asked for: every number must be spoken for
        return spoken == placed and telling >= UNASKED_EVIDENCE
    by_kind = sum(1 for slots in reading.placing.spots.values() if slots[0].kind not in PLAIN_KINDS)
    return spoken + by_kind >= placed and telling >= UNNAMED_EVIDENCE
