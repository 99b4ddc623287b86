"""A course that does not say whom to ring after a poisoning.

The line stands on every page and every card, where a frightened person looks first. Write
the number of the poison centre, or the emergency number, of the country in which the class
meets behind `emergency:`. Poison centres cannot name a plant over the telephone: the pages
tell the reader to keep it.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Final

from sallet.checks.problem import Problem
from sallet.findings import Severity
from sallet.source import Span

if TYPE_CHECKING:
    from collections.abc import Iterator

    from sallet.course.model import Course
    from sallet.lesson.bank import Bank

ID: Final = "no-emergency-line"
SEVERITY: Final = Severity.STOP
LOOKS_AT: Final = "course"
GOOD = {"course.yml": "title: Hedge and beck\nemergency: ring 999, or NHS 111 for advice\n"}
BAD = {"course.yml": "title: Hedge and beck\n"}


def check(course: Course, bank: Bank) -> Iterator[Problem]:  # noqa: ARG001
    """Yield the missing line."""
    if not any(line.strip() for line in course.emergency):
        key = course.node.key("emergency")
        message = "nothing says whom to ring after a poisoning, expected `emergency`"
        hint = "write `emergency: ` and the number of the poison centre or the emergency number"
        yield Problem(key.span if key else Span(0, 0), message, hint)
