"""A lesson without the plant's common name.

The name stands at the head of the page and on every card, and other lessons and the course
call the plant by it. Without it the plant goes by the name of its file. Write `name:` and
the name among the lines between `---` at the head of the file.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.lesson.bank import Bank
    from sallet.lesson.model import Lesson

ID: Final = "no-name"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "lesson"
GOOD = "---\nname: Ramsons\n---\n"
BAD = "---\nname:\n---\n"


def check(lesson: Lesson, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing name."""
    if not lesson.front.name:
        message = "the plant has no name, expected its common name behind `name:`"
        hint = "write `name: Ramsons`, or what the plant is called, between the `---` lines"
        yield Problem(lesson.front.where("name"), message, hint)
