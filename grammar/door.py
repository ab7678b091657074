"""The door: every text is made plain once, before it is read, and every position can be led back to the text as typed.

Curly quotes, primes, dashes, the signs for times and divide, hard spaces, one-sign fractions, full-width digits and
zero-width characters all become what a plain keyboard types, in small letters.
"""

from __future__ import annotations

import unicodedata
from typing import NamedTuple

_SAME_LENGTH = {
    "‘’‚‛′ʹʼ´`": "'",
    "“”„‟″ʺ": '"',
    "‐‑‒–—―−﹣－": "-",
    "×✕✖⨯": "x",
    "÷∕⁄／": "/",
    "∼～": "~",
    "\t\u00a0\u1680\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000\r\v\f": " ",
    "\u0085\u2028\u2029": "\n",
    "\u200b\u200c\u200d\u2060\ufeff\u00ad\u200e\u200f": "",
}
_PLAIN = {ord(sign): plain for signs, plain in _SAME_LENGTH.items() for sign in signs}
_PLAIN |= {code: chr(code - 0xFF01 + 0x21) for code in range(0xFF01, 0xFF5F) if code not in _PLAIN}


class Door(NamedTuple):
    """A text made plain. origin[i] is where character i of it stands in the text as typed; None when nothing moved."""

    plain: str
    origin: list[int] | None

    def back(self, position: int) -> int:
        """The position in the text as typed."""
        return position if self.origin is None else self.origin[position]


def enter(text: str) -> Door:
    """Make a text plain."""
    if text.isascii():
        return Door(text.lower().translate(_PLAIN), None)
    pieces: list[str] = []
    origin: list[int] = []
    # Signs that vanish are taken out first, so that what they stood between meets.
    seen = [(at, sign) for at, sign in enumerate(text) if _PLAIN.get(ord(sign)) != ""]
    signs = "".join(sign for _, sign in seen)
    for place, (at, sign) in enumerate(seen):
        piece = _piece(sign, signs[place - 1 : place] if place else "", signs[place + 1 : place + 2])
        if piece:
            pieces.append(piece)
            origin.extend([at] * len(piece))
    origin.append(len(text))
    return Door("".join(pieces), origin)


def _piece(sign: str, before: str, after: str) -> str:
    """The plain text for one sign; a one-sign fraction is kept apart from what it would run into."""
    if sign.isascii():
        return _PLAIN.get(ord(sign), sign.lower())
    plain = _PLAIN.get(ord(sign))
    if plain is not None:
        return plain.lower()
    fraction = _fraction(sign)
    if fraction:
        return " " * _runs_on(before) + fraction + " " * (_runs_on(after) and not after.isalpha())
    small = sign.lower()
    return small if len(small) == 1 else sign


def _runs_on(beside: str) -> bool:
    return beside.isalnum() or (beside != "" and beside in "./,_⁄∕÷×✕✖⨯")


def _fraction(sign: str) -> str:
    """'1/2' for the one-sign half, '' for anything else."""
    spread = unicodedata.normalize("NFKC", sign)
    return spread.replace("\u2044", "/") if len(spread) > 2 and "\u2044" in spread else ""
