"""A heading inside a section that is a plain list of facts.

The bullets below it are read as if it were not there, and it is not on the page. Where it
says something that matters, such as `### For children`, the bullets below must say it.
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

ID: Final = "inner-heading"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- children: small helpings
"""
BAD = """
## Cautions
### For children
- small helpings
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each such heading."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} stands inside {shown(fault.detail)} and is not shown"
        yield Problem(
            fault.span, message, "say it in the bullets below it, and take the heading out"
        )
