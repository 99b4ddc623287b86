"""A rule under `after:` that the plants named in the sessions break.

The plants that a session names are taught there and nowhere else. If a rule wants one of them
after a plant that is named for a later session, both cannot hold; the rule is then set aside.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity
from sallet.season.planning import broken_rules

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank
    from sallet.source import Span

ID: Final = "order-against-plants"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
_LESSONS: Final = {
    "hemlock.md": "---\nname: Hemlock\n---\n",
    "sweet-cicely.md": "---\nname: Sweet cicely\n---\n",
}
_SESSIONS: Final = """after: {Sweet cicely: Hemlock}
sessions:
  - {date: 2027-05-01, plants: [%s]}
  - {date: 2027-05-15, plants: [%s]}
"""
GOOD = {"course.yml": _SESSIONS % ("Hemlock", "Sweet cicely"), **_LESSONS}
BAD = {"course.yml": _SESSIONS % ("Sweet cicely", "Hemlock"), **_LESSONS}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each rule that cannot hold; those that run in a circle are another check's matter."""
    broken = broken_rules(course, bank, taught_lessons(course, bank))
    for rule in course.after:
        then = bank.find(rule.plant)
        for index, name in enumerate(rule.first):
            first = bank.find(name)
            if then and first and (first.slug, then.slug) in broken:
                message = (
                    f"`{rule.plant}` cannot come after `{name}`: the sessions name them, "
                    "or plants between them, the other way round"
                )
                hint = "name them in the other order, or take the rule out"
                yield Problem(_span(course, rule.plant, index), message, hint)


def _span(course: Course, plant: str, index: int) -> Span:
    return course.where("after", plant, index)
