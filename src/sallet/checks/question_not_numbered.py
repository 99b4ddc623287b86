"""A bullet in Questions that belongs to no question.

Questions are a numbered list, `1.`, and their answers are bullets below it, indented so far
that they begin under the first letter of the question. What stands at the margin is not asked.
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

ID: Final = "question-not-numbered"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Questions
1. How many petals?
   - [x] Six.
   - [ ] Five.
"""
BAD = """
## Questions
- How many petals?
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet at the margin."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} belongs to no question, expected a number such as `1.`"
        yield Problem(
            fault.span,
            message,
            "number the question, and indent its answers under its first letter",
        )
