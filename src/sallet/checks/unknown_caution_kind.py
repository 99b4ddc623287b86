"""The word before the colon of a caution is spelt almost like a known kind.

The caution is kept whole, as free text, but it is not found among those of its kind. Correct
the word if it was a slip of the pen; leave it if you meant something else.
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

ID: Final = "unknown-caution-kind"
SEVERITY: Final = Severity.NOTE
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- dogs: keep them away
- thick fog: stay at home
"""
BAD = """
## Cautions
- alergy: leave it alone
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each kind that looks like a slip of the pen."""
    for fault in lesson.faults_of(ID):
        if fault.nearest:
            message = f"{shown(fault.words)} is no known kind of caution"
            yield Problem(fault.span, message, did_you_mean(fault.nearest, ""))
