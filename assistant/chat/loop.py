"""The chat from greeting to leave-taking: read a line, answer it, and again."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .. import __version__, render, safely
from ..guide import guide
from ..signs import clean
from ..status import Status
from ..wrap import wrap
from .history import KeptHistory
from .session import make_session

if TYPE_CHECKING:
    from prompt_toolkit import PromptSession

    from ..conversation import Conversation
    from ..understand.mind import Mind
    from ..world import World

LEAVES = ("quit", "bye", "exit", "goodbye")
PROMPT_LINES = 7  # the blank line, the prompt, the room for its menu and the line below it
STARTS_AGAIN = ("start again", "start over", "new subject")
GREETING = (
    f"Ellwand {__version__}: sums for sewing, bags, quilting and knitting. "
    "Ask in plain words, or type help or examples; bye or Ctrl-D leaves."
)


def chat(world: World, mind: Mind, conversation: Conversation, plain: bool = False) -> Status:
    """Talk until the maker leaves. plain: nothing but lines of text, one after the other, for screen readers."""
    history = KeptHistory(world.state_folder() / "history")
    session = make_session(world, mind, conversation, history, plain)
    world.say("\n".join(wrap(GREETING, world.columns)))
    while (typed := _typed(session)) is not None:
        lines = [line.strip() for line in typed.splitlines() if line.strip()]
        for line in lines:
            if line.lower().rstrip("!.") in LEAVES:
                return Status.ANSWERED
            if len(lines) > 1:  # pasted together: say which one is answered
                world.say("> " + clean(line))
            _reply(line, world, mind, conversation, plain)
        if trouble := history.trouble():
            world.say("\n".join(wrap(trouble, world.columns)))
    return Status.ANSWERED


def _typed(session: PromptSession[str]) -> str | None:
    """What was typed up to Enter, or pasted; None when the maker leaves with Ctrl-D."""
    try:
        return session.prompt()
    except KeyboardInterrupt:  # the signal, where it is no key
        return ""
    except EOFError:
        return None


def _reply(line: str, world: World, mind: Mind, conversation: Conversation, plain: bool) -> None:
    """Answer one line, with a blank line after it. Ctrl-C meanwhile stops this answer, not the chat."""
    try:
        world.say(_words(line, world, mind, conversation, plain) + "\n")
    except KeyboardInterrupt:
        world.say("Stopped.\n")


def _words(line: str, world: World, mind: Mind, conversation: Conversation, plain: bool) -> str:
    if line.lower().rstrip("!.") in STARTS_AGAIN:
        conversation.forget()
        return "We start again: what was said before no longer counts."
    if (told := guide(line, mind, world.columns)) is not None:
        return told
    answer = safely.ask(conversation, line)
    words = render.full(answer, world.columns, world.colour and not plain, world.box_signs and not plain)
    if answer.headline and 0 < world.rows - PROMPT_LINES < words.count("\n") + 1:
        words += "\n" + "\n".join(wrap(answer.headline, world.columns, "In short: ", "  "))
    return words
