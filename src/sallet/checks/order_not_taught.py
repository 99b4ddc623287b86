"""A rule under `after:` about a plant that the course does not teach.

The plant has a lesson, but it is in no list of the course, so nothing can come before or after
it. Mostly it was left out of `plants`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import ordered_plants, taught_lessons
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "order-not-taught"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
_LESSONS: Final = {
    "hemlock.md": "---\nname: Hemlock\n---\n",
    "sweet-cicely.md": "---\nname: Sweet cicely\n---\n",
}
GOOD = {"course.yml": "after: {Sweet cicely: Hemlock}\n", **_LESSONS}
BAD = {"course.yml": "plants: [Sweet cicely]\nafter: {Sweet cicely: Hemlock}\n", **_LESSONS}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each plant of a rule that the course does not teach."""
    taught = taught_lessons(course, bank)
    for plant in ordered_plants(course):
        lesson = bank.find(plant.name)
        if lesson and lesson not in taught:
            message = f"`{plant.name}` is not taught in this course, so its order means nothing"
            yield Problem(plant.span, message, "name it under `plants:`, or take the rule out")
