"""What a line asks of practice, and who replies to it."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from .derive import derivation
from .exercise import exercise
from .explain import explanation
from .practise import Practising, dice
from .sheets import sheet_asked
from .stepwise import stepping
from .told import capital, listed, unclear
from .topics import nearest, rules_named, stripped, sums_of

if TYPE_CHECKING:
    from rules.engine.answer import Answer
    from rules.engine.declare import Rule
    from rules.engine.request import Request

    from ..conversation import Conversation

STEPS = re.compile(
    r"^(?:(?:work |walk |take |show )?(?:me )?(?:through )?(?:it )?(?:step[ -]by[ -]step|stepwise)"
    r"|(?:walk|take) me through|work through|walk through)\b[:,]?\s*(?P<what>.*)$"
)
STEPS_LAST = re.compile(r"^(?P<what>.+?)[,:]?\s+(?:step[ -]by[ -]step|stepwise)$")
EXPLAIN = re.compile(r"^(?:please )?(?:explain|teach me|how do you work out)\s+(?P<what>.+)$")
DERIVE = re.compile(r"^(?:derive|derivation of|prove)\b\s*(?P<what>.*)$")
PRACTISE = re.compile(
    r"^(?:let me |i want to )?(?:practi[sc]e|quiz me(?: on)?|quiz|test me(?: on)?|drill(?: me)?(?: on| in)?"
    r"|exercises?(?: on| in| for)?)\b\s*(?P<what>.*)$"
)
SHEET = re.compile(r"\bwork ?sheets?\b")
SYSTEMS = {
    "in inches": "in",
    "in metric": "cm",
    "in cm": "cm",
    "in centimetres": "cm",
    "inches only": "in",
    "metric only": "cm",
}
LEVEL = re.compile(r"\b(?:at |on )?level (?P<level>[1-4])\b")
THAT = ("", "that", "it", "this", "the answer", "the last one", "that one", "this one", "why")


def reply(text: str, line: str, talk: Conversation) -> Answer | None:
    """The reply of practice to a line; None when the line is not for it. line: the text in lower case, no end marks."""
    session = talk.practice.session
    if session is not None and (made := session.hear(text, line, talk)) is not None:
        return made
    return _command(text, line, talk)


def _command(text: str, line: str, talk: Conversation) -> Answer | None:
    if SHEET.search(line):
        return sheet_asked(text, talk)
    if met := STEPS.match(line) or STEPS_LAST.match(line):
        return _step_by_step(met["what"], talk)
    if met := DERIVE.match(line):
        return _derive(met["what"], talk)
    if met := PRACTISE.match(line):
        return _practise(met["what"], talk)
    if met := EXPLAIN.match(line):
        return _explain(met["what"], talk)
    return None


# -- explain and derive ----------------------------------------------------------------------------------------------


def _explain(what: str, talk: Conversation) -> Answer | None:
    """The rule explained; a question with numbers in it, or the last answer, is for others to answer."""
    if what in THAT or talk.hear(what).line.values:
        return None
    rules = rules_named(what, talk)
    if not rules:
        return unknown(what, talk, "explain")
    if len(rules) > 1 and rules[0].family == stripped(what):
        topics = [rule.topic for rule in rules]
        return unclear(
            f"{capital(stripped(what))} holds several rules. Which one? For example: explain {topics[0]}.", topics
        )
    talk.practice.topic = rules[0].topic
    made = explanation(rules[0], talk)
    others = tuple(f"explain {rule.topic}" for rule in rules[1:3])
    return replace(made, next=(*others, *made.next)) if others else made


def _derive(what: str, talk: Conversation) -> Answer | None:
    """Where a formula comes from: of the topic named, or of the last one."""
    name = _last_topic(talk) if what in THAT else what
    if not name:
        return unclear("Derive what? Name the rule, such as: derive half-square triangles.")
    rules = [talk.mind.rules[name]] if name in talk.mind.rules else list(rules_named(name, talk))
    if not rules:
        return unknown(name, talk, "derive")
    rule = next((rule for rule in rules if rule.derivation), rules[0])
    talk.practice.topic = rule.topic
    return derivation(rule, talk.habits.forced or talk.habits.system or rule.home or "cm")


def unknown(what: str, talk: Conversation, verb: str) -> Answer:
    """No rule goes by such a name: the nearest that do."""
    near = nearest(what, talk)
    hint = (
        f"The nearest: {listed(near, 'or')}."
        if near
        else f"Type help for the topics, or for example: {verb} {next(iter(talk.mind.rules))}."
    )
    return unclear(f"I know no rule called “{stripped(what)}”. {hint}", near)


def _last_topic(talk: Conversation) -> str:
    """The topic of the last answer, else the one last explained or practised."""
    return talk.context.request.topic if talk.context.request is not None else talk.practice.topic


# -- step by step ----------------------------------------------------------------------------------------------------


def _step_by_step(what: str, talk: Conversation) -> Answer | None:
    """The last question, a question typed with it, or a fresh exercise of a topic, worked by the newcomer."""
    if what in THAT:
        request = talk.context.request
        if request is not None and talk.context.answer is not None and (made := _stepped(request, talk)) is not None:
            return made
        what = _last_topic(talk)
        if not what:
            return unclear(
                "Step by step through what? Ask a question first, or name a topic, such as: step by step binding."
            )
    if talk.hear(what).line.values:
        return _steps_of_question(what, talk)
    rules = rules_named(what, talk)
    if not rules:
        return unknown(what, talk, "step by step")
    rules = sums_of(rules[:1], talk)
    talk.practice.topic = rules[0].topic
    system = talk.habits.forced or talk.habits.system or rules[0].home or "cm"
    set_ = exercise(rules[0], talk, dice(), system)
    started = stepping(set_.rule, set_.case.request, set_.case.target) if set_ else None
    if started is None:
        return unclear(f"{capital(rules[0].topic)} holds no steps in numbers. Type: explain {rules[0].topic}.")
    return started.start(talk)


def _steps_of_question(what: str, talk: Conversation) -> Answer | None:
    """A question asked in the same line; when it cannot be answered as it stands, what is said to it."""
    from ..conversation import Conversation

    own = Conversation(talk.mind, talk.notebook, talk.habits)
    made = own.ask(what)
    if made.status != "answered" or own.context.request is None:
        return made
    talk.context = own.context
    return _stepped(own.context.request, talk) or made


def _stepped(request: Request, talk: Conversation) -> Answer | None:
    """A request that was answered forwards, now worked step by step; None for one that cannot be."""
    answer = talk.context.answer
    rule = talk.mind.rules[request.topic]
    if request.series or request.stated or answer is None:
        return None
    target = next((one.key for one in answer.results if one.unit != "text" and rule.step(one.key)), "")
    started = stepping(rule, request, target) if target else None
    return started.start(talk) if started else None


# -- practise --------------------------------------------------------------------------------------------------------


def _practise(what: str, talk: Conversation) -> Answer | None:
    """Exercises of a topic, a family, the last topic, or of everything."""
    system, level = talk.habits.forced, 1
    if met := LEVEL.search(what):
        what, level = LEVEL.sub("", what).strip(), int(met["level"])
    for words, meant in SYSTEMS.items():
        if what.endswith(words):
            what, system = what.removesuffix(words), meant
    if talk.hear(what).line.values:
        return None  # a question of its own, that happens to begin so ("practice skirt, waist 28 in, ...")
    name = stripped(what)
    rules: tuple[Rule, ...]
    if name in THAT:
        last = _last_topic(talk)
        rules = (talk.mind.rules[last],) if last else tuple(talk.mind.rules.values())
        name = last or "everything"
    elif name in ("anything", "everything", "all", "all topics", "any topic"):
        rules = tuple(talk.mind.rules.values())
    else:
        rules = rules_named(name, talk)
        if not rules:
            return unknown(name, talk, "practise")
        if len(rules) > 1 and rules[0].family != name:
            rules = rules[:1]
    if len(rules) == 1:
        name = talk.practice.topic = rules[0].topic
    return Practising(sums_of(rules, talk), name, dice(), system, level).start(talk)
