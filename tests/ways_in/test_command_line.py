"""The command: exit statuses, forms of answer, options, and manners in a pipe."""

from __future__ import annotations

import io
import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from assistant import __version__
from assistant.cli import main
from assistant.options import FLAGS, HELP, WITH_VALUE, WrongUsage, read
from assistant.status import Status
from assistant.world import MOST_TYPED, World
from tests.fakes import Room, room

ROOT = Path(__file__).resolve().parents[2]


def run(place: Room, *arguments: str) -> Status:
    return main(arguments, place.world, place.wake)


# -- exit statuses ---------------------------------------------------------------------------------------------------


def test_status_0_when_every_question_is_answered() -> None:
    assert run(room("strips\nstrips again\n")) == Status.ANSWERED == 0


def test_status_1_when_one_of_them_is_not() -> None:
    assert run(room("strips\nmissing\nstrips\n")) == Status.SOME_NOT == 1


@pytest.mark.parametrize("question", ["missing", "impossible", "something else"])
def test_status_1_for_each_way_of_not_answering(question: str) -> None:
    assert run(room(), question) == 1


@pytest.mark.parametrize(
    ("arguments", "told"),
    [
        (["--jsn"], "ellwand: I do not know the option --jsn. Did you mean --json?"),
        (["-q"], "ellwand: I do not know the option -q."),
        (["--units"], "ellwand: --units needs a value, as in --units metric."),
        (["--units", "cubits"], "ellwand: I do not know the units cubits. Type --units inches or --units metric."),
        (["--notebook"], "ellwand: --notebook needs a value, as in --notebook FILE."),
        (["--brief=yes"], "ellwand: --brief takes no value. Type --brief alone."),
        (["--json", "--brief"], "ellwand: --json and --brief are two forms of answer. Type one of them."),
        (
            ["--notebook", "x", "--no-notebook"],
            "ellwand: --notebook and --no-notebook contradict each other. Type one of them.",
        ),
    ],
)
def test_status_2_and_what_to_type_for_wrong_usage(arguments: list[str], told: str) -> None:
    place = room("strips\n")
    assert run(place, *arguments) == Status.WRONG_USAGE == 2
    assert place.err.splitlines()[0] == told
    assert place.out == ""
    assert place.conversation.asked == []


def test_status_130_when_stopped_by_ctrl_c(monkeypatch: pytest.MonkeyPatch) -> None:
    from assistant import __main__, cli

    def stopped(*_: object) -> Status:
        raise KeyboardInterrupt

    monkeypatch.setattr(cli, "main", stopped)
    assert __main__.run() == Status.STOPPED == 130


def test_a_fault_of_our_own_costs_one_answer_and_not_the_pipe() -> None:
    place = room("fault\nstrips\n")
    assert run(place, "--brief") == 1
    assert place.out.splitlines()[0].startswith("A fault of the program's own (RuntimeError at fakes.py, line ")
    assert place.out.splitlines()[1] == "7 strips"


# -- options ---------------------------------------------------------------------------------------------------------


def test_version_and_help_answer_without_waking_anything() -> None:
    for option, told in (("--version", f"ellwand {__version__}"), ("--help", HELP), ("-h", HELP)):
        place = room()
        assert main([option], place.world, lambda *_: pytest.fail("woken")) == 0
        assert place.out == told + "\n"


def test_help_names_every_option_and_fits_80_columns() -> None:
    assert all(f"  {option}" in HELP for option in (*FLAGS, *WITH_VALUE))
    assert max(map(len, HELP.splitlines())) < 80


def test_options_may_stand_before_or_after_the_question() -> None:
    assert read(["how", "many", "--json", "strips"]).question == "how many strips"
    assert read(["--units=metric", "strips"]).units == read(["strips", "--units", "CM"]).units == "cm"
    assert read(["--units", "inches"]).units == read(["--units", "in"]).units == "in"


