"""The chat, driven through prompt_toolkit's pipe input."""

from __future__ import annotations

import threading
import time
from collections.abc import Callable, Iterator
from pathlib import Path

import pytest
from prompt_toolkit.application import create_app_session, get_app_session
from prompt_toolkit.buffer import Buffer
from prompt_toolkit.input import PipeInput, create_pipe_input
from prompt_toolkit.output import DummyOutput

from assistant.chat.completion import PhraseCompleter
from assistant.chat.history import MOST_KEPT, KeptHistory
from assistant.chat.toolbar import Toolbar, fitted, reading_line
from assistant.cli import main
from tests.fakes import FakeConversation, FakeReading, Room, room

Talk = Callable[..., Room]
CTRL_C, CTRL_D = "\x03", "\x04"


@pytest.fixture
def keyboard() -> Iterator[PipeInput]:
    with create_pipe_input() as pipe, create_app_session(input=pipe, output=DummyOutput()):
        yield pipe


@pytest.fixture
def talk(keyboard: PipeInput, tmp_path: Path) -> Talk:
    """Type keys into a chat, leave it with Ctrl-D, and hand back its room."""

    def chat(*keys: str, options: tuple[str, ...] = (), **environ: str) -> Room:
        place = room(watched=True, **{"ELLWAND_STATE": str(tmp_path), "NO_COLOR": "1", **environ})
        keyboard.send_text("".join(keys) + CTRL_D)
        assert main(options, place.world, place.wake) == 0
        return place

    return chat


def pasted(text: str) -> str:
    return f"\x1b[200~{text}\x1b[201~"


def test_a_question_is_answered(talk: Talk) -> None:
    place = talk("how many strips\r")
    assert place.conversation.asked == ["how many strips"]
    assert "\nCut 7 strips, 2 1/2 in wide, across the cloth.\n" in place.out


def test_the_conversation_goes_on_and_is_not_forgotten_between_lines(talk: Talk) -> None:
    place = talk("missing\r", "72 in strips\r")
    assert place.conversation.asked == ["missing", "72 in strips"]
    assert place.conversation.forgotten == 0


def test_start_again_forgets(talk: Talk) -> None:
    assert talk("strips\r", "Start again\r").conversation.forgotten == 1


@pytest.mark.parametrize("word", ["quit", "bye", "Exit", "goodbye!"])
def test_a_word_leaves(talk: Talk, word: str) -> None:
    assert talk(f"{word}\r", "strips\r").conversation.asked == []


def test_ctrl_c_clears_the_line_and_stays(talk: Talk) -> None:
    assert talk("impossible", CTRL_C, "strips\r").conversation.asked == ["strips"]


def test_an_empty_line_asks_nothing(talk: Talk) -> None:
    assert talk("\r", "   \r").conversation.asked == []


def test_a_pasted_block_is_answered_line_by_line(talk: Talk) -> None:
    place = talk(pasted("strips\r\nmissing 5\n\n  sweep\n"), "\r")
    assert place.conversation.asked == ["strips", "missing 5", "sweep"]
    assert place.out.index("> strips") < place.out.index("> missing 5") < place.out.index("> sweep")


def test_lines_pasted_without_brackets_are_not_lost(talk: Talk) -> None:
    assert talk("strips\rmissing\rsweep\r").conversation.asked == ["strips", "missing", "sweep"]


def test_help_is_help_and_no_question(talk: Talk) -> None:
    place = talk("help fit\r", "help\r", "examples\r")
    assert place.conversation.asked == []
    assert "elastic: About elastic." in place.out
    assert "Questions to try:" in place.out


def test_the_greeting_and_answers_fit_40_columns(talk: Talk) -> None:
    place = talk("strips\r", "missing\r", COLUMNS="40")
    assert place.out.startswith("Ellwand ")
    assert max(map(len, place.out.splitlines())) <= 40


def test_no_colour_when_not_wished(talk: Talk) -> None:
    assert "\x1b" not in talk("strips\r").out
    assert "\x1b[1m" in talk("strips\r", NO_COLOR="").out


def test_plain_mode_gives_lines_of_text_alone(talk: Talk) -> None:
    place = talk("strips\r", options=("--plain",), NO_COLOR="")
    assert place.conversation.asked == ["strips"]
    assert "\x1b" not in place.out


def test_tab_completes_the_phrase_begun(keyboard: PipeInput, tmp_path: Path) -> None:
    place = room(watched=True, ELLWAND_STATE=str(tmp_path))
    session = get_app_session()

    def until(seen: Callable[[Buffer], bool]) -> None:
        for _ in range(1000):
            if session.app and seen(session.app.current_buffer):
                return
            time.sleep(0.01)

    def type_as_the_menu_comes() -> None:
        keyboard.send_text("strips for the quilt wi")
        until(lambda buffer: buffer.complete_state is not None)
        keyboard.send_text("\t")
        until(lambda buffer: buffer.text.endswith("quilt width"))
        keyboard.send_text(" 60\r" + CTRL_D)

    typing = threading.Thread(target=type_as_the_menu_comes)
    typing.start()
    main([], place.world, place.wake)
    typing.join()
    assert place.conversation.asked == ["strips for the quilt width 60"]


