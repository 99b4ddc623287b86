"""A question with fewer than two answers.

With one answer there is nothing to decide, and with none the question is not asked at all.
Write two or three, as bullets indented under the first letter of the question: one right, the
others what beginners really get wrong.
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

ID: Final = "question-few-options"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n"
BAD = "## Questions\n1. How many petals?\n   - [x] Six.\n"

FEWEST: Final = 2


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each question that offers no choice."""
    for question in lesson.questions:
        number = len(question.options)
        if number < FEWEST:
            found = "one answer" if number else "no answers"
            message = f"{shown(question.prompt.value)} has {found}, expected two or three"
            hint = "write answers as `- [ ] …` below it, indented under its first letter"
            yield Problem(question.prompt.span, message, hint)
