"""A number of parts that cannot be read.

It is kept on the page as you wrote it, but it cannot be compared with another plant's.
Numbers are `5`, `4–6`, `12 or more` or `many`; other words belong in the note below the fact.
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

ID: Final = "unreadable-count"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Flowers
- petals: 5
"""
BAD = """
## Identification
### Flowers
- petals: a few
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each number that was not understood."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no number, expected one such as `5`, `4–6` or `many`"
        yield Problem(fault.span, message, "write the number alone; put other words into the note")
