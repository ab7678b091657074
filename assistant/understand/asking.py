"""How plainly a phrase of a line is what is asked: by the asking words before it, its place, and the numbers beside it."""

from __future__ import annotations

from rules.engine.declare import Rule, Step
from rules.engine.kinds import COUNT

from .lexicon import Match
from .tokens import FILLERS, LINKS
from .values import Line

ASK_WORDS = frozenset(
    """determine compute calculate evaluate state required what which how many much total find whats whose give
    need want list work""".split()
)
SUPPOSES = frozenset(("about", "if"))
BEFORE_ITS_NUMBER = frozenset(("is", "of", "=", ":", "are", "was", "be", "to"))
SMALL = frozenset(("are", "is", "should", "must", "do", "of", "the", "my", "those", "these"))
KNOWN = (["the"], ["those"], ["these"], ["my"])
HOW_MANY = ("how", "many")
WHAT_SIZE = (("what", "size"), ("how", "big"), ("how", "large"), ("which", "size"))
ASKING = frozenset(("how", "what", "which", "where", "whose"))
SO_MANY = (["how", "many"], ["how", "much"], ["number", "of"])
IS = frozenset(("is", "are", "was", "were", "should", "must", "will", "do", "does", "would"))
VERDICT = 1.5
ASKED_OF = 1.7
ENOUGH = frozenset(("enough", "suffice", "sufficient", "short"))
HOW_ENDS: tuple[list[str], ...] = ([], ["and"], [","], ["?"], ["."], ["!"], ["do"], ["are"], ["should"], ["must"], ["is"])
MOSTS = frozenset(("biggest", "largest", "widest", "longest", "smallest", "shortest", "narrowest", "deepest", "tallest"))
BY_MOST = 1.9
CLOSING = frozenset(("?", ".", "!", "please", "at", "to", "out"))


def asks_before(words: list[str], first: int) -> bool:
    """Whether an asking word stands before a place, in the same part of the sentence."""
    for word in reversed(words[max(0, first - 6) : first + 1]):
        if word in (".", ",", ";", "?"):
            return False
        if word in ("what", "how", "which", "where"):
            return True
    return False


def sought(line: Line, match: Match) -> bool:
    """Whether an input's words ask for it: an asking word stands just before them, or they are a phrase by themselves."""
    if _of_the_most(line, match):
        return True
    before = line.words[match.first - 1] if match.first else "."
    after = line.words[match.last] if match.last < len(line.words) else "."
    asked = asks_in(line.words, max(0, match.first - 4), match.last) and not (before == "for" and _asks_other(line, match))
    ends = all(word in CLOSING for word in line.words[match.last :]) and bool({after, line.words[match.last - 1]} & {"at", "to"})
    asked = asked or (ends and line.words[0] == "what")  # "what do my 5 in squares finish at?"
    told = after in IS and any(spot in line.at_value for spot in range(match.last + 1, match.last + 4))  # "my tension is really 18"
    if (told and not asked) or _told_in_commas(line, match):
        return False
    if before == "." and after in ("my", "the", "a", "her", "his"):
        return False  # "washed my 12 in square" tells what was done
    alone = not after[:1].isalpha() or after in LINKS or after in ("if", "when", "from")  # "body suit" asks for no body measure
    return asked or (before in (".", ",", ";", "?", ":") and alone)


def _of_the_most(line: Line, match: Match) -> bool:
    """Whether a sentence that asks opens with the most there can be of it: "Biggest table a cloth of 150 cm will suit?"."""
    most = match.first - (as_typed(line, match.first) not in MOSTS)
    if most < 0 or as_typed(line, most) not in MOSTS or (most and line.words[most - 1] not in (".", "?", ";", ":", "\n")):
        return False
    return "?" in line.words[match.last :] and ASKING.isdisjoint(line.words[match.last :])


def _told_in_commas(line: Line, match: Match) -> bool:
    """Whether what stands between commas has its verb and number behind them: "my side, waist to seat, is 25.5 cm"."""
    words, last = line.words, match.last
    while last < len(words) and words[last] not in (".", "?", ",") and last not in line.at_value:
        last += 1
    return words[last : last + 1] == [","] and words[last + 1 : last + 2] in (["is"], ["was"]) and last + 2 in line.at_value


def _asks_other(line: Line, match: Match) -> bool:
    """Whether something else stands between the asking word and "for": "what square for half-square triangles"."""
    if line.words[match.first] in ASKING:
        return False  # "enough for what waist?"
    for spot in range(match.first - 2, max(-1, match.first - 5), -1):
        if line.words[spot] in ASKING:
            return False
        if line.words[spot] not in FILLERS:
            return True
    return False


def asks_in(words: list[str], first: int, last: int) -> bool:
    """Whether an asking word stands between two places, that does not only suppose something ("what if the ...")."""
    asking = (spot for spot in range(first, last) if words[spot] in ("how", "what", "which", "whose"))
    return any(SUPPOSES.isdisjoint(words[spot + 1 : spot + 2]) for spot in asking)


def could_answer(rule: Rule, name: str, line: Line, match: Match) -> bool:
    """Whether what is named could be: "how many strips" asks for no width, "what size block" for no count."""
    first = match.first
    while first > 2 and line.words[first - 1] in SMALL and first - 1 not in line.at_value:
        first -= 1  # "what size are the squares"
    asked = tuple(line.words[max(0, first - 2) : first])
    declared = rule.step(name) or rule.input(name)
    one = asked[-1:] in (("what",), ("which",)) and not as_typed(line, match.last - 1).endswith("s")
    if one and declared is not None and declared.kind is COUNT:
        return False  # "what square" asks for no number of them
    if declared is None or asked not in (HOW_MANY, *WHAT_SIZE):
        return True
    counted = declared.kind.base in ("1", "st", "row")
    return counted or isinstance(declared, Step) if asked == HOW_MANY else not counted


