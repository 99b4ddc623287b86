"""A state that is not among the trade's words for its character.

The word is kept on the page as you wrote it, but nothing can be compared with it: it can
neither tell two plants apart nor stand in a key. Use one of the terms offered, or put the
word into the note below the fact. `sallet explain` with the label lists its terms.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unknown-state"
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
- margin: entyre
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each state that was not found."""
    for fault in lesson.faults_of(ID):
        message = f"`{fault.words}` is no known {fault.detail}"
        otherwise = f'write `sallet explain "{fault.detail}"` to see the terms'
        yield Problem(fault.span, message, did_you_mean(fault.nearest, otherwise))
