"""The same answer twice in one question.

If one of the two is marked as right the other teaches that it is wrong. Capitals, blanks and
the full stop at the end make no difference.
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

ID: Final = "question-option-twice"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n"
BAD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] six\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each answer that stands before it in the same question."""
    for question in lesson.questions:
        seen: set[str] = set()
        for option in question.options:
            words = " ".join(option.text.value.casefold().split()).rstrip(" .!")
            if words and words in seen:
                message = f"the answer {shown(option.text.value)} stands twice in one question"
                yield Problem(option.text.span, message, "take one of the two out, or change it")
            seen.add(words)
