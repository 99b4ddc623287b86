"""A unit of length that sallet does not know.

The length is kept on the page as you wrote it, but it is not shown in the other system and
cannot be compared. Write mm, cm, m, in or ft.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import listed, shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unknown-unit"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- length: 10–25 cm
"""
BAD = """
## Identification
### Leaves
- length: 4 hands
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each unit that was not found."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no unit of length, expected {listed(fault.nearest)}"
        yield Problem(fault.span, message, "write one of these behind the number")
