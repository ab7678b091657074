"""A sum worked step by step by the newcomer: each step is asked for and marked, and told what went wrong."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from rules.engine.answer import Answer, Result
from rules.engine.kinds import TEXT
from rules.engine.marking import TROUBLE, Case

from .exercise import answered, case_of, in_words, wanted
from .told import capital, sentence, worked
from .worked import STOP, Question, Reply

if TYPE_CHECKING:
    from rules.engine.declare import Rule
    from rules.engine.request import Request

    from ..conversation import Conversation

HOW = "Type what each step comes to, with its unit; or hint, tell me or stop."


@dataclass(frozen=True, slots=True)
class Stage:
    """One step to be worked. name: of the step or input; asked: the question."""

    name: str
    asked: str


@dataclass
class Stepping:
    """A request worked step by step."""

    question: str
    case: Case
    stages: tuple[Stage, ...]
    spot: int = 0
    right: int = 0
    now: Question | None = None

    def start(self, talk: Conversation) -> Answer:
        """The exercise and its first step."""
        talk.practice.session = self
        asked = self._ask()
        return self._reply(self.question, (asked, HOW))

    def hear(self, text: str, line: str, talk: Conversation) -> Answer | None:
        """The reply to a line, and the next step once this one is over."""
        if line in STOP:
            talk.practice.session = None
            return self._reply("We leave it there.", (f"The answer is {self._result()}.",))
        assert self.now is not None
        reply = self.now.answered(text, line, talk)
        if reply is None or not reply.over:
            return None if reply is None else self._reply(reply.said, (), reply)
        self.right += reply.right
        self.spot += 1
        if self.spot < len(self.stages):
            return self._reply(reply.said, (self._ask(),), reply)
        talk.practice.session = None
        score = f"{self.right} of {len(self.stages)} steps right" if len(self.stages) > 1 else ""
        return self._reply(reply.said, (sentence(f"That is the whole sum{': ' + score if score else ''}"),), reply)

    def _ask(self) -> str:
        """The step now asked for, made ready to be marked."""
        stage = self.stages[self.spot]
        case = case_of(self.case.rule, self.case.request, stage.name)
        self.now = Question(case, _right(case), _hints(case))
        return f"Step {self.spot + 1} of {len(self.stages)}. {stage.asked}"

    def _result(self) -> str:
        return _right(self.case)

    def _reply(self, said: str, paragraphs: tuple[str, ...], reply: Reply | None = None) -> Answer:
        asks = "" if self.spot >= len(self.stages) else self.stages[self.spot].asked
        results = {
            "exercise": "" if reply or self.now is None or self.spot else self.question,
            "marked": reply.mark if reply else "",
            "slip": reply.slip if reply else "",
            "said": said if reply else "",
            "step": asks,
        }
        return Answer(
            "answered",
            topic=self.case.rule.topic,
            headline=said,
            text=paragraphs or ("",),
            results=tuple(Result(name, word, "text", word) for name, word in results.items() if word),
        )


def stepping(rule: Rule, request: Request, target: str) -> Stepping | None:
    """A request to be worked step by step, or None when it cannot be worked or holds no step to work."""
    try:
        case = case_of(rule, request, target)
    except TROUBLE:
        return None
    stages = stages_of(case)
    return Stepping(in_words(case, answered(case)), case, stages) if stages else None


def stages_of(case: Case) -> tuple[Stage, ...]:
    """The steps on the way to the result, in the order they are worked: each has a formula and gives a number."""
    made = []
    for name in case.run.values:
        step, item = case.rule.step(name), case.rule.input(name)
        if step is not None and step.kind is not TEXT and (step.formula or name == case.target):
            made.append(_stage(case, name, step.sentence))
        elif item is not None and name not in case.request.given:
            default = next((one for one in item.defaults if case.run.holds(one.when)), None)
            if default is not None and default.value.startswith("=") and default.derived:
                made.append(_stage(case, name, default.because or f"Work out the {item.label}"))
    return tuple(stage for stage in made if stage is not None)


def _stage(case: Case, name: str, told: str) -> Stage | None:
    try:
        want = case_of(case.rule, case.request, name).expected
    except TROUBLE:
        return None
    return Stage(name, f"{sentence(told)} {wanted(want)}")


def _hints(case: Case) -> tuple[str, ...]:
    """The formula of the step in words, then with its numbers put in."""
    label = case.expected.label
    line = next((line for line in reversed(case.run.lines) if line.formula.startswith(f"{label} = ")), None)
    if line is None:
        return tuple(worked(line).rpartition(" = ")[0] or line.step for line in case.run.lines if line.numbers)
    return (line.formula, f"{capital(label)} = {line.numbers}")


def _right(case: Case) -> str:
    """The right answer as text."""
    from rules.engine.text import shown

    want = case.expected
    return want.words or shown(want.rounded, want.unit, want.noun)
