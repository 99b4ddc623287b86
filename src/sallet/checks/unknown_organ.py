"""A heading below Identification that names no part of a plant.

Nobody could compare the facts below it with those of a look-alike. Write Whole
plant, Stem, Leaves, Flowers, Fruit, Seeds, Roots, Bark, Buds or Sap, or a kind of these
such as Bulb. What is not about one part may go under Whole plant.
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

ID: Final = "unknown-organ"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Identification
### Leaves
- margin: entire
"""
BAD = """
## Identification
### Leevs
- margin: entire
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each heading that is no organ."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} names no part of a plant"
        if fault.detail:
            hint = f"write `## {fault.detail.capitalize()}`, as a section of its own"
        else:
            hint = did_you_mean(fault.nearest, "write `sallet explain` to see the parts")
        yield Problem(fault.span, message, hint)
