"""A line that goes on from the one before: why, another unit, one thing changed, an answer to what was asked."""

from __future__ import annotations

import math
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from grammar.query import Measure, Part
from rules.engine import formula
from rules.engine.answer import Answer
from rules.engine.buying import DISCOUNT, WIDTHS_OF_CLOTH
from rules.engine.declare import Rule, Step
from rules.engine.kinds import COUNT, LENGTH, MONEY, PRICE
from rules.engine.request import Request
from rules.engine.units import CURRENCIES, factor, system_of
from rules.engine.work import answer as work

from . import onward, relative, why
from .beside import BOUGHT_BY
from .build import NeedsUnit, build
from .carry import assumed, carry
from .choose import denied_in, read_as
from .lexicon import Match
from .options import of_them
from .pull import near, of_cloth, pulls, replaces, spoken_for, told
from .reading import Reading
from .say import needs_unit
from .score import PLAIN_KINDS
from .tokens import FILLERS
from .unit_asked import unit_asked
from .values import LENGTHS, Line, kinds_of
from .weigh import PLAINLY_MEANT, answers_in, coverage
from .weigh import best as best_of

if TYPE_CHECKING:
    from assistant.conversation import Conversation, Heard

Followed = tuple[Request | None, Answer] | None

WHY = (("why",), ("how", "come"), ("explain",), ("show", "the", "work"), ("how", "so"), ("show", "me", "the", "work"))
GOES_ON = frozenset(
    ("no", "sorry", "actually", "oops",
     "it", "its", "and", "but", "then", "now", "with", "without", "instead", "or", "only", "make", "try", "change", "use", "put")
)
GOES_ON_PAIRS = frozenset(
    (("what", "if"), ("what", "about"), ("how", "about"), ("make", "it"), ("make", "that"), ("same", "for"), ("the", "same"))
)
ANEW = frozenset(
    (one, thing)
    for one in ("different", "another", "new", "other", "separate", "unrelated")
    for thing in ("thing", "question", "subject", "topic")
)
# A topic named at least this plainly may start a new question.
NAMED = 0.35
# The share of a line's words that a plan must know for the line to be a change to it.
PRICES = ("each", "price", "ticket")  # what one costs; other sums of money are what is to be spent
OF_THE_PLAN = 0.5


def follow(talk: Conversation, heard: Heard) -> Followed:
    """The line as a continuation, or None when it stands alone."""
    context = talk.context
    if context.choices and ((chosen := _choose(talk, heard)) is not None or context.request is None):
        return chosen
    request = context.request
    assert request is not None
    if context.answer is not None and _asks_why(heard):
        return None, why.whole(context.answer)
    if context.answer is not None and (part := why.of_part(context.answer, heard.line)) is not None:
        return None, part
    discounts = talk.mind.rules[request.topic].input(DISCOUNT.name) is not None
    if context.answer is not None and (sum_of_it := onward.as_sum(heard.line.text, context.answer, discounts)):
        return talk.onward(sum_of_it)
    if (line := relative.with_axes(heard.line, talk.mind.rules[request.topic])) is not None:
        heard = replace(heard, line=line, matches=talk.mind.lexicon.match(line.words, request.topic))
    line = _in_the_same_percent(_at_the_same_rate(heard.line, request), talk.mind.rules[request.topic], request, heard.matches)
    heard = replace(heard, line=line)
    if not heard.line.values and (changed := _other_unit(talk, heard, context.reckoned or request)) is not None:
        if context.reckoned is None:
            return changed
        talk.context = replace(context, answer=changed[1], reckoned=changed[0])  # what the sum was reckoned from stays
        return None, changed[1]
    return _change(talk, heard, request)


def _at_the_same_rate(line: Line, request: Request) -> Line:
    """The line with a lone sum of money as a price by the length the last price was by: "and £15?" after £10 a metre."""
    below = next((one.unit.partition("/")[2] for one in request.given.values() if "/" in one.unit and one.unit[:1].isupper()), "")
    values = line.values
    if len(values) != 1 or values[0].main.per is not None or kinds_of(values[0].main)[:1] != ("money",) or below not in LENGTHS:
        return line
    if not _nearer_a_price(request, float(values[0].main.value)):
        return line  # a sum of money was given too: it may be that
    return _with(line, replace(values[0].main, per=Part(Fraction(1), below)))


