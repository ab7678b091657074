"""What the words beside a number say of it: which place they speak for, and how strongly."""

from __future__ import annotations

from collections.abc import Mapping, Sequence

from rules.engine.buying import IN_HAND
from rules.engine.declare import Rule
from rules.engine.kinds import LENGTH

from .slots import Mention, Slot, nouns_of
from .tokens import FILLERS, LEADING
from .values import Line, Value

# How near its words must stand for a number to be taken by an input that is only taken when spoken of.
BESIDE = 0.9
# How much less the words past "of 140 cm" say of the length before it.
PAST_ITS_WIDTH = 0.8
SECOND_VOICE = 0.2  # two words that speak for a place say a little more than one
OF_ANOTHER = 1.2
SOON = 3
OF_THE_SUBJECT = frozenset(("in", "of", "for", "from", "with"))
AFTER_STOP = 1.5  # a word after a comma seldom speaks for the number before it
# These follow the number they speak of, even with another number straight after them: "1 in wide 50 cm long".
# "Waist is 66 hip is 90": the verb belongs to the word before it, and to the number after.
TELLS = frozenset(("is", "are", "was", "were", "measure", "=", ":"))
SAYS_NO_MORE = frozenset(("i", "she", "he", "we", "they", "you", "measure"))  # "I measure 72 waist" names it by what follows
AFTER_ITS_NUMBER = frozenset(("wide", "long", "high", "tall", "deep", "thick", "w", "h", "d", "l"))
STOPS = frozenset((".", ",", ";", ":", "?", "!", "and", "but", "whose", "which", "where", "if", "\n"))
ARTICLES = frozenset(("the", "my", "a", "our", "each", "her", "his"))
# How many stitches or rows a tension is told in, to 10 cm or 4 in.
TENSIONS = (8, 60)
JOINTS = frozenset(("and", ",", "&", "x", "/", "by"))
OF_ONE_BODY = frozenset(("hips", "shoulders"))  # plural, and yet measured once
BOUGHT_BY = ("yd", "m")
# What stands between a length of cloth and its width: "3 m of 140 cm", "2 yd at 45 in".
OF_A_WIDTH = (["of"], ["in"], ["on"], ["at"])
# A number is not named by the question that follows it ("£7.50/m how much can I get").
ASKING = frozenset(("how", "what", "which", "whats"))


def affinity_of(line: Line, value: Value, mentions: Sequence[Mention], spoken: bool = False) -> tuple[float, int]:
    """How strongly the words beside a value speak for a slot, and the mention that does; mentions: those of the slot.

    spoken: words farther on are heard too, past the width of a length of cloth ("1 m of 140 cm fabric enough").
    """
    best, second, who = 0.0, 0.0, -1
    after = _past_its_width(line, value) if spoken else 0
    subject, predicate = subject_of(line, value), predicate_of(line, value)
    for mention in mentions:
        if value.first < mention.first and mention.last < value.last:
            near = 2.8  # between the members of a choice ("in 44 in cloth or in 60 in cloth")
        elif mention.first <= value.first < mention.last:
            near = 2.5  # the number stands inside the phrase ("2 at each end")
        elif mention.first >= value.last:
            if mention.leads or line.words[mention.first] in ASKING:
                continue
            told = mention.first in predicate  # "8 1/4 in is what I cut the large square"
            near = 2.7 if told else 3.0 - line.crossing(value.last, mention.first) * 1.1
            if line.stops(value.last, mention.first) or not ASKING.isdisjoint(line.words[value.last : mention.first]):
                near -= AFTER_STOP  # nor does a word of the question that follows it
            if after and mention.first >= after:
                near = max(near, 3.0 - PAST_ITS_WIDTH - line.crossing(after, mention.first) * 1.1)
        elif line.words[mention.first] == "of" and mention.last == value.first and line.words[mention.last - 1] not in LEADING:
            continue  # "5 straps of webbing 38 in each": what is of something stands before it
        elif mention.first == subject:
            near = 2.7  # "the large square in my geese is 8 1/4 in": a verb joins it to what opens the sentence
        else:
            near = 2.8 - line.crossing(mention.last, value.first)
            if 0 <= subject < mention.first and not OF_THE_SUBJECT.isdisjoint(line.words[subject : mention.first]):
                near -= OF_ANOTHER  # "... in my geese is 8 1/4 in" tells nothing of the geese
        if mention.stated and mention.last <= value.first and "please" in line.words[mention.last : value.first]:
            near -= AFTER_STOP  # "ease please: bust 94" asks
        near *= 0.55 + 0.45 * min(1.5, mention.weight)
        if near > best:
            best, second, who = near, best, mention.number
        else:
            second = max(second, near)
    return best + SECOND_VOICE * second, who


def subject_of(line: Line, value: Value) -> int:
    """Where the subject begins of which a verb tells a value straight after it; -1 for none."""
    words, verb = line.words, value.first - 1
    if verb < 1 or words[verb] not in TELLS or verb in line.at_value:
        return -1
    start = verb
    while start > 0 and words[start - 1] not in STOPS and start - 1 not in line.at_value:
        start -= 1
    while start < verb and words[start] in ARTICLES:
        start += 1
    return start


def predicate_of(line: Line, value: Value) -> range:
    """The words that a verb right behind a value, or behind its width, tells of it: "58 in across is the finished top"."""
    words, verb = line.words, _past_its_width(line, value) or value.last
    verb += words[verb : verb + 1] != [] and (words[verb] in AFTER_ITS_NUMBER or words[verb] == "across")
    if words[verb : verb + 1] == [] or words[verb] not in TELLS or words[verb] in ("=", ":") or verb + 1 in line.at_value:
        return range(0)
    end = verb + 1
    while end < len(words) and words[end] not in STOPS and end not in line.at_value:
        end += 1
    return range(verb + 1, end)


