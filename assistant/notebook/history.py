"""The history of what was kept, and taking it back."""

from __future__ import annotations

from rules.engine.answer import Answer

from . import reply
from .hearing import Hearing
from .page import Sentence

SHOWN = 20


def undo(hearing: Hearing) -> Answer | None:
    """Take back the last sentence that still counts; said again, the one before it."""
    last = next((one for one in reversed(hearing.page.sentences()) if one.undone_by is None and not one.does), None)
    if last is None:
        return reply.unsure(
            "There is nothing left to undo. What changes the notebook can be undone, such as: my waist is 66 cm"
        )
    hearing.page.take_back(last, "undo")
    return reply.done(f"Undone: {last.said}", "redo brings it back.")


def redo(hearing: Hearing) -> Answer | None:
    """Take back the last undo, unless something new has been said since."""
    sentences = hearing.page.sentences()
    last = next((one for one in reversed(sentences) if one.undone_by is None and one.does != "redo"), None)
    if last is None or last.does != "undo":
        return reply.unsure("There is nothing to redo: redo takes back an undo, as long as nothing new was said since.")
    taken_back = next(one for one in sentences if one.undone_by == last.number)
    hearing.page.take_back(last, "redo")
    hearing.page.stand_again(taken_back)
    return reply.done(f"Done again: {taken_back.said}")


def tell(hearing: Hearing) -> Answer | None:
    """The last sentences that changed something, the newest last, and which of them were undone."""
    sentences = hearing.page.sentences()
    if not sentences:
        return reply.told("Nothing has been kept yet. Such as: my waist is 66 cm")
    rows = [
        (str(one.number), _when(one), f"{one.said} (undone)" if one.undone_by else one.said)
        for one in sentences[-SHOWN:]
    ]
    earlier = len(sentences) - len(rows)
    notes = [f"{earlier} earlier ones are not shown; export the notebook for all of them."] if earlier else []
    count = f"{len(sentences)} {'sentence has' if len(sentences) == 1 else 'sentences have'}"
    return reply.told(
        f"{count} changed the notebook, the newest last.",
        table=reply.table(("no.", "when (UTC)", "said"), rows),
        notes=notes,
    )


def _when(sentence: Sentence) -> str:
    return sentence.at[:16].replace("T", " ")
