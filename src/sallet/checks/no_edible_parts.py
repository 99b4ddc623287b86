"""A food plant of which no part is said to be eaten.

Of many food plants one part is food and another poisonous, so nobody may be left to guess.
Write each part that is eaten under `## Edible parts`, with its time and its preparation; or,
if the plant is taught so that nobody eats it, `taught as: look-alike` at the head.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-edible-parts"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Edible parts\n- leaves: March to May; raw, cooked\n"
BAD = "---\nname: Ramsons\ntaught as: food\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing parts."""
    if lesson.is_food and not lesson.edible_parts:
        message = f"`{lesson.name}` is taught as food, but no part of it is said to be eaten"
        hint = "write `- leaves: March to May; raw, cooked`, for example, under `## Edible parts`"
        yield Problem(lesson.where("edible parts"), message, hint)
