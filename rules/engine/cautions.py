"""Which warnings an answer carries: its rule's own, and the trade's general ones by what the question mentions."""

from __future__ import annotations

from typing import TYPE_CHECKING

from .declare import Caution

if TYPE_CHECKING:
    from .run import Run


def applies(caution: Caution, mentions: frozenset[str], run: Run | None) -> bool:
    """Whether a caution belongs here: by its condition, and by the words of the question."""
    if caution.when and not (run is not None and run.holds_formula(caution.when)):
        return False
    if caution.mentions and not mentions.intersection(caution.mentions):
        return False
    return all(mentions.intersection(group) for group in caution.all_of)


def cautions_for(run: Run) -> tuple[str, ...]:
    """The cautions of a finished run, each with its source, none twice."""
    from rules.cautions import GENERAL

    mentions = run.request.mentions | frozenset((run.rule.topic, run.rule.family))
    met = [c for c in (*run.rule.cautions, *GENERAL) if applies(c, mentions, run)]
    return tuple(dict.fromkeys(f"{c.text} ({c.source})" for c in met))
