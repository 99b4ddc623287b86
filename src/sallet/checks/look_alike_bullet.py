"""A bullet under Look-alikes that is not one of the four that belong there.

Each look-alike has a `###` heading with text below it; of bullets only `scientific name`,
`danger`, `settled by` and `on the card`. Features go under a heading one rank lower, such as
`#### Leaves`, where they can be compared. Any other bullet is kept as text, and one with no
look-alike's heading above it is not read at all.
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

ID: Final = "look-alike-bullet"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Hemlock
Purple blotches on the stem.
- danger: deadly
"""
BAD = """
## Look-alikes
### Hemlock
- stem: purple blotches
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet that has no place there."""
    for fault in lesson.faults_of(ID):
        message = (
            f"{shown(fault.words)} is no line of a look-alike, expected {listed(fault.nearest)}"
        )
        yield Problem(
            fault.span,
            message,
            "put features below `#### Leaves` and the like, the rest into the text",
        )