def test_a_lone_double_dash_ends_the_options() -> None:
    options = read(["--brief", "--", "--json", "strips"])
    assert (options.brief, options.json, options.question) == (True, False, "--json strips")


@pytest.mark.parametrize("question", ["-5 cm of ease", "- 2 in", "-½ in", "-"])
def test_a_question_may_begin_with_a_dash(question: str) -> None:
    assert read([question]).question == question


def test_arguments_that_are_no_text_are_read_with_replacement_signs() -> None:
    assert read([os.fsdecode(b"strips \xff")]).question == "strips \ufffd"


def test_units_reach_the_conversation() -> None:
    place = room()
    run(place, "--units", "metric", "strips")
    assert place.conversation.units == "cm"


def test_wrong_usage_is_an_error_of_its_own() -> None:
    with pytest.raises(WrongUsage, match="Did you mean --together"):
        read(["--togeter"])


# -- pipes -----------------------------------------------------------------------------------------------------------


def test_blank_lines_and_lines_with_a_hash_pass() -> None:
    place = room("\n# strips for the lantern quilt\n   \nstrips\n  # no\n")
    assert run(place, "--brief") == 0
    assert place.conversation.asked == ["strips"]
    assert place.out == "7 strips\n"


def test_nothing_piped_gives_nothing() -> None:
    place = room("")
    assert run(place) == 0
    assert place.out == place.err == ""


def test_brief_gives_one_line_out_for_one_line_in() -> None:
    place = room("strips\nmissing\nimpossible\nwhat\n")
    run(place, "--brief")
    assert place.out.splitlines() == [
        "7 strips",
        "I read this as binding strips, but still need the quilt length.",
        "The quilt width cannot be 0 in.",
        "That could be two things.",
    ]


def test_brief_gives_the_rows_of_a_table_with_tabs() -> None:
    place = room()
    run(place, "--brief", "sweep")
    assert place.out == "60 in\t7 strips\t250 in\n72 1/2 in\t7 strips\t274 in\n100 in\t9 strips\t330 in\n"


def test_json_is_one_object_a_line_with_the_question_in_it() -> None:
    place = room("strips ½ × é\nmissing\nhelp\n")
    run(place, "--json")
    objects = [json.loads(line) for line in place.out.splitlines()]
    assert [one["question"] for one in objects] == ["strips ½ × é", "missing", "help"]
    assert "½ × é" in place.out


def test_a_blank_line_parts_answers_and_none_holds_one() -> None:
    place = room("strips\nmissing\nhelp\nsweep\n")
    run(place)
    parts = place.out.rstrip("\n").split("\n\n")
    assert [part.split()[0] for part in parts] == ["Cut", "I", "Ask", "Strips"]


def test_piped_lines_are_apart_unless_together() -> None:
    apart, together = room("strips\nmissing\n"), room("strips\nmissing\n")
    run(apart)
    run(together, "--together")
    assert (apart.conversation.forgotten, together.conversation.forgotten) == (2, 0)


def test_each_answer_is_written_before_the_next_line_is_read() -> None:
    place = room()
    seen: list[str] = []

    class Slow(io.StringIO):
        def readline(self, size: int = -1, /) -> str:
            seen.append(place.out)
            return "strips\n" if len(seen) < 3 else ""

    place.world.stdin = Slow()
    run(place, "--brief")
    assert seen == ["", "7 strips\n", "7 strips\n7 strips\n"]


def test_an_endless_line_is_cut_and_the_next_one_still_answered() -> None:
    place = room("9" * (2 * MOST_TYPED + 5) + "\nstrips\n")
    assert run(place, "--brief") == 1
    assert [len(line) for line in place.conversation.asked] == [MOST_TYPED, 6]