def _nearer_a_price(request: Request, money: float) -> bool:
    """Whether a sum of money is nearer the price told before than any sum told before."""
    given = [one for one in request.given.values() if isinstance(one.value, Fraction) and one.value > 0]
    prices = [float(one.value / factor(one.unit)) for one in given if "/" in one.unit and one.unit[:1].isupper()]
    sums = [float(one.value) for one in given if one.unit in CURRENCIES]

    def apart(other: float) -> float:
        return max(money / other, other / money) if money > 0 else 0.0

    return not sums or min(map(apart, prices), default=math.inf) < min(map(apart, sums))


def _in_the_same_percent(line: Line, rule: Rule, request: Request, matches: list[Match]) -> Line:
    """The line with its one bare number as a percentage where only a percentage before was about as large: 180 after 150 %."""
    if len(line.values) != 1 or not line.values[0].main.bare or line.values[0].soft:
        return line
    alike, beside = near(rule, request, line), spoken_for(rule, line, matches)
    if len(alike) != 1 or told(request)[alike[0]].unit != "%" or (beside and alike[0] not in beside):
        return line
    value = line.values[0]
    return _with(line, replace(value.main, parts=(Part(value.main.parts[0].value, "%"),)))


def _with(line: Line, measure: Measure) -> Line:
    """The line with another measure in the place of its only one."""
    value = replace(line.values[0], members=(measure,))
    return replace(line, values=[value], at_value=dict.fromkeys(range(value.first, value.last), value))


def _asks_why(heard: Heard) -> bool:
    words = tuple(word for word in heard.line.words if word not in ("?", "!", ".", "please", "is", "that", ","))
    return words in WHY


def _other_unit(talk: Conversation, heard: Heard, request: Request) -> Followed:
    unit = unit_asked(heard.line)
    content = [word for word in heard.line.words if word not in FILLERS and word[:1].isalpha()]
    if not unit or len(content) > 2:
        return None
    if talk.context.reckoned is not None and unit in ("metric", "inches"):
        unit = _partner(talk.context.answer, unit)
    if unit in ("metric", "inches"):
        changed = replace(request, system="cm" if unit == "metric" else "in", unit="")
    else:
        answer = talk.context.answer
        if answer is not None and answer.topic == request.topic and not any(answers_in(unit, one) for one in answer.results):
            return None  # "how many litres will that hold?" after a width asks for something else
        asked = _in_unit(talk.mind.rules[request.topic], request, unit)
        changed = replace(request, system=system_of(unit) or request.system, unit=unit, asked=asked)
    return changed, work(talk.mind.rules[request.topic], changed)


def _partner(answer: Answer | None, system: str) -> str:
    """The unit of the other system that a sum is put into: a sum is shown in the units it was told in until then."""
    large = answer is not None and bool(answer.results) and answer.results[0].unit in BOUGHT_BY
    return {"metric": "m" if large else "cm", "inches": "yd" if large else "in"}[system]


def _in_unit(rule: Rule, request: Request, unit: str) -> tuple[str, ...]:
    """What is asked for when only a unit is said: "how many yards is that" asks for the length, not the strips."""
    lead = rule.step(request.asked[0] if request.asked else rule.answers[0])
    if unit not in LENGTHS or lead is None or lead.kind is LENGTH:
        return request.asked
    lengths = [step for name in rule.answers if (step := rule.step(name)) and step.kind is LENGTH]
    lengths.sort(key=lambda step: not (step.rounding is not None and step.rounding.bought))
    return (lengths[0].name, *request.asked) if lengths else request.asked


