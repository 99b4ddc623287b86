"""Sessions on one date, or not in the order of their dates.

The pages print the sessions in the order of their dates, and the calendar makes one entry of
each. Two on one day are mostly a slip in the month; so is a date before the one above it. The
dates of a series need no order: they follow from it.
"""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.course.teaching import dated_sessions
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "session-order"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "sessions:\n  - date: 2027-04-03\n  - date: 2027-04-17\n"}
BAD = {"course.yml": "sessions:\n  - date: 2027-04-17\n  - date: 2027-04-03\n"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each session that does not follow the one above it."""
    for (_, above), (place, below) in pairwise(dated_sessions(course)):
        span = course.where("sessions", place, "date")
        if above.date == below.date:
            message = f"`{below.date}` is the date of the session above too"
            yield Problem(span, message, "change one of the two, or make one session of both")
        elif above.date > below.date:
            message = f"`{below.date}` is before the session above it, `{above.date}`"
            yield Problem(span, message, "put the sessions into the order of their dates")
