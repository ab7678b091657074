"""How much a search may do. Counted in steps, not seconds, so that the same question always gives the same lay."""

from __future__ import annotations

import sys
from collections.abc import Callable

CHECK_EVERY = 2_000  # steps between two looks at the stop callable


class Effort:
    """A purse of search steps, of which a part of the search can be given a share.

    stop: asked now and then; when it says True the purse counts as empty.
    """

    def __init__(self, steps: int, stop: Callable[[], bool] | None = None) -> None:
        self.left = self._given = steps
        self._stop = stop
        self._unchecked = 0
        self._stopped = False

    @property
    def spent(self) -> bool:
        return self._stopped or self.left <= 0

    def spend(self, steps: int) -> bool:
        """Take steps from the purse; False when it is empty."""
        self.left -= steps
        self._unchecked += steps
        if self._stop is not None and self._unchecked >= CHECK_EVERY:
            self._unchecked = 0
            self._stopped = self._stopped or self._stop()
        return not self.spent

    @property
    def used(self) -> int:
        """Steps taken so far."""
        return self._given - self.left

    def share(self, steps: int) -> Effort:
        """A purse of its own with at most so many steps; what it used is to be spent from this one."""
        return Effort(min(steps, self.left), self._stop)

    @classmethod
    def unlimited(cls) -> Effort:
        return cls(sys.maxsize)
