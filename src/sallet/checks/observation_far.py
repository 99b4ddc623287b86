"""A day seen here that is more than two months from the lesson's own.

From one place of the temperate north to another a plant is seldom so early or so late. Mostly the
month has slipped, or another plant was seen. If it is true, the lesson's own dates should be
looked at.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.season.here import by_law
from sallet.season.hopkins import FARTHEST, shift_between, spot_of
from sallet.season.observed import days_late, observed_here
from sallet.season.words import day_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "observation-far"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
_LESSON: Final = """---
name: Ramsons
---
## Season
- flowers: mid April to June
"""
GOOD = {"course.yml": "seen here: {ramsons flowers: 2 May 2026}\n", "ramsons.md": _LESSON}
BAD = {"course.yml": "seen here: {ramsons flowers: 2 July 2026}\n", "ramsons.md": _LESSON}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each observation that is far from what the lesson tells."""
    for observed in observed_here(course, bank):
        origin = spot_of(observed.lesson.front.seen_at)
        law = by_law(shift_between(origin, spot_of(course.place)))
        apart = abs(days_late(observed, law))
        if apart > FARTHEST:
            there = day_words(observed.window.first)
            message = (
                f"`{observed.observation.words}` on {day_words(observed.day)} is {apart} days from "
                f"the lesson's own first day, {there}"
            )
            hint = "look at the month, and at whether it was this plant"
            yield Problem(course.where("seen here", observed.observation.words), message, hint)