def _past_its_width(line: Line, value: Value) -> int:
    """The place after "of 140 cm" behind a length, from where words still speak of it ("1 m of 140 cm enough"); 0 for none."""
    if line.words[value.last : value.last + 1] in OF_A_WIDTH and value.last + 1 in line.at_value:
        return line.at_value[value.last + 1].last
    return 0


def names_it(line: Line, mention: Mention) -> bool:
    """Whether a role word that stands straight after a value is not the next one's."""
    if mention.leads:
        return False
    after = mention.last
    after += after < len(line.words) and line.words[after] in TELLS and after not in line.at_value
    if after in line.at_value and line.words[mention.first] not in AFTER_ITS_NUMBER:
        return False
    return line.words[mention.first] not in ASKING


def leads_to(line: Line, value: Value, mentions: Sequence[Mention]) -> bool:
    """Whether a phrase of several words leads straight to a number ("meant for someone 168 cm tall", "up to a 15 in block")."""
    followed = not AFTER_ITS_NUMBER.isdisjoint(line.words[value.last : value.last + 1])  # "inverted pleat 6.5 cm deep"
    start = value.first - (line.words[value.first - 1] in ("a", "an") if value.first else 0)
    return any(
        mention.last in (start, value.first) and not mention.stated
        and not SAYS_NO_MORE.issuperset(line.words[mention.first : mention.last])
        and not (followed and LEADING.isdisjoint(line.words[mention.first : mention.last]))
        for mention in mentions
        if mention.last - mention.first > 1
    )  # fmt: skip


def is_subject(line: Line, value: Value, mentions: Sequence[Mention]) -> bool:
    """Whether a phrase is what a number is told of: "the panel is 7 in wide", "panel 7 in wide"."""
    start = subject_of(line, value)
    return any(
        (mention.first == start or mention.last == value.first) and not mention.stated and line.words[mention.last - 1] not in FILLERS
        for mention in mentions
    )


def counts_things(line: Line, value: Value) -> bool:
    """Whether a bare whole number stands before a word in the plural, alone or beside numbers that have their units."""
    after = line.words[value.last : value.last + 1]
    if value.shape != "one" or not value.main.bare or value.main.value.denominator != 1 or not after:
        return False
    start, end = line.origin[value.last]
    word = line.text[start:end].lower()
    plural = word.isalpha() and word.endswith("s") and not word.endswith("ss") and word not in OF_ONE_BODY
    plural = plural and FILLERS.isdisjoint((word, after[0]))
    return plural and (len(line.values) == 1 or any(not other.main.bare for other in line.values))


def counts_its_noun(rule: Rule, line: Line, value: Value) -> bool:
    """Whether a bare whole number counts what follows it: "7 strips" is a number of strips, never their width."""
    if value.shape != "one" or not value.main.bare or value.main.value.denominator != 1 or value.last >= len(line.words):
        return False
    spot = value.last
    nouns = nouns_of(rule)
    if spot in line.at_value and not line.at_value[spot].main.bare:
        spot = line.at_value[spot].last  # "seven two-row buttonholes" are seven, "two 40 cm envelope cushions" two
        soon = range(spot, min(len(line.words), spot + SOON))
        spot = next((near for near in soon if line.words[near] in nouns and near not in line.at_value), spot)
    return spot < len(line.words) and line.words[spot] in nouns


def names_a_length(line: Line, value: Value, by_slot: Mapping[str, list[Mention]], by_name: Mapping[str, Slot]) -> bool:
    """Whether what follows a number is said of one thing, and names a length: "a 64 repeat" is no number of repeats."""
    start, end = line.origin[value.last]
    if value.main.value == 1 or line.text[start:end].lower().endswith("s"):
        return False
    return any(
        mention.first == value.last and not mention.stated
        for name, mentions in by_slot.items() if name in by_name and by_name[name].kind is LENGTH
        for mention in mentions
    )  # fmt: skip


def tells_tension(line: Line, value: Value) -> bool:
    """Whether stitches and rows are told side by side, as a tension is: "22 sts and 28 rows"."""
    other = {"st": "row", "row": "st"}.get(value.main.unit)
    if other is None or value.main.per is not None or not TENSIONS[0] <= value.main.value <= TENSIONS[1]:
        return False
    near = [one for one in line.values if abs(one.number - value.number) == 1 and one.main.unit == other and one.main.per is None]
    return any(
        TENSIONS[0] <= one.main.value <= TENSIONS[1]
        and JOINTS.issuperset(line.words[min(one.last, value.last) : max(one.first, value.first)])
        for one in near
    )


def made_from(line: Line, value: Value, slot: Slot) -> bool:
    """Whether a length is what something is made from: "from 2 yd of 44 in", "out of 3 m of 140 cm", "will 2 m do"."""
    if slot.name != IN_HAND.name:
        return False
    past = _past_its_width(line, value)
    after = line.words[past or value.last : (past or value.last) + 5]
    if line.words[value.first - 1 : value.first] in (["will"], ["would"]) and "do" in after and "#" not in after[: after.index("do")]:
        return True
    bought = past or (value.main.unit in BOUGHT_BY and line.words[value.last : value.last + 1] == ["of"])
    if not bought:
        return False
    return line.words[value.first - 1 : value.first] == ["from"] or line.words[max(0, value.first - 2) : value.first] == ["out", "of"]
