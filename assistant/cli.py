"""The command: one question, a pipe of them, or the chat. Answers go to stdout, trouble to stderr."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from typing import TYPE_CHECKING

from . import __version__, render, safely
from .options import HELP, USAGE, Options, WrongUsage, read
from .status import Status

if TYPE_CHECKING:
    from rules.engine.answer import Answer

    from .conversation import Conversation
    from .notebook import Notebook
    from .understand.mind import Mind
    from .world import World

Wake = Callable[["World", Options], "tuple[Mind, Conversation]"]
ANSWERED = ("answered", "done")
NOTEBOOK = "notebook.db"


def wake(world: World, options: Options) -> tuple[Mind, Conversation]:
    """The understanding and a conversation with it."""
    from .conversation import Conversation
    from .saved import awake
    from .understand.build import Habits

    mind = awake(world)
    return mind, Conversation(mind, notebook_of(world, options), Habits(forced=options.units))


def notebook_of(world: World, options: Options) -> Notebook | None:
    """The notebook asked for, the usual one, or none. Nothing is opened yet."""
    from pathlib import Path

    from .notebook import Notebook

    if options.no_notebook:
        return None
    if options.notebook:
        return Notebook(Path(options.notebook).expanduser())
    try:
        return Notebook(world.data_folder() / NOTEBOOK)
    except (OSError, RuntimeError):  # no home folder at all
        return None


def main(arguments: Sequence[str], world: World, wake: Wake = wake) -> Status:
    """Do what the arguments (without the command's name) ask, and give the exit status."""
    try:
        options = read(arguments)
    except WrongUsage as error:
        world.trouble(f"ellwand: {error}\n{USAGE}\nType ellwand --help for the options.")
        return Status.WRONG_USAGE
    if options.help or options.version:
        world.say(HELP if options.help else f"ellwand {__version__}")
        return Status.ANSWERED
    mind, conversation = wake(world, options)
    _settle()
    if options.question:
        return _one(options.question, options, world, mind, conversation)
    if world.typed and world.watched and not options.json and not options.brief:
        from .chat.loop import chat  # prompt_toolkit is heavy, and only the chat needs it

        return chat(world, mind, conversation, plain=options.plain)
    return _each_line(world.lines(), options, world, mind, conversation)


def _settle() -> None:
    """What is loaded by now stays to the end: spare the garbage collector from looking through it again and again."""
    import gc

    gc.freeze()
    gc.enable()


def _one(question: str, options: Options, world: World, mind: Mind, conversation: Conversation) -> Status:
    if not options.json and (told := _guide(question, world, mind)) is not None:
        world.say(told)
        return Status.ANSWERED
    answer = safely.ask(conversation, question)
    world.say(shown(answer, options, world))
    return _status(answer)


def _each_line(lines: Iterable[str], options: Options, world: World, mind: Mind, conversation: Conversation) -> Status:
    """Answer each line by itself, or all as one conversation; each answer is written before the next line is read."""
    status, parted = Status.ANSWERED, not (options.json or options.brief)
    first = True
    for line in lines:
        question = line.strip()
        if not question or question.startswith("#"):
            continue
        if parted and not first:
            world.say("")
        first = False
        if parted and (told := _guide(question, world, mind)) is not None:
            world.say(told)
            continue
        if not options.together:
            conversation.forget()
        answer = safely.ask(conversation, question)
        world.say(shown(answer, options, world))
        status = max(status, _status(answer))
    return status


def _guide(question: str, world: World, mind: Mind) -> str | None:
    if not question.lower().startswith(("help", "?", "example")):
        return None
    from .guide import guide

    return guide(question, mind, world.columns)


def _status(answer: Answer) -> Status:
    return Status.ANSWERED if answer.status in ANSWERED else Status.SOME_NOT


def shown(answer: Answer, options: Options, world: World) -> str:
    """The answer in the form the options ask for."""
    if options.json:
        from .contract import as_line

        return as_line(answer, ascii_only=not world.unicode)
    if options.brief:
        return render.brief(answer)
    return render.full(answer, world.columns, world.colour, world.box_signs)
