"""A length without a unit.

10 may be centimetres or inches, and a leaf two and a half times too long is another plant's.
Write mm, cm, m, in or ft behind the number. A decimal is written with a point: `2.5 cm`.
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

ID: Final = "missing-unit"
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
- length: 10–25
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each length that has no unit."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} has no unit, expected {listed(fault.nearest)}"
        yield Problem(
            fault.span, message, f"write the unit behind the number, as in `{fault.words} cm`"
        )
