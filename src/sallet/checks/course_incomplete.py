"""Something that every course needs and course.yml does not tell.

A course has a title, a teacher who answers for it, a place by name with its latitude and
longitude (the season of every plant is moved to it), and one lesson at the least.
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
    from sallet.source import Span

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
    (("title",), "a title", "write `title: Hedge and beck`, or what the course is called"),
    (("teacher",), "a teacher", "write `teacher: ` and the name of who teaches it"),
    (("place", "name"), "the name of its place", "write `name: ` and the place under `place:`"),
    (("place", "latitude"), "a latitude", "write `latitude: 54.4`, degrees north, under `place:`"),
    (("place", "longitude"), "a longitude",
     "write `longitude: -2.6`, degrees east, under `place:`"),
)  # fmt: skip


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each thing that is missing, by itself."""
    for path, name, hint in _NEEDED:
        if not _is_told(course, path):
            yield Problem(
                _place(course, path), f"the course has no {path[-1]}, expected {name}", hint
            )
    if not taught_lessons(course, bank):
        message = f"the course teaches no plant, expected a lesson in the folder `{course.lessons}`"
        hint = "write a lesson, or name the plants behind `plants:`"
        yield Problem(course.where("plants"), message, hint)


def _is_told(course: Course, path: tuple[str, ...]) -> bool:
    # A value that does not fit is another check's matter: it is there.
    node = course.node.reach(path[:-1]).child(path[-1])
    return node is not None and bool(node.text or node.items or node.entries)


def _place(course: Course, path: tuple[str, ...]) -> Span:
    key = course.node.key(path[0])
    return key.span if key else course.node.span
