"""A part that is eaten, with no time at which it may be.

Young leaves are food in April and bitter or worse in July; green seeds are food for two
weeks. The time stands directly behind the part, before the semicolon, as `March to May` or
`late April to mid June`.
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

ID: Final = "edible-without-season"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Edible parts\n- leaves: March to May; raw\n"
BAD = "## Edible parts\n- leaves: raw, cooked\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each part without a time that can be read."""
    for part in lesson.edible_parts:
        timing = part.timing
        if not timing.windows:
            message = f"nothing says when the edible part {shown(timing.name)} is food, expected a time of year"
            hint = f"write `- {timing.name}: March to May; raw, cooked`, for example"
            yield Problem(timing.label_span, message, hint)
