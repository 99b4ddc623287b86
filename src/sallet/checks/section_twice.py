"""A section that stands twice in one lesson.

Only the first is read: cautions or parts to remove below the second would be lost. Some
headings mean the same section, as Recipes and Preparation do. Put both under one heading.
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

ID: Final = "section-twice"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- dogs: keep them away

## Habitat
"""
BAD = """
## Cautions
- dogs: keep them away

## Warnings
- children: none
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each section after the first of its name."""
    for fault in lesson.faults_of(ID):
        section = fault.nearest[0].capitalize()
        message = f"{shown(fault.words)} is the section `{section}` a second time"
        yield Problem(fault.span, message, "put what stands below it under the first of the two")
