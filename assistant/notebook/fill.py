"""Questions that take something from the notebook: "elastic for my waist", "ease at the bust for Ines"."""

from __future__ import annotations


def answer(notebook, said, heard, talk):
    return None
