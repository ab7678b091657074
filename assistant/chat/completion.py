"""Completion of topics and role words, in place: the last words typed are met with the phrases they begin."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator

from prompt_toolkit.completion import CompleteEvent, Completer, Completion
from prompt_toolkit.document import Document

from ..guide import ASKS_EXAMPLES, ASKS_HELP

LEAST_TYPED = 3  # signs: fewer begin too much to be a help, and are often a whole word, such as "in"
MOST_OFFERED = 12
MOST_WORDS = 4
LONGEST_PHRASE = 60  # signs; no more of the line than this is looked at


class PhraseCompleter(Completer):
    """Offers what is kept in the notebook first, then topics, then the words of the rules' inputs.

    kept: the names in the notebook as they are now.
    """

    def __init__(self, topics: Iterable[str], words: Iterable[str], kept: Callable[[], Iterable[str]] = tuple) -> None:
        self._kept = kept
        self._topics = tuple(sorted(set(topics)))
        self._phrases = tuple(dict.fromkeys((*self._topics, *sorted(set(words)))))

    def get_completions(self, document: Document, complete_event: CompleteEvent) -> Iterator[Completion]:
        """The phrases that the end of the text before the cursor begins; the longest such end counts."""
        before = document.text_before_cursor
        for phrase, typed in self.offers(before):
            yield Completion(phrase, start_position=-typed)

    def offers(self, before: str) -> list[tuple[str, int]]:
        """Each phrase offered, with how many signs of the text it stands in for."""
        command, _, name = before.lstrip().partition(" ")
        if name and command.lower() in (*ASKS_HELP, *ASKS_EXAMPLES):
            return [(topic, len(name)) for topic in self._topics if topic.startswith(name.lower())][:MOST_OFFERED]
        endings = _endings(before)
        phrases = (*self._kept(), *self._phrases) if endings else ()
        for ending in endings:
            wanted = ending.lower()
            found = [phrase for phrase in phrases if phrase.lower().startswith(wanted) and phrase.lower() != wanted]
            if found:
                return [(phrase, len(ending)) for phrase in found[:MOST_OFFERED]]
        return []


def _endings(before: str) -> list[str]:
    """The last four, three, two words and the last word, longest first, each from the start of a word to the cursor."""
    tail = " " + before[-LONGEST_PHRASE:]
    if tail[-1].isspace():
        return []
    starts = [index for index in range(1, len(tail)) if tail[index - 1].isspace() and not tail[index].isspace()]
    endings = (tail[start:] for start in starts[-MOST_WORDS:])
    return [ending for ending in endings if len(ending) >= LEAST_TYPED and ending[0].isalpha()]
