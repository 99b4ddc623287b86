"""A bullet with nothing behind its label.

An empty line says neither that the plant has the thing nor that it lacks it, and a caution
without words warns of nothing. Write the value on the same line as its label, write `none`
where the thing is known to be absent, or take the bullet out.
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

ID: Final = "empty-value"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- dogs: keep them away
"""
BAD = """
## Cautions
- dogs:
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet that says nothing."""
    for fault in lesson.faults_of(ID):
        message = (
            f"nothing stands behind {shown(fault.words)}" if fault.words else "an empty bullet"
        )
        yield Problem(
            fault.span, message, "write the value on the same line, or take the bullet out"
        )
