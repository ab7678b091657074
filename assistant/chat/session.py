"""The prompt: put together from history, completion, keys and the line below it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from prompt_toolkit import PromptSession
from prompt_toolkit.auto_suggest import AutoSuggestFromHistory
from prompt_toolkit.output.color_depth import ColorDepth
from prompt_toolkit.shortcuts import CompleteStyle
from prompt_toolkit.styles import Style

from .completion import PhraseCompleter
from .keys import bindings
from .toolbar import Toolbar

if TYPE_CHECKING:
    from prompt_toolkit.history import History

    from ..conversation import Conversation
    from ..understand.mind import Mind
    from ..world import World

PROMPT = "> "
COLOURED = Style.from_dict({"bottom-toolbar": "noreverse ansibrightblack", "prompt": "bold"})
UNCOLOURED = Style.from_dict({"bottom-toolbar": "noreverse", "auto-suggestion": "italic"})


def make_session(
    world: World, mind: Mind, conversation: Conversation, history: History, plain: bool
) -> PromptSession[str]:
    """The prompt session; plain leaves out whatever appears on its own: menu, suggestion and the line below."""
    if plain:
        return PromptSession(PROMPT, history=history, key_bindings=bindings(), color_depth=ColorDepth.DEPTH_1_BIT)
    return PromptSession(
        [("class:prompt", PROMPT)],
        history=history,
        key_bindings=bindings(),
        auto_suggest=AutoSuggestFromHistory(),
        completer=PhraseCompleter(mind.topics(), mind.words(), conversation.names),
        complete_while_typing=True,
        complete_style=CompleteStyle.COLUMN,
        bottom_toolbar=Toolbar(world, conversation).shown,
        style=COLOURED if world.colour else UNCOLOURED,
        color_depth=None if world.colour else ColorDepth.DEPTH_1_BIT,
        reserve_space_for_menu=4,
    )
