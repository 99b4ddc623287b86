"""A part of the plant, in Season or Edible parts, that the vocabulary does not hold.

The line is kept as you wrote it. But it is not known which organ it belongs to, so it is not
on the season map and cannot be compared with the weeks in which that organ is to be seen.
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

ID: Final = "unknown-part"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Season
- leaves: March to June
"""
BAD = """
## Season
- leevs: March to June
"""

OTHERWISE: Final = "name the organ or a common part of it, such as `young leaves`"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each part that was not found."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no known part of a plant"
        yield Problem(fault.span, message, did_you_mean(fault.nearest, OTHERWISE))
