"""A look-alike without a sentence on how it is told from the plant.

The bullets are for the key and the season map. The page and the teacher's voice need a few
sentences: where the two are met together, what to look at first, and what it looks like in
the months when that cannot be seen. Write them directly below the look-alike's heading.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "look-alike-without-text"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Look-alikes
### Lily of the valley
Its two leaves are wrapped in one another.
"""
BAD = """
## Look-alikes
### Lily of the valley
- danger: poisonous
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each look-alike without text."""
    for look in lesson.look_alikes:
        if not look.prose:
            message = f"nothing says how `{look.name.value}` is told from `{lesson.name}`"
            hint = "write below the heading what to look at, now and in other months"
            yield Problem(look.name.span, message, hint)
