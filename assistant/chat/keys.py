"""Keys that do more here than in any prompt."""

from __future__ import annotations

from prompt_toolkit.key_binding import KeyBindings
from prompt_toolkit.key_binding.key_processor import KeyPressEvent


def bindings() -> KeyBindings:
    """Ctrl-C clears the line and stays; Ctrl-D on an empty line leaves, as everywhere."""
    keys = KeyBindings()

    @keys.add("c-c")
    def clear(event: KeyPressEvent) -> None:
        event.current_buffer.reset()

    return keys
