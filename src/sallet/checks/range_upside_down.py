"""A range that runs from the greater to the smaller.

One of its two ends is wrong, or they have changed places; the tool cannot know which. For
months the order counts too: `October to March` runs over the new year, but `20 June to 5 June`
would be nearly the whole year.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "range-upside-down"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- length: 10–25 cm
"""
BAD = """
## Identification
### Leaves
- length: 25–10 cm
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each range that is upside down."""
    for fault in lesson.faults_of(ID):
        if fault.detail == "time":
            message = f"{shown(fault.words)} runs backwards, expected the earlier day first"
            hint = "change the two days about; for nearly the whole year name the months"
        else:
            message = f"{shown(fault.words)} runs backwards, expected the smaller number first"
            hint = "change the two about, or correct the one that is wrong"
        yield Problem(fault.span, message, hint)
