"""A question with no right answer, or with more than one.

Exactly one answer is marked `[x]`. With none the student is told that everything is wrong;
with two she may leave with the less safe of them. Say in each answer all that makes it right
or wrong, and mark one.
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

ID: Final = "question-one-right"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n"
BAD = "## Questions\n1. How many petals?\n   - [ ] Six.\n   - [ ] Five.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each question that has not exactly one right answer."""
    for question in lesson.questions:
        right = [option for option in question.options if option.right]
        if question.options and not right:
            message = f"no answer of {shown(question.prompt.value)} is marked as right"
            yield Problem(question.prompt.span, message, "write `[x]` before the right one")
        for option in right[1:]:
            message = f"{shown(option.text.value)} is a second right answer, expected one"
            yield Problem(option.text.span, message, "leave `[x]` before one answer only")
