"""A look-alike of which nothing says how dangerous it is.

A student must know at once whether the other plant would kill, sicken or only disappoint.
sallet takes this from the look-alike's own lesson; where there is none it must stand here,
as `- danger: deadly` (or `poisonous`, `harmful`, `harmless`) below the look-alike's heading.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "look-alike-danger"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Few-flowered garlic
Its leaves are narrow.
- danger: harmless
"""
BAD = """
## Look-alikes
### Few-flowered garlic
Its leaves are narrow.
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:
    """Yield each look-alike with neither a lesson nor a danger."""
    for look in lesson.look_alikes:
        if bank.lesson_of(look) is None and look.danger is None:
            name = look.name.value
            message = f"`{name}` has no lesson and no `danger`, expected one of the two"
            hint = "write `- danger: deadly`, `poisonous`, `harmful` or `harmless` below it"
            yield Problem(look.name.span, message, hint)
