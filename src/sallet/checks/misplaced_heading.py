"""A heading at the wrong rank, so that the facts below it are lost.

Sections such as Cautions are `##` and stand on their own; parts of the plant such as Leaves
are `###` and stand below `## Identification`. Anywhere else their bullets are only text: no
card, no key and no check knows them. Change the number of `#`, or move the heading.
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

ID: Final = "misplaced-heading"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- margin: entire
"""
BAD = """
## Leaves
- margin: entire
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each heading whose facts are not read."""
    for fault in lesson.faults_of(ID):
        if fault.detail == "organ":
            message = f"{shown(fault.words)} stands by itself, so the facts below it are not read"
            hint = f"write `### {fault.words}`, below the heading `## Identification`"
        else:
            message = f"{shown(fault.words)} stands inside another section, so it is not read"
            hint = f"write `## {fault.nearest[0].capitalize()}`, as a section of its own"
        yield Problem(fault.span, message, hint)
