"""A part to remove, without the reason.

Who does not know why the stalks are cut away will leave them in when there is no time.
Poisonous, irritant and merely stringy are three different things. Write the reason behind
the colon: `- leaf stalks: stringy once the flower buds show`.
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

ID: Final = "removal-without-reason"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Parts to remove\n- leaf stalks: stringy\n"
BAD = "## Parts to remove\n- leaf stalks\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each part that is cut away for no stated reason."""
    for removal in lesson.removals:
        if removal.name.value.strip() and not removal.reason.value.strip() and not removal.note:
            name = removal.name.value
            message = f"nothing says why the part {shown(name)} is removed, expected a reason"
            yield Problem(removal.name.span, message, f"write `- {name}: ` and the reason")
