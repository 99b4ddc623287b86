"""An answer such as "all of the above" or "none of the above".

It asks about the other answers and not about the plant: who knows one of them to be wrong, or
two to be right, has solved it without knowing the rest. Item writers advise against it
(Haladyna, Downing and Rodriguez, 2002, Applied Measurement in Education 15, 309–334).
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

ID: Final = "question-all-of-the-above"
SEVERITY: Final = Severity.WARN
LOOKS_AT: Final = "lesson"
GOOD = (
    "## Questions\n1. What do you look at?\n   - [x] Stalk, shine and veins.\n   - [ ] The smell.\n"
)
BAD = "## Questions\n1. What do you look at?\n   - [ ] The stalk.\n   - [x] All of the above.\n"

ANYWHERE: Final = ("of the above", "all the above", "both the above", "neither the above")
WHOLE: Final = (
    "all of these", "any of these", "both of these", "none of these", "neither of these",
    "all of the others", "none of the others", "both a and b", "neither a nor b",
)  # fmt: skip


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield each answer that speaks of the other answers."""
    for question in lesson.questions:
        for option in question.options:
            words = " ".join(option.text.value.casefold().split()).rstrip(".!")
            if words in WHOLE or any(phrase in words for phrase in ANYWHERE):
                message = f"the answer {shown(option.text.value)} is about the other answers"
                hint = "write out what is meant, as an answer that stands by itself"
                yield Problem(option.text.span, message, hint)
