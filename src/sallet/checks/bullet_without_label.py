"""A bullet among the facts that is not of the form `label: value`.

A fact is found by its label. What has none is not on the page and not on the card. Write a
label and a colon in front, or write the sentence as running text, without the dash.
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

ID: Final = "bullet-without-label"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Season
- leaves: March to June
"""
BAD = """
## Season
- leaves from March to June
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet that has no label."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} does not begin with {fault.detail} and a colon"
        yield Problem(fault.span, message, "write `label: value`, or running text without the dash")
