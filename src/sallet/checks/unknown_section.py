"""A heading that is spelt almost like one of the format's sections.

`## Cautoins` is looked through as if it said Cautions, so that you see all that is wrong in
one go; but nothing is published on a guess. Correct the heading. A section that is truly
your own needs a heading that cannot be taken for another.
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

ID: Final = "unknown-section"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- dogs: keep them away

## Names and stories
"""
BAD = """
## Cautoins
- dogs: keep them away
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each heading that looks like a slip of the pen."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no section of a lesson"
        near = [name.capitalize() for name in fault.nearest]
        yield Problem(fault.span, message, did_you_mean(near, ""))