def _choose(talk: Conversation, heard: Heard) -> Followed:
    """The answer to "which of these did you mean?": words that favour one of them, and anything else said with it."""
    choices = talk.context.choices
    scored: list[tuple[float, Reading, Request]] = []
    for request in choices:
        rule = talk.mind.rules[request.topic]
        reading = read_as(rule, heard.line, heard.matches, request.system, request.given)
        if reading.lost:
            continue
        words = sum(match.weight for match in heard.matches for _ in match.of(rule.topic))
        scored.append((words, reading, request))
    scored.sort(key=lambda entry: -entry[0])
    if not scored or scored[0][0] <= 0 or (len(scored) > 1 and scored[0][0] - scored[1][0] < 0.05):
        return None
    _, reading, request = scored[0]
    return _rework(talk, heard, reading, request)


def _change(talk: Conversation, heard: Heard, request: Request) -> Followed:
    """One thing changed, added or answered, unless the line makes better sense alone."""
    rule = talk.mind.rules[request.topic]
    if talk.mind.lexicon.calls(heard.line.words):
        return None  # "plan a pouch" begins anew
    context = talk.context
    prefer = pulls(rule, request, heard.line, heard.matches, context.waiting, context.changed, assumed(rule, context.answer))
    reading = read_as(rule, heard.line, heard.matches, request.system, request.given, prefer)
    if rule.parts and talk.context.answer is not None and asks(heard) and not heard.line.values and not _asks_step(rule, reading):
        told = why.of_result(talk.context.answer, heard.line)
        if told is not None:
            return None, told
    best = best_of(talk.readings(heard), heard.matches)
    followed = _follows(talk, heard, reading, request)
    if best is None or best.topic_score <= NAMED or best.lost:
        return followed
    if followed is not None and not asks(heard) and best.rule.topic != rule.topic and coverage(reading) > coverage(best):
        return followed  # "add a ten inch pillow tuck" is no pillow: more of the line is heard as a change
    if followed is not None and rule.parts and not asks(heard) and coverage(reading) >= OF_THE_PLAN:
        return followed  # a plan takes up what is said of it, though another rule knows the words too
    if followed is not None and talk.context.waiting and (best.rule.lone or heard.line.sum is not None):
        return followed  # "14 x 15 x 4 in" is what was asked for, and no sum of its own
    if best.rule.topic != rule.topic and _names_another(heard, best, reading):
        carried = carry(talk, heard, best, request, least=2)
        if carried is not None:
            return carried  # "now backing for that quilt, 108 in wide"
    alone = _stands_alone(talk, heard, best)
    if followed is not None and not asks(heard) and not alone:
        return followed  # "put sashing all round too" changes something; it asks for nothing new
    if followed is not None and not alone and _all_spoken(reading) and not best.asked:
        return followed  # every number has its word here: "add a ten inch pillow tuck" is no cushion
    if best.rule.topic != rule.topic and best.topic_score > reading.topic_score:
        carried = carry(talk, heard, best, request)
        if carried is not None:
            return carried
    renamed = best.rule.topic != rule.topic and asks(heard) and best.topic_score > reading.topic_score and _in_full(heard, best.rule)
    if alone and not (followed is not None and ((_goes_on(heard) and not renamed) or _speaks_of_it(heard, best.rule, rule))):
        return None
    return followed


def _names_another(heard: Heard, best: Reading, reading: Reading) -> bool:
    """Whether a line names another topic plainly, in words that mean nothing to the rule of the question before."""
    return any(
        match.weight >= PLAINLY_MEANT and any(tag.what == "topic" for tag in match.of(best.rule.topic))
        and reading.heard.isdisjoint(range(match.first, match.last))
        for match in heard.matches
    )  # fmt: skip


def _in_full(heard: Heard, rule: Rule) -> bool:
    """Whether a line names a rule's topic in several words: "4 inch quarter-square triangles"."""
    return any(
        sum(word not in FILLERS for word in heard.line.words[match.first : match.last]) > 1
        and any(tag.what == "topic" for tag in match.of(rule.topic))
        for match in heard.matches
    )  # fmt: skip


