"""A plant that the course names and no lesson describes.

Names are looked up by common name, by the other names in a lesson's head, by file name and
by scientific name. A misspelt name would drop the plant from the course, and under `after:` it
would drop a rule of order.
"""

from __future__ import annotations

from difflib import get_close_matches
from itertools import chain
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean
from sallet.course.teaching import named_plants, ordered_plants
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "unknown-lesson"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
GOOD = {
    "course.yml": "plants: [Ramsons]\n",
    "lessons/ramsons.md": "---\nname: Ramsons\n---\n",
}
BAD = {
    "course.yml": "plants: [Ramson]\n",
    "lessons/ramsons.md": "---\nname: Ramsons\n---\n",
}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each name that no lesson answers to."""
    for plant in chain(named_plants(course), ordered_plants(course)):
        if bank.find(plant.name) is None:
            names = [lesson.name for lesson in bank.lessons]
            near = get_close_matches(plant.name, names, n=3, cutoff=0.5)
            message = f"no lesson is named `{plant.name}` in the folder `{course.lessons}`"
            hint = did_you_mean(near, "write the lesson, or take it out")
            yield Problem(plant.span, message, hint)
