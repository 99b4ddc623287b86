"""A lesson without cautions.

There is no plant without one: a double, an allergy, a quantity, a place where it must not be
picked. A lesson that has none was not finished. Write them under `## Cautions`, each as
`- kind: text`; the kinds are listed by `sallet explain cautions`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-cautions"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Cautions\n- confusion: never pick by the handful\n"
BAD = "## Cautions\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing cautions."""
    if not any(caution.text.value.strip() or caution.note for caution in lesson.cautions):
        message = f"`{lesson.name}` has no cautions, expected one at the least"
        hint = "write `- confusion: never pick by the handful`, for example, under `## Cautions`"
        yield Problem(lesson.where("cautions"), message, hint)
