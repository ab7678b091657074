"""The last net: a fault of the program's own costs one answer, not the whole pipe or the chat."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from rules.engine.answer import Answer

    from .conversation import Conversation


def ask(conversation: Conversation, question: str) -> Answer:
    """The conversation's answer; should it raise, a reply that says so and where, and the conversation begun anew."""
    try:
        return conversation.ask(question)
    except Exception as error:  # whatever it is, the lines after this one are still to be answered
        conversation.forget()
        return _fault(question, error)


def _fault(question: str, error: Exception) -> Answer:
    from pathlib import Path

    from rules.engine.answer import Answer

    trace = error.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    where = f" at {Path(trace.tb_frame.f_code.co_filename).name}, line {trace.tb_lineno}" if trace else ""
    message = (
        f"A fault of the program's own ({type(error).__name__}{where}) stopped this answer; please report it, "
        "with the question. Try the question in other words, or type help."
    )
    return Answer("unclear", message=message, question=question)
