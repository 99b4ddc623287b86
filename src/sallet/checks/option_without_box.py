"""An answer of a question that does not begin with `[ ]` or `[x]`.

Without its box nobody knows whether the answer is right, so it is left out. Write `[x]` before
the right answer and `[ ]`, with a space between the brackets, before each of the others.
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

ID: Final = "option-without-box"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Questions
1. How many petals?
   - [x] Six.
   - [ ] Five.
"""
BAD = """
## Questions
1. How many petals?
   - [x] Six.
   - Five.
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each answer that has no box."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} has no box, expected `[ ]` or `[x]` and a space before it"
        yield Problem(
            fault.span,
            message,
            "write `- [x] ` before the right answer, `- [ ] ` before a wrong one",
        )