def as_typed(line: Line, spot: int) -> str:
    """A word before it was folded."""
    start, end = line.origin[spot]
    return line.text[start:end].lower()


def inside(match: Match, longer: list[Match]) -> bool:
    """Whether the words are part of a longer phrase that means something else for this rule."""
    first, last = match.first, match.last
    return any(one.first <= first and last <= one.last and one.last - one.first > last - first for one in longer)


def asking(line: Line, match: Match, names_topic: bool) -> float:
    """How much a phrase is what is asked: near after an asking word, or closing the question; not beside a number."""
    words = line.words
    if _beside_value(line, match):
        return 0.0
    if _of_the_most(line, match):
        return BY_MOST
    best = 1.9 if any(word in ("how", "what", "which", "where") for word in words[match.first : match.last]) else 0.0
    if ENOUGH.issuperset(words[match.first : match.last]):
        best = VERDICT  # "is 3 balls enough for 650 m"
    for back in range(1, 7):
        spot = match.first - back
        if spot < 0 or words[spot] in (".", ";", "\n"):
            break
        if spot in line.at_value and not line.at_value[spot].soft:
            break  # "each of the two back pieces" asks past its number
        if words[spot] in ("want", "need") and spot - 1 in line.at_value:
            break  # "12 m wanted after the wash" tells, and asks nothing
        if words[spot] in ASK_WORDS and words[spot + 1] not in SUPPOSES:  # "what about the hood" names a thing, it does not ask for it
            best = max(best, 2.0 - 0.22 * back)
    after = match.last + (words[match.last : match.last + 1] in ([","], [":"]))
    opens = words[match.first - 1 : match.first] in ([","], ["."], [";"], [":"], ["?"])
    ends = words[after + 2 : after + 3] in HOW_ENDS  # "With whole panels, how full does it come out" asks for no panels
    if (opens or not names_topic) and ends and words[after : after + 1] == ["how"] and _beside_none(line, match):
        best = max(best, ASKED_OF)  # "each half how wide?"
    said = match.entry.words if match.entry is not None else words[match.first : match.last]
    cut = len(said) > match.last - match.first  # "large" in "large and small squares"
    tail = _content_after(words, match.last + 3 * cut)
    phrase = match.last - match.first > 1 or not line.values
    if names_topic and phrase and not tail and "?" in words[match.last :] and _beside_none(line, match):
        best = max(best, 0.9)  # "casing depth?", "and the change?"
    into = not tail and words[match.first - 1 : match.first] in (["in"], ["into"])
    if names_topic and not into:
        return best  # the topic's own name asks for a result only after an asking word, or last ("in stitches per inch")
    filler = FILLERS.issuperset(said)
    terse = match.first == 0 and not filler and not ASKING.intersection(words)
    if not tail or terse:  # a question ends, or a terse one begins, with what is wanted
        best = max(best, 1.1)
    elif tail == 1 and "?" in words[match.last :]:
        best = max(best, 0.9)
    if filler:
        return best  # "after the rib" asks for nothing
    return best or 0.45


def _content_after(words: list[str], first: int) -> int:
    """How many words follow that do more than close a question, counted up to two."""
    count = 0
    for spot in range(first, len(words)):
        if words[spot] not in CLOSING:
            count += 1
            if count == 2:
                break
    return count


def _beside_none(line: Line, match: Match) -> bool:
    """Whether a phrase stands in a part of the sentence with no number in it."""
    first = match.first
    while first > 0 and line.words[first - 1] not in (",", ".", ";", ":", "?", "-"):
        first -= 1
    return not any(spot in line.at_value for spot in range(first, match.last))


def counted(line: Line, match: Match) -> float:
    """How much a result is what is asked with its size before it: "how many 100 g balls", "how much 44 in cloth"."""
    before = line.at_value.get(match.first - 1)
    if before is not None and line.words[max(0, before.first - 2) : before.first] in SO_MANY:
        return 1.8
    return 0.0


def _beside_value(line: Line, match: Match) -> bool:
    """Whether a number stands right beside the phrase, so that the phrase names the number."""
    if any(spot in line.at_value and not line.at_value[spot].soft for spot in range(match.first, match.last)):
        return True
    beside = line.at_value.get(match.last)
    if line.words[match.first] in ("which", "where") and beside is not None and beside.soft:
        return False  # "where does the middle one go?"
    if line.words[match.first] in ("how", "what") or ENOUGH.issuperset(line.words[match.first : match.last]):
        return False  # "how far round", "enough" name no number that stands before them
    before = match.first - 1
    if before in line.at_value and line.at_value[before].soft and line.words[before - 1 : before] in KNOWN:
        before -= 1  # "each of the two back pieces"
    if before in line.at_value or (before > 0 and line.words[before] == "of" and before - 1 in line.at_value):
        return True
    after = match.last
    if after in line.at_value:
        return True
    while after < len(line.words) and line.words[after] in LINKS and after not in line.at_value:
        after += 1
        if after - match.last > 3:
            return False
    return after in line.at_value and after > match.last and line.words[after - 1] in BEFORE_ITS_NUMBER
