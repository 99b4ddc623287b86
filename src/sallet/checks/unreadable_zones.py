"""Hardiness zones that cannot be read.

They are kept on the page as you wrote them. Zones run from 1a to 13b (United States
Department of Agriculture map, 2012): write `4–8` or `7a to 9b`.
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

ID: Final = "unreadable-zones"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Range
- hardiness zones: 4–8
"""
BAD = """
## Range
- hardiness zones: mild
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each value that was not understood."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} names no hardiness zones, expected such as `4–8`"
        yield Problem(
            fault.span, message, "write two zones from 1 to 13, with a or b behind if you know it"
        )
