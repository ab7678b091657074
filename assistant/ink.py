"""Modest colour for a terminal, as plain SGR codes; none anywhere else."""

from __future__ import annotations

BOLD, DIM, YELLOW = "1", "2", "33"


def ink(lines: list[str], code: str, colour: bool) -> list[str]:
    r"""Lines in bold, dim or yellow when colour is on; the codes stand on each line, so that wrapping does no harm.

    >>> ink(["7 strips"], BOLD, True), ink(["7 strips"], BOLD, False)
    (['\x1b[1m7 strips\x1b[0m'], ['7 strips'])
    """
    return [f"\x1b[{code}m{line}\x1b[0m" if line else line for line in lines] if colour else lines
