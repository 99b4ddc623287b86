"""A lesson on a look-alike that does not say how dangerous the plant is.

A plant that is taught so that nobody eats it must say what would happen. The word stands in
red at the head of its page, on its card, and wherever a food plant's lesson names it. Write
`danger: deadly`, `poisonous`, `harmful` or `harmless` between the `---` lines.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-danger"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Hemlock\ntaught as: look-alike\ndanger: deadly\n---\n"
BAD = "---\nname: Hemlock\ntaught as: look-alike\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing danger."""
    if not lesson.is_food and lesson.front.danger is None:
        message = f"`{lesson.name}` is taught as a look-alike, but nothing says how dangerous it is"
        hint = "write `danger: deadly`, `poisonous`, `harmful` or `harmless`"
        yield Problem(lesson.front.where("danger"), message, hint)
