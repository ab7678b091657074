"""Every published row: checked against the rules, or listed with its reason; none is passed over."""

from __future__ import annotations

import pytest

from . import harness

FILES = sorted({mapping.FILE for mapping in harness.mappings()})  # type: ignore[attr-defined]
ROWS = [(name, row) for name in FILES for row in harness.load(name)]


@pytest.mark.parametrize("name", FILES)
def test_every_row_is_checked_or_listed(name: str) -> None:
    listings = harness.listings(name)
    neither = [
        row.id
        for row in harness.load(name)
        if harness.said(row, name) is None and not any(one.which(row) for one in listings)
    ]
    assert not neither, f"{len(neither)} rows neither checked nor listed, such as {neither[:5]}"


@pytest.mark.parametrize("name", FILES)
def test_what_the_rules_say_agrees_with_what_was_published(name: str) -> None:
    wrong = []
    for row in harness.load(name):
        value = harness.said(row, name)
        if value is not None and not harness.agrees(row, value):
            wrong.append(
                f"{row.id}: {row.inputs}: published {row.expected} {row.unit} (within {row.tolerance}), said {value}"
            )
    assert not wrong, f"{len(wrong)} rows disagree:\n" + "\n".join(wrong[:20])


@pytest.mark.parametrize("name", FILES)
def test_the_listings_count_their_rows(name: str) -> None:
    for listed in harness.listings(name):
        count = sum(1 for row in harness.load(name) if listed.which(row) and harness.said(row, name) is None)
        assert count == listed.count, f"{listed.why}: {count} rows, not {listed.count}"
