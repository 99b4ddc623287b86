"""A course that does not tell how high its place lies, though lessons tell it of theirs.

Spring comes some three days later for every hundred metres upward. Without the height of the
place, sallet cannot move the season up or down.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "no-elevation"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "course"
_LESSON: Final = (
    "---\nname: Elder\nseen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}\n---\n"
)
GOOD = {
    "course.yml": "place: {latitude: 54, longitude: -2, elevation: 90 m}\n",
    "elder.md": _LESSON,
}
BAD = {"course.yml": "place: {latitude: 54, longitude: -2}\n", "elder.md": _LESSON}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield the missing height, once."""
    place = course.place
    if place.latitude is None or place.longitude is None or place.elevation is not None:
        return
    if course.node.reach(("place",)).child("elevation"):
        return  # there, but not to be read: another check's matter
    lessons = taught_lessons(course, bank)
    if any(x.front.seen_at and x.front.seen_at.elevation is not None for x in lessons):
        message = "the course does not tell how high its place lies, expected `elevation`"
        hint = "write `elevation: 150 m`, for example, under `place:`"
        yield Problem(course.where("place"), message, hint)
