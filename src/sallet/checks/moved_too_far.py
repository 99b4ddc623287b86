"""A lesson whose season was seen too far away to be moved here.

From where the lesson was seen to where the course meets, spring would have to move by more than
two months. The rule by which sallet moves dates was never meant to reach so far, so the lesson's
own dates stand. Write under `seen here:` on what day something of the plant was seen here.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity
from sallet.season.hopkins import shift_between, spot_of
from sallet.season.observed import observed_here

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "moved-too-far"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
_LESSON: Final = (
    "---\nname: Elder\nseen at: {latitude: %s, longitude: -2.6, elevation: 150 m}\n---\n"
)
_PLACE: Final = "place: {name: the green, latitude: 54.4, longitude: -2.6, elevation: 150 m}\n"
GOOD = {"course.yml": _PLACE, "elder.md": _LESSON % "51.4"}
BAD = {"course.yml": _PLACE, "elder.md": _LESSON % "37.4"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each lesson that is too far away, and of which nothing was seen here."""
    here = spot_of(course.place)
    seen = {observed.lesson.slug for observed in observed_here(course, bank)}
    for lesson in taught_lessons(course, bank):
        shift = shift_between(spot_of(lesson.front.seen_at), here)
        if "too far" in shift.left_out and lesson.slug not in seen:
            message = (
                f"the dates of `{lesson.name}` would move by {abs(round(shift.by_law))} days, "
                "too many to estimate"
            )
            hint = f"write what was seen, as in `seen here: {{{lesson.name} flowers: 2 May}}`"
            yield Problem(course.where("place"), message, hint)
