"""A plant that two sessions teach.

That may be just what you want, once in leaf and once in fruit. It may also be a slip of
copying, while another plant was left out. The second mention is shown.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import named_plants, plant_key
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "plant-in-two-sessions"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "course"
GOOD = {
    "course.yml": """sessions:
  - {date: 2027-04-03, plants: [Ramsons]}
  - {date: 2027-04-17, plants: [Elder]}
"""
}
BAD = {
    "course.yml": """sessions:
  - {date: 2027-04-03, plants: [Ramsons]}
  - {date: 2027-04-17, plants: [Ramsons]}
"""
}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each mention in a session after the first."""
    first: dict[str, int] = {}
    for plant in named_plants(course):
        if plant.session is None:
            continue
        key = plant_key(plant.name, bank)
        if key in first:
            day = course.sessions[first[key]].date
            message = f"`{plant.name}` is taught in the session of {day} already"
            hint = "leave it if that is meant, or name the other plant"
            yield Problem(plant.span, message, hint)
        first.setdefault(key, plant.session)
