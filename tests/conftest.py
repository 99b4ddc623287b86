"""Hypothesis explores anew in each run here, and repeats itself where a run must be repeatable."""

from __future__ import annotations

import os

from hypothesis import settings

settings.register_profile("explore", deadline=None)
settings.register_profile("repeat", deadline=None, derandomize=True, print_blob=True)
settings.load_profile("repeat" if os.environ.get("CI") else "explore")
