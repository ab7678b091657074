"""How far the property tests search: the same examples each time, or new ones when someone goes looking.

A run that must say "passed" or "failed" about a change tries the same examples each time. To search for examples that
nobody has tried yet: `HYPOTHESIS_PROFILE=search pytest -k properties`; what it finds is added to the test by name.
"""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("fixed", derandomize=True, deadline=None)
settings.register_profile("search", derandomize=False, deadline=None)
settings.load_profile(os.environ.get("HYPOTHESIS_PROFILE", "fixed"))
