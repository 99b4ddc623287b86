"""An answer that is far longer than the others.

The longest answer is most often the right one, because the writer takes care that it is true;
students learn to pick it unread. Answers of similar length ask about the plant (Haladyna,
Downing and Rodriguez, 2002, Applied Measurement in Education 15, 309–334). Found is a right
answer half as long again as the longest wrong one, and any answer more than twice as long as
the middle one; differences of up to 20 letters are let pass.
"""

from __future__ import annotations

from statistics import median
from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.checks.words import shown
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson, Option

ID: Final = "question-option-length"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = "## Questions\n1. How many petals?\n   - [x] Six.\n   - [ ] Five.\n"
BAD = "## Questions\n1. How many petals?\n   - [x] Six, all alike, in two rings of three.\n   - [ ] Five.\n"

LET_PASS: Final = 20
"""Characters. Of two short answers one is soon twice as long as the other."""


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each answer whose length gives it away."""
    for question in lesson.questions:
        for option in question.options:
            if _stands_out(option, question.options):
                message = f"the answer {shown(option.text.value)} is far longer than the others"
                hint = "shorten it, or say as much in the others"
                yield Problem(option.text.span, message, hint)


def _stands_out(option: Option, options: Sequence[Option]) -> bool:
    length = len(option.text.value)
    wrong = [len(other.text.value) for other in options if not other.right]
    if option.right and wrong and length > max(max(wrong) * 3 / 2, max(wrong) + LET_PASS):
        return True
    return length > median(len(other.text.value) for other in options) * 2 + LET_PASS