def test_ctrl_c_during_an_answer_stops_that_answer_only(talk: Talk, monkeypatch: pytest.MonkeyPatch) -> None:
    usual = FakeConversation.ask

    def ask(self: FakeConversation, line: str) -> object:
        if line == "long":
            raise KeyboardInterrupt
        return usual(self, line)

    monkeypatch.setattr(FakeConversation, "ask", ask)
    place = talk("long\r", "strips\r")
    assert "\nStopped.\n" in place.out
    assert place.conversation.asked == ["strips"]


# -- completion ------------------------------------------------------------------------------------------------------


@pytest.mark.parametrize(
    ("before", "offers"),
    [
        ("bind", [("binding strips", 4)]),
        ("strips for BINDING st", [("binding strips", 10)]),
        ("60 in", []),
        ("eas", [("ease", 3)]),
        ("quilt", [("quilt length", 5), ("quilt width", 5)]),
        ("60 x 72 quilt w", [("quilt width", 7)]),
        ("60", []),
        ("quilt ", []),
        ("help e", [("ease", 1), ("elastic", 1)]),
        ("", []),
        ("ease", []),
    ],
)
def test_completion_in_place(before: str, offers: list[tuple[str, int]]) -> None:
    completer = PhraseCompleter(("binding strips", "elastic", "ease"), ("quilt width", "quilt length", "in steps of"))
    assert completer.offers(before) == offers


# -- the line below --------------------------------------------------------------------------------------------------

READING = FakeReading("binding strips", (("quilt width", "60 in"),), ("quilt length",), ("5",))


@pytest.mark.parametrize(
    ("columns", "line"),
    [
        (80, "binding strips; quilt width 60 in; needs quilt length; not placed: 5"),
        (62, "binding strips; 60 in; needs quilt length; not placed: 5"),
        (50, "binding strips; not placed: 5; needs quilt length"),
        (40, "binding strips; not placed: 5; needs ..."),
    ],
)
def test_the_reading_is_told_as_far_as_there_is_room(columns: int, line: str) -> None:
    assert reading_line(READING, columns) == line  # type: ignore[arg-type]


def test_the_line_below_follows_what_is_typed_and_reads_each_text_once() -> None:
    place = room()
    read: list[str] = []

    class Counting(FakeConversation):
        def reading(self, line: str) -> FakeReading:
            read.append(line)
            return super().reading(line)

    toolbar = Toolbar(place.world, Counting())  # type: ignore[arg-type]
    assert toolbar.line("", 80).startswith("help, examples")
    for _ in range(2):
        assert toolbar.line("strips", 80) == "binding strips; quilt width 60 in; needs quilt length"
    assert toolbar.line("hello", 80) == "no topic yet"
    assert toolbar.line("strips\nmissing\n\n", 80) == "2 lines: Enter answers each in turn"
    assert toolbar.line("strips " * 1000, 80) == "Enter answers it"
    assert read == ["strips", "hello"]


def test_a_line_too_long_ends_in_dots() -> None:
    assert fitted("a" * 50, 40) == "a" * 37 + "..."


# -- history ---------------------------------------------------------------------------------------------------------


def test_history_is_kept_for_this_user_alone_and_comes_back_newest_first(talk: Talk, tmp_path: Path) -> None:
    talk("strips\r", pasted("one\ntwo") + "\r")
    path = tmp_path / "history"
    assert path.read_text() == "strips\none\ntwo\n"
    assert path.stat().st_mode & 0o077 == 0
    assert list(KeptHistory(path).load_history_strings()) == ["two", "one", "strips"]


def test_the_last_question_comes_back_with_the_up_key(talk: Talk) -> None:
    talk("strips\r")
    assert talk("\x1b[A\r").conversation.asked == ["strips"]


def test_a_history_that_cannot_be_kept_is_one_sentence_and_no_stop(talk: Talk, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("in the way")
    place = talk("strips\r", "strips again\r", ELLWAND_STATE=str(tmp_path / "file" / "x"))
    assert place.conversation.asked == ["strips", "strips again"]
    assert place.out.count("The history of questions cannot be kept") == 1


def test_a_history_grown_long_is_shortened(tmp_path: Path) -> None:
    path = tmp_path / "history"
    path.write_text("".join(f"question {number}\n" for number in range(2 * MOST_KEPT + 1)))
    entries = list(KeptHistory(path).load_history_strings())
    assert (len(entries), entries[0]) == (MOST_KEPT, f"question {2 * MOST_KEPT}")
    assert len(path.read_text().splitlines()) == MOST_KEPT


def test_a_damaged_history_is_read_as_far_as_it_goes(tmp_path: Path) -> None:
    (tmp_path / "history").write_bytes(b"strips \xff\nsweep\n")
    assert list(KeptHistory(tmp_path / "history").load_history_strings()) == ["sweep", "strips \ufffd"]
