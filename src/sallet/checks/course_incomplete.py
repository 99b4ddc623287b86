"""Something that every course needs and course.yml does not tell.

A course has a title, a teacher who answers for it, a place by name with its latitude and
longitude (the season of every plant is moved to it), and one lesson at the least.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "course-incomplete"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
GOOD = {
    "course.yml": """title: Hedge and beck
teacher: Ann Wright
place: {name: the village green, latitude: 54.4, longitude: -2.6}
""",
    "ramsons.md": "---\nname: Ramsons\n---\n",
}
BAD = {
    "course.yml": "title: Hedge and beck\nteacher: Ann Wright\n",
    "ramsons.md": "---\nname: Ramsons\n---\n",
}

_NEEDED: Final = (
    (("title",), "title, expected what it is called", "write `title: ` and what it is called"),
    (("teacher",), "teacher, expected who answers for it", "write `teacher: ` and a name"),
    (("place", "name"), "place, expected its name",
     "write `name: ` and the place's name under `place:`"),
    (("place", "latitude"), "latitude, expected degrees north of the place",
     "write `latitude: 54.4`, for example, under `place:`"),
    (("place", "longitude"), "longitude, expected degrees east of the place",
     "write `longitude: -2.6`, for example, under `place:`"),
)  # fmt: skip
"""Each thing that is needed: where it stands, what is said without it, and what to write."""


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each thing that is missing, by itself."""
    for path, missing, hint in _NEEDED:
        if not _is_told(course, path):
            yield Problem(_place(course, path[0]), f"the course has no {missing}", hint)
    if not taught_lessons(course, bank):
        message = "the course has no lesson, expected one at the least"
        hint = f"write a lesson in the folder `{course.lessons}`, or name its plant under `plants:`"
        yield Problem(_place(course, "plants"), message, hint)


def _is_told(course: Course, path: tuple[str, ...]) -> bool:
    # A value that does not fit is another check's matter: it is there.
    node = course.node.reach(path[:-1]).child(path[-1])
    return node is not None and bool(node.text or node.items or node.entries)


def _place(course: Course, name: str) -> Span:
    key = course.node.key(name)
    return key.span if key else Span(0, 0)
