"""Signs a stream can carry: ASCII in place of what its encoding lacks, and no control characters from typed text."""

from __future__ import annotations

ASCII = {
    "×": "x", "÷": "/", "π": "pi", "√": "sqrt", "−": "-", "–": "-", "—": "-", "‘": "'", "’": "'", "“": '"', "”": '"',
    "′": "'", "″": '"', "½": "1/2", "¼": "1/4", "¾": "3/4", "²": "^2", "³": "^3", "°": " degrees", "…": "...",
    "£": "GBP ", "€": "EUR ", "¥": "JPY ", "≥": ">=", "≤": "<=", "≈": "about ", "·": "-", "\u00a0": " ",
}  # fmt: skip

# Typed text is echoed in answers: an escape sequence or a change of writing direction must not reach the terminal.
_CONTROLS = {
    **dict.fromkeys((*range(32), *range(127, 160), *range(0x202A, 0x202F), *range(0x2066, 0x206A)), "\ufffd"),
    **dict.fromkeys(map(ord, "\t\n\r"), " "),
}


def clean(text: str) -> str:
    r"""One line of text without control characters; tabs and line ends become spaces.

    >>> clean("a\tb\x1b[31m")
    'a b\ufffd[31m'
    """
    return text if text.isprintable() else text.translate(_CONTROLS)


def carried(text: str, encoding: str) -> str:
    """The text in signs that the encoding has, with ASCII spellings for those it lacks.

    >>> carried("2 × π", "ascii"), carried("2 × π", "latin-1"), carried("2 × π", "utf-8")
    ('2 x pi', '2 × pi', '2 × π')
    """
    try:
        text.encode(encoding)
        return text
    except UnicodeEncodeError:
        return "".join(_carried_sign(sign, encoding) for sign in text)


def _carried_sign(sign: str, encoding: str) -> str:
    try:
        sign.encode(encoding)
        return sign
    except UnicodeEncodeError:
        return ASCII.get(sign, "?")
