"""Weeks in which a plant is not surely told from one that harms where the course meets.

`unsure-weeks` looks at the place where a lesson was seen. Where the course meets, dates are moved,
each plant as `seen here` has it, and look-alikes of other lessons come nearer or go: so a week may be
in doubt here that is sure there. Nobody may gather in it, unless the lesson says under the
look-alike how it is settled.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.doubts import doubts, home_years, what_is_seen
from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity
from sallet.season.planning import plant_years
from sallet.season.words import days_words

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "unsure-weeks-here"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
_RAMSONS = """---
name: Ramsons
seen at: {latitude: 54.4, longitude: -2.6, elevation: 150 m}
---
## Identification
### Flowers
- inflorescence: umbel
- petals fused or free: free
## Look-alikes
### Lily of the valley
- danger: poisonous
#### Flowers
- inflorescence: one-sided raceme
- petals fused or free: joined into a tube
## Season
- leaves: March to June
- flowers: May
## Edible parts
- leaves: mid May; raw
"""
_COURSE = """
plants: [Ramsons]
place: {name: Askerby, latitude: %s, longitude: -2.6, elevation: 150 m}
"""
GOOD = {"course.yml": _COURSE % "54.4", "ramsons.md": _RAMSONS}
BAD = {"course.yml": _COURSE % "60.4", "ramsons.md": _RAMSONS}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each doubt of the course's place that is none where the lesson was seen."""
    years = plant_years(course, bank)
    for lesson in taught_lessons(course, bank):
        here = list(doubts(lesson, years, bank))
        known = {t.name for t in doubts(lesson, home_years(lesson, bank), bank)} if here else set()
        for telling in here:
            if telling.name not in known:
                message = (
                    f"where the course meets, `{lesson.name}` is not surely told from "
                    f"`{telling.name}` ({telling.danger}) at times of gathering "
                    f"({days_words(telling.withheld)}): "
                    f"{what_is_seen(telling, bank)}"
                )
                hint = (
                    f"write in the lesson, under `{telling.name}`, `- settled by: how you make sure`, "
                    "or record a further feature that can be seen then"
                )
                yield Problem(course.where("place"), message, hint)
