"""Names kept in the notebook are offered for completion in the chat."""

from __future__ import annotations

from assistant.chat.completion import PhraseCompleter
from tests.notebook.conftest import Book


def test_names_kept_are_offered_as_they_are_typed(book: Book) -> None:
    assert book.talk.names() == ()
    completer = PhraseCompleter(("binding strips",), ("waist",), book.talk.names)
    assert completer.offers("ease for ine") == []
    book.done("Ines's hip is 38 in", "my waist is 66 cm", "I have 1.5 m of navy linen", "start project harbour tote")
    assert book.talk.names() == ("Ines's hip", "my waist", "navy linen", "harbour tote")
    assert completer.offers("ease for ine") == [("Ines's hip", 3)]
    assert completer.offers("use 80 cm of navy") == [("navy linen", 4)]
    book.path.write_text("damaged")
    assert book.talk.names() == ()
