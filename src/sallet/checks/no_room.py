"""A plant of the course that no session teaches.

The sessions hold fewer plants than the course has lessons. The plant's page is published all the
same, but nobody is shown the plant. Let a session hold more, add one, or leave the plant out of
the course.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import taught_lessons
from sallet.findings import Severity
from sallet.season.planning import make_plan
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "no-room"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
_LESSONS: Final = {"elder.md": "---\nname: Elder\n---\n", "hazel.md": "---\nname: Hazel\n---\n"}
GOOD = {"course.yml": "sessions:\n  - {date: 2027-06-12, holds: 2}\n", **_LESSONS}
BAD = {"course.yml": "sessions:\n  - {date: 2027-06-12, holds: 1}\n", **_LESSONS}


def check(course: Course, bank: Bank) -> Iterator[Problem]:
    """Yield each plant without a session, if there are sessions at all."""
    if not any(session.holds is not None for session in course.sessions):
        return
    for unplaced in make_plan(course, bank, taught_lessons(course, bank)).unplaced:
        message = f"no session has room for `{unplaced.what.year.lesson.name}`"
        hint = "let a session hold more, add one, or leave the plant out of `plants`"
        key = course.node.key("sessions")
        yield Problem(key.span if key else Span(0, 0), message, hint)
