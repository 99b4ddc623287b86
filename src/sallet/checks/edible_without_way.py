"""A part that is eaten, without a word on how.

Some parts are food raw, others only boiled in two waters, and a reader who finds nothing
will try them raw. Write the ways behind a semicolon: `March to May; raw, cooked`.
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

ID: Final = "edible-without-way"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "## Edible parts\n- leaves: March to May; raw, cooked\n"
BAD = "## Edible parts\n- leaves: March to May\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each part with nothing behind the semicolon."""
    for part in lesson.edible_parts:
        if not part.ways:
            name = part.timing.name
            message = (
                f"nothing says how the part {shown(name)} is eaten, expected `raw`, `cooked` or so"
            )
            hint = "write the ways behind a semicolon: `March to May; raw, cooked`"
            yield Problem(part.timing.label_span, message, hint)
