"""A plant taught as food that is said to be deadly or poisonous.

Either the plant is no food, and `taught as:` should say `look-alike`; or one of its parts is
poisonous, and that belongs under Parts to remove and Cautions, where it says which part. A
page that calls one plant both food and deadly teaches neither.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.lesson.model import GRAVE

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "danger-of-food"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Elder\ntaught as: food\n---\n"
BAD = "---\nname: Elder\ntaught as: food\ndanger: poisonous\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the danger of a food plant."""
    danger = lesson.front.danger
    if lesson.is_food and danger in GRAVE:
        message = f"`{lesson.name}` is taught as food and is `{danger}`, expected one or the other"
        hint = (
            "write `taught as: look-alike`, or take `danger` out and name the poisonous part "
            "under Parts to remove and Cautions"
        )
        yield Problem(lesson.front.where("danger"), message, hint)
