"""A question without a word on the answer.

A student who is told only that she was wrong learns nothing. Below the answers write a
quotation, `> …`, that says why the right one is right, indented as the answers are.
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

ID: Final = "question-feedback"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n   > Count them.\n"
BAD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each question that explains nothing."""
    for question in lesson.questions:
        if not question.feedback:
            message = f"nothing explains the answer of {shown(question.prompt.value)}"
            hint = "write `> ` and the reason below the answers, indented as they are"
            yield Problem(question.prompt.span, message, hint)
