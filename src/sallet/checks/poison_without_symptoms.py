"""A poisonous plant, without a word on what it does.

Who has eaten the wrong leaf needs three things from the lesson: what will be felt, how soon,
and what to do. Some poisons keep silent for a day, and whoever waits for signs waits too
long. Write cautions of the kinds `symptoms`, `onset` and `first aid`; one of them at the
least.
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

ID: Final = "poison-without-symptoms"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """---
danger: deadly
---
## Cautions
- onset: two to six hours after eating
"""
BAD = """---
danger: deadly
---
## Cautions
- skin: wear gloves
"""

KINDS: Final = frozenset({"symptoms", "onset", "first aid"})


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing cautions of a poisonous plant."""
    told = {caution.kind for caution in lesson.cautions}
    if lesson.front.danger in GRAVE and not told & KINDS:
        message = (
            f"`{lesson.name}` is {lesson.front.danger}, but no caution tells of `symptoms`, "
            "`onset` or `first aid`"
        )
        hint = "write `- symptoms: …`, `- onset: …` and `- first aid: …` under Cautions"
        yield Problem(lesson.where("cautions"), message, hint)
