"""A plant named for a session on whose day it is not in season.

A plant for the pot is in season while a part of it is gathered; a plant to keep away from while
it can be met and a plant it is taken for is being gathered. sallet keeps to what you named. If
the day was not chosen for the plant, name it nowhere, and `sallet plan` finds the best session.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import named_plants, taught_lessons
from sallet.findings import Severity
from sallet.season.dates import short_date
from sallet.season.planning import nearest_date, season_of
from sallet.season.teachable import day_of

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.season.teachable import Teachable

ID: Final = "named-out-of-season"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "course"
_LESSON: Final = """---
name: Elder
---
## Season
- flowers: June
## Edible parts
- flowers: June; boiled
"""
GOOD = {"course.yml": "sessions:\n  - {date: 2027-06-12, plants: [Elder]}\n", "elder.md": _LESSON}
BAD = {"course.yml": "sessions:\n  - {date: 2027-04-03, plants: [Elder]}\n", "elder.md": _LESSON}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each plant named for a day on which it is not in season."""
    season = {w.year.lesson.slug: w for w in season_of(course, bank, taught_lessons(course, bank))}
    for plant in named_plants(course):
        lesson = bank.find(plant.name)
        if plant.session is None or lesson is None or lesson.slug not in season:
            continue
        day, what = course.sessions[plant.session].date, season[lesson.slug]
        if what.days and not what.is_on(day_of(day)):
            message = f"`{plant.name}` is not in season on {short_date(day)}, {_there(what, day)}"
            hint = "leave it if that is meant, or move it to another session"
            yield Problem(plant.span, message, hint)


def _there(what: Teachable, day: date) -> str:
    stages = what.stages(day_of(day))
    seen = f"though this can be seen: {', '.join(stages)}" if stages else "and nothing can be seen"
    nearest = nearest_date(what, [day])
    return f"{seen}; nearest date {short_date(nearest)}" if nearest else seen
