"""A small understanding with the same interface as the real one, so that the ways in can be tested by themselves."""

from __future__ import annotations

import io
from dataclasses import dataclass, field, replace
from fractions import Fraction

from assistant.options import Options
from assistant.world import World
from rules.engine.answer import Answer, Line, Missing, Result, Table, Value
from rules.engine.declare import Input, Rule, Step

STRIPS = Answer(
    "answered",
    topic="binding strips",
    headline="Cut 7 strips, 2 1/2 in wide, across the cloth.",
    given=(Value("quilt width", Fraction(60), "in", "60 in"), Value("quilt length", Fraction(72), "in", "72 in")),
    assumed=(Value("usable fabric width", Fraction(40), "in", "40 in", "the usual between selvedges, to be safe"),),
    results=(
        Result("strips", 7, "strip", "7 strips", 6.85, "6.85 strips"),
        Result("binding length", 274, "in", "274 in", 274, "274 in", "696 cm"),
    ),
    working=(
        Line("Go once round the quilt, and add 10 in for corners and the join",
             "binding length = 2 × (quilt width + quilt length) + corners and join",
             "2 × (60 in + 72 in) + 10 in", "274 in"),
        Line("See how many widths of cloth that takes", "strips = binding length ÷ usable fabric width",
             "274 in ÷ 40 in", "6.85 strips, up to 7 strips"),
    ),
    cautions=("Binding cut straight will not go round a curve.",),
    sources=("common practice, no source",),
    next=("and with 60 in cloth?",),
)  # fmt: skip
SWEEP = replace(
    STRIPS,
    headline="Strips for quilt length 60 in to 100 in: 7 strips to 9 strips.",
    table=Table(
        (("quilt length", "in"), ("strips", "strip"), ("binding length", "in")),
        ((60, 7, 250), (Fraction(145, 2), 7, Fraction(275)), (100, 9, 330)),
        (("60 in", "7 strips", "250 in"), ("72 1/2 in", "7 strips", "274 in"), ("100 in", "9 strips", "330 in")),
    ),
)
MISSING = Answer(
    "incomplete",
    topic="binding strips",
    given=(Value("quilt width", Fraction(60), "in", "60 in"),),
    missing=(Missing("quilt length", "How long is the quilt?", "72 in"),),
    message="I read this as binding strips, but still need the quilt length.",
)
UNCLEAR = Answer("unclear", message="That could be two things.", choices=("binding strips", "a strip of cloth"))
IMPOSSIBLE = Answer("impossible", topic="binding strips", message="The quilt width cannot be 0 in.")
ANSWERS = {"strips": STRIPS, "sweep": SWEEP, "missing": MISSING, "impossible": IMPOSSIBLE}


@dataclass(frozen=True)
class FakeReading:
    topic: str = ""
    placed: tuple[tuple[str, str], ...] = ()
    missing: tuple[str, ...] = ()
    unplaced: tuple[str, ...] = ()


@dataclass
class FakeConversation:
    """Knows a word for each kind of answer. asked: the lines it was given; forgotten: how often it forgot."""

    units: str = ""
    asked: list[str] = field(default_factory=list)
    forgotten: int = 0

    def ask(self, line: str) -> Answer:
        self.asked.append(line)
        if "fault" in line:
            raise RuntimeError(line)
        answer = next((answer for word, answer in ANSWERS.items() if word in line), UNCLEAR)
        return replace(answer, question=line)

    def reading(self, line: str) -> FakeReading:
        if "strips" not in line:
            return FakeReading()
        unplaced = ("5",) if "5" in line else ()
        return FakeReading("binding strips", (("quilt width", "60 in"),), ("quilt length",), unplaced)

    def names(self) -> tuple[str, ...]:
        return ("Ines's hip", "navy linen")

    def forget(self) -> None:
        self.forgotten += 1


def rule(topic: str, family: str, *inputs: Input, says: tuple[str, ...] = ()) -> Rule:
    steps = (Step("cut", "Take it as it is", "waist"),)
    examples = (f"{topic} for 28 in -> 28 in", f"{topic} for 70 cm -> 70 cm")
    about = f"About {topic}."
    return Rule(topic, family, says, about, inputs, steps, ("cut",), source="arithmetic", examples=examples)


WAIST = Input("waist", "waist", ask="What is the waist?", example="28 in")
OVERLAP = Input("overlap", "overlap", default="1/2 in | 1.2 cm", because="enough to sew twice")
PRICE = Input("price", "price", extra=True, example="2 a metre")


class FakeMind:
    rules = {  # noqa: RUF012 (a fake is not changed)
        made.topic: made
        for made in (
            rule("binding strips", "quilting", WAIST),
            rule("elastic", "fit", WAIST, OVERLAP, PRICE, says=("waistband", "elastic")),
            rule("ease", "fit", WAIST),
        )
    }

    def topics(self) -> tuple[str, ...]:
        return tuple(self.rules)

    def words(self) -> tuple[str, ...]:
        return ("quilt width", "quilt length", "waist")

    def families(self) -> dict[str, tuple[str, ...]]:
        return {"quilting": ("binding strips",), "fit": ("ease", "elastic")}


@dataclass
class Room:
    """A world with streams of its own and a conversation in it; `wake` is what the command takes."""

    world: World
    conversation: FakeConversation

    @property
    def out(self) -> str:
        assert isinstance(self.world.stdout, io.StringIO)
        return self.world.stdout.getvalue()

    @property
    def err(self) -> str:
        assert isinstance(self.world.stderr, io.StringIO)
        return self.world.stderr.getvalue()

    def wake(self, world: World, options: Options) -> tuple[FakeMind, FakeConversation]:
        self.conversation.units = options.units
        return FakeMind(), self.conversation


def room(typed: str = "", watched: bool = False, **environ: str) -> Room:
    """A room whose stdin holds what was typed; watched makes stdout a terminal."""
    world = World(io.StringIO(typed), io.StringIO(), io.StringIO(), {"TERM": "xterm", **environ}, watched, watched)
    return Room(world, FakeConversation())
