"""A date to skip on which the series does not meet anyway.

Mostly the day or the month has slipped, and the class would meet on the day that you wanted
free. Write one of the dates of the series.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date

    from sallet.course.model import Course
    from sallet.course.series import Series
    from sallet.lesson.bank import Bank
    from sallet.source import Span

ID: Final = "skipped-date"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "course"
_SERIES: Final = "sessions:\n  - {first: 2027-04-03, every: 2 weeks, count: 6, skip: 2027-05-%s}\n"
GOOD = {"course.yml": _SERIES % "01"}
BAD = {"course.yml": _SERIES % "08"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each date to skip that is not one of its series."""
    for series in course.series:
        days = frozenset(series.passed())
        for day in dict.fromkeys(series.skip):
            if day not in days:
                near = [near.isoformat() for near in series.nearest(day)]
                message = f"the series does not meet on `{day}` anyway"
                hint = f"write a date of the series, such as {listed(near)}, or take it out"
                yield Problem(_span(course, series, day), message, hint)


def _span(course: Course, series: Series, day: date) -> Span:
    # By its words: a date that could not be read has moved the ones behind it.
    skip = course.node.reach(("sessions", series.listed, "skip"))
    return next((i.span for i in skip.items or () if i.text == day.isoformat()), skip.span)
