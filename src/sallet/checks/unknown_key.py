"""A line at the head of the file that sallet does not know.

Only the lines of the format are read there; what stands in another is nowhere on the page.
A misspelt `danger:` would leave a poisonous plant without its mark. Correct the word, or move
what it says into the text.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import did_you_mean, listed, shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "unknown-key"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
---
name: Ramsons
---
"""
BAD = """
---
name: Ramsons
colour: white
---
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each line that is not known."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} is no line that the head of a lesson may hold"
        yield Problem(fault.span, message, _hint(fault.nearest))


def _hint(nearest: Sequence[str]) -> str:
    # With no key spelt like it, the reader gives them all.
    few = 3
    if len(nearest) <= few:
        return did_you_mean(nearest, "")
    return f"expected one of {listed(nearest)}"
