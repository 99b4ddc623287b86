"""A lesson that does not say when the plant can be met.

What tells a plant from its double depends on the week: flowers in May, nothing but leaves in
March. Without Season sallet can neither place the lesson in the course's year nor say in
which weeks the plant is safe to know. Write the organs with their times under `## Season`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-season"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Season\n- leaves: late February to mid June\n"
BAD = "## Season\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing season."""
    if not any(row.windows for row in lesson.season):
        message = f"nothing says when `{lesson.name}` can be met, expected its organs with times"
        hint = "write `- leaves: late February to mid June`, for example, under `## Season`"
        yield Problem(lesson.where("season"), message, hint)
