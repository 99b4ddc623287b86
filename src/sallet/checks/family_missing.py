"""A lesson without the plant's family.

A student who knows the family knows half the plant: its flowers, its fruit, and which
poisonous relations to think of. Write `family:` and the family's scientific name, which
ends in -aceae, among the lines between `---` at the head of the file.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "family-missing"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Ramsons\nfamily: Amaryllidaceae\n---\n"
BAD = "---\nname: Ramsons\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing family."""
    if not lesson.front.family:
        message = f"`{lesson.name}` has no family, expected a name ending in -aceae"
        hint = "write `family: Amaryllidaceae`, for example, between the `---` lines"
        yield Problem(lesson.front.where("family"), message, hint)
