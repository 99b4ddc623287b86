"""A bullet inside a bullet, where only a shorter wording for the card may stand.

`- on the card: …` is the one bullet that may stand inside a fact, a caution, an edible
part or a part to remove. Any other is shown with the note, in smaller type, and no check reads it.
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

ID: Final = "nested-bullet"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = """
## Cautions
- dogs: keep them away
  - on the card: not for dogs
"""
BAD = """
## Cautions
- dogs: keep them away
  - cats: keep them away too
"""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each bullet inside a bullet."""
    for fault in lesson.faults_of(ID):
        message = f"{shown(fault.words)} stands inside another bullet, expected `on the card`"
        yield Problem(
            fault.span, message, "begin it at the margin if it is a fact or caution of its own"
        )
