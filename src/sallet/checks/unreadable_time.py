"""A time of year that cannot be read.

Nothing may be gathered in weeks that the tool does not know, and a season that is not read
is missing from the map and from the cards. Write months, `March to June`, with early, mid or
late in front of them if you like, or days, `12 March – 5 June`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unreadable-time"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Season
- leaves: late February to mid June
"""
BAD = """
## Season
- leaves: spring
"""

OTHERWISE: Final = "write months, with early, mid or late in front, or `all year`"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each time that was not understood."""
    for fault in lesson.faults_of(ID):
        message = (
            f"{shown(fault.words)} is no time of year, expected months such as `March to June`"
        )
        yield Problem(fault.span, message, did_you_mean(fault.nearest, OTHERWISE))
