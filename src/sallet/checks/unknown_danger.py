"""A danger that is none of the four.

How a look-alike is marked, on the page and on the card, hangs on this word. Write deadly,
poisonous, harmful or harmless, and nothing else; what you know beyond it belongs in the text.
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

ID: Final = "unknown-danger"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Hemlock
- danger: deadly
"""
BAD = """
## Look-alikes
### Hemlock
- danger: very bad
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each danger that is not known."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no known danger, expected {listed(fault.nearest)}"
        yield Problem(
            fault.span, message, "write one of the four words alone, the rest into the text"
        )
