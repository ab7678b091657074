"""The command line read by hand: argparse alone would take longer to import than an answer to work."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

USAGE = "Usage: ellwand [OPTION]... [QUESTION]..."

HELP = f"""{USAGE}
Plain questions of workroom arithmetic (sewing, bags, quilting, knitting),
answered offline, with the working shown.

  ellwand                    chat, when started at a terminal
  ellwand QUESTION...        answer one question
  ... | ellwand              answer each line; blank lines and lines that
                             begin with # pass
  ellwand help [TOPIC]       what can be asked; ellwand examples [TOPIC]
  ellwand explain TOPIC      the sum taught; also derive, step by step and
                             practise TOPIC, worksheet of 10 on TOPIC
  ellwand help notebook      what can be kept; also help practise, help plans,
                             help drawings

Options, anywhere before a lone --, which ends them:
  --json             one JSON object for each question, a line each
  --brief            just the answer: one line out for one line in, a message
                     where there is no answer; only a table takes more lines,
                     one a row, with tabs between its cells
  --units SYSTEM     answer in inches or metric (in and cm will do)
  --together         piped lines are one conversation, not questions apart
  --notebook FILE    the notebook to use, in place of your own
  --no-notebook      use no notebook
  --plain            the chat without colour, menus or the line below the
                     prompt, for screen readers
  --version          print the version
  --help             print this

Exit status: 0 when every question was answered, 1 when some were not,
2 when the options were wrong.
Environment: NO_COLOR (no colour), COLUMNS (width of the lines),
ELLWAND_CACHE, ELLWAND_STATE, ELLWAND_DATA (folders in place of the usual).

Example: ellwand how many 2 1/2 in binding strips for a 60 x 72 in quilt"""

SYSTEMS = {"inches": "in", "inch": "in", "in": "in", "imperial": "in", "metric": "cm", "cm": "cm"}
FLAGS = ("--json", "--brief", "--together", "--no-notebook", "--plain", "--version", "--help")
WITH_VALUE = ("--units", "--notebook")


class WrongUsage(Exception):
    """The options were not understood; the message says what to type instead."""


@dataclass(slots=True)
class Options:
    """What was asked for on the command line. units: "in", "cm" or "" for the question's own."""

    words: list[str]
    json: bool = False
    brief: bool = False
    together: bool = False
    no_notebook: bool = False
    plain: bool = False
    version: bool = False
    help: bool = False
    units: str = ""
    notebook: str = ""

    @property
    def question(self) -> str:
        return " ".join(self.words).strip()


def read(arguments: Sequence[str]) -> Options:
    """The arguments after the command's name. Raises WrongUsage."""
    options = Options([])
    waiting = [_decoded(argument) for argument in arguments]
    while waiting:
        word = waiting.pop(0)
        if word == "--":
            options.words += waiting
            break
        if not _is_option(word):
            options.words.append(word)
            continue
        name, equals, value = word.partition("=")
        if name in WITH_VALUE:
            _set(options, name, _value_of(name, value if equals else None, waiting))
        else:
            _raise_flag(options, "--help" if name == "-h" else name, equals)
    _check(options)
    return options


def _decoded(argument: str) -> str:
    """Bytes of an argument that are no text in this locale become replacement signs."""
    return argument.encode("utf-8", "surrogateescape").decode("utf-8", "replace")


def _is_option(word: str) -> bool:
    """-5, -½ and a question in one argument that begins with a dash are words, not options."""
    named = word.startswith("-") and (word[1:2].isalpha() or word[1:2] == "-")
    return named and not any(sign.isspace() for sign in word)


def _raise_flag(options: Options, name: str, equals: str) -> None:
    if name not in FLAGS:
        raise WrongUsage(f"I do not know the option {name}.{_suggestion(name)}")
    if equals:
        raise WrongUsage(f"{name} takes no value. Type {name} alone.")
    setattr(options, name[2:].replace("-", "_"), True)


def _value_of(name: str, value: str | None, waiting: list[str]) -> str:
    if value is None and waiting:
        value = waiting.pop(0)
    if not value:
        example = "--units metric" if name == "--units" else "--notebook FILE"
        raise WrongUsage(f"{name} needs a value, as in {example}.")
    return value


def _set(options: Options, name: str, value: str) -> None:
    if name == "--notebook":
        options.notebook = value
    elif value.lower() in SYSTEMS:
        options.units = SYSTEMS[value.lower()]
    else:
        raise WrongUsage(f"I do not know the units {value}. Type --units inches or --units metric.")


def _check(options: Options) -> None:
    if options.json and options.brief:
        raise WrongUsage("--json and --brief are two forms of answer. Type one of them.")
    if options.notebook and options.no_notebook:
        raise WrongUsage("--notebook and --no-notebook contradict each other. Type one of them.")


def _suggestion(name: str) -> str:
    from difflib import get_close_matches  # only when something is wrong: it is slow to import

    near = get_close_matches(name, sorted((*FLAGS, *WITH_VALUE)), n=1)
    return f" Did you mean {near[0]}?" if near else ""
