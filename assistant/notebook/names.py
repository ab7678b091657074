"""The names of what is kept, as a maker would type them."""

from __future__ import annotations

from .measures import KIND as MEASURE
from .measures import PERSON
from .page import Page

NAMED = ("stock", "project", "table")


def of_page(page: Page) -> tuple[str, ...]:
    """Measures as "my waist" and "Ines's hip", then things in hand, projects and size tables."""
    people = {person.name: person.body["called"] for person in page.all(PERSON)}
    measures = [
        f"{people.get(thing.owner, thing.owner)}'s {thing.name}" if thing.owner else f"my {thing.name}"
        for thing in page.all(MEASURE)
    ]
    return (*measures, *(str(thing.body["called"]) for kind in NAMED for thing in page.all(kind)))