def test_bytes_that_are_no_text_do_not_stop_the_pipe() -> None:
    place = room()
    place.world.stdin = io.TextIOWrapper(io.BytesIO(b"\xef\xbb\xbfstrips \xff\xfe\r\nstrips\x00\n"), encoding="utf-8")
    assert run(place, "--brief") == 0
    assert place.conversation.asked == ["strips \ufffd\ufffd", "strips\x00"]


def test_signs_that_the_stream_lacks_are_spelled_in_ascii() -> None:
    place = room()
    raw = io.BytesIO()
    place.world.stdout = io.TextIOWrapper(raw, encoding="ascii")
    run(place, "strips")
    assert b"= 2 x (60 in + 72 in) + 10 in" in raw.getvalue()


def test_json_stays_json_where_the_stream_lacks_signs() -> None:
    place = room()
    raw = io.BytesIO()
    place.world.stdout = io.TextIOWrapper(raw, encoding="ascii")
    run(place, "--json", "strips ½")
    assert json.loads(raw.getvalue())["question"] == "strips ½"


# -- colour ----------------------------------------------------------------------------------------------------------


def test_colour_on_a_terminal_only_and_never_against_the_makers_wish() -> None:
    def coloured(place: Room) -> bool:
        run(place, "strips")
        return "\x1b[" in place.out

    assert coloured(room(watched=True))
    assert not coloured(room(watched=False))
    assert not coloured(room(watched=True, NO_COLOR="1"))
    assert not coloured(room(watched=True, TERM="dumb"))
    assert coloured(room(watched=True, NO_COLOR=""))  # set but empty does not count: the NO_COLOR convention


# -- the process itself ----------------------------------------------------------------------------------------------

FAKE_RUN = """
import sys
sys.path.insert(0, {root!r})
from tests.fakes import room
from assistant import __main__, cli
cli.main.__defaults__ = (room().wake,)
sys.exit(__main__.run())
"""


def process(*arguments: str, **more: object) -> subprocess.Popen[bytes]:
    code = FAKE_RUN.format(root=str(ROOT))
    pipes = {"stdin": subprocess.PIPE, "stdout": subprocess.PIPE, "stderr": subprocess.PIPE, **more}
    return subprocess.Popen([sys.executable, "-c", code, *arguments], **pipes)  # type: ignore[call-overload, no-any-return]


def test_a_pipe_closed_by_its_reader_ends_in_silence() -> None:
    running = process("--brief")
    assert running.stdin
    assert running.stdout
    assert running.stderr
    running.stdin.write(b"strips\n")
    running.stdin.flush()
    assert running.stdout.readline() == b"7 strips\n"
    running.stdout.close()
    try:
        running.stdin.write(b"strips\n" * 2000)
        running.stdin.close()
    except BrokenPipeError:
        pass  # it was gone before all was written
    assert running.stderr.read() == b""
    assert running.wait() == 0


@pytest.mark.skipif(not os.path.exists("/dev/full"), reason="needs /dev/full")
def test_a_full_disk_is_one_sentence_and_status_1() -> None:
    with open("/dev/full", "wb") as full:
        running = process("strips", stdout=full)
        _, err = running.communicate()
    assert err == b"ellwand: cannot go on: No space left on device\n"
    assert running.returncode == 1


def test_a_plain_answer_loads_neither_the_chat_nor_an_option_reader() -> None:
    code = FAKE_RUN.replace("sys.exit(__main__.run())", "__main__.run(); print(*sys.modules)")
    code = code.format(root=str(ROOT))
    out = subprocess.run([sys.executable, "-c", code, "strips"], capture_output=True, check=True, text=True).stdout
    assert out.startswith("Cut 7 strips")
    assert not {"prompt_toolkit", "argparse", "sympy", "pint", "platformdirs"} & set(out.splitlines()[-1].split())


def test_a_world_without_streams_is_an_empty_one(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(sys, "stdin", None)
    monkeypatch.setattr(sys, "stdout", None)
    world = World.real()
    assert list(world.lines()) == []
    world.say("nobody hears")
