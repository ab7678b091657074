"""The line below the prompt: how the half-typed question is read, and what is still missing."""

from __future__ import annotations

from typing import TYPE_CHECKING

from ..signs import carried, clean

if TYPE_CHECKING:
    from ..conversation import Conversation, Live
    from ..world import World

HINT = "help, examples; Tab completes, Ctrl-D leaves"
LONGEST_READ = 2000  # signs: a long paste is read when it is sent, not at each key


class Toolbar:
    """Keeps the last reading, since the line is drawn more often than the text changes."""

    def __init__(self, world: World, conversation: Conversation) -> None:
        self._world, self._conversation = world, conversation
        self._text = ""
        self._reading: Live | None = None

    def shown(self) -> str:
        """The line for what stands at the prompt now."""
        from prompt_toolkit.application import get_app

        app = get_app()
        columns = app.output.get_size().columns
        return carried(self.line(app.current_buffer.text, columns), self._world.encoding)

    def line(self, text: str, columns: int) -> str:
        """The line for a text, in so many columns."""
        if not text.strip():
            self._reading = None
            return fitted(HINT, columns)
        if "\n" in text or len(text) > LONGEST_READ:
            count = sum(1 for line in text.splitlines() if line.strip())
            return fitted(f"{count} lines: Enter answers each in turn" if count > 1 else "Enter answers it", columns)
        if text != self._text or self._reading is None:
            self._text, self._reading = text, self._conversation.reading(text)
        return reading_line(self._reading, columns)


def reading_line(reading: Live, columns: int) -> str:
    """A reading in one line: topic, what is missing or unplaced, and the numbers placed as far as there is room."""
    if not (reading.topic or reading.placed or reading.unplaced):
        return fitted("no topic yet", columns)
    needs = f"needs {', '.join(reading.missing)}" if reading.missing else ""
    lost = f"not placed: {', '.join(reading.unplaced)}" if reading.unplaced else ""
    topic = reading.topic or "no topic yet"
    placed = ", ".join(f"{label} {text}" for label, text in reading.placed)
    texts = ", ".join(text for _, text in reading.placed)
    for numbers in (placed, texts):
        whole = "; ".join(part for part in (topic, numbers, needs, lost) if part)
        if len(whole) <= columns:
            break
    else:
        whole = "; ".join(part for part in (topic, lost, needs) if part)
    return fitted(whole, columns)


def fitted(text: str, columns: int) -> str:
    """The text cut to so many columns, the cut shown by dots.

    >>> fitted("binding strips; needs quilt length", 20)
    'binding strips; n...'
    """
    text = clean(text)
    return text if len(text) <= columns else text[: max(columns - 3, 0)] + "..."
