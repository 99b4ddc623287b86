"""A label that is not among the trade's words for this organ or section.

The fact is kept on the page as you wrote it. But it can tell no plants apart and stands in
no key. Use one of the labels offered, or put the words into the note of another bullet.
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

ID: Final = "unknown-label"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- margin: entire
"""
BAD = """
## Identification
### Leaves
- margn: entire
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each label that was not found."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no known label of `{fault.detail}`"
        otherwise = f'write `sallet explain "{fault.detail.casefold()}"` to see its labels'
        yield Problem(fault.span, message, did_you_mean(fault.nearest, otherwise))
