"""The door: `ellwand` and `python -m assistant`."""

from __future__ import annotations

import gc
import sys


def run() -> int:
    """Answer the command line, and give the exit status. No ending shows a traceback: not Ctrl-C, not a closed pipe."""
    gc.disable()  # importing makes much and frees little: collecting meanwhile costs a tenth of a whole answer
    from .status import Status

    try:
        from .cli import main
        from .world import World

        world = World.real()
        status = main(sys.argv[1:], world)
    except KeyboardInterrupt:
        status = Status.STOPPED
    except BrokenPipeError:  # whoever read the answers has read enough
        _drop_stdout()
        status = Status.ANSWERED
    except OSError as error:  # a full disk, a stream gone
        _drop_stdout()
        _complain(f"ellwand: cannot go on: {error.strerror or error}")
        status = Status.SOME_NOT
    gc.freeze()  # nothing is left to collect that ending the process does not free
    return int(status)


def _drop_stdout() -> None:
    """Send what is still unwritten nowhere, so that Python does not try again at its end and complain."""
    import os

    try:
        os.dup2(os.open(os.devnull, os.O_WRONLY), 1)
    except OSError:
        return


def _complain(text: str) -> None:
    try:
        print(text, file=sys.stderr)
    except OSError:
        return


if __name__ == "__main__":
    sys.exit(run())
