"""Every rule's formulas work out to their dimensions, and every rule says what it needs to say."""

from __future__ import annotations

import pytest

from rules.engine.check import check_deeply
from tests.support import mind


@pytest.mark.parametrize("topic", list(mind().rules))
def test_the_formulas_of_a_rule_fit_their_dimensions(topic: str) -> None:
    check_deeply(mind().rules[topic])