def _follows(talk: Conversation, heard: Heard, reading: Reading, request: Request) -> Followed:
    """The line as a change to the last request: every number placed, and each of them changing something."""
    if not denied_in(reading, heard.matches).isdisjoint(request.given):
        return None  # "and with no repeat?" where the sum cannot do without one
    if reading.lost or not (reading.placing.spots or reading.chosen or reading.asked or reading.listed):
        return None
    if of_cloth(heard.line) and not reading.rule.parts and not any(item.label in WIDTHS_OF_CLOTH for item in reading.rule.inputs):
        return None  # "out of 70 cm cloth" is no width of a finished piece
    placed = {number: slots[0].name for number, slots in reading.placing.spots.items()}
    meant = reading.placing.spoken or reading.chosen or reading.listed or _awaited(talk, reading) or _telling(reading) or _goes_on(heard)
    meant = meant or any(of_them(heard.line, value) for value in heard.line.values)
    if not meant and not replaces(reading.rule, request, heard.line, placed, talk.context.changed):
        return None  # numbers that nothing speaks for and nobody asked for are no change
    followed = _rework(talk, heard, reading, request)
    if followed is None or _left_over(reading, followed[1]):
        return None
    results = followed[1].results
    if results and not answers_in(unit_asked(heard.line), results[0]):
        return None  # "how many litres will that hold?" after a width asks for something else
    return followed


def _all_spoken(reading: Reading) -> bool:
    """Whether a word speaks for each of the line's numbers."""
    return bool(reading.placing.spots) and reading.placing.spoken == len(reading.placing.spots) and not reading.placing.unplaced


def _telling(reading: Reading) -> bool:
    """Whether the numbers say by themselves what they are: a size, or a kind that is not any length or count."""
    return any(len(slots) > 1 or slots[0].kind not in PLAIN_KINDS for slots in reading.placing.spots.values()) or not reading.placing.spots


def _awaited(talk: Conversation, reading: Reading) -> bool:
    """Whether a number went where one was asked for."""
    labels = {getattr(slot.declared, "label", "") for slots in reading.placing.spots.values() for slot in slots}
    return bool(labels & talk.context.waiting)


def _asks_step(rule: Rule, reading: Reading) -> bool:
    """Whether one of the rule's own results is asked for."""
    return any(rule.step(name) is not None for name in reading.asked)


def asks(heard: Heard) -> bool:
    """Whether a line asks something of its own."""
    return any(word in ("how", "what", "whats", "which", "?") for word in heard.line.words)


def changes_subject(heard: Heard) -> bool:
    """Whether a line says that it begins anew: "different thing: 54 in in cm?"."""
    words = heard.line.words
    return tuple(words[:2]) in ANEW or tuple(words[1:3]) in ANEW


def _goes_on(heard: Heard) -> bool:
    """Whether a line speaks of what went before by how it opens or ends ("it's 4 across", "how many reels then?")."""
    words = [word for word in heard.line.words if word not in ("?", "!", ".")]
    return bool(words) and (words[0] in GOES_ON or tuple(words[:2]) in GOES_ON_PAIRS or words[-1] in ("then", "instead"))


def _speaks_of_it(heard: Heard, other: Rule, rule: Rule) -> bool:
    """Whether a line that another rule of the family knows speaks of the thing before: "the hem, if it is 60 cm long?"."""
    return other.topic != rule.topic and other.family == rule.family and "it" in heard.line.words


def _stands_alone(talk: Conversation, heard: Heard, reading: Reading) -> bool:
    """Whether a line that names its topic can be answered with nothing from before."""
    return talk.tried(reading, heard).answer.status == "answered"


def _left_over(reading: Reading, answer: Answer) -> bool:
    """Whether a number of the line changed nothing: then it was no change to what went before."""
    labels = [getattr(slot.declared, "label", "") or slot.name for slots in reading.placing.spots.values() for slot in slots]
    return any(text.startswith(label) for text in answer.not_used for label in labels)


