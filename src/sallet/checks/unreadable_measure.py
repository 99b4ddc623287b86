"""A length that cannot be read.

It is kept on the page as you wrote it, but it is not shown in the other system and cannot be
compared with another plant's. Lengths are `10–25 cm`, `4–6 ft, at most 7 ft`, `1 1/2–4 in`
or `about 12 mm`; other words belong in the note below the fact.
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

ID: Final = "unreadable-measure"
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
- length: a hand's breadth
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each length that was not understood."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no length, expected one such as `10–25 cm`"
        yield Problem(
            fault.span, message, "write numbers and a unit; put other words into the note"
        )
