"""A dangerous look-alike that has a lesson, which the course leaves out.

The course teaches a plant, the plant's lesson warns of a deadly or poisonous double, and the
double has a lesson of its own in the same folder. Students learn a difference best with both
plants before them: add the name to `plants:` or to the session.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import named_plants, taught_lessons
from sallet.findings import Severity
from sallet.lesson.model import GRAVE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "dangerous-look-alike-not-taught"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "course"
_LESSONS: Final = {
    "ramsons.md": "---\nname: Ramsons\n---\n## Look-alikes\n### Meadow saffron\n",
    "saffron.md": "---\nname: Meadow saffron\ntaught as: look-alike\ndanger: deadly\n---\n",
}
GOOD = {"course.yml": "plants: [Ramsons, Meadow saffron]\n"} | _LESSONS
BAD = {"course.yml": "plants: [Ramsons]\n"} | _LESSONS


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield, at each plant's first mention, its dangerous doubles that are left out."""
    taught = {lesson.source.path for lesson in taught_lessons(course, bank)}
    seen: set[str] = set()
    for plant in named_plants(course):
        lesson = bank.find(plant.name)
        if lesson is None or lesson.source.path in seen:
            continue
        seen.add(lesson.source.path)
        for double, danger in _dangerous_doubles(lesson, bank):
            if double.source.path not in taught:
                message = f"`{lesson.name}` is taught without `{double.name}`, its {danger} double"
                hint = f"add `{double.name}` to `plants` or to the session"
                yield Problem(plant.span, message, hint)


def _dangerous_doubles(lesson: Lesson, bank: Bank) -> Iterator[tuple[Lesson, str]]:
    for look in lesson.look_alikes:
        double, danger = bank.lesson_of(look), bank.danger_of(look)
        if double and danger in GRAVE:
            yield double, danger