def _rework(talk: Conversation, heard: Heard, reading: Reading, request: Request) -> Followed:
    try:
        changed = build(reading, talk.habits, heard.line.mentions, request)
    except NeedsUnit as need:
        return request, needs_unit(reading, need)
    changed = relative.apply(reading.rule, reading, request, changed)
    asked_cost = (asks(heard) and not _supposes(heard)) or _points_back(heard) or _told_a_cost(talk.context.answer)
    open_to_cost = not reading.asked or "total" in heard.line.words
    if open_to_cost and (asked_cost or _told_at(heard)) and (cost := _cost_of(reading, request, changed)):
        of_cost = replace(changed, asked=(cost, *(name for name in changed.asked if name != cost)))
        # Those that follow go on from it only where it was asked for.
        return of_cost if asked_cost else changed, work(reading.rule, of_cost)
    made = work(reading.rule, changed)
    new = _brought(reading, talk.context.answer, made) if asks(heard) or reading.asked else ""
    if new or (not reading.asked and (new := _counted_anew(reading, talk.context.answer, made))):
        made = work(reading.rule, replace(changed, asked=(new, *(name for name in changed.asked if name != new))))
    return changed, made


def _brought(reading: Reading, before: Answer | None, made: Answer) -> str:
    """The result that a number told anew brings, where the first is as it was: "£6.75 each, what's the total?"; "" for none."""
    if before is None or before.topic != made.topic or made.status != "answered" or not reading.placing.spots:
        return ""
    was = {result.key: result.text for result in before.results}
    head = made.results[0]
    if before.results[0].key != head.key or was[head.key] != head.text:
        return ""
    return next((result.key for result in made.results[1:] if result.key not in was), "")


def _counted_anew(reading: Reading, before: Answer | None, made: Answer) -> str:
    """The result that a new number of things changes, where the first does not: "two of them" asks for the whole; "" for none."""
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    if before is None or before.topic != made.topic or made.status != "answered" or not slots:
        return ""
    if any(slot.kind is not COUNT or slot.stated for slot in slots):
        return ""
    was = {result.key: result.text for result in before.results}
    if was.get(made.results[0].key) != made.results[0].text:
        return ""
    return next((result.key for result in made.results[1:] if was.get(result.key) != result.text), "")


def _cost_of(reading: Reading, request: Request, changed: Request) -> str:
    """What it costs, where a price or a discount is all that a line tells anew: that is what is wanted then; "" otherwise."""
    rule = reading.rule
    slots = [slot for slots in reading.placing.spots.values() for slot in slots]
    told = {slot.name for slot in slots if slot.kind is PRICE or slot.name in (*PRICES, DISCOUNT.name)}
    new = [name for name in told if changed.given.get(name) != request.given.get(name)]
    if not new or len(told) < len(slots) or rule.parts:
        return ""
    costs = [step.name for step in rule.steps if step.kind is MONEY and (step.name == "cost" or not _names_in(step).isdisjoint(new))]
    return "cost" if "cost" in costs else costs[0] if costs else ""


def _supposes(heard: Heard) -> bool:
    """Whether a line only tries another value: "what if it's £8.50 a metre?"."""
    words = heard.line.words
    return words[:2] in (["what", "if"], ["what", "about"], ["how", "about"]) or words[:1] == ["suppose"]


def _points_back(heard: Heard) -> bool:
    """Whether a line speaks of what was worked out: "that at $12 a yard"."""
    return heard.line.words[:1] in (["that"], ["those"], ["this"], ["these"], ["it"], ["all"])


def _told_at(heard: Heard) -> bool:
    """Whether a line's first number is told with "at": "and at eleven dollars a yard" asks what it comes to."""
    values = heard.line.values
    return bool(values) and heard.line.words[values[0].first - 1 : values[0].first] in (["at"], ["@"])


def _told_a_cost(answer: Answer | None) -> bool:
    """Whether the last answer led with a sum of money."""
    return answer is not None and bool(answer.results) and answer.results[0].unit in CURRENCIES


def _names_in(step: Step) -> frozenset[str]:
    """The names in a step's formula."""
    return frozenset(formula.names(formula.read(step.formula))) if step.formula else frozenset()
